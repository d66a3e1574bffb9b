using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Fits;

/// <summary>How far one part can lie off the axis of another through the links between them.</summary>
public sealed class Centrings : Section<CentringSpec>
{
    public static readonly NumberDefinition<CentringSpec> Eccentricity =
        Number("eccentricity", "e", "Eccentricity of the chain, coldest to hottest", Units.Millimetre)
        .By("e = Σ e_i", "geometry, all links off to the same side").Scaled(0.01)
        .From(Each("links", static () => CentringLinks.Eccentricity), static links => links.Sum());

    public static readonly RowDefinition<CentringSpec, string> Basis = Text("basis", "Basis of the permitted eccentricity")
        .By("the spec where a limit is stated, else the backlash of the mesh; none of a chain that counts for the balance of a body alone", "the spec")
        .Named(static s => s.Limit is not null ? "the spec" : s.Mesh.IsEmpty ? "none" : "the backlash of the mesh");

    public static readonly NumberDefinition<CentringSpec> RequiredBacklash =
        Number("required_backlash", "j_min", "Required minimum backlash of the mesh", Units.Millimetre)
        .By("the required minimum backlash of the mesh, else 0", "the spec").Scaled(0.05)
        .When(static (s, subject) => s.Limit is null && subject.Reach("mesh") is not null)
        .From(Of("mesh", static () => MeshQuantities.RequiredMinBacklash, "j_min"), static required => required)
        .Assumed(0, "0, for the mesh states none");

    public static readonly NumberDefinition<CentringSpec> Permitted =
        Number("permitted_eccentricity", "e_p", "Permitted eccentricity", Units.Millimetre)
        .By(
            "as stated, else e_p = (j_bn − j_min)/(2·sin α_wt·cos β_b), j_bn from coldest to hottest",
            "ISO 21771: change of backlash with the centre distance").Scaled(0.01)
        .Noted("run-out of the teeth is not included")
        .When(static (s, subject) => s.Limit is not null || !s.Mesh.IsEmpty || !CountsForBalance(s, subject))
        .Stated(static s => s.Limit, "limit or mesh")
        .From(
            Of("mesh", static () => MeshQuantities.OperatingBacklash, "j_bn"),
            RequiredBacklash,
            Of("mesh", static () => MeshQuantities.WorkingPressureAngle, "α_wt"),
            Of("first", static () => GearQuantities.BaseHelixAngle, "β_b"),
            static (backlash, required, pressure, helix) => (backlash - required) / (2 * Math.Sin(pressure) * Math.Cos(helix)))
        .Custom(static subject => ((CentringSpec)subject.Model).Mesh.IsEmpty ? null : AnalysisContext.Missing(Permitted!, "train"));

    /// <summary>All chains with their links, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.Centring.Entries)
        {
            var path = $"centring.{spec.Name.Value}";
            var chain = context.Begin(SubjectKinds.Centring, path, spec.Name.Span, spec);
            ImmutableArray<Subject> links = [.. spec.Links.Select((link, i) => CentringLinks.Add(context, link, $"{path}.links.{i + 1}", chain))];
            chain.Relate("train", () => context.Find(SubjectKinds.Train, "train"))
                .RelateOptional("mesh", () => MeshOf(context, spec))
                .RelateOptional("first", () => chain.Reach("mesh")?.Reach("first"))
                .RelateAll("links", () => links);
        }
    }

    private static bool CountsForBalance(CentringSpec chain, Subject subject) =>
        subject.Context.Spec.Train?.Bodies.Entries.Any(body => body.CentredBy?.Value == chain.Name.Value) ?? false;

    private static Subject? MeshOf(AnalysisContext context, CentringSpec spec)
    {
        var names = spec.Mesh.Select(gear => $"gears.{gear.Value}").ToHashSet();
        return context.Of(SubjectKinds.Mesh).FirstOrDefault(subject =>
            names.Contains(subject.Reach("first")!.Path) && names.Contains(subject.Reach("second")!.Path));
    }
}
