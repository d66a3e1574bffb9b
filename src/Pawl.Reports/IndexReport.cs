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
                Tightest = TightestOf(record),
            },
        };
    }

    /// <summary>A failure without a margin, of a word or a truth, is worse than a margin that is in hand.</summary>
    private static TightestCheck? TightestOf(ConformanceRecord record)
    {
        var tightest = Drawing.MarginBars.Tightest(record) is [var least, ..] ? least : null;
        var failing = record.Findings.FirstOrDefault(static f => f is { Outcome: OutcomeWord.Fails, Severity: SeverityWord.Error });
        return (tightest, failing) switch
        {
            (null or { Outcome: not OutcomeWord.Fails }, { } fails) => new(fails.Rule, fails.Subject, fails.Margin is null ? Labels.Of(fails.Outcome) : Figures.Margin(fails), Fails: true),
            ({ } first, _) => new(first.Rule, first.Subject, Figures.Margin(first), first.Outcome == OutcomeWord.Fails),
            _ => null,
        };
    }
}

/// <summary>The part of a record that the page about all specs shows, so that records need not be kept until the end.</summary>
public sealed record IndexSummary(IdentityRecord Identity, DateOnly AsOf, VerdictRecord Verdict, CoverageRecord Coverage)
{
    /// <summary>Ids of the shipped rules that house rules weaken.</summary>
    public ImmutableArray<string> Weakened { get; init; } = [];

    /// <summary>The check of severity error with the least margin; null when none has one.</summary>
    public TightestCheck? Tightest { get; init; }
}

/// <summary>The check with the least margin of all.</summary>
/// <param name="Rule">Id of its rule.</param>
/// <param name="Subject">Path of its subject.</param>
/// <param name="Margin">Its margin, as a reader sees it.</param>
/// <param name="Fails">Whether it fails.</param>
public sealed record TightestCheck(string Rule, string Subject, string Margin, bool Fails);

/// <summary>The page about all specs: verdict and worst margin of each domain.</summary>
public static class IndexReport
{
    /// <param name="entries">The specs, in the order of the page.</param>
    /// <param name="ending">Ending of the reports it links to: <c>.md</c>.</param>
    public static string Markdown(ImmutableArray<IndexEntry> entries, string ending)
    {
        ArgumentNullException.ThrowIfNull(ending);
        return Templates.Render("index.md", Model(entries, ending, Markup.Markdown));
    }

    /// <summary>The page as HTML, with links to the reports in HTML.</summary>
    public static string Html(ImmutableArray<IndexEntry> entries) => Page.Filled(
        "Conformance of all specs",
        OutcomeClass.Of(Worst(entries)),
        "All specs",
        Templates.Render("index.html", Model(entries, ".html", Markup.Html("", "", static _ => true))),
        hasScript: false);

    private static ScriptObject Model(ImmutableArray<IndexEntry> entries, string ending, Markup markup)
    {
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
            rows.Add(Row(entry, domains, ending, markup));

        var heads = new ScriptArray();
        foreach (var domain in domains)
            heads.Add(markup.Escape(domain));

        using var totals = new StringWriter();
        Total(entries).Write(totals);
        return new()
        {
            ["heads"] = heads,
            ["rows"] = rows,
            ["totals"] = markup.Escape(totals.ToString()),
            ["weakened"] = string.Join(", ", entries.SelectMany(e => e.Summary?.Weakened ?? []).Distinct().Select(markup.Code)),
            ["days"] = string.Join(", ", entries.Select(e => e.Summary?.AsOf).Where(d => d is not null).Distinct().Order()
                .Select(d => d!.Value.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture))),
        };
    }

    private static ScriptObject Row(IndexEntry entry, List<string> domains, string ending, Markup markup)
    {
        var cells = new ScriptArray();
        foreach (var domain in domains)
            cells.Add(Cell(entry.Summary, domain));
        var summary = entry.Summary;
        var title = markup.Escape(summary is null ? entry.SpecFile : $"{summary.Identity.Family} {summary.Identity.Variant}");
        var counts = summary?.Coverage.Overall;
        var errors = summary?.Coverage.Domains.Sum(static d => d.FailingErrors) ?? 0;
        return new()
        {
            ["variant"] = entry.Name.Length == 0 ? title : markup.LinkTo(title, Address(entry.Name + ending)),
            ["numbers"] = summary is null ? "" : markup.Escape(Labels.NumbersOf(summary.Identity.Drawing, "", summary.Identity.PartNumber)),
            ["revision"] = markup.Escape(summary?.Identity.Revision ?? ""),
            ["verdict"] = summary is { Verdict: { } verdict }
                ? $"{Labels.Symbol(verdict)} {Labels.Of(verdict)}{Besides(verdict.KnownFindings, "known")}{Besides(verdict.WeakenedRules, verdict.WeakenedRules == 1 ? "rule weakened" : "rules weakened")}"
                : "? could not be judged",
            ["css"] = OutcomeClass.Of(summary is null ? OutcomeWord.NotEvaluated : Labels.Alike(summary.Verdict)),
            ["worst"] = summary?.Tightest is { } tightest ? $"{Labels.Symbol(tightest.Fails ? OutcomeWord.Fails : OutcomeWord.Conforms)} {tightest.Margin}" : "–",
            ["worst_at"] = summary?.Tightest is { } worst ? $"{markup.Code(worst.Rule)} on {markup.Code(worst.Subject)}" : "",
            ["errors"] = counts is null ? "–" : Phrase.Whole(errors),
            ["remarks"] = counts is null ? "–" : Phrase.Whole(counts.Fails - errors),
            ["under_concession"] = counts is null ? "–" : Phrase.Whole(counts.UnderConcession),
            ["not_evaluated"] = counts is null ? "–" : Phrase.Whole(counts.NotEvaluated),
            ["evaluated"] = counts is null ? "–" : $"{Phrase.Whole(counts.Evaluated)} of {Phrase.Whole(counts.Applicable)}",
            ["not_stated"] = markup.Escape(string.Join(", ", summary?.Verdict.NotStated ?? [])),
            ["cells"] = cells,
        };
    }

    /// <summary>Sign and worst margin of a part of a report, over the rules of severity error, with its style class.</summary>
    private static ScriptObject Cell(IndexSummary? summary, string name)
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

            // A text or a truth value fails without a margin.
            var margin = domain.WorstErrorMargin is { } worst && (worst < 0 || domain.FailingErrors == 0) ? Figures.Margin(worst, domain.WorstErrorAbsoluteMargin)
                : Labels.Of(outcome);
            return new() { ["css"] = OutcomeClass.Of(outcome), ["text"] = $"{Labels.Symbol(outcome)} {margin}" };
        }

        return new() { ["css"] = "aside", ["text"] = "–" };
    }

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
