using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Analysis.Joints;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Pins;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.BodyInputs;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Pins;

/// <summary>A set of dowels on a circle between two parts.</summary>
public sealed class Dowels : Section<DowelSpec>
{
    private const string Closed = "closed form";
    private const string Habit = "common practice, no source";

    private static readonly IInput<double[]> PartLengths = Each("parts", static () => DowelledParts.Length, "l");
    private static readonly IInput<double[]> PartYields = Each("parts", static () => DowelledParts.Yield, "R_e,part");

    public static readonly RowDefinition<DowelSpec, string> Purpose = Text("purpose", "What the dowels are for").OneOf("locate", "carry").Stated(static s => s.Purpose);

    public static readonly NumberDefinition<DowelSpec> Count = Number("count", "z", "Number of dowels").NeverNegative().Stated(static s => s.Count);

    public static readonly TruthDefinition<DowelSpec> ReamedTogether = Truth("reamed_together", "The holes of both parts are reamed in one, assembled")
        .By("as stated, else not", "the spec", Certainty.Declared)
        .Named(AreReamedTogether);

    public static readonly NumberDefinition<DowelSpec> Effective = Number("effective_dowels", "z_e", "Dowels that may be counted on")
        .By("all where reamed together, else no more than two; one alone none", Habit, Certainty.CommonPractice)
        .From(Count, ReamedTogether, static (count, together) => DowelPins.Effective((int)count, together));

    public static readonly NumberDefinition<DowelSpec> Circle = Number("circle", "D", "Diameter of the circle of the dowels", Units.Millimetre).Stated(static s => s.Circle);

    public static readonly NumberDefinition<DowelSpec> Diameter = Number("diameter", "d", "Diameter of a dowel", Units.Millimetre).NeverNegative().Stated(static s => s.Diameter);

    public static readonly NumberDefinition<DowelSpec> Bore =
        Number("bore", "d_i", "Hole along a dowel", Units.Millimetre).NeverNegative().Stated(static s => s.Bore).Optional();

    public static readonly NumberDefinition<DowelSpec> CarriedTorque = Number("carried_torque", "T", "Maximum torque between the parts", Units.NewtonMetre)
        .By("that of the joint; else as stated; else T = |T_body|·K_A·f_p", "torque balance").Scaled(1000)
        .From(Of("joint", static () => JointStrengths.CarriedTorque), static torque => torque)
        .Custom(static subject => ((DowelSpec)subject.Model).Joint is { } joint
            ? Quantity.NotEvaluated(CarriedTorque!, [], $"joints.{joint.Value}.carries is not stated")
            : null)
        .Stated(static s => s.Torque)
        .From(BodyTorque, ApplicationFactor, PeakOverRated, static (torque, application, peak) => Math.Abs(torque) * application * peak)
        .Custom(static subject => ((DowelSpec)subject.Model).Carries is { } body
            ? Quantity.NotEvaluated(CarriedTorque!, [], $"the torque of {body.Value} is not known")
            : null)
        .Asking("joint");

    public static readonly NumberDefinition<DowelSpec> Force = Number("dowel_force", "F", "Force on a dowel when friction carries nothing", Units.Newton)
        .By("F = 2·T/(z_e·D)", "statics").Scaled(1).Noted("friction of the faces is never added")
        .From(CarriedTorque, Effective, Circle, static (torque, effective, circle) => DowelPins.Force(torque, (int)effective, circle / 2));

    public static readonly NumberDefinition<DowelSpec> Shear = Number("shear_stress", "τ", "Mean shear stress of a dowel", Units.Megapascal)
        .By("τ = F/(π/4·(d² − d_i²))", Closed).Scaled(1)
        .From(Force, Diameter, Bore.Or(0), static (force, d, bore) => DowelPins.ShearStress(force, d, 1, bore));

    public static readonly NumberDefinition<DowelSpec> Yield = Number("yield", "R_e", "Yield of the dowels", Units.Megapascal).Stated(static s => s.Yield);

    public static readonly NumberDefinition<DowelSpec> PermittedShear = Number("permitted_shear", "τ_zul", "Permitted shear stress of the dowels", Units.Megapascal)
        .By("τ_zul = 0.4·R_e, pulsating", Habit, Certainty.CommonPractice)
        .From(Yield, static yield => 0.4 * yield);

    public static readonly NumberDefinition<DowelSpec> PermittedPressureShare =
        Number("permitted_pressure_share", "(p/R_e)_zul", "Permitted pressure in the holes over the yield of their part")
        .By("0.5, pulsating", Habit, Certainty.CommonPractice)
        .From(static () => 0.5);

    public static readonly NumberDefinition<DowelSpec> PressureShare =
        Number("pressure_share", "p/R_e", "Maximum pressure in a hole over the yield of its part")
        .By("p/R_e,part, p = F/(d·l), greater of both parts", Closed).Scaled(0.5)
        .From(Force, Diameter, PartLengths, PartYields, Worst);

    public static readonly NumberDefinition<DowelSpec> LengthRatio = Number("length_ratio", "l/d", "Minimum bearing length over diameter")
        .By("l/d, lesser of both parts", Closed)
        .From(Diameter, PartLengths, static (d, lengths) => lengths.Min() / d);

    public static readonly NumberDefinition<DowelSpec> PinPosition = Number("pin_position", "t_1", "Position tolerance of the dowels", Units.Millimetre)
        .When(static s => !AreReamedTogether(s)).Stated(static s => s.PinPosition);

    public static readonly NumberDefinition<DowelSpec> HolePosition = Number("hole_position", "t_2", "Position tolerance of the loose holes", Units.Millimetre)
        .When(static s => !AreReamedTogether(s)).Stated(static s => s.HolePosition);

    // The holes of the second part are the loose ones. Of a fit the nominal size may lie outside both tolerances: the middle stands for it.
    public static readonly NumberDefinition<DowelSpec> Play = Number("play", "S", "Clearance of a dowel in its loose hole", Units.Micrometre)
        .By("S = d_hole − d", "ISO 286-1").Scaled(0.01)
        .Range(OfLimits("loose", static () => DowelledParts.Hole, "d_hole"), Diameter.Limits(), static (hole, pin) => hole.Less(pin));

    public static readonly NumberDefinition<DowelSpec> Room =
        Number("room", "", "Clearance left when dowels and holes stand apart as far as permitted", Units.Micrometre)
        .By("S − t_1 − t_2", "fixed fasteners: ISO 5458, ASME Y14.5").Scaled(0.01)
        .From(Play, PinPosition, HolePosition, DowelPins.Room);

    public static readonly NumberDefinition<DowelSpec> Apart = Number("apart", "", "Room between neighbouring dowels, spread evenly", Units.Millimetre)
        .By("D·sin(π/z) − d", Closed).Scaled(1)
        .When(static s => s.Count is { Value: > 1 })
        .From(Circle, Count, Diameter, static (circle, count, d) => circle * Math.Sin(Math.PI / count) - d);

    public static readonly NumberDefinition<DowelSpec> FromBolts =
        Number("from_bolts", "", "Room between a dowel midway between two bolts and their holes", Units.Millimetre)
        .By("√(D²/4 + D_b²/4 − D·D_b/2·cos(π/z_b)) − (d + d_h)/2", "law of cosines").Scaled(1)
        .When(static s => s.Joint is not null)
        .From(
            Circle, Diameter, Of("joint", static () => JointStrengths.BoltCircle, "D_b"), Of("joint", static () => Joints.Joints.Bolts, "z_b"),
            Of("joint", static () => Joints.Joints.FaceHole, "d_h"), DowelPins.FromBolts);

    public static readonly NumberDefinition<DowelSpec> BeyondEdge =
        Number("beyond_edge", "", "How far the dowels stand out beyond the clamped faces", Units.Millimetre)
        .By("the greater of (D + d − D_o)/2 and (D_i − D + d)/2, not below zero", Closed).Scaled(1)
        .When(static s => s.Joint is not null)
        .From(
            Circle, Diameter, OfOr("joint", static () => Joints.JointStrengths.FacesOutside, double.PositiveInfinity, "D_o"),
            OfOr("joint", static () => Joints.JointStrengths.FacesInside, 0, "D_i"),
            static (circle, d, outside, inside) => Math.Max(0, Math.Max(circle + d - outside, inside - circle + d) / 2));

    public static readonly NumberDefinition<DowelSpec> PlayHeld =
        Number("play_held", "S_1", "Greatest play in the part that holds the dowels tightest", Units.Micrometre)
        .By("least over the parts of d_hole,max − d_min; below 0: overlap", "ISO 286-1").Scaled(0.01)
        .Range(EachLimits("parts", static () => DowelledParts.Hole, "d_hole"), Diameter.Limits(), static (holes, pin) =>
            Extent.Exactly(holes.Min(hole => hole.Less(pin).Max)));

    public static readonly NumberDefinition<DowelSpec> PermittedPlay =
        Number("permitted_play", "", "Permitted play in the part that holds the dowels", Units.Micrometre)
        .By("IT8 of the diameter", Habit, Certainty.CommonPractice).Scaled(0.01).Tables([.. Iso286.Tables])
        .From(Diameter, static d => Iso286.TryLimits("H", 8, d, out var limits, out var reason) ? limits.Upper : throw new OutsideValidityException(reason));

    public static readonly NumberDefinition<DowelSpec> Turn = Number("turn", "ψ", "How far the parts may turn on their dowels", Units.Arcminute)
        .By("ψ = 2·S/D, not below zero", Closed).Scaled(1e-4)
        .From(Play, Circle, static (play, circle) => DowelPins.Turn(Math.Max(0, play), circle / 2));

    public static readonly NumberDefinition<DowelSpec> Capacity = Number("dowel_torque", "T_d", "Torque that the dowels carry alone", Units.NewtonMetre)
        .By("least of τ_zul in shear and (p/R_e)_zul·R_e,part in pressure, over F per torque", "statics").Scaled(1000)
        .From(
            Diameter, Bore.Or(0), PermittedShear, PermittedPressureShare, Effective, Circle, PartLengths, PartYields,
            static (d, bore, shear, pressure, effective, circle, lengths, yields) =>
            {
                var perTorque = DowelPins.Force(1, (int)effective, circle / 2);
                return Math.Min(shear / DowelPins.ShearStress(perTorque, d, 1, bore), pressure / Worst(perTorque, d, lengths, yields));
            });

    public static readonly NumberDefinition<DowelSpec> Friction =
        Number("friction_torque", "T_fr", "Torque that the joint carries by friction, over its safety", Units.NewtonMetre)
        .By("slip torque of the joint over its required safety", "statics").Scaled(1000)
        .When(static s => s.Joint is not null)
        .From(
            Of("joint", static () => JointStrengths.SlipTorque), Of("joint", static () => JointStrengths.RequiredSlipSafety),
            static (torque, safety) => torque / safety)
        .Otherwise(static s => $"joints.{s.Joint!.Value}.carries is not stated");

    public static readonly RowDefinition<DowelSpec, string> Path = Text("torque_path", "Who carries the torque").OneOf("friction", "dowels", "neither")
        .By(
            "friction where it can alone, else dowels where they can alone, else neither; never both, at the worst of each", Habit,
            Certainty.CommonPractice)
        .From(
            CarriedTorque.Limits(), Friction.Limits(), Capacity.Limits(),
            static (torque, friction, dowels) => Flange.Path(torque.Max, friction.Min, dowels.Min).ToString().ToLowerInvariant(),
            static path => path);

    /// <summary>All sets of dowels with their parts, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.Dowels.Entries)
        {
            var path = $"dowels.{spec.Name.Value}";
            var parts = new List<Subject>();
            var set = context.Begin(SubjectKinds.Dowel, path, spec.Name.Span, spec)
                .Relate("train", () => context.Find(SubjectKinds.Train, "train"))
                .RelateAll("parts", () => parts)
                .RelateOptional("loose", () => parts.ElementAtOrDefault(1))
                .RelateOptional("joint", () => spec.Joint is { } joint ? context.Find(SubjectKinds.Joint, $"joints.{joint.Value}") : null)
                .RelateOptional("body", () => spec.Carries is { } body ? context.Find(SubjectKinds.Body, $"bodies.{body.Value}") : null);
            for (var i = 0; i < spec.Parts.Length; i++)
            {
                parts.Add(context.Begin(
                    SubjectKinds.DowelledPart, string.Create(CultureInfo.InvariantCulture, $"{path}.parts[{i}]"), spec.Parts[i].Length.Span, spec.Parts[i])
                    .Relate("dowels", set));
            }
        }
    }

    private static bool AreReamedTogether(DowelSpec spec) => spec.ReamedTogether is { Value: true };

    /// <summary>Maximum pressure over the yield of its part.</summary>
    private static double Worst(double force, double diameter, double[] lengths, double[] yields)
    {
        var worst = 0.0;
        for (var i = 0; i < lengths.Length; i++)
            worst = Math.Max(worst, DowelPins.Pressure(force, diameter, lengths[i]) / yields[i]);
        return worst;
    }
}

/// <summary>A part that dowels go through; the first holds them.</summary>
public sealed class DowelledParts : Section<DowelledPartSpec>
{
    public static readonly RowDefinition<DowelledPartSpec, string> Part = Text("part", "What it is").Stated(static s => s.Part).Optional();

    public static readonly NumberDefinition<DowelledPartSpec> Yield = Number("yield", "R_e", "Yield of the part", Units.Megapascal).Stated(static s => s.Yield);

    public static readonly NumberDefinition<DowelledPartSpec> Length =
        Number("length", "l", "Length that bears, without chamfers", Units.Millimetre).Stated(static s => s.Length);

    public static readonly NumberDefinition<DowelledPartSpec> Hole = Number("hole", "d_hole", "Diameter of its holes", Units.Millimetre).Stated(static s => s.Hole);
}
