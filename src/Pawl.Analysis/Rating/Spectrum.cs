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

    /// <summary>Life until the damage sum is 1, s; 0 when a share is above the static strength.</summary>
    public static double Life(double damage, double life) => Math.Min(life / damage, Longest);
}
