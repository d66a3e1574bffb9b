using Pawl.Analysis.Core;
using Pawl.Analysis.Fits;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Assembly;
using Pawl.Quantities;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Vibration;

/// <summary>Unbalance of a body on the common axis against its balance quality grade.</summary>
/// <remarks>Planets turn about their own axes: whether a set of them is balanced is a quantity of the set.</remarks>
public sealed class BalanceQuantities : Section<BodyInTrain>
{
    private const string Iso21940 = "ISO 21940-11";
    private const string Centre = "centre of mass";

    private static readonly Unit GramMillimetre = new("g·mm", new(Length: 1, Mass: 1), 1e-6);

    public static readonly NumberDefinition<BodyInTrain> MaxSpeed =
        Number("max_speed", "n_max", "Maximum speed in duty and spectrum", Units.RevolutionPerMinute).NeverNegative()
        .By("n_max = |ω/ω_in|·max n_in", "kinematics")
        .When(IsRotor)
        .From(BodyQuantities.SpeedRatio, BodyInputs.FastestSpeed, static (ratio, fastest) => Math.Abs(ratio) * fastest);

    public static readonly TruthDefinition<BodyInTrain> GradeStated = Truth("balance_grade_stated", "Balance quality grade is stated")
        .By("train.bodies states it", "the spec").When(IsRotor)
        .Solved([], static (s, _) => s.Spec?.BalanceGrade is not null);

    public static readonly NumberDefinition<BodyInTrain> Grade = Number("balance_grade", "G", "Balance quality grade", Units.MillimetrePerSecond)
        .When(IsRotor).Stated(static s => s.Spec?.BalanceGrade).Optional();

    public static readonly NumberDefinition<BodyInTrain> UsualGrade =
        Number("usual_balance_grade", "", "Balance quality grade recommended for gears", Units.MillimetrePerSecond)
        .By("G of gears by the table", Iso21940, Certainty.Memory).Tables(RotorBalance.TableId)
        .When(IsGraded).From(static () => RotorBalance.GradeOfGears());

    public static readonly NumberDefinition<BodyInTrain> PermittedEccentricity =
        Number("permitted_mass_eccentricity", "e_per", "Permissible residual specific unbalance", Units.Micrometre)
        .By("e_per = G/ω, ω at n_max", Iso21940)
        .Noted("distance of the centre of mass from the axis; µm are g·mm per kg")
        .From(Grade, MaxSpeed, RotorBalance.PermittedEccentricity);

    public static readonly NumberDefinition<BodyInTrain> Mass = Number("rotor_mass", "m", "Mass with gears", Units.Kilogram)
        .When(IsGraded).Stated(static s => s.Spec?.Mass).Optional();

    public static readonly NumberDefinition<BodyInTrain> PermittedUnbalance =
        Number("permitted_unbalance", "U_per", "Permissible residual unbalance", GramMillimetre)
        .By("U_per = m·e_per", Iso21940)
        .From(Mass, PermittedEccentricity, static (mass, eccentricity) => mass * eccentricity);

    public static readonly NumberDefinition<BodyInTrain> Residual =
        Number("mass_eccentricity", "e_0", "Eccentricity of the mass with all parts centred", Units.Micrometre).NeverNegative()
        .When(IsGraded).Stated(static s => s.Spec?.MassEccentricity).Optional();

    public static readonly NumberDefinition<BodyInTrain> CentredMass = Number("centred_mass", "m_c", "Mass of the part that the chain centres", Units.Kilogram)
        .When(IsGraded).Stated(static s => s.Spec?.CentredMass).Optional();

    public static readonly NumberDefinition<BodyInTrain> CentredShare = Number("centred_share", "m_c/m", "Share of the mass that the chain centres")
        .By("m_c/m; 1 where the mass of the part is not stated", Centre)
        .When(static (s, subject) => IsGraded(s, subject) && s.Spec?.CentredBy is not null)
        .From(CentredMass, Mass, static (part, whole) => part / whole)
        .For(static s => s.Spec!.CentredMass is not null).Otherwise(static s => $"train.bodies.{s.Name}.mass is not stated")
        .Assumed(1, "1, all of the body, for the mass of the part is not stated");

    public static readonly NumberDefinition<BodyInTrain> TotalEccentricity =
        Number("total_mass_eccentricity", "e", "Eccentricity of the mass, parts off centre as far as they go", Units.Micrometre)
        .By("e = e_0 + (m_c/m)·e_c", Centre).NeverNegative()
        .Noted("both off to the same side, coldest to hottest")
        .When(static (s, subject) => IsGraded(s, subject) && (s.Spec?.MassEccentricity is not null || s.Spec?.CentredBy is not null))
        .For(static s => s.Spec!.CentredBy is not null).From(
            Residual.Or(0), Of("balance_chain", static () => Centrings.Eccentricity, "e_c"), CentredShare, RotorBalance.Eccentricity)
        .From(Residual, static residual => residual);

    public static readonly NumberDefinition<BodyInTrain> Unbalance = Number("unbalance", "U", "Unbalance", GramMillimetre).NeverNegative()
        .By("U = m·e", Centre)
        .From(Mass, TotalEccentricity, static (mass, eccentricity) => mass * eccentricity);

    public static readonly NumberDefinition<BodyInTrain> UnbalanceForce = Number("unbalance_force", "F_U", "Force of the unbalance", Units.Newton).NeverNegative()
        .By("F_U = m·e·ω², ω at n_max", "centrifugal force")
        .From(Mass, TotalEccentricity, MaxSpeed, RotorBalance.Force);

    internal static void Relate(AnalysisContext context, Subject body)
    {
        if (((BodyInTrain)body.Model).Spec?.CentredBy is { } chain)
            body.RelateOptional("balance_chain", () => context.Find(SubjectKinds.Centring, $"centring.{chain.Value}"));
    }

    private static bool IsRotor(BodyInTrain body, Subject subject) =>
        body.Set is null && subject.Context.Spec.Train!.Fixed.All(held => held.Value != body.Name);

    private static bool IsGraded(BodyInTrain body, Subject subject) => IsRotor(body, subject) && body.Spec?.BalanceGrade is not null;
}
