using System.ComponentModel.DataAnnotations;

namespace Pawl.Reports.Records.Stored;

/// <summary>A conformance record as it stands in a file: what repeats stands once and is referred to by its number in a list, from 0.</summary>
/// <remarks>References never lead to other references, so a reader resolves each in one step.</remarks>
internal sealed record StoredRecord
{
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

    [Display(Name = "Verdict", Description = "The outcome as a whole.")]
    public required VerdictRecord Verdict { get; init; }

    [Display(Name = "Coverage", Description = "How much of what applies was evaluated.")]
    public required CoverageRecord Coverage { get; init; }

    [Display(Name = "Topology", Description = "The train in words, as recognised from the graph.")]
    public string Topology { get; init => field = value ?? ""; } = "";

    [Display(Name = "Parts", Description = "Drawing and part numbers, as the spec states them.")]
    public ImmutableArray<PartRecord> Parts { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Cautions", Description = "What the reader must keep in mind.")]
    public required ImmutableArray<string> Cautions { get; init; }

    [Display(Name = "Findings", Description = "Every rule put to every subject of its kind.")]
    public required ImmutableArray<StoredFinding> Findings { get; init; }

    [Display(Name = "Baseline", Description = "The known findings that it was held against; absent without a baseline.")]
    public BaselineRecord? Baseline { get; init; }

    [Display(Name = "Waiting", Description = "Why checks are not evaluated, the reason that holds up most of them first.")]
    public required ImmutableArray<WaitRecord> Waiting { get; init; }

    [Display(Name = "Deviations", Description = "What house packs change in shipped rules; empty when every rule is in force as shipped.")]
    public required ImmutableArray<DeviationRecord> Deviations { get; init; }

    [Display(Name = "Rules", Description = "The rules in force; findings refer to them by number.")]
    public required ImmutableArray<RuleRecord> Rules { get; init; }

    [Display(Name = "Subjects", Description = "Everything that rules speak of; findings refer to them by number.")]
    public required ImmutableArray<StoredSubject> Subjects { get; init; }

    [Display(Name = "Quantities", Description = "The quantities of all subjects, in the order of the subjects; terms and measures refer to them by number.")]
    public required ImmutableArray<StoredQuantity> Quantities { get; init; }

    [Display(Name = "Quantity kinds", Description = "What quantities are, and how they come about.")]
    public required ImmutableArray<StoredKind> QuantityKinds { get; init; }

    [Display(Name = "Assumptions", Description = "Every default that stands in for a silent spec.")]
    public required ImmutableArray<StoredAssumption> Assumptions { get; init; }

    [Display(Name = "Inputs", Description = "What the spec declares, as written; declared quantities refer to them by number.")]
    public required ImmutableArray<InputRecord> Inputs { get; init; }

    [Display(Name = "Sources", Description = "Where formulas come from; quantity kinds refer to them by number.")]
    public required ImmutableArray<FormulaSource> Sources { get; init; }

    [Display(Name = "Texts", Description = "Sources of rules, reasons, defaults and tolerances that repeat, referred to by number.")]
    public required ImmutableArray<string> Texts { get; init; }

    [Display(Name = "Place files", Description = "Files that places are in, referred to by number.")]
    public required ImmutableArray<string> PlaceFiles { get; init; }

    [Display(Name = "Files", Description = "Every file that was read, with its hash: the spec and what it extends, catalogues, adapters, pawl.yaml; \"shipped:\" in front for those inside the tool.")]
    public required ImmutableArray<FileRecord> Files { get; init; }

    [Display(Name = "Rule packs", Description = "Every rule pack in force, with its hash.")]
    public required ImmutableArray<PackRecord> Packs { get; init; }

    [Display(Name = "Shipped files", Description = "Files inside the tool, besides its rule packs and its catalogue, with their hashes: standard tables used, templates of the pages.")]
    public ImmutableArray<FileRecord> ShippedFiles { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Standard tables", Description = "Standard tables used, by id.")]
    public required ImmutableArray<string> Tables { get; init; }
}

/// <summary>Where a formula comes from.</summary>
internal sealed record FormulaSource
{
    [Display(Name = "Source", Description = "Where the formula comes from; absent: no source is needed.")]
    public string Source { get; init => field = value ?? ""; } = "";

    [Display(Name = "Certainty", Description = "How sure the formula is.")]
    public required CertaintyWord Certainty { get; init; }
}

/// <summary>What all quantities of one kind have alike.</summary>
internal sealed record StoredKind
{
    [Display(Name = "Name", Description = "Name in rules.")]
    public required string Name { get; init; }

    [Display(Name = "Symbol", Description = "Symbol of the standard.")]
    public string Symbol { get; init => field = value ?? ""; } = "";

    [Display(Name = "Title", Description = "Term of the standard.")]
    public required string Title { get; init; }

    [Display(Name = "Unit", Description = "Unit of the numbers; absent: a ratio.")]
    public string Unit { get; init => field = value ?? ""; } = "";

    [Display(Name = "Formula", Description = "The formula in plain text.")]
    public string Formula { get; init => field = value ?? ""; } = "";

    [Display(Name = "Symbols", Description = "Symbols of the terms in the formula, in order; absent: each has the symbol of its quantity, or its name where it has none.")]
    public ImmutableArray<string> Symbols { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Source", Description = "Number in \"sources\".")]
    public required int Source { get; init; }

    [Display(Name = "Note", Description = "A simplification or range of validity.")]
    public string Note { get; init => field = value ?? ""; } = "";
}

/// <summary>A subject; its quantities stand in one run of the list of all.</summary>
internal sealed record StoredSubject
{
    [Display(Name = "Path", Description = "Its stable name: meshes.input_sun~long.")]
    public required string Path { get; init; }

    [Display(Name = "Kind", Description = "What sort of thing: mesh.")]
    public required string Kind { get; init; }

    [Display(Name = "Title", Description = "The kind in words.")]
    public required string Title { get; init; }

    [Display(Name = "Domain", Description = "Part of the report that it belongs to.")]
    public required string Domain { get; init; }

    [Display(Name = "Place", Description = "Where the spec declares it.")]
    public required PlaceRecord Place { get; init; }

    [Display(Name = "Related", Description = "The subjects that rules reach from it.")]
    public ImmutableArray<RelationRecord> Related { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "First", Description = "Number of its first quantity in \"quantities\".")]
    public required int First { get; init; }

    [Display(Name = "Count", Description = "How many quantities it has.")]
    public required int Count { get; init; }
}

/// <summary>A quantity: kind, value, terms, and what else there is to say; the last two are left out when empty.</summary>
internal sealed record StoredQuantity(int Kind, ValueRecord Value, ImmutableArray<int> Terms, StoredOrigin Origin);

/// <summary>Where a quantity comes from, if it is not merely computed.</summary>
internal sealed record StoredOrigin
{
    [Display(Name = "Origin", Description = "Where it comes from; absent: declared with an \"input\", assumed with a \"basis\", computed with neither.")]
    public OriginWord? Origin { get; init; }

    [Display(Name = "Input", Description = "Number in \"inputs\": text and place of a declared value.")]
    public int? Input { get; init; }

    [Display(Name = "Written", Description = "The text as written, of a declared value that is no input of the spec.")]
    public string? Written { get; init; }

    [Display(Name = "Place", Description = "Where it is written, of a declared value that is no input of the spec.")]
    public PlaceRecord? Place { get; init; }

    [Display(Name = "Tolerance", Description = "Where the limits of a declared value come from: number in \"texts\".")]
    public int? Tolerance { get; init; }

    [Display(Name = "Basis", Description = "Which default and its source, of an assumed value: number in \"texts\".")]
    public int? Basis { get; init; }

    [Display(Name = "Wide", Description = "True when the bounds take the inputs as independent: wide, never narrow.")]
    public bool Wide { get; init; }

    /// <summary>Terms that are not plain references, in place of the list of numbers.</summary>
    [Display(Name = "Terms", Description = "The terms, where one of them is no plain quantity of a subject.")]
    public ImmutableArray<StoredTerm> Terms { get; init => field = value.IsDefault ? [] : value; } = [];

    public OriginWord Implied => Input is not null ? OriginWord.Declared : Basis is not null ? OriginWord.Assumed : OriginWord.Computed;
}

/// <summary>A term: the number of a quantity, the same under another symbol, or a term in full.</summary>
internal sealed record StoredTerm(int? Of, string? Symbol, TermRecord? Whole);

/// <summary>A quantity under another symbol than its own.</summary>
internal sealed record RenamedTerm
{
    [Display(Name = "Of", Description = "Number in \"quantities\".")]
    public required int Of { get; init; }

    [Display(Name = "Symbol", Description = "Symbol in the formula.")]
    public required string Symbol { get; init; }
}

/// <summary>A measured value or a limit: the number of a quantity, or in full.</summary>
internal sealed record StoredMeasure(int? Of, WholeMeasure? Whole);

/// <summary>A measured value or a limit in full.</summary>
internal sealed record WholeMeasure
{
    [Display(Name = "Quantity", Description = "The quantity of a subject that it is: subject.quantity.")]
    public string? Quantity { get; init; }

    [Display(Name = "Expression", Description = "The expression, when it is no plain quantity.")]
    public string? Expression { get; init; }

    [Display(Name = "Value", Description = "The value.")]
    public required ValueRecord Value { get; init; }

    [Display(Name = "Terms", Description = "What the expression was given.")]
    public ImmutableArray<StoredTerm> Terms { get; init => field = value.IsDefault ? [] : value; } = [];
}

/// <summary>A number in a list, or a name that is not in it.</summary>
internal sealed record StoredName(int? Number, string? Text);

/// <summary>One rule put to one subject.</summary>
internal sealed record StoredFinding
{
    [Display(Name = "Rule", Description = "Number in \"rules\", or the id of a rule that is not there.")]
    public required StoredName Rule { get; init; }

    [Display(Name = "Subject", Description = "Number in \"subjects\", or the path of a subject that is not there.")]
    public required StoredName Subject { get; init; }

    [Display(Name = "Domain", Description = "Part of the report; absent: that of the subject.")]
    public string? Domain { get; init; }

    [Display(Name = "Title", Description = "What the rule demands; absent: the title of the rule.")]
    public string? Title { get; init; }

    [Display(Name = "Outcome", Description = "What came of it.")]
    public required OutcomeWord Outcome { get; init; }

    [Display(Name = "Severity", Description = "How bad a failure is; absent: the severity of the rule.")]
    public SeverityWord? Severity { get; init; }

    [Display(Name = "Measured", Description = "The measured value.")]
    public StoredMeasure? Measured { get; init; }

    [Display(Name = "At least", Description = "The lower limit.")]
    public StoredMeasure? AtLeast { get; init; }

    [Display(Name = "At most", Description = "The upper limit.")]
    public StoredMeasure? AtMost { get; init; }

    [Display(Name = "One of", Description = "The words that are permitted.")]
    public ImmutableArray<string> OneOf { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Margin", Description = "Signed share of the limit at the worst case: 0 is on the limit, negative fails.")]
    public double? Margin { get; init; }

    [Display(Name = "Absolute margin", Description = "Signed distance from a limit of zero, where a share of the limit says nothing; the margin is then a share of the scale of the quantity.")]
    public ValueRecord? AbsoluteMargin { get; init; }

    [Display(Name = "Worst", Description = "The end of the measured value that the margin is taken at, in the unit of the value; absent without tolerances, and where no one end governs.")]
    public double? Worst { get; init; }

    [Display(Name = "Place", Description = "The place in the spec that governs the value.")]
    public required PlaceRecord Place { get; init; }

    [Display(Name = "Reasons", Description = "Why it is not evaluated or does not apply; of a failed concession, what was meant perhaps: numbers in \"texts\".")]
    public ImmutableArray<int> Reasons { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Suggestion", Description = "Neighbours of what fails that would do.")]
    public string? Suggestion { get; init; }

    [Display(Name = "Follows from", Description = "The failure that this one follows from; absent of a cause.")]
    public CauseRecord? FollowsFrom { get; init; }

    [Display(Name = "Concession", Description = "The permission that covers it.")]
    public ConcessionRecord? Concession { get; init; }

    [Display(Name = "Known", Description = "Its entry in the baseline; absent when it is not listed.")]
    public KnownRecord? Known { get; init; }

    [Display(Name = "Governing", Description = "Declared inputs beneath the value; a number in \"quantities\" stands for the quantity with its text, place and basis.")]
    public ImmutableArray<StoredTerm> Governing { get; init => field = value.IsDefault ? [] : value; } = [];
}

/// <summary>A default that stands in for a silent spec.</summary>
internal sealed record StoredAssumption
{
    [Display(Name = "Quantity", Description = "Number in \"quantities\", or the name of a quantity that is not there.")]
    public required StoredName Quantity { get; init; }

    [Display(Name = "Title", Description = "The quantity in words; absent: the title of the quantity.")]
    public string? Title { get; init; }

    [Display(Name = "Value", Description = "The value assumed; absent: the value of the quantity.")]
    public ValueRecord? Value { get; init; }

    [Display(Name = "Basis", Description = "Which default, and its source; absent: the basis of the quantity.")]
    public string? Basis { get; init; }

    [Display(Name = "Rules", Description = "Rules whose verdict rests on it: numbers in \"rules\", or ids of rules that are not there.")]
    public ImmutableArray<StoredName> Rules { get; init => field = value.IsDefault ? [] : value; } = [];
}

/// <summary>A value whose parts are no usual set, or one with a unit of its own.</summary>
internal sealed record WholeValue
{
    [Display(Name = "Nominal", Description = "The number with every input at its nominal.")]
    public double? Nominal { get; init; }

    [Display(Name = "Least", Description = "The least number over all tolerances; absent when there are none.")]
    public double? Min { get; init; }

    [Display(Name = "Greatest", Description = "The greatest number over all tolerances; absent when there are none.")]
    public double? Max { get; init; }

    [Display(Name = "Unit", Description = "Unit of the numbers; absent: a ratio.")]
    public string Unit { get; init => field = value ?? ""; } = "";

    [Display(Name = "Text", Description = "The value of a text quantity.")]
    public string? Text { get; init; }

    [Display(Name = "Truth", Description = "The value of a truth quantity.")]
    public bool? Truth { get; init; }

    [Display(Name = "Reasons", Description = "Why it is not evaluated.")]
    public ImmutableArray<string> Reasons { get; init => field = value.IsDefault ? [] : value; } = [];
}
