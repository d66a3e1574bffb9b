using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Completeness;

/// <summary>How bodies leave the housing and how what holds them is joined.</summary>
public sealed class ExitQuantities : Section<BodyInTrain>
{
    public static readonly RowDefinition<BodyInTrain, string> ExitSealing = Text("exit_sealing", "Seal where it leaves the housing")
        .By("the lip seals on it, or exit_sealed_by", "the spec")
        .When(static s => s.Role is "input" or "output")
        .For(static (s, subject) => LipsOn(s, subject).Any())
        .Custom(static subject => Quantity.ComputedText(ExitSealing!, "lip seal " + string.Join(", ", LipsOn((BodyInTrain)subject.Model, subject))))
        .Stated(static s => s.Spec?.ExitSealedBy)
        .Otherwise(static s => $"no lip seal stands on {s.Name}, and train.bodies.{s.Name}.exit_sealed_by is not stated");

    public static readonly TruthDefinition<BodyInTrain> ExitSealed = Truth("exit_sealed", "Sealed where it leaves the housing")
        .By("exit_sealing names a seal; none does not", "the spec").From(ExitSealing, static seal => seal != "none");

    public static readonly RowDefinition<BodyInTrain, string> ReactionPath = Text("reaction_path", "What carries its torque")
        .By("joints, dowels, fits, splines and keys that name it", "the spec")
        .When(static s => s.Role == "fixed")
        .For(static (s, subject) => CarriersOf(s, subject.Context.Spec).Any())
        .Custom(static subject => Quantity.ComputedText(ReactionPath!, string.Join(", ", CarriersOf((BodyInTrain)subject.Model, subject.Context.Spec))))
        .Otherwise(static s => $"no joint, dowels, fit, spline or key names {s.Name}");

    public static readonly TruthDefinition<BodyInTrain> ReactionCarried = Truth("reaction_carried", "Torque of the held body has a path")
        .By("reaction_path names what carries it", "the spec").From(ReactionPath, static path => path.Length > 0);

    private static IEnumerable<string> LipsOn(BodyInTrain body, Subject subject) =>
        from seal in subject.Context.Spec.LipSeals.Entries where seal.Shaft?.Value == body.Name select seal.Name.Value;

    private static IEnumerable<string> CarriersOf(BodyInTrain body, GearboxSpec spec) =>
    [
        .. from joint in spec.Joints.Entries where joint.Carries?.Value == body.Name select $"joints.{joint.Name.Value}",
        .. from fit in spec.Fits.Entries where fit.Carries?.Value == body.Name select $"fits.{fit.Name.Value}",
        .. from spline in spec.Splines.Entries where spline.Body.Value == body.Name select $"splines.{spline.Name.Value}",
        .. from dowels in spec.Dowels.Entries where dowels.Carries?.Value == body.Name select $"dowels.{dowels.Name.Value}",
        .. from key in spec.ParallelKeys.Entries where key.Carries?.Value == body.Name select $"parallel_keys.{key.Name.Value}",
    ];
}
