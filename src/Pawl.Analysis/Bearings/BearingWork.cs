using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Lubrication;
using Pawl.Quantities;
using Pawl.Specs.Model;
using B = Pawl.Analysis.Bearings.BearingQuantities;
using L = Pawl.Analysis.Bearings.BearingLifeQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>What comes of the loads of one bearing, at nominal dimensions: solved once for all its quantities.</summary>
internal sealed class BearingWork
{
    private static readonly double Longest = Units.Hour.ToCoherent(1e6);

    private readonly AnalysisContext _context;
    private readonly Subject _bearing;
    private readonly TrainBuilder _train;
    private readonly BearingPlace _place;
    private readonly LoadShares _duty;
    private readonly Lazy<BearingLoads?> _loads;

    private BearingWork(Subject bearing)
    {
        (_context, _bearing, _train, _place) = (bearing.Context, bearing, bearing.Context.Train!, B.PlaceOf(bearing));
        _duty = LoadShares.Of(_train.Subject);
        _loads = new(() => _place.Load is null
            ? null
            : new(_place, Factor(), bearing[B.SetStaticRating] is { IsEvaluated: true } rating ? rating.Value.Nominal : null));
    }

    public static BearingWork Of(Subject bearing) => bearing.Context.Once(bearing, static each => new BearingWork(each));

    /// <summary>Why its loads are not known; empty when they are.</summary>
    public ImmutableArray<string> Reasons
    {
        get
        {
            ImmutableArray<string> reasons = [.. _duty.Reasons, .. _place.Reasons, .. _place.Refusal is { } refusal ? [refusal] : (string[])[]];
            return reasons.IsEmpty && _place.Load is null ? [$"the loads of {_place.Name} are not known"] : reasons;
        }
    }

    /// <summary>Why the shares of the service life are not known; empty when they are.</summary>
    public ImmutableArray<string> DutyReasons => _duty.Reasons;

    /// <summary>Why nothing can be said of its film; empty when something can.</summary>
    public ImmutableArray<string> TurningReasons =>
        !_duty.Reasons.IsEmpty ? _duty.Reasons : Turning.IsEmpty ? ["the gearbox turns in no share of the service life"] : [];

    /// <summary>The planet that it carries; null where it carries none.</summary>
    public string? Planet => _train.PlanetSet(Spec.Housing.Value)?.Name.Value ?? _train.PlanetSet(Spec.Shaft.Value)?.Name.Value;

    /// <summary>Bearings like this one in the gearbox: one in every planet.</summary>
    public int Copies => Planet is { } planet ? _train.PlanetSet(planet)!.Count.Value : 1;

    public bool IsHybrid => Entry.Balls is { Value: "silicon-nitride" };

    public bool IsGreased => Spec.LubricatedBy is { } stated
        ? stated.Value == "grease"
        : Entry.Closure is { Value: "seals" } || _context.Spec.Lubrication?.Supply is { Value: "grease" };

    private BearingSpec Spec => _place.Spec;

    private BearingTypeSpec Entry => _place.Entry!;

    private TrainForces Forces => _context.Forces!;

    private BearingLoads Loads => _loads.Value!;

    private LoadShare RatedLoad => _duty.Rated;

    private double Reverse => _duty.Reverse;

    /// <summary>Speed of one ring against the other at the rated speed of the input, rad/s.</summary>
    private double RatedSpeed => Nominal(B.RelativeSpeed) / _duty.Fastest;

    /// <summary>Shares in which the gearbox turns; standing tires no bearing and needs no film.</summary>
    private ImmutableArray<LoadShare> Turning => [.. _duty.Shares.Where(share => share.Speed > 0)];

    /// <summary>Value of one of its quantities at nominal, in coherent units.</summary>
    public double Nominal(QuantityKind kind) => _bearing[kind].Value.Nominal;

    /// <summary>What contradicts its designation.</summary>
    public string Misfit() => BoundaryDimensions.OfDesignation(Entry.Designation!.Value)
        .Contradiction(Nominal(B.Bore), Nominal(B.Outside), Nominal(B.Width)) ?? "none";

    /// <summary>A load at the rated torque in the worse direction of drive, N.</summary>
    public double Rated(Func<BearingLoads, Func<double, double, double>> which)
    {
        var load = which(Loads);
        return Math.Max(load(RatedLoad.Torque, 1), Reverse == 0 ? 0 : load(-RatedLoad.Torque * Reverse, 1));
    }

    public double? OrbitForce() => Planet is { } planet && Forces.OrbitForces.TryGetValue(planet, out var force) ? force : null;

    public ImmutableArray<string> OrbitReasons => !_place.Reasons.IsEmpty ? _place.Reasons
        : _place.Load is null ? [$"the loads of {_place.Name} are not known"]
        : [];

    /// <summary>What the bearing bears of the orbit, N at the rated speed.</summary>
    public double OrbitLoad() => _place.Load!.Value.Orbit.Radial;

    /// <summary>What the bearing bears of the tooth forces, N at the rated torque.</summary>
    public double ToothLoad()
    {
        var load = _place.Load!.Value;
        return double.Hypot(load.Radial.X + load.Tangential.X, load.Radial.Y + load.Tangential.Y);
    }

    /// <summary>Couple that it bears as the only bearing of a planet, N·mm; null where it is not.</summary>
    public double? Tilt() => Planet is not null && _place.Tilt is { } tilt ? Math.Abs(tilt) < 1e-6 ? 0 : tilt : null;

    public double? AxialRatio() => Loads.Ratio(Nominal(B.AxialLoad));

    public double Equivalent() => Loads.Equivalent(RatedLoad, Reverse);

    public double MaxEquivalent() => _duty.States.Max(share => Loads.Equivalent(share, Reverse));

    public double MinEquivalent() => _duty.Shares.Min(share => Loads.Min(share, Reverse, RatedLoad.Torque));

    public double MaxRadial() => _duty.States.Max(share => Loads.MaxRadial(share, Reverse));

    public double PeakLoad() => Loads.Static(_duty.Peak!.Value, _duty.Fastest);

    public double PeakRadial() => Loads.PeakRadial(_duty.Peak!.Value, _duty.Fastest);

    public double MeanLoad() => MeanLoad(_duty.Shares);

    /// <summary>Mean load in a planet that is not the most loaded, N.</summary>
    public double MeanLoadOfOthers() =>
        MeanLoad([.. _duty.Shares.Select(share => share with { Torque = share.Torque * Nominal(BearingSetQuantities.OtherShare) })]);

    /// <summary>Basic rating life in a planet that is not the most loaded, s.</summary>
    public double LifeOfOthers() => Math.Min(Longest, Basic(Nominal(BearingSetQuantities.MeanLoadOfOthers)));

    /// <summary>K_γ of the planet that it carries: the least of its meshes, which leaves the others the most.</summary>
    public double LeastSharing() => Forces.LeastSharingOf(Planet!);

    /// <summary>Basic rating life under the spectrum, s.</summary>
    public double BasicLife() => Math.Min(Longest, Basic());

    public double ModifiedLife() => Math.Min(Longest, Modified());

    public double LifeFactor() => Modified() / (Nominal(L.ReliabilityFactor) * Basic());

    public double ViscosityRatio() => Turning.Min(Kappa);

    /// <summary>e_C at a viscosity ratio.</summary>
    public double Cleanliness(double kappa)
    {
        var lubrication = _context.Spec.Lubrication;
        if (lubrication?.Cleanliness is not { Value: var code })
            throw new OutsideValidityException("lubrication.cleanliness is not stated");
        var pitch = Nominal(B.PitchDiameter);
        if (code.StartsWith('-'))
            return Contamination.Factor(lubrication.Filtered is { Value: true } ? LubricantSupply.Filtered : LubricantSupply.Bath, code, kappa, pitch);
        return Contamination.OfClass(code is "extreme" or "high" or "normal" ? $"{code} cleanliness" : $"{code} contamination", pitch).Min;
    }

    /// <summary>Speed number that such a bearing bears, mm/s.</summary>
    public double SpeedGuide() => (IsHybrid ? 1.2 : 1) * BearingSpeed.Guide(GuideKind, GuideLubrication).Min / 60;

    /// <summary>Centrifugal force of a ball over its mean load.</summary>
    public double CentrifugalShare()
    {
        var elements = Entry.Elements!;
        var (diameter, pitch) = (elements.Diameter.Value.Coherent, elements.PitchDiameter.Value.Coherent);
        var ratio = diameter * Math.Cos(_place.Type!.ContactAngle) / pitch;
        // The faster ring decides which way the cage goes round; the other is taken as at rest.
        var inner = Math.Abs(SpeedOf(Spec.Shaft.Value)) >= Math.Abs(SpeedOf(Spec.Housing.Value));
        var cage = inner ? BearingSpeed.Cage(Nominal(B.RelativeSpeed), 0, ratio) : BearingSpeed.Cage(0, Nominal(B.RelativeSpeed), ratio);
        var mass = BearingSpeed.BallMass(diameter, IsHybrid ? BearingSpeed.SiliconNitrideDensity : BearingSpeed.SteelDensity);
        var load = Nominal(B.RadialLoad);
        return load > 0
            ? BearingSpeed.Centrifugal(mass, pitch, cage) * elements.Count.Value * _place.Count / load
            : throw new OutsideValidityException("the bearing has no radial load to compare with");
    }

    /// <summary>Friction of all such bearings at the rated torque, N·mm/s.</summary>
    public double FrictionLoss() => BearingFriction.TryCoefficient(FrictionKind, out var coefficient, out var reason)
        ? BearingFriction.Loss(
            BearingFriction.Torque(coefficient, Loads.Equivalent(new LoadShare(1, 1, 1), Reverse), Nominal(B.Bore)), RatedSpeed) * Copies
        : throw new OutsideValidityException(reason);

    /// <summary>Acceleration of the planet's place, mm/s²; null where it carries no planet.</summary>
    public double? Acceleration() => Planet is { } planet && Forces.Accelerations.TryGetValue(planet, out var acceleration)
        ? acceleration * _duty.Fastest * _duty.Fastest
        : null;

    private double SpeedOf(string body) => _train.Solution?.Speeds?.Of(body)?.Speed.ToDouble() ?? double.NaN;

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

    private double Basic() => Basic(Nominal(L.MeanLoad));

    private double Basic(double mean) => RatingLife.Duration(
        RatingLife.Basic(_place.Type!, Nominal(B.SetRating), Math.Max(mean, 1e-6)), LoadSpectrum.MeanSpeed([.. _duty.Shares.Select(Bin)]));

    private double MeanLoad(ImmutableArray<LoadShare> shares) => LoadSpectrum.MeanLoad([.. shares.Select(Bin)], RatingLife.Exponent(_place.Type!));

    private LoadBin Bin(LoadShare share) => new(Loads.Equivalent(share, Reverse), RatedSpeed * share.Speed, share.Share);

    private double Kappa(LoadShare share) => LifeModification.ViscosityRatio(
        Nominal(L.WorkingViscosity), LifeModification.ReferenceViscosity(RatedSpeed * share.Speed, Nominal(B.PitchDiameter)));

    private double Modified() => LoadSpectrum.Duration([.. _duty.Shares.Select(share => (share.Share, share.Speed > 0 ? Part(share) : double.PositiveInfinity))]);

    private double Part(LoadShare share)
    {
        var (bin, type) = (Bin(share), _place.Type!);
        var kappa = Kappa(share);
        var clean = Cleanliness(kappa);
        var load = Math.Max(bin.Load, 1e-6);
        var factor = _bearing[L.ExtremePressure].Truth
            ? LifeModification.FactorWithAdditives(type, kappa, clean, clean * Nominal(L.FatigueLimit) / load)
            : LifeModification.Factor(type, kappa, clean * Nominal(L.FatigueLimit) / load);
        return RatingLife.Duration(
            RatingLife.Modified(RatingLife.Basic(type, Nominal(B.SetRating), load), Nominal(L.ReliabilityFactor), factor), bin.RelativeSpeed);
    }

    private string GuideKind => Entry.Kind.Value == "angular-contact-ball" ? "angular contact ball" : FrictionKind;

    private string GuideLubrication => Entry.Closure is { Value: "seals" } && Entry.Kind.Value == "deep-groove-ball" ? "contact seals"
        : IsGreased ? "grease"
        : _context.Spec.Lubrication?.Supply is { Value: "jet" } && Entry.Kind.Value.EndsWith("ball", StringComparison.Ordinal) ? "jet"
        : "bath";

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
