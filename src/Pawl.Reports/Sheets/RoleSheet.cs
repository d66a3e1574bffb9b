using System.Text;
using Pawl.Reports.Markdown;
using Pawl.Reports.Output;
using Pawl.Reports.Records;
using Scriban.Runtime;

namespace Pawl.Reports.Sheets;

/// <summary>Sheets of a record, each for whoever works from it.</summary>
public static class RoleSheet
{
    private const string Folder = "-sheets";

    /// <summary>Ids of the parts that a sheet can be made of, in the order in which the spec speaks of them.</summary>
    public static ImmutableArray<string> Parts(ConformanceRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return new SheetModel(record).Parts;
    }

    /// <summary>A sheet as Markdown.</summary>
    /// <param name="record">The record, whole.</param>
    /// <param name="role">Whom it is for.</param>
    /// <param name="part">Of a part sheet the id of the part, by <see cref="Parts"/>; null: every part, each on a page of its own.</param>
    public static string Markdown(ConformanceRecord record, SheetRole role, string? part = null) => Render(record, role, part, "figures").Markdown;

    /// <summary>A sheet as a page that needs nothing beside it.</summary>
    /// <inheritdoc cref="Markdown(ConformanceRecord, SheetRole, string?)"/>
    public static string Html(ConformanceRecord record, SheetRole role, string? part = null)
    {
        var (markdown, figures) = Render(record, role, part, "figures");
        return Page(record, role, part, markdown, figures);
    }

    /// <summary>The files of some roles; of the part sheets one a part.</summary>
    /// <param name="record">The record, whole.</param>
    /// <param name="name">Its name by <see cref="ReportNames.Of"/>.</param>
    /// <param name="formats">Markdown, HTML or both.</param>
    /// <param name="roles">Which sheets.</param>
    /// <param name="part">The one part; null: all.</param>
    public static ImmutableArray<OutputFile> Files(ConformanceRecord record, string name, ReportFormats formats, ImmutableArray<SheetRole> roles, string? part = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);
        foreach (var role in roles)
        {
            foreach (var one in role == SheetRole.Part ? part is null ? Parts(record).Select(static id => (string?)id) : [part] : [null])
            {
                var stem = one is null ? SheetRoles.NameOf(role) : "part-" + Plain(one);
                var file = stem;
                for (var i = 2; !taken.Add(file); i++)
                    file = $"{stem}-{Phrase.Whole(i)}";
                var (markdown, figures) = Render(record, role, one, "figures");
                if (formats.HasFlag(ReportFormats.Html))
                    files.Add(new($"{name}{Folder}/{file}.html", Page(record, role, one, markdown, figures)));
                if (!formats.HasFlag(ReportFormats.Markdown))
                    continue;
                files.Add(new($"{name}{Folder}/{file}.md", markdown));
                files.AddRange(figures.Select(figure => new OutputFile($"{name}{Folder}/figures/{figure.Id}.svg", figure.File())));
            }
        }

        return files.DrainToImmutable();
    }

    private static (string Markdown, ImmutableArray<Drawing.Figure> Figures) Render(ConformanceRecord record, SheetRole role, string? part, string figureFolder)
    {
        ArgumentNullException.ThrowIfNull(record);
        if (!record.IsWhole)
            throw new InvalidOperationException("A record of findings alone has no sizes to put on a sheet.");
        var model = new SheetModel(record);
        var head = Templates.Render("sheet-head.md", model.Head(TitleOf(record, role, part)));
        var content = role switch
        {
            SheetRole.Assembly => model.Assembly(figureFolder),
            SheetRole.Inspection => model.Inspection(),
            SheetRole.Audit => model.Audit(),
            _ => Parted(model, part),
        };
        return (head + "\n" + Templates.Render($"sheet-{SheetRoles.NameOf(role)}.md", content), model.Drawn);
    }

    private static ScriptObject Parted(SheetModel model, string? part)
    {
        var parts = new ScriptArray();
        foreach (var one in part is null ? model.Parts : [part])
            parts.Add(model.Part(one));
        return new() { ["parts"] = parts };
    }

    private static string Page(ConformanceRecord record, SheetRole role, string? part, string markdown, ImmutableArray<Drawing.Figure> figures)
    {
        var numbers = part is null ? null : record.Parts.FirstOrDefault(p => p.Subject == part);
        var (drawing, revision) = numbers is null ? (record.Identity.Drawing, record.Identity.Revision) : (numbers.Drawing, numbers.Revision);
        var title = TitleOf(record, role, part) + (drawing.Length > 0 ? $", drawing {drawing}" : "") + (revision.Length > 0 ? $" rev. {revision}" : "");
        return SheetPage.Of(
            title, $"{SheetRoles.NameOf(role)} {(Banner.IsOpen(record) ? "blocked" : "free")}", $"Report {record.Id}", Banner.IsOpen(record) ? Banner.Of(record) : "", markdown, figures);
    }

    private static string TitleOf(ConformanceRecord record, SheetRole role, string? part)
    {
        var name = SheetRoles.NameOf(role);
        return $"{char.ToUpperInvariant(name[0])}{name[1..]} sheet: {record.Identity.Variant}{(part is null ? "" : $", {part}")}";
    }

    /// <summary>A name that every file system takes, whatever the spec calls its parts.</summary>
    private static string Plain(string id)
    {
        const int Longest = 80;
        var plain = new StringBuilder(id.Length);
        foreach (var c in id.AsSpan(0, Math.Min(id.Length, Longest)))
            plain.Append(char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_' ? char.ToLowerInvariant(c) : '-');
        return plain.ToString().TrimEnd('.');
    }
}
