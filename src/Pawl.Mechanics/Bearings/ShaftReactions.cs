namespace Pawl.Mechanics.Bearings;

/// <summary>A force on a shaft, and the couple that comes with it. Right-handed axes, z along the shaft.</summary>
/// <param name="Position">Place along the shaft, mm.</param>
/// <param name="X">Force along x, N.</param>
/// <param name="Y">Force along y, N.</param>
/// <param name="Axial">Force along z, N.</param>
/// <param name="CoupleX">Couple about x, N·mm.</param>
/// <param name="CoupleY">Couple about y, N·mm.</param>
public sealed record ShaftLoad(
    double Position, double X, double Y, double Axial = 0, double CoupleX = 0, double CoupleY = 0)
{
    /// <summary>A force at a point off the axis, such as a pitch point; an axial force there makes a couple.</summary>
    /// <remarks>
    /// <code>M_x = y·F_z;  M_y = −x·F_z</code>
    /// Symbols: x, y place of the point, mm; F_z axial force, N.<br/>
    /// Source: moment r × F; what turns the shaft is left out.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ShaftLoad AtPoint(double x, double y, double position, double forceX, double forceY, double axial) =>
        new(
            Guard.Number(position, "the place of a load", "mm"), Guard.Number(forceX, "a force", "N"), Guard.Number(forceY, "a force", "N"),
            Guard.Number(axial, "the axial force", "N"), Guard.Number(y, "the place of a load", "mm") * axial, -Guard.Number(x, "the place of a load", "mm") * axial);
}

/// <summary>A bearing as a support of a shaft.</summary>
/// <param name="Position">Where its line of force meets the axis, mm.</param>
/// <param name="Locating">Whether it holds the shaft along its axis.</param>
public sealed record ShaftSupport(double Position, bool Locating);

/// <summary>Force of a bearing on the shaft; the shaft presses on the bearing with its opposite.</summary>
/// <param name="X">Along x, N.</param>
/// <param name="Y">Along y, N.</param>
/// <param name="Axial">Along z, N.</param>
public sealed record Reaction(double X, double Y, double Axial)
{
    /// <summary>Radial load of the bearing, N, a magnitude.</summary>
    public double Radial => Guard.Finite(double.Hypot(X, Y), "the reaction");
}

/// <summary>Forces of two bearings on a rigid shaft.</summary>
public static class ShaftReactions
{
    /// <summary>Reactions in the order of the supports.</summary>
    /// <remarks>
    /// <code>R_B = −Σ M_A/(z_B − z_A);  R_A = −Σ F − R_B;  in both planes;  the locating bearing takes −Σ F_z</code>
    /// Symbols: F forces, N; M_A moments about the first support, N·mm; z places along the shaft, mm.<br/>
    /// Source: statics.<br/>
    /// Valid for: two radial supports that bear no moment, loads between them or overhung.
    /// </remarks>
    public static ImmutableArray<Reaction> Of(IReadOnlyList<ShaftSupport> supports, IReadOnlyList<ShaftLoad> loads)
    {
        if (supports.Count > 2)
            throw Guard.Because($"no reactions: three bearings need the stiffness of the shaft; there are {supports.Count}");
        if (supports.Count < 2)
            throw Guard.Because($"no reactions: a shaft on {supports.Count} bearing is not held");

        var (first, second) = (supports[0], supports[1]);
        var span = second.Position - first.Position;
        Guard.NotZero(span, "the distance of the bearings");

        double x = 0, y = 0, axial = 0, momentX = 0, momentY = 0;
        foreach (var load in loads)
        {
            var arm = load.Position - first.Position;
            x += load.X;
            y += load.Y;
            axial += load.Axial;
            momentX += load.CoupleX - arm * load.Y;
            momentY += load.CoupleY + arm * load.X;
        }

        var secondX = Guard.Finite(-momentY / span, "the reaction");
        var secondY = Guard.Finite(momentX / span, "the reaction");
        var (firstAxial, secondAxial) = Axial(first.Locating, second.Locating, Guard.Finite(axial, "the axial load"));
        return [new(-x - secondX, -y - secondY, firstAxial), new(secondX, secondY, secondAxial)];
    }

    private static (double First, double Second) Axial(bool first, bool second, double load) => (first, second) switch
    {
        (true, false) => (-load, 0),
        (false, true) => (0, -load),
        (true, true) => throw Guard.Because(
            $"no reactions: two locating bearings share the axial load as their play has it; state one, or a pair set against each other"),
        _ => load == 0
            ? (0, 0)
            : throw Guard.Because($"no reactions: no bearing holds the shaft against its axial load of {load:0.###} N"),
    };
}
