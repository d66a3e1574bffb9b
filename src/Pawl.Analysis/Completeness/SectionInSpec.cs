using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Analysis.Completeness;

/// <summary>A section that a spec may have, and what this one says of it.</summary>
/// <param name="Name">The key of the section.</param>
/// <param name="Statement">One of <see cref="Stated"/>, <see cref="None"/> and <see cref="Absent"/>.</param>
/// <param name="Span">Where it stands; the whole file where it does not.</param>
/// <param name="Demand">Who requires it; null when nobody does.</param>
public sealed record SectionInSpec(string Name, string Statement, SourceSpan Span, Stated<string>? Demand)
{
    public const string Stated = "stated";

    /// <summary>The section stands there and is empty: the product has no such thing.</summary>
    public const string None = "none";

    public const string Absent = "not stated";

    /// <summary>Every section of a product in the order of the format.</summary>
    public static ImmutableArray<SectionInSpec> Of(GearboxSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return
        [
            One(spec, "ratio", spec.Ratio is not null),
            One(spec, "duty", spec.Duty is not null),
            One(spec, "tolerances", spec.Tolerances is not null),
            One(spec, "train", spec.Train is not null),
            One(spec, "bearings", !spec.Bearings.Entries.IsEmpty),
            One(spec, "shafts", !spec.Shafts.Entries.IsEmpty),
            One(spec, "splines", !spec.Splines.Entries.IsEmpty),
            One(spec, "parallel_keys", !spec.ParallelKeys.Entries.IsEmpty),
            One(spec, "interfaces", !spec.Interfaces.Entries.IsEmpty),
            One(spec, "joints", !spec.Joints.Entries.IsEmpty),
            One(spec, "dowels", !spec.Dowels.Entries.IsEmpty),
            One(spec, "retaining_rings", !spec.RetainingRings.Entries.IsEmpty),
            One(spec, "planet_pins", !spec.PlanetPins.Entries.IsEmpty),
            One(spec, "o_rings", !spec.ORings.Entries.IsEmpty),
            One(spec, "lip_seals", !spec.LipSeals.Entries.IsEmpty),
            One(spec, "fits", !spec.Fits.Entries.IsEmpty),
            One(spec, "centring", !spec.Centring.Entries.IsEmpty),
            One(spec, "shims", !spec.Shims.Entries.IsEmpty),
            One(spec, "stacks", !spec.Stacks.Entries.IsEmpty),
            One(spec, "lubrication", spec.Lubrication is not null),
        ];
    }

    private static SectionInSpec One(GearboxSpec spec, string name, bool hasContent)
    {
        var node = (spec.Tree as YamlMap)?.Find(name);
        return new(
            name,
            hasContent ? Stated : node is null or YamlScalar ? Absent : None,
            node?.Span ?? SourceSpan.Whole(spec.File),
            spec.RequiredSections.FirstOrDefault(demand => demand.Value == name));
    }
}
