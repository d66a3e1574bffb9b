using System.Globalization;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Scriban.Runtime;
using static Pawl.Reports.Markdown.MarkdownText;

namespace Pawl.Reports.Sheets;

/// <summary>What the reviewer signs.</summary>
internal sealed partial class SheetModel
{
    public ScriptObject Audit()
    {
        var counts = _record.Coverage.Overall;
        return new()
        {
            ["statement"] = Escape(_record.Verdict.Statement),
            ["symbol"] = Labels.Symbol(_record.Verdict),
            ["word"] = Escape(Labels.Of(_record.Verdict)),
            ["tool"] = Escape(_record.Tool.ToString()),
            ["counts"] = Row(
                ("conforms", Phrase.Whole(counts.Conforms)), ("fails", Phrase.Whole(counts.Fails)), ("conceded", Phrase.Whole(counts.UnderConcession)),
                ("open", Phrase.Whole(counts.NotEvaluated)), ("aside", Phrase.Whole(counts.NotApplicable))),
            ["not_stated"] = string.Join(", ", _record.Verdict.NotStated.Select(Code)),
            ["failures"] = Findings(OutcomeWord.Fails),
            ["conceded"] = Findings(OutcomeWord.UnderConcession),
            ["waiting"] = List(_record.Waiting, (wait, _) => Row(("reason", Escape(wait.Reason)), ("checks", Phrase.Whole(wait.Checks)), ("rules", string.Join(", ", wait.Rules.Select(Code))))),
            ["deviations"] = List(_record.Deviations, (deviation, _) => Row(
                ("rule", Code(deviation.Rule)), ("what", Escape(deviation.What)), ("shipped", Escape(deviation.Shipped)), ("now", Escape(deviation.House)), ("effect", Labels.Of(deviation.Effect)),
                ("reason", Escape(deviation.Reason)), ("approved_by", Escape(deviation.ApprovedBy)))),
            ["weakened"] = Phrase.Whole(_record.Verdict.WeakenedRules),
            ["baseline"] = _record.Baseline is { } baseline ? $"{Code(baseline.Path)}: {Phrase.Whole(baseline.Known)} known, {Phrase.Whole(baseline.Worse)} worse than listed" : "",
            ["assumptions"] = List(_record.Assumptions, (assumption, _) => Row(("quantity", Code(assumption.Quantity)), ("value", Escape(Figures.Of(assumption.Value))), ("basis", Escape(assumption.Basis)))),
            ["sources"] = List(
                _record.Rules.SelectMany(static rule => new[] { rule.Source.Method, rule.Source.Limit }).Where(static source => source.Length > 0).GroupBy(static source => source, StringComparer.Ordinal)
                    .OrderByDescending(static group => group.Count()).ThenBy(static group => group.Key, StringComparer.Ordinal),
                static (source, _) => Row(("source", Escape(source.Key)), ("count", Phrase.Whole(source.Count())))),
            ["files"] = List(
                [.. _record.Files.Select(static f => (f.Path, f.Sha256)), .. _record.Packs.Select(static p => (p.Path, p.Sha256)), .. _record.ShippedFiles.Select(static f => (f.Path, f.Sha256))],
                static ((string Path, string Sha256) file, int _) => Row(("path", Code(file.Path)), ("sha256", Code(file.Sha256)))),
            ["parts"] = List(
                [.. new[] { new PartRecord { Subject = "assembly", Drawing = _record.Identity.Drawing, Revision = _record.Identity.Revision, PartNumber = _record.Identity.PartNumber } }, .. _record.Parts],
                static (PartRecord part, int _) => Row(("id", Code(part.Subject)), ("drawing", Said(part.Drawing)), ("revision", Said(part.Revision)), ("part_number", Said(part.PartNumber)))),
        };
    }

    private ScriptArray Findings(OutcomeWord outcome) => List(FindingOrder.WorstFirst(_record.Findings, outcome), (finding, _) =>
    {
        var (value, limit) = Figures.Apart(finding);
        return Row(
            ("rule", Code(finding.Rule)), ("subject", Code(finding.Subject)), ("title", Escape(finding.Title)), ("severity", Labels.SeverityOf(finding)), ("value", Escape(value)), ("limit", Escape(limit)),
            ("margin", outcome == OutcomeWord.UnderConcession ? Figures.ConcededMargin(finding) : Figures.Margin(finding)),
            ("reason", Escape(finding.Concession?.Reason ?? "")), ("approved_by", Escape(finding.Concession?.ApprovedBy ?? "")),
            ("expires", finding.Concession?.Expires.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? ""));
    });
}
