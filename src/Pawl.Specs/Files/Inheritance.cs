using System.Collections.Concurrent;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Files;

/// <summary>A file with everything it extends laid beneath it.</summary>
/// <param name="Tree">The merged tree; null when a part of it could not be read.</param>
/// <param name="Extends">What the file itself names as its bases.</param>
/// <param name="FilesRead">The file and its bases.</param>
/// <param name="Diagnostics">Complaints about any of them.</param>
internal sealed record Merged(
    YamlNode? Tree, ImmutableArray<string> Extends, ImmutableArray<FileRead> FilesRead, ImmutableArray<Diagnostic> Diagnostics);

/// <summary>Follows <c>extends</c>.</summary>
internal sealed class Inheritance(ProjectRoot root, FileStore files)
{
    /// <summary>Longest row of bases of bases.</summary>
    public const int MostLevels = 16;

    /// <summary>Most files that one file extends: each is laid over the ones before.</summary>
    public const int MostBases = 32;

    private readonly ConcurrentDictionary<string, Merged> _bases = new(StringComparer.Ordinal);

    /// <summary>Merges a file that was read already.</summary>
    /// <param name="file">The file.</param>
    /// <param name="path">Its place; relative paths of bases count from there.</param>
    public Merged Merge(ParsedFile file, SourcePath path) => new Walk(this, root, files).Merge(file, path);

    /// <summary>One walk from a variant to its last base. The first circle ends it: going on would only find it again.</summary>
    private sealed class Walk(Inheritance inheritance, ProjectRoot root, FileStore files)
    {
        private readonly List<SourcePath> _chain = [];
        private bool _ended;

        public Merged Merge(ParsedFile file, SourcePath path)
        {
            List<Diagnostic> diagnostics = [.. file.Diagnostics];
            List<FileRead> read = file.Read is null ? [] : [file.Read];
            if (file.Tree is not YamlMap map || map.Find("extends") is null)
                return new(file.Tree, [], [.. read], [.. diagnostics]);

            var reader = new MapReader(map, "", diagnostics);
            var names = reader.Texts("extends", orOne: true);
            reader.Count("extends", 0, MostBases, $"at most {MostBases.ToString(Invariant)} files");
            var isWhole = !reader.HasErrors;
            if (names.Length > MostBases)
                names = [];

            _chain.Add(path);
            YamlNode? tree = null;
            foreach (var name in names)
            {
                if (_ended)
                    break;
                var merged = Base(name, path, diagnostics);
                if (merged?.Tree is null)
                    isWhole = false;
                else
                    tree = tree is null ? merged.Tree : TreeMerge.Lay(tree, merged.Tree);

                if (merged is null)
                    continue;
                diagnostics.AddRange(merged.Diagnostics);
                read.AddRange(merged.FilesRead);
            }

            _chain.RemoveAt(_chain.Count - 1);
            var shown = ImmutableArray.CreateBuilder<string>(names.Length);
            foreach (var name in names)
                shown.Add(name.Value);
            return new(
                isWhole && !_ended ? tree is null ? map : TreeMerge.Lay(tree, map) : null,
                shown.DrainToImmutable(), [.. read], [.. diagnostics]);
        }

        private Merged? Base(Stated<string> name, SourcePath from, List<Diagnostic> diagnostics)
        {
            if (root.Find(name, Path.GetDirectoryName(from.Full)!, out var complaint) is not { } path)
            {
                diagnostics.Add(complaint!);
                return null;
            }

            for (var i = 0; i < _chain.Count; i++)
            {
                if (_chain[i].Full != path.Full)
                    continue;
                diagnostics.Add(SpecDiagnostics.ExtendsCycle(name.Span, _chain.GetRange(i, _chain.Count - i).Append(path).Select(file => file.Shown)));
                _ended = true;
                return null;
            }

            if (inheritance._bases.TryGetValue(path.Full, out var known))
                return known;

            if (_chain.Count > MostLevels)
            {
                diagnostics.Add(SpecDiagnostics.ExtendsTooDeep(name.Span, MostLevels));
                _ended = true;
                return null;
            }

            var file = files.Shared(path);
            if (file.Unreadable is { } unreadable)
            {
                diagnostics.Add(unreadable(name.Span, name.Value));
                return null;
            }

            var merged = AsBase(Merge(file, path));
            if (!_ended)
                inheritance._bases.TryAdd(path.Full, merged);
            return merged;
        }

        /// <summary>Without its own <c>extends</c>, and of the format that this build reads.</summary>
        private static Merged AsBase(Merged merged)
        {
            if (merged.Tree is null)
                return merged;

            if (merged.Tree is not YamlMap map)
            {
                return merged with
                {
                    Tree = null,
                    Diagnostics = merged.Diagnostics.Add(
                        SpecDiagnostics.NotA(DiagnosticCodes.NotAMap, merged.Tree, "The base file", "a map of `key: value`")),
                };
            }

            var diagnostics = merged.Diagnostics;
            if (map.Find("pawl") is YamlScalar { IsNull: false } pawl && pawl.Value != Limits.Format.ToString(Invariant))
                diagnostics = diagnostics.Add(SpecDiagnostics.FormatVersion(pawl.Span, pawl.Value));
            return merged with { Tree = TreeMerge.Without(map, "extends"), Diagnostics = diagnostics };
        }
    }
}
