using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Trains;

/// <summary>What is known of the planets that one carrier carries together: one set, or sets that mesh with each other.</summary>
public static class PlanetSetQuantities
{
    private const string Closed = "closed form: teeth of every mesh must meet again at each planet";

    public static readonly QuantityKind Count = new()
    {
        Name = "count", Symbol = "N", Title = "Number of planets", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind EquallySpaced = new()
    {
        Name = "equally_spaced", Title = "Planets stand equally spaced", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Steps = new()
    {
        Name = "steps", Title = "Steps of the planets", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
        Formula = "single, identical, marked or individual",
    };

    public static readonly QuantityKind SpacingDivisor = new()
    {
        Name = "spacing_divisor", Symbol = "D", Title = "Places around the axis where a planet goes in",
        Formula = "D = greatest common divisor of y·c over a primitive integer basis y of the mesh equations; simple set: z_s + z_r",
        Source = Closed,
    };

    public static readonly QuantityKind MinMeshAngle = new()
    {
        Name = "min_mesh_angle", Symbol = "θ₀", Title = "Minimum mesh angle", Unit = Units.Degree,
        Formula = "θ₀ = 360° / D; 0 where D = 0 and any angle will do", Symbols = ["D"], Source = Closed,
    };

    public static readonly QuantityKind SpacingRemainder = new()
    {
        Name = "spacing_remainder", Symbol = "D mod N", Title = "Remainder of the equal-spacing condition",
        Formula = "D mod N; zero when N planets go in equally spaced", Symbols = ["D", "N"], Source = Closed,
    };

    public static readonly QuantityKind PermittedPositions = new()
    {
        Name = "permitted_positions", Title = "Permitted positions nearest to equal spacing", ValueKind = ValueKind.Text,
        Formula = "θ_k = round(k·D/N) · 360°/D", Source = Closed,
    };

    public static readonly QuantityKind PositionMisfit = new()
    {
        Name = "position_misfit", Symbol = "Δs", Title = "Maximum misfit of a planet position, on the circle of centres",
        Unit = Units.Millimetre,
        Formula = "Δs = a_w · (distance of θ_k from the nearest multiple of θ₀)", Symbols = ["a_w"], Source = Closed,
    };

    public static readonly QuantityKind MinBacklash = new()
    {
        Name = "min_backlash", Symbol = "j_wt", Title = "Minimum circumferential backlash of the set's meshes", Unit = Units.Millimetre,
        Formula = "least of j_wt over the meshes of the planets", Source = "ISO 21771",
    };

    public static readonly QuantityKind CoaxialSpread = new()
    {
        Name = "coaxial_spread", Symbol = "Δa_w", Title = "Spread of the centre distances of one circle of planets",
        Unit = Units.Millimetre, Scale = 0.005,
        Formula = "Δa_w = greatest − least, over the meshes of one planet with central gears, of a_w(x) or of a_w, whichever differs more",
        Note = "at nominal: the meshes of one planet share its pin, and with it the tolerance",
        Source = "ISO 21771",
    };

    public static readonly QuantityKind TriangleSlack = new()
    {
        Name = "triangle_slack", Title = "Slack of the triangle of centres of a meshed pair", Unit = Units.Millimetre,
        Formula = "least of a_L + a_S − a_LS and a_LS − |a_L − a_S|", Symbols = ["a_L", "a_S", "a_LS"],
        Source = "closed form: triangle inequality",
    };

    public static readonly QuantityKind PairAngle = new()
    {
        Name = "pair_angle", Symbol = "δ", Title = "Angle at the axis between the two planets of a pair", Unit = Units.Degree,
        Formula = "δ = acos((a_L² + a_S² − a_LS²) / (2·a_L·a_S))", Symbols = ["a_L", "a_S", "a_LS"],
        Source = "closed form: cosine rule",
    };

    public static readonly QuantityKind NeighbourClearance = new()
    {
        Name = "neighbour_clearance", Symbol = "c_n", Title = "Minimum clearance of planets that do not mesh, tip to tip",
        Unit = Units.Millimetre,
        Formula = "distance of the centres − both tip radii, smallest over all neighbours in the same plane",
        Source = "closed form",
    };

    public static readonly QuantityKind LargestModule = new()
    {
        Name = "largest_module", Symbol = "m_n", Title = "Largest normal module in the set", Unit = Units.Millimetre,
        Formula = "greatest of m_n over the gears of the set", Source = "the spec",
    };

    public static readonly QuantityKind MostPlanets = new()
    {
        Name = "most_planets", Symbol = "N_max", Title = "Most planets that fit, equally spaced, and go together",
        Formula = "greatest N with D mod N = 0 and neighbour clearance above zero", Source = "closed form",
        Note = "at nominal sizes; the neighbour clearance of the planets that are fitted is judged at its worst",
    };

    public static readonly QuantityKind Phasing = new()
    {
        Name = "phasing", Title = "Phase of the meshes around the axis", ValueKind = ValueKind.Text,
        Formula = "in phase when z·θ_k/360° is whole for every planet, sequential when the phases spread evenly",
        Source = "closed form",
    };

    public static readonly QuantityKind FactoringMeshes = new()
    {
        Name = "factoring_meshes", Title = "Central meshes whose planets are all in phase",
        Formula = "count of central gears with z mod N = 0", Source = "closed form",
    };

    public static readonly QuantityKind InsertionTrials = new()
    {
        Name = "insertion_trials", Symbol = "z_p/g", Title = "Ways to seat a stepped planet, of which one is right",
        Formula = "least of z_p1/g and z_p2/g, g = gcd(z_p1, z_p2); 1: no timing mark is needed", Source = "closed form",
    };

    public static readonly QuantityKind MarksOutwardWork = new()
    {
        Name = "marks_outward_work", Title = "The same mark outward seats every planet rightly", ValueKind = ValueKind.Truth,
        Formula = "z·θ_k/360° is whole for every central gear and planet", Source = "closed form",
    };

    public static readonly QuantityKind MarksOutward = new()
    {
        Name = "marks_outward", Title = "Assembly points the same mark outward", ValueKind = ValueKind.Truth,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind UnbalanceForce = new()
    {
        Name = "unbalance_force", Symbol = "F_u", Title = "Unbalance force of the planets on the carrier", Unit = Units.Newton,
        Formula = "F_u = |Σ e^{iθ_k}| · m·a · ω_c² (pairs: |m_1·a_1 + m_2·a_2·e^{iδ}| for m·a)", Source = "closed form", Scale = 1,
    };

    public static readonly QuantityKind Stepped = new()
    {
        Name = "stepped", Title = "A planet has steps of different tooth counts in its meshes", ValueKind = ValueKind.Truth,
        Formula = "a body of the set meshes with more than one tooth count", Source = "the spec",
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Count, EquallySpaced, Steps, Stepped, SpacingDivisor, MinMeshAngle, SpacingRemainder, PermittedPositions,
        PositionMisfit, MinBacklash, CoaxialSpread, TriangleSlack, PairAngle, NeighbourClearance, LargestModule, MostPlanets,
        Phasing, FactoringMeshes, InsertionTrials, MarksOutward, MarksOutwardWork, UnbalanceForce,
    ];
}

/// <summary>What is known of a pinion beside a central gear that it does not mesh with.</summary>
public static class PassingQuantities
{
    public static readonly QuantityKind AxialOverlap = new()
    {
        Name = "axial_overlap", Title = "Axial overlap of pinion and gear", Unit = Units.Millimetre,
        Formula = "b_overlap = (b_1 + b_2)/2 − |place_1 − place_2|; positive: they share a plane",
        Symbols = ["b_1", "place_1", "b_2", "place_2"], Source = "closed form", Scale = 1,
    };

    public static readonly QuantityKind Clearance = new()
    {
        Name = "passing_clearance", Symbol = "c_p", Title = "Clearance of the pinion as it passes, tip to tip", Unit = Units.Millimetre,
        Formula = "c_p = a − r_a,pinion − r_a,gear (ring: r_a,ring − a − r_a,pinion)", Symbols = ["a", "d_a1", "d_a2"],
        Source = "closed form",
    };

    public static readonly ImmutableArray<QuantityKind> All = [AxialOverlap, Clearance];
}
