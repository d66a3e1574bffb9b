using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>A radial lip seal on its shaft.</summary>
internal static class LipSealReader
{
    private static readonly string[] Elastomers = ["NBR", "HNBR", "ACM", "FKM", "VMQ"];
    private static readonly string[] Sides = ["oil", "outside"];

    public static LipSealSpec? Read(Stated<string> name, MapReader reader, TrainSpec? train)
    {
        var shaft = reader.Name("shaft", required: true);
        var housing = reader.Name("housing", required: true);
        var diameter = reader.Toleranced("diameter", Dimension.OfLength, AmountRange.Positive);
        var bore = reader.Toleranced("bore", Dimension.OfLength, AmountRange.Positive);
        var elastomer = reader.Word("elastomer", Elastomers);
        var hardness = reader.Hardness("hardness");
        var surface = reader.Toleranced("surface", Dimension.OfLength, AmountRange.Positive);
        var leadFree = reader.Truth("lead_free");
        var runout = reader.Amount("runout", Dimension.OfLength, AmountRange.NotNegative);
        var offset = reader.Amount("offset", Dimension.OfLength, AmountRange.NotNegative);
        var towards = reader.Word("towards", Sides);
        var pressure = reader.Amount("greatest_pressure", Dimension.OfStress, AmountRange.Positive);
        var speed = reader.Amount("greatest_speed", Dimension.OfSpeed, AmountRange.Positive);
        var inside = reader.Amount("pressure", Dimension.OfStress, AmountRange.NotNegative);
        var leadIn = reader.Map("lead_in") is { } chamfer ? ORingReader.LeadIn(chamfer) : null;
        var loss = reader.Amount("loss", Dimension.OfPower, AmountRange.NotNegative);
        reader.Finish();

        References.CheckBody(reader, "shaft", shaft, train);
        References.CheckBody(reader, "housing", housing, train);
        if (shaft is not null && shaft.Value == housing?.Value)
            reader.Report(SpecDiagnostics.SelfSealed(housing.Span, reader.PathOf("housing"), housing.Value));
        return shaft is null || housing is null
            ? null
            : new()
            {
                Name = name,
                Shaft = shaft,
                Housing = housing,
                Diameter = diameter,
                Bore = bore,
                Elastomer = elastomer,
                Hardness = hardness,
                Surface = surface,
                LeadFree = leadFree,
                Runout = runout,
                Offset = offset,
                Towards = towards,
                GreatestPressure = pressure,
                GreatestSpeed = speed,
                Pressure = inside,
                LeadIn = leadIn,
                Loss = loss,
            };
    }
}
