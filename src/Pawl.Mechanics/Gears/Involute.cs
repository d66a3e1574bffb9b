namespace Pawl.Mechanics.Gears;

/// <summary>The involute function and its inverse.</summary>
public static class Involute
{
    private const double SmallAngle = 0.05;

    /// <summary>Involute function inv α: the polar angle a flank has turned through from the base circle.</summary>
    /// <remarks>
    /// <code>inv α = tan α − α</code>
    /// Symbols: α pressure angle at the point, rad; inv α in rad.<br/>
    /// Source: ISO 21771, involute function.<br/>
    /// Valid for: 0 ≤ α &lt; π/2. Below 0.05 rad the series α³/3 + 2α⁵/15 + 17α⁷/315 + 62α⁹/2835 + 1382α¹¹/155925 takes over:
    /// the difference of two nearly equal numbers would lose half of the digits.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Of(double angle)
    {
        Guard.Acute(angle, "the pressure angle");
        if (angle >= SmallAngle)
        {
            return Math.Tan(angle) - angle;
        }

        var square = angle * angle;
        return angle * square
            * (1.0 / 3 + square * (2.0 / 15 + square * (17.0 / 315 + square * (62.0 / 2835 + square * (1382.0 / 155925)))));
    }

    /// <summary>Pressure angle α whose involute function is given. False when no angle above zero has this involute function.</summary>
    /// <remarks>
    /// <code>α ← α − (inv α − y) / tan² α</code>
    /// Symbols: y given value of inv α, rad; α in rad.<br/>
    /// Source: Newton's method. inv is convex, and both ∛(3y) and atan(y + π/2) lie above the root (tan α − α &gt; α³/3,
    /// α &lt; π/2), so the steps from the smaller of them fall to the root and never pass it.<br/>
    /// Valid for: y &gt; 0.
    /// </remarks>
    public static bool TryInverse(double involute, out double angle)
    {
        angle = 0;
        if (!(involute > 0) || !double.IsFinite(involute))
        {
            return false;
        }

        angle = Math.Min(Math.Cbrt(3 * involute), Math.Atan(involute + Math.PI / 2));
        for (var round = 0; round < 60; round++)
        {
            var tangent = Math.Tan(angle);
            var step = (Of(angle) - involute) / (tangent * tangent);
            angle -= step;
            if (Math.Abs(step) <= 1e-15 * angle)
            {
                break;
            }
        }

        return true;
    }
}
