using Pawl.Specs.Model;

namespace Pawl.Specs.Text;

/// <summary>Files: where they are, what they extend.</summary>
internal static partial class SpecDiagnostics
{
    public static Diagnostic MissingFile(SourceSpan span, string path, string? nearest) =>
        Error(
            DiagnosticCodes.MissingFile, span, $"There is no file `{Short(path)}`.",
            nearest is null ? "The path counts from the folder of the file that names it." : $"Did you mean `{nearest}`?");

    public static Diagnostic OutsideRoot(SourceSpan span, string path, string why) =>
        Error(
            DiagnosticCodes.OutsideRoot, span, $"`{Short(path)}` {why}.",
            "Specs, base files and catalogues stay inside the project: the folder with pawl.yaml and what lies below it.");

    public static Diagnostic UnreadableFile(SourceSpan span, string path, string why) =>
        Error(DiagnosticCodes.UnreadableFile, span, $"`{Short(path)}` cannot be read: {why}.", "Name a file that you may read.");

    public static Diagnostic ExtendsCycle(SourceSpan span, IEnumerable<string> chain) =>
        Error(
            DiagnosticCodes.ExtendsCycle, span, $"The files extend each other in a circle: {string.Join(" → ", chain)}.",
            "Put what they share into a base file that extends none of them.");

    public static Diagnostic ExtendsTooDeep(SourceSpan span, int most) =>
        Error(DiagnosticCodes.ExtendsTooDeep, span, $"Base files extend base files more than {most} times in a row.", "Two or three levels do: family, housing, variant.");

    public static Diagnostic FormatVersion(SourceSpan span, string found) =>
        Error(
            DiagnosticCodes.FormatVersion, span, $"This base file is of format `{Short(found)}`; this build reads {Limits.Format}.",
            $"Write `pawl: {Limits.Format}`, or use a newer Pawl.");

    public static Diagnostic CatalogueOverride(SourceSpan span, string kind, string id, SourceSpan first) =>
        new(
            DiagnosticCodes.CatalogueOverride, Severity.Note, span,
            $"The {kind} `{id}` overrides the one in {first.File}, line {first.Start.Line}.", "Files apply in the order of their paths.");

    public static Diagnostic Schema(SourceSpan span, string path, string problem) =>
        Error(DiagnosticCodes.Schema, span, $"{Within(path)} does not follow the schema: {problem}.", "See schema/gearbox.schema.json.");
}
