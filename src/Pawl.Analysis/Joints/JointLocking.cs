using Pawl.Analysis.Core;
using Pawl.Mechanics.Joints;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.BodyInputs;
using J = Pawl.Analysis.Joints.Joints;

namespace Pawl.Analysis.Joints;

/// <summary>What keeps bolt or nut from turning, and whether it holds.</summary>
public sealed class JointLocking : Section<JointSpec>
{
    private const string Usual = "ISO 2320 for prevailing torque nuts; common practice, no source, for the rest";

    public static readonly RowDefinition<JointSpec, string> Direction = Text("direction", "Torque in one direction or both").OneOf("one", "both")
        .By("both where a reverse torque is stated or follows", "the duty", Certainty.Declared)
        .From(ReverseTorque, static reverse => reverse > 0 ? "both" : "one", static direction => direction);

    public static readonly RowDefinition<JointSpec, LockingElement> Locking = Row<LockingElement>("locking", "Locked by", LockingElement.TryFind)
        .Tables(LockingElement.TableId).Stated(static s => s.Locking?.By).Assumed("none", "none, for nothing is stated");

    public static readonly RowDefinition<JointSpec, string> Method = Text("locking_method", "Locking method").OneOf("none", "friction", "form", "adhesive")
        .By("of the element", "common practice, no source", Certainty.CommonPractice)
        .From(Locking, static row => row.Method, static method => method);

    public static readonly RowDefinition<JointSpec, string> Rating = Text("locking_rating", "Where the temperatures of the locking come from").OneOf("maker", "published", "usual", "none")
        .By("the maker where both are stated, else by the kind of element", Usual, Certainty.Declared)
        .For(static s => s.Locking is { Coldest: not null, Hottest: not null }).Named(static _ => "maker")
        .From(Locking, static row => row.Rating, static rating => rating);

    public static readonly NumberDefinition<JointSpec> Coldest = Number("min_locking_temperature", "ϑ_L,min", "Coldest temperature of the locking", Units.Celsius)
        .By("as its maker states, else of its kind", Usual, Certainty.CommonPractice)
        .When(Locking, static row => row.Coldest is not null)
        .Stated(static s => s.Locking?.Coldest).From(Locking, static row => row.Coldest!.Value);

    public static readonly NumberDefinition<JointSpec> Hottest = Number("max_locking_temperature", "ϑ_L,max", "Hottest temperature of the locking", Units.Celsius)
        .By("as its maker states, else of its kind", Usual, Certainty.CommonPractice)
        .When(Locking, static row => row.Hottest is not null)
        .Stated(static s => s.Locking?.Hottest).From(Locking, static row => row.Hottest!.Value);

    public static readonly NumberDefinition<JointSpec> ColdReserve = Number("locking_cold_reserve", "", "Reserve of the locking at the coldest", Units.Kelvin)
        .By("ϑ − ϑ_L,min", J.Closed).Scaled(10)
        .From(J.Temperature, Coldest, static (temperature, limit) => temperature - limit);

    public static readonly NumberDefinition<JointSpec> HeatReserve = Number("locking_heat_reserve", "", "Reserve of the locking at the hottest", Units.Kelvin)
        .By("ϑ_L,max − ϑ", J.Closed).Scaled(10)
        .From(Hottest, J.Temperature, static (limit, temperature) => limit - temperature);

    public static readonly NumberDefinition<JointSpec> Uses = Number("locking_uses", "", "Uses of the locking element").NeverNegative()
        .When(Locking, static row => row.Method != "none").Stated(static s => s.Locking?.Uses).Assumed(1, "once, for nothing is stated");

    public static readonly NumberDefinition<JointSpec> MaxUses = Number("max_locking_uses", "", "Permitted uses of the locking element")
        .By("as its maker states, else of its kind", "common practice, no source; first and fifth removal in the tests of ISO 2320", Certainty.Memory)
        .Stated(static s => s.Locking?.MaxUses)
        .For(static (_, subject) => subject.Find(Locking)?.Row is LockingElement { MaxUses: not null }).From(Locking, static row => row.MaxUses!.Value)
        .Optional();

    public static readonly NumberDefinition<JointSpec> SlipSafety = Number("locking_slip_safety", "S_L", "Safety against slip of a joint that its friction locks")
        .By("of a flange S_G; of a central nut torque that its narrowest contact carries over T", "statics")
        .When(Method, static method => method == "friction")
        .From(JointStrengths.SlipSafety, static safety => safety)
        .From(JointStrengths.ClampTorque, JointStrengths.CarriedTorque, static (holds, torque) => holds / Mechanics.Guard.Positive(torque, "the torque"))
        .Custom(static subject => AnalysisContext.Missing(SlipSafety!, $"{subject.Path}.carries or {subject.Path}.torque"));
}
