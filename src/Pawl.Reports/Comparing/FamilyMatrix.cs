using System.Text;
using Pawl.Reports.Html;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Comparing;

/// <summary>A variant in the matrix of its family; small, so that the record need not be kept.</summary>
public sealed record FamilyVariant
{
    private FamilyVariant()
    {
    }

    internal IdentityRecord Identity { get; init; } = null!;

    internal VerdictRecord Verdict { get; init; } = null!;

    internal CountsRecord Counts { get; init; } = null!;

    /// <summary>The worst finding of each rule that applies.</summary>
    internal ImmutableDictionary<string, FindingRecord> Rules { get; init; } = ImmutableDictionary<string, FindingRecord>.Empty;

    internal ImmutableArray<InputRecord> Inputs { get; init; } = [];

    /// <summary>Whether `check` would find it wanting: something fails at severity error, or is not known.</summary>
    public bool Fails => Verdict.Word is VerdictWord.DoesNotConform or VerdictWord.Incomplete or VerdictWord.NotJudged;

    /// <summary>What the matrix shows of a record.</summary>
    public static FamilyVariant Of(ConformanceRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        var worst = new Dictionary<string, FindingRecord>(StringComparer.Ordinal);
        foreach (var finding in record.Findings)
        {
            if (finding.Outcome != OutcomeWord.NotApplicable && (!worst.TryGetValue(finding.Rule, out var known) || Order(finding).CompareTo(Order(known)) < 0))
                worst[finding.Rule] = finding with { Governing = [] };
        }

        return new()
        {
            Identity = record.Identity,
            Verdict = record.Verdict,
            Counts = record.Coverage.Overall,
            Rules = worst.ToImmutableDictionary(StringComparer.Ordinal),
            Inputs = record.Inputs,
        };
    }

    /// <summary>The worst first: what fails, what is not known, what is conceded; then by margin.</summary>
    internal static (int, double) Order(FindingRecord finding) => (finding.Outcome switch
    {
        OutcomeWord.Fails => 0,
        OutcomeWord.NotEvaluated => 1,
        OutcomeWord.UnderConcession => 2,
        _ => 3,
    }, finding.Margin ?? (finding.Outcome == OutcomeWord.Fails ? double.NegativeInfinity : double.PositiveInfinity));
}

/// <summary>The variants of families beside each other: verdicts, rules with their least margins, declared values that differ.</summary>
public sealed class FamilyMatrix
{
    private const int MostRules = 20;
    private const int MostValues = 40;

    // What names a variant differs by its nature.
    private static readonly string[] Names = ["pawl", "extends", "gearbox.variant", "gearbox.family", "gearbox.description"];

    private readonly List<Family> _families = [];

    /// <param name="variants">The variants, in the order of the columns within their family.</param>
    public FamilyMatrix(ImmutableArray<FamilyVariant> variants)
    {
        foreach (var family in variants.GroupBy(static v => v.Identity.Family, StringComparer.Ordinal))
            _families.Add(new([.. family]));
    }

    private sealed class Family(ImmutableArray<FamilyVariant> variants)
    {
        public ImmutableArray<FamilyVariant> Variants { get; } = variants;

        public ImmutableArray<string> Columns { get; } = Comparer.Names([.. variants.Select(static v => v.Identity)]);

        /// <summary>Every rule that applies anywhere: what fails first, then what is not the same in all, the least margin first.</summary>
        public List<string> Rules { get; } =
        [
            .. variants.SelectMany(static v => v.Rules.Keys).Distinct(StringComparer.Ordinal)
                .OrderByDescending(rule => variants.Any(v => v.Rules.TryGetValue(rule, out var f) && f is { Outcome: not OutcomeWord.Conforms, Severity: SeverityWord.Error }))
                .ThenByDescending(rule => variants.Any(v => v.Rules.TryGetValue(rule, out var f) && f.Outcome != OutcomeWord.Conforms))
                .ThenBy(rule => variants.All(v => v.Rules.TryGetValue(rule, out var f) && f.Margin == variants[0].Rules.GetValueOrDefault(rule)?.Margin))
                .ThenBy(rule => variants.Where(v => v.Rules.ContainsKey(rule)).Min(v => FamilyVariant.Order(v.Rules[rule])))
                .ThenBy(static rule => rule, StringComparer.Ordinal),
        ];

        /// <summary>A rule with its severity, unless that is error.</summary>
        public string Named(string rule)
        {
            var severity = Variants.Select(v => v.Rules.GetValueOrDefault(rule)).First(static f => f is not null)!.Severity;
            return severity == SeverityWord.Error ? rule : $"{rule} ({Labels.Of(severity)})";
        }

        /// <summary>Declared values that are not the same in all, by path.</summary>
        public List<(string Path, ImmutableArray<string> Written)> Values { get; } = Differing(variants);

        private static List<(string Path, ImmutableArray<string> Written)> Differing(ImmutableArray<FamilyVariant> variants)
        {
            var values = new OrderedDictionary<string, string[]>(StringComparer.Ordinal);
            for (var v = 0; v < variants.Length; v++)
            {
                foreach (var input in variants[v].Inputs)
                {
                    if (!values.TryGetValue(input.Path, out var written))
                        values[input.Path] = written = [.. Enumerable.Repeat("–", variants.Length)];
                    written[v] = input.Written;
                }
            }

            return [.. values.Where(static v => v.Value.Distinct(StringComparer.Ordinal).Count() > 1 && !Names.Contains(v.Key)).Select(static v => (v.Key, v.Value.ToImmutableArray()))];
        }
    }

    /// <summary>Text: a line a variant, then the worst rules and the values that differ.</summary>
    public void Write(bool verbose, bool colour, TextWriter to)
    {
        ArgumentNullException.ThrowIfNull(to);
        var lines = new Lines(to);
        var paint = new Paint(colour);
        foreach (var family in _families)
        {
            lines.Write(SafeText.Line(family.Variants[0].Identity.Family));
            for (var v = 0; v < family.Variants.Length; v++)
            {
                var variant = family.Variants[v];
                lines.Write($"  {SafeText.Line(family.Columns[v])} {Painted(paint, Labels.Alike(variant.Verdict), $"{Labels.Symbol(variant.Verdict)} {Labels.Of(variant.Verdict)}")}; {SafeText.Line(About(variant))}");
            }

            var shown = verbose ? family.Rules : family.Rules[..Math.Min(MostRules, family.Rules.Count)];
            Grid(lines, paint, "rule, least margin", family.Columns, [.. shown.Select(rule => (family.Named(rule), family.Variants.Select(v => Cell(v, rule)).ToArray()))]);
            More(lines, family.Rules.Count - shown.Count, "rule");
            var values = verbose ? family.Values : family.Values[..Math.Min(MostValues, family.Values.Count)];
            Grid(lines, paint, "declared", family.Columns, [.. values.Select(static v => (v.Path, v.Written.Select(static w => ((OutcomeWord?)null, w)).ToArray()))]);
            More(lines, family.Values.Count - values.Count, "declared value");
        }
    }

    /// <summary>Markdown with every rule and value.</summary>
    public string Markdown()
    {
        var text = new StringBuilder("# Variants beside each other\n");
        foreach (var family in _families)
        {
            string[] columns = [.. family.Columns.Select(ComparisonMarkdown.Text)];
            text.Append("\n## ").Append(ComparisonMarkdown.Text(family.Variants[0].Identity.Family)).Append('\n');
            text.Append(ComparisonMarkdown.Lines(["Variant", "Verdict", "Least margin, evaluated"], family.Variants.Select((v, i) =>
                ComparisonMarkdown.Row(columns[i], ComparisonMarkdown.Verdict(v.Verdict.Word, ""), ComparisonMarkdown.Text(About(v))))));
            text.Append("\n### Rules, least margin of each\n").Append(ComparisonMarkdown.Lines(["Rule", .. columns], family.Rules.Select(rule =>
                ComparisonMarkdown.Row([$"{ComparisonMarkdown.Code(rule)}{family.Named(rule)[rule.Length..]}", .. family.Variants.Select(v => Cell(v, rule) is (var outcome, var cell) && outcome is not null ? $"**{cell}**" : "–")]))));
            if (family.Values.Count > 0)
            {
                text.Append("\n### Declared values that differ\n").Append(ComparisonMarkdown.Lines(["Value", .. columns], family.Values.Select(static v =>
                    ComparisonMarkdown.Row([ComparisonMarkdown.Code(v.Path), .. v.Written.Select(ComparisonMarkdown.Text)]))));
            }
        }

        return text.ToString();
    }

    /// <summary>The same as a page.</summary>
    public string Html()
    {
        var worst = _families.SelectMany(static f => f.Variants).Select(static v => Labels.Alike(v.Verdict)).DefaultIfEmpty(OutcomeWord.NotEvaluated);
        return Page.Of("Variants beside each other", OutcomeClass.Of(worst.Contains(OutcomeWord.Fails) ? OutcomeWord.Fails : worst.Max()), "Variants", Markdown());
    }

    private static string About(FamilyVariant variant)
    {
        var least = variant.Rules.Values.Where(static f => f is { Severity: SeverityWord.Error, Margin: not null } && (f.Margin != 0 || f.Outcome != OutcomeWord.Conforms))
            .OrderBy(FamilyVariant.Order).ThenBy(static f => f.Rule, StringComparer.Ordinal).FirstOrDefault();
        var exact = variant.Rules.Values.Count(static f => f is { Severity: SeverityWord.Error, Margin: 0, Outcome: OutcomeWord.Conforms });
        var (counts, failing) = (variant.Counts, variant.Rules.Values.Count(static f => f is { Outcome: OutcomeWord.Fails, Severity: SeverityWord.Error }));
        return (failing > 0 ? $"{Phrase.Count(failing, "rule")} of severity error {Phrase.Verb(failing, "fails", "fail")}, " : "")
            + (least is null ? "no margin" : $"least {Figures.Margin(least)} in {least.Rule} on {least.Subject}")
            + (exact == 0 ? "" : $", {Phrase.Count(exact, "rule")} on the limit")
            + $", {Phrase.Whole(counts.Evaluated)} of {Phrase.Whole(counts.Applicable)} evaluated";
    }

    private static (OutcomeWord? Outcome, string Text) Cell(FamilyVariant variant, string rule) => !variant.Rules.TryGetValue(rule, out var finding)
        ? (null, "–")
        : (finding.Outcome, $"{Labels.Symbol(finding.Outcome)} {(finding.Margin is null || finding.Outcome == OutcomeWord.NotEvaluated ? Labels.Of(finding.Outcome) : Figures.Margin(finding))}");

    private static void Grid(Lines lines, Paint paint, string head, ImmutableArray<string> columns, List<(string Name, (OutcomeWord? Outcome, string Text)[] Cells)> rows)
    {
        if (rows.Count == 0)
            return;
        const int widest = 40;
        var first = Math.Max(head.Length, rows.Max(static r => SafeText.Line(r.Name).Length));
        int[] widths = [.. columns.Select((c, i) => Math.Min(widest, Math.Max(SafeText.Line(c).Length, rows.Max(r => SafeText.Line(r.Cells[i].Text).Length))))];
        lines.Write($"  {head.PadRight(first)}{string.Concat(columns.Select((c, i) => "  " + SafeText.Line(c).PadRight(widths[i])))}".TrimEnd());
        foreach (var (name, cells) in rows)
        {
            var line = new StringBuilder("  ").Append(SafeText.Line(name).PadRight(first));
            for (var i = 0; i < cells.Length; i++)
            {
                var padding = i == cells.Length - 1 ? "" : new string(' ', Math.Max(0, widths[i] - SafeText.Line(cells[i].Text).Length));
                line.Append("  ").Append(cells[i].Outcome is { } outcome ? Painted(paint, outcome, cells[i].Text) : SafeText.Line(cells[i].Text)).Append(padding);
            }

            lines.Write(line.ToString());
        }
    }

    private static void More(Lines lines, int count, string what)
    {
        if (count > 0)
            lines.Write($"  and {Phrase.Count(count, what)} more (--verbose lists them)");
    }

    private static string Painted(Paint paint, OutcomeWord outcome, string text) => outcome switch
    {
        OutcomeWord.Conforms => paint.Green(text),
        OutcomeWord.Fails => paint.Red(text),
        OutcomeWord.UnderConcession => paint.Yellow(text),
        _ => paint.Blue(text),
    };
}
