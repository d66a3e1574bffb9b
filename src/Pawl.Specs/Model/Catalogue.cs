using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>Everything that the catalogue files of a project declare, merged by id.</summary>
public sealed record Catalogue
{
    public static readonly Catalogue Empty = new();

    [Display(Name = "Materials", Description = "Materials by id.")]
    public Named<MaterialSpec> Materials { get; init; } = Named<MaterialSpec>.Empty;

    [Display(Name = "Lubricants", Description = "Lubricants by id.")]
    public Named<LubricantSpec> Lubricants { get; init; } = Named<LubricantSpec>.Empty;

    [Display(Name = "Bearings", Description = "Bearings by id.")]
    public Named<BearingTypeSpec> Bearings { get; init; } = Named<BearingTypeSpec>.Empty;

    /// <summary>Adapters by name, each of a file of its own.</summary>
    public Named<AdapterSpec> Adapters { get; init; } = Named<AdapterSpec>.Empty;
}

/// <summary>One catalogue file: its keys, for the schema.</summary>
public sealed record CatalogueFile
{
    [Display(Name = "Format version", Description = "Version of the catalogue format. This build reads 1.")]
    [Range(Limits.Format, Limits.Format)]
    public required Stated<int> Pawl { get; init; }

    [Display(Name = "Catalogue", Description = "Name of the catalogue.")]
    public required Stated<string> Catalogue { get; init; }

    [Display(Name = "Materials", Description = "Materials by id; a later file overrides an earlier one.")]
    public Named<MaterialSpec> Materials { get; init; } = Named<MaterialSpec>.Empty;

    [Display(Name = "Lubricants", Description = "Lubricants by id; a later file overrides an earlier one.")]
    public Named<LubricantSpec> Lubricants { get; init; } = Named<LubricantSpec>.Empty;

    [Display(Name = "Bearings", Description = "Bearings by id; a later file overrides an earlier one.")]
    public Named<BearingTypeSpec> Bearings { get; init; } = Named<BearingTypeSpec>.Empty;
}

/// <summary>A material as a catalogue states it.</summary>
public sealed record MaterialSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Title", Description = "Name for the report: designation and condition.")]
    public required Stated<string> Title { get; init; }

    [Display(Name = "Modulus of elasticity", Description = "E.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "206 GPa")]
    public Stated<Amount>? ElasticModulus { get; init; }

    [Display(Name = "Poisson's ratio", Description = "ν.")]
    [Range(Limits.MinPoisson, Limits.MaxPoisson)]
    public Stated<double>? PoissonRatio { get; init; }

    [Display(Name = "Thermal expansion", Description = "Coefficient of linear thermal expansion.")]
    [Measures(nameof(Dimension.OfThermalExpansion), Example = "11.5 µm/(m·K)")]
    public Stated<Amount>? ThermalExpansion { get; init; }

    [Display(Name = "Density", Description = "ρ.")]
    [Measures(nameof(Dimension.OfDensity), AmountRange.Positive, Example = "7850 kg/m³")]
    public Stated<Amount>? Density { get; init; }

    [Display(Name = "Tensile strength", Description = "Least R_m of a material that needs no treatment stated, such as wrought aluminium; for threads in it.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "310 MPa")]
    public Stated<Amount>? TensileStrength { get; init; }

    [Display(Name = "Limiting pressure", Description = "p_G that it stands under the head of a bolt.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "260 MPa")]
    public Stated<Amount>? LimitingPressure { get; init; }

    [Display(Name = "Carbon", Description = "Carbon content by mass.")]
    public ShareWindowSpec? Carbon { get; init; }

    [Display(Name = "Treatments", Description = "The heat treatments that the steel takes, each with its windows. Absent: not a gear steel.")]
    public Named<TreatmentSpec> Treatments { get; init; } = Named<TreatmentSpec>.Empty;

    [Display(Name = "Source", Description = "Where the numbers come from.")]
    public required Stated<string> Source { get; init; }

    [Display(Name = "Certainty", Description = "published (the source was open), memory (from memory) or invented (demo data).")]
    [OneOf("published", "memory", "invented")]
    public required Stated<string> Certainty { get; init; }
}

/// <summary>A treatment that a steel takes.</summary>
[OnlySound]
public sealed record TreatmentSpec
{
    /// <summary>One of <see cref="Model.Treatments.Words"/>.</summary>
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Class", Description = "Class of ISO 6336-5 whose limits hold, or none where the standard does not cover it.")]
    [OneOf("St", "V-carbon", "V-alloy", "IF", "Eh", "NT", "NV-nitrided", "NV-nitrocarburised", "none")]
    public required Stated<string> Class { get; init; }

    [Display(Name = "Surface hardness", Description = "What the treatment gives, as a window in HRC, HV or HBW.")]
    [Example("58..62 HRC")]
    public Stated<Hardness>? SurfaceHardness { get; init; }

    [Display(Name = "Core hardness", Description = "What small sections reach, as a window in HRC, HV or HBW.")]
    [Example("30..43 HRC")]
    public Stated<Hardness>? CoreHardness { get; init; }

    [Display(Name = "Tempering", Description = "Usual temperatures of tempering or ageing.")]
    public TemperatureWindowSpec? Tempering { get; init; }

    [Display(Name = "Contact limit", Description = "σ_Hlim from tests of this steel and treatment; absent: ISO 6336-5 by class.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "1500 MPa")]
    public Stated<Amount>? ContactLimit { get; init; }

    [Display(Name = "Bending limit", Description = "σ_Flim from tests of this steel and treatment; absent: ISO 6336-5 by class.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "460 MPa")]
    public Stated<Amount>? BendingLimit { get; init; }
}

/// <summary>A window of a share.</summary>
public sealed record ShareWindowSpec
{
    [Display(Name = "Minimum", Description = "Lower end.")]
    [Measures(nameof(Dimension.Ratio), Example = "0.15 %", Min = 0, Max = Limits.MaxCarbon, Unit = nameof(Units.Percent))]
    public required Stated<Amount> Min { get; init; }

    [Display(Name = "Max", Description = "Upper end.")]
    [Measures(nameof(Dimension.Ratio), Example = "0.21 %", Min = 0, Max = Limits.MaxCarbon, Unit = nameof(Units.Percent))]
    public required Stated<Amount> Max { get; init; }
}

/// <summary>A window of temperature.</summary>
public sealed record TemperatureWindowSpec
{
    [Display(Name = "Minimum", Description = "Lower end.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "150 °C")]
    public required Stated<Amount> Min { get; init; }

    [Display(Name = "Max", Description = "Upper end.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "200 °C")]
    public required Stated<Amount> Max { get; init; }
}

/// <summary>A lubricant as a catalogue states it.</summary>
public sealed record LubricantSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Title", Description = "Name for the report.")]
    public required Stated<string> Title { get; init; }

    [Display(Name = "Kind", Description = "oil or grease.")]
    [OneOf("oil", "grease")]
    public Stated<string>? Kind { get; init; }

    [Display(Name = "Base", Description = "Base oil: decides which elastomers it suits.")]
    [OneOf("mineral", "PAO", "ester", "PAG", "ATF")]
    public Stated<string>? Base { get; init; }

    [Display(Name = "Viscosity index", Description = "ISO 2909; stands in for the viscosity at 100 °C.")]
    [Range(Limits.MinViscosityIndex, Limits.MaxViscosityIndex)]
    public Stated<double>? ViscosityIndex { get; init; }

    [Display(Name = "Viscosity at 40 °C", Description = "Kinematic viscosity at 40 °C.")]
    [Measures(nameof(Dimension.OfKinematicViscosity), AmountRange.Positive, Example = "100 mm²/s")]
    public Stated<Amount>? Viscosity40 { get; init; }

    [Display(Name = "Viscosity at 100 °C", Description = "Kinematic viscosity at 100 °C.")]
    [Measures(nameof(Dimension.OfKinematicViscosity), AmountRange.Positive, Example = "11.2 mm²/s")]
    public Stated<Amount>? Viscosity100 { get; init; }

    [Display(Name = "Density", Description = "Density at 15 °C; absent: 0.87 g/cm³, common for mineral oil.")]
    [Measures(nameof(Dimension.OfDensity), AmountRange.Positive, Example = "880 kg/m³")]
    public Stated<Amount>? Density { get; init; }

    [Display(Name = "Pressure-viscosity coefficient", Description = "α of the film formula at the running temperature; absent: an estimate for mineral oil.")]
    [Measures(nameof(Dimension.OfInverseStress), AmountRange.Positive, Example = "18 1/GPa")]
    public Stated<Amount>? PressureViscosity { get; init; }

    [Display(Name = "Scuffing temperature", Description = "Contact temperature at which the oil fails in a scuffing test after ISO 14635-1, as its maker states it.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "250 °C")]
    public Stated<Amount>? ScuffingTemperature { get; init; }

    [Display(Name = "Source", Description = "Where the numbers come from.")]
    public required Stated<string> Source { get; init; }

    [Display(Name = "Certainty", Description = "published (the source was open), memory (from memory) or invented (demo data).")]
    [OneOf("published", "memory", "invented")]
    public required Stated<string> Certainty { get; init; }
}
