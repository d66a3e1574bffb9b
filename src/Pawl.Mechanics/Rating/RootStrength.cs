using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Rating;

/// <summary>Factors of the strength of the tooth root.</summary>
public static class RootStrength
{
    /// <summary>The id of the table of slip-layer thicknesses.</summary>
    public const string SlipLayerTable = "iso6336-3-slip-layer";

    private static (string Material, double Yield, double Thickness)[]? _slipLayers;

    /// <summary>Slip-layer thickness ρ', mm.</summary>
    /// <remarks>
    /// Yield: yield point or 0.2 % proof stress, MPa; asked for normalised and through-hardened steels only.<br/>
    /// Source: ISO 6336-3, relative notch sensitivity factor; table <c>iso6336-3-slip-layer</c>.<br/>
    /// Valid for: the rows of the table; between them ln ρ' straight over the yield, beyond them the nearest row (no source for
    /// either).
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SlipLayer(MaterialClass material, double? yield)
    {
        _slipLayers ??= ReadSlipLayers();
        var symbol = LifeCurves.Symbol(material);
        (string Material, double Yield, double Thickness)? below = null;
        foreach (var row in _slipLayers)
        {
            if (!symbol.StartsWith(row.Material, StringComparison.Ordinal) || (symbol.Length > 2) != (row.Material == "NV"))
            {
                continue;
            }

            if (double.IsNaN(row.Yield))
            {
                return row.Thickness;
            }

            var asked = Guard.Positive(
                yield ?? throw Guard.Because($"no slip-layer thickness: the yield strength of the steel is not stated"),
                "the yield strength");
            if (asked <= row.Yield)
            {
                return below is { } lower
                    ? lower.Thickness
                        * Math.Pow(row.Thickness / lower.Thickness, (asked - lower.Yield) / (row.Yield - lower.Yield))
                    : row.Thickness;
            }

            below = row;
        }

        return below?.Thickness ?? throw new InvalidOperationException($"{SlipLayerTable} lacks rows for {symbol}.");
    }

    /// <summary>Relative notch sensitivity factor Y_δrelT for endurance.</summary>
    /// <remarks>
    /// <code>Y_δrelT = (1 + √(ρ'·χ)) / (1 + √(ρ'·χ_T)),  χ = (1 + 2·q_s)/5,  χ_T = 1.2</code>
    /// Symbols: ρ' slip-layer thickness, mm; χ relative stress gradient, 1/mm (the standard takes it so for all modules); q_s
    /// notch parameter.<br/>
    /// Source: ISO 6336-3, relative notch sensitivity factor, method B, endurance.<br/>
    /// Valid for: q_s ≥ 1. Not homogeneous: the root is taken of a pure number by the fixed unit of χ.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double NotchSensitivity(double notchParameter, double slipLayer) =>
        (1 + Math.Sqrt(Guard.Positive(slipLayer, "the slip-layer thickness") * (1 + 2 * Notch(notchParameter)) / 5))
        / (1 + Math.Sqrt(slipLayer * 1.2));

    /// <summary>The same when the steel's slip layer is unknown.</summary>
    /// <remarks>
    /// <code>1 for q_s ≥ 1.5, 0.95 below</code>
    /// Source: ISO 6336-3, relative notch sensitivity factor, method C.<br/>
    /// Valid for: endurance.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double NotchSensitivitySimplified(double notchParameter) => Notch(notchParameter) >= 1.5 ? 1 : 0.95;

    /// <summary>Relative notch sensitivity factor Y_δrelT for static strength.</summary>
    /// <remarks>
    /// <code>
    /// St: (1 + 0.93·(Y_S − 1)·⁴√(200/σ_S)) / (1 + 0.93·⁴√(200/σ_S))
    /// V:  (1 + 0.82·(Y_S − 1)·⁴√(300/σ_0.2)) / (1 + 0.82·⁴√(300/σ_0.2))
    /// Eh, IF: 0.44·Y_S + 0.12;  nitrided, nitrocarburised: 0.20·Y_S + 0.60
    /// </code>
    /// Symbols: Y_S stress correction factor; σ_S yield point, σ_0.2 proof stress, MPa.<br/>
    /// Source: ISO 6336-3, relative notch sensitivity factor, method B, static (from memory). Each gives 1 at Y_S = 2, as of the
    /// test gear.<br/>
    /// Valid for: Y_S ≥ 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double NotchSensitivityStatic(MaterialClass material, double stressCorrection, double? yield)
    {
        var correction = stressCorrection >= 1 && double.IsFinite(stressCorrection)
            ? stressCorrection
            : throw Guard.Because($"the stress correction factor must be at least 1; it is {stressCorrection:0.###}");
        return material switch
        {
            MaterialClass.Normalised => ByYield(0.93, 200),
            MaterialClass.CarbonThroughHardened or MaterialClass.AlloyThroughHardened => ByYield(0.82, 300),
            MaterialClass.CaseHardened or MaterialClass.InductionHardened => 0.44 * correction + 0.12,
            _ => 0.20 * correction + 0.60,
        };

        double ByYield(double weight, double reference)
        {
            var asked = yield ?? throw Guard.Because(
                $"no static notch sensitivity: the yield strength of the steel is not stated");
            var root = weight * Math.Pow(reference / Guard.Positive(asked, "the yield strength"), 0.25);
            return (1 + root * (correction - 1)) / (1 + root);
        }
    }

    /// <summary>Relative surface factor Y_RrelT for endurance; for static strength it is 1.</summary>
    /// <remarks>
    /// <code>
    /// V, Eh, IF: 1.674 − 0.529·(Rz + 1)^0.1;  St: 5.306 − 4.203·(Rz + 1)^0.01;  nitrided: 4.299 − 3.259·(Rz + 1)^0.0058
    /// Rz &lt; 1 µm: 1.12, 1.07, 1.025
    /// </code>
    /// Symbols: Rz mean peak-to-valley roughness of the fillet, µm (not homogeneous).<br/>
    /// Source: ISO 6336-3, relative surface factor, method B.<br/>
    /// Valid for: Rz ≤ 40 µm, no scratches deeper than 2·Rz.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Surface(MaterialClass material, double roughnessMicrometres)
    {
        if (!(roughnessMicrometres is > 0 and <= 40))
        {
            throw Guard.Because(
                $"no surface factor: the roughness Rz of the root must lie above 0 and up to 40 µm; it is {roughnessMicrometres:0.###} µm");
        }

        var (level, fall, exponent, smooth) = material switch
        {
            MaterialClass.Normalised => (5.306, 4.203, 0.01, 1.07),
            MaterialClass.CarbonThroughHardened or MaterialClass.AlloyThroughHardened
                or MaterialClass.CaseHardened or MaterialClass.InductionHardened => (1.674, 0.529, 0.1, 1.12),
            _ => (4.299, 3.259, 0.0058, 1.025),
        };
        return roughnessMicrometres < 1 ? smooth : level - fall * Math.Pow(roughnessMicrometres + 1, exponent);
    }

    /// <summary>Size factor Y_X for endurance; for static strength it is 1.</summary>
    /// <remarks>
    /// <code>m_n ≤ 5: 1;  St, V: 1.03 − 0.006·m_n, at least 0.85;  surface hardened: 1.05 − 0.01·m_n, at least 0.80</code>
    /// Symbols: m_n normal module, mm (not homogeneous).<br/>
    /// Source: ISO 6336-3, size factor.<br/>
    /// Valid for: steels of ISO 6336-5.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Size(MaterialClass material, double normalModule) =>
        (material, Guard.Positive(normalModule, "the normal module")) switch
        {
            (_, <= 5) => 1,
            (MaterialClass.Normalised or MaterialClass.CarbonThroughHardened or MaterialClass.AlloyThroughHardened, _) =>
                Math.Max(0.85, 1.03 - 0.006 * normalModule),
            _ => Math.Max(0.80, 1.05 - 0.01 * normalModule),
        };

    /// <summary>Stress ratio R of a root that is bent both ways.</summary>
    /// <remarks>
    /// <code>R = −1.2 · (load per width of the weaker side)/(that of the stronger side)</code>
    /// Source: ISO 6336-3, annex on mean stress: the root in compression sees a fifth more than its tension.<br/>
    /// Valid for: a quotient from 0 (one side never loaded) to 1 (planet or idler).
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double StressRatio(double weakerOverStronger) =>
        weakerOverStronger is >= 0 and <= 1
            ? -1.2 * weakerOverStronger
            : throw Guard.Because(
                $"the load of the weaker side over that of the stronger must lie from 0 to 1; it is {weakerOverStronger:0.###}");

    /// <summary>M: how much the mean stress changes the endurable amplitude.</summary>
    /// <remarks>
    /// <code>
    ///                      endurance        static
    /// Eh                   0.8 − 0.15·Y_S   0.7
    /// Eh, shot peened      0.4              0.6
    /// nitrided             0.3              0.3
    /// IF                   0.4              0.6
    /// St, V                0.3              0.5
    /// </code>
    /// Symbols: Y_S stress correction factor.<br/>
    /// Source: ISO 6336-3, annex on mean stress (from memory).<br/>
    /// Valid for: Y_S from 1 to 5; shot peening controlled and recorded, case-hardened steel only: others do not change by it.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MeanStressRatio(
        MaterialClass material, double stressCorrection, bool shotPeened, bool staticStrength)
    {
        Guard.Positive(stressCorrection, "the stress correction factor Y_S");
        return material switch
        {
            MaterialClass.CaseHardened when shotPeened => staticStrength ? 0.6 : 0.4,
            MaterialClass.CaseHardened when staticStrength => 0.7,
            MaterialClass.CaseHardened => stressCorrection is >= 1 and <= 5
                ? 0.8 - 0.15 * stressCorrection
                : throw Guard.Because($"no mean stress factor: Y_S must lie from 1 to 5; it is {stressCorrection:0.###}"),
            MaterialClass.InductionHardened => staticStrength ? 0.6 : 0.4,
            MaterialClass.NitridingSteelNitrided or MaterialClass.ThroughHardeningSteelNitrided
                or MaterialClass.Nitrocarburised => 0.3,
            _ => staticStrength ? 0.5 : 0.3,
        };
    }

    /// <summary>Mean stress factor Y_M of a root that is bent both ways.</summary>
    /// <remarks>
    /// <code>Y_M = 1 / ( 1 − R·(1 − M)/(1 + M) )</code>
    /// Symbols: R stress ratio, least over greatest stress; M by <see cref="MeanStressRatio"/>.<br/>
    /// Source: ISO 6336-3, annex on mean stress. With pulsating load, R = 0, it is 1. The rough value for idlers is 0.7.<br/>
    /// Valid for: −1.2 ≤ R ≤ 0.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MeanStress(double stressRatio, double meanStressRatio) =>
        stressRatio is >= -1.2 and <= 0 && meanStressRatio is >= 0 and <= 1
            ? 1 / (1 - stressRatio * (1 - meanStressRatio) / (1 + meanStressRatio))
            : throw Guard.Because(
                $"no mean stress factor: R must lie from −1.2 to 0 and M from 0 to 1; they are {stressRatio:0.###} and {meanStressRatio:0.###}");

    private static double Notch(double notchParameter) =>
        notchParameter >= 1 && double.IsFinite(notchParameter)
            ? notchParameter
            : throw Guard.Because($"the notch parameter q_s must be at least 1; it is {notchParameter:0.###}");

    private static (string Material, double Yield, double Thickness)[] ReadSlipLayers()
    {
        var found = new List<(string Material, double Yield, double Thickness)>(12);
        var rows = StandardTable.Read(SlipLayerTable).Rows();
        while (rows.NextRow())
        {
            found.Add((rows.NextField().ToString(), rows.NextNumber(), rows.NextNumber()));
        }

        return [.. found];
    }
}
