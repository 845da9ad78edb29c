using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering.Blocks;

/// <summary>What cover and sequence say of the wished day, the works day and the payment, for homes under the real guidance.</summary>
public sealed class WhereWordsTests
{
    private const string Common = "home: {nation: england, kind: semi, built: 1954}\nwish: {moves: [cutout, meter], reason: [room-needed], way: outside-cabinet}\n";

    private static readonly Lazy<Home> Impossible = new(() => Home.Given(Common + "dates: {needed-by: 2026-12-18}\n"));

    [Theory]
    [InlineData("cover")]
    [InlineData("the-sequence")]
    public void Where_the_day_cannot_be_met_the_smallest_change_is_told_in_plain_words(string page)
    {
        var (words, change) = (Impossible.Value.Words(page), Impossible.Value.Plan.Schedule.Change!);

        Assert.Contains("would be enough", words, StringComparison.Ordinal);
        Assert.Contains($"{change.Days} days", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_day_cannot_be_met_the_cover_names_the_whole_chain_in_order()
    {
        var (words, plan) = (Impossible.Value.Words("cover"), Impossible.Value.Plan);
        var chain = plan.Schedule.DrivingSteps.Select(id => plan.Steps.Single(s => s.Step.Item.Id == id).Step.Item.Title.Words);

        Assert.Contains("Why it takes so long: each of these waits for the one before it. " + string.Join("; ", chain) + ".", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_day_can_be_met_no_chain_and_no_change_is_on_the_cover()
    {
        var words = Home.Given(Common + "dates: {needed-by: 2028-03-01}\n").Words("cover");

        Assert.DoesNotContain("Why it takes so long", words, StringComparison.Ordinal);
        Assert.DoesNotContain("would be enough", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("yes")]
    [InlineData("unknown")]
    public void With_medical_dependence_or_none_known_cover_sequence_and_day_say_that_the_works_day_is_not_to_be_fixed(string equipment)
    {
        var home = Home.Given(Common + $"people: {{medical-equipment: {equipment}}}\n");

        Assert.All(["cover", "the-sequence", "the-day"], page => Assert.Contains("The works day: not to be fixed yet. First these must be done or answered in writing: Plan for a works day that fails; Who puts supply back that evening.", home.Words(page), StringComparison.Ordinal));
        Assert.DoesNotContain("not to be fixed yet", Home.Given(Common + "people: {medical-equipment: no}\n").Words("cover"), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_gate_that_is_open_is_named_on_the_cover_beside_the_payment()
    {
        var (words, plan) = (Impossible.Value.Words("cover"), Impossible.Value.Plan);
        var section = words[words.IndexOf("Before you pay", StringComparison.Ordinal)..words.IndexOf("What could hurt you", StringComparison.Ordinal)];

        Assert.NotEmpty(plan.Whereabouts.Gates);
        Assert.Contains("Accept the quotation and pay (from £", section, StringComparison.Ordinal);
        Findings.AreNone(from gate in plan.Whereabouts.Gates
                         let title = plan.Steps.Single(s => s.Step.Item.Id == gate.Step).Step.Item.Title.Words
                         where !section.Contains(title, StringComparison.Ordinal)
                         select title);
    }

    [Fact]
    public void What_is_paid_with_the_quotation_is_no_more_than_all_of_it_and_a_quotation_is_one_sum()
    {
        var (unknown, quoted) = (Home.At("answers/mostly-unknown.yaml").Plan, Home.Given(Common + "papers: [{kind: quotation, from: network-operator, dated: 2026-11-20, amount: \"£1,180 inc VAT\"}]\n"));

        Assert.True(unknown.Whereabouts.Payments.Single().Sum is var sum && sum.Low <= unknown.Chances!.Cost.P10 && sum.High <= unknown.Chances.Cost.P90 && sum.High > sum.Low);
        Assert.Equal(ThreePoint.Certain(1180), quoted.Plan.Whereabouts.Payments.Single().Sum);
        Assert.Contains("Accept the quotation and pay (£1,180).", quoted.Words("cover"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-12-30", "£300 ex VAT", true, false)]
    [InlineData("2026-12-30", "£1,180 inc VAT", false, false)]
    [InlineData("2026-11-01", "£300 ex VAT", false, true)]
    public void A_quotation_outside_our_range_is_told_before_the_payment_and_one_that_has_run_out_as_such(string until, string amount, bool outside, bool ranOut)
    {
        var home = Home.Given(Common + "intake: {service: underground}\nground: {joint-place: own-land, who-digs: household}\n" + $"papers: [{{kind: quotation, from: network-operator, dated: 2026-10-01, valid-until: {until}, amount: \"{amount}\"}}]\n");

        Assert.Equal(outside, home.Words("cover").Contains("Ask what it leaves out", StringComparison.Ordinal));
        Assert.Equal(!ranOut, home.Words("money").Contains("The quotations that you hold", StringComparison.Ordinal));
        Assert.Equal(ranOut, home.Words("afterwards").Contains("It has run out and counts no more", StringComparison.Ordinal));
    }

    [Fact]
    public void Gates_stand_under_whoever_answers_them_the_household_first()
    {
        var home = Home.At("answers/mostly-unknown.yaml");
        var byWhom = home.Made.First(p => p.Kind == PageKind.Cover).Blocks.OfType<Block.Definitions>().Single(d => d.Items.Any(i => i.Term.PlainWords == "You, the household")).Items;
        var said = byWhom.SelectMany(i => i.Said.OfType<Block.Listing>().SelectMany(l => l.Items.SelectMany(b => b).OfType<Block.Prose>().Select(p => (Who: i.Term.PlainWords, What: p.Words.PlainWords)))).ToList();

        Assert.Equal(["You, the household", "Network operator", "Electrician"], byWhom.Take(3).Select(i => i.Term.PlainWords));
        Assert.Contains(("Supplier", "The supplier answers with a lead time"), said);
        Assert.Contains(("You, the household", "Prove which meter is yours (if it applies)"), said);
        Assert.Equal(home.Plan.Whereabouts.Gates.Length, said.Count);
        Assert.Equal(home.Plan.Whereabouts.Gates.Count(g => g.State == GateState.MayApply), said.Count(s => s.What.EndsWith("(if it applies)", StringComparison.Ordinal)));
    }

    [Fact]
    public void Answers_that_could_take_the_job_beyond_the_book_are_named_on_the_cover()
    {
        const string Told = "could take this job beyond this book";

        Assert.Contains(Told, Impossible.Value.Words("cover"), StringComparison.Ordinal);
        Assert.DoesNotContain(Told, Home.Given("home: {nation: england, kind: semi, built: 1954, business-use: yes}\nwish: {moves: [cutout, meter], reason: [room-needed], way: outside-cabinet}\n").Words("cover"), StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_of_a_works_day_are_listed_in_the_order_of_its_turns()
    {
        var home = Home.At("answers/avebury-close.yaml");
        var turns = home.Plan.Schedule.Meetings.Single(m => m.Meeting == "works-day").Turns.Select(t => t.Step).ToList();
        var sequence = home.Words("the-sequence");
        var titles = turns.Select(t => home.Plan.Steps.Single(s => s.Step.Item.Id == t).Step.Item.Title.Words);

        Assert.Equal(turns, home.Pages.Where(turns.Contains));
        Assert.Equal(titles.OrderBy(t => sequence.LastIndexOf(t + " ", StringComparison.Ordinal)), titles);
    }

    [Fact]
    public void What_must_be_done_before_the_works_day_is_never_put_after_it()
    {
        var plan = Home.At("answers/avebury-close.yaml").Plan;
        var (day, after) = (plan.Schedule.Meetings.Single(m => m.Meeting == "works-day").Turns[0].Step, Downstream(plan));
        var latest = plan.Steps.Single(s => s.Step.Item.Id == day).Dates!.LatestStart;

        Findings.AreNone(plan.Steps.Where(s => s.Step.Item.IsDuty && s.Dates is { } dates && !after.Contains(s.Step.Item.Id) && dates.LatestFinish > latest).Select(s => $"{s.Step.Item.Id} may be done on {s.Dates!.LatestFinish}, the day is {latest} at the latest"));
    }

    [Fact]
    public void No_day_to_book_by_lies_behind() =>
        Findings.AreNone(Impossible.Value.Pages.Where(p => Impossible.Value.Words(p) is var words && Enumerable.Range(1, 10).Any(m => words.Contains($"book by {m} October 2026", StringComparison.Ordinal) || words.Contains($"book by {m} November 2026", StringComparison.Ordinal))));

    // The steps of meetings, and all that come after one of them.
    private static HashSet<string> Downstream(Plan plan)
    {
        var found = plan.Steps.Where(s => s.Step.Item.Meeting is not null).Select(s => s.Step.Item.Id).ToHashSet(StringComparer.Ordinal);
        while (plan.Steps.FirstOrDefault(s => !found.Contains(s.Step.Item.Id) && s.Step.Item.After.Any(l => found.Contains(l.Step))) is { } next)
        {
            found.Add(next.Step.Item.Id);
        }

        return found;
    }

    [Fact]
    public void Past_the_last_day_for_which_holidays_are_known_the_sequence_says_so()
    {
        Assert.Contains("Holidays are known until 31 December 2028.", Home.Given(Common + "dates: {start-from: 2028-11-01}\n").Words("the-sequence"), StringComparison.Ordinal);
        Assert.DoesNotContain("Holidays are known until", Impossible.Value.Words("the-sequence"), StringComparison.Ordinal);
    }
}
