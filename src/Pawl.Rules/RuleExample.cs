using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>A subject in a few numbers, and what the rule says of it. Worked by hand; the tests put every one to its rule.</summary>
/// <param name="Given">Quantities by path, as written: <c>tip_clearance</c>, <c>gear.module</c>.</param>
/// <param name="Outcome">Conforms, fails, or not applicable.</param>
/// <param name="Margin">The margin, to three significant digits, where the rule has one.</param>
/// <param name="Span">Where the pack gives it.</param>
public sealed record RuleExample(
    ImmutableArray<KeyValuePair<string, Stated<string>>> Given, Outcome Outcome, double? Margin, SourceSpan Span);
