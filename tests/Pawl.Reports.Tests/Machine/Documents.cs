using System.Text.Json;
using System.Xml.Linq;
using Pawl.Reports.Machine;
using Pawl.Reports.Records;
using Pawl.Specs.Text;

namespace Pawl.Reports.Tests.Machine;

/// <summary>The documents of a run over the sample.</summary>
internal static class Documents
{
    public static readonly Diagnostic Unreadable = new(
        "spec/unknown-unit", Severity.Error, new("specs/größe b.yaml", new(41, 18), new(41, 25)), "`12 Nmm²` has no unit that is known.", "Did you mean N·mm²?");

    public static SpecOutcome Outcome(ConformanceRecord record) => new() { File = record.Identity.File, Name = "tarn-180/r180", Record = record, Fails = true };

    public static JsonElement Sarif(ConformanceRecord? record = null, TextLevel level = TextLevel.Normal, string project = "", params Diagnostic[] complaints) =>
        JsonDocument.Parse(SarifText(record, level, project, complaints)).RootElement.GetProperty("runs")[0];

    public static string SarifText(ConformanceRecord? record = null, TextLevel level = TextLevel.Normal, string project = "", params Diagnostic[] complaints)
    {
        using var document = new SarifDocument(Sample.Tool, project, level, code => code == "spec/unknown-unit" ? ("A unit is not known.", "Write one that is.") : null);
        return Filled(document, record, complaints);
    }

    public static XElement JUnit(ConformanceRecord? record = null, SeverityWord? failOn = SeverityWord.Error, params Diagnostic[] complaints) =>
        XElement.Parse(JUnitText(record, failOn, complaints));

    public static string JUnitText(ConformanceRecord? record = null, SeverityWord? failOn = SeverityWord.Error, params Diagnostic[] complaints)
    {
        using var document = new JUnitDocument(failOn);
        return Filled(document, record, complaints);
    }

    public static string Annotations(ConformanceRecord? record = null, string project = "", params Diagnostic[] complaints) =>
        Filled(new AnnotationDocument(project), record, complaints);

    private static string Filled(RunDocument document, ConformanceRecord? record, Diagnostic[] complaints)
    {
        foreach (var complaint in complaints)
            document.Complain(complaint);
        document.Add(Outcome(record ?? Sample.Record()));
        return document.Finish(new(1, Successful: true));
    }
}
