using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Bearings;

public class LoadSpectrumTests
{
    private static readonly BearingType Ball = new(BearingKind.DeepGrooveBall);

    private static readonly Gen<LoadBin[]> Bins = Gen.Select(Gen.Double[0, 5000], Gen.Double[-300, 300], Gen.Double[0.01, 1]).Array[1, 8]
        .Select(parts =>
        {
            var sum = parts.Sum(part => part.Item3);
            return parts.Select(part => new LoadBin(part.Item1, part.Item2, part.Item3 / sum)).ToArray();
        });

    // Khurmi and Gupta, Machine Design: 3 kN for a tenth, 2 kN for two, 1 kN for three, none for four tenths at constant speed.
    // The question is on a public page; its answer, 1663 N, from memory, is ∛4.6 kN.
    [Fact]
    public void A_textbook_cycle_has_its_mean_load() =>
        Assert.Equal(1663, LoadSpectrum.MeanLoad([new(3000, 1, 0.1), new(2000, 1, 0.2), new(1000, 1, 0.3), new(0, 1, 0.4)], 3), 0.5);

    // Bhandari, Design of Machine Elements: 3000 N at 1440 1/min for a quarter, 5000 N at 720 for a half, 2500 N at 1440 for the
    // rest, on a public page. Revolutions a minute: 360, 360, 360; (27 + 125 + 15.625)/3 = 55.875 → 3.823 kN.
    [Fact]
    public void A_cycle_counts_revolutions_and_not_hours()
    {
        LoadBin[] bins = [new(3000, 1440, 0.25), new(5000, 720, 0.5), new(2500, 1440, 0.25)];
        Assert.Equal(1080, LoadSpectrum.MeanSpeed(bins), 1e-9);
        Assert.Equal(3823, LoadSpectrum.MeanLoad(bins, 3), 0.5);
    }

    // Damage summed bin by bin, Palmgren and Miner: share of the time over the life in it.
    [Fact]
    public void The_mean_load_uses_up_the_life_as_its_bins_do() =>
        Bins.Sample(bins =>
        {
            var worked = bins.Where(bin => bin.Load > 1 && Math.Abs(bin.RelativeSpeed) > 1).ToArray();
            if (worked.Length != bins.Length)
                return true;
            var together = LoadSpectrum.Duration(
                [.. bins.Select(bin => (bin.Share, RatingLife.Duration(RatingLife.Basic(Ball, 10_000, bin.Load), bin.RelativeSpeed)))]);
            var mean = RatingLife.Duration(RatingLife.Basic(Ball, 10_000, LoadSpectrum.MeanLoad(bins, 3)), LoadSpectrum.MeanSpeed(bins));
            return Math.Abs(together / mean - 1) < 1e-9;
        });

    [Fact]
    public void The_mean_load_lies_between_least_and_greatest() =>
        Gen.Select(Bins, Gen.Double[1, 5]).Where((bins, _) => bins.Any(bin => bin.RelativeSpeed != 0)).Sample((bins, exponent) =>
        {
            var mean = LoadSpectrum.MeanLoad(bins, exponent);
            return mean >= bins.Min(bin => bin.Load) - 1e-6 && mean <= bins.Max(bin => bin.Load) + 1e-6;
        });

    [Fact]
    public void A_part_that_tires_nothing_takes_no_life() =>
        Assert.Equal(200, LoadSpectrum.Duration([(0.5, 100), (0.5, double.PositiveInfinity)]), 1e-9);

    [Fact]
    public void Shares_that_do_not_make_up_the_whole_are_refused()
    {
        Refusal.Says("they make up 0.9", () => LoadSpectrum.MeanSpeed([new(1, 1, 0.4), new(1, 1, 0.5)]));
        Refusal.Says("must be zero or above", () => LoadSpectrum.Duration([(1.5, 1), (-0.5, 1)]));
        Refusal.Says("the mean speed must be above zero", () => LoadSpectrum.MeanLoad([new(1, 0, 1)], 3));
        Refusal.Says("a load of the spectrum must not be below zero", () => LoadSpectrum.MeanLoad([new(-1, 1, 1)], 3));
    }
}
