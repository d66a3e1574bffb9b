using Pawl.Mechanics.Tables;
namespace Pawl.Mechanics.Bearings;

/// <summary>How a raceway of rollers is made, by which its rating goes.</summary>
public enum RollerMake
{
    /// <summary>Machined rings: cylindrical, tapered and needle roller bearings.</summary>
    Machined,

    /// <summary>Needles in a drawn cup.</summary>
    DrawnCup,
}

/// <summary>Balls of a bearing and their circle.</summary>
/// <param name="Type">Kind, contact angle, rows.</param>
/// <param name="Count">Balls Z in one row.</param>
/// <param name="Diameter">Ball diameter D_w, mm.</param>
/// <param name="PitchDiameter">Diameter D_pw of the circle of their centres, mm.</param>
public sealed record BallSet(BearingType Type, int Count, double Diameter, double PitchDiameter)
{
    /// <summary>γ = D_w·cos α/D_pw, 1.</summary>
    public double Ratio => Internal.Ratio(Type, Count, Diameter, PitchDiameter, ball: true);
}

/// <summary>Rollers of a bearing and their circle.</summary>
/// <param name="Type">Kind, contact angle, rows.</param>
/// <param name="Count">Rollers Z in one row.</param>
/// <param name="Diameter">Roller diameter D_we, mm.</param>
/// <param name="Length">Effective length L_we, without corners, mm.</param>
/// <param name="PitchDiameter">Diameter D_pw of the circle of their centres, mm.</param>
public sealed record RollerSet(BearingType Type, int Count, double Diameter, double Length, double PitchDiameter)
{
    /// <summary>γ = D_we·cos α/D_pw, 1.</summary>
    public double Ratio => Internal.Ratio(Type, Count, Diameter, PitchDiameter, ball: false);
}

/// <summary>Ratings from what is inside a bearing: a check of what its supplier states.</summary>
public static class InternalRating
{
    /// <summary>The id of the table of f_c.</summary>
    public const string BallTableId = "iso281-ball-rating-factors";

    /// <summary>The id of the table of f₀.</summary>
    public const string StaticBallTableId = "iso76-ball-factors";

    private static ImmutableArray<ImmutableArray<double>> _balls;
    private static ImmutableArray<ImmutableArray<double>> _static;

    /// <summary>Basic dynamic radial load rating C_r of a ball bearing, N.</summary>
    /// <remarks>
    /// <code>C_r = b_m·f_c·(i·cos α)^0.7·Z^(2/3)·D_w^1.8;  D_w &gt; 25.4: 3.647·D_w^1.4 for D_w^1.8</code>
    /// Symbols: b_m = 1.3; f_c by γ, double row deep groove 0.90/0.95 of the table; i rows; Z balls of a row; D_w ball diameter,
    /// mm.<br/>
    /// Source: ISO 281:2007, basic dynamic radial load rating; table <c>iso281-ball-rating-factors</c>.<br/>
    /// Valid for: γ from 0.05 to 0.40, groove radii of 0.52·D_w and 0.53·D_w at most, common bearing steel.
    /// </remarks>
    public static double Dynamic(BallSet balls)
    {
        var rows = _balls.IsDefault ? _balls = NumberTable.Read(BallTableId, 2) : _balls;
        var factor = Internal.At(rows, balls.Ratio, "f_c");
        if (balls.Type is { Kind: BearingKind.DeepGrooveBall, Rows: 2 })
            factor *= 0.90 / 0.95;

        var size = balls.Diameter <= 25.4 ? Math.Pow(balls.Diameter, 1.8) : 3.647 * Math.Pow(balls.Diameter, 1.4);
        return 1.3 * factor * Math.Pow(balls.Type.Rows * Math.Cos(balls.Type.ContactAngle), 0.7) * Math.Pow(balls.Count, 2.0 / 3) * size;
    }

    /// <summary>Basic dynamic radial load rating C_r of a roller bearing, N.</summary>
    /// <remarks>
    /// <code>C_r = b_m·f_c·(i·L_we·cos α)^(7/9)·Z^(3/4)·D_we^(29/27)</code>
    /// <code>f_c = 207.9·0.83·{1 + [1.04·((1−γ)/(1+γ))^(143/108)]^(9/2)}^(−2/9)·γ^(2/9)·(1−γ)^(29/27)/(1+γ)^(1/4)</code>
    /// Symbols: b_m 1.1 machined, 1 drawn cup; i rows; L_we effective length, D_we diameter of a roller, mm; Z rollers of a
    /// row.<br/>
    /// Source: ISO 281:2007 and ISO/TR 1281-1, basic dynamic radial load rating of roller bearings.<br/>
    /// Valid for: 0 &lt; γ ≤ 0.30, where the standard's table ends.
    /// </remarks>
    public static double Dynamic(RollerSet rollers, RollerMake make)
    {
        var gamma = rollers.Ratio;
        return (make == RollerMake.Machined ? 1.1 : 1.0) * RollerFactor(gamma)
            * Math.Pow(rollers.Type.Rows * Guard.Positive(rollers.Length, "the length of a roller") * Math.Cos(rollers.Type.ContactAngle), 7.0 / 9)
            * Math.Pow(rollers.Count, 0.75) * Math.Pow(rollers.Diameter, 29.0 / 27);
    }

    /// <summary>Factor f_c of roller bearings; for N and mm.</summary>
    /// <remarks>Formula, source: as the rating of rollers.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RollerFactor(double ratio)
    {
        if (!(ratio is > 0 and <= 0.30))
            throw Guard.Because($"no factor f_c: γ of the rollers is {ratio:0.####}; the source covers up to 0.3");

        var share = 1.04 * Math.Pow((1 - ratio) / (1 + ratio), 143.0 / 108);
        return 207.9 * 0.83 * Math.Pow(1 + Math.Pow(share, 4.5), -2.0 / 9)
            * Math.Pow(ratio, 2.0 / 9) * Math.Pow(1 - ratio, 29.0 / 27) / Math.Pow(1 + ratio, 0.25);
    }

    /// <summary>Factor f₀ of a ball bearing, MPa.</summary>
    /// <remarks>
    /// Source: ISO 76:2006; table <c>iso76-ball-factors</c>.<br/>
    /// Valid for: γ up to 0.30, groove radii of 0.52·D_w and 0.53·D_w at most.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double StaticBallFactor(double ratio)
    {
        var rows = _static.IsDefault ? _static = NumberTable.Read(StaticBallTableId, 2) : _static;
        return Internal.At(rows, ratio, "f₀");
    }

    /// <summary>Basic static radial load rating C₀r of a ball bearing, N.</summary>
    /// <remarks>
    /// <code>C₀r = f₀·i·Z·D_w²·cos α</code>
    /// Symbols: f₀ by γ; i rows; Z balls of a row; D_w ball diameter, mm.<br/>
    /// Source: ISO 76:2006.
    /// </remarks>
    public static double Static(BallSet balls) =>
        StaticBallFactor(balls.Ratio) * balls.Type.Rows * balls.Count * balls.Diameter * balls.Diameter * Math.Cos(balls.Type.ContactAngle);

    /// <summary>Basic static radial load rating C₀r of a roller bearing, N.</summary>
    /// <remarks>
    /// <code>C₀r = 44·(1 − γ)·i·Z·L_we·D_we·cos α</code>
    /// Symbols: γ = D_we·cos α/D_pw; i rows; Z rollers of a row; L_we, D_we effective length and diameter of a roller, mm.<br/>
    /// Source: ISO 76:2006.
    /// </remarks>
    public static double Static(RollerSet rollers) =>
        44 * (1 - rollers.Ratio) * rollers.Type.Rows * rollers.Count * Guard.Positive(rollers.Length, "the length of a roller")
        * rollers.Diameter * Math.Cos(rollers.Type.ContactAngle);

    /// <summary>A stated rating over the computed one, 1; suppliers go up to about a tenth above.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Stated(double stated, double computed) =>
        Guard.Positive(stated, "the stated rating") / Guard.Positive(computed, "the computed rating");
}

/// <summary>What both sets check alike.</summary>
internal static class Internal
{
    public static double Ratio(BearingType type, int count, double diameter, double pitchDiameter, bool ball)
    {
        if (type.IsBall != ball)
            throw Guard.Because($"a {BearingType.Name(type.Kind)} bearing has {(type.IsBall ? "balls" : "rollers")}");
        if (count < 2)
            throw Guard.Because($"a row needs rolling elements; it has {count}");

        Guard.Positive(diameter, "the diameter of a rolling element");
        Guard.Positive(pitchDiameter, "the pitch diameter");
        if (!(count * Math.Asin(Math.Min(1, diameter / pitchDiameter)) <= Math.PI * (1 + 1e-9)))
            throw Guard.Because($"{count} rolling elements of {diameter:0.###} mm do not fit on a circle of {pitchDiameter:0.###} mm");

        return diameter * Math.Cos(type.ContactAngle) / pitchDiameter;
    }

    public static double At(ImmutableArray<ImmutableArray<double>> rows, double ratio, string name) =>
        ratio >= rows[0][0] && ratio <= rows[^1][0]
            ? NumberTable.At(rows, ratio, 1)
            : throw Guard.Because($"no factor {name}: γ is {ratio:0.####}; the source covers {rows[0][0]} to {rows[^1][0]}");
}
