using System.Security.Cryptography;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Files;

/// <summary>The hash of a file that a record names, read under the same guard as a spec.</summary>
public static class FileHash
{
    /// <summary>The SHA-256 of its bytes in lower-case hexadecimal; null with the reason when it cannot be had.</summary>
    /// <param name="root">The project root: nothing outside of it is read, by links neither.</param>
    /// <param name="path">From the root.</param>
    /// <param name="isMissing">Whether there is no such file.</param>
    /// <param name="reason">Why there is no hash, in words.</param>
    public static string? Of(string root, string path, out bool isMissing, out string? reason)
    {
        ArgumentNullException.ThrowIfNull(root);
        ArgumentNullException.ThrowIfNull(path);
        (isMissing, reason) = (false, null);
        if (Path.IsPathRooted(path) || new ProjectRoot(root, FileSource.Disk).Find(path, out var complaint) is not { } source)
        {
            reason = "it lies outside the project";
            return null;
        }

        if (complaint is not null)
        {
            reason = complaint.Message;
            return null;
        }

        try
        {
            if (!File.Exists(source.Full))
            {
                (isMissing, reason) = (true, "it is missing");
                return null;
            }

            if (WholeFile.Read(source.Full, YamlReader.MostBytes, out _) is { } content)
                return Convert.ToHexStringLower(SHA256.HashData(content));
            reason = "it is longer than any file that is read";
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            reason = FileStore.Reason(exception);
        }

        return null;
    }
}
