using Pawl.Analysis;
using Pawl.Specs;

namespace Pawl.Cli.Tests;

public class WarmUpTests
{
    // A warm-up that stops half-way would cost time and show nothing.
    [Fact]
    public void The_warm_up_spec_is_read_and_computed()
    {
        using var text = typeof(PawlCommand).Assembly.GetManifestResourceStream("warm-up.yaml")!;
        var bytes = new byte[text.Length];
        text.ReadExactly(bytes);

        var load = new SpecLoader(Path.GetTempPath(), []).Load("warm-up.yaml", bytes);

        Assert.Empty(load.Diagnostics);
        Assert.NotEmpty(GearboxAnalyser.Analyse(load.Spec!).Subjects);
    }
}
