namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// What an activity that is left out hands on to those after it: the latest of the boundaries before it, from which cell and activity it comes,
/// and the latest from any other cell, because members of one cell ask nothing of each other that a day's end would tell.
/// </summary>
internal record struct Handed(int Top, int TopCell, int TopFrom, int Next, int NextCell, int NextFrom)
{
    /// <summary>Nothing before it.</summary>
    public static Handed Nothing { get; } = new(-1, -1, -1, -1, -1, -1);

    /// <summary>Takes into account what an activity before it, left out as well, hands on.</summary>
    public void Offer(in Handed behind)
    {
        Offer(behind.Top, behind.TopCell, behind.TopFrom);
        Offer(behind.Next, behind.NextCell, behind.NextFrom);
    }

    /// <summary>Takes a boundary into account; of two that are alike the first counts.</summary>
    public void Offer(int boundary, int cell, int from)
    {
        if (boundary < 0)
        {
            return;
        }

        if (boundary > Top)
        {
            if (cell != TopCell)
            {
                (Next, NextCell, NextFrom) = (Top, TopCell, TopFrom);
            }

            (Top, TopCell, TopFrom) = (boundary, cell, from);
        }
        else if (cell != TopCell && boundary > Next)
        {
            (Next, NextCell, NextFrom) = (boundary, cell, from);
        }
    }
}
