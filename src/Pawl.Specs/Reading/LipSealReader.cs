using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class LipSealReader
{
    static partial void Check(LipSealSpec read, MapReader reader, Scope scope)
    {
        if (read.Shaft is { } shaft && read.Housing is { } housing && shaft.Value == housing.Value)
            reader.Report(SpecDiagnostics.SelfSealed(housing.Span, reader.PathOf("housing"), housing.Value));
        reader.Above("bore", read.Bore.Size(), read.Diameter.Size(), "more than the diameter of");
    }
}
