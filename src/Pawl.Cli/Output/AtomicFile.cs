namespace Pawl.Cli.Output;

/// <summary>A report or another output could not be written; the message says which and why.</summary>
public sealed class CannotWriteException(string message, Exception? inner = null) : Exception(message, inner)
{
    public CannotWriteException()
        : this("")
    {
    }

    public CannotWriteException(string message)
        : this(message, null)
    {
    }
}

/// <summary>Writes whole files: what stands under the name is the old content or the new, never a part.</summary>
internal static class AtomicFile
{
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        var folder = Path.GetDirectoryName(path)!;
        var draft = Path.Combine(folder, $".{Path.GetFileName(path)}.draft");
        try
        {
            if (Directory.Exists(path))
                throw new CannotWriteException($"{path} is a folder, not a file.");

            Directory.CreateDirectory(folder);
            File.WriteAllBytes(draft, content);
            File.Move(draft, path, overwrite: true);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            TryDelete(draft);
            throw new CannotWriteException($"{path} cannot be written: {problem.Message}", problem);
        }
    }

    private static void TryDelete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The first problem is the one to report.
        }
    }
}
