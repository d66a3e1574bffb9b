using Pawl.Analysis.Core;

namespace Pawl.Rules;

/// <summary>Where a rule's number comes from, the method apart from the limit.</summary>
/// <param name="Method">How the value is computed: a standard and its part, "closed form".</param>
/// <param name="Limit">Where the limit comes from: a standard, "common practice, no source", "the spec".</param>
/// <param name="Certainty">How sure the limit is.</param>
public sealed record RuleSource(string Method, string Limit, Certainty Certainty);
