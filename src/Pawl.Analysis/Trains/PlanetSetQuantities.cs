using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Assembly;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using G = Pawl.Analysis.Gears.GearQuantities;

namespace Pawl.Analysis.Trains;

/// <summary>The planets that one carrier carries together: one set, or sets that mesh with each other.</summary>
public sealed class PlanetSetQuantities : Section<PlanetGroupSpec>
{
    private const string Closed = "closed form: teeth of every mesh must meet again at each planet";

    private static readonly IInput<double[]> Teeth = Each("teeth", static () => G.Teeth);

    private static readonly IInput<double> First = Of("first_centre", static () => MeshQuantities.CentreDistance, "a_L");

    private static readonly IInput<double> Second = Of("second_centre", static () => MeshQuantities.CentreDistance, "a_S");

    private static readonly IInput<double> Pair = Of("pair", static () => MeshQuantities.CentreDistance, "a_LS");

    private static readonly IInput<double> CarrierSpeed = Of("carrier", static () => BodyQuantities.Speed);

    public static readonly NumberDefinition<PlanetGroupSpec> Count = Number("count", "N", "Number of planets").NeverNegative()
        .Stated(static s => s.Sets[0].Count);

    public static readonly TruthDefinition<PlanetGroupSpec> EquallySpaced = Truth("equally_spaced", "Planets stand equally spaced")
        .Custom(static subject => GroupOf(subject) is { Positions: { IsEmpty: false } stated } group
            ? Quantity.OfTruth(EquallySpaced!, AnalysisContext.Declared(stated[0]), group.AreEqual, [])
            : null)
        .Assumed(true, "equally spaced, for no positions are stated");

    public static readonly RowDefinition<PlanetGroupSpec, string> Steps = Text("steps", "Steps of the planets").OneOf("single", "identical", "marked", "individual")
        .By("single, identical, marked or individual", "the spec", Certainty.Declared)
        .For(IsStepped).Stated(static s => s.Steps)
        .For(IsStepped).Assumed("identical", "identical in all planets, without timing marks")
        .Named(static _ => "single");

    public static readonly TruthDefinition<PlanetGroupSpec> Stepped = Truth("stepped", "A planet has steps of different tooth counts in its meshes")
        .By("a body of the set meshes with more than one tooth count", "the spec")
        .Solved([], static (_, subject) => PlanetLayout.Of(subject).IsStepped);

    public static readonly NumberDefinition<PlanetGroupSpec> SpacingDivisor =
        Number("spacing_divisor", "D", "Places around the axis where a planet goes in")
        .By("D = greatest common divisor of y·c over a primitive integer basis y of the mesh equations; simple set: z_s + z_r", Closed)
        .Solved([Teeth], Placed, static (_, subject) => PlanetLayout.Of(subject).Angle.PositionsPerTurn);

    public static readonly NumberDefinition<PlanetGroupSpec> MinMeshAngle = Number("min_mesh_angle", "θ₀", "Minimum mesh angle", Units.Degree)
        .By("θ₀ = 360° / D; 0 where D = 0 and any angle will do", Closed)
        .From(SpacingDivisor, static divisor => divisor == 0 ? 0 : Math.Tau / divisor);

    public static readonly NumberDefinition<PlanetGroupSpec> SpacingRemainder =
        Number("spacing_remainder", "D mod N", "Remainder of the equal-spacing condition")
        .By("D mod N; zero when N planets go in equally spaced", Closed)
        .From(SpacingDivisor, Count, static (divisor, count) => divisor % count);

    public static readonly RowDefinition<PlanetGroupSpec, string> SpacingNeighbour =
        Text("spacing_neighbours", "Central tooth numbers nearby that space the planets equally")
        .By("one or two central gears changed by up to 3 teeth, D mod N = 0, ratio nearest first", "closed form")
        .When(EquallySpaced, static equal => equal).When(SpacingRemainder, static remainder => remainder != 0)
        .Solved([Teeth, SpacingRemainder], static (_, subject) => SpacingNeighbours.Of(
            subject.Context.Train!, PlanetLayout.Of(subject), subject.Context.Spec.Ratio?.Target?.Value));

    public static readonly RowDefinition<PlanetGroupSpec, string> PermittedPositions =
        Text("permitted_positions", "Permitted positions nearest to equal spacing")
        .By("θ_k = round(k·D/N) · 360°/D", Closed)
        .From(SpacingDivisor, Count, static (divisor, count) => Angles(new MinMeshAngle((long)divisor).NearestToEqual((int)count)));

    public static readonly RowDefinition<PlanetGroupSpec, string> Positions = Text("positions", "Positions of the planets, from the first")
        .By("θ_k − θ_1", "closed form")
        .When(EquallySpaced, static equal => !equal)
        .Solved([], static (spec, _) => Angles([.. spec.Positions.Select(each => each.Value.Coherent - spec.Positions[0].Value.Coherent)]));

    public static readonly NumberDefinition<PlanetGroupSpec> MisfitAngle =
        Number("misfit_angle", "Δθ", "Maximum angle of a planet beside a place where it goes in", Units.Degree)
        .By("distance of θ_k from the nearest multiple of θ₀", Closed).Scaled(1e-3)
        .Solved([SpacingDivisor, Count], Placed, static (_, subject) => PlanetLayout.Of(subject).Misfit());

    public static readonly NumberDefinition<PlanetGroupSpec> PositionMisfit =
        Number("position_misfit", "Δs", "Maximum misfit of a planet position, on the circle of centres", Units.Millimetre)
        .By("Δs = a_w · (distance of θ_k from the nearest multiple of θ₀)", Closed)
        .For(static (_, subject) => PlanetLayout.Of(subject).Central.IsEmpty).Unless(Placed)
        .From(Of("central", static () => MeshQuantities.CentreDistance), MisfitAngle, static (a, angle) => a * angle);

    public static readonly NumberDefinition<PlanetGroupSpec> MinBacklash =
        Number("min_backlash", "j_wt", "Minimum circumferential backlash of the set's meshes", Units.Millimetre)
        .By("least of j_wt over the meshes of the planets", "ISO 21771")
        .Turns().From(Each("meshes", static () => MeshQuantities.CircumferentialBacklash), static all => all.Aggregate(double.PositiveInfinity, Math.Min));

    public static readonly NumberDefinition<PlanetGroupSpec> CoaxialSpread =
        Number("coaxial_spread", "Δa_w", "Spread of the centre distances of one circle of planets", Units.Millimetre)
        .By("Δa_w = greatest − least, over the meshes of one planet with central gears, of a_w(x) or of a_w, whichever differs more", "ISO 21771")
        .Noted("at nominal: the meshes of one planet share its pin, and with it the tolerance").Scaled(0.005)
        .When(static (_, subject) => subject.ReachAll("coaxial").Any())
        .Solved(
            [Each("coaxial", static () => MeshQuantities.ShiftCentreDistance), Each("coaxial", static () => MeshQuantities.CentreDistance)], static (s, subject) =>
                s.Sets.Max(set => Math.Max(
                    Spread(subject, set, MeshQuantities.ShiftCentreDistance), Spread(subject, set, MeshQuantities.CentreDistance))));

    public static readonly NumberDefinition<PlanetGroupSpec> TriangleSlack =
        Number("triangle_slack", "", "Slack of the triangle of centres of a meshed pair", Units.Millimetre)
        .By("least of a_L + a_S − a_LS and a_LS − |a_L − a_S|", "closed form: triangle inequality")
        .When(static (_, subject) => IsMeshedPair(subject))
        .From(First, Second, Pair, static (a, b, c) => Math.Min(a + b - c, c - Math.Abs(a - b)));

    public static readonly NumberDefinition<PlanetGroupSpec> PairAngle =
        Number("pair_angle", "δ", "Angle at the axis between the two planets of a pair", Units.Degree)
        .By("δ = acos((a_L² + a_S² − a_LS²) / (2·a_L·a_S))", "closed form: cosine rule")
        .When(static (_, subject) => IsMeshedPair(subject))
        .From(First, Second, Pair, AngleOfPair);

    private static readonly IInput<PlanetLayout> Arrangement = Layout(PlanetLayout.Of);

    private static readonly IInput<(double First, double Second, double Pair)> Centres = Join(
        First, OfOr("second_centre", static () => MeshQuantities.CentreDistance, 0, "a_S"), OfOr("pair", static () => MeshQuantities.CentreDistance, 0, "a_LS"),
        static (first, second, pair) => (first, second, pair));

    private static readonly IInput<double[]> Tips = Each("gears", static () => G.TipDiameter);

    /// <summary>Where the gears lie along the axis, at their widest; none where one is not known.</summary>
    private static readonly IInput<AxialSpan[]> Spans = Join(
        EachLimitsOrNone("gears", static () => G.AxialPosition), EachLimitsOrNone("gears", static () => G.FaceWidth), static (places, widths) =>
            places.Length != widths.Length ? [] : places.Zip(widths, static (place, width) => new AxialSpan(place.Nominal, width.Max + place.Max - place.Min)).ToArray());

    public static readonly NumberDefinition<PlanetGroupSpec> NeighbourClearance =
        Number("neighbour_clearance", "c_n", "Minimum clearance of planets that do not mesh, tip to tip", Units.Millimetre)
        .By("distance of the centres − both tip radii, smallest over all neighbours in the same plane", "closed form")
        .For(static (_, subject) => !PlanetLayout.Of(subject).ArePlacesKnown).Unless(Arranged)
        .When(static (s, subject) => s.Count > 1 || PlanetLayout.Of(subject).IsPair || !PlanetLayout.Of(subject).ArePlacesKnown)
        .From(Arrangement, Centres, Tips, Spans, static (layout, centres, tips, spans) =>
            layout.Clearance(centres, tips, spans) ?? throw Guard.Because($"no two planets can meet"));

    public static readonly NumberDefinition<PlanetGroupSpec> LargestModule =
        Number("largest_module", "m_n", "Largest normal module in the set", Units.Millimetre)
        .By("greatest of m_n over the gears of the set", "the spec")
        .From(Each("gears", static () => G.Module), static modules => modules.Aggregate(0.0, Math.Max));

    public static readonly NumberDefinition<PlanetGroupSpec> MostPlanets =
        Number("most_planets", "N_max", "Most planets that fit, equally spaced, and go together")
        .By("greatest N with D mod N = 0 and neighbour clearance above zero", "closed form")
        .Noted("at nominal sizes; the neighbour clearance of the planets that are fitted is judged at its worst")
        .For(static (_, subject) => !PlanetLayout.Of(subject).ArePlacesKnown).Unless(Arranged)
        .From(Arrangement, Centres, Tips, Spans, SpacingDivisor, static (layout, centres, tips, spans, _) => layout.MaxPlanets(centres, tips, spans));

    public static readonly RowDefinition<PlanetGroupSpec, string> Phasing = Text("phasing", "Phase of the meshes around the axis")
        .By("in phase when z·θ_k/360° is whole for every planet, sequential when the phases spread evenly", "closed form")
        .Solved([Teeth], Placed, static (s, subject) => Phases(s, PlanetLayout.Of(subject)));

    public static readonly NumberDefinition<PlanetGroupSpec> FactoringMeshes =
        Number("factoring_meshes", "", "Central meshes whose planets are all in phase")
        .By("count of central gears with z mod N = 0", "closed form")
        .When(static (_, subject) => PlanetLayout.Of(subject).HasPlaces)
        .Solved([Teeth, Count], static (s, subject) => PlanetLayout.Of(subject) is var layout && s.Count > 1
            ? layout.Central.Count(mesh => MeshPhase.Classify(layout.CentralGear(mesh).Spec.Teeth.Value, layout.Positions) == Mechanics.Assembly.Phasing.InPhase)
            : 0);

    public static readonly NumberDefinition<PlanetGroupSpec> InsertionTrials =
        Number("insertion_trials", "z_p/g", "Ways to seat a stepped planet, of which one is right")
        .By("least of z_p1/g and z_p2/g, g = gcd(z_p1, z_p2); 1: no timing mark is needed", "closed form")
        .When(static (s, subject) => HasMarks(s, subject))
        .Solved([Teeth], static (_, subject) => PlanetLayout.Of(subject).InsertionTrials());

    public static readonly TruthDefinition<PlanetGroupSpec> MarksOutward = Truth("marks_outward", "Assembly points the same mark outward")
        .When(IsStepped)
        .Stated(static s => s.Sets.Select(static set => set.MarksOutward).FirstOrDefault(static marks => marks is not null), "marks_outward")
        .Assumed(false, "the assembly instruction does not point marks outward");

    public static readonly TruthDefinition<PlanetGroupSpec> MarksOutwardWork =
        Truth("marks_outward_work", "The same mark outward seats every planet rightly")
        .By("z·θ_k/360° is whole for every central gear and planet", "closed form")
        .When(static (s, subject) => HasMarks(s, subject))
        .Solved([Teeth, Count], static (_, subject) => PlanetLayout.Of(subject).SameMarkOutward());

    public static readonly RowDefinition<PlanetGroupSpec, string> MarkAngles = Text("mark_angles", "Angles of the marks when the planets go in")
        .By("A·u = c·θ + n: from the radius that points outward to the mark of each body, those of the first planet outward", Closed)
        .When(static (s, subject) => HasMarks(s, subject) && s.Steps is { Value: "marked" })
        .Solved([Teeth, Count], static (s, subject) => Marks(s, PlanetLayout.Of(subject)));

    public static readonly NumberDefinition<PlanetGroupSpec> Mass = Number("mass", "m", "Mass of a planet", Units.Kilogram)
        .Stated(static s => s.Sets[0].Mass, "mass").Optional();

    public static readonly NumberDefinition<PlanetGroupSpec> OtherMass = Number("other_mass", "m_2", "Mass of the other planet of a pair", Units.Kilogram)
        .When(static s => s.Sets.Length == 2).Stated(static s => s.Sets[1].Mass, "mass").Optional();

    public static readonly NumberDefinition<PlanetGroupSpec> Unbalance = Number("unbalance", "|Σ e^{iθ_k}|", "Unbalance of the positions")
        .By("|Σ e^{iθ_k}| over the planets", "closed form")
        .Solved([Count], static (_, subject) => PlanetLayout.Of(subject).Positions.Unbalance);

    public static readonly NumberDefinition<PlanetGroupSpec> UnbalanceForce =
        Number("unbalance_force", "F_u", "Unbalance force of the planets on the carrier", Units.Newton).NeverNegative()
        .By("F_u = |Σ e^{iθ_k}| · m·a · ω_c² (pairs: |m_1·a_1 + m_2·a_2·e^{iδ}| for m·a)", "closed form").Scaled(1)
        .For(static (s, subject) => s.Count > 1 && PlanetLayout.Of(subject).Positions.Unbalance < 1e-9).From(Unbalance, static _ => 0)
        .For(static s => s.Sets.Length == 1).From(Unbalance, Mass, First, CarrierSpeed, Balance.UnbalanceForce)
        .For(static s => s.Sets.Length == 2).From(
            Unbalance, Mass, First, OtherMass, Second, PairAngle, CarrierSpeed, Balance.PairUnbalanceForce)
        .Custom(static subject => Quantity.NotEvaluated(UnbalanceForce!, [], WhyNotBalanced(subject)));

    internal static void AddAll(AnalysisContext context)
    {
        if (context.Train is not { } train)
            return;
        foreach (var spec in Together(context.Spec.Train!, train))
        {
            var carrier = spec.Sets[0].Carrier.Value;
            var subject = context.Begin(
                SubjectKinds.PlanetSet, $"planets.{spec.Name}", spec.Sets[0].Name.Span, spec, $"train.planets.{spec.Sets[0].Name.Value}");
            var layout = new Lazy<PlanetLayout>(() => PlanetLayout.Of(subject));
            subject.Relate("train", train.Subject).Relate("carrier", () => context.Find(SubjectKinds.Body, $"bodies.{carrier}"))
                .RelateOptional("central", () => layout.Value.Central.FirstOrDefault()?.Subject)
                .RelateOptional("first_centre", () => layout.Value.CentreOf(0)?.Subject)
                .RelateOptional("second_centre", () => layout.Value.CentreOf(1)?.Subject)
                .RelateOptional("pair", () => layout.Value.Pairs.FirstOrDefault()?.Subject)
                .RelateAll("gears", () => layout.Value.Gears.Select(static gear => gear.Subject))
                .RelateAll("teeth", () => layout.Value.Teeth.Select(static gear => gear.Subject))
                .RelateAll("meshes", () => layout.Value.Central.Concat(layout.Value.Pairs).Select(static mesh => mesh.Subject))
                .RelateAll("coaxial", () => spec.Sets.Select(set => Coaxial(layout.Value, set)).Where(static own => own.Length > 1)
                    .SelectMany(static own => own.Select(static mesh => mesh.Subject)));
        }
    }

    /// <summary>Angle at the axis between the planets of a pair, rad, from the three centre distances, mm.</summary>
    internal static double AngleOfPair(double first, double second, double pair) => PairTriangle.TryCreate(first, second, pair, out var triangle)
        ? triangle.Angle
        : throw Guard.Because($"the triangle of centres {first:0.###}, {second:0.###} and {pair:0.###} mm cannot be drawn");

    /// <summary>Planet sets joined by meshes between planets, in the order of the spec.</summary>
    private static ImmutableArray<PlanetGroupSpec> Together(TrainSpec spec, TrainBuilder train)
    {
        var groups = new List<List<PlanetSetSpec>>();
        foreach (var set in spec.Planets.Entries)
            groups.Add([set]);
        foreach (var mesh in train.Meshes)
        {
            if (train.PlanetSet(mesh.First.Spec.On.Value) is not { } first || train.PlanetSet(mesh.Second.Spec.On.Value) is not { } second)
                continue;
            var (one, other) = (groups.First(group => group.Contains(first)), groups.First(group => group.Contains(second)));
            if (one == other)
                continue;
            one.AddRange(other);
            groups.Remove(other);
        }

        return [.. groups.Select(static group => new PlanetGroupSpec([.. group]))];
    }

    private static ImmutableArray<MeshBuilder> Coaxial(PlanetLayout layout, PlanetSetSpec set) =>
        [.. layout.Central.Where(mesh => mesh.First.Spec.On.Value == set.Name.Value || mesh.Second.Spec.On.Value == set.Name.Value)];

    private static double Spread(Subject subject, PlanetSetSpec set, QuantityKind kind) =>
        Coaxial(PlanetLayout.Of(subject), set) is { Length: > 1 } meshes ? Coaxiality.Spread([.. meshes.Select(mesh => mesh[kind].Value.Nominal)]) : 0;

    private static PlanetGroupSpec GroupOf(Subject subject) => (PlanetGroupSpec)subject.Model;

    private static bool IsStepped(PlanetGroupSpec spec, Subject subject) => PlanetLayout.Of(subject).IsStepped;

    private static bool HasMarks(PlanetGroupSpec spec, Subject subject) =>
        PlanetLayout.Of(subject) is { HasPlaces: true, IsStepped: true } && !spec.IsIndividual;

    private static bool IsMeshedPair(Subject subject) => PlanetLayout.Of(subject) is { IsPair: true, Pairs.Length: 1 };

    private static ImmutableArray<string> Placed(Subject subject) =>
        PlanetLayout.Of(subject) is { HasPlaces: true, Central.IsEmpty: false } ? [] : [$"a planet of {GroupOf(subject).Name} meshes with no central gear"];

    private static ImmutableArray<string> Arranged(Subject subject) =>
        [$"the places of the planets of {GroupOf(subject).Name} do not follow from the meshes that are declared"];

    private static ImmutableArray<string> WhyNotBalanced(Subject subject)
    {
        ImmutableArray<string> unstated =
            [.. GroupOf(subject).Sets.Where(static set => set.Mass is null).Select(static set => $"train.planets.{set.Name.Value}.mass is not stated")];
        return !unstated.IsEmpty ? unstated
            : subject.Reach("carrier")?.Find(BodyQuantities.Speed) is null || subject.Reach("first_centre") is null
                ? ["the speed of the carrier or the place of the planets is not known"]
                : Arranged(subject);
    }

    private static string Angles(PlanetPositions positions) => Angles(positions.Angles);

    private static string Angles(IEnumerable<double> angles) => string.Join(
        ", ", angles.Select(static angle => Formatting.Significant(angle * 180 / Math.PI, 7) + "°"));

    private static string Phases(PlanetGroupSpec spec, PlanetLayout layout) => string.Join("; ", layout.Central.Select(mesh =>
    {
        var central = layout.CentralGear(mesh);
        var teeth = central.Spec.Teeth.Value;
        var phases = MeshPhase.Of(teeth, layout.Positions).Select(static phase => Formatting.Significant(phase, 3));
        return $"{central.Name} {Word(MeshPhase.Classify(teeth, layout.Positions))} ({string.Join(", ", phases)})";
    }));

    private static string Marks(PlanetGroupSpec spec, PlanetLayout layout) => string.Join("; ", layout.Marks().Select(mark =>
        $"{mark.Planet + 1}: {string.Join(", ", mark.MarkAngles.Select((angle, k) => $"{spec.Sets[k].Name.Value} {Formatting.Significant(angle * 180 / Math.PI, 7)}°"))}"));

    private static string Word(Mechanics.Assembly.Phasing phasing) => phasing switch
    {
        Mechanics.Assembly.Phasing.InPhase => "in phase",
        Mechanics.Assembly.Phasing.CounterPhased => "counter-phased",
        Mechanics.Assembly.Phasing.Sequential => "sequential",
        _ => "irregular",
    };
}
