using System.Collections.Frozen;
using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Sequence;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Sequence;

/// <summary>Networks of 5 to 14 activities with four week patterns, closed days, waits, windows, longest waits and a same-day group, the same from the same number.</summary>
internal sealed class RandomNetwork
{
    public static readonly LocalDate Start = new(2026, 3, 2);
    private static readonly string[] Patterns = ["1234567", "12345", "24", "1234"];
    private readonly Func<int, int> _below;
    private readonly WorkingCalendar[] _calendars;
    private readonly bool _mirrorable;

    private RandomNetwork(ulong seed, bool mirrorable)
    {
        var draws = new Xoshiro256(seed);
        _below = n => (int)(draws.NextDraw() % (uint)n);
        _calendars = [.. Patterns.Select((p, i) => Calendar($"c{i}", p))];
        _mirrorable = mirrorable;
    }

    /// <summary>A network of that number; mirrorable ones have no moments and no links from start to start, which have no mirror image here.</summary>
    public static Network Of(ulong seed, bool mirrorable = false) => new RandomNetwork(seed, mirrorable).Make();

    private Network Make()
    {
        var count = 5 + _below(10);
        var first = _below(count - 3);
        var activities = Enumerable.Range(0, count).Select(i => Activity(i, i >= first && i < first + 3)).ToArray();
        var links = from to in Enumerable.Range(1, count - 1) from _ in Enumerable.Range(0, 1 + _below(2)) select Link(_below(to), to);
        var maximals = Enumerable.Range(0, _below(3)).Select(_ => _below(count - 1)).Select(i => new Maximal($"a{i}", $"a{i + 1 + _below(count - i - 1)}", 1 + _below(12), AnyCalendar()));
        return new([.. activities], [.. links], [.. maximals]);
    }

    private Activity Activity(int i, bool together) => new(
        $"a{i}",
        together && _below(3) > 0 ? _calendars[1] : AnyCalendar(),
        together ? 1 : _below(8) == 0 && !_mirrorable ? 0 : 1 + _below(6),
        _below(6) == 0 ? Start.PlusDays(_below(30)) : null,
        _below(12) == 0 ? Start.PlusDays(20 + _below(80)) : null,
        null,
        null,
        together ? "visit" : null);

    private Precedence Link(int from, int to) => new(
        $"a{from}",
        $"a{to}",
        _below(4) == 0 && !_mirrorable ? LinkKind.StartToStart : LinkKind.FinishToStart,
        _below(3) == 0 ? 1 + _below(3) : 0,
        AnyCalendar(),
        _below(6) == 0 && !_mirrorable);

    private WorkingCalendar AnyCalendar() => _calendars[_below(_calendars.Length)];

    private WorkingCalendar Calendar(string id, string pattern) => new(
        id,
        pattern.Select(c => (IsoDayOfWeek)(c - '0')).ToFrozenSet(),
        Enumerable.Range(0, 160).Where(_ => _below(33) == 0).Select(d => Start.PlusDays(d)).ToFrozenSet(),
        LocalDate.MaxIsoValue);
}
