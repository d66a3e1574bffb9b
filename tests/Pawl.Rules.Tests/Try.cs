using System.Collections.Immutable;
using Pawl.Analysis;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Rules.Tests;

/// <summary>Small subjects and packs to try rules on.</summary>
internal static class Try
{
    public static readonly DateOnly Today = new(2027, 3, 31);

    private static int _serial;

    public static SourceSpan At(int line) => new("specs/try.yaml", new(line, 1), new(line, 5));

    public static Quantity Number(QuantityKind kind, string amount, int line = 1)
    {
        Assert.True(Amount.TryParse(amount, out var value, out var error), error?.Message);
        Assert.Equal(kind.Dimension, value.Dimension);
        return Quantity.Leaf(kind, new Origin.Declared(At(line), amount), Extent.Exactly(value.Coherent), 0);
    }

    /// <summary>A toleranced value in coherent units.</summary>
    public static Quantity Toleranced(QuantityKind kind, double nominal, double least, double greatest, int line = 1) =>
        Quantity.Leaf(kind, new Origin.Declared(At(line), "toleranced"), new(nominal, least, greatest), ++_serial);

    public static Quantity Text(QuantityKind kind, string text) => Quantity.OfText(kind, new Origin.Declared(At(1), text), text, []);

    public static Quantity Truth(QuantityKind kind, bool truth) => Quantity.OfTruth(kind, new Origin.Declared(At(1), "truth"), truth, []);

    public static Quantity Missing(QuantityKind kind, string reason) => Quantity.NotEvaluated(kind, [], reason);

    public static Subject Mesh(string path, params ReadOnlySpan<Quantity> quantities) => Subject(SubjectKinds.Mesh, path, quantities);

    public static Subject Subject(SubjectKind kind, string path, params ReadOnlySpan<Quantity> quantities)
    {
        var subject = new Subject(kind, path, At(99));
        foreach (var quantity in quantities)
            subject.Add(quantity);
        return subject;
    }

    /// <summary>A gear of a mesh, with the gear itself behind it.</summary>
    public static Subject MeshGear(Subject gear, params ReadOnlySpan<Quantity> quantities) =>
        Subject(SubjectKinds.MeshGear, "meshes.a~b.a", quantities).Relate("gear", gear);

    public static GearboxAnalysis Analysis(ImmutableArray<Subject> subjects, params ImmutableArray<ConcessionSpec> concessions) => new()
    {
        Spec = new()
        {
            File = "specs/try.yaml",
            FilesRead = [],
            Catalogue = Catalogue.Empty,
            Pawl = Stated(1),
            Gearbox = new() { Family = Stated("Try"), Variant = Stated("T1") },
            Concessions = concessions,
        },
        Subjects = subjects,
    };

    public static ConcessionSpec Concession(string rule, string subject, DateOnly expires, string worstMargin = "-100 %", params ImmutableArray<string> variants)
    {
        Assert.True(Amount.TryParse(worstMargin, out var worst, out _));
        return new()
        {
            Span = At(5),
            Rule = Stated(rule),
            Subject = Stated(subject),
            Reason = Stated("Old stock"),
            ApprovedBy = Stated("The owner"),
            Expires = new(expires, At(6), expires.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)),
            WorstMargin = new(worst, At(7), worstMargin),
            Variants = variants.IsDefault ? [] : [.. variants.Select(Stated)],
        };
    }

    public static Stated<T> Stated<T>(T value) => new(value, At(5), value?.ToString() ?? "");

    /// <summary>A house pack with one rule on meshes; <paramref name="body"/> gives measure, limits and condition.</summary>
    public static string Pack(string body, string appliesTo = "mesh", string severity = "error") =>
        $$"""
        pack: house
        version: 1.0.0
        title: House rules
        rules:
          - id: house/tried
            title: Tried
            applies_to: {{appliesTo}}
            severity: {{severity}}
            source: {method: closed form, limit: closed form}
            why: It breaks.
            mend: Make it stronger.
        {{string.Join('\n', body.Split('\n').Select(line => "    " + line))}}
        """;

    public static RuleSetLoad Load(string pack) => RulePacks.LoadTexts(("rules/house.yaml", pack));

    /// <summary>The one house rule of a pack that must be right.</summary>
    public static Rule Rule(string body, string appliesTo = "mesh", string severity = "error")
    {
        var load = Load(Pack(body, appliesTo, severity));
        Assert.Empty(load.Diagnostics);
        return load.Rules!.Find("house/tried")!;
    }

    /// <summary>The diagnostics of a house rule that must be wrong.</summary>
    public static ImmutableArray<Diagnostic> Wrong(string body, string appliesTo = "mesh")
    {
        var load = Load(Pack(body, appliesTo));
        Assert.Null(load.Rules);
        Assert.NotEmpty(load.Diagnostics);
        Assert.All(load.Diagnostics, d => Assert.False(string.IsNullOrWhiteSpace(d.Message)));
        return load.Diagnostics;
    }

    public static Finding Put(Rule rule, Subject subject, params ImmutableArray<ConcessionSpec> concessions)
    {
        var judgement = Judge.Of(Analysis([subject], concessions), new() { Rules = [rule], Packs = [] }, Today);
        return Assert.Single(judgement.Findings, f => f.Rule == rule);
    }

    /// <summary>A mesh with a total contact ratio.</summary>
    public static Subject ContactRatio(double value) =>
        Mesh("meshes.a~b", Quantity.Leaf(MeshQuantities.TotalContactRatio, new Origin.Declared(At(3), "x"), Extent.Exactly(value), 0));
}
