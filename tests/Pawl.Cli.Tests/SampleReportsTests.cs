using System.Runtime.CompilerServices;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests;

/// <summary>
/// The reports under <c>reports/samples</c> are what <c>pawl check</c> writes of the demo range and one faulty sibling as of 2026-01-15. A difference leaves the new
/// report beside the old as <c>NAME.received.EXT</c>; when it is right, move it over the sample.
/// </summary>
public sealed class SampleReportsTests
{
    private static readonly string Root = Path.GetFullPath("../..", Path.GetDirectoryName(Here())!);

    private static readonly string Samples = Path.Combine(Root, "reports", "samples");

    // Every spec of the demo range has its Markdown sample; page and record are shown for one that conforms and one that fails, and what the
    // command prints for all the faulty siblings stands in one text.
    private static readonly string[] AlsoAsPageAndRecord = ["tarn-180/r180", "faulty/beck-90-wrong-marks"];

    private const string Faulty = "faulty.txt";

    private static string Here([CallerFilePath] string file = "") => file;

    [Fact]
    public void Sample_reports_are_what_the_shipped_specs_give()
    {
        using var place = new Workplace { Engine = Engine.Shipped };
        place.RunWith(
            "", Root, "check", "specs/beck-90", "specs/tarn-120", "specs/tarn-180", "specs/faulty/beck-90-wrong-marks.yaml", "--as-of", "2026-01-15", "--format", "markdown", "--format", "html", "--format", "json",
            "--output", place.PathOf("now"), "--quiet");

        File.WriteAllText(place.PathOf($"now/{Faulty}"), place.RunWith("", Root, "check", "specs/faulty", "--as-of", "2026-01-15", "--no-reports").Out);

        var now = Names(place.PathOf("now")).Where(IsSample).ToArray();
        var stale = now.Where(name => !Same(place.PathOf($"now/{name}"), Path.Combine(Samples, name))).ToArray();
        foreach (var name in stale)
        {
            var received = Path.Combine(Samples, Path.ChangeExtension(name, ".received" + Path.GetExtension(name)));
            Directory.CreateDirectory(Path.GetDirectoryName(received)!);
            File.Copy(place.PathOf($"now/{name}"), received, overwrite: true);
        }

        Assert.Empty(stale);
        Assert.Equal(now, Names(Samples).Where(name => !name.Contains(".received.", StringComparison.Ordinal)));
    }

    private static bool IsSample(string name) =>
        (name.EndsWith(".md", StringComparison.Ordinal) && !name.StartsWith("faulty/", StringComparison.Ordinal))
        || AlsoAsPageAndRecord.Any(sample => name.StartsWith(sample + ".", StringComparison.Ordinal))
        || name is "index.html" or Faulty;

    private static bool Same(string one, string other) =>
        File.Exists(other) && File.ReadAllBytes(one).AsSpan().SequenceEqual(File.ReadAllBytes(other));

    private static string[] Names(string folder) => !Directory.Exists(folder) ? [] :
    [
        .. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(folder, path).Replace('\\', '/')).Order(StringComparer.Ordinal),
    ];
}
