using Pawl.Analysis.Agreement;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Lubrication;
using Pawl.Analysis.Shafts;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Seals;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Seals;

/// <summary>A radial lip seal on its shaft.</summary>
public sealed class LipSeals : Section<LipSealSpec>
{
    private const string Closed = "closed form";
    private const string Practice = "common practice, no source";

    // A moving lip needs 10 K to 15 K more than rubber at rest: the greater. Common practice, no source.
    private const double OfMotion = 15;

    public static readonly RowDefinition<LipSealSpec, Elastomer> Elastomer =
        Row<Elastomer>("elastomer", "Elastomer, code of ISO 1629", Mechanics.Seals.Elastomer.TryFind).Stated(static s => s.Elastomer);

    public static readonly RowDefinition<LipSealSpec, string> OilBase = Text("oil_base", "Base of the oil")
        .Custom(static subject => Lubrication.OilBase.Of(subject.Context, OilBase!));

    public static readonly RowDefinition<LipSealSpec, string> Suitability = Text("suitability", "Elastomer–oil compatibility").OneOf("suitable", "limited", "unsuitable")
        .By("table elastomers, by elastomer and base: suitable, limited, unsuitable", Practice, Certainty.CommonPractice)
        .Tables(Mechanics.Seals.Elastomer.TableId)
        .From(Elastomer, OilBase, Lubrication.OilBase.Suitability);

    public static readonly RowDefinition<LipSealSpec, string> LipFaces = Text("lip_faces", "Side that the spring of the lip faces").OneOf("oil", "outside")
        .Stated(static s => s.LipFaces);

    public static readonly NumberDefinition<LipSealSpec> Diameter =
        Number("diameter", "d", "Diameter of the shaft under the lip", Units.Millimetre).NeverNegative()
        .By("as stated, else of the section of the shaft that it runs on", "the spec", Certainty.Declared)
        .Stated(static s => s.Diameter).TakenFrom("seat", static () => ShaftSectionQuantities.Outside);

    public static readonly NumberDefinition<LipSealSpec> Bore = Number("bore", "D", "Bore of the housing", Units.Millimetre).NeverNegative().Stated(static s => s.Bore);

    public static readonly NumberDefinition<LipSealSpec> ShaftBeyondClass =
        Number("shaft_beyond_h11", "", "Shaft diameter beyond the limits of h11", Units.Millimetre)
        .By("the greater of upper deviation − 0 and −IT11 − lower deviation; not above 0 inside", "ISO 286-1; class after ISO 6194-1, DIN 3760")
        .Scaled(0.1).Tables([.. Iso286.Tables])
        .From(Diameter.Limits(), static size => Beyond(size, "h", 11));

    public static readonly NumberDefinition<LipSealSpec> BoreBeyondClass =
        Number("bore_beyond_h8", "", "Housing bore beyond the limits of H8", Units.Millimetre)
        .By("the greater of upper deviation − IT8 and 0 − lower deviation; not above 0 inside", "ISO 286-1; class after ISO 6194-1, DIN 3760")
        .Scaled(0.01).Tables([.. Iso286.Tables])
        .From(Bore.Limits(), static size => Beyond(size, "H", 8));

    public static readonly NumberDefinition<LipSealSpec> RelativeSpeed =
        Number("relative_speed", "n", "Fastest speed of the shaft against the housing", Units.RevolutionPerMinute)
        .By("n = max n_in · |ω_shaft/ω_in − ω_housing/ω_in|, over duty and spectrum", Closed).Scaled(Math.PI / 30)
        .From(
            BodyInputs.FastestSpeed,
            Of("shaft", static () => BodyQuantities.SpeedRatio, "ω_shaft/ω_in"),
            Of("housing", static () => BodyQuantities.SpeedRatio, "ω_housing/ω_in"),
            static (fastest, shaft, housing) => fastest * Math.Abs(shaft - housing));

    public static readonly NumberDefinition<LipSealSpec> SurfaceSpeed =
        Number("surface_speed", "v", "Surface speed under the lip", Units.MetrePerSecond)
        .By("v = π·d·n", Closed).Scaled(1000)
        .From(Diameter, RelativeSpeed, LipSeal.SurfaceSpeed);

    public static readonly NumberDefinition<LipSealSpec> PermittedSpeed =
        Number("permitted_speed", "v_lim", "Permitted surface speed of the lip", Units.MetrePerSecond)
        .By("as its maker states, else table elastomers, by elastomer", "the spec, else common practice, no source", Certainty.CommonPractice)
        .Tables(Mechanics.Seals.Elastomer.TableId)
        .Stated(static s => s.MaxSpeed)
        .From(Elastomer, static e => e.LipSpeed ?? throw Guard.Because($"no lips are made of {e.Code}: state the speed that the maker permits"));

    public static readonly NumberDefinition<LipSealSpec> SpeedShare =
        Number("speed_share", "", "Surface speed as a share of the permitted speed", Units.Percent)
        .By("v/v_lim", Closed)
        .From(SurfaceSpeed, PermittedSpeed, static (v, limit) => v / limit);

    public static readonly NumberDefinition<LipSealSpec> Hardness =
        Number("hardness", "", "Hardness of the shaft under the lip", Units.Vickers).NeverNegative()
        .Noted("converted to HV after ISO 18265, table A.1, where written in HRC or HBW").Tables(HardnessConversion.TableId)
        .Custom(static subject => MaterialBuilder.Hardness(
            subject.Context, Hardness!, ((LipSealSpec)subject.Model).Hardness, $"{subject.Path}.hardness"));

    public static readonly NumberDefinition<LipSealSpec> RequiredHardness =
        Number("required_hardness", "", "Required shaft hardness", Units.Vickers)
        .By("45 HRC; 55 HRC above 4 m/s; in HV after ISO 18265, table A.1", Practice, Certainty.CommonPractice)
        .From(SurfaceSpeed, static v => HardnessConversion.VickersOfRockwell(LipSeal.MinHardness(v)));

    // A roughness has no general tolerance: without a window it is the value itself.
    public static readonly NumberDefinition<LipSealSpec> Roughness =
        Number("roughness_ra", "Ra", "Roughness of the shaft under the lip", Units.Micrometre).NeverNegative().StatedAlone(static s => s.RoughnessRa);

    public static readonly TruthDefinition<LipSealSpec> TwistFree = Truth("twist_free", "Shaft is free of twist (lead)").Stated(static s => s.TwistFree);

    public static readonly NumberDefinition<LipSealSpec> Runout =
        Number("runout", "", "Runout of the shaft under the lip, total indicator reading", Units.Millimetre).Stated(static s => s.Runout);

    public static readonly NumberDefinition<LipSealSpec> Offset =
        Number("offset", "", "Offset of the shaft from the bore at rest, total indicator reading", Units.Millimetre).Stated(static s => s.Offset).Optional();

    public static readonly NumberDefinition<LipSealSpec> PermittedRunout =
        Number("permitted_runout", "", "Permitted runout", Units.Millimetre)
        .By("0.1 mm to 3000 1/min, 0.05 mm from 6000 1/min, in proportion between", Practice, Certainty.CommonPractice)
        .From(RelativeSpeed, LipSeal.MaxRunOut);

    public static readonly NumberDefinition<LipSealSpec> Pressure =
        Number("pressure", "p", "Maximum gauge pressure at the lip", Units.Megapascal)
        .By("as stated, else that of the housing", "the spec", Certainty.Declared).Scaled(0.01)
        .Stated(static s => s.Pressure, "pressure or /lubrication")
        .From(Of("lubrication", static () => HousingAir.HousingPressure, "p"), static p => p);

    public static readonly NumberDefinition<LipSealSpec> PermittedPressure =
        Number("permitted_pressure", "p_lim", "Permitted pressure at the lip", Units.Megapascal)
        .By("as its maker states, else table lip-seal-pressure, by speed", "the spec, else DIN 3760", Certainty.Memory).Scaled(0.01)
        .Tables(LipSeal.PressureTableId)
        .Stated(static s => s.MaxPressure)
        .From(SurfaceSpeed, LipSeal.MaxPressure);

    public static readonly NumberDefinition<LipSealSpec> Suction =
        Number("suction", "p_v", "Suction at the lip after the unit cools", Units.Megapascal).NeverNegative()
        .By("that of the housing", Closed).Scaled(0.01)
        .From(Of("lubrication", static () => HousingAir.HousingSuction, "p_v"), static suction => suction);

    public static readonly NumberDefinition<LipSealSpec> PermittedSuction =
        Number("permitted_suction", "", "Suction that the lip bears", Units.Megapascal).Scaled(0.01)
        .Stated(static s => s.MaxSuction).Assumed(0.01, $"0.01 MPa, {Practice}");

    public static readonly NumberDefinition<LipSealSpec> RiseAtPermittedSpeed =
        Number("lip_temperature_rise_at_permitted_speed", "ΔT_lim", "Temperature rise of a lip over the oil at its permitted speed", Units.Kelvin)
        .Assumed(new Quantities.Extent(30, 20, LipSeal.MaxLipRise), $"20 K to 40 K, {Practice}; pressure, oil and lip width are left out");

    public static readonly NumberDefinition<LipSealSpec> LipRise =
        Number("lip_temperature_rise", "ΔT", "Temperature rise of the lip over the oil", Units.Kelvin)
        .By("ΔT = ΔT_lim·v/v_lim", Practice, Certainty.CommonPractice)
        .From(RiseAtPermittedSpeed, SpeedShare.As("v/v_lim"), static (rise, share) => rise * share);

    public static readonly NumberDefinition<LipSealSpec> LipTemperature =
        Number("lip_temperature", "", "Lip temperature, coldest to hottest oil", Units.Celsius)
        .By("T_oil + ΔT", Closed)
        .From(Of("train", static () => TrainQuantities.OilTemperature, "T_oil"), LipRise, static (oil, rise) => oil + rise);

    public static readonly NumberDefinition<LipSealSpec> MaxElastomerTemperature =
        Number("max_elastomer_temperature", "", "Maximum continuous temperature of the elastomer", Units.Celsius)
        .By("table elastomers, by elastomer", Practice, Certainty.CommonPractice)
        .From(Elastomer, static e => e.Hottest);

    public static readonly NumberDefinition<LipSealSpec> OilTemperature =
        Number("oil_temperature", "T_oil", "Oil temperature, coldest to hottest", Units.Celsius)
        .By("that of the train", Closed)
        .From(Of("train", static () => TrainQuantities.OilTemperature, "T_oil"), static oil => oil);

    public static readonly NumberDefinition<LipSealSpec> MinLipTemperature =
        Number("min_lip_temperature", "", "Minimum temperature at which a moving lip follows the shaft", Units.Celsius)
        .By("table elastomers, by elastomer, and 15 K for the motion", Practice, Certainty.CommonPractice)
        .From(Elastomer, static e => e.Coldest + OfMotion);

    public static readonly NumberDefinition<LipSealSpec> LeadInAngle =
        Number("lead_in_angle", "", "Chamfer angle of the shaft end, from the axis", Units.Degree).Stated(static s => s.LeadIn?.Angle, "lead_in");

    public static readonly NumberDefinition<LipSealSpec> LevelOverLip =
        Number("level_over_lip", "", "Height of the oil at rest over the lowest place of the lip", Units.Millimetre)
        .By("h + d/2, h level over the axis", Closed).Scaled(1)
        .Noted("of a horizontal unit, shafts on the common axis")
        .When(static (s, subject) => subject.Context.Spec.Lubrication is { MountingPosition.Value: "horizontal", Supply: not { Value: "grease" } }
            && OilLevel.IsOnAxis(subject.Context, s.Shaft.Value))
        .From(Of("lubrication", static () => OilLevel.Level, "h"), Diameter, static (level, d) => level + d / 2);

    public static readonly NumberDefinition<LipSealSpec> Loss =
        Number("loss", "", "Friction loss of the lip", Units.Watt).Scaled(1000).Stated(static s => s.Loss).Optional();

    /// <summary>All lip seals, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.LipSeals.Entries)
        {
            context.Begin(SubjectKinds.LipSeal, $"lip_seals.{spec.Name.Value}", spec.Name.Span, spec)
                .InDuty(context)
                .Relate("shaft", () => context.Find(SubjectKinds.Body, $"bodies.{spec.Shaft.Value}"))
                .Relate("housing", () => context.Find(SubjectKinds.Body, $"bodies.{spec.Housing.Value}"))
                .RelateOptional("seat", () => ShaftPlaces.SubjectOf(context, ShaftPlaces.Named(context.Spec, spec.Shaft.Value, spec.At)))
                .RelateOptional("lubrication", () => context.Find(SubjectKinds.Lubrication, "lubrication"));
        }
    }

    /// <summary>How far the limits of a size lie outside a class of ISO 286; negative inside.</summary>
    private static double Beyond(Quantities.Extent size, string letters, int grade)
    {
        if (!Iso286.TryLimits(letters, grade, size.Nominal, out var limits, out var reason))
            throw new OutsideValidityException(reason);

        // Deviations come of sums: a millionth of a millimetre is none.
        var beyond = Math.Max(size.Max - size.Nominal - limits.Upper, limits.Lower - (size.Min - size.Nominal));
        return Math.Abs(beyond) < 1e-9 ? 0 : beyond;
    }
}
