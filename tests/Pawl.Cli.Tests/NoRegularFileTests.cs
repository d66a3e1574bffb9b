using System.Diagnostics;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests;

/// <summary>Pipes without a writer, devices and a closed standard input are refused; a test that waits for ever has found one that is not.</summary>
public sealed class NoRegularFileTests
{
    private const string Refusal = "The file is empty, or it is a pipe or a device.";

    private static int MakePipe(string path)
    {
        using var process = Process.Start("mkfifo", [path]);
        process.WaitForExit();
        return process.ExitCode;
    }

    /// <summary>A project of the starters with a pipe in it.</summary>
    private static Workplace With(string pipe)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "pipes are no files there");
        var place = new Workplace { Engine = Engine.Shipped };
        Assert.Equal(0, place.Run("new", "Works", "--project").Code);
        Assert.Equal(0, place.Run("new", "R450").Code);
        Directory.CreateDirectory(Path.GetDirectoryName(place.PathOf(pipe))!);
        File.Delete(place.PathOf(pipe));
        Assert.Equal(0, MakePipe(place.PathOf(pipe)));
        return place;
    }

    [Theory]
    [InlineData("specs/pipe.yaml", "specs/pipe.yaml")]
    [InlineData("specs/pipe.yaml", "specs")]
    [InlineData("specs/pipe.yaml", "specs/*.yaml")]
    [InlineData("specs/deep/pipe.yaml", "specs/**/*.yaml")]
    [InlineData("pawl.yaml", "specs/r450.yaml")]
    [InlineData("specs/catalogue/materials.yaml", "specs/r450.yaml")]
    [InlineData("house/pipe.yaml", "specs/r450.yaml", "--rules", "house")]
    public void A_pipe_is_refused(string pipe, params string[] arguments)
    {
        using var place = With(pipe);

        var ran = place.Run(["check", .. arguments]);

        Assert.Equal(2, ran.Code);
        Assert.Contains(pipe, ran.Error, StringComparison.Ordinal);
        Assert.Contains(Refusal, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pipe_as_a_base_or_behind_a_link_is_refused()
    {
        using var place = With("specs/pipe.yaml");
        File.CreateSymbolicLink(place.PathOf("specs/link.yaml"), place.PathOf("specs/pipe.yaml"));

        foreach (var name in new[] { "pipe.yaml", "link.yaml" })
        {
            place.With("specs/variant.yaml", $"pawl: 1\nextends: {name}\ngearbox: {{variant: R1}}\n");
            foreach (var spec in new[] { "specs/variant.yaml", $"specs/{name}" })
            {
                var ran = place.Run("check", spec);
                Assert.Equal(2, ran.Code);
                Assert.Contains(Refusal, ran.Error, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [InlineData("/dev/zero")]
    [InlineData("/dev/null")]
    public void A_device_is_refused(string device)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "devices are no files there");
        using var place = new Workplace { Engine = Engine.Shipped };

        var ran = place.Run("check", device, "--root", "/");

        Assert.Equal(2, ran.Code);
        Assert.Contains(Refusal, ran.Error, StringComparison.Ordinal);
    }

    // A process of its own: what the runtime puts under number 0 is seen nowhere else.
    [Fact]
    public async Task A_closed_standard_input_is_refused()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the shell is of POSIX");
        using var place = new Workplace();
        var tool = Path.Combine(AppContext.BaseDirectory, "pawl.dll");
        using var process = Process.Start(new ProcessStartInfo("sh", ["-c", "exec dotnet \"$0\" check - <&-", tool])
        {
            WorkingDirectory = place.Folder,
            RedirectStandardError = true,
        })!;

        var error = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.Equal(2, process.ExitCode);
        Assert.StartsWith("-: error cli/cannot-read: Standard input cannot be read: it is closed.\n", error, StringComparison.Ordinal);
    }
}
