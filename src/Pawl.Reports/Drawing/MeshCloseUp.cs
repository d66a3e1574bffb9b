using Pawl.Reports.Records;

namespace Pawl.Reports.Drawing;

/// <summary>One mesh about its pitch point.</summary>
internal sealed class MeshCloseUp
{
    /// <summary>Quantities of a mesh that say that teeth meet where they must not, with what is wrong.</summary>
    public static IEnumerable<(SubjectRecord? Subject, string Quantity, string Text)> Interferences(Parts parts, MeshPart mesh)
    {
        foreach (var gear in new[] { mesh.First, mesh.Second })
        {
            var own = parts.InMesh(mesh, gear);
            yield return (own, "tip_clearance", $"tip of {gear.Name} meets the root");
            yield return (own, "tip_clearance_factor", $"little room at the tip of {gear.Name}");
            yield return (own, "form_margin", $"contact reaches the fillet of {gear.Name}");
            yield return (own, "curvature_at_start", $"contact below the base circle of {gear.Name}");
        }

        yield return (mesh.Subject, "involute_clearance", "involute interference");
        yield return (mesh.Subject, "tip_interference_clearance", "tips clash");
        yield return (mesh.Subject, "trimming_clearance", "tips clash when the planet goes in along the radius");
        yield return (mesh.Subject, "operating_backlash", "no play between the teeth");
    }
}
