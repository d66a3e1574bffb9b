using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Lubrication;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;
using B = Pawl.Analysis.Trains.BodyQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;
using K = Pawl.Analysis.Lubrication.LubricationQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Lubrication;

/// <summary>How the gearbox is lubricated and cooled.</summary>
internal sealed partial class LubricationDraft
{
    private const string NoSource = "common practice, no source";

    private readonly Draft _draft;
    private readonly LubricationSpec _spec;
    private readonly TrainDraft _train;
    private readonly IReadOnlyDictionary<string, Subject> _bodies;
    private readonly Subject _s;

    private LubricationDraft(Draft draft, LubricationSpec spec, TrainDraft train, IReadOnlyDictionary<string, Subject> bodies)
    {
        (_draft, _spec, _train, _bodies) = (draft, spec, train, bodies);
        _s = draft.Begin(SubjectKinds.Lubrication, "lubrication", Place(draft.Spec)).Relate("train", train.Subject);
    }

    /// <summary>Gauge pressure in the housing.</summary>
    public Quantity Pressure => _s[K.HousingPressure];

    /// <summary>All but what waits for the seals; null when the spec says nothing of lubrication.</summary>
    public static LubricationDraft? Build(Draft draft, TrainDraft train, IReadOnlyDictionary<string, Subject> bodies)
    {
        if (draft.Spec.Lubrication is not { } spec)
            return null;
        var lubrication = new LubricationDraft(draft, spec, train, bodies);
        lubrication.Way();
        lubrication.Oil();
        lubrication.Speeds();
        lubrication.Housing();
        return lubrication;
    }

    private static SourceSpan Place(GearboxSpec spec)
    {
        if (spec.Tree is YamlMap map)
        {
            foreach (var (name, _) in map.Entries)
            {
                if (name.Value == "lubrication")
                    return name.Span;
            }
        }

        return SourceSpan.Whole(spec.File);
    }

    private void Way()
    {
        _s.Add(Draft.Text(K.Supply, _spec.Supply, "lubrication.supply"));
        _s.Add(Draft.Text(K.Attitude, _spec.Attitude, "lubrication.attitude"));
        if (_spec.Supply is null or { Value: "splash" })
            _s.Add(Truth(K.LowestWetted, _spec.LowestWetted, "lubrication.lowest_wetted"));
        if (_spec.Attitude is { Value: "vertical" })
            _s.Add(Draft.Text(K.TopBearing, _spec.TopBearing, "lubrication.top_bearing"));
    }

    private void Oil()
    {
        var train = _train.Subject;
        var (v40, v100, oil) = (train[D.Viscosity40], train[D.Viscosity100], train[T.OilTemperature]);
        _s.Add(OilBase.Of(_draft, K.Base));
        _draft.Uses(OilGrade.TableId);
        _s.Add(v40.IsEvaluated
            ? Quantity.ComputedText(K.Grade, OilGrade.Of(v40.Value.Nominal) is { } grade ? FormattableString.Invariant($"ISO VG {grade.Number}") : "none", [v40])
            : Quantity.NotEvaluated(K.Grade, [v40], v40.Reasons));
        _draft.Uses(ViscosityIndex.TableId);
        _s.Add(Derive.From(K.Index, v40, v100, ViscosityIndex.Of));
        _s.Add(At(K.StartViscosity, oil.Value.Least));
        _s.Add(At(K.RunningViscosity, oil.Value.Nominal));
        _s.Add(At(K.HotViscosity, oil.Value.Greatest));
        _s.Add(Derive.From(K.Running, oil, _ => oil.Value.Nominal));
        _s.Add(Derive.From(K.Hottest, oil, _ => oil.Value.Greatest));
        _s.Add(Derive.From(K.SumpLimit, _s[K.Base], _ => OilBase.HottestSump(_s[K.Base].Text!)));
        if (_spec.OilBefore is not { } before)
            return;

        _s.Add(Draft.Text(K.BaseBefore, _draft.Spec.Catalogue.Lubricants.Find(before.Value)?.Base, $"lubricants.{before.Value}.base"));
        ImmutableArray<Quantity> both = [_s[K.BaseBefore], _s[K.Base]];
        _s.Add(Quantity.MissingReasons(both) is { IsEmpty: false } reasons
            ? Quantity.NotEvaluated(K.Mixture, both, reasons)
            : Quantity.ComputedText(K.Mixture, OilBase.Mixture(both[0].Text!, both[1].Text!), both));
        _s.Add(Draft.Truth(K.Flushed, _spec.Flushed, false, "not flushed, for nothing is stated"));

        Quantity At(QuantityKind kind, double temperature) =>
            Derive.From(kind, v40, v100, oil, (at40, at100, _) => Viscosity.Kinematic(temperature, 40, at40, 100, at100));
    }

    private void Speeds()
    {
        var inputs = FastestInput.Speeds(_draft, _train.Subject);
        _s.Add(Quantity.Compute(
            K.PitchLineSpeed, [.. inputs, .. _train.Meshes.Select(mesh => mesh[MeshQuantities.PitchLineSpeed])],
            v => FastestInput.Of(v[inputs.Length..], v.Length - inputs.Length) * FastestInput.Of(v, inputs.Length) / Math.Abs(v[0])));

        ImmutableArray<Quantity> rims = [.. Carriers()];
        _s.Add(Quantity.Compute(K.RimSpeed, [.. inputs, .. rims], v =>
        {
            var fastest = 0.0;
            for (var k = inputs.Length; k < v.Length; k += 3)
                fastest = Math.Max(fastest, Math.Abs(v[k]) * (v[k + 1] + (v[k + 2] / 2)));
            return fastest * FastestInput.Of(v, inputs.Length);
        }));
        _s.Add(Derive.From(K.Fastest, _s[K.PitchLineSpeed], _s[K.RimSpeed], Math.Max));
        var speed = _s[K.Fastest];
        _s.Add(speed.IsEvaluated
            ? Quantity.ComputedText(K.SupplyNeeded, Word(OilSupplyChoice.For(speed.Value.Greatest)), [speed])
            : Quantity.NotEvaluated(K.SupplyNeeded, [speed], speed.Reasons));
    }

    /// <summary>Speed of the carrier per input speed, centre distance and tip diameter of every planet in a mesh with a central gear.</summary>
    private IEnumerable<Quantity> Carriers()
    {
        foreach (var mesh in _train.Meshes)
        {
            if (_train.PlanetOf(mesh.First, mesh.Second) is not { } planet
                || _bodies[_train.PlanetSet(planet)!.Carrier.Value].Find(B.SpeedRatio) is not { } ratio)
            {
                continue;
            }

            yield return ratio;
            yield return mesh[MeshQuantities.CentreDistance];
            yield return (mesh.First.Spec.On.Value == planet ? mesh.First : mesh.Second)[GearQuantities.TipDiameter];
        }
    }

    private static string Word(OilSupply supply) => supply switch
    {
        OilSupply.Splash => "splash",
        OilSupply.SplashWithCare => "splash with care",
        _ => "jet",
    };

    private static Quantity Truth(QuantityKind kind, Stated<bool>? stated, string key) =>
        stated is null ? Draft.Missing(kind, key) : Draft.Truth(kind, stated, false, "");
}
