using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Comparing;

/// <summary>A comparison for people and for editors that read <c>file:line:column: severity rule: message</c>.</summary>
/// <param name="verbose">Whether every effect and every quantity is listed, or the few that matter most.</param>
/// <param name="colour">Whether to colour it with escape sequences.</param>
public sealed class ComparisonText(bool verbose = false, bool colour = false)
{
    private const int MostMargins = 5;
    private const int MostQuantities = 5;
    private readonly Paint _paint = new(colour);

    /// <summary>Variants first, a line each; then each change with what it does; a summary line last.</summary>
    public void Write(ComparisonRecord comparison, TextWriter to)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(to);
        var lines = new Lines(to);
        lines.Write($"{Safe(ComparisonWords.Side(comparison.Base))} → {Safe(ComparisonWords.Side(comparison.Head))}");
        foreach (var variant in comparison.Variants)
            lines.Write($"{Safe(variant.HeadFile ?? variant.BaseFile!)}: {Safe(variant.Variant)} {Painted(variant)}; {Counts(comparison, variant)}");
        foreach (var (change, effects) in ComparisonWords.ByCause(comparison))
            Write(comparison, change, effects, lines);
        foreach (var rule in comparison.Rules)
            lines.Write($"{Safe(rule.Place.ToString())}: {_paint.Yellow("rule")} {Safe(rule.Rule)} {Safe(ComparisonWords.Rule(rule))}");
        foreach (var concession in comparison.Concessions)
            lines.Write($"{Safe(concession.Place.ToString())}: {_paint.Yellow("concession")} {Safe(concession.Rule)} on {Safe(concession.Subject)}, {For(concession.Variants)}, {Safe(ComparisonWords.Concession(concession))}");
        foreach (var subject in comparison.Subjects)
            lines.Write($"{Safe(subject.Place.ToString())}: {(subject.Presence == PresenceWord.Added ? "added" : "removed")} {Safe(subject.Subject)}, {For(subject.Variants)}");
        Quantities(comparison, lines);
        Totals(comparison, lines);
    }

    private void Write(ComparisonRecord comparison, ValueChange? change, List<Effect> effects, Lines lines)
    {
        if (change is null)
            lines.Write("not traced to one declared value:");
        else
            lines.Write($"{Safe(ComparisonWords.Place(change).ToString())}: {_paint.Blue("changed")} {Safe(change.Path)}: {Safe(ComparisonWords.Values(change))}, {For(change.Variants)}{Was(change)}");

        var (shown, margins, hidden) = (0, 0, new List<EffectKind>());
        foreach (var effect in effects)
        {
            var isGrave = effect.Kind < EffectKind.MarginLost;
            if (verbose || isGrave || (effect.Kind == EffectKind.MarginLost && margins < MostMargins))
            {
                margins += effect.Kind == EffectKind.MarginLost ? 1 : 0;
                shown++;
                Write(comparison, change, effect, lines);
            }
            else
            {
                hidden.Add(effect.Kind);
            }
        }

        if (hidden.Count > 0)
            lines.Write($"  {(shown > 0 ? "and " : "")}{ComparisonWords.Counts(hidden)} (--verbose lists them)");
    }

    private void Write(ComparisonRecord comparison, ValueChange? change, Effect effect, Lines lines)
    {
        var place = change is null ? effect.Place : ComparisonWords.Place(change);
        var severity = Labels.Of(effect.Severity);
        var kind = $"{ComparisonWords.Symbol(effect.Kind)} {ComparisonWords.Of(effect.Kind)}";
        var painted = effect.Kind switch
        {
            EffectKind.NewlyFails => effect.Severity == SeverityWord.Error ? _paint.Red(kind) : _paint.Yellow(kind),
            EffectKind.NoLongerEvaluated or EffectKind.NoLongerJudged or EffectKind.NewlyOpen => _paint.Blue(kind),
            EffectKind.NewlyConceded or EffectKind.MarginLost => _paint.Yellow(kind),
            _ => _paint.Green(kind),
        };
        lines.Write($"  {Safe(place.ToString())}: {severity} {Safe(effect.Rule)}: {painted}: {Safe(effect.Subject)} {Safe(effect.Title)}: {Safe(ComparisonWords.Outcomes(effect, comparison.Variants.Length))}");
        if (effect.Place != place)
            lines.Write($"    governed at {Safe(effect.Place.ToString())}");
        if (effect.Causes.Length > 1)
            lines.Write($"    with {Safe(string.Join(", ", effect.Causes.Skip(1).Select(c => comparison.Changes[c].Path)))}");
    }

    private void Quantities(ComparisonRecord comparison, Lines lines)
    {
        if (comparison.Quantities.IsEmpty)
            return;
        lines.Write($"{Phrase.Count(comparison.Quantities.Length, "quantity").Replace("quantitys", "quantities", StringComparison.Ordinal)} moved{(verbose || comparison.Quantities.Length <= MostQuantities ? ":" : ", most of all:")}");
        foreach (var moved in comparison.Quantities.Take(verbose ? int.MaxValue : MostQuantities))
        {
            lines.Write($"  {Safe(moved.Quantity)} {Safe(moved.Title)}: "
                + string.Join("; ", moved.Variants.Select(v => $"{Safe(ComparisonWords.Values(v))}{(comparison.Variants.Length == 1 ? "" : $" ({Safe(v.Variant)})")}")));
        }
    }

    private void Totals(ComparisonRecord comparison, Lines lines)
    {
        foreach (var breach in comparison.Breaches)
            lines.Write($"{_paint.Red("exceeds")}: {Safe(breach.Statement)}");
        lines.Write(Summary(comparison));
    }

    /// <summary>The comparison in one line.</summary>
    internal static string Summary(ComparisonRecord comparison)
    {
        var kinds = comparison.Effects.SelectMany(static e => e.Variants.Select(_ => e.Kind));
        return $"{Phrase.Count(comparison.Variants.Length, "spec")} compared, {Phrase.Whole(comparison.Unchanged)} unchanged, "
            + $"{Phrase.Count(comparison.Changes.Length, "declared value")} changed: {ComparisonWords.Counts(kinds)}";
    }

    internal static string Counts(ComparisonRecord comparison, VariantChange variant) => variant.Presence == PresenceWord.Removed
        ? "its checks are no longer made"
        : ComparisonWords.Counts(comparison.Effects.Where(e => e.Variants.Any(v => v.Variant == variant.Variant)).Select(static e => e.Kind));

    private string Painted(VariantChange variant)
    {
        var verdicts = ComparisonWords.Verdicts(variant);
        return variant switch
        {
            { IsWorse: true } or { HeadVerdict: VerdictWord.DoesNotConform } => _paint.Red(verdicts),
            { HeadVerdict: VerdictWord.Conforms } => _paint.Green(verdicts),
            { HeadVerdict: VerdictWord.ConformsUnderConcession } => _paint.Yellow(verdicts),
            _ => _paint.Blue(verdicts),
        };
    }

    private static string Was(ValueChange change) => change is { Base: { } was, Head: { } now } && was.Place.ToString() != now.Place.ToString()
        ? $" (was at {Safe(was.Place.ToString())})"
        : "";

    private static string For(ImmutableArray<string> variants) => "for " + Safe(string.Join(", ", variants));

    private static string Safe(string text) => SafeText.Line(text);
}
