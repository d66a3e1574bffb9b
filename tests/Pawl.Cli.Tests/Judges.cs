using System.Diagnostics;

namespace Pawl.Cli.Tests;

/// <summary>Outside programs and schemas that judge outputs. <c>npm ci</c> in <c>tests/judges</c> installs them; <c>.ci/run</c> does.</summary>
internal static class Judges
{
    private static readonly string Folder = Path.Combine(RepositoryTests.Root, "tests", "judges");

    private const string Multitool = "@microsoft/sarif-multitool-linux";

    /// <summary>A file of a package.</summary>
    public static string PathOf(string package, string file) => Path.Combine(Folder, "node_modules", package, file);

    /// <summary>Skips the test where they are not installed.</summary>
    public static void SkipUnlessHere() => Assert.SkipUnless(Directory.Exists(Path.Combine(Folder, "node_modules")), "run npm ci --ignore-scripts in tests/judges");

    /// <summary>The JSON Schema of SARIF 2.1.0 by a general validator.</summary>
    public static Task<(int Code, string Said)> Schema(params string[] logs) => Run("node", [Path.Combine(Folder, "sarif.mjs"), .. logs]);

    /// <summary>The second judge of SARIF, which knows rules beyond the schema; it writes what it finds as SARIF.</summary>
    public static Task<(int Code, string Said)> Rules(string log, string findings)
    {
        var program = PathOf(Multitool, "Sarif.Multitool");
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(program, File.GetUnixFileMode(program) | UnixFileMode.UserExecute);
        return Run(program, ["validate", log, "--rule-kind", "Sarif", "--level", "Error;Warning", "--output", findings, "--log", "ForceOverwrite"]);
    }

    /// <summary>A workflow or an action, by the published schemas of both.</summary>
    public static Task<(int Code, string Said)> Workflow(string file) => Run("node", [PathOf("@action-validator/cli", "cli.mjs"), file]);

    /// <summary>Pages, by a validator of HTML.</summary>
    public static Task<(int Code, string Said)> Html(params string[] pages) =>
        Run("node", [PathOf("html-validate", "bin/html-validate.mjs"), "--config", Path.Combine(Folder, "html-validate.json"), "--formatter", "text", .. pages]);

    public static async Task<(int Code, string Said)> Run(string program, string[] arguments, string? folder = null)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder ?? Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var cancelled = TestContext.Current.CancellationToken;
        var error = process.StandardError.ReadToEndAsync(cancelled);
        var output = await process.StandardOutput.ReadToEndAsync(cancelled);
        await process.WaitForExitAsync(cancelled);
        return (process.ExitCode, output + await error);
    }
}
