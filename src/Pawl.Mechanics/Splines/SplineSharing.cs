using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Splines;

/// <summary>How the teeth of a spline share a load while their gaps differ.</summary>
/// <param name="InContact">Share ψ of the teeth that touch.</param>
/// <param name="HeaviestOverMean">Load of the tooth that touches first, by that of an even share.</param>
/// <param name="Closing">How far the parts turn into each other after the first touch, mm at the pitch circle.</param>
public sealed record SplineSharing(double InContact, double HeaviestOverMean, double Closing)
{
    /// <summary>Teeth whose gaps are spread evenly.</summary>
    /// <param name="force">Force F at the pitch circle, N.</param>
    /// <param name="teeth">Number of teeth z.</param>
    /// <param name="stiffness">Stiffness c of one pair of teeth, N/mm, over its length.</param>
    /// <param name="spread">Difference j of the greatest and the least gap, mm: the deviations of pitch of both parts.</param>
    /// <remarks>
    /// <code>
    /// δ = √(2·F·j/(z·c)), ψ = δ/j while δ ≤ j;  then all touch and δ = F/(z·c) + j/2
    /// heaviest/mean = c·δ·z/F
    /// </code>
    /// Symbols: δ closing after the first touch, mm.<br/>
    /// Source: springs in parallel with gaps spread evenly from 0 to j, summed; z large.<br/>
    /// Valid for: elastic teeth, no misalignment, no wear; running in evens the gaps.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static SplineSharing Of(double force, int teeth, double stiffness, double spread)
    {
        Guard.Positive(force, "the force on the spline");
        Guard.Positive(teeth, "the number of teeth");
        var all = teeth * Guard.Positive(stiffness, "the stiffness of a tooth");
        DynamicLoad.NotNegative(spread, "the spread of the gaps");

        var closing = force >= all * spread / 2 ? force / all + spread / 2 : Math.Sqrt(2 * force * spread / all);
        return new(spread > closing ? closing / spread : 1, all * closing / force, closing);
    }
}
