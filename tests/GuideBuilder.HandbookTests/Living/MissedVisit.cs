using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Living;

/// <summary>The first demo home three months on: the jointer came, the meter operator did not. The log is invented, as the home is.</summary>
public sealed class MissedVisit : IAsyncLifetime
{
    private readonly Folder _folder = new();

    /// <summary>The day after.</summary>
    public const string Today = "2027-02-25";

    private const string Log = """

        log:
          - {on: 2026-11-25, what: done, step: find-supply-number}
          - {on: 2026-11-25, what: done, step: photograph-intake}
          - {on: 2026-11-26, what: done, step: ask-operator}
          - {on: 2026-11-26, what: done, step: ask-supplier}
          - {on: 2026-12-01, what: done, step: tell-priority-register}
          - {on: 2026-12-03, what: done, step: operator-answers}
          - {on: 2026-12-04, what: done, step: supplier-answers}
          - {on: 2026-12-04, what: done, step: choose-electrician}
          - {on: 2026-12-05, what: done, step: check-position}
          - {on: 2026-12-07, what: applied, party: network-operator, reference: NW-4471, after-five: yes}
          - {on: 2026-12-14, what: surveyed, party: electrician}
          - {on: 2026-12-15, what: surveyed, party: network-operator}
          - {on: 2026-12-21, what: quoted, party: network-operator, amount: "£2,140 inc VAT", valid-until: 2027-03-21, reference: NW-4471}
          - {on: 2027-01-05, what: done, step: check-quotation}
          - {on: 2027-01-07, what: accepted, party: network-operator, reference: NW-4471}
          - {on: 2027-01-12, what: done, step: operator-first-contact}
          - {on: 2027-01-14, what: done, step: plan-for-failed-day}
          - {on: 2027-01-15, what: done, step: agree-works-day}
          - {on: 2027-01-15, what: date-given, step: day-joint, party: network-operator, date: 2027-02-24}
          - {on: 2027-01-15, what: date-given, step: day-meter, party: meter-operator, date: 2027-02-24}
          - {on: 2027-01-15, what: date-given, step: day-live-tests, party: electrician, date: 2027-02-24}
          - {on: 2027-01-18, what: done, step: tell-telecare}
          - {on: 2027-01-18, what: done, step: ask-key-holder}
          - {on: 2027-02-05, what: done, step: prepare-tails}
          - {on: 2027-02-15, what: done, step: hole-inspected}
          - {on: 2027-02-16, what: done, step: meter-operator-wait}
          - {on: 2027-02-16, what: done, step: operator-plans-works}
          - {on: 2027-02-18, what: done, step: eve-ring-round}
          - {on: 2027-02-24, what: done, step: day-joint}
          - {on: 2027-02-24, what: done, step: day-cutout}
          - {on: 2027-02-24, what: done, step: day-release-hole}
          - {on: 2027-02-24, what: missed, step: day-meter, party: meter-operator, note: Nobody came between 12 and 4.}
        """;

    /// <summary>The answers with the log, and with more of it where a test adds some.</summary>
    public static string Answers(string more = "") => File.ReadAllText(Repository.At("answers/" + Handbooks.Homes[0] + ".yaml")) + Log + "\n" + more;

    /// <summary>The path of a name in the folder that holds home.yaml and the handbook home.</summary>
    public string At(params string[] names) => _folder.At(names);

    /// <inheritdoc/>
    public async ValueTask InitializeAsync() => await BindAsync(_folder, "home");

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        _folder.Dispose();
        return default;
    }

    /// <summary>Binds it as of the day after, and says so where it does not bind.</summary>
    internal static async Task BindAsync(Folder folder, string to, string more = "")
    {
        var bound = await Tool.GuideBuilderAsync("bind", folder.Put(to + ".yaml", Answers(more)), "--to", folder.At(to), "--today", Today);
        Assert.True(bound.Exit == 0, bound.Errors);
    }
}
