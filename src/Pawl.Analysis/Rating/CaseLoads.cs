using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using C = Pawl.Analysis.Rating.LoadCaseQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;
using L = Pawl.Analysis.Rating.MeshLoadQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>What comes of a load spectrum.</summary>
/// <param name="bins">Stress and cycles of each share.</param>
/// <param name="curve">Strength over life.</param>
/// <param name="strength">Strength at life factor 1, MPa.</param>
/// <param name="required">Safety factor required.</param>
/// <param name="life">Service life, s.</param>
internal delegate double SpectrumFormula(ReadOnlySpan<DamageBin> bins, LifeCurve curve, double strength, double required, double life);

/// <summary>The shares of the service life as a mesh feels them, over the rated load; without a spectrum the rated load alone.</summary>
/// <remarks>Ratios are evaluated once, at nominal: torque and speed of a share are exact, and the load factors of all shares move together.</remarks>
internal sealed class CaseLoads
{
    private readonly Lazy<(double Load, double Cycles)[]> _ratios;

    public CaseLoads(DutyBuilder duty, MeshBuilder mesh, MeshLoadBuilder load, Func<LoadFactors, double> product)
    {
        Count = Math.Max(duty.Cases.Length, 1);
        if (duty.Cases.IsEmpty)
        {
            _ratios = new(() => [(1, 1)]);
            return;
        }

        var rated = new[] { duty[T.InputTorque], duty[T.InputSpeed], duty[D.ApplicationFactor], mesh.Subject[L.LineLoad], mesh[Q.PitchLineSpeed] };
        Inputs = [.. rated, .. duty.Cases.SelectMany(each => (Quantity[])[each[C.Share], each[C.Torque], each[C.Speed]])];
        _ratios = new(() =>
        {
            var (torque, speed, application) = (rated[0].Value.Nominal, rated[1].Value.Nominal, rated[2].Value.Nominal);
            return [.. duty.Cases.Select(each =>
            {
                var speedRatio = each[C.Speed].Value.Nominal / speed;
                var loadRatio = each[C.Torque].Value.Nominal / torque / (duty.PeaksIncluded ? application : 1);
                return (
                    load.LoadRatio(loadRatio, speedRatio, rated[3].Value.Nominal, rated[4].Value.Nominal, product),
                    each[C.Share].Value.Nominal * speedRatio);
            })];
        });
    }

    private static readonly double Longest = Units.Hour.ToCoherent(1e6);

    public static double Safety(ReadOnlySpan<DamageBin> bins, LifeCurve curve, double strength, double required, double life) =>
        Damage.Safety(bins, curve, strength);

    public static double DamageSum(ReadOnlySpan<DamageBin> bins, LifeCurve curve, double strength, double required, double life) =>
        Damage.Sum(bins, curve, strength / required);

    /// <summary>Life until the damage sum is 1, s; 0 when a share is above the static strength.</summary>
    public static double Life(ReadOnlySpan<DamageBin> bins, LifeCurve curve, double strength, double required, double life) =>
        Math.Min(life / Damage.Sum(bins, curve, strength / required), Longest);

    /// <summary>What the ratios depend on; empty without a spectrum.</summary>
    public ImmutableArray<Quantity> Inputs { get; } = [];

    public int Count { get; }

    /// <summary>Load with its factors over the rated load with its own.</summary>
    public double LoadRatio(int share) => _ratios.Value[share].Load;

    /// <summary>Cycles over those of the whole life at the rated speed.</summary>
    public double CycleShare(int share) => _ratios.Value[share].Cycles;
}

/// <summary>How a gear turns and is loaded in one mesh.</summary>
/// <param name="Contacts">Contacts of a flank in one turn relative to the carrier.</param>
/// <param name="SpeedPerInput">|n − n_carrier| for each turn of the input.</param>
/// <param name="Reversal">Load of the other flank over that of this one, 0 to 1 after ordering, for a drive that turns one way and
/// for the reverse torque over the torque.</param>
/// <param name="Reasons">Why speeds are not known; empty when they are.</param>
internal sealed record GearMotion(int Contacts, double SpeedPerInput, Func<double, double> Reversal, ImmutableArray<string> Reasons);
