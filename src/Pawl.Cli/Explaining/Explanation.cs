namespace Pawl.Cli.Explaining;

/// <summary>What there is to say of one name.</summary>
/// <param name="Kind">rule, quantity, subject, key, size, steel or diagnostic.</param>
/// <param name="Name">As rules and reports write it.</param>
/// <param name="Title">For people.</param>
/// <param name="Facts">Label and text, in the order of reading.</param>
internal sealed record Explanation(string Kind, string Name, string Title, ImmutableArray<Fact> Facts);

/// <summary>One thing to know.</summary>
/// <param name="Label">In snake case, as JSON names it.</param>
/// <param name="Text">A sentence or a value.</param>
internal readonly record struct Fact(string Label, string Text);
