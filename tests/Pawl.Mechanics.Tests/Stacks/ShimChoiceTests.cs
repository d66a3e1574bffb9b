using CsCheck;
using Pawl.Mechanics.Stacks;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Stacks;

public class ShimChoiceTests
{
    private const double Inch = 25.4;
    private static readonly ShimStock[] Inches = [.. new[] { 0.001, 0.002, 0.005, 0.010, 0.020 }.Select(size => new ShimStock(size * Inch))];

    private static readonly Gen<(ShimStock[] Stock, int Most, ShimEffect Effect, Interval Gaps, Interval Window)> Case = Gen.Select(
        Gen.Select(Gen.Int[1, 60], Gen.Int[0, 1], Gen.Int[0, 3]).Array[0, 4], Gen.Int[0, 4], Gen.Enum<ShimEffect>(),
        Gen.Int[-50, 50], Gen.Int[0, 60], Gen.Int[-10, 10], Gen.Int[0, 12])
        .Select((kinds, most, effect, gap, wide, low, window) => (
            kinds.Select(kind => new ShimStock(kind.Item1 / 100.0, Math.Min(kind.Item2, kind.Item1 - 1) / 100.0, kind.Item3)).ToArray(),
            most, effect, new Interval(gap / 100.0, (gap + wide) / 100.0), new Interval(low / 100.0, (low + window) / 100.0)));

    // Gap 0.0175 in, end play 0 to 0.001 in: 0.017 in of 0.010 + 0.005 + 0.002; no one or two shims do.
    [Fact]
    public void An_inch_pack_is_worked_by_hand()
    {
        var pack = ShimChoice.Of(Inches, 5, ShimEffect.Fills).Best(0.0175 * Inch, 0, new(0, 0.001 * Inch));
        Assert.NotNull(pack);
        Assert.Equal([0.010 * Inch, 0.005 * Inch, 0.002 * Inch], pack.Shims);
        Assert.Equal(0.017 * Inch, pack.Thickness, 1e-9);
        Assert.Equal(0.0005 * Inch, ShimChoice.EndPlay(0.0175 * Inch, pack.Thickness, ShimEffect.Fills), 1e-9);
        Assert.Null(ShimChoice.Of(Inches, 2, ShimEffect.Fills).Best(0.0175 * Inch, 0, new(0, 0.001 * Inch)));
    }

    // A cover that stands 0.30 mm open, end play required 0.05: lifted by 0.35. An inner gap that is right needs no shim.
    [Fact]
    public void Lifting_and_empty_packs_are_worked_by_hand()
    {
        ShimStock[] stock = [new(0.05), new(0.10), new(0.30)];
        var pack = ShimChoice.Of(stock, 3, ShimEffect.Lifts).Best(-0.30, 0.05, new(0.03, 0.07));
        Assert.Equal([0.30, 0.05], pack!.Shims);
        Assert.Empty(ShimChoice.Of(stock, 3, ShimEffect.Fills).Best(0.02, 0, new(0, 0.03))!.Shims);
    }

    // Gaps 0.40 to 0.60, end play 0 to 0.10: packs 0.30 to 0.60 help, so 0.40, 0.50 do: 0.40–0.50 and 0.50–0.60. Without the 0.10
    // shim 0.50 to 0.60 stays open.
    [Fact]
    public void Coverage_is_worked_by_hand()
    {
        var gaps = new Interval(0.40, 0.60);
        var window = new Interval(0, 0.10);
        Assert.Empty(ShimChoice.Of([new(0.40, 0, 1), new(0.10, 0, 1)], 2, ShimEffect.Fills).Uncovered(gaps, window));
        var open = Assert.Single(ShimChoice.Of([new(0.40, 0, 1)], 2, ShimEffect.Fills).Uncovered(gaps, window));
        Assert.Equal(0.50001, open.Min, 1e-9);
        Assert.Equal(0.60, open.Max, 1e-9);

        // A tolerance of ±0.01 opens 0.40 to 0.41 and what lies between the packs.
        Assert.NotEmpty(ShimChoice.Of([new(0.40, 0.01, 1), new(0.10, 0, 1)], 2, ShimEffect.Fills).Uncovered(gaps, window));
        var needed = ShimChoice.RangeNeeded(gaps, window, ShimEffect.Fills);
        Assert.Equal((0.35, 0.55), (Math.Round(needed.Min, 9), Math.Round(needed.Max, 9)));
    }

    // Every gap in hundredths of a millimetre, every pack counted by nested loops.
    [Fact]
    public void Coverage_is_what_trying_every_gap_and_pack_finds() =>
        Case.Sample(c =>
        {
            var choice = ShimChoice.Of(c.Stock, c.Most, c.Effect);
            var uncovered = choice.Uncovered(c.Gaps, c.Window);
            var packs = Packs(c.Stock, c.Most).ToArray();
            for (var gap = (int)Math.Round(c.Gaps.Min * 100); gap <= (int)Math.Round(c.Gaps.Max * 100); gap++)
            {
                var served = packs.Any(pack => Fits(gap, pack, c.Effect, c.Window));
                if (served == uncovered.Any(range => range.Min <= gap / 100.0 + 1e-9 && gap / 100.0 - 1e-9 <= range.Max))
                    return false;
            }

            return true;
        }, iter: 2000);

    [Fact]
    public void The_best_pack_is_the_best_of_all_tried() =>
        Case.Sample(c =>
        {
            var target = Math.Round(c.Window.Middle * 100) / 100;
            var gap = (int)Math.Round(c.Gaps.Min * 100);
            var best = ShimChoice.Of(c.Stock, c.Most, c.Effect).Best(c.Gaps.Min, target, c.Window);
            var fitting = Packs(c.Stock, c.Most).Where(pack => Fits(gap, pack, c.Effect, c.Window)).ToArray();
            if (fitting.Length == 0)
                return best is null;

            int Miss(int thickness) => Math.Abs(gap + (c.Effect == ShimEffect.Fills ? -thickness : thickness) - (int)Math.Round(target * 100));
            var fewest = fitting.Min(pack => pack.Pieces);
            var nearest = fitting.Where(pack => pack.Pieces == fewest).Min(pack => Miss(pack.Thickness));
            return best is not null && best.Shims.Length == fewest && Miss((int)Math.Round(best.Thickness * 100)) == nearest
                && Math.Abs(best.Shims.Sum() - best.Thickness) < 1e-9;
        }, iter: 2000);

    [Fact]
    public void Neighbours_of_the_ideal_pack_stand_on_either_side()
    {
        var (thinner, thicker) = ShimChoice.Of([new(0.1), new(0.3)], 2, ShimEffect.Fills).Nearest(0.25, 0);
        Assert.Equal((0.2, 0.3), (thinner!.Thickness, thicker!.Thickness));
        Assert.Null(ShimChoice.Of([new(0.1)], 2, ShimEffect.Fills).Nearest(0.25, 0).Thicker);
    }

    // A measurement that may be wrong by more than the window leaves no pack that is sure.
    [Fact]
    public void A_doubtful_measurement_is_no_ground_for_a_pack() =>
        Assert.Null(ShimChoice.Of([new(0.1), new(0.3)], 2, ShimEffect.Fills).Best(0.11, 0, new(0, 0.025), 0.013));

    [Fact]
    public void Shims_that_are_none_are_refused()
    {
        Refusal.Says("the thickness of a shim", () => new ShimStock(0).Thickness);
        Refusal.Says("must be below its thickness", () => new ShimStock(0.1, 0.1).Thickness);
        Refusal.Says("no pack can bring", () => ShimChoice.RangeNeeded(new(-0.2, -0.1), new(0, 0.05), ShimEffect.Fills).Min);
        Refusal.Says("more than 500000 packs", () =>
            ShimChoice.Of([.. Enumerable.Range(1, 30).Select(size => new ShimStock(size))], 9, ShimEffect.Fills).Count);
    }

    private static bool Fits(int gap, (int Thickness, int Tolerance, int Pieces) pack, ShimEffect effect, Interval window)
    {
        var play = effect == ShimEffect.Fills ? gap - pack.Thickness : gap + pack.Thickness;
        return play - pack.Tolerance >= Math.Round(window.Min * 100) && play + pack.Tolerance <= Math.Round(window.Max * 100);
    }

    private static IEnumerable<(int Thickness, int Tolerance, int Pieces)> Packs(ShimStock[] stock, int most)
    {
        IEnumerable<(int Thickness, int Tolerance, int Pieces)> packs = [(0, 0, 0)];
        foreach (var shim in stock)
        {
            packs = packs.SelectMany(pack => Enumerable.Range(0, Math.Min(shim.Available, most) + 1).Select(count => (
                pack.Thickness + count * (int)Math.Round(shim.Thickness * 100),
                pack.Tolerance + count * (int)Math.Round(shim.Tolerance * 100),
                pack.Pieces + count)));
        }

        return packs.Where(pack => pack.Pieces <= most);
    }
}
