using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Bearings;

/// <summary>How a body is held; quantities of bodies, where bearings are stated.</summary>
public sealed class SupportQuantities : Section<BodyInTrain>
{
    private static readonly IInput Seats = new BearingsOfBody();

    public static readonly NumberDefinition<BodyInTrain> MachineRadial =
        Number("machine_radial_force", "", "Radial force of the coupled machine", Units.Newton)
        .When(IsEnd)
        .Custom(static subject => subject.Context.Amount(MachineRadial!, End(subject, static i => i?.RadialForce, static o => o?.RadialForce), 0, "0 N, for none is stated"));

    public static readonly NumberDefinition<BodyInTrain> MachineAxial =
        Number("machine_axial_force", "", "Axial force of the coupled machine, in either direction", Units.Newton)
        .When(IsEnd)
        .Custom(static subject => subject.Context.Amount(MachineAxial!, End(subject, static i => i?.AxialForce, static o => o?.AxialForce), 0, "0 N, for none is stated"));

    public static readonly NumberDefinition<BodyInTrain> Weight = Number("mass", "", "Mass whose weight its bearings bear", Units.Kilogram)
        .When(IsEnd).Stated(static s => s.Spec?.Mass).Assumed(0, "0 kg, for none is stated");

    public static readonly NumberDefinition<BodyInTrain> BearingCount = Number("bearing_count", "", "Bearings that hold it")
        .By("bearings of the body that hold no other one", "the spec")
        .When(IsJudged).Solved([Seats], static (_, subject) => Held(subject).Own(NameOf(subject)).Length);

    public static readonly NumberDefinition<BodyInTrain> LocatingPlaces = Number("locating_places", "", "Places that hold it along the axis")
        .By("locating bearings, and one for bearings that take thrust in both directions as a pair", "the spec")
        .When(IsJudged)
        .Solved([Seats], static (s, subject) => s.Set is null && !Held(subject).Own(s.Name).IsEmpty ? Held(subject).LocatingPlaces(s.Name) : null);

    public static readonly RowDefinition<BodyInTrain, string> Supports = Text("supports", "How it is held")
        .By("two bearings, or one and its meshes where it floats: held; else the reason", "statics of rigid shafts")
        .When(IsJudged).Solved([Seats], static (s, subject) => Held(subject).Account(s.Name));

    public static readonly RowDefinition<BodyInTrain, string> Unsupported = Text("unsupported", "What is left without a bearing")
        .By("planets, bodies that do not float, and floating ones that bear the coupled machine or their weight need bearings; none: they have them", "statics of rigid shafts")
        .When(IsJudged).Solved([Seats], static (s, subject) => Held(subject).Unsupported(s.Name));

    public static readonly NumberDefinition<BodyInTrain> AxialForce =
        Number("axial_force", "", "Axial force of the teeth on it at the rated torque", Units.Newton)
        .By("Σ F_a with direction, in the forward direction of drive", "statics").Scaled(1)
        .When(IsJudged)
        .Solved([], ForceReasons, static (s, subject) => Held(subject).AxialTeeth(s.Name) is var teeth && Math.Abs(teeth) < 1e-6 ? 0 : teeth);

    public static readonly NumberDefinition<BodyInTrain> ReverseAxialForce =
        Number("reverse_axial_force", "", "Axial force of the teeth on it at the torque in the other direction", Units.Newton)
        .By("−Σ F_a·T_rev/T_in", "statics").Scaled(1)
        .Noted("of a reversed drive, or while the output drives")
        .When(IsJudged)
        .From(AxialForce, BodyInputs.ReverseTorque, BodyInputs.InputTorque, static (force, reverse, torque) => force == 0 ? 0 : -force * reverse / torque);

    public static readonly NumberDefinition<BodyInTrain> UnheldThrust =
        Number("unheld_thrust", "", "Axial force on it that nothing holds", Units.Newton)
        .By("greatest of Σ F_a, −Σ F_a·T_rev/T_in and 0, and machine and upright weight, in a direction in which no bearing takes thrust and no thrust washers are stated", "statics").Scaled(1)
        .When(IsJudged).Solved([Seats], ForceReasons, static (s, subject) => Held(subject).UnheldThrust(s.Name, s.Set, LoadShares.Of(subject.Reach("train")!).Reverse));

    private static HeldBodies Held(Subject body) => body.Context.Held!;

    private static string NameOf(Subject body) => ((BodyInTrain)body.Model).Name;

    private static bool IsEnd(BodyInTrain body, Subject subject) => subject.Context.Held is not null && body.Role is "input" or "output";

    /// <summary>What is held to the housing needs no bearing.</summary>
    private static bool IsJudged(BodyInTrain body, Subject subject) =>
        subject.Context.Held is not null && !subject.Context.Spec.Train!.Fixed.Any(held => held.Value == body.Name);

    private static Stated<Amount>? End(Subject body, Func<InputDutySpec?, Stated<Amount>?> input, Func<OutputDutySpec?, Stated<Amount>?> output) =>
        ((BodyInTrain)body.Model).Role == "input" ? input(body.Context.Spec.Duty?.Input) : output(body.Context.Spec.Duty?.Output);

    private static ImmutableArray<string> ForceReasons(Subject body) => [.. Held(body).Forces.Of(NameOf(body)).Reasons];

    /// <summary>The axial duties of the bearings of a body.</summary>
    private sealed class BearingsOfBody : IInput
    {
        public bool Gather(Subject subject, InputList list)
        {
            foreach (var place in Held(subject).Own(NameOf(subject)))
                list.Add(subject.Context.Find(SubjectKinds.Bearing, $"bearings.{place.Name}")![BearingQuantities.Seat], BearingQuantities.Seat.Name);
            return true;
        }
    }
}
