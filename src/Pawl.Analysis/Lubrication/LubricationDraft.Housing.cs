using Pawl.Analysis.Core;
using Pawl.Mechanics.Lubrication;
using Pawl.Specs.Text;
using K = Pawl.Analysis.Lubrication.LubricationQuantities;
using L = Pawl.Analysis.Seals.LipSeals;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Lubrication;

internal sealed partial class LubricationDraft
{
    // Of mineral oils; common practice, no source. PAG grows by about as much.
    private const double OilExpansion = 7e-4;

    /// <summary>What holds the oil: its volume, openings and pressure.</summary>
    private void Housing()
    {
        _s.Add(_draft.Amount(K.FreeVolume, _spec.FreeVolume, "lubrication.free_volume"));
        _s.Add(_draft.Amount(K.Fill, _spec.Fill, "lubrication.fill"));
        _s.Add(_draft.Amount(K.LeastFill, _spec.LeastFill, "lubrication.least_fill"));
        _s.Add(_draft.Amount(K.GreatestFill, _spec.GreatestFill, "lubrication.greatest_fill"));
        _s.Add(Derive.From(K.FillShare, _s[K.Fill], _s[K.FreeVolume], (oil, free) => oil / free));
        Ports();
        _s.Add(Truth(K.Vented, _spec.Ports?.Vent, "lubrication.ports.vent"));

        var (vented, oil) = (_s[K.Vented], _train.Subject[T.OilTemperature]);
        _s.Add(!vented.IsEvaluated || vented.Truth
            ? Quantity.Compute(K.HousingPressure, [vented], _ => 0)
            : Quantity.Compute(
                K.HousingPressure, [vented, _s[K.FreeVolume], _s[K.Fill], oil],
                v => HousingPressure.Rise(oil.Value.Least, oil.Value.Greatest, v[1], v[2], OilExpansion)));
    }

    private void Ports()
    {
        if (_spec.Ports is not { } ports)
        {
            _s.Add(Draft.Missing(K.PortsMissing, "lubrication.ports"));
            return;
        }

        (string Name, Stated<bool>? Stated)[] all = [("fill", ports.Fill), ("drain", ports.Drain), ("vent", ports.Vent), ("level", ports.Level)];
        ImmutableArray<string> silent = [.. all.Where(port => port.Stated is null).Select(port => $"lubrication.ports.{port.Name} is not stated")];
        var missing = string.Join(", ", all.Where(port => port.Stated is { Value: false }).Select(port => port.Name));
        _s.Add(silent.IsEmpty
            ? Quantity.ComputedText(K.PortsMissing, missing.Length == 0 ? "none" : missing)
            : Quantity.NotEvaluated(K.PortsMissing, [], silent));
    }

    /// <summary>Heat in and out, and what the weakest lip stands.</summary>
    public void Balance(ImmutableArray<Subject> seals)
    {
        var left = new List<string>();
        _s.Add(Derive.From(K.MeshLoss, _train.Subject[T.LostPower], loss => loss));
        _s.Add(Bearings(left));
        _s.Add(Seals(seals, left));
        if (_spec.OtherLosses is null)
            left.Add("churning");
        _s.Add(_draft.Amount(K.OtherLoss, _spec.OtherLosses, 0, "0: not counted, the true sump is warmer"));
        _s.Add(Quantity.ComputedText(K.LeftOut, left.Count == 0 ? "none" : string.Join(", ", left)));
        _s.Add(Quantity.Compute(
            K.Loss, [_s[K.MeshLoss], _s[K.BearingLoss], _s[K.SealLoss], _s[K.OtherLoss]], v => v[0] + v[1] + v[2] + v[3]));

        _s.Add(_draft.Amount(K.Ambient, _spec.Ambient, "lubrication.ambient"));
        _s.Add(_draft.Amount(K.Area, _spec.CoolingArea, "lubrication.cooling_area"));
        _s.Add(_draft.Amount(K.Transfer, _spec.HeatTransfer, 15e-3, $"15 W/(m²·K), calm air, {NoSource}"));
        _s.Add(Derive.From(
            K.Balanced, _s[K.Ambient], _s[K.Loss], _s[K.Transfer], _s[K.Area],
            (ambient, loss, transfer, area) => HeatBalance.SumpTemperature(loss, transfer, area, ambient)));

        _s.Add(seals.IsEmpty
            ? _draft.Assumed(K.PressurePermitted, 0.02, $"0.02 MPa of an ordinary lip, {NoSource}")
            : Quantity.Compute(K.PressurePermitted, [.. seals.Select(seal => seal[L.PermittedPressure])], Least));
    }

    /// <summary>Losses of the bearings by the quantity <c>friction_loss</c> of every subject <c>bearing</c>.</summary>
    private Quantity Bearings(List<string> left)
    {
        ImmutableArray<Subject> bearings = [.. _draft.Subjects.Where(subject => subject.Kind.Name == "bearing")];
        var losses = ImmutableArray.CreateBuilder<Quantity>(bearings.Length);
        foreach (var bearing in bearings)
        {
            if (bearing.Kind.Find("friction_loss") is { } kind && bearing.Find(kind) is { } loss)
                losses.Add(loss);
            else
                left.Add(bearing.Path);
        }

        if (losses.Count > 0)
            return Sum(K.BearingLoss, losses.ToImmutable());
        if (bearings.IsEmpty)
            left.Add("bearings");
        return _draft.Assumed(K.BearingLoss, 0, "0: no bearing has a loss");
    }

    private Quantity Seals(ImmutableArray<Subject> seals, List<string> left)
    {
        left.AddRange(seals.Where(seal => seal.Find(L.Loss) is null).Select(seal => seal.Path));
        if (seals.IsEmpty)
            left.Add("lip seals");
        ImmutableArray<Quantity> losses = [.. seals.Select(seal => seal.Find(L.Loss)).OfType<Quantity>()];
        return losses.IsEmpty ? _draft.Assumed(K.SealLoss, 0, "0: no lip seal states its loss") : Sum(K.SealLoss, losses);
    }

    /// <summary>The sum; what is not evaluated is said with its place.</summary>
    private static Quantity Sum(QuantityKind kind, ImmutableArray<Quantity> losses)
    {
        ImmutableArray<string> reasons = [.. losses.SelectMany(loss => loss.Reasons.Select(reason => $"{loss.Subject}: {reason}"))];
        return reasons.IsEmpty
            ? Quantity.Compute(kind, losses, v =>
            {
                var sum = 0.0;
                foreach (var loss in v)
                    sum += loss;
                return sum;
            })
            : Quantity.NotEvaluated(kind, losses, reasons);
    }

    private static double Least(ReadOnlySpan<double> values)
    {
        var least = double.PositiveInfinity;
        foreach (var value in values)
            least = Math.Min(least, value);
        return least;
    }
}
