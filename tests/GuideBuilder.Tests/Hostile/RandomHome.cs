using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;
using NodaTime;
using static System.FormattableString;

namespace GuideBuilder.Tests.Hostile;

/// <summary>Answers files made at random over every question of the real guidance, the same from the same number: from next to nothing answered to all, with the odd extreme, and with papers and a log that may contradict themselves.</summary>
internal sealed class RandomHome
{
    private static readonly string[] Happenings = ["applied", "surveyed", "quoted", "accepted", "paid", "date-given", "missed", "done", "refused", "noted"];
    private static readonly string[] Papers = ["quotation", "certificate", "consent", "plans", "survey", "letter"];
    private static readonly LocalDate Day = new(2026, 11, 24);

    private readonly Dictionary<string, Given> _given = new(StringComparer.Ordinal);
    private readonly StringBuilder _text = new("handbook: {format: 1, id: random-home}\n");
    private Xoshiro256 _draws;

    private RandomHome(ulong seed) => _draws = new(seed);

    /// <summary>The answers file of that number; without a history it has no papers and no log, and no fault.</summary>
    public static SourceText Of(ulong seed, bool history) => new RandomHome(seed).Make(history);

    private static Guidance Guidance => Content.Guidance;

    private SourceText Make(bool history)
    {
        var share = 1 + Below(10);
        foreach (var section in Guidance.Questions.GroupBy(q => q.Section))
        {
            var lines = section.Select(q => Line(q, share)).OfType<string>().ToList();
            if (lines.Count > 0)
            {
                _text.Append(section.Key).Append(":\n").AppendJoin("", lines);
            }
        }

        if (history)
        {
            List("papers", Below(4), Paper);
            List("log", Below(12), Event);
        }

        return AnswersFiles.Of(_text.ToString());
    }

    // What is asked is answered in so many tenths of all cases; the answer is kept, because later questions hang on it.
    private string? Line(Question question, int share)
    {
        if (Judge.Of(question.AskIf, name => _given[name]).Truth == Truth.Fails)
        {
            _given[question.Name] = new Given.Answered(question, Standing.NotAsked, null, null);
            return null;
        }

        var needed = question.Name is "home.nation" or "wish.moves";
        var written = needed || Below(10) < share ? Value(question) : Below(2) == 0 ? "unknown" : null;
        _given[question.Name] = Read(question, written);
        return written is null ? null : $"  {question.Id}: {written}\n";
    }

    private static Given.Answered Read(Question question, string? written)
    {
        if (written is null or "unknown")
        {
            return new(question, Standing.Unknown, null, null);
        }

        var faults = new FaultList();
        var root = (Mapping)YamlText.Read(AnswersFiles.Of($"a: {written}\n"), Budget.Answers, faults)!;
        var value = new AnswerValue(question, faults).Read(root["a"]!);
        Findings.AreNone(faults.Found.Select(f => f.ToString()));
        return new(question, Standing.Known, value, null);
    }

    private string Value(Question question) => question.Kind switch
    {
        QuestionKind.Choice => Any(question.Options).Id,
        QuestionKind.YesNo => Below(2) == 0 ? "yes" : "no",
        QuestionKind.Several => Some(question),
        QuestionKind.Quantity => Amount(question.Range!),
        QuestionKind.Date => Date(800),
        QuestionKind.Days => Below(8) == 0 ? $"[{Date(60, 0)} to {Date(250, 100)}]" : $"[{Date(400)}, 2027-02-10 to 2027-02-{11 + Below(17)}]",
        QuestionKind.Text => Any(["'A. Neighbour'", "\"<b>{{ x }}</b>\"", "'[x](javascript:x)'", "\"two\\nlines\"", "'unknown'", "\"\\u00a0 \""]),
        QuestionKind.NumberName => Any(["00123456789", "'1 000 000'", "'=1+1'", "2000000000000", "é"]),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private string Some(Question question)
    {
        var some = question.Options.Where(o => o.Id != "none" && Below(4) == 0).Select(o => o.Id).ToList();
        return some.Count == 0 ? "none" : $"[{string.Join(", ", some)}]";
    }

    // One in four at an end of the range, one in four to many places; a year is written bare.
    private string Amount(QuantityRange range)
    {
        var amount = Below(8) switch
        {
            0 => range.Least,
            1 => range.Most,
            < 4 => range.Least + ((range.Most - range.Least) * Below(1_000_000) / 1_000_000m),
            _ => range.Least + (Math.Max(1, Math.Truncate(range.Most - range.Least)) * Below(100) / 100m),
        };
        var places = range.Unit.Dimension is Dimension.Pounds or Dimension.Euros ? 2 : range.Unit == Unit.One ? 0 : 6;
        var rounded = Math.Min(range.Most, Math.Max(range.Least, Math.Round(amount, places)));
        return places == 2 ? Invariant($"{range.Unit.Symbol}{rounded:0.00}") : Invariant($"{rounded:0.######} {range.Unit.Symbol}").TrimEnd();
    }

    private void List(string name, int count, Func<string> entry)
    {
        if (count > 0)
        {
            _text.Append(name).Append(":\n").AppendJoin("", Enumerable.Range(0, count).Select(_ => $"  - {{{entry()}}}\n"));
        }
    }

    private string Paper()
    {
        var from = Any(Guidance.Parties).Id;
        var covers = Below(2) == 0 ? $", amount: {Any(["£1180 inc VAT", "£0", "£99999.99 ex VAT"])}, covers: [{Any(Guidance.Costs).Id}]" : "";
        return $"kind: {Any(Papers)}, from: {from}, dated: {Past()}, reference: 0012{covers}{(Below(3) == 0 ? $", leaves-out: [{Any(Guidance.Costs).Id}]" : "")}";
    }

    private string Event()
    {
        var what = Any(Happenings);
        var on = Past();
        var step = what is "date-given" or "missed" or "done" || Below(2) == 0 ? $", step: {Any(Guidance.Steps).Id}" : $", party: {Any(Guidance.Parties).Id}";
        var more = what switch
        {
            "date-given" => $", date: {(Below(6) == 0 ? Date(1090, 0) : Date(400))}",
            "paid" => ", amount: £100",
            "quoted" when Below(2) == 0 => $", amount: £2000 inc VAT, valid-until: {Date(400)}",
            _ => "",
        };
        return $"on: {on}, what: {what}{step}{more}, note: 'so it was'";
    }

    private string Past() => Date(300, -299);

    private string Date(int around) => Date(around, -around / 3);

    // So many days from a day on, counted from today.
    private string Date(int days, int from) => NodaTime.Text.LocalDatePattern.Iso.Format(Day.PlusDays(from + Below(days)));

    private T Any<T>(IReadOnlyList<T> list) => list[Below(list.Count)];

    private int Below(int n) => (int)(_draws.NextDraw() % (uint)n);
}
