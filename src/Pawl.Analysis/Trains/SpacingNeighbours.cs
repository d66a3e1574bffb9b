using Pawl.Analysis.Gears;
using Pawl.Mechanics.Trains;
using Pawl.Quantities;

namespace Pawl.Analysis.Trains;

/// <summary>Tooth numbers of central gears, near those of a spec, with which planets go in equally spaced.</summary>
/// <remarks>
/// Every change of one or two central gears by up to three teeth each is tried. What would part the reference centre distances of one
/// planet by more than half a transverse module, and by more than they part already, is left out: profile shifts close no more than that.
/// The ratio nearest to the target comes first, or to that of the spec where none is stated; of equals the lesser change.
/// </remarks>
internal static class SpacingNeighbours
{
    private const int MostTeeth = 3;
    private const int MostListed = 3;
    private const double MostSpread = 0.5;
    private const int FewestTeeth = 5;

    /// <summary>The nearest, as text: <c>sun 57, ring 42 (ratio 1.737)</c>; null when there are none.</summary>
    public static string? Of(TrainBuilder train, PlanetLayout layout, double? target)
    {
        ImmutableArray<GearBuilder> central = [.. layout.Central.Select(layout.CentralGear).Distinct()];
        if (target is null && train.Solution?.Speeds?.Ratio is { } own)
            target = Math.Abs(own.ToDouble());
        var most = Math.Max(MostSpread, layout.ReferenceSpread(static gear => gear.Spec.Teeth.Value)) + 1e-9;
        List<(ImmutableArray<int> Teeth, double? Ratio, int Change)> found = [];
        foreach (var teeth in Changes([.. central.Select(static gear => gear.Spec.Teeth.Value)]))
        {
            int Of(GearBuilder gear) => central.IndexOf(gear) is >= 0 and var k ? teeth[k] : gear.Spec.Teeth.Value;
            if (teeth.All(static z => z >= FewestTeeth) && layout.SpacesEquallyWith(Of) && layout.ReferenceSpread(Of) <= most)
                found.Add((teeth, Ratio(train, central, teeth), teeth.Select((z, k) => Math.Abs(z - central[k].Spec.Teeth.Value)).Sum()));
        }

        var nearest = found
            .OrderBy(each => each.Ratio is { } ratio && target is { } wanted ? Math.Round(Math.Abs(Math.Abs(ratio) - wanted), 9) : double.PositiveInfinity)
            .ThenBy(static each => each.Change).Take(MostListed)
            .Select(each => string.Join(", ", central.Select((gear, k) => FormattableString.Invariant($"{gear.Name} {each.Teeth[k]}")))
                + (each.Ratio is { } ratio ? $" (ratio {Formatting.Significant(ratio, 4).Replace('-', '−')})" : ""))
            .ToArray();
        return nearest.Length == 0 ? null : string.Join("; ", nearest);
    }

    /// <summary>Each gear changed alone, then each two together.</summary>
    private static IEnumerable<ImmutableArray<int>> Changes(ImmutableArray<int> teeth)
    {
        for (var i = 0; i < teeth.Length; i++)
        {
            for (var by = -MostTeeth; by <= MostTeeth; by++)
            {
                if (by == 0)
                    continue;
                var one = teeth.SetItem(i, teeth[i] + by);
                yield return one;
                for (var j = i + 1; j < teeth.Length; j++)
                {
                    for (var with = -MostTeeth; with <= MostTeeth; with++)
                    {
                        if (with != 0)
                            yield return one.SetItem(j, teeth[j] + with);
                    }
                }
            }
        }
    }

    private static double? Ratio(TrainBuilder train, ImmutableArray<GearBuilder> central, ImmutableArray<int> teeth)
    {
        if (train.Graph is not { } graph)
            return null;
        var names = central.Select(static gear => gear.Name).ToList();
        var changed = graph with
        {
            Gears = [.. graph.Gears.Select(gear => names.IndexOf(gear.Name) is >= 0 and var k ? gear with { Teeth = teeth[k] } : gear)],
        };
        return TrainSolver.Solve(changed).Speeds?.Ratio?.ToDouble();
    }
}
