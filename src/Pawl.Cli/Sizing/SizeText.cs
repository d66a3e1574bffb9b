using System.Globalization;
using Pawl.Analysis.Seals;
using Pawl.Cli.Output;
using Pawl.Rules;

namespace Pawl.Cli.Sizing;

/// <summary>Sizes as text.</summary>
internal static class SizeText
{
    private static readonly string[] Heads = ["size", "cord", "inside", "squeeze: least / nominal / greatest", "stretch", "compression", "fill", "worst margin", "set by"];

    public static void Write(TextWriter to, SizeAnswer answer, SizeRequest request)
    {
        to.WriteLine(answer.Spec is null ? "Gland:" : $"Gland of {Plain.Line(answer.Ring!)} in {Plain.Line(answer.Spec)}:");
        Lines(to, answer.Gland, "  ");
        to.WriteLine();

        var list = answer.List;
        var shown = list.Fitting.Take(request.Top).ToArray();
        var declared = list.Sizes.FirstOrDefault(size => size.Candidate.IsDeclared);
        to.WriteLine(Counted(list, shown.Length));
        if (shown.Length > 0)
            Table(to, shown);
        foreach (var cord in shown.Where(size => !size.Candidate.Proposed.IsEmpty).DistinctBy(size => size.Candidate.Size!.Cord))
        {
            to.WriteLine($"  groove of the {Shown.Millimetres(cord.Candidate.Size!.Cord)} cord:");
            Lines(to, cord.Candidate.Proposed, "    ");
        }

        if (declared is { Fits: true } && !shown.Contains(declared))
            to.WriteLine($"  The declared size, {declared.Candidate.Name}, stands further down, at place {Whole(list.Sizes.IndexOf(declared) + 1)}.");
        if (declared is { Fits: false })
            to.WriteLine($"  The declared size, {declared.Candidate.Name}, does not fit: {Why(declared)}.");

        Failing(to, answer, request);
        foreach (var (finding, i) in list.Alike.Where(f => f.Outcome != Outcome.NotEvaluated).Select((f, i) => (f, i)))
        {
            // Of those that conform the nearest to its limit is enough.
            if (i == 0 || finding.Outcome == Outcome.Fails)
                to.WriteLine($"Whatever the size: {(finding.Outcome == Outcome.Fails ? DiagnosticWriter.Word(finding.Rule.Severity) : "conforms to")} {finding.Rule.Id}: {Measured(finding)}");
        }

        foreach (var open in list.Open)
            to.WriteLine($"Not judged: {open.Rule.Id}: {Plain.Line(string.Join("; ", open.Reasons))}.");
        if (answer.Fragment.Length > 0)
        {
            to.WriteLine();
            to.WriteLine("For the spec, with the first size:");
            to.WriteLine();
            to.Write(answer.Fragment);
        }
    }

    private static string Counted(SizeList list, int shown)
    {
        var fitting = list.Fitting.Count();
        var all = $"{Whole(list.Sizes.Length)} sizes";
        return fitting == 0 ? $"None of {all} satisfies every rule of severity error."
            : $"{Whole(fitting)} of {all} {(fitting == 1 ? "satisfies" : "satisfy")} every rule of severity error; "
                + $"fewest warnings first, then by margin{(shown < fitting ? $"; the first {Whole(shown)}" : "")}:";
    }

    private static void Table(TextWriter to, JudgedSize[] sizes)
    {
        var rows = sizes.Select(Row).Prepend(Heads).ToArray();
        var widths = Enumerable.Range(0, Heads.Length).Select(column => rows.Max(row => row[column].Length)).ToArray();
        for (var i = 0; i < rows.Length; i++)
        {
            to.WriteLine(("  " + string.Join("  ", rows[i].Select((cell, column) => cell.PadRight(widths[column])))).TrimEnd());
            if (i == 0)
                continue;
            foreach (var warning in sizes[i - 1].Warnings)
                to.WriteLine($"    {DiagnosticWriter.Word(warning.Rule.Severity)} {warning.Rule.Id}: {Measured(warning)}");
        }
    }

    private static string[] Row(JudgedSize size) =>
    [
        size.Candidate.Name + (size.Candidate.IsDeclared ? " (declared)" : ""),
        size.Find(ORings.Cord) is { } cord ? Shown.Millimetres(cord.Value.Nominal) : "–",
        size.Find(ORings.Inside) is { } inside ? Shown.Millimetres(inside.Value.Nominal) : "–",
        Shown.Range(size.Find(ORings.Squeeze), 1),
        Shown.Range(size.Find(ORings.Stretch), 1),
        Shown.Range(size.Find(ORings.Compression), 1),
        Shown.Range(size.Find(ORings.Fill), 1),
        Shown.Margin(size.Worst.FirstOrDefault()),
        size.Worst is [var worst, ..] ? worst.Rule.Id : "–",
    ];

    private static void Failing(TextWriter to, SizeAnswer answer, SizeRequest request)
    {
        var failing = answer.List.Failing.ToArray();
        if (failing.Length == 0)
            return;

        const int Most = 3;
        to.WriteLine($"{Whole(failing.Length)} {(failing.Length == 1 ? "size does" : "sizes do")} not fit. Most break:");
        var reasons = answer.Reasons.ToArray();
        foreach (var (reason, title, count) in reasons.Take(Most))
            to.WriteLine($"  {Whole(count),3} {Plain.Line(reason)}{(title.Length > 0 ? $": {title}" : "")}");
        if (reasons.Length > Most)
            to.WriteLine($"  {Whole(reasons.Skip(Most).Sum(r => r.Count)),3} something else");
        if (!request.All)
            return;

        to.WriteLine("Each:");
        foreach (var size in failing)
            to.WriteLine($"  {size.Candidate.Name}{(size.Candidate.IsDeclared ? " (declared)" : "")}: {Why(size)}");
    }

    private static string Why(JudgedSize size) => size.FailsBy is { Margin: not null } by ? $"{by.Rule.Id}: {Measured(by)}" : Plain.Line(size.WhyNot);

    private static string Measured(Finding finding)
    {
        var margin = finding.Margin is { } value ? value == 0 ? ", on the limit" : $", margin {Shown.Margin(finding)}" : "";
        return finding.Measured is { IsEvaluated: true, Kind.ValueKind: Analysis.Core.ValueKind.Number } measured
            ? $"{Plain.Line(finding.Rule.Measure)} {Shown.Range(measured, measured.Kind.Unit == Pawl.Quantities.Units.Percent ? 1 : 2)}, {Plain.Line(finding.Rule.LimitText)}{margin}"
            : $"{Plain.Line(finding.Rule.Measure)} {Plain.Line(finding.Measured?.Text ?? "–")}, {Plain.Line(finding.Rule.LimitText)}{margin}";
    }

    private static void Lines(TextWriter to, ImmutableArray<GlandLine> lines, string indent)
    {
        foreach (var line in lines)
            to.WriteLine($"{indent}{line.Key,-12} {(line.Basis.Length == 0 ? Plain.Line(line.Text) : $"{Plain.Line(line.Text),-18} {line.Basis}")}");
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
