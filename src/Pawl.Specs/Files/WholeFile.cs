namespace Pawl.Specs.Files;

/// <summary>Reads files that somebody else may have put there.</summary>
public static class WholeFile
{
    /// <summary>The content, null when it is longer than asked for.</summary>
    /// <remarks>
    /// What is no regular file (a pipe, a device, a socket) has no length of its own and counts as empty: to open it might never return.
    /// </remarks>
    public static byte[]? Read(string path, int most, out long length)
    {
        length = (File.ResolveLinkTarget(path, returnFinalTarget: true) as FileInfo ?? new FileInfo(path)).Length;
        if (length == 0)
            return [];

        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        length = stream.Length;
        if (length > most)
            return null;

        var content = new byte[length];
        stream.ReadExactly(content);
        return content;
    }
}
