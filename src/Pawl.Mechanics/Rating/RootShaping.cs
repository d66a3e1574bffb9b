using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Rating;

/// <summary>The root that a pinion-type cutter makes: its diameter, where the involute ends, and the rolling that makes the
/// fillet.</summary>
/// <remarks>Signs after ISO 21771: diameters of an internal gear are negative.</remarks>
public readonly record struct RootShaping
{
    private readonly RatedTooth _tooth;
    private readonly PinionCutter _cutter;
    private readonly double _baseRadius; // of the cutter
    private readonly double _centreCurvature; // √(e² − r_b0²)
    private readonly double _offsetAngle;

    /// <summary>Sets the cutter to the work so that it leaves the tooth thickness of the profile shift.</summary>
    /// <remarks>
    /// <code>inv α_w0 = inv α + 2·tan α·(x + x₀)/(z + z₀),  a₀ = m·(z + z₀)·cos α/(2·cos α_w0)</code>
    /// Symbols: z, x of the work (z &lt; 0 internal), z₀, x₀ of the cutter; m module, mm; α pressure angle, rad; a₀ centre
    /// distance of generation, mm, negative for internal work.<br/>
    /// Source: ISO 21771, gear pair of work and tool without backlash.<br/>
    /// Valid for: spur gears; |z| &gt; z₀ when internal.
    /// </remarks>
    public RootShaping(RatedTooth tooth, PinionCutter cutter)
    {
        if (tooth.HelixAngle != 0)
        {
            throw Guard.Because($"no root by a pinion-type cutter for helical teeth: the method here covers spur gears only");
        }

        if (cutter.Teeth <= 0 || (tooth.Teeth < 0 && cutter.Teeth >= -tooth.Teeth))
        {
            throw Guard.Because(
                $"no shaped root: a cutter of {cutter.Teeth} teeth cannot work in a gear of {Math.Abs(tooth.Teeth)} teeth");
        }

        (_tooth, _cutter) = (tooth, cutter);
        var pressure = tooth.NormalPressureAngle;
        var module = Guard.Positive(tooth.NormalModule, "the normal module");
        WorkingAngle = MeshGeometry.WorkingPressureAngleFromShift(
            pressure, pressure, tooth.ProfileShift + cutter.ProfileShift, tooth.Teeth, cutter.Teeth);
        _baseRadius = module * cutter.Teeth * Math.Cos(pressure) / 2;
        CentreDistance = (tooth.Teeth * module / 2 * Math.Cos(pressure) + _baseRadius) / Math.Cos(WorkingAngle);

        var radius = cutter.TipRadius >= 0
            ? cutter.TipRadius
            : throw Guard.Because($"the tip radius of the cutter must not be below zero; it is {cutter.TipRadius:0.####} mm");
        var centres = cutter.TipDiameter / 2 - radius;
        if (!(centres > _baseRadius))
        {
            throw Guard.Because(
                $"no shaped root: with tip diameter {cutter.TipDiameter:0.####} mm and tip radius {radius:0.####} mm the cutter has no involute that its rounding could meet");
        }

        _centreCurvature = Math.Sqrt(centres * centres - _baseRadius * _baseRadius);
        _offsetAngle = ToothGeometry.ThicknessAngle(cutter.Teeth, cutter.ProfileShift, pressure) + Involute.Of(pressure)
            - radius / _baseRadius - Involute.Of(Math.Acos(_baseRadius / centres));
        if (_offsetAngle < -1e-12)
        {
            throw Guard.Because(
                $"no shaped root: a tip radius of {radius:0.####} mm is greater than the tip of the cutter's tooth allows");
        }
    }

    /// <summary>Working pressure angle of generation α_w0, rad.</summary>
    public double WorkingAngle { get; }

    /// <summary>Centre distance of generation a₀, mm, negative for internal work.</summary>
    public double CentreDistance { get; }

    /// <summary>Root diameter d_f that the cutter makes, mm, signed.</summary>
    /// <remarks>
    /// <code>d_f = 2·a₀ − d_a0</code>
    /// Symbols: a₀ centre distance of generation, d_a0 tip diameter of the cutter, mm.<br/>
    /// Source: ISO 21771, generated root diameter.<br/>
    /// Valid for: both kinds of gear.
    /// </remarks>
    public double RootDiameter => 2 * CentreDistance - _cutter.TipDiameter;

    /// <summary>Root form diameter d_Ff: the involute of the cutter ends here, the fillet begins; mm, signed.</summary>
    /// <remarks>
    /// <code>ρ_Ff = a₀·sin α_w0 − ( √(e² − r_b0²) + ρ_a0 ),  d_Ff = sign·√(4·ρ_Ff² + d_b²)</code>
    /// Symbols: e = d_a0/2 − ρ_a0 radius of the rounding centres, r_b0 base radius, ρ_a0 tip radius of the cutter, mm; α_w0
    /// working angle of generation, rad; d_b base diameter of the work, mm.<br/>
    /// Source: the last point of the cutter's involute, carried along the line of action.<br/>
    /// Valid for: no undercut.
    /// </remarks>
    public double FormDiameter => PathOfContact.DiameterAt(FormCurvature, WorkBaseDiameter);

    internal RootGeneration Generation
    {
        get
        {
            var scale = 1 / Math.Cos(WorkingAngle);
            var pitch = _baseRadius * scale;
            return new(
                _tooth.Teeth,
                WorkBaseDiameter / 2 * scale,
                1 / pitch,
                _cutter.TipDiameter / 2 - _cutter.TipRadius - pitch,
                _cutter.TipRadius,
                pitch * _offsetAngle);
        }
    }

    private double FormCurvature =>
        CentreDistance * Math.Sin(WorkingAngle) - _centreCurvature - _cutter.TipRadius;

    private double WorkBaseDiameter => _tooth.Teeth * _tooth.NormalModule * Math.Cos(_tooth.NormalPressureAngle);

    internal void RefuseUndercut()
    {
        if (FormCurvature * _tooth.Teeth < 0)
        {
            throw Guard.Because($"no root section: the cutter undercuts the tooth");
        }
    }
}
