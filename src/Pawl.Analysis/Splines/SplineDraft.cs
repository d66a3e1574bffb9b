using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Splines;
using Pawl.Quantities;
using Pawl.Specs.Model;
using B = Pawl.Analysis.Trains.BodyQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;
using K = Pawl.Analysis.Splines.SplineQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Splines;

/// <summary>One spline: geometry, fit, stresses.</summary>
internal sealed class SplineDraft
{
    private readonly Draft _draft;
    private readonly SplineSpec _spec;
    private readonly Subject _train;
    private readonly Subject _body;
    private readonly LoadShares _duty;
    private readonly Subject _s;

    private SplineDraft(Draft draft, SplineSpec spec, Subject train, Subject body, LoadShares duty)
    {
        (_draft, _spec, _train, _body, _duty) = (draft, spec, train, body, duty);
        _s = draft.Begin(SubjectKinds.Spline, $"splines.{spec.Name.Value}", spec.Name.Span).Relate("train", train).Relate("body", body);
    }

    public static void AddAll(Draft draft, TrainDraft train, IReadOnlyDictionary<string, Subject> bodies)
    {
        if (draft.Spec.Splines.Entries.IsEmpty)
            return;
        var duty = LoadShares.Of(draft, train.Subject);
        foreach (var spec in draft.Spec.Splines.Entries)
        {
            var spline = new SplineDraft(draft, spec, train.Subject, bodies[spec.Body.Value], duty);
            spline.Declare();
            spline.Geometry();
            spline.Fit();
            spline.Factors();
            spline.Stresses();
            spline.Uses();
            spline.Peaks();
        }
    }

    private string Key(string key) => $"splines.{_spec.Name.Value}.{key}";

    private bool IsFloating => _spec.Floating is { Value: true };

    /// <summary>The basic spline of a standard; shared with interfaces.</summary>
    public static InvoluteSpline Basic(string system, int teeth, double module, double pressureAngle, string root) => new(
        system == "iso-4156" ? SplineSystem.Iso4156 : SplineSystem.AnsiB921, teeth, module, pressureAngle, root == "flat" ? SplineRoot.Flat : SplineRoot.Fillet);

    private void Declare()
    {
        _s.Add(Draft.Text(K.System, _spec.System, ""));
        _s.Add(Draft.Text(K.Root, _spec.Root, ""));
        _s.Add(Draft.Truth(K.Floating, _spec.Floating, false, "clamped, for nothing else is stated"));
        _s.Add(Draft.Truth(K.Crowned, _spec.Crowned, false, "straight flanks, for nothing else is stated"));
        _s.Add(Draft.Text(K.Lubrication, _spec.Lubrication, Key("lubrication")));
        _s.Add(_draft.Number(K.Teeth, _spec.Shaft.Teeth));
        _s.Add(ModuleOf(_draft, K.Module, _spec.Module, _spec.DiametralPitch, Key("")));
        _s.Add(_draft.Amount(K.PressureAngle, _spec.PressureAngle, ""));
        _s.Add(_draft.Amount(K.Length, _spec.Length, Key("length")));
        _s.Add(_draft.Amount(K.Chamfers, _spec.Chamfers, 0, "none, for none are stated"));
        _s.Add(MaterialDraft.Hardness(_draft, K.ShaftHardness, _spec.Shaft.Hardness, Key("shaft.hardness")));
        _s.Add(MaterialDraft.Hardness(_draft, K.HubHardness, _spec.Hub.Hardness, Key("hub.hardness")));
        _s.Add(_draft.Amount(K.ShaftYield, _spec.Shaft.Yield, Key("shaft.yield")));
        _s.Add(_draft.Amount(K.HubYield, _spec.Hub.Yield, Key("hub.yield")));
        _s.Add(_draft.Amount(K.HubOutside, _spec.Hub.Outside, Key("hub.outside")));
        _s.Add(_draft.Amount(K.ShaftBore, _spec.Shaft.Bore, 0, "0: a solid shaft"));
        var material = _spec.Hub.Material is { } id ? _draft.Spec.Catalogue.Materials.Find(id.Value) : null;
        _s.Add(_draft.Amount(K.Density, material?.Density, 7.85e-9, "7850 kg/m³, steel"));
        _s.Add(_draft.Number(K.Poisson, material?.PoissonRatio, 0.3, "0.3, steel"));
    }

    /// <summary>The module, as stated or of the diametral pitch.</summary>
    public static Quantity ModuleOf(Draft draft, QuantityKind kind, Specs.Text.Stated<Amount>? module, Specs.Text.Stated<double>? pitch, string prefix) =>
        module is not null ? draft.Amount(kind, module, "")
        : pitch is not null ? draft.Between(kind, Draft.Declared(pitch), InvoluteSpline.ModuleOf(pitch.Value), InvoluteSpline.ModuleOf(pitch.Value), InvoluteSpline.ModuleOf(pitch.Value))
        : Quantity.NotEvaluated(kind, [], $"{prefix}module or {prefix}diametral_pitch is not stated");

    private InvoluteSpline Of(double module) => Basic(_spec.System.Value, _spec.Shaft.Teeth.Value, module, _spec.PressureAngle.Value.Coherent, _spec.Root.Value);

    private void Geometry()
    {
        ImmutableArray<Quantity> inputs = [_s[K.Module], _s[K.Teeth], _s[K.PressureAngle]];
        Add(K.PitchDiameter, spline => spline.PitchDiameter);
        Add(K.BaseDiameter, spline => spline.BaseDiameter);
        Add(K.Thickness, spline => spline.BasicSpaceWidth);
        Add(K.ExternalMajor, spline => spline.ExternalMajor);
        Add(K.InternalMinor, spline => spline.InternalMinor);
        Add(K.InternalMajor, spline => spline.InternalMajor);
        if (_spec.Shaft.Minor is { } minor)
            _s.Add(_draft.Amount(K.Minor, minor, ""));
        else
            Add(K.Minor, spline => spline.ExternalMinor);
        _s.Add(Derive.From(K.ContactHeight, _s[K.ExternalMajor], _s[K.InternalMinor], _s[K.Chamfers], SplineStress.ContactHeight));
        _s.Add(Derive.From(K.LengthShare, _s[K.Length], _s[K.PitchDiameter], (length, diameter) => length / diameter));

        void Add(QuantityKind kind, Func<InvoluteSpline, double> size) => _s.Add(Quantity.Compute(kind, inputs, v => size(Of(v[0]))));
    }

    private void Fit()
    {
        _s.Add(ClearanceQuantity());
        _s.Add(Derive.From(K.Play, _s[K.Clearance], _s[K.PitchDiameter], (clearance, diameter) => 2 * Math.Max(0, clearance) / diameter));
    }

    private Quantity ClearanceQuantity()
    {
        ImmutableArray<Quantity> inputs = [_s[K.Module], _s[K.Teeth], _s[K.Length]];
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(K.Clearance, inputs, reasons);
        try
        {
            var spline = Of(_s[K.Module].Value.Nominal);
            var length = _s[K.Length].Value.Nominal;
            var (shaft, hub) = (_spec.Shaft, _spec.Hub);
            var teeth = shaft.Thickness is { } thickness ? Limits(thickness.Value, Key("shaft.thickness"))
                : OfClass(SplineTolerance.Teeth(spline, shaft.Fit?.Value ?? throw Missing("shaft.fit"), shaft.Class?.Value ?? throw Missing("shaft.class"), length));
            var spaces = hub.Space is { } space ? Limits(space.Value, Key("hub.space"))
                : OfClass(SplineTolerance.Spaces(spline, hub.Class?.Value ?? throw Missing("hub.class"), length));
            var fit = FitLimits.Of(new(spaces.Least, spaces.Greatest), new(teeth.Least, teeth.Greatest));
            return Quantity.Bounded(K.Clearance, new(fit.Middle, fit.Least, fit.Greatest), inputs);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(K.Clearance, inputs, outside.Message);
        }

        (double Least, double Greatest) OfClass(SplineWidths widths)
        {
            _draft.Uses(SplineTolerance.TableId);
            return (widths.EffectiveLeast, widths.EffectiveGreatest);
        }

        OutsideValidityException Missing(string key) => new($"{Key(key)} is not stated");
    }

    private static (double Least, double Greatest) Limits(Toleranced stated, string key) => stated.Tolerance is Tolerance.Deviations own
        ? (stated.Nominal.Coherent + own.Lower, stated.Nominal.Coherent + own.Upper)
        : throw new OutsideValidityException($"{key} has no limits");

    private void Factors()
    {
        _s.Add(_body.Find(B.Torque) is { } torque
            ? Quantity.Compute(K.Torque, [torque], v => Math.Abs(v[0]))
            : Quantity.NotEvaluated(K.Torque, [], $"the torque inside {_spec.Body.Value} is not computed: neither input, output nor held"));
        _s.Add(Derive.From(K.PeakTorque, _s[K.Torque], _train[D.PeakTorque], _train[T.InputTorque], (own, peak, input) => own * peak / input));
        _s.Add(_draft.Amount(K.Misalignment, _spec.Misalignment, 0, "none, for none is stated"));
        _draft.Uses(SplineFactors.MisalignmentTableId);
        _s.Add(Derive.From(K.Distribution, _s[K.Misalignment], _s[K.Length], SplineFactors.Misalignment));
        _s.Add(_draft.Number(K.Starts, _spec.Starts, Key("starts")));
        _draft.Uses(SplineFactors.LifeTableId);
        _s.Add(Known(K.Life, [_s[K.Starts]], v => SplineFactors.Life(v[0], _duty.Reverse > 0)));
        _s.Add(Known(K.Turns, [_body[B.Speed], _train[D.ServiceLife]], v => Math.Abs(v[0]) * _duty.Shares.Sum(share => share.Share * share.Speed) * v[1] / Math.Tau));
        if (IsFloating)
        {
            _draft.Uses(SplineFactors.WearTableId);
            _s.Add(Derive.From(K.Wear, _s[K.Turns], SplineFactors.Wear));
        }

        _s.Add(Known(K.Speed, [_body[B.Speed]], v => Math.Abs(v[0]) * _duty.Fastest));
    }

    /// <summary>A number that needs the duty as well.</summary>
    private Quantity Known(QuantityKind kind, ImmutableArray<Quantity> inputs, Formula formula) =>
        _duty.Reasons.IsEmpty ? Quantity.Compute(kind, inputs, formula) : Quantity.NotEvaluated(kind, inputs, [.. Quantity.MissingReasons(inputs).Union(_duty.Reasons)]);

    private SplineStress Under(double torque, double diameter, double length) => new(torque, diameter, _spec.Shaft.Teeth.Value, length);

    private void Stresses()
    {
        var application = _train[D.ApplicationFactor];
        _s.Add(Quantity.Compute(
            K.Pressure, [_s[K.Length], _s[K.Torque], _s[K.PitchDiameter], _s[K.ContactHeight], application, _s[K.Distribution]],
            v => Under(v[1], v[2], v[0]).FlankPressure(v[3]) * v[4] * v[5]));
        _s.Add(Quantity.Compute(
            K.Shear, [_s[K.Length], _s[K.Torque], _s[K.PitchDiameter], _s[K.Thickness], application, _s[K.Distribution]],
            v => Under(v[1], v[2], v[0]).ToothShear(v[3]) * v[4] * v[5]));
        _s.Add(Quantity.Compute(
            K.Torsion, [_s[K.ShaftBore], _s[K.Torque], _s[K.PitchDiameter], _s[K.Minor], application],
            v => Under(v[1], v[2], 1).RootTorsion(v[3], v[0]) * v[4]));
        _s.Add(Quantity.Compute(K.HubTension, [_s[K.HubOutside], .. Hub(_s[K.Torque]), application], v => Tension(v, v[^1])));
    }

    private ImmutableArray<Quantity> Hub(Quantity torque) =>
        [torque, _s[K.PitchDiameter], _s[K.Length], _s[K.InternalMajor], _s[K.Distribution], _s[K.Speed], _s[K.Density], _s[K.Poisson]];

    /// <summary>Tension of the hub; the outside diameter first, then what <see cref="Hub"/> has.</summary>
    private double Tension(ReadOnlySpan<double> v, double application)
    {
        var stress = Under(v[1], v[2], v[3]);
        var driven = stress.BurstingHoop(_spec.PressureAngle.Value.Coherent, v[4], v[0]) + stress.ToothBending();
        return driven * application * v[5] + SplineStress.CentrifugalHoop(v[6], v[7], v[8], v[4], v[0]);
    }

    private void Uses()
    {
        _draft.Uses(SplineFactors.AllowablesTableId);
        var life = _s[K.Life];
        _s.Add(Used(K.PressureUse, [_s[K.Pressure], IsFloating ? _s[K.Wear] : life], (v, allowed) =>
            v[0] / ((_spec.Crowned is { Value: true } ? allowed.CrownedPressure : allowed.StraightPressure) * v[1] * (IsFloating ? 1 : SplineFactors.FixedPressure))));
        _s.Add(Used(K.ShearUse, [_s[K.Shear], life], (v, allowed) => v[0] / (allowed.Shear * v[1])));
        _s.Add(Used(K.TorsionUse, [_s[K.Torsion], life], (v, allowed) => v[0] / (allowed.Shear * v[1])));
        _s.Add(Used(K.HubUse, [_s[K.HubTension], life], (v, allowed) => v[0] / (allowed.Tension * v[1])));
        _s.Add(Derive.From(K.NeededLength, _s[K.Length], _s[K.PressureUse], (length, use) => length * use));
    }

    private Quantity Used(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<double[], SplineAllowables, double> formula)
    {
        ImmutableArray<Quantity> all = [.. inputs, _s[K.ShaftHardness], _s[K.HubHardness]];
        if (Quantity.MissingReasons(all) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(kind, all, reasons);
        try
        {
            // A window of hardness may be as soft as its lower end anywhere.
            var (shaft, hub) = (Allowed(_s[K.ShaftHardness].Value.Least), Allowed(_s[K.HubHardness].Value.Least));
            var softer = new SplineAllowables(
                Math.Min(shaft.Shear, hub.Shear), Math.Min(shaft.StraightPressure, hub.StraightPressure),
                Math.Min(shaft.CrownedPressure, hub.CrownedPressure), Math.Min(shaft.Tension, hub.Tension));
            return Quantity.Compute(kind, all, v => formula(v.ToArray(), softer));
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(kind, all, outside.Message);
        }
    }

    /// <summary>Allowed stresses of a hardness; what lies between tempered and hard counts as tempered, what is harder as the hardest.</summary>
    private static SplineAllowables Allowed(double vickers)
    {
        const double HardFrom = 48, HardTo = 63, TemperedTo = 351;
        var rockwell = vickers < 300 ? 0 : HardnessConversion.RockwellOfVickers(vickers);
        return rockwell >= HardFrom
            ? SplineFactors.OfHard(Math.Min(HardTo, rockwell))
            : SplineFactors.OfTempered(Math.Min(TemperedTo, HardnessConversion.BrinellOfVickers(vickers)));
    }

    private void Peaks()
    {
        var peak = _s[K.PeakTorque];
        _s.Add(Quantity.Compute(
            K.ToothYieldUse, [_s[K.Length], peak, _s[K.PitchDiameter], _s[K.Thickness], _s[K.Distribution], _s[K.ShaftYield], _s[K.HubYield]],
            v => Under(v[1], v[2], v[0]).ToothShear(v[3]) * v[4] * Math.Sqrt(3) / Math.Min(v[5], v[6])));
        _s.Add(Quantity.Compute(
            K.RootYieldUse, [_s[K.ShaftBore], peak, _s[K.PitchDiameter], _s[K.Minor], _s[K.ShaftYield]],
            v => Under(v[1], v[2], 1).RootTorsion(v[3], v[0]) * Math.Sqrt(3) / v[4]));
        _s.Add(Quantity.Compute(K.HubYieldUse, [_s[K.HubOutside], .. Hub(peak), _s[K.HubYield]], v => Tension(v, 1) / v[9]));
    }
}
