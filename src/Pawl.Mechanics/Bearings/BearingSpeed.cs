using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Bearings;

/// <summary>What speed does to a rolling bearing.</summary>
public static class BearingSpeed
{
    /// <summary>The id of the table of guides.</summary>
    public const string TableId = "bearing-speed-guides";

    private static ImmutableArray<(string Kind, string Lubrication, Interval Number)> _guides;

    /// <summary>Density of bearing steel, t/mm³; from memory.</summary>
    public const double SteelDensity = 7850e-12;

    /// <summary>Density of silicon nitride, t/mm³, within a hundredth; from memory.</summary>
    public const double SiliconNitrideDensity = 3250e-12;

    /// <summary>Mean diameter d_m = (d + D)/2, mm.</summary>
    /// <remarks>Source: common practice; it stands for the pitch diameter D_pw where that is not known.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MeanDiameter(double bore, double outside) =>
        outside > Guard.Positive(bore, "the bore") && double.IsFinite(outside)
            ? (bore + outside) / 2
            : throw Guard.Because($"the outside diameter must be above the bore; they are {outside:0.###} mm and {bore:0.###} mm");

    /// <summary>Speed number n·d_m, mm/min: the trade's number, not of the coherent set.</summary>
    /// <remarks>
    /// <code>n·d_m = |ω|·30/π·d_m</code>
    /// Symbols: ω speed of one ring against the other, rad/s; d_m mean diameter, mm.<br/>
    /// Source: common practice.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Number(double relativeSpeed, double meanDiameter) =>
        Math.Abs(Guard.Finite(relativeSpeed, "the speed")) * 30 / Math.PI * Guard.Positive(meanDiameter, "the mean diameter");

    /// <summary>
    /// Speed number that a kind of bearing bears under a lubrication, mm/min: the least and greatest that are told.
    /// </summary>
    /// <param name="kind">
    /// deep groove ball, angular contact ball, cylindrical roller, needle roller, tapered roller; full complement behind.
    /// </param>
    /// <param name="lubrication">grease, bath, jet, contact seals.</param>
    /// <remarks>
    /// Source: common practice, no source; table <c>bearing-speed-guides</c>. Valid for: a guide where the supplier states no
    /// speed.
    /// </remarks>
    public static Interval Guide(string kind, string lubrication)
    {
        var guides = _guides.IsDefault ? _guides = Read() : _guides;
        foreach (var guide in guides)
        {
            if (guide.Kind == kind && guide.Lubrication == lubrication)
                return guide.Number;
        }

        throw Guard.Because($"there is no guide to the speed of a {kind} bearing with {lubrication}");
    }

    /// <summary>Speed of the cage, rad/s, against the frame in which the speeds of the rings are told.</summary>
    /// <remarks>
    /// <code>ω_c = ω_i·(1 − γ)/2 + ω_o·(1 + γ)/2</code>
    /// Symbols: ω_i, ω_o speeds of inner and outer ring, rad/s, with sign; γ = D_w·cos α/D_pw.<br/>
    /// Source: rolling without slip.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Cage(double inner, double outer, double ratio) =>
        ratio is >= 0 and < 1
            ? Guard.Finite((inner * (1 - ratio) + outer * (1 + ratio)) / 2, "the speed of the cage")
            : throw Guard.Because($"γ must lie from 0 to below 1; it is {ratio:0.####}");

    /// <summary>Mass of a ball, t.</summary>
    /// <remarks>
    /// <code>m = ρ·π·D_w³/6</code>
    /// Symbols: ρ density, t/mm³; D_w ball diameter, mm.<br/>
    /// Source: volume of a sphere.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double BallMass(double diameter, double density) =>
        Guard.Positive(density, "the density") * Math.PI * Math.Pow(Guard.Positive(diameter, "the ball diameter"), 3) / 6;

    /// <summary>Centrifugal force of a rolling element on the outer race, N.</summary>
    /// <remarks>
    /// <code>F_c = m·(D_pw/2)·ω_c²</code>
    /// Symbols: m mass, t; D_pw pitch diameter, mm; ω_c speed of the cage, rad/s.<br/>
    /// Source: mechanics.<br/>
    /// Valid for: a bearing whose own axis stands still.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Centrifugal(double mass, double pitchDiameter, double cageSpeed) =>
        Guard.Positive(mass, "the mass") * Guard.Positive(pitchDiameter, "the pitch diameter") / 2
        * Guard.Finite(cageSpeed * cageSpeed, "the speed of the cage");

    private static ImmutableArray<(string Kind, string Lubrication, Interval Number)> Read()
    {
        var read = ImmutableArray.CreateBuilder<(string Kind, string Lubrication, Interval Number)>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
            read.Add((rows.NextField().ToString(), rows.NextField().ToString(), new(rows.NextNumber(), rows.NextNumber())));
        return read.ToImmutable();
    }
}
