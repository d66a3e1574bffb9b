namespace Pawl.Mechanics.Rating;

/// <summary>A place on the path of contact and the flash temperature there.</summary>
/// <param name="Curvature1">Where: the pinion's radius of curvature, transverse, mm.</param>
/// <param name="Rise">Rise of the contact above the teeth's own temperature, K.</param>
public readonly record struct FlashPoint(double Curvature1, double Rise);

/// <summary>The hottest place of each part of the path of contact.</summary>
/// <param name="Inner">From A to B, where two pairs share the load.</param>
/// <param name="AtB">At B, where one pair takes it all.</param>
/// <param name="AtD">At D, where one pair takes it all.</param>
/// <param name="Outer">From D to E, where two pairs share the load.</param>
public readonly record struct FlashParts(FlashPoint Inner, FlashPoint AtB, FlashPoint AtD, FlashPoint Outer)
{
    /// <summary>The hottest of all.</summary>
    public FlashPoint Max
    {
        get
        {
            var max = Inner;
            foreach (var part in (ReadOnlySpan<FlashPoint>)[AtB, AtD, Outer])
                max = part.Rise > max.Rise ? part : max;
            return max;
        }
    }
}

/// <summary>How hot flanks become for a moment while they slide in contact, after Blok.</summary>
public static class FlashTemperature
{
    /// <summary>Thermal contact coefficient B_M of common gear steels, N/(mm·K·√s).</summary>
    /// <remarks>
    /// <code>B_M = √( λ·ρ·c )</code>
    /// Symbols: λ thermal conductivity, ρ density, c specific heat.<br/>
    /// Source: 13.5 N/(mm·K·√s) = 13 500 N/(m·K·√s) is common practice, no source; λ = 50 W/(m·K), ρ = 7800 kg/m³ and c = 470
    /// J/(kg·K) give 13 540.<br/>
    /// Valid for: low-alloy steels. High alloys conduct less and grow hotter.
    /// </remarks>
    public const double ContactCoefficientOfSteel = 13.5;

    private const int StepsOfPart = 12;
    private const int Halvings = 10;

    /// <summary>Flash temperature of one contact, K above the bodies' own temperature.</summary>
    /// <remarks>
    /// <code>Δθ = 1.11 · μ·w·|v₁ − v₂| / ( √(2·b_H) · (B_M1·√v₁ + B_M2·√v₂) )</code>
    /// For equal bodies this is 1.11·μ·w·|√v₁ − √v₂|/(B_M·√(2·b_H)).<br/>
    /// Symbols: μ coefficient of friction; w line load, N/mm; v rolling velocities of the flanks, mm/s; b_H half of the width of
    /// contact, mm; B_M thermal contact coefficients, N/(mm·K·√s).<br/>
    /// Source: Blok 1937, semi-elliptical heat; ISO/TS 6336-20 rests on it.<br/>
    /// Valid for: velocities at which heat has no time to flow ahead of the contact, v·b_H some five times the thermal
    /// diffusivity (about 14 mm²/s in steel) and more. Slower contacts stay cooler than this says.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OfContact(
        double friction,
        double lineLoad,
        double velocity1,
        double velocity2,
        double halfWidth,
        double contactCoefficient1,
        double contactCoefficient2)
    {
        if (!(friction >= 0 && lineLoad >= 0 && velocity1 >= 0 && velocity2 >= 0 && double.IsFinite(friction + lineLoad + velocity1 + velocity2)))
        {
            throw Guard.Because(
                $"no flash temperature: friction {friction:0.####}, line load {lineLoad:0.###} N/mm and velocities {velocity1:0.###} mm/s and {velocity2:0.###} mm/s must not be below zero");
        }

        Guard.Positive(halfWidth, "the width of the contact");
        Guard.Positive(contactCoefficient1, "the thermal contact coefficient");
        Guard.Positive(contactCoefficient2, "the thermal contact coefficient");
        if (velocity1 == velocity2)
        {
            return 0;
        }

        var carriedOff = Guard.Positive(contactCoefficient1, "the thermal contact coefficient") * Math.Sqrt(velocity1)
            + Guard.Positive(contactCoefficient2, "the thermal contact coefficient") * Math.Sqrt(velocity2);
        return Guard.Finite(
            1.11 * friction * lineLoad * Math.Abs(velocity1 - velocity2)
                / (Math.Sqrt(2 * Guard.Positive(halfWidth, "the width of the contact")) * carriedOff),
            "the flash temperature");
    }

    /// <summary>Share of the tooth force on the pair that touches at a place of the path.</summary>
    /// <remarks>
    /// <code>spur, ε_β &lt; 1: 1/3 at A and E, rising evenly to 2/3 at B and D; 1 from B to D, where one pair is alone</code>
    /// <code>helical, ε_β ≥ 1: 1/ε_α everywhere</code>
    /// Symbols: B one base pitch before E, D one base pitch after A.<br/>
    /// Source: the usual trapezoid of unmodified spur gears, ISO/TS 6336-20 from memory; uniform lines of contact for helical
    /// ones. Between both it takes the spur value, which is the greater.<br/>
    /// Valid for: 1 ≤ ε_α ≤ 2 with ε_β &lt; 1; no tip relief, which would unload A and E.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double LoadShare(ContactPath path, double curvature1) =>
        Share(path.Checked(), curvature1, single: curvature1 >= path.End - path.BasePitch && curvature1 <= path.Start + path.BasePitch);

    /// <summary>Greatest flash temperature of each part of the path of contact.</summary>
    /// <remarks>
    /// <code>v₁ = |ω₁|·ρ₁,  v₂ = |ω₁·d_b1/d_b2|·|ρ₂|;  b_H from ρ_red and the local line load</code>
    /// Symbols: ω₁ speed of the pinion relative to the carrier, rad/s; w = F_t·K/(b·cos α_t) line load along the line of action,
    /// all factors in, before it is shared, N/mm; ρ radii of curvature along the path, mm; μ mean coefficient of friction.<br/>
    /// Source: Blok 1937; load sharing as <see cref="LoadShare"/>. Where one pair is alone sliding rises from the pitch point
    /// outward, so B and D suffice; where two share the load the path is walked, then the steps are narrowed.<br/>
    /// Valid for: contact on involutes from A to E. Velocities are those of the transverse section.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static FlashParts Along(
        ContactPath path,
        double pinionSpeed,
        double lineLoad,
        double friction,
        double reducedModulus,
        double contactCoefficient1,
        double contactCoefficient2)
    {
        path.Checked();
        Guard.Number(pinionSpeed, "the speed of the pinion", "rad/s");
        if (path is { OverlapRatio: < 1, ContactRatio: > 2 })
        {
            throw Guard.Because(
                $"no flash temperature: how load is shared is known for spur gears up to a contact ratio of 2; it is {path.ContactRatio:0.###}");
        }

        var (inner, outer) = (path.End - path.BasePitch, path.Start + path.BasePitch);
        return new(Walked(path.Start, inner), At(inner, single: true), At(outer, single: true), Walked(outer, path.End));

        FlashPoint At(double place, bool single)
        {
            var load = lineLoad * Share(path, place, single);
            return new(
                place,
                OfContact(
                    friction,
                    load,
                    Math.Abs(pinionSpeed) * place,
                    Math.Abs(pinionSpeed * path.BaseDiameter1 / path.BaseDiameter2 * (path.CurvatureSum - place)),
                    LineContact.HalfWidth(load, path.ReducedCurvature(place), reducedModulus),
                    contactCoefficient1,
                    contactCoefficient2));
        }

        FlashPoint Walked(double from, double to)
        {
            var step = (to - from) / StepsOfPart;
            var best = At(from, single: false);
            for (var k = 1; k <= StepsOfPart; k++)
                best = Hotter(best, At(k == StepsOfPart ? to : from + step * k, single: false));
            for (var halving = 0; halving < Halvings; halving++)
            {
                step /= 2;
                var centre = best.Curvature1;
                best = Hotter(best, At(Math.Max(from, centre - step), single: false));
                best = Hotter(best, At(Math.Min(to, centre + step), single: false));
            }

            return best;
        }
    }

    private static FlashPoint Hotter(FlashPoint one, FlashPoint other) => other.Rise > one.Rise ? other : one;

    private static double Share(ContactPath path, double curvature1, bool single)
    {
        if (!(curvature1 >= path.Start - 1e-9 && curvature1 <= path.End + 1e-9))
            throw Guard.Because($"the path of contact goes from {path.Start:0.####} mm to {path.End:0.####} mm; the point lies at {curvature1:0.####} mm");

        if (path.OverlapRatio >= 1)
        {
            return 1 / path.ContactRatio;
        }

        if (single)
        {
            return 1;
        }

        // A contact ratio of just 1 leaves nothing but the end points.
        var shared = path.End - path.Start - path.BasePitch;
        var fromEnd = Math.Min(curvature1 - path.Start, path.End - curvature1);
        return (1 + (shared > 0 ? fromEnd / shared : 0)) / 3;
    }
}
