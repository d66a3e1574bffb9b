using Pawl.Quantities;

namespace Pawl.Rules.Expressions;

/// <summary>Arithmetic on dimensions that notices when it leaves what a dimension can hold.</summary>
internal static class Exponents
{
    /// <summary>a · b^power.</summary>
    public static bool TryCombine(Dimension a, Dimension b, int power, int most, out Dimension combined)
    {
        var (length, mass, time) = (a.Length + (b.Length * power), a.Mass + (b.Mass * power), a.Time + (b.Time * power));
        var (temperature, angle) = (a.Temperature + (b.Temperature * power), a.Angle + (b.Angle * power));
        var hardness = a.Hardness + (b.Hardness * power);
        combined = default;
        if (!Fits(length) || !Fits(mass) || !Fits(time) || !Fits(temperature) || !Fits(angle) || !Fits(hardness))
            return false;
        combined = new((sbyte)length, (sbyte)mass, (sbyte)time, (sbyte)temperature, (sbyte)angle, Hardness: (sbyte)hardness);
        return true;

        bool Fits(int exponent) => Math.Abs(exponent) <= most;
    }

    /// <summary>The dimension of a square root.</summary>
    public static bool TryHalve(Dimension square, out Dimension half)
    {
        half = new(
            (sbyte)(square.Length / 2), (sbyte)(square.Mass / 2), (sbyte)(square.Time / 2), (sbyte)(square.Temperature / 2), (sbyte)(square.Angle / 2),
            Hardness: (sbyte)(square.Hardness / 2));
        return half.Power(2) == square;
    }
}
