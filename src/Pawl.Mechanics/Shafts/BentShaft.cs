using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Shafts;

/// <summary>Forces spread over a length of a shaft, such as its weight.</summary>
/// <param name="From">Where they begin, mm.</param>
/// <param name="To">Where they end, mm.</param>
/// <param name="X">Force along x by length, N/mm.</param>
/// <param name="Y">Force along y by length, N/mm.</param>
public sealed record ShaftLineLoad(double From, double To, double X, double Y);

/// <summary>A value in the two planes of a shaft.</summary>
public readonly record struct ShaftVector(double X, double Y)
{
    /// <summary>Amount, whatever the direction.</summary>
    public double Magnitude => Guard.Finite(double.Hypot(X, Y), "the amount");
}

/// <summary>A stepped shaft on two bearings, bent by its loads; the loads may lie between the bearings or overhang.</summary>
/// <remarks>
/// <code>E·I·u'' = Σ F·⟨z − z_F⟩ ± Σ M·⟨z − z_M⟩⁰ + Σ q·⟨z − z_q⟩²/2,  integrated twice piece by piece;  u = 0 at both bearings</code>
/// Symbols: u deflection, z place along the shaft, mm; F forces with reactions, N; M couples, N·mm; q line loads, N/mm; I second
/// moment of area, mm⁴; E modulus, MPa.<br/>
/// Source: Bernoulli's beam; every piece between steps, loads and bearings is a polynomial, so the integration is exact.<br/>
/// Valid for: slender shafts (shear is left out), stiff bearings that bear no moment, small slopes.
/// </remarks>
public sealed class BentShaft
{
    private readonly ImmutableArray<Piece> _pieces;

    private BentShaft(ImmutableArray<Piece> pieces, ImmutableArray<Reaction> reactions) => (_pieces, Reactions) = (pieces, reactions);

    /// <summary>Forces of the bearings on the shaft.</summary>
    public ImmutableArray<Reaction> Reactions { get; }

    /// <summary>A loaded shaft.</summary>
    /// <param name="start">Where the first segment begins, mm.</param>
    /// <param name="segments">Its segments, one after the other.</param>
    /// <param name="modulus">Modulus of elasticity E, MPa.</param>
    /// <param name="supports">Its two bearings.</param>
    /// <param name="loads">Forces and couples.</param>
    /// <param name="lineLoads">Forces spread over a length.</param>
    /// <inheritdoc cref="BentShaft" path="/remarks"/>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static BentShaft Of(
        double start, IReadOnlyList<ShaftSegment> segments, double modulus,
        IReadOnlyList<ShaftSupport> supports, IReadOnlyList<ShaftLoad> loads, IReadOnlyList<ShaftLineLoad>? lineLoads = null)
    {
        Guard.Positive(modulus, "the modulus of elasticity");
        var lines = lineLoads ?? [];
        foreach (var line in lines)
        {
            if (!(line.From < line.To) || !double.IsFinite(line.X + line.Y))
                throw Guard.Because($"a line load must begin before it ends; it goes from {line.From:0.###} mm to {line.To:0.###} mm");
        }

        var resultants = lines.Select(line => new ShaftLoad(
            (line.From + line.To) / 2, line.X * (line.To - line.From), line.Y * (line.To - line.From)));
        var reactions = ShaftReactions.Of(supports, [.. loads, .. resultants]);

        ShaftLoad[] forces =
        [
            .. loads, .. supports.Zip(reactions, (support, reaction) => new ShaftLoad(support.Position, reaction.X, reaction.Y)),
        ];
        var ends = Ends(start, segments);
        var places = InOrder([.. ends, .. forces.Select(force => force.Position), .. lines.SelectMany(line => new[] { line.From, line.To })]);
        if (places[0] < start || places[^1] > ends[^1])
        {
            var astray = places[0] < start ? places[0] : places[^1];
            throw Guard.Because(
                $"bearings and loads must lie on the shaft, from {start:0.###} mm to {ends[^1]:0.###} mm; one lies at {astray:0.###} mm");
        }

        var pieces = ImmutableArray.CreateBuilder<Piece>(places.Length - 1);
        var (x, y) = (new Course(0, 0), new Course(0, 0));
        var segment = 0;
        for (var index = 0; index + 1 < places.Length; index++)
        {
            var (from, to) = (places[index], places[index + 1]);
            while (to > ends[segment + 1])
                segment++;

            var stiffness = modulus * segments[segment].Section.SecondMoment;
            var piece = new Piece(
                from, to, Plane(from, forces, lines, true).By(stiffness), Plane(from, forces, lines, false).By(stiffness), x, y, stiffness);
            pieces.Add(piece);
            (x, y) = (piece.CourseX(to), piece.CourseY(to));
        }

        // Free pieces so far: a straight line added to all brings both bearings to rest.
        var free = new BentShaft(pieces.MoveToImmutable(), reactions);
        var (one, other) = (supports[0].Position, supports[1].Position);
        var (first, second) = (free.DeflectionAt(one), free.DeflectionAt(other));
        var tilt = new ShaftVector((second.X - first.X) / (other - one), (second.Y - first.Y) / (other - one));
        return new(
            [
                .. free._pieces.Select(piece => piece with
                {
                    X = piece.X.Less(first.X + tilt.X * (piece.From - one), tilt.X),
                    Y = piece.Y.Less(first.Y + tilt.Y * (piece.From - one), tilt.Y),
                }),
            ],
            reactions);
    }

    /// <summary>Deflection at a place, mm.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public ShaftVector DeflectionAt(double place)
    {
        var piece = At(place);
        return new(piece.CourseX(place).Deflection, piece.CourseY(place).Deflection);
    }

    /// <summary>Slope at a place, rad.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public ShaftVector SlopeAt(double place)
    {
        var piece = At(place);
        return new(piece.CourseX(place).Slope, piece.CourseY(place).Slope);
    }

    /// <summary>Bending moment E·I·u'' at a place, N·mm; just to the right of a couple.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public ShaftVector MomentAt(double place)
    {
        var piece = At(place);
        var along = place - piece.From;
        return new(piece.Stiffness * piece.BendX.At(along), piece.Stiffness * piece.BendY.At(along));
    }

    private static double[] Ends(double start, IReadOnlyList<ShaftSegment> segments)
    {
        if (segments.Count == 0)
            throw Guard.Because($"a shaft needs at least one segment");

        var ends = new double[segments.Count + 1];
        ends[0] = Guard.Finite(start, "the start of the shaft");
        for (var index = 0; index < segments.Count; index++)
            ends[index + 1] = ends[index] + Guard.Positive(segments[index].Length, "the length of a segment");
        return ends;
    }

    // E·I·u'' from a place on, of all that lies to its left.
    private static Bend Plane(double from, ShaftLoad[] forces, IReadOnlyList<ShaftLineLoad> lines, bool alongX)
    {
        double a = 0, b = 0, c = 0;
        foreach (var force in forces)
        {
            if (force.Position > from)
                continue;
            var amount = alongX ? force.X : force.Y;
            a += amount * (from - force.Position) + (alongX ? -force.CoupleY : force.CoupleX);
            b += amount;
        }

        foreach (var line in lines)
        {
            if (line.From > from)
                continue;
            var amount = alongX ? line.X : line.Y;
            var length = Math.Min(from, line.To) - line.From;
            a += amount * length * (from - line.From - length / 2);
            b += amount * length;
            c += line.To > from ? amount / 2 : 0;
        }

        return new(a, b, c);
    }

    private Piece At(double place)
    {
        if (!(place >= _pieces[0].From && place <= _pieces[^1].To))
            throw Guard.Because(
                $"the shaft reaches from {_pieces[0].From:0.###} mm to {_pieces[^1].To:0.###} mm; {place:0.###} mm is not on it");

        foreach (var piece in _pieces)
        {
            if (place < piece.To)
                return piece;
        }

        return _pieces[^1];
    }

    /// <summary>u'' = A + B·ζ + C·ζ² along a piece.</summary>
    private readonly record struct Bend(double A, double B, double C)
    {
        public double At(double along) => A + along * (B + along * C);

        public Bend By(double stiffness) => new(A / stiffness, B / stiffness, C / stiffness);
    }

    /// <summary>Deflection and slope at the start of a piece, or within it.</summary>
    private readonly record struct Course(double Deflection, double Slope)
    {
        public Course After(Bend bend, double along) => new(
            Deflection + along * (Slope + along * (bend.A / 2 + along * (bend.B / 6 + along * bend.C / 12))),
            Slope + along * (bend.A + along * (bend.B / 2 + along * bend.C / 3)));

        public Course Less(double deflection, double slope) => new(Deflection - deflection, Slope - slope);
    }

    private sealed record Piece(double From, double To, Bend BendX, Bend BendY, Course X, Course Y, double Stiffness)
    {
        public Course CourseX(double place) => X.After(BendX, place - From);

        public Course CourseY(double place) => Y.After(BendY, place - From);
    }

    /// <summary>The places from the first to the last, each once.</summary>
    private static double[] InOrder(double[] places)
    {
        Array.Sort(places);
        var kept = 1;
        for (var k = 1; k < places.Length; k++)
        {
            if (places[k] != places[kept - 1])
                places[kept++] = places[k];
        }

        return places[..kept];
    }
}
