using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Mechanics.Stacks;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using Gap = Pawl.Mechanics.Interval;

namespace Pawl.Analysis.Stacks;

/// <summary>A chain of sizes that ends in a gap.</summary>
public sealed class SizeStacks : Section<StackSpec>
{
    private const string Closed = "closed form";
    private const string Enumeration = "enumeration";
    private const string Thermal = "thermal expansion along the same loop; ISO 1 for the 20 °C";
    private const string Warm = "g_θ = g + Σ c·α·m·(θ − 20 °C)";

    // Gaps of the worst case that are looked at for the number of shims.
    private const int Steps = 100;

    public static readonly NumberDefinition<StackSpec> WindowMin =
        Number("window_min", "w_1", "Required minimum gap at 20 °C", Units.Millimetre).Scaled(0.01).Stated(static s => s.Window.Min);

    public static readonly NumberDefinition<StackSpec> WindowMax =
        Number("window_max", "w_2", "Permitted maximum gap at 20 °C", Units.Millimetre).Scaled(0.01).Stated(static s => s.Window.Max);

    public static readonly RowDefinition<StackSpec, string> Method = Text("method", "Tolerancing method").OneOf("worst-case", "statistical")
        .Stated(static s => s.Method)
        .Assumed("worst-case", "worst case, for nothing else is stated");

    public static readonly TruthDefinition<StackSpec> Preloaded = Truth("preloaded", "Preload in service is intended")
        .Stated(static s => s.Preloaded)
        .Assumed(false, "not intended, for nothing is stated");

    public static readonly TruthDefinition<StackSpec> Shimmed = Truth("shimmed", "Shims set the gap")
        .By("shims are stated", "the spec")
        .Custom(static subject => Quantity.OfTruth(Shimmed!, Origin.Computed.Instance, ((StackSpec)subject.Model).Shims is not null, []));

    public static readonly RowDefinition<StackSpec, SizeChain> Chain = Row<SizeChain>("chain", "Chain of sizes")
        .By("each size with its sensitivity, limits, distribution and expansion", "the loop closes")
        .Custom(static subject => Chained(subject));

    public static readonly NumberDefinition<StackSpec> WorstCase =
        Length("worst_case", "g", "Gap at 20 °C without shims, worst case")
        .By("g = Σ c·m ± Σ |c|·h", "arithmetic tolerancing")
        .Range(Chain, static chain => Cleaned(chain.WorstCase));

    public static readonly NumberDefinition<StackSpec> RootSumSquare =
        Length("root_sum_square", "g_q", "Gap at 20 °C without shims, root sum square")
        .By("g_q = Σ c·m ± √Σ (c·h)²", "statistical tolerancing, textbooks")
        .Noted("as certain as the limits are: three sigma in, three sigma out; for four or more independent sizes in the middle of their limits")
        .Range(Chain, static chain => Cleaned(chain.RootSumSquare()));

    public static readonly NumberDefinition<StackSpec> Deviation =
        Length("standard_deviation", "σ", "Standard deviation of the gap")
        .By("σ = √Σ (c·σ_i)²; normal σ_i = h/(3·C_p), uniform h/√3, triangular h/√6", "variances of independent sizes add up")
        .From(Chain, static chain => Clean(chain.StandardDeviation));

    public static readonly NumberDefinition<StackSpec> Seed = Number("seed", "", "Seed of the random sample")
        .Stated(static s => s.Seed)
        .Assumed(1, "1, for none is stated");

    public static readonly NumberDefinition<StackSpec> Draws = Number("draws", "", "Random assemblies").Scaled(1000)
        .Stated(static s => s.Draws)
        .Assumed(20_000, "20 000, for none is stated");

    public static readonly RowDefinition<StackSpec, StackSample> Sample = Row<StackSample>("sample", "Random sample")
        .By("SplitMix64, inversion of the distributions", "SplitMix64 (Steele, Lea, Flood 2014)")
        .Noted("the same on every machine for one seed")
        .From(Chain, Seed, Draws, static (chain, seed, draws) => StackSample.Of(chain, (ulong)seed, (int)draws), static sample =>
            FormattableString.Invariant($"{sample.Draws} assemblies, seed {sample.Seed}"));

    public static readonly NumberDefinition<StackSpec> Sampled =
        Length("sampled", "g_s", "Gap at 20 °C without shims, all but 0.27 % of random assemblies")
        .By("quantiles 0.135 %, 50 % and 99.865 % of the sample", "definition")
        .Range(Sample, static sample => new(sample.Quantile(0.5), sample.Quantile(0.00135), sample.Quantile(0.99865)));

    public static readonly NumberDefinition<StackSpec> ShareOutside =
        Number("share_outside", "", "Share of random assemblies outside the window, without shims", Units.Percent)
        .By("counted in the sample", "definition").Scaled(0.001)
        .From(Sample, WindowMin, WindowMax, static (sample, min, max) => sample.ShareOutside(new(min, max)));

    public static readonly NumberDefinition<StackSpec> Capability =
        Number("capability", "C_pk", "Capability of the gap against its window, without shims")
        .By("C_pk = min(w_2 − g, g − w_1)/(3·σ)", "definition")
        .When(static s => s.Shims is null)
        .From(Chain, WindowMin, WindowMax, static (chain, min, max) => Clean(chain.Capability(new(min, max))));

    public static readonly NumberDefinition<StackSpec> Unproven = Number("unproven", "", "Normally distributed sizes without a stated capability")
        .By("counted", Closed)
        .Custom(static subject => Quantity.Computed(Unproven!, ((StackSpec)subject.Model).Contributors.Entries.Count(
            static size => size is { Capability: null, Distribution: null or { Value: "normal" } }), []));

    public static readonly RowDefinition<StackSpec, string> Dominant = Text("dominant", "Dominant size")
        .By("that with the largest |c|·h", "sensitivities of a sum")
        .From(Chain, static chain => Largest(chain).Name, static name => name);

    public static readonly NumberDefinition<StackSpec> MaxShare =
        Number("max_share", "", "Share of the dominant size in the worst case", Units.Percent)
        .By("max |c|·h/Σ |c|·h", "sensitivities of a sum")
        .From(Chain, static chain => Largest(chain).OfWorstCase);

    public static readonly RowDefinition<StackSpec, string> Stock = Text("stock", "Available shims")
        .When(HasShims)
        .Custom(static subject => Sheets(subject) is var sheets
            ? Quantity.OfText(Stock!, AnalysisContext.Declared(sheets[0].Thickness), string.Join(", ", sheets.Select(sheet => sheet.Thickness.Text)), [])
            : null);

    public static readonly RowDefinition<StackSpec, string> Effect = Text("shim_effect", "Effect of shims on the gap: fills or lifts").OneOf("fills", "lifts")
        .When(HasShims)
        .Stated(static s => s.Shims?.Effect, "shims.effect");

    public static readonly NumberDefinition<StackSpec> PackLimit = Number("pack_limit", "", "Maximum number of shims in a pack")
        .When(HasShims)
        .Stated(static s => s.Shims?.PackLimit, "shims.pack_limit")
        .Assumed(4, "4, common practice, no source");

    public static readonly RowDefinition<StackSpec, ShimChoice> Packs = Row<ShimChoice>("packs", "Packs that the available shims make")
        .By("counted, no shim among them", Enumeration)
        .Custom(static subject => Combined(subject, subject.Find(Stock), subject.Find(Effect), subject.Find(PackLimit)));

    public static readonly NumberDefinition<StackSpec> RequiredPack =
        Length("required_pack", "P", "Pack of shims required for the middle of the window, over all assemblies")
        .By("fills: P = g − (w_1 + w_2)/2; lifts: P = (w_1 + w_2)/2 − g", "end play = gap ∓ pack")
        .Range(WorstCase.Limits(), WindowMin, WindowMax, Effect, static (gap, min, max, effect) =>
            Cleaned(ShimChoice.RangeNeeded(Of(gap), new(min, max), EffectOf(effect))));

    public static readonly NumberDefinition<StackSpec> Uncovered =
        Length("uncovered", "", "Range of gaps that no pack brings into the window")
        .By("what the packs' ranges w_1 + P + t to w_2 + P − t leave of the worst case", Enumeration)
        .From(Packs, WorstCase.Limits(), WindowMin, WindowMax, static (packs, gap, min, max) =>
            Clean(packs.Uncovered(Of(gap), new(min, max)).Sum(static left => left.Max - left.Min + 1e-5)));

    public static readonly NumberDefinition<StackSpec> MaxPieces = Number("max_pieces", "", "Maximum number of shims that an assembly needs")
        .By("over gaps of the worst case in steps of a hundredth of its range", Enumeration)
        .From(Packs, WorstCase.Limits(), WindowMin, WindowMax, static (packs, gap, min, max) => Pieces(packs, gap, new(min, max)));

    public static readonly NumberDefinition<StackSpec> MeasuredGap =
        Number("measured_gap", "G", "Measured gap without shims", Units.Millimetre).Scaled(0.1).Stated(static s => s.Shims?.MeasuredGap).Optional();

    public static readonly NumberDefinition<StackSpec> Uncertainty =
        Number("uncertainty", "u", "Uncertainty of the measurement", Units.Millimetre).Scaled(0.01)
        .When(IsMeasured)
        .Stated(static s => s.Shims?.Uncertainty, "shims.uncertainty")
        .Assumed(0, "0, for none is stated");

    public static readonly NumberDefinition<StackSpec> Target =
        Number("target", "g_t", "Target gap of the measured assembly", Units.Millimetre).Scaled(0.01)
        .By("as stated, else the middle of the window", "the spec", Certainty.Declared)
        .When(IsMeasured)
        .For(static s => s.Shims?.Target is not null).Stated(static s => s.Shims?.Target, "shims.target")
        .From(WindowMin, WindowMax, static (min, max) => new Gap(min, max).Middle);

    public static readonly NumberDefinition<StackSpec> MeasurementShare =
        Number("measurement_share", "", "Uncertainty of the measurement, both ways, relative to the window", Units.Percent)
        .By("2·u/(w_2 − w_1)", Closed).Scaled(0.1)
        .From(Uncertainty, WindowMin, WindowMax, static (uncertainty, min, max) => 2 * uncertainty / (max - min));

    public static readonly RowDefinition<StackSpec, FoundPack> Pack = Row<FoundPack>("pack", "Best pack for the measured gap")
        .By("fewest shims, then nearest to the target, then the thickest", "enumeration; the order is common practice, no source", Certainty.CommonPractice)
        .Custom(static subject => subject.Find(MeasuredGap) is { } gap
            ? Best(subject, [subject[Packs], gap, subject[Target], subject[Uncertainty], subject[WindowMin], subject[WindowMax]])
            : null);

    public static readonly TruthDefinition<StackSpec> PackFound = Truth("pack_found", "A pack brings the measured gap into the window")
        .By("in the window with the tolerance of the pack and the uncertainty of the measurement", Enumeration)
        .From(Pack, static pack => pack.Best is not null);

    public static readonly NumberDefinition<StackSpec> PackPieces = Number("pieces", "", "Shims in the best pack")
        .By("counted", Enumeration)
        .When(Pack, static pack => pack.Best is not null)
        .From(Pack, static pack => pack.Best!.Shims.Length);

    public static readonly NumberDefinition<StackSpec> EndPlay =
        Length("end_play", "g_e", "Gap as assembled, at 20 °C")
        .By(
            "without shims the worst case, or the root sum square where the method is statistical; with shims the window that every assembly is set to; of a measured assembly G ∓ P ± u ± t",
            Closed)
        .For(static s => s.Shims is null).Range(Method, WorstCase.Limits(), RootSumSquare.Limits(), static (method, worst, square) =>
            method == "statistical" ? square : worst)
        .For(static s => !IsMeasured(s)).Range(WindowMin, WindowMax, Packs, Chain, static (min, max, _, _) => Cleaned(new(min, max)))
        .Range(MeasuredGap, Uncertainty, Pack, Effect, static (gap, uncertainty, pack, effect) => Assembled(gap, uncertainty, pack.Best, EffectOf(effect)));

    public static readonly NumberDefinition<StackSpec> Cold =
        Length("end_play_cold", "g_c", "Gap at the coldest start")
        .By($"{Warm}, all at the coldest oil", Thermal)
        .Range(EndPlay.Limits(), Chain, Each("contributors", static () => Contributors.ColdTemperature, "θ"), Moved);

    public static readonly NumberDefinition<StackSpec> Running =
        Length("end_play_running", "g_r", "Gap in continuous service")
        .By($"{Warm}, each at its own temperature", Thermal)
        .Range(EndPlay.Limits(), Chain, Each("contributors", static () => Contributors.RunningTemperature, "θ"), Moved);

    public static readonly NumberDefinition<StackSpec> Hot =
        Length("end_play_hot", "g_h", "Gap at the maximum oil temperature")
        .By($"{Warm}, each as far above the oil as in continuous service", Thermal)
        .Range(EndPlay.Limits(), Chain, Each("contributors", static () => Contributors.HotTemperature, "θ"), Moved);

    public static readonly NumberDefinition<StackSpec> WarmShaft =
        Number("warm_up_shaft", "θ_s", "Shaft side while warming up", Units.Celsius).Stated(static s => s.WarmUp?.Shaft).Optional();

    public static readonly NumberDefinition<StackSpec> WarmHousing =
        Number("warm_up_housing", "θ_h", "Housing side while warming up", Units.Celsius).Stated(static s => s.WarmUp?.Housing).Optional();

    public static readonly NumberDefinition<StackSpec> WarmUp =
        Length("end_play_warm_up", "g_w", "Gap while warming up")
        .By($"{Warm}, each at the temperature of its side", Thermal)
        .When(static s => s.WarmUp is not null)
        .Range(EndPlay.Limits(), Chain, Each("contributors", static () => Contributors.WarmUpTemperature, "θ"), Moved);

    public static readonly NumberDefinition<StackSpec> InService =
        Length("end_play_in_service", "g_θ", "Gap at all service temperatures")
        .By("limits over all states", Closed)
        .Range(Running.Limits(), Cold.Limits(), Hot.Limits(), WarmUp.Limits(), static (running, cold, hot, warm) => Hull(running, cold, hot, warm))
        .Range(Running.Limits(), Cold.Limits(), Hot.Limits(), static (running, cold, hot) => Hull(running, cold, hot));

    public static readonly NumberDefinition<StackSpec> MaxInService =
        Number("max_in_service", "", "Permitted maximum gap in service", Units.Millimetre).Stated(static s => s.MaxInService).Optional();

    /// <summary>All stacks with their sizes, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.Stacks.Entries)
        {
            var path = $"stacks.{spec.Name.Value}";
            var stack = context.Begin(SubjectKinds.Stack, path, spec.Name.Span, spec);
            ImmutableArray<Subject> sizes = [.. spec.Contributors.Entries.Select(size => Contributors.Add(context, size, $"{path}.{size.Name.Value}", stack))];
            stack.Relate("train", () => context.Find(SubjectKinds.Train, "train")).RelateAll("contributors", () => sizes);
        }
    }

    private static NumberDefinition<StackSpec> Length(string name, string symbol, string title) => Number(name, symbol, title, Units.Millimetre).Scaled(0.01);

    private static bool HasShims(StackSpec spec) => spec.Shims is not null;

    private static bool IsMeasured(StackSpec spec) => spec.Shims?.MeasuredGap is not null;

    private static ImmutableArray<ShimSpec> Sheets(Subject subject) =>
        subject.Context.Spec.Shims.Find(((StackSpec)subject.Model).Shims!.Stock.Value)!.Sheets;

    private static ShimEffect EffectOf(string effect) => effect == "fills" ? ShimEffect.Fills : ShimEffect.Lifts;

    /// <summary>The sizes of the loop as one chain.</summary>
    private static Quantity Chained(Subject subject)
    {
        var parts = subject.ReachAll("contributors").ToArray();
        QuantityKind[] kinds = [Contributors.Size, Contributors.Coefficient, Contributors.Distribution, Contributors.Capability, Contributors.Expansion];
        ImmutableArray<Quantity> inputs = [.. parts.SelectMany(part => kinds.Select(part.Find)).OfType<Quantity>()];
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(Chain, inputs, reasons);
        var chain = new SizeChain([.. parts.Select(part => new Contributor(
            part[Contributors.Label].Text!, part[Contributors.Coefficient].Value.Nominal,
            part[Contributors.Size].Value.Min, part[Contributors.Size].Value.Max,
            DistributionOf(part[Contributors.Distribution].Text), part.Find(Contributors.Capability)?.Value.Nominal ?? 1,
            part[Contributors.Expansion].Value.Nominal))]);
        return Quantity.ComputedText(Chain, string.Join(" ", chain.Contributors.Select(Signed)), inputs)
            .With(chain).With([.. inputs.Select(input => input.Kind.Symbol.Length > 0 ? input.Kind.Symbol : input.Kind.Name)]);
    }

    private static SizeDistribution DistributionOf(string? name) => name switch
    {
        "uniform" => SizeDistribution.Rectangular,
        "triangular" => SizeDistribution.Triangular,
        _ => SizeDistribution.Normal,
    };

    private static string Signed(Contributor size) => string.Create(
        CultureInfo.InvariantCulture,
        $"{(size.Coefficient < 0 ? '−' : '+')} {(Math.Abs(size.Coefficient) == 1 ? "" : $"{Math.Abs(size.Coefficient):0.####}·")}{size.Name}");

    private static StackShare Largest(SizeChain chain)
    {
        // The first of equals in the order of the chain.
        var shares = chain.Shares.ToDictionary(share => share.Name, StringComparer.Ordinal);
        return chain.Contributors.Select(size => shares[size.Name]).MaxBy(share => share.OfWorstCase)!;
    }

    private static Quantity? Combined(Subject subject, Quantity? stock, Quantity? effect, Quantity? limit)
    {
        if (stock is null || effect is null || limit is null)
            return null;
        var choice = ShimChoice.Of(
            [.. Sheets(subject).Select(sheet => new ShimStock(
                sheet.Thickness.Value.Coherent, sheet.Tolerance?.Value.Coherent ?? 0, sheet.Count?.Value ?? int.MaxValue))],
            (int)limit.Value.Nominal, EffectOf(effect.Text!));
        return Quantity.ComputedText(Packs, choice.Count.ToString(CultureInfo.InvariantCulture), [stock, effect, limit])
            .With(choice).With(["stock", "effect", "pack limit"]);
    }

    /// <summary>Shims in the pack that each gap of the worst case would get, at most.</summary>
    private static int Pieces(ShimChoice packs, Extent gaps, Gap window)
    {
        var most = 0;
        for (var step = 0; step <= Steps; step++)
        {
            var gap = gaps.Min + ((gaps.Max - gaps.Min) * step / Steps);
            most = Math.Max(most, packs.Best(gap, window.Middle, window)?.Shims.Length ?? 0);
        }

        return most;
    }

    private static Quantity Best(Subject subject, ImmutableArray<Quantity> inputs)
    {
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(Pack, inputs, reasons);
        var packs = (ShimChoice)inputs[0].Row!;
        var (gap, target, uncertainty) = (inputs[1].Value.Nominal, inputs[2].Value.Nominal, inputs[3].Value.Nominal);
        var best = packs.Best(gap, target, new(inputs[4].Value.Nominal, inputs[5].Value.Nominal), uncertainty);
        var (thinner, thicker) = packs.Nearest(gap, target);
        return Quantity.ComputedText(Pack, best is null ? $"none; the nearest are {Shown(thinner)} and {Shown(thicker)}" : Shown(best), inputs)
            .With(new FoundPack(best)).With(["packs", "G", "g_t", "u", "w_1", "w_2"]);
    }

    private static string Shown(ShimPack? pack) => pack is null ? "none"
        : pack.Shims.IsEmpty ? "no shim"
        : $"{string.Join(" + ", pack.Shims.Select(shim => shim.ToString("0.####", CultureInfo.InvariantCulture)))} mm";

    private static Extent Assembled(double gap, double uncertainty, ShimPack? pack, ShimEffect effect) => pack is null
        ? throw Guard.Because($"no pack brings the measured gap into the window")
        : Cleaned(Gap.About(ShimChoice.EndPlay(gap, pack.Thickness, effect), uncertainty + pack.Tolerance));

    /// <summary>The gap as assembled, moved by expansion along the loop.</summary>
    private static Extent Moved(Extent gap, SizeChain chain, double[] temperatures)
    {
        var growth = 0.0;
        for (var i = 0; i < temperatures.Length; i++)
            growth += chain.Contributors[i].WarmthAt(temperatures[i]);
        return Cleaned(new(gap.Min + growth, gap.Max + growth));
    }

    private static Extent Hull(params ReadOnlySpan<Extent> states)
    {
        var (least, greatest) = (states[0].Min, states[0].Max);
        foreach (var state in states)
            (least, greatest) = (Math.Min(least, state.Min), Math.Max(greatest, state.Max));
        return new(states[0].Nominal, least, greatest);
    }

    private static Gap Of(Extent extent) => new(extent.Min, extent.Max);

    private static Extent Cleaned(Gap gap) => new(Clean(gap.Middle), Clean(gap.Min), Clean(gap.Max));

    // Sums of decimal sizes are not quite decimal in binary; a picometre is beyond any drawing.
    private static double Clean(double value) => Math.Round(value, 9) + 0.0;
}

/// <summary>The pack of shims for a measured gap; null where none brings it into the window.</summary>
/// <param name="Best">The pack.</param>
public sealed record FoundPack(ShimPack? Best);
