using System.Text;
using System.Text.Json;
using Pawl.Reports.Markdown;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Machine;

/// <summary>The rules of a run as reporting descriptors, each once, in the order in which they are met.</summary>
internal sealed class SarifRules
{
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    private readonly List<RuleRecord> _rules = [];

    /// <summary>Takes in the rules in force for a spec.</summary>
    public void Add(ImmutableArray<RuleRecord> rules)
    {
        foreach (var rule in rules)
        {
            if (_numbers.TryAdd(rule.Id, _rules.Count))
                _rules.Add(rule);
        }
    }

    /// <summary>The place of a rule in the list.</summary>
    public int Number(string rule) => _numbers[rule];

    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartArray("rules");
        foreach (var rule in _rules)
            Write(json, rule);
        json.WriteEndArray();
    }

    /// <summary>A rule's id as a name for people: <c>mesh/tip-clearance</c> is MeshTipClearance.</summary>
    public static string Name(string id)
    {
        var name = new StringBuilder(id.Length);
        var begins = true;
        foreach (var c in id)
        {
            if (char.IsAsciiLetterOrDigit(c))
                name.Append(begins ? char.ToUpperInvariant(c) : c);
            begins = !char.IsAsciiLetterOrDigit(c);
        }

        return name.Length > 0 ? name.ToString() : "Unnamed";
    }

    private static void Write(Utf8JsonWriter json, RuleRecord rule)
    {
        json.WriteStartObject();
        json.WriteString("id", rule.Id);
        json.WriteString("name", Name(rule.Id));
        Message(json, "shortDescription", rule.Title, null);
        Message(json, "fullDescription", rule.Why, null);
        Message(json, "help", Help(rule), HelpInMarkdown(rule));
        json.WriteStartObject("defaultConfiguration");
        json.WriteString("level", Labels.Of(rule.Severity));
        json.WriteEndObject();
        json.WriteStartObject("properties");
        json.WriteStartArray("tags");
        json.WriteStringValue(rule.Id.Split('/')[0]);
        json.WriteEndArray();
        json.WriteString("severity", Labels.Of(rule.Severity));
        json.WriteBoolean("concedable", rule.Concedable);
        json.WriteString("pack", SafeText.Line(rule.Pack));
        json.WriteString("appliesTo", rule.AppliesTo);
        if (rule.When is { } when)
            json.WriteString("when", SafeText.Line(when));
        json.WriteString("measure", SafeText.Line(rule.Measure));
        json.WriteString("limit", SafeText.Line(rule.Limit));
        json.WriteString("sourceOfMethod", SafeText.Line(rule.Source.Method));
        json.WriteString("sourceOfLimit", SafeText.Line(rule.Source.Limit));
        json.WriteString("certaintyOfLimit", Labels.Of(rule.Source.Certainty));
        if (rule.Shipped is { } shipped)
        {
            json.WriteString("overriddenBy", SafeText.Line(shipped.OverriddenBy));
            json.WriteString("limitAsShipped", SafeText.Line(shipped.Limit));
            json.WriteString("severityAsShipped", Labels.Of(shipped.Severity));
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>A multiformat message; the texts are not of ours alone.</summary>
    public static void Message(Utf8JsonWriter json, string name, string text, string? markdown)
    {
        json.WriteStartObject(name);
        json.WriteString("text", SarifText.Plain(text));
        if (markdown is not null)
            json.WriteString("markdown", SarifText.Formatted(markdown));
        json.WriteEndObject();
    }

    private static string Help(RuleRecord rule) =>
        $"{rule.Mend} Measured: {rule.Measure}, {rule.Limit}{When(rule)}. Source of the method: {rule.Source.Method}; of the limit: {rule.Source.Limit}. "
        + (rule.Concedable ? "A concession may cover it." : "No concession covers it.");

    private static string HelpInMarkdown(RuleRecord rule) =>
        $"""
        **{MarkdownText.Escape(rule.Title)}**

        - Why: {MarkdownText.Escape(rule.Why)}
        - Mend: {MarkdownText.Escape(rule.Mend)}
        - Measured: {MarkdownText.Escape(rule.Measure)}, {MarkdownText.Escape(rule.Limit + When(rule))}
        - Source of the method: {MarkdownText.Escape(rule.Source.Method)}
        - Source of the limit: {MarkdownText.Escape(rule.Source.Limit)}
        - {(rule.Concedable ? "A concession may cover it." : "No concession covers it.")}

        """.ReplaceLineEndings("\n");

    private static string When(RuleRecord rule) => rule.When is { } when ? $", when {when}" : "";
}
