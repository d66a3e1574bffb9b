using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Bearings;

/// <summary>How bodies are held by their bearings, and what the bearings bear for it.</summary>
internal sealed class SupportBuilder
{
    private readonly TrainSpec _spec;
    private readonly TrainBuilder _train;
    private readonly TrainForces _forces;
    private readonly ImmutableArray<BearingPlace> _places;
    private readonly List<BodySupport> _supports = [];
    private readonly Dictionary<string, BodySupport> _middles = new(StringComparer.Ordinal);

    private SupportBuilder(TrainSpec spec, TrainBuilder train, TrainForces forces, ImmutableArray<BearingPlace> places)
    {
        (_spec, _train, _forces, _places) = (spec, train, forces, places);
        foreach (var place in places)
        {
            if (place.Spec.AxialPosition is { } at)
                _supports.Add(place.Support = new(place.Name, Moving(place.Spec.Shaft.Value), Moving(place.Spec.Housing.Value), at.Value.Coherent + place.Offset));
        }
    }

    /// <summary>Gives every place its loads; null where no bearing is stated.</summary>
    public static HeldBodies? Build(AnalysisContext context, TrainBuilder train)
    {
        var spec = context.Spec.Train!;
        var places = context.Spec.Bearings.Entries
            .Select(each => new BearingPlace(each, context.Spec.Catalogue.Bearings.Find(each.Bearing.Value))).ToImmutableArray();
        if (places.IsEmpty)
            return null;
        var forces = context.Forces!;
        var supports = new SupportBuilder(spec, train, forces, places);
        foreach (var set in spec.Planets.Entries)
            supports.Planet(set.Name.Value);
        supports.Shafts();
        return new(spec, train, forces, places, supports._middles);
    }

    private bool IsFixed(string body) => _spec.Fixed.Any(held => held.Value == body);

    private string? Moving(string body) => IsFixed(body) ? null : body;

    private bool Floats(string body) => _spec.Bodies.Find(body)?.Floating is { Value: true };

    private IEnumerable<BearingPlace> Of(string body) =>
        _places.Where(place => place.Spec.Shaft.Value == body || place.Spec.Housing.Value == body);

    private bool InPlanet(BearingPlace place) =>
        _train.PlanetSet(place.Spec.Shaft.Value) is not null || _train.PlanetSet(place.Spec.Housing.Value) is not null;

    /// <summary>A planet on one or two bearings, in the frame of its carrier.</summary>
    private void Planet(string planet)
    {
        var own = Of(planet).ToImmutableArray();
        var forces = _forces.Of(planet);
        foreach (var place in own)
            (place.Holds, place.Reasons) = (planet, Known(place, forces));
        Axial(planet, own, forces);
        if (own.Length == 0 || own.Any(place => !place.Reasons.IsEmpty))
            return;

        var all = forces.TeethRadial.Concat(forces.TeethTangential).Concat(forces.Orbit).ToImmutableArray();
        if (own is [var only])
        {
            only.Load = new(Sum(forces.TeethRadial), Sum(forces.TeethTangential), Sum(forces.Orbit), 0, 0);
            var at = only.Support!.Position;
            only.Tilt = double.Hypot(
                all.Sum(load => load.CoupleX - ((load.Position - at) * load.Y)), all.Sum(load => load.CoupleY + ((load.Position - at) * load.X)));
            return;
        }

        try
        {
            ImmutableArray<ShaftSupport> supports = [.. own.Select(place => new ShaftSupport(place.Support!.Position, false))];
            var radial = ShaftReactions.Of(supports, Radial(forces.TeethRadial));
            var tangential = ShaftReactions.Of(supports, Radial(forces.TeethTangential));
            var orbit = ShaftReactions.Of(supports, Radial(forces.Orbit));
            for (var k = 0; k < own.Length; k++)
                own[k].Load = new(radial[k], tangential[k], orbit[k], 0, 0);
        }
        catch (OutsideValidityException outside)
        {
            foreach (var place in own)
                place.Reasons = [$"{planet}: {outside.Message}"];
        }
    }

    private static Reaction Sum(List<ShaftLoad> loads) => new(-loads.Sum(load => load.X), -loads.Sum(load => load.Y), 0);

    private static ImmutableArray<ShaftLoad> Radial(List<ShaftLoad> loads) => [.. loads.Select(load => load with { Axial = 0 })];

    private static ImmutableArray<string> Known(BearingPlace place, BodyForces forces) => place.Support is null
        ? [$"bearings.{place.Name}.axial_position is not stated"]
        : [.. forces.Reasons];

    private void Shafts()
    {
        var shafts = _places.Where(place => !InPlanet(place)).ToImmutableArray();
        var supports = shafts.Select(place => place.Support).OfType<BodySupport>().ToList();
        var bodies = supports.SelectMany(support => (string?[])[support.Inner, support.Outer]).OfType<string>().Distinct().ToList();
        foreach (var body in bodies)
        {
            // A floating body with one bearing hangs with its other end between the planets.
            if (Floats(body) && supports.Count(support => support.Inner == body || support.Outer == body) == 1 && _forces.MiddleOf(body) is { } middle)
                supports.Add(_middles[body] = new($"{body} between its meshes", body, null, middle));
        }

        var system = new SupportedBodies(bodies, [.. supports]);
        foreach (var place in shafts)
        {
            if (place.Support is { } support)
                place.Holds = system.HeldBy(support);
        }

        TryLoads(system, shafts, bodies);
        foreach (var (body, _, _) in system.Order)
            Axial(body, [.. shafts.Where(place => place.Holds == body)], _forces.Of(body));
    }

    /// <summary>Bearings whose lines of force meet the axis at one point hold nothing: then no load of the group is known.</summary>
    private void TryLoads(SupportedBodies system, ImmutableArray<BearingPlace> shafts, List<string> bodies)
    {
        var close = system.Order.Where(each => Math.Abs(each.First.Position - each.Second.Position) < MinSpan).ToImmutableArray();
        if (close.IsEmpty)
        {
            try
            {
                Loads(system, shafts, bodies);
            }
            catch (OutsideValidityException outside)
            {
                foreach (var place in shafts)
                    place.Reasons = [outside.Message];
            }

            return;
        }

        foreach (var place in shafts)
            place.Reasons = [.. close.Select(each => $"the supports of {each.Body}, {each.First.Name} and {each.Second.Name}, stand at one place along the axis")];
    }

    // Nearer than this, and the tolerances of the places alone turn the loads over.
    private const double MinSpan = 1;

    private void Loads(SupportedBodies system, ImmutableArray<BearingPlace> shafts, List<string> bodies)
    {
        var radial = system.Solve(By(forces => forces.TeethRadial));
        var tangential = system.Solve(By(forces => forces.TeethTangential));
        var orbit = system.Solve(By(forces => forces.Orbit));
        var sharing = Sizes(forces => forces.Sharing);
        var lasting = Sizes(forces => forces.Lasting);
        foreach (var place in shafts)
        {
            place.Reasons = Why(system, place);
            if (place.Reasons.IsEmpty && place.Support is { } support)
                place.Load = new(radial[support], tangential[support], orbit[support], sharing.GetValueOrDefault(support), lasting.GetValueOrDefault(support));
        }

        Dictionary<string, IReadOnlyList<ShaftLoad>> By(Func<BodyForces, List<ShaftLoad>> which) =>
            bodies.ToDictionary(body => body, body => (IReadOnlyList<ShaftLoad>)which(_forces.Of(body)), StringComparer.Ordinal);

        // Each on its own, for nobody knows how they lie to each other.
        Dictionary<BodySupport, double> Sizes(Func<BodyForces, List<ShaftLoad>> which)
        {
            var sizes = new Dictionary<BodySupport, double>();
            foreach (var body in bodies)
            {
                foreach (var load in which(_forces.Of(body)))
                {
                    var one = new Dictionary<string, IReadOnlyList<ShaftLoad>>(StringComparer.Ordinal) { [body] = [load] };
                    foreach (var (support, reaction) in system.Solve(one))
                        sizes[support] = sizes.GetValueOrDefault(support) + reaction.Radial;
                }
            }

            return sizes;
        }
    }

    /// <summary>Why the loads of a bearing are not known: of its own bodies, and of bodies that lean on them.</summary>
    private ImmutableArray<string> Why(SupportedBodies system, BearingPlace place)
    {
        if (place.Support is null)
            return [$"bearings.{place.Name}.axial_position is not stated"];
        if (place.Support is { Inner: null, Outer: null })
            return [$"{place.Spec.Shaft.Value} and {place.Spec.Housing.Value} both stand still"];
        var reasons = new List<string>();
        foreach (var body in (ReadOnlySpan<string>)[place.Spec.Shaft.Value, place.Spec.Housing.Value])
        {
            if (Moving(body) is null)
                continue;
            if (!system.Holds(body, out var reason))
                reasons.Add(reason);
            if (body == place.Holds || place.Holds is null)
                reasons.AddRange(_forces.Of(body).Reasons);
            foreach (var other in Of(body))
            {
                if (other.Support is null && !InPlanet(other))
                    reasons.Add($"bearings.{other.Name}.axial_position is not stated");
            }
        }

        if (place.Holds is { } held && LeaningOn(held, []) is { Count: > 0 } leaning)
            reasons.AddRange(leaning.SelectMany(body => _forces.Of(body).Reasons));
        return [.. reasons.Distinct(StringComparer.Ordinal)];
    }

    private HashSet<string> LeaningOn(string body, HashSet<string> seen)
    {
        foreach (var place in Of(body))
        {
            if (place.Holds is { } held && held != body && seen.Add(held))
                LeaningOn(held, seen);
        }

        return seen;
    }

    /// <summary>Hands the axial force of a body to the bearings that hold it, and on to the body behind them.</summary>
    private void Axial(string body, ImmutableArray<BearingPlace> own, BodyForces forces)
    {
        var (teeth, lasting) = (_train.PlanetSet(body) is null ? forces.AxialTeeth : forces.TeethTangential.Sum(load => load.Axial), forces.AxialLasting);
        // The duty tells the thrust of the inner ring's side; a body on the outer ring presses the other way.
        var plus = own.FirstOrDefault(place => place.Duty == "plus");
        var minus = own.FirstOrDefault(place => place.Duty == "minus");
        if (plus is not null && minus is not null)
            (plus.Partner, minus.Partner) = (minus, plus);
        foreach (var place in own)
        {
            if (place.Duty == "floating")
                continue;
            (place.AxialTeeth, place.AxialLasting) = (place.Spec.Housing.Value == body ? -teeth : teeth, lasting);
        }

        // Planets hand theirs to the carrier with their tooth forces.
        if (_train.PlanetSet(body) is not null || own.FirstOrDefault(place => place.Duty != "floating") is not { } holder)
            return;
        var behind = holder.Spec.Shaft.Value == body ? holder.Spec.Housing.Value : holder.Spec.Shaft.Value;
        if (IsFixed(behind))
            return;
        _forces.Of(behind).AxialTeeth += teeth;
        _forces.Of(behind).AxialLasting += lasting;
    }
}
