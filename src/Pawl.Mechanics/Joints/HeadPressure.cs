using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Joints;

/// <summary>Pressure under heads and nuts.</summary>
public static class HeadPressure
{
    /// <summary>The id of the table of limits.</summary>
    public const string TableId = "vdi2230-surface-pressure";

    private static ImmutableArray<LimitingPressure> _all;

    /// <summary>All limits of the table.</summary>
    public static ImmutableArray<LimitingPressure> All => _all.IsDefault
        ? _all = JointTables.Read(TableId, (material, rest) => new LimitingPressure(material, rest[0], rest[1]), 2)
        : _all;

    /// <summary>Pressure p, MPa.</summary>
    /// <remarks>
    /// <code>p = F/A_p;  A_p = π/4·(d_W² − d_h²)</code>
    /// Symbols: F greatest force in the bolt, N. Source: VDI 2230 Part 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Pressure(double force, BearingFace face) => DynamicLoad.NotNegative(force, "the force in the bolt") / face.Area;
}

/// <summary>What a material stands under a head.</summary>
/// <param name="Material">The material.</param>
/// <param name="Tensile">Least tensile strength of that material, MPa.</param>
/// <param name="Pressure">Limiting pressure p_G, MPa.</param>
/// <remarks>Source: VDI 2230 Part 1:2003; table <c>vdi2230-surface-pressure</c>.</remarks>
public sealed record LimitingPressure(string Material, double Tensile, double Pressure);
