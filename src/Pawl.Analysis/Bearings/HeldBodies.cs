using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;

namespace Pawl.Analysis.Bearings;

/// <summary>How bodies are held and loaded, for whatever else wants to know.</summary>
/// <param name="Train">The train.</param>
/// <param name="Forces">What lies on every body.</param>
/// <param name="Places">Bearings in their places.</param>
/// <param name="Middles">Where floating bodies with one bearing hang between their meshes.</param>
internal sealed record HeldBodies(
    TrainBuilder Train, TrainForces Forces, ImmutableArray<BearingPlace> Places, IReadOnlyDictionary<string, BodySupport> Middles)
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
}
