using System.ComponentModel.DataAnnotations;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>A project's <c>pawl.yaml</c>. Nothing is looked up here: patterns are as written.</summary>
public sealed record ProjectFile
{
    /// <summary>The name under which it is looked for.</summary>
    public const string FileName = "pawl.yaml";

    [Display(Name = "Format version", Description = "Version of the project format. This build reads 1.")]
    [Range(Limits.Format, Limits.Format)]
    public required Stated<int> Pawl { get; init; }

    [Display(Name = "Specs", Description = "Patterns of the spec files, from the folder of this file: specs/**/*.yaml.")]
    public ImmutableArray<Stated<string>> Specs { get; init; } = [];

    [Display(Name = "Exclude", Description = "Patterns of files that are no specs.")]
    public ImmutableArray<Stated<string>> Exclude { get; init; } = [];

    [Display(Name = "Catalogues", Description = "Patterns of the catalogue files.")]
    public ImmutableArray<Stated<string>> Catalogues { get; init; } = [];

    [Display(Name = "Adapters", Description = "Patterns of the adapter files: specs/adapters/*.yaml.")]
    public ImmutableArray<Stated<string>> Adapters { get; init; } = [];

    [Display(Name = "Rules", Description = "Folders with rule packs of the house.")]
    public ImmutableArray<Stated<string>> Rules { get; init; } = [];

    [Display(Name = "Baseline", Description = "The file of known findings, from the folder of this file.")]
    public Stated<string>? Baseline { get; init; }

    [Display(Name = "Templates", Description = "Folder with templates of reports and sheets in the place of those that ship inside, from the folder of this file.")]
    public Stated<string>? Templates { get; init; }

    [Display(Name = "Required sections", Description = "Sections that every product of the project must have; one that is not stated leaves it incomplete.")]
    [OneOf(
        "ratio", "duty", "tolerances", "train", "bearings", "shafts", "splines", "parallel_keys", "interfaces", "joints",
        "dowels", "retaining_rings", "planet_pins", "o_rings", "lip_seals", "fits", "centring", "shims", "stacks", "lubrication")]
    public ImmutableArray<Stated<string>> RequiredSections { get; init; } = [];

    [Display(Name = "Reports", Description = "Where reports go and in which formats.")]
    public ReportsSpec? Reports { get; init; }

    [Display(Name = "Fail on", Description = "The least severity of a finding that fails a check. Absent: error.")]
    [OneOf("error", "warning", "note")]
    public Stated<string>? FailOn { get; init; }

    [Display(Name = "Require complete", Description = "Whether a rule that could not be evaluated fails a check. Absent: false.")]
    public Stated<bool>? RequireComplete { get; init; }

    [Display(Name = "Allow incomplete", Description = "Whether an incomplete product passes a check. Absent: false.")]
    public Stated<bool>? AllowIncomplete { get; init; }
}

/// <summary>Where reports go and in which formats.</summary>
public sealed record ReportsSpec
{
    [Display(Name = "Folder", Description = "Folder for reports, from the folder of this file.")]
    public Stated<string>? Folder { get; init; }

    [Display(Name = "Formats", Description = "Formats to write.")]
    [OneOf("markdown", "html", "json", "sarif", "junit")]
    public ImmutableArray<Stated<string>> Formats { get; init; } = [];
}
