using System.Text;

namespace Pawl.Reports.Markdown;

/// <summary>Anchors of a document: one for each thing that others link to.</summary>
/// <remarks>
/// Each has a point in it. Anchors made of headings have none, here as on the usual hosts of Markdown, so that no heading,
/// whatever its text, takes the place of one.
/// </remarks>
internal sealed class Anchors
{
    private readonly Dictionary<string, string> _anchors = new(StringComparer.Ordinal);
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);

    /// <summary>The anchor of a rule.</summary>
    public string Rule(string id) => Of("rule.", id);

    /// <summary>The anchor of a quantity, <c>subject.quantity</c>.</summary>
    public string Quantity(string reference) => Of("quantity.", reference);

    /// <summary>The anchor of what a rule demands, where its checks have the anchor of the rule.</summary>
    public string Requirement(string id) => Of("requirement.", id);

    /// <summary>The anchor of a subject.</summary>
    public string Subject(string path) => Of("subject.", path);

    /// <summary>The anchor of the checks of a part of the report.</summary>
    public string Checks(string domain) => Of("checks.", domain);

    private string Of(string prefix, string name)
    {
        var key = prefix + name;
        if (_anchors.TryGetValue(key, out var known))
            return known;

        var plain = prefix + Plain(name);
        var anchor = plain;
        for (var i = 2; !_taken.Add(anchor); i++)
            anchor = $"{plain}-{Phrase.Whole(i)}";
        _anchors.Add(key, anchor);
        return anchor;
    }

    private static string Plain(string name)
    {
        var plain = new StringBuilder(name.Length);
        foreach (var c in name)
            plain.Append(char.IsAsciiLetterOrDigit(c) || c is '_' or '.' or '-' ? char.ToLowerInvariant(c) : '-');
        return plain.ToString();
    }
}
