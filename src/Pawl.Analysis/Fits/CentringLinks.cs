using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Mechanics.Fits;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Fits;

/// <summary>One link of a chain that centres a part: a run-out, a fit, a bearing or two dowels.</summary>
public sealed class CentringLinks : Section<CentringLinkSpec>
{
    private const string Spec = "the spec";

    public static readonly RowDefinition<CentringLinkSpec, string> Link = Text("link", "What the link is")
        .By("run-out, bearing, fit or dowels that the link names", "the spec", Certainty.Declared)
        .Named(static s => s.Runout is not null ? $"run-out of {s.Of!.Value}"
            : s.Bearing is { } bearing ? $"bearing {bearing.Value}"
            : s.Fit is { } fit ? $"fit {fit.Value}"
            : $"dowels {s.Dowels!.First.Value}");

    public static readonly NumberDefinition<CentringLinkSpec> Runout =
        Number("runout", "t", "Run-out, total indicator reading", Units.Millimetre).Stated(static s => s.Runout).Optional();

    public static readonly NumberDefinition<CentringLinkSpec> Distance =
        Number("distance", "a", "Distance of the dowels", Units.Millimetre).Stated(static s => s.Dowels?.Distance, "dowels.distance").Optional();

    public static readonly NumberDefinition<CentringLinkSpec> Along =
        Number("along", "x", "Position of the axis along the line of the dowels, from the first", Units.Millimetre)
        .By("as stated, else midway", Spec, Certainty.Declared)
        .Stated(static s => s.Dowels?.Along, "dowels.along").Optional()
        .From(Distance, static distance => distance / 2);

    public static readonly NumberDefinition<CentringLinkSpec> Aside =
        Number("aside", "y", "Distance of the axis from the line of the dowels", Units.Millimetre)
        .When(static s => s.Dowels is not null)
        .Stated(static s => s.Dowels?.Aside, "dowels.aside")
        .Assumed(0, "0, on the line, for nothing is stated");

    public static readonly NumberDefinition<CentringLinkSpec> Eccentricity =
        Number("link_eccentricity", "e_i", "Eccentricity of the link, coldest to hottest", Units.Millimetre)
        .By(
            "run-out: t/2; fit: C_θ/2; bearing: half its radial clearance and the clearance of its rings on their seats; two dowels: kinematics of a plate",
            "geometry").Scaled(0.01)
        .From(Runout, static runout => runout / 2)
        .From(Of("fit", static () => PartFits.Clearance), Register.OfPilot)
        .From(
            Of("bearing", static () => BearingFitQuantities.OperatingClearance),
            OfOr("bearing", static () => BearingFitQuantities.InnerFit, 0),
            OfOr("bearing", static () => BearingFitQuantities.OuterFit, 0),
            static (clearance, inner, outer) => Register.OfPilot(clearance) + Register.OfPilot(-inner) + Register.OfPilot(-outer))
        .From(
            Of("first", static () => PartFits.Clearance), Of("second", static () => PartFits.Clearance), Distance, Along, Aside,
            Register.OnDowels)
        .Custom(static subject => Quantity.NotEvaluated(
            Eccentricity!, [], $"the radial clearance of the bearing {((CentringLinkSpec)subject.Model).Bearing?.Value} is not known"));

    internal static Subject Add(AnalysisContext context, CentringLinkSpec spec, string path, Subject chain) =>
        context.Begin(SubjectKinds.CentringLink, path, spec.Span, spec)
            .Relate("chain", chain)
            .RelateOptional("fit", () => Fit(context, spec.Fit?.Value))
            .RelateOptional("bearing", () => spec.Bearing is { } bearing ? context.Find(SubjectKinds.Bearing, $"bearings.{bearing.Value}") : null)
            .RelateOptional("first", () => Fit(context, spec.Dowels?.First.Value))
            .RelateOptional("second", () => Fit(context, (spec.Dowels?.Second ?? spec.Dowels?.First)?.Value));

    private static Subject? Fit(AnalysisContext context, string? name) => name is null ? null : context.Find(SubjectKinds.Fit, $"fits.{name}");
}
