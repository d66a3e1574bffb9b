using Pawl.Analysis.Core;
using Pawl.Analysis.Pins;
using Pawl.Mechanics.Bearings;
using F = Pawl.Analysis.Bearings.BearingFitQuantities;
using Value = Pawl.Quantities.Extent;

namespace Pawl.Analysis.Bearings;

/// <summary>How the axis of the most loaded planet tilts against its carrier: through the play of its bearings, and with its bent pin.</summary>
internal sealed class PlanetTilt
{
    private readonly TrainForces _forces;
    private readonly LoadShares _duty;
    private readonly string _planet;
    private readonly ImmutableArray<BearingPlace> _places;
    private readonly ImmutableArray<Play> _plays;
    private readonly Bent? _pin;

    private PlanetTilt(AnalysisContext context, string planet)
    {
        (_forces, _planet, _duty) = (context.Forces!, planet, LoadShares.Of(context.Train!.Subject));
        _places = [.. context.Held!.Places.Where(place => place.Holds == planet).OrderBy(static place => place.Support?.Position)];
        if (_duty.Reasons is { IsEmpty: false } duty)
            throw new OutsideValidityException(string.Join("; ", duty));
        if (_places.IsEmpty)
            throw new OutsideValidityException($"no bearing carries {planet}");
        if (_places.SelectMany(static place => place.Load is null ? place.Reasons.DefaultIfEmpty($"the loads of {place.Name} are not known") : []).FirstOrDefault() is { } reason)
            throw new OutsideValidityException(reason);
        _plays = [.. _places.Select(place => PlayOf(context, place))];
        _pin = PinOf(context);
    }

    public static PlanetTilt Of(AnalysisContext context, string planet) => new(context, planet);

    /// <summary>Part of the tilt that opens the flanks of a mesh, rad, of all states of the duty and both directions of drive.</summary>
    /// <remarks>Positive the way it goes at nominal in each state; below zero where the limits of play turn it over.</remarks>
    public Value AcrossFlanks(string mesh)
    {
        var (nominal, least, greatest) = (0.0, double.PositiveInfinity, double.NegativeInfinity);
        foreach (var share in _duty.States.Where(static share => share.Torque > 0))
        {
            foreach (var torque in (ReadOnlySpan<double>)(_duty.Reverse == 0 ? [share.Torque] : [share.Torque, -share.Torque * _duty.Reverse]))
            {
                var normal = _forces.FlankNormal(mesh, _planet, torque);
                var middle = Along(normal, torque, share.Speed, [.. _plays.Select(static play => play.Alone.Nominal)], Size.Nominal);
                nominal = Math.Max(nominal, Math.Abs(middle));
                foreach (var pin in (ReadOnlySpan<Size>)[Size.Least, Size.Greatest])
                {
                    for (var corner = 0; corner < 2 << _plays.Length; corner++)
                    {
                        var at = Along(normal, torque, share.Speed, Corner(corner), pin) * (middle < 0 ? -1 : 1);
                        (least, greatest) = (Math.Min(least, at), Math.Max(greatest, at));
                    }
                }
            }
        }

        return double.IsFinite(least)
            ? new(nominal, Math.Min(least, nominal), Math.Max(greatest, nominal))
            : throw new OutsideValidityException("no share of the duty has a torque");
    }

    /// <summary>Plays at a corner: each bearing at a limit of its own, all as cold or as hot, as the last bit says.</summary>
    private ImmutableArray<double> Corner(int corner) =>
    [
        .. _plays.Select((play, k) => ((corner >> k & 1) == 0 ? play.Alone.Min : play.Alone.Max) + ((corner >> _plays.Length & 1) == 0 ? play.Cold : play.Hot)),
    ];

    private double Along((double X, double Y) normal, double torque, double speed, ImmutableArray<double> free, Size pin)
    {
        var loads = _places.Select(place => On(place.Load!.Value, torque, speed)).ToImmutableArray();
        var plays = free.Select(static play => Math.Max(0, play)).ToImmutableArray();
        if (_places is [var only])
            return Single(only, loads[0], plays[0], normal, pin);

        // Each end goes through half its play the way it is pressed, and down with the pin.
        var (first, second) = (_places[0].Support!.Position, _places[1].Support!.Position);
        var bent = _pin?.Deflections(loads, [first, second], pin) ?? [(0, 0), (0, 0)];
        var ends = loads.Select((load, k) => Through(load, plays[k]) is var (x, y) ? (X: x + bent[k].X, Y: y + bent[k].Y) : default).ToImmutableArray();
        return (((ends[1].X - ends[0].X) * normal.X) + ((ends[1].Y - ends[0].Y) * normal.Y)) / (second - first);
    }

    /// <summary>One bearing: within the middle third of its rollers the load keeps it straight, beyond that it takes up its play.</summary>
    private double Single(BearingPlace place, (double X, double Y) load, double play, (double X, double Y) normal, Size pin)
    {
        var length = place.Entry!.Elements?.Length?.Value.Coherent
            ?? throw new OutsideValidityException($"{BearingQuantities.OfEntry(place.Spec, "elements.length")} is not stated");
        var size = double.Hypot(load.X, load.Y);
        var tilts = (place.Tilt ?? 0) > size * length / 6;
        var slope = _pin is null ? (X: 0, Y: 0) : _pin.Slope(load, place.Support!.Position, pin);
        var across = (slope.X * normal.X) + (slope.Y * normal.Y);
        return across + ((tilts ? play / length : 0) * (across < 0 ? -1 : 1));
    }

    private static (double X, double Y) Through((double X, double Y) load, double play)
    {
        var size = double.Hypot(load.X, load.Y);
        return size < 1e-3 ? (0, 0) : (load.X / size * play / 2, load.Y / size * play / 2);
    }

    /// <summary>What presses on the pin at a bearing, N.</summary>
    private static (double X, double Y) On(SupportLoad load, double torque, double speed)
    {
        var (size, orbit) = (Math.Abs(torque), speed * speed);
        return (
            -((size * load.Radial.X) + (torque * load.Tangential.X) + (orbit * load.Orbit.X)),
            -((size * load.Radial.Y) + (torque * load.Tangential.Y) + (orbit * load.Orbit.Y)));
    }

    private static Play PlayOf(AnalysisContext context, BearingPlace place)
    {
        // Pairs set against each other are set without play.
        var bearing = context.Find(SubjectKinds.Bearing, $"bearings.{place.Name}")!;
        if (bearing.Find(F.OperatingClearance) is not { } play)
            return default;
        if (!play.IsEvaluated)
            throw new OutsideValidityException(string.Join("; ", play.Reasons));
        // Needles have no seats whose overlap differs: what warmth does, it does to both bearings.
        return place.Entry!.Kind.Value == "needle-cage" && bearing.Find(F.NewClearance) is { IsEvaluated: true } fresh
            ? new(fresh.Value, play.Value.Min - fresh.Value.Min, play.Value.Max - fresh.Value.Max)
            : new(play.Value, 0, 0);
    }

    /// <summary>Play of a bearing by itself, and what the coldest and hottest state add to it in every bearing alike, mm.</summary>
    private readonly record struct Play(Value Alone, double Cold, double Hot);

    private Bent? PinOf(AnalysisContext context)
    {
        if (context.Spec.PlanetPins.Entries.FirstOrDefault(pin => pin.Planets.Value == _planet) is not { } spec)
            return null;
        var subject = context.Find(SubjectKinds.PlanetPin, $"planet_pins.{spec.Name.Value}")!;
        var straddled = spec.Held.Value == "straddled";
        ImmutableArray<Quantity> needed =
            [subject[PlanetPins.Diameter], subject[PlanetPins.Modulus], straddled ? subject[PlanetPins.Span] : subject[PlanetPins.Gap], subject[PlanetPins.LoadWidth]];
        if (Quantity.MissingReasons(needed) is { IsEmpty: false } reasons)
            throw new OutsideValidityException(string.Join("; ", reasons));
        var middle = straddled && _forces.MiddleOf(_planet) is { } gears ? gears : _places.Average(static place => place.Support!.Position);
        return new(
            straddled, needed[0].Value, subject.Find(PlanetPins.Bore) is { IsEvaluated: true } bore ? bore.Value : default, needed[2].Value, needed[3].Value.Nominal,
            needed[1].Value.Nominal, middle);
    }

    private enum Size
    {
        Nominal,
        Least,
        Greatest,
    }

    /// <summary>The pin; its middle, of the load where it is overhung, stands at the middle of the planet.</summary>
    private sealed record Bent(bool Straddled, Value Diameter, Value Bore, Value Reach, double Width, double Modulus, double Middle)
    {
        public ImmutableArray<(double X, double Y)> Deflections(ImmutableArray<(double X, double Y)> loads, ImmutableArray<double> places, Size size)
        {
            var (pin, reach) = At(size);
            return
            [
                .. places.Select(at => (
                    loads.Select((load, k) => Deflection(load.X, places[k], at)).Sum(), loads.Select((load, k) => Deflection(load.Y, places[k], at)).Sum())),
            ];

            double Deflection(double force, double from, double at) => Straddled
                ? pin.StraddledDeflection(force, from - Middle + (reach / 2), at - Middle + (reach / 2), reach, Modulus)
                : pin.OverhungDeflection(force, from - Middle + reach + (Width / 2), at - Middle + reach + (Width / 2), Modulus);
        }

        public (double X, double Y) Slope((double X, double Y) load, double place, Size size)
        {
            var (pin, reach) = At(size);
            return (Of(load.X), Of(load.Y));

            double Of(double force) => Straddled
                ? pin.StraddledSlopeAtForce(force, place - Middle + (reach / 2), reach, Modulus)
                : pin.OverhungSlopeAtForce(force, place - Middle + reach + (Width / 2), Modulus);
        }

        // The softer pin is thin, hollow and long.
        private (PlanetPin Pin, double Reach) At(Size size) => size switch
        {
            Size.Least => (new(Diameter.Max, Bore.Min), Reach.Min),
            Size.Greatest => (new(Diameter.Min, Bore.Max), Reach.Max),
            _ => (new(Diameter.Nominal, Bore.Nominal), Reach.Nominal),
        };
    }
}
