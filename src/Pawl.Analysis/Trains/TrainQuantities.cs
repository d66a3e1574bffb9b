using Fractions;
using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Trains;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Trains;

/// <summary>The train as a whole.</summary>
public sealed class TrainQuantities : Section<GearboxSpec>
{
    private const string Willis = "Willis relation of every mesh, solved as one linear system";
    private const string PowerBalance = "torque and power balance, losses by the power in the carrier frame";
    private const string None = "none";

    private static readonly IInput<double[]> Efficiencies = Each("meshes", static () => MeshQuantities.Efficiency);

    public static readonly RowDefinition<GearboxSpec, string> Topology = Text("topology", "Topology")
        .By("recognised from the graph of bodies and meshes", "closed form")
        .Solved([], Unstated, static (_, subject) => subject.Context.Train!.Topology);

    public static readonly RowDefinition<GearboxSpec, string> GraphFaults = Text("graph_faults", "Faults of the graph of bodies and meshes")
        .By("none, or what cannot be: a planet that meshes with its own carrier, two rings in mesh", "closed form")
        .Solved([], Unstated, static (_, subject) => Sentences(
            subject, static problem => problem.Blocks == TrainStep.Speeds && problem is not (TrainProblem.Undetermined or TrainProblem.Locked)));

    public static readonly RowDefinition<GearboxSpec, string> FreeBodies = Text("free_bodies", "Bodies whose speed nothing determines")
        .By("none, or the null space of the system of Willis relations", Willis)
        .Solved([], Faults, static (_, subject) => Sentences(subject, static problem => problem is TrainProblem.Undetermined));

    public static readonly NumberDefinition<GearboxSpec> Mobility = Number("mobility", "F", "Free speeds beyond the input")
        .By("F = bodies − independent meshes − fixed bodies − 1", Willis).Scaled(1)
        .Solved([], Faults, static (_, subject) =>
            Problems(subject).OfType<TrainProblem.Undetermined>().Sum(static problem => problem.Pins.Length));

    public static readonly RowDefinition<GearboxSpec, string> Contradiction = Text("contradiction", "Meshes that contradict each other")
        .By("none, or the least set of meshes and held bodies that stop the input", Willis)
        .Solved([], Faults, static (_, subject) => Sentences(subject, static problem => problem is TrainProblem.Locked));

    public static readonly TruthDefinition<GearboxSpec> StandingOutput = Truth("standing_output", "Output stands still while the input turns")
        .By("ω_out = 0", Willis)
        .Solved([], SpeedReasons, static (_, subject) => Problems(subject).Any(static problem => problem is TrainProblem.SingularRatio));

    public static readonly RowDefinition<GearboxSpec, string> IdleBodies = Text("idle_bodies", "Bodies that nothing touches")
        .By("none, or the bodies without a mesh or a meshing planet", "closed form")
        .Solved([], Unstated, static (_, subject) => Sentences(subject, static problem => problem is TrainProblem.IdleBody));

    public static readonly RowDefinition<GearboxSpec, string> ClosedLoops =
        Text("closed_loops", "Closed loops of meshes that share the load by stiffness")
        .By("none, or meshes that agree with the rest but are not needed", Willis)
        .Solved([], Unstated, static (_, subject) => Sentences(subject, static problem => problem is TrainProblem.LoadShareIndeterminate));

    public static readonly NumberDefinition<GearboxSpec> TargetRatio = Number("target_ratio", "i_t", "Target ratio")
        .Stated(static s => s.Ratio?.Target, "/ratio.target");

    public static readonly NumberDefinition<GearboxSpec> RatioTolerance =
        Number("ratio_tolerance", "δ_i", "Permitted deviation of the ratio", Units.Percent)
        .Stated(static s => s.Ratio?.Tolerance, "/ratio.tolerance").Assumed(0, "0: the ratio must be exact, for no tolerance is stated");

    public static readonly NumberDefinition<GearboxSpec> Ratio = Number("ratio", "i", "Ratio, input speed over output speed")
        .By("i = ω_in / ω_out", Willis)
        .Noted("negative: the output turns against the input")
        .Solved([Each("gears", static () => GearQuantities.Teeth)], RatioReasons, static (_, subject) => Exact(subject).ToDouble());

    public static readonly NumberDefinition<GearboxSpec> RatioDeviation =
        Number("ratio_deviation", "Δi/i", "Deviation of the ratio from its target", Units.Percent).NeverNegative()
        .By("Δi/i = | |i| − i_t | / i_t", "closed form").Scaled(0.01)
        .From(Ratio, TargetRatio, static (i, target) => Math.Abs(Math.Abs(i) - target) / target);

    public static readonly RowDefinition<GearboxSpec, string> ExactRatio = Text("exact_ratio", "Ratio as a fraction of whole numbers")
        .By("i = ω_in / ω_out in exact arithmetic", Willis)
        .Solved([], RatioReasons, static (_, subject) => $"{Exact(subject).Numerator}/{Exact(subject).Denominator}");

    public static readonly RowDefinition<GearboxSpec, string> Sense = Text("sense", "Sense of rotation of the output").OneOf("same", "reversed")
        .By("same when i > 0, reversed when i < 0", "closed form")
        .From(Ratio, static ratio => ratio < 0 ? "reversed" : "same");

    public static readonly RowDefinition<GearboxSpec, string> TargetSense = Text("target_sense", "Sense of rotation required").OneOf("same", "reversed")
        .Stated(static s => s.Ratio?.Sense, "/ratio.sense").Optional();

    public static readonly NumberDefinition<GearboxSpec> Efficiency = Number("efficiency", "η", "Efficiency of the meshes", Units.Percent)
        .By("η = −P_out / P_in", PowerBalance)
        .Noted("losses of the meshes alone; bearings, seals and churning are not in it")
        .Unless(TorqueReasons)
        .From(Layout(TrainOf), Efficiencies, static (train, efficiencies) => WithLosses(train, efficiencies).Efficiency);

    public static readonly RowDefinition<GearboxSpec, string> SelfLocking = Text("self_locking", "The losses stop the drive")
        .By("none, or why no direction of mesh losses gives a positive efficiency", PowerBalance)
        .Solved([Efficiencies], static subject => IsLocked(subject) ? [] : TorqueReasons(subject), static (_, subject) => Sentences(subject, static problem => problem is TrainProblem.SelfLocking));

    public static readonly NumberDefinition<GearboxSpec> TorqueBalance = Number("torque_balance", "|ΣT|/|T|", "Residue of the torques on the whole")
        .By("|T_in + T_out + Σ T_fixed| / max |T|", "statics: the torques on a body at rest sum to zero")
        .Noted("checks the solution itself, at nominal").Scaled(1)
        .Solved([Efficiencies], TorqueReasons, static (_, subject) => Residue(subject.Context.Train!.Solution!.Torques!));

    public static readonly NumberDefinition<GearboxSpec> CirculatingPower =
        Number("circulating_power", "P_m/P_in", "Maximum rolling power of a mesh per input power")
        .By("max over meshes of |T · (ω − ω_carrier)| / P_in", PowerBalance)
        .Unless(TorqueReasons)
        .From(Layout(TrainOf), Efficiencies, static (train, efficiencies) => WithLosses(train, efficiencies).MaxRollingPower);

    public static readonly NumberDefinition<GearboxSpec> InputSpeed = Number("input_speed", "n_in", "Input speed", Units.RevolutionPerMinute)
        .Stated(static s => s.Duty?.Input?.Speed, "/duty.input.speed");

    public static readonly NumberDefinition<GearboxSpec> InputTorque = Number("input_torque", "T_in", "Input torque", Units.NewtonMetre)
        .Stated(static s => s.Duty?.Input?.Torque, "/duty.input.torque");

    public static readonly NumberDefinition<GearboxSpec> OutputSpeed = Number("output_speed", "n_out", "Output speed", Units.RevolutionPerMinute)
        .By("n_out = n_in / i", Willis)
        .From(InputSpeed, Ratio, static (speed, i) => speed / i);

    public static readonly NumberDefinition<GearboxSpec> OutputTorque =
        Number("output_torque", "T_out", "Torque at the output, on the load", Units.NewtonMetre)
        .By("T_out = T_in · i · η", PowerBalance)
        .From(InputTorque, Ratio, Efficiency, static (torque, i, efficiency) => torque * i * efficiency);

    public static readonly NumberDefinition<GearboxSpec> InputPower = Number("input_power", "P_in", "Input power", Units.Kilowatt)
        .By("P_in = T_in · ω_in", "closed form")
        .From(InputTorque, InputSpeed, static (torque, speed) => torque * speed);

    public static readonly NumberDefinition<GearboxSpec> LostPower = Number("lost_power", "P_v", "Power lost in the meshes", Units.Watt)
        .By("P_v = P_in · (1 − η)", PowerBalance)
        .From(InputPower, Efficiency, static (power, efficiency) => power * (1 - efficiency));

    public static readonly NumberDefinition<GearboxSpec> OilTemperature =
        Number("oil_temperature", "T", "Oil temperature: running, coldest, hottest", Units.Celsius)
        .Custom(static subject => Oil(subject.Context));

    public static readonly NumberDefinition<GearboxSpec> RunningOil =
        Number("running_oil_temperature", "T_oil", "Oil temperature in continuous service", Units.Celsius)
        .Stated(static s => s.Duty?.Oil?.Running, "/duty.oil.running").Optional();

    public static readonly NumberDefinition<GearboxSpec> ColdestOil =
        Number("coldest_oil_temperature", "T_cold", "Oil temperature at the coldest start", Units.Celsius)
        .Stated(static s => s.Duty?.Oil?.Coldest, "/duty.oil.coldest").Optional();

    public static readonly NumberDefinition<GearboxSpec> OutputLash =
        Number("output_lash", "φ", "Angular play at the output, input held", Units.Arcminute)
        .By("φ = Σ over meshes of j_wt · 2·T_k/(d_w·T_out), T_k the torque of the mesh on the gear of d_w", "virtual work on the lossless train")
        .Noted("play of the meshes alone, at running temperature, least and greatest from coldest to hottest; bearings and splines are not in it")
        .Unless(LosslessReasons)
        .From(
            Each("loaded_meshes", static () => MeshQuantities.CircumferentialBacklash), Each("loaded_meshes", static () => MeshQuantities.OutputTorqueShare, "T_k/T_out"),
            Each("loaded_firsts", static () => MeshGearQuantities.WorkingPitchDiameter), static (plays, shares, diameters) =>
                plays.Select((play, k) => 2 * play * shares[k] / diameters[k]).Aggregate(0.0, static (sum, part) => sum + part));

    public static readonly NumberDefinition<GearboxSpec> MaxLash =
        Number("max_lash", "", "Maximum angular play at the output that the load bears", Units.Arcminute)
        .Stated(static s => s.Duty?.Output?.MaxLash, "/duty.output.max_lash").Optional();

    private const string SeriesSystem = "product of the reliabilities of Weibull's distribution; ISO 281, ISO/TR 1281-1 for e";

    private static readonly IInput<(double Life, double Exponent)[]> BearingLives = Join(
        Each("bearings", static () => BearingSetQuantities.Life, "L_10h,i"), Each("bearings", static () => BearingSetQuantities.Exponent, "e_i"),
        Each("other_bearings", static () => BearingSetQuantities.LifeOfOthers, "L_10h,i'"), Each("other_bearings", static () => BearingSetQuantities.Exponent, "e_i'"),
        static (lives, exponents, others, theirs) => (ValueTuple<double, double>[])[.. lives.Zip(exponents), .. others.Zip(theirs)]);

    public static readonly NumberDefinition<GearboxSpec> BearingSetLife =
        Number("bearing_set_life", "L_set", "Life that all bearings reach together in 90 % of gearboxes", Units.Hour).NeverNegative()
        .By("Σ (L_set/L_10h,i)^e_i + Σ (L_set/L_10h,i')^e_i' = 1, each bearing once", SeriesSystem)
        .Noted("one planet carries K_γ times the mean all the time, the others share the rest; from the basic lives, without film and dirt")
        .From(Layout(static subject => subject.Context.Held), BearingLives, static (_, lives) => SetLife.Time(lives));

    public static readonly NumberDefinition<GearboxSpec> BearingSetReliability =
        Number("bearing_set_reliability", "R_set", "Share of gearboxes in which no bearing fails in the service life", Units.Percent).NeverNegative()
        .By("R_set = 0.9^(Σ (L_h/L_10h,i)^e_i + Σ (L_h/L_10h,i')^e_i'), each bearing once", SeriesSystem)
        .Noted("one planet carries K_γ times the mean all the time, the others share the rest; from the basic lives, without film and dirt")
        .From(Layout(static subject => subject.Context.Held), Own(static () => Rating.DutyQuantities.ServiceLife), BearingLives, static (_, service, lives) => SetLife.Reliability(service, lives));

    public static readonly NumberDefinition<GearboxSpec> RequiredSetReliability =
        Number("required_set_reliability", "R_req", "Reliability required of all bearings together", Units.Percent).NeverNegative()
        .Stated(static s => s.Duty?.SetReliability, "/duty.set_reliability").Optional();

    public static readonly NumberDefinition<GearboxSpec> MinViscosityRatio =
        Number("min_viscosity_ratio", "κ_min", "Viscosity ratio of the bearing with the thinnest film").NeverNegative()
        .By("minimum of the bearings in oil", "definition")
        .When(static (_, subject) => subject.ReachAll("oiled_bearings").Any())
        .From(Each("oiled_bearings", static () => BearingLifeQuantities.ViscosityRatio, "κ"), static ratios => ratios.Min());

    /// <summary>Why no speed is known; empty when they are.</summary>
    internal static ImmutableArray<string> SpeedReasons(Subject subject) => Reasons(subject, TrainStep.Speeds);

    /// <summary>Why no torque is known; empty when they are.</summary>
    internal static ImmutableArray<string> TorqueReasons(Subject subject) =>
        subject.Context.Train?.Solution?.Torques is not null ? [] : TorqueProblems(subject);

    internal static TrainBuilder? TrainOf(Subject subject) => subject.Context.Train;

    private static ImmutableArray<string> TorqueProblems(Subject subject) => SpeedReasons(subject) is { IsEmpty: false } speeds ? speeds
        : Reasons(subject, TrainStep.Torques) is { IsEmpty: false } torques ? torques
        : ["the torques are not determined"];

    private static ImmutableArray<string> LosslessReasons(Subject subject) =>
        subject.Context.Train is { Solution.Lossless: { } lossless } && lossless.Of(subject.Context.Spec.Train!.Output.Value) is { External: not 0 }
            ? []
            : TorqueProblems(subject);

    private static ImmutableArray<string> Unstated(Subject subject) => subject.Context.Train is null ? ["train is not stated"] : [];

    private static ImmutableArray<TrainProblem> Problems(Subject subject) => subject.Context.Train!.Solution!.Problems;

    private static ImmutableArray<string> Reasons(Subject subject, TrainStep step) => Unstated(subject) is { IsEmpty: false } unstated
        ? unstated
        : [.. Problems(subject).Where(problem => problem.Blocks == step).Select(static problem => problem.Sentence.TrimEnd('.'))];

    /// <summary>Why the graph cannot be looked at further.</summary>
    private static ImmutableArray<string> Faults(Subject subject) =>
        subject[GraphFaults] is { IsEvaluated: true, Text: None } ? [] : SpeedReasons(subject);

    private static ImmutableArray<string> RatioReasons(Subject subject) =>
        subject.Context.Train?.Solution?.Speeds is { Ratio: not null } ? [] : TorqueProblems(subject);

    private static Fraction Exact(Subject subject) => subject.Context.Train!.Solution!.Speeds!.Ratio!.Value;

    private static bool IsLocked(Subject subject) =>
        subject.Context.Train is not null && Problems(subject).Any(static problem => problem is TrainProblem.SelfLocking);

    private static string Sentences(Subject subject, Func<TrainProblem, bool> which)
    {
        var said = string.Join("; ", Problems(subject).Where(which).Select(static problem => problem.Sentence.TrimEnd('.')));
        return said.Length == 0 ? None : said;
    }

    private static TrainTorques WithLosses(TrainBuilder train, double[] efficiencies) =>
        TrainSolver.TorquesAt(train.Graph!, train.Solution!.Speeds!, efficiencies) ?? throw Guard.Because($"within its tolerances the train locks");

    private static double Residue(TrainTorques torques)
    {
        var (sum, greatest) = (torques.HousingTorque, 0.0);
        foreach (var body in torques.Bodies)
        {
            sum += body.External;
            greatest = Math.Max(greatest, Math.Abs(body.External));
        }

        return Math.Abs(sum) / greatest;
    }

    /// <summary>Running, coldest and hottest as one tolerance.</summary>
    private static Quantity Oil(AnalysisContext context)
    {
        var oil = context.Spec.Duty?.Oil;
        if (oil is not { Running: { } running, Coldest: { } coldest, Hottest: { } hottest })
        {
            return Quantity.NotEvaluated(OilTemperature, [], [.. new[]
            {
                oil?.Running is null ? "duty.oil.running is not stated" : null,
                oil?.Coldest is null ? "duty.oil.coldest is not stated" : null,
                oil?.Hottest is null ? "duty.oil.hottest is not stated" : null,
            }.OfType<string>()]);
        }

        return context.Between(
            OilTemperature,
            new Origin.Declared(running.Span, $"{running.Text}, {coldest.Text} to {hottest.Text}", "coldest to hottest"),
            running.Value.Coherent, coldest.Value.Coherent, hottest.Value.Coherent);
    }
}
