using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Pawl.Analysis;
using Pawl.Analysis.Completeness;
using Pawl.Reports.Building;
using Pawl.Reports.Records;
using Pawl.Rules;

namespace Pawl.Reports;

/// <summary>How much of a judgement is written down.</summary>
public enum RecordScope
{
    /// <summary>All of it, to be archived and reported.</summary>
    Whole,

    /// <summary>Rules and findings, to be printed: without subjects, inputs and assumptions, in a fraction of the time.</summary>
    Findings,
}

/// <summary>Writes down a judgement as a record.</summary>
public static class RecordBuilder
{
    /// <summary>The tool as this assembly knows it.</summary>
    public static readonly ToolRecord Tool = new() { Name = "pawl", Version = VersionOfThis(), Revision = RevisionOfThis() };

    /// <summary>The record of a judgement. Pure: the same judgement gives the same record.</summary>
    public static ConformanceRecord Build(Judgement judgement, RecordScope scope = RecordScope.Whole) => Build(judgement, Tool, scope);

    /// <summary>The record of a judgement, by a tool of another name or version.</summary>
    public static ConformanceRecord Build(Judgement judgement, ToolRecord tool, RecordScope scope = RecordScope.Whole)
    {
        ArgumentNullException.ThrowIfNull(judgement);
        ArgumentNullException.ThrowIfNull(tool);
        var analysis = judgement.Analysis;
        var spec = analysis.Spec;
        var quantities = new QuantityWriter();
        var whole = scope == RecordScope.Whole;
        var findings = FindingWriter.Write(judgement.Findings, quantities, whole);
        var subjects = analysis.Subjects.AddRange(judgement.Concessions);
        var coverage = CoverageCount.Of(findings, subjects);
        var written = whole ? Map(subjects, quantities.Write) : [];
        return new()
        {
            IsWhole = whole,
            Format = ConformanceRecord.CurrentFormat,
            Id = Number(judgement, tool),
            Tool = tool,
            Identity = new()
            {
                Family = spec.Gearbox.Family.Value,
                Variant = spec.Gearbox.Variant.Value,
                Revision = spec.Gearbox.Revision?.Value ?? "",
                Description = spec.Gearbox.Description?.Value ?? "",
                Drawing = spec.Gearbox.Drawing?.Value ?? "",
                PartNumber = spec.Gearbox.PartNumber?.Value ?? "",
                File = spec.File,
            },
            AsOf = judgement.AsOf,
            Parts = Map(spec.Parts, part => new PartRecord
            {
                Subject = part.Id.Value,
                Drawing = part.Drawing?.Value ?? "",
                PartNumber = part.PartNumber?.Value ?? "",
                Revision = part.Revision?.Value ?? "",
            }),
            Verdict = Verdicts.Of(findings, coverage.Overall, judgement.Rules.Weakened.Count(), NotStated(analysis)),
            Coverage = coverage,
            Topology = analysis.Topology,
            Files = Map(spec.FilesRead, f => new FileRecord { Path = f.Path, Sha256 = f.Sha256 }),
            Packs = Map(judgement.Rules.Packs, p =>
                new PackRecord { Name = p.Name, Path = p.Path, Version = p.Version, Sha256 = p.Sha256 }),
            ShippedFiles = whole ? ShippedFiles.Of(analysis.TablesUsed) : [],
            Tables = analysis.TablesUsed,
            Findings = findings,
            Baseline = Baselines.Of(judgement, quantities),
            Waiting = WaitingList.Of(findings),
            Rules = Map(judgement.Rules.Rules, RuleWriter.Write),
            Deviations = RuleWriter.Deviations(judgement.Rules.Rules),
            Subjects = written,
            Assumptions = whole ? AssumptionList.Of(subjects, judgement.Findings, quantities) : [],
            Inputs = whole ? DeclaredInputs.Of(spec, quantities) : [],
            Cautions = Cautions.All,
        };
    }

    private static ImmutableArray<string> NotStated(GearboxAnalysis analysis) =>
        [.. from section in SectionInSpec.Of(analysis.Spec) where section.Statement == SectionInSpec.Absent select section.Name];

    private static ImmutableArray<TTo> Map<TFrom, TTo>(ImmutableArray<TFrom> from, Func<TFrom, TTo> write)
    {
        var to = ImmutableArray.CreateBuilder<TTo>(from.Length);
        foreach (var item in from)
            to.Add(write(item));
        return to.MoveToImmutable();
    }

    /// <summary>A number that changes with anything that can change the verdict.</summary>
    private static string Number(Judgement judgement, ToolRecord tool)
    {
        var text = new StringBuilder();
        text.Append(tool.Name).Append('\n').Append(tool.Version).Append('\n');
        if (tool.Revision.Length > 0)
            text.Append(tool.Revision).Append('\n');
        text.Append(judgement.AsOf.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)).Append('\n');
        text.Append(judgement.Analysis.Spec.File).Append('\n');
        foreach (var demand in judgement.Analysis.Spec.RequiredSections)
            text.Append(demand.Value).Append('\n');
        foreach (var file in judgement.Analysis.Spec.FilesRead)
            text.Append(file.Path).Append('\t').Append(file.Sha256).Append('\n');
        foreach (var pack in judgement.Rules.Packs)
            text.Append(pack.Path).Append('\t').Append(pack.Sha256).Append('\n');
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())).AsSpan(0, 8));
    }

    private static string VersionOfThis() =>
        typeof(RecordBuilder).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0";

    private static string RevisionOfThis() =>
        typeof(RecordBuilder).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().FirstOrDefault(each => each.Key == "SourceRevisionId")?.Value ?? "";
}
