using Pawl.Quantities;

namespace Pawl.Specs.Model;

/// <summary>Ranges outside which a value is a slip of the pen, whatever the design. Rules judge what lies within.</summary>
/// <remarks>Source: common practice, no source; set wide on purpose.</remarks>
public static class Limits
{
    /// <summary>The version of the spec format that this build reads.</summary>
    public const int Format = 1;

    public const int FewestTeeth = 1;
    public const int MostTeeth = 2000;
    public const int FewestPlanets = 1;
    public const int MostPlanets = 24;

    public const double LeastRatio = 0.001;
    public const double GreatestRatio = 10_000;
    public const double LeastApplicationFactor = 0.1;
    public const double GreatestApplicationFactor = 10;

    /// <summary>Normal module, mm.</summary>
    public const double LeastModule = 0.05;

    /// <summary>Normal module, mm.</summary>
    public const double GreatestModule = 50;

    /// <summary>Normal diametral pitch, 1/in: 25.4 mm over the module.</summary>
    public const double LeastDiametralPitch = 25.4 / GreatestModule;

    /// <summary>Normal diametral pitch, 1/in: 25.4 mm over the module.</summary>
    public const double GreatestDiametralPitch = 25.4 / LeastModule;

    public const double LeastProfileShift = -3;
    public const double GreatestProfileShift = 3;
    public const double LeastToothHeight = 0.1;
    public const double GreatestToothHeight = 3;
    public const double LeastRootFillet = 0;
    public const double GreatestRootFillet = 1;
    public const double LeastFriction = 0;
    public const double GreatestFriction = 1;
    public const double LeastPoisson = 0;
    public const double GreatestPoisson = 0.5;

    public const int FewestRows = 1;
    public const int MostRows = 8;
    public const int FewestElements = 3;
    public const int MostElements = 200;
    public const int FewestKeys = 1;
    public const int MostKeys = 2;
    public const int FinestSplineClass = 4;
    public const int CoarsestSplineClass = 7;
    public const double FewestStarts = 1;
    public const double MostStarts = 1e9;
    public const double LeastBearingFactor = 1;
    public const double GreatestBearingFactor = 30;
    public const int FewestBolts = 1;
    public const int MostBolts = 200;
    public const int FewestLooseShims = 0;
    public const int MostLooseShims = 50;
    public const double LeastShare = 0.01;
    public const int LeastDash = 1;
    public const int GreatestDash = 475;
    public const double LeastIrhd = 30;
    public const double GreatestIrhd = 100;
    public const double LeastViscosityIndex = -50;
    public const double GreatestViscosityIndex = 400;
    public const int LeastAccuracyGrade = 1;
    public const int GreatestAccuracyGrade = 12;
    public const double LeastLoadFactor = 1;
    public const double GreatestLoadFactor = 10;
    public const int LeastSeed = 0;
    public const int GreatestSeed = int.MaxValue;
    public const int FewestDraws = 1000;
    public const int MostDraws = 1_000_000;
    public const double LeastCoefficient = -20;
    public const double GreatestCoefficient = 20;
    public const double LeastCapability = 0.1;
    public const double GreatestCapability = 10;
    public const int FewestShims = 0;
    public const int MostShims = 8;
    public const int MostShimsAtHand = 1000;
    public const double LeastSafety = 0.1;
    public const double GreatestSafety = 20;

    /// <summary>Carbon of a steel, percent by mass (EN 10020, from memory).</summary>
    public const double GreatestCarbon = 2;

    /// <summary>Normal pressure angle, degrees.</summary>
    public const double LeastPressureAngle = 10;

    /// <summary>Normal pressure angle, degrees.</summary>
    public const double GreatestPressureAngle = 35;

    /// <summary>Helix angle, degrees; this value itself is out.</summary>
    public const double HelixAngleBelow = 60;

    // Amounts of these dimensions lie within, whichever key they stand under.
    private static readonly Amount GreatestLength = new(100_000, Units.Millimetre);
    private static readonly Amount GreatestSpeed = new(1_000_000, Units.RevolutionPerMinute);
    private static readonly Amount GreatestTorque = new(1_000_000_000, Units.NewtonMetre);
    private static readonly Amount GreatestTime = new(1_000_000, Units.Hour);
    private static readonly Amount GreatestMass = new(1_000_000, Units.Kilogram);
    private static readonly Amount AbsoluteZero = new(-273.15, Units.Celsius);
    private static readonly Amount GreatestTemperature = new(2000, Units.Celsius);

    /// <summary>The range of all amounts of a dimension, or null where any will do. Both ends are included.</summary>
    public static (Amount Least, Amount Most)? Of(Dimension dimension) =>
        dimension == Dimension.OfLength ? Around(GreatestLength)
        : dimension == Dimension.OfTemperature ? (AbsoluteZero, GreatestTemperature)
        : dimension == Dimension.OfAngularSpeed ? Around(GreatestSpeed)
        : dimension == Dimension.OfTorque ? Around(GreatestTorque)
        : dimension == Dimension.OfTime ? Around(GreatestTime)
        : dimension == Dimension.OfMass ? Around(GreatestMass)
        : null;

    private static (Amount Least, Amount Most) Around(Amount most) => (new(-most.Value, most.Unit), most);

    /// <summary>How far the shares of a spectrum may add up beside 1: rounding to a tenth of a percent passes.</summary>
    public const double SpectrumSlack = 0.0005;
}
