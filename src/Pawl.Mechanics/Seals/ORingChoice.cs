namespace Pawl.Mechanics.Seals;

/// <summary>A size that fits, and how well.</summary>
/// <param name="Ring">The size.</param>
/// <param name="Extremes">What the gland does to it.</param>
/// <param name="Reserve">How far inside the windows, 1; see <see cref="GlandWindows.Reserve"/>.</param>
public sealed record ORingFit(ORing Ring, GlandExtremes Extremes, double Reserve);

/// <summary>A size that fits, with the gland that the trade gives its cord.</summary>
/// <param name="Fit">The size and how well it fits.</param>
/// <param name="Gland">The gland.</param>
public sealed record GlandProposal<TGland>(ORingFit Fit, TGland Gland);

/// <summary>Sizes of the table that fit a gland, best first; equals keep the order of the table.</summary>
/// <remarks>
/// The trade's glands leave out eccentricity, heat and swell; in the worst case with these few sizes lie within the narrow
/// windows. To see more, design a gland with a wider groove and ask for that.
/// </remarks>
public static class ORingChoice
{
    /// <summary>Sizes that a given gland holds within the windows.</summary>
    /// <param name="extremes">What the gland does to a ring: <c>gland.Extremes</c> of any kind.</param>
    /// <param name="windows">The windows.</param>
    /// <param name="service">What service makes of the rubber.</param>
    public static ImmutableArray<ORingFit> For(
        Func<RingExtents, RubberService, GlandExtremes> extremes, GlandWindows windows, RubberService service)
    {
        ArgumentNullException.ThrowIfNull(extremes);
        ArgumentNullException.ThrowIfNull(windows);
        return Best(ORingTable.All.Select(ring => Judge(ring, extremes, windows, service)), fit => fit);
    }

    /// <summary>Sizes, each with the rod gland of the trade, that fit a rod.</summary>
    /// <param name="rod">Rod, mm.</param>
    /// <param name="bore">Bore beside the groove, mm.</param>
    /// <param name="grooveTolerance">Tolerance of the groove's diameter, its whole width, mm.</param>
    /// <param name="kind">Static or dynamic.</param>
    /// <param name="service">What service makes of the rubber.</param>
    /// <param name="guided">Eccentricity that another guide allows; none when the bore alone guides.</param>
    /// <param name="windows">The windows; those that the trade bears when absent.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ImmutableArray<GlandProposal<RodGland>> Rod(
        Interval rod, Interval bore, double grooveTolerance, GlandKind kind, RubberService service, double? guided = null,
        GlandWindows? windows = null)
    {
        Radial(kind);
        Play(guided);
        Guard.NotNegative(grooveTolerance, "the tolerance of the groove", "mm");
        return Propose(kind, windows, service, practice =>
            {
                var groove = Interval.About(rod.Middle + 2 * practice.Height.Middle, grooveTolerance / 2);
                return new RodGland(groove, rod, bore, practice.Width, guided);
            },
            gland => gland.Extremes);
    }

    /// <summary>Sizes, each with the face gland of the trade, that lie against a wall.</summary>
    /// <param name="wall">Diameter of the wall, mm.</param>
    /// <param name="gap">Gap between the faces, mm.</param>
    /// <param name="pressureInside">Whether the wall is the outer one.</param>
    /// <param name="service">What service makes of the rubber.</param>
    /// <param name="windows">The windows; those that the trade bears when absent.</param>
    public static ImmutableArray<GlandProposal<FaceGland>> Face(
        Interval wall, Interval gap, bool pressureInside, RubberService service, GlandWindows? windows = null) =>
        Propose(GlandKind.Face, windows, service,
            practice => new FaceGland(practice.Height, gap, practice.Width, wall, pressureInside),
            gland => gland.Extremes);

    private static ImmutableArray<GlandProposal<TGland>> Propose<TGland>(
        GlandKind kind,
        GlandWindows? stated,
        RubberService service,
        Func<GlandPractice, TGland?> design,
        Func<TGland, Func<RingExtents, RubberService, GlandExtremes>> extremes)
        where TGland : class
    {
        var windows = stated ?? GlandWindows.For(kind, wide: true);
        var proposals = new List<GlandProposal<TGland>?>();
        foreach (var ring in ORingTable.All)
        {
            proposals.Add(design(GlandPractice.For(kind, ring.Cord)) is { } gland
                && Judge(ring, extremes(gland), windows, service) is { } fit
                    ? new(fit, gland)
                    : null);
        }

        return Best(proposals, proposal => proposal.Fit);
    }

    private static void Radial(GlandKind kind)
    {
        if (kind == GlandKind.Face)
            throw Guard.Because($"a radial gland is static or dynamic, not in a face");
    }

    private static void Play(double? guided)
    {
        if (guided is { } play)
            Guard.NotNegative(play, "the play of the guide", "mm");
    }

    private static ORingFit? Judge(
        ORing ring, Func<RingExtents, RubberService, GlandExtremes> extremes, GlandWindows windows, RubberService service)
    {
        try
        {
            var found = extremes(ring.Extents, service);
            var reserve = windows.Reserve(found);
            return reserve >= 0 ? new ORingFit(ring, found, reserve) : null;
        }
        catch (OutsideValidityException)
        {
            // A ring that does not go into the gland at all.
            return null;
        }
    }

    private static ImmutableArray<T> Best<T>(IEnumerable<T?> candidates, Func<T, ORingFit> fit)
        where T : class =>
        [.. candidates.OfType<T>().OrderByDescending(candidate => fit(candidate).Reserve)];
}
