using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Bearings;

/// <summary>How bodies are held and loaded, for whatever else wants to know.</summary>
/// <param name="Spec">What the spec says of the train.</param>
/// <param name="Train">The train.</param>
/// <param name="Forces">What lies on every body.</param>
/// <param name="Places">Bearings in their places.</param>
/// <param name="Middles">Where floating bodies with one bearing hang between their meshes.</param>
internal sealed record HeldBodies(
    TrainSpec Spec, TrainBuilder Train, TrainForces Forces, ImmutableArray<BearingPlace> Places, IReadOnlyDictionary<string, BodySupport> Middles)
{
    /// <summary>Bearings that hold a body.</summary>
    public ImmutableArray<BearingPlace> Holding(string body) => [.. Places.Where(place => place.Holds == body && place.Support is not null)];

    /// <summary>The supports of a body: its bearings, and the middle of its meshes where it hangs there.</summary>
    public ImmutableArray<BodySupport> SupportsOf(string body) =>
        [.. Holding(body).Select(place => place.Support!), .. Middles.TryGetValue(body, out var middle) ? [middle] : (BodySupport[])[]];

    /// <summary>Bearings of other bodies that press on this one; planets do so by their carrier's forces.</summary>
    public ImmutableArray<BearingPlace> LeaningOn(string body) =>
    [
        .. Places.Where(place => place.Holds is { } other && other != body && Train.PlanetSet(other) is null
            && (place.Spec.Shaft.Value == body || place.Spec.Housing.Value == body)),
    ];

    /// <summary>Why the loads of a body and its supports are not known; empty when they are.</summary>
    public ImmutableArray<string> ReasonsOf(string body)
    {
        List<string> reasons = [.. Forces.Of(body).Reasons];
        var places = Places.Where(place => place.Spec.Shaft.Value == body || place.Spec.Housing.Value == body);
        foreach (var place in places)
        {
            if (Train.PlanetSet(place.Holds ?? "") is null && Train.PlanetSet(place.Spec.Housing.Value) is null && Train.PlanetSet(place.Spec.Shaft.Value) is null)
                reasons.AddRange(place.Reasons);
        }

        var supports = SupportsOf(body);
        if (reasons.Count == 0 && supports.Length != 2)
            reasons.Add(FormattableString.Invariant($"{supports.Length} bearings hold {body}; bending is computed for two"));
        return [.. reasons.Distinct(StringComparer.Ordinal)];
    }

    public BearingPlace PlaceOf(string bearing) => Places.First(place => place.Name == bearing);

    /// <summary>Bearings of a body that hold no other one.</summary>
    public ImmutableArray<BearingPlace> Own(string body) =>
        [.. Places.Where(place => place.Holds == body || (place.Holds is null && (place.Spec.Shaft.Value == body || place.Spec.Housing.Value == body)))];

    /// <summary>Places that hold a body along the axis: locating bearings, and a pair that takes thrust in both directions.</summary>
    public int LocatingPlaces(string body)
    {
        var own = Own(body);
        var pair = own.Any(static place => place.Duty == "plus") && own.Any(static place => place.Duty == "minus") ? 1 : 0;
        return own.Count(static place => place.Duty == "locating") + pair;
    }

    /// <summary>How a body is held, in words.</summary>
    public string Account(string body)
    {
        var own = Own(body);
        if (own.IsEmpty)
            return Floats(body) ? "floats between its meshes" : "no bearing is stated";
        if (Train.PlanetSet(body) is not null)
            return own.Length <= 2 ? "held" : $"{own.Length} bearings: their loads need the stiffness of the pin, which is not computed";
        return own.Select(static place => place.Holds is null ? place.Reasons.FirstOrDefault() : null).FirstOrDefault(static reason => reason is not null) ?? "held";
    }

    /// <summary>What is wrong with a body that bears forces and has no bearing; none where nothing is.</summary>
    public string Unsupported(string body)
    {
        if (!Own(body).IsEmpty)
            return "none";
        if (Train.PlanetSet(body) is not null)
            return "a planet without a bearing";
        if (!Floats(body))
            return "a body that turns without a bearing, and is not said to float";
        return Forces.Of(body) is { Lasting.Count: > 0 } ? "a floating body without a bearing that bears the coupled machine or its weight" : "none";
    }

    /// <summary>Axial force of the teeth on a body, N, with direction.</summary>
    public double AxialTeeth(string body) =>
        Train.PlanetSet(body) is null ? Forces.Of(body).AxialTeeth : Forces.Of(body).TeethTangential.Sum(static load => load.Axial);

    /// <summary>Axial force on a body that nothing holds, N: the greatest in a direction in which no bearing takes thrust.</summary>
    /// <param name="body">The body.</param>
    /// <param name="set">What the spec says of it as planets.</param>
    /// <param name="reverse">Torque in the other direction, or of coasting, over that of the drive.</param>
    public double UnheldThrust(string body, PlanetSetSpec? set, double reverse)
    {
        if (set?.ThrustWashers is { Value: true })
            return 0;
        var own = Own(body);
        var (teeth, lasting) = (AxialTeeth(body), Forces.Of(body).AxialLasting);
        var unheld = Math.Max(
            Holds("plus") ? 0 : AxialThrust.Along(teeth, reverse, lasting),
            Holds("minus") ? 0 : AxialThrust.Along(-teeth, reverse, lasting));
        return unheld < 1e-6 ? 0 : unheld;

        bool Holds(string way) => own.Any(place => place.Duty == "locating" || place.Duty == way);
    }

    private bool Floats(string body) => Spec.Bodies.Find(body)?.Floating is { Value: true };
}
