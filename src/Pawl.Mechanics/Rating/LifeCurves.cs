using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Rating;

/// <summary>The life curves of ISO 6336 by class of steel.</summary>
public static class LifeCurves
{
    /// <summary>The id of the table of Y_NT.</summary>
    public const string RootTable = "iso6336-3-life-factors";

    /// <summary>The id of the table of Z_NT.</summary>
    public const string FlankTable = "iso6336-2-life-factors";

    /// <summary>The id of the table of Z_NT where limited pitting is allowed.</summary>
    public const string PittingTable = "iso6336-2-life-factors-limited-pitting";

    private static readonly LifeCurve?[][] Kept = [new LifeCurve?[16], new LifeCurve?[16], new LifeCurve?[16]];

    /// <summary>Life factor of the tooth root, Y_NT.</summary>
    /// <remarks>
    /// Source: ISO 6336-3, life factor, method B; table <c>iso6336-3-life-factors</c>.<br/>
    /// Valid for: steels of ISO 6336-5. <paramref name="fullAtLongLife"/>: 1 in place of 0.85 at 10¹⁰ cycles, for the best
    /// conditions of material, making and inspection.
    /// </remarks>
    public static LifeCurve Root(MaterialClass material, bool fullAtLongLife = false) =>
        Find(0, RootTable, material, fullAtLongLife);

    /// <summary>Life factor of the flank, Z_NT.</summary>
    /// <remarks>
    /// Source: ISO 6336-2, life factor, method B; tables <c>iso6336-2-life-factors</c> and
    /// <c>iso6336-2-life-factors-limited-pitting</c>.<br/>
    /// Valid for: steels of ISO 6336-5; limited pitting is not allowed on nitrided and nitrocarburised flanks.
    /// <paramref name="fullAtLongLife"/> as for the root, and the best lubrication.
    /// </remarks>
    public static LifeCurve Flank(MaterialClass material, bool limitedPitting = false, bool fullAtLongLife = false) =>
        limitedPitting
            ? Find(2, PittingTable, material, fullAtLongLife)
            : Find(1, FlankTable, material, fullAtLongLife);

    internal static string Symbol(MaterialClass material) => material switch
    {
        MaterialClass.Normalised => "St",
        MaterialClass.CarbonThroughHardened or MaterialClass.AlloyThroughHardened => "V",
        MaterialClass.InductionHardened => "IF",
        MaterialClass.CaseHardened => "Eh",
        MaterialClass.NitridingSteelNitrided => "NT",
        MaterialClass.ThroughHardeningSteelNitrided => "NV nitrided",
        MaterialClass.Nitrocarburised => "NV nitrocarburised",
        _ => throw Guard.Because($"there is no class of steel with number {(int)material}"),
    };

    // Two threads may both read a curve at first; they read the same.
    private static LifeCurve Find(int table, string id, MaterialClass material, bool fullAtLongLife)
    {
        var symbol = Symbol(material);
        ref var curve = ref Kept[table][2 * (int)material + (fullAtLongLife ? 1 : 0)];
        return curve ??= Read(id, symbol, fullAtLongLife);
    }

    private static LifeCurve Read(string id, string symbol, bool fullAtLongLife)
    {
        var rows = StandardTable.Read(id).Rows();
        while (rows.NextRow())
        {
            if (!rows.NextField().SequenceEqual(symbol))
            {
                continue;
            }

            var corners = new List<(double Cycles, double Factor)>(4);
            for (var cycles = rows.NextNumber(); !double.IsNaN(cycles); cycles = rows.NextNumber())
            {
                corners.Add((cycles, rows.NextNumber()));
            }

            if (fullAtLongLife)
            {
                corners[^1] = (corners[^1].Cycles, 1);
            }

            return new LifeCurve([.. corners]);
        }

        throw Guard.Because($"ISO 6336-2 has no curve with limited pitting for {symbol} steels");
    }
}
