using System.Collections.Concurrent;
using System.Security.Cryptography;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Files;

/// <summary>A file as read: its tree, what is wrong with it, its hash.</summary>
/// <param name="Path">From the project root.</param>
/// <param name="Tree">Null when it could not be read.</param>
/// <param name="Read">Path and hash; null when there was nothing to hash.</param>
/// <param name="Diagnostics">Complaints about its content.</param>
/// <param name="Unreadable">Why there is no content; whoever names the file turns it into a complaint at the place of the name.</param>
internal sealed record ParsedFile(
    string Path, YamlNode? Tree, FileRead? Read, ImmutableArray<Diagnostic> Diagnostics, Func<SourceSpan, string, Diagnostic>? Unreadable = null)
{
    /// <summary>Parses content that is at hand.</summary>
    public static ParsedFile Of(string path, ReadOnlyMemory<byte> content)
    {
        List<Diagnostic> diagnostics = [];
        var tree = YamlReader.Read(path, content, diagnostics);
        return new(path, tree, new(path, Convert.ToHexStringLower(SHA256.HashData(content.Span))), [.. diagnostics]);
    }
}

/// <summary>Reads files; a file that many specs share is read and parsed once.</summary>
/// <param name="source">Where they are.</param>
internal sealed class FileStore(FileSource source)
{
    private readonly ConcurrentDictionary<string, Lazy<ParsedFile>> _shared = new(StringComparer.Ordinal);

    /// <summary>A file that many may name.</summary>
    public ParsedFile Shared(SourcePath path) => _shared.GetOrAdd(path.Full, (_, file) => new(() => Read(file)), path).Value;

    /// <summary>Reads and parses a file.</summary>
    public ParsedFile Read(SourcePath path)
    {
        try
        {
            if (source.IsFolder(path.Full))
                return Unreadable(path, (span, name) => SpecDiagnostics.UnreadableFile(span, name, "it is a folder"));

            return source.Read(path.Full, YamlReader.MostBytes, out var length) switch
            {
                null => new(path.Shown, null, null, [SpecDiagnostics.TooLarge(path.Shown, length)]),
                [] => new(path.Shown, null, null, [SpecDiagnostics.EmptyFile(SourceSpan.Whole(path.Shown))]),
                var content => ParsedFile.Of(path.Shown, content),
            };
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            var nearest = NearestFile(path.Full);
            return Unreadable(path, (span, name) => SpecDiagnostics.MissingFile(span, name, nearest));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            var reason = Reason(exception);
            return Unreadable(path, (span, name) => SpecDiagnostics.UnreadableFile(span, name, reason));
        }
    }

    /// <summary>Why a file cannot be read, in words that are the same on every system.</summary>
    public static string Reason(Exception exception) => exception switch
    {
        UnauthorizedAccessException => "access is denied",
        PathTooLongException => "the path is too long",
        EndOfStreamException => "it changed while it was read",
        _ => "the system refuses",
    };

    private static ParsedFile Unreadable(SourcePath path, Func<SourceSpan, string, Diagnostic> complaint) =>
        new(path.Shown, null, null, [], complaint);

    private string? NearestFile(string full)
    {
        try
        {
            if (Path.GetDirectoryName(full) is not { } folder || !source.IsFolder(folder))
                return null;

            List<string> names = [];
            foreach (var entry in source.Entries(folder))
            {
                if (!entry.IsFolder)
                    names.Add(entry.Name);
            }

            names.Sort(StringComparer.Ordinal);
            return Nearest.To(Path.GetFileName(full), names);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
