using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Shafts;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using B = Pawl.Analysis.Trains.BodyQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;
using S = Pawl.Analysis.Shafts.ShaftSectionQuantities;

namespace Pawl.Analysis.Shafts;

/// <summary>A shaft as a whole.</summary>
public sealed class ShaftQuantities : Section<ShaftSpec>
{
    private const string Beam = "Bernoulli's beam on two stiff bearings; causes added as for the bearings";
    private const string Stiff = "nominal dimensions; housing and bearings do not give";
    private const double Arcminute = Math.PI / 10_800;

    private static readonly IInput<double> InputTorque = Of("train", static () => TrainQuantities.InputTorque);

    private static readonly IInput<double> InputSpeed = Of("train", static () => TrainQuantities.InputSpeed);

    private static readonly IInput<double> Application = Of("train", static () => D.ApplicationFactor);

    /// <summary>Torque of every share of the service life over the rated one, with K_A where it applies; the rated load comes first.</summary>
    private static readonly IInput<double[]> Torques = Join(
        InputTorque, Application, OfRowOr("train", static () => D.SpectrumPeaks, "excluded"), Each("load_cases", static () => LoadCaseQuantities.Torque),
        static (rated, application, peaks, shares) =>
            shares.Select(share => Math.Abs(share / rated) * (peaks == "included" ? 1 : application)).Prepend(application).ToArray());

    private static readonly IInput<double> Reverse = Join(
        InputTorque, Of("train", static () => D.ReverseTorque), static (torque, reverse) => reverse / torque);

    public static readonly RowDefinition<ShaftSpec, string> Body = Text("body", "Body").Stated(static s => s.Body);

    private static readonly ImmutableArray<IInput> Bending = [Body, InputTorque, Application];

    public static readonly NumberDefinition<ShaftSpec> Tensile =
        Number("tensile_strength", "σ_B", "Tensile strength as stated", Units.Megapascal).Stated(static s => s.Tensile);

    public static readonly NumberDefinition<ShaftSpec> Yield =
        Number("yield_strength", "σ_S", "Yield strength as stated", Units.Megapascal).Stated(static s => s.Yield);

    public static readonly RowDefinition<ShaftSpec, string> Steel = Text("steel", "How the steel was made strong")
        .Stated(static s => s.Steel).Assumed("tempered", "tempered, for no hard case is stated");

    public static readonly NumberDefinition<ShaftSpec> HeatTreatedDiameter =
        Number("heat_treated_diameter", "d_eff", "Diameter at the heat treatment", Units.Millimetre).Stated(static s => s.HeatTreatedDiameter).Optional();

    public static readonly NumberDefinition<ShaftSpec> Technological = Number("technological_size_factor", "K_1", "Technological size factor")
        .By("tempered 1 − 0.26·lg(d_eff/16), case hardened 1 − 0.41·lg(d_eff/16); 1 where the strengths are those of the part", "DIN 743-2:2012", Certainty.Memory)
        .From(Steel, HeatTreatedDiameter, static (steel, diameter) => ShaftFatigue.Technological(SteelOf(steel), diameter))
        .Assumed(1, "1: the strengths are those of the part");

    public static readonly NumberDefinition<ShaftSpec> RequiredStatic = Number("required_static_safety", "S_Fmin", "Safety against yield required")
        .Stated(static s => s.StaticSafety).Assumed(1.5, "1.5, common practice, no source");

    public static readonly NumberDefinition<ShaftSpec> RequiredFatigue = Number("required_fatigue_safety", "S_Dmin", "Safety against fatigue required")
        .Stated(static s => s.FatigueSafety).Assumed(1.5, "1.5, common practice, no source; the least of DIN 743 is 1.2");

    public static readonly NumberDefinition<ShaftSpec> Torque =
        Number("torque", "T", "Torque of the body at the rated torque of the input", Units.NewtonMetre)
        .By("|T| of the body", "torque balance of the train").Scaled(1000)
        .Noted("the whole torque of the body in every section that carries torque")
        .From(Of("body", static () => B.Torque), static torque => Math.Abs(torque))
        .Otherwise(static s => $"the torque inside {s.Body.Value} is not computed: neither input, output nor held");

    public static readonly NumberDefinition<ShaftSpec> TorqueSwing = Number("torque_swing", "r_a", "Swing of the torque over the rated torque")
        .By("half the greatest K_A·T/T_in of all states times 1 + T_rev/T_in: to the torque in the other direction, or to none", "closed form")
        .From(Torques, Reverse, static (torques, reverse) => torques.Max() * (1 + reverse) / 2);

    public static readonly NumberDefinition<ShaftSpec> MeanTorque = Number("mean_torque", "r_m", "Mean of the swinging torque over the rated torque")
        .By("half the greatest K_A·T/T_in of all states times 1 − T_rev/T_in", "closed form")
        .From(Torques, Reverse, static (torques, reverse) => torques.Max() * (1 - reverse) / 2);

    public static readonly NumberDefinition<ShaftSpec> AxialOfTeeth =
        Number("axial_force_of_teeth", "F_a", "Axial force of the teeth at the rated torque", Units.Newton)
        .By("of all gears of the body, handed on by its bearings", "statics").Scaled(1000)
        .Solved([InputTorque], static (_, subject) => ShaftBending.Of(subject).AxialTeeth);

    public static readonly NumberDefinition<ShaftSpec> AxialLasting = Number("axial_force_lasting", "F_a0", "Axial forces that stay", Units.Newton)
        .By("of the coupled machine and the weight", "statics").Scaled(1000)
        .Solved([], static (_, subject) => ShaftBending.Of(subject).AxialLasting);

    public static readonly NumberDefinition<ShaftSpec> Modulus = Number("elastic_modulus", "E", "Modulus of elasticity", Units.Megapascal)
        .Found(static (s, subject) => MaterialOf(s, subject)?.ElasticModulus, static s => OfCatalogue(s, "elastic_modulus"));

    public static readonly NumberDefinition<ShaftSpec> Poisson = Number("poisson_ratio", "ν", "Poisson's ratio")
        .Custom(static subject => subject.Context.Number(
            Poisson!, MaterialOf((ShaftSpec)subject.Model, subject)?.PoissonRatio, OfCatalogue((ShaftSpec)subject.Model, "poisson_ratio")));

    public static readonly NumberDefinition<ShaftSpec> Density = Number("density", "ρ", "Density", Units.KilogramPerCubicMetre)
        .Found(static (s, subject) => MaterialOf(s, subject)?.Density, static s => OfCatalogue(s, "density"));

    public static readonly NumberDefinition<ShaftSpec> WindUp =
        Number("wind_up", "φ", "Twist over the sections that carry torque", Units.Arcminute)
        .By("Σ 32·T·l/(π·G·(d⁴ − d_i⁴)) over the sections, T the torque through each; G = E/(2·(1 + ν))", "torsion of round bars").Scaled(Arcminute)
        .Noted("at the rated torque, shoulders as ideal steps")
        .For(static s => !s.Sections.Entries.IsEmpty).From(
            Each("sections", static () => S.Length), Each("sections", static () => S.Outside), Each("sections", static () => S.Bore),
            Each("sections", static () => S.Torque), Modulus, Poisson, TwistOf)
        .Otherwise(static s => $"shafts.{s.Name.Value}.sections is not stated");

    public static readonly NumberDefinition<ShaftSpec> RequiredWindUp =
        Number("max_wind_up", "", "Maximum twist required", Units.Arcminute).Stated(static s => s.MaxWindUp).Optional();

    public static readonly NumberDefinition<ShaftSpec> TorsionalStiffness =
        Number("torsional_stiffness", "k", "Torsional stiffness over the sections that carry torque", Units.NewtonMetrePerRadian)
        .By("k = T/φ", "torsion of round bars").Noted("shoulders as ideal steps, which makes it a little too stiff").AsOne()
        .From(Torque, WindUp, ShaftTwist.Stiffness);

    public static readonly NumberDefinition<ShaftSpec> BearingSlope = Number("bearing_slope", "φ_b", "Maximum slope at a bearing", Units.Arcminute)
        .By("u' at the bearings, greatest of all states of the duty", Beam).Scaled(Arcminute).Noted(Stiff)
        .Solved(Bending, Reasons, static (_, subject) => ShaftBending.Of(subject).BearingSlope());

    public static readonly NumberDefinition<ShaftSpec> BearingSlopeShare =
        Number("bearing_slope_share", "φ_b/φ_lim", "Slope at a bearing over what its kind stands, greatest")
        .By("u'/φ_lim", "limits: Budynas and Nisbett, Shigley's Mechanical Engineering Design, table 7-2", Certainty.Published).Tables(SlopeLimits.TableId)
        .Solved([BearingSlope], Reasons, static (_, subject) => ShaftBending.Of(subject).BearingSlopeShare());

    public static readonly NumberDefinition<ShaftSpec> GearSlope = Number("gear_slope", "φ_g", "Maximum slope at a gear", Units.Arcminute)
        .By("u' in the middle of the gears, greatest of all states of the duty", Beam).Scaled(Arcminute).Noted(Stiff)
        .When(static (_, subject) => ShaftBending.Of(subject).HasGears)
        .Solved(Bending, Reasons, static (_, subject) => ShaftBending.Of(subject).GearSlope());

    public static readonly NumberDefinition<ShaftSpec> GearDeflection = Number("gear_deflection", "u_g", "Maximum deflection at a gear", Units.Micrometre)
        .By("u in the middle of the gears", Beam).Scaled(1e-3).Noted(Stiff)
        .When(static (_, subject) => ShaftBending.Of(subject).HasGears)
        .Solved(Bending, Reasons, static (_, subject) => ShaftBending.Of(subject).GearDeflection());

    public static readonly NumberDefinition<ShaftSpec> Speed = Number("speed", "n", "Maximum speed", Units.RevolutionPerMinute)
        .By("|n| of the body in the fastest share of the duty", "speeds of the train").Scaled(Math.PI / 30)
        .From(Of("body", static () => B.Speed), BodyInputs.FastestOverRated, static (body, fastest) => Math.Abs(body) * fastest);

    public static readonly NumberDefinition<ShaftSpec> CriticalSpeed =
        Number("critical_speed", "n_cr", "Lowest critical speed in bending", Units.RevolutionPerMinute)
        .By("Stodola's iteration over slices of the shaft; what the stated mass has beyond them sits at mass_at", "masses at points on a beam").Scaled(Math.PI / 30)
        .Noted("an estimate from above: stiff bearings and housing, no gyroscopic moment")
        .Solved([Modulus, Density], Reasons, static (_, subject) => ShaftBending.Of(subject).CriticalSpeed());

    public static readonly NumberDefinition<ShaftSpec> CriticalSpeedOnSprings =
        Number("critical_speed_on_springs", "n_cr,s", "Lowest critical speed in bending on bearings that give way", Units.RevolutionPerMinute)
        .By("as n_cr, with (1 − s_i)·(1 − s_j)/c_1 + s_i·s_j/c_2 added to each influence, s the share of the way between the bearings", "statics of two springs").Scaled(Math.PI / 30)
        .Noted("stiff housing, no gyroscopic moment; where two bearings of known stiffness hold the shaft")
        .When(static (_, subject) => ShaftBending.Of(subject).IsOnSprings)
        .Solved([Modulus, Density, Stiffnesses], Reasons, static (_, subject) => ShaftBending.Of(subject).CriticalSpeedOnSprings());

    public static readonly NumberDefinition<ShaftSpec> CriticalShare = Number("critical_speed_share", "n/n_cr", "Speed over critical speed")
        .By("n/n_cr, n_cr on bearings that give way where their stiffness is known", "closed form")
        .From(Speed, CriticalSpeed, CriticalSpeedOnSprings.Or(double.PositiveInfinity), static (speed, stiff, soft) => speed / Math.Min(stiff, soft));

    private static IInput<double[]> Stiffnesses => Each("bearings", static () => BearingStiffnessQuantities.RadialStiffness, "c");

    internal static void AddAll(AnalysisContext context)
    {
        if (context.Train is null)
            return;
        foreach (var spec in context.Spec.Shafts.Entries)
        {
            var sections = ImmutableArray.CreateBuilder<Subject>();
            var shaft = context.Begin(SubjectKinds.Shaft, $"shafts.{spec.Name.Value}", spec.Name.Span, spec)
                .On(context, spec.Body.Value).RelateAll("sections", () => sections)
                .RelateAll("bearings", () => (context.Held?.Holding(spec.Body.Value) ?? []).Select(place => context.Find(SubjectKinds.Bearing, $"bearings.{place.Name}")!));
            foreach (var section in spec.Sections.Entries)
            {
                var name = section.Name.Value;
                sections.Add(context.Begin(SubjectKinds.ShaftSection, $"{shaft.Path}.{name}", section.Name.Span, section, $"{shaft.Path}.sections.{name}")
                    .Relate("train", context.Train.Subject).Relate("shaft", shaft));
            }
        }
    }

    internal static ShaftSteel SteelOf(string steel) => steel == "case-hardened" ? ShaftSteel.CaseHardened : ShaftSteel.Tempered;

    private static ImmutableArray<string> Reasons(Subject shaft) => ShaftBending.Of(shaft).Reasons;

    private static double TwistOf(double[] lengths, double[] outsides, double[] bores, double[] torques, double modulus, double poisson)
    {
        var (rigidity, twist) = (ShaftTwist.Rigidity(modulus, poisson), 0.0);
        for (var k = 0; k < lengths.Length; k++)
            twist += ShaftTwist.Angle([new(lengths[k], new(outsides[k], bores[k]))], rigidity, torques[k]);
        return twist;
    }

    private static MaterialSpec? MaterialOf(ShaftSpec spec, Subject shaft) =>
        spec.Material is { } id ? shaft.Context.Spec.Catalogue.Materials.Find(id.Value) : null;

    private static string OfCatalogue(ShaftSpec spec, string key) =>
        spec.Material is { } id ? $"{key} of material {id.Value} in the catalogue" : $"shafts.{spec.Name.Value}.material";
}
