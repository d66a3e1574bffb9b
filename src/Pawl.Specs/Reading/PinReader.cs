using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class DowelReader
{
    static partial void Check(DowelSpec read, MapReader reader, Scope scope)
    {
        reader.Exclude("joint", read.Joint, "carries", read.Carries);
        reader.Exclude("joint", read.Joint, "torque", read.Torque);
        reader.Exclude("carries", read.Carries, "torque", read.Torque);
        reader.Below("bore", read.Bore.Size(), read.Diameter.Size(), "less than the diameter of");
        foreach (var part in read.Parts)
        {
            if (part.Hole.Size() is { } hole && read.Diameter.Size() is { } diameter && Math.Abs(hole.Value - diameter.Value) > 0.1 * diameter.Value)
                reader.Outside("parts", hole, $"about the diameter of the dowels, {diameter.Text}");
        }
    }
}

internal static partial class RetainingRingReader
{
    static partial void Check(RetainingRingSpec read, MapReader reader, Scope scope)
    {
        if (read is { Diameter: null, At: null })
            reader.Report(SpecDiagnostics.MissingKey(reader.NameSpan, reader.ObjectPath, "diameter"));
        if (read is { Bearing: { } bearing, AxialForce: not null })
            reader.Report(SpecDiagnostics.ExclusiveKeys(bearing.Span, reader.ObjectPath, "axial_force", "bearing"));
        if (read.Sits is { Value: "shaft" })
            reader.Below("groove", read.Groove.Size(), read.Diameter.Size(), "less than the shaft of");
        else if (read.Sits is not null)
            reader.Above("groove", read.Groove.Size(), read.Diameter.Size(), "more than the bore of");
    }
}

internal static partial class PlanetPinReader
{
    static partial void Check(PlanetPinSpec read, MapReader reader, Scope scope)
    {
        reader.Below("bore", read.Bore.Size(), read.Diameter.Size(), "less than the diameter of");
        reader.NotAbove("load_width", read.LoadWidth.Size(), read.Span.Size(), "no more than the span of", "The load lies between the cheeks.");
        if (read.Held is { Value: "overhung" } && read.Span is { } span)
            reader.Report(SpecDiagnostics.ExclusiveKeys(span.Span, reader.ObjectPath, "held: overhung", "span"));
    }
}
