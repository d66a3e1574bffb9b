using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Agreement;

/// <summary>One size of one part that two sections state.</summary>
/// <param name="FirstKey">Path of the one statement.</param>
/// <param name="First">As stated there.</param>
/// <param name="SecondKey">Path of the other.</param>
/// <param name="Second">As stated there.</param>
public sealed record SharedSize(string FirstKey, Stated<Toleranced> First, string SecondKey, Stated<Toleranced> Second)
{
    /// <summary>Whether both state limits of their own, so that these must be the same too.</summary>
    public bool HasLimits { get; init; } = First.Value.Tolerance is not Tolerance.General && Second.Value.Tolerance is not Tolerance.General
        && Math.Abs(First.Value.Nominal.Coherent - Second.Value.Nominal.Coherent) < SharedSizes.Same;

    /// <summary>Every pair that a spec holds, in its order.</summary>
    public static IEnumerable<SharedSize> Of(GearboxSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return [.. OfLips(spec), .. OfBearings(spec), .. OfRings(spec), .. OfPins(spec), .. OfSplines(spec)];
    }

    /// <summary>A lip runs on the section that it names, else on that of the nearest size.</summary>
    private static IEnumerable<SharedSize> OfLips(GearboxSpec spec)
    {
        foreach (var seal in spec.LipSeals.Entries)
        {
            if (seal.Diameter is { } size && ShaftPlaces.On(spec, seal.Shaft.Value).Named(seal.At, size) is { } section)
                yield return new($"lip_seals.{seal.Name.Value}.diameter", size, $"{section.Key}.outside", section.Spec.Outside);
        }
    }

    /// <summary>A bearing sits on the section that it names, else on that at its place; that of a planet sits on the pin.</summary>
    private static IEnumerable<SharedSize> OfBearings(GearboxSpec spec)
    {
        foreach (var bearing in spec.Bearings.Entries)
        {
            if (bearing.ShaftSeat is not { } seat)
                continue;
            var key = $"bearings.{bearing.Name.Value}.shaft_seat";
            foreach (var pin in ShaftPlaces.PinsUnder(spec, bearing))
                yield return new(key, seat, $"planet_pins.{pin.Name.Value}.diameter", pin.Diameter);
            if (spec.Train?.Planets.Find(bearing.Housing.Value) is null && ShaftPlaces.Under(spec, bearing) is { } section)
                yield return new(key, seat, $"{section.Key}.outside", section.Spec.Outside);
        }
    }

    private static IEnumerable<SharedSize> OfRings(GearboxSpec spec)
    {
        foreach (var ring in spec.RetainingRings.Entries.Where(static ring => ring.Sits.Value == "shaft"))
        {
            if (ring.Diameter is not { } diameter)
                continue;
            var size = Plain(diameter);
            if (ShaftPlaces.On(spec, ring.On.Value).Named(ring.At, size) is { } section)
                yield return new($"retaining_rings.{ring.Name.Value}.diameter", size, $"{section.Key}.outside", section.Spec.Outside);
        }
    }

    /// <summary>The hole of a cheek and the pin in it: of one nominal size, and those of the press fit that has it.</summary>
    private static IEnumerable<SharedSize> OfPins(GearboxSpec spec)
    {
        foreach (var pin in spec.PlanetPins.Entries)
        {
            var key = $"planet_pins.{pin.Name.Value}";
            if (pin.CheekHole is not { } hole)
                continue;
            yield return new($"{key}.cheek_hole", hole, $"{key}.diameter", pin.Diameter) { HasLimits = false };
            var carrier = spec.Train?.Planets.Find(pin.Planets.Value)?.Carrier.Value;
            foreach (var fit in spec.Fits.Entries)
            {
                var (fitHole, fitShaft) = BothOf(fit);
                if (fitHole is null || fitShaft is null || !IsOf(fit, fitHole))
                    continue;
                yield return new($"{key}.cheek_hole", hole, $"fits.{fit.Name.Value}.hole", fitHole);
                yield return new($"{key}.diameter", pin.Diameter, $"fits.{fit.Name.Value}.shaft", fitShaft);
            }

            // By name, or a hole of this size in the carrier for a part that is no other pin.
            bool IsOf(FitSpec fit, Stated<Toleranced> fitHole) => fit.Pin?.Value == pin.Name.Value
                || (carrier is not null && fit.HolePart?.Value == carrier && fit.Pin is null
                    && Math.Abs(fitHole.Value.Nominal.Coherent - hole.Value.Nominal.Coherent) < SharedSizes.Same);
        }
    }

    /// <summary>The spline of an interface is that of the splines on its body: module, and length in engagement.</summary>
    private static IEnumerable<SharedSize> OfSplines(GearboxSpec spec)
    {
        foreach (var side in spec.Interfaces.Entries.Where(static side => side.Spline is not null))
        {
            var (key, own) = ($"interfaces.{side.Name.Value}", side.Spline!);
            var there = spec.Splines.Entries.Where(spline => spline.Body.Value == side.Body.Value).ToArray();
            if ((there.FirstOrDefault(spline => (spline.Shaft?.Teeth ?? spline.Hub?.Teeth)?.Value == own.Teeth.Value) ?? there.FirstOrDefault()) is not { } match)
                continue;
            if (own.Module is { } module && match.Module is { } other)
                yield return new($"{key}.spline.module", Plain(module), $"splines.{match.Name.Value}.module", Plain(other));
            if (side.Engagement is { } engagement && match.Length is { } length)
                yield return new($"{key}.engagement", Plain(engagement), $"splines.{match.Name.Value}.length", length);
        }
    }

    /// <summary>Hole and shaft of a fit, each as if it stood alone.</summary>
    private static (Stated<Toleranced>? Hole, Stated<Toleranced>? Shaft) BothOf(FitSpec fit) => fit.Size is { Value.Tolerance: Tolerance.Fit both } size
        ? (size with { Value = size.Value with { Tolerance = both.Hole } }, size with { Value = size.Value with { Tolerance = both.Shaft } })
        : (fit.Hole, fit.Shaft);

    private static Stated<Toleranced> Plain(Stated<Amount> amount) => new(new(amount.Value, new Tolerance.General()), amount.Span, amount.Text);
}
