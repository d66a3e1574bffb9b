using Pawl.Mechanics.Tables;
namespace Pawl.Mechanics.Bearings;

/// <summary>How long a bearing lives before its raceways tire.</summary>
/// <remarks>
/// A life is a number of revolutions that a share of many equal bearings reaches; it promises nothing about one of them.
/// </remarks>
public static class RatingLife
{
    /// <summary>The id of the table of a₁.</summary>
    public const string ReliabilityTableId = "iso281-reliability";

    private static ImmutableArray<ImmutableArray<double>> _reliabilities;

    /// <summary>Exponent p of the life, 1: 3 for balls, 10/3 for rollers.</summary>
    /// <remarks>Source: ISO 281:2007, basic rating life.</remarks>
    public static double Exponent(BearingType type) => type.IsBall ? 3 : 10.0 / 3;

    /// <summary>Basic rating life L₁₀, revolutions.</summary>
    /// <remarks>
    /// <code>L₁₀ = (C/P)^p · 10⁶</code>
    /// Symbols: C basic dynamic load rating, P equivalent dynamic load, N; p 3 for balls, 10/3 for rollers.<br/>
    /// Source: ISO 281:2007, basic rating life.<br/>
    /// Valid for: P up to C/2, for balls also up to C₀; a reliability of 90 %.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Basic(BearingType type, double dynamicRating, double equivalentLoad) =>
        1e6 * Math.Pow(
            Guard.Positive(dynamicRating, "the basic dynamic load rating") / Guard.Positive(equivalentLoad, "the equivalent load"),
            Exponent(type));

    /// <summary>Life in s of a life in revolutions at a speed of one ring against the other, rad/s.</summary>
    /// <remarks>
    /// <code>t = 2·π·L/|ω|</code>
    /// Symbols: L life, revolutions; ω relative speed of the rings, rad/s.<br/>
    /// Source: definition.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Duration(double revolutions, double relativeSpeed) =>
        2 * Math.PI * Guard.Positive(revolutions, "the life")
        / Math.Abs(Guard.NotZero(relativeSpeed, "the speed of one ring against the other"));

    /// <summary>Factor a₁ for a reliability, 1.</summary>
    /// <param name="reliability">Share of bearings that reach the life, 0.9 to 0.9995.</param>
    /// <remarks>
    /// Source: ISO 281:2007; table <c>iso281-reliability</c>. Valid for: the reliabilities of the table, none between.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ReliabilityFactor(double reliability)
    {
        var rows = _reliabilities.IsDefault ? _reliabilities = NumberTable.Read(ReliabilityTableId, 2) : _reliabilities;
        foreach (var row in rows)
        {
            if (Math.Abs(row[0] / 100 - reliability) < 1e-7)
                return row[1];
        }

        var known = string.Join(" %, ", rows.Select(row => row[0]));
        throw Guard.Because($"there is no factor for a reliability of {reliability * 100:0.####} %; there are those of {known} %");
    }

    /// <summary>Modified rating life L_nm, in the unit of L₁₀.</summary>
    /// <remarks>
    /// <code>L_nm = a₁·a_ISO·L₁₀</code>
    /// Symbols: a₁ factor for reliability, a_ISO life modification factor, 1; L₁₀ basic rating life.<br/>
    /// Source: ISO 281:2007, modified rating life.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Modified(double basicLife, double reliabilityFactor, double modificationFactor) =>
        Guard.Positive(basicLife, "the basic rating life")
        * Guard.Positive(reliabilityFactor, "the factor for reliability")
        * Guard.Positive(modificationFactor, "the life modification factor");
}
