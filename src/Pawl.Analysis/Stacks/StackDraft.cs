using Pawl.Analysis.Core;
using Pawl.Analysis.Fits;
using Pawl.Mechanics.Stacks;
using Pawl.Specs.Model;
using C = Pawl.Analysis.Stacks.ContributorQuantities;
using K = Pawl.Analysis.Stacks.StackQuantities;
using Range = Pawl.Mechanics.Seals.Extent;
using Value = Pawl.Quantities.Extent;

namespace Pawl.Analysis.Stacks;

/// <summary>One stack: its gap at 20 °C and in service.</summary>
internal sealed partial class StackDraft
{
    private const int UsualDraws = 20_000;
    private const int UsualSeed = 1;

    private readonly Draft _draft;
    private readonly Parts _parts;
    private readonly StackSpec _spec;
    private readonly Subject _s;
    private readonly ImmutableArray<Part> _chain;
    private readonly ImmutableArray<string> _reasons;

    private StackDraft(Parts parts, StackSpec spec, Subject train)
    {
        (_draft, _parts, _spec) = (parts.Draft, parts, spec);
        _s = _draft.Begin(SubjectKinds.Stack, $"stacks.{spec.Name.Value}", spec.Name.Span).Relate("train", train);
        _chain = [.. spec.Contributors.Entries.Select(Declare)];
        _reasons = Quantity.MissingReasons(Sizes);
    }

    public static void AddAll(Parts parts, Subject train)
    {
        foreach (var spec in parts.Draft.Spec.Stacks.Entries)
            new StackDraft(parts, spec, train).Add();
    }

    /// <summary>A contributor with its subject and what it is made of.</summary>
    private sealed record Part(ContributorSpec Spec, Subject Subject, double Coefficient, double Expansion);

    private ImmutableArray<Quantity> Sizes => [.. _chain.Select(part => part.Subject[C.Size])];

    private string Key(string key) => $"stacks.{_spec.Name.Value}.{key}";

    private double N(QuantityKind kind) => _s[kind].Value.Nominal;

    private Range Window => new(_spec.Window.Least.Value.Coherent, _spec.Window.Greatest.Value.Coherent);

    private Part Declare(ContributorSpec spec)
    {
        var path = $"{_s.Path}.{spec.Name.Value}";
        var subject = _draft.Begin(SubjectKinds.Contributor, path, spec.Name.Span).Relate("stack", _s);
        subject.Add(_draft.Dimension(C.Size, spec.Size, $"{path}.size"));
        var sign = StackLoop.Sign(_spec, spec);
        var coefficient = sign == 0 ? spec.Coefficient!.Value : sign * Math.Abs(spec.Coefficient?.Value ?? 1);
        subject.Add(Quantity.Computed(C.Coefficient, coefficient, []));
        var expansion = spec.Expansion?.Value.Coherent ?? _parts.MaterialOf(spec.Part?.Value, spec.Material).Expansion;
        subject.Add(spec.Expansion is { } own ? _draft.Amount(C.Expansion, own, "")
            : _draft.Assumed(C.Expansion, expansion, spec.Material is { } material ? $"of {material.Value}" : spec.Part is { } part ? $"of {part.Value}" : "of steel, for no material is stated"));
        return new(spec, subject, coefficient, expansion);
    }

    private void Add()
    {
        _s.Add(_draft.Amount(K.LeastWanted, _spec.Window.Least, ""));
        _s.Add(_draft.Amount(K.GreatestWanted, _spec.Window.Greatest, ""));
        _s.Add(Draft.Text(K.Method, _spec.Method, "worst-case", "worst case, for nothing else is stated"));
        _s.Add(Draft.Truth(K.Preloaded, _spec.Preloaded, false, "none is meant, for none is stated"));
        _s.Add(Quantity.OfTruth(K.Shimmed, Origin.Computed.Instance, _spec.Shims is not null, []));
        _s.Add(Bounds(K.WorstCase, Sizes, () => Chain.WorstCase));
        _s.Add(Bounds(K.RootSumSquare, Sizes, () => Chain.RootSumSquare()));
        Sample();
        Sensitivities();
        if (_spec.Shims is { } shims)
            Shims(shims);
        else
            _s.Add(OfMethod());
        Service();
    }

    private SizeChain? _made;

    private SizeChain Chain => _made ??= new([.. _chain.Select(part => new Contributor(
        part.Spec.Name.Value, part.Coefficient, part.Subject[C.Size].Value.Least, part.Subject[C.Size].Value.Greatest, Distribution(part.Spec),
        part.Spec.Capability?.Value ?? 1, part.Expansion))]);

    private static SizeDistribution Distribution(ContributorSpec spec) => spec.Distribution?.Value switch
    {
        "uniform" => SizeDistribution.Rectangular,
        "triangular" => SizeDistribution.Triangular,
        _ => SizeDistribution.Normal,
    };

    private static Quantity Bounds(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<Range> range)
    {
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(kind, inputs, reasons);
        try
        {
            var found = range();
            return Quantity.Bounded(kind, new Value(Clean(found.Middle), Clean(found.Least), Clean(found.Greatest)), inputs);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(kind, inputs, outside.Message);
        }
    }

    private static Quantity Single(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<double> value) => Bounds(kind, inputs, () => Range.Exactly(value()));

    // Sums of decimal sizes are not quite decimal in binary; a picometre is beyond any drawing.
    private static double Clean(double value) => Math.Round(value, 9) + 0.0;

    private void Sample()
    {
        _s.Add(_spec.Seed is { } seed ? _draft.Number(K.Seed, seed) : _draft.Assumed(K.Seed, UsualSeed, "1, for none is stated"));
        _s.Add(_spec.Draws is { } draws ? _draft.Number(K.Draws, draws) : _draft.Assumed(K.Draws, UsualDraws, "20 000, for none is stated"));
        _s.Add(Single(K.Deviation, Sizes, () => Chain.StandardDeviation));
        if (!_reasons.IsEmpty)
        {
            foreach (var kind in (ReadOnlySpan<QuantityKind>)[K.Sampled, K.ShareOutside, K.Capability])
                _s.Add(Quantity.NotEvaluated(kind, Sizes, _reasons));
            return;
        }

        var sample = StackSample.Of(Chain, (ulong)N(K.Seed), (int)N(K.Draws));
        ImmutableArray<Quantity> inputs = [.. Sizes, _s[K.Seed], _s[K.Draws]];
        _s.Add(Quantity.Bounded(K.Sampled, new(sample.Quantile(0.5), sample.Quantile(0.00135), sample.Quantile(0.99865)), inputs));
        _s.Add(Quantity.Computed(K.ShareOutside, sample.ShareOutside(Window), [.. inputs, _s[K.LeastWanted], _s[K.GreatestWanted]]));
        if (_spec.Shims is null)
            _s.Add(Single(K.Capability, [_s[K.LeastWanted], _s[K.GreatestWanted], _s[K.WorstCase], _s[K.Deviation]], () => Chain.Capability(Window)));
    }

    private void Sensitivities()
    {
        _s.Add(Quantity.Computed(K.Unproven, _chain.Count(part => part.Spec is { Capability: null, Distribution: null or { Value: "normal" } }), []));
        if (!_reasons.IsEmpty)
        {
            _s.Add(Quantity.NotEvaluated(K.Dominant, Sizes, _reasons));
            _s.Add(Quantity.NotEvaluated(K.GreatestShare, Sizes, _reasons));
            return;
        }

        var shares = Chain.Shares.ToDictionary(share => share.Name, StringComparer.Ordinal);
        foreach (var part in _chain)
        {
            part.Subject.Add(Quantity.Computed(C.ShareOfWorst, shares[part.Spec.Name.Value].OfWorstCase, [part.Subject[C.Size]]));
            part.Subject.Add(Quantity.Computed(C.ShareOfVariance, shares[part.Spec.Name.Value].OfVariance, [part.Subject[C.Size]]));
        }

        var greatest = shares.Values.MaxBy(share => share.OfWorstCase)!;
        _s.Add(Quantity.ComputedText(K.Dominant, greatest.Name, Sizes));
        _s.Add(Quantity.Computed(K.GreatestShare, greatest.OfWorstCase, Sizes));
    }

    private Quantity OfMethod()
    {
        var chosen = _s[_spec.Method is { Value: "statistical" } ? K.RootSumSquare : K.WorstCase];
        return chosen.IsEvaluated ? Quantity.Bounded(K.EndPlay, chosen.Value, [.. Sizes]) : Quantity.NotEvaluated(K.EndPlay, [.. Sizes], chosen.Reasons);
    }

    private void Service()
    {
        _s.Add(At(K.Cold, [], _ => _parts.Coldest()));
        _s.Add(At(K.Running, [], part => _parts.Running(part.Running)));
        _s.Add(At(K.Hot, [], part => _parts.Hottest(part.Running)));
        if (_spec.WarmUp is { } warm)
        {
            _s.Add(_draft.Amount(K.WarmShaft, warm.Shaft, ""));
            _s.Add(_draft.Amount(K.WarmHousing, warm.Housing, ""));
            _s.Add(At(K.WarmUp, [_s[K.WarmShaft], _s[K.WarmHousing]], part => part.Side is { } side
                ? ((side.Value == "shaft" ? warm.Shaft : warm.Housing).Value.Coherent, null)
                : (0, $"{Key($"contributors.{part.Name.Value}.side")} is not stated")));
        }

        ImmutableArray<Quantity> states = [_s[K.Running], _s[K.Cold], _s[K.Hot], .. _s.Find(K.WarmUp) is { } warmUp ? [warmUp] : (Quantity[])[]];
        _s.Add(Quantity.MissingReasons(states) is { IsEmpty: false } reasons
            ? Quantity.NotEvaluated(K.InService, states, reasons)
            : Quantity.Bounded(K.InService, new(states[0].Value.Nominal, states.Min(state => state.Value.Least), states.Max(state => state.Value.Greatest)), states));
        if (_spec.GreatestInService is { } greatest)
            _s.Add(_draft.Amount(K.GreatestInService, greatest, ""));
    }

    /// <summary>The gap as assembled, moved by warmth along the loop.</summary>
    private Quantity At(QuantityKind kind, ImmutableArray<Quantity> temperatures, Func<ContributorSpec, (double Temperature, string? Missing)> temperature)
    {
        var play = _s[K.EndPlay];
        ImmutableArray<Quantity> inputs = [.. temperatures, play, .. Sizes, .. _chain.Select(part => part.Subject[C.Expansion])];
        ImmutableArray<string> reasons = [.. Quantity.MissingReasons(inputs), .. _chain.Select(part => temperature(part.Spec).Missing).OfType<string>().Distinct()];
        if (!reasons.IsEmpty)
            return Quantity.NotEvaluated(kind, inputs, [.. reasons.Distinct()]);
        var warmth = 0.0;
        for (var i = 0; i < _chain.Length; i++)
            warmth += Chain.Contributors[i].WarmthAt(temperature(_chain[i].Spec).Temperature);
        return Bounds(kind, inputs, () => new(play.Value.Least + warmth, play.Value.Greatest + warmth));
    }
}
