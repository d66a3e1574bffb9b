using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Materials;

/// <summary>The core below a case: its hardness, HV, and whether the hardenability of the steel is proven.</summary>
public readonly record struct CaseCore(double Hardness, bool HardenabilityProven);

/// <summary>Allowable stress numbers of gear steels.</summary>
/// <remarks>
/// <code>σ = A·x + B</code>
/// Symbols: x hardness of the surface in HV, for class St in HBW (taken in HV here and converted after ISO 18265); A, B by class,
/// quality and kind of stress; σ_Hlim, σ_Flim in MPa.<br/>
/// Source: ISO 6336-5, method B; table <c>iso6336-5-allowable-stress-numbers</c>, from memory.<br/>
/// Valid for: the range of x of each line. A softer surface has no value; a harder one has that of the upper end.
/// </remarks>
public static class AllowableStress
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "iso6336-5-allowable-stress-numbers";

    private const string Flank = "contact";
    private const string Foot = "bending";

    private static Line[]? _lines;

    /// <summary>The symbol of the standard for a class.</summary>
    public static string Symbol(MaterialClass material) => material switch
    {
        MaterialClass.Normalised => "St",
        MaterialClass.CarbonThroughHardened => "V-carbon",
        MaterialClass.AlloyThroughHardened => "V-alloy",
        MaterialClass.InductionHardened => "IF",
        MaterialClass.CaseHardened => "Eh",
        MaterialClass.NitridingSteelNitrided => "NT",
        MaterialClass.ThroughHardeningSteelNitrided => "NV-nitrided",
        MaterialClass.Nitrocarburised => "NV-nitrocarburised",
        _ => throw Guard.Because($"there is no class of steel with number {(int)material}"),
    };

    /// <summary>The class of a symbol; null for every other text.</summary>
    public static MaterialClass? Find(string symbol) => symbol switch
    {
        "St" => MaterialClass.Normalised,
        "V-carbon" => MaterialClass.CarbonThroughHardened,
        "V-alloy" => MaterialClass.AlloyThroughHardened,
        "IF" => MaterialClass.InductionHardened,
        "Eh" => MaterialClass.CaseHardened,
        "NT" => MaterialClass.NitridingSteelNitrided,
        "NV-nitrided" => MaterialClass.ThroughHardeningSteelNitrided,
        "NV-nitrocarburised" => MaterialClass.Nitrocarburised,
        _ => null,
    };

    /// <summary>Allowable stress number of contact σ_Hlim, MPa, by the hardness of the flank, HV.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Contact(MaterialClass material, MaterialQuality quality, double hardness) =>
        On(Lines(material, quality, Flank, null), material, quality, hardness);

    /// <summary>Nominal stress number of bending σ_Flim, MPa, by the hardness of the root's surface, HV.</summary>
    /// <remarks>A case-hardened root goes by its core besides: see the overload.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Bending(MaterialClass material, MaterialQuality quality, double hardness) =>
        On(Lines(material, quality, Foot, null), material, quality, hardness);

    /// <summary>σ_Flim of a root with a core that counts: classes of quality MQ and ME, case-hardened.</summary>
    /// <remarks>
    /// Source: as above. Eh, MQ: 425 MPa with a core of 25 HRC, 461 where the end-quench test proves 28 HRC at 12 mm, 500 with a core
    /// of 30 HRC; ME: 525 with a core of 30 HRC. A softer core has no value.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Bending(MaterialClass material, MaterialQuality quality, double hardness, CaseCore core) =>
        On(Lines(material, quality, Foot, core), material, quality, hardness);

    /// <summary>Whether σ_Flim goes by the core.</summary>
    public static bool CoreCounts(MaterialClass material, MaterialQuality quality) =>
        Array.Exists(Table(), line => line.Is(Symbol(material), Foot, quality) && !double.IsNaN(line.Core));

    /// <summary>The least hardness of the core that quality asks for, HRC; null where it asks for none.</summary>
    public static double? MinCore(MaterialClass material, MaterialQuality quality)
    {
        double? least = null;
        foreach (var line in Table())
        {
            if (line.Is(Symbol(material), Foot, quality) && !double.IsNaN(line.Core))
                least = Math.Min(least ?? line.Core, line.Core);
        }

        return least;
    }

    /// <summary>The range of surface hardness that the lines of contact cover, HV.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static (double Min, double Most) Hardness(MaterialClass material, MaterialQuality quality)
    {
        var line = Array.Find(Table(), line => line.Is(Symbol(material), Flank, quality))!;
        return (Scaled(line, line.From), Scaled(line, line.To));

        static double Scaled(Line line, double hardness) => line.IsBrinell ? HardnessConversion.VickersOfBrinell(hardness) : hardness;
    }

    /// <summary>Factor on σ_Flim of a case-hardened root that was shot peened under control.</summary>
    /// <remarks>
    /// Source: ISO 6336-5, cold work of the root, from memory: 1.10 for MQ, 1.05 for ME; nothing for ML, which proves nothing.<br/>
    /// Valid for: case-hardened roots, intensity and coverage recorded, root not ground after.
    /// </remarks>
    public static double PeeningFactor(MaterialClass material, MaterialQuality quality) => (material, quality) switch
    {
        (MaterialClass.CaseHardened, MaterialQuality.Mq) => 1.10,
        (MaterialClass.CaseHardened, MaterialQuality.Me) => 1.05,
        _ => 1,
    };

    private static Line[] Lines(MaterialClass material, MaterialQuality quality, string stress, CaseCore? core)
    {
        var symbol = Symbol(material);
        var lines = Array.FindAll(Table(), line => line.Is(symbol, stress, quality));
        if (!Array.Exists(lines, line => !double.IsNaN(line.Core)))
            return lines;
        if (core is not { } below)
            throw Guard.Because($"σ_Flim of class {symbol} and quality {Name(quality)} goes by the hardness of the core");

        // The lines of a class follow each other by strength; the last that the core earns counts.
        var best = Array.FindLast(
            lines, line => below.Hardness >= HardnessConversion.VickersOfRockwell(line.Core) && (!line.NeedsProof || below.HardenabilityProven));
        return best is not null ? [best] : throw Guard.Because(
            $"a core of {below.Hardness:0} HV is softer than the {lines.Min(line => line.Core):0} HRC that quality {Name(quality)} of ISO 6336-5 asks for");
    }

    private static double On(Line[] lines, MaterialClass material, MaterialQuality quality, double hardness)
    {
        var x = lines[0].IsBrinell ? HardnessConversion.BrinellOfVickers(Math.Min(hardness, HardnessConversion.VickersOfBrinell(lines[0].To))) : hardness;
        if (!(x >= lines[0].From))
        {
            throw Guard.Because(
                $"a surface of {x:0} {(lines[0].IsBrinell ? "HBW" : "HV")} is softer than ISO 6336-5 covers in class {Symbol(material)}, quality {Name(quality)}: from {lines[0].From:0}");
        }

        Guard.Number(hardness, "the hardness", "HV");
        var line = Array.Find(lines, line => x <= line.To) ?? lines[^1];
        return (line.A * Math.Min(x, line.To)) + line.B;
    }

    private static string Name(MaterialQuality quality) => quality switch
    {
        MaterialQuality.Ml => "ML",
        MaterialQuality.Mq => "MQ",
        _ => "ME",
    };

    // Two threads may both read it at first; they read the same.
    private static Line[] Table()
    {
        if (_lines is { } kept)
            return kept;

        var lines = new List<Line>(64);
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            lines.Add(new(
                rows.NextField().ToString(), rows.NextField().ToString(), rows.NextField().ToString(), rows.NextNumber(), rows.NextNumber(),
                rows.NextField().SequenceEqual("HBW"), rows.NextNumber(), rows.NextNumber(), rows.NextNumber(),
                rows.NextField().SequenceEqual("proven")));
        }

        return _lines = [.. lines];
    }

    private sealed record Line(
        string Class, string Stress, string Quality, double A, double B, bool IsBrinell, double From, double To, double Core, bool NeedsProof)
    {
        public bool Is(string symbol, string stress, MaterialQuality quality) =>
            Class == symbol && Stress == stress && Quality == Name(quality);
    }
}
