using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Planning.Sequence;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Sequence;

public sealed class PropertyTests
{
    private static readonly int Times = Sizes.Of("properties");
    private static readonly Gen<Network> Networks = Gen.ULong.Select(seed => RandomNetwork.Of(seed));
    private static readonly Gen<Network> Mirrorable = Gen.ULong.Select(seed => RandomNetwork.Of(seed, mirrorable: true));

    [Fact]
    public void No_activity_starts_before_the_plan_or_its_bounds_or_on_a_closed_day() =>
        Networks.Sample(
            net =>
            {
                var forward = Sequencer.Forward(net, RandomNetwork.Start);
                return forward.Timings.Zip(net.Activities).All(p =>
                    p.First.Start >= RandomNetwork.Start && p.First.Start >= (p.Second.NotBefore ?? RandomNetwork.Start) && p.Second.Calendar.IsOpen(p.First.Start));
            },
            iter: Times);

    [Fact]
    public void With_finish_to_start_links_alone_a_longer_duration_moves_no_earliest_date_earlier() =>
        Gen.Select(Mirrorable, Gen.Int[0, 100], Gen.Int[1, 5]).Sample(
            (net, which, more) =>
            {
                var a = net.Activities[which % net.Activities.Length];
                var plain = net with { Maximals = [], Activities = [.. net.Activities.Select(x => x with { Group = null })] };
                var longer = plain with { Activities = [.. plain.Activities.Select(x => x.Id == a.Id ? x with { Days = x.Days + more } : x)] };
                var (before, after) = (Sequencer.Forward(plain, RandomNetwork.Start), Sequencer.Forward(longer, RandomNetwork.Start));
                return before.Timings.Zip(after.Timings).All(p => p.First.Start <= p.Second.Start && p.First.Finish <= p.Second.Finish);
            },
            iter: Times);

    [Fact]
    public void No_float_is_negative_in_a_plan_that_is_possible_and_free_float_is_never_more_than_total() =>
        Gen.Select(Networks, Gen.Int[0, 30]).Sample(
            (net, later) =>
            {
                var forward = Sequencer.Forward(net, RandomNetwork.Start);
                if (!forward.IsPossible)
                {
                    return true;
                }

                var floats = Sequencer.Floats(net, forward, Sequencer.Backward(net, forward, forward.Finish!.Value.PlusDays(later)));
                return floats.Activities.All(f => f.Free >= 0 && f.Total >= f.Free);
            },
            iter: Times);

    [Fact]
    public void Starting_on_the_last_safe_day_meets_the_deadline_and_a_day_later_does_not() =>
        Gen.Select(Networks, Gen.Int[0, 30]).Sample(
            (net, later) =>
            {
                var deadline = (Sequencer.Forward(net, RandomNetwork.Start).Finish ?? RandomNetwork.Start).PlusDays(later);
                var outcome = Sequencer.Solve(net, RandomNetwork.Start, deadline);
                return outcome.Verdict != Verdict.Met
                    || (Sequencer.Solve(net, outcome.LastSafeStart!.Value, deadline).Verdict == Verdict.Met
                        && Sequencer.Solve(net, outcome.LastSafeStart!.Value.PlusDays(1), deadline).Verdict != Verdict.Met);
            },
            iter: Times);

    [Fact]
    public void Latest_dates_are_the_mirror_image_of_earliest_ones() =>
        Mirrorable.Sample(
            net =>
            {
                var open = net with { Activities = [.. net.Activities.Select(a => a with { NotBefore = null, FinishBy = null })] };
                var end = RandomNetwork.Start.PlusDays(150);
                var mirrored = Sequencer.Forward(Mirror.Of(open, end), RandomNetwork.Start);
                if (mirrored.Finish is null || mirrored.Finish > end)
                {
                    return true;
                }

                var latest = Sequencer.Backward(open, Sequencer.Forward(open, RandomNetwork.Start), end);
                return latest.Spans.Zip(mirrored.Timings).All(p => p.First.Finish == Mirror.Day(p.Second.Start, end) && p.First.Start == Mirror.Day(p.Second.Finish, end));
            },
            iter: Times);

    [Fact]
    public void The_chain_that_decides_a_date_leads_back_without_a_gap() =>
        Networks.Sample(
            net =>
            {
                var chain = Sequencer.DrivingChain(Sequencer.Forward(net, RandomNetwork.Start));
                bool OnOneDay(string a, string b) => a == b || (GroupOf(net, a) is { } group && group == GroupOf(net, b));

                // A chain that comes back to a day goes on with what that day waits for outside it.
                bool Returns(string from) => chain.Any(t => OnOneDay(t.Id, from));
                bool Leads(string from, Timing to) => to.Driver.From is { } driver
                    && (driver == from || (Returns(driver) && net.Precedences.Any(p => p.From == from && OnOneDay(p.To, driver))));
                return chain.Zip(chain.Skip(1)).All(p => Leads(p.First.Id, p.Second) && p.Second.Driver.Free <= p.Second.Start)
                    && (chain.IsEmpty || chain[0].Driver.From is not { } first || Returns(first));
            },
            iter: Times);

    private static string? GroupOf(Network net, string id) => net.Activities.First(a => a.Id == id).Group;

    /// <summary>Time turned round at an end: followers become predecessors, and every calendar is read backwards.</summary>
    private static class Mirror
    {
        public static LocalDate Day(LocalDate day, LocalDate end) => RandomNetwork.Start.PlusDays(Period.DaysBetween(day, end));

        public static Network Of(Network net, LocalDate end) => new(
            [.. net.Activities.Select(a => a with { Calendar = Calendar(a.Calendar, end) })],
            [.. net.Precedences.Select(p => p with { From = p.To, To = p.From, LagCalendar = Calendar(p.LagCalendar, end) })],
            [.. net.Maximals.Select(m => new Maximal(m.Later, m.Earlier, m.Days, Calendar(m.Calendar, end)))]);

        /// <summary>Closed days stand for weekdays too, because the days of a week do not mirror onto themselves.</summary>
        private static WorkingCalendar Calendar(WorkingCalendar calendar, LocalDate end) => WorkingCalendar.EveryDay with
        {
            Id = calendar.Id,
            Closed = System.Collections.Frozen.FrozenSet.ToFrozenSet(
                Enumerable.Range(-400, 1800).Select(d => RandomNetwork.Start.PlusDays(d)).Where(d => !calendar.IsOpen(Day(d, end)))),
        };
    }
}
