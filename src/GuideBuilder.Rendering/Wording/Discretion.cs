namespace GuideBuilder.Rendering.Wording;

/// <summary>What a page, a letter or a file may print. What it may not print it does not know: such an answer counts as unknown, and what rests on one is left out.</summary>
internal sealed class Discretion
{
    private readonly ImmutableArray<DataClass> _may;

    private Discretion(ImmutableArray<DataClass> may) => _may = may;

    /// <summary>A name that two of the same allowance share.</summary>
    internal string Name => string.Join(' ', _may.Order());

    /// <summary>For a page of the book, or for nobody in particular.</summary>
    internal static Discretion OfPage(Plan plan, Guidance guidance, string page) => Of(plan, guidance, page, Disclosure.OfPage(plan.Occasion.Edition));

    /// <summary>For a letter.</summary>
    internal static Discretion OfLetter(Plan plan, Guidance guidance, string letter) => Of(plan, guidance, letter, Disclosure.OfLetter);

    /// <summary>For a calendar, which others may see: nothing about health or absence.</summary>
    internal static Discretion OfCalendar { get; } = new([DataClass.None, DataClass.Personal, DataClass.OtherPerson]);

    /// <summary>Whether answers of that class may be printed.</summary>
    internal bool Allows(DataClass data) => _may.Contains(data);

    /// <summary>Whether an answer or a fact, with everything that decided it, may be printed.</summary>
    internal bool Allows(Given given) => given switch
    {
        Given.Answered answered => Allows(answered.Question.Data),
        Given.Derived derived => Allows(derived.Because),
        _ => true,
    };

    /// <summary>Whether everything that decided an item may be printed.</summary>
    internal bool Allows(Because because) => because.Deciding.All(l => Allows(l.Given));

    private static Discretion Of(Plan plan, Guidance guidance, string id, ImmutableArray<DataClass> usual)
    {
        var most = Disclosure.Most(plan.Occasion.Edition);
        if (guidance.Disclosures.FirstOrDefault(d => d.Id == id) is not { } listed)
        {
            return new([.. usual.Where(most.Contains)]);
        }

        var consents = listed.AfterConsent is { } name && plan.Answers.ByName.GetValueOrDefault(name) is { Standing: Standing.Known, Value: Value.Option { Id: "yes" } };
        return new([.. listed.MayPrint.Where(d => most.Contains(d) && (d != DataClass.Health || consents))]);
    }
}
