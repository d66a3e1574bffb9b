namespace Pawl.Mechanics.Joints;

/// <summary>Least and greatest preload of bolts that were all tightened in the same way, N.</summary>
public readonly record struct PreloadRange(double Min, double Max)
{
    /// <summary>From the window of friction and the error of the wrench.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="face">The face that turns.</param>
    /// <param name="torque">Set torque, N·mm.</param>
    /// <param name="wrenchError">Error e of the wrench, a share of the torque: 0.04 is usual.</param>
    /// <param name="least">Least friction.</param>
    /// <param name="greatest">Greatest friction.</param>
    /// <param name="prevailing">Prevailing torque, N·mm.</param>
    /// <remarks>
    /// <code>F_min = F(M_A·(1 − e), µ_max);  F_max = F(M_A·(1 + e), µ_min)</code>
    /// Source: worst case of the torque equation of VDI 2230 Part 1. Not to be multiplied by α_A, which holds the same scatter.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static PreloadRange ByFriction(
        ScrewThread thread, BearingFace face, double torque, double wrenchError, JointFriction least, JointFriction greatest, double prevailing = 0)
    {
        if (!(wrenchError >= 0 && wrenchError < 1))
            throw Guard.Because($"the error of a wrench must lie from 0 to below 1 of its torque; it is {wrenchError:0.###}");
        if (!(least.Thread <= greatest.Thread && least.Head <= greatest.Head))
            throw Guard.Because($"the least friction must not be above the greatest");
        return new PreloadRange(
            Tightening.Preload(thread, greatest, face, torque * (1 - wrenchError), prevailing),
            Tightening.Preload(thread, least, face, torque * (1 + wrenchError), prevailing));
    }

    /// <summary>From the greatest preload and the tightening factor.</summary>
    /// <remarks>
    /// <code>F_min = F_max/α_A</code>
    /// Source: VDI 2230 Part 1, definition of the tightening factor.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static PreloadRange ByTighteningFactor(double greatest, double factor) =>
        factor >= 1 && double.IsFinite(factor)
            ? new PreloadRange(Guard.Positive(greatest, "the greatest preload") / factor, greatest)
            : throw Guard.Because($"a tightening factor is never below 1; it is {factor:0.###}");
}
