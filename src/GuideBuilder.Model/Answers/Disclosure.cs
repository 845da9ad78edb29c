namespace GuideBuilder.Model;

/// <summary>Which classes of data a letter, a page or a file may print, and the yes-no question (section.id) without whose yes it prints none about health.</summary>
public sealed record Disclosure(string Id, ImmutableArray<DataClass> MayPrint, string? AfterConsent, Place Place)
{
    /// <summary>What an edition may print anywhere at all. The handbook of those who live there prints everything; health and absence go nowhere else.</summary>
    public static ImmutableArray<DataClass> Most(EditionKind edition) => edition switch
    {
        EditionKind.Householder => [DataClass.None, DataClass.Personal, DataClass.Health, DataClass.Absence, DataClass.OtherPerson],
        EditionKind.Customer or EditionKind.Neighbour => [DataClass.None, DataClass.Personal, DataClass.OtherPerson],
        EditionKind.Public => [DataClass.None],
        _ => throw new UnreachableException(),
    };

    /// <summary>What a page of an edition prints unless it is listed.</summary>
    public static ImmutableArray<DataClass> OfPage(EditionKind edition) => edition == EditionKind.Neighbour ? [DataClass.None] : Most(edition);

    /// <summary>What a letter, which goes to others, prints unless it is listed.</summary>
    public static ImmutableArray<DataClass> OfLetter { get; } = [DataClass.None, DataClass.Personal];
}
