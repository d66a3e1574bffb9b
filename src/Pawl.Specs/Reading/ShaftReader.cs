using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Shafts, section by section.</summary>
internal static class ShaftReader
{
    private static readonly string[] Steels = ["tempered", "case-hardened"];
    private static readonly string[] Notches = ["shoulder", "round-groove", "square-groove", "keyway", "pressed-hub", "spline"];

    public static ShaftSpec? Read(Stated<string> name, MapReader reader, Catalogue? catalogue, TrainSpec? train)
    {
        var body = reader.Name("body", required: true);
        var from = reader.Amount("from", Dimension.OfLength);
        var material = reader.Name("material");
        var tensile = reader.Amount("tensile", Dimension.OfStress, AmountRange.Positive);
        var yield = reader.Amount("yield", Dimension.OfStress, AmountRange.Positive);
        var steel = reader.Word("steel", Steels);
        var treated = reader.Amount("heat_treated_diameter", Dimension.OfLength, AmountRange.Positive);
        var still = reader.Number("static_safety", Limits.LeastSafety, Limits.GreatestSafety);
        var fatigue = reader.Number("fatigue_safety", Limits.LeastSafety, Limits.GreatestSafety);
        var windUp = reader.Amount("greatest_wind_up", Dimension.OfAngle, AmountRange.Positive);
        var sections = reader.Named("sections", Section);
        reader.Finish();

        References.CheckBody(reader, "body", body, train);
        References.CheckMaterial(reader, "material", material, catalogue);
        if (tensile is not null && yield is not null && yield.Value.Coherent > tensile.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(yield.Span, reader.PathOf("yield"), yield.Text, $"at most the tensile strength of {tensile.Text}", "Exchange the two?"));
        return body is null
            ? null
            : new()
            {
                Name = name,
                Body = body,
                From = from,
                Material = material,
                Tensile = tensile,
                Yield = yield,
                Steel = steel,
                HeatTreatedDiameter = treated,
                StaticSafety = still,
                FatigueSafety = fatigue,
                GreatestWindUp = windUp,
                Sections = new(sections, section => section.Name.Value),
            };
    }

    private static ShaftSectionSpec? Section(Stated<string> name, MapReader reader)
    {
        var length = reader.Amount("length", Dimension.OfLength, AmountRange.Positive, required: true);
        var outside = reader.Toleranced("outside", Dimension.OfLength, AmountRange.Positive, required: true);
        var bore = reader.Toleranced("bore", Dimension.OfLength, AmountRange.Positive);
        var roughness = reader.Amount("roughness", Dimension.OfLength, AmountRange.Positive);
        var carries = reader.Truth("carries_torque");
        var at = reader.Amount("at", Dimension.OfLength);
        var notch = reader.Map("notch") is { } map ? Notch(map, outside, bore) : null;
        reader.Finish();

        if (bore is not null && outside is not null && bore.Value.Nominal.Coherent >= outside.Value.Nominal.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(bore.Span, reader.PathOf("bore"), bore.Text, $"less than the outside of {outside.Text}"));
        return length is null || outside is null
            ? null
            : new() { Name = name, Length = length, Outside = outside, Bore = bore, Roughness = roughness, CarriesTorque = carries, At = at, Notch = notch };
    }

    private static NotchSpec? Notch(MapReader reader, Stated<Toleranced>? outside, Stated<Toleranced>? bore)
    {
        var kind = reader.Word("kind", Notches, required: true);
        var large = reader.Amount("large", Dimension.OfLength, AmountRange.Positive);
        var bottom = reader.Amount("bottom", Dimension.OfLength, AmountRange.Positive);
        var radius = reader.Amount("radius", Dimension.OfLength, AmountRange.NotNegative);
        var width = reader.Amount("width", Dimension.OfLength, AmountRange.Positive);
        var keys = reader.Whole("keys", Limits.FewestKeys, Limits.MostKeys);
        reader.Finish();

        if (outside is not null && large is not null && large.Value.Coherent <= outside.Value.Nominal.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(large.Span, reader.PathOf("large"), large.Text, $"more than the outside of {outside.Text}", "A shoulder weakens the smaller section; state it there."));
        if (outside is not null && bottom is not null && bottom.Value.Coherent >= outside.Value.Nominal.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(bottom.Span, reader.PathOf("bottom"), bottom.Text, $"less than the outside of {outside.Text}"));
        if (bore is not null && bottom is not null && bottom.Value.Coherent <= bore.Value.Nominal.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(bottom.Span, reader.PathOf("bottom"), bottom.Text, $"more than the bore of {bore.Text}"));
        return kind is null ? null : new() { Kind = kind, Large = large, Bottom = bottom, Radius = radius, Width = width, Keys = keys };
    }
}
