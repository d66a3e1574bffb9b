using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>The words for heat treatments, as gears state them and catalogues permit them.</summary>
public static class Treatments
{
    public const string Normalised = "normalised";
    public const string ThroughHardened = "through-hardened";
    public const string InductionHardened = "induction-hardened";
    public const string CaseHardened = "case-hardened";
    public const string GasNitrided = "gas-nitrided";
    public const string Nitrocarburised = "nitrocarburised";
    public const string PrecipitationHardened = "precipitation-hardened";

    public static readonly ImmutableArray<string> Words =
        [Normalised, ThroughHardened, InductionHardened, CaseHardened, GasNitrided, Nitrocarburised, PrecipitationHardened];

    /// <summary>Whether the treatment makes a layer that is harder than the core.</summary>
    public static bool HasCase(string treatment) => treatment is InductionHardened or CaseHardened or GasNitrided or Nitrocarburised;
}

/// <summary>How one gear is heat treated and what was done to it after.</summary>
public sealed record HeatTreatmentSpec
{
    [NotAKey(IsPlaceOfKey = true)]
    public required SourceSpan Span { get; init; }

    [Display(Name = "Treatment", Description = "The treatment of the teeth.")]
    [OneOf(
        Treatments.Normalised, Treatments.ThroughHardened, Treatments.InductionHardened, Treatments.CaseHardened, Treatments.GasNitrided,
        Treatments.Nitrocarburised, Treatments.PrecipitationHardened)]
    public required Stated<string> Treatment { get; init; }

    [Display(Name = "Quality", Description = "Quality of material and treatment after ISO 6336-5; absent: ML, which asks least proof.")]
    [OneOf("ML", "MQ", "ME")]
    public Stated<string>? Quality { get; init; }

    [Display(Name = "Proof of quality", Description = "The records that prove the quality: certificate, furnace chart, section of a test piece.")]
    public Stated<string>? Proof { get; init; }

    [Display(Name = "Surface hardness", Description = "Of the finished flanks, as a window in HRC, HV or HBW.")]
    [Example("58..62 HRC")]
    public Stated<Hardness>? SurfaceHardness { get; init; }

    [Display(Name = "Core hardness", Description = "Below the case at half the tooth height, as a window in HRC, HV or HBW.")]
    [Example("32..40 HRC")]
    public Stated<Hardness>? CoreHardness { get; init; }

    [Display(Name = "Hardenability proven", Description = "Whether the end-quench hardness of the steel is proven: 28 HRC at 12 mm. Raises the bending limit of a case-hardened root of quality MQ.")]
    public Stated<bool>? HardenabilityProven { get; init; }

    [Display(Name = "Root hardened", Description = "Whether induction hardening takes in the root; absent: false, the root keeps the hardness of the core.")]
    public Stated<bool>? RootHardened { get; init; }

    [Display(Name = "Case depth", Description = "Effective depth of the finished case at half the tooth height, with its tolerance: to 550 HV when case-hardened or induction-hardened, to 400 HV when nitrided.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "0.40 mm +0.20/0")]
    public Stated<Toleranced>? CaseDepth { get; init; }

    [Display(Name = "Grinding stock", Description = "Taken from each flank after the treatment; the ordered case is deeper by it. Absent: none.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.10 mm")]
    public Stated<Amount>? GrindingStock { get; init; }

    [Display(Name = "Furnace spread", Description = "How far the depth of the case varies from piece to piece in the shop's furnace, end to end.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "0.15 mm")]
    public Stated<Amount>? FurnaceSpread { get; init; }

    [Display(Name = "Tempering", Description = "Temperature of the last tempering or ageing.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "170 °C")]
    public Stated<Amount>? Tempering { get; init; }

    [Display(Name = "Nitriding temperature", Description = "Temperature of nitriding or nitrocarburising.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "510 °C")]
    public Stated<Amount>? Nitriding { get; init; }

    [Display(Name = "Yield strength", Description = "0.2 % proof stress of the core, where known.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "850 MPa")]
    public Stated<Amount>? YieldStrength { get; init; }

    [Display(Name = "Later heat", Description = "Every process after tempering that warms the part: coating, bake, shrink fit.")]
    public ImmutableArray<LaterHeatSpec> LaterHeat { get; init; } = [];

    [Display(Name = "Plating", Description = "A process that brings hydrogen into the steel; absent: none.")]
    [OneOf("none", "electroplated", "phosphated", "pickled")]
    public Stated<string>? Plating { get; init; }

    [Display(Name = "Bake", Description = "The bake that drives the hydrogen out.")]
    public BakeSpec? Bake { get; init; }

    [Display(Name = "Shot peening", Description = "Shot peening of the roots, with its record.")]
    public PeeningSpec? Peening { get; init; }

    [Display(Name = "Superfinished", Description = "Whether the flanks are polished isotropically.")]
    public Stated<bool>? Superfinished { get; init; }

    [Display(Name = "Features", Description = "Splines, seats and threads cut into the same part, each with its hardness.")]
    public ImmutableArray<PartFeatureSpec> Features { get; init; } = [];
}

/// <summary>A process that warms a finished part.</summary>
public sealed record LaterHeatSpec
{
    [Display(Name = "Process", Description = "What warms the part.")]
    [OneOf("coating", "shrink-fit", "curing", "stress-relief", "other")]
    public required Stated<string> Process { get; init; }

    [Display(Name = "Temperature", Description = "Of the part.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "160 °C")]
    public required Stated<Amount> Temperature { get; init; }
}

/// <summary>A bake against hydrogen.</summary>
public sealed record BakeSpec
{
    [Display(Name = "Temperature", Description = "Of the part.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "200 °C")]
    public required Stated<Amount> Temperature { get; init; }

    [Display(Name = "Duration", Description = "At that temperature.")]
    [Measures(nameof(Dimension.OfTime), AmountRange.Positive, Example = "8 h")]
    public required Stated<Amount> Duration { get; init; }

    [Display(Name = "Begins within", Description = "Time from plating to the bake.")]
    [Measures(nameof(Dimension.OfTime), AmountRange.Positive, Example = "2 h")]
    public Stated<Amount>? BeginsWithin { get; init; }
}

/// <summary>Shot peening with its record.</summary>
public sealed record PeeningSpec
{
    [Display(Name = "Intensity", Description = "Arc height of the Almen strip A.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "0.30 mm")]
    public Stated<Amount>? Intensity { get; init; }

    [Display(Name = "Coverage", Description = "Of the roots.")]
    [Measures(nameof(Dimension.Ratio), AmountRange.Positive, Example = "200 %")]
    public Stated<Amount>? Coverage { get; init; }

    [Display(Name = "Root ground after", Description = "Whether the root is ground after peening, which takes its effect away.")]
    public Stated<bool>? RootGroundAfter { get; init; }
}

/// <summary>Something else cut into the part of a gear.</summary>
public sealed record PartFeatureSpec
{
    [NotAKey]
    public required SourceSpan Span { get; init; }

    [Display(Name = "Feature", Description = "raceway: rollers or balls run on it; seal-seat: a lip runs on it; bearing-seat: a ring is pressed on; spline and floating-spline; thread.")]
    [OneOf("raceway", "seal-seat", "bearing-seat", "spline", "floating-spline", "thread")]
    public required Stated<string> Feature { get; init; }

    [Display(Name = "Hardness", Description = "Of its surface, as a window in HRC, HV or HBW.")]
    [Example("58..62 HRC")]
    public Stated<Hardness>? Hardness { get; init; }
}

/// <summary>The pinion-type cutter that makes an internal gear.</summary>
public sealed record CutterSpec
{
    [Display(Name = "Number of teeth", Description = "z_0.")]
    [Range(Limits.FewestTeeth, Limits.MostTeeth)]
    public required Stated<int> Teeth { get; init; }

    [Display(Name = "Tip diameter", Description = "d_a0 as sharpened.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "34.4 mm")]
    public required Stated<Amount> TipDiameter { get; init; }

    [Display(Name = "Profile shift coefficient", Description = "x_0 as sharpened; absent: 0.")]
    [Range(Limits.MinProfileShift, Limits.MaxProfileShift)]
    public Stated<double>? ProfileShift { get; init; }

    [Display(Name = "Tip radius", Description = "Rounding of the cutter's tip, in the normal section.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.25 mm")]
    public required Stated<Amount> TipRadius { get; init; }
}

/// <summary>Roughness of the teeth.</summary>
public sealed record RoughnessSpec
{
    [Display(Name = "Flank, Rz", Description = "Mean peak-to-valley roughness of the flanks.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "3 µm")]
    public Stated<Amount>? FlankRz { get; init; }

    [Display(Name = "Flank, Ra", Description = "Arithmetic mean roughness of the flanks; absent: Rz/6.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "0.4 µm")]
    public Stated<Amount>? FlankRa { get; init; }

    [Display(Name = "Root, Rz", Description = "Mean peak-to-valley roughness of the root fillets.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "10 µm")]
    public Stated<Amount>? RootRz { get; init; }
}
