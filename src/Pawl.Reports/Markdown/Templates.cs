using System.Collections.Concurrent;
using Scriban;
using Scriban.Runtime;

namespace Pawl.Reports.Markdown;

/// <summary>The templates inside this assembly.</summary>
internal static class Templates
{
    private const string Prefix = "templates/";
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
        using var reader = new StreamReader(Open(name));
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    /// <summary>Names of all templates, in order.</summary>
    public static IEnumerable<string> Names => typeof(Templates).Assembly.GetManifestResourceNames()
        .Where(static each => each.StartsWith(Prefix, StringComparison.Ordinal)).Select(static each => each[Prefix.Length..]).Order(StringComparer.Ordinal);

    /// <summary>The bytes of a template.</summary>
    public static Stream Open(string name) => typeof(Templates).Assembly.GetManifestResourceStream(Prefix + name)
        ?? throw new InvalidOperationException($"The template {name} is not in the assembly.");

    private static Template Parse(string name)
    {
        var template = Template.Parse(Read(name), name);
        return template.HasErrors
            ? throw new InvalidOperationException(string.Join("\n", template.Messages))
            : template;
    }
}
