using CsCheck;

namespace Pawl.Quantities.Tests;

internal static class Generate
{
    /// <summary>Finite numbers of every size a double has, none subnormal.</summary>
    public static Gen<double> Number { get; } =
        Gen.Select(Gen.Double[-9.99, 9.99], Gen.Int[-300, 290], (digits, power) => digits * Math.Pow(10, power));
}
