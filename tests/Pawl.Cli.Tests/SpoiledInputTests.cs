using CsCheck;
using Pawl.Fuzz;

namespace Pawl.Cli.Tests;

/// <summary>A seeded part of what `dotnet run --project tests/Pawl.Fuzz -c Release -- spoil` does with every number of the demo range.</summary>
public sealed class SpoiledInputTests
{
    [Theory]
    [InlineData("specs/beck-90/r760.yaml")]
    [InlineData("specs/tarn-120/r400.yaml")]
    [InlineData("specs/tarn-180/r180.yaml")]
    public void What_no_longer_conforms_conforms_at_no_later_step(string path)
    {
        var spoiling = new Spoiling(RepositoryTests.Root, path);

        Gen.Int[0, spoiling.Inputs - 1].Sample(input => Assert.Empty(spoiling.Spoil(input)), iter: 20, seed: "0000KD0EFl13", threads: 1);
    }
}
