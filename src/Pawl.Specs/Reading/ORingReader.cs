using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class ORingReader
{
    static partial void Check(ORingSpec read, MapReader reader, Scope scope)
    {
        if (read.As568 is { } dash && (read.Inside ?? read.Cord) is not null)
            reader.Report(SpecDiagnostics.ExclusiveKeys(dash.Span, reader.ObjectPath, "as568", read.Inside is not null ? "inside" : "cord"));
        reader.Below("width", read.Width.Size(), read.Land.Size(), "less than the land of", "The groove would leave nothing of the land.");
        if (read.BackUpRings is { Value: not "none" } backUps && read.Gland is { Value: "face-inside" or "face-outside" } face)
            reader.Report(SpecDiagnostics.ExclusiveKeys(backUps.Span, reader.ObjectPath, "back_up_rings", $"gland: {face.Value}"));
        reader.Below("back_up_thickness", read.BackUpThickness.Size(), read.Width.Size(), "less than the width of", "It lies in the groove beside the O-ring.");
        reader.NotAbove("plug", read.Plug.Size(), read.Bore.Size(), "no more than the bore of", "The plug would not go into its bore.");
        if (read.Gland is { Value: "plug" })
            reader.Below("groove", read.Groove.Size(), read.Plug.Size(), "less than the plug of", "The groove is cut into the plug.");
        if (read.Gland is { Value: "bore" })
            reader.Above("groove", read.Groove.Size(), read.Bore.Size(), "more than the bore of", "The groove is cut into the bore.");
    }
}

internal static partial class LeadInReader
{
    static partial void Check(LeadInSpec read, MapReader reader, Scope scope) =>
        reader.BelowRightAngle("angle", read.Angle, "From the axis: 15° to 30° is usual.");
}
