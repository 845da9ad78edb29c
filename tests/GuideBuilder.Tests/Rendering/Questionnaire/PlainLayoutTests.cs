using System.Text.RegularExpressions;
using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Rendering.Questionnaire;
using GuideBuilder.Tests.Support;
using Written = GuideBuilder.Model.Written;

namespace GuideBuilder.Tests.Rendering.Questionnaire;

/// <summary>An answers file put into the plain layout says what it said, with every comment, in lines that a small reader can read.</summary>
public sealed partial class PlainLayoutTests
{
    private const string Odd = "\n\t\r'\"\\#:- £Ω²日";

    public static TheoryData<string> Files => [.. AnswersFiles.Paths];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_rewritten_file_means_the_same(string path)
    {
        var file = AnswersFiles.Load(path);

        Assert.Equal(AnswersFiles.Meaning(file), AnswersFiles.Meaning(Rewritten(file)));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_rewritten_file_is_in_the_plain_layout_and_stays_as_it_is(string path)
    {
        var once = Rewritten(AnswersFiles.Load(path));

        Findings.AreNone(AnswersFiles.Text(once).Split('\n')[..^1].Where(line => !Line().IsMatch(line)));
        Assert.Equal(AnswersFiles.Text(once), AnswersFiles.Text(Rewritten(once)));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void No_comment_is_lost(string path)
    {
        var file = AnswersFiles.Load(path);
        var kept = Comments(Rewritten(file)).ToList();

        Findings.AreNone(Comments(file).Where(c => !kept.Remove(c)));
    }

    [Fact]
    public void The_second_home_reads_well_by_hand() =>
        Golden.Matches("Questionnaire/mostly-unknown.yaml", AnswersFiles.Text(Rewritten(AnswersFiles.Load("answers/mostly-unknown.yaml"))));

    [Fact]
    public void Comments_go_with_their_keys_and_every_form_becomes_plain() => Golden.Matches("Questionnaire/rewritten.yaml", AnswersFiles.Text(Rewritten(AnswersFiles.Of("""
        # yaml-language-server: $schema=answers.json
        #
        #   Set in.

        log:   # kept by hand
          - {on: 2026-09-01, what: applied, party: network-operator, reference: 0012}   # by post
          # They rang back.
          - on: 2026-09-20
            # On the telephone.
            what: noted
            note: |
              First line: yes
              second # line
        handbook: {format: 1, id: home, filled-in-by: "unknown"}
        wish:   # as agreed
          detail: 'It''s "free"'
          moves:
            # The block goes.
            - cutout   # for sure
            - meter
          reason: none
        papers: []
        # The home.
        home: {nation: england,   # not Wales
          built: 1,954}
        dates:
          away: [2026-12-23 to 2027-01-03, 2027-02-01]
        # Ring again in May.
        """.Replace("1,954", "1954", StringComparison.Ordinal)))));

    [Theory]
    [InlineData("unknown")]
    [InlineData("null")]
    [InlineData("~")]
    [InlineData("yes: no")]
    [InlineData("a # b")]
    [InlineData("- a")]
    [InlineData("say \"when\" \\ or not")]
    [InlineData("two\nlines\n\nand a third")]
    [InlineData(" spaces around ")]
    [InlineData("{[*&!|>@`%")]
    [InlineData("Ünïcode £5 ½ 日本 🏠")]
    public void A_persons_words_come_back_as_they_were(string words) => ComesBack(words);

    [Fact]
    public void Any_words_come_back_as_they_were() =>
        Gen.OneOf(Gen.Char[' ', '~'], Gen.Char['\u00A1', '\u024F'], Gen.Int[0, Odd.Length - 1].Select(at => Odd[at]))
            .Array[1, 60].Select(c => new string(c).TrimEnd('\n')).Where(words => words.Length > 0)
            .Sample(ComesBack, iter: Sizes.Of("escaping"));

    private static void ComesBack(string words)
    {
        var keys = new Written.Keys([new("detail", new Written.One(words, Quoted: true), []), new("moves", new Written.One("none", Quoted: false), [])]);
        var home = new Written.Keys([new("nation", new Written.One("england", Quoted: false), [])]);
        var handbook = new Written.Keys([new("format", new Written.One("1", Quoted: false), [])]);
        var file = PlainLayout.Write(new([], [new("handbook", handbook, []), new("home", home, []), new("wish", keys, [])], []), Content.Guidance, "home.yaml").Value!;

        Assert.Equal(new Value.Words(words), AnswersFiles.Read(file)["wish.detail"].Value);
    }

    private static SourceText Rewritten(SourceText file)
    {
        var plain = AnswerReader.ReadWritten(file, Content.Guidance).Then(written => PlainLayout.Write(written, Content.Guidance, file.Path));
        return plain.Value ?? throw new InvalidOperationException(string.Join('\n', plain.Faults));
    }

    private static IEnumerable<string> Comments(SourceText file) => YamlText.Comments(file, Budget.Answers).Select(c => c.Words);

    [GeneratedRegex(@"\A( *#.*|(  )*(- )?([a-z0-9-]+:|[a-z0-9-]+: ("".*""|[^""'\[\]{}#:|>]+)|"".*""|[^""'\[\]{}#:|>]+))?\z")]
    private static partial Regex Line();
}
