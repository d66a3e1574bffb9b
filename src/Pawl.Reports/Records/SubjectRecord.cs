using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;

namespace Pawl.Reports.Records;

/// <summary>A thing that rules speak of, with all its quantities.</summary>
public sealed record SubjectRecord
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

    [Display(Name = "Quantities", Description = "Its quantities, in the order of its kind.")]
    public required ImmutableArray<QuantityRecord> Quantities { get; init; }
}

/// <summary>A subject reached from another.</summary>
public sealed record RelationRecord
{
    [Display(Name = "Role", Description = "The role under which a rule reaches it.")]
    public required string Role { get; init; }

    [Display(Name = "Subject", Description = "Path of the subject.")]
    public required string Subject { get; init; }
}

/// <summary>A quantity of a subject with its derivation.</summary>
public sealed record QuantityRecord
{
    [Display(Name = "Name", Description = "Name in rules.")]
    public required string Name { get; init; }

    [Display(Name = "Symbol", Description = "Symbol of the standard.")]
    public string Symbol { get; init => field = value ?? ""; } = "";

    [Display(Name = "Title", Description = "Term of the standard.")]
    public required string Title { get; init; }

    [Display(Name = "Value", Description = "The value, or why there is none.")]
    public required ValueRecord Value { get; init; }

    [Display(Name = "Origin", Description = "Where it comes from.")]
    public required OriginWord Origin { get; init; }

    [Display(Name = "Written", Description = "The text as written, of a declared value.")]
    public string? Written { get; init; }

    [Display(Name = "Place", Description = "Where it is written, of a declared value.")]
    public PlaceRecord? Place { get; init; }

    [Display(Name = "Tolerance", Description = "Where the limits of a declared value come from.")]
    public string Tolerance { get; init => field = value ?? ""; } = "";

    [Display(Name = "Basis", Description = "Which default and its source, of an assumed value.")]
    public string? Basis { get; init; }

    [Display(Name = "Formula", Description = "The formula in plain text.")]
    public string Formula { get; init => field = value ?? ""; } = "";

    [Display(Name = "Terms", Description = "What the formula was given.")]
    public ImmutableArray<TermRecord> Terms { get; init => field = value.IsDefault ? [] : value; } = [];

    [Display(Name = "Source", Description = "Where the formula comes from.")]
    public string Source { get; init => field = value ?? ""; } = "";

    [Display(Name = "Certainty", Description = "How sure the formula is.")]
    public required CertaintyWord Certainty { get; init; }

    [Display(Name = "Note", Description = "A simplification or range of validity.")]
    public string Note { get; init => field = value ?? ""; } = "";

    [Display(Name = "Wide", Description = "True when the bounds take the inputs as independent: wide, never narrow.")]
    public bool Wide { get; init; }
}

/// <summary>Something that a formula was given.</summary>
public sealed record TermRecord
{
    [Display(Name = "Symbol", Description = "Symbol in the formula.")]
    public string Symbol { get; init => field = value ?? ""; } = "";

    [Display(Name = "Quantity", Description = "The quantity of a subject that it is: subject.quantity.")]
    public string? Quantity { get; init; }

    [Display(Name = "Value", Description = "The value.")]
    public required ValueRecord Value { get; init; }

    [Display(Name = "Written", Description = "The text as written, of a declared value.")]
    public string? Written { get; init; }

    [Display(Name = "Place", Description = "Where it is written, of a declared value.")]
    public PlaceRecord? Place { get; init; }

    [Display(Name = "Basis", Description = "Which default and its source, of an assumed value.")]
    public string? Basis { get; init; }

    [Display(Name = "Formula", Description = "The formula, of an intermediate value that belongs to no subject.")]
    public string Formula { get; init => field = value ?? ""; } = "";

    [Display(Name = "Terms", Description = "What that formula was given.")]
    public ImmutableArray<TermRecord> Terms { get; init => field = value.IsDefault ? [] : value; } = [];
}

/// <summary>A number with its bounds and unit, a text, a truth value, or the reasons why there is none.</summary>
public sealed record ValueRecord
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

    [JsonIgnore]
    public bool IsNumber => Nominal is not null;

    /// <summary>The least number, also where there is no tolerance.</summary>
    [JsonIgnore]
    public double? Low => Min ?? Nominal;

    /// <summary>The greatest number, also where there is no tolerance.</summary>
    [JsonIgnore]
    public double? High => Max ?? Nominal;
}
