using Pawl.Quantities;
using Pawl.Rules;
using Pawl.Specs.Text;

namespace Pawl.Cli.Trials;

/// <summary>What keeps a value from doing.</summary>
/// <param name="Rule">The worst of the rules that fail; null where the spec cannot be read.</param>
/// <param name="Margin">Its margin; not a number without one.</param>
/// <param name="IsOpen">Whether it waits for an input instead.</param>
/// <param name="Others">Further rules that fail.</param>
/// <param name="Refusal">Why the spec cannot be read; null where it can.</param>
internal sealed record Blocked(TrialRule? Rule, double Margin, bool IsOpen, int Others, string? Refusal);

/// <summary>A range in which all rules hold that depend on a value.</summary>
/// <param name="From">Its least value that was tried and holds.</param>
/// <param name="To">Its greatest.</param>
/// <param name="Below">What fails just below; null where the search ended there.</param>
/// <param name="Above">What fails just above.</param>
/// <param name="Best">Where the least margin is the greatest of what was tried; null without margins.</param>
internal sealed record SolvedRange(double From, double To, Blocked? Below, Blocked? Above, (double At, double Margin)? Best);

/// <summary>Where a value may lie.</summary>
/// <param name="Depending">The rules that say different things over what was tried.</param>
/// <param name="Besides">Rules of severity error that fail at every value.</param>
/// <param name="Ranges">Where all that depend hold, upwards.</param>
/// <param name="Searched">What was searched.</param>
/// <param name="Best">Of what does not do, what does best.</param>
internal sealed record Solution(
    ImmutableArray<TrialRule> Depending, ImmutableArray<TrialRule> Besides, ImmutableArray<SolvedRange> Ranges, (double From, double To) Searched, (double At, Blocked Blocked) Best);

/// <summary>Reads trials: which rules depend on what is tried, and what keeps a trial from doing.</summary>
internal abstract class TrialReader(TrialBench bench, string? rule)
{
    /// <summary>Numbers of the rules that do not say the same in all trials.</summary>
    protected HashSet<int> Depending { get; private set; } = [];

    /// <summary>Of these, the rules whose margin moves: one that is on its limit come what may says nothing of the value.</summary>
    private HashSet<int> _moving = [];

    protected TrialBench Bench => bench;

    protected void Learn(IEnumerable<Trial?> trials)
    {
        Trial[] read = [.. trials.Where(static t => t is { IsRefused: false })!];
        var rules = bench.Rules;
        Depending = [.. Enumerable.Range(0, rules.Length).Where(i => (rule is null || rules[i].Rule == rule) && read.Select(t => t[i]).Distinct().Count() > 1)];
        _moving = [.. Depending.Where(i => read.Select(t => t[i]?.Margin ?? double.NaN).Distinct().Count() > 1)];
    }

    protected ImmutableArray<TrialRule> DependingRules() => [.. Depending.Select(i => bench.Rules[i]).OrderBy(static r => r.Rule, StringComparer.Ordinal).ThenBy(static r => r.Subject, StringComparer.Ordinal)];

    /// <summary>Rules of severity error that fail in the spec as it stands and do not depend on the value.</summary>
    protected ImmutableArray<TrialRule> Besides() =>
    [
        .. bench.Rules.Where((r, i) => rule is null && r.Severity == Severity.Error && !Depending.Contains(i) && bench.Stated[i] is { Outcome: Outcome.Fails })
            .OrderBy(static r => r.Rule, StringComparer.Ordinal).ThenBy(static r => r.Subject, StringComparer.Ordinal),
    ];

    /// <summary>Why a trial does not do; null when it does.</summary>
    protected Blocked? Why(Trial trial)
    {
        if (trial.IsRefused)
            return new(null, double.NaN, false, 0, trial.Refusals[0].Message);
        var rules = bench.Rules;
        (int Rule, TrialFinding Finding)? worst = null;
        var count = 0;
        foreach (var i in Depending.Order())
        {
            if ((rule is null && rules[i].Severity != Severity.Error) || trial[i] is not { Outcome: Outcome.Fails or Outcome.NotEvaluated } finding)
                continue;

            // What waited before is no worse for waiting still.
            if (finding.Outcome == Outcome.NotEvaluated && bench.Stated[i] is { Outcome: Outcome.NotEvaluated })
                continue;
            count++;
            if (worst is not { } so || Rank(finding) < Rank(so.Finding) || (Rank(finding).Equals(Rank(so.Finding)) && IsBefore(rules[i], rules[so.Rule])))
                worst = (i, finding);
        }

        return worst is { } w ? new(rules[w.Rule], w.Finding.Margin, w.Finding.Outcome == Outcome.NotEvaluated, count - 1, null) : null;
    }

    /// <summary>The least margin among the rules that depend on the value, and its rule.</summary>
    protected (double Margin, TrialRule? Rule) Least(Trial trial)
    {
        var rules = bench.Rules;
        (double Margin, TrialRule? Rule) least = (double.NaN, null);
        foreach (var i in _moving.Order())
        {
            if ((rule is null && rules[i].Severity != Severity.Error) || trial[i] is not { } finding || double.IsNaN(finding.Margin))
                continue;
            if (double.IsNaN(least.Margin) || finding.Margin < least.Margin)
                least = (finding.Margin, rules[i]);
        }

        return least;
    }

    private static double Rank(TrialFinding finding) => double.IsNaN(finding.Margin) ? double.NegativeInfinity : finding.Margin;

    private static bool IsBefore(TrialRule a, TrialRule b) => string.CompareOrdinal($"{a.Rule} {a.Subject}", $"{b.Rule} {b.Subject}") < 0;
}

/// <summary>Finds where a number of the spec may lie: tries it densely near what is stated and coarsely afar, then halves the steps at each border.</summary>
internal sealed class Solver(TrialBench bench, string key, StatedNumber pattern, string? rule) : TrialReader(bench, rule)
{
    /// <summary>Most values of one search.</summary>
    public const int MostValues = 10_000;

    private const int EvenSteps = 80;
    private const int Inside = 16;
    private const double Finest = 1e-4, Growth = 1.3;

    // A border is told to five figures or so; the value that is told was tried itself.
    private const double Sharpness = 1e-6;
    private const int Figures = 6;

    private readonly SortedDictionary<double, Trial> _tried = [];

    /// <summary>Searches from a value outwards: to half and double of it, or one to each side of a small bare number.</summary>
    public Solution Around(double value)
    {
        var reach = pattern.Unit.Dimension == Dimension.Ratio && pattern.Unit.Symbol.Length == 0 && Math.Abs(value) < 2 ? 1 : Math.Max(Math.Abs(value), Finest);
        var (from, to) = (value > 0 && reach >= value ? value / 2 : value - reach, value + reach);
        List<double> values = [value, from, to];
        for (var step = reach * Finest; step < reach; step *= Growth)
            values.AddRange([value - step, value + step]);
        return Solve([.. values.Where(v => v >= from && v <= to)], from, to);
    }

    /// <summary>Searches a range evenly.</summary>
    public Solution Within(double from, double to) =>
        Solve([.. Enumerable.Range(0, EvenSteps + 1).Select(i => from + ((to - from) * i / EvenSteps))], from, to);

    private Solution Solve(IEnumerable<double> values, double from, double to)
    {
        Try(values);
        Learn(_tried.Values);

        // Between two values that do there may be one that does not.
        for (var (at, tried) = (0, _tried.Keys.ToArray()); at + 1 < tried.Length; at++)
        {
            if (Holds(tried[at]) && Holds(tried[at + 1]))
                continue;
            Sharpen(tried[at], tried[at + 1]);
        }

        foreach (var range in Ranges().ToArray())
            Try(Enumerable.Range(1, Inside).Select(i => range.From + ((range.To - range.From) * i / (Inside + 1))));
        for (var (at, tried) = (0, _tried.Keys.ToArray()); at + 1 < tried.Length; at++)
        {
            if (Holds(tried[at]) != Holds(tried[at + 1]))
                Sharpen(tried[at], tried[at + 1]);
        }

        return new(DependingRules(), Besides(), [.. Ranges().Select(Rounded)], (from, to), Nearest());
    }

    private IEnumerable<SolvedRange> Ranges()
    {
        var tried = _tried.Keys.ToArray();
        for (var at = 0; at < tried.Length; at++)
        {
            if (!Holds(tried[at]))
                continue;
            var first = at;
            while (at + 1 < tried.Length && Holds(tried[at + 1]))
                at++;
            var best = Enumerable.Range(first, at - first + 1).Select(i => (At: tried[i], Least(_tried[tried[i]]).Margin)).Where(static b => !double.IsNaN(b.Margin)).ToArray();
            yield return new(
                tried[first], tried[at],
                first > 0 ? Why(_tried[tried[first - 1]]) : null,
                at + 1 < tried.Length ? Why(_tried[tried[at + 1]]) : null,
                best.Length == 0 ? null : best.MaxBy(static b => b.Margin));
        }
    }

    /// <summary>With borders of few figures, inwards; each was tried.</summary>
    private SolvedRange Rounded(SolvedRange range) => range with
    {
        From = range.Below is null ? range.From : Shorter(range.From, range.To, up: true),
        To = range.Above is null ? range.To : Shorter(range.To, range.From, up: false),
        Best = range.Best is { } best ? Plain(best) : null,
    };

    /// <summary>The best of what was tried, by a number of few figures where that does as well.</summary>
    private (double At, double Margin) Plain((double At, double Margin) best)
    {
        var plain = double.Parse(Formatting.Significant(best.At, Figures), System.Globalization.CultureInfo.InvariantCulture);
        Try([plain]);
        return Holds(plain) && Least(_tried[plain]).Margin is var margin && !double.IsNaN(margin) ? (plain, margin) : best;
    }

    private double Shorter(double border, double other, bool up)
    {
        if (border == 0 || border.Equals(other))
            return border;
        for (var figures = Figures; figures < 15; figures++)
        {
            var step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(border))) - figures + 1);
            var value = (up ? Math.Ceiling(border / step) : Math.Floor(border / step)) * step;
            if (value < Math.Min(border, other) || value > Math.Max(border, other))
                continue;
            Try([value]);
            if (Holds(value))
                return value;
        }

        return border;
    }

    private void Sharpen(double one, double other)
    {
        if (Holds(one) == Holds(other))
            return;
        var scale = Math.Max(Math.Abs(one), Math.Abs(other));
        while (Math.Abs(one - other) > Sharpness * scale)
        {
            var middle = (one + other) / 2;
            Try([middle]);
            if (!_tried.ContainsKey(middle))
                return;
            if (Holds(middle) == Holds(one))
                one = middle;
            else
                other = middle;
        }
    }

    private bool Holds(double value) => _tried.TryGetValue(value, out var trial) && Why(trial) is null;

    private (double At, Blocked Blocked) Nearest()
    {
        (double At, Blocked Blocked, double Margin) best = (double.NaN, new(null, double.NaN, false, 0, ""), double.NegativeInfinity);
        foreach (var (value, trial) in _tried)
        {
            if (Why(trial) is not { } blocked)
                continue;
            var margin = blocked.Refusal is not null || double.IsNaN(blocked.Margin) ? double.MinValue : blocked.Margin;
            if (double.IsNaN(best.At) || margin > best.Margin)
                best = (value, blocked, margin);
        }

        return (best.At, best.Blocked);
    }

    private void Try(IEnumerable<double> values)
    {
        double[] fresh = [.. values.Distinct().Where(v => !_tried.ContainsKey(v))];
        var trials = Bench.JudgeAll([.. fresh.Select(v => (ImmutableArray<Specs.ValueChange>)[new(key, pattern.With(v))])]);
        for (var i = 0; i < fresh.Length; i++)
        {
            if (trials[i] is { } trial)
                _tried[fresh[i]] = trial;
        }
    }
}

/// <summary>A value that was tried.</summary>
/// <param name="Text">As a spec writes it.</param>
/// <param name="Blocked">Why it does not do; null when it does.</param>
/// <param name="Margin">The least margin of the rules that depend on it; not a number without one.</param>
/// <param name="Least">The rule with that margin, in words.</param>
internal sealed record TriedValue(string Text, Blocked? Blocked, double Margin, string Least);

/// <summary>Which of several values do.</summary>
/// <param name="Depending">The rules that say different things over them.</param>
/// <param name="Besides">Rules of severity error that fail with each.</param>
/// <param name="Tried">Those that do by their least margin, then those that do not, the nearest first.</param>
internal sealed record Choices(ImmutableArray<TrialRule> Depending, ImmutableArray<TrialRule> Besides, ImmutableArray<TriedValue> Tried);

/// <summary>Tries standard values one by one.</summary>
internal sealed class Chooser(TrialBench bench, string key, string? rule) : TrialReader(bench, rule)
{
    /// <summary>Values that do not do and are shown with the reason.</summary>
    public const int MissesShown = 12;

    public Choices Among(ImmutableArray<string> texts)
    {
        var trials = Bench.JudgeAll([.. texts.Select(text => (ImmutableArray<Specs.ValueChange>)[new(key, text)])]);
        Learn(trials.Append(Bench.Stated));
        var tried = texts.Zip(trials).Where(static pair => pair.Second is not null).Select(pair =>
        {
            var (margin, least) = Least(pair.Second!);
            return new TriedValue(pair.First, Why(pair.Second!), margin, least is null ? "" : $"{least.Rule} on {least.Subject}");
        });

        // A stable order: equals stay in the order of their list.
        return new(DependingRules(), Besides(),
        [
            .. tried.OrderBy(static t => t.Blocked is null ? 0 : t.Blocked.Refusal is null ? 1 : 2)
                .ThenByDescending(static t => double.IsNaN(t.Blocked?.Margin ?? t.Margin) ? double.NegativeInfinity : t.Blocked?.Margin ?? t.Margin),
        ]);
    }
}
