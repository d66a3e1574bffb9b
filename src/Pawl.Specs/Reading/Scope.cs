using Pawl.Specs.Model;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>What the readers of a file share: where it comes from, and what names in it may refer to.</summary>
/// <remarks>What was read with faults is null: its own faults are reported, and nothing is looked up in it.</remarks>
/// <param name="root">The reader of the whole file.</param>
internal sealed class Scope(MapReader root)
{
    /// <summary>The file, from the project root.</summary>
    public string File { get; init; } = "";

    /// <summary>Every file read for it.</summary>
    public ImmutableArray<FileRead> FilesRead { get; init; } = [];

    /// <summary>The tree that is read.</summary>
    public YamlNode? Tree { get; init; }

    /// <summary>The catalogue; null when it could not be read.</summary>
    public Catalogue? Lookup { get; init; }

    /// <summary>The catalogue; empty when it could not be read.</summary>
    public Catalogue Catalogue => Lookup ?? Catalogue.Empty;

    /// <summary>The train; null also when the spec has none.</summary>
    public TrainSpec? Train { get; set; }

    public Named<BearingSpec>? Bearings { get; set => field = WhenSound(value); }

    public Named<JointSpec>? Joints { get; set => field = WhenSound(value); }

    public Named<FitSpec>? Fits { get; set => field = WhenSound(value); }

    public Named<ShimListSpec>? Shims { get; set => field = WhenSound(value); }

    private T? WhenSound<T>(T? section)
        where T : class => root.HasErrors ? null : section;
}
