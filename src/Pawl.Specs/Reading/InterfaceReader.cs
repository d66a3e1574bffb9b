using Pawl.Specs.Model;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class InterfaceReader
{
    static partial void Check(InterfaceSpec read, MapReader reader, Scope scope)
    {
        for (var i = 1; i < read.Adapters.Length; i++)
        {
            if (read.Adapters[..i].Any(earlier => earlier.Value == read.Adapters[i].Value))
                reader.Outside("adapters", read.Adapters[i], "a list of different adapters", "It stands there already.");
        }
    }
}

internal static partial class InterfaceSplineReader
{
    static partial void Check(InterfaceSplineSpec read, MapReader reader, Scope scope)
    {
        reader.Exclude("module", read.Module, "diametral_pitch", read.DiametralPitch);
        reader.BelowRightAngle("pressure_angle", read.PressureAngle, "Splines have 30°, 37.5° or 45°.");
    }
}

internal static partial class BoltPatternReader
{
    static partial void Check(BoltPatternSpec read, MapReader reader, Scope scope) =>
        reader.Above("screw_length", read.ScrewLength.Size(), read.Grip.Size(), "more than the grip of", "The screw would end in its hole.");
}

internal static partial class InterfaceSealReader
{
    static partial void Check(InterfaceSealSpec read, MapReader reader, Scope scope)
    {
        if (read.From is { } from && read.To is { } to && to.Value.Coherent <= from.Value.Coherent)
            reader.Outside("to", to, $"more than {from.Text}, where the face begins");
    }
}
