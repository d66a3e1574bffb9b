using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Rating;
using Pawl.Specs.Model;
using B = Pawl.Analysis.Bearings.BearingQuantities;
using F = Pawl.Analysis.Bearings.BearingFitQuantities;
using Range = Pawl.Mechanics.Interval;
using Value = Pawl.Quantities.Extent;

namespace Pawl.Analysis.Bearings;

/// <summary>Fits and play of one bearing at 20 °C, coldest and hottest.</summary>
internal sealed class BearingPlay
{
    // Bearings are measured at 20 °C (ISO 1).
    private const double Room = 20;

    // Ground seats lose this much of their overlap to smoothing; 2 µm to 5 µm are common practice, no source.
    private const double Smoothing = 0.002;

    private static readonly Elastic Steel = new(206_000, 0.3);

    private readonly AnalysisContext _context;
    private readonly Subject _bearing;
    private readonly BearingPlace _place;

    private BearingPlay(Subject bearing) => (_context, _bearing, _place) = (bearing.Context, bearing, B.PlaceOf(bearing));

    public static BearingPlay Of(Subject bearing) => bearing.Context.Once(bearing, static each => new BearingPlay(each));

    /// <summary>Bearings that hold the body of a floating one along the axis; none where it does not float.</summary>
    public ImmutableArray<BearingPlace> Holders => _place.Duty != "floating" || BearingWork.Of(_bearing).Planet is not null
        ? []
        : [.. _context.Held!.Places.Where(place => place.Holds is not null && place.Holds == _place.Holds && place.Duty != "floating")];

    /// <summary>Why the way left of a floating bearing is not known; empty when it is.</summary>
    public ImmutableArray<string> FloatReasons =>
    [
        .. Spec.Float is null ? [$"{_bearing.Keys}.float is not stated"] : (string[])[],
        .. Spec.AxialPosition is null ? [$"{_bearing.Keys}.axial_position is not stated"] : (string[])[],
        .. Holders.Where(static place => place.Spec.AxialPosition is null).Select(static place => $"bearings.{place.Name}.axial_position is not stated"),
        .. _context.Train!.Subject[TrainQuantities.OilTemperature].Reasons,
    ];

    private BearingSpec Spec => _place.Spec;

    private BearingTypeSpec Entry => _place.Entry!;

    private bool IsHybrid => BearingWork.Of(_bearing).IsHybrid;

    private double N(QuantityKind kind) => _bearing[kind].Value.Nominal;

    public Value InnerFit() => Hull(InnerFits(SpanOf(F.ShaftSeat)));

    /// <summary>Overlap in the middle of the tolerances, mm, where coldest, hottest or 20 °C leave the least.</summary>
    public double MeanInnerFit() => InnerFits(SpanOf(F.ShaftSeat)).Min(static state => state.Middle);

    public Value OuterFit() => Hull(OuterFits(SpanOf(F.HousingSeat)));

    public Value NewClearance() => Hull([Fresh()]);

    public Value OperatingClearance() => Hull(Operating(_place.Type!, Fresh(), InnerFits(SpanOf(F.ShaftSeat)), OuterFits(SpanOf(F.HousingSeat))));

    /// <summary>Play of needles that run on the shaft and in the bore.</summary>
    public Value NeedleClearance()
    {
        var (pin, bore, fresh, needle) = (SpanOf(F.ShaftSeat), SpanOf(F.HousingSeat), SpanOf(F.NewClearance), N(B.ElementDiameter));
        var (inner, outer) = (MaterialOf(Spec.Shaft.Value).Expansion, MaterialOf(Spec.Housing.Value).Expansion);
        return Hull([.. States().Select(Warm)]);

        Range Warm(Warmth state)
        {
            var change = (outer * bore.Middle * (state.Outer - Room)) - (inner * pin.Middle * (state.Inner - Room))
                - (2 * InternalClearance.SteelExpansion * needle * (state.Element - Room));
            return new(fresh.Min + change, fresh.Max + change);
        }
    }

    /// <summary>Way left of a floating bearing beside one that holds the same body along the axis, mm.</summary>
    public double AxialFloat()
    {
        var distance = Holders.Max(place => Math.Abs(Spec.AxialPosition!.Value.Coherent - place.Spec.AxialPosition!.Value.Coherent));
        var (shaft, housing) = (MaterialOf(Spec.Shaft.Value).Expansion, MaterialOf(Spec.Housing.Value).Expansion);
        return States().Min(state => Spec.Float!.Value.Coherent - Math.Abs((shaft * (state.Shaft - Room)) - (housing * (state.Housing - Room))) * distance);
    }

    /// <summary>Pressure of the heaviest roller on the shaft, MPa, at a radial load, N.</summary>
    public double RacewayPressure(double radial)
    {
        if (Entry.Elements is not { Length: { } length } elements)
            throw new OutsideValidityException($"{B.OfEntry(Spec, "elements.length")} is not stated");
        var rows = (Entry.Rows?.Value ?? 1) * _place.Count;
        return PlanetBearing.PinPressure(
            PlanetBearing.HeaviestRoller(radial / rows, elements.Count.Value), length.Value.Coherent, elements.Diameter.Value.Coherent, N(B.Bore), Steel,
            MaterialOf(Spec.Shaft.Value).Elastic);
    }

    private Range SpanOf(QuantityKind kind) => new(_bearing[kind].Value.Min, _bearing[kind].Value.Max);

    private Range Fresh() => InternalClearance.New(_place.Type!.Kind, ClassOf(Spec.Clearance!.Value), N(B.Bore));

    /// <summary>Least and greatest of all states; nominal is the middle at 20 °C.</summary>
    private static Value Hull(ImmutableArray<Range> states) =>
        new(states[0].Middle, states.Min(static state => state.Min), states.Max(static state => state.Max));

    /// <summary>What a body is made of: its own material, else that of its first gear, else steel.</summary>
    private (Elastic Elastic, double Expansion) MaterialOf(string body)
    {
        var id = _context.Spec.Train!.Bodies.Find(body)?.Material?.Value ?? _context.Train!.GearsOn(body).FirstOrDefault()?.Spec.Material?.Value;
        var material = id is null ? null : _context.Spec.Catalogue.Materials.Find(id);
        return (
            material is { ElasticModulus: { } modulus, PoissonRatio: { } poisson } ? new(modulus.Value.Coherent, poisson.Value) : Steel,
            material?.ThermalExpansion?.Value.Coherent ?? InternalClearance.SteelExpansion);
    }

    /// <summary>A state in which play and fits are looked at.</summary>
    private sealed record Warmth(double Shaft, double Inner, double Element, double Outer, double Housing);

    private ImmutableArray<Warmth> States()
    {
        var oil = _context.Spec.Duty?.Oil;
        var states = ImmutableArray.CreateBuilder<Warmth>();
        states.Add(new(Room, Room, Room, Room, Room));
        if (oil?.Coldest is { } coldest)
            states.Add(Even(coldest.Value.Coherent));
        var running = Spec.Running?.Value.Coherent ?? oil?.Running?.Value.Coherent;
        var hottest = Math.Max(oil?.Hottest?.Value.Coherent ?? double.NegativeInfinity, running ?? double.NegativeInfinity);
        if (double.IsFinite(hottest))
        {
            var inner = hottest + (Spec.InnerWarmer?.Value.Coherent ?? InnerWarmer);
            states.Add(new(inner, inner, (inner + hottest) / 2, hottest, hottest));
        }

        return states.ToImmutable();

        static Warmth Even(double temperature) => new(temperature, temperature, temperature, temperature, temperature);
    }

    // Common practice, no source: the inner ring of a turning shaft runs 5 K to 10 K above the outer.
    private const double InnerWarmer = 10;

    private ImmutableArray<Range> InnerFits(Range seat)
    {
        var (bore, expansion) = (RingTolerance.Bore(N(B.Bore)), MaterialOf(Spec.Shaft.Value).Expansion);
        return
        [
            .. States().Select(state => new Range(
                RingFit.Warm(seat.Min - bore.Max, N(B.Bore), expansion, state.Shaft, InternalClearance.SteelExpansion, state.Inner),
                RingFit.Warm(seat.Max - bore.Min, N(B.Bore), expansion, state.Shaft, InternalClearance.SteelExpansion, state.Inner))),
        ];
    }

    private ImmutableArray<Range> OuterFits(Range seat)
    {
        var (outside, expansion) = (RingTolerance.Outside(N(B.Outside)), MaterialOf(Spec.Housing.Value).Expansion);
        return
        [
            .. States().Select(state => new Range(
                RingFit.Warm(outside.Min - seat.Max, N(B.Outside), InternalClearance.SteelExpansion, state.Outer, expansion, state.Housing),
                RingFit.Warm(outside.Max - seat.Min, N(B.Outside), InternalClearance.SteelExpansion, state.Outer, expansion, state.Housing))),
        ];
    }

    private static ClearanceClass ClassOf(string name) => name switch
    {
        "C2" => ClearanceClass.C2,
        "C3" => ClearanceClass.C3,
        "C4" => ClearanceClass.C4,
        "C5" => ClearanceClass.C5,
        _ => ClearanceClass.Normal,
    };

    private ImmutableArray<Range> Operating(BearingType type, Range fresh, ImmutableArray<Range> inner, ImmutableArray<Range> outer)
    {
        var (bore, outside) = (N(B.Bore), N(B.Outside));
        var (inside, beyond) = Entry.Elements is { } elements
            ? (elements.PitchDiameter.Value.Coherent - elements.Diameter.Value.Coherent, elements.PitchDiameter.Value.Coherent + elements.Diameter.Value.Coherent)
            : InternalClearance.Raceways(type, bore, outside);
        var (shaft, housing) = (MaterialOf(Spec.Shaft.Value).Elastic, MaterialOf(Spec.Housing.Value).Elastic);
        var hole = Spec.ShaftBore?.Value.Coherent ?? 0;
        var around = Spec.HousingOutside?.Value.Coherent ?? double.PositiveInfinity;
        var element = IsHybrid ? InternalClearance.SiliconNitrideExpansion : InternalClearance.SteelExpansion;
        var states = States();
        var found = ImmutableArray.CreateBuilder<Range>(states.Length);
        for (var k = 0; k < states.Length; k++)
        {
            var state = states[k];
            var loss = InternalClearance.ThermalLoss(inside, beyond, state.Inner, state.Outer, state.Element, elementExpansion: element);
            found.Add(InternalClearance.Operating(
                fresh, new(Growth(inner[k].Min), Growth(inner[k].Max)), new(Contraction(outer[k].Min), Contraction(outer[k].Max)), Range.Exactly(loss)));
        }

        return found.MoveToImmutable();

        double Growth(double overlap) => RingFit.InnerRacewayGrowth(RingFit.Effective(overlap, Smoothing), bore, inside, hole, shaft, Steel);
        double Contraction(double overlap) => RingFit.OuterRacewayContraction(RingFit.Effective(overlap, Smoothing), outside, beyond, around, housing, Steel);
    }
}
