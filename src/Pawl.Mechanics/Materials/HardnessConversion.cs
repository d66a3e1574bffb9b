using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Materials;

/// <summary>Hardness of steel from scale to scale, and the tensile strength that goes with it.</summary>
/// <remarks>
/// <code>straight between the rows of the table iso18265-hardness; nothing outside it</code>
/// Symbols: HV Vickers, HBW Brinell with a carbide ball, HRC Rockwell C, R_m tensile strength, MPa.<br/>
/// Source: ISO 18265, table A.1.<br/>
/// Valid for: unalloyed and low-alloy steel; HV 80 to 940, HRC 20.3 to 68, HBW 76 to 618, R_m 250 to 2180 MPa. A converted value
/// stands for the mean of a scatter, and is no substitute for a measurement in the scale of the drawing.
/// </remarks>
public static class HardnessConversion
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "iso18265-hardness";

    private const int Vickers = 0;
    private const int Brinell = 1;
    private const int Rockwell = 2;
    private const int Strength = 3;

    private static readonly string[] Names = ["HV", "HBW", "HRC", "tensile strength"];

    private static double[][]? _rows;

    /// <summary>Vickers hardness of a Rockwell C hardness.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double VickersOfRockwell(double rockwell) => Convert(Rockwell, Vickers, rockwell);

    /// <summary>Vickers hardness of a Brinell hardness.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double VickersOfBrinell(double brinell) => Convert(Brinell, Vickers, brinell);

    /// <summary>Rockwell C hardness of a Vickers hardness.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RockwellOfVickers(double vickers) => Convert(Vickers, Rockwell, vickers);

    /// <summary>Brinell hardness of a Vickers hardness.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double BrinellOfVickers(double vickers) => Convert(Vickers, Brinell, vickers);

    /// <summary>Tensile strength of a Vickers hardness, MPa.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TensileStrength(double vickers) => Convert(Vickers, Strength, vickers);

    private static double Convert(int from, int to, double value)
    {
        var rows = Rows();
        double[]? below = null;
        foreach (var row in rows)
        {
            if (double.IsNaN(row[from]) || double.IsNaN(row[to]))
                continue;
            if (row[from] >= value)
            {
                return row[from] == value ? row[to]
                    : below is not null ? below[to] + ((row[to] - below[to]) * (value - below[from]) / (row[from] - below[from]))
                    : throw Outside(rows, from, to, value);
            }

            below = row;
        }

        throw Outside(rows, from, to, value);
    }

    private static OutsideValidityException Outside(double[][] rows, int from, int to, double value)
    {
        var covered = Array.FindAll(rows, row => !double.IsNaN(row[from]) && !double.IsNaN(row[to]));
        return Guard.Because(
            $"{value:0.#} {Names[from]} has no {Names[to]}: ISO 18265 converts {covered[0][from]:0.#} to {covered[^1][from]:0.#} {Names[from]}");
    }

    // Two threads may both read it at first; they read the same.
    private static double[][] Rows()
    {
        if (_rows is { } kept)
            return kept;

        var read = new List<double[]>(96);
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
            read.Add([rows.NextNumber(), rows.NextNumber(), rows.NextNumber(), rows.NextNumber()]);
        return _rows = [.. read];
    }
}
