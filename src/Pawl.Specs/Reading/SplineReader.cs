using Pawl.Specs.Model;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class SplineReader
{
    static partial void Check(SplineSpec read, MapReader reader, Scope scope)
    {
        reader.Exclude("module", read.Module, "diametral_pitch", read.DiametralPitch);
        reader.BelowRightAngle("pressure_angle", read.PressureAngle, "Splines have 30°, 37.5° or 45°.");
        if (read.Shaft is { } shaft && read.Hub is { } hub && hub.Teeth.Value != shaft.Teeth.Value)
        {
            reader.Outside(
                "hub.teeth", hub.Teeth, $"{shaft.Teeth.Text}, as many teeth as the shaft has", "Both sides of a spline have the same number of teeth.");
        }
    }
}

internal static partial class SplineShaftReader
{
    static partial void Check(SplineShaftSpec read, MapReader reader, Scope scope) =>
        reader.Below("bore", read.Bore.Size(), read.Minor.Size(), "less than the minor diameter of");
}
