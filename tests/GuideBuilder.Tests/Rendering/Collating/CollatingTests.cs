using System.Collections.Immutable;
using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Collating;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Rendering.Collating;

public sealed class CollatingTests
{
    private static readonly LocalDate Today = new(2026, 11, 24);

    public static TheoryData<string> Deeds =>
    [
        "Open the cutout and look inside.", "You may lift the meter a little.", "Then pull the main fuse.", "You can cut the seal yourself.", "Tighten the tails with a spanner.", "The household may touch the cable.",
    ];

    public static TheoryData<string> Claims => ["This hole is safe.", "Our work is guaranteed.", "The cable is approved.", "It can be done safely."];

    [Theory]
    [MemberData(nameof(Deeds))]
    public void A_household_that_is_told_to_do_it_is_found_in_guidance_and_imprint(string sentence)
    {
        Assert.Contains(InPage(sentence), f => f is { Kind: "household-as-doer", Severity: Severity.Error });
        Assert.Contains(InImprint(sentence), f => f is { Kind: "household-as-doer", Severity: Severity.Error });
    }

    [Theory]
    [InlineData("I will open the cutout before you come.")]
    [InlineData("We can cut the seal ourselves.")]
    public void It_is_found_in_letters_where_the_writer_is_the_doer(string sentence) => Assert.Contains(InLetter(sentence), f => f.Kind == "household-as-doer");

    [Theory]
    [MemberData(nameof(Claims))]
    public void A_claim_is_found_in_guidance_imprint_and_letters(string sentence) =>
        Assert.All([InPage(sentence), InImprint(sentence), InLetter(sentence)], found => Assert.Contains(found, f => f is { Kind: "claim", Severity: Severity.Error }));

    [Theory]
    [InlineData("Never open, touch or move the cutout.")]
    [InlineData("You never touch the tails or the cable.")]
    [InlineData("Nobody here can say that it is safe.")]
    [InlineData("The network operator opens the cutout.")]
    [InlineData("Open the front door and show where the meter is.")]
    public void What_is_denied_or_done_by_others_is_not(string sentence) =>
        Assert.Empty(InPage(sentence).Where(f => f.Kind is "household-as-doer" or "claim" && !sentence.StartsWith("Open the front", StringComparison.Ordinal)));

    [Fact]
    public void The_guidance_as_it_stands_has_nothing_to_put_right() =>
        Findings.AreNone(GuidanceCheck.Of(Content.Guidance, [], Today).Where(f => f.Severity == Severity.Error).Select(f => $"{f.Kind} {f.Where}: {f.What}"));

    [Fact]
    public void A_caution_that_changed_after_its_review_is_named()
    {
        var hazard = Content.Guidance.Hazards.First(h => h.Before.Severity == 5);
        var read = hazard with { ReviewedBy = new(Sample.Text("a jointer"), Today) { Of = CautionMarks.Of(hazard) } };

        Assert.DoesNotContain(With(read), f => f.Where.Contains(hazard.Id, StringComparison.Ordinal) && f.Kind.StartsWith("caution", StringComparison.Ordinal));
        Assert.Contains(With(read with { StopWhen = Sample.Text("Something else.") }), f => f is { Kind: "caution-changed", Severity: Severity.Error });
        Assert.Contains(With(read with { ReviewedBy = read.ReviewedBy! with { Of = null } }), f => f.Kind == "caution-review-without-mark");

        static ImmutableArray<Finding> With(Hazard other) => GuidanceCheck.Of(Content.Guidance with { Hazards = Content.Guidance.Hazards.Replace(Content.Guidance.Hazards.First(h => h.Id == other.Id), other) }, [], Today);
    }

    [Fact]
    public void Handbooks_with_an_old_caution_or_number_are_called_back()
    {
        var about = Support.Editions.Bind(Support.Editions.Demo, EditionKind.Householder).About;
        var england = Content.Guidance.Nations.Single(n => n.Id == "england");
        var hazard = Content.Guidance.Hazards.First(h => about.Cautions.Any(c => c.Key == h.Id));
        var numbers = england.Bodies.ToDictionary(b => b.Key, b => b.Key == "network-emergency" ? Sample.Text("106") : b.Value, StringComparer.Ordinal);
        var otherNumber = Content.Guidance with { Nations = Content.Guidance.Nations.Replace(england, england with { Bodies = System.Collections.Frozen.FrozenDictionary.ToFrozenDictionary(numbers, StringComparer.Ordinal) }) };
        var otherCaution = Content.Guidance with { Hazards = Content.Guidance.Hazards.Replace(hazard, hazard with { Cause = Sample.Text("Another cause.") }) };

        Assert.Empty(Recalls.Of("out", [("home", about)], Content.Guidance));
        Assert.Contains("england/network-emergency", Recalls.Of("out", [("home", about)], otherNumber).Single().What, StringComparison.Ordinal);
        Assert.Contains(hazard.Id, Recalls.Of("out", [("home", about)], otherCaution).Single().What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<p>{{ answer }}</p>", "left-behind")]
    [InlineData("<a href=\"gone.html\">x</a>", "link")]
    [InlineData("<a href=\"#gone\">x</a>", "link")]
    [InlineData("<p id=\"a\">x</p><p id=\"a\">x</p>", "id-twice")]
    [InlineData("<h3>x</h3>", "heading")]
    [InlineData("<img src=\"data:image/png;base64,\">", "alternative")]
    [InlineData("<p>x</b></p>", "html")]
    public void A_page_with_a_mistake_is_found_in_its_bytes(string body, string kind) =>
        Assert.Contains(BookCheck.Of("book", [("index.html", Encoding.UTF8.GetBytes($"<!DOCTYPE html><html lang=\"en-GB\"><head><title>T</title></head><body><h1>T</h1>{body}</body></html>"))]), f => f.Kind == kind);

    [Fact]
    public void A_bound_handbook_has_nothing_to_put_right() =>
        Findings.AreNone(BookCheck.Of("book", [.. Support.Editions.Bind(Support.Editions.Demo, EditionKind.Customer).Files.Select(f => (f.Name, f.Bytes))]).Where(f => f.Severity == Severity.Error).Select(f => $"{f.Kind} {f.Where}: {f.What}"));

    [Fact]
    public void Who_is_about_to_publish_puts_right_first_what_nobody_has_read()
    {
        ImmutableArray<Finding> found = [new(Severity.Warning, "caution-not-reviewed", "hazard a", "Unread."), new(Severity.Warning, "source-from-memory", "source b", "From memory."), new(Severity.Warning, "reading-grade", "page c", "Hard.")];

        Assert.Equal(["caution-not-reviewed"], Unread.ToBePutRight(found).Where(f => f.Severity == Severity.Error).Select(f => f.Kind));
        Assert.Matches("^To be read by somebody who can judge it\ncaution-not-reviewed [^$]*source-from-memory [^$]*To look at when the words are next edited\nreading-grade ", Report.Text(found));
        Assert.StartsWith("To put right before anything is published\ncaution-not-reviewed (1)\n  error: ", Report.Text(Unread.ToBePutRight(found)), StringComparison.Ordinal);
    }

    [Fact]
    public void Words_that_are_missing_in_a_language_are_counted()
    {
        var translated = Content.Guidance with { Language = new("cy", Sample.Text("Cymraeg"), null) };
        var found = GuidanceCheck.Of(Content.Guidance, [translated], Today);

        Assert.Contains(found, f => f.Kind == "translation-not-reviewed");
        Assert.Contains(found, f => f.Kind == "words-missing" && f.Where == "language cy, letter" && f.What.StartsWith(FormattableString.Invariant($"{Content.Guidance.Letters.Length} of"), StringComparison.Ordinal));
    }

    private static ImmutableArray<Finding> InPage(string sentence) => GuidanceCheck.Of(Content.Guidance with { Pages = [new("planted", Sample.Text("# T\n\n" + sentence))], Letters = [] }, [], Today).RemoveAll(f => !f.Where.StartsWith("page planted", StringComparison.Ordinal));

    private static ImmutableArray<Finding> InLetter(string sentence) => GuidanceCheck.Of(Content.Guidance with { Letters = [new("planted", Sample.Text("# T\n\n" + sentence))], Pages = [] }, [], Today).RemoveAll(f => !f.Where.StartsWith("letter planted", StringComparison.Ordinal));

    private static ImmutableArray<Finding> InImprint(string sentence) => GuidanceCheck.OfImprint(Support.Editions.Imprinted with { Imprint = Support.Editions.Imprinted.Imprint! with { Closing = Sample.Text(sentence) } });
}
