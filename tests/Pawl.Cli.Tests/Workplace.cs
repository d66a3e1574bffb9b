using System.Globalization;
using System.Text;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests;

/// <summary>A folder of its own with the command line in it.</summary>
internal sealed class Workplace : IDisposable
{
    // The root of a repository ends the search for a project file, so that one above the temporary folder is not found.
    public Workplace()
    {
        Folder = Directory.CreateTempSubdirectory("pawl-test-").FullName;
        Directory.CreateDirectory(PathOf(".git"));
    }

    /// <summary>The working folder.</summary>
    public string Folder { get; }

    public Engine Engine { get; init; } = StandIn.Engine;

    public Dictionary<string, string> Environment { get; } = [];

    public DateTimeOffset Now { get; init; } = new(2026, 3, 31, 23, 59, 59, TimeSpan.Zero);

    public Workplace With(string path, string content)
    {
        var full = PathOf(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllText(full, content.ReplaceLineEndings("\n"));
        return this;
    }

    public string PathOf(string path) => Path.Combine(Folder, path);

    public Ran Run(params string[] arguments) => RunWith("", "", arguments);

    public Ran RunWith(string input, string folder, params string[] arguments)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using var error = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var code = PawlCommand.Run(arguments, CommandContext(output, error, input) with { Folder = PathOf(folder) });
        return new(code, output.ToString(), error.ToString());
    }

    public CommandContext CommandContext(TextWriter output, TextWriter error, string input = "", CancellationToken cancelled = default) => new()
    {
        Out = output,
        Error = error,
        Input = () => new MemoryStream(Encoding.UTF8.GetBytes(input)),
        Clock = new FixedClock(Now),
        Folder = Folder,
        Variable = name => Environment.GetValueOrDefault(name),
        Cancelled = cancelled,
        Engine = Engine,
    };

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private sealed class FixedClock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}

/// <summary>How a run ended and what it said.</summary>
internal sealed record Ran(int Code, string Out, string Error)
{
    public string[] OutLines => Out.TrimEnd('\n').Split('\n');
}
