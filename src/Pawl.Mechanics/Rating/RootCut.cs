using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Rating;

/// <summary>The root of a tooth as its tool cuts it, before a force is set on it. Made by <see cref="RootSections"/>.</summary>
public readonly record struct RootCut
{
    private readonly RootGeneration _generation;
    private readonly double _lean;
    private readonly double _flankEndAngle;
    private readonly double _teeth; // of the virtual spur gear
    private readonly RatedTooth _tooth;
    private readonly double _tipOffset; // virtual less real tip diameter
    private readonly double _contactRatioFactor;

    internal RootCut(
        RootGeneration generation, double lean, double flankEndAngle, double teeth, RatedTooth tooth, double tipOffset, double contactRatioFactor) =>
        (_generation, _lean, _flankEndAngle, _teeth, _tooth, _tipOffset, _contactRatioFactor) =
        (generation, lean, flankEndAngle, teeth, tooth, tipOffset, contactRatioFactor);

    private double BaseDiameter => _teeth * _tooth.NormalModule * Math.Cos(_tooth.NormalPressureAngle);

    /// <summary>θ of the critical section: the tool cuts its tangent point when the normal stands at θ to the line of centres, rad.</summary>
    /// <remarks>
    /// <code>rack: θ = (2·G/z_n)·tan θ − H</code>
    /// Source and symbols: <see cref="RootSections"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">The fillet has no such tangent.</exception>
    public double FilletAngle() => _generation.AngleOfLean(_lean, _flankEndAngle);

    /// <summary>Root chord s_Fn, mm, for θ, rad.</summary>
    /// <exception cref="OutsideValidityException">The chord is not that of a tooth, or the notch parameter is not from 1 to below 8.</exception>
    public double Chord(double filletAngle) => PointAt(filletAngle).Chord;

    /// <summary>Radius of the fillet ρ_F, mm, for θ, rad.</summary>
    /// <exception cref="OutsideValidityException">The chord is not that of a tooth, or the notch parameter is not from 1 to below 8.</exception>
    public double FilletRadius(double filletAngle) => PointAt(filletAngle).Radius;

    /// <summary>Load direction angle α_Fen, rad, of the force at the outer point of single pair contact.</summary>
    /// <param name="tipDiameter">Tip diameter d_a, mm, with the sign of the teeth; the effective one when the tip is chamfered.</param>
    /// <param name="transverseContactRatio">ε_α of the mesh; 1 puts the force at the tip.</param>
    /// <exception cref="OutsideValidityException">The tooth runs to a point below the force.</exception>
    public double LoadAngle(double tipDiameter, double transverseContactRatio)
    {
        var normal = _tooth.NormalPressureAngle;
        var load = RootSections.OuterSingleContactDiameter(
            Guard.Number(tipDiameter, "the tip diameter", "mm") + _tipOffset, BaseDiameter, transverseContactRatio * _contactRatioFactor,
            Math.PI * _tooth.NormalModule * Math.Cos(normal));
        var loadPressure = ToothGeometry.PressureAngleAt(load, BaseDiameter);
        var halfTooth = (Math.PI / 2 + 2 * _tooth.ProfileShift * Math.Tan(normal)) / _teeth + Involute.Of(normal) - Involute.Of(loadPressure);
        return halfTooth * Math.Sign(_teeth) >= 0
            ? loadPressure - halfTooth
            : throw Guard.Because(
                $"no root section: the tooth runs to a point before it reaches the diameter {Math.Abs(load):0.####} mm of the force");
    }

    /// <summary>Bending arm h_Fe, mm, for θ and α_Fen, rad.</summary>
    /// <exception cref="OutsideValidityException">The line of the force passes below the section.</exception>
    public double LeverArm(double filletAngle, double loadAngle)
    {
        var angle = Guard.Number(loadAngle, "the load angle", "rad");
        var arm = Math.Sign(_teeth) * (Math.Abs(BaseDiameter) / 2 / Math.Cos(angle) - PointAt(filletAngle).Height);
        return arm > 0 && double.IsFinite(arm)
            ? arm
            : throw Guard.Because($"no root section: a bending arm of {arm:0.####} mm is not that of a tooth");
    }

    private (double Chord, double Height, double Radius) PointAt(double filletAngle)
    {
        var point = _generation.PointAt(Guard.Number(filletAngle, "the angle θ of the critical section", "rad"), _lean);
        if (!(point.Chord > 0) || !(point.Radius > 0))
            throw Guard.Because($"no root section: a chord of {point.Chord:0.####} mm with a fillet of {point.Radius:0.####} mm is not that of a tooth");

        var notch = point.Chord / (2 * point.Radius);
        return notch is >= 1 and < 8
            ? point
            : throw Guard.Because(
                $"root section outside of ISO 6336-3: the notch parameter q_s must lie from 1 to below 8; it is {notch:0.###}");
    }
}
