namespace Pawl.Cli.Tests;

public sealed class InterruptTests
{
    [Fact]
    public void A_cancelled_run_ends_with_130_and_says_so()
    {
        using var place = new Workplace().With("a.yaml", "conforms").With("b.yaml", "conforms");
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };

        Assert.Equal(130, PawlCommand.Run(["check", "."], place.CommandContext(output, error, cancelled: cancel.Token)));
        Assert.StartsWith("pawl: interrupted", error.ToString(), StringComparison.Ordinal);
        Assert.Empty(output.ToString());
    }
}
