using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cli.Asking;

/// <summary>The questionnaire in the terminal, driven by lines.</summary>
public sealed class InterviewTests
{
    private static readonly Question Kind = Content.Guidance.Questions.Single(q => q.Name == "home.kind");

    [Theory]
    [InlineData("answers/mostly-unknown.yaml")]
    [InlineData("answers/avebury-close.yaml")]
    public void Typing_the_answers_of_a_home_gives_a_file_that_says_the_same(string path)
    {
        var file = AnswersFiles.Load(path);
        var session = Session.Of(Session.LinesFor(file));

        Assert.Equal(AnswersFiles.Meaning(file).Skip(1), AnswersFiles.Meaning(session.Saved!).Skip(1));
        Assert.True(session.Filling.CanBeBound);
        Assert.NotEmpty(Home.Of(session.Saved!).Plan.Steps);
    }

    [Fact]
    public void Going_on_with_a_file_loses_nothing_of_it()
    {
        var file = AnswersFiles.Of("""
            # Ours.
            handbook: {format: 1, id: our-home, filled-in-by: Jo}
            home: {nation: wales}   # really
            wish: {moves: [meter], detail: As before}
            log: [{on: 2026-09-01, what: noted, note: Rang.}]
            """);
        var session = Session.From(file, Session.GoTo(file, "home.business-use"), "no", "later");
        var saved = AnswersFiles.Text(session.Saved!);

        Assert.Equal(AnswersFiles.Meaning(file).Select(l => l.Replace("home.business-use Unknown ", "home.business-use Known no", StringComparison.Ordinal)), AnswersFiles.Meaning(session.Saved!));
        Assert.Contains("# Ours.", saved, StringComparison.Ordinal);
        Assert.Contains("# really", saved, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_begun_can_be_gone_on_with_before_the_wish_is_answered()
    {
        var begun = Session.Of("england", "later").Saved!;

        Assert.Equal("semi", ((Value.Option)Session.From(begun, "semi", "later").Filling.AnswerTo(Kind)!.Value!).Id);
    }

    [Fact]
    public void The_end_of_the_input_saves_what_was_answered()
    {
        var session = Session.Of("scotland", "detached");

        Assert.Contains("  kind: detached\n", AnswersFiles.Text(session.Saved!), StringComparison.Ordinal);
        Assert.False(session.Filling.CanBeBound);
        Assert.EndsWith("Answered: 2. Not known: 0. Left for later: " + Left(session) + ". Saved in home.yaml.\n", session.Shown, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_answer_nothing_is_saved() => Assert.Null(Session.Of("", "section", "later").Saved);

    [Theory]
    [InlineData("2", "semi")]
    [InlineData("semi", "semi")]
    [InlineData("A semi-detached house", "semi")]
    [InlineData(" SEMI ", "semi")]
    [InlineData("0", null)]
    [InlineData("don't know", null)]
    [InlineData("I don’t know", null)]
    public void A_choice_is_made_by_number_or_by_words(string line, string? option)
    {
        var answer = Session.Of("england", line, "later").Filling.AnswerTo(Kind)!;

        Assert.Equal(option, (answer.Value as Value.Option)?.Id);
        Assert.Equal(option is null ? Standing.Unknown : Standing.Known, answer.Standing);
    }

    [Theory]
    [InlineData("castle", "Type a number from 0 to 11, or the words beside it.")]
    [InlineData("semy", "Did you mean 2, A semi-detached house?")]
    [InlineData("12", "Type a number from 0 to 11.")]
    public void A_wrong_line_is_told_what_would_be_right_and_the_question_stays(string line, string right)
    {
        var session = Session.Of("england", line, "semi", "later");

        Assert.Contains(right, session.Shown, StringComparison.Ordinal);
        Assert.Equal("semi", ((Value.Option)session.Filling.AnswerTo(Kind)!.Value!).Id);
    }

    [Fact]
    public void The_nation_is_the_one_question_that_needs_an_answer()
    {
        var session = Session.Of("0", "wales", "later");

        Assert.Contains("the one question that needs an answer", session.Shown, StringComparison.Ordinal);
        Assert.Contains("  nation: wales\n", AnswersFiles.Text(session.Saved!), StringComparison.Ordinal);
    }

    [Fact]
    public void One_can_go_back_forward_and_to_any_question_of_the_section()
    {
        var session = Session.Of("england", "semi", "back", "back", "", "terrace", "go 3", "1954", "back", "1960", "section", "2", "flat", "later");

        Assert.Contains("  kind: flat\n", AnswersFiles.Text(session.Saved!), StringComparison.Ordinal);
        Assert.Contains("  built: 1960\n", AnswersFiles.Text(session.Saved!), StringComparison.Ordinal);
    }

    [Fact]
    public void Next_is_the_next_question_and_back_from_the_end_leads_to_where_one_was()
    {
        var next = Session.Of("england", "next", "1954", "later");
        var back = Session.Of("england", "section", "back", "flat", "later");

        Assert.Contains("  built: 1954\n", AnswersFiles.Text(next.Saved!), StringComparison.Ordinal);
        Assert.Contains("  kind: flat\n", AnswersFiles.Text(back.Saved!), StringComparison.Ordinal);
        Assert.Contains("of its questions have no answer yet.", back.Shown, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_changes_only_where_the_range_stays_as_well()
    {
        var shown = Session.Of("england", "semi", "1954", "owner", "later").Shown;
        var lines = shown.Split('\n').Where(l => l.Contains("Roughly from", StringComparison.Ordinal)).ToList();

        Assert.True(lines.Count >= 3);
        for (var i = 1; i < lines.Count; i++)
        {
            var moved = lines[i][lines[i].IndexOf("Roughly", StringComparison.Ordinal)..] != lines[i - 1][lines[i - 1].IndexOf("Roughly", StringComparison.Ordinal)..];
            Assert.Equal(moved, lines[i].Contains("moves the range", StringComparison.Ordinal));
            Assert.False(moved && lines[i].Contains("nothing in the plan", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_question_that_no_longer_matters_leaves_the_file_and_comes_back_with_its_answer()
    {
        var file = AnswersFiles.Of("handbook: {format: 1, id: home}\nhome: {nation: england}\nintake: {service: overhead}\nwish: {moves: none, overhead-becomes: stays-overhead}\n");
        var service = Session.GoTo(file, "intake.service");
        var away = Session.From(file, "section", "", "section", "", service, "underground", "later");
        var back = Session.From(file, "section", "", "section", "", service, "underground", "back", "overhead", "later");

        Assert.Contains("Not asked any longer, and left out of the file: What the overhead line becomes.", away.Shown, StringComparison.Ordinal);
        Assert.DoesNotContain("overhead-becomes", AnswersFiles.Text(away.Saved!), StringComparison.Ordinal);
        Assert.Equal(AnswersFiles.Meaning(file), AnswersFiles.Meaning(back.Saved!));
    }

    [Fact]
    public void Only_questions_that_matter_are_asked()
    {
        var session = Session.From(AnswersFiles.Of("handbook: {format: 1, id: home}\nhome: {nation: england}\nmeter: {kind: credit}\nwish: {moves: none}\nplace: {near: none}\n"), "later");

        Assert.DoesNotContain("gas-distance", session.Filling.Asked("place").Select(q => q.Id));
        Assert.DoesNotContain("hub-distance", session.Filling.Asked("place").Select(q => q.Id));
    }

    [Fact]
    public void An_answer_that_changes_something_says_what()
    {
        var session = Session.From(AnswersFiles.Load("answers/mostly-unknown.yaml"), Session.GoTo(AnswersFiles.Load("answers/mostly-unknown.yaml"), "home.tenure"), "owner", "later");

        Assert.Matches("What this changes: (?!nothing).*rules out .*Items still open: [0-9]+\\. Roughly from £[0-9,]+ to £[0-9,]+, done from 20", session.Shown);
    }

    [Fact]
    public void Every_question_shows_what_it_decides_how_to_find_out_and_that_one_may_not_know()
    {
        var shown = Session.Of(Enumerable.Repeat("", 400)).Shown;

        foreach (var question in Content.Guidance.Questions.Where(q => shown.Contains(q.Wording.Words, StringComparison.Ordinal)))
        {
            Assert.Contains($"What it decides: {question.WhatItDecides.Words}", shown, StringComparison.Ordinal);
            Assert.Contains($"How to find out: {question.HowToFindOut.Words}", shown, StringComparison.Ordinal);
        }

        var asked = shown.Split("\nAnswer: ").SkipLast(1).ToList();
        Assert.True(asked.Count > 150);
        Assert.All(asked, part => Assert.Matches("(0  I don't know|don't know\\.)", part));
    }

    [Fact]
    public void The_words_of_commands_can_be_answers_between_quotes()
    {
        var detail = Content.Guidance.Questions.Single(q => q.Name == "people.name");
        var asked = Session.Of("england", "section", "").Filling.Asked("people");
        var session = Session.Of("england", "section", "", $"go {asked.IndexOf(detail) + 1}", "\"back\"", "later");

        Assert.Equal(new Value.Words("back"), session.Filling.AnswerTo(detail)!.Value);
    }

    [Fact]
    public void A_character_that_no_file_may_hold_is_refused()
    {
        var session = Session.Of("england", "section", "", "go 1", "a\u202Eb", "later");

        Assert.Contains("U+202E", session.Shown, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_typed_is_said_back_without_its_control_characters()
    {
        var session = Session.Of("england", "\u001B[2Jcastle", "later");

        Assert.Contains("[2Jcastle", session.Shown, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001B', session.Shown);
    }

    private static int Left(Session session) => session.Filling.Sections.Sum(s => session.Filling.Asked(s).Length) - 2;
}
