using Pawl.Reports.Output;

namespace Pawl.Cli.Output;

/// <summary>Writes files whole or not at all.</summary>
internal static class Files
{
    public static void Write(string path, string text)
    {
        if (ReportWriter.WriteFile(path, text) is { } failure)
            throw new CannotWriteException($"{failure.Path} cannot be written: {failure.Reason}.");
    }
}
