using System.Security.Cryptography;
using System.Text;
using Pawl.Quantities;
using Pawl.Reports;
using Pawl.Specs.Files;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>The templates that a project brings.</summary>
/// <param name="Templates">With those of the project in the place of the shipped ones.</param>
/// <param name="Read">The files, from the project root, with their hashes.</param>
/// <param name="Diagnostics">What is wrong with them.</param>
internal sealed record TemplateFolder(ReportTemplates Templates, ImmutableArray<FileRead> Read, ImmutableArray<Diagnostic> Diagnostics)
{
    private static readonly TemplateFolder None = new(ReportTemplates.Shipped, [], []);

    /// <summary>Reads the templates of a folder; links are not followed, and what lies outside of the project is not read.</summary>
    /// <param name="root">The project root.</param>
    /// <param name="setting">The folder, from the root; null for none.</param>
    public static TemplateFolder Load(string root, Setting<string?> setting)
    {
        if (setting.Value is not { } folder)
            return None;
        if (!ProjectGuard.IsInside(root, folder))
            return Refused(folder, CliCodes.OutsideProject, "The folder of templates lies outside the project.", "Name a folder inside it.");
        var full = Path.GetFullPath(folder, root);
        if (!Directory.Exists(full))
            return Refused(folder, CliCodes.CannotRead, "There is no such folder of templates.", "Paths count from the project file; `pawl new NAME --templates` writes the shipped ones to begin with.");
        try
        {
            return OfFiles(root, full);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Refused(folder, CliCodes.CannotRead, problem.Message, "Check that you may read it.");
        }
    }

    private static TemplateFolder OfFiles(string root, string folder)
    {
        var own = new Dictionary<string, OwnTemplate>(StringComparer.Ordinal);
        List<FileRead> read = [];
        List<Diagnostic> wrong = [];
        foreach (var entry in FileSource.Disk.Entries(folder).OrderBy(static e => e.Name, StringComparer.Ordinal))
        {
            if (entry.Name.StartsWith('.'))
                continue;
            var shown = SettingsResolver.RelativeTo(root, Path.Combine(folder, entry.Name));
            if (entry.IsFolder || entry.IsLink || !ReportTemplates.Names.Contains(entry.Name))
            {
                wrong.Add(new(
                    CliCodes.UnknownTemplate, Severity.Error, SourceSpan.Whole(shown), entry.IsFolder || entry.IsLink ? "A folder or a link is no template." : "No template has this name.",
                    Nearest.To(entry.Name, ReportTemplates.Names) is { } near ? $"Did you mean `{near}`?" : $"There are {string.Join(", ", ReportTemplates.Names)}."));
                continue;
            }

            if (FileSource.Disk.Read(Path.Combine(folder, entry.Name), ReportTemplates.MostBytes, out _) is not { } bytes)
            {
                wrong.Add(new(CliCodes.CannotRead, Severity.Error, SourceSpan.Whole(shown), $"The template is longer than {StatedLimit} bytes.", "Make it shorter."));
                continue;
            }

            // An example that nobody changed is the shipped one.
            var text = Encoding.UTF8.GetString(bytes);
            if (text.ReplaceLineEndings("\n") == ReportTemplates.TextOf(entry.Name))
                continue;
            own[entry.Name] = new(shown, text);
            read.Add(new(shown, Convert.ToHexStringLower(SHA256.HashData(bytes))));
        }

        if (wrong.Count > 0)
            return None with { Diagnostics = [.. wrong] };
        try
        {
            return new(ReportTemplates.With(own), [.. read], []);
        }
        catch (TemplateFaultException fault)
        {
            return None with { Diagnostics = [Said(fault)] };
        }
    }

    /// <summary>A fault in a template as a complaint at its place.</summary>
    public static Diagnostic Said(TemplateFaultException fault) => new(
        CliCodes.BadTemplate, Severity.Error,
        fault.Line > 0 ? new(fault.Path, new(fault.Line, fault.Column), new(fault.Line, fault.Column + 1)) : SourceSpan.Whole(fault.Path), fault.Message, fault.Hint);

    private static string StatedLimit => ReportTemplates.MostBytes.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static TemplateFolder Refused(string folder, string code, string message, string hint) =>
        None with { Diagnostics = [new(code, Severity.Error, SourceSpan.Whole(folder), message, hint)] };
}
