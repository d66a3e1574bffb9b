using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Lubrication;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Seals;
using Pawl.Quantities;
using Pawl.Specs.Model;
using B = Pawl.Analysis.Trains.BodyQuantities;
using K = Pawl.Analysis.Seals.LipSealQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;
using Value = Pawl.Quantities.Extent;

namespace Pawl.Analysis.Seals;

/// <summary>One radial lip seal on its shaft.</summary>
internal sealed class LipSealDraft
{
    // A lip in motion wants 10 K to 15 K more than rubber at rest: the greater. Common practice, no source.
    private const double OfMotion = 15;

    // At the speed that the lip stands; the greatest is LipSeal.GreatestLipRise. Common practice, no source.
    private const double LeastLipRise = 20;

    private readonly Draft _draft;
    private readonly LipSealSpec _spec;
    private readonly Subject _train;
    private readonly Subject _s;

    private LipSealDraft(Draft draft, LipSealSpec spec, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        (_draft, _spec, _train) = (draft, spec, train);
        _s = draft.Begin(SubjectKinds.LipSeal, $"lip_seals.{spec.Name.Value}", spec.Name.Span)
            .Relate("train", train).Relate("shaft", bodies[spec.Shaft.Value]).Relate("housing", bodies[spec.Housing.Value]);
    }

    /// <summary>All lip seals, in the order of the spec.</summary>
    /// <param name="draft">The analysis.</param>
    /// <param name="train">The train.</param>
    /// <param name="bodies">Bodies by name.</param>
    /// <param name="housing">Gauge pressure in the housing; null when the spec says nothing of it.</param>
    public static ImmutableArray<Subject> AddAll(
        Draft draft, Subject train, IReadOnlyDictionary<string, Subject> bodies, Quantity? housing)
    {
        var seals = ImmutableArray.CreateBuilder<Subject>();
        foreach (var spec in draft.Spec.LipSeals.Entries)
        {
            var seal = new LipSealDraft(draft, spec, train, bodies);
            seal.Seats();
            seal.Speeds();
            seal.Shaft();
            seal.Pressures(housing);
            seal.Rubber();
            seals.Add(seal._s);
        }

        return seals.ToImmutable();
    }

    private string Key(string key) => $"lip_seals.{_spec.Name.Value}.{key}";

    private void Seats()
    {
        _s.Add(Draft.Text(K.Elastomer, _spec.Elastomer, Key("elastomer")));
        _s.Add(Draft.Text(K.Towards, _spec.Towards, Key("towards")));
        _s.Add(_draft.Dimension(K.Diameter, _spec.Diameter, Key("diameter")));
        _s.Add(_draft.Dimension(K.Bore, _spec.Bore, Key("bore")));
        _s.Add(Excess(K.ShaftExcess, _s[K.Diameter], "h", 11));
        _s.Add(Excess(K.BoreExcess, _s[K.Bore], "H", 8));
        _s.Add(_draft.Amount(K.LeadInAngle, _spec.LeadIn?.Angle, Key("lead_in")));
        if (_spec.Loss is { } loss)
            _s.Add(_draft.Amount(K.Loss, loss, ""));
    }

    /// <summary>How far the limits of a size lie outside a class of ISO 286; negative inside.</summary>
    private Quantity Excess(QuantityKind kind, Quantity size, string letters, int grade)
    {
        if (!size.IsEvaluated)
            return Quantity.NotEvaluated(kind, [size], size.Reasons);
        foreach (var table in Iso286.Tables)
            _draft.Uses(table);
        var (nominal, least, greatest) = (size.Value.Nominal, size.Value.Least, size.Value.Greatest);
        if (!Iso286.TryLimits(letters, grade, nominal, out var limits, out var reason))
            return Quantity.NotEvaluated(kind, [size], reason);

        // Deviations come of sums: a millionth of a millimetre is none.
        var excess = Math.Max(greatest - nominal - limits.Upper, limits.Lower - (least - nominal));
        return Quantity.Computed(kind, Math.Abs(excess) < 1e-9 ? 0 : excess, [size]);
    }

    private void Speeds()
    {
        var inputs = FastestInput.Speeds(_draft, _train);
        _s.Add(Quantity.Compute(
            K.RelativeSpeed, [.. inputs, Ratio("shaft"), Ratio("housing")],
            v => FastestInput.Of(v, inputs.Length) * Math.Abs(v[^2] - v[^1])));
        _s.Add(Derive.From(K.SurfaceSpeed, _s[K.Diameter], _s[K.RelativeSpeed], LipSeal.SurfaceSpeed));
        _draft.Uses(Elastomer.TableId);
        _s.Add(_spec.GreatestSpeed is { } stated
            ? _draft.Amount(K.PermittedSpeed, stated, "")
            : Of(K.PermittedSpeed, family => family.LipSpeed, "no lips are made of it: state the speed that its maker permits"));
        _s.Add(Derive.From(K.SpeedShare, _s[K.SurfaceSpeed], _s[K.PermittedSpeed], (speed, limit) => speed / limit));

        Quantity Ratio(string role) => _s.Related[role].Find(B.SpeedRatio)
            ?? Quantity.NotEvaluated(B.SpeedRatio, [], $"nothing moves or holds {_s.Related[role].Path}");
    }

    private void Shaft()
    {
        _s.Add(MaterialDraft.Hardness(_draft, K.Hardness, _spec.Hardness, Key("hardness")));
        _draft.Uses(HardnessConversion.TableId);
        _s.Add(Derive.From(K.HardnessWanted, _s[K.SurfaceSpeed], speed => HardnessConversion.VickersOfRockwell(LipSeal.LeastHardness(speed))));
        _s.Add(Roughness());
        _s.Add(_spec.LeadFree is { } free ? Draft.Truth(K.LeadFree, free, false, "") : Draft.Missing(K.LeadFree, Key("lead_free")));
        _s.Add(_draft.Amount(K.RunOut, _spec.Runout, Key("runout")));
        if (_spec.Offset is { } offset)
            _s.Add(_draft.Amount(K.Offset, offset, ""));
        _s.Add(Derive.From(K.PermittedRunOut, _s[K.RelativeSpeed], LipSeal.GreatestRunOut));
    }

    /// <summary>Roughness has no general tolerance: without a window it is the value itself.</summary>
    private Quantity Roughness()
    {
        if (_spec.Surface is not { Value.Tolerance: Tolerance.General } plain)
            return _draft.Dimension(K.Surface, _spec.Surface, Key("surface"));
        var value = plain.Value.Nominal.Coherent;
        return _draft.Between(K.Surface, Draft.Declared(plain), value, value, value);
    }

    private void Pressures(Quantity? housing)
    {
        _s.Add(_spec.Pressure is { } stated ? _draft.Amount(K.Pressure, stated, "")
            : housing is null ? Draft.Missing(K.Pressure, $"{Key("pressure")} or lubrication")
            : Derive.From(K.Pressure, housing, pressure => pressure));
        if (_spec.GreatestPressure is { } greatest)
        {
            _s.Add(_draft.Amount(K.PermittedPressure, greatest, ""));
            return;
        }

        _draft.Uses(LipSeal.PressureTableId);
        _s.Add(Derive.From(K.PermittedPressure, _s[K.SurfaceSpeed], LipSeal.GreatestPressure));
    }

    /// <summary>Oil and warmth against the family of elastomers.</summary>
    private void Rubber()
    {
        _s.Add(OilBase.Of(_draft, K.OilBase));
        _s.Add(OilBase.Suitability(_draft, K.Suitability, _s[K.Elastomer], _s[K.OilBase]));
        var (oil, share) = (_train[T.OilTemperature], _s[K.SpeedShare]);
        _s.Add(share.IsEvaluated
            ? Quantity.Bounded(K.LipRise, Rise(share.Value), [share])
            : Quantity.NotEvaluated(K.LipRise, [share], share.Reasons));
        _s.Add(Derive.From(K.LipTemperature, oil, _s[K.LipRise], (_, rise) => oil.Value.Greatest + rise));
        _s.Add(Of(K.HottestElastomer, family => family.Hottest));
        _s.Add(Derive.From(K.ColdestOil, oil, _ => oil.Value.Least));
        _s.Add(Of(K.ColdestLip, family => family.Coldest + OfMotion));
    }

    private static Value Rise(Value share) => new(
        (LeastLipRise + LipSeal.GreatestLipRise) / 2 * share.Nominal, LeastLipRise * share.Least, LipSeal.GreatestLipRise * share.Greatest);

    /// <summary>A value of the family of elastomers.</summary>
    private Quantity Of(QuantityKind kind, Func<Elastomer, double?> value, string none = "")
    {
        var elastomer = _s[K.Elastomer];
        if (!elastomer.IsEvaluated)
            return Quantity.NotEvaluated(kind, [elastomer], elastomer.Reasons);
        if (!Elastomer.TryFind(elastomer.Text!, out var family, out var unknown))
            return Quantity.NotEvaluated(kind, [elastomer], unknown);
        return value(family) is { } known
            ? Quantity.Compute(kind, [elastomer], _ => known)
            : Quantity.NotEvaluated(kind, [elastomer], $"{elastomer.Text}: {none}");
    }
}
