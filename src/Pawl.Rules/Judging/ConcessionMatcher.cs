using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Rules.Judging;

/// <summary>A concession as a subject, and what was perhaps meant by it.</summary>
internal sealed record ConcessionCase(Subject Subject, ImmutableArray<string> Hints);

/// <summary>Puts concessions to the findings that they name, and says of each whether it is true, needed and holds.</summary>
internal sealed class ConcessionMatcher(EvaluationPlan plan, DateOnly asOf)
{
    private readonly HashSet<string> _paths = new(StringComparer.Ordinal);

    public static ImmutableArray<Subject> SubjectsOf(ImmutableArray<ConcessionCase> cases)
    {
        if (cases.IsEmpty)
            return [];
        var subjects = ImmutableArray.CreateBuilder<Subject>(cases.Length);
        foreach (var item in cases)
            subjects.Add(item.Subject);
        return subjects.MoveToImmutable();
    }

    public ImmutableArray<ConcessionCase> Apply(ImmutableArray<ConcessionSpec> concessions)
    {
        var cases = ImmutableArray.CreateBuilder<ConcessionCase>(concessions.Length);
        foreach (var concession in concessions)
            cases.Add(Apply(concession));
        return cases.MoveToImmutable();
    }

    private ConcessionCase Apply(ConcessionSpec concession)
    {
        var subject = new Subject(ConcessionQuantities.Kind, PathOf(concession), concession.Span);
        var ruleText = subject.Add(Stated(ConcessionQuantities.Rule, concession.Rule, concession.Rule.Value));
        var subjectText = subject.Add(Stated(ConcessionQuantities.Subject, concession.Subject, concession.Subject.Value));
        var expires = subject.Add(Stated(ConcessionQuantities.Expires, concession.Expires, concession.Expires.Text));
        var daysLeft = concession.Expires.Value.DayNumber - asOf.DayNumber;
        var days = subject.Add(Quantity.Compute(
            ConcessionQuantities.DaysLeft,
            [Quantity.Leaf(ConcessionQuantities.DaysLeft, expires.Origin, Extent.Exactly(daysLeft * 86_400d), 0)], x => x[0]));

        var rule = IndexOfRule(concession.Rule.Value);
        subject.Add(Quantity.OfTruth(ConcessionQuantities.KnownRule, Origin.Computed.Instance, rule >= 0, [ruleText]));
        if (rule < 0)
            return new(subject, Hint(concession.Rule.Value, plan.Rules.Select(r => r.Id)));

        var place = IndexOfSubject(rule, concession.Subject.Value);
        var concedable = plan.Rules[rule].Concedable && !EvaluationPlan.IsOnConcessions(plan.Rules[rule]);
        subject.Add(Quantity.OfTruth(ConcessionQuantities.Concedable, Origin.Computed.Instance, concedable, [ruleText]));
        subject.Add(Quantity.OfTruth(ConcessionQuantities.KnownSubject, Origin.Computed.Instance, place >= 0, [subjectText]));
        if (place < 0)
            return new(subject, Hint(concession.Subject.Value, plan.SubjectsOf(plan.Rules[rule].AppliesTo).Select(s => s.Path)));

        ref var finding = ref plan.At(rule, place);
        subject.Add(finding.Outcome == Outcome.NotEvaluated
            ? Quantity.NotEvaluated(ConcessionQuantities.Needed, [ruleText, subjectText], finding.Reasons)
            : Quantity.OfTruth(ConcessionQuantities.Needed, Origin.Computed.Instance, finding.Outcome == Outcome.Fails, [ruleText, subjectText]));
        var accepted = IsAccepted(subject, concession, finding, out var hints);

        if (finding.Outcome == Outcome.Fails && concedable && daysLeft >= 0 && accepted)
            finding = finding with { Outcome = Outcome.UnderConcession, Concession = concession };
        return new(subject, hints);
    }

    /// <summary>Whether the margin is no worse than the concession accepts; adds the quantities that show it.</summary>
    private static bool IsAccepted(Subject subject, ConcessionSpec concession, Finding finding, out ImmutableArray<string> hints)
    {
        hints = [];
        var worst = concession.WorstMargin;
        var limit = subject.Add(Quantity.Leaf(
            ConcessionQuantities.WorstMargin, new Origin.Declared(worst.Span, worst.Text), Extent.Exactly(worst.Value.Coherent), 0));
        if (finding.Outcome != Outcome.Fails)
            return false;

        // A word or a truth value is right or wrong as a whole.
        var margin = finding.Margin ?? -1;
        var excess = subject.Add(Quantity.Compute(ConcessionQuantities.MarginExcess, [limit], x => Margins.Snap(margin - x[0])));
        if (excess.IsEvaluated && excess.Value.Min >= 0)
            return true;
        if (finding.Margin is null)
            hints = [$"{finding.Rule.Id} has no margin: it is kept or broken as a whole, which a worst margin of -100 % accepts"];
        return false;
    }

    private int IndexOfRule(string id)
    {
        for (var i = 0; i < plan.Rules.Length; i++)
        {
            if (plan.Rules[i].Id == id)
                return i;
        }

        return -1;
    }

    private int IndexOfSubject(int rule, string path) =>
        plan.SubjectsOf(plan.Rules[rule].AppliesTo).FindIndex(s => s.Path == path);

    private string PathOf(ConcessionSpec concession)
    {
        var path = $"concessions.{concession.Rule.Value}@{concession.Subject.Value}";
        var unique = path;
        for (var i = 2; !_paths.Add(unique); i++)
            unique = string.Create(CultureInfo.InvariantCulture, $"{path}#{i}");
        return unique;
    }

    private static Quantity Stated<T>(QuantityKind kind, Stated<T> stated, string text) =>
        Quantity.OfText(kind, new Origin.Declared(stated.Span, stated.Text), text, []);

    private static ImmutableArray<string> Hint(string found, IEnumerable<string> known) =>
        Nearest.To(found, known) is { } nearest ? [$"did you mean `{nearest}`?"] : [];
}
