using System.Text;
using Pawl.Analysis.Seals;
using Pawl.Cli.Checking;
using Pawl.Cli.Output;
using Pawl.Quantities;
using Pawl.Specs.Model;

namespace Pawl.Cli.Sizing;

/// <summary>A gland with its best size as a piece of a spec.</summary>
/// <param name="gland">The gland without what depends on the cord.</param>
/// <param name="best">The size, with what was proposed for its cord.</param>
/// <param name="spec">The spec that the size was judged in.</param>
/// <param name="engine">Computes the chamfer.</param>
internal sealed class GlandFragment(ImmutableArray<GlandLine> gland, JudgedSize best, GearboxSpec spec, Engine engine)
{
    private static readonly string[] Order =
        ["elastomer", "hardness", "gland", "motion", "bore", "plug", "groove", "depth", "width", "eccentricity", "roughness_ra", "pressure", "swell", "speed"];

    // 20° from the axis: 15° to 30° is usual.
    private static readonly LeadInSpec Chamfer = new()
    {
        Angle = new(new(20, Units.Degree), default, "20°"), Length = new(new(1, Units.Millimetre), default, "1 mm"),
    };

    public override string ToString()
    {
        var text = new StringBuilder("o_rings:\n").Append("  ").Append(GlandQuestion.Ring).Append(":\n");
        text.Append("    as568: ").Append(best.Candidate.Spec!.As568!.Text).Append('\n');
        foreach (var line in gland.AddRange(best.Candidate.Proposed).OrderBy(line => Array.IndexOf(Order, line.Key)))
        {
            if (!line.IsOfOil)
                text.Append("    ").Append(line.Key).Append(": ").Append(Plain.Line(line.Text)).Append('\n');
        }

        if (Needed() is { } needed)
        {
            var (length, least) = (Formatting.Significant(Math.Ceiling(needed * 2) / 2, 9), Formatting.Significant(needed, 3));
            text.Append("    lead_in: {angle: 20°, length: ").Append(length).Append(" mm}  # the ring needs ").Append(least).Append(" mm\n");
        }

        return text.ToString();
    }

    /// <summary>The length of the chamfer, mm; none in a face.</summary>
    private double? Needed()
    {
        var ring = best.Candidate.Spec! with { LeadIn = Chamfer };
        var subject = engine.Analyse(spec with { ORings = new([ring], r => r.Name.Value) }).Subjects.First(s => s.Kind == Analysis.SubjectKinds.ORing);
        return subject.Find(ORings.RequiredLeadIn) is { IsEvaluated: true, Value.Max: var greatest } ? greatest : null;
    }
}
