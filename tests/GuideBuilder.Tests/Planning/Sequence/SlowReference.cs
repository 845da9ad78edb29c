using GuideBuilder.Model;
using GuideBuilder.Planning.Sequence;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Sequence;

/// <summary>Dates found as a patient person would: while any rule is broken, move the one start that must give by one day. Rules are checked on dates, by counting days one by one.</summary>
internal sealed class SlowReference
{
    private readonly Network _net;
    private readonly Dictionary<string, Activity> _byId;
    private readonly Dictionary<string, LocalDate> _starts;

    private SlowReference(Network net, LocalDate start)
    {
        _net = net;
        _byId = net.Activities.ToDictionary(a => a.Id);
        _starts = net.Activities.ToDictionary(a => a.Id, _ => start);
    }

    /// <summary>Earliest starts in the network's order, or null where none are found before a last day.</summary>
    public static LocalDate[]? Earliest(Network net, LocalDate start, LocalDate last)
    {
        var search = new SlowReference(net, start);
        while (search.TooEarly() is { } id)
        {
            search._starts[id] = search._starts[id].PlusDays(1);
            if (search._starts[id] > last)
            {
                return null;
            }
        }

        return net.Activities.All(a => a.FinishBy is null || search.LastDay(a.Id) <= a.FinishBy) ? search.Starts() : null;
    }

    /// <summary>Latest starts in the network's order with which all is finished by an end.</summary>
    public static LocalDate[] Latest(Network net, LocalDate end)
    {
        var search = new SlowReference(net, end);
        while (search.TooLate(end) is { } id)
        {
            search._starts[id] = search._starts[id].PlusDays(-1);
        }

        return search.Starts();
    }

    private LocalDate[] Starts() => [.. _net.Activities.Select(a => _starts[a.Id])];

    private string? TooEarly() =>
        _net.Activities.FirstOrDefault(a => !a.Calendar.IsOpen(_starts[a.Id]) || _starts[a.Id] < a.NotBefore)?.Id
        ?? _net.Precedences.FirstOrDefault(Broken)?.To
        ?? _net.Maximals.FirstOrDefault(Broken)?.Earlier
        ?? Apart()?.Earlier;

    private string? TooLate(LocalDate end) =>
        _net.Activities.FirstOrDefault(a => !a.Calendar.IsOpen(_starts[a.Id]) || LastDay(a.Id) > end || LastDay(a.Id) > a.FinishBy)?.Id
        ?? _net.Precedences.FirstOrDefault(Broken)?.From
        ?? _net.Maximals.FirstOrDefault(Broken)?.Later
        ?? Apart()?.Later;

    private (string Earlier, string Later)? Apart()
    {
        var members = _net.Activities.Where(a => a.Group is not null).Select(a => a.Id).OrderBy(id => _starts[id]).ToArray();
        return members.Length > 1 && _starts[members[0]] < _starts[members[^1]] ? (members[0], members[^1]) : null;
    }

    private bool Broken(Precedence p)
    {
        var grouped = _byId[p.From].Group is { } group && _byId[p.To].Group == group && p.Lag == 0;
        var moment = _byId[p.From].Days == 0;
        var waitsFrom = p.Kind == LinkKind.StartToStart || moment || p.SameDay || grouped ? 0 : 1;
        var from = (p.Kind == LinkKind.StartToStart ? _starts[p.From] : LastDay(p.From)).PlusDays(waitsFrom);
        return _starts[p.To] < from || OpenDays(p.LagCalendar, from, _starts[p.To]) < p.Lag;
    }

    private bool Broken(Maximal m) => OpenDays(m.Calendar, LastDay(m.Earlier).PlusDays(_byId[m.Earlier].Days == 0 ? 0 : 1), _starts[m.Later]) > m.Days;

    private LocalDate LastDay(string id)
    {
        var day = _starts[id];
        for (var left = _byId[id].Days - (_byId[id].Calendar.IsOpen(day) ? 1 : 0); left > 0; left -= _byId[id].Calendar.IsOpen(day) ? 1 : 0)
        {
            day = day.PlusDays(1);
        }

        return day;
    }

    /// <summary>Open days from one day up to, but not including, another.</summary>
    private static int OpenDays(WorkingCalendar calendar, LocalDate from, LocalDate to)
    {
        var count = 0;
        for (var day = from; day < to; day = day.PlusDays(1))
        {
            count += calendar.IsOpen(day) ? 1 : 0;
        }

        return count;
    }
}
