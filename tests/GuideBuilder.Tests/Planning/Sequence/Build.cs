using System.Collections.Frozen;
using GuideBuilder.Model;
using GuideBuilder.Planning.Sequence;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Sequence;

/// <summary>Short forms for the networks of these tests.</summary>
internal static class Build
{
    public static readonly LocalDate Zero = new(2026, 3, 30);

    public static WorkingCalendar Every => WorkingCalendar.EveryDay;

    /// <summary>The public holidays of England and Wales in 2026. Source: Banking and Financial Dealings Act 1971, sch. 1 (read), with the substitutes of that year in a printed list (read).</summary>
    public static LocalDate[] English2026 { get; } =
        [new(2026, 1, 1), new(2026, 4, 3), new(2026, 4, 6), new(2026, 5, 4), new(2026, 5, 25), new(2026, 8, 31), new(2026, 12, 25), new(2026, 12, 28)];

    public static WorkingCalendar Week(string id, params IsoDayOfWeek[] days) =>
        new(id, (days.Length == 0 ? Enumerable.Range(1, 5).Select(d => (IsoDayOfWeek)d) : days).ToFrozenSet(), English2026.ToFrozenSet(), new(2026, 12, 31));

    public static Activity Does(string id, int days, WorkingCalendar? calendar = null, string? group = null, LocalDate? notBefore = null, LocalDate? finishBy = null) =>
        new(id, calendar ?? Every, days, notBefore, finishBy, null, null, group);

    public static Precedence After(string to, string from, int lag = 0, WorkingCalendar? of = null, bool sameDay = false) =>
        new(from, to, LinkKind.FinishToStart, lag, of ?? Every, sameDay);

    public static Precedence With(string to, string from, int lag = 0) => new(from, to, LinkKind.StartToStart, lag, Every, false);

    public static Network Of(IEnumerable<Activity> activities, IEnumerable<Precedence>? links = null, params Maximal[] maximals) =>
        new([.. activities], [.. links ?? []], [.. maximals]);
}
