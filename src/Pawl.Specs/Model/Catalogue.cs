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
}

/// <summary>A material as a catalogue states it.</summary>
public sealed record MaterialSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Title", Description = "Name for the report: designation and condition.")]
    public required Stated<string> Title { get; init; }

    [Display(Name = "Modulus of elasticity", Description = "E.")]
    [Measures(nameof(Dimension.OfStress), Example = "206 GPa")]
    public Stated<Amount>? ElasticModulus { get; init; }

    [Display(Name = "Poisson's ratio", Description = "ν.")]
    [Range(Limits.LeastPoisson, Limits.GreatestPoisson)]
    public Stated<double>? PoissonRatio { get; init; }

    [Display(Name = "Thermal expansion", Description = "Coefficient of linear thermal expansion.")]
    [Measures(nameof(Dimension.OfThermalExpansion), Example = "11.5 µm/(m·K)")]
    public Stated<Amount>? ThermalExpansion { get; init; }

    [Display(Name = "Density", Description = "ρ.")]
    [Measures(nameof(Dimension.OfDensity), Example = "7850 kg/m³")]
    public Stated<Amount>? Density { get; init; }

    [Display(Name = "Source", Description = "Where the numbers come from.")]
    public required Stated<string> Source { get; init; }

    [Display(Name = "Certainty", Description = "published (the source was open), memory (from memory) or invented (demo data).")]
    [OneOf("published", "memory", "invented")]
    public required Stated<string> Certainty { get; init; }
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

    [Display(Name = "Viscosity at 40 °C", Description = "Kinematic viscosity at 40 °C.")]
    [Measures(nameof(Dimension.OfKinematicViscosity), Example = "100 mm²/s")]
    public Stated<Amount>? Viscosity40 { get; init; }

    [Display(Name = "Viscosity at 100 °C", Description = "Kinematic viscosity at 100 °C.")]
    [Measures(nameof(Dimension.OfKinematicViscosity), Example = "11.2 mm²/s")]
    public Stated<Amount>? Viscosity100 { get; init; }

    [Display(Name = "Source", Description = "Where the numbers come from.")]
    public required Stated<string> Source { get; init; }

    [Display(Name = "Certainty", Description = "published (the source was open), memory (from memory) or invented (demo data).")]
    [OneOf("published", "memory", "invented")]
    public required Stated<string> Certainty { get; init; }
}
