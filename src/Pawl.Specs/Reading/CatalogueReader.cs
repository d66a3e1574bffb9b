using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>One catalogue file as typed entries.</summary>
internal static class CatalogueReader
{
    private static readonly string[] Certainties = ["published", "memory", "invented"];
    private static readonly string[] Bases = ["mineral", "PAO", "ester", "PAG", "ATF"];
    private static readonly string[] Kinds = ["oil", "grease"];

    public static CatalogueFile? Read(YamlNode tree, ICollection<Diagnostic> diagnostics)
    {
        var reader = new MapReader(tree, "", diagnostics);
        var pawl = reader.Whole("pawl", Limits.Format, Limits.Format, required: true);
        var name = reader.Text("catalogue", required: true);
        var materials = reader.Named("materials", Material);
        var lubricants = reader.Named("lubricants", Lubricant);
        var bearings = reader.Named("bearings", BearingReader.Type);
        reader.Finish();

        return pawl is null || name is null
            ? null
            : new()
            {
                Pawl = pawl,
                Catalogue = name,
                Materials = new(materials, material => material.Name.Value),
                Lubricants = new(lubricants, lubricant => lubricant.Name.Value),
                Bearings = new(bearings, bearing => bearing.Name.Value),
            };
    }

    private static MaterialSpec? Material(Stated<string> name, MapReader reader)
    {
        var title = reader.Text("title", required: true);
        var modulus = reader.Amount("elastic_modulus", Dimension.OfStress, AmountRange.Positive);
        var poisson = reader.Number("poisson_ratio", Limits.LeastPoisson, Limits.GreatestPoisson);
        var expansion = reader.Amount("thermal_expansion", Dimension.OfThermalExpansion);
        var density = reader.Amount("density", Dimension.OfDensity, AmountRange.Positive);
        var tensile = reader.Amount("tensile_strength", Dimension.OfStress, AmountRange.Positive);
        var pressure = reader.Amount("limiting_pressure", Dimension.OfStress, AmountRange.Positive);
        var carbon = reader.Map("carbon") is { } carbonMap ? HeatTreatmentReader.Carbon(carbonMap) : null;
        var treatments = reader.Named("treatments", HeatTreatmentReader.Treatment);
        var source = reader.Text("source", required: true);
        var certainty = reader.Word("certainty", Certainties, required: true);
        reader.Finish();

        return title is null || source is null || certainty is null
            ? null
            : new()
            {
                Name = name,
                Title = title,
                Carbon = carbon,
                Treatments = new(treatments, treatment => treatment.Name.Value),
                ElasticModulus = modulus,
                PoissonRatio = poisson,
                ThermalExpansion = expansion,
                Density = density,
                TensileStrength = tensile,
                LimitingPressure = pressure,
                Source = source,
                Certainty = certainty,
            };
    }

    private static LubricantSpec? Lubricant(Stated<string> name, MapReader reader)
    {
        var title = reader.Text("title", required: true);
        var kind = reader.Word("kind", Kinds);
        var @base = reader.Word("base", Bases);
        var index = reader.Number("viscosity_index", Limits.LeastViscosityIndex, Limits.GreatestViscosityIndex);
        var viscosity40 = reader.Amount("viscosity_40", Dimension.OfKinematicViscosity, AmountRange.Positive);
        var viscosity100 = reader.Amount("viscosity_100", Dimension.OfKinematicViscosity, AmountRange.Positive);
        var density = reader.Amount("density", Dimension.OfDensity, AmountRange.Positive);
        var pressure = reader.Amount("pressure_viscosity", Dimension.OfInverseStress, AmountRange.Positive);
        var scuffing = reader.Amount("scuffing_temperature", Dimension.OfTemperature);
        var source = reader.Text("source", required: true);
        var certainty = reader.Word("certainty", Certainties, required: true);
        reader.Finish();

        return title is null || source is null || certainty is null
            ? null
            : new()
            {
                Name = name,
                Title = title,
                Kind = kind,
                Base = @base,
                ViscosityIndex = index,
                Viscosity40 = viscosity40,
                Viscosity100 = viscosity100,
                Density = density,
                PressureViscosity = pressure,
                ScuffingTemperature = scuffing,
                Source = source,
                Certainty = certainty,
            };
    }
}
