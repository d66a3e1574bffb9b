using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Seals;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Lubrication;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Lubrication;

/// <summary>Oil, its supply to the teeth, its temperature and its housing.</summary>
public sealed class OilSystem : Section<LubricationSpec>
{
    private const string Closed = "closed form";
    private const string Practice = "common practice, no source";
    private const string Spec = "the spec";
    private const string Walther = "lg lg(ν + 0.7) = A − B·lg T, T in kelvin, through ν_40 and ν_100";

    public static readonly RowDefinition<LubricationSpec, string> Supply = Text("supply", "Oil supply to the meshes").OneOf("splash", "jet", "grease")
        .Stated(static s => s.Supply);

    public static readonly RowDefinition<LubricationSpec, string> MountingPosition =
        Text("mounting_position", "Direction of the common axis").OneOf("horizontal", "vertical").Stated(static s => s.MountingPosition);

    public static readonly RowDefinition<LubricationSpec, string> Base = Text("base", "Base of the oil")
        .Custom(static subject => OilBase.Of(subject.Context, Base!));

    public static readonly RowDefinition<LubricationSpec, string> Grade = Text("grade", "Viscosity grade")
        .By("the grade whose middle lies within 10 % of ν_40, or none", "ISO 3448", Certainty.Published)
        .Tables(OilGrade.TableId)
        .From(OfLimits("train", static () => DutyQuantities.Viscosity40, "ν_40"), static at40 => GradeOf(at40.Nominal));

    public static readonly NumberDefinition<LubricationSpec> Index =
        Number("viscosity_index", "VI", "Viscosity index")
        .By(
            "VI = 100·(L − ν_40)/(L − H), above 100: 100 + (10^N − 1)/0.00715, N = lg(H/ν_40)/lg ν_100; L, H of ν_100",
            "ISO 2909, ASTM D2270", Certainty.Published)
        .Tables(ViscosityIndex.TableId)
        .From(
            Of("train", static () => DutyQuantities.Viscosity40, "ν_40"), Of("train", static () => DutyQuantities.Viscosity100, "ν_100"),
            ViscosityIndex.Of);

    public static readonly NumberDefinition<LubricationSpec> StartViscosity =
        Number("start_viscosity", "ν", "Kinematic viscosity at the coldest start", Units.SquareMillimetrePerSecond).NeverNegative()
        .By(Walther, "ASTM D341", Certainty.Published)
        .From(
            Of("train", static () => DutyQuantities.Viscosity40, "ν_40"), Of("train", static () => DutyQuantities.Viscosity100, "ν_100"),
            OfLimits("train", static () => TrainQuantities.OilTemperature, "T"),
            static (at40, at100, oil) => Viscosity.Kinematic(oil.Min, 40, at40, 100, at100));

    public static readonly NumberDefinition<LubricationSpec> RunningViscosity =
        Number("running_viscosity", "ν", "Kinematic viscosity at the running temperature", Units.SquareMillimetrePerSecond)
        .By(Walther, "ASTM D341", Certainty.Published)
        .From(
            Of("train", static () => DutyQuantities.Viscosity40, "ν_40"), Of("train", static () => DutyQuantities.Viscosity100, "ν_100"),
            OfLimits("train", static () => TrainQuantities.OilTemperature, "T"),
            static (at40, at100, oil) => Viscosity.Kinematic(oil.Nominal, 40, at40, 100, at100));

    public static readonly NumberDefinition<LubricationSpec> HotViscosity =
        Number("hot_viscosity", "ν", "Kinematic viscosity at the maximum temperature", Units.SquareMillimetrePerSecond)
        .By(Walther, "ASTM D341", Certainty.Published)
        .From(
            Of("train", static () => DutyQuantities.Viscosity40, "ν_40"), Of("train", static () => DutyQuantities.Viscosity100, "ν_100"),
            OfLimits("train", static () => TrainQuantities.OilTemperature, "T"),
            static (at40, at100, oil) => Viscosity.Kinematic(oil.Max, 40, at40, 100, at100));

    public static readonly NumberDefinition<LubricationSpec> PitchLineSpeed =
        Number("pitch_line_speed", "v", "Maximum pitch line velocity of all meshes", Units.MetrePerSecond)
        .By("maximum v of the meshes, at the fastest input of duty and spectrum", Closed).Scaled(1000)
        .From(
            BodyInputs.FastestOverRated, Each("meshes", static () => MeshQuantities.PitchLineSpeed, "v"),
            static (fastest, speeds) => FastestInput.Of(speeds) * fastest);

    public static readonly NumberDefinition<LubricationSpec> RimSpeed =
        Number("rim_speed", "v_rim", "Maximum circumferential speed of the planets around the axis", Units.MetrePerSecond)
        .By("v_rim = |ω_carrier|·(a_w + d_a/2) of the planets, at the fastest input", Closed).Scaled(1000)
        .Noted("the web of the carrier, where it reaches farther out, is not included")
        .From(
            BodyInputs.FastestSpeed,
            Each("rim_carriers", static () => BodyQuantities.SpeedRatio, "ω_carrier/ω_in"),
            Each("rim_meshes", static () => MeshQuantities.CentreDistance, "a_w"),
            Each("rim_gears", static () => GearQuantities.TipDiameter, "d_a"),
            static (fastest, carriers, centres, tips) => Rim(carriers, centres, tips) * fastest);

    public static readonly NumberDefinition<LubricationSpec> Fastest =
        Number("fastest_speed", "v_max", "Maximum of pitch line velocities and circumferential speeds", Units.MetrePerSecond)
        .By("v_max = max(v, v_rim)", Closed).Scaled(1000)
        .From(PitchLineSpeed, RimSpeed, Math.Max);

    public static readonly RowDefinition<LubricationSpec, string> RequiredSupply = Text("required_supply", "Supply required by the maximum speed")
        .By("splash to 12 m/s, splash with care to 15 m/s, jet above", Practice, Certainty.CommonPractice)
        .From(Fastest.Limits(), static speed => Word(OilSupplyChoice.For(speed.Max)));

    public static readonly TruthDefinition<LubricationSpec> LowestWetted =
        Truth("lowest_wetted", "The level at rest wets the lowest planet over its whole face width")
        .When(static s => s.Supply is null or { Value: "splash" })
        .Stated(static s => s.LowestWetted)
        .For(static s => s is { Level: not null, MountingPosition.Value: "horizontal" }).From(OwnRow(static () => OilLevel.LevelWets), static wets => wets)
        .Asking("lowest_wetted or level");

    public static readonly RowDefinition<LubricationSpec, string> TopBearing = Text("top_bearing", "Lubrication of the upper bearing of a vertical unit")
        .When(static s => s.MountingPosition is { Value: "vertical" })
        .Stated(static s => s.TopBearing);

    public static readonly TruthDefinition<LubricationSpec> GreaseHasBearing = Truth("grease_has_bearing", "A bearing runs on the grease that is stated")
        .By("top_bearing: grease, or grease of the bearings, and a bearing lubricated by it", "the spec")
        .When(static s => s is { MountingPosition.Value: "vertical", TopBearing.Value: "grease" } or { Grease: not null })
        .Solved([], static (_, subject) => subject.Context.Of(SubjectKinds.Bearing).Any(static each => Bearings.BearingWork.Of(each).IsGreased));

    public static readonly NumberDefinition<LubricationSpec> MeshLoss =
        Number("mesh_loss", "P_mesh", "Power loss of the meshes", Units.Watt)
        .By("that of the train, at the rated torque and speed", Closed).Scaled(1000)
        .Noted("a spectrum that is lighter than the rated load runs cooler")
        .From(Of("train", static () => TrainQuantities.LostPower), static loss => loss);

    public static readonly NumberDefinition<LubricationSpec> BearingLoss =
        Number("bearing_loss", "P_bearing", "Power loss of the bearings", Units.Watt)
        .By("sum of the known losses of the bearings", Closed).Scaled(1000)
        .Custom(static subject => Sum(subject, BearingLoss!, "bearings", BearingLifeQuantities.FrictionLoss, "0: no bearing has a loss"));

    public static readonly NumberDefinition<LubricationSpec> SealLoss =
        Number("seal_loss", "P_seal", "Power loss of the lip seals", Units.Watt)
        .By("sum of the losses that the lip seals state", Closed).Scaled(1000)
        .Custom(static subject => Sum(subject, SealLoss!, "lip_seals", LipSeals.Loss, "0: no lip seal states its loss"));

    public static readonly NumberDefinition<LubricationSpec> OtherLoss =
        Number("other_loss", "P_other", "Other power losses: churning", Units.Watt).Scaled(1000)
        .Stated(static s => s.OtherLosses)
        .Assumed(0, "0: not counted, the true sump is warmer");

    public static readonly RowDefinition<LubricationSpec, string> LeftOut = Text("losses_left_out", "Losses that the heat balance leaves out")
        .By("none, or those that are not stated", Spec, Certainty.Declared)
        .Custom(static subject => Quantity.ComputedText(LeftOut!, Unknown(subject, (LubricationSpec)subject.Model)));

    public static readonly NumberDefinition<LubricationSpec> Loss =
        Number("loss", "P", "Total heat", Units.Watt)
        .By("P = P_mesh + P_bearing + P_seal + P_other", Closed).Scaled(1000)
        .From(MeshLoss, BearingLoss, SealLoss, OtherLoss, static (mesh, bearing, seal, other) => mesh + bearing + seal + other);

    public static readonly NumberDefinition<LubricationSpec> FreeVolume =
        Number("free_volume", "V", "Free volume of the housing without its parts", Units.Litre).Stated(static s => s.FreeVolume);

    public static readonly NumberDefinition<LubricationSpec> Fill =
        Number("fill", "V_oil", "Oil volume", Units.Litre).Stated(static s => s.Fill);

    public static readonly NumberDefinition<LubricationSpec> MinFill =
        Number("min_fill", "", "Permitted minimum oil volume", Units.Litre).Stated(static s => s.MinFill);

    public static readonly NumberDefinition<LubricationSpec> MaxFill =
        Number("max_fill", "", "Permitted maximum oil volume", Units.Litre).Stated(static s => s.MaxFill);

    public static readonly NumberDefinition<LubricationSpec> FillShare =
        Number("fill_share", "", "Oil volume as a share of the free volume", Units.Percent)
        .By("V_oil/V", Closed)
        .From(Fill, FreeVolume, static (oil, free) => oil / free);

    public static readonly RowDefinition<LubricationSpec, string> PortsMissing = Text("ports_missing", "Missing ports")
        .By("none, or those of fill, drain, vent and level that the housing lacks", Spec, Certainty.Declared)
        .Custom(static subject => Missing(((LubricationSpec)subject.Model).Ports));

    public static readonly RowDefinition<LubricationSpec, string> BaseBefore = Text("base_before", "Base of the previous oil")
        .Custom(static subject => ((LubricationSpec)subject.Model).OilBefore is { } before
            ? AnalysisContext.Text(BaseBefore!, subject.Context.Spec.Catalogue.Lubricants.Find(before.Value)?.Base, $"lubricants.{before.Value}.base")
            : null);

    public static readonly RowDefinition<LubricationSpec, string> Mixture = Text("mixture", "Miscibility with the previous oil")
        .By(
            "same, compatible (mineral, PAO, ATF), doubtful (ester with another), incompatible (PAG with another)",
            Practice, Certainty.CommonPractice)
        .From(BaseBefore, Base, OilBase.Mixture);

    public static readonly TruthDefinition<LubricationSpec> Flushed = Truth("flushed", "The unit is flushed before the oil is changed")
        .When(static s => s.OilBefore is not null)
        .Stated(static s => s.Flushed)
        .Assumed(false, "not flushed, for nothing is stated");

    /// <summary>The lubrication, where the spec says anything of it.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        if (context.Spec.Lubrication is not { } spec)
            return;
        context.Begin(SubjectKinds.Lubrication, "lubrication", Place(context.Spec), spec)
            .InDuty(context)
            .RelateAll("meshes", () => All(context, SubjectKinds.Mesh))
            .RelateAll("bearings", () => All(context, SubjectKinds.Bearing))
            .RelateAll("lip_seals", () => All(context, SubjectKinds.LipSeal))
            .RelateAll("rim_carriers", () => Rims(context).Select(rim => rim.Carrier))
            .RelateAll("rim_meshes", () => Rims(context).Select(rim => rim.Mesh))
            .RelateAll("rim_gears", () => Rims(context).Select(rim => rim.Planet));
    }

    private static IEnumerable<Subject> All(AnalysisContext context, SubjectKind kind) => context.Of(kind);

    private static SourceSpan Place(GearboxSpec spec)
    {
        if (spec.Tree is YamlMap map)
        {
            foreach (var (name, _) in map.Entries)
            {
                if (name.Value == "lubrication")
                    return name.Span;
            }
        }

        return SourceSpan.Whole(spec.File);
    }

    /// <summary>Carrier, mesh and planet gear of every mesh of a planet with a central gear whose carrier has a speed.</summary>
    private static IEnumerable<(Subject Carrier, Subject Mesh, Subject Planet)> Rims(AnalysisContext context)
    {
        if (context.Spec.Train is not { } train)
            yield break;
        foreach (var mesh in train.Meshes)
        {
            var (first, second) = (mesh.Gears[0].Value, mesh.Gears[1].Value);
            var (ofFirst, ofSecond) = (SetOf(first), SetOf(second));
            if ((ofFirst is null) == (ofSecond is null))
                continue;
            var planet = ofFirst is null ? second : first;
            if (context.Find(SubjectKinds.Body, $"bodies.{(ofFirst ?? ofSecond)!.Carrier.Value}") is { } carrier
                && carrier.Find(BodyQuantities.SpeedRatio) is not null
                && context.Find(SubjectKinds.Mesh, $"meshes.{first}~{second}") is { } found
                && context.Find(SubjectKinds.Gear, $"gears.{planet}") is { } gear)
            {
                yield return (carrier, found, gear);
            }
        }

        PlanetSetSpec? SetOf(string gear) => train.Gears.Find(gear) is { } spec ? train.Planets.Find(spec.On.Value) : null;
    }

    private static double Rim(double[] carriers, double[] centres, double[] tips)
    {
        var fastest = 0.0;
        for (var i = 0; i < carriers.Length; i++)
            fastest = Math.Max(fastest, Math.Abs(carriers[i]) * (centres[i] + (tips[i] / 2)));
        return fastest;
    }

    private static string GradeOf(double at40) =>
        OilGrade.Of(at40) is { } grade ? FormattableString.Invariant($"ISO VG {grade.Number}") : "none";

    private static string Word(OilSupply supply) => supply switch
    {
        OilSupply.Splash => "splash",
        OilSupply.SplashWithCare => "splash with care",
        _ => "jet",
    };

    private static Quantity Missing(PortsSpec? ports)
    {
        if (ports is null)
            return AnalysisContext.Missing(PortsMissing, "lubrication.ports");
        (string Name, Stated<bool>? Stated)[] all = [("fill", ports.Fill), ("drain", ports.Drain), ("vent", ports.Vent), ("level", ports.Level)];
        ImmutableArray<string> silent = [.. all.Where(port => port.Stated is null).Select(port => $"lubrication.ports.{port.Name} is not stated")];
        var missing = string.Join(", ", all.Where(port => port.Stated is { Value: false }).Select(port => port.Name));
        return silent.IsEmpty
            ? Quantity.ComputedText(PortsMissing, missing.Length == 0 ? "none" : missing)
            : Quantity.NotEvaluated(PortsMissing, [], silent);
    }

    /// <summary>The sum of what is known; what is not evaluated is named with its subject.</summary>
    private static Quantity Sum(Subject subject, QuantityKind kind, string role, QuantityKind of, string none)
    {
        ImmutableArray<Quantity> losses = [.. subject.ReachAll(role).Select(part => part.Find(of)).OfType<Quantity>()];
        if (losses.IsEmpty)
            return subject.Context.Assumed(kind, 0, none);
        ImmutableArray<string> reasons = [.. losses.SelectMany(loss => loss.Reasons.Select(reason => $"{loss.Subject}: {reason}"))];
        return reasons.IsEmpty
            ? Quantity.Compute(kind, losses, static values =>
            {
                var sum = 0.0;
                foreach (var value in values)
                    sum += value;
                return sum;
            }).With([.. losses.Select(_ => of.Name)])
            : Quantity.NotEvaluated(kind, losses, reasons);
    }

    private static string Unknown(Subject subject, LubricationSpec spec)
    {
        List<string> unknown =
        [
            .. OfRole("bearings", BearingLifeQuantities.FrictionLoss, "bearings"),
            .. OfRole("lip_seals", LipSeals.Loss, "lip seals"),
        ];
        if (spec.OtherLosses is null)
            unknown.Add("churning");
        return unknown.Count == 0 ? "none" : string.Join(", ", unknown);

        IEnumerable<string> OfRole(string role, QuantityKind loss, string none) => subject.ReachAll(role).Any()
            ? subject.ReachAll(role).Where(part => part.Find(loss) is null).Select(part => part.Path)
            : [none];
    }
}
