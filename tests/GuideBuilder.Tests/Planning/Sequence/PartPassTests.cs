using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Sequence;

namespace GuideBuilder.Tests.Planning.Sequence;

public sealed class PartPassTests
{
    [Fact]
    public void A_part_of_a_network_is_dated_as_if_it_had_been_compiled_by_itself()
    {
        var compared = 0;
        for (var seed = 1UL; seed <= 400; seed++)
        {
            var network = RandomNetwork.Of(seed);
            var horizon = new Horizon(RandomNetwork.Start);
            var whole = Sequencer.Compile(network, horizon);
            var parts = new PartNetwork(whole);
            var pass = new PartPass(parts);
            var draws = new Xoshiro256(seed);
            for (var part = 0; part < 8; part++)
            {
                var present = network.Activities.Select(_ => draws.NextDraw() % 3 > 0).ToArray();
                compared += Compare(pass, parts, Bridged(network, present), present, horizon) ? 1 : 0;
            }
        }

        Assert.True(compared > 2000);
    }

    // Whether both have dates; that they agree is asserted.
    private static bool Compare(PartPass pass, PartNetwork parts, Network alone, bool[] present, Horizon horizon)
    {
        var own = Sequencer.Compile(alone, horizon);
        var (starts, finishes, drivers) = (new int[own.Count], new int[own.Count], new int[own.Cells.Count]);
        var found = ForwardPass.Run(own, own.Days, starts, finishes, drivers) < 0;

        pass.Take(parts, present);
        Assert.Equal(found, pass.Run(parts.Whole.Days, mayYield: false));
        var places = Enumerable.Range(0, present.Length).Where(i => present[i]).ToArray();
        if (found)
        {
            Assert.Equal(starts, places.Select(i => pass.Starts[i]));
            Assert.Equal(finishes, places.Select(i => pass.Finishes[i]));
            Assert.Equal(own.Network.Activities.Select(a => Cause(own, own.IndexOf(a.Id), drivers)), places.Select(i => pass.DriverOf(i) is >= 0 and var driver ? parts.Whole.Id(driver) : null));
        }

        return found;
    }

    private static string? Cause(CompiledNetwork net, int activity, int[] drivers) =>
        drivers[net.Cells.Of[activity]] is >= 0 and var driver ? net.Id(net.Bounds[driver].From) : null;

    // A link to what is left out leads on to what that comes after, without waits.
    private static Network Bridged(Network network, bool[] present)
    {
        var ids = network.Activities.Where((_, i) => present[i]).Select(a => a.Id).ToHashSet();
        IEnumerable<Precedence> Into(string id) => network.Precedences.Where(p => p.To == id);
        IEnumerable<Precedence> Behind(string id) => Into(id).SelectMany(p => ids.Contains(p.From) ? [p with { Lag = 0, LagCalendar = WorkingCalendar.EveryDay, SameDay = false }] : Behind(p.From)).Distinct();
        return new(
            [.. network.Activities.Where(a => ids.Contains(a.Id))],
            [.. network.Activities.Where(a => ids.Contains(a.Id)).SelectMany(a => Into(a.Id).SelectMany(p => ids.Contains(p.From) ? [p] : Behind(p.From).Select(b => b with { To = a.Id })).Distinct())],
            [.. network.Maximals.Where(m => ids.Contains(m.Earlier) && ids.Contains(m.Later))]);
    }
}
