using Pawl.Rules.Expressions;
using Pawl.Rules.Limits;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Rules.Packs;

/// <summary>Finds limits that no value can break and conditions that no subject meets, as far as constants and words tell.</summary>
internal sealed class IdleCheck(Rule rule, RuleSyntax draft, Action<Diagnostic> report)
{
    /// <summary>Beyond any quantity of a gearbox in coherent units.</summary>
    private const double Endless = 1e18;

    private const string LimitHint = "Give a limit that a bad design breaks, or leave it out.";

    public static void Check(Rule rule, RuleSyntax draft, Action<Diagnostic> report)
    {
        var check = new IdleCheck(rule, draft, report);
        check.OfCondition();
        if (rule.Program!.Demand is { } demand)
            check.OfDemand(demand);
        else
            check.OfBounds();
    }

    private void OfCondition()
    {
        if (draft.When is not { } when || ExpressionParser.Parse(when.Value, out _) is not { } syntax)
            return;
        Words(syntax, new(when));
        if (CaseTable.CanBe(rule.AppliesTo, syntax, true) == false)
        {
            report(RuleDiagnostics.Error(
                RuleCodes.NeverApplies, when.Span, $"The condition `{RuleDiagnostics.Short(when.Value)}` of `{rule.Id}` holds for no {rule.AppliesTo.Name}, so the rule judges nothing.",
                "Correct the condition, or remove the rule."));
        }
    }

    /// <summary>Words that a text quantity is compared with and never has.</summary>
    private void Words(Syntax syntax, ExpressionSource source)
    {
        switch (syntax)
        {
            case Syntax.Unary unary:
                Words(unary.Operand, source);
                break;
            case Syntax.Binary { Left: Syntax.Name name, Right: Syntax.Text word }:
                Word(name.Path, word.Value, source.SpanOf(word.Start, word.End));
                break;
            case Syntax.Binary { Left: Syntax.Text word, Right: Syntax.Name name }:
                Word(name.Path, word.Value, source.SpanOf(word.Start, word.End));
                break;
            case Syntax.Binary binary:
                Words(binary.Left, source);
                Words(binary.Right, source);
                break;
            case Syntax.In { Operand: Syntax.Name name } within:
                foreach (var word in within.Words.OfType<Syntax.Text>())
                    Word(name.Path, word.Value, source.SpanOf(word.Start, word.End));
                break;
        }
    }

    private void Word(string path, string word, SourceSpan span)
    {
        if (Paths.TryFind(rule.AppliesTo, path)?.Kind is { Words: { IsEmpty: false } words } && !words.Contains(word))
            report(RuleDiagnostics.UnknownWord(span, path, word, words));
    }

    private void OfBounds()
    {
        var measure = ExpressionParser.Parse(rule.Measure, out _)!;
        var range = Reach.Of(rule.AppliesTo, measure);
        var text = SyntaxText.Of(measure);
        var program = rule.Program!;
        var total = 0;
        List<(string Key, YamlScalar Limit, string Why)> idle = [];
        if (!program.IsEqual)
        {
            Walk(program.AtLeast, draft.AtLeast, "at_least", limit =>
                limit.Constant is { } least && !(least > -Endless) ? "no value is that small"
                : limit.Constant is { } low && range.Min >= low ? $"`{rule.Measure}` is never below {Shown(limit, range.Min)}"
                : Against(limit));
            Walk(program.AtMost, draft.AtMost, "at_most", limit =>
                limit.Constant is { } most && !(most < Endless) ? "no value is that large"
                : limit.Constant is { } high && range.Max <= high ? $"`{rule.Measure}` is never above {Shown(limit, range.Max)}"
                : Against(limit));
        }
        else
        {
            Walk(program.AtLeast, draft.EqualTo, "equals", Against);
        }

        foreach (var (key, limit, why) in idle)
            NeverFails(limit.Span, $"`{key}: {RuleDiagnostics.Short(limit.Value)}`", why, idle.Count == total);

        string? Against(Limit.Simple limit) =>
            SyntaxText.Of(limit.Written.Value) == text ? "the measure is compared with itself" : null;

        void Walk(Limit? limit, YamlNode? node, string key, Func<Limit.Simple, string?> whyIdle)
        {
            switch (limit)
            {
                case Limit.Simple simple:
                    total++;
                    if (whyIdle(simple) is { } why)
                        idle.Add((key, simple.Written, why));
                    break;
                case Limit.ByCategory { Table: var table }:
                    Categories(table, node);
                    foreach (var branch in table.Branches.Values)
                        Walk(branch, null, key, whyIdle);
                    Walk(table.Otherwise, null, key, whyIdle);
                    break;
            }
        }
    }

    private static string Shown(Limit.Simple limit, double bound) =>
        bound == limit.Constant ? limit.Written.Value : Quantities.Formatting.Significant(bound, 6);

    /// <summary>Rows for categories that there are not.</summary>
    private void Categories<T>(Table<T> table, YamlNode? node)
        where T : class
    {
        if (node is not YamlMap map || table.By.Kind.Words.IsEmpty)
            return;
        foreach (var (key, _) in map.Entries)
        {
            if (key.Value is not ("by" or "default"))
                Word(table.By.Text, key.Value, key.Span);
        }
    }

    private void OfDemand(Demand demand)
    {
        var (node, key) = draft.OneOf is { } oneOf ? (oneOf, "one_of") : (draft.EqualTo!, "equals");
        var measure = ExpressionParser.Parse(rule.Measure, out _)!;
        var total = 0;
        List<string> idle = [];
        Walk(demand, node);
        if (idle.Count > 0)
            NeverFails(node.Span, $"The limit `{key}`", idle[0], idle.Count == total);

        void Walk(Demand? each, YamlNode? at)
        {
            switch (each)
            {
                case Demand.ByCategory { Table: var table }:
                    Categories(table, at);
                    foreach (var branch in table.Branches.Values)
                        Walk(branch, null);
                    Walk(table.Otherwise, null);
                    break;
                case Demand.Words words:
                    total++;
                    if (WhyIdle(words, at) is { } why)
                        idle.Add(why);
                    break;
                case Demand.SameAs same:
                    total++;
                    if (same.Path.Text == rule.Measure)
                        idle.Add("the measure is compared with itself");
                    break;
            }
        }

        string? WhyIdle(Demand.Words words, YamlNode? at)
        {
            if (rule.Program!.Measure.Kind.ValueKind == Analysis.Core.ValueKind.Truth)
                return CaseTable.CanBe(rule.AppliesTo, measure, words.Permitted is not ["true"]) == false ? $"`{rule.Measure}` is never anything else" : null;
            if (rule.Program.Measure.Kind.Words is not { IsEmpty: false } known)
                return null;
            foreach (var item in (at as YamlList)?.Items ?? [])
            {
                if (item is YamlScalar scalar && !known.Contains(scalar.Value))
                    report(RuleDiagnostics.UnknownWord(scalar.Span, rule.Measure, scalar.Value, known));
            }

            return known.All(word => words.Permitted.Contains(word)) ? $"`{rule.Measure}` has no other word than {string.Join(", ", known)}" : null;
        }
    }

    /// <summary>An error when nothing is left that can fail; a warning when something is.</summary>
    private void NeverFails(SourceSpan span, string what, string why, bool isAll) => report(new(
        RuleCodes.NeverFails, isAll ? Severity.Error : Severity.Warning, span, $"{what} of `{rule.Id}` never fails: {why}.", LimitHint));
}
