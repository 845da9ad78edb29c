using System.Text;
using System.Text.Json;
using AngleSharp.Html.Parser;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Living;

/// <summary>The file of dates, read by a reader of calendars that is not our own.</summary>
public sealed class CalendarTests(Handbooks handbooks, MissedVisit missed) : IClassFixture<MissedVisit>
{
    private const string Reader = """
        const ical = require('ical.js');
        const root = new (ical.Component || ical.default.Component)((ical.parse || ical.default.parse)(require('fs').readFileSync(process.argv[1], 'utf8')));
        console.log(JSON.stringify(root.getAllSubcomponents('vevent').map(e => ({
          uid: e.getFirstPropertyValue('uid'), start: String(e.getFirstPropertyValue('dtstart')), end: String(e.getFirstPropertyValue('dtend')),
          stamp: String(e.getFirstPropertyValue('dtstamp')), summary: e.getFirstPropertyValue('summary'), sequence: e.hasProperty('sequence'),
          alarms: e.getAllSubcomponents('valarm').map(a => a.getFirstPropertyValue('action') + ' ' + a.getFirstPropertyValue('trigger'))}))));
        """;

    [Fact]
    public async Task Another_reader_finds_each_event_with_its_day_its_stamp_and_its_alarm()
    {
        var events = await EventsAsync(Path.Combine(handbooks.Of(Handbooks.Homes[0]), "dates.ics"));

        Assert.NotEmpty(events);
        Assert.Equal(events.Count, events.Select(e => e.Uid).Distinct().Count());
        Assert.All(events, e => Assert.StartsWith(Handbooks.Homes[0] + "-", e.Uid, StringComparison.Ordinal));
        Assert.All(events, e => Assert.Equal((Handbooks.Today + "T00:00:00Z", false), (e.Stamp, e.Sequence)));
        Assert.All(events, e => Assert.Equal(DateOnly.Parse(e.Start).AddDays(1), DateOnly.Parse(e.End)));
        Assert.All(events, e => Assert.Matches("^DISPLAY -P[0-9]+[DW]$", Assert.Single(e.Alarms)));
        Assert.Contains(events, e => e.Uid.Contains("-works-day@", StringComparison.Ordinal) && e.Summary == "The works day: planned, not booked");
        Assert.Contains(events, e => e.Uid.Contains("-send-application@", StringComparison.Ordinal));
    }

    [Fact]
    public void No_medical_fact_and_no_absence_stands_in_it()
    {
        var text = File.ReadAllText(Path.Combine(handbooks.Of(Handbooks.Homes[0]), "dates.ics")).Replace("\r\n ", "", StringComparison.Ordinal);

        Assert.All(["tell-priority-register", "tell-telecare", "settle-reach", "telecare", "stairlift", "medic", "away"], word => Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Lines_end_and_fold_as_the_standard_asks()
    {
        var text = File.ReadAllText(Path.Combine(handbooks.Of(Handbooks.Homes[0]), "dates.ics"));

        Assert.DoesNotContain("\n", text.Replace("\r\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.All(text.Split("\r\n"), line => Assert.True(Encoding.UTF8.GetByteCount(line) <= 75, line));
        Assert.Contains(@"planned\, not booked", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_handbook_links_to_it()
    {
        var page = new HtmlParser().ParseDocument(File.ReadAllText(Path.Combine(handbooks.Of(Handbooks.Homes[0]), "how-this-was-worked-out.html")));

        Assert.Contains(page.QuerySelectorAll("a"), a => a.GetAttribute("href") == "dates.ics");
    }

    [Fact]
    public async Task Binding_again_on_one_day_changes_only_the_events_whose_dates_changed()
    {
        using var folder = new Folder();
        await MissedVisit.BindAsync(folder, "done", "  - {on: 2027-02-25, what: done, step: clear-access}\n");
        await MissedVisit.BindAsync(folder, "given", "  - {on: 2027-02-25, what: date-given, step: day-meter, party: meter-operator, date: 2027-03-16}\n");
        var (before, done, given) = (Blocks(missed.At("home", "dates.ics")), Blocks(folder.At("done", "dates.ics")), Blocks(folder.At("given", "dates.ics")));

        Assert.Equal(["avebury-close-clear-access@guidebuilder.invalid"], before.Keys.Except(done.Keys));
        Assert.All(done, e => Assert.Equal(before[e.Key], e.Value));
        Assert.All(given.Where(e => before[e.Key] != e.Value), e => Assert.NotEqual(DayOf(before[e.Key]), DayOf(e.Value)));
        Assert.Contains("STATUS:CONFIRMED", given["avebury-close-works-day@guidebuilder.invalid"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_late_already_is_to_be_done_today_and_nothing_lies_behind()
    {
        using var folder = new Folder();
        var late = File.ReadAllText(Repository.At("answers/" + Handbooks.Homes[0] + ".yaml")).Replace("2027-03-15", "2026-12-18", StringComparison.Ordinal);
        var bound = await Tool.GuideBuilderAsync("bind", folder.Put("late.yaml", late), "--to", folder.At("late"), "--today", Handbooks.Today);
        var days = Blocks(folder.At("late", "dates.ics")).Select(e => DayOf(e.Value)[^8..]).ToList();

        Assert.True(bound.Exit == 0, bound.Errors);
        Assert.Equal(Handbooks.Today.Replace("-", "", StringComparison.Ordinal), days.Min(StringComparer.Ordinal));
    }

    private static Dictionary<string, string> Blocks(string file) =>
        File.ReadAllText(file).Split("BEGIN:VEVENT").Skip(1).ToDictionary(e => e.Split("\r\n").Single(l => l.StartsWith("UID:", StringComparison.Ordinal))[4..], StringComparer.Ordinal);

    private static string DayOf(string block) => block.Split("\r\n").Single(l => l.StartsWith("DTSTART", StringComparison.Ordinal));

    private static async Task<List<Event>> EventsAsync(string file)
    {
        var modules = Repository.At("artifacts/npm/node_modules");
        Assert.SkipUnless(Directory.Exists(Path.Combine(modules, "ical.js")) && File.Exists("/usr/bin/node"), "no Node or no ical.js is installed");
        var read = await Tool.RunWithAsync(new() { ["NODE_PATH"] = modules }, "/usr/bin/node", "-e", Reader, file);
        Assert.True(read.Exit == 0, read.Errors);
        return JsonSerializer.Deserialize<List<Event>>(read.Output, JsonSerializerOptions.Web)!;
    }

    private sealed record Event(string Uid, string Start, string End, string Stamp, string Summary, bool Sequence, string[] Alarms);
}
