using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Fits;

/// <summary>General tolerances for lengths without a tolerance of their own, classes f, m, c and v.</summary>
/// <remarks>Source: ISO 2768-1:1989; table <c>iso2768-1-linear</c>.</remarks>
public static class GeneralTolerance
{
    /// <summary>The id of the table of linear dimensions.</summary>
    public const string LinearTable = "iso2768-1-linear";

    private const string Classes = "fmcv";

    private static double[]? _linear;

    /// <summary>Permissible deviation ± of a linear dimension, mm, or the reason why there is none.</summary>
    /// <remarks>Valid for: 0.5 ≤ D ≤ 4000 mm, except broken edges (outer radii, chamfers), which have a table of their own.</remarks>
    public static bool TryLinear(
        string toleranceClass, double nominalMillimetres, out double millimetres, [NotNullWhen(false)] out string? reason)
    {
        if (nominalMillimetres is > 0 and < 0.5)
        {
            millimetres = 0;
            reason = FormattableString.Invariant(
                $"ISO 2768-1 sets none below 0.5 mm: the deviation stands beside the size; the size is {nominalMillimetres:0.####} mm");
            return false;
        }

        return TryFind(
            _linear ??= Read(LinearTable), "size", toleranceClass, nominalMillimetres, out millimetres, out reason);
    }

    private static bool TryFind(
        double[] table, string what, string toleranceClass, double length, out double value, [NotNullWhen(false)] out string? reason)
    {
        value = 0;
        var column = toleranceClass is { Length: 1 } ? Classes.IndexOf(toleranceClass[0], StringComparison.Ordinal) : -1;
        if (column < 0)
        {
            reason = $"ISO 2768-1 has the classes f, m, c and v; `{toleranceClass}` is none of them";
            return false;
        }

        var width = Classes.Length + 1;
        for (var row = 0; length > 0 && double.IsFinite(length) && row < table.Length; row += width)
        {
            if (length <= table[row])
            {
                value = table[row + 1 + column];
                if (double.IsNaN(value))
                {
                    break;
                }

                reason = null;
                return true;
            }
        }

        value = 0;
        reason = FormattableString.Invariant(
            $"ISO 2768-1 sets none in class {toleranceClass} for a {what} of {length:0.####} mm");
        return false;
    }

    private static double[] Read(string id)
    {
        var values = new List<double>(48);
        var rows = StandardTable.Read(id).Rows();
        while (rows.NextRow())
        {
            rows.NextField();
            var upTo = rows.NextNumber();
            values.Add(double.IsNaN(upTo) ? double.PositiveInfinity : upTo);
            for (var column = 0; column < Classes.Length; column++)
            {
                values.Add(rows.NextNumber());
            }
        }

        return [.. values];
    }
}
