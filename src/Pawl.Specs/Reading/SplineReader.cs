using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Involute splines with both their sides.</summary>
internal static class SplineReader
{
    internal static readonly string[] Systems = ["iso-4156", "ansi-b92.1"];
    internal static readonly string[] Roots = ["flat", "fillet"];
    internal static readonly string[] Fits = ["d", "e", "f", "h", "js", "k"];
    private static readonly string[] Lubrications = ["oil", "grease", "dry"];
    private static readonly Amount LeastModule = new(Limits.LeastModule, Units.Millimetre);
    private static readonly Amount GreatestModule = new(Limits.GreatestModule, Units.Millimetre);

    public static SplineSpec? Read(Stated<string> name, MapReader reader, Catalogue? catalogue, TrainSpec? train)
    {
        var body = reader.Name("body", required: true);
        var system = reader.Word("system", Systems, required: true);
        var (module, pitch) = Pitch(reader);
        var angle = Angle(reader);
        var root = reader.Word("root", Roots, required: true);
        var length = reader.Amount("length", Dimension.OfLength, AmountRange.Positive);
        var chamfers = reader.Amount("chamfers", Dimension.OfLength, AmountRange.NotNegative);
        var floating = reader.Truth("floating");
        var crowned = reader.Truth("crowned");
        var misalignment = reader.Amount("misalignment", Dimension.Ratio, AmountRange.NotNegative);
        var lubrication = reader.Word("lubrication", Lubrications);
        var starts = reader.Number("starts", Limits.FewestStarts, Limits.MostStarts);
        var shaft = reader.Map("shaft", required: true) is { } external ? Shaft(external) : null;
        var hub = reader.Map("hub", required: true) is { } inner ? Hub(inner, catalogue, shaft) : null;
        reader.Finish();

        References.CheckBody(reader, "body", body, train);
        return body is null || system is null || angle is null || root is null || shaft is null || hub is null
            ? null
            : new()
            {
                Name = name,
                Body = body,
                System = system,
                Module = module,
                DiametralPitch = pitch,
                PressureAngle = angle,
                Root = root,
                Length = length,
                Chamfers = chamfers,
                Floating = floating,
                Crowned = crowned,
                Misalignment = misalignment,
                Lubrication = lubrication,
                Starts = starts,
                Shaft = shaft,
                Hub = hub,
            };
    }

    /// <summary>Module or diametral pitch, not both.</summary>
    internal static (Stated<Amount>? Module, Stated<double>? Pitch) Pitch(MapReader reader)
    {
        var module = reader.Amount("module", Dimension.OfLength, LeastModule, GreatestModule);
        var pitch = reader.Number("diametral_pitch", Limits.LeastDiametralPitch, Limits.GreatestDiametralPitch);
        if (module is not null && pitch is not null)
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan("diametral_pitch"), reader.ObjectPath, "module", "diametral_pitch"));
        return (module, pitch);
    }

    internal static Stated<Amount>? Angle(MapReader reader)
    {
        var angle = reader.Amount("pressure_angle", Dimension.OfAngle, AmountRange.Positive, required: true);
        if (angle is not null && angle.Value.Coherent >= Math.PI / 2)
            reader.Report(SpecDiagnostics.OutOfRange(angle.Span, reader.PathOf("pressure_angle"), angle.Text, "less than 90°", "Splines have 30°, 37.5° or 45°."));
        return angle;
    }

    private static SplineShaftSpec? Shaft(MapReader reader)
    {
        var teeth = reader.Whole("teeth", Limits.FewestTeeth, Limits.MostTeeth, required: true);
        var @class = reader.Whole("class", Limits.FinestSplineClass, Limits.CoarsestSplineClass);
        var fit = reader.Word("fit", Fits);
        var thickness = reader.Toleranced("thickness", Dimension.OfLength, AmountRange.Positive);
        var minor = reader.Amount("minor", Dimension.OfLength, AmountRange.Positive);
        var bore = reader.Amount("bore", Dimension.OfLength, AmountRange.NotNegative);
        var hardness = reader.Hardness("hardness");
        var yield = reader.Amount("yield", Dimension.OfStress, AmountRange.Positive);
        reader.Finish();
        if (bore is not null && minor is not null && bore.Value.Coherent >= minor.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(bore.Span, reader.PathOf("bore"), bore.Text, $"less than the minor diameter of {minor.Text}"));
        return teeth is null
            ? null
            : new() { Teeth = teeth, Class = @class, Fit = fit, Thickness = thickness, Minor = minor, Bore = bore, Hardness = hardness, Yield = yield };
    }

    private static SplineHubSpec? Hub(MapReader reader, Catalogue? catalogue, SplineShaftSpec? shaft)
    {
        var teeth = reader.Whole("teeth", Limits.FewestTeeth, Limits.MostTeeth, required: true);
        var @class = reader.Whole("class", Limits.FinestSplineClass, Limits.CoarsestSplineClass);
        var space = reader.Toleranced("space", Dimension.OfLength, AmountRange.Positive);
        var outside = reader.Amount("outside", Dimension.OfLength, AmountRange.Positive);
        var material = reader.Name("material");
        var hardness = reader.Hardness("hardness");
        var yield = reader.Amount("yield", Dimension.OfStress, AmountRange.Positive);
        reader.Finish();

        References.CheckMaterial(reader, "material", material, catalogue);
        if (teeth is not null && shaft is not null && teeth.Value != shaft.Teeth.Value)
            reader.Report(SpecDiagnostics.OutOfRange(teeth.Span, reader.PathOf("teeth"), teeth.Text, $"{shaft.Teeth.Text}, as many teeth as the shaft has", "Both sides of a spline have the same number of teeth."));
        return teeth is null
            ? null
            : new() { Teeth = teeth, Class = @class, Space = space, Outside = outside, Material = material, Hardness = hardness, Yield = yield };
    }
}
