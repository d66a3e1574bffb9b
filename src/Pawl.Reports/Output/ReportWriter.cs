using System.Globalization;
using System.Security;
using System.Text;

namespace Pawl.Reports.Output;

/// <summary>A file to write: its path inside the output folder, with forward slashes, and its text.</summary>
public sealed record OutputFile(string Path, string Text);

/// <summary>A file that could not be written.</summary>
/// <param name="Path">The file, as the caller named it.</param>
/// <param name="Reason">Why, in a sentence without a full stop.</param>
public sealed record WriteFailure(string Path, string Reason);

/// <summary>Writes text files whole or not at all.</summary>
public static class ReportWriter
{
    // UTF-8 without a byte order mark; half a surrogate pair becomes the replacement character.
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);
    private static int _serial;

    /// <summary>Writes files below a folder. One that fails does not keep the others from being written.</summary>
    public static ImmutableArray<WriteFailure> Write(string folder, IEnumerable<OutputFile> files)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(files);
        var failures = ImmutableArray.CreateBuilder<WriteFailure>();
        foreach (var file in files)
        {
            var path = Path.Join(folder, file.Path);
            if (!IsInside(folder, path))
                failures.Add(new(path, "the path leads out of the output folder"));
            else if (LinkBelow(folder, file.Path) is { } link)
                failures.Add(new(path, $"{link} is a link, which may lead out of the output folder"));
            else if (WriteFile(path, file.Text) is { } failure)
                failures.Add(failure);
        }

        return failures.DrainToImmutable();
    }

    /// <summary>Writes one file; null when it is there, whole.</summary>
    public static WriteFailure? WriteFile(string path, string text) => WriteFile(path, text, Create);

    /// <summary>Writes bytes as they are, likewise.</summary>
    public static WriteFailure? WriteFile(string path, ReadOnlyMemory<byte> bytes) => WriteFile(path, bytes, Create);

    /// <param name="path">The file.</param>
    /// <param name="text">Its text.</param>
    /// <param name="create">Makes a new file for writing; a test passes one whose disk is full.</param>
    internal static WriteFailure? WriteFile(string path, string text, Func<string, Stream> create)
    {
        ArgumentNullException.ThrowIfNull(text);
        return WriteFile(path, Utf8.GetBytes(text), create);
    }

    private static WriteFailure? WriteFile(string path, ReadOnlyMemory<byte> bytes, Func<string, Stream> create)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        string? temporary = null;
        try
        {
            if (Directory.Exists(path))
                return new(path, "it is a folder");

            // A device is written to, never replaced by a file of its name.
            if (IsDevice(path))
            {
                Fill(path, bytes, p => new FileStream(p, FileMode.Open, FileAccess.Write));
                return null;
            }

            if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } parent)
                Directory.CreateDirectory(parent);
            var serial = Interlocked.Increment(ref _serial);
            temporary = string.Create(CultureInfo.InvariantCulture, $"{path}.{Environment.ProcessId}-{serial}.tmp");
            Fill(temporary, bytes, create);
            File.Move(temporary, path, overwrite: true);
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or SecurityException
            or ArgumentException or NotSupportedException)
        {
            Remove(temporary);
            return new(path, Reason(failure));
        }
    }

    private static FileStream Create(string path) => new(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);

    private static void Fill(string path, ReadOnlyMemory<byte> bytes, Func<string, Stream> create)
    {
        using var stream = create(path);
        stream.Write(bytes.Span);
        stream.Flush();
    }

    private static bool IsDevice(string path) =>
        !OperatingSystem.IsWindows() && Path.GetFullPath(path).StartsWith("/dev/", StringComparison.Ordinal);

    private static bool IsInside(string folder, string path) =>
        Path.GetFullPath(path).StartsWith(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    /// <summary>The first folder on the way that is a link; whoever sends a project may have put it there.</summary>
    private static string? LinkBelow(string folder, string path)
    {
        var at = folder;
        foreach (var part in path.Split('/')[..^1])
        {
            at = Path.Join(at, part);
            if (new DirectoryInfo(at).LinkTarget is not null)
                return at;
        }

        return null;
    }

    private static void Remove(string? temporary)
    {
        try
        {
            if (temporary is not null)
                File.Delete(temporary);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // The failure to write is what the caller must know; this one follows from it.
        }
    }

    private static string Reason(Exception failure) => failure switch
    {
        UnauthorizedAccessException or SecurityException => "permission is denied",
        PathTooLongException => "the path is too long",
        DirectoryNotFoundException => "its folder is gone",
        // ENOSPC, EDQUOT, ERROR_DISK_FULL, ERROR_HANDLE_DISK_FULL.
        IOException { HResult: 28 or 122 or unchecked((int)0x80070070) or unchecked((int)0x80070027) } => "the disk is full",
        // ENOTDIR, EEXIST: a part of the path is a file.
        IOException { HResult: 17 or 20 } => "a part of its path is no folder",
        IOException => "it cannot be written: " + failure.Message,
        _ => "no file can have this path",
    };
}
