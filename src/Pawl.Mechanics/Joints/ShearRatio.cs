using System.Diagnostics.CodeAnalysis;

namespace Pawl.Mechanics.Joints;

/// <summary>Shear strength of a material over its tensile strength, for <see cref="ThreadStripping"/>.</summary>
/// <param name="Material">A property class, or a family of materials.</param>
/// <param name="Ratio">τ_B/R_m, 1.</param>
/// <remarks>Source: VDI 2230 Part 1; table <c>vdi2230-shear-ratios</c>.</remarks>
public sealed record ShearRatio(string Material, double Ratio)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "vdi2230-shear-ratios";

    private static ImmutableArray<ShearRatio> _all;

    /// <summary>All materials of the table.</summary>
    public static ImmutableArray<ShearRatio> All => _all.IsDefault
        ? _all = JointTables.Read(TableId, (material, rest) => new ShearRatio(material, rest[0]), 1)
        : _all;

    /// <summary>The ratio of a material, or the reason why there is none.</summary>
    public static bool TryFind(string material, [NotNullWhen(true)] out ShearRatio? ratio, [NotNullWhen(false)] out string? reason) =>
        JointTables.TryFind(All, row => row.Material, material, "ratio of shear strength for", out ratio, out reason);
}
