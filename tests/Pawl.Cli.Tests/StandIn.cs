using System.Collections.Immutable;
using System.Text;
using Pawl.Analysis;
using Pawl.Analysis.Core;
using Pawl.Cli.Checking;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Tests;

/// <summary>
/// Layers below the command line that do as the spec's text says, so that every way to end can be had by writing it:
/// <c>conforms</c>, <c>fails error</c>, <c>fails warning</c>, <c>gap</c>, <c>nothing</c>, <c>bad</c>, <c>base</c>, <c>defect</c>.
/// </summary>
internal static class StandIn
{
    public static Engine Engine { get; } = new()
    {
        FindProject = (folder, root) => root is not null ? new ProjectView { Root = root } : Upwards(folder),
        OpenSpecs = (root, _, _, _) => input => Load(root, input),
        LoadRules = (root, folders) => Rules(root, folders),
        Analyse = spec => new() { Spec = spec, Subjects = [] },
        Judge = Judge,
        Schemas = () => ImmutableSortedDictionary<string, Func<string>>.Empty.Add("gearbox", () => "{}\n").Add("rules", () => "{ }\n"),
        Diagnostics = () => [("spec/bad", "The spec is bad.", "Make it good.")],
    };

    private static Rule Rule(Severity severity) => new()
    {
        Id = $"train/{severity.ToString().ToLowerInvariant()}",
        Title = "A stand-in",
        Pack = "train",
        AppliesTo = SubjectKinds.Train,
        Measure = "ratio",
        LimitText = "at least 1",
        Severity = severity,
        Source = new("closed form", "common practice, no source", Certainty.CommonPractice),
        Why = "It fails.",
        Mend = "Mend it.",
        Span = SourceSpan.Whole("shipped:rules/train.yaml"),
    };

    private static ProjectView Upwards(string folder)
    {
        for (var at = folder; at is not null; at = Path.GetDirectoryName(at))
        {
            if (File.Exists(Path.Combine(at, "pawl.yaml")))
                return new ProjectView { Root = at, File = Path.Combine(at, "pawl.yaml") };
            if (Directory.Exists(Path.Combine(at, ".git")))
                break;
        }

        return new ProjectView { Root = folder };
    }

    private static SpecLoad Load(string root, SpecInput input)
    {
        var text = input.Bytes is { } bytes ? Encoding.UTF8.GetString(bytes) : File.ReadAllText(Path.Combine(root, input.Display));
        var words = text.Trim();
        if (words == "defect")
            throw new InvalidOperationException("a seam came open");

        var span = SourceSpan.Whole(input.Display);
        ImmutableArray<string> extends = words.Contains("extends ", StringComparison.Ordinal) ? [words.Split("extends ")[1]] : [];
        var load = new SpecLoad
        {
            File = input.Display,
            IsBase = words.StartsWith("base", StringComparison.Ordinal),
            Diagnostics = words == "bad" ? [new("spec/bad", Severity.Error, span, "It is bad.", "Make it good.")] : [],
            Extends = extends,
            FilesRead = [.. extends.Select(e => new FileRead(e, "")), new(input.Display, "")],
        };
        return load.IsBase || words == "bad" ? load : load with { Spec = Spec(input.Display, words) };
    }

    private static GearboxSpec Spec(string file, string words)
    {
        var span = SourceSpan.Whole(file);
        return new()
        {
            File = file,
            FilesRead = [],
            Catalogue = Catalogue.Empty,
            Pawl = new(1, span, "1"),
            Gearbox = new() { Family = new("Tarn", span, "Tarn"), Variant = new(words, span, words) },
        };
    }

    private static RuleSetLoad Rules(string root, ImmutableArray<string> folders)
    {
        foreach (var folder in folders)
        {
            if (!Directory.Exists(Path.Combine(root, folder)))
                return new(null, [new("rules/no-folder", Severity.Error, SourceSpan.Whole(folder), "There is no such folder.")]);
            if (File.Exists(Path.Combine(root, folder, "none.yaml")))
                return new(new RuleSet { Rules = [], Packs = [] }, []);
        }

        return new(new RuleSet { Rules = [Rule(Severity.Error), Rule(Severity.Warning), Rule(Severity.Note)], Packs = [] }, []);
    }

    private static Judgement Judge(GearboxAnalysis analysis, RuleSet rules, DateOnly asOf)
    {
        var spec = analysis.Spec;
        var words = spec.Gearbox.Variant.Value;
        var span = SourceSpan.Whole(spec.File);
        Finding Found(int rule, Outcome outcome) => new()
        {
            Rule = rules.Rules[rule],
            Subject = new(SubjectKinds.Train, "train", span),
            Outcome = outcome,
            Span = span,
        };

        ImmutableArray<Finding> findings = words switch
        {
            "fails error" => [Found(0, Outcome.Fails), Found(1, Outcome.Conforms)],
            "fails warning" => [Found(0, Outcome.Conforms), Found(1, Outcome.Fails)],
            "gap" => [Found(0, Outcome.Conforms), Found(1, Outcome.NotEvaluated)],
            "nothing" => [Found(0, Outcome.NotEvaluated)],
            _ => [Found(0, Outcome.Conforms)],
        };
        int Count(Outcome outcome) => findings.Count(f => f.Outcome == outcome);
        return new()
        {
            Analysis = analysis,
            Rules = rules,
            AsOf = asOf,
            Findings = findings,
            Coverage = new(Count(Outcome.Conforms), Count(Outcome.Fails), 0, Count(Outcome.NotEvaluated), 0),
        };
    }
}
