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

    public const double MinRatio = 0.001;
    public const double MaxRatio = 10_000;
    public const double MinApplicationFactor = 0.1;
    public const double MaxApplicationFactor = 10;

    /// <summary>Normal module, mm.</summary>
    public const double MinModule = 0.05;

    /// <summary>Normal module, mm.</summary>
    public const double MaxModule = 50;

    /// <summary>Normal diametral pitch, 1/in: 25.4 mm over the module.</summary>
    public const double MinDiametralPitch = 25.4 / MaxModule;

    /// <summary>Normal diametral pitch, 1/in: 25.4 mm over the module.</summary>
    public const double MaxDiametralPitch = 25.4 / MinModule;

    public const double MinProfileShift = -3;
    public const double MaxProfileShift = 3;
    public const double MinToothHeight = 0.1;
    public const double MaxToothHeight = 3;
    public const double MinRootFillet = 0;
    public const double MaxRootFillet = 1;
    public const double MinFriction = 0;
    public const double MaxFriction = 1;
    public const double MinPoisson = 0;
    public const double MaxPoisson = 0.5;

    public const int FewestRows = 1;
    public const int MostRows = 8;
    public const int FewestWebs = 2;
    public const int MostWebs = 20;
    public const int FewestElements = 3;
    public const int MostElements = 200;
    public const int FewestKeys = 1;
    public const int MostKeys = 2;
    public const int FinestSplineClass = 4;
    public const int CoarsestSplineClass = 7;
    public const double FewestStarts = 1;
    public const double MostStarts = 1e9;
    public const double MinBearingFactor = 1;
    public const double MaxBearingFactor = 30;
    public const int FewestBolts = 1;
    public const int MostBolts = 200;
    public const int FewestUses = 1;
    public const int MostUses = 100;
    public const int FewestLooseShims = 0;
    public const int MostLooseShims = 50;
    public const double MinShare = 0.01;
    public const int MinDash = 1;
    public const int MaxDash = 475;
    public const double MinIrhd = 30;
    public const double MaxIrhd = 100;
    public const double MinViscosityIndex = -50;
    public const double MaxViscosityIndex = 400;
    public const int MinAccuracyGrade = 1;
    public const int MaxAccuracyGrade = 12;
    public const double MinLoadFactor = 1;
    public const double MaxLoadFactor = 10;
    public const int MinSeed = 0;
    public const int MaxSeed = int.MaxValue;
    public const int FewestDraws = 1000;
    public const int MostDraws = 1_000_000;
    public const int UsualDraws = 20_000;
    public const int MostDrawnSizes = 100_000_000;
    public const double MinCoefficient = -20;
    public const double MaxCoefficient = 20;
    public const double MinCapability = 0.1;
    public const double MaxCapability = 10;
    public const int FewestShims = 0;
    public const int MostShims = 8;
    public const int MostShimsAtHand = 1000;
    public const double MinSafety = 0.1;
    public const double MaxSafety = 20;

    /// <summary>Carbon of a steel, percent by mass (EN 10020, from memory).</summary>
    public const double MaxCarbon = 2;

    /// <summary>Normal pressure angle, degrees.</summary>
    public const double MinPressureAngle = 10;

    /// <summary>Normal pressure angle, degrees.</summary>
    public const double MaxPressureAngle = 35;

    /// <summary>Helix angle, degrees; this value itself is out.</summary>
    public const double HelixAngleBelow = 60;

    // Amounts of these dimensions lie within, whichever key they stand under.
    private static readonly Amount MaxLength = new(100_000, Units.Millimetre);
    private static readonly Amount MaxSpeed = new(1_000_000, Units.RevolutionPerMinute);
    private static readonly Amount MaxTorque = new(1_000_000_000, Units.NewtonMetre);
    private static readonly Amount MaxTime = new(1_000_000, Units.Hour);
    private static readonly Amount MaxMass = new(1_000_000, Units.Kilogram);
    private static readonly Amount AbsoluteZero = new(-273.15, Units.Celsius);
    private static readonly Amount MaxTemperature = new(2000, Units.Celsius);

    /// <summary>The range of all amounts of a dimension, or null where any will do. Both ends are included.</summary>
    public static (Amount Min, Amount Max)? Of(Dimension dimension) =>
        dimension == Dimension.OfLength ? Around(MaxLength)
        : dimension == Dimension.OfTemperature ? (AbsoluteZero, MaxTemperature)
        : dimension == Dimension.OfAngularSpeed ? Around(MaxSpeed)
        : dimension == Dimension.OfTorque ? Around(MaxTorque)
        : dimension == Dimension.OfTime ? Around(MaxTime)
        : dimension == Dimension.OfMass ? Around(MaxMass)
        : null;

    private static (Amount Min, Amount Max) Around(Amount most) => (new(-most.Value, most.Unit), most);

    /// <summary>How far the shares of a spectrum may add up beside 1: rounding to a tenth of a percent passes.</summary>
    public const double SpectrumSlack = 0.0005;
}
