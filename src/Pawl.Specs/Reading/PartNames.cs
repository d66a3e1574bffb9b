using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class GearboxReader
{
    /// <summary>Drawing and part numbers are of something that the spec declares, each once.</summary>
    private static void CheckParts(GearboxSpec read, MapReader reader)
    {
        if (read.Parts.IsEmpty)
            return;
        var known = PartsOf(read).ToHashSet(StringComparer.Ordinal);
        var seen = new Dictionary<string, PartSpec>(StringComparer.Ordinal);
        foreach (var part in read.Parts)
        {
            if (!known.Contains(part.Id.Value))
            {
                reader.Report(SpecDiagnostics.UnknownName(
                    part.Id.Span, "parts.id", "part", part.Id.Value, Nearest.To(part.Id.Value, known), known.Count > MostListed ? [] : [.. known.Order(StringComparer.Ordinal)]));
            }
            else if (!seen.TryAdd(part.Id.Value, part))
            {
                reader.Report(SpecDiagnostics.DuplicateKey(part.Id.Span, part.Id.Value, seen[part.Id.Value].Id.Span));
            }
        }
    }

    private const int MostListed = 30;

    /// <summary>Everything that the spec declares and that can be drawn, as findings print it.</summary>
    private static IEnumerable<string> PartsOf(GearboxSpec read)
    {
        if (read.Train is { } train)
        {
            HashSet<string> sets = [.. train.Planets.Entries.Select(set => set.Name.Value)];
            foreach (var set in sets)
                yield return $"planets.{set}";
            var bodies = train.Bodies.Entries.Select(body => body.Name.Value)
                .Concat(train.Fixed.Select(held => held.Value)).Concat(train.Planets.Entries.Select(set => set.Carrier?.Value ?? ""))
                .Concat(train.Gears.Entries.Select(gear => gear.On?.Value ?? "")).Append(train.Input?.Value ?? "").Append(train.Output?.Value ?? "");
            foreach (var body in bodies.Distinct().Where(name => name.Length > 0 && !sets.Contains(name)))
                yield return $"bodies.{body}";
            foreach (var gear in train.Gears.Entries)
                yield return $"gears.{gear.Name.Value}";
        }

        foreach (var (section, names) in ((string, IEnumerable<string>)[])
        [
            ("bearings", read.Bearings.Entries.Select(each => each.Name.Value)), ("shafts", read.Shafts.Entries.Select(each => each.Name.Value)),
            ("splines", read.Splines.Entries.Select(each => each.Name.Value)), ("parallel_keys", read.ParallelKeys.Entries.Select(each => each.Name.Value)),
            ("interfaces", read.Interfaces.Entries.Select(each => each.Name.Value)), ("joints", read.Joints.Entries.Select(each => each.Name.Value)),
            ("dowels", read.Dowels.Entries.Select(each => each.Name.Value)), ("retaining_rings", read.RetainingRings.Entries.Select(each => each.Name.Value)),
            ("planet_pins", read.PlanetPins.Entries.Select(each => each.Name.Value)), ("o_rings", read.ORings.Entries.Select(each => each.Name.Value)),
            ("lip_seals", read.LipSeals.Entries.Select(each => each.Name.Value)), ("shims", read.Shims.Entries.Select(each => each.Name.Value)),
        ])
        {
            foreach (var name in names)
                yield return $"{section}.{name}";
        }
    }
}
