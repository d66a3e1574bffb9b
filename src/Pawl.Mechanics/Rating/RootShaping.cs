using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Rating;

/// <summary>The root that a pinion-type cutter makes: its diameter, where the involute ends, and the rolling that makes the
/// fillet.</summary>
/// <remarks>
/// Signs after ISO 21771: diameters of an internal gear are negative. Diameters are those of the transverse section; the fillet is
/// rolled by the virtual spur gears of work and cutter, z_n = z/(cos² β_b·cos β) and z_0n likewise, whose cutter reaches as far
/// beyond its reference circle as the real one: d_a0n = z_0n·m_n + d_a0 − z_0·m_n/cos β (ISO 6336-3, helical gears).
/// </remarks>
public readonly record struct RootShaping
{
    private readonly RatedTooth _tooth;
    private readonly PinionCutter _cutter;
    private readonly double _transverseAngle;
    private readonly double _teethOverVirtual; // cos² β_b·cos β
    private readonly double _tipRadius; // of the virtual cutter, to the tip circle
    private readonly double _baseRadius; // of the virtual cutter
    private readonly double _centreCurvature; // √(e² − r_b0²)
    private readonly double _offsetAngle;

    /// <summary>Sets the cutter to the work so that it leaves the tooth thickness of the profile shift.</summary>
    /// <remarks>
    /// <code>inv α_wt0 = inv α_t + 2·tan α_n·(x + x₀)/(z + z₀),  a₀ = m_n·(z + z₀)·cos α_t/(2·cos β·cos α_wt0)</code>
    /// Symbols: z, x of the work (z &lt; 0 internal), z₀, x₀ of the cutter; m_n normal module, mm; α_n, α_t pressure angles, β helix
    /// angle, rad; a₀ centre distance of generation, mm, negative for internal work.<br/>
    /// Source: ISO 21771, gear pair of work and tool without backlash.<br/>
    /// Valid for: a cutter of the helix of the work; |z| &gt; z₀ when internal.
    /// </remarks>
    public RootShaping(RatedTooth tooth, PinionCutter cutter)
    {
        if (cutter.Teeth <= 0 || (tooth.Teeth < 0 && cutter.Teeth >= -tooth.Teeth))
        {
            throw Guard.Because(
                $"no shaped root: a cutter of {cutter.Teeth} teeth cannot work in a gear of {Math.Abs(tooth.Teeth)} teeth");
        }

        (_tooth, _cutter) = (tooth, cutter);
        var (pressure, helix) = (tooth.NormalPressureAngle, Guard.Helix(tooth.HelixAngle));
        var module = Guard.Positive(tooth.NormalModule, "the normal module");
        var shifts = tooth.ProfileShift + cutter.ProfileShift;
        _transverseAngle = helix == 0 ? pressure : ToothGeometry.TransversePressureAngle(pressure, helix);
        WorkingAngle = MeshGeometry.WorkingPressureAngleFromShift(_transverseAngle, pressure, shifts, tooth.Teeth, cutter.Teeth);
        CentreDistance = (WorkBaseDiameter / 2 + CutterBaseRadius) / Math.Cos(WorkingAngle);

        var baseCosine = Math.Cos(ToothGeometry.BaseHelixAngle(pressure, helix));
        _teethOverVirtual = baseCosine * baseCosine * Math.Cos(helix);
        NormalWorkingAngle = MeshGeometry.WorkingPressureAngleFromShift(
            pressure, pressure, shifts * _teethOverVirtual, tooth.Teeth, cutter.Teeth);
        var teeth = cutter.Teeth / _teethOverVirtual;
        _baseRadius = module * teeth * Math.Cos(pressure) / 2;
        _tipRadius = helix == 0 ? cutter.TipDiameter / 2 : cutter.TipDiameter / 2 + VirtualBeyondReal;

        var radius = cutter.TipRadius >= 0
            ? cutter.TipRadius
            : throw Guard.Because($"the tip radius of the cutter must not be below zero; it is {cutter.TipRadius:0.####} mm");
        var centres = _tipRadius - radius;
        if (!(centres > _baseRadius))
        {
            throw Guard.Because(
                $"no shaped root: with tip diameter {cutter.TipDiameter:0.####} mm and tip radius {radius:0.####} mm the cutter has no involute that its rounding could meet");
        }

        _centreCurvature = Math.Sqrt(centres * centres - _baseRadius * _baseRadius);
        _offsetAngle = ToothGeometry.ThicknessAngle(cutter.Teeth, cutter.ProfileShift, pressure) * _teethOverVirtual + Involute.Of(pressure)
            - radius / _baseRadius - Involute.Of(Math.Acos(_baseRadius / centres));
        if (_offsetAngle < -1e-12)
        {
            throw Guard.Because(
                $"no shaped root: a tip radius of {radius:0.####} mm is greater than the tip of the cutter's tooth allows");
        }
    }

    /// <summary>Working transverse pressure angle of generation α_wt0, rad.</summary>
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
    /// <code>ρ_Ff = a₀·sin α_wt0 − ρ_0F,  d_Ff = sign·√(4·ρ_Ff² + d_b²);  spur: ρ_0F = √(e² − r_b0²) + ρ_a0</code>
    /// Symbols: ρ_0F radius of curvature at the end of the cutter's involute, at the depth below its tip at which that of the
    /// virtual cutter ends; e = d_a0/2 − ρ_a0 radius of the rounding centres, r_b0 base radius, ρ_a0 tip radius of the cutter in
    /// the normal section, mm; α_wt0 working angle of generation, rad; d_b base diameter of the work, mm.<br/>
    /// Source: the last point of the cutter's involute, carried along the line of action.<br/>
    /// Valid for: no undercut.
    /// </remarks>
    public double FormDiameter => PathOfContact.DiameterAt(FormCurvature, WorkBaseDiameter);

    /// <summary>Working pressure angle of generation of the virtual spur gears, rad.</summary>
    internal double NormalWorkingAngle { get; }

    /// <summary>Teeth of the virtual spur gear of the work, signed.</summary>
    internal double VirtualTeeth => _tooth.Teeth / _teethOverVirtual;

    internal RootGeneration Generation
    {
        get
        {
            var scale = 1 / Math.Cos(NormalWorkingAngle);
            var pitch = _baseRadius * scale;
            return new(
                VirtualTeeth,
                VirtualTeeth * _tooth.NormalModule * Math.Cos(_tooth.NormalPressureAngle) / 2 * scale,
                1 / pitch,
                _tipRadius - _cutter.TipRadius - pitch,
                _cutter.TipRadius,
                pitch * _offsetAngle);
        }
    }

    private double FormCurvature =>
        CentreDistance * Math.Sin(WorkingAngle) - (_tooth.HelixAngle == 0 ? _centreCurvature + _cutter.TipRadius : EndOfInvolute);

    private double EndOfInvolute
    {
        get
        {
            var end = double.Hypot(_centreCurvature + _cutter.TipRadius, _baseRadius) - VirtualBeyondReal;
            return end > CutterBaseRadius
                ? Math.Sqrt(end * end - CutterBaseRadius * CutterBaseRadius)
                : throw Guard.Because($"no root form: the involute of the cutter would end below its base circle");
        }
    }

    /// <summary>Reference radius of the virtual cutter less that of the real one.</summary>
    private double VirtualBeyondReal =>
        _cutter.Teeth * (_tooth.NormalModule / _teethOverVirtual - TransverseModule) / 2;

    private double TransverseModule => ToothGeometry.TransverseModule(_tooth.NormalModule, _tooth.HelixAngle);

    private double CutterBaseRadius => TransverseModule * _cutter.Teeth * Math.Cos(_transverseAngle) / 2;

    private double WorkBaseDiameter => _tooth.Teeth * TransverseModule * Math.Cos(_transverseAngle);

    internal void RefuseUndercut()
    {
        if (FormCurvature * _tooth.Teeth < 0)
        {
            throw Guard.Because($"no root section: the cutter undercuts the tooth");
        }
    }
}
