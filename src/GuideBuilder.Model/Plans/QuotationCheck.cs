namespace GuideBuilder.Model;

/// <summary>A quotation, the lines (cost ids) that it stands for, its sum with VAT, and our own range for those lines: what one, five and nine in ten trials do not exceed, estimates alone.</summary>
public sealed record QuotationCheck(Paper Paper, ImmutableArray<string> Lines, decimal Gross, ThreePoint Range)
{
    /// <summary>How the quotation stands to the range.</summary>
    public RangePosition Position => Gross < Range.Low ? RangePosition.Below : Gross > Range.High ? RangePosition.Above : RangePosition.Inside;
}

/// <summary>How a sum stands to a range.</summary>
public enum RangePosition
{
    /// <summary>Less than the lowest.</summary>
    Below,

    /// <summary>From the lowest to the highest.</summary>
    Inside,

    /// <summary>More than the highest.</summary>
    Above,
}
