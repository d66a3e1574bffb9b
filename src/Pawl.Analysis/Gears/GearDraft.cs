using Pawl.Analysis.Core;
using Pawl.Analysis.Rating;
using Pawl.Mechanics.Gears;
using Pawl.Specs.Model;
using K = Pawl.Analysis.Gears.GearQuantities;

namespace Pawl.Analysis.Gears;

/// <summary>One gear with its computed quantities, as meshes and planet sets need it.</summary>
internal sealed class GearDraft
{
    private GearDraft(GearSpec spec, Subject subject)
    {
        Spec = spec;
        Subject = subject;
        Sign = spec.Internal is { Value: true } ? -1 : 1;
    }

    public GearSpec Spec { get; }

    public Subject Subject { get; }

    /// <summary>Its steel and treatment.</summary>
    public MaterialDraft Material { get; private set; } = null!;

    public string Name => Spec.Name.Value;

    /// <summary>−1 for an internal gear: the sign that ISO 21771 gives its teeth and diameters.</summary>
    public int Sign { get; }

    public bool IsInternal => Sign < 0;

    /// <summary>Number of teeth with the sign of ISO 21771.</summary>
    public int SignedTeeth => Sign * Spec.Teeth.Value;

    public Quantity this[QuantityKind kind] => Subject[kind];

    public static GearDraft Build(Draft draft, GearSpec spec, bool onPlanet, bool outwardShift)
    {
        var gear = new GearDraft(spec, draft.Begin(SubjectKinds.Gear, $"gears.{spec.Name.Value}", spec.Name.Span));
        gear.Declare(draft, onPlanet, outwardShift);
        gear.Material = MaterialDraft.Build(draft, spec, gear.Subject);
        gear.Size();
        ToothDraft.Add(draft, gear);
        gear.Teeth(draft);
        gear.Material.Tooth();
        gear.Inspect(draft);
        return gear;
    }

    private string Key(string key) => $"train.gears.{Name}.{key}";

    private void Declare(Draft draft, bool onPlanet, bool outwardShift)
    {
        var s = Subject;
        s.Add(draft.Number(K.Teeth, Spec.Teeth));
        s.Add(Quantity.ComputedText(K.Kind, IsInternal ? "internal" : "external"));
        s.Add(Quantity.OfTruth(K.OnPlanet, Draft.Declared(Spec.On), onPlanet, []));
        s.Add(Module(draft));
        s.Add(draft.Amount(K.PressureAngle, Spec.PressureAngle, 20 * Math.PI / 180, "20°, basic rack of ISO 53"));
        s.Add(draft.Amount(K.HelixAngle, Spec.HelixAngle, 0, "0°: spur gear"));
        s.Add(ProfileShift(draft, outwardShift));
        s.Add(draft.Number(K.Addendum, Spec.Addendum, 1, "1, basic rack of ISO 53"));
        s.Add(draft.Number(K.Dedendum, Spec.Dedendum, 1.25, "1.25, basic rack A of ISO 53"));
        s.Add(draft.Number(K.RootFillet, Spec.RootFillet, 0.38, "0.38, basic rack A of ISO 53"));
        s.Add(draft.Dimension(K.FaceWidth, Spec.FaceWidth, Key("face_width")));
        s.Add(draft.Dimension(K.AxialPlace, Spec.AxialPlace, Key("axial_place")));
        s.Add(draft.Amount(K.TipChamfer, Spec.TipChamfer, 0, "no tip chamfer"));
        s.Add(Surface());
        s.Add(Allowance(draft));
        s.Add(Expansion(draft));
    }

    private Quantity Surface() => Spec.HeatTreatment is { Treatment: { } treatment }
        ? Quantity.OfText(
            K.Surface, Draft.Declared(treatment),
            treatment.Value switch
            {
                Treatments.Normalised => "unhardened",
                Treatments.GasNitrided or Treatments.Nitrocarburised => "nitrided",
                Treatments.PrecipitationHardened => Treatments.ThroughHardened,
                var same => same,
            },
            [])
        : Draft.Text(K.Surface, Spec.Surface, Key("surface"));

    private Quantity Module(Draft draft) => Spec switch
    {
        { Module: { } module } => draft.Amount(K.Module, module, ""),
        { DiametralPitch: { } pitch } => draft.Between(
            K.Module, Draft.Declared(pitch), 25.4 / pitch.Value, 25.4 / pitch.Value, 25.4 / pitch.Value),
        _ => Draft.Missing(K.Module, Key("module")),
    };

    private Quantity ProfileShift(Draft draft, bool outwardShift)
    {
        if (Spec.ProfileShift is not { } stated || !IsInternal || !outwardShift)
            return draft.Number(K.ProfileShift, Spec.ProfileShift, Key("profile_shift"));
        return draft.Between(
            K.ProfileShift, Draft.Declared(stated, "counted outward, sign turned"), -stated.Value, -stated.Value, -stated.Value);
    }

    private Quantity Allowance(Draft draft)
    {
        if (Spec.ThicknessAllowance is not { } stated)
            return Draft.Missing(K.ThicknessAllowance, Key("thickness_allowance"));

        var (lower, upper) = (stated.Lower.Value.Coherent, stated.Upper.Value.Coherent);
        return draft.Between(
            K.ThicknessAllowance,
            new Origin.Declared(stated.Upper.Span, $"{stated.Upper.Text} / {stated.Lower.Text}", "as written"),
            (lower + upper) / 2, lower, upper);
    }

    private Quantity Expansion(Draft draft)
    {
        if (Spec.Material is not { } material)
            return Draft.Missing(K.ThermalExpansion, Key("material"));
        return draft.Amount(
            K.ThermalExpansion,
            draft.Spec.Catalogue.Materials.Find(material.Value)?.ThermalExpansion,
            $"materials.{material.Value}.thermal_expansion");
    }

    private void Size()
    {
        var s = Subject;
        var (z, sign) = (SignedTeeth, Sign);
        s.Add(Derive.From(K.TransversePressureAngle, s[K.PressureAngle], s[K.HelixAngle], ToothGeometry.TransversePressureAngle));
        s.Add(Derive.From(K.BaseHelixAngle, s[K.HelixAngle], s[K.PressureAngle], (beta, alpha) => ToothGeometry.BaseHelixAngle(alpha, beta)));
        s.Add(Derive.From(
            K.ReferenceDiameter, s[K.Teeth], s[K.Module], s[K.HelixAngle],
            (_, module, beta) => sign * ToothGeometry.ReferenceDiameter(z, ToothGeometry.TransverseModule(module, beta))));
        s.Add(Derive.From(K.BaseDiameter, s[K.ReferenceDiameter], s[K.TransversePressureAngle], ToothGeometry.BaseDiameter));
    }

    private void Teeth(Draft draft)
    {
        var s = Subject;
        var (z, sign) = (SignedTeeth, Sign);
        s.Add(Spec.TipDiameter is { } tip
            ? draft.Dimension(K.TipDiameter, tip, "")
            : Derive.From(
                K.TipDiameter, s[K.Teeth], s[K.ReferenceDiameter], s[K.Module], s[K.ProfileShift], s[K.Addendum],
                (_, d, m, x, addendum) => sign * ToothGeometry.TipDiameter(sign * d, m, x, addendum, 0)));
        s.Add(Derive.From(K.ActiveTipDiameter, s[K.TipDiameter], s[K.TipChamfer], (da, chamfer) => da - (sign * 2 * chamfer)));
        s.Add(Spec.RootDiameter is { } root
            ? draft.Dimension(K.RootDiameter, root, "")
            : s.Find(ToothQuantities.CutterRootDiameter) is { } made
            ? Derive.From(K.RootDiameter, made, d => d)
            : Derive.From(
                K.RootDiameter, s[K.Teeth], s[K.ReferenceDiameter], s[K.Module], s[K.ProfileShift], s[K.Dedendum],
                (_, d, m, x, dedendum) => sign * ToothGeometry.RootDiameter(sign * d, m, x, dedendum)));
        if (Spec.RootDiameter is not null && s.Find(ToothQuantities.CutterRootDiameter) is { } cut)
            s.Add(Derive.From(ToothQuantities.CutterRootDifference, s[K.RootDiameter], cut, (stated, made) => Math.Abs(stated - made)));
        s.Add(Derive.From(
            K.ToothDepth, s[K.TipDiameter], s[K.RootDiameter], (da, df) => ToothGeometry.ToothDepth(sign * da, sign * df)));
        s.Add(Quantity.Compute(
            K.TipThickness,
            [
                s[K.Teeth], s[K.TipDiameter], s[K.ReferenceDiameter], s[K.BaseDiameter], s[K.ProfileShift], s[K.HelixAngle],
                s[K.PressureAngle], s[K.TransversePressureAngle],
            ],
            v => ToothGeometry.TipThickness(sign * v[1], sign * v[2], sign * v[3], z, v[4], v[5], v[6], v[7])));
        s.Add(Derive.From(K.TipThicknessFactor, s[K.TipThickness], s[K.Module], (thickness, module) => thickness / module));
        Root(draft, z);
    }

    private void Root(Draft draft, int z)
    {
        var s = Subject;
        if (Spec.RootFormDiameter is { } stated)
            s.Add(draft.Dimension(K.RootFormDiameter, stated, ""));
        if (IsInternal)
        {
            if (Spec.RootFormDiameter is null)
            {
                s.Add(s.Find(ToothQuantities.CutterRootFormDiameter) is { } made
                    ? Derive.From(K.RootFormDiameter, made, d => d)
                    : Quantity.NotEvaluated(
                        K.RootFormDiameter, [],
                        $"{Key("root_form_diameter")} is not stated, and the root form of an internal gear depends on its cutter"));
            }

            return;
        }

        s.Add(Quantity.Compute(
            K.LeastProfileShift,
            [s[K.Teeth], s[K.HelixAngle], s[K.PressureAngle], s[K.TransversePressureAngle], s[K.Dedendum], s[K.RootFillet]],
            v => Mechanics.Gears.Root.LeastProfileShift(z, v[1], v[2], v[3], v[4], v[5])));
        s.Add(Derive.From(K.UndercutMargin, s[K.ProfileShift], s[K.LeastProfileShift], (x, least) => x - least));
        if (Spec.RootFormDiameter is not null)
            return;

        s.Add(Quantity.Compute(
            K.RootFormDiameter,
            [
                s[K.ReferenceDiameter], s[K.BaseDiameter], s[K.TransversePressureAngle], s[K.PressureAngle], s[K.Module],
                s[K.ProfileShift], s[K.Dedendum], s[K.RootFillet],
            ],
            v => Mechanics.Gears.Root.FormDiameter(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7])));
    }

    private void Inspect(Draft draft)
    {
        if (!IsInternal)
            Span(draft);
        Balls(draft);
        Rim(draft);
    }

    private void Span(Draft draft)
    {
        var s = Subject;
        var z = SignedTeeth;
        s.Add(Quantity.Compute(
            K.SpanTeeth,
            [s[K.Teeth], s[K.Module], s[K.PressureAngle], s[K.TransversePressureAngle], s[K.BaseHelixAngle], s[K.ProfileShift]],
            v => Inspection.BestTeethSpanned(z, v[1], v[2], v[3], v[4], v[5])));
        s.Add(Quantity.Compute(
            K.BaseTangentLength,
            [
                s[K.SpanTeeth], s[K.Teeth], s[K.Module], s[K.PressureAngle], s[K.TransversePressureAngle], s[K.ProfileShift],
                s[K.ThicknessAllowance],
            ],
            v => Inspection.BaseTangentLength((int)v[0], z, v[2], v[3], v[4], v[5], v[6])));
        if (s[K.HelixAngle] is { IsEvaluated: true, Value.Nominal: not 0 })
        {
            s.Add(Derive.From(
                K.SpanMeasurable, s[K.FaceWidth], s[K.BaseTangentLength], s[K.BaseHelixAngle],
                Inspection.BaseTangentFaceWidthReserve));
        }
    }

    private void Balls(Draft draft)
    {
        var s = Subject;
        var (z, sign) = (SignedTeeth, Sign);
        s.Add(Spec.BallDiameter is { } stated
            ? draft.Amount(K.BallDiameter, stated, "")
            : s[K.Module] is { IsEvaluated: true, Value.Nominal: var module }
                ? draft.Assumed(
                    K.BallDiameter,
                    (IsInternal ? 1.68 : 1.728) * module,
                    IsInternal ? "1.68 modules, common practice for internal gears" : "1.728 modules, common practice for external gears")
                : Quantity.NotEvaluated(K.BallDiameter, [], s[K.Module].Reasons));
        s.Add(Quantity.Compute(
            K.BallCentreDiameter,
            [
                s[K.Teeth], s[K.BaseDiameter], s[K.Module], s[K.PressureAngle], s[K.TransversePressureAngle], s[K.ProfileShift],
                s[K.BallDiameter], s[K.ThicknessAllowance],
            ],
            v => BallInspection.CentreDiameter(
                v[1], BallInspection.CentrePressureAngle(v[6], z, v[2], v[3], v[4], v[5], v[7]))));
        s.Add(Derive.From(
            K.DimensionOverBalls, s[K.Teeth], s[K.BallCentreDiameter], s[K.BallDiameter],
            (_, centre, ball) => BallInspection.Dimension(z, centre, ball)));
        s.Add(Derive.From(
            K.BallProud, s[K.BallCentreDiameter], s[K.BallDiameter], s[K.TipDiameter],
            (centre, ball, tip) => BallInspection.StandsProud(centre, ball, sign * tip)));
        s.Add(Derive.From(
            K.BallRootClearance, s[K.BallCentreDiameter], s[K.BallDiameter], s[K.RootDiameter],
            (centre, ball, root) => BallInspection.RootClearance(centre, ball, sign * root)));
    }

    private void Rim(Draft draft)
    {
        if (Spec.RimThickness is not { } stated)
            return;

        var s = Subject;
        s.Add(draft.Amount(K.RimThickness, stated, ""));
        s.Add(Derive.From(
            K.RimRatio, s[K.RimThickness], IsInternal ? s[K.Module] : s[K.ToothDepth], (rim, measure) => rim / measure));
    }
}
