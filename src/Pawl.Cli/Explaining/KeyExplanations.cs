using Pawl.Analysis;
using Pawl.Analysis.Core;
using Pawl.Rules;
using Pawl.Specs.Schema;

namespace Pawl.Cli.Explaining;

/// <summary>Words for the keys of a spec: what the schema says of each, which quantities it states, and which rules name those.</summary>
internal static class KeyExplanations
{
    private const string ModelEnding = "Spec";

    public static List<Explanation> All(RuleSet rules)
    {
        var stated = StatedByKey();
        List<Explanation> all = [];
        foreach (var key in SpecKeys.All)
            all.Add(Of(key, stated.GetValueOrDefault(key.Path, []), rules));
        return all;
    }

    private static Explanation Of(SpecKey key, List<QuantityKind> quantities, RuleSet rules)
    {
        var facts = new List<Fact>();
        if (key.Description.Length > 0)
            facts.Add(new("means", key.Description));
        if (!key.Words.IsEmpty)
            facts.Add(new("words", string.Join(", ", key.Words)));
        if (key.Example.Length > 0)
            facts.Add(new("example", $"{key.Path.Split('.')[^1]}: {key.Example}"));
        if (key.IsList)
            facts.Add(new("form", "a list"));
        if (key.IsRequired)
            facts.Add(new("required", "wherever its section stands"));
        if (!key.Below.IsEmpty)
            facts.Add(new("keys", string.Join(", ", key.Below)));
        if (quantities.Count > 0)
            facts.Add(new("states", string.Join(", ", quantities)));
        var needing = rules.Rules.Where(rule => quantities.Exists(quantity => Names(rule, quantity))).Select(static rule => rule.Id).ToArray();
        if (needing.Length > 0)
            facts.Add(new("rules", string.Join(", ", needing)));
        if (quantities.Count > 0)
            facts.Add(new("besides", "Rules on what is computed of it need it too; a report tells which wait for it."));
        return new("key", key.Path, key.Title, [.. facts]);
    }

    /// <summary>Whether a rule names a quantity of its own subject, or of a related one by a dotted path.</summary>
    private static bool Names(Rule rule, QuantityKind quantity)
    {
        foreach (var text in (string?[])[rule.Measure, rule.LimitText, rule.When])
        {
            if (text is not null && HasWord(text, quantity.Name, rule.AppliesTo == quantity.Of))
                return true;
        }

        return false;
    }

    private static bool HasWord(string text, string word, bool isOwn)
    {
        for (var at = text.IndexOf(word, StringComparison.Ordinal); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.Ordinal))
        {
            var before = at == 0 ? ' ' : text[at - 1];
            var after = at + word.Length == text.Length ? ' ' : text[at + word.Length];
            if (IsPart(after) || after == '.' || (char.IsAsciiLetterOrDigit(before) || before == '_'))
                continue;
            if (isOwn ? before != '.' : before == '.')
                return true;
        }

        return false;
    }

    private static bool IsPart(char c) => char.IsAsciiLetterOrDigit(c) || c == '_';

    private static Dictionary<string, List<QuantityKind>> StatedByKey()
    {
        var places = SpecKeys.All.Where(static key => key.Holds.Length > 0).ToLookup(
            static key => key.Holds, static key => key.IsList || !SpecKeys.All.Any(each => each.Path.StartsWith($"{key.Path}.{SpecKey.Name}.", StringComparison.Ordinal)) ? key.Path : $"{key.Path}.{SpecKey.Name}",
            StringComparer.Ordinal);
        var stated = new Dictionary<string, List<QuantityKind>>(StringComparer.Ordinal);
        foreach (var quantity in SubjectKinds.All.SelectMany(static kind => kind.Quantities))
        {
            var model = quantity.StatedIn.EndsWith(ModelEnding, StringComparison.Ordinal) ? quantity.StatedIn[..^ModelEnding.Length] : quantity.StatedIn;
            foreach (var key in quantity.StatedKeys)
            {
                foreach (var path in key.StartsWith('/') ? [key[1..]] : places[model].Select(place => $"{place}.{key}"))
                {
                    if (!stated.TryGetValue(path, out var list))
                        stated.Add(path, list = []);
                    if (!list.Contains(quantity))
                        list.Add(quantity);
                }
            }
        }

        return stated;
    }
}
