namespace Pawl.Mechanics.Rating;

/// <summary>A tool whose tip rounding rolls out a root fillet: where the centre of the rounding stands when the normal is
/// known.</summary>
/// <remarks>
/// <code>
/// cutter: d = (e² − r_w0²) / ( r_w0·cos θ + √(e² − r_w0²·sin² θ) ),  t = r_w0 · atan( d·sin θ / (d·cos θ + r_w0) )
/// rack (r_w0 → ∞, e − r_w0 → H):  d = H / cos θ,  t = H · tan θ
/// </code>
/// Symbols: e radius of the circle of rounding centres, r_w0 pitch radius of the tool while it generates, H distance of the
/// rounding centres beyond the pitch line of a rack, mm; θ angle between the normal of the fillet and the line of centres, rad; d
/// distance from the pitch point to the rounding centre along that normal, t travel of the rounding centre along the pitch circle
/// from the line of centres, mm.<br/>
/// Source: law of gearing: the common normal of tool and work passes through the pitch point and, on a circular rounding, through
/// its centre.<br/>
/// Valid for: a circular tip rounding.
/// </remarks>
internal readonly record struct RootGeneration
{
    private readonly double _toolCurvature; // 1/r_w0; 0 for a rack
    private readonly double _depth; // e − r_w0, or H

    /// <param name="teeth">Teeth of the work, signed, of the virtual gear if helical.</param>
    /// <param name="pitchRadius">Pitch radius of the work while it is generated, mm, signed.</param>
    /// <param name="toolCurvature">1/r_w0, 1/mm; 0 for a rack.</param>
    /// <param name="depth">How far the rounding centres lie beyond the tool's pitch circle, mm.</param>
    /// <param name="tipRadius">Radius of the rounding, mm.</param>
    /// <param name="offset">Distance of the rounding centre from the middle of the tool's tooth, as arc on its pitch circle,
    /// mm.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public RootGeneration(
        double teeth, double pitchRadius, double toolCurvature, double depth, double tipRadius, double offset)
    {
        Teeth = teeth;
        PitchRadius = pitchRadius;
        _toolCurvature = toolCurvature;
        _depth = depth;
        TipRadius = tipRadius;
        Offset = offset;
    }

    private double Teeth { get; }

    private double PitchRadius { get; }

    private double TipRadius { get; }

    private double Offset { get; }

    private double Distance(double angle)
    {
        var (sine, cosine) = Math.SinCos(angle);

        // All lengths in units of r_w0, so that a rack is the limit of curvature 0.
        var radius = 1 + _depth * _toolCurvature;
        return _depth * (1 + radius) / (cosine + Math.Sqrt(radius * radius - sine * sine));
    }

    private double Travel(double angle, double distance)
    {
        var (sine, cosine) = Math.SinCos(angle);
        var tangent = distance * sine / (1 + distance * cosine * _toolCurvature);
        return _toolCurvature == 0 ? tangent : Math.Atan(tangent * _toolCurvature) / _toolCurvature;
    }

    /// <summary>Angle from the line of centres to the middle of the tooth whose fillet is cut, rad, with the sign of z.</summary>
    private double ToothAngle(double angle, double distance) =>
        (Travel(angle, distance) - Offset) / PitchRadius + Math.PI / Teeth;

    /// <summary>The point of the fillet whose tangent leans by λ against the middle of the tooth; θ is that of <see cref="AngleOfLean"/>.</summary>
    /// <remarks>
    /// <code>
    /// θ = π/2 − λ − κ(θ),  κ = (t − t₀)/r_w + π/z
    /// s_Fn = 2·( r_w·sin κ − (d + ρ)·cos λ ),  y = |r_w|·cos κ ∓ (d + ρ)·sin λ
    /// ρ_F = ρ + K·d² / (cos θ + K·d),  K = 1/r_w + 1/r_w0
    /// </code>
    /// Symbols: λ lean of the tangent, rad, 30° external, 60° internal; κ angle between tooth and line of centres, rad; t₀ offset
    /// of the rounding centre from the middle of the tool's tooth, mm; r_w pitch radius of the work while generated, mm; ρ tip
    /// radius of the tool, mm; y distance of the chord from the axis, mm, − external, + internal.<br/>
    /// Source: rolling without slip; Euler–Savary for the curvature. With a rack it gives the equations of ISO 6336-3.<br/>
    /// Valid for: a tangent point on the fillet, between the deepest point (θ = 0) and the end of the tool's flank.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public (double Chord, double Height, double Radius) PointAt(double angle, double lean)
    {
        var distance = Distance(angle);
        var tooth = ToothAngle(angle, distance);
        var reach = distance + TipRadius;
        var curvature = (1 / PitchRadius + _toolCurvature) * distance;
        var denominator = Math.Cos(angle) + curvature;
        if (!(denominator > 0))
        {
            throw Guard.Because($"no root section: the fillet has a point where it is turned back");
        }

        return (
            2 * (PitchRadius * Math.Sin(tooth) - reach * Math.Cos(lean)),
            Math.Abs(PitchRadius) * Math.Cos(tooth) - Math.Sign(Teeth) * reach * Math.Sin(lean),
            TipRadius + curvature * distance / denominator);
    }

    /// <summary>θ of the point whose tangent leans by a given angle against the middle of the tooth, rad; Newton, kept inside a bracket.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double AngleOfLean(double lean, double flankEndAngle)
    {
        double low = 0, high = flankEndAngle;
        if (!(Excess(low, lean) <= 0 && Excess(high, lean) >= 0))
        {
            throw Guard.Because(
                $"no root section: the fillet that the tool leaves has no tangent at {lean * 180 / Math.PI:0}° to the middle of the tooth");
        }

        var angle = (low + high) / 2;
        for (var round = 0; round < 100; round++)
        {
            var distance = Distance(angle);
            var value = Excess(angle, lean);
            (low, high) = value < 0 ? (angle, high) : (low, angle);
            var slope = 1 + distance / (Math.Cos(angle) + distance * _toolCurvature) / PitchRadius;
            var next = angle - value / slope;
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.Abs(next - angle) <= 1e-15)
            {
                return next;
            }

            angle = next;
        }

        return angle;
    }

    private double Excess(double angle, double lean) =>
        angle - (Math.PI / 2 - lean) + ToothAngle(angle, Distance(angle));
}
