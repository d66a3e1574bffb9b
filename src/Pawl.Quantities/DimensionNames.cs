using System.Text;

namespace Pawl.Quantities;

/// <summary>What the trade calls each dimension.</summary>
internal static class DimensionNames
{
    private static readonly (Dimension Dimension, string Name)[] Names =
    [
        (Dimension.Ratio, "ratio"),
        (Dimension.OfLength, "length"),
        (Dimension.OfArea, "area"),
        (Dimension.OfVolume, "volume"),
        (Dimension.OfMass, "mass"),
        (Dimension.OfTime, "time"),
        (Dimension.OfAngle, "angle"),
        (Dimension.OfTemperature, "temperature"),
        (Dimension.OfTemperatureDifference, "temperature difference"),
        (Dimension.OfForce, "force"),
        (Dimension.OfTorque, "torque"),
        (Dimension.OfStress, "stress"),
        (Dimension.OfPower, "power"),
        (Dimension.OfAngularSpeed, "angular speed"),
        (Dimension.OfFrequency, "frequency"),
        (Dimension.OfSpeed, "speed"),
        (Dimension.OfKinematicViscosity, "kinematic viscosity"),
        (Dimension.OfDensity, "density"),
        (Dimension.OfThermalExpansion, "thermal expansion"),
        (Dimension.OfLineLoad, "line load or stiffness"),
        (Dimension.OfHardness, "hardness"),
        (new(Length: -1, Mass: 1, Time: -1), "dynamic viscosity"),
        (Dimension.OfTorsionalStiffness, "torsional stiffness"),
        (new(Length: -2, Mass: 1, Time: -2), "stiffness per area"),
        (new(Length: 1, Mass: 1, Time: -3, Temperature: -1), "thermal conductivity"),
        (Dimension.OfHeatTransfer, "heat transfer coefficient"),
        (Dimension.OfHeatConductance, "thermal conductance"),
        (new(Length: -2, Mass: -1, Time: 3, Temperature: 1), "thermal resistance"),
        (new(Length: 2, Time: -2, Temperature: -1), "specific heat capacity"),
        (new(Length: 2, Mass: 1, Time: -2, Temperature: -1), "heat capacity"),
        (new(Mass: 1, Time: -3), "power per area"),
        (new(Length: 1, Time: -2), "acceleration"),
        (new(Angle: 1, Time: -2), "angular acceleration"),
        (Dimension.OfInertia, "moment of inertia"),
        (new(Length: 4), "second moment of area"),
        (Dimension.OfVolumeFlow, "volume flow"),
        (new(Mass: 1, Time: -1), "mass flow"),
        (new(Length: -1, Mass: 1), "mass per length"),
        (new(Length: -2, Mass: 1), "mass per area"),
        (new(Length: 3, Mass: -1), "specific volume"),
        (new(Length: -1), "curvature"),
        (new(Length: -1, Angle: 1), "angle per length"),
        (new(Length: 1, Angle: -1), "length per angle"),
        (Dimension.OfInverseStress, "inverse stress"),
        (new(Mass: -1, Time: 2), "compliance"),
        (new(Length: 1, Temperature: -1), "length per temperature"),
    ];

    public static string Of(Dimension dimension)
    {
        foreach (var (known, name) in Names)
        {
            if (known == dimension) return name;
        }

        return Exponents(dimension);
    }

    /// <summary>The exponents, readable: <c>length³·time⁻²</c>.</summary>
    private static string Exponents(Dimension dimension)
    {
        var text = new StringBuilder();
        Append(text, "length", dimension.Length);
        Append(text, "mass", dimension.Mass);
        Append(text, "time", dimension.Time);
        Append(text, "temperature", dimension.Temperature);
        Append(text, "angle", dimension.Angle);
        Append(text, "hardness", dimension.Hardness);
        return text.ToString();
    }

    private static void Append(StringBuilder text, string name, int exponent)
    {
        if (exponent == 0) return;
        if (text.Length > 0) text.Append('·');
        text.Append(name);
        Superscript.Append(text, exponent);
    }
}
