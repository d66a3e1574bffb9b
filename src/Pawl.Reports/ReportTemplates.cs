using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using Pawl.Quantities;
using Pawl.Reports.Markdown;
using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Pawl.Reports;

/// <summary>A template of a project.</summary>
/// <param name="Path">Its file, from the project root.</param>
/// <param name="Text">Its text.</param>
public sealed record OwnTemplate(string Path, string Text);

/// <summary>A template of a project that cannot be filled in.</summary>
public sealed class TemplateFaultException : Exception
{
    internal TemplateFaultException(string path, int line, int column, string message, string hint)
        : base(message) => (Path, Line, Column, Hint) = (path, line, column, hint);

    /// <summary>The file, from the project root.</summary>
    public string Path { get; }

    /// <summary>From 1; 0 where the place is not known.</summary>
    public int Line { get; }

    /// <inheritdoc cref="Line"/>
    public int Column { get; }

    /// <summary>What to write instead.</summary>
    public string Hint { get; }
}

/// <summary>
/// The templates of reports and sheets: those that ship inside, and in the place of some of them those of a project. These may come from strangers:
/// they see the model alone, read no file, and are bounded in loops, depth, output and time. Thread-safe.
/// </summary>
public sealed partial class ReportTemplates
{
    /// <summary>Longest text of a template of a project, in bytes.</summary>
    public const int MostBytes = 1_000_000;

    private const int MostTurns = 200_000, MostDepth = 64, MostOutput = 20_000_000;

    // A guard against what never ends, far beyond what any report takes; nothing of it shows in an output.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan LongestMatch = TimeSpan.FromSeconds(1);

    private readonly ImmutableDictionary<string, OwnTemplate> _own;
    private readonly ConcurrentDictionary<string, Template> _parsed = new(StringComparer.Ordinal);

    private ReportTemplates(ImmutableDictionary<string, OwnTemplate> own) => _own = own;

    /// <summary>Those that ship inside.</summary>
    public static ReportTemplates Shipped { get; } = new(ImmutableDictionary<string, OwnTemplate>.Empty);

    /// <summary>Names of all templates and style sheets, in order.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Templates.Names];

    /// <summary>The text of one that ships inside.</summary>
    /// <exception cref="InvalidOperationException">There is none of that name.</exception>
    public static string TextOf(string name) => Templates.Read(name);

    /// <summary>The shipped templates with some replaced.</summary>
    /// <param name="own">By name; each name is one of <see cref="Names"/>.</param>
    /// <exception cref="TemplateFaultException">One cannot be parsed.</exception>
    public static ReportTemplates With(IReadOnlyDictionary<string, OwnTemplate> own)
    {
        ArgumentNullException.ThrowIfNull(own);
        var templates = new ReportTemplates(own.ToImmutableDictionary(StringComparer.Ordinal));
        foreach (var name in own.Keys.Where(IsFilled).Order(StringComparer.Ordinal))
            templates.Parse(name);
        return templates;
    }

    /// <summary>The text of a style sheet or script, with line feeds.</summary>
    internal string Read(string name) => _own.TryGetValue(name, out var own) ? own.Text.ReplaceLineEndings("\n") : Templates.Read(name);

    /// <summary>Fills a template in. Every text of the model must be escaped already.</summary>
    /// <exception cref="TemplateFaultException">A template of a project asks for what there is not, or does not end.</exception>
    internal string Render(string name, ScriptObject model)
    {
        if (!_own.TryGetValue(name, out var own))
            return Templates.Render(name, model);
        using var time = new CancellationTokenSource(Longest);
        var context = new TemplateContext
        {
            StrictVariables = true,
            NewLine = "\n",
            LoopLimit = MostTurns,
            RecursiveLimit = MostDepth,
            LimitToString = MostOutput,
            RegexTimeOut = LongestMatch,
            EnableRelaxedMemberAccess = false,
            CancellationToken = time.Token,
        };
        context.PushGlobal(model);
        try
        {
            var text = Parse(name).Render(context);

            // A longer text is cut by the engine without a word.
            return text.Length < MostOutput ? text : throw new TemplateFaultException(own.Path, 1, 1, "What the template makes is too long.", "Take out what repeats.");
        }
        catch (ScriptRuntimeException fault)
        {
            throw Fault(own, fault, model);
        }
        catch (Exception fault) when (fault is RegexMatchTimeoutException or OperationCanceledException)
        {
            throw new TemplateFaultException(own.Path, 0, 0, "The template does not end.", "Take out what goes round for ever.");
        }
    }

    private static bool IsFilled(string name) => System.IO.Path.GetExtension(name) is ".md" or ".html";

    private Template Parse(string name) => _parsed.GetOrAdd(name, static (each, self) =>
    {
        var own = self._own[each];
        var template = Template.Parse(self.Read(each), own.Path);
        if (!template.HasErrors)
            return template;
        var first = template.Messages.First(static m => m.Type == Scriban.Parsing.ParserMessageType.Error);
        throw new TemplateFaultException(own.Path, first.Span.Start.Line + 1, first.Span.Start.Column + 1, Sentence(first.Message), "Templates are written in the language of Scriban.");
    }, this);

    private static TemplateFaultException Fault(OwnTemplate own, ScriptRuntimeException fault, ScriptObject model)
    {
        var start = fault.Span.Start;
        if (fault is ScriptAbortException)
            return new(own.Path, start.Line + 1, start.Column + 1, "The template does not end.", "Take out what goes round for ever.");
        var missing = Unknown().Match(fault.OriginalMessage);
        var hint = missing.Success && Nearest.To(missing.Groups[1].Value, [.. model.Keys]) is { } near ? $"Did you mean `{near}`?" : "docs/templates.md lists what a template is given.";
        return new(own.Path, start.Line + 1, start.Column + 1, Sentence(fault.OriginalMessage), hint);
    }

    private static string Sentence(string text) => text.EndsWith('.') ? text : text + ".";

    [GeneratedRegex("variable or function `([^`]+)`", RegexOptions.CultureInvariant)]
    private static partial Regex Unknown();
}
