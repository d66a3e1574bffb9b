using System.Runtime.CompilerServices;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests;

/// <summary>Every case of <c>wrong-inputs.txt</c> is refused, fails, or is incomplete, by the rule and with the words that stand there.</summary>
public sealed class WrongInputTests
{
    private static readonly string Root = Path.GetFullPath("../..", Path.GetDirectoryName(Here())!);

    private static string Here([CallerFilePath] string file = "") => file;

    public static TheoryData<string, string, string, string> Cases()
    {
        var cases = new TheoryData<string, string, string, string>();
        foreach (var line in File.ReadLines(Path.Combine(Root, "tests/Pawl.Cli.Tests/wrong-inputs.txt")).Where(line => line.Length > 0 && line[0] != '#'))
        {
            var parts = line.Split(" | ");
            cases.Add(parts[0], parts[1], parts[2], parts[3].TrimEnd());
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Nothing_wrong_conforms(string spec, string own, string code, string words)
    {
        var ran = Check(spec, own);

        Assert.True(ran.Code is 1 or 2, ran.Out);
        var all = ran.Out + ran.Error;
        Assert.Contains(code, all, StringComparison.Ordinal);
        Assert.Contains(words, all, StringComparison.Ordinal);
    }

    // What is not changed conforms, so that it is the change that is found.
    [Theory]
    [InlineData("tarn-180/r180")]
    [InlineData("tarn-120/r400")]
    [InlineData("beck-90/r760")]
    public void The_same_variant_without_the_change_conforms(string spec)
    {
        var ran = Check(spec, "");

        Assert.True(ran.Code == 0, ran.Out);
    }

    private static Ran Check(string spec, string own)
    {
        using var place = new Workplace { Engine = Engine.Shipped };
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Root, "specs"), "*.yaml", SearchOption.AllDirectories))
            place.With(Path.GetRelativePath(Root, file).Replace('\\', '/'), File.ReadAllText(file));
        place.With("pawl.yaml", "pawl: 1\ncatalogues: [specs/catalogue/*.yaml]\nadapters: [specs/adapters/*.yaml]\n");
        var folder = spec[..spec.IndexOf('/', StringComparison.Ordinal)];
        place.With($"specs/{folder}/odd.yaml", $"pawl: 1\nextends: {spec[(folder.Length + 1)..]}.yaml\ngearbox: {{variant: ODD}}\n{own}\n");
        return place.Run("check", $"specs/{folder}/odd.yaml", "--verbose");
    }
}
