using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class LubricationReader
{
    static partial void Check(LubricationSpec read, MapReader reader, Scope scope)
    {
        reader.Below("fill", read.Fill.Size(), read.FreeVolume.Size(), "less than the free volume of");
        reader.NotAbove("min_fill", read.MinFill.Size(), read.MaxFill.Size(), "not above the greatest fill of");
        reader.NotAbove("min_level", read.MinLevel.Size(), read.Level.Size(), "not above the level of");
        reader.NotBelow("max_level", read.MaxLevel.Size(), read.Level.Size(), "not below the level of");
        if (read.MinLevel is not null || read.MaxLevel is not null)
            reader.Demand("level");
        if (read is { Vent: not null, Ports.Vent: { Value: false } none })
            reader.Report(SpecDiagnostics.ExclusiveKeys(none.Span, reader.ObjectPath, "vent", "ports.vent: false"));
    }
}

internal static partial class VentReader
{
    static partial void Check(VentSpec read, MapReader reader, Scope scope)
    {
        if (read is { OneWay.Value: true })
            reader.Exclude("one_way", read.OneWay, "intake_pressure", read.IntakePressure);
    }
}

internal static partial class CoolerReader
{
    static partial void Check(CoolerSpec read, MapReader reader, Scope scope)
    {
        reader.Exclude("transfer", read.Transfer, "capacity", read.Capacity);
        if (read.At is not null)
            reader.Demand("capacity");
        if (read.Capacity is not null)
            reader.Demand("at");
    }
}
