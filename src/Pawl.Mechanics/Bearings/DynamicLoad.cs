using Pawl.Mechanics.Tables;
namespace Pawl.Mechanics.Bearings;

/// <summary>The radial load under which a bearing would live as long as under the loads it has.</summary>
public static class DynamicLoad
{
    /// <summary>The id of the table of deep groove ball bearings.</summary>
    public const string DeepGrooveTableId = "iso281-deep-groove-factors";

    /// <summary>The id of the table of angular contact ball bearings.</summary>
    public const string AngularContactTableId = "iso281-angular-contact-factors";

    private static ImmutableArray<ImmutableArray<double>> _deepGroove;
    private static ImmutableArray<ImmutableArray<double>> _angular;

    /// <summary>Equivalent dynamic load P, N.</summary>
    /// <param name="type">Kind, contact angle, rows.</param>
    /// <param name="radial">Radial load F_r, N, a magnitude.</param>
    /// <param name="axial">Axial load F_a, N, a magnitude.</param>
    /// <param name="axialRatio">
    /// f₀·F_a/C₀ of <see cref="AxialRatio"/>; only for deep groove balls and a contact angle of 15°, and of one row only
    /// where F_a is above the least e of the table times F_r.
    /// </param>
    /// <remarks>
    /// <code>P = X·F_r + Y·F_a</code>
    /// Source: ISO 281:2007, dynamic equivalent radial load.<br/>
    /// Valid for: loads constant in size and direction; of cylindrical and needle roller bearings radial loads only.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Equivalent(BearingType type, double radial, double axial, double? axialRatio = null)
    {
        NotNegative(radial, "the radial load");
        Ratio(axialRatio);
        if (NotNegative(axial, "the axial load") == 0)
            return radial;

        // Up to the least e of the rows the thrust does not count in one row, whatever the ratio.
        if (axialRatio is null && type is { Rows: 1, Kind: BearingKind.DeepGrooveBall or BearingKind.AngularContactBall }
            && axial <= Factors(type, 0).Limit * radial)
            return radial;

        return Factors(type, axialRatio).Equivalent(radial, axial);
    }

    /// <summary>Factors e, X and Y of a bearing under axial load.</summary>
    /// <remarks>
    /// <code>deep groove: X = 0.56, e and Y by the ratio;  angular contact: by α, at 15° by the ratio</code>
    /// <code>rollers at α: e = 1.5·tan α;  one row X = 0.4, Y = 0.4·cot α;  two rows Y₁ = 0.45·cot α, X₂ = 0.67, Y₂ = 0.67·cot α</code>
    /// Symbols: α contact angle, rad; ratio f₀·F_a/C₀, 1.<br/>
    /// Source: ISO 281:2007, factors of radial bearings; tables <c>iso281-deep-groove-factors</c>,
    /// <c>iso281-angular-contact-factors</c>.<br/>
    /// Valid for: normal internal clearance; between rows straight lines. Outside the rows the last one holds, and the remark
    /// says so. A contact angle of ball bearings must be one of the table's.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static LoadFactors Factors(BearingType type, double? axialRatio = null)
    {
        Ratio(axialRatio);
        switch (type.Kind)
        {
            case BearingKind.DeepGrooveBall:
                var deep = _deepGroove.IsDefault ? _deepGroove = NumberTable.Read(DeepGrooveTableId, 3) : _deepGroove;
                var (place, remark) = Place(deep[0][0], deep[^1][0], axialRatio);
                return new(NumberTable.At(deep, place, 1), 1, 0, 0.56, NumberTable.At(deep, place, 2), remark);

            case BearingKind.AngularContactBall:
                return AngularContact(type, axialRatio);

            case BearingKind.AngledRoller:
                var tangent = Math.Tan(type.ContactAngle);
                return type.Rows == 1
                    ? new(1.5 * tangent, 1, 0, 0.4, 0.4 / tangent)
                    : new(1.5 * tangent, 1, 0.45 / tangent, 0.67, 0.67 / tangent);

            default:
                throw NoThrust(type);
        }
    }

    /// <summary>Ratio by which e and Y of deep groove balls, and of a contact angle of 15°, are found, 1.</summary>
    /// <remarks>
    /// <code>f₀·F_a/C₀;  at a contact angle f₀·i·F_a/C₀</code>
    /// Symbols: f₀ factor of ISO 76; F_a axial load, N; C₀ basic static load rating of the whole bearing, N; i rows.<br/>
    /// Source: ISO 281:2007, relative axial load.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double AxialRatio(BearingType type, double factor, double axial, double staticRating) =>
        Guard.Positive(factor, "the factor f₀") * NotNegative(axial, "the axial load")
        * (type.Kind == BearingKind.AngularContactBall ? type.Rows : 1)
        / Guard.Positive(staticRating, "the basic static load rating");

    private static void Ratio(double? axialRatio)
    {
        if (axialRatio is { } value)
            Guard.NotNegative(value, "f₀·F_a/C₀");
    }

    internal static double NotNegative(double value, string name) =>
        value >= 0 && double.IsFinite(value) ? value : throw Guard.Because($"{name} must not be below zero; it is {value:0.######}");

    private static LoadFactors AngularContact(BearingType type, double? axialRatio)
    {
        var all = _angular.IsDefault ? _angular = NumberTable.Read(AngularContactTableId, 8) : _angular;
        var rows = OfAngle(all, type.ContactAngle);
        if (rows.IsEmpty)
            throw NoAngle(all, type.ContactAngle);

        string? remark = null;
        Func<int, double> at = column => rows[0][column];
        if (!double.IsNaN(rows[0][1]))
        {
            (var place, remark) = Place(rows[0][1], rows[^1][1], axialRatio);
            at = column => NumberTable.At(rows, place, column, key: 1);
        }

        return type.Rows == 1
            ? new(at(2), 1, 0, at(3), at(4), remark)
            : new(at(2), 1, at(5), at(6), at(7), remark);
    }

    // Angles are written in whole degrees; a hundredth of one is rounding.
    internal static ImmutableArray<ImmutableArray<double>> OfAngle(ImmutableArray<ImmutableArray<double>> rows, double angle) =>
        [.. rows.Where(row => Math.Abs(row[0] - angle * 180 / Math.PI) < 0.01)];

    internal static OutsideValidityException NoAngle(ImmutableArray<ImmutableArray<double>> rows, double angle)
    {
        var known = string.Join("°, ", rows.Select(row => row[0]).Distinct());
        return Guard.Because(
            $"the source has no factors for a contact angle of {angle * 180 / Math.PI:0.###}°, only for {known}°");
    }

    /// <summary>Why cylindrical and needle rollers have no axial load.</summary>
    internal static OutsideValidityException NoThrust(BearingType type) => Guard.Because(
        $"a {BearingType.Name(type.Kind)} bearing carries no axial load on its raceways; its supplier rates flanges that do");

    private static (double Place, string? Remark) Place(double first, double last, double? ratio)
    {
        if (ratio is not { } value)
            throw Guard.Because($"the factors of this bearing depend on f₀·F_a/C₀, which is not stated");

        var place = Math.Clamp(NotNegative(value, "f₀·F_a/C₀"), first, last);
        return (place, place == value ? null : FormattableString.Invariant(
            $"f₀·F_a/C₀ is {value:0.###}, outside the table of ISO 281; its nearest row, {place}, is taken"));
    }
}
