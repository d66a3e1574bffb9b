using Pawl.Analysis.Core;
using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Gears;

/// <summary>The steel of one gear with its treatment, as its formulas and the rating need it.</summary>
internal sealed class MaterialBuilder
{
    private readonly Subject _subject;

    public MaterialBuilder(Subject subject)
    {
        _subject = subject;
        Gear = (GearSpec)subject.Model;
        Steel = Gear.Material is { } id ? subject.Context.Spec.Catalogue.Materials.Find(id.Value) : null;
        Taken = Heat is null ? null : Steel?.Treatments.Find(Heat.Treatment.Value);
        Class = Taken is null ? null : AllowableStress.Find(Taken.Class.Value);
        RootClass = Class == MaterialClass.InductionHardened && Heat is not { RootHardened.Value: true } ? ClassOfCore() : Class;
        Quality = QualityOf(Heat?.Quality?.Value);
    }

    public GearSpec Gear { get; }

    public HeatTreatmentSpec? Heat => Gear.HeatTreatment;

    /// <summary>The steel in the catalogue; null when none is stated or the catalogue lacks it.</summary>
    public MaterialSpec? Steel { get; }

    /// <summary>What the catalogue says of the treatment for this steel; null when it does not list it.</summary>
    public TreatmentSpec? Taken { get; }

    /// <summary>The class of the flank; null when it is not known or the standard covers none.</summary>
    public MaterialClass? Class { get; }

    /// <summary>The class of the root: that of the core where induction hardening leaves the root out.</summary>
    public MaterialClass? RootClass { get; }

    /// <summary>The quality; ML where none is stated.</summary>
    public MaterialQuality Quality { get; }

    public static MaterialQuality QualityOf(string? word) => word switch
    {
        "MQ" => MaterialQuality.Mq,
        "ME" => MaterialQuality.Me,
        _ => MaterialQuality.Ml,
    };

    public string Key(string key) => $"{_subject.Keys}.heat_treatment.{key}";

    /// <summary>Why nothing is known of the treatment of this steel; empty when the catalogue has an entry for it.</summary>
    public ImmutableArray<string> Unknown()
    {
        ImmutableArray<string> reasons = [];
        if (Gear.Material is not { } id)
            reasons = reasons.Add($"{_subject.Keys}.material is not stated");
        else if (Steel is { Treatments.Entries.IsEmpty: true })
            reasons = reasons.Add($"materials.{id.Value}.treatments is not stated: the catalogue does not know it as a gear steel");
        if (Heat is null)
            reasons = reasons.Add($"{_subject.Keys}.heat_treatment is not stated");
        return reasons;
    }

    /// <summary>A window of hardness in HV, as one leaf; not evaluated outside the table of conversion.</summary>
    public static Quantity Hardness(AnalysisContext context, QuantityKind kind, Stated<Hardness>? stated, string key)
    {
        if (stated is null)
            return AnalysisContext.Missing(kind, key);
        try
        {
            var value = stated.Value;
            if (value.Scale != HardnessScale.Vickers)
                context.Uses(HardnessConversion.TableId);
            return context.Between(
                kind, AnalysisContext.Declared(stated, "as written"), Vickers(value.Scale, value.Nominal), Vickers(value.Scale, value.Min),
                Vickers(value.Scale, value.Max));
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(kind, [], $"{key}: {outside.Message}");
        }
    }

    /// <summary>One end of a window of hardness in HV; null when no window is stated.</summary>
    public static Quantity? End(AnalysisContext context, QuantityKind kind, Stated<Hardness>? stated, Func<Hardness, double> end)
    {
        if (stated is null)
            return null;
        try
        {
            var value = Vickers(stated.Value.Scale, end(stated.Value));
            return context.Between(kind, AnalysisContext.Declared(stated), value, value, value);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(kind, [], outside.Message);
        }
    }

    private static double Vickers(HardnessScale scale, double value) => scale switch
    {
        HardnessScale.RockwellC => HardnessConversion.VickersOfRockwell(value),
        HardnessScale.Brinell => HardnessConversion.VickersOfBrinell(value),
        _ => value,
    };

    /// <summary>The class of the steel below an induction-hardened layer.</summary>
    private MaterialClass? ClassOfCore() =>
        (Steel!.Treatments.Find(Treatments.ThroughHardened) ?? Steel.Treatments.Find(Treatments.Normalised)) is { } core
            ? AllowableStress.Find(core.Class.Value)
            : null;
}
