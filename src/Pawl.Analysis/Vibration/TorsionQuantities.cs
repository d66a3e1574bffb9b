using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Shafts;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Trains;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Vibration;

/// <summary>Torsional vibration of motor, gearbox and load; quantities of the train, where the inertia of a machine is stated.</summary>
public sealed class TorsionQuantities : Section<GearboxSpec>
{
    private const string Energy = "equal kinetic and elastic energy at the speed of the input";
    private const string Chain = "three masses on two springs";
    private const string Model = "meshes, splines and keys as rigid, the gearbox as one mass; no damping, no play";

    public static readonly NumberDefinition<GearboxSpec> InputInertia =
        Number("input_inertia", "J_1", "Moment of inertia of the driving machine", Units.KilogramSquareMetre)
        .When(IsAsked).Stated(static s => s.Duty!.Input?.Inertia, "/duty.input.inertia");

    public static readonly NumberDefinition<GearboxSpec> OutputInertia =
        Number("output_inertia", "J_L", "Moment of inertia of the load", Units.KilogramSquareMetre)
        .When(IsAsked).Stated(static s => s.Duty!.Output?.Inertia, "/duty.output.inertia");

    public static readonly NumberDefinition<GearboxSpec> GearboxInertia =
        Number("gearbox_inertia", "J_2", "Moment of inertia of the gearbox that the input feels", GearInertiaQuantities.KilogramSquareMillimetre)
        .By("J_2 = Σ J_red of the bodies that turn", Energy).Noted("gears, sections of shafts and the path of the planets; 1 kg·m² are 10⁶ kg·mm²").AsOne()
        .When(IsAsked).From(Each("turning_bodies", static () => BodyInertiaQuantities.Reduced), static reduced => reduced.Sum());

    public static readonly NumberDefinition<GearboxSpec> ReducedOutputInertia =
        Number("reduced_output_inertia", "J_3", "Moment of inertia of the load that the input feels", Units.KilogramSquareMetre)
        .By("J_3 = J_L/i²", Energy)
        .When(IsAsked).From(OutputInertia, T.Ratio, static (inertia, ratio) => TorsionalChain.Reduced(1, inertia, 1 / ratio));

    public static readonly NumberDefinition<GearboxSpec> InputCoupling =
        Number("input_coupling_stiffness", "k_M", "Torsional stiffness of the coupling of the driving machine", Units.NewtonMetrePerRadian)
        .When(IsAsked).Stated(static s => s.Duty!.Input?.Stiffness, "/duty.input.stiffness").Optional();

    public static readonly NumberDefinition<GearboxSpec> OutputCoupling =
        Number("output_coupling_stiffness", "k_L", "Torsional stiffness of the coupling of the load", Units.NewtonMetrePerRadian)
        .When(IsAsked).Stated(static s => s.Duty!.Output?.Stiffness, "/duty.output.stiffness").Optional();

    public static readonly NumberDefinition<GearboxSpec> InputStiffness =
        Number("input_stiffness", "k_1", "Torsional stiffness between driving machine and gears", Units.NewtonMetrePerRadian)
        .By("1/k_1 = 1/k_M + Σ 1/k of the shafts of the input", "springs in a row").Noted("what states no stiffness counts as rigid")
        .When(IsAsked)
        .For(static s => s.Duty!.Input?.Stiffness is not null || HasShaft(s, s.Train?.Input.Value)).From(
            Each("input_shafts", static () => ShaftQuantities.TorsionalStiffness), InputCoupling.Or(double.NaN), InSeries)
        .Otherwise(static s => $"neither duty.input.stiffness nor the sections of a shaft on {s.Train?.Input.Value} are stated");

    public static readonly NumberDefinition<GearboxSpec> OutputStiffness =
        Number("output_stiffness", "k_out", "Torsional stiffness between gears and load", Units.NewtonMetrePerRadian)
        .By("1/k_out = 1/k_L + Σ 1/k of the shafts of the output", "springs in a row").Noted("what states no stiffness counts as rigid")
        .When(IsAsked)
        .For(static s => s.Duty!.Output?.Stiffness is not null || HasShaft(s, s.Train?.Output.Value)).From(
            Each("output_shafts", static () => ShaftQuantities.TorsionalStiffness), OutputCoupling.Or(double.NaN), InSeries)
        .Otherwise(static s => $"neither duty.output.stiffness nor the sections of a shaft on {s.Train?.Output.Value} are stated");

    public static readonly NumberDefinition<GearboxSpec> ReducedOutputStiffness =
        Number("reduced_output_stiffness", "k_2", "Torsional stiffness between gears and load that the input feels", Units.NewtonMetrePerRadian)
        .By("k_2 = k_out/i²", Energy)
        .When(IsAsked).From(OutputStiffness, T.Ratio, static (stiffness, ratio) => stiffness / (ratio * ratio));

    public static readonly NumberDefinition<GearboxSpec> First = Number("first_torsional_frequency", "f_1", "First torsional natural frequency", Units.Hertz)
        .By("lower root of (2π·f)⁴ − (A + B)·(2π·f)² + k_1·k_2·(J_1 + J_2 + J_3)/(J_1·J_2·J_3) = 0, A = k_1·(1/J_1 + 1/J_2), B = k_2·(1/J_2 + 1/J_3)", Chain)
        .Noted(Model)
        .When(IsAsked)
        .From(InputInertia, InputStiffness, GearboxInertia, ReducedOutputStiffness, ReducedOutputInertia, static (motor, input, gears, output, load) =>
            TorsionalChain.Frequencies(motor, input, gears, output, load).First);

    public static readonly NumberDefinition<GearboxSpec> Second = Number("second_torsional_frequency", "f_2", "Second torsional natural frequency", Units.Hertz)
        .By("higher root of the same equation", Chain).Noted(Model)
        .When(IsAsked)
        .From(InputInertia, InputStiffness, GearboxInertia, ReducedOutputStiffness, ReducedOutputInertia, static (motor, input, gears, output, load) =>
            TorsionalChain.Frequencies(motor, input, gears, output, load).Second);

    public static readonly NumberDefinition<GearboxSpec> Separation =
        Number("torsional_separation", "", "Distance of the excitation from the torsional natural frequencies", Units.Percent).NeverNegative()
        .By("min |o·n − f|/f: n of duty and spectrum; o = 1, 2, 1/|i|, 2/|i| and o_m of every mesh; f = f_1, f_2", "definition")
        .Noted("at the stated speeds; a start passes through those between").Turns()
        .When(IsAsked)
        .From(
            First, Second, T.InputSpeed, Each("load_cases", static () => LoadCaseQuantities.Speed), T.Ratio, Each("meshes", static () => MeshQuantities.Order),
            static (first, second, speed, cases, ratio, meshes) =>
                TorsionalChain.Nearest([first, second], [speed, .. cases], Orders(ratio, meshes)).Share);

    public static readonly RowDefinition<GearboxSpec, string> Nearest =
        Text("nearest_excitation", "Excitation next to a torsional natural frequency")
        .By("that of torsional_separation", "definition").When(IsAsked)
        .Solved([Separation], static (_, subject) => Told(subject));

    /// <summary>Whether the spec states the inertia of a machine, without which none of this is asked.</summary>
    internal static bool IsAsked(GearboxSpec spec) => spec.Train is not null && (spec.Duty?.Input?.Inertia ?? spec.Duty?.Output?.Inertia) is not null;

    /// <summary>The roles that the quantities above read.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        if (context.Train is not { } train)
            return;
        var spec = context.Spec.Train!;
        train.Subject
            .RelateAll("load_cases", () => context.Of(SubjectKinds.LoadCase))
            .RelateAll("turning_bodies", () => context.Of(SubjectKinds.Body).Where(subject => spec.Fixed.All(held => held.Value != ((BodyInTrain)subject.Model).Name)))
            .RelateAll("input_shafts", () => ShaftsOf(context, spec.Input.Value))
            .RelateAll("output_shafts", () => ShaftsOf(context, spec.Output.Value));
    }

    private static IEnumerable<Subject> ShaftsOf(AnalysisContext context, string body) => context.Of(SubjectKinds.Shaft).Where(
        subject => subject.Model is ShaftSpec { Sections.Entries.IsEmpty: false } shaft && shaft.Body.Value == body);

    private static bool HasShaft(GearboxSpec spec, string? body) =>
        spec.Shafts.Entries.Any(shaft => shaft.Body.Value == body && !shaft.Sections.Entries.IsEmpty);

    private static double InSeries(double[] shafts, double coupling) =>
        TorsionalChain.InSeries(double.IsNaN(coupling) ? shafts : [.. shafts, coupling]);

    private static double[] Orders(double ratio, double[] meshes) => [1, 2, 1 / Math.Abs(ratio), 2 / Math.Abs(ratio), .. meshes];

    private static string Told(Subject subject)
    {
        var spec = (GearboxSpec)subject.Model;
        double[] speeds = [subject[T.InputSpeed].Value.Nominal, .. subject.ReachAll("load_cases").Select(static each => each[LoadCaseQuantities.Speed].Value.Nominal)];
        var meshes = subject.ReachAll("meshes").ToArray();
        var orders = Orders(subject[T.Ratio].Value.Nominal, [.. meshes.Select(static mesh => mesh[MeshQuantities.Order].Value.Nominal)]);
        double[] natural = [subject[First].Value.Nominal, subject[Second].Value.Nominal];
        var nearest = TorsionalChain.Nearest(natural, speeds, orders);
        var of = nearest.Order switch
        {
            0 => $"turns of {spec.Train!.Input.Value}",
            1 => $"twice the turns of {spec.Train!.Input.Value}",
            2 => $"turns of {spec.Train!.Output.Value}",
            3 => $"twice the turns of {spec.Train!.Output.Value}",
            var order => $"mesh {meshes[order - 4].Path.Replace("meshes.", "", StringComparison.Ordinal)}",
        };
        var frequency = orders[nearest.Order] * Math.Abs(speeds[nearest.Speed]) / Math.Tau;
        return FormattableString.Invariant(
            $"{of}, {frequency:0.#} Hz at {Math.Abs(speeds[nearest.Speed]) * 30 / Math.PI:0} 1/min of the input, beside {natural[nearest.Natural]:0.#} Hz");
    }
}
