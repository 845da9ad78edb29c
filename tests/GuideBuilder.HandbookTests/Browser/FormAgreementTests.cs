using System.Text.Json;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>The page and the program say the same of the same answers: which question is asked, what an amount is, and how the file reads.</summary>
public sealed class FormAgreementTests(Chromium chromium, Questionnaire questionnaire)
{
    private const int Seed = 20261124;

    // What the page's script makes of a file: the standing of each question, and the file written again.
    private const string Judged = """
        text => {
          const data = JSON.parse(document.getElementById('questionnaire').textContent);
          const file = questionnaire.read(text);
          const answers = {};
          for (const section of file.sections.filter(s => data.isAsked[s.key])) {
            for (const entry of section.value.keys) {
              answers[section.key + '.' + entry.key] = entry.value.list ? { list: entry.value.list.map(i => i.value.one) } : entry.value;
            }
          }
          const standings = questionnaire.standings(data, answers);
          return { text: questionnaire.write(data, file), standings: data.questions.map(q => q.name + ' ' + standings[q.name].standing) };
        }
        """;

    private const string Vectors = """
        text => {
          const vectors = JSON.parse(text);
          const data = JSON.parse(document.getElementById('questionnaire').textContent);
          const byName = name => data.questions.find(q => q.name === name);
          const found = [];
          for (const vector of vectors.asked) {
            const answers = {};
            for (const [name, value] of Object.entries(vector.answers)) { answers[name] = Array.isArray(value) ? { list: value } : { one: value, own: false }; }
            const ask = byName(vector.question).ask;
            const asked = ask ? ['no', 'open', 'yes'][questionnaire.judge(ask, questionnaire.standings(data, answers))] : 'yes';
            if (asked !== vector.asked) { found.push(JSON.stringify(vector) + ' but ' + asked); }
          }
          for (const vector of vectors.amounts) {
            const answers = { [vector.question]: { one: vector.text, own: false }, 'people.medical-equipment': { one: 'yes', own: false } };
            const standing = questionnaire.standings(data, answers)[vector.question];
            const amount = standing.standing === 'known' ? String(Number(standing.value.over) / Number(standing.value.under)) : null;
            if (amount !== vector.amount) { found.push(JSON.stringify(vector) + ' but ' + amount); }
          }
          return found;
        }
        """;

    [Fact]
    public async Task The_page_agrees_with_the_shared_cases()
    {
        var (page, _) = await questionnaire.OpenAsync(chromium);
        var vectors = await File.ReadAllTextAsync(Repository.At("tests/GuideBuilder.Tests/Rendering/Questionnaire/vectors.json"), TestContext.Current.CancellationToken);

        Findings.AreNone(await page.EvaluateAsync<string[]>(Vectors, vectors));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_page_agrees_with_the_program_on_every_question_for_many_random_answer_sets()
    {
        var (page, _) = await questionnaire.OpenAsync(chromium);
        var random = new RandomAnswers(Seed);
        var standings = new Dictionary<Standing, int>();
        for (var set = 0; set < Sizes.Of("forms"); set++)
        {
            var answers = random.Next(Questionnaire.Guidance);
            var text = Questionnaire.Plain(answers);
            var (given, _) = AnswerReader.ReadSoFar(answers, Questionnaire.Guidance);
            foreach (var one in given.Values)
            {
                standings[one.Standing] = standings.GetValueOrDefault(one.Standing) + 1;
            }

            var judged = await page.EvaluateAsync<JsonElement>(Judged, text);

            Findings.AreNone(Questionnaire.Guidance.Questions.Select(q => $"{q.Name} {Word(given[q.Name].Standing)}")
                .Zip(judged.GetProperty("standings").EnumerateArray().Select(s => s.GetString()!), (ours, theirs) => (ours, theirs))
                .Where(p => p.ours != p.theirs).Select(p => $"set {set}: {p.ours}, in the page {p.theirs}"));
            Assert.Equal(text, judged.GetProperty("text").GetString());
        }

        Assert.All(Enum.GetValues<Standing>(), s => Assert.True(standings[s] > Sizes.Of("forms"), $"{s}: {standings.GetValueOrDefault(s)}"));
        await page.Context.CloseAsync();
    }

    public static TheoryData<string> Files =>
        [.. Directory.EnumerateFiles(Repository.At("answers"), "*.yaml").Concat(Directory.EnumerateFiles(Repository.At("tests/GuideBuilder.Tests/Situations"), "c?1.yaml")).Select(Repository.Short).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public async Task A_file_loaded_and_downloaded_again_says_the_same(string path)
    {
        var text = Questionnaire.Plain(path);
        var (page, heard) = await questionnaire.OpenAsync(chromium);
        await Questionnaire.LoadAsync(page, text);
        var made = await Questionnaire.DownloadAsync(page);
        await Questionnaire.LoadAsync(page, made);

        Assert.Equal(Questionnaire.Meaning(text), Questionnaire.Meaning(made));
        Assert.Equal(made, await Questionnaire.DownloadAsync(page));
        Assert.DoesNotContain(heard, h => !h.StartsWith("request: blob:", StringComparison.Ordinal));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Papers_log_and_comments_come_through_the_page()
    {
        const string Text = """
            # Ours.
            handbook: {format: 1, id: our-home}
            home: {nation: england}   # for sure
            wish: {moves: [meter]}
            papers: [{kind: quotation, from: network-operator, covers: [operator-alteration], amount: "£1,180 inc VAT"}]
            log: [{on: 2026-09-01, what: noted, note: "Rang: no answer"}]
            # Ring again.
            """;
        var plain = Questionnaire.Plain(AnswerReader.ReadWritten(new("home.yaml", System.Text.Encoding.UTF8.GetBytes(Text)), Questionnaire.Guidance).Value!);
        var (page, _) = await questionnaire.OpenAsync(chromium);

        await Questionnaire.LoadAsync(page, plain);

        Assert.Equal(plain, await Questionnaire.DownloadAsync(page));
        Assert.Contains("The file our-home.yaml is made.", await page.Locator("#told").TextContentAsync(), StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData("handbook:\n  format: 1\nhome: {nation: england}\n", 3)]
    [InlineData("handbook:\n  format: 1\nhome:\n  nation: 'england'\n", 4)]
    [InlineData("handbook:\n  format: 1\nwish:\n  detail: |\n    Free it\n", 4)]
    [InlineData("handbook:\n  format: 1\nhome:\n  nation: england # sure\n", 4)]
    [InlineData("handbook:\n  format: 1\nhome:\n    nation: england\n", 3)]
    [InlineData("handbook:\n  format: 1\nhome:\n  nation:\n", 4)]
    [InlineData("handbook:\n  format: 1\nhome:\n  nation: england\n  nation: wales\n", 5)]
    [InlineData("handbook:\n\tformat: 1\n", 1)]
    [InlineData("handbook:\n  format: 1\nhome:\n  nation: england\n  natoin: wales\n", 5)]
    [InlineData("handbook:\n  format: 1\nhome:\n  nation: atlantis\n", 4)]
    [InlineData("handbook:\n  format: 1\ngarden:\n  size: 4 m\n", 3)]
    [InlineData("handbook:\n  format: 1\nintake:\n  service: underground\nwish:\n  overhead-becomes: stays-overhead\n", 6)]
    [InlineData("- a\n", 1)]
    [InlineData("", 1)]
    public async Task A_file_that_the_page_does_not_read_is_told_its_line_and_changes_nothing(string text, int line)
    {
        var (page, _) = await questionnaire.OpenAsync(chromium);
        await Questionnaire.LoadAsync(page, text);

        Assert.Matches($"Line {line}\\b.*guidebuilder check", await page.Locator("#told").TextContentAsync());
        Assert.Equal(0, await page.Locator("input:checked").CountAsync());
        await page.Context.CloseAsync();
    }

    private static string Word(Standing standing) => standing switch
    {
        Standing.NotAsked => "not-asked",
        Standing.Unknown => "unknown",
        _ => "known",
    };
}
