using System.Collections.Concurrent;
using Scriban;
using Scriban.Runtime;

namespace Pawl.Reports.Markdown;

/// <summary>The templates inside this assembly.</summary>
internal static class Templates
{
    private static readonly ConcurrentDictionary<string, Template> Parsed = new(StringComparer.Ordinal);

    /// <summary>Fills a template in. Every text of the model must be Markdown already.</summary>
    public static string Render(string name, ScriptObject model)
    {
        var context = new TemplateContext
        {
            StrictVariables = true,
            NewLine = "\n",
            LoopLimit = 0,
            LimitToString = 0,
        };
        context.PushGlobal(model);
        return Parsed.GetOrAdd(name, Parse).Render(context);
    }

    /// <summary>The text of a resource, with line feeds whatever the checkout made of them.</summary>
    public static string Read(string name)
    {
        using var stream = typeof(Templates).Assembly.GetManifestResourceStream("templates/" + name)
            ?? throw new InvalidOperationException($"The template {name} is not in the assembly.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    private static Template Parse(string name)
    {
        var template = Template.Parse(Read(name), name);
        return template.HasErrors
            ? throw new InvalidOperationException(string.Join("\n", template.Messages))
            : template;
    }
}
