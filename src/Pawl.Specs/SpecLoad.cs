using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs;

/// <summary>What came of reading one spec.</summary>
public sealed record SpecLoad
{
    /// <summary>The file, from the project root; <c>-</c> for standard input.</summary>
    public required string File { get; init; }

    /// <summary>The variant; null when anything is wrong with it, or when the file is a base.</summary>
    public GearboxSpec? Spec { get; init; }

    /// <summary>The file with everything it extends laid beneath it; null when a part could not be read.</summary>
    public YamlNode? Merged { get; init; }

    /// <summary>What the catalogues of the project declare.</summary>
    public Catalogue Catalogue { get; init; } = Catalogue.Empty;

    /// <summary>Every complaint, in the order of file, line and column.</summary>
    public ImmutableArray<Diagnostic> Diagnostics { get; init; } = [];

    /// <summary>Whether the file is a base for others: it names no variant itself and is not judged.</summary>
    public bool IsBase { get; init; }

    /// <summary>What the file names under <c>extends</c>.</summary>
    public ImmutableArray<string> Extends { get; init; } = [];

    /// <summary>Every file read for it, with its hash, ordered by path.</summary>
    public ImmutableArray<FileRead> FilesRead { get; init; } = [];
}
