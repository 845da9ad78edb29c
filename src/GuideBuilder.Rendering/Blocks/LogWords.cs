using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Says what a log event was.</summary>
internal static class LogWords
{
    /// <summary>Date, what happened, to which step, by whom, and the note that was made.</summary>
    internal static Phrase Of(Bindery bindery, LogEvent happened)
    {
        var said = bindery.Dates.Say(happened.On) + Phrase.Of(": " + bindery.Say($"log-{Name(happened.What)}"));
        var step = happened.Step is { } id ? Phrase.Of(", ") + bindery.Link(id) : Phrase.Empty;
        var party = happened.Party is { } who ? Phrase.Of(", ") + bindery.Link(who) : Phrase.Empty;
        var given = happened.DateGiven is { } day ? Phrase.Of(", ") + bindery.Dates.Say(day) : Phrase.Empty;
        var note = happened.Note is { Length: > 0 } words ? Phrase.Of(". " + words) : Phrase.Empty;
        return said + step + party + given + note;
    }

    private static string Name(LogKind kind) => kind switch
    {
        LogKind.Applied => "applied",
        LogKind.Surveyed => "surveyed",
        LogKind.Quoted => "quoted",
        LogKind.Accepted => "accepted",
        LogKind.Paid => "paid",
        LogKind.DateGiven => "date-given",
        LogKind.Missed => "missed",
        LogKind.Done => "done",
        LogKind.Refused => "refused",
        LogKind.Noted => "noted",
        _ => throw new UnreachableException(),
    };
}
