using Pawl.Analysis.Core;
using Pawl.Mechanics.Joints;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using static Pawl.Analysis.BodyInputs;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Joints;

/// <summary>What a joint bears from outside besides its torque: forces and bending moment, stated or from overhung loads of the duty.</summary>
public sealed class JointLoads : Section<JointSpec>
{
    private const string Statics = "statics";
    private const string TheDuty = "the duty";

    public static readonly RowDefinition<JointSpec, string> External = Text("external_loads", "Loads from outside on the joint").OneOf("stated", "not stated", "none")
        .By("stated by moment, axial_force, force_across or supports; none where the duty has no overhung load", TheDuty, Certainty.Declared)
        .When(static (s, subject) => s is { Kind.Value: "flange", Carries: { } body } && subject.Context.Spec.Train?.Fixed.Any(held => held.Value == body.Value) == true)
        .Custom(static subject => Quantity.OfText(External!, Origin.Computed.Instance, StateOf((JointSpec)subject.Model, subject.Context.Spec), []));

    public static readonly NumberDefinition<JointSpec> AxialPosition = Number("axial_position", "x", "Place of the clamped faces along the axis", Units.Millimetre)
        .When(static s => s.Supports is not null).Stated(static s => s.AxialPosition);

    public static readonly NumberDefinition<JointSpec> OverhungForce = Number("overhung_force", "F_r", "Lasting radial force of the machine on the supported body", Units.Newton)
        .By("as the duty states it, else none", TheDuty, Certainty.Declared)
        .When(static s => s.Supports is not null)
        .Custom(static subject => Machine(subject, OverhungForce!, static d => d?.Input?.RadialForce, static d => d?.Output?.RadialForce, "radial"));

    public static readonly NumberDefinition<JointSpec> OverhungAt = Number("overhung_at", "x_r", "Where it acts along the axis", Units.Millimetre)
        .When(OverhungForce, static force => force > 0)
        .Custom(static subject => Machine(subject, OverhungAt!, static d => d?.Input?.RadialForceAt, static d => d?.Output?.RadialForceAt, null));

    public static readonly NumberDefinition<JointSpec> OverhungAxial = Number("overhung_axial_force", "F_x", "Lasting axial force of the machine on the supported body", Units.Newton)
        .By("as the duty states it, else none", TheDuty, Certainty.Declared)
        .When(static s => s.Supports is not null)
        .Custom(static subject => Machine(subject, OverhungAxial!, static d => d?.Input?.AxialForce, static d => d?.Output?.AxialForce, "axial"));

    public static readonly NumberDefinition<JointSpec> Overload = Number("overhung_overload", "K", "Overload of the overhung forces over their lasting values")
        .By("K = K_A·f_p", "common practice, no source: a peak of the torque pulls at belt, gear or coupling alike", Certainty.CommonPractice)
        .When(static s => s.Supports is not null)
        .From(ApplicationFactor, PeakOverRated, static (application, peak) => application * peak);

    public static readonly NumberDefinition<JointSpec> StatedMoment =
        Number("stated_moment", "M_0", "Stated bending moment", Units.NewtonMetre).Stated(static s => s.Moment).Optional();

    public static readonly NumberDefinition<JointSpec> OverhungMoment = Number("overhung_moment", "M_r", "Bending moment of the overhung force at the joint", Units.NewtonMetre)
        .By("M_r = K·F_r·|x_r − x|", Statics).Scaled(1000).Turns()
        .From(Overload, OverhungForce, OverhungAt, AxialPosition, static (overload, force, at, joint) => overload * force * Math.Abs(at - joint));

    public static readonly NumberDefinition<JointSpec> Moment = Number("bending_moment", "M", "Bending moment at the joint, from either side", Units.NewtonMetre)
        .By("M = M_0 + M_r", Statics).Scaled(1000)
        .When(static (s, subject) => s.Moment is not null || subject.Find(OverhungMoment!) is not null)
        .From(StatedMoment.Or(0), OverhungMoment.Or(0), static (stated, overhung) => stated + overhung);

    public static readonly NumberDefinition<JointSpec> StatedAcross =
        Number("stated_force_across", "F_Q,0", "Stated transverse force", Units.Newton).Stated(static s => s.ForceAcross).Optional();

    public static readonly NumberDefinition<JointSpec> ForceAcross = Number("force_across", "F_Q", "Transverse force through the middle of the joint", Units.Newton)
        .By("F_Q = F_Q,0 + K·F_r", Statics)
        .From(StatedAcross.Or(0), Overload, OverhungForce, static (stated, overload, force) => stated + overload * force)
        .From(StatedAcross, static stated => stated);

    public static readonly NumberDefinition<JointSpec> StatedAxial =
        Number("stated_axial_force", "F_0", "Stated axial force on all bolts together", Units.Newton).Stated(static s => s.AxialForce).Optional();

    public static readonly NumberDefinition<JointSpec> Along = Number("force_along", "F", "Axial force on all bolts together", Units.Newton)
        .By("F = F_0 + K·F_x", Statics).Scaled(1)
        .From(StatedAxial.Or(0), Overload, OverhungAxial, static (stated, overload, force) => stated + overload * force)
        .From(StatedAxial, static stated => stated);

    public static readonly NumberDefinition<JointSpec> MomentForce = Number("moment_force", "F_M", "Axial force of the bending moment on the worst bolt", Units.Newton)
        .By("F_M = 4·M/(z·D)", "statics of a circle of bolts about its middle, rigid flanges").Scaled(1)
        .From(
            Moment, Own(static () => Joints.Bolts), Own(static () => JointStrengths.BoltCircle),
            static (moment, bolts, circle) => Flange.ForceOfMoment((int)bolts, moment, circle));

    private static string StateOf(JointSpec spec, GearboxSpec gearbox) =>
        (spec.Moment ?? spec.AxialForce ?? spec.ForceAcross) is not null || spec.Supports is not null ? "stated"
        : gearbox.Duty is { } duty && (duty.Input?.RadialForce ?? duty.Input?.AxialForce ?? duty.Output?.RadialForce ?? duty.Output?.AxialForce) is not null ? "not stated"
        : "none";

    /// <summary>What the duty says of the end that the supported body is.</summary>
    private static Quantity Machine(
        Subject subject, QuantityKind kind, Func<DutySpec?, Stated<Amount>?> input, Func<DutySpec?, Stated<Amount>?> output, string? otherwise)
    {
        var (name, train, duty) = (((JointSpec)subject.Model).Supports!.Value, subject.Context.Spec.Train, subject.Context.Spec.Duty);
        var end = train?.Output.Value == name ? "output" : train?.Input.Value == name ? "input" : null;
        if (end is null)
            return Quantity.NotEvaluated(kind, [], $"{name} is neither input nor output: the duty has no forces on it");
        var stated = end == "output" ? output(duty) : input(duty);
        return otherwise is null
            ? subject.Context.Amount(kind, stated, $"duty.{end}.radial_force_at")
            : subject.Context.Amount(kind, stated, 0, $"none, for duty.{end}.{otherwise}_force is not stated");
    }
}
