using Pawl.Analysis.Core;
using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using K = Pawl.Analysis.Gears.MaterialQuantities;

namespace Pawl.Analysis.Gears;

/// <summary>The steel of one gear with its treatment, as the rating needs it.</summary>
internal sealed partial class MaterialDraft
{
    private readonly Draft _draft;
    private readonly GearSpec _gear;
    private readonly Subject _subject;
    private readonly MaterialSpec? _material;
    private readonly HeatTreatmentSpec? _heat;

    private MaterialDraft(Draft draft, GearSpec gear, Subject subject)
    {
        _draft = draft;
        _gear = gear;
        _subject = subject;
        _heat = gear.HeatTreatment;
        _material = gear.Material is { } id ? draft.Spec.Catalogue.Materials.Find(id.Value) : null;
        Taken = _heat is null ? null : _material?.Treatments.Find(_heat.Treatment.Value);
        Class = Taken is null ? null : AllowableStress.Find(Taken.Class.Value);
        RootClass = Class == MaterialClass.InductionHardened && _heat is not { RootHardened.Value: true } ? ClassOfCore() : Class;
        Quality = _heat?.Quality?.Value switch
        {
            "MQ" => MaterialQuality.Mq,
            "ME" => MaterialQuality.Me,
            _ => MaterialQuality.Ml,
        };
    }

    /// <summary>What the catalogue says of the treatment for this steel; null when it does not list it.</summary>
    public TreatmentSpec? Taken { get; }

    /// <summary>The class of the flank; null when it is not known or the standard covers none.</summary>
    public MaterialClass? Class { get; }

    /// <summary>The class of the root: that of the core where induction hardening leaves the root out.</summary>
    public MaterialClass? RootClass { get; }

    /// <summary>The quality; ML where none is stated.</summary>
    public MaterialQuality Quality { get; }

    public static MaterialDraft Build(Draft draft, GearSpec gear, Subject subject)
    {
        var material = new MaterialDraft(draft, gear, subject);
        material.Identify();
        material.Harden();
        material.Limit();
        material.Elasticity();
        material.Roughness();
        material.Windows();
        material.Case();
        material.Heats();
        material.Hydrogen();
        material.Records();
        return material;
    }

    private string Key(string key) => $"train.gears.{_gear.Name.Value}.{key}";

    private string Heat(string key) => Key($"heat_treatment.{key}");

    private Quantity Add(Quantity quantity) => _subject.Add(quantity);

    /// <summary>Why nothing is known of the treatment of this steel; empty when the catalogue has an entry for it.</summary>
    private ImmutableArray<string> Unknown()
    {
        ImmutableArray<string> reasons = [];
        if (_gear.Material is not { } id)
            reasons = reasons.Add($"{Key("material")} is not stated");
        else if (_material is { Treatments.Entries.IsEmpty: true })
            reasons = reasons.Add($"materials.{id.Value}.treatments is not stated: the catalogue does not know it as a gear steel");
        if (_heat is null)
            reasons = reasons.Add($"{Key("heat_treatment")} is not stated");
        return reasons;
    }

    private void Identify()
    {
        var unknown = Unknown();
        var material = Add(Draft.Text(K.Material, _gear.Material, Key("material")));
        var treatment = Add(_heat is null
            ? Draft.Missing(K.Treatment, Key("heat_treatment"))
            : Draft.Text(K.Treatment, _heat.Treatment, ""));
        Add(unknown.IsEmpty
            ? Quantity.OfTruth(K.TreatmentSuits, Origin.Computed.Instance, Taken is not null, [material, treatment])
            : Quantity.NotEvaluated(K.TreatmentSuits, [], unknown));
        Add(Taken is not null
            ? Quantity.OfText(K.Class, Draft.Declared(Taken.Class), Taken.Class.Value, [])
            : Quantity.NotEvaluated(K.Class, [], unknown.IsEmpty
                ? [$"materials.{_gear.Material!.Value} does not list the treatment {_heat!.Treatment.Value}"]
                : unknown));
        Add(_heat is null
            ? Draft.Missing(K.Quality, Key("heat_treatment"))
            : Draft.Text(K.Quality, _heat.Quality, "ML", "ML of ISO 6336-5, which asks least proof"));
    }

    private void Harden()
    {
        Add(_heat is null
            ? Draft.Missing(K.SurfaceHardness, Key("heat_treatment"))
            : Hardness(_draft, K.SurfaceHardness, _heat.SurfaceHardness, Heat("surface_hardness")));
        if (!HasCase)
            return;

        Add(Hardness(_draft, K.CoreHardness, _heat!.CoreHardness, Heat("core_hardness")));
        if (Class == MaterialClass.CaseHardened)
            Add(Draft.Truth(K.Hardenability, _heat.HardenabilityProven, false, "not proven"));
        if (Class == MaterialClass.InductionHardened)
            Add(Draft.Truth(K.RootHardened, _heat.RootHardened, false, "the root keeps the hardness of the core"));
    }

    /// <summary>A window of hardness in HV, as one leaf; not evaluated outside the table of conversion.</summary>
    public static Quantity Hardness(Draft draft, QuantityKind kind, Stated<Hardness>? stated, string key)
    {
        if (stated is null)
            return Draft.Missing(kind, key);
        try
        {
            var value = stated.Value;
            if (value.Scale != HardnessScale.Vickers)
                draft.Uses(HardnessConversion.TableId);
            return draft.Between(
                kind, Draft.Declared(stated, "as written"), Vickers(value.Scale, value.Nominal), Vickers(value.Scale, value.Least),
                Vickers(value.Scale, value.Greatest));
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(kind, [], $"{key}: {outside.Message}");
        }
    }

    private static double Vickers(HardnessScale scale, double value) => scale switch
    {
        HardnessScale.RockwellC => HardnessConversion.VickersOfRockwell(value),
        HardnessScale.Brinell => HardnessConversion.VickersOfBrinell(value),
        _ => value,
    };

    private void Limit()
    {
        var s = _subject;
        if (_heat is { Peening: not null })
            Add(Peened());
        Add(Taken is { ContactLimit: { } contact }
            ? _draft.Amount(K.ContactLimit, contact, "")
            : Class is { } flank
                ? Strength(K.ContactLimit, [s[K.Class], s[K.Quality], s[K.SurfaceHardness]], v => AllowableStress.Contact(flank, Quality, v[2]))
                : Uncovered(K.ContactLimit, "contact_limit"));
        Add(Taken is { BendingLimit: { } bending }
            ? _draft.Amount(K.BendingLimit, bending, "")
            : Class is null ? Uncovered(K.BendingLimit, "bending_limit")
            : RootClass is { } root ? Bending(root)
            : Quantity.NotEvaluated(
                K.BendingLimit, [s[K.Class]],
                $"the root is not hardened, and materials.{_gear.Material!.Value} lists no treatment of its core; state {Heat("root_hardened")} if it is"));
    }

    private Quantity Bending(MaterialClass root)
    {
        var s = _subject;
        var factor = s.Find(K.Peened) is { IsEvaluated: true, Truth: true } ? AllowableStress.PeeningFactor(root, Quality) : 1;
        ImmutableArray<Quantity> peened = s.Find(K.Peened) is { } peening ? [peening] : [];
        if (root != Class)
        {
            return Strength(
                K.BendingLimit, [s[K.Class], s[K.Quality], s[K.CoreHardness], s[K.RootHardened], .. peened],
                v => AllowableStress.Bending(root, Quality, v[2]));
        }

        if (!AllowableStress.CoreCounts(root, Quality))
        {
            return Strength(
                K.BendingLimit, [s[K.Class], s[K.Quality], s[K.SurfaceHardness], .. peened],
                v => factor * AllowableStress.Bending(root, Quality, v[2]));
        }

        var proven = s[K.Hardenability].Truth;
        return Strength(
            K.BendingLimit, [s[K.Class], s[K.Quality], s[K.SurfaceHardness], s[K.CoreHardness], s[K.Hardenability], .. peened],
            v => factor * AllowableStress.Bending(root, Quality, v[2], new(v[3], proven)));
    }

    /// <summary>Strength by hardness. Where the whole window gives one number, it carries no tolerance on.</summary>
    private Quantity Strength(QuantityKind kind, ImmutableArray<Quantity> inputs, Formula formula)
    {
        _draft.Uses(AllowableStress.TableId);
        var strength = Quantity.Compute(kind, inputs, formula);
        return strength is { IsEvaluated: true, Value: { IsExact: true } value } ? Quantity.Computed(kind, value.Nominal, inputs) : strength;
    }

    private Quantity Uncovered(QuantityKind kind, string key) => Taken is null
        ? Quantity.NotEvaluated(kind, [], _subject[K.Class].Reasons)
        : Quantity.NotEvaluated(
            kind, [_subject[K.Class]],
            $"ISO 6336-5 does not cover {_material!.Name.Value} {Taken.Name.Value}; state materials.{_material.Name.Value}.treatments.{Taken.Name.Value}.{key} from tests");

    /// <summary>The class of the steel below an induction-hardened layer.</summary>
    private MaterialClass? ClassOfCore() =>
        (_material!.Treatments.Find(Treatments.ThroughHardened) ?? _material.Treatments.Find(Treatments.Normalised)) is { } core
            ? AllowableStress.Find(core.Class.Value)
            : null;

    private Quantity Peened()
    {
        var peening = _heat!.Peening!;
        var earns = peening is { Intensity: not null, Coverage: not null } and not { RootGroundAfter.Value: true }
            && Class == MaterialClass.CaseHardened;
        return Quantity.OfTruth(K.Peened, Origin.Computed.Instance, earns, [_subject[K.Class]]);
    }

    private void Elasticity()
    {
        if (_gear.Material is not { } id)
        {
            Add(Draft.Missing(K.ElasticModulus, Key("material")));
            Add(Draft.Missing(K.PoissonRatio, Key("material")));
            return;
        }

        Add(_draft.Amount(K.ElasticModulus, _material?.ElasticModulus, $"materials.{id.Value}.elastic_modulus"));
        Add(_draft.Number(K.PoissonRatio, _material?.PoissonRatio, $"materials.{id.Value}.poisson_ratio"));
        if (_heat?.YieldStrength is { } yield)
            Add(_draft.Amount(K.YieldStrength, yield, ""));
    }

    private void Roughness()
    {
        var stated = _gear.Roughness;
        var rz = Add(_draft.Amount(K.FlankRz, stated?.FlankRz, Key("roughness.flank_rz")));
        Add(stated?.FlankRa is { } ra ? _draft.Amount(K.FlankRa, ra, "") : Derive.From(K.FlankRa, rz, depth => depth / 6));
        Add(_draft.Amount(K.RootRz, stated?.RootRz, Key("roughness.root_rz")));
    }
}
