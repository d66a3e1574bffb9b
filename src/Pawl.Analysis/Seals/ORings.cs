using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Seals;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using Limits = Pawl.Mechanics.Interval;
using Value = Pawl.Quantities.Extent;

namespace Pawl.Analysis.Seals;

/// <summary>An O-ring in its gland, at the worst case of ring, gland and eccentricity.</summary>
public sealed class ORings : Section<ORingSpec>
{
    private static readonly Limits AnyWidth = Limits.Exactly(1);

    private const string Closed = "closed form";
    private const string Practice = "common practice, no source";

    // IRHD. A back-up ring is harder still, so its gap is on the safe side.
    private const double HardestOfChart = 90;

    // Rings and grooves are measured at 20 °C (ISO 1).
    private const double Room = 20;

    // Of FKM, NBR and their like 1.6 to 2.3·10⁻⁴ 1/K, common practice, no source: the greatest, where nobody vouched for a value.
    private const double UsualExpansion = 2.3e-4;

    public static readonly RowDefinition<ORingSpec, Elastomer> Elastomer =
        Row<Elastomer>("elastomer", "Elastomer, code of ISO 1629", Mechanics.Seals.Elastomer.TryFind).Stated(static s => s.Elastomer);

    public static readonly RowDefinition<ORingSpec, string> OilBase = Text("oil_base", "Base of the oil")
        .Custom(static subject => Lubrication.OilBase.Of(subject.Context, OilBase!));

    public static readonly RowDefinition<ORingSpec, string> Suitability = Text("suitability", "Elastomer–oil compatibility").OneOf("suitable", "limited", "unsuitable")
        .By("table elastomers, by elastomer and base: suitable, limited, unsuitable", Practice, Certainty.CommonPractice)
        .Tables(Mechanics.Seals.Elastomer.TableId)
        .From(Elastomer, OilBase, Lubrication.OilBase.Suitability);

    public static readonly NumberDefinition<ORingSpec> Hardness =
        Number("hardness", "", "Hardness of the elastomer, IRHD").NeverNegative().Stated(static s => s.Hardness).Assumed(70, $"70 IRHD, {Practice}");

    public static readonly RowDefinition<ORingSpec, string> Gland = Text("gland", "Position of the groove").OneOf("plug", "bore", "face-inside", "face-outside").Stated(static s => s.Gland);

    public static readonly RowDefinition<ORingSpec, string> Direction = Text("direction", "Direction of the squeeze").OneOf("radial", "axial")
        .By("radial of a plug or bore, axial of a face", Closed)
        .From(Gland, static gland => gland is "plug" or "bore" ? "radial" : "axial");

    public static readonly RowDefinition<ORingSpec, string> Motion = Text("motion", "Static, reciprocating or rotating").OneOf("static", "reciprocating", "rotating")
        .Stated(static s => s.Motion)
        .Assumed("static", "static, for nothing is stated");

    public static readonly NumberDefinition<ORingSpec> Inside =
        Number("inside_diameter", "d_1", "Inside diameter of the free ring", Units.Millimetre)
        .Custom(static subject => OfTable(subject, Inside!, static ring => ring.InsideDiameter, static ring => ring.Extents.InsideDiameter))
        .Stated(static s => s.Inside, "as568 or inside");

    public static readonly NumberDefinition<ORingSpec> Cord =
        Number("cord", "d_2", "Cross-section of the free ring", Units.Millimetre)
        .Custom(static subject => OfTable(subject, Cord!, static ring => ring.Cord, static ring => ring.Extents.Cord))
        .Stated(static s => s.Cord, "as568 or cord");

    public static readonly NumberDefinition<ORingSpec> Bore =
        Number("bore", "D_B", "Bore of the outer part", Units.Millimetre).NeverNegative().When(IsRadial).Stated(static s => s.Bore);

    public static readonly NumberDefinition<ORingSpec> Plug =
        Number("plug", "D_P", "Diameter of the inner part", Units.Millimetre).When(IsRadial).Stated(static s => s.Plug);

    public static readonly NumberDefinition<ORingSpec> Groove =
        Number("groove", "D_G", "Diameter of the bottom of the groove", Units.Millimetre).Stated(static s => s.Groove);

    public static readonly NumberDefinition<ORingSpec> Depth =
        Number("depth", "h", "Depth of the face groove", Units.Millimetre).When(static s => !IsRadial(s)).Stated(static s => s.Depth);

    public static readonly NumberDefinition<ORingSpec> Width =
        Number("width", "w", "Width of the groove", Units.Millimetre).NeverNegative().Stated(static s => s.Width);

    public static readonly RowDefinition<ORingSpec, string> BackUps = Text("back_up_rings", "Back-up rings").OneOf("one", "two")
        .When(HasBackUp).Stated(static s => s.BackUpRings);

    public static readonly NumberDefinition<ORingSpec> BackUpThickness =
        Number("back_up_thickness", "t_b", "Thickness of one back-up ring", Units.Millimetre).NeverNegative()
        .When(HasBackUp).Stated(static s => s.BackUpThickness);

    public static readonly NumberDefinition<ORingSpec> RubberWidth =
        Number("rubber_width", "w_r", "Width of the groove for the rubber", Units.Millimetre)
        .By("w_r = w; with k back-up rings w − k·t_b", Closed)
        .For(HasBackUp).From(Width, BackUps, BackUpThickness, static (width, rings, thickness) =>
            Mechanics.Seals.Gland.RubberWidth(width, rings == "two" ? 2 : 1, thickness))
        .For(static s => !HasBackUp(s)).From(Width, static width => width);

    public static readonly RowDefinition<ORingSpec, string> PressureFrom = Text("pressure_from", "Sides that the pressure comes from").OneOf("one", "both")
        .When(HasBackUp).Stated(static s => s.PressureFrom).Assumed("one", "one: nothing else is stated");

    public static readonly RowDefinition<ORingSpec, string> BackUpSide = Text("back_up_side", "Side of the only back-up ring").OneOf("low-pressure", "high-pressure")
        .When(static s => s.BackUpRings is { Value: "one" }).Stated(static s => s.BackUpSide);

    public static readonly TruthDefinition<ORingSpec> BackUpProtects =
        Truth("back_up_protects", "A back-up ring closes the gap that the pressure pushes into")
        .By("two; or one on the low-pressure side, where the pressure comes from one side", Practice, Certainty.CommonPractice)
        .For(static s => s.BackUpRings is { Value: "two" }).From(BackUps, static _ => true)
        .From(PressureFrom, BackUpSide, static (from, side) => from == "one" && side == "low-pressure");

    public static readonly NumberDefinition<ORingSpec> Land =
        Number("land", "", "Length of the part that the groove is cut into", Units.Millimetre).Stated(static s => s.Land).Optional();

    public static readonly NumberDefinition<ORingSpec> Eccentricity =
        Number("eccentricity", "e", "Maximum radial offset that another guide allows", Units.Millimetre)
        .Noted("absent: the plug may touch its bore")
        .When(IsRadial)
        .Stated(static s => s.Eccentricity).Optional();

    public static readonly NumberDefinition<ORingSpec> Height =
        Number("gland_height", "h", "Height of the gland around the circumference", Units.Millimetre)
        .By("h = (D_outer − D_inner)/2 ± e, e at most half the clearance of the plug in its bore; face: the depth", Closed)
        .Range(
            Gland, Inside.Limits(), Cord.Limits(), Bore.Limits(), Plug.Limits(), Groove.Limits(), Eccentricity.Or(double.PositiveInfinity),
            static (gland, inside, cord, bore, plug, groove, guided) =>
                Around(NominalHeight(gland, bore, plug, groove), Extremes(gland, inside, cord, bore, plug, groove, guided, AnyWidth).Height))
        .From(Depth, static depth => depth);

    public static readonly NumberDefinition<ORingSpec> Stretch =
        Number("stretch", "", "Stretch of the inside diameter", Units.Percent)
        .By("(D − d_1)/d_1, D the groove of a plug or the rod in a bore; below 0 the ring is the larger and lies loose", Closed).Scaled(0.05)
        .When(static s => s.Gland.Value != "face-inside")
        .From(
            Gland, Inside, Groove, Plug.Or(0),
            static (gland, inside, groove, plug) => Mechanics.Seals.Gland.Stretch(inside, gland == "bore" ? plug : groove));

    public static readonly NumberDefinition<ORingSpec> Compression =
        Number("outside_compression", "", "Compression of the outside diameter", Units.Percent)
        .By("(d_1 + 2·d_2 − D_G)/(d_1 + 2·d_2)", Closed).Scaled(0.03)
        .When(static s => s.Gland.Value is "bore" or "face-inside")
        .From(Inside, Cord, Groove, Mechanics.Seals.Gland.Compression);

    public static readonly NumberDefinition<ORingSpec> Squeeze =
        Number("squeeze", "", "Squeeze of the cross-section", Units.Percent)
        .By(
            "(d_2′ − h)/d_2′, d_2′ = d_2·√((d_1 + d_2)/(D + d_2)) the cord stretched over D, or d_2·√((d_1 + d_2)/(D − d_2)) pushed into D",
            "closed form; the volume of rubber stays").Scaled(0.1)
        .Range(
            Gland, Inside.Limits(), Cord.Limits(), Bore.Limits(), Plug.Limits(), Groove.Limits(), Eccentricity.Or(double.PositiveInfinity),
            static (gland, inside, cord, bore, plug, groove, guided) => Around(
                Mechanics.Seals.Gland.Squeeze(NominalCord(gland, inside, cord, plug, groove), NominalHeight(gland, bore, plug, groove)),
                Extremes(gland, inside, cord, bore, plug, groove, guided, AnyWidth).Squeeze))
        .Range(
            Gland, Inside.Limits(), Cord.Limits(), Depth.Limits(), Groove.Limits(),
            static (gland, inside, cord, depth, groove) => Around(
                Mechanics.Seals.Gland.Squeeze(NominalCord(gland, inside, cord, default, groove), depth.Nominal),
                Extremes(gland, inside, cord, depth, groove, AnyWidth).Squeeze));

    public static readonly NumberDefinition<ORingSpec> SqueezeLength =
        Number("squeeze_length", "", "Squeeze of the cross-section as a length", Units.Millimetre)
        .By("d_2′ − h", Closed).Scaled(0.1)
        .Range(
            Gland, Inside.Limits(), Cord.Limits(), Bore.Limits(), Plug.Limits(), Groove.Limits(), Eccentricity.Or(double.PositiveInfinity),
            static (gland, inside, cord, bore, plug, groove, guided) => Around(
                Mechanics.Seals.Gland.SqueezeLength(NominalCord(gland, inside, cord, plug, groove), NominalHeight(gland, bore, plug, groove)),
                Extremes(gland, inside, cord, bore, plug, groove, guided, AnyWidth).SqueezeLength))
        .Range(
            Gland, Inside.Limits(), Cord.Limits(), Depth.Limits(), Groove.Limits(),
            static (gland, inside, cord, depth, groove) => Around(
                Mechanics.Seals.Gland.SqueezeLength(NominalCord(gland, inside, cord, default, groove), depth.Nominal),
                Extremes(gland, inside, cord, depth, groove, AnyWidth).SqueezeLength));

    public static readonly NumberDefinition<ORingSpec> Swell =
        Number("swell", "q", "Maximum swell in the oil, by volume", Units.Percent).Stated(static s => s.Swell).Assumed(0.10, $"10 %, {Practice}");

    public static readonly NumberDefinition<ORingSpec> Expansion =
        Number("expansion", "α", "Linear expansion of the elastomer, 1/K")
        .By("table elastomers, by elastomer", Practice, Certainty.CommonPractice)
        .Tables(Mechanics.Seals.Elastomer.TableId)
        .Custom(static subject => subject[Elastomer] is { Row: Elastomer { Expansion: null } }
            ? subject.Context.Assumed(Expansion!, UsualExpansion, $"2.3·10⁻⁴ 1/K, {Practice}")
            : null)
        .From(Elastomer, static elastomer => elastomer.Expansion!.Value);

    public static readonly NumberDefinition<ORingSpec> Service =
        Number("service_temperature", "T", "Temperature in service: running, coldest, hottest", Units.Celsius)
        .By("that of the oil", Closed)
        .From(Of("train", static () => TrainQuantities.OilTemperature, "T_oil"), static oil => oil);

    public static readonly NumberDefinition<ORingSpec> MinTemperature =
        Number("min_elastomer_temperature", "", "Minimum temperature at which the elastomer seals at rest", Units.Celsius)
        .By("table elastomers, by elastomer", Practice, Certainty.CommonPractice)
        .From(Elastomer, static elastomer => elastomer.Coldest);

    public static readonly NumberDefinition<ORingSpec> MaxTemperature =
        Number("max_elastomer_temperature", "", "Maximum continuous temperature of the elastomer", Units.Celsius)
        .By("table elastomers, by elastomer", Practice, Certainty.CommonPractice)
        .From(Elastomer, static elastomer => elastomer.Hottest);

    public static readonly NumberDefinition<ORingSpec> DryFill =
        Number("dry_fill", "φ", "Fill of the gland at 20 °C, not swollen", Units.Percent)
        .By("φ = π/4·d_2′²/(h·w_r)", Closed)
        .Range(
            Gland, Inside.Limits(), Cord.Limits(), Bore.Limits(), Plug.Limits(), Groove.Limits(), Eccentricity.Or(double.PositiveInfinity), RubberWidth.Limits(),
            static (gland, inside, cord, bore, plug, groove, guided, width) => Around(
                Mechanics.Seals.Gland.Fill(NominalCord(gland, inside, cord, plug, groove), NominalHeight(gland, bore, plug, groove), width.Nominal),
                Extremes(gland, inside, cord, bore, plug, groove, guided, Bounds(width)).Fill))
        .Range(
            Gland, Inside.Limits(), Cord.Limits(), Depth.Limits(), Groove.Limits(), RubberWidth.Limits(),
            static (gland, inside, cord, depth, groove, width) => Around(
                Mechanics.Seals.Gland.Fill(NominalCord(gland, inside, cord, default, groove), depth.Nominal, width.Nominal),
                Extremes(gland, inside, cord, depth, groove, Bounds(width)).Fill));

    public static readonly NumberDefinition<ORingSpec> Growth =
        Number("volume_growth", "V/V_20", "Volume of the ring in service over that at 20 °C")
        .By("(1 + 3·α·(T − 20 °C))·(1 + q); nominal and minimum without swell", "closed form; expansion of elastomers common practice, no source", Certainty.CommonPractice)
        .Range(Service.Limits(), Expansion, Swell, static (service, expansion, swell) => new(
            Warm(expansion, service.Nominal), Warm(expansion, service.Min), Warm(expansion, service.Max) * (1 + swell)));

    public static readonly NumberDefinition<ORingSpec> Fill =
        Number("gland_fill", "", "Fill of the gland, hot and swollen", Units.Percent)
        .By("φ·V/V_20", "closed form; expansion of elastomers common practice, no source", Certainty.CommonPractice)
        .From(DryFill, Growth, static (dry, growth) => dry * growth);

    public static readonly NumberDefinition<ORingSpec> Gap =
        Number("extrusion_gap", "", "Extrusion gap on one side", Units.Millimetre)
        .By("half the clearance of the plug and the offset, on one side", Closed).Scaled(0.1)
        .From(Bore, Plug, Eccentricity.Or(double.PositiveInfinity), static (bore, plug, guided) =>
            Mechanics.Seals.Gland.ExtrusionGap(bore, plug, Guide(guided)));

    public static readonly NumberDefinition<ORingSpec> Clearance =
        Number("plug_clearance", "C", "Clearance of the plug in its bore", Units.Millimetre)
        .By("C = D_B − D_P, by their limits", Closed).Scaled(0.1)
        .Range(Bore.Limits(), Plug.Limits(), static (bore, plug) => bore.Less(plug));

    public static readonly NumberDefinition<ORingSpec> Pressure =
        Number("pressure", "p", "Maximum gauge pressure", Units.Megapascal).Scaled(0.01)
        .Stated(static s => s.Pressure)
        .Custom(static subject => subject.Context.Spec.Lubrication?.Ports?.Vent is { Value: false }
            ? Quantity.NotEvaluated(Pressure!, [], $"{subject.Path}.pressure is not stated, and the housing has no vent")
            : null)
        .Assumed(0, "0: a vented housing");

    public static readonly NumberDefinition<ORingSpec> PermittedGap =
        Number("permitted_gap", "", "Permitted extrusion gap at the pressure", Units.Millimetre)
        .By(
            "table o-ring-extrusion-gaps by pressure, in proportion between 70 and 90 IRHD; silicones: half; behind a back-up ring: as rubber of 90 IRHD",
            "common practice; a chart of the trade on a public page", Certainty.CommonPractice)
        .Tables(ExtrusionGapLimit.TableId)
        .When(IsRadial)
        .For(HasBackUp).From(Pressure, Hardness, Elastomer, BackUpProtects, static (pressure, hardness, elastomer, isBacked) => isBacked
            ? ExtrusionGapLimit.Clearance(pressure, HardestOfChart)
            : (elastomer.Code is "VMQ" or "FVMQ" ? ExtrusionGapLimit.SiliconeShare : 1) * ExtrusionGapLimit.Clearance(pressure, hardness))
        .For(static s => !HasBackUp(s)).From(Pressure, Hardness, Elastomer, static (pressure, hardness, elastomer) =>
            (elastomer.Code is "VMQ" or "FVMQ" ? ExtrusionGapLimit.SiliconeShare : 1) * ExtrusionGapLimit.Clearance(pressure, hardness));

    public static readonly NumberDefinition<ORingSpec> Roughness =
        Number("roughness_ra", "Ra", "Roughness of the sealing surface", Units.Micrometre).NeverNegative().Stated(static s => s.RoughnessRa);

    public static readonly NumberDefinition<ORingSpec> Speed =
        Number("speed", "", "Sliding speed", Units.MetrePerSecond).Scaled(100)
        .When(static s => s.Motion is { Value: not "static" })
        .Stated(static s => s.Speed);

    public static readonly NumberDefinition<ORingSpec> LeadInLength =
        Number("lead_in_length", "", "Length of the lead-in chamfer", Units.Millimetre).When(IsRadial).Stated(static s => s.LeadIn?.Length, "lead_in");

    public static readonly NumberDefinition<ORingSpec> LeadInAngle =
        Number("lead_in_angle", "θ", "Angle of the lead-in chamfer from the axis", Units.Degree).When(IsRadial).Stated(static s => s.LeadIn?.Angle, "lead_in");

    public static readonly NumberDefinition<ORingSpec> RequiredLeadIn =
        Number("required_lead_in", "z", "Required length of the lead-in chamfer", Units.Millimetre)
        .By("z = |D − D_end|/(2·tan θ), D the ring as it comes to the chamfer: D_G + 2·d_2′ of a plug, D_G − 2·d_2′ of a bore", Closed)
        .From(
            Gland, Inside, Cord, Groove, Bore, Plug, LeadInAngle,
            static (gland, inside, cord, groove, bore, plug, angle) => gland == "plug"
                ? Mechanics.Seals.Gland.LeadIn(groove + 2 * Mechanics.Seals.Gland.StretchedCord(inside, cord, groove), bore, angle)
                : Mechanics.Seals.Gland.LeadIn(groove - 2 * Mechanics.Seals.Gland.CordOnRod(inside, cord, plug, groove), plug, angle));

    /// <summary>All O-rings, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.ORings.Entries)
        {
            context.Begin(SubjectKinds.ORing, $"o_rings.{spec.Name.Value}", spec.Name.Span, spec)
                .Relate("train", () => context.Find(SubjectKinds.Train, "train"));
        }
    }

    private static bool HasBackUp(ORingSpec spec) => spec.BackUpRings is { Value: not "none" };

    private static bool IsRadial(ORingSpec spec) => spec.Gland.Value is "plug" or "bore";

    /// <summary>A dimension of the ring by its dash number; null where the spec states none.</summary>
    private static Quantity? OfTable(Subject subject, QuantityKind kind, Func<ORing, double> nominal, Func<ORing, Limits> limits)
    {
        if (((ORingSpec)subject.Model).As568 is not { } dash)
            return null;
        if (!ORingTable.TryFind(dash.Value.ToString("000", CultureInfo.InvariantCulture), out var ring, out var reason))
            return Quantity.NotEvaluated(kind, [], reason);
        subject.Context.Uses(ORingTable.TableId);
        var (least, greatest) = (limits(ring).Min, limits(ring).Max);
        return subject.Context.Between(
            kind, AnalysisContext.Declared(dash, $"ISO 3601-1, size {ring.Dash}; deviations from memory"), nominal(ring), least, greatest);
    }

    private static GlandExtremes Extremes(string gland, Value inside, Value cord, Value bore, Value plug, Value groove, double guided, Limits width)
    {
        var ring = new RingExtents(Bounds(inside), Bounds(cord));
        return gland == "plug"
            ? new PistonGland(Bounds(bore), Bounds(groove), Bounds(plug), width, Guide(guided)).Extremes(ring, RubberService.None)
            : new RodGland(Bounds(groove), Bounds(plug), Bounds(bore), width, Guide(guided)).Extremes(ring, RubberService.None);
    }

    private static GlandExtremes Extremes(string gland, Value inside, Value cord, Value depth, Value groove, Limits width) =>
        new FaceGland(Bounds(depth), Limits.Exactly(0), width, Bounds(groove), gland == "face-inside").Extremes(new(Bounds(inside), Bounds(cord)), RubberService.None);

    private static double NominalHeight(string gland, Value bore, Value plug, Value groove) => gland == "plug"
        ? Mechanics.Seals.Gland.Height(bore.Nominal, groove.Nominal)
        : Mechanics.Seals.Gland.Height(groove.Nominal, plug.Nominal);

    private static double NominalCord(string gland, Value inside, Value cord, Value plug, Value groove) => gland switch
    {
        "bore" => Mechanics.Seals.Gland.CordOnRod(inside.Nominal, cord.Nominal, plug.Nominal, groove.Nominal),
        "face-inside" => Mechanics.Seals.Gland.CompressedCord(inside.Nominal, cord.Nominal, groove.Nominal),
        _ => Mechanics.Seals.Gland.StretchedCord(inside.Nominal, cord.Nominal, groove.Nominal),
    };

    private static double? Guide(double guided) => double.IsInfinity(guided) ? null : guided;

    private static double Warm(double expansion, double temperature) =>
        Guard.Positive(1 + 3 * expansion * (temperature - Room), "the growth of the rubber");

    private static Limits Bounds(Value value) => new(value.Min, value.Max);

    /// <summary>The concentric gland at nominal, and the limits all around.</summary>
    private static Value Around(double nominal, Limits limits) => new(nominal, Math.Min(nominal, limits.Min), Math.Max(nominal, limits.Max));
}
