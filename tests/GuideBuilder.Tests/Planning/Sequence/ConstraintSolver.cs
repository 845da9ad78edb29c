using Google.OrTools.Sat;
using GuideBuilder.Model;
using GuideBuilder.Planning.Sequence;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Sequence;

/// <summary>The same network put to a constraint solver: calendars as tables of allowed pairs, the least sum of starts for the earliest dates, the greatest for the latest.</summary>
internal sealed class ConstraintSolver
{
    private const int Days = 190;
    private readonly CpModel _model = new();
    private readonly Network _net;
    private readonly LocalDate _start;
    private readonly Dictionary<string, (IntVar Start, IntVar Finish)> _vars;

    private ConstraintSolver(Network net, LocalDate start, int end)
    {
        (_net, _start) = (net, start);
        _vars = net.Activities.ToDictionary(a => a.Id, a => (_model.NewIntVar(0, Days, "s"), _model.NewIntVar(0, Days, "e")));
        foreach (var a in net.Activities)
        {
            AddActivity(a, end);
        }

        foreach (var p in net.Precedences)
        {
            AddPrecedence(p);
        }

        foreach (var m in net.Maximals)
        {
            AddMaximal(m);
        }

        foreach (var pair in net.Activities.Where(a => a.Group is not null).Select(a => a.Id).Zip(net.Activities.Where(a => a.Group is not null).Select(a => a.Id).Skip(1)))
        {
            _model.Add(_vars[pair.First].Start == _vars[pair.Second].Start);
        }
    }

    /// <summary>Earliest starts, or null where the solver proves that there are none.</summary>
    public static LocalDate[]? Earliest(Network net, LocalDate start) => new ConstraintSolver(net, start, Days).Solve(true);

    /// <summary>Latest starts with which all is finished by an end, nothing starting before a start.</summary>
    public static LocalDate[]? Latest(Network net, LocalDate start, LocalDate end) => new ConstraintSolver(net, start, Period.DaysBetween(start, end) + 1).Solve(false);

    private void AddActivity(Activity a, int end)
    {
        var by = Math.Min(a.Days == 0 ? end - 1 : end, a.FinishBy is { } d ? Period.DaysBetween(_start, d) + (a.Days == 0 ? 0 : 1) : Days);
        var after = a.NotBefore is { } n ? Period.DaysBetween(_start, n) : 0;
        var pairs = _model.AddAllowedAssignments([_vars[a.Id].Start, _vars[a.Id].Finish]);
        foreach (var day in Enumerable.Range(0, Days).Where(x => x >= after && a.Calendar.IsOpen(_start.PlusDays(x))))
        {
            var finish = a.Days == 0 ? day : Period.DaysBetween(_start, a.Calendar.Add(_start.PlusDays(day), a.Days - 1)) + 1;
            if (finish <= by)
            {
                pairs.AddTuple([day, finish]);
            }
        }
    }

    private void AddPrecedence(Precedence p)
    {
        var (from, to) = (_net.Activities.Single(a => a.Id == p.From), _net.Activities.Single(a => a.Id == p.To));
        var sameDay = from.Days > 0 && (p.SameDay || (p.Lag == 0 && from.Group is not null && from.Group == to.Group));
        LinearExpr leaves = p.Kind == LinkKind.StartToStart ? _vars[p.From].Start : _vars[p.From].Finish - (sameDay ? 1 : 0);
        _model.Add(_vars[p.To].Start >= (p.Lag == 0 ? leaves : Shifted(leaves, p.LagCalendar, p.Lag)));
    }

    private void AddMaximal(Maximal m) => _model.Add(_vars[m.Later].Start <= Shifted(_vars[m.Earlier].Finish, m.Calendar, m.Days + 1) - 1);

    /// <summary>The boundary after so many open days from another, as a table.</summary>
    private IntVar Shifted(LinearExpr from, WorkingCalendar calendar, int openDays)
    {
        var (before, after) = (_model.NewIntVar(-1, Days, "b"), _model.NewIntVar(-1, Days + 400, "a"));
        _model.Add(before == from);
        var pairs = _model.AddAllowedAssignments([before, after]);
        for (var boundary = -1; boundary <= Days; boundary++)
        {
            var last = calendar.Add(_start.PlusDays(boundary - 1), openDays);
            pairs.AddTuple([boundary, Period.DaysBetween(_start, last) + 1]);
        }

        return after;
    }

    private LocalDate[]? Solve(bool least)
    {
        var sum = LinearExpr.Sum(_vars.Values.Select(v => v.Start));
        if (least)
        {
            _model.Minimize(sum);
        }
        else
        {
            _model.Maximize(sum);
        }

        var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1" };
        var status = solver.Solve(_model);
        Assert.Contains(status, new[] { CpSolverStatus.Optimal, CpSolverStatus.Infeasible });
        return status == CpSolverStatus.Infeasible ? null : [.. _net.Activities.Select(a => _start.PlusDays((int)solver.Value(_vars[a.Id].Start)))];
    }
}
