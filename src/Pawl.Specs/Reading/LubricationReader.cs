using Pawl.Specs.Model;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class LubricationReader
{
    static partial void Check(LubricationSpec read, MapReader reader, Scope scope)
    {
        reader.Below("fill", read.Fill.Size(), read.FreeVolume.Size(), "less than the free volume of");
        reader.NotAbove("min_fill", read.MinFill.Size(), read.MaxFill.Size(), "not above the greatest fill of");
    }
}
