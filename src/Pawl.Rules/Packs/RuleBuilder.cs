using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Rules.Expressions;
using Pawl.Rules.Judging;
using Pawl.Rules.Limits;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Rules.Packs;

/// <summary>Makes a rule of a draft: reads its expressions, checks kinds and dimensions, compiles.</summary>
internal sealed class RuleBuilder
{
    private const int DeepestTable = 4;

    private readonly RuleSyntax _draft;
    private readonly SubjectKind _kind;
    private readonly List<Diagnostic> _diagnostics;
    private readonly Action<Diagnostic> _report;
    private bool _failed;

    private RuleBuilder(RuleSyntax draft, List<Diagnostic> diagnostics)
    {
        _draft = draft;
        _kind = draft.AppliesTo;
        _diagnostics = diagnostics;
        _report = Report;
    }

    public static Rule? Build(RuleSyntax draft, List<Diagnostic> diagnostics) => new RuleBuilder(draft, diagnostics).Build();

    private Rule? Build()
    {
        var (when, whenPaths) = When();
        var scope = new List<QuantityPath>();
        var bound = Binder.Bind(_kind, new(_draft.Measure), scope, _report);
        Exclude();
        var suggest = Suggest();
        if (bound is null)
        {
            // Only the measure tells what a limit must be; without it the limits cannot be checked.
            return null;
        }

        var program = bound switch
        {
            Bound.Number number => OfNumber(number, [.. scope]),
            Bound.Text text => OfText(text),
            Bound.Truth truth => OfTruth(truth),
            _ => null,
        };
        foreach (var example in _draft.Examples)
            ExampleReader.Read(_kind, example, _report);
        if (_failed || program is null)
            return null;

        return new()
        {
            Id = _draft.Id.Value,
            Title = _draft.Title,
            Pack = _draft.Pack,
            AppliesTo = _kind,
            When = _draft.When?.Value,
            Measure = _draft.Measure.Value,
            LimitText = LimitWording.Of(_draft),
            Severity = _draft.Severity,
            Source = _draft.Source,
            Why = _draft.Why,
            Mend = _draft.Mend,
            Concedable = _draft.Concedable,
            Plausibility = _draft.Plausibility,
            Explains = [.. _draft.Explains.Select(static id => id.Value)],
            Suggest = _draft.Suggest?.Value,
            Examples = _draft.Examples,
            Span = _draft.Span,
            Program = new()
            {
                Draft = _draft,
                Measure = program.Measure,
                When = when,
                WhenPaths = whenPaths,
                WhenDenied = when is null ? [] : [$"the condition `{_draft.When!.Value}` does not hold"],
                AtLeast = program.AtLeast,
                AtMost = program.AtMost,
                IsEqual = program.IsEqual,
                Demand = program.Demand,
                Suggest = suggest,
            },
        };
    }

    private (Condition? Condition, ImmutableArray<QuantityPath> Paths) When()
    {
        if (_draft.When is not { } scalar)
            return (null, []);
        switch (Binder.Bind(_kind, new(scalar), [], _report))
        {
            case Bound.Truth truth:
                var paths = new List<QuantityPath>();
                truth.Condition.Collect(paths);
                return (truth.Condition, [.. paths]);
            case { } other:
                Report(RuleDiagnostics.Error(
                    RuleCodes.KindMismatch, scalar.Span,
                    $"`when` is something true or false, but this is a {Binder.Word(other.ValueKind)}.",
                    "Compare it: `count > 1`, `kind == 'internal'`."));
                break;
        }

        return (null, []);
    }

    private QuantityPath? Suggest()
    {
        if (_draft.Suggest is not { } scalar || Paths.Find(_kind, scalar.Value, scalar.Span, _report) is not { } path)
            return null;
        if (path.Kind.ValueKind == ValueKind.Text)
            return path;
        Report(RuleDiagnostics.Error(
            RuleCodes.KindMismatch, scalar.Span, $"`suggest` is a text for people, but `{RuleDiagnostics.Short(scalar.Value)}` is a {Binder.Word(path.Kind.ValueKind)}.",
            "Name a text quantity of the subject."));
        return null;
    }

    private void Exclude()
    {
        var bounds = _draft.AtLeast is not null || _draft.AtMost is not null;
        if (_draft.EqualTo is { } equal && (bounds || _draft.OneOf is not null))
            Report(RuleDiagnostics.Error(
                RuleCodes.ConflictingLimits, equal.Span, "`equals` stands beside another limit.", "Keep one of them."));
        else if (_draft.OneOf is { } oneOf && bounds)
            Report(RuleDiagnostics.Error(
                RuleCodes.ConflictingLimits, oneOf.Span, "`one_of` stands beside another limit.", "Keep one of them."));
    }

    private RuleProgram? OfNumber(Bound.Number measure, ImmutableArray<QuantityPath> inputs)
    {
        if (_draft.OneOf is { } oneOf)
            Report(RuleDiagnostics.Error(
                RuleCodes.KindMismatch, oneOf.Span, "`one_of` is for texts, but the measure is a number.",
                "Use `equals`, or a table `{by: …}`."));
        if (inputs.IsEmpty)
            Report(RuleDiagnostics.Error(
                RuleCodes.NotAnExpression, _draft.Measure.Span, "The measure names no quantity.",
                "Measure something of the subject."));

        var unit = measure.Unit ?? LimitUnit(measure);
        var expression = Compile(measure, inputs, "measured", _draft.Measure.Value, unit);
        var least = Limit(_draft.AtLeast ?? _draft.EqualTo, measure, expression.Kind.Unit, 0);
        var most = Limit(_draft.AtMost, measure, expression.Kind.Unit, 0);
        if (least?.Constant is { } low && most?.Constant is { } high && low > high)
        {
            Report(RuleDiagnostics.Error(
                RuleCodes.EmptyWindow, _draft.AtMost!.Span, "The greatest permitted value is below the least.",
                "Exchange `at_least` and `at_most`."));
        }

        return new() { Draft = _draft, Measure = new Measure.Number(expression), AtLeast = least, AtMost = most, IsEqual = _draft.EqualTo is not null };
    }

    /// <summary>The unit of the first limit that is an amount, for a measure that has none of its own.</summary>
    private Unit? LimitUnit(Bound.Number measure) =>
        (_draft.AtLeast ?? _draft.AtMost ?? _draft.EqualTo) is YamlScalar scalar
        && Amount.TryParse(scalar.Value, out var amount, out _) && measure.FitsWith(amount.Dimension, false)
            ? amount.Unit
            : null;

    private NumberExpression Compile(Bound.Number bound, ImmutableArray<QuantityPath> inputs, string name, string text, Unit? unit)
    {
        if (bound.Bare is { } path)
            return NumberExpression.OfQuantity(path);

        var kind = new QuantityKind
        {
            Name = name,
            Title = text,
            Unit = Binder.UnitOf(bound.Dimension, unit),
            Scale = bound.Scale,
            Formula = bound.Constant is null ? text : "",
            Symbols = [.. inputs.Select(p => p.Text)],
            Source = name == "limit" ? _draft.Source.Limit : _draft.Source.Method,
            Certainty = _draft.Source.Certainty,
        };
        return bound.Constant is { } value
            ? NumberExpression.OfConstant(Quantity.Leaf(kind, new Origin.Declared(_draft.Span, text), Extent.Exactly(value), 0))
            : NumberExpression.OfFormula(kind, bound.Dimension, bound.IsLoose, inputs, bound.Formula);
    }

    private Limit? Limit(YamlNode? node, Bound.Number measure, Unit unit, int depth)
    {
        switch (node)
        {
            case null:
                return null;
            case YamlMap map:
                return Table(map, depth, branch => Limit(branch, measure, unit, depth + 1)) is { } table ? new Limit.ByCategory(table) : null;
            case YamlScalar { IsNull: false } scalar:
                return SimpleLimit(scalar, measure, unit);
            default:
                Report(RuleDiagnostics.Error(
                    RuleCodes.NotAnExpression, node.Span, "A limit is an amount, an expression or a table, but this is none.",
                    "Write `12 %`, `0.15 * module` or `{by: …}`."));
                return null;
        }
    }

    private Limit.Simple? SimpleLimit(YamlScalar scalar, Bound.Number measure, Unit unit)
    {
        var scope = new List<QuantityPath>();
        switch (Binder.Bind(_kind, new(scalar), scope, _report))
        {
            case Bound.Number number when measure.FitsWith(number):
                return new Limit.Simple(Compile(number, [.. scope], "limit", scalar.Value, number.Unit ?? unit), scalar);
            case Bound.Number number:
                Report(RuleDiagnostics.Dimension(scalar.Span, "The limit compares", measure.Dimension, number.Dimension));
                return null;
            case { } other:
                Report(RuleDiagnostics.Error(
                    RuleCodes.KindMismatch, scalar.Span,
                    $"The measure is a number, but the limit is a {Binder.Word(other.ValueKind)}."));
                return null;
            default:
                return null;
        }
    }

    private RuleProgram? OfText(Bound.Text measure)
    {
        if (measure.Path is not { } path)
        {
            Report(RuleDiagnostics.Error(
                RuleCodes.NotAnExpression, _draft.Measure.Span, "The measure names no quantity.",
                "Measure something of the subject."));
            return null;
        }

        RefuseBounds("a text");
        return new() { Draft = _draft, Measure = new Measure.Named(path), Demand = Demand(_draft.EqualTo ?? _draft.OneOf, ValueKind.Text, 0) };
    }

    private RuleProgram? OfTruth(Bound.Truth measure)
    {
        RefuseBounds("true or false");
        if (_draft.OneOf is { } oneOf)
            Report(RuleDiagnostics.Error(
                RuleCodes.KindMismatch, oneOf.Span, "`one_of` is for texts, but the measure is true or false.",
                "Use `equals: true` or `equals: false`."));
        var demand = Demand(_draft.EqualTo, ValueKind.Truth, 0);
        if (measure.Condition is Condition.Named named)
            return new() { Draft = _draft, Measure = new Measure.Named(named.Path), Demand = demand };

        var paths = new List<QuantityPath>();
        measure.Condition.Collect(paths);
        if (paths.Count == 0)
            Report(RuleDiagnostics.Error(
                RuleCodes.NotAnExpression, _draft.Measure.Span, "The measure names no quantity.",
                "Measure something of the subject."));
        var kind = new QuantityKind
        {
            Name = "measured",
            Title = _draft.Measure.Value,
            ValueKind = ValueKind.Truth,
            Formula = _draft.Measure.Value,
            Symbols = [.. paths.Select(p => p.Text)],
            Source = _draft.Source.Method,
            Certainty = _draft.Source.Certainty,
        };
        var demanded = demand is not Demand.Words { Permitted: ["false"] };
        return new() { Draft = _draft, Measure = new Measure.Truth(kind, measure.Condition, [.. paths], demanded), Demand = demand };
    }

    private void RefuseBounds(string what)
    {
        if ((_draft.AtLeast ?? _draft.AtMost) is { } bound)
            Report(RuleDiagnostics.Error(
                RuleCodes.KindMismatch, bound.Span, $"The measure is {what}, which has no least or greatest value.",
                "Use `equals` or `one_of`."));
    }

    private Demand? Demand(YamlNode? node, ValueKind kind, int depth)
    {
        switch (node)
        {
            case null:
                return null;
            case YamlMap map:
                return Table(map, depth, branch => Demand(branch, kind, depth + 1)) is { } table ? new Demand.ByCategory(table) : null;
            case YamlList list when kind == ValueKind.Text && list.Items.Length > 0 && list.Items.All(i => i is YamlScalar { IsNull: false }):
                return new Demand.Words([.. list.Items.Select(i => ((YamlScalar)i).Value)]);
            case YamlScalar { IsNull: false } scalar when kind == ValueKind.Truth && !scalar.IsQuoted && scalar.Value is "true" or "false":
                return new Demand.Words(((YamlScalar)node).Value == "true" ? Limits.Demand.True : Limits.Demand.False);
            case YamlScalar { IsNull: false } scalar when kind == ValueKind.Text && Word(scalar) is { } word:
                return new Demand.Words([word]);
            case YamlScalar { IsNull: false } scalar when Paths.TryFind(_kind, scalar.Value) is { } path && path.Kind.ValueKind == kind:
                return new Demand.SameAs(path);
            case YamlScalar { IsNull: false } scalar when kind == ValueKind.Text && Paths.TryFind(_kind, scalar.Value) is null:
                return new Demand.Words([scalar.Value]);
            default:
                Report(RuleDiagnostics.Error(
                    RuleCodes.KindMismatch, node.Span, kind == ValueKind.Text ? "The measure is a text, but no text stands here." : "The measure is true or false, but neither stands here.",
                    kind == ValueKind.Text ? "Write one of its words, or a list of them." : "Write `true` or `false`, without quotes."));
                return null;
        }
    }

    /// <summary>A text in quotes, of YAML or of its own, is a word and never the name of a quantity.</summary>
    private static string? Word(YamlScalar scalar) =>
        scalar.Value is ['\'', .. var word, '\''] ? word : scalar.IsQuoted ? scalar.Value : null;

    private Table<T>? Table<T>(YamlMap map, int depth, Func<YamlNode, T?> branchOf)
        where T : class
    {
        if (depth >= DeepestTable)
        {
            Report(RuleDiagnostics.Error(
                RuleCodes.TableTooDeep, map.Span, $"Tables are nested deeper than {DeepestTable} levels.",
                "Split the rule by a `when`."));
            return null;
        }

        QuantityPath? by = null;
        T? otherwise = null;
        var branches = new Dictionary<string, T>(StringComparer.Ordinal);
        if (map.Find("by") is YamlScalar { IsNull: false } name)
        {
            by = Paths.Find(_kind, name.Value, name.Span, _report);
            if (by?.Kind.ValueKind == ValueKind.Number)
            {
                Report(RuleDiagnostics.Error(
                    RuleCodes.MalformedTable, name.Span,
                    $"A table goes by a text or a truth value, but `{name.Value}` is a number.",
                    "Use an expression, or split the rule by a `when`."));
                by = null;
            }
        }
        else
        {
            Report(RuleDiagnostics.Error(
                RuleCodes.MalformedTable, map.Span, "The table does not say by which quantity it goes.",
                "Add `by: …`: the name of a text quantity."));
        }

        foreach (var (key, value) in map.Entries)
        {
            if (key.Value == "by")
                continue;
            var branch = branchOf(value);
            if (branch is null)
                continue;
            if (key.Value == "default")
                otherwise = branch;
            else if (by?.Kind.ValueKind == ValueKind.Truth && key.Value is not ("true" or "false"))
                Report(RuleDiagnostics.Error(
                    RuleCodes.MalformedTable, key.Span, $"`{by.Text}` is true or false, never `{RuleDiagnostics.Short(key.Value)}`."));
            else
                branches[key.Value] = branch;
        }

        if (branches.Count == 0 && !_failed)
            Report(RuleDiagnostics.Error(
                RuleCodes.MalformedTable, map.Span, "The table has no rows.", "Add a row for each category: `NBR: 12 %`."));
        return by is null ? null : new(by, branches, otherwise);
    }

    private void Report(Diagnostic diagnostic)
    {
        _failed |= diagnostic.Severity == Severity.Error;
        _diagnostics.Add(diagnostic);
    }
}
