namespace GuideBuilder.Model;

/// <summary>What can stand within a line: a closed set. None of it is markup yet.</summary>
public abstract record Inline
{
    private Inline()
    {
    }

    /// <summary>Plain words.</summary>
    public sealed record Words(string Text) : Inline;

    /// <summary>Words of weight.</summary>
    public sealed record Strong(Phrase Inside) : Inline;

    /// <summary>Words said with stress.</summary>
    public sealed record Stressed(Phrase Inside) : Inline;

    /// <summary>Words to type or read off exactly as they are.</summary>
    public sealed record Exact(string Text) : Inline;

    /// <summary>A link to whatever a target names.</summary>
    public sealed record Link(Target To, Phrase Inside) : Inline;

    /// <summary>A gap to fill in by hand, and what belongs in it.</summary>
    public sealed record Gap(string Name) : Inline;

    /// <summary>A date, and the words that say it.</summary>
    public sealed record Date(LocalDate Day, string Text) : Inline;

    /// <summary>Words in another language than the page's.</summary>
    public sealed record InLanguage(string Language, Phrase Inside) : Inline;

    /// <summary>Words that are read aloud and not seen: they tell apart what the eye tells apart by its place.</summary>
    public sealed record Unseen(Phrase Inside) : Inline;

    /// <summary>The line ends here.</summary>
    public sealed record LineEnd : Inline;

    /// <summary>The words alone, as they are read aloud.</summary>
    public string PlainWords => this switch
    {
        Words words => words.Text,
        Strong strong => strong.Inside.PlainWords,
        Stressed stressed => stressed.Inside.PlainWords,
        Exact exact => exact.Text,
        Link link => link.Inside.PlainWords,
        Gap gap => gap.Name,
        Date date => date.Text,
        InLanguage other => other.Inside.PlainWords,
        Unseen unseen => unseen.Inside.PlainWords,
        LineEnd => " ",
        _ => throw new UnreachableException(),
    };
}

/// <summary>Where a link leads: a closed set.</summary>
public abstract record Target
{
    private Target()
    {
    }

    /// <summary>The home of an item, page, letter, term or question.</summary>
    public sealed record Item(string Id) : Target;

    /// <summary>The entry of an item under <em>how this was worked out</em>.</summary>
    public sealed record Reason(string Id) : Target;

    /// <summary>An address outside the handbook, of an allowed scheme.</summary>
    public sealed record Outside(string Address) : Target;

    /// <summary>A file of the handbook that is not a page.</summary>
    public sealed record File(string Name) : Target;
}
