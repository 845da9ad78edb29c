namespace GuideBuilder.Reading;

/// <summary>Reads who has reviewed a text, or that nobody has yet.</summary>
internal sealed class ReviewReader(Desk desk)
{
    private const string NotYet = "not yet reviewed";

    /// <summary>The review; null while there is none.</summary>
    public Review? Read(Node node, FaultList faults)
    {
        if (node is Mapping)
        {
            return desk.One(node, "a review", f => new Review(f.NeedText("role"), f.Need("on", Values.Date, default)) { Of = f.FindLine("of") });
        }

        if (Values.Single(node, faults) is { } words && words != NotYet)
        {
            faults.Add(ReadingFaults.NotAReview(node.Place));
        }

        return null;
    }
}
