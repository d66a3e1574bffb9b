using System.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Rules.Packs;

/// <summary>The limits of a rule in words: <c>at least 12 %, at most 30 %</c>.</summary>
internal static class LimitWording
{
    public static string Of(RuleSyntax draft)
    {
        var text = new StringBuilder();
        Append(text, "at least ", draft.AtLeast);
        Append(text, "at most ", draft.AtMost);
        Append(text, "equal to ", draft.EqualTo);
        Append(text, "one of ", draft.OneOf);
        return text.ToString();
    }

    private static void Append(StringBuilder text, string words, YamlNode? node)
    {
        if (node is null)
            return;
        if (text.Length > 0)
            text.Append(", ");
        text.Append(words);
        Append(text, node);
    }

    private static void Append(StringBuilder text, YamlNode node)
    {
        switch (node)
        {
            case YamlScalar scalar:
                text.Append(scalar.Value);
                break;
            case YamlList list:
                for (var i = 0; i < list.Items.Length; i++)
                {
                    text.Append(i == 0 ? "" : ", ");
                    Append(text, list.Items[i]);
                }

                break;
            case YamlMap table:
                Append(text, table);
                break;
        }
    }

    private static void Append(StringBuilder text, YamlMap table)
    {
        text.Append("(by ").Append((table.Find("by") as YamlScalar)?.Value);
        var first = true;
        foreach (var (key, value) in table.Entries)
        {
            if (key.Value == "by")
                continue;
            text.Append(first ? ": " : "; ").Append(key.Value == "default" ? "otherwise" : key.Value).Append(' ');
            Append(text, value);
            first = false;
        }

        text.Append(')');
    }
}
