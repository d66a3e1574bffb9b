using System.Globalization;
using System.Text;
using System.Text.Json;
using Pawl.Specs.Model;

namespace Pawl.Cli.Checking;

/// <summary>A known finding as the file of known findings lists it.</summary>
/// <param name="Spec">The spec file, from the project root.</param>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Subject">Path of the subject.</param>
/// <param name="WorstMargin">The margin as a percentage, as written; null for a rule without.</param>
internal sealed record KnownFinding(string Spec, string Rule, string Subject, string? WorstMargin)
{
    public static KnownFinding Of(KnownFindingSpec entry) =>
        new(entry.Spec.Value, entry.Rule.Value, entry.Subject.Value, entry.WorstMargin?.Text);
}

/// <summary>The file of known findings as YAML.</summary>
internal static class BaselineText
{
    private const string Head = """
        # Findings that are known and not mended yet. Each fails all the same: what is listed here and no worse does not count towards
        # the exit code of `pawl check --baseline`, what is new or worse does. Make it smaller with `--prune`; it never grows by itself.
        pawl: 1

        """;

    /// <param name="schema">Path of the schema from the file, for editors; null for none.</param>
    /// <param name="findings">What is known.</param>
    public static string Of(string? schema, IReadOnlyCollection<KnownFinding> findings)
    {
        var text = new StringBuilder();
        if (schema is not null)
            text.Append("# yaml-language-server: $schema=").Append(schema).Append('\n');
        text.Append(Head.ReplaceLineEndings("\n")).Append(findings.Count == 0 ? "findings: []\n" : "findings:\n");
        string? spec = null;
        foreach (var finding in findings.OrderBy(static f => f.Spec, StringComparer.Ordinal).ThenBy(static f => f.Rule, StringComparer.Ordinal).ThenBy(static f => f.Subject, StringComparer.Ordinal))
        {
            if (spec is not null && spec != finding.Spec)
                text.Append('\n');
            spec = finding.Spec;
            text.Append("  - {spec: ").Append(Scalar(finding.Spec)).Append(", rule: ").Append(Scalar(finding.Rule)).Append(", subject: ").Append(Scalar(finding.Subject));
            if (finding.WorstMargin is { } margin)
                text.Append(", worst_margin: ").Append(margin);
            text.Append("}\n");
        }

        return text.ToString();
    }

    /// <summary>A share as a percentage of five figures, never better than it is.</summary>
    internal static string Percent(double share)
    {
        var percent = Math.Min(share * 100, 0);
        if (percent == 0)
            return "0 %";
        var decimals = Math.Clamp(4 - (int)Math.Floor(Math.Log10(-percent)), 0, 12);
        if (percent < -1e15)
            return (percent * 1.00001).ToString("0.00000e0", CultureInfo.InvariantCulture) + " %";
        var step = 1m;
        for (var i = 0; i < decimals; i++)
            step /= 10;
        var shown = Math.Round((decimal)percent, decimals);
        while ((double)shown > percent)
            shown -= step;
        return shown.ToString(CultureInfo.InvariantCulture) + " %";
    }

    private static string Scalar(string text)
    {
        foreach (var c in text)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c is not ('_' or '-' or '.' or '/' or '~' or '@'))
                return JsonSerializer.Serialize(text, TextContext.Default.String);
        }

        return text.Length > 0 && char.IsAsciiLetter(text[0]) ? text : JsonSerializer.Serialize(text, TextContext.Default.String);
    }
}

[System.Text.Json.Serialization.JsonSerializable(typeof(string))]
internal sealed partial class TextContext : System.Text.Json.Serialization.JsonSerializerContext;
