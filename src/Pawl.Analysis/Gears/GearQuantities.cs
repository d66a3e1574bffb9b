using Pawl.Analysis.Core;
using Pawl.Analysis.Rating;
using Pawl.Mechanics.Gears;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Gears;

/// <summary>One toothed gear by itself.</summary>
public sealed class GearQuantities : Section<GearSpec>
{
    internal const string External = "external";
    internal const string Internal = "internal";
    private const string Iso = "ISO 21771";

    public static readonly NumberDefinition<GearSpec> Teeth = Number("teeth", "z", "Number of teeth").NeverNegative().Stated(static s => s.Teeth);

    public static readonly RowDefinition<GearSpec, string> Kind = Text("kind", "External or internal").OneOf(External, Internal)
        .By("internal where the spec says `internal: true`", "the spec", Certainty.Declared)
        .Named(static s => IsInternal(s) ? Internal : External);

    public static readonly TruthDefinition<GearSpec> OnPlanet = Truth("on_planet", "Sits on a planet")
        .Custom(static subject => Quantity.OfTruth(
            OnPlanet!, AnalysisContext.Declared(SpecOf(subject).On), subject.Context.Spec.Train!.Planets.Find(SpecOf(subject).On.Value) is not null, []));

    public static readonly NumberDefinition<GearSpec> DiametralPitch =
        Number("diametral_pitch", "P_nd", "Normal diametral pitch, teeth per inch").Stated(static s => s.DiametralPitch).Optional();

    public static readonly NumberDefinition<GearSpec> Module = Number("module", "m_n", "Normal module", Units.Millimetre).NeverNegative()
        .By("as declared, or 25.4 mm / P_nd", "definition", Certainty.Declared)
        .Stated(static s => s.Module).From(DiametralPitch, static pitch => 25.4 / pitch);

    public static readonly NumberDefinition<GearSpec> PressureAngle =
        Number("pressure_angle", "α_n", "Normal pressure angle", Units.Degree)
        .Stated(static s => s.PressureAngle).Assumed(20 * Math.PI / 180, "20°, basic rack of ISO 53");

    public static readonly NumberDefinition<GearSpec> HelixAngle = Number("helix_angle", "β", "Helix angle", Units.Degree)
        .Scaled(Math.PI / 180).Stated(static s => s.HelixAngle).Assumed(0, "0°: spur gear");

    public static readonly RowDefinition<GearSpec, string> Hand = Text("hand", "Hand of the helix").OneOf("left", "right")
        .When(HelixAngle, static beta => beta != 0).Stated(static s => s.Hand);

    public static readonly NumberDefinition<GearSpec> ProfileShift = Number("profile_shift", "x", "Profile shift coefficient")
        .Noted("ISO 21771 sign: positive shift thickens the tooth, internal gears included")
        .Custom(static subject => OutwardShift(subject)).Stated(static s => s.ProfileShift);

    public static readonly NumberDefinition<GearSpec> Addendum = Number("addendum", "h_aP*", "Addendum coefficient of the basic rack")
        .Stated(static s => s.Addendum).Assumed(1, "1, basic rack of ISO 53");

    public static readonly NumberDefinition<GearSpec> Dedendum = Number("dedendum", "h_fP*", "Dedendum coefficient of the basic rack")
        .Stated(static s => s.Dedendum).Assumed(1.25, "1.25, basic rack A of ISO 53");

    public static readonly NumberDefinition<GearSpec> RootFillet = Number("root_fillet", "ρ_fP*", "Root fillet coefficient of the basic rack")
        .Stated(static s => s.RootFillet).Assumed(0.38, "0.38, basic rack A of ISO 53");

    public static readonly NumberDefinition<GearSpec> FaceWidth =
        Number("face_width", "b", "Face width", Units.Millimetre).NeverNegative().Stated(static s => s.FaceWidth);

    public static readonly NumberDefinition<GearSpec> AxialPosition =
        Number("axial_position", "", "Axial position of the middle of the face", Units.Millimetre).Stated(static s => s.AxialPosition);

    public static readonly NumberDefinition<GearSpec> ThicknessAllowance =
        Number("thickness_allowance", "E_sn", "Tooth thickness allowance", Units.Millimetre).Scaled(0.1).Asking("thickness_allowance")
        .Custom(static subject => Allowance(subject));

    public static readonly NumberDefinition<GearSpec> TipChamfer = Number("tip_chamfer", "h_K", "Radial height of the tip chamfer", Units.Millimetre)
        .Stated(static s => s.TipChamfer).Assumed(0, "no tip chamfer");

    public static readonly NumberDefinition<GearSpec> TipRelief =
        Number("tip_relief", "C_a", "Tip relief", Units.Micrometre).StatedAlone(static s => s.TipRelief).Optional();

    public static readonly NumberDefinition<GearSpec> TipReliefFactor = Number("tip_relief_factor", "C_a/m_n", "Tip relief per module")
        .By("C_a / m_n", "closed form")
        .From(TipRelief, Module, static (relief, m) => relief / m);

    public static readonly RowDefinition<GearSpec, string> Surface = Text("surface", "Condition of the flanks")
        .Custom(static subject => SurfaceOfTreatment(subject)).Stated(static s => s.Surface);

    public static readonly NumberDefinition<GearSpec> TransversePressureAngle =
        Number("transverse_pressure_angle", "α_t", "Transverse pressure angle", Units.Degree)
        .By("α_t = atan(tan α_n / cos β)", Iso)
        .From(PressureAngle, HelixAngle, ToothGeometry.TransversePressureAngle);

    public static readonly NumberDefinition<GearSpec> BaseHelixAngle = Number("base_helix_angle", "β_b", "Base helix angle", Units.Degree)
        .By("β_b = asin(sin β · cos α_n)", Iso).Scaled(Math.PI / 180)
        .From(HelixAngle, PressureAngle, static (beta, alpha) => ToothGeometry.BaseHelixAngle(alpha, beta));

    public static readonly NumberDefinition<GearSpec> ReferenceDiameter = Number("reference_diameter", "d", "Reference diameter", Units.Millimetre).NeverNegative()
        .By("d = |z| · m_n / cos β", Iso)
        .From(Teeth, Module, HelixAngle, static (z, m, beta) => ToothGeometry.ReferenceDiameter((int)z, ToothGeometry.TransverseModule(m, beta)));

    public static readonly NumberDefinition<GearSpec> BaseDiameter = Number("base_diameter", "d_b", "Base diameter", Units.Millimetre)
        .By("d_b = d · cos α_t", Iso)
        .From(ReferenceDiameter, TransversePressureAngle, ToothGeometry.BaseDiameter);

    public static readonly NumberDefinition<GearSpec> TipDeviation =
        Number("tip_deviation", "Δ_a", "Deviation of the tip diameter", Units.Millimetre)
        .When(static s => s.TipDiameter is null)
        .Custom(static subject => Stated(subject, TipDeviation!, ((GearSpec)subject.Model).TipDeviations))
        .Custom(static subject => General(subject, TipDeviation!, static (d, m, x, gear) => ToothGeometry.TipDiameter(d, m, x, gear[Addendum!].Value.Nominal, 0)))
        .Assumed(0, "0: the tip diameter is exact, for neither its deviations nor a general tolerance are stated");

    public static readonly NumberDefinition<GearSpec> TipDiameter = Number("tip_diameter", "d_a", "Tip diameter", Units.Millimetre).NeverNegative()
        .By("d_a = |d + 2·m_n·(x + h_aP*)| + Δ_a, or as declared", Iso)
        .Stated(static s => s.TipDiameter)
        .From(Kind, ReferenceDiameter, Module, ProfileShift, Addendum, TipDeviation,
            static (kind, d, m, x, addendum, deviation) => Sign(kind) * ToothGeometry.TipDiameter(Sign(kind) * d, m, x, addendum, 0) + deviation);

    public static readonly NumberDefinition<GearSpec> ActiveTipDiameter =
        Number("active_tip_diameter", "d_Na", "Tip diameter less the chamfer", Units.Millimetre)
        .By("d_Na = d_a ∓ 2·h_K (external −, internal +)", Iso)
        .From(Kind, TipDiameter, TipChamfer, static (kind, tip, chamfer) => tip - (Sign(kind) * 2 * chamfer));

    public static readonly NumberDefinition<GearSpec> RootDeviation =
        Number("root_deviation", "Δ_f", "Deviation of the root diameter", Units.Millimetre)
        .When(static s => s.RootDiameter is null && s.Cutter is null)
        .Custom(static subject => Stated(subject, RootDeviation!, ((GearSpec)subject.Model).RootDeviations))
        .Custom(static subject => General(subject, RootDeviation!, static (d, m, x, gear) => ToothGeometry.RootDiameter(d, m, x, gear[Dedendum!].Value.Nominal)))
        .Assumed(0, "0: the root diameter is exact, for neither its deviations nor a general tolerance are stated");

    public static readonly NumberDefinition<GearSpec> RootDiameter = Number("root_diameter", "d_f", "Root diameter", Units.Millimetre)
        .By("d_f = |d + 2·m_n·(x − h_fP*)| + Δ_f; a ring whose cutter is stated: d_f0; or as declared", Iso)
        .Stated(static s => s.RootDiameter)
        .From(Own(static () => ToothQuantities.CutterRootDiameter, "d_f0"), static made => made)
        .From(Kind, ReferenceDiameter, Module, ProfileShift, Dedendum, RootDeviation,
            static (kind, d, m, x, dedendum, deviation) => Sign(kind) * ToothGeometry.RootDiameter(Sign(kind) * d, m, x, dedendum) + deviation);

    public static readonly NumberDefinition<GearSpec> ToothDepth = Number("tooth_depth", "h", "Tooth depth", Units.Millimetre)
        .By("h = |d_a − d_f| / 2", Iso)
        .From(Kind, TipDiameter, RootDiameter, static (kind, tip, root) => ToothGeometry.ToothDepth(Sign(kind) * tip, Sign(kind) * root));

    public static readonly NumberDefinition<GearSpec> TipThickness =
        Number("tip_thickness", "s_an", "Normal tooth thickness at the tip", Units.Millimetre)
        .By("s_an = d_a · ((π/2 + 2·x·tan α_n)/z + inv α_t − inv α_at) · cos β_a, cos α_at = d_b/d_a", Iso)
        .Noted("nominal tooth, the thickness allowance not taken off; no tip relief").Turns()
        .From(Kind, Teeth, TipDiameter, ReferenceDiameter, BaseDiameter, ProfileShift, HelixAngle, PressureAngle, TransversePressureAngle,
            static (kind, z, da, d, db, x, beta, normal, transverse) => ToothGeometry.TipThickness(
                Sign(kind) * da, Sign(kind) * d, Sign(kind) * db, Signed(kind, z), x, beta, normal, transverse));

    public static readonly NumberDefinition<GearSpec> TipThicknessFactor = Number("tip_thickness_factor", "s_an/m_n", "Tip thickness per module")
        .By("s_an / m_n", Iso)
        .From(TipThickness, Module, static (thickness, m) => thickness / m);

    public static readonly NumberDefinition<GearSpec> MinProfileShift =
        Number("min_profile_shift", "x_min", "Minimum profile shift without undercut")
        .By("x_min = h_fP* − ρ_fP*·(1 − sin α_n) − z·sin²α_t/(2·cos β)", Iso)
        .Noted("generation by a rack whose tip is the basic rack's root")
        .When(static s => !IsInternal(s))
        .From(Teeth, HelixAngle, PressureAngle, TransversePressureAngle, Dedendum, RootFillet,
            static (z, beta, normal, transverse, dedendum, fillet) =>
                Root.MinProfileShift((int)z, beta, normal, transverse, dedendum, fillet));

    public static readonly NumberDefinition<GearSpec> UndercutMargin =
        Number("undercut_margin", "x − x_min", "Profile shift above the limit of undercut")
        .By("x − x_min", Iso).Scaled(0.1)
        .From(ProfileShift, MinProfileShift, static (x, least) => x - least);

    public static readonly NumberDefinition<GearSpec> RootFormDiameter = Number("root_form_diameter", "d_Ff", "Root form diameter", Units.Millimetre)
        .By(
            "d_Ff = √( (d·sin α_t − 2·m_n·(h_fP* − x − ρ_fP*·(1 − sin α_n))/sin α_t)² + d_b² ); a ring whose cutter is stated: d_Ff0; or as declared",
            Iso)
        .Noted("by a rack tool, by the cutter of a ring, or as the maker of the tool states it")
        .Stated(static s => s.RootFormDiameter)
        .From(Own(static () => ToothQuantities.CutterRootFormDiameter, "d_Ff0"), static made => made)
        .Custom(static subject => IsInternal(SpecOf(subject))
            ? Quantity.NotEvaluated(
                RootFormDiameter!, [],
                $"{subject.Keys}.root_form_diameter is not stated, and the root form of an internal gear depends on its cutter")
            : null)
        .From(ReferenceDiameter, BaseDiameter, TransversePressureAngle, PressureAngle, Module, ProfileShift, Dedendum, RootFillet, Root.FormDiameter);

    public static readonly NumberDefinition<GearSpec> SpanTeeth = Number("span_teeth", "k", "Number of teeth spanned")
        .By("k nearest to contact at the V-circle", Iso)
        .When(static s => !IsInternal(s))
        .From(Teeth, Module, PressureAngle, TransversePressureAngle, BaseHelixAngle, ProfileShift,
            static (z, m, normal, transverse, helix, x) => Inspection.BestTeethSpanned((int)z, m, normal, transverse, helix, x));

    public static readonly NumberDefinition<GearSpec> BaseTangentLength =
        Number("base_tangent_length", "W_k", "Base tangent length", Units.Millimetre)
        .By("W_k = m_n·cos α_n·((k − ½)·π + z·inv α_t) + 2·x·m_n·sin α_n + E_sn·cos α_n", Iso)
        .Noted("nominal at the middle of the thickness allowance")
        .From(SpanTeeth, Teeth, Module, PressureAngle, TransversePressureAngle, ProfileShift, ThicknessAllowance,
            static (k, z, m, normal, transverse, x, allowance) =>
                Inspection.BaseTangentLength((int)k, (int)z, m, normal, transverse, x, allowance));

    public static readonly NumberDefinition<GearSpec> SpanMeasurable =
        Number("span_measurable_width", "", "Face width left for the anvils", Units.Millimetre)
        .By("b − W_k·sin β_b", Iso).Scaled(1.5)
        .When(HelixAngle, static beta => beta != 0)
        .From(FaceWidth, BaseTangentLength, BaseHelixAngle, Inspection.BaseTangentFaceWidthReserve);

    public static readonly NumberDefinition<GearSpec> BallDiameter =
        Number("ball_diameter", "D_M", "Diameter of the measuring balls", Units.Millimetre)
        .Stated(static s => s.BallDiameter).Custom(static subject => UsualBall(subject));

    public static readonly NumberDefinition<GearSpec> BallCentreDiameter =
        Number("ball_centre_diameter", "d_K", "Diameter of the circle through the ball centres", Units.Millimetre)
        .By("d_K = d_b / cos α_Kt, inv α_Kt = inv α_t + D_M/(z·m_n·cos α_n) − (π/2 − 2·x·tan α_n)/z + E_sn/(z·m_n)", Iso)
        .Noted("nominal at the middle of the thickness allowance")
        .From(Kind, Teeth, BaseDiameter, Module, PressureAngle, TransversePressureAngle, ProfileShift, BallDiameter, ThicknessAllowance,
            static (kind, z, db, m, normal, transverse, x, ball, allowance) => BallInspection.CentreDiameter(
                db, BallInspection.CentrePressureAngle(ball, Signed(kind, z), m, normal, transverse, x, allowance)));

    public static readonly NumberDefinition<GearSpec> DimensionOverBalls =
        Number("dimension_over_balls", "M_dK", "Dimension over balls (internal: between balls)", Units.Millimetre)
        .By("M_dK = d_K ± D_M; for odd z d_K·cos(π/(2·z)) ± D_M (internal −)", Iso)
        .Noted("nominal at the middle of the thickness allowance")
        .From(Kind, Teeth, BallCentreDiameter, BallDiameter, static (kind, z, centre, ball) => BallInspection.Dimension(Signed(kind, z), centre, ball));

    public static readonly NumberDefinition<GearSpec> BallProtrusion =
        Number("ball_protrusion", "", "Protrusion of the measuring ball beyond the tip", Units.Millimetre)
        .By("(d_K + D_M − d_a)/2 (internal: (d_a + D_M − d_K)/2)", Iso).Scaled(0.1)
        .From(Kind, BallCentreDiameter, BallDiameter, TipDiameter,
            static (kind, centre, ball, tip) => BallInspection.StandsProud(centre, ball, Sign(kind) * tip));

    public static readonly NumberDefinition<GearSpec> BallRootClearance =
        Number("ball_root_clearance", "", "Clearance of the measuring ball from the root", Units.Millimetre)
        .By("(d_K − D_M − d_f)/2 (internal: (d_f − d_K − D_M)/2)", Iso).Scaled(0.1)
        .From(Kind, BallCentreDiameter, BallDiameter, RootDiameter,
            static (kind, centre, ball, root) => BallInspection.RootClearance(centre, ball, Sign(kind) * root));

    public static readonly NumberDefinition<GearSpec> RimThickness =
        Number("rim_thickness", "s_R", "Rim thickness", Units.Millimetre).Stated(static s => s.RimThickness).Optional();

    public static readonly NumberDefinition<GearSpec> RimRatio =
        Number("rim_ratio", "s_R/h", "Rim thickness per tooth depth (internal: per module)")
        .By("s_R / h (internal: s_R / m_n)", "ISO 6336-3, rim thickness factor", Certainty.Memory)
        .From(Kind, RimThickness, ToothDepth, Module, static (kind, rim, depth, m) => rim / (kind == Internal ? m : depth));

    public static readonly NumberDefinition<GearSpec> ThermalExpansion =
        Number("thermal_expansion", "α_g", "Thermal expansion of the gear's material", Units.PerKelvin)
        .Found(
            static (s, subject) => s.Material is { } id ? subject.Context.Spec.Catalogue.Materials.Find(id.Value)?.ThermalExpansion : null,
            static s => s.Material is { } id ? $"materials.{id.Value}.thermal_expansion" : $"train.gears.{s.Name.Value}.material");

    /// <summary>−1 for an internal gear: the sign that ISO 21771 gives its teeth and diameters.</summary>
    internal static int Sign(string kind) => kind == Internal ? -1 : 1;

    /// <summary>Number of teeth with the sign of ISO 21771.</summary>
    internal static int Signed(string kind, double teeth) => Sign(kind) * (int)teeth;

    internal static bool IsInternal(GearSpec gear) => gear.Internal is { Value: true };

    private static GearSpec SpecOf(Subject subject) => (GearSpec)subject.Model;

    private static Quantity? OutwardShift(Subject subject) =>
        SpecOf(subject) is { ProfileShift: { } stated } gear && IsInternal(gear)
            && subject.Context.Spec.Train!.InternalProfileShift is { Value: "outward" }
            ? subject.Context.Between(
                ProfileShift, AnalysisContext.Declared(stated, "counted outward, sign turned"), -stated.Value, -stated.Value, -stated.Value)
            : null;

    private static Quantity? Allowance(Subject subject)
    {
        if (SpecOf(subject).ThicknessAllowance is not { } stated)
            return null;

        var (lower, upper) = (stated.Lower.Value.Coherent, stated.Upper.Value.Coherent);
        return subject.Context.Between(
            ThicknessAllowance,
            new Origin.Declared(stated.Upper.Span, $"{stated.Upper.Text} / {stated.Lower.Text}", "as written"),
            (lower + upper) / 2, lower, upper);
    }

    private static Quantity? SurfaceOfTreatment(Subject subject) => SpecOf(subject).HeatTreatment is { Treatment: { } treatment }
        ? Quantity.OfText(
            Surface, AnalysisContext.Declared(treatment),
            treatment.Value switch
            {
                Treatments.Normalised => "unhardened",
                Treatments.GasNitrided or Treatments.Nitrocarburised => "nitrided",
                Treatments.PrecipitationHardened => Treatments.ThroughHardened,
                var same => same,
            },
            [])
        : null;

    private static Quantity UsualBall(Subject subject)
    {
        var (module, isInternal) = (subject[Module], IsInternal(SpecOf(subject)));
        return module.IsEvaluated
            ? subject.Context.Assumed(
                BallDiameter, (isInternal ? 1.68 : 1.728) * module.Value.Nominal,
                isInternal ? "1.68 modules, common practice for internal gears" : "1.728 modules, common practice for external gears")
            : Quantity.NotEvaluated(BallDiameter, [], module.Reasons);
    }

    private static Quantity? Stated(Subject gear, QuantityKind kind, DeviationsSpec? stated)
    {
        if (stated is null)
            return null;
        var (least, greatest) = (stated.Lower.Value.Coherent, stated.Upper.Value.Coherent);
        var origin = AnalysisContext.Declared(stated.Upper) with { Text = $"{stated.Upper.Text} to {stated.Lower.Text}" };
        return gear.Context.Between(kind, origin, Math.Clamp(0, least, greatest), least, greatest);
    }

    private static Quantity? General(Subject gear, QuantityKind kind, Func<double, double, double, Subject, double> size) =>
        gear[ReferenceDiameter!] is { IsEvaluated: true } d && gear[Module!] is { IsEvaluated: true } m
            ? gear.Context.GeneralDeviation(kind, size(Sign(gear[Kind!].Text!) * d.Value.Nominal, m.Value.Nominal, gear[ProfileShift!].Value.Nominal, gear))
            : null;
}
