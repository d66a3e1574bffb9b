using System.Runtime.CompilerServices;
using Pawl.Fuzz;

namespace Pawl.Cli.Tests;

/// <summary>A short, seeded part of what <c>tests/Pawl.Fuzz</c> runs at length.</summary>
public sealed class FuzzTests
{
    [Theory]
    [InlineData(FuzzKind.Spec, 400)]
    [InlineData(FuzzKind.Pack, 300)]
    [InlineData(FuzzKind.Catalogue, 200)]
    [InlineData(FuzzKind.Project, 40)]
    [InlineData(FuzzKind.Baseline, 60)]
    [InlineData(FuzzKind.Record, 60)]
    public void No_spoiled_file_crashes_or_gives_a_number_that_is_not_finite(FuzzKind kind, int executions)
    {
        using var fuzzing = new Fuzzing(Repository(), kind, seed: 20);

        var all = Enumerable.Range(0, executions).Select(n => fuzzing.Run(n)).ToArray();

        Assert.Empty(all.Where(e => e.Cause is not null).Select(e => $"{e.Cause}\n{e.Text}"));
        Assert.Contains(all, e => e.Judged);
        Assert.Contains(all, e => !e.Judged);
    }

    private static string Repository([CallerFilePath] string file = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", ".."));
}
