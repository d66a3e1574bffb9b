using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Lubrication;
using Pawl.Quantities;
using Pawl.Specs.Model;
using D = Pawl.Analysis.Rating.DutyQuantities;
using K = Pawl.Analysis.Bearings.BearingQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>One rolling bearing: ratings, loads, life.</summary>
internal sealed partial class BearingBuilder
{
    private readonly AnalysisContext _context;
    private readonly TrainSpec _spec;
    private readonly TrainBuilder _train;
    private readonly TrainForces _forces;
    private readonly LoadShares _duty;
    private readonly BearingPlace _place;
    private readonly Subject _s;
    private ImmutableArray<BearingPlace> _places = [];

    private BearingBuilder(AnalysisContext context, TrainSpec spec, TrainBuilder train, TrainForces forces, LoadShares duty, BearingPlace place)
    {
        (_context, _spec, _train, _forces, _duty, _place) = (context, spec, train, forces, duty, place);
        _s = context.Begin(SubjectKinds.Bearing, $"bearings.{place.Name}", place.Spec.Name.Span).Relate("train", train.Subject);
    }

    public static HeldBodies? AddAll(AnalysisContext context, TrainSpec spec, TrainBuilder train, IReadOnlyDictionary<string, Subject> bodies)
    {
        var places = context.Spec.Bearings.Entries
            .Select(each => new BearingPlace(each, context.Spec.Catalogue.Bearings.Find(each.Bearing.Value))).ToImmutableArray();
        train.Subject.Add(Quantity.Computed(TrainQuantities.BearingsStated, places.Length, []));
        if (places.IsEmpty)
            return null;
        var forces = context.Forces!.Value;
        var duty = LoadShares.Of(train.Subject);
        var bearings = places.Select(place => new BearingBuilder(context, spec, train, forces, duty, place)).ToImmutableArray();
        foreach (var bearing in bearings)
        {
            var own = bearing._place.Spec;
            bearing._s.Relate("shaft", bodies[own.Shaft.Value]).Relate("housing", bodies[own.Housing.Value]);
            bearing.Declare();
        }

        Ends(context, spec, bodies);
        var held = SupportBuilder.Add(spec, train, forces, places, bodies);
        foreach (var bearing in bearings)
        {
            bearing._places = places;
            bearing.Add();
        }

        train.Subject.Add(SetLife(bearings));
        return held;
    }

    /// <summary>Life of all bearings together; a bearing of planets stands for that of every planet.</summary>
    private static Quantity SetLife(ImmutableArray<BearingBuilder> bearings)
    {
        var copies = bearings.SelectMany(bearing => Enumerable.Repeat(bearing, bearing.Copies)).ToImmutableArray();
        var slope = LoadSpectrum.Slope(copies.Any(each => each._place.Type is { IsBall: true }), copies.Any(each => each._place.Type is not { IsBall: true }));
        ImmutableArray<Quantity> lives = [.. copies.Select(each => each._s[K.BasicLife])];
        return Quantity.Compute(TrainQuantities.BearingSetLife, lives, v => LoadSpectrum.SystemLife(v.ToArray(), slope))
            .With([.. copies.Select(static _ => "L_10h,i")]);
    }

    /// <summary>What lies on bodies from outside: stated, or nothing, which the report lists as assumed.</summary>
    private static void Ends(AnalysisContext context, TrainSpec spec, IReadOnlyDictionary<string, Subject> bodies)
    {
        const string None = "for none is stated";
        var duty = context.Spec.Duty;
        var (input, output) = (bodies[spec.Input.Value], bodies[spec.Output.Value]);
        input.Add(context.Amount(SupportQuantities.MachineRadial, duty?.Input?.RadialForce, 0, $"0 N, {None}"));
        input.Add(context.Amount(SupportQuantities.MachineAxial, duty?.Input?.AxialForce, 0, $"0 N, {None}"));
        output.Add(context.Amount(SupportQuantities.MachineRadial, duty?.Output?.RadialForce, 0, $"0 N, {None}"));
        output.Add(context.Amount(SupportQuantities.MachineAxial, duty?.Output?.AxialForce, 0, $"0 N, {None}"));
        foreach (var body in (ReadOnlySpan<Subject>)[input, output])
            body.Add(context.Amount(SupportQuantities.Weight, spec.Bodies.Find(body.Path["bodies.".Length..])?.Mass, 0, $"0 kg, {None}"));
    }

    private BearingSpec Spec => _place.Spec;

    // The reader lets no bearing through that the catalogue does not have.
    private BearingTypeSpec Entry => _place.Entry!;

    private string Key(string key) => $"bearings.{_place.Name}.{key}";

    private string EntryKey(string key) => $"{key} of bearing {Spec.Bearing.Value} in the catalogue";

    private bool IsNeedleCage => Entry.Kind.Value == "needle-cage";

    private bool IsHybrid => Entry.Balls is { Value: "silicon-nitride" };

    private string? Planet => _train.PlanetSet(Spec.Housing.Value)?.Name.Value ?? _train.PlanetSet(Spec.Shaft.Value)?.Name.Value;

    private double N(QuantityKind kind) => _s[kind].Value.Nominal;

    private bool IsGreased => Spec.LubricatedBy is { } stated
        ? stated.Value == "grease"
        : Entry.Closure is { Value: "seals" } || _context.Spec.Lubrication?.Supply is { Value: "grease" };

    private void Add()
    {
        if (_place.Type is { ThrustsUnderRadialLoad: true })
            _s.Add(Quantity.OfTruth(K.HasPartner, Origin.Computed.Instance, _place.Partner is not null, [_s[K.Seat]]));
        Ratings();
        Speeds();
        Loads();
        Life();
        Lubricant();
        Modified();
        Static();
        SpeedLimits();
        Fits();
        Clearance();
        InPlanet();
        Friction();
    }

    private void Declare()
    {
        _s.Add(AnalysisContext.Text(K.Entry, Spec.Bearing, ""));
        _s.Add(AnalysisContext.Text(K.Kind, Entry.Kind, ""));
        _place.Seat = _s.Add(AnalysisContext.Text(K.Seat, Spec.Axial, "floating", "floating, for nothing else is stated"));
        _s.Add(AnalysisContext.Text(K.Shaft, Spec.Shaft, ""));
        _s.Add(AnalysisContext.Text(K.Housing, Spec.Housing, ""));
        _s.Add(Quantity.OfTruth(K.InPlanet, Origin.Computed.Instance, Planet is not null, []));
        _s.Add(_context.Amount(K.Bore, Entry.Bore, ""));
        _s.Add(_context.Amount(K.Outside, Entry.Outside, ""));
        _s.Add(_context.Amount(K.Width, Entry.Width, ""));
        _s.Add(Entry.Elements?.PitchDiameter is { } pitch
            ? _context.Amount(K.PitchDiameter, pitch, "")
            : Derive.From(K.PitchDiameter, _s[K.Bore], _s[K.Outside], BearingSpeed.MeanDiameter));
        _s.Add(Quantity.OfTruth(K.Greased, Origin.Computed.Instance, IsGreased, []));
        if (Entry.Designation is { } designation)
            _s.Add(Misfit(designation.Value));
        _s.Add(AnalysisContext.Truth(K.Hybrid, null, false, "steel balls, for nothing else is stated"));
        if (Entry.Balls is { } balls)
            _s.Add(Quantity.OfTruth(K.Hybrid, AnalysisContext.Declared(balls), IsHybrid, []));
        if (IsHybrid)
            _s.Add(AnalysisContext.Truth(K.StaticOfHybrid, Entry.StaticRatingOfHybrid, false, "that of its all-steel twin, for nothing else is stated"));
    }

    private Quantity Misfit(string designation)
    {
        _context.Uses(BoundaryDimensions.TableId);
        try
        {
            var found = BoundaryDimensions.OfDesignation(designation).Contradiction(N(K.Bore), N(K.Outside), N(K.Width));
            return Quantity.ComputedText(K.Misfit, found ?? "none", [_s[K.Bore], _s[K.Outside], _s[K.Width]]);
        }
        catch (OutsideValidityException unknown)
        {
            return Quantity.NotEvaluated(K.Misfit, [], unknown.Message);
        }
    }

    private void Ratings()
    {
        _s.Add(_context.Amount(K.DynamicRating, Entry.DynamicRating, EntryKey("dynamic_rating")));
        _s.Add(_context.Amount(K.StaticRating, Entry.StaticRating, EntryKey("static_rating")));
        var count = _place.Count;
        var type = _place.Type;
        _s.Add(Typed(K.SetRating, [_s[K.DynamicRating]], v => v[0] * Math.Pow(count, type!.IsBall ? 0.7 : 7.0 / 9)));
        _s.Add(Derive.From(K.SetStaticRating, _s[K.StaticRating], rating => rating * count));
        if (Entry.Elements is not { } elements || type is null)
            return;

        _context.Uses(InternalRating.BallTableId);
        _context.Uses(InternalRating.StaticBallTableId);
        var single = new BearingType(type.Kind, type.ContactAngle, Entry.Rows?.Value ?? 1);
        var (diameter, pitch) = (elements.Diameter.Value.Coherent, elements.PitchDiameter.Value.Coherent);
        if (single.IsBall)
        {
            var balls = new BallSet(single, elements.Count.Value, diameter, pitch);
            Compare(() => InternalRating.Dynamic(balls), () => InternalRating.Static(balls));
        }
        else if (elements.Length is { } length)
        {
            var rollers = new RollerSet(single, elements.Count.Value, diameter, length.Value.Coherent, pitch);
            Compare(() => InternalRating.Dynamic(rollers, RollerMake.Machined), () => InternalRating.Static(rollers));
        }
        else
        {
            string reason = $"{EntryKey("elements.length")} is not stated";
            _s.Add(Quantity.NotEvaluated(K.ComputedRating, [], reason));
            _s.Add(Quantity.NotEvaluated(K.RatingShare, [], reason));
        }
    }

    private void Compare(Func<double> rating, Func<double> staticRating)
    {
        _s.Add(Quantity.Compute(K.ComputedRating, [], _ => rating()));
        _s.Add(Derive.From(K.RatingShare, _s[K.DynamicRating], _s[K.ComputedRating], InternalRating.Stated));
        _s.Add(Derive.From(K.StaticRatingShare, _s[K.StaticRating], stated => InternalRating.Stated(stated, staticRating())));
    }

    /// <summary>A quantity that also needs the kind of the bearing, which may have been refused.</summary>
    private Quantity Typed(QuantityKind kind, ImmutableArray<Quantity> inputs, Formula formula) => _place.Refusal is { } refusal
        ? Quantity.NotEvaluated(kind, inputs, refusal)
        : Quantity.Compute(kind, inputs, formula);

    private double SpeedOf(string body) => _train.Solution?.Speeds?.Of(body)?.Speed.ToDouble() ?? double.NaN;

    private void Speeds()
    {
        var perInput = Math.Abs(SpeedOf(Spec.Shaft.Value) - SpeedOf(Spec.Housing.Value));
        var fastest = _duty.Fastest;
        _s.Add(double.IsNaN(perInput)
            ? Quantity.NotEvaluated(K.RelativeSpeed, [], $"the speeds of {Spec.Shaft.Value} and {Spec.Housing.Value} are not determined")
            : FromSpeeds(
                K.RelativeSpeed, [_s[K.Entry], _train.Subject[T.InputSpeed], .. _duty.Inputs],
                () => _train.Subject[T.InputSpeed].Value.Nominal * perInput * fastest));
    }

    /// <summary>Speed of one ring against the other at the rated speed of the input, rad/s.</summary>
    private double RatedSpeed => N(K.RelativeSpeed) / _duty.Fastest;

    private ImmutableArray<string> LoadReasons => [.. _duty.Reasons, .. _place.Reasons, .. _place.Refusal is { } refusal ? [refusal] : (string[])[]];

    private ImmutableArray<Quantity> LoadInputs() => [_s[K.Entry], _train.Subject[T.InputTorque], _train.Subject[T.InputSpeed], _train.Subject[D.ApplicationFactor]];

    private BearingLoads? _loads;

    /// <summary>A number that comes of the loads, at nominal.</summary>
    private Quantity FromLoads(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<BearingLoads, double> formula)
    {
        if (!LoadReasons.IsEmpty || _loads is null)
            return Quantity.NotEvaluated(kind, inputs, LoadReasons);
        return FromSpeeds(kind, inputs, () => formula(_loads));
    }

    private void Loads()
    {
        _context.Uses(DynamicLoad.DeepGrooveTableId);
        if (LoadReasons.IsEmpty && _place.Load is not null)
            _loads = new(_place, Factor(), _s[K.SetStaticRating] is { IsEvaluated: true } rating ? rating.Value.Nominal : null);
        var inputs = LoadInputs();
        var (rated, reverse) = (_duty.Rated, _duty.Reverse);
        Planetary();
        _s.Add(FromLoads(K.RadialLoad, inputs, loads => Math.Max(loads.Radial(rated.Torque, 1), reverse == 0 ? 0 : loads.Radial(-rated.Torque * reverse, 1))));
        _s.Add(FromLoads(K.AxialLoad, inputs, loads => Math.Max(loads.Axial(rated.Torque, 1), reverse == 0 ? 0 : loads.Axial(-rated.Torque * reverse, 1))));
        var equivalent = FromLoads(K.EquivalentLoad, [_s[K.RadialLoad], _s[K.AxialLoad]], loads => loads.Equivalent(rated, reverse));
        _s.Add(equivalent);
        if (_s[K.AxialLoad] is { IsEvaluated: true, Value.Nominal: > 0 } axial)
        {
            if (_loads?.Ratio(axial.Value.Nominal) is { } ratio && _place.Type is { Kind: BearingKind.DeepGrooveBall })
                _s.Add(Quantity.Computed(K.AxialRatio, ratio, [axial, _s[K.SetStaticRating]]));
            if (_place.Type is { Kind: BearingKind.DeepGrooveBall })
                _s.Add(Derive.From(K.AxialShare, axial, _s[K.SetStaticRating], (force, rating) => force / rating));
        }

        _s.Add(FromLoads(K.LoadShare, [_s[K.EquivalentLoad], _s[K.SetRating]], loads => Max(loads) / N(K.SetRating)));
        if (_place.Type is { IsBall: true })
            _s.Add(FromLoads(K.LoadOverStatic, [_s[K.EquivalentLoad], _s[K.SetStaticRating]], loads => Max(loads) / N(K.SetStaticRating)));
        _s.Add(FromLoads(K.MinLoadShare, [_s[K.EquivalentLoad], _s[K.SetRating]], loads => _duty.Shares.Min(share => loads.Min(share, reverse, rated.Torque)) / N(K.SetRating)));

        double Max(BearingLoads loads) => _duty.States.Max(share => loads.Equivalent(share, reverse));
    }

    /// <summary>f₀ as stated, or of the internal geometry; null where neither is known.</summary>
    private double? Factor()
    {
        if (Entry.FactorF0 is { } stated)
            return stated.Value;
        if (Entry.Elements is not { } elements || _place.Type is not { IsBall: true } type)
            return null;
        try
        {
            return InternalRating.StaticBallFactor(
                new BallSet(type, elements.Count.Value, elements.Diameter.Value.Coherent, elements.PitchDiameter.Value.Coherent).Ratio);
        }
        catch (OutsideValidityException)
        {
            return null;
        }
    }

    private static readonly double Longest = Units.Hour.ToCoherent(1e6);

    /// <summary>Basic rating life under the spectrum, s, without an end.</summary>
    private double Basic(BearingLoads loads)
    {
        var bins = _duty.Shares.Select(share => Bin(loads, share)).ToImmutableArray();
        return RatingLife.Duration(RatingLife.Basic(_place.Type!, N(K.SetRating), Math.Max(N(K.MeanLoad), 1e-6)), LoadSpectrum.MeanSpeed(bins));
    }

    private LoadBin Bin(BearingLoads loads, LoadShare share) => new(loads.Equivalent(share, _duty.Reverse), RatedSpeed * share.Speed, share.Share);

    private void Life()
    {
        ImmutableArray<Quantity> inputs = [_s[K.EquivalentLoad], _s[K.RelativeSpeed]];
        _s.Add(FromLoads(
            K.MeanLoad, inputs, loads => LoadSpectrum.MeanLoad([.. _duty.Shares.Select(share => Bin(loads, share))], RatingLife.Exponent(_place.Type!))));
        _s.Add(FromLoads(K.BasicLife, [_s[K.SetRating], _s[K.MeanLoad], .. inputs], loads => Math.Min(Longest, Basic(loads))));
        _s.Add(_context.Amount(K.Reliability, _context.Spec.Duty?.Reliability, 0.90, "90 %, the reliability of the basic rating life"));
        _context.Uses(RatingLife.ReliabilityTableId);
        _s.Add(Derive.From(K.ReliabilityFactor, _s[K.Reliability], RatingLife.ReliabilityFactor));
    }

    private void Lubricant()
    {
        var train = _train.Subject;
        var oil = _context.Spec.Duty?.Oil?.Running;
        _s.Add(Spec.Running is { } own ? _context.Amount(K.Temperature, own, "")
            : oil is null ? AnalysisContext.Missing(K.Temperature, "duty.oil.running")
            : _context.Assumed(K.Temperature, oil.Value.Coherent, "as warm as the oil, for no temperature of the bearing is stated; a bearing runs warmer"));
        if (IsGreased)
        {
            const string Greased = "the bearing runs on grease of its own, whose base oil the spec does not state";
            _s.Add(Quantity.NotEvaluated(K.WorkingViscosity, [], Greased));
        }
        else
        {
            _s.Add(Derive.From(
                K.WorkingViscosity, train[D.Viscosity40], train[D.Viscosity100], _s[K.Temperature],
                (v40, v100, temperature) => Viscosity.Kinematic(temperature, 40, v40, 100, v100)));
        }

        _s.Add(FromSpeeds(K.ViscosityRatio, [_s[K.WorkingViscosity], _s[K.PitchDiameter], _s[K.RelativeSpeed]], () => Turning.Min(Kappa)));
        if (_context.Spec.Lubrication is { } lubrication)
            _s.Add(AnalysisContext.Truth(K.ExtremePressure, lubrication.ExtremePressure, false, "none proven, for nothing is stated"));
        else
            _s.Add(AnalysisContext.Truth(K.ExtremePressure, null, false, "none proven, for nothing is stated"));
    }

    /// <summary>Shares in which the gearbox turns; standing tires no bearing and needs no film.</summary>
    private ImmutableArray<LoadShare> Turning => [.. _duty.Shares.Where(share => share.Speed > 0)];

    private double Kappa(LoadShare share) => LifeModification.ViscosityRatio(
        N(K.WorkingViscosity), LifeModification.ReferenceViscosity(RatedSpeed * share.Speed, N(K.PitchDiameter)));

    private static Quantity FromSpeeds(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<double> formula) =>
        Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons
            ? Quantity.NotEvaluated(kind, inputs, reasons)
            : Quantity.Guarded(kind, inputs, () => Quantity.Computed(kind, formula(), inputs));

    /// <summary>e_C at a viscosity ratio.</summary>
    private double Cleanliness(double kappa)
    {
        var lubrication = _context.Spec.Lubrication;
        if (lubrication?.Cleanliness is not { Value: var code })
            throw new OutsideValidityException("lubrication.cleanliness is not stated");
        var pitch = N(K.PitchDiameter);
        if (code.StartsWith('-'))
            return Contamination.Factor(lubrication.Filtered is { Value: true } ? LubricantSupply.Filtered : LubricantSupply.Bath, code, kappa, pitch);
        return Contamination.OfClass(code is "extreme" or "high" or "normal" ? $"{code} cleanliness" : $"{code} contamination", pitch).Min;
    }

    private void Modified()
    {
        _context.Uses(Contamination.TableId);
        _context.Uses(Contamination.ClassTableId);
        _s.Add(FromSpeeds(K.Contamination, [_s[K.ViscosityRatio], _s[K.PitchDiameter]], () => Cleanliness(N(K.ViscosityRatio))));
        _s.Add(Entry.FatigueLimit is { } stated
            ? Derive.From(K.FatigueLimit, _s[K.SetStaticRating], _s[K.PitchDiameter], (_, _) => stated.Value.Coherent * _place.Count)
            : Typed(K.FatigueLimit, [_s[K.SetStaticRating], _s[K.PitchDiameter]], v => LifeModification.FatigueLoadLimit(_place.Type!, v[0], v[1])));
        ImmutableArray<Quantity> inputs =
            [_s[K.ReliabilityFactor], _s[K.ViscosityRatio], _s[K.Contamination], _s[K.FatigueLimit], _s[K.SetRating], _s[K.BasicLife]];
        var additives = _s[K.ExtremePressure].Truth;
        _s.Add(FromLoads(K.ModifiedLife, inputs, loads => Math.Min(Longest, Modified(loads))));
        _s.Add(FromLoads(K.LifeFactor, inputs, loads => Modified(loads) / (N(K.ReliabilityFactor) * Basic(loads))));

        double Modified(BearingLoads loads) => LoadSpectrum.Duration([.. _duty.Shares.Select(share => (share.Share, share.Speed > 0 ? Part(loads, share) : double.PositiveInfinity))]);

        double Part(BearingLoads loads, LoadShare share)
        {
            var (bin, type) = (Bin(loads, share), _place.Type!);
            var kappa = Kappa(share);
            var clean = Cleanliness(kappa);
            var load = Math.Max(bin.Load, 1e-6);
            var factor = additives
                ? LifeModification.FactorWithAdditives(type, kappa, clean, clean * N(K.FatigueLimit) / load)
                : LifeModification.Factor(type, kappa, clean * N(K.FatigueLimit) / load);
            return RatingLife.Duration(RatingLife.Modified(RatingLife.Basic(type, N(K.SetRating), load), N(K.ReliabilityFactor), factor), bin.RelativeSpeed);
        }
    }

    private void Static()
    {
        var peak = _train.Subject[D.PeakTorque];
        _s.Add(FromLoads(K.PeakLoad, [peak, .. LoadInputs()], loads => loads.Static(_duty.Peak!.Value, _duty.Fastest)));
        _s.Add(Derive.From(K.StaticSafety, _s[K.SetStaticRating], _s[K.PeakLoad], StaticLoad.Safety));
        _s.Add(_context.Number(K.RequiredStaticSafety, Spec.StaticSafety, 1, "1.0, common practice, no source"));
    }

    private void Friction()
    {
        var kind = FrictionKind;
        _context.Uses(BearingFriction.TableId);
        _s.Add(FromLoads(K.FrictionLoss, [_s[K.EquivalentLoad], _s[K.Bore], _s[K.RelativeSpeed]], loads =>
            BearingFriction.TryCoefficient(kind, out var coefficient, out var reason)
                ? BearingFriction.Loss(
                    BearingFriction.Torque(coefficient, loads.Equivalent(new LoadShare(1, 1, 1), _duty.Reverse), N(K.Bore)), RatedSpeed) * Copies
                : throw new OutsideValidityException(reason)));
    }

    /// <summary>Bearings like this one in the gearbox: one in every planet.</summary>
    private int Copies => Planet is { } planet ? _train.PlanetSet(planet)!.Count.Value : 1;

    private string FrictionKind => (Entry.Kind.Value, Entry.Cage?.Value) switch
    {
        ("deep-groove-ball", _) => "deep groove ball",
        ("angular-contact-ball", _) => _place.Type is { Rows: 2 } ? "angular contact ball double row" : "angular contact ball",
        ("cylindrical-roller", "none") => "cylindrical roller full complement",
        ("cylindrical-roller", _) => "cylindrical roller",
        ("tapered-roller", _) => "tapered roller",
        (_, "none") => "needle roller full complement",
        _ => "needle roller",
    };
}
