using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Splines;

/// <summary>Allowable stresses of a spline, MPa, for an application, distribution and life factor of 1.</summary>
/// <param name="Shear">Shear of teeth and shaft.</param>
/// <param name="StraightPressure">Pressure on straight flanks that rock.</param>
/// <param name="CrownedPressure">Pressure on crowned flanks.</param>
/// <param name="Tension">Tension of a sleeve.</param>
public sealed record SplineAllowables(double Shear, double StraightPressure, double CrownedPressure, double Tension);

/// <summary>Factors and allowable stresses of flexible splines of steel.</summary>
/// <remarks>
/// Source: Dudley, When Splines Need Stress Control, Product Engineering 1957, as textbooks and handbooks reprint it. Allowable is
/// <c>stress·K_a·K_m ≤ allowable·L</c> with the life factor of fatigue, for the pressure on flanks that rock that of wear; flanks that do
/// not move stand nine times the fatigue factor (from memory, to be used with care).
/// </remarks>
public static class SplineFactors
{
    /// <summary>The id of the table of allowable stresses.</summary>
    public const string AllowablesTableId = "spline-allowable-stresses";

    /// <summary>The id of the table of life factors.</summary>
    public const string LifeTableId = "spline-life";

    /// <summary>The id of the table of wear factors.</summary>
    public const string WearTableId = "spline-wear";

    /// <summary>The id of the table of misalignments.</summary>
    public const string MisalignmentTableId = "spline-misalignment";

    /// <summary>MPa of a ksi.</summary>
    private const double Ksi = 6.894757;

    /// <summary>How many times the fatigue factor the pressure on flanks that do not move may have. Source: as the class.</summary>
    public const double FixedPressure = 9;

    private static readonly double[] Lengths = [0.5 * 25.4, 25.4, 2 * 25.4, 4 * 25.4];

    private static ImmutableArray<ImmutableArray<double>> _life;
    private static ImmutableArray<ImmutableArray<double>> _wear;
    private static ImmutableArray<ImmutableArray<double>> _misalignment;
    private static ImmutableArray<(bool Hard, double From, double To, SplineAllowables Stresses)> _allowables;

    /// <summary>Allowable stresses of a tempered steel by its Brinell hardness.</summary>
    /// <remarks>
    /// Source: as the class; table <c>spline-allowable-stresses</c>.<br/>
    /// Valid for: 160 HB to 351 HB; between two rows the softer counts.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static SplineAllowables OfTempered(double brinell) => Find(false, brinell, "HB");

    /// <summary>Allowable stresses of a steel with hard flanks by their Rockwell hardness.</summary>
    /// <remarks>
    /// Source: as the class; table <c>spline-allowable-stresses</c>.<br/>
    /// Valid for: 48 HRC to 63 HRC; between two rows the softer counts.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static SplineAllowables OfHard(double rockwell) => Find(true, rockwell, "HRC");

    /// <summary>Life factor of fatigue.</summary>
    /// <param name="cycles">Starts and stops of the torque.</param>
    /// <param name="reversed">Whether the torque changes its sign.</param>
    /// <remarks>Source: as the class; table <c>spline-life</c>, straight in logarithms. Valid for: up to 10⁷.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Life(double cycles, bool reversed) => LogLog(
        _life.IsDefault ? _life = NumberTable.Read(LifeTableId, 3) : _life, cycles, reversed ? 2 : 1, "starts and stops of the torque");

    /// <summary>Life factor of wear of flanks that rock.</summary>
    /// <param name="turns">Turns of the spline while it is out of line.</param>
    /// <remarks>Source: as the class; table <c>spline-wear</c>, straight in logarithms. Valid for: up to 10¹⁰.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Wear(double turns) =>
        LogLog(_wear.IsDefault ? _wear = NumberTable.Read(WearTableId, 2) : _wear, turns, 1, "turns");

    /// <summary>Load distribution factor K_m of flanks out of line.</summary>
    /// <param name="misalignment">Angle between the axes, mm per mm.</param>
    /// <param name="length">Length of the spline, mm.</param>
    /// <remarks>
    /// Source: as the class; table <c>spline-misalignment</c>, straight both ways, at its edge what the edge has.<br/>
    /// Valid for: up to 0.008 and 101.6 mm (4 in).
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Misalignment(double misalignment, double length)
    {
        var rows = _misalignment.IsDefault ? _misalignment = NumberTable.Read(MisalignmentTableId, 5) : _misalignment;
        if (!(misalignment >= 0 && misalignment <= rows[^1][0]) || !(length > 0 && length <= Lengths[^1]))
        {
            throw Guard.Because(
                $"the source covers misalignments up to {rows[^1][0]} and splines up to {Lengths[^1]:0.#} mm long; these are {misalignment:0.#####} and {length:0.#} mm");
        }

        var (place, along) = (Math.Max(misalignment, rows[0][0]), Math.Max(length, Lengths[0]));
        var column = 1;
        while (column < Lengths.Length - 1 && along > Lengths[column])
            column++;
        var (shorter, longer) = (NumberTable.At(rows, place, column), NumberTable.At(rows, place, column + 1));
        return shorter + (longer - shorter) * (along - Lengths[column - 1]) / (Lengths[column] - Lengths[column - 1]);
    }

    private static double LogLog(ImmutableArray<ImmutableArray<double>> rows, double value, int column, string what)
    {
        if (!(value >= 0 && value <= rows[^1][0]))
            throw Guard.Because($"the source covers up to {rows[^1][0]:0.####E+0} {what}; there are {value:0.####E+0}");

        var upper = 1;
        while (upper < rows.Length - 1 && rows[upper][0] < value)
            upper++;
        var (below, above) = (rows[upper - 1], rows[upper]);
        var share = Math.Log(Math.Max(value, below[0]) / below[0]) / Math.Log(above[0] / below[0]);
        return below[column] * Math.Pow(above[column] / below[column], share);
    }

    private static SplineAllowables Find(bool hard, double hardness, string scale)
    {
        var rows = (_allowables.IsDefault ? _allowables = ReadAllowables() : _allowables).Where(row => row.Hard == hard).ToArray();
        if (!(hardness >= rows[0].From && hardness <= rows[^1].To))
            throw Guard.Because($"the source covers {rows[0].From} {scale} to {rows[^1].To} {scale}; this is {hardness:0.#} {scale}");

        return rows.Last(row => row.From <= hardness).Stresses;
    }

    private static ImmutableArray<(bool Hard, double From, double To, SplineAllowables Stresses)> ReadAllowables()
    {
        var read = ImmutableArray.CreateBuilder<(bool, double, double, SplineAllowables)>();
        var rows = StandardTable.Read(AllowablesTableId).Rows();
        while (rows.NextRow())
        {
            var hard = rows.NextField() is "hard";
            var (from, to) = (rows.NextNumber(), rows.NextNumber());
            read.Add((hard, from, to, new(
                rows.NextNumber() * Ksi, rows.NextNumber() * Ksi, rows.NextNumber() * Ksi, rows.NextNumber() * Ksi)));
        }

        return read.ToImmutable();
    }
}
