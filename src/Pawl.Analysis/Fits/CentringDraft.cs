using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Fits;
using Pawl.Specs.Model;
using B = Pawl.Analysis.Bearings.BearingQuantities;
using K = Pawl.Analysis.Fits.CentringQuantities;

namespace Pawl.Analysis.Fits;

/// <summary>One chain of links that keeps a part true to another.</summary>
internal sealed class CentringDraft
{
    private readonly Draft _draft;
    private readonly CentringSpec _spec;
    private readonly Subject _s;

    private CentringDraft(Draft draft, CentringSpec spec, Subject train)
    {
        (_draft, _spec) = (draft, spec);
        _s = draft.Begin(SubjectKinds.Centring, $"centring.{spec.Name.Value}", spec.Name.Span).Relate("train", train);
    }

    public static void AddAll(Draft draft, Subject train)
    {
        foreach (var spec in draft.Spec.Centring.Entries)
            new CentringDraft(draft, spec, train).Add();
    }

    private void Add()
    {
        List<(string Name, double Share)> shares = [];
        List<Quantity> inputs = [];
        List<string> reasons = [];
        foreach (var link in _spec.Links)
            Share(link, shares, inputs, reasons);

        _s.Add(reasons.Count > 0
            ? Quantity.NotEvaluated(K.Links, [.. inputs], [.. reasons.Distinct()])
            : Quantity.ComputedText(K.Links, string.Join(", ", shares.Select(share => FormattableString.Invariant($"{share.Name} {share.Share * 1000:0.0} µm"))), [.. inputs]));
        _s.Add(reasons.Count > 0
            ? Quantity.NotEvaluated(K.Eccentricity, [.. inputs], [.. reasons.Distinct()])
            : Quantity.Computed(K.Eccentricity, shares.Sum(share => share.Share), [.. inputs]));
        Permitted();
    }

    private void Share(CentringLinkSpec link, List<(string Name, double Share)> shares, List<Quantity> inputs, List<string> reasons)
    {
        if (link.Runout is { } runout)
        {
            shares.Add(($"run-out of {link.Of!.Value}", runout.Value.Coherent / 2));
        }
        else if (link.Bearing is { } bearing)
        {
            OfBearing(bearing.Value, shares, inputs, reasons);
        }
        else if (link.Fit is { } fit)
        {
            if (Play(fit.Value, inputs, reasons) is { } play)
                shares.Add((fit.Value, Register.OfPilot(play)));
        }
        else if (link.Dowels is { } dowels)
        {
            var (first, second) = (Play(dowels.First.Value, inputs, reasons), Play((dowels.Second ?? dowels.First).Value, inputs, reasons));
            var distance = dowels.Distance.Value.Coherent;
            if (first is { } one && second is { } two)
                shares.Add(($"dowels {dowels.First.Value}", Register.OnDowels(one, two, distance, dowels.Along?.Value.Coherent ?? distance / 2, dowels.Aside?.Value.Coherent ?? 0)));
        }
    }

    /// <summary>Greatest play of a fit at any temperature.</summary>
    private double? Play(string fit, List<Quantity> inputs, List<string> reasons)
    {
        var clearance = _draft.Subjects.First(subject => subject.Path == $"fits.{fit}")[FitQuantities.Clearance];
        inputs.Add(clearance);
        if (clearance.IsEvaluated)
            return clearance.Value.Greatest;
        reasons.AddRange(clearance.Reasons);
        return null;
    }

    /// <summary>Half of the radial play of a bearing, and of the play of its rings on their seats.</summary>
    private void OfBearing(string name, List<(string Name, double Share)> shares, List<Quantity> inputs, List<string> reasons)
    {
        var bearing = _draft.Subjects.FirstOrDefault(subject => subject.Path == $"bearings.{name}");
        if (bearing?.Find(B.OperatingClearance) is not { } play)
        {
            reasons.Add($"the radial play of the bearing {name} is not known");
            return;
        }

        Quantity?[] found = [play, bearing.Find(B.InnerFit), bearing.Find(B.OuterFit)];
        Quantity[] known = [.. found.OfType<Quantity>()];
        inputs.AddRange(known);
        if (Quantity.MissingReasons([.. known]) is { IsEmpty: false } missing)
        {
            reasons.AddRange(missing);
            return;
        }

        var share = Register.OfPilot(play.Value.Greatest) + known.Skip(1).Sum(fit => Register.OfPilot(-fit.Value.Least));
        shares.Add((name, share));
    }

    private void Permitted()
    {
        if (_spec.Limit is { } limit)
        {
            _s.Add(Quantity.ComputedText(K.Basis, "the spec"));
            _s.Add(_draft.Amount(K.Permitted, limit, ""));
            return;
        }

        _s.Add(Quantity.ComputedText(K.Basis, _spec.Mesh.IsEmpty ? "none" : "the backlash of the mesh"));
        if (_spec.Mesh.IsEmpty)
        {
            _s.Add(Draft.Missing(K.Permitted, $"centring.{_spec.Name.Value}.limit or centring.{_spec.Name.Value}.mesh"));
            return;
        }

        var names = _spec.Mesh.Select(gear => $"gears.{gear.Value}").ToHashSet();
        var mesh = _draft.Subjects.FirstOrDefault(subject =>
            subject.Kind == SubjectKinds.Mesh && names.Contains(subject.Related["first"].Path) && names.Contains(subject.Related["second"].Path));
        if (mesh is null)
        {
            _s.Add(Draft.Missing(K.Permitted, "train"));
            return;
        }

        _s.Add(mesh.Find(MeshQuantities.LeastBacklashWanted) is { } wanted
            ? Quantity.Compute(K.Kept, [wanted], v => v[0])
            : _draft.Assumed(K.Kept, 0, "0, for the mesh states none"));
        ImmutableArray<Quantity> inputs =
        [
            mesh[MeshQuantities.OperatingBacklash], _s[K.Kept], mesh[MeshQuantities.WorkingPressureAngle], mesh.Related["first"][GearQuantities.BaseHelixAngle],
        ];
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
        {
            _s.Add(Quantity.NotEvaluated(K.Permitted, inputs, reasons));
            return;
        }

        var spare = inputs[0].Value.Least - inputs[1].Value.Nominal;
        _s.Add(Quantity.Computed(K.Permitted, spare / (2 * Math.Sin(inputs[2].Value.Nominal) * Math.Cos(inputs[3].Value.Nominal)), inputs));
    }
}
