using Pawl.Analysis.Core;
using Pawl.Analysis.Seals;
using Pawl.Mechanics.Seals;
using Pawl.Rules;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Sizing;

/// <summary>A size put into its gland.</summary>
/// <param name="Size">The size; null for a ring of dimensions of its own.</param>
/// <param name="Spec">The ring with its gland as a spec states them; null where the gland has no room for the cord.</param>
/// <param name="Proposed">What of the gland nobody stated and the trade gives this cord.</param>
/// <param name="NoRoom">Why there is no gland; empty when there is one.</param>
/// <param name="IsDeclared">Whether it is the ring that the spec declares.</param>
internal sealed record Candidate(ORing? Size, ORingSpec? Spec, ImmutableArray<GlandLine> Proposed, string NoRoom = "", bool IsDeclared = false)
{
    public string Name => Size is null ? "own size" : $"AS568{Size.Dash}";

    /// <summary>A reason as it reads of the ring that was asked about: without the serial that tells candidates apart.</summary>
    public string Plainly(string reason)
    {
        var name = Spec!.Name.Value;
        return reason.Replace($"o_rings.{name}.", $"o_rings.{name[..name.LastIndexOf(' ')]}.", StringComparison.Ordinal);
    }
}

/// <summary>A size as the rules judge it.</summary>
internal sealed class JudgedSize
{
    private readonly ImmutableArray<Finding> _findings;
    private readonly Subject? _subject;
    private readonly HashSet<string> _alike;

    /// <param name="candidate">The size and its gland.</param>
    /// <param name="subject">The same, computed; null where there is no gland.</param>
    /// <param name="findings">Every rule put to it.</param>
    /// <param name="alike">Ids of rules that say the same of every size.</param>
    public JudgedSize(Candidate candidate, Subject? subject, ImmutableArray<Finding> findings, HashSet<string> alike)
    {
        (Candidate, _subject, _findings, _alike) = (candidate, subject, findings, alike);
        Worst = [.. findings.Where(f => f.Margin is not null && !alike.Contains(f.Rule.Id)).OrderBy(f => f.Margin)];
        Warnings = [.. findings.Where(f => f is { Outcome: Outcome.Fails, Rule.Severity: < Severity.Error } && !alike.Contains(f.Rule.Id))];
        (FailsBy, WhyNot) = Reason();
    }

    public Candidate Candidate { get; }

    /// <summary>Findings that have a margin and depend on the size, the worst first.</summary>
    public ImmutableArray<Finding> Worst { get; }

    /// <summary>Rules below error that fail and depend on the size.</summary>
    public ImmutableArray<Finding> Warnings { get; }

    /// <summary>The error rule that it breaks the most; null where there is another reason, or none.</summary>
    public Finding? FailsBy { get; }

    /// <summary>Why it does not fit; empty when it does.</summary>
    public string WhyNot { get; }

    public bool Fits => WhyNot.Length == 0;

    /// <summary>A quantity of the ring, evaluated; null where it has none.</summary>
    public Quantity? Find(QuantityKind kind) => _subject?.Find(kind) is { IsEvaluated: true } found ? found : null;

    /// <summary>Best first: the fewest warnings, then the worst margin, then the next worse, and so on.</summary>
    public static int Compare(JudgedSize a, JudgedSize b)
    {
        if (a.Fits != b.Fits)
            return a.Fits ? -1 : 1;
        if (a.Warnings.Length != b.Warnings.Length)
            return a.Warnings.Length.CompareTo(b.Warnings.Length);
        for (var i = 0; i < Math.Min(a.Worst.Length, b.Worst.Length); i++)
        {
            if (b.Worst[i].Margin!.Value.CompareTo(a.Worst[i].Margin!.Value) is not 0 and var order)
                return order;
        }

        return 0;
    }

    private (Finding? By, string Why) Reason()
    {
        if (Candidate.NoRoom.Length > 0)
            return (null, Candidate.NoRoom);
        if (_subject!.Find(ORings.Squeeze) is { IsEvaluated: false } squeeze)
            return (null, Candidate.Plainly(squeeze.Reasons[0]));
        var failing = _findings.Where(f => f is { Outcome: Outcome.Fails, Rule.Severity: Severity.Error }).OrderBy(f => f.Margin ?? double.NegativeInfinity).FirstOrDefault();
        if (failing is not null)
            return (failing, failing.Rule.Title);
        var waits = _findings.FirstOrDefault(f => f is { Outcome: Outcome.NotEvaluated, Rule.Severity: Severity.Error } && !_alike.Contains(f.Rule.Id));
        return (waits, waits is null ? "" : $"not evaluated: {string.Join("; ", waits.Reasons)}");
    }
}
