using Pawl.Specs.Model;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class ParallelKeyReader
{
    static partial void Check(ParallelKeySpec read, MapReader reader, Scope scope)
    {
        reader.Exclude("carries", read.Carries, "torque", read.Torque);
        reader.Below("width", read.Width.Size(), read.Diameter.Size(), "less than the shaft of");
        reader.Below("diameter", read.Diameter.Size(), read.HubOutside.Size(), "less than the outside of the hub,");
        reader.Below("shaft_depth", read.ShaftDepth.Size(), read.Height.Size(), "less than the height of the key,");
    }
}
