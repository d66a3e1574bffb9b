namespace Pawl.Quantities;

/// <summary>What kind of physical quantity a number is: exponents of the base dimensions.</summary>
/// <remarks>
/// The plane angle counts as a base dimension, so that <c>5°</c> is not taken for a ratio of 0.087. A product or quotient of
/// quantities may gain or lose an angle (torque · angular speed = power), see <see cref="EqualsUpToAngle"/>.
/// A temperature on a scale (80 °C) and a temperature difference (60 K) have the same exponents and differ in
/// <see cref="IsPoint"/>: a point cannot be scaled or added to a point.
/// </remarks>
/// <param name="Length">Exponent of length.</param>
/// <param name="Mass">Exponent of mass.</param>
/// <param name="Time">Exponent of time.</param>
/// <param name="Temperature">Exponent of temperature.</param>
/// <param name="Angle">Exponent of plane angle.</param>
/// <param name="IsPoint">True for a temperature on a scale, false for everything else.</param>
/// <param name="Hardness">Exponent of hardness: a number on a scale of its own, not a stress and not a ratio.</param>
public readonly record struct Dimension(
    sbyte Length = 0, sbyte Mass = 0, sbyte Time = 0, sbyte Temperature = 0, sbyte Angle = 0, bool IsPoint = false,
    sbyte Hardness = 0)
{
    /// <summary>A ratio: a number without a dimension.</summary>
    public static readonly Dimension Ratio;
    public static readonly Dimension OfLength = new(Length: 1);
    public static readonly Dimension OfArea = new(Length: 2);
    public static readonly Dimension OfVolume = new(Length: 3);
    public static readonly Dimension OfMass = new(Mass: 1);
    public static readonly Dimension OfTime = new(Time: 1);
    public static readonly Dimension OfAngle = new(Angle: 1);
    public static readonly Dimension OfTemperature = new(Temperature: 1, IsPoint: true);
    public static readonly Dimension OfTemperatureDifference = new(Temperature: 1);
    public static readonly Dimension OfForce = new(Length: 1, Mass: 1, Time: -2);
    public static readonly Dimension OfTorque = new(Length: 2, Mass: 1, Time: -2);
    public static readonly Dimension OfStress = new(Length: -1, Mass: 1, Time: -2);
    public static readonly Dimension OfPower = new(Length: 2, Mass: 1, Time: -3);
    public static readonly Dimension OfAngularSpeed = new(Angle: 1, Time: -1);
    public static readonly Dimension OfFrequency = new(Time: -1);
    public static readonly Dimension OfSpeed = new(Length: 1, Time: -1);
    public static readonly Dimension OfKinematicViscosity = new(Length: 2, Time: -1);
    public static readonly Dimension OfDensity = new(Length: -3, Mass: 1);
    public static readonly Dimension OfThermalExpansion = new(Temperature: -1);
    public static readonly Dimension OfLineLoad = new(Mass: 1, Time: -2);
    public static readonly Dimension OfInverseStress = new(Length: 1, Mass: -1, Time: 2);
    public static readonly Dimension OfHeatTransfer = new(Mass: 1, Time: -3, Temperature: -1);
    public static readonly Dimension OfHeatConductance = new(Length: 2, Mass: 1, Time: -3, Temperature: -1);
    public static readonly Dimension OfVolumeFlow = new(Length: 3, Time: -1);
    public static readonly Dimension OfAcceleration = new(Length: 1, Time: -2);
    public static readonly Dimension OfInertia = new(Length: 2, Mass: 1);
    public static readonly Dimension OfTorsionalStiffness = new(Length: 2, Mass: 1, Time: -2, Angle: -1);
    public static readonly Dimension OfHardness = new(Hardness: 1);

    /// <summary>The everyday name ("length", "torque"), or the exponents where there is none.</summary>
    public string Name => DimensionNames.Of(this);

    /// <summary>The name after its article, for a sentence: "a length", "an angle".</summary>
    public string NameWithArticle => "aeiou".Contains(Name[0], StringComparison.Ordinal) ? $"an {Name}" : $"a {Name}";

    public static Dimension operator *(Dimension a, Dimension b) => new(
        Narrow(a.Length + b.Length), Narrow(a.Mass + b.Mass), Narrow(a.Time + b.Time),
        Narrow(a.Temperature + b.Temperature), Narrow(a.Angle + b.Angle), Hardness: Narrow(a.Hardness + b.Hardness));

    public static Dimension operator /(Dimension a, Dimension b) => new(
        Narrow(a.Length - b.Length), Narrow(a.Mass - b.Mass), Narrow(a.Time - b.Time),
        Narrow(a.Temperature - b.Temperature), Narrow(a.Angle - b.Angle), Hardness: Narrow(a.Hardness - b.Hardness));

    public static Dimension Multiply(Dimension left, Dimension right) => left * right;

    public static Dimension Divide(Dimension left, Dimension right) => left / right;

    /// <summary>This dimension to a whole power.</summary>
    public Dimension Power(int exponent) => new(
        Narrow((long)Length * exponent), Narrow((long)Mass * exponent), Narrow((long)Time * exponent),
        Narrow((long)Temperature * exponent), Narrow((long)Angle * exponent), Hardness: Narrow((long)Hardness * exponent));

    /// <summary>Whether the two agree when angles are read as plain numbers, as in torque · angular speed = power.</summary>
    public bool EqualsUpToAngle(Dimension other) => (this with { Angle = 0 }) == (other with { Angle = 0 });

    // Written out: the generated comparison goes through a generic comparer that must be compiled at start-up.
    public bool Equals(Dimension other) =>
        Length == other.Length && Mass == other.Mass && Time == other.Time
        && Temperature == other.Temperature && Angle == other.Angle && IsPoint == other.IsPoint
        && Hardness == other.Hardness;

    public override int GetHashCode() => unchecked(
        (((((((((((Length * 31) + Mass) * 31) + Time) * 31) + Temperature) * 31) + Angle) * 31) + Hardness) * 31) + (IsPoint ? 1 : 0));

    public override string ToString() => Name;

    // An absurd exponent stays absurd instead of wrapping round into an everyday one.
    private static sbyte Narrow(long exponent) => (sbyte)Math.Clamp(exponent, -sbyte.MaxValue, sbyte.MaxValue);
}
