using Pawl.Reports.Html;
using Pawl.Reports.Markdown;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Scriban.Runtime;

namespace Pawl.Reports;

/// <summary>One spec on the page about all of them.</summary>
public sealed record IndexEntry
{
    /// <summary>The spec file, from the project root.</summary>
    public required string SpecFile { get; init; }

    /// <summary>Name of its report files without the ending; empty when it has none.</summary>
    public string Name { get; init; } = "";

    /// <summary>What is shown of its record; null when it could not be judged.</summary>
    public IndexSummary? Summary { get; init; }

    /// <summary>The entry of a record.</summary>
    public static IndexEntry Of(ConformanceRecord record, string name)
    {
        ArgumentNullException.ThrowIfNull(record);
        return new()
        {
            SpecFile = record.Identity.File,
            Name = name,
            Summary = new(record.Identity, record.AsOf, record.Verdict, record.Coverage)
            {
                Weakened = [.. record.Deviations.Where(d => d.IsWeakening).Select(d => d.Rule).Distinct()],
            },
        };
    }
}

/// <summary>The part of a record that the page about all specs shows, so that records need not be kept until the end.</summary>
public sealed record IndexSummary(IdentityRecord Identity, DateOnly AsOf, VerdictRecord Verdict, CoverageRecord Coverage)
{
    /// <summary>Ids of the shipped rules that house rules weaken.</summary>
    public ImmutableArray<string> Weakened { get; init; } = [];
}

/// <summary>The page about all specs: verdict and worst margin of each domain.</summary>
public static class IndexReport
{
    /// <param name="entries">The specs, in the order of the page.</param>
    /// <param name="ending">Ending of the reports it links to: <c>.md</c>.</param>
    public static string Markdown(ImmutableArray<IndexEntry> entries, string ending)
    {
        ArgumentNullException.ThrowIfNull(ending);
        List<string> domains = [];
        foreach (var entry in entries)
        {
            foreach (var domain in entry.Summary?.Coverage.Domains ?? [])
            {
                if (!domains.Contains(domain.Domain))
                    domains.Add(domain.Domain);
            }
        }

        var rows = new ScriptArray();
        foreach (var entry in entries)
            rows.Add(Row(entry, domains, ending));

        var heads = new ScriptArray();
        foreach (var domain in domains)
            heads.Add(MarkdownText.Escape(domain));

        using var totals = new StringWriter();
        Total(entries).Write(totals);
        return Templates.Render("index.md", new()
        {
            ["heads"] = heads,
            ["rows"] = rows,
            ["totals"] = MarkdownText.Escape(totals.ToString()),
            ["weakened"] = string.Join(", ", entries.SelectMany(e => e.Summary?.Weakened ?? []).Distinct().Select(MarkdownText.Code)),
            ["days"] = string.Join(", ", entries.Select(e => e.Summary?.AsOf).Where(d => d is not null).Distinct().Order()
                .Select(d => d!.Value.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture))),
        });
    }

    /// <summary>The page as HTML, with links to the reports in HTML.</summary>
    public static string Html(ImmutableArray<IndexEntry> entries) =>
        Page.Of("Conformance of all specs", OutcomeClass.Of(Worst(entries)), "All specs", Markdown(entries, ".html"));

    private static ScriptObject Row(IndexEntry entry, List<string> domains, string ending)
    {
        var cells = new ScriptArray();
        foreach (var domain in domains)
            cells.Add(Cell(entry.Summary, domain));
        var title = entry.Summary is { } summary
            ? MarkdownText.Escape($"{summary.Identity.Family} {summary.Identity.Variant}")
            : MarkdownText.Escape(entry.SpecFile);
        return new()
        {
            ["variant"] = (entry.Name.Length == 0 ? title : $"[{title}]({Address(entry.Name + ending)})") + Numbers(entry.Summary?.Identity),
            ["revision"] = MarkdownText.Escape(entry.Summary?.Identity.Revision ?? ""),
            ["verdict"] = entry.Summary is { Verdict: { } verdict }
                ? $"{Labels.Symbol(verdict)} {Labels.Of(verdict)}{Besides(verdict.KnownFindings, "known")}{Besides(verdict.WeakenedRules, verdict.WeakenedRules == 1 ? "rule weakened" : "rules weakened")}"
                : "? could not be judged",
            ["evaluated"] = entry.Summary is { Coverage.Overall: { } counts }
                ? $"{Phrase.Whole(counts.Evaluated)} of {Phrase.Whole(counts.Applicable)}"
                : "–",
            ["not_stated"] = MarkdownText.Escape(string.Join(", ", entry.Summary?.Verdict.NotStated ?? [])),
            ["cells"] = cells,
        };
    }

    private static string Cell(IndexSummary? summary, string name)
    {
        foreach (var domain in summary?.Coverage.Domains ?? [])
        {
            if (domain.Domain != name)
                continue;
            var outcome = domain switch
            {
                { FailingErrors: > 0 } => OutcomeWord.Fails,
                { Counts.UnderConcession: > 0 } => OutcomeWord.UnderConcession,
                { Counts: { Evaluated: 0, NotEvaluated: > 0 } } => OutcomeWord.NotEvaluated,
                { Counts.Evaluated: 0 } => OutcomeWord.NotApplicable,
                _ => OutcomeWord.Conforms,
            };
            var remarks = domain.Counts.Fails - domain.FailingErrors;

            // A text or a truth value fails without a margin.
            return $"{Labels.Symbol(outcome)} {(domain.WorstErrorMargin is { } worst && (worst < 0 || domain.FailingErrors == 0) ? Figures.Margin(worst, domain.WorstErrorAbsoluteMargin) : Labels.Of(outcome))}"
                + Besides(remarks, remarks == 1 ? "remark" : "remarks") + Besides(domain.Counts.NotEvaluated, "open");
        }

        return "–";
    }

    private static string Numbers(IdentityRecord? identity) =>
        identity is not null && Labels.NumbersOf(identity.Drawing, "", identity.PartNumber) is { Length: > 0 } numbers ? $", {MarkdownText.Escape(numbers)}" : "";

    private static string Besides(int count, string what) => count > 0 ? $", {Phrase.Whole(count)} {what}" : "";

    /// <summary>A relative address, each part escaped.</summary>
    private static string Address(string path) => string.Join('/', path.Split('/').Select(Uri.EscapeDataString));

    private static Totals Total(ImmutableArray<IndexEntry> entries)
    {
        var totals = new Totals();
        foreach (var entry in entries)
        {
            if (entry.Summary is { } summary)
                totals.Add(summary.Verdict, summary.Coverage.Overall);
            else
                totals.AddUnreadable();
        }

        return totals;
    }

    private static OutcomeWord Worst(ImmutableArray<IndexEntry> entries)
    {
        var worst = OutcomeWord.Conforms;
        foreach (var entry in entries)
        {
            var alike = entry.Summary is { } summary ? Labels.Alike(summary.Verdict) : OutcomeWord.NotEvaluated;
            if (alike == OutcomeWord.Fails)
                return alike;
            worst = alike > worst ? alike : worst;
        }

        return worst;
    }
}
