using MathNet.Numerics;

namespace GuideBuilder.Planning.Chance;

/// <summary>
/// The beta-PERT distribution on 0 to 1 with its mode at a place between: α = 1 + 4 m, β = 5 − 4 m, mean (1 + 4 m) / 6.
/// Source: the usual construction (Vose, Risk Analysis, 3rd ed. 2008); the incomplete beta function is MathNet's.
/// </summary>
internal readonly record struct Pert(double Mode)
{
    /// <summary>The mean.</summary>
    public double Mean => (1 + (4 * Mode)) / 6;

    private double Alpha => 1 + (4 * Mode);

    private double Beta => 5 - (4 * Mode);

    /// <summary>
    /// The chance of no more than j for the whole number j (0 to steps − 1) that stands for the value among so many equal steps.
    /// A value between two steps goes to either in proportion to its nearness, so the mean of the whole numbers is the mean of the distribution.
    /// </summary>
    public double[] Cumulative(int steps)
    {
        var below = new double[steps];
        var left = 0.0;
        for (var j = 0; j < steps; j++)
        {
            var right = Area((j + 1.0) / steps);
            below[j] = (right - left) * steps;
            left = right;
        }

        return below;
    }

    /// <summary>The area under the distribution function from 0 to x.</summary>
    private double Area(double x) =>
        x >= 1 ? 1 - Mean : (x * SpecialFunctions.BetaRegularized(Alpha, Beta, x)) - (Mean * SpecialFunctions.BetaRegularized(Alpha + 1, Beta, x));
}
