using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Lubrication;

/// <summary>What a rolling bearing loses, a first estimate.</summary>
/// <remarks>Source: table <c>bearing-friction</c>.</remarks>
public static class BearingFriction
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "bearing-friction";

    private static ImmutableArray<(string Kind, double Coefficient)> _rows;

    /// <summary>Coefficient of friction μ of a kind of bearing, 1, or the reason why there is none.</summary>
    public static bool TryCoefficient(string kind, out double coefficient, [NotNullWhen(false)] out string? reason)
    {
        var rows = _rows.IsDefault ? _rows = Read() : _rows;
        foreach (var row in rows)
        {
            if (row.Kind == kind)
            {
                (coefficient, reason) = (row.Coefficient, null);
                return true;
            }
        }

        coefficient = 0;
        reason = $"there is no coefficient of friction of a bearing `{kind}`; there are those of {string.Join(", ", rows.Select(row => row.Kind))}";
        return false;
    }

    /// <summary>Torque of friction M, N·mm.</summary>
    /// <remarks>
    /// <code>M = μ · P · d / 2</code>
    /// Symbols: μ coefficient of friction, 1; P load on the bearing, N; d bore, mm.<br/>
    /// Source: textbooks of machine design.<br/>
    /// Valid for: loads of about a tenth of the dynamic rating, good lubrication, medium speed, no rubbing seals. Where the load is
    /// light, the oil drags more than this says.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Torque(double coefficient, double load, double bore) =>
        Guard.Positive(coefficient, "the coefficient of friction") * Guard.Positive(bore, "the bore") / 2
        * (load >= 0 && double.IsFinite(load) ? load : throw Guard.Because($"the load must not be below zero; it is {load:0.###} N"));

    /// <summary>Power lost P_V, N·mm/s (1 mW).</summary>
    /// <remarks>
    /// <code>P_V = M · |ω|</code>
    /// Symbols: M torque of friction, N·mm; ω speed of one ring against the other, rad/s.<br/>
    /// Source: definition.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Loss(double torque, double relativeSpeed) =>
        Guard.NotNegative(torque, "the torque of friction", "N·mm") * Math.Abs(Guard.Number(relativeSpeed, "the speed", "rad/s"));

    private static ImmutableArray<(string Kind, double Coefficient)> Read()
    {
        var read = ImmutableArray.CreateBuilder<(string Kind, double Coefficient)>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
            read.Add((rows.NextField().ToString(), rows.NextNumber()));
        return read.ToImmutable();
    }
}
