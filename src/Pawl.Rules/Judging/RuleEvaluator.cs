using Pawl.Analysis.Core;
using Pawl.Rules.Expressions;

namespace Pawl.Rules.Judging;

/// <summary>Puts one rule to one subject.</summary>
internal static class RuleEvaluator
{
    private static readonly ImmutableArray<string> NoFiniteMargin = ["the margin has no finite value over the tolerances"];

    public static Finding Put(Rule rule, Subject subject)
    {
        var program = rule.Program ?? throw new ArgumentException($"The rule {rule.Id} was not read from a pack.", nameof(rule));
        if (program.When is not null)
        {
            switch (program.When.Of(subject))
            {
                case Verdict.No:
                    return Plain(rule, subject, Outcome.NotApplicable, null, program.WhenDenied);
                case Verdict.Absent:
                    return Plain(rule, subject, Outcome.NotApplicable, null, AbsentIn(program, subject));
                case Verdict.Unknown:
                    return Plain(rule, subject, Outcome.NotEvaluated, program.Measure.Of(subject, out _), UnknownIn(program, subject));
            }
        }

        if (program.Measure.Of(subject, out var absence) is not { } measured)
            return Plain(rule, subject, Outcome.NotApplicable, null, absence);
        return program.Demand is not null ? Words(rule, program, subject, measured) : Number(rule, program, subject, measured);
    }

    private static Finding Number(Rule rule, RuleProgram program, Subject subject, Quantity measured)
    {
        ImmutableArray<string> absence = [];
        var least = program.AtLeast?.Of(subject, out absence);
        if (program.AtLeast is not null && least is null)
            return Plain(rule, subject, Outcome.NotApplicable, measured, absence);
        var most = program.IsEqual ? least : program.AtMost?.Of(subject, out absence);
        if (program.AtMost is not null && most is null)
            return Plain(rule, subject, Outcome.NotApplicable, measured, absence);

        Margin? margin = null;
        ImmutableArray<string> reasons = [];
        if (!measured.IsEvaluated || least is { IsEvaluated: false } || most is { IsEvaluated: false })
            reasons = ReasonsOf(measured, least, program.IsEqual ? null : most);
        else if (MarginOf(program, measured, least, most) is not { } found || !double.IsFinite(found.Share))
            reasons = NoFiniteMargin;
        else
            margin = found;

        if (margin is { Share: < 0 } && rule.Plausibility)
            reasons = LikelySlip.Of(measured, least, most);

        return new()
        {
            Rule = rule,
            Subject = subject,
            Outcome = margin switch { null => Outcome.NotEvaluated, { Share: < 0 } => Outcome.Fails, _ => Outcome.Conforms },
            Measured = measured,
            AtLeast = least,
            AtMost = most,
            Margin = margin?.Share,
            Worst = margin?.Worst,
            Distance = margin?.Distance,
            Reasons = reasons,
            Span = Derivation.NearestDeclared(measured, subject.Span),
        };
    }

    /// <summary>The lesser of the margins to both limits; null when some corner of the tolerances has none.</summary>
    private static Margin? MarginOf(RuleProgram program, Quantity measured, Quantity? least, Quantity? most)
    {
        var scale = measured.Kind.Scale;
        if (program.IsEqual)
            return Margins.Equal(measured, least!, scale);
        if (least is null || most is null)
            return least is not null ? Margins.Above(measured, least, scale) : Margins.Below(measured, most!, scale);
        return Margins.Above(measured, least, scale) is { } above && Margins.Below(measured, most, scale) is { } below
            ? below.Share < above.Share ? below : above
            : null;
    }

    private static Finding Words(Rule rule, RuleProgram program, Subject subject, Quantity measured)
    {
        var words = program.Demand!.Of(subject, out var absence, out var unevaluated);
        if (words.IsDefault && unevaluated is null)
            return Plain(rule, subject, Outcome.NotApplicable, measured, absence);
        if (words.IsDefault || !measured.IsEvaluated)
            return Plain(rule, subject, Outcome.NotEvaluated, measured, ReasonsOf(measured, unevaluated, null));

        var word = measured.Kind.ValueKind == ValueKind.Text ? measured.Text! : measured.Truth ? "true" : "false";
        return new()
        {
            Rule = rule,
            Subject = subject,
            Outcome = words.Contains(word) ? Outcome.Conforms : Outcome.Fails,
            Measured = measured,
            OneOf = words,
            Span = Derivation.NearestDeclared(measured, subject.Span),
        };
    }

    private static Finding Plain(Rule rule, Subject subject, Outcome outcome, Quantity? measured, ImmutableArray<string> reasons) => new()
    {
        Rule = rule,
        Subject = subject,
        Outcome = outcome,
        Measured = measured,
        Reasons = reasons,
        Span = Derivation.NearestDeclared(measured, subject.Span),
    };

    private static ImmutableArray<string> ReasonsOf(Quantity measured, Quantity? first, Quantity? second)
    {
        if (first is null && second is null)
            return measured.Reasons;
        var all = ImmutableArray.CreateBuilder<Quantity>(3);
        all.Add(measured);
        if (first is not null)
            all.Add(first);
        if (second is not null)
            all.Add(second);
        return Quantity.MissingReasons(all.DrainToImmutable());
    }

    private static ImmutableArray<string> AbsentIn(RuleProgram program, Subject subject)
    {
        foreach (var path in program.WhenPaths)
        {
            if (path.Find(subject) is null)
                return path.Absence;
        }

        return program.WhenDenied;
    }

    private static ImmutableArray<string> UnknownIn(RuleProgram program, Subject subject)
    {
        var found = ImmutableArray.CreateBuilder<Quantity>(program.WhenPaths.Length);
        foreach (var path in program.WhenPaths)
        {
            if (path.Find(subject) is { } quantity)
                found.Add(quantity);
        }

        return Quantity.MissingReasons(found.DrainToImmutable()) is { IsEmpty: false } reasons ? reasons : ["the condition has no finite value"];
    }
}
