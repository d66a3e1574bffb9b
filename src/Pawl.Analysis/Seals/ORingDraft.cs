using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Analysis.Lubrication;
using Pawl.Mechanics.Seals;
using Pawl.Specs.Model;
using K = Pawl.Analysis.Seals.ORingQuantities;
using Range = Pawl.Mechanics.Seals.Extent;
using T = Pawl.Analysis.Trains.TrainQuantities;
using Value = Pawl.Quantities.Extent;

namespace Pawl.Analysis.Seals;

/// <summary>One O-ring in its gland.</summary>
internal sealed class ORingDraft
{
    private readonly Draft _draft;
    private readonly ORingSpec _spec;
    private readonly Subject _s;

    private ORingDraft(Draft draft, ORingSpec spec, Subject train)
    {
        _draft = draft;
        _spec = spec;
        _s = draft.Begin(SubjectKinds.ORing, $"o_rings.{spec.Name.Value}", spec.Name.Span).Relate("train", train);
    }

    private bool IsFace => _spec.Gland.Value is "face-inside" or "face-outside";

    private bool InPlug => _spec.Gland.Value == "plug";

    public static void AddAll(Draft draft, Subject train)
    {
        foreach (var spec in draft.Spec.ORings.Entries)
            new ORingDraft(draft, spec, train).Add();
    }

    private string Key(string key) => $"o_rings.{_spec.Name.Value}.{key}";

    private void Add()
    {
        _s.Add(Draft.Text(K.Elastomer, _spec.Elastomer, Key("elastomer")));
        _s.Add(_draft.Number(K.Hardness, _spec.Hardness, 70, "70 IRHD, common practice, no source"));
        _s.Add(Draft.Text(K.Gland, _spec.Gland, ""));
        _s.Add(Quantity.ComputedText(K.Direction, IsFace ? "axial" : "radial", [_s[K.Gland]]));
        _s.Add(Draft.Text(K.Motion, _spec.Motion, "static", "static"));
        Ring();
        _s.Add(_draft.Dimension(K.Width, _spec.Width, Key("width")));
        if (_spec.Land is { } land)
            _s.Add(_draft.Amount(K.Land, land, ""));
        if (IsFace)
            _s.Add(_draft.Dimension(K.Depth, _spec.Depth, Key("depth")));
        else
            Parts();
        _s.Add(_draft.Dimension(K.Groove, _spec.Groove, Key("groove")));
        _s.Add(_spec.Pressure is null && _draft.Spec.Lubrication?.Ports?.Vent is { Value: false }
            ? Quantity.NotEvaluated(K.Pressure, [], $"{Key("pressure")} is not stated, and the housing has no vent")
            : _draft.Amount(K.Pressure, _spec.Pressure, 0, "0: a vented housing"));
        _s.Add(_draft.Amount(K.Surface, _spec.Surface, Key("surface")));
        if (_spec.Motion is { Value: not "static" })
            _s.Add(_draft.Amount(K.Speed, _spec.Speed, Key("speed")));
        Rubber();
        Extremes();
        if (IsFace)
            return;

        LeadIn();
        _draft.Uses(ExtrusionGapLimit.TableId);
        var share = _spec.Elastomer?.Value is "VMQ" or "FVMQ" ? 0.5 : 1;
        _s.Add(Quantity.Compute(
            K.PermittedGap, [_s[K.Pressure], _s[K.Hardness], _s[K.Elastomer]], v => share * ExtrusionGapLimit.Clearance(v[0], v[1])));
    }

    /// <summary>What its family of elastomers stands, and how it grows.</summary>
    private void Rubber()
    {
        var oil = _s.Related["train"].Find(T.OilTemperature) ?? Draft.Missing(T.OilTemperature, "duty.oil");
        _s.Add(Quantity.Compute(K.Service, [oil], v => v[0]));
        _s.Add(_draft.Amount(K.Swell, _spec.Swell, DefaultSwell, "10 %, common practice, no source"));
        var elastomer = _s[K.Elastomer];
        Elastomer? family = null;
        var reasons = Quantity.MissingReasons([elastomer]);
        if (reasons.IsEmpty && !Elastomer.TryFind(_spec.Elastomer!.Value, out family, out var unknown))
            reasons = [unknown];
        _draft.Uses(Elastomer.TableId);
        _s.Add(OilBase.Of(_draft, K.OilBase));
        _s.Add(OilBase.Suitability(_draft, K.Suitability, elastomer, _s[K.OilBase]));
        _s.Add(Of(K.Coldest, family?.Coldest));
        _s.Add(Of(K.Hottest, family?.Hottest));
        _s.Add(family is { Expansion: null } ? _draft.Assumed(K.Expansion, DefaultExpansion, "2.3·10⁻⁴ 1/K, common practice, no source") : Of(K.Expansion, family?.Expansion));

        Quantity Of(QuantityKind kind, double? value) =>
            value is { } known ? Quantity.Compute(kind, [elastomer], _ => known) : Quantity.NotEvaluated(kind, [elastomer], reasons);
    }

    /// <summary>The ring by its dash number, or by its own dimensions.</summary>
    private void Ring()
    {
        if (_spec.As568 is not { } dash)
        {
            _s.Add(_draft.Dimension(K.Inside, _spec.Inside, $"{Key("as568")} or {Key("inside")}"));
            _s.Add(_draft.Dimension(K.Cord, _spec.Cord, $"{Key("as568")} or {Key("cord")}"));
            return;
        }

        if (!ORingTable.TryFind(dash.Value.ToString("000", CultureInfo.InvariantCulture), out var ring, out var reason))
        {
            _s.Add(Quantity.NotEvaluated(K.Inside, [], reason));
            _s.Add(Quantity.NotEvaluated(K.Cord, [], reason));
            return;
        }

        _draft.Uses(ORingTable.TableId);
        var (inside, cord) = (ring.Extents.InsideDiameter, ring.Extents.Cord);
        var origin = Draft.Declared(dash, $"ISO 3601-1, size {ring.Dash}; deviations from memory");
        _s.Add(_draft.Between(K.Inside, origin, ring.InsideDiameter, inside.Least, inside.Greatest));
        _s.Add(_draft.Between(K.Cord, origin, ring.Cord, cord.Least, cord.Greatest));
    }

    private void Parts()
    {
        _s.Add(_draft.Dimension(K.Bore, _spec.Bore, Key("bore")));
        _s.Add(_draft.Dimension(K.Plug, _spec.Plug, Key("plug")));
        if (_spec.Eccentricity is { } offset)
            _s.Add(_draft.Amount(K.Eccentricity, offset, ""));
    }

    private ImmutableArray<Quantity> Inputs() => IsFace
        ? [_s[K.Inside], _s[K.Cord], _s[K.Depth], _s[K.Groove]]
        : [_s[K.Inside], _s[K.Cord], _s[K.Bore], _s[K.Plug], _s[K.Groove], .. _s.Find(K.Eccentricity) is { } offset ? [offset] : (Quantity[])[]];

    /// <summary>Least and greatest come of the mechanics in closed form; nominal is the concentric gland.</summary>
    private void Extremes()
    {
        var geometry = Inputs();
        ImmutableArray<Quantity> filled = [.. geometry, _s[K.Width], _s[K.Service], _s[K.Expansion], _s[K.Swell]];
        GlandExtremes? extremes = null;
        ImmutableArray<string> reasons = Quantity.MissingReasons(geometry);
        if (reasons.IsEmpty)
        {
            try
            {
                extremes = Find(_s[K.Width] is { IsEvaluated: true } width ? Of(width) : Range.Exactly(1), RubberService.None);
            }
            catch (OutsideValidityException outside)
            {
                reasons = [outside.Message];
            }
        }

        if (extremes is null)
        {
            foreach (var kind in (ReadOnlySpan<QuantityKind>)[K.Height, K.Squeeze, K.SqueezeLength, K.Fill])
                _s.Add(Quantity.NotEvaluated(kind, geometry, reasons));
            if (!IsFace)
                _s.Add(Quantity.NotEvaluated(K.Gap, geometry, reasons));
            return;
        }

        var (height, cord) = Nominal();
        Add(K.Height, height, extremes.Height, geometry);
        Add(K.Squeeze, Gland.Squeeze(cord, height), extremes.Squeeze, geometry);
        Add(K.SqueezeLength, Gland.SqueezeLength(cord, height), extremes.SqueezeLength, geometry);
        if (extremes.Stretch is { } stretch)
            Add(K.Stretch, Gland.Stretch(N(K.Inside), N(_spec.Gland.Value == "bore" ? K.Plug : K.Groove)), stretch, geometry);
        if (extremes.Compression is { } compression && !InPlug)
            Add(K.Compression, Gland.Compression(N(K.Inside), N(K.Cord), N(K.Groove)), compression, geometry);
        if (!IsFace)
            Add(K.Gap, Gland.ExtrusionGap(N(K.Bore), N(K.Plug), Guided), extremes.Gap, geometry);
        _s.Add(Fill(filled, height, cord));
    }

    private Quantity Fill(ImmutableArray<Quantity> inputs, double height, double cord)
    {
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(K.Fill, inputs, reasons);

        var (oil, expansion) = (_s[K.Service].Value, N(K.Expansion));
        var service = new RubberService(expansion, new(oil.Least - Room, oil.Greatest - Room), new(0, N(K.Swell)));
        var found = Find(Of(_s[K.Width]), service)!.Fill;
        var nominal = Gland.Fill(cord, height, N(K.Width), expansion, oil.Nominal - Room);
        return Quantity.Bounded(K.Fill, new(nominal, Math.Min(nominal, found.Least), Math.Max(nominal, found.Greatest)), inputs);
    }

    private const double DefaultSwell = 0.10;

    // Of FKM, NBR and their like 1.6 to 2.3·10⁻⁴ 1/K, common practice, no source: the greatest, where nobody vouched for a value.
    private const double DefaultExpansion = 2.3e-4;

    // Rings and grooves are measured at 20 °C (ISO 1).
    private const double Room = 20;

    private double? Guided => _spec.Eccentricity?.Value.Coherent;

    private double N(QuantityKind kind) => _s[kind].Value.Nominal;

    private static Range Of(Quantity quantity) => new(quantity.Value.Least, quantity.Value.Greatest);

    private GlandExtremes? Find(Range width, RubberService service)
    {
        var ring = new RingExtents(Of(_s[K.Inside]), Of(_s[K.Cord]));
        return _spec.Gland.Value switch
        {
            "plug" => new PistonGland(Of(_s[K.Bore]), Of(_s[K.Groove]), Of(_s[K.Plug]), width, Guided).Extremes(ring, service),
            "bore" => new RodGland(Of(_s[K.Groove]), Of(_s[K.Plug]), Of(_s[K.Bore]), width, Guided).Extremes(ring, service),
            _ => new FaceGland(Of(_s[K.Depth]), Range.Exactly(0), width, Of(_s[K.Groove]), _spec.Gland.Value == "face-inside").Extremes(ring, service),
        };
    }

    private (double Height, double Cord) Nominal() => _spec.Gland.Value switch
    {
        "plug" => (Gland.Height(N(K.Bore), N(K.Groove)), Gland.StretchedCord(N(K.Inside), N(K.Cord), N(K.Groove))),
        "bore" => (Gland.Height(N(K.Groove), N(K.Plug)), Gland.CordOnRod(N(K.Inside), N(K.Cord), N(K.Plug), N(K.Groove))),
        "face-inside" => (N(K.Depth), Gland.CompressedCord(N(K.Inside), N(K.Cord), N(K.Groove))),
        _ => (N(K.Depth), Gland.StretchedCord(N(K.Inside), N(K.Cord), N(K.Groove))),
    };

    private void Add(QuantityKind kind, double nominal, Range range, ImmutableArray<Quantity> inputs) => _s.Add(Quantity.Bounded(
        kind, new Value(nominal, Math.Min(nominal, range.Least), Math.Max(nominal, range.Greatest)), inputs));

    private void LeadIn()
    {
        _s.Add(_draft.Amount(K.LeadInLength, _spec.LeadIn?.Length, Key("lead_in")));
        _s.Add(_draft.Amount(K.LeadInAngle, _spec.LeadIn?.Angle, Key("lead_in")));
        var end = InPlug ? _s[K.Bore] : _s[K.Plug];
        var inPlug = InPlug;
        _s.Add(Quantity.Compute(
            K.LeadInNeeded, [_s[K.Inside], _s[K.Cord], _s[K.Groove], end, _s[K.LeadInAngle], .. inPlug ? [] : (Quantity[])[_s[K.Plug]]],
            v => Gland.LeadIn(
                inPlug ? v[2] + (2 * Gland.StretchedCord(v[0], v[1], v[2])) : v[2] - (2 * Gland.CordOnRod(v[0], v[1], v[3], v[2])), v[3], v[4])));
    }
}
