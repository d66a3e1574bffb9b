using Pawl.Mechanics.Tables;
namespace Pawl.Mechanics.Bearings;

/// <summary>The radial load that would dent a bearing at rest as deep as the loads it has.</summary>
public static class StaticLoad
{
    /// <summary>The id of the table of angular contact ball bearings.</summary>
    public const string AngularContactTableId = "iso76-angular-contact-factors";

    private static ImmutableArray<ImmutableArray<double>> _angular;

    /// <summary>Equivalent static load P₀, N.</summary>
    /// <remarks>
    /// <code>P₀ = max(X₀·F_r + Y₀·F_a, F_r)</code>
    /// <code>deep groove: 0.6, 0.5;  angular contact: 0.5, Y₀ by α;  rollers at α: 0.5, 0.22·cot α;  two rows at an angle: twice both</code>
    /// Symbols: F_r radial, F_a axial load, N; α contact angle.<br/>
    /// Source: ISO 76:2006, static equivalent radial load; table <c>iso76-angular-contact-factors</c>.<br/>
    /// Valid for: the greatest load, not the mean; cylindrical and needle rollers without axial load.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Equivalent(BearingType type, double radial, double axial)
    {
        DynamicLoad.NotNegative(radial, "the radial load");
        if (DynamicLoad.NotNegative(axial, "the axial load") == 0)
            return radial;

        var (x, y) = Factors(type);
        return Math.Max(x * radial + y * axial, radial);
    }

    /// <summary>Static safety s₀ = C₀/P₀, 1.</summary>
    /// <remarks>
    /// <code>s₀ = C₀/P₀</code>
    /// Symbols: C₀ basic static load rating, P₀ equivalent static load, N.<br/>
    /// Source: ISO 76:2006, static safety factor.<br/>
    /// Valid for: C₀ dents balls and rollers by about a ten-thousandth of their diameter. A C₀ of steel balls is none of ceramic
    /// ones.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Safety(double staticRating, double equivalentLoad) =>
        Guard.Positive(staticRating, "the basic static load rating") / Guard.Positive(equivalentLoad, "the equivalent static load");

    private static (double X, double Y) Factors(BearingType type)
    {
        switch (type.Kind)
        {
            case BearingKind.DeepGrooveBall:
                return (0.6, 0.5);
            case BearingKind.AngularContactBall:
                var all = _angular.IsDefault ? _angular = NumberTable.Read(AngularContactTableId, 2) : _angular;
                var rows = DynamicLoad.OfAngle(all, type.ContactAngle);
                return rows.IsEmpty
                    ? throw DynamicLoad.NoAngle(all, type.ContactAngle)
                    : (0.5 * type.Rows, rows[0][1] * type.Rows);
            case BearingKind.AngledRoller:
                return (0.5 * type.Rows, 0.22 * type.Rows / Math.Tan(type.ContactAngle));
            default:
                throw DynamicLoad.NoThrust(type);
        }
    }
}
