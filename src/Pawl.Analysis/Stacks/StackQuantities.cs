using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Stacks;

/// <summary>A chain of sizes that ends in a gap.</summary>
public static class StackQuantities
{
    private const string Closed = "closed form";
    private const string Expansion = "thermal expansion along the same loop; ISO 1 for the 20 °C";
    private const string Warm = "g_θ = g + Σ c·α·m·(θ − 20 °C)";

    public static readonly QuantityKind LeastWanted = new()
    {
        Name = "window_least", Symbol = "w_1", Title = "Least gap allowed at 20 °C", Unit = Units.Millimetre, Certainty = Certainty.Declared, Scale = 0.01,
    };

    public static readonly QuantityKind GreatestWanted = new()
    {
        Name = "window_greatest", Symbol = "w_2", Title = "Greatest gap allowed at 20 °C", Unit = Units.Millimetre, Certainty = Certainty.Declared, Scale = 0.01,
    };

    public static readonly QuantityKind Method = new()
    {
        Name = "method", Title = "How tolerances add up", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Preloaded = new()
    {
        Name = "preloaded", Title = "Whether a gap below zero in service is meant", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Shimmed = new()
    {
        Name = "shimmed", Title = "Whether shims set the gap", ValueKind = ValueKind.Truth, Formula = "shims are stated", Source = "the spec",
    };

    public static readonly QuantityKind WorstCase = Gap(
        "worst_case", "g", "Gap of any parts within their limits, at 20 °C, without shims", "g = Σ c·m ± Σ |c|·h", "arithmetic tolerancing");

    public static readonly QuantityKind RootSumSquare = Gap(
        "root_sum_square", "g_q", "Gap by the root of the sum of squares, at 20 °C, without shims", "g_q = Σ c·m ± √Σ (c·h)²", "statistical tolerancing, textbooks",
        "as certain as the limits are: three sigma in, three sigma out; for four or more independent sizes in the middle of their limits");

    public static readonly QuantityKind Deviation = Gap(
        "standard_deviation", "σ", "Standard deviation of the gap", "σ = √Σ (c·σ_i)²; normal σ_i = h/(3·C_p), uniform h/√3, triangular h/√6", "variances of independent sizes add up");

    public static readonly QuantityKind Sampled = Gap(
        "sampled", "g_s", "Gap of all but 0.27 % of random assemblies, at 20 °C, without shims", "quantiles 0.135 %, 50 % and 99.865 % of the sample",
        "SplitMix64 (Steele, Lea, Flood 2014), inversion of the distributions", "the same on every machine for one seed");

    public static readonly QuantityKind Seed = new() { Name = "seed", Title = "What the random parts begin with", Certainty = Certainty.Declared };

    public static readonly QuantityKind Draws = new() { Name = "draws", Title = "Random assemblies", Certainty = Certainty.Declared, Scale = 1000 };

    public static readonly QuantityKind ShareOutside = new()
    {
        Name = "share_outside", Title = "Share of random assemblies outside the window, without shims", Unit = Units.Percent, Scale = 0.001,
        Formula = "counted in the sample", Source = "SplitMix64, inversion of the distributions",
    };

    public static readonly QuantityKind Capability = new()
    {
        Name = "capability", Symbol = "C_pk", Title = "Capability of the gap against its window, without shims",
        Formula = "C_pk = min(w_2 − g, g − w_1)/(3·σ)", Symbols = ["w_1", "w_2", "g", "σ"], Source = "definition",
    };

    public static readonly QuantityKind Unproven = new()
    {
        Name = "unproven", Title = "Normal sizes whose capability nobody stated", Formula = "counted", Source = Closed,
    };

    public static readonly QuantityKind GreatestShare = new()
    {
        Name = "greatest_share", Title = "Share of the greatest contributor in the worst case", Unit = Units.Percent,
        Formula = "max |c|·h/Σ |c|·h", Source = "sensitivities of a sum",
    };

    public static readonly QuantityKind Dominant = new()
    {
        Name = "dominant", Title = "The greatest contributor", ValueKind = ValueKind.Text, Formula = "that with the greatest |c|·h", Source = "sensitivities of a sum",
    };

    public static readonly QuantityKind EndPlay = Gap(
        "end_play", "g_e", "Gap as assembled, at 20 °C",
        "without shims the worst case, or the root of the sum of squares where the method is statistical; with shims the window that every assembly is set to; of a measured assembly G ∓ P ± doubts",
        Closed);

    public static readonly QuantityKind Cold = Gap("end_play_cold", "g_c", "Gap at the coldest", $"{Warm}, all at the coldest oil", Expansion);

    public static readonly QuantityKind Running = Gap("end_play_running", "g_r", "Gap in continuous service", $"{Warm}, each at its own", Expansion);

    public static readonly QuantityKind Hot = Gap(
        "end_play_hot", "g_h", "Gap at the hottest", $"{Warm}, each as far above its running temperature as the oil above its own", Expansion);

    public static readonly QuantityKind WarmUp = Gap(
        "end_play_warm_up", "g_w", "Gap while warming up", $"{Warm}, each at the temperature of its side", Expansion);

    public static readonly QuantityKind WarmShaft = new()
    {
        Name = "warm_up_shaft", Symbol = "θ_s", Title = "The side of the shaft while warming up", Unit = Units.Celsius, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind WarmHousing = new()
    {
        Name = "warm_up_housing", Symbol = "θ_h", Title = "The side of the housing while warming up", Unit = Units.Celsius, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind InService = Gap("end_play_in_service", "g_θ", "Gap at every temperature of service", "least and greatest of all states", Closed);

    public static readonly QuantityKind GreatestInService = new()
    {
        Name = "greatest_in_service", Title = "Greatest gap that is borne in service", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Stock = new()
    {
        Name = "stock", Title = "Shims at hand", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind PackNeeded = Gap(
        "pack_needed", "P", "Pack of shims needed for the middle of the window, over all assemblies",
        "fills: P = g − (w_1 + w_2)/2; lifts: P = (w_1 + w_2)/2 − g", "end play = gap ∓ pack");

    public static readonly QuantityKind Packs = new()
    {
        Name = "packs", Title = "Different packs that the shims at hand make", Formula = "counted, no shim among them", Source = "enumeration", Scale = 10,
    };

    public static readonly QuantityKind Uncovered = Gap(
        "uncovered", "", "Range of gaps that no pack brings into the window", "what the packs' ranges w_1 + P + t to w_2 + P − t leave of the worst case", "enumeration");

    public static readonly QuantityKind MostPieces = new()
    {
        Name = "most_pieces", Title = "Most shims that any assembly needs", Formula = "over gaps of the worst case in steps of a hundredth of its range",
        Source = "enumeration",
    };

    public static readonly QuantityKind MeasuredGap = new()
    {
        Name = "measured_gap", Symbol = "G", Title = "Measured gap without shims", Unit = Units.Millimetre, Certainty = Certainty.Declared, Scale = 0.1,
    };

    public static readonly QuantityKind Doubt = new()
    {
        Name = "measurement_share", Title = "Doubt of the measurement, both ways, over the window", Unit = Units.Percent, Formula = "2·u/(w_2 − w_1)", Source = Closed, Scale = 0.1,
    };

    public static readonly QuantityKind PackFound = new()
    {
        Name = "pack_found", Title = "Whether a pack brings the measured gap into the window", ValueKind = ValueKind.Truth,
        Formula = "in the window with the doubts of pack and measurement", Source = "enumeration",
    };

    public static readonly QuantityKind Pack = new()
    {
        Name = "pack", Title = "Best pack for the measured gap", ValueKind = ValueKind.Text,
        Formula = "fewest shims, then nearest to the target, then the thickest", Source = "enumeration; the order is common practice, no source", Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Pieces = new()
    {
        Name = "pieces", Title = "Shims in the best pack", Formula = "counted", Source = "enumeration",
    };

    private static QuantityKind Gap(string name, string symbol, string title, string formula, string source, string note = "") => new()
    {
        Name = name, Symbol = symbol, Title = title, Unit = Units.Millimetre, Formula = formula, Source = source, Note = note, Scale = 0.01,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        LeastWanted, GreatestWanted, Method, Preloaded, Shimmed, WorstCase, RootSumSquare, Deviation, Sampled, Seed, Draws, ShareOutside, Capability, Unproven,
        Dominant, GreatestShare, EndPlay, Cold, Running, Hot, WarmShaft, WarmHousing, WarmUp, InService, GreatestInService, Stock, PackNeeded, Packs, Uncovered, MostPieces, MeasuredGap, Doubt,
        PackFound, Pack, Pieces,
    ];
}

/// <summary>One size in a stack.</summary>
public static class ContributorQuantities
{
    public static readonly QuantityKind Size = new()
    {
        Name = "size", Symbol = "m ± h", Title = "Size", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Coefficient = new()
    {
        Name = "coefficient", Symbol = "c", Title = "What it does to the gap: above zero it opens it", Formula = "by its faces along the loop, times the stated size of it",
        Source = "the loop closes",
    };

    public static readonly QuantityKind Expansion = new()
    {
        Name = "expansion", Symbol = "α", Title = "Linear expansion", Unit = Units.PerKelvin, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ShareOfWorst = new()
    {
        Name = "share_of_worst_case", Title = "Its share of the worst case", Unit = Units.Percent, Formula = "|c|·h/Σ |c|·h", Source = "sensitivities of a sum", Scale = 0.1,
    };

    public static readonly QuantityKind ShareOfVariance = new()
    {
        Name = "share_of_variance", Title = "Its share of the variance", Unit = Units.Percent, Formula = "(c·σ_i)²/Σ (c·σ_i)²", Source = "sensitivities of a sum", Scale = 0.1,
    };

    public static readonly ImmutableArray<QuantityKind> All = [Size, Coefficient, Expansion, ShareOfWorst, ShareOfVariance];
}
