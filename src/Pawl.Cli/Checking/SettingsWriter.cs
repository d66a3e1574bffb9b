using System.Globalization;
using Pawl.Cli.Output;
using Pawl.Specs.Model;

namespace Pawl.Cli.Checking;

/// <summary>Prints the settings in force as YAML, each with its origin as a comment.</summary>
internal static class SettingsWriter
{
    public static void Write(TextWriter to, Settings settings)
    {
        Line(to, "root", settings.Root.Value, settings.Root.Origin);
        Line(to, "project_file", settings.ProjectFile ?? "null", settings.ProjectFile is null ? "none found upwards" : "found upwards from the specs or the working folder");
        Line(to, "specs", List(settings.Specs.Value), settings.Specs.Origin);
        Line(to, "exclude", List(settings.Exclude.Value), settings.Exclude.Origin);
        Line(to, "catalogues", List(settings.Catalogue.Value), settings.Catalogue.Origin);
        Line(to, "adapters", List(settings.Adapters.Value), settings.Adapters.Origin);
        Line(to, "rules", List(settings.Rules.Value), settings.Rules.Origin);
        Line(to, "baseline", settings.Baseline.Value ?? "null", settings.Baseline.Origin);
        Line(to, "templates", settings.Templates.Value ?? "null", settings.Templates.Origin);
        Line(to, "fail_on", settings.FailOn.Value is { } severity ? DiagnosticWriter.Word(severity) : "never", settings.FailOn.Origin);
        Line(to, "require_complete", settings.RequireComplete.Value ? "true" : "false", settings.RequireComplete.Origin);
        Line(to, "allow_incomplete", settings.AllowIncomplete.Value ? "true" : "false", settings.AllowIncomplete.Origin);
        Line(to, "required_sections", List(settings.RequiredSections.Select(section => section.Value)), settings.RequiredSections.IsEmpty ? Origins.Default : ProjectFile.FileName);
        Line(to, "as_of", settings.AsOf.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), settings.AsOf.Origin);
        Line(to, "format", Formats.NameOf(settings.Out.Value), settings.Out.Origin);
        Line(to, "reports", settings.ReportPlace.Value ?? "null", settings.ReportPlace.Origin);
        Line(to, "report_formats", List(settings.ReportFormats.Value.Select(Formats.NameOf)), settings.ReportFormats.Origin);
        Line(to, "color", settings.Color.Value ? "true" : "false", settings.Color.Origin);
    }

    private static void Line(TextWriter to, string name, string value, string origin) =>
        to.WriteLine($"{Plain.Line($"{name}: {value}"),-48} # {Plain.Line(origin)}");

    private static string List(IEnumerable<string> items) =>
        "[" + string.Join(", ", items.Select(i => "'" + i.Replace("'", "''", StringComparison.Ordinal) + "'")) + "]";
}
