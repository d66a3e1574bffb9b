using System.Runtime.CompilerServices;
using System.Text;

namespace Pawl.Cli.Tests.Comparing;

/// <summary>Compares a text with the approved one in the repository.</summary>
internal static class Approved
{
    /// <summary>Fails unless the text is that of <c>Approved/NAME.approved.ENDING</c>; leaves what came beside it.</summary>
    public static void Match(string name, string ending, string received, [CallerFilePath] string caller = "")
    {
        Assert.DoesNotContain('\r', received);
        var folder = Path.Combine(Path.GetDirectoryName(caller)!, "Approved");
        var approved = Path.Combine(folder, $"{name}.approved.{ending}");
        var beside = Path.Combine(folder, $"{name}.received.{ending}");
        var expected = File.Exists(approved) ? File.ReadAllText(approved, Encoding.UTF8).ReplaceLineEndings("\n") : "";
        if (expected == received)
        {
            File.Delete(beside);
            return;
        }

        Directory.CreateDirectory(folder);
        File.WriteAllText(beside, received, new UTF8Encoding(false));
        Assert.Fail($"{name}.{ending} differs from what is approved, from {FirstDifference(expected, received)}. See {beside}");
    }

    private static string FirstDifference(string expected, string received)
    {
        var (a, b) = (expected.Split('\n'), received.Split('\n'));
        for (var i = 0; i < Math.Min(a.Length, b.Length); i++)
        {
            if (a[i] != b[i])
                return $"line {i + 1}:\n  approved: {a[i]}\n  received: {b[i]}";
        }

        return $"line {Math.Min(a.Length, b.Length) + 1}: one is longer";
    }
}
