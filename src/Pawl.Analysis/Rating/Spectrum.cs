using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;

namespace Pawl.Analysis.Rating;

/// <summary>The shares of the service life as a gear feels them; without a spectrum the rated load alone.</summary>
internal static class Spectrum
{
    private static readonly double Longest = Units.Hour.ToCoherent(1e6);

    public static bool IsPresent(MeshGear gear, Subject subject) => subject.Context.Spec.Duty is { Spectrum.IsEmpty: false };

    public static bool IsAbsent(MeshGear gear, Subject subject) => !IsPresent(gear, subject);

    /// <summary>Stress and cycles of each share.</summary>
    /// <param name="rated">Stress at the rated load, MPa.</param>
    /// <param name="nominal">Stress at the rated torque without load factors, MPa.</param>
    /// <param name="cycles">Cycles of the whole life at the rated speed.</param>
    /// <param name="loads">Load of each share over the nominal load at the rated torque.</param>
    /// <param name="shares">Cycles of each share over those of the whole life.</param>
    /// <param name="stressOver">Stress over the nominal one, of the load over the nominal one.</param>
    public static DamageBin[] Bins(double rated, double nominal, double cycles, double[] loads, double[] shares, Func<double, double> stressOver)
    {
        if (loads.Length == 0)
            return [new(rated, cycles)];
        var bins = new DamageBin[loads.Length];
        for (var k = 0; k < bins.Length; k++)
            bins[k] = new(nominal * stressOver(loads[k]), cycles * shares[k]);
        return bins;
    }

    /// <summary>The factor on all stresses at which the damage sum is 1.</summary>
    /// <param name="strength">At the reference life, MPa.</param>
    /// <param name="curve">Life factor over cycles.</param>
    /// <param name="bins">Stress and cycles of each share.</param>
    public static double Safety(double strength, LifeCurve curve, DamageBin[] bins) => Damage.Safety(bins, curve, strength);

    /// <summary>Damage sum of the service life with the safety required.</summary>
    /// <inheritdoc cref="Safety"/>
    public static double DamageSum(double strength, LifeCurve curve, DamageBin[] bins, double required) => Damage.Sum(bins, curve, strength / required);

    /// <summary>Life until the damage sum with the safety required is 1, s, up to 10⁶ h; 0 when a share is above the static strength.</summary>
    /// <inheritdoc cref="Safety"/>
    public static double Life(double strength, LifeCurve curve, DamageBin[] bins, double required, double life) =>
        Math.Min(life / DamageSum(strength, curve, bins, required), Longest);
}
