using Pawl.Analysis.Core;
using Pawl.Rules.Judging;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>What came of putting one rule to one subject.</summary>
public enum Outcome
{
    Conforms,
    Fails,
    UnderConcession,
    NotEvaluated,
    NotApplicable,
}

/// <summary>Which finding is meant.</summary>
/// <param name="Rule">Id of its rule.</param>
/// <param name="Subject">Path of its subject.</param>
public sealed record FindingName(string Rule, string Subject);

/// <summary>One rule put to one subject.</summary>
public sealed record Finding
{
    private ImmutableArray<Quantity> _governing;

    public required Rule Rule { get; init; }

    public required Subject Subject { get; init; }

    public required Outcome Outcome { get; init; }

    /// <summary>The measured quantity with its derivation; null when it could not be formed or does not apply.</summary>
    public Quantity? Measured { get; init; }

    /// <summary>The limits as quantities with their derivation; a limit that is absent is null.</summary>
    public Quantity? AtLeast { get; init; }

    public Quantity? AtMost { get; init; }

    /// <summary>Words permitted or text demanded, for text and truth measures.</summary>
    public ImmutableArray<string> OneOf { get; init; } = [];

    /// <summary>Signed, dimensionless; at the worst case; null when there is none. 0 is on the limit, negative fails.</summary>
    public double? Margin { get; init; }

    /// <summary>The end of the measured value that the margin is taken at, coherent; null without tolerances, and where no one end governs.</summary>
    public double? Worst { get; init; }

    /// <summary>The margin as a signed distance, coherent, where the limit is zero: a share of it says nothing.</summary>
    public double? Distance { get; init; }

    /// <summary>Why it is not evaluated or not applicable; for a failed concession, what was meant perhaps.</summary>
    public ImmutableArray<string> Reasons { get; init; } = [];

    /// <summary>Neighbours of what fails that would do; null when the rule names none or there are none.</summary>
    public Quantity? Suggestion { get; init; }

    /// <summary>The failure that this one follows from; null for a cause.</summary>
    public FindingName? FollowsFrom { get; init; }

    /// <summary>The concession that covers it.</summary>
    public ConcessionSpec? Concession { get; init; }

    /// <summary>Its entry in the baseline; null when it is not listed, and where nothing fails.</summary>
    public Known? Known { get; init; }

    /// <summary>The place in the spec that governs the value.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>The declared inputs beneath the measured value, nearest first, for related locations. Found when asked for.</summary>
    public ImmutableArray<Quantity> Governing
    {
        get => _governing.IsDefault ? _governing = Derivation.DeclaredBeneath(Measured) : _governing;
        init => _governing = value;
    }
}
