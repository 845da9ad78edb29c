namespace GuideBuilder.Rendering.Blocks;

/// <summary>The names under which labels speak of closed sets.</summary>
internal static class Marks
{
    /// <summary>The label that says how a figure came to us.</summary>
    internal static string LabelOf(Mark mark) => mark switch
    {
        Mark.Read => "mark-read",
        Mark.Memory => "mark-memory",
        Mark.Judged => "mark-judged",
        _ => throw new UnreachableException(),
    };

    /// <summary>The name of a kind of paper.</summary>
    internal static string NameOf(PaperKind kind) => kind switch
    {
        PaperKind.Quotation => "quotation",
        PaperKind.Certificate => "certificate",
        PaperKind.Consent => "consent",
        PaperKind.Plans => "plans",
        PaperKind.Survey => "survey",
        PaperKind.Letter => "letter",
        _ => throw new UnreachableException(),
    };

    /// <summary>The name of a kind of consent.</summary>
    internal static string NameOf(ConsentKind kind) => kind switch
    {
        ConsentKind.Permission => "permission",
        ConsentKind.Notification => "notification",
        ConsentKind.Certificate => "certificate",
        ConsentKind.LegalDuty => "legal-duty",
        _ => throw new UnreachableException(),
    };

    /// <summary>The name of a level of control.</summary>
    internal static string NameOf(ControlLevel level) => level switch
    {
        ControlLevel.Eliminate => "eliminate",
        ControlLevel.Substitute => "substitute",
        ControlLevel.Engineer => "engineer",
        ControlLevel.Administrative => "administrative",
        ControlLevel.ProtectiveEquipment => "protective-equipment",
        _ => throw new UnreachableException(),
    };

    /// <summary>The name of a state.</summary>
    internal static string NameOf(ItemState state) => state switch
    {
        ItemState.Settled => "settled",
        ItemState.Open => "open",
        ItemState.RuledOut => "ruled-out",
        _ => throw new UnreachableException(),
    };
}
