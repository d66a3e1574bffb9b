using Pawl.Cli.Checking;
using Pawl.Cli.Output;
using Pawl.Reports.Rendering;

namespace Pawl.Cli.Comparing;

/// <summary>A document in every format, each made when asked for.</summary>
/// <param name="Json">As JSON; null when it has none.</param>
/// <param name="Markdown">As Markdown.</param>
/// <param name="Html">As a page.</param>
/// <param name="Text">As text: verbosely, in colour.</param>
internal sealed record ComparedDocument(Func<string>? Json, Func<string> Markdown, Func<string> Html, Action<bool, bool, TextWriter> Text);

/// <summary>Where a comparison goes and in which format.</summary>
internal sealed class ComparedOutput
{
    private readonly CommandContext _context;
    private readonly Format _format;
    private readonly string? _file;
    private readonly bool _verbose;
    private readonly bool _colour;

    private ComparedOutput(CommandContext context, CompareRequest request, Format format)
    {
        _context = context;
        _format = format;
        _file = request.Output is { } output ? context.Absolute(output) : null;
        _verbose = request.Verbose;
        _colour = SettingsResolver.Color(request.Color, context).Value;
    }

    public static ComparedOutput? Of(CommandContext context, CompareRequest request, out string? error)
    {
        error = null;
        var implied = request.Output is { } output && Formats.FromName(output) is { } named && !Formats.IsOfRun(named) ? named : (Format?)null;
        var format = request.Format is { } name ? Formats.Find(name) : request.Output is null ? Format.Text : implied;
        if (format is null)
            error = "--output is one file; its ending says the format: .txt, .md, .html or .json. Or give --format.";
        else if (request.Family && format == Format.Json)
            error = "The matrix of a family has no JSON: the records of `pawl check --format json` hold all of it.";
        return error is null ? new(context, request, format!.Value) : null;
    }

    /// <summary>Standard output carries the format, or text when a file does.</summary>
    public void Write(ComparedDocument document)
    {
        if (_file is not null)
            Files.Write(_file, Rendered(document, _format, verbose: true, colour: false));
        _context.Out.Write(Rendered(document, _file is null ? _format : Format.Text, _verbose, _colour));
    }

    private static string Rendered(ComparedDocument document, Format format, bool verbose, bool colour)
    {
        switch (format)
        {
            case Format.Json:
                return LogText.Json(document.Json!());
            case Format.Html:
                return LogText.Markup(document.Html());
            case Format.Markdown:
                return LogText.Lines(document.Markdown());
            default:
                using (var text = new StringWriter { NewLine = "\n" })
                {
                    document.Text(verbose, colour, text);
                    return LogText.Lines(text.ToString());
                }
        }
    }
}
