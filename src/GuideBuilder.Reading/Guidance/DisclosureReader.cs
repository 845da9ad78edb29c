namespace GuideBuilder.Reading;

/// <summary>Reads what a letter or page may print.</summary>
internal sealed class DisclosureReader(Desk desk)
{
    /// <summary>The entry, whose id is that of a letter or a page.</summary>
    public Disclosure Read(Fields fields)
    {
        var may = fields.Need("may-print", Values.ListOf(Values.OneOf(QuestionWords.DataClasses)), []);
        var consent = desk.FindReference(fields, "after-consent", Kinds.Question);
        if (consent is null && may.Contains(DataClass.Health))
        {
            desk.Faults.Add(ReadingFaults.HealthNeedsConsent(fields.Place));
        }

        return new(desk.NeedReference(fields, "id", Kinds.Letter, Kinds.Page), [DataClass.None, .. may], consent, fields.Place);
    }
}
