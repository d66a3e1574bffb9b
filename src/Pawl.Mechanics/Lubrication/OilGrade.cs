using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Lubrication;

/// <summary>A viscosity grade of ISO 3448.</summary>
/// <param name="Number">The number behind <c>ISO VG</c>.</param>
/// <param name="MidPoint">Kinematic viscosity at 40 °C in the middle of the grade, mm²/s.</param>
/// <remarks>Source: ISO 3448; table <c>iso3448-viscosity-grades</c>.</remarks>
public sealed record OilGrade(int Number, double MidPoint)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "iso3448-viscosity-grades";

    /// <summary>A grade reaches this share to both sides of its middle.</summary>
    public const double Share = 0.1;

    private static ImmutableArray<OilGrade> _all;

    /// <summary>All grades, thinnest first.</summary>
    public static ImmutableArray<OilGrade> All => _all.IsDefault ? _all = Read() : _all;

    /// <summary>Least kinematic viscosity at 40 °C, mm²/s.</summary>
    public double Min => Guard.Positive(MidPoint, "the viscosity at 40 °C", "mm²/s") * (1 - Share);

    /// <summary>Greatest kinematic viscosity at 40 °C, mm²/s.</summary>
    public double Max => Guard.Positive(MidPoint, "the viscosity at 40 °C", "mm²/s") * (1 + Share);

    /// <summary>The grade of a number, or the reason why there is none.</summary>
    public static bool TryFind(int number, [NotNullWhen(true)] out OilGrade? grade, [NotNullWhen(false)] out string? reason)
    {
        foreach (var candidate in All)
        {
            if (candidate.Number == number)
            {
                (grade, reason) = (candidate, null);
                return true;
            }
        }

        grade = null;
        reason = FormattableString.Invariant(
            $"ISO 3448 has no grade {number}; its grades are {string.Join(", ", All.Select(known => known.Number))}");
        return false;
    }

    /// <summary>The grade that a viscosity at 40 °C lies in, or none: the grades leave gaps.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static OilGrade? Of(double viscosity40)
    {
        Guard.Positive(viscosity40, "the viscosity at 40 °C");
        return All.FirstOrDefault(grade => viscosity40 >= grade.Min && viscosity40 <= grade.Max);
    }

    private static ImmutableArray<OilGrade> Read()
    {
        var grades = ImmutableArray.CreateBuilder<OilGrade>(20);
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
            grades.Add(new OilGrade((int)rows.NextNumber(), rows.NextNumber()));
        return grades.ToImmutable();
    }
}
