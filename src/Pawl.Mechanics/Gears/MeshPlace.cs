namespace Pawl.Mechanics.Gears;

/// <summary>How two gears stand to each other so that their teeth mesh. Angles in rad, from +x towards +y.</summary>
public static class MeshPlace
{
    /// <summary>Direction of a tooth of the second gear when every tooth stands in the middle of a gap of the mate.</summary>
    /// <remarks>
    /// <code>z₁·(φ₁ − θ) + z₂·(φ₂ − θ₂) = π (mod 2π)</code>
    /// Symbols: z teeth, internal negative; φ direction of a tooth, θ direction from the first axis to the second, θ₂ direction of the
    /// pitch point from the second axis: θ + π, for an internal second gear θ.<br/>
    /// Source: the arcs from the pitch point to the next teeth differ by half a pitch; closed form.<br/>
    /// Valid for: an internal gear stands second, its axis the one that θ leads away from.
    /// </remarks>
    /// <param name="teeth1">Teeth of the first gear; above zero.</param>
    /// <param name="tooth1">Direction of a tooth of the first gear, rad.</param>
    /// <param name="teeth2">Teeth of the second gear, internal negative.</param>
    /// <param name="toPitchPoint1">Direction of the pitch point from the axis of the first gear, rad.</param>
    /// <param name="toPitchPoint2">Direction of the pitch point from the axis of the second gear, rad.</param>
    /// <exception cref="OutsideValidityException">An input is no number of teeth or not finite.</exception>
    public static double ToothOfMate(int teeth1, double tooth1, int teeth2, double toPitchPoint1, double toPitchPoint2)
    {
        var turns = Math.PI - (Guard.Teeth(teeth1) * (Guard.Number(tooth1, "the direction of the tooth", "rad") - Guard.Number(toPitchPoint1, "the direction of the pitch point", "rad")));
        var pitch = Math.Tau / Math.Abs((double)Guard.Teeth(teeth2));
        return Guard.Finite(
            Guard.Number(toPitchPoint2, "the direction of the pitch point", "rad") + Math.IEEERemainder(turns / teeth2, pitch), "the direction of the tooth");
    }

    /// <summary>Directions of teeth whose flanks touch at the pitch point, which stands above the axis of the first gear, rad.</summary>
    /// <remarks>
    /// <code>φ₁ = π/2 − s·ψ_w1,  φ₂ = −π/2 − s·ψ_w2  (internal second gear: π/2 + s·ψ_w2)</code>
    /// Symbols: ψ_w half angles of the teeth at the working pitch circles, rad (<see cref="ToothOutline.HalfAngleAt"/>); s the side.<br/>
    /// Source: closed form; there both flanks stand on the line of centres and have the line of action as their normal.<br/>
    /// Valid for: working pitch circles that the flanks reach, also where teeth overlap or have play.
    /// </remarks>
    /// <param name="first">The first gear, external.</param>
    /// <param name="second">The second gear; its axis stands above the pitch point, that of an internal gear below.</param>
    /// <param name="workingPressureAngle">Working transverse pressure angle α_wt, rad.</param>
    /// <param name="left">Whether the first gear touches with its left flank, at the greater angles.</param>
    /// <exception cref="OutsideValidityException">The flanks do not reach the pitch circles.</exception>
    public static (double First, double Second) Touching(ToothOutline first, ToothOutline second, double workingPressureAngle, bool left)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        var side = left ? 1 : -1;
        var half1 = first.HalfAngleAt(MeshGeometry.WorkingPitchDiameter(first.BaseDiameter, workingPressureAngle));
        var half2 = second.HalfAngleAt(MeshGeometry.WorkingPitchDiameter(second.BaseDiameter, workingPressureAngle));
        return ((Math.PI / 2) - (side * half1), second.IsInternal ? (Math.PI / 2) + (side * half2) : (-Math.PI / 2) - (side * half2));
    }
}
