using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Rating;
using Pawl.Specs.Model;
using K = Pawl.Analysis.Bearings.BearingQuantities;
using Range = Pawl.Mechanics.Seals.Extent;
using Value = Pawl.Quantities.Extent;

namespace Pawl.Analysis.Bearings;

/// <content>Speed, fits and play.</content>
internal sealed partial class BearingBuilder
{
    // Bearings are measured at 20 °C (ISO 1).
    private const double Room = 20;

    // Ground seats lose this much of their overlap to smoothing; 2 µm to 5 µm are common practice, no source.
    private const double Smoothing = 0.002;

    private static readonly Elastic Steel = new(206_000, 0.3);

    private void SpeedLimits()
    {
        if (Entry.LimitingSpeed is null && Entry.ReferenceSpeed is null)
            _s.Add(AnalysisContext.Missing(K.LimitingShare, $"limiting_speed or reference_speed of bearing {Spec.Bearing.Value} in the catalogue"));
        if (Entry.LimitingSpeed is { } limit)
            _s.Add(Derive.From(K.LimitingShare, _s[K.RelativeSpeed], speed => speed / limit.Value.Coherent));
        if (Entry.ReferenceSpeed is { } reference)
            _s.Add(Derive.From(K.ReferenceShare, _s[K.RelativeSpeed], speed => speed / reference.Value.Coherent));
        _s.Add(Derive.From(
            K.SpeedNumber, _s[K.RelativeSpeed], _s[K.Bore], _s[K.Outside], (speed, bore, outside) =>
                BearingSpeed.Number(speed, BearingSpeed.MeanDiameter(bore, outside)) / 60));
        _context.Uses(BearingSpeed.TableId);
        var hybrid = IsHybrid ? 1.2 : 1;
        _s.Add(FromSpeeds(K.SpeedGuide, [_s[K.Kind]], () => hybrid * BearingSpeed.Guide(GuideKind, GuideLubrication).Min / 60));
        if (Entry.Elements is { } elements && _place.Type is { IsBall: true })
        {
            _s.Add(FromSpeeds(K.CentrifugalShare, [_s[K.RelativeSpeed], _s[K.RadialLoad]], () => Ball(elements)));
        }
    }

    private double Ball(RollingElementsSpec elements)
    {
        var (diameter, pitch) = (elements.Diameter.Value.Coherent, elements.PitchDiameter.Value.Coherent);
        var ratio = diameter * Math.Cos(_place.Type!.ContactAngle) / pitch;
        // The faster ring decides which way the cage goes round; the other is taken as at rest.
        var inner = Math.Abs(SpeedOf(Spec.Shaft.Value)) >= Math.Abs(SpeedOf(Spec.Housing.Value));
        var cage = inner ? BearingSpeed.Cage(N(K.RelativeSpeed), 0, ratio) : BearingSpeed.Cage(0, N(K.RelativeSpeed), ratio);
        var mass = BearingSpeed.BallMass(diameter, IsHybrid ? BearingSpeed.SiliconNitrideDensity : BearingSpeed.SteelDensity);
        var load = N(K.RadialLoad);
        return load > 0
            ? BearingSpeed.Centrifugal(mass, pitch, cage) * elements.Count.Value * _place.Count / load
            : throw new OutsideValidityException("the bearing has no radial load to compare with");
    }

    private string GuideKind => (Entry.Kind.Value, Entry.Cage?.Value) switch
    {
        ("deep-groove-ball", _) => "deep groove ball",
        ("angular-contact-ball", _) => "angular contact ball",
        ("cylindrical-roller", "none") => "cylindrical roller full complement",
        ("cylindrical-roller", _) => "cylindrical roller",
        ("tapered-roller", _) => "tapered roller",
        (_, "none") => "needle roller full complement",
        _ => "needle roller",
    };

    private string GuideLubrication => Entry.Closure is { Value: "seals" } && Entry.Kind.Value == "deep-groove-ball" ? "contact seals"
        : IsGreased ? "grease"
        : _context.Spec.Lubrication?.Supply is { Value: "jet" } && Entry.Kind.Value.EndsWith("ball", StringComparison.Ordinal) ? "jet"
        : "bath";

    /// <summary>What a body is made of: its own material, else that of its first gear, else steel.</summary>
    private (Elastic Elastic, double Expansion) MaterialOf(string body)
    {
        var id = _spec.Bodies.Find(body)?.Material?.Value ?? _train.Gears.FirstOrDefault(gear => gear.Spec.On.Value == body)?.Spec.Material?.Value;
        var material = id is null ? null : _context.Spec.Catalogue.Materials.Find(id);
        return (
            material is { ElasticModulus: { } modulus, PoissonRatio: { } poisson } ? new(modulus.Value.Coherent, poisson.Value) : Steel,
            material?.ThermalExpansion?.Value.Coherent ?? InternalClearance.SteelExpansion);
    }

    /// <summary>A state in which play and fits are looked at.</summary>
    private readonly record struct Warmth(double Shaft, double Inner, double Element, double Outer, double Housing);

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

    private void Fits()
    {
        RingLoads();
        var shaft = _s.Add(_context.Dimension(K.ShaftSeat, Spec.ShaftSeat, Key("shaft_seat")));
        var housing = _s.Add(_context.Dimension(K.HousingSeat, Spec.HousingSeat, Key("housing_seat")));
        if (IsNeedleCage)
            return;
        _context.Uses(RingTolerance.TableId);
        _s.Add(Fit(K.InnerFit, [shaft, _s[K.Bore]], () => InnerFits(Of(shaft))));
        _s.Add(Fit(K.OuterFit, [housing, _s[K.Outside]], () => OuterFits(Of(housing))));
    }

    private static Range Of(Quantity quantity) => new(quantity.Value.Min, quantity.Value.Max);

    private Quantity Fit(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<ImmutableArray<Range>> states)
    {
        if (Quantity.MissingReasons([.. inputs, _train.Subject[Trains.TrainQuantities.OilTemperature]]) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(kind, inputs, reasons);
        try
        {
            return Hull(kind, states(), inputs);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(kind, inputs, outside.Message);
        }
    }

    /// <summary>Least and greatest of all states; nominal is the middle at 20 °C.</summary>
    private static Quantity Hull(QuantityKind kind, ImmutableArray<Range> states, ImmutableArray<Quantity> inputs) => Quantity.WithLimits(
        kind, new Value(states[0].Middle, states.Min(state => state.Min), states.Max(state => state.Max)), inputs);

    private ImmutableArray<Range> InnerFits(Range seat)
    {
        var (bore, expansion) = (RingTolerance.Bore(N(K.Bore)), MaterialOf(Spec.Shaft.Value).Expansion);
        return
        [
            .. States().Select(state => new Range(
                RingFit.Warm(seat.Min - bore.Max, N(K.Bore), expansion, state.Shaft, InternalClearance.SteelExpansion, state.Inner),
                RingFit.Warm(seat.Max - bore.Min, N(K.Bore), expansion, state.Shaft, InternalClearance.SteelExpansion, state.Inner))),
        ];
    }

    private ImmutableArray<Range> OuterFits(Range seat)
    {
        var (outside, expansion) = (RingTolerance.Outside(N(K.Outside)), MaterialOf(Spec.Housing.Value).Expansion);
        return
        [
            .. States().Select(state => new Range(
                RingFit.Warm(outside.Min - seat.Max, N(K.Outside), InternalClearance.SteelExpansion, state.Outer, expansion, state.Housing),
                RingFit.Warm(outside.Max - seat.Min, N(K.Outside), InternalClearance.SteelExpansion, state.Outer, expansion, state.Housing))),
        ];
    }

    /// <summary>Gear forces stand still on central shafts, and turn with the carrier in a planet and on the carrier's own seats only by weight.</summary>
    private void RingLoads()
    {
        var load = DirectionSpeed();
        _s.Add(Ring(K.InnerLoad, SpeedOf(Spec.Shaft.Value), load));
        _s.Add(Ring(K.OuterLoad, SpeedOf(Spec.Housing.Value), load));

        Quantity Ring(QuantityKind kind, double ring, double turning) => double.IsNaN(ring) || double.IsNaN(turning)
            ? Quantity.NotEvaluated(kind, [], "the speeds of its bodies are not determined")
            : Quantity.ComputedText(kind, RingSeat.NeedsInterference(RingSeat.Of(ring, turning)) ? "rotating" : "stationary");
    }

    /// <summary>Speed at which the direction of the load turns, per input speed: that of the carrier, where what turns with it outweighs the rest.</summary>
    private double DirectionSpeed()
    {
        if (Planet is { } planet)
            return SpeedOf(_train.PlanetSet(planet)!.Carrier.Value);
        if (_place.Load is not { } load || !load.TurnsWithCarrier(_duty.Reasons.IsEmpty ? _duty.Rated.Torque : 1))
            return 0;
        foreach (var set in _spec.Planets.Entries)
        {
            if (set.Carrier.Value == _place.Holds || _train.Meshes.Any(mesh => Joins(mesh, _place.Holds, set.Name.Value)))
                return SpeedOf(set.Carrier.Value);
        }

        return 0;

        static bool Joins(MeshBuilder mesh, string? body, string planet) =>
            (mesh.First.Spec.On.Value == body && mesh.Second.Spec.On.Value == planet) || (mesh.Second.Spec.On.Value == body && mesh.First.Spec.On.Value == planet);
    }

    private void Clearance()
    {
        if (Spec.MaxClearance is { } greatest)
            _s.Add(_context.Amount(K.MaxClearance, greatest, ""));
        _s.Add(AnalysisContext.Truth(K.Preloaded, Spec.Preloaded, false, "none is meant, for none is stated"));
        Float();
        if (!IsNeedleCage)
        {
            _s.Add(Spec.Fillet is not { } fillet ? AnalysisContext.Missing(K.FilletReserve, Key("fillet"))
                : Entry.Corner is { } corner ? Quantity.Compute(K.FilletReserve, [], _ => corner.Value.Coherent - fillet.Value.Coherent)
                : AnalysisContext.Missing(K.FilletReserve, EntryKey("corner")));
        }

        if (IsNeedleCage)
        {
            NeedleClearance();
            return;
        }

        if (_place.Type is not { } type)
            return;
        if (type.ContactAngle > 0)
            return;
        _s.Add(AnalysisContext.Text(K.ClearanceClass, Spec.Clearance, Key("clearance")));
        _context.Uses(type.IsBall ? InternalClearance.DeepGrooveTableId : InternalClearance.RollerTableId);
        var fresh = default(Range);
        _s.Add(FromSpan(K.NewClearance, [_s[K.ClearanceClass], _s[K.Bore]], () => fresh = InternalClearance.New(type.Kind, ClassOf(Spec.Clearance!.Value), N(K.Bore))));
        _s.Add(Fit(
            K.OperatingClearance, [_s[K.NewClearance], _s[K.InnerFit], _s[K.OuterFit]],
            () => Operating(type, fresh, InnerFits(Of(_s[K.ShaftSeat])), OuterFits(Of(_s[K.HousingSeat])))));
    }

    private static ClearanceClass ClassOf(string name) => name switch
    {
        "C2" => ClearanceClass.C2,
        "C3" => ClearanceClass.C3,
        "C4" => ClearanceClass.C4,
        "C5" => ClearanceClass.C5,
        _ => ClearanceClass.Normal,
    };

    private static Quantity FromSpan(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<Range> formula)
    {
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(kind, inputs, reasons);
        try
        {
            var range = formula();
            return Quantity.WithLimits(kind, new Value(range.Middle, range.Min, range.Max), inputs);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(kind, inputs, outside.Message);
        }
    }

    private ImmutableArray<Range> Operating(BearingType type, Range fresh, ImmutableArray<Range> inner, ImmutableArray<Range> outer)
    {
        var (bore, outside) = (N(K.Bore), N(K.Outside));
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

    /// <summary>Needles that run on the shaft and in the bore: play is what the parts leave.</summary>
    private void NeedleClearance()
    {
        var (shaft, housing) = (_s[K.ShaftSeat], _s[K.HousingSeat]);
        ImmutableArray<string> reasons =
        [
            .. shaft.Reasons, .. housing.Reasons, .. Entry.Elements is null ? [$"{EntryKey("elements")} is not stated"] : (string[])[],
        ];
        if (!reasons.IsEmpty)
        {
            _s.Add(Quantity.NotEvaluated(K.NewClearance, [shaft, housing], reasons));
            _s.Add(Quantity.NotEvaluated(K.OperatingClearance, [], reasons));
            return;
        }

        var (pin, bore, needle) = (Of(shaft), Of(housing), Entry.Elements!.Diameter.Value.Coherent);
        var fresh = new Range(bore.Min - pin.Max - (2 * needle), bore.Max - pin.Min - (2 * needle));
        _s.Add(Quantity.WithLimits(K.NewClearance, new Value(fresh.Middle, fresh.Min, fresh.Max), [shaft, housing]));
        var (inner, outer) = (MaterialOf(Spec.Shaft.Value).Expansion, MaterialOf(Spec.Housing.Value).Expansion);
        _s.Add(Hull(K.OperatingClearance, [.. States().Select(Warm)], [_s[K.NewClearance]]));

        Range Warm(Warmth state)
        {
            var change = (outer * bore.Middle * (state.Outer - Room)) - (inner * pin.Middle * (state.Inner - Room))
                - (2 * InternalClearance.SteelExpansion * needle * (state.Element - Room));
            return new(fresh.Min + change, fresh.Max + change);
        }
    }

    /// <summary>Way left of a floating bearing beside one that holds the same body along the axis.</summary>
    private void Float()
    {
        if (_place.Duty != "floating" || Planet is not null)
            return;
        var holders = _places.Where(place => place.Holds is not null && place.Holds == _place.Holds && place.Duty != "floating").ToImmutableArray();
        if (holders.IsEmpty)
            return;
        ImmutableArray<string> reasons =
        [
            .. Spec.Float is null ? [$"{Key("float")} is not stated"] : (string[])[],
            .. Spec.AxialPosition is null ? [$"{Key("axial_position")} is not stated"] : (string[])[],
            .. holders.Where(place => place.Spec.AxialPosition is null).Select(place => $"bearings.{place.Name}.axial_position is not stated"),
            .. _train.Subject[Trains.TrainQuantities.OilTemperature].Reasons,
        ];
        if (!reasons.IsEmpty)
        {
            _s.Add(Quantity.NotEvaluated(K.AxialFloat, [], reasons));
            return;
        }

        var distance = holders.Max(place => Math.Abs(Spec.AxialPosition!.Value.Coherent - place.Spec.AxialPosition!.Value.Coherent));
        var (shaft, housing) = (MaterialOf(Spec.Shaft.Value).Expansion, MaterialOf(Spec.Housing.Value).Expansion);
        var left = States().Min(state => Spec.Float!.Value.Coherent - Math.Abs((shaft * (state.Shaft - Room)) - (housing * (state.Housing - Room))) * distance);
        _s.Add(Quantity.Computed(K.AxialFloat, left, [_s[K.Seat]]));
    }

    private void Planetary()
    {
        if (Planet is not { } planet)
            return;
        if (_forces.OrbitForces.TryGetValue(planet, out var force))
        {
            _s.Add(Quantity.Computed(K.OrbitForce, force, [_train.Subject[Trains.TrainQuantities.InputSpeed]]));
            _s.Add(_place.Reasons.IsEmpty && _forces.ToothForceOf(planet) > 0
                ? Quantity.Computed(K.OrbitShare, force / _forces.ToothForceOf(planet), [_s[K.OrbitForce]])
                : Quantity.NotEvaluated(K.OrbitShare, [_s[K.OrbitForce]], [.. _place.Reasons.DefaultIfEmpty("the planet has no tooth forces")]));
        }

        if (_place.Tilt is { } tilt)
            _s.Add(Quantity.Computed(K.TiltCouple, Math.Abs(tilt) < 1e-6 ? 0 : tilt, LoadInputs()));
    }

    private void InPlanet()
    {
        if (Planet is { } planet && _forces.Accelerations.TryGetValue(planet, out var acceleration))
        {
            _s.Add(Quantity.Computed(K.Acceleration, acceleration * _duty.Fastest * _duty.Fastest, [_train.Subject[Trains.TrainQuantities.InputSpeed]]));
            if (Entry.MaxAcceleration is { } limit)
                _s.Add(Derive.From(K.AccelerationShare, _s[K.Acceleration], a => a / limit.Value.Coherent));
        }

        if (!IsNeedleCage)
            return;
        _s.Add(MaterialBuilder.Hardness(_context, K.RacewayHardness, Spec.RacewayHardness, Key("raceway_hardness")));
        _s.Add(FromLoads(
            K.RacewayPressure, [_s[K.RadialLoad], _s[K.Bore]], loads => Raceway(_duty.States.Max(share => loads.MaxRadial(share, _duty.Reverse)))));
        _s.Add(FromLoads(K.PeakRacewayPressure, [_train.Subject[Rating.DutyQuantities.PeakTorque], _s[K.Bore]], loads => Raceway(loads.PeakRadial(_duty.Peak!.Value, _duty.Fastest))));
    }

    private double Raceway(double radial)
    {
        if (Entry.Elements is not { Length: { } length } elements)
            throw new OutsideValidityException($"{EntryKey("elements.length")} is not stated");
        var rows = (Entry.Rows?.Value ?? 1) * _place.Count;
        return PlanetBearing.PinPressure(
            PlanetBearing.HeaviestRoller(radial / rows, elements.Count.Value), length.Value.Coherent, elements.Diameter.Value.Coherent, N(K.Bore), Steel,
            MaterialOf(Spec.Shaft.Value).Elastic);
    }
}
