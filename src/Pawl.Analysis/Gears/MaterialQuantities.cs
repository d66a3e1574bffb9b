using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Gears;

/// <summary>What is known of the steel of a gear, its treatment and its strength.</summary>
public static class MaterialQuantities
{
    private const string Part5 = "ISO 6336-5";
    private const string Converted = "converted to HV after ISO 18265, table A.1, where written in HRC or HBW";

    public static readonly QuantityKind Treatment = new()
    {
        Name = "treatment", Title = "Heat treatment", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Material = new()
    {
        Name = "material", Title = "Material", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind TreatmentSuits = new()
    {
        Name = "treatment_suits", Title = "The steel takes the treatment", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
        Formula = "the catalogue lists the treatment for the steel", Symbols = ["material", "treatment"], Source = "the catalogue",
    };

    public static readonly QuantityKind Class = new()
    {
        Name = "material_class", Title = "Class of ISO 6336-5", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
        Formula = "class that the catalogue gives for the treatment", Symbols = ["treatment"], Source = "the catalogue",
    };

    public static readonly QuantityKind Quality = new()
    {
        Name = "quality", Title = "Quality of material and treatment", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind SurfaceHardness = new()
    {
        Name = "surface_hardness", Title = "Hardness of the flanks", Unit = Units.Vickers, Certainty = Certainty.Declared, Note = Converted,
    };

    public static readonly QuantityKind CoreHardness = new()
    {
        Name = "core_hardness", Title = "Hardness of the core", Unit = Units.Vickers, Certainty = Certainty.Declared, Note = Converted,
    };

    public static readonly QuantityKind ContactLimit = new()
    {
        Name = "contact_limit", Symbol = "σ_Hlim", Title = "Allowable stress number, contact", Unit = Units.Megapascal,
        Formula = "σ_Hlim = A·x + B by class and quality, or as the catalogue states it", Symbols = ["class", "quality", "x"], Source = Part5,
        Certainty = Certainty.Memory, Note = "x is the hardness of the surface, in HV; HBW for class St; harder than the line: its upper end",
    };

    public static readonly QuantityKind BendingLimit = new()
    {
        Name = "bending_limit", Symbol = "σ_Flim", Title = "Nominal stress number, bending", Unit = Units.Megapascal,
        Formula = "σ_Flim = (A·x + B)·f_peen by class, quality and core, or as the catalogue states it",
        Source = Part5, Certainty = Certainty.Memory,
        Note = "f_peen is 1.10 (MQ) or 1.05 (ME) for a case-hardened root that is peened on record, else 1",
    };

    public static readonly QuantityKind Hardenability = new()
    {
        Name = "hardenability_proven", Title = "28 HRC at 12 mm of the end-quench test proven", ValueKind = ValueKind.Truth,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RootHardened = new()
    {
        Name = "root_hardened", Title = "The root is hardened too", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ElasticModulus = new()
    {
        Name = "elastic_modulus", Symbol = "E", Title = "Modulus of elasticity", Unit = Units.Megapascal, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind PoissonRatio = new()
    {
        Name = "poisson_ratio", Symbol = "ν", Title = "Poisson's ratio", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind FlankRz = new()
    {
        Name = "flank_rz", Symbol = "Rz_H", Title = "Roughness of the flanks, Rz", Unit = Units.Micrometre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind FlankRa = new()
    {
        Name = "flank_ra", Symbol = "Ra_H", Title = "Roughness of the flanks, Ra", Unit = Units.Micrometre,
        Formula = "Ra = Rz/6, or as declared", Symbols = ["Rz_H"], Source = "ISO 6336-2, roughness factor", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind RootRz = new()
    {
        Name = "root_rz", Symbol = "Rz_F", Title = "Roughness of the root, Rz", Unit = Units.Micrometre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind YieldStrength = new()
    {
        Name = "yield_strength", Symbol = "R_p0.2", Title = "0.2 % proof stress of the core", Unit = Units.Megapascal,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Peened = new()
    {
        Name = "peened", Title = "Peening earns its bonus", ValueKind = ValueKind.Truth,
        Formula = "intensity and coverage recorded, root not ground after, class Eh", Symbols = [], Source = Part5, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind LeastClassHardness = new()
    {
        Name = "least_class_hardness", Title = "Least hardness of the flanks in the class", Unit = Units.Vickers,
        Formula = "lower end of the line of σ_Hlim", Symbols = ["class", "quality"], Source = Part5, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind GreatestClassHardness = new()
    {
        Name = "greatest_class_hardness", Title = "Greatest hardness of the flanks in the class", Unit = Units.Vickers,
        Formula = "upper end of the line of σ_Hlim", Symbols = ["class", "quality"], Source = Part5, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind LeastQualityCore = new()
    {
        Name = "least_quality_core", Title = "Least hardness of the core for the quality", Unit = Units.Vickers,
        Formula = "25 HRC for MQ, 30 HRC for ME, case-hardened", Symbols = ["class", "quality"], Source = Part5, Certainty = Certainty.Memory,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Material, Treatment, TreatmentSuits, Class, Quality, SurfaceHardness, CoreHardness, Hardenability, RootHardened, Peened, ContactLimit, BendingLimit,
        YieldStrength, ElasticModulus, PoissonRatio, FlankRz, FlankRa, RootRz, LeastClassHardness, GreatestClassHardness, LeastQualityCore,
        .. TreatmentQuantities.All,
    ];
}
