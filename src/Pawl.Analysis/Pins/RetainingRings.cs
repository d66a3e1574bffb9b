using Pawl.Analysis.Agreement;
using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Shafts;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Pins;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.BodyInputs;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Pins;

/// <summary>A retaining ring in its groove. The groove may be the shop's own.</summary>
public sealed class RetainingRings : Section<RetainingRingSpec>
{
    private const string Closed = "closed form";
    private const string Standard = "DIN 471, DIN 472";

    public static readonly RowDefinition<RetainingRingSpec, string> Sits = Text("sits", "On a shaft or in a bore").OneOf("shaft", "bore").Stated(static s => s.Sits);

    public static readonly NumberDefinition<RetainingRingSpec> Diameter =
        Number("diameter", "d_1", "Diameter of shaft or bore", Units.Millimetre).NeverNegative()
        .By("as stated, else of the section of the shaft that has the groove", "the spec", Certainty.Declared)
        .Stated(static s => s.Diameter).TakenFrom("seat", static () => ShaftSectionQuantities.Outside);

    public static readonly RowDefinition<RetainingRingSpec, RetainingRing> Ring = Row<RetainingRing>("ring", "Ring of the standard")
        .By("DIN 471 for a shaft, DIN 472 for a bore, by diameter", Standard, Certainty.Published)
        .When(static s => s is not { Groove: not null, RingLoad: not null } || (IsOnShaft(s) && s.MaxSpeed is null))
        .Custom(static subject => Find(subject, (RetainingRingSpec)subject.Model));

    public static readonly NumberDefinition<RetainingRingSpec> Groove = Number("groove", "d_2", "Diameter of the groove", Units.Millimetre)
        .By("as stated, else by the standard", Standard, Certainty.Published)
        .Stated(static s => s.Groove).From(Ring, static ring => ring.Groove);

    public static readonly TruthDefinition<RetainingRingSpec> GrooveInShaft = Truth("groove_in_shaft", "A section of the shaft carries its groove")
        .By("a section of its diameter has a groove as its notch", "the spec")
        .When(static (s, subject) => IsOnShaft(s) && !ShaftPlaces.On(subject.Context.Spec, s.On.Value).IsEmpty)
        .Solved([Diameter], static (s, subject) => s.At is { } at
            ? ShaftPlaces.On(subject.Context.Spec, s.On.Value).Named(at, null!) is { } section && IsGroove(section.Spec)
            : ShaftPlaces.On(subject.Context.Spec, s.On.Value).OfSize(s.Diameter!.Value.Coherent).Any(static section => IsGroove(section.Spec)));

    public static readonly NumberDefinition<RetainingRingSpec> AxialForce = Number("axial_force", "F_A", "Maximum force on the ring", Units.Newton)
        .By("as stated; else of the bearing F_A = F_a·f_p", "the spec; statics").Scaled(1)
        .From(Of("bearing", static () => BearingQuantities.AxialLoad, "F_a"), PeakOverRated, static (load, peak) => load * peak)
        .Custom(static subject => ((RetainingRingSpec)subject.Model).Bearing is { } name
            ? Quantity.NotEvaluated(AxialForce!, [], $"the axial load of bearing {name.Value} is not known")
            : null)
        .Stated(static s => s.AxialForce);

    public static readonly NumberDefinition<RetainingRingSpec> Land = Number("land", "n", "Land beside the groove", Units.Millimetre).Stated(static s => s.Land);

    public static readonly NumberDefinition<RetainingRingSpec> LandRatio = Number("land_ratio", "n/t", "Land over depth of the groove")
        .By("n/t, t = |d_1 − d_2|/2", Standard)
        .From(Land, Diameter, Groove, static (land, d, groove) => RingIn(d, groove).EdgeRatio(land));

    public static readonly NumberDefinition<RetainingRingSpec> Yield =
        Number("yield", "R_e", "Yield of the part with the groove", Units.Megapascal).Stated(static s => s.Yield);

    public static readonly NumberDefinition<RetainingRingSpec> GrooveLoad = Number("groove_load", "F_N", "Load at which the shoulder of the groove yields", Units.Newton)
        .By("F_N = π/4·|d_1² − d_2²|·R_e/1.2", Standard).Noted("without safety; n/t no less than 3")
        .From(Land, Diameter, Groove, Yield, static (land, d, groove, yield) => RingIn(d, groove).GrooveLoad(yield, land));

    public static readonly NumberDefinition<RetainingRingSpec> GrooveSafety = Number("groove_safety", "F_N/F_A", "Load of the groove over the force")
        .By("F_N/F_A", Closed)
        .When(AxialForce, static force => force != 0)
        .From(GrooveLoad, AxialForce, static (load, force) => load / force);

    public static readonly NumberDefinition<RetainingRingSpec> Corner = Number("corner", "g", "Chamfer or radius of the part that leans on the ring", Units.Millimetre)
        .When(static s => s.RingLoad is null || s.Corner is not null).Stated(static s => s.Corner);

    public static readonly NumberDefinition<RetainingRingSpec> RingLoad = Number("ring_load", "F_Rg", "Load of the ring against the part that leans on it", Units.Newton)
        .By("as the supplier states, else of the standard, lowered for the corner", Standard, Certainty.Memory).Noted("without safety")
        .Stated(static s => s.RingLoad).From(Ring, Corner, static (ring, corner) => ring.RingLoad(corner));

    public static readonly NumberDefinition<RetainingRingSpec> RingSafety = Number("ring_safety", "F_Rg/F_A", "Load of the ring over the force")
        .By("F_Rg/F_A", Closed)
        .When(AxialForce, static force => force != 0)
        .From(RingLoad, AxialForce, static (load, force) => load / force);

    public static readonly NumberDefinition<RetainingRingSpec> Speed = Number("speed", "n", "Maximum speed of the shaft under the ring", Units.RevolutionPerMinute)
        .By("|n| of its body", "kinematics").Scaled(1)
        .When(IsOnShaft)
        .From(Of("body", static () => BodyQuantities.Speed), Math.Abs)
        .Otherwise(static s => $"the speed of {s.On.Value} is not known");

    public static readonly NumberDefinition<RetainingRingSpec> MaxSpeed =
        Number("max_speed", "n_abl", "Speed at which the ring lifts off", Units.RevolutionPerMinute)
        .By("by the supplier, else of the standard", Standard, Certainty.Published)
        .When(IsOnShaft).When(Speed, static speed => speed != 0)
        .Stated(static s => s.MaxSpeed)
        .From(Ring, static ring => ring.DetachingSpeed
            ?? throw Guard.Because($"the table has no speed at which a ring of {ring.Diameter:0.###} mm lifts off: state max_speed"));

    public static readonly NumberDefinition<RetainingRingSpec> SpeedShare = Number("speed_share", "n/n_abl", "Speed over that at which the ring lifts off")
        .By("n/n_abl", Standard, Certainty.Published)
        .From(Speed, MaxSpeed, static (speed, greatest) => speed / greatest);

    /// <summary>All rings, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.RetainingRings.Entries)
        {
            context.Begin(SubjectKinds.RetainingRing, $"retaining_rings.{spec.Name.Value}", spec.Name.Span, spec)
                .Relate("train", () => context.Find(SubjectKinds.Train, "train"))
                .RelateOptional("seat", () => ShaftPlaces.SubjectOf(context, ShaftPlaces.Named(context.Spec, spec.On.Value, spec.At)))
                .RelateOptional("body", () => context.Find(SubjectKinds.Body, $"bodies.{spec.On.Value}"))
                .RelateOptional("bearing", () => spec.Bearing is { } bearing ? context.Find(SubjectKinds.Bearing, $"bearings.{bearing.Value}") : null);
        }
    }

    private static bool IsGroove(ShaftSectionSpec section) => section.Notch?.Kind.Value is "square-groove" or "round-groove";

    private static bool IsOnShaft(RetainingRingSpec spec) => spec.Sits.Value == "shaft";

    /// <summary>Shoulder and depth come of two diameters; width and thickness do not count.</summary>
    private static RetainingRing RingIn(double diameter, double groove) => new(diameter, groove, 0, 0);

    private static Quantity Find(Subject subject, RetainingRingSpec spec)
    {
        subject.Context.Uses(IsOnShaft(spec) ? RetainingRing.ShaftTableId : RetainingRing.BoreTableId);
        ImmutableArray<Quantity> inputs = [subject[Sits], subject[Diameter]];
        var diameter = inputs[1].Value.Nominal;
        var found = IsOnShaft(spec)
            ? RetainingRing.TryFindShaft(diameter, out var ring, out var reason)
            : RetainingRing.TryFindBore(diameter, out ring, out reason);
        return found
            ? Quantity.ComputedText(Ring, FormattableString.Invariant($"{ring!.Diameter:0.###} mm"), inputs).With(ring)
            : Quantity.NotEvaluated(Ring, inputs, reason!);
    }
}
