using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Model;

/// <summary>One gearbox variant as declared, after inheritance. Nothing here is computed.</summary>
public sealed record GearboxSpec
{
    /// <summary>The variant's own file, from the project root.</summary>
    [NotAKey]
    public required string File { get; init; }

    /// <summary>Every file read for this variant: itself, what it extends, catalogues. Ordered by path.</summary>
    [NotAKey]
    public required ImmutableArray<FileRead> FilesRead { get; init; }

    [NotAKey]
    public required Catalogue Catalogue { get; init; }

    /// <summary>The merged tree that this was read from: every declared value as written, with its place; null for a spec made by hand.</summary>
    [NotAKey]
    public YamlNode? Tree { get; init; }

    [Display(Name = "Format version", Description = "Version of the spec format. This build reads 1.")]
    [Range(Limits.Format, Limits.Format)]
    public required Stated<int> Pawl { get; init; }

    [Display(Name = "Base files", Description = "A file whose content this one starts from, or several in order: maps merge key by key, later wins, null removes, lists replace unless their entries carry an id.")]
    [OneOrMore]
    public ImmutableArray<Stated<string>> Extends { get; init; } = [];

    [Display(Name = "Gearbox", Description = "What the variant is called.")]
    public required IdentitySpec Gearbox { get; init; }

    [Display(Name = "Required sections", Description = "Sections that the product must have; one that is not stated leaves it incomplete. An empty section, `parallel_keys: {}`, states that there are none.")]
    [OneOf(
        "ratio", "duty", "tolerances", "train", "bearings", "shafts", "splines", "parallel_keys", "interfaces", "joints",
        "dowels", "retaining_rings", "planet_pins", "o_rings", "lip_seals", "fits", "centring", "shims", "stacks", "lubrication")]
    public ImmutableArray<Stated<string>> RequiredSections { get; init; } = [];

    [Display(Name = "Ratio", Description = "The ratio that the train must have: input speed over output speed.")]
    public RatioSpec? Ratio { get; init; }

    [Display(Name = "Duty", Description = "What the gearbox is asked to do.")]
    public DutySpec? Duty { get; init; }

    [Display(Name = "Tolerances", Description = "Tolerances of dimensions that carry none of their own.")]
    public TolerancesSpec? Tolerances { get; init; }

    [Display(Name = "Train", Description = "Bodies, gears and meshes as a graph.")]
    [Declares]
    public TrainSpec? Train { get; init; }

    [Display(Name = "Bearings", Description = "Rolling bearings by name, each in its place.")]
    [Declares]
    public Named<BearingSpec> Bearings { get; init; } = Named<BearingSpec>.Empty;

    [Display(Name = "Shafts", Description = "Shafts by name: what bodies are along their axis, section by section.")]
    public Named<ShaftSpec> Shafts { get; init; } = Named<ShaftSpec>.Empty;

    [Display(Name = "Splines", Description = "Involute splines by name, with both sides.")]
    public Named<SplineSpec> Splines { get; init; } = Named<SplineSpec>.Empty;

    [Display(Name = "Parallel keys", Description = "Parallel keys by name, each between a shaft and a hub.")]
    public Named<ParallelKeySpec> ParallelKeys { get; init; } = Named<ParallelKeySpec>.Empty;

    [Display(Name = "Interfaces", Description = "What adapters are joined to, by name, and the adapters that the variant may be built with.")]
    public Named<InterfaceSpec> Interfaces { get; init; } = Named<InterfaceSpec>.Empty;

    [Display(Name = "Joints", Description = "Bolted joints and central nuts by name.")]
    [Declares]
    public Named<JointSpec> Joints { get; init; } = Named<JointSpec>.Empty;

    [Display(Name = "Dowels", Description = "Sets of dowels by name.")]
    public Named<DowelSpec> Dowels { get; init; } = Named<DowelSpec>.Empty;

    [Display(Name = "Retaining rings", Description = "Retaining rings by name, each in its groove.")]
    public Named<RetainingRingSpec> RetainingRings { get; init; } = Named<RetainingRingSpec>.Empty;

    [Display(Name = "Planet pins", Description = "Pins of planet sets by name.")]
    public Named<PlanetPinSpec> PlanetPins { get; init; } = Named<PlanetPinSpec>.Empty;

    [Display(Name = "O-rings", Description = "O-rings by name, each in its gland.")]
    public Named<ORingSpec> ORings { get; init; } = Named<ORingSpec>.Empty;

    [Display(Name = "Lip seals", Description = "Radial lip seals by name.")]
    public Named<LipSealSpec> LipSeals { get; init; } = Named<LipSealSpec>.Empty;

    [Display(Name = "Fits", Description = "Holes and the shafts in them, by name.")]
    [Declares]
    public Named<FitSpec> Fits { get; init; } = Named<FitSpec>.Empty;

    [Display(Name = "Centring", Description = "Chains of fits, dowels, bearings and run-outs that keep one part true to another, by name.")]
    public Named<CentringSpec> Centring { get; init; } = Named<CentringSpec>.Empty;

    [Display(Name = "Shims", Description = "Lists of shims at hand, by name.")]
    [Declares]
    public Named<ShimListSpec> Shims { get; init; } = Named<ShimListSpec>.Empty;

    [Display(Name = "Stacks", Description = "Chains of sizes that end in a gap, by name.")]
    public Named<StackSpec> Stacks { get; init; } = Named<StackSpec>.Empty;

    [Display(Name = "Lubrication", Description = "How the gearbox is lubricated and cooled.")]
    public LubricationSpec? Lubrication { get; init; }

    [Display(Name = "Parts", Description = "Drawing and part numbers of what the spec declares, by what findings call it. Entries of a family are merged by id.")]
    public ImmutableArray<PartSpec> Parts { get; init; } = [];

    [Display(Name = "Concessions", Description = "Permissions to use what does not conform (ISO 9000).")]
    public ImmutableArray<ConcessionSpec> Concessions { get; init; } = [];
}

/// <summary>A file that was read, with its hash.</summary>
/// <param name="Path">From the project root, forward slashes.</param>
/// <param name="Sha256">Lower-case hexadecimal.</param>
public sealed record FileRead(string Path, string Sha256);

/// <summary>The ratio that the train must have.</summary>
public sealed record RatioSpec
{
    [Display(Name = "Target ratio", Description = "Input speed over output speed, without sign: 1.8, or exactly as a fraction: 9/5.")]
    [Range(Limits.MinRatio, Limits.MaxRatio)]
    [Fraction]
    public required Stated<double> Target { get; init; }

    [Display(Name = "Tolerance", Description = "Permitted deviation of the ratio from its target, as a share: 0.2 %. Absent: exact.")]
    [Measures(nameof(Dimension.Ratio), AmountRange.NotNegative, Example = "0.2 %")]
    public Stated<Amount>? Tolerance { get; init; }

    [Display(Name = "Sense of rotation", Description = "Output turns as the input (same) or against it (reversed).")]
    [OneOf("same", "reversed")]
    public Stated<string>? Sense { get; init; }
}

/// <summary>What the gearbox is asked to do.</summary>
public sealed record DutySpec
{
    [Display(Name = "Input", Description = "Speed and torque at the input.")]
    public InputDutySpec? Input { get; init; }

    [Display(Name = "Output", Description = "What the load asks of the output.")]
    public OutputDutySpec? Output { get; init; }

    [Display(Name = "Service life", Description = "Hours under load that the gearbox must last.")]
    [Measures(nameof(Dimension.OfTime), AmountRange.Positive, Example = "4000 h")]
    public Stated<Amount>? ServiceLife { get; init; }

    [Display(Name = "Reliability", Description = "Reliability that bearings must reach, as ISO 281 lists it; absent: 90 %.")]
    [Measures(nameof(Dimension.Ratio), Example = "95 %", Min = 50, Max = 99.99, Unit = nameof(Units.Percent))]
    public Stated<Amount>? Reliability { get; init; }

    [Display(Name = "Reliability of the bearings together", Description = "Share of gearboxes in which no bearing may fail within the service life; absent: none is demanded, and a life of all bearings together that 90 % of gearboxes do not reach is a warning.")]
    [Measures(nameof(Dimension.Ratio), Example = "90 %", Min = 1, Max = 99.99, Unit = nameof(Units.Percent))]
    public Stated<Amount>? SetReliability { get; init; }

    [Display(Name = "Application factor", Description = "K_A: external dynamic overload, 1 for a smooth drive and a smooth load.")]
    [Range(Limits.MinApplicationFactor, Limits.MaxApplicationFactor)]
    public Stated<double>? ApplicationFactor { get; init; }

    [Display(Name = "Safety", Description = "The safety factors that the gears must have; absent: common practice.")]
    public SafetySpec? Safety { get; init; }

    [Display(Name = "Oil", Description = "Lubricant and its temperatures.")]
    public OilSpec? Oil { get; init; }

    [Display(Name = "Coast", Description = "Overrunning, towing and regeneration: the output drives, in the sense of rotation of the drive, so that teeth carry on their other flanks.")]
    public CoastSpec? Coast { get; init; }

    [Display(Name = "Load spectrum", Description = "Shares of the service life with their torque and speed; the shares add up to 100 %.")]
    [Count(0, 1000, "at most 1000 shares")]
    public ImmutableArray<SpectrumBinSpec> Spectrum { get; init; } = [];

    [Display(Name = "Peaks in the spectrum", Description = "included: the torques of the spectrum hold the dynamic peaks, so the application factor does not apply to them; excluded, also when absent: it does.")]
    [OneOf("included", "excluded")]
    public Stated<string>? SpectrumPeaks { get; init; }
}

/// <summary>The output drives: overrunning, towing, regeneration.</summary>
public sealed record CoastSpec
{
    [Display(Name = "Torque", Description = "Maximum lasting torque at the input while the output drives, against that of the drive.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.NotNegative, Example = "40 N·m")]
    public required Stated<Amount> Torque { get; init; }

    [Display(Name = "Speed", Description = "Speed of the input while the output drives; absent: that of the drive.")]
    [Measures(nameof(Dimension.OfAngularSpeed), AmountRange.Positive, Example = "3000 rpm")]
    public Stated<Amount>? Speed { get; init; }

    [Display(Name = "Share", Description = "Share of the service life; absent: all of it.")]
    [Measures(nameof(Dimension.Ratio), Example = "5 %", Min = 0.01, Max = 100, Unit = nameof(Units.Percent))]
    public Stated<Amount>? Share { get; init; }

    [Display(Name = "Machine", Description = "Whether the coupled machine at the input turns with it or stands, uncoupled or switched off with what it drives.")]
    [OneOf("turns", "stands")]
    public Stated<string>? Machine { get; init; }
}

/// <summary>Speed and torque at the input.</summary>
public sealed record InputDutySpec
{
    [Display(Name = "Speed", Description = "Maximum continuous speed of the input.")]
    [Measures(nameof(Dimension.OfAngularSpeed), AmountRange.Positive, Example = "8200 rpm")]
    public Stated<Amount>? Speed { get; init; }

    [Display(Name = "Torque", Description = "Maximum continuous torque at the input.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.Positive, Example = "190 N·m")]
    public Stated<Amount>? Torque { get; init; }

    [Display(Name = "Radial force", Description = "Maximum lasting radial force of the coupled machine on the input shaft.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.NotNegative, Example = "200 N")]
    public Stated<Amount>? RadialForce { get; init; }

    [Display(Name = "Radial force at", Description = "Where it acts along the common axis, from the datum of the gears.")]
    [Measures(nameof(Dimension.OfLength), Example = "-40 mm")]
    public Stated<Amount>? RadialForceAt { get; init; }

    [Display(Name = "Axial force", Description = "Maximum lasting axial force on the input shaft, in either direction.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.NotNegative, Example = "100 N")]
    public Stated<Amount>? AxialForce { get; init; }

    [Display(Name = "Peak torque", Description = "Maximum torque at the input that can ever come, a stall or a shock; no application factor is applied to it.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.Positive, Example = "400 N·m")]
    public Stated<Amount>? PeakTorque { get; init; }

    [Display(Name = "Reverse torque", Description = "Torque at the input in the other direction; absent, when the drive turns both ways: the same torque.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.Positive, Example = "120 N·m")]
    public Stated<Amount>? ReverseTorque { get; init; }

    [Display(Name = "Direction", Description = "Whether the drive turns one way or both.")]
    [OneOf("one", "both")]
    public Stated<string>? Direction { get; init; }

    [Display(Name = "Inertia", Description = "Moment of inertia of the driving machine about its shaft, with its half of the coupling. With that of the other machine: torsional natural frequencies are judged.")]
    [Measures(nameof(Dimension.OfInertia), AmountRange.Positive, Example = "0.02 kg·m²")]
    public Stated<Amount>? Inertia { get; init; }

    [Display(Name = "Torsional stiffness", Description = "Of the coupling between the driving machine and the shaft, the shaft itself not counted; absent: rigid beside the shaft.")]
    [Measures(nameof(Dimension.OfTorsionalStiffness), AmountRange.Positive, Example = "4000 N·m/rad")]
    public Stated<Amount>? Stiffness { get; init; }
}

/// <summary>What the load asks of the output.</summary>
public sealed record OutputDutySpec
{
    [Display(Name = "Radial force", Description = "Maximum lasting radial force of the coupled machine on the output shaft.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.NotNegative, Example = "800 N")]
    public Stated<Amount>? RadialForce { get; init; }

    [Display(Name = "Radial force at", Description = "Where it acts along the common axis, from the datum of the gears.")]
    [Measures(nameof(Dimension.OfLength), Example = "120 mm")]
    public Stated<Amount>? RadialForceAt { get; init; }

    [Display(Name = "Axial force", Description = "Maximum lasting axial force on the output shaft, in either direction.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.NotNegative, Example = "300 N")]
    public Stated<Amount>? AxialForce { get; init; }

    [Display(Name = "Maximum lash", Description = "Maximum angular play of the meshes at the output that the load bears, input held.")]
    [Measures(nameof(Dimension.OfAngle), AmountRange.Positive, Example = "30′")]
    public Stated<Amount>? MaxLash { get; init; }

    [Display(Name = "Inertia", Description = "Moment of inertia of the load about its shaft, with its half of the coupling. With that of the other machine: torsional natural frequencies are judged.")]
    [Measures(nameof(Dimension.OfInertia), AmountRange.Positive, Example = "0.3 kg·m²")]
    public Stated<Amount>? Inertia { get; init; }

    [Display(Name = "Torsional stiffness", Description = "Of the coupling between the load and the shaft, the shaft itself not counted; absent: rigid beside the shaft.")]
    [Measures(nameof(Dimension.OfTorsionalStiffness), AmountRange.Positive, Example = "12000 N·m/rad")]
    public Stated<Amount>? Stiffness { get; init; }
}

/// <summary>Safety factors required.</summary>
public sealed record SafetySpec
{
    [Display(Name = "Contact", Description = "Least S_H against pitting.")]
    [Range(Limits.MinSafety, Limits.MaxSafety)]
    public Stated<double>? Contact { get; init; }

    [Display(Name = "Bending", Description = "Least S_F against breakage at the root.")]
    [Range(Limits.MinSafety, Limits.MaxSafety)]
    public Stated<double>? Bending { get; init; }

    [Display(Name = "Peak contact", Description = "Least S_H at the peak torque.")]
    [Range(Limits.MinSafety, Limits.MaxSafety)]
    public Stated<double>? PeakContact { get; init; }

    [Display(Name = "Peak bending", Description = "Least S_F at the peak torque.")]
    [Range(Limits.MinSafety, Limits.MaxSafety)]
    public Stated<double>? PeakBending { get; init; }

    [Display(Name = "Pitting", Description = "none, also when absent: no pit is permitted in the service life; limited: a few pits that do not spread are. Counts for St, V, Eh and IF steels up to 10⁹ cycles.")]
    [OneOf("none", "limited")]
    public Stated<string>? Pitting { get; init; }

    [Display(Name = "Long life", Description = "reduced, also when absent: strength falls to 0.85 at 10¹⁰ cycles; full: it does not, which asks for best lubrication, material and experience.")]
    [OneOf("reduced", "full")]
    public Stated<string>? LongLife { get; init; }
}

/// <summary>Lubricant and its temperatures.</summary>
public sealed record OilSpec
{
    [Display(Name = "Lubricant", Description = "Id of a lubricant in the catalogue.")]
    [Refers(Declared.Lubricant)]
    public Stated<string>? Lubricant { get; init; }

    [Display(Name = "Running temperature", Description = "Oil temperature in continuous service.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "80 °C")]
    public Stated<Amount>? Running { get; init; }

    [Display(Name = "Coldest", Description = "Oil temperature at the coldest start.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "-15 °C")]
    public Stated<Amount>? Coldest { get; init; }

    [Display(Name = "Hottest", Description = "Highest oil temperature that may last.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "110 °C")]
    public Stated<Amount>? Hottest { get; init; }
}

/// <summary>One share of the service life.</summary>
public sealed record SpectrumBinSpec
{
    [NotAKey]
    public required SourceSpan Span { get; init; }

    [Display(Name = "Share", Description = "Share of the service life.")]
    [Measures(nameof(Dimension.Ratio), AmountRange.Positive, Example = "20 %")]
    public required Stated<Amount> Share { get; init; }

    [Display(Name = "Torque", Description = "Torque at the input during this share.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.NotNegative, Example = "190 N·m")]
    public required Stated<Amount> Torque { get; init; }

    [Display(Name = "Speed", Description = "Speed of the input during this share.")]
    [Measures(nameof(Dimension.OfAngularSpeed), AmountRange.NotNegative, Example = "5200 rpm")]
    public required Stated<Amount> Speed { get; init; }
}

/// <summary>Tolerances of dimensions that carry none of their own.</summary>
public sealed record TolerancesSpec
{
    [Display(Name = "General tolerance", Description = "Class of ISO 2768-1 for lengths and angles without a tolerance: f fine, m medium, c coarse, v very coarse.")]
    [OneOf("f", "m", "c", "v")]
    public Stated<string>? General { get; init; }
}

/// <summary>Permission to use what does not conform (ISO 9000).</summary>
public sealed record ConcessionSpec
{
    [NotAKey]
    public required SourceSpan Span { get; init; }

    [Display(Name = "Rule", Description = "Id of the rule that is conceded.")]
    public required Stated<string> Rule { get; init; }

    [Display(Name = "Subject", Description = "Path of the subject that it is conceded for, as findings print it: meshes.input_sun~long.")]
    public required Stated<string> Subject { get; init; }

    [Display(Name = "Reason", Description = "Why the deviation may be used.")]
    public required Stated<string> Reason { get; init; }

    [Display(Name = "Approved by", Description = "Who permits it.")]
    public required Stated<string> ApprovedBy { get; init; }

    [Display(Name = "Expires", Description = "Last day on which it holds, year-month-day.")]
    public required Stated<DateOnly> Expires { get; init; }

    [Display(Name = "Worst margin", Description = "How far the rule may be broken: the worst margin that is accepted, a negative share of the limit. A rule of words or truth values is broken whole: -100 %.")]
    [Measures(nameof(Dimension.Ratio), AmountRange.NotPositive, Example = "-5 %")]
    public required Stated<Amount> WorstMargin { get; init; }

    [Display(Name = "Variants", Description = "Variants that it covers. Required where it stands in a base file, which others extend; else the variant of the file.")]
    public ImmutableArray<Stated<string>> Variants { get; init; } = [];

    /// <summary>Whether it speaks of a variant at all.</summary>
    public bool Covers(string variant)
    {
        if (Variants.IsEmpty)
            return true;
        foreach (var covered in Variants)
        {
            if (covered.Value == variant)
                return true;
        }

        return false;
    }
}
