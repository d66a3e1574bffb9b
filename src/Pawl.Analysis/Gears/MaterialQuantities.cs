using Pawl.Analysis.Core;
using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Gears;

/// <summary>The steel of a gear, its quality and its strength.</summary>
public sealed class MaterialQuantities : Section<GearSpec>
{
    private const string Part5 = "ISO 6336-5";
    private const string Converted = "converted to HV after ISO 18265, table A.1, where written in HRC or HBW";

    public static readonly RowDefinition<GearSpec, string> Material = Text("material", "Material").Stated(static s => s.Material);

    public static readonly RowDefinition<GearSpec, string> Treatment = Text("treatment", "Heat treatment")
        .Stated(static s => s.HeatTreatment?.Treatment, "heat_treatment");

    public static readonly TruthDefinition<GearSpec> TreatmentSuits = Truth("treatment_suits", "The steel takes the treatment")
        .By("the catalogue lists the treatment for the steel", "the catalogue", Certainty.Declared)
        .Custom(static subject => Suits(subject));

    public static readonly RowDefinition<GearSpec, string> Class = Text("material_class", "Class of ISO 6336-5", "class")
        .By("class that the catalogue gives for the treatment", "the catalogue", Certainty.Declared)
        .Custom(static subject => ClassOf(subject));

    public static readonly RowDefinition<GearSpec, string> RootClass = Text("root_class", "Class of ISO 6336-5 at the root", "class_F")
        .By("that of the flank; of the core where induction hardening leaves the root out", "the catalogue", Certainty.Declared)
        .Custom(static subject => Of(subject) switch
        {
            { Class: null } => Quantity.NotEvaluated(
                RootClass!, [subject[Class]], subject[Class] is { IsEvaluated: false, Reasons: var reasons } ? reasons : [$"{subject[Class].Text} is no class of ISO 6336-5"]),
            { RootClass: null } material => Quantity.NotEvaluated(RootClass!, [subject[Class]], CoreUnknown(material)),
            var material => Quantity.ComputedText(RootClass!, AllowableStress.Symbol(material.RootClass!.Value), [subject[Class]]),
        });

    public static readonly RowDefinition<GearSpec, string> Quality = Text("quality", "Quality of material and treatment")
        .Stated(static s => s.HeatTreatment?.Quality, "heat_treatment")
        .Custom(static subject => HeatOf(subject) is null
            ? null
            : Quantity.OfText(Quality!, new Origin.Assumed("ML of ISO 6336-5, which asks least proof"), "ML", []));

    public static readonly NumberDefinition<GearSpec> SurfaceHardness =
        Number("surface_hardness", "", "Hardness of the flanks", Units.Vickers).NeverNegative().Noted(Converted).Asking("heat_treatment")
        .Custom(static subject => HeatOf(subject) is { } heat
            ? MaterialBuilder.Hardness(subject.Context, SurfaceHardness!, heat.SurfaceHardness, Of(subject).Key("surface_hardness"))
            : null);

    public static readonly NumberDefinition<GearSpec> CoreHardness =
        Number("core_hardness", "", "Hardness of the core", Units.Vickers).NeverNegative().Noted(Converted)
        .When(static s => HasCase(s))
        .Custom(static subject =>
            MaterialBuilder.Hardness(subject.Context, CoreHardness!, HeatOf(subject)!.CoreHardness, Of(subject).Key("core_hardness")));

    public static readonly TruthDefinition<GearSpec> Hardenability =
        Truth("hardenability_proven", "28 HRC at 12 mm of the end-quench test proven")
        .When(static (s, subject) => HasCase(s) && Of(subject).Class == MaterialClass.CaseHardened)
        .Stated(static s => s.HeatTreatment?.HardenabilityProven).Assumed(false, "not proven");

    public static readonly TruthDefinition<GearSpec> RootHardened = Truth("root_hardened", "The root is hardened too")
        .When(static (s, subject) => HasCase(s) && Of(subject).Class == MaterialClass.InductionHardened)
        .Stated(static s => s.HeatTreatment?.RootHardened).Assumed(false, "the root keeps the hardness of the core");

    public static readonly TruthDefinition<GearSpec> Peened = Truth("peened", "Peening earns its bonus")
        .By("intensity and coverage recorded, root not ground after, class Eh", Part5, Certainty.Memory)
        .When(static s => s.HeatTreatment is { Peening: not null })
        .Custom(static subject => Quantity.OfTruth(
            Peened!, Origin.Computed.Instance,
            HeatOf(subject)!.Peening is { Intensity: not null, Coverage: not null } and not { RootGroundAfter.Value: true }
                && Of(subject).Class == MaterialClass.CaseHardened,
            [subject[Class]]));

    public static readonly NumberDefinition<GearSpec> ContactLimit =
        Number("contact_limit", "σ_Hlim", "Allowable stress number, contact", Units.Megapascal)
        .By("σ_Hlim = A·x + B by class and quality, or as the catalogue states it", Part5, Certainty.Memory)
        .Noted("x is the hardness of the surface, in HV; HBW for class St; harder than the line: its upper end")
        .Custom(static subject => Of(subject).Taken is { ContactLimit: { } stated } ? subject.Context.Amount(ContactLimit!, stated, "") : null)
        .Custom(static subject => Of(subject).Class is null ? Uncovered(subject, ContactLimit!, "contact_limit") : Table(subject))
        .From(Class, Quality, SurfaceHardness, static (name, quality, hardness) =>
            AllowableStress.Contact(AllowableStress.Find(name)!.Value, MaterialBuilder.QualityOf(quality), hardness));

    public static readonly NumberDefinition<GearSpec> BendingLimit =
        Number("bending_limit", "σ_Flim", "Nominal stress number, bending", Units.Megapascal)
        .By("σ_Flim = (A·x + B)·f_peen by class, quality and core, or as the catalogue states it", Part5, Certainty.Memory)
        .Noted("f_peen is 1.10 (MQ) or 1.05 (ME) for a case-hardened root that is peened on record, else 1")
        .Custom(static subject => Of(subject).Taken is { BendingLimit: { } stated } ? subject.Context.Amount(BendingLimit!, stated, "") : null)
        .Custom(static subject => Of(subject) switch
        {
            { Class: null } => Uncovered(subject, BendingLimit!, "bending_limit"),
            { RootClass: null } material => Quantity.NotEvaluated(BendingLimit!, [subject[Class]], CoreUnknown(material)),
            _ => Table(subject),
        })
        .For(static (_, subject) => Of(subject) is var material && material.RootClass != material.Class).From(
            RootClass, Quality, CoreHardness, static (root, quality, hardness) => AllowableStress.Bending(ClassNamed(root), MaterialBuilder.QualityOf(quality), hardness))
        .For(static (_, subject) => Of(subject) is var material && !AllowableStress.CoreCounts(material.RootClass!.Value, material.Quality)).From(
            RootClass, Quality, SurfaceHardness, OwnRowOr(static () => Peened, false), static (root, quality, hardness, peened) =>
                Peening(root, quality, peened) * AllowableStress.Bending(ClassNamed(root), MaterialBuilder.QualityOf(quality), hardness))
        .From(
            RootClass, Quality, SurfaceHardness, CoreHardness, Hardenability, OwnRowOr(static () => Peened, false),
            static (root, quality, hardness, core, proven, peened) => Peening(root, quality, peened)
                * AllowableStress.Bending(ClassNamed(root), MaterialBuilder.QualityOf(quality), hardness, new(core, proven)));

    public static readonly NumberDefinition<GearSpec> YieldStrength =
        Number("yield_strength", "R_p0.2", "0.2 % proof stress of the core", Units.Megapascal)
        .Stated(static s => s.HeatTreatment?.YieldStrength).Optional();

    public static readonly NumberDefinition<GearSpec> ElasticModulus =
        Number("elastic_modulus", "E", "Modulus of elasticity", Units.Megapascal)
        .Found(
            static (_, subject) => Of(subject).Steel?.ElasticModulus,
            static s => s.Material is { } id ? $"materials.{id.Value}.elastic_modulus" : $"train.gears.{s.Name.Value}.material");

    public static readonly NumberDefinition<GearSpec> PoissonRatio = Number("poisson_ratio", "ν", "Poisson's ratio")
        .Custom(static subject => subject.Context.Number(
            PoissonRatio!, Of(subject).Steel?.PoissonRatio,
            Of(subject).Gear.Material is { } id ? $"materials.{id.Value}.poisson_ratio" : $"{subject.Keys}.material"));

    public static readonly NumberDefinition<GearSpec> FlankRz =
        Number("flank_rz", "Rz_H", "Roughness of the flanks, Rz", Units.Micrometre).NeverNegative().Stated(static s => s.Roughness?.FlankRz);

    public static readonly NumberDefinition<GearSpec> FlankRa = Number("flank_ra", "Ra_H", "Roughness of the flanks, Ra", Units.Micrometre)
        .By("Ra = Rz/6, or as declared", "ISO 6336-2, roughness factor", Certainty.Memory)
        .Stated(static s => s.Roughness?.FlankRa).From(FlankRz, static depth => depth / 6);

    public static readonly NumberDefinition<GearSpec> RootRz =
        Number("root_rz", "Rz_F", "Roughness of the root, Rz", Units.Micrometre).NeverNegative().Stated(static s => s.Roughness?.RootRz);

    public static readonly NumberDefinition<GearSpec> MinClassHardness =
        Number("min_class_hardness", "", "Minimum hardness of the flanks in the class", Units.Vickers)
        .By("lower end of the line of σ_Hlim", Part5, Certainty.Memory).Tables(AllowableStress.TableId)
        .When(static (_, subject) => Of(subject).Class is not null)
        .From(Class, Quality, static (name, quality) => Range(name, quality).Min);

    public static readonly NumberDefinition<GearSpec> MaxClassHardness =
        Number("max_class_hardness", "", "Maximum hardness of the flanks in the class", Units.Vickers)
        .By("upper end of the line of σ_Hlim", Part5, Certainty.Memory).Tables(AllowableStress.TableId)
        .When(static (_, subject) => Of(subject).Class is not null)
        .From(Class, Quality, static (name, quality) => Range(name, quality).Most);

    public static readonly NumberDefinition<GearSpec> MinQualityCore =
        Number("min_quality_core", "", "Minimum hardness of the core for the quality", Units.Vickers)
        .By("25 HRC for MQ, 30 HRC for ME, case-hardened", Part5, Certainty.Memory)
        .When(static (_, subject) => Of(subject) is { Class: { } known } material && AllowableStress.MinCore(known, material.Quality) is not null)
        .From(Class, Quality, static (name, quality) => HardnessConversion.VickersOfRockwell(
            AllowableStress.MinCore(AllowableStress.Find(name)!.Value, MaterialBuilder.QualityOf(quality))!.Value));

    /// <summary>What the spec and its catalogue say of the steel of a gear.</summary>
    internal static MaterialBuilder Of(Subject gear) => new(gear);

    internal static HeatTreatmentSpec? HeatOf(Subject gear) => ((GearSpec)gear.Model).HeatTreatment;

    internal static bool HasCase(GearSpec gear) => gear.HeatTreatment is { } heat && Treatments.HasCase(heat.Treatment.Value);

    private static (double Min, double Most) Range(string name, string quality) =>
        AllowableStress.Hardness(AllowableStress.Find(name)!.Value, MaterialBuilder.QualityOf(quality));

    private static Quantity Suits(Subject subject)
    {
        var material = Of(subject);
        return material.Unknown() is { IsEmpty: false } unknown
            ? Quantity.NotEvaluated(TreatmentSuits, [], unknown)
            : Quantity.OfTruth(TreatmentSuits, Origin.Computed.Instance, material.Taken is not null, [subject[Material], subject[Treatment]])
                .With(["material", "treatment"]);
    }

    private static Quantity ClassOf(Subject subject)
    {
        var material = Of(subject);
        return material.Taken is { } taken ? Quantity.OfText(Class, AnalysisContext.Declared(taken.Class), taken.Class.Value, [])
            : material.Unknown() is { IsEmpty: false } unknown ? Quantity.NotEvaluated(Class, [], unknown)
            : Quantity.NotEvaluated(
                Class, [], $"materials.{material.Gear.Material!.Value} does not list the treatment {material.Heat!.Treatment.Value}");
    }

    private static Quantity Uncovered(Subject subject, QuantityKind kind, string key) => Of(subject) is { Taken: { } taken, Steel: { } steel }
        ? Quantity.NotEvaluated(
            kind, [subject[Class]],
            $"ISO 6336-5 does not cover {steel.Name.Value} {taken.Name.Value}; state materials.{steel.Name.Value}.treatments.{taken.Name.Value}.{key} from tests")
        : Quantity.NotEvaluated(kind, [], subject[Class].Reasons);

    /// <summary>Notes the table of strength; the formula that follows reads it.</summary>
    private static Quantity? Table(Subject subject)
    {
        subject.Context.Uses(AllowableStress.TableId);
        return null;
    }

    private static string CoreUnknown(MaterialBuilder material) =>
        $"the root is not hardened, and materials.{material.Gear.Material!.Value} lists no treatment of its core; state {material.Key("root_hardened")} if it is";

    private static MaterialClass ClassNamed(string name) => AllowableStress.Find(name)!.Value;

    private static double Peening(string root, string quality, bool isPeened) =>
        isPeened ? AllowableStress.PeeningFactor(ClassNamed(root), MaterialBuilder.QualityOf(quality)) : 1;
}
