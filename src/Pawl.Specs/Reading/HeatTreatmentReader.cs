using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class HeatTreatmentReader
{
    static partial void Check(HeatTreatmentSpec read, MapReader reader, Scope scope)
    {
        if (read.Treatment is { } treatment && read.CaseDepth is { } depth && !Treatments.HasCase(treatment.Value))
            reader.Report(SpecDiagnostics.NoCase(depth.Span, reader.PathOf("case_depth"), treatment.Value));
    }
}

/// <summary>What a catalogue says of a treatment that a steel takes.</summary>
internal static partial class TreatmentReader
{
    static partial void Check(TreatmentSpec read, MapReader reader, Scope scope)
    {
        string[] words = [.. Treatments.Words];
        if (!words.Contains(read.Name.Value))
            reader.Report(SpecDiagnostics.UnknownWord(read.Name.Span, reader.ObjectPath, read.Name.Value, Nearest.To(read.Name.Value, words), words));
        if (read.Class is { } @class && ClassesOf(read.Name.Value) is { } classes && !classes.Contains(@class.Value))
            reader.Report(SpecDiagnostics.UnknownWord(@class.Span, reader.PathOf("class"), @class.Value, Nearest.To(@class.Value, classes), classes));
    }

    // The classes of ISO 6336-5 that a treatment can lead to; none: tests of one's own, or no rating.
    private static string[]? ClassesOf(string treatment) => treatment switch
    {
        Treatments.Normalised => ["St", "none"],
        Treatments.ThroughHardened => ["V-carbon", "V-alloy", "none"],
        Treatments.InductionHardened => ["IF", "none"],
        Treatments.CaseHardened => ["Eh", "none"],
        Treatments.GasNitrided => ["NT", "NV-nitrided", "none"],
        Treatments.Nitrocarburised => ["NV-nitrocarburised", "none"],
        Treatments.PrecipitationHardened => ["none"],
        _ => null,
    };
}

internal static partial class ShareWindowReader
{
    static partial void Check(ShareWindowSpec read, MapReader reader, Scope scope) =>
        reader.NotBelow("max", read.Max.Size(), read.Min.Size(), "at least", "Exchange them.");
}

internal static partial class TemperatureWindowReader
{
    static partial void Check(TemperatureWindowSpec read, MapReader reader, Scope scope) =>
        reader.NotBelow("max", read.Max.Size(), read.Min.Size(), "at least", "Exchange them.");
}
