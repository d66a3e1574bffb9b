using System.Text;

namespace Pawl.Cli;

/// <summary>Everything that a run touches outside itself, so that a test can put its own in place.</summary>
public sealed record CommandContext
{
    public required TextWriter Out { get; init; }

    public required TextWriter Error { get; init; }

    /// <summary>Opens standard input, null when it is closed; called at most once.</summary>
    public required Func<Stream?> Input { get; init; }

    public required TimeProvider Clock { get; init; }

    /// <summary>The working folder, absolute.</summary>
    public required string Folder { get; init; }

    /// <summary>The environment.</summary>
    public required Func<string, string?> Variable { get; init; }

    public bool OutIsTerminal { get; init; }

    public bool ErrorIsTerminal { get; init; }

    /// <summary>Cells in a line of the terminal; null when it does not say.</summary>
    public int? Width { get; init; }

    public CancellationToken Cancelled { get; init; }

    /// <summary>Where projects and specs are read from.</summary>
    internal Specs.Files.FileSource Files { get; init; } = Specs.Files.FileSource.Disk;

    /// <summary>The layers below.</summary>
    internal Checking.Engine Engine { get; init; } = Checking.Engine.Shipped;

    /// <summary>The desk of this process: UTF-8 without a byte order mark, line feeds, invariant numbers.</summary>
    public static CommandContext OfProcess(CancellationToken cancelled) => new()
    {
        Out = Writer(Console.OpenStandardOutput(), buffer: 16 * 1024),
        Error = Writer(Console.OpenStandardError(), buffer: 1024),
        Input = StandardInput.Open,
        Clock = TimeProvider.System,
        Folder = Environment.CurrentDirectory,
        Variable = Environment.GetEnvironmentVariable,
        OutIsTerminal = !Console.IsOutputRedirected,
        ErrorIsTerminal = !Console.IsErrorRedirected,
        Width = WidthOfTerminal(),
        Cancelled = cancelled,
    };

    private static int? WidthOfTerminal()
    {
        try
        {
            return !Console.IsOutputRedirected && Console.WindowWidth is > 0 and var width ? width : null;
        }
        catch (Exception unknown) when (unknown is IOException or PlatformNotSupportedException)
        {
            return null;
        }
    }

    /// <summary>A path as the user wrote it, absolute.</summary>
    public string Absolute(string path) => Path.GetFullPath(path, Folder);

    private static StreamWriter Writer(Stream stream, int buffer) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), buffer) { NewLine = "\n" };
}
