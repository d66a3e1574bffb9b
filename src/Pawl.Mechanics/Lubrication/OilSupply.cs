namespace Pawl.Mechanics.Lubrication;

/// <summary>How the oil comes to the teeth.</summary>
public enum OilSupply
{
    /// <summary>Parts dip into the sump and splash.</summary>
    Splash,

    /// <summary>Splash still does, with guides and a level that was tried.</summary>
    SplashWithCare,

    /// <summary>Oil is sprayed into the mesh.</summary>
    Jet,
}

/// <summary>Which supply a speed asks for.</summary>
/// <remarks>Source: common practice, no source.</remarks>
public static class OilSupplyChoice
{
    /// <summary>Speed up to which splash does, mm/s.</summary>
    public const double SplashSpeed = 12_000;

    /// <summary>Speed up to which splash does with care, mm/s.</summary>
    public const double SplashWithCareSpeed = 15_000;

    /// <summary>The least supply for the fastest of pitch line and carrier rim.</summary>
    /// <param name="speedInMillimetresPerSecond">Speed, mm/s; its sign does not matter.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static OilSupply For(double speedInMillimetresPerSecond) =>
        Math.Abs(Guard.Number(speedInMillimetresPerSecond, "the speed", "mm/s")) switch
        {
            <= SplashSpeed => OilSupply.Splash,
            <= SplashWithCareSpeed => OilSupply.SplashWithCare,
            _ => OilSupply.Jet,
        };
}
