namespace Pawl.Mechanics.Gears;

/// <summary>A point of a transverse section, mm.</summary>
public readonly record struct SectionPoint
{
    internal SectionPoint(double x, double y) => (X, Y) = (x, y);

    /// <summary>To the right, mm.</summary>
    public double X { get; internal init; }

    /// <summary>Upwards, mm.</summary>
    public double Y { get; internal init; }

    /// <summary>Distance from the axis, mm.</summary>
    public double Radius => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>Direction from the axis, rad, from +x towards +y.</summary>
    public double Angle => Math.Atan2(Y, X);

    /// <summary>The point at a radius, mm, in a direction, rad.</summary>
    internal static SectionPoint At(double radius, double angle) => new(radius * Math.Cos(angle), radius * Math.Sin(angle));

    /// <summary>Turned about the axis by an angle, rad, then moved by mm.</summary>
    internal SectionPoint Moved(double angle, double x = 0, double y = 0) =>
        new((X * Math.Cos(angle)) - (Y * Math.Sin(angle)) + x, (X * Math.Sin(angle)) + (Y * Math.Cos(angle)) + y);
}

/// <summary>What the transverse section of a tooth follows from. Lengths in mm, angles in rad.</summary>
/// <remarks>Sign rule of ISO 21771: teeth and diameters of an internal gear are negative, a positive shift makes both kinds of tooth thicker.</remarks>
public sealed record ToothSection
{
    /// <summary>Number of teeth z, internal negative.</summary>
    public required int Teeth { get; init; }

    /// <summary>Normal module m_n, mm.</summary>
    public required double NormalModule { get; init; }

    /// <summary>Normal pressure angle α_n, rad.</summary>
    public required double NormalPressureAngle { get; init; }

    /// <summary>Helix angle β at the reference cylinder, rad.</summary>
    public double HelixAngle { get; init; }

    /// <summary>Profile shift coefficient x of the drawing; the root is drawn with it.</summary>
    public required double ProfileShift { get; init; }

    /// <summary>Thickness allowance E_sn in the normal section, mm; negative makes the tooth thinner.</summary>
    public double ThicknessAllowance { get; init; }

    /// <summary>Tip diameter d_a, mm, internal negative.</summary>
    public required double TipDiameter { get; init; }

    /// <summary>Root diameter d_f, mm, internal negative.</summary>
    public required double RootDiameter { get; init; }

    /// <summary>Root form diameter d_Ff of an internal gear, mm, negative: where its involute ends. An external gear has it from its rack.</summary>
    public double? FormDiameter { get; init; }

    /// <summary>Root radius factor ρ_fP* of the basic rack, for the fillet of an external gear.</summary>
    public double RootRadiusFactor { get; init; }
}

/// <summary>Outline of a gear in the transverse section: involute flanks, tip circle, fillets, root circle.</summary>
/// <remarks>
/// A tooth stands about the direction 0. At a diameter it spans the angle 2ψ_y:
/// <code>ψ_y = s_yt / d_y = ψ + inv α_t − inv α_y,  cos α_y = d_b / d_y</code>
/// Symbols: s_yt transverse tooth thickness, d_y the diameter, d_b base diameter, mm; α pressure angles, ψ half of the thickness angle
/// at the reference circle, rad.<br/>
/// Source: ISO 21771, tooth thickness at a diameter. The fillet of an external gear is the envelope of the tip round of its rack: where
/// the normal of a point of the rack passes the pitch point, the point cuts. The fillet of an internal gear depends on its cutter and is
/// drawn as a parabola that leaves the flank along its tangent and ends on the root circle.<br/>
/// Valid for: tips without relief or chamfer.
/// </remarks>
public sealed class ToothOutline
{
    private const int FilletSteps = 24;
    private const double MostTeeth = 20_000;
    private readonly double _thickness;
    private readonly double _involuteAtReference;
    private readonly ImmutableArray<(double Radius, double Half)> _root;

    private ToothOutline(ToothSection section)
    {
        Teeth = Guard.Teeth(section.Teeth);
        Guard.Between(Math.Abs((double)Teeth), 3, MostTeeth, "the number of teeth");
        TransversePressureAngle = ToothGeometry.TransversePressureAngle(section.NormalPressureAngle, section.HelixAngle);
        ReferenceDiameter = ToothGeometry.ReferenceDiameter(Teeth, ToothGeometry.TransverseModule(section.NormalModule, section.HelixAngle));
        BaseDiameter = ToothGeometry.BaseDiameter(ReferenceDiameter, TransversePressureAngle);
        RootDiameter = OneSign(section.RootDiameter, "the root diameter");
        TipDiameter = OneSign(section.TipDiameter, "the tip diameter");
        ToothGeometry.ToothDepth(TipDiameter, RootDiameter);
        _involuteAtReference = Involute.Of(TransversePressureAngle);
        var nominal = ToothGeometry.ThicknessAngle(Teeth, section.ProfileShift, section.NormalPressureAngle);
        var allowance = Guard.Number(section.ThicknessAllowance, "the thickness allowance", "mm") / Math.Cos(section.HelixAngle) / ReferenceDiameter;
        _thickness = Guard.Finite(nominal + allowance, "the tooth thickness");
        if (IsInternal)
        {
            Guard.AtLeast(Math.Abs(TipDiameter), Math.Abs(BaseDiameter), "the tip diameter of the internal gear", "mm");
            FormDiameter = OneSign(section.FormDiameter ?? (RootDiameter * 0.8) + (TipDiameter * 0.2), "the root form diameter");
            Guard.Between(Math.Abs(FormDiameter), Math.Abs(TipDiameter), Math.Abs(RootDiameter), "the root form diameter", "mm");
            _root = Parabola();
        }
        else
        {
            var least = Math.Max(BaseDiameter, RootDiameter);
            Guard.AtLeast(TipDiameter, least, "the tip diameter", "mm");
            TipDiameter = Pointed(least);
            (FormDiameter, _root) = Trochoid(section, allowance) ?? Radial(least);
        }

        if (!(HalfAngleAt(TipDiameter) >= 0) || HalfAngleAt(FormDiameter) >= HalfPitch)
            throw Guard.Because($"no tooth: its flanks cross between root and tip");
    }

    /// <summary>The outline of a section.</summary>
    /// <exception cref="OutsideValidityException">The values make no tooth.</exception>
    public static ToothOutline Of(ToothSection section)
    {
        ArgumentNullException.ThrowIfNull(section);
        return new(section);
    }

    /// <summary>Number of teeth, internal negative.</summary>
    public int Teeth { get; }

    /// <summary>Whether the teeth point inwards.</summary>
    public bool IsInternal => Teeth < 0;

    /// <summary>Transverse pressure angle α_t, rad.</summary>
    public double TransversePressureAngle { get; }

    /// <summary>Reference diameter d, mm, internal negative.</summary>
    public double ReferenceDiameter { get; }

    /// <summary>Base diameter d_b, mm, internal negative.</summary>
    public double BaseDiameter { get; }

    /// <summary>Tip diameter d_a, mm, internal negative; where an external tooth runs to a point sooner, the diameter of that point.</summary>
    public double TipDiameter { get; }

    /// <summary>Root diameter d_f, mm, internal negative.</summary>
    public double RootDiameter { get; }

    /// <summary>Where the involute ends and the fillet begins, mm, internal negative.</summary>
    public double FormDiameter { get; }

    /// <summary>Half of the angle from tooth to tooth, π/|z|, rad.</summary>
    public double HalfPitch => Math.PI / Math.Abs((double)Teeth);

    /// <summary>Half of the angle that the tooth spans at a diameter with the sign of d, rad; above zero within the tooth.</summary>
    /// <exception cref="OutsideValidityException">There is no involute at the diameter.</exception>
    public double HalfAngleAt(double diameter) =>
        Math.Sign(Teeth) * (_thickness + _involuteAtReference - Involute.Of(ToothGeometry.PressureAngleAt(diameter, BaseDiameter)));

    /// <summary>One flank, on the side of positive angles, from root form circle to tip circle, evenly spaced in roll angle.</summary>
    /// <param name="steps">Number of steps, 1 or more.</param>
    public ImmutableArray<SectionPoint> Flank(int steps)
    {
        Guard.Count(steps, 1, "the number of steps");
        var (from, to) = (RollAt(FormDiameter), RollAt(TipDiameter));
        var points = ImmutableArray.CreateBuilder<SectionPoint>(steps + 1);
        for (var k = 0; k <= steps; k++)
        {
            var roll = from + ((to - from) * k / steps);
            var diameter = BaseDiameter * Math.Sqrt(1 + (roll * roll));
            points.Add(SectionPoint.At(Math.Abs(diameter) / 2, HalfAngleAt(k == steps ? TipDiameter : diameter)));
        }

        return points.MoveToImmutable();
    }

    /// <summary>One tooth, from the middle of the gap before it to the middle of the gap after it, towards positive angles.</summary>
    /// <param name="flankSteps">Steps along each flank, 1 or more.</param>
    public ImmutableArray<SectionPoint> Tooth(int flankSteps)
    {
        var root = Math.Abs(RootDiameter) / 2;
        List<SectionPoint> half = [SectionPoint.At(root, HalfPitch)];
        const int ArcSteps = 2;
        var foot = _root[0].Half;
        for (var k = 1; k < ArcSteps; k++)
            half.Add(SectionPoint.At(root, HalfPitch + ((foot - HalfPitch) * k / ArcSteps)));
        half.AddRange(_root.Select(static point => SectionPoint.At(point.Radius, point.Half)));
        half.AddRange(Flank(flankSteps));
        var tip = half[^1];
        List<SectionPoint> across = [.. Enumerable.Range(1, (2 * ArcSteps) - 1).Select(k => SectionPoint.At(tip.Radius, tip.Angle * (1 - ((double)k / ArcSteps))))];
        return [.. half.Select(Mirrored), .. across.AsEnumerable().Reverse(), .. half.AsEnumerable().Reverse()];
    }

    /// <summary>The whole gear, closed: every tooth, the first about the direction 0, towards positive angles.</summary>
    /// <param name="flankSteps">Steps along each flank, 1 or more.</param>
    public IEnumerable<SectionPoint> Gear(int flankSteps)
    {
        var tooth = Tooth(flankSteps);
        for (var k = 0; k < Math.Abs(Teeth); k++)
        {
            for (var point = 0; point < tooth.Length - 1; point++)
                yield return tooth[point].Moved(2 * HalfPitch * k);
        }
    }

    private static SectionPoint Mirrored(SectionPoint point) => point with { Y = -point.Y };

    private double OneSign(double diameter, string name) => Guard.NotZero(diameter, name) * ReferenceDiameter > 0
        ? diameter
        : throw Guard.Because($"{name} must have the sign of the reference diameter; it is {diameter:0.####} mm");

    private double RollAt(double diameter) => Math.Tan(ToothGeometry.PressureAngleAt(diameter, BaseDiameter));

    /// <summary>The tip diameter, or less where the flanks meet before it.</summary>
    private double Pointed(double least)
    {
        if (HalfAngleAt(TipDiameter) >= 0)
            return TipDiameter;
        if (!Involute.TryInverse(_thickness + _involuteAtReference, out var angle))
            throw Guard.Because($"no tooth: its flanks cross below the base circle");
        var pointed = BaseDiameter / Math.Cos(angle) * (1 - 1e-12);
        return pointed > least ? pointed : throw Guard.Because($"no tooth: its flanks cross at the root");
    }

    /// <summary>Fillet of an external gear as its rack cuts it, from the root circle to the flank; null where the rack has no such round.</summary>
    private (double Form, ImmutableArray<(double Radius, double Half)> Root)? Trochoid(ToothSection section, double allowance)
    {
        var (m, alpha, cosine) = (section.NormalModule, section.NormalPressureAngle, Math.Cos(section.HelixAngle));
        var dedendum = (section.ProfileShift * m) - ((RootDiameter - ReferenceDiameter) / 2);
        var round = Guard.NotNegative(section.RootRadiusFactor, "the root radius factor") * m;
        var depth = dedendum - round;
        var across = (Math.PI * m / 4) - ((depth + (round * Math.Sin(alpha))) * Math.Tan(alpha)) - (round * Math.Cos(alpha));
        if (!(round > 0) || !(across >= 0) || !(depth > 0))
            return null;

        var pitch = ReferenceDiameter / 2;
        var undercut = false;
        var points = ImmutableArray.CreateBuilder<(double Radius, double Half)>();
        for (var k = 0; k <= FilletSteps; k++)
        {
            var angle = (Math.PI / 2) - (((Math.PI / 2) - alpha) * k / FilletSteps);
            var (u, v) = ((across + (round * Math.Cos(angle))) / cosine, (section.ProfileShift * m) - depth - (round * Math.Sin(angle)));
            var x = v * Math.Cos(angle) * cosine / -Math.Sin(angle);
            var point = (Radius: Math.Sqrt((x * x) + ((pitch + v) * (pitch + v))),
                Half: HalfPitch - Math.Atan2(x, pitch + v) + ((x - u) / pitch) + allowance);
            if (points.Count > 0 && point.Radius <= points[^1].Radius)
                continue;
            if (point.Radius > BaseDiameter / 2)
            {
                // Within the flank: the root is undercut, and the involute begins where the round comes out again.
                var beyond = point.Half - HalfAngleAt(2 * point.Radius);
                if (undercut && beyond >= 0)
                    return (2 * point.Radius, points.DrainToImmutable());
                undercut |= beyond < -1e-9;
            }

            points.Add(point);
        }

        return points[^1].Radius >= BaseDiameter / 2 && !undercut ? (2 * points[^1].Radius, points.DrainToImmutable()) : null;
    }

    /// <summary>A root without a fillet that is known: along the radius from the base circle to the root circle.</summary>
    private (double Form, ImmutableArray<(double Radius, double Half)> Root) Radial(double form) =>
        (form, [(RootDiameter / 2, Math.Min(HalfAngleAt(form), HalfPitch))]);

    /// <summary>Fillet of an internal gear, from the root circle to the flank.</summary>
    private ImmutableArray<(double Radius, double Half)> Parabola()
    {
        const int Steps = 6;
        var (root, form) = (Math.Abs(RootDiameter) / 2, Math.Abs(FormDiameter) / 2);
        var flank = HalfAngleAt(FormDiameter);

        // Along the flank dψ/dr = tan α_y / r; on along its tangent to the root circle, then towards the middle of the gap.
        var corner = Math.Min(HalfPitch, flank + ((root - form) * Math.Tan(ToothGeometry.PressureAngleAt(FormDiameter, BaseDiameter)) / form));
        var foot = Math.Min(HalfPitch, corner + ((root - form) / root));
        var points = ImmutableArray.CreateBuilder<(double Radius, double Half)>(Steps);
        for (var k = 0; k < Steps; k++)
        {
            var t = (double)k / Steps;
            points.Add((((1 - t) * (1 - t) * root) + (2 * t * (1 - t) * root) + (t * t * form), ((1 - t) * (1 - t) * foot) + (2 * t * (1 - t) * corner) + (t * t * flank)));
        }

        return points.MoveToImmutable();
    }
}
