using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Seals;

/// <summary>The sizes of O-rings that ship inside the tool.</summary>
/// <remarks>Source: AS568, ISO 3601-1; table <c>as568-o-rings</c>.</remarks>
public static class ORingTable
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "as568-o-rings";

    private static ImmutableArray<ORing> _all;

    /// <summary>All sizes in order of their dash numbers.</summary>
    public static ImmutableArray<ORing> All => _all.IsDefault ? _all = Read() : _all;

    /// <summary>The size of a dash number, written <c>-113</c>, <c>113</c> or <c>AS568-113</c>; or the reason why there is none.</summary>
    public static bool TryFind(string dash, [NotNullWhen(true)] out ORing? ring, [NotNullWhen(false)] out string? reason)
    {
        var number = dash.AsSpan().Trim();
        if (number.StartsWith("AS568", StringComparison.OrdinalIgnoreCase))
            number = number[5..];
        number = number.TrimStart('-');
        foreach (var candidate in All)
        {
            if (number.SequenceEqual(candidate.Dash.AsSpan(1)))
            {
                (ring, reason) = (candidate, null);
                return true;
            }
        }

        ring = null;
        reason = $"the table has no O-ring `{dash}`; it holds -004 to -050, -102 to -158, -201 to -258 and -309 to -349: state the diameters instead";
        return false;
    }

    /// <summary>The sizes nearest to an inside diameter and a cord, nearest first.</summary>
    /// <remarks>
    /// <code>distance = |d₁ − d₁'|/2 + |d₂ − d₂'|</code>
    /// Symbols: d₁ inside diameter, d₂ cord, mm; ' as required. An inside diameter is at home in either radius, a cord across.<br/>
    /// Source: a choice of this tool; equal distances keep the order of the table.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ImmutableArray<ORing> Nearest(double insideDiameter, double cord, int count = 1)
    {
        Guard.Positive(insideDiameter, "the inside diameter");
        Guard.Positive(cord, "the cord");
        var rings = All.ToArray();
        var distances = Array.ConvertAll(
            rings, ring => Math.Abs(ring.InsideDiameter - insideDiameter) / 2 + Math.Abs(ring.Cord - cord));
        var order = Enumerable.Range(0, rings.Length).OrderBy(index => distances[index]).ThenBy(index => index);
        return [.. order.Take(count).Select(index => rings[index])];
    }

    private static ImmutableArray<ORing> Read()
    {
        var rings = ImmutableArray.CreateBuilder<ORing>(210);
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            var dash = rows.NextField().ToString();
            rings.Add(new ORing(
                dash,
                rows.NextNumber() * ORing.Inch,
                rows.NextNumber() * ORing.Inch,
                rows.NextNumber() * ORing.Inch,
                rows.NextNumber() * ORing.Inch));
        }

        return rings.ToImmutable();
    }
}
