using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Assembly;

/// <summary>Permissible residual unbalance of a rigid rotor by its balance quality grade.</summary>
/// <remarks>Source: ISO 21940-11 (before: ISO 1940-1); grades of its table 1: <c>iso21940-11-grades</c>.</remarks>
public static class RotorBalance
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "iso21940-11-grades";

    private static ImmutableArray<(double Grade, string Rotors)> _grades;

    /// <summary>Grade G that the standard recommends for gears, mm/s.</summary>
    /// <remarks>
    /// Source: as the class, from memory.<br/>
    /// Valid for: gears and machinery in general.
    /// </remarks>
    public static double GradeOfGears()
    {
        foreach (var (grade, rotors) in _grades.IsDefault ? _grades = Read() : _grades)
        {
            if (rotors.Split("; ").Contains("gears"))
                return grade;
        }

        throw Guard.Because($"the table has no grade of gears");
    }

    /// <summary>Permissible residual specific unbalance e_per, mm: distance of the centre of mass from the axis of rotation.</summary>
    /// <param name="gradeInMillimetresPerSecond">Grade G: e_per·ω, mm/s.</param>
    /// <param name="speed">Maximum service speed ω, rad/s, of either sense.</param>
    /// <remarks>
    /// <code>e_per = G/ω</code>
    /// Symbols: G balance quality grade, mm/s; ω angular speed, rad/s.<br/>
    /// Source: as the class.<br/>
    /// Valid for: a rotor that turns and is rigid up to its service speed.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double PermittedEccentricity(double gradeInMillimetresPerSecond, double speed) =>
        Guard.Finite(
            Guard.Positive(gradeInMillimetresPerSecond, "the balance quality grade", "mm/s")
                / Guard.Positive(Math.Abs(speed), "the speed of the rotor", "rad/s"),
            "the permissible eccentricity");

    /// <summary>Specific unbalance of a rotor with one part off centre, mm.</summary>
    /// <param name="residual">Eccentricity e_0 of the rotor with all parts centred, mm.</param>
    /// <param name="offCentre">Eccentricity e_c of the part, mm.</param>
    /// <param name="share">Mass of the part over that of the rotor with it, 1 when all of it moves.</param>
    /// <remarks>
    /// <code>e = e_0 + (m_c/m)·e_c</code>
    /// Symbols: m mass of the rotor, m_c mass of the part in it.<br/>
    /// Source: centre of mass of two masses, both off to the same side.<br/>
    /// Valid for: 0 &lt; m_c/m ≤ 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Eccentricity(double residual, double offCentre, double share) =>
        Guard.NotNegative(residual, "the eccentricity of the mass", "mm")
        + Guard.NotNegative(offCentre, "the eccentricity of the part", "mm") * (share <= 1
            ? Guard.Positive(share, "the share of the mass")
            : throw Guard.Because($"a part cannot be heavier than the body that it belongs to: its share of the mass is {share:0.###}"));

    /// <summary>Force of an unbalance, N, that turns with the rotor.</summary>
    /// <remarks>
    /// <code>F = m·e·ω²</code>
    /// Symbols: m mass, t; e eccentricity of the centre of mass, mm; ω speed, rad/s.<br/>
    /// Source: centrifugal force of a mass point.<br/>
    /// Valid for: rigid rotors well below their critical speed.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Force(double mass, double eccentricity, double speed) =>
        Guard.Finite(
            Guard.Positive(mass, "the mass of the rotor", "t") * Guard.NotNegative(eccentricity, "the eccentricity of the mass", "mm") * (speed * speed),
            "the force of the unbalance");

    private static ImmutableArray<(double, string)> Read()
    {
        var read = ImmutableArray.CreateBuilder<(double, string)>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            var grade = rows.NextNumber();
            read.Add((grade, rows.NextField().ToString()));
        }

        return read.ToImmutable();
    }
}
