using Pawl.Specs.Model;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class ShaftReader
{
    static partial void Check(ShaftSpec read, MapReader reader, Scope scope) =>
        reader.NotAbove("yield", read.Yield.Size(), read.Tensile.Size(), "at most the tensile strength of", "Exchange the two?");
}

internal static partial class ShaftSectionReader
{
    static partial void Check(ShaftSectionSpec read, MapReader reader, Scope scope)
    {
        reader.Below("bore", read.Bore.Size(), read.Outside.Size(), "less than the outside of");
        reader.Above("notch.large", read.Notch?.Large.Size(), read.Outside.Size(), "more than the outside of", "A shoulder weakens the smaller section; state it there.");
        reader.Below("notch.bottom", read.Notch?.Bottom.Size(), read.Outside.Size(), "less than the outside of");
        reader.Above("notch.bottom", read.Notch?.Bottom.Size(), read.Bore.Size(), "more than the bore of");
    }
}
