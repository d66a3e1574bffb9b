using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;

namespace Pawl.Reports.Records;

/// <summary>The judgement of one variant as one document. Every output is rendered from it alone.</summary>
/// <remarks>Numbers stand in the unit beside them, in full precision; a report rounds, the record does not.</remarks>
public sealed record ConformanceRecord
{
    /// <summary>The version of the record's format that this build writes and reads.</summary>
    public const int CurrentFormat = 2;

    /// <summary>Whether all of the judgement is in it; a record of findings alone is printed, never archived.</summary>
    [JsonIgnore]
    public bool IsWhole { get; init; } = true;

    [Display(Name = "Format", Description = "Version of the record format.")]
    public required int Format { get; init; }

    [Display(Name = "Report number", Description = "First 16 hexadecimal digits of the SHA-256 over tool, date, files and packs.")]
    public required string Id { get; init; }

    [Display(Name = "Tool", Description = "What made the record.")]
    public required ToolRecord Tool { get; init; }

    [Display(Name = "Identity", Description = "What was judged.")]
    public required IdentityRecord Identity { get; init; }

    [Display(Name = "Evaluation date", Description = "The day on which concessions were held to their expiry, year-month-day.")]
    public required DateOnly AsOf { get; init; }

    [Display(Name = "Parts", Description = "Drawing and part numbers, as the spec states them.")]
    public ImmutableArray<PartRecord> Parts { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Verdict", Description = "The outcome as a whole.")]
    public required VerdictRecord Verdict { get; init; }

    [Display(Name = "Coverage", Description = "How much of what applies was evaluated.")]
    public required CoverageRecord Coverage { get; init; }

    [Display(Name = "Topology", Description = "The train in words, as recognised from the graph.")]
    public string Topology { get; init => field = value ?? ""; } = "";

    [Display(Name = "Files", Description = "Every file that was read, with its hash: the spec and what it extends, catalogues, adapters, pawl.yaml; \"shipped:\" in front for those inside the tool.")]
    public required ImmutableArray<FileRecord> Files { get; init; }

    [Display(Name = "Rule packs", Description = "Every rule pack in force, with its hash.")]
    public required ImmutableArray<PackRecord> Packs { get; init; }

    [Display(Name = "Shipped files", Description = "Files inside the tool, besides its rule packs and its catalogue, with their hashes: standard tables used, templates of the pages.")]
    public ImmutableArray<FileRecord> ShippedFiles { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Standard tables", Description = "Standard tables used, by id.")]
    public required ImmutableArray<string> Tables { get; init; }

    [Display(Name = "Findings", Description = "Every rule put to every subject of its kind.")]
    public required ImmutableArray<FindingRecord> Findings { get; init; }

    [Display(Name = "Baseline", Description = "The known findings that it was held against; absent without a baseline.")]
    public BaselineRecord? Baseline { get; init; }

    [Display(Name = "Waiting", Description = "Why checks are not evaluated, the reason that holds up most of them first.")]
    public required ImmutableArray<WaitRecord> Waiting { get; init; }

    [Display(Name = "Rules", Description = "The rules in force.")]
    public required ImmutableArray<RuleRecord> Rules { get; init; }

    [Display(Name = "Deviations", Description = "What house packs change in shipped rules; empty when every rule is in force as shipped.")]
    public required ImmutableArray<DeviationRecord> Deviations { get; init; }

    [Display(Name = "Subjects", Description = "Everything that rules speak of, with all its quantities.")]
    public required ImmutableArray<SubjectRecord> Subjects { get; init; }

    [Display(Name = "Assumptions", Description = "Every default that stands in for a silent spec.")]
    public required ImmutableArray<AssumptionRecord> Assumptions { get; init; }

    [Display(Name = "Inputs", Description = "What the spec declares, as written.")]
    public required ImmutableArray<InputRecord> Inputs { get; init; }

    [Display(Name = "Cautions", Description = "What the reader must keep in mind.")]
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>Reads a record back.</summary>
    /// <exception cref="FormatException">The text is no record that this build reads; the message says why.</exception>
    public static ConformanceRecord Read(string json) => RecordJson.Read(json);

    /// <summary>The record as JSON: what repeats stands once, an entry a line, line feeds, snake case, one order of keys.</summary>
    public string ToJson() => RecordJson.Write(this);
}

/// <summary>What made the record.</summary>
public sealed record ToolRecord
{
    [Display(Name = "Name", Description = "Name of the tool.")]
    public required string Name { get; init; }

    [Display(Name = "Version", Description = "Version of the tool.")]
    public required string Version { get; init; }

    [Display(Name = "Revision", Description = "Revision of the sources that the tool was built from; absent when the build was not told.")]
    public string Revision { get; init => field = value ?? ""; } = "";

    public override string ToString() => Revision.Length == 0 ? $"{Name} {Version}" : $"{Name} {Version} (revision {Revision})";
}

/// <summary>What was judged.</summary>
public sealed record IdentityRecord
{
    [Display(Name = "Family", Description = "Name of the housing family.")]
    public required string Family { get; init; }

    [Display(Name = "Variant", Description = "Name of the variant.")]
    public required string Variant { get; init; }

    [Display(Name = "Revision", Description = "Revision of the variant.")]
    public string Revision { get; init => field = value ?? ""; } = "";

    [Display(Name = "Description", Description = "A sentence about the variant.")]
    public string Description { get; init => field = value ?? ""; } = "";

    [Display(Name = "Drawing", Description = "Number of the assembly drawing.")]
    public string Drawing { get; init => field = value ?? ""; } = "";

    [Display(Name = "Part number", Description = "Number under which the variant is made or sold.")]
    public string PartNumber { get; init => field = value ?? ""; } = "";

    [Display(Name = "Spec file", Description = "The variant's own file, from the project root.")]
    public required string File { get; init; }
}

/// <summary>What a part is drawn and ordered as.</summary>
public sealed record PartRecord
{
    [Display(Name = "Subject", Description = "What it is: gears.sun, bodies.carrier.")]
    public required string Subject { get; init; }

    [Display(Name = "Drawing", Description = "Number of the drawing.")]
    public string Drawing { get; init => field = value ?? ""; } = "";

    [Display(Name = "Part number", Description = "Number under which it is made, ordered or kept.")]
    public string PartNumber { get; init => field = value ?? ""; } = "";

    [Display(Name = "Revision", Description = "Revision of the drawing.")]
    public string Revision { get; init => field = value ?? ""; } = "";
}

/// <summary>The outcome as a whole.</summary>
public sealed record VerdictRecord
{
    [Display(Name = "Word", Description = "The verdict.")]
    public required VerdictWord Word { get; init; }

    [Display(Name = "Complete", Description = "Whether every applicable check was evaluated.")]
    public required bool Complete { get; init; }

    [Display(Name = "Weakened rules", Description = "Shipped rules that house rules weaken: they may pass what the shipped rule refuses.")]
    public required int WeakenedRules { get; init; }

    [Display(Name = "Known findings", Description = "Checks that fail and are in the baseline, no worse than listed there; absent: none.")]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public int KnownFindings { get; init; }

    [Display(Name = "Statement", Description = "The verdict in a sentence or two.")]
    public required string Statement { get; init; }

    [Display(Name = "Not stated", Description = "Sections that the spec does not state, so that nothing of them is judged.")]
    public ImmutableArray<string> NotStated { get; init => field = value.IsDefault ? [] : value; } = [];
}

/// <summary>A file that was read.</summary>
public sealed record FileRecord
{
    [Display(Name = "Path", Description = "From the project root, forward slashes.")]
    public required string Path { get; init; }

    [Display(Name = "SHA-256", Description = "Hash of the bytes, lower-case hexadecimal.")]
    public required string Sha256 { get; init; }
}

/// <summary>A rule pack in force.</summary>
public sealed record PackRecord
{
    [Display(Name = "Name", Description = "Name of the pack.")]
    public required string Name { get; init; }

    [Display(Name = "Path", Description = "The file; \"shipped:\" in front for those inside the tool.")]
    public required string Path { get; init; }

    [Display(Name = "Version", Description = "The pack's own version.")]
    public required string Version { get; init; }

    [Display(Name = "SHA-256", Description = "Hash of the bytes, lower-case hexadecimal.")]
    public required string Sha256 { get; init; }
}

/// <summary>A default that stands in for a silent spec.</summary>
public sealed record AssumptionRecord
{
    [Display(Name = "Quantity", Description = "The assumed quantity: subject.quantity.")]
    public required string Quantity { get; init; }

    [Display(Name = "Title", Description = "The quantity in words.")]
    public required string Title { get; init; }

    [Display(Name = "Value", Description = "The value assumed.")]
    public required ValueRecord Value { get; init; }

    [Display(Name = "Basis", Description = "Which default, and its source.")]
    public required string Basis { get; init; }

    [Display(Name = "Rules", Description = "Rules whose verdict rests on it.")]
    public ImmutableArray<string> Rules { get; init => field = value.IsDefault ? [] : value; } = [];
}

/// <summary>One value that the spec declares.</summary>
public sealed record InputRecord
{
    [Display(Name = "Path", Description = "Keys from the top of the spec, joined by points.")]
    public required string Path { get; init; }

    [Display(Name = "Written", Description = "The text as written.")]
    public required string Written { get; init; }

    [Display(Name = "Place", Description = "Where it is written.")]
    public required PlaceRecord Place { get; init; }
}

/// <summary>A place in a file. Lines and columns count from 1; the end is exclusive.</summary>
public sealed record PlaceRecord
{
    [Display(Name = "File", Description = "From the project root, forward slashes.")]
    public required string File { get; init; }

    [Display(Name = "Line", Description = "First line.")]
    public required int Line { get; init; }

    [Display(Name = "Column", Description = "First column, in UTF-16 code units.")]
    public required int Column { get; init; }

    [Display(Name = "End line", Description = "Last line.")]
    public required int EndLine { get; init; }

    [Display(Name = "End column", Description = "One past the last column.")]
    public required int EndColumn { get; init; }

    public override string ToString() => FormattableString.Invariant($"{File}:{Line}:{Column}");
}
