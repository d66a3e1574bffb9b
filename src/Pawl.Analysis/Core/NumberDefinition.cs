using System.Runtime.CompilerServices;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Core;

/// <summary>A declared number.</summary>
public sealed class NumberDefinition<TSpec> : Definition<TSpec, NumberDefinition<TSpec>>, IInput<double>
    where TSpec : class
{
    private bool _turns;
    private bool _isOne;

    internal NumberDefinition()
    {
    }

    /// <summary>A dimension as the spec states it, with its own limits, its class or the general tolerance.</summary>
    public NumberDefinition<TSpec> Stated(
        Func<TSpec, Stated<Toleranced>?> select, string? key = null, [CallerArgumentExpression(nameof(select))] string selector = "") =>
        StatedWay(select, key ?? KeyOf(selector), (subject, stated, path) => subject.Context.Dimension(this, stated, path));

    /// <summary>A dimension that no general tolerance covers, such as a roughness: without limits of its own it is exact.</summary>
    public NumberDefinition<TSpec> StatedAlone(
        Func<TSpec, Stated<Toleranced>?> select, string? key = null, [CallerArgumentExpression(nameof(select))] string selector = "") =>
        StatedWay(select, key ?? KeyOf(selector), (subject, stated, path) => stated.Value.Tolerance is Tolerance.General
            ? subject.Context.Between(this, AnalysisContext.Declared(stated), stated.Value.Nominal.Coherent, stated.Value.Nominal.Coherent, stated.Value.Nominal.Coherent)
            : subject.Context.Dimension(this, stated, path));

    /// <summary>An amount as the spec states it.</summary>
    public NumberDefinition<TSpec> Stated(
        Func<TSpec, Stated<Amount>?> select, string? key = null, [CallerArgumentExpression(nameof(select))] string selector = "") =>
        StatedWay(select, key ?? KeyOf(selector), (subject, stated, path) => subject.Context.Amount(this, stated, path));

    /// <summary>A number as the spec states it.</summary>
    public NumberDefinition<TSpec> Stated(
        Func<TSpec, Stated<double>?> select, string? key = null, [CallerArgumentExpression(nameof(select))] string selector = "") =>
        StatedWay(select, key ?? KeyOf(selector), (subject, stated, path) => subject.Context.Number(this, stated, path));

    /// <summary>A count as the spec states it.</summary>
    public NumberDefinition<TSpec> Stated(
        Func<TSpec, Stated<int>?> select, string? key = null, [CallerArgumentExpression(nameof(select))] string selector = "") =>
        StatedWay(select, key ?? KeyOf(selector), (subject, stated, _) => subject.Context.Number(this, stated));

    /// <summary>An amount that stands elsewhere in the spec or in a catalogue.</summary>
    /// <param name="select">Where; null when it is not stated.</param>
    /// <param name="key">What the reader of a report is told to state; a leading slash makes it a path from the top of the spec.</param>
    public NumberDefinition<TSpec> Found(Func<TSpec, Subject, Stated<Amount>?> select, Func<TSpec, string> key)
    {
        ArgumentNullException.ThrowIfNull(select);
        return Way(subject => select((TSpec)subject.Model, subject) is { } stated
            ? subject.Context.Amount(this, stated, "")
            : AnalysisContext.Missing(this, key((TSpec)subject.Model)));
    }

    /// <summary>An amount that may stand elsewhere in the spec or in a catalogue.</summary>
    public NumberDefinition<TSpec> Found(Func<TSpec, Subject, Stated<Amount>?> select)
    {
        ArgumentNullException.ThrowIfNull(select);
        return Way(subject => select((TSpec)subject.Model, subject) is { } stated ? subject.Context.Amount(this, stated, "") : null);
    }

    /// <summary>As the subject in a role states it, where this one does not.</summary>
    public NumberDefinition<TSpec> TakenFrom(string role, Func<QuantityKind> kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Way(subject => subject.Reach(role)?.Find(kind()) is { } there ? Quantity.Taken(this, there) : null);
    }

    /// <summary>A default in coherent units, where nothing above applies; the report lists it.</summary>
    public NumberDefinition<TSpec> Assumed(double value, string basis) => Way(subject => subject.Context.Assumed(this, value, basis));

    /// <summary>A default that is known between limits only, in coherent units.</summary>
    public NumberDefinition<TSpec> Assumed(Extent value, string basis) => Way(subject => subject.Context.Between(
        this, new Origin.Assumed(basis), value.Nominal, value.Min, value.Max));

    /// <summary>By what it is, no value is below zero, so that a limit of zero or less is found to be none.</summary>
    public NumberDefinition<TSpec> NeverNegative()
    {
        DescribeNeverNegative();
        return this;
    }

    /// <summary>Not monotonic in its inputs: the worst case is searched for inside the tolerances too.</summary>
    public NumberDefinition<TSpec> Turns()
    {
        _turns = true;
        return this;
    }

    /// <summary>Counts as one tolerance for what is computed of it, such as a loss that enters nothing but the balance of the whole.</summary>
    public NumberDefinition<TSpec> AsOne()
    {
        _isOne = true;
        return this;
    }

    /// <summary>A number that is the same whatever the inputs.</summary>
    public NumberDefinition<TSpec> From(Func<double> formula) => Computed([], (ref InputReader _) => formula());

    /// <summary>A number of declared inputs; the formula sees them and nothing else.</summary>
    public NumberDefinition<TSpec> From<A>(IInput<A> a, Func<A, double> formula) =>
        Computed([a], (ref InputReader r) => formula(a.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public NumberDefinition<TSpec> From<A, B>(IInput<A> a, IInput<B> b, Func<A, B, double> formula) =>
        Computed([a, b], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public NumberDefinition<TSpec> From<A, B, C>(IInput<A> a, IInput<B> b, IInput<C> c, Func<A, B, C, double> formula) =>
        Computed([a, b, c], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public NumberDefinition<TSpec> From<A, B, C, D>(IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, Func<A, B, C, D, double> formula) =>
        Computed([a, b, c, d], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public NumberDefinition<TSpec> From<A, B, C, D, E>(IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, Func<A, B, C, D, E, double> formula) =>
        Computed([a, b, c, d, e], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public NumberDefinition<TSpec> From<A, B, C, D, E, F>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f,
        Func<A, B, C, D, E, F, double> formula) =>
        Computed([a, b, c, d, e, f], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public NumberDefinition<TSpec> From<A, B, C, D, E, F, G>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g,
        Func<A, B, C, D, E, F, G, double> formula) =>
        Computed(
            [a, b, c, d, e, f, g],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public NumberDefinition<TSpec> From<A, B, C, D, E, F, G, H>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g, IInput<H> h,
        Func<A, B, C, D, E, F, G, H, double> formula) =>
        Computed(
            [a, b, c, d, e, f, g, h],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r), h.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public NumberDefinition<TSpec> From<A, B, C, D, E, F, G, H, I>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g, IInput<H> h, IInput<I> i,
        Func<A, B, C, D, E, F, G, H, I, double> formula) =>
        Computed(
            [a, b, c, d, e, f, g, h, i],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r), h.Read(ref r), i.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public NumberDefinition<TSpec> From<A, B, C, D, E, F, G, H, I, J>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g, IInput<H> h, IInput<I> i, IInput<J> j,
        Func<A, B, C, D, E, F, G, H, I, J, double> formula) =>
        Computed(
            [a, b, c, d, e, f, g, h, i, j],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r), h.Read(ref r), i.Read(ref r), j.Read(ref r)));

    /// <summary>A count that follows from the spec alone.</summary>
    public NumberDefinition<TSpec> Counted(Func<TSpec, double> count) => Way(subject => Quantity.Computed(this, count((TSpec)subject.Model), []));

    /// <summary>Nominal, least and greatest that the mechanics knows in closed form; one tolerance from there on.</summary>
    public NumberDefinition<TSpec> Range<A>(IInput<A> a, Func<A, Extent> formula) =>
        WithLimits([a], (ref InputReader r) => formula(a.Read(ref r)));

    /// <inheritdoc cref="Range{A}"/>
    public NumberDefinition<TSpec> Range<A, B>(IInput<A> a, IInput<B> b, Func<A, B, Extent> formula) =>
        WithLimits([a, b], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r)));

    /// <inheritdoc cref="Range{A}"/>
    public NumberDefinition<TSpec> Range<A, B, C>(IInput<A> a, IInput<B> b, IInput<C> c, Func<A, B, C, Extent> formula) =>
        WithLimits([a, b, c], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r)));

    /// <inheritdoc cref="Range{A}"/>
    public NumberDefinition<TSpec> Range<A, B, C, D>(IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, Func<A, B, C, D, Extent> formula) =>
        WithLimits([a, b, c, d], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r)));

    /// <inheritdoc cref="Range{A}"/>
    public NumberDefinition<TSpec> Range<A, B, C, D, E>(IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, Func<A, B, C, D, E, Extent> formula) =>
        WithLimits([a, b, c, d, e], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r)));

    /// <inheritdoc cref="Range{A}"/>
    public NumberDefinition<TSpec> Range<A, B, C, D, E, F>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f,
        Func<A, B, C, D, E, F, Extent> formula) =>
        WithLimits([a, b, c, d, e, f], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r)));

    /// <inheritdoc cref="Range{A}"/>
    public NumberDefinition<TSpec> Range<A, B, C, D, E, F, G>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g,
        Func<A, B, C, D, E, F, G, Extent> formula) =>
        WithLimits(
            [a, b, c, d, e, f, g],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r)));

    /// <inheritdoc cref="Range{A}"/>
    public NumberDefinition<TSpec> Range<A, B, C, D, E, F, G, H>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g, IInput<H> h,
        Func<A, B, C, D, E, F, G, H, Extent> formula) =>
        WithLimits(
            [a, b, c, d, e, f, g, h],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r), h.Read(ref r)));

    /// <summary>A number that a solver finds at nominal from what the spec says: of the declared inputs, which the report lists.</summary>
    /// <param name="inputs">What it depends on; one without a value leaves it open.</param>
    /// <param name="solve">The solver; null where the subject does not have the number.</param>
    internal NumberDefinition<TSpec> Solved(ImmutableArray<IInput> inputs, Func<TSpec, Subject, double?> solve) => Solved(inputs, static _ => [], solve);

    /// <inheritdoc cref="Solved(ImmutableArray{IInput}, Func{TSpec, Subject, double?})"/>
    /// <param name="inputs">What it depends on; one without a value leaves it open.</param>
    /// <param name="reasons">Why the solver has no answer; none when it has one.</param>
    /// <param name="solve">The solver; null where the subject does not have the number.</param>
    internal NumberDefinition<TSpec> Solved(
        ImmutableArray<IInput> inputs, Func<Subject, ImmutableArray<string>> reasons, Func<TSpec, Subject, double?> solve)
    {
        CheckDeclared(inputs);
        return Way(subject => SolvedOf(subject, inputs, reasons, quantities =>
            solve((TSpec)subject.Model, subject) is { } value ? Quantity.Computed(this, value, quantities) : null));
    }

    /// <summary>Nominal, least and greatest that a solver finds from what the spec says: of the declared inputs, which the report lists.</summary>
    internal NumberDefinition<TSpec> SolvedLimits(ImmutableArray<IInput> inputs, Func<TSpec, Subject, Extent> solve)
    {
        CheckDeclared(inputs);
        return Way(subject => SolvedOf(
            subject, inputs, static _ => [], quantities => Quantity.WithLimits(this, solve((TSpec)subject.Model, subject), quantities)));
    }

    bool IInput.Gather(Subject subject, InputList list) => GatherOwn(subject, list);

    double IInput<double>.Read(ref InputReader reader) => reader.Number();

    private NumberDefinition<TSpec> WithLimits(ImmutableArray<IInput> inputs, Take<Extent> formula) => Way(subject =>
    {
        return !Gathered(subject, inputs, out var list) ? null : Evaluated(list, quantities =>
        {
            var reader = new InputReader(Nominal(quantities), list);
            return Quantity.WithLimits(this, formula(ref reader), quantities).With(list.Symbols);
        });
    });

    private NumberDefinition<TSpec> Computed(ImmutableArray<IInput> inputs, Take<double> take)
    {
        CheckDeclared(inputs);
        return Way(subject => Compute(subject, inputs, take));
    }

    private Quantity? Compute(Subject subject, ImmutableArray<IInput> inputs, Take<double> take)
    {
        if (!Gathered(subject, inputs, out var list))
            return null;
        var value = Quantity.Compute(this, list.Quantities, Read, _turns).With(list.Symbols);
        return _isOne ? Quantity.AsOne(value) : value;

        double Read(ReadOnlySpan<double> values)
        {
            var reader = new InputReader(values, list);
            return take(ref reader);
        }
    }
}

/// <summary>Takes the inputs of one evaluation from the reader and applies the formula.</summary>
internal delegate T Take<out T>(ref InputReader reader);
