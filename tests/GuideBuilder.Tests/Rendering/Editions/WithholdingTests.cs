using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering.Editions;

/// <summary>An edition is planned on every answer, so that a firm comes on the household's day, and no item, reason or question of it tells an answer that it may not print.</summary>
public sealed class WithholdingTests
{
    private static readonly string[] Reach = ["people.cannot-reach", "meter.reach-fixed"];

    public static TheoryData<EditionKind> Parts => [EditionKind.Neighbour, EditionKind.Customer];

    private static AnswerSet Demo => Support.Editions.Demo;

    [Fact]
    public void A_firm_has_the_days_the_sums_and_the_way_of_the_household()
    {
        var (firm, household) = (Support.Editions.Plan(Demo, EditionKind.Customer), Planned(Demo, Support.Editions.Imprinted));

        Assert.Equal(household.ChosenWay.Item.Id, firm.ChosenWay.Item.Id);
        Assert.Equal(household.Schedule.Finish, firm.Schedule.Finish);
        Assert.Equal(household.Money, firm.Money);
        Assert.Equal(household.Schedule.Meetings.Select(m => (m.Meeting, m.Day)), firm.Schedule.Meetings.Select(m => (m.Meeting, m.Day)));
        Findings.AreNone(firm.Steps.Where(s => s.Dates is { } d && d.EarliestStart != household.Steps.Single(o => o.Step.Item.Id == s.Step.Item.Id).Dates!.EarliestStart).Select(s => s.Step.Item.Id));
    }

    [Theory]
    [InlineData("no")]
    [InlineData("yes")]
    public void The_works_day_is_held_for_a_firm_where_it_is_held_for_the_household(string depends)
    {
        var home = Demo.With(q => q.Name == "people.medical-equipment", _ => new Value.Option(depends));
        var (firm, household) = (Support.Editions.Plan(home, EditionKind.Customer), Planned(home, Support.Editions.Imprinted));

        Assert.Equal(depends == "yes", firm.Schedule.Meetings.Any(m => m.IsHeld));
        Assert.Equal(household.Schedule.Meetings.Select(m => m.IsHeld), firm.Schedule.Meetings.Select(m => m.IsHeld));
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Each_item_is_told_alike_whatever_is_answered_to_a_question_that_is_withheld(EditionKind edition)
    {
        var before = Told(Demo, edition);
        var withheld = Content.Guidance.Questions.Where(q => !Disclosure.Most(edition).Contains(q.Data)).ToList();

        Assert.Equal(12, withheld.Count);
        Findings.AreNone(
            from question in withheld
            where !Reach.Contains(question.Name)
            from value in Values(question)
            let changed = Told(Demo.Answered(question, value), edition)
            from line in changed.Except(before).Concat(before.Except(changed))
            select $"{question.Name}: {line}");
    }

    [Fact]
    public void No_sum_and_no_paper_depends_on_an_answer_that_is_withheld()
    {
        var firm = Support.Editions.Plan(Demo, EditionKind.Customer);
        var (ours, others) = (Support.Editions.Plan(Demo.Without(Demo.Withheld(EditionKind.Customer)), EditionKind.Customer), firm);

        Assert.Equal(others.Costs.Select(c => (c.Cost.Item.Id, c.Cost.State)), ours.Costs.Select(c => (c.Cost.Item.Id, c.Cost.State)));
        Assert.Equal(others.Consents.Select(c => (c.Item.Id, c.State)), ours.Consents.Select(c => (c.Item.Id, c.State)));
    }

    [Fact]
    public void Of_what_was_taken_an_edition_names_only_what_it_may_print_and_what_is_taken()
    {
        var told = Support.Editions.Plan(Demo, EditionKind.Customer);

        Findings.AreNone(told.Assumptions.Where(a => a.Question.Data is DataClass.Health or DataClass.Absence).Select(a => a.Question.Name));
        Assert.Contains(told.Assumptions, a => !a.Brings.IsEmpty);
        Findings.AreNone(told.Assumptions.SelectMany(a => a.Brings).Where(i => !told.Steps.Any(s => s.Step.Item.Id == i.Id && s.Dates is not null) && !told.Costs.Any(c => c.Cost.Item.Id == i.Id && c.Added)).Select(i => i.Id).Distinct());
    }

    // Everything of a plan that could be told in words, without days and sums.
    private static HashSet<string> Told(AnswerSet answers, EditionKind edition)
    {
        var plan = Support.Editions.Plan(answers, edition);
        return
        [
            .. plan.Parties.Select(One), .. plan.Steps.Select(s => One(s.Step) + (s.Dates is null ? "" : ", dated")), .. plan.Costs.Select(c => One(c.Cost) + (c.Added ? ", added" : "")),
            .. plan.Hazards.Select(h => One(h.Hazard) + ", " + string.Join(' ', h.Ways)), .. plan.Consents.Select(One), .. plan.Clocks.Select(One), .. plan.Ways.Select(w => One(w.Way)),
            .. plan.OpenQuestions.Select(q => $"open {q.Question.Name}: {string.Join(' ', q.WouldSettle.Select(i => i.Id))}"),
            .. plan.FindOutFirst.Select(f => $"find out {f.Question.Name}: {string.Join(' ', f.Rows.SelectMany(r => r.Changes).Select(c => c.Item.Id + c.State))}"),
            .. plan.Assumptions.Select(a => $"taken {a.Question.Name}"), .. plan.Idle.Select(q => $"idle {q.Name}"), .. plan.Whereabouts.Gates.Select(g => $"gate {g.Step} {g.State}"),
            .. plan.Whereabouts.Next.Select(n => $"next {n.Step}"), .. plan.Answers.ByName.Values.Select(g => $"{g.Name} {g.Standing} {g.Value}"),
        ];
    }

    private static string One<T>(Planned<T> planned)
        where T : Rule => $"{planned.Item.Head.Id}: {planned.State} for {string.Join(' ', planned.Because.Deciding.Select(l => l.Given.Name + l.Given.Standing))}";

    private static IEnumerable<Value> Values(Question question) => question.Options.IsEmpty
        ? question.Kind == QuestionKind.YesNo ? [new Value.Option("yes"), new Value.Option("no")] : [Demo.Other(question)]
        : question.Options.Select(o => new Value.Option(o.Id));

    private static Plan Planned(AnswerSet answers, Guidance guidance) =>
        FactDeriver.Derive(answers, guidance).Then(f => Planner.Plan(f, guidance, new(Home.Today, Occasion.DefaultSeed, EditionKind.Householder), new(20, 20, -1))).Value!;
}
