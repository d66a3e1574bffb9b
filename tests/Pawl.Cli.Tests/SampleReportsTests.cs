using System.Runtime.CompilerServices;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests;

/// <summary>
/// The reports under <c>reports/samples</c> are what <c>pawl check</c> writes as of 2026-01-15: page, Markdown and record of one
/// variant, the index, and what the command prints of the demo range and of the faulty siblings. A difference leaves the new file beside
/// the old as <c>NAME.received.EXT</c>; when it is right, move it over the sample.
/// </summary>
public sealed class SampleReportsTests
{
    private static readonly string Root = Path.GetFullPath("../..", Path.GetDirectoryName(Here())!);

    private static readonly string Samples = Path.Combine(Root, "reports", "samples");

    private const string Whole = "tarn-180/r180";

    private static string Here([CallerFilePath] string file = "") => file;

    [Fact]
    public void Sample_reports_are_what_the_shipped_specs_give()
    {
        using var place = new Workplace { Engine = Engine.Shipped };
        place.RunWith(
            "", Root, "check", "--as-of", "2026-01-15", "--format", "markdown", "--format", "html", "--format", "json",
            "--output", place.PathOf("now"), "--quiet");
        Keep("demo-range.txt");
        Keep("faulty.txt", "specs/faulty");

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

        void Keep(string name, params string[] specs) => File.WriteAllText(
            place.PathOf($"now/{name}"), place.RunWith("", Root, ["check", .. specs, "--as-of", "2026-01-15", "--no-reports"]).Out);
    }

    private static bool IsSample(string name) => name.StartsWith(Whole, StringComparison.Ordinal) || !name.Contains('/', StringComparison.Ordinal);

    private static bool Same(string one, string other) =>
        File.Exists(other) && File.ReadAllBytes(one).AsSpan().SequenceEqual(File.ReadAllBytes(other));

    private static string[] Names(string folder) => !Directory.Exists(folder) ? [] :
    [
        .. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(folder, path).Replace('\\', '/')).Order(StringComparer.Ordinal),
    ];
}
