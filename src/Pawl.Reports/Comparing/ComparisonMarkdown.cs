using System.Text;
using Pawl.Reports.Html;
using Pawl.Reports.Markdown;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Comparing;

/// <summary>A comparison as Markdown that fits a comment on a pull request, and as a page.</summary>
public static class ComparisonMarkdown
{
    /// <summary>Most characters of a comment; the usual hosts take 65 536.</summary>
    public const int MostCharacters = 60_000;

    private const int MostRows = 40;

    /// <summary>Short, with what matters less folded away; sections that exceed the limit are left out and counted.</summary>
    public static string Comment(ComparisonRecord comparison) => new Writer(comparison, folded: true).Write();

    /// <summary>All of it as one page that needs nothing beside it.</summary>
    public static string Page(ComparisonRecord comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        var worst = !comparison.Breaches.IsEmpty ? OutcomeWord.Fails : OutcomeWord.Conforms;
        return Html.Page.Of(
            SafeText.Line($"Comparison: {comparison.Base.Name} → {comparison.Head.Name}"), OutcomeClass.Of(worst), "Comparison",
            new Writer(comparison, folded: false).Write());
    }

    private sealed class Writer(ComparisonRecord comparison, bool folded)
    {
        private readonly StringBuilder _text = new();
        private int _leftOut;

        public string Write()
        {
            ArgumentNullException.ThrowIfNull(comparison);
            Add(Head());
            foreach (var (change, effects) in ComparisonWords.ByCause(comparison))
                Add(Section(change, effects));
            Add(Table("Rules", ["Rule", "What"], comparison.Rules.Select(r => Row(Code(r.Rule), Text(ComparisonWords.Rule(r))))));
            Add(Table("Concessions", ["Place", "Rule", "Subject", "Variants", "What"], comparison.Concessions.Select(c =>
                Row(Code(c.Place.ToString()), Code(c.Rule), Code(c.Subject), Text(Join(c.Variants)), Text(ComparisonWords.Concession(c))))));
            Add(Fold($"Added and removed: {Phrase.Count(comparison.Subjects.Length, "subject")}", ["Subject", "Kind", "What", "Variants"], comparison.Subjects.Select(s =>
                Row(Code(s.Subject), Text(s.Kind), s.Presence == PresenceWord.Added ? "added" : "removed", Text(Join(s.Variants))))));
            Add(Fold($"Quantities that moved: {Phrase.Whole(comparison.Quantities.Length)}", ["Quantity", "Title", "Variant", "Values"], comparison.Quantities.SelectMany(q =>
                q.Variants.Select(v => Row(Code(q.Quantity), Text(q.Title), Text(v.Variant), Text(ComparisonWords.Values(v)))))));
            if (_leftOut > 0)
                _text.Append('\n').Append(Phrase.Count(_leftOut, "section")).Append(" left out for the size of a comment; `pawl compare --format html` holds all.\n");
            return _text.ToString();
        }

        private string Head()
        {
            var head = new StringBuilder();
            head.Append(folded ? "### " : "# ").Append("Comparison: ").Append(Text(ComparisonWords.Side(comparison.Base))).Append(" → ")
                .Append(Text(ComparisonWords.Side(comparison.Head))).Append("\n\n");
            foreach (var breach in comparison.Breaches)
                head.Append("- **").Append(Labels.Symbol(OutcomeWord.Fails)).Append("** ").Append(Text(breach.Statement)).Append('\n');
            if (comparison.Breaches.IsEmpty)
                head.Append("**").Append(Labels.Symbol(OutcomeWord.Conforms)).Append("** No threshold is exceeded.\n");
            head.Append('\n').Append(Text(ComparisonText.Summary(comparison))).Append(".\n");
            if (comparison.Variants.IsEmpty)
                return head.ToString();
            head.Append(Lines(["Variant", "Before", "Now", "Newly fail", "Not evaluated", "Lose margin", "Gain margin"], comparison.Variants.Select(v => Row(
                Text(v.Variant), Verdict(v.BaseVerdict, "–"), Verdict(v.HeadVerdict, "removed"),
                Count(v, EffectKind.NewlyFails), Count(v, EffectKind.NoLongerEvaluated, EffectKind.NoLongerJudged, EffectKind.NewlyOpen),
                Count(v, EffectKind.MarginLost), Count(v, EffectKind.MarginGained)))));
            return head.ToString();
        }

        private string Section(ValueChange? change, List<Effect> effects)
        {
            var section = new StringBuilder();
            section.Append(folded ? "\n#### " : "\n## ");
            if (change is null)
                section.Append("Not traced to one declared value\n\n");
            else
                section.Append(Code(change.Path)).Append(": ").Append(Text(ComparisonWords.Values(change))).Append("\n\n")
                    .Append(Code(ComparisonWords.Place(change).ToString())).Append(", for ").Append(Text(Join(change.Variants))).Append('\n');

            var grave = effects.FindAll(static e => e.Kind < EffectKind.MarginLost);
            if (grave.Count > 0)
                section.Append('\n');
            foreach (var effect in grave.Take(folded ? MostRows : int.MaxValue))
            {
                section.Append("- **").Append(ComparisonWords.Symbol(effect.Kind)).Append("** ").Append(Labels.Of(effect.Severity)).Append(' ').Append(Code(effect.Rule))
                    .Append(' ').Append(ComparisonWords.Of(effect.Kind)).Append(": ").Append(Code(effect.Subject)).Append(' ').Append(Text(effect.Title)).Append(": ")
                    .Append(Text(ComparisonWords.Outcomes(effect, comparison.Variants.Length))).Append("; governed at ").Append(Code(effect.Place.ToString()));
                if (effect.Causes.Length > 1)
                    section.Append("; with ").Append(string.Join(", ", effect.Causes.Skip(1).Select(c => Code(comparison.Changes[c].Path))));
                section.Append('\n');
            }

            if (folded && grave.Count > MostRows)
                section.Append("- and ").Append(Phrase.Whole(grave.Count - MostRows)).Append(" more\n");
            var rest = effects.FindAll(static e => e.Kind >= EffectKind.MarginLost);
            section.Append(Fold(
                Capital(ComparisonWords.Counts(rest.Select(static e => e.Kind))), ["What", "Severity", "Rule", "Subject", "Margins"],
                rest.Select(e => Row(
                    Strong(ComparisonWords.Symbol(e.Kind), ComparisonWords.Of(e.Kind)), Labels.Of(e.Severity), Code(e.Rule), Code(e.Subject),
                    Text(ComparisonWords.Outcomes(e, comparison.Variants.Length))))));
            return section.ToString();
        }

        private string Count(VariantChange variant, params ReadOnlySpan<EffectKind> kinds)
        {
            var count = 0;
            foreach (var effect in comparison.Effects)
                count += kinds.Contains(effect.Kind) && effect.Variants.Any(v => v.Variant == variant.Variant) ? 1 : 0;
            return Phrase.Whole(count);
        }

        private string Fold(string summary, string[] heads, IEnumerable<string> rows)
        {
            List<string> all = [.. rows];
            if (all.Count == 0)
                return "";
            if (!folded)
                return $"\n### {Text(summary)}\n{Lines(heads, all)}";
            var more = all.Count > MostRows ? $"\nand {Phrase.Whole(all.Count - MostRows)} more\n" : "";
            return $"\n<details><summary>{Text(summary)}</summary>\n{Lines(heads, all.Take(MostRows))}{more}\n</details>\n";
        }

        private string Table(string title, string[] heads, IEnumerable<string> rows)
        {
            List<string> all = [.. rows];
            if (all.Count == 0)
                return "";
            var more = folded && all.Count > MostRows ? $"\nand {Phrase.Whole(all.Count - MostRows)} more\n" : "";
            return $"\n{(folded ? "####" : "##")} {title}\n{Lines(heads, folded ? all.Take(MostRows) : all)}{more}";
        }

        private void Add(string section)
        {
            if (folded && _text.Length + section.Length > MostCharacters - 200)
                _leftOut++;
            else
                _text.Append(section);
        }
    }

    internal static string Lines(IReadOnlyCollection<string> heads, IEnumerable<string> rows) =>
        $"\n| {string.Join(" | ", heads)} |\n|{string.Concat(heads.Select(static _ => ":--|"))}\n{string.Concat(rows)}";

    internal static string Row(params ReadOnlySpan<string> cells)
    {
        var row = new StringBuilder("|");
        foreach (var cell in cells)
            row.Append(' ').Append(cell).Append(" |");
        return row.Append('\n').ToString();
    }

    /// <summary>A cell with a sign: no text of a spec is strong, so that none gets the colour of one.</summary>
    internal static string Strong(string symbol, string text) => $"**{symbol} {text}**";

    internal static string Verdict(VerdictWord? verdict, string none) => verdict is null ? none : $"**{ComparisonWords.Verdict(verdict, none)}**";

    internal static string Text(string text) => MarkdownText.Escape(text);

    internal static string Code(string name) => MarkdownText.Code(name);

    private static string Join(ImmutableArray<string> variants) => string.Join(", ", variants);

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
