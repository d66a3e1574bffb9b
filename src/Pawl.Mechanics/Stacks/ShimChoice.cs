using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Stacks;

/// <summary>The packs that the shims on a list can make, every one of them.</summary>
/// <remarks>
/// Counted in whole hundredths of a micrometre: 0.0001 in is 254 of them, so inch and metric shims mix without rounding. No shim at
/// all is a pack too.
/// </remarks>
public sealed class ShimChoice
{
    private const double UnitsOfMillimetre = 100_000;
    private const int MostPacks = 500_000;

    private readonly ImmutableArray<Pack> _packs;
    private readonly ShimEffect _effect;

    private ShimChoice(ImmutableArray<Pack> packs, ShimEffect effect) => (_packs, _effect) = (packs, effect);

    /// <summary>How many different packs there are.</summary>
    public int Count => _packs.Length;

    /// <summary>All packs of the shims on a list.</summary>
    /// <param name="stock">The shims.</param>
    /// <param name="most">Most shims in a pack; thick packs of thin shims are springs.</param>
    /// <param name="effect">What the pack does to the gap.</param>
    public static ShimChoice Of(IReadOnlyList<ShimStock> stock, int most, ShimEffect effect)
    {
        if (most < 0)
            throw Guard.Because($"the number of shims in a pack must not be below zero; it is {most}");

        var sorted = stock.OrderByDescending(shim => shim.Thickness).ThenBy(shim => shim.Tolerance).ToArray();
        var packs = new List<Pack>();
        var counts = new int[sorted.Length];
        Add(0, most, 0, 0);

        // The order of preference: fewest pieces, then the thickest list; the first of equal packs stays.
        var kept = packs
            .OrderBy(pack => pack.Pieces)
            .ThenByDescending(pack => pack.Counts, Comparer<int[]>.Create(Lexicographic))
            .DistinctBy(pack => new PackSize(pack.Thickness, pack.Tolerance))
            .ToImmutableArray();
        return new(kept, effect);

        void Add(int kind, int left, long thickness, long tolerance)
        {
            if (kind == sorted.Length)
            {
                if (packs.Count == MostPacks)
                    throw Guard.Because($"these shims make more than {MostPacks} packs; state fewer kinds or fewer shims in a pack");
                int[] taken = [.. counts];
                packs.Add(new(taken, taken.Sum(), thickness, tolerance, sorted));
                return;
            }

            for (counts[kind] = 0; counts[kind] <= Math.Min(left, sorted[kind].Available); counts[kind]++)
            {
                Add(kind + 1, left - counts[kind],
                    thickness + counts[kind] * Units(sorted[kind].Thickness), tolerance + counts[kind] * Units(sorted[kind].Tolerance));
            }

            counts[kind] = 0;
        }
    }

    /// <summary>Thinnest and thickest pack needed for a range of gaps, mm.</summary>
    /// <param name="gaps">Gaps without shims that assemblies have, mm; an overlap is below zero.</param>
    /// <param name="window">End play allowed, mm.</param>
    /// <param name="effect">What the pack does to the gap.</param>
    /// <remarks>
    /// <code>fills: G − (w_1 + w_2)/2;  lifts: (w_1 + w_2)/2 − G</code>
    /// That is for end play in the middle of the window; the list may fall short by half of the window at either end.<br/>
    /// Symbols: G gaps, w window, mm.<br/>
    /// Source: end play = gap ∓ pack.
    /// </remarks>
    public static Interval RangeNeeded(Interval gaps, Interval window, ShimEffect effect)
    {
        var range = effect == ShimEffect.Fills
            ? new Interval(gaps.Min - window.Middle, gaps.Max - window.Middle)
            : new Interval(window.Middle - gaps.Max, window.Middle - gaps.Min);
        return range.Max >= 0
            ? range
            : throw Guard.Because(
                $"no pack can bring the end play into its window: a pack would have to be {range.Max:0.####} mm thick");
    }

    /// <summary>Gaps that no pack brings into the window, mm; empty where every assembly can be shimmed.</summary>
    /// <param name="gaps">Gaps without shims that assemblies have, mm.</param>
    /// <param name="window">End play allowed, mm.</param>
    /// <remarks>
    /// <code>a fills pack serves w_1 + P + t ≤ G ≤ w_2 + P − t;  a lifts pack w_1 − P + t ≤ G ≤ w_2 − P − t</code>
    /// Symbols: P thickness of the pack, t its tolerance, w window, G gap, mm.<br/>
    /// Source: enumeration; the intervals of all packs laid side by side.
    /// </remarks>
    public ImmutableArray<Interval> Uncovered(Interval gaps, Interval window)
    {
        var (low, high) = (Units(window.Min), Units(window.Max));
        var served = _packs
            .Select(pack => _effect == ShimEffect.Fills
                ? (From: low + pack.Thickness + pack.Tolerance, To: high + pack.Thickness - pack.Tolerance)
                : (From: low - pack.Thickness + pack.Tolerance, To: high - pack.Thickness - pack.Tolerance))
            .Where(range => range.From <= range.To)
            .Order();

        var uncovered = ImmutableArray.CreateBuilder<Interval>();
        var (reached, end) = (Units(gaps.Min) - 1, Units(gaps.Max));
        foreach (var (from, to) in served)
        {
            if (to <= reached)
                continue;
            if (reached >= end || from > end)
                break;
            if (from > reached + 1)
                uncovered.Add(new(Millimetres(reached + 1), Millimetres(from - 1)));
            reached = to;
        }

        if (reached < end)
            uncovered.Add(new(Millimetres(reached + 1), Millimetres(end)));
        return uncovered.ToImmutable();
    }

    /// <summary>Best pack for a measured gap, or nothing where none brings the end play into the window.</summary>
    /// <param name="gap">Measured gap, mm, without shims; an overlap is below zero.</param>
    /// <param name="target">End play required, mm.</param>
    /// <param name="window">End play allowed, mm.</param>
    /// <param name="uncertainty">What the measurement may be wrong by, ± mm.</param>
    /// <remarks>
    /// Within the window with the pack's tolerance and the measurement at their worst; of these the fewest shims, then the nearest
    /// to the target, then the thickest shims.<br/>
    /// Source: enumeration; the order of preference is common practice, no source.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public ShimPack? Best(double gap, double target, Interval window, double uncertainty = 0)
    {
        var (measured, expected, doubt) = (
            Units(Guard.Finite(gap, "the measured gap")), Units(Guard.Finite(target, "the end play required")),
            Units(DynamicLoad.NotNegative(uncertainty, "the uncertainty of the measurement")));
        var (low, high) = (Units(window.Min), Units(window.Max));
        Pack? best = null;
        foreach (var pack in _packs)
        {
            var (play, doubtful) = (Play(measured, pack), doubt + pack.Tolerance);
            if (play - doubtful < low || play + doubtful > high)
                continue;
            if (best is not null && pack.Pieces > best.Pieces)
                break;
            if (best is null || Math.Abs(play - expected) < Math.Abs(Play(measured, best) - expected))
                best = pack;
        }

        return best?.Told();
    }

    /// <summary>The packs next thinner and next thicker than the ideal one, whatever the window; nothing where there is none.</summary>
    public (ShimPack? Thinner, ShimPack? Thicker) Nearest(double gap, double target)
    {
        var ideal = _effect == ShimEffect.Fills ? Units(gap) - Units(target) : Units(target) - Units(gap);
        var thinner = _packs.Where(pack => pack.Thickness <= ideal).MaxBy(pack => pack.Thickness);
        var thicker = _packs.Where(pack => pack.Thickness >= ideal).MinBy(pack => pack.Thickness);
        return (thinner?.Told(), thicker?.Told());
    }

    /// <summary>End play that a pack leaves of a gap, mm.</summary>
    /// <remarks>
    /// <code>fills: G − P;  lifts: G + P</code>
    /// Source: geometry.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double EndPlay(double gap, double pack, ShimEffect effect) =>
        Guard.Number(gap, "the gap", "mm") + (effect == ShimEffect.Fills ? -1 : 1) * Guard.NotNegative(pack, "the thickness of the pack", "mm");

    private long Play(long gap, Pack pack) => _effect == ShimEffect.Fills ? gap - pack.Thickness : gap + pack.Thickness;

    private static int Lexicographic(int[]? one, int[]? other) => one.AsSpan().SequenceCompareTo(other.AsSpan());

    private static long Units(double millimetres) => (long)Math.Round(millimetres * UnitsOfMillimetre, MidpointRounding.AwayFromZero);

    private static double Millimetres(long units) => units / UnitsOfMillimetre;

    private sealed record PackSize(long Thickness, long Tolerance);

    private sealed record Pack(int[] Counts, int Pieces, long Thickness, long Tolerance, ShimStock[] Stock)
    {
        public ShimPack Told() => new(
            [.. Counts.SelectMany((count, kind) => Enumerable.Repeat(Stock[kind].Thickness, count))],
            Millimetres(Thickness), Millimetres(Tolerance));
    }
}
