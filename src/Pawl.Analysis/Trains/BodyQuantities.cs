using Pawl.Analysis.Core;
using Pawl.Analysis.Vibration;
using Pawl.Mechanics.Trains;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Trains;

/// <summary>A body of the train and what the spec says of it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Role">What it is to the train.</param>
/// <param name="Set">Its planet set; null for a shaft, carrier or housing.</param>
/// <param name="Spec">Its entry under bodies; null where it is only named.</param>
public sealed record BodyInTrain(string Name, string Role, PlanetSetSpec? Set, BodySpec? Spec);

/// <summary>A shaft, carrier, housing or planet.</summary>
public sealed class BodyQuantities : Section<BodyInTrain>
{
    private const string Willis = "Willis relation of every mesh, solved as one linear system";
    private const string PowerBalance = "torque and power balance, losses by the power in the carrier frame";

    public static readonly RowDefinition<BodyInTrain, string> Role = Text("role", "Role in the train")
        .By("input, output, fixed, planet, or linked between stages", "the spec", Certainty.Declared)
        .Named(static s => s.Role);

    public static readonly NumberDefinition<BodyInTrain> SpeedRatio = Number("speed_ratio", "ω/ω_in", "Speed per input speed")
        .By("from the system of Willis relations", Willis)
        .Solved([], static subject => SpeedOf(subject) is null ? Unknown(subject) : [], static (_, subject) => SpeedOf(subject)!.Speed.ToDouble());

    public static readonly NumberDefinition<BodyInTrain> Speed = Number("speed", "n", "Speed", Units.RevolutionPerMinute)
        .By("n = n_in · (ω/ω_in)", Willis).Scaled(Math.PI)
        .From(Of("train", static () => TrainQuantities.InputSpeed), SpeedRatio, static (speed, perInput) => speed * perInput);

    public static readonly NumberDefinition<BodyInTrain> SpinRatio =
        Number("spin_ratio", "(ω − ω_carrier)/ω_in", "Speed of the planet on its carrier, per input speed")
        .By("ω/ω_in − ω_carrier/ω_in", Willis)
        .When(static s => s.Set is not null)
        .Solved([], static subject => SpeedOf(subject) is null ? Unknown(subject) : [], static (_, subject) => SpeedOf(subject)!.RelativeToCarrier?.ToDouble());

    public static readonly NumberDefinition<BodyInTrain> SpinSpeed =
        Number("spin_speed", "n_rel", "Speed of the planet on its carrier", Units.RevolutionPerMinute)
        .By("n_rel = n_in · (ω/ω_in − ω_carrier/ω_in)", Willis).Scaled(Math.PI)
        .From(Of("train", static () => TrainQuantities.InputSpeed), SpinRatio, static (speed, perInput) => speed * perInput);

    public static readonly NumberDefinition<BodyInTrain> TorqueShare = Number("torque_share", "T/T_in", "External torque on the body per input torque")
        .By("from the system of torque balances, with losses", PowerBalance).Noted("at nominal efficiency of every mesh")
        .When(static s => s.Set is null)
        .Solved(
            [Of("train", static () => TrainQuantities.Efficiency)],
            static subject => SpeedOf(subject) is null ? Unknown(subject) : TrainQuantities.TorqueReasons(subject),
            static (s, subject) => subject.Context.Train!.Solution!.Torques!.Of(s.Name)?.External);

    public static readonly NumberDefinition<BodyInTrain> Torque = Number("torque", "T", "External torque on the body", Units.NewtonMetre)
        .By("T = T_in · (T/T_in), with losses", PowerBalance).Scaled(1000)
        .When(static s => s.Set is null)
        .From(Of("train", static () => TrainQuantities.InputTorque), TorqueShare, static (torque, share) => torque * share);

    public static readonly NumberDefinition<BodyInTrain> Power = Number("power", "P", "External power into the body", Units.Kilowatt)
        .By("P = T · ω", "closed form").Scaled(1e6)
        .From(Torque, Speed, static (torque, speed) => torque * speed);

    public static readonly TruthDefinition<BodyInTrain> Floating = Truth("floating", "Settles radially between its meshes")
        .Stated(static s => s.Spec?.Floating).Optional();

    internal static void AddAll(AnalysisContext context)
    {
        if (context.Train is not { } train)
            return;
        var spec = context.Spec.Train!;
        foreach (var name in train.Bodies)
        {
            var (set, body) = (train.PlanetSet(name), spec.Bodies.Find(name));
            var subject = context.Begin(
                SubjectKinds.Body, $"bodies.{name}", set?.Name.Span ?? body?.Name.Span ?? Mention(spec, name),
                new BodyInTrain(name, RoleOf(spec, name, set), set, body), $"train.bodies.{name}")
                .InDuty(context);
            BodyInertiaQuantities.Relate(context, subject);
            BalanceQuantities.Relate(context, subject);
        }
    }

    private static BodySpeed? SpeedOf(Subject body) => body.Context.Train!.Solution?.Speeds?.Of(((BodyInTrain)body.Model).Name);

    private static ImmutableArray<string> Unknown(Subject body) => TrainQuantities.SpeedReasons(body) is { IsEmpty: false } reasons
        ? reasons
        : [$"nothing determines the speed of {((BodyInTrain)body.Model).Name}"];

    private static SourceSpan Mention(TrainSpec spec, string name)
    {
        if (spec.Input.Value == name)
            return spec.Input.Span;
        if (spec.Output.Value == name)
            return spec.Output.Span;
        foreach (var held in spec.Fixed)
        {
            if (held.Value == name)
                return held.Span;
        }

        foreach (var set in spec.Planets.Entries)
        {
            if (set.Carrier.Value == name)
                return set.Carrier.Span;
        }

        return spec.Span;
    }

    private static string RoleOf(TrainSpec spec, string name, PlanetSetSpec? set) =>
        set is not null ? "planet"
        : name == spec.Input.Value ? "input"
        : name == spec.Output.Value ? "output"
        : spec.Fixed.Any(held => held.Value == name) ? "fixed"
        : "linked";
}
