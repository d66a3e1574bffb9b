using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Text;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Core;

/// <summary>Looks a text up in a table; the reason says why there is no row.</summary>
public delegate bool Lookup<T>(string text, [NotNullWhen(true)] out T? row, [NotNullWhen(false)] out string? reason)
    where T : class;

/// <summary>A declared quantity of a subject whose spec is a <typeparamref name="TSpec"/>: what it is and how it comes about, in one expression.</summary>
/// <remarks>
/// A definition has one or more ways to come about, tried in the order in which they are written: what the spec states, what a
/// formula computes of declared inputs, what is assumed. The first that applies counts. When none applies the subject does not
/// have the quantity, and rules on it do not apply. What a formula is given are its inputs and nothing else; lambdas are static.
/// </remarks>
public abstract class Definition<TSpec, TSelf> : QuantityKind
    where TSpec : class
    where TSelf : Definition<TSpec, TSelf>
{
    private readonly List<Func<Subject, Quantity?>> _ways = [];
    private readonly List<Func<Subject, bool>> _conditions = [];
    private readonly List<string> _tables = [];
    private string _missingKey = "";
    private bool _isOptional;
    private Func<Subject, bool>? _next;

    private protected Definition() => Evaluate = Run;

    private TSelf Self => (TSelf)this;

    /// <summary>Formula in plain text, source and certainty of what is computed.</summary>
    public TSelf By(string formula, string source, Certainty certainty = Certainty.ClosedForm)
    {
        Describe(formula, source, certainty);
        return Self;
    }

    /// <summary>A simplification or range of validity that the reader of a report must know.</summary>
    public TSelf Noted(string note)
    {
        Describe(note);
        return Self;
    }

    /// <summary>What a margin is a fraction of when the limit is zero, in coherent units.</summary>
    public TSelf Scaled(double scale)
    {
        Describe(scale);
        return Self;
    }

    /// <summary>Published tables that it comes from; they are noted in the record when it is computed.</summary>
    public TSelf Tables(params string[] tables)
    {
        _tables.AddRange(tables);
        return Self;
    }

    /// <summary>The subject has it only when the spec is so.</summary>
    public TSelf When(Func<TSpec, bool> condition)
    {
        _conditions.Add(subject => condition((TSpec)subject.Model));
        return Self;
    }

    /// <summary>The subject has it only when the spec and its surroundings are so.</summary>
    public TSelf When(Func<TSpec, Subject, bool> condition)
    {
        _conditions.Add(subject => condition((TSpec)subject.Model, subject));
        return Self;
    }

    /// <summary>The subject has it only when an input is so at nominal; an input without a value leaves the question open.</summary>
    public TSelf When<T>(IInput<T> input, Func<T, bool> condition)
    {
        _conditions.Add(subject =>
        {
            var list = new InputList();
            if (!input.Gather(subject, list))
                return false;
            var quantities = list.Quantities;
            if (!Quantity.MissingReasons(quantities).IsEmpty)
                return true;
            var reader = new InputReader(Nominal(quantities), quantities, list.Counts);
            return condition(input.Read(ref reader));
        });
        return Self;
    }

    /// <summary>The key that the reader of a report is told to state where no way applies.</summary>
    public TSelf Asking(string key)
    {
        _missingKey = key;
        return Self;
    }

    /// <summary>A spec that does not state it has none, and that is in order.</summary>
    public TSelf Optional()
    {
        _isOptional = true;
        return Self;
    }

    /// <summary>Where no way above applies it is not evaluated, for this reason.</summary>
    public TSelf Otherwise(Func<TSpec, string> reason) => Custom(subject => Quantity.NotEvaluated(this, [], reason((TSpec)subject.Model)));

    /// <summary>Any other way to come about; null when it does not apply.</summary>
    public TSelf Custom(Func<Subject, Quantity?> way)
    {
        var applies = _next;
        _next = null;
        _ways.Add(applies is null ? way : subject => applies(subject) ? way(subject) : null);
        return Self;
    }

    /// <summary>The next way counts only when the spec is so.</summary>
    public TSelf For(Func<TSpec, bool> condition) => For(subject => condition((TSpec)subject.Model));

    /// <summary>The next way counts only when the spec and its surroundings are so.</summary>
    public TSelf For(Func<TSpec, Subject, bool> condition) => For(subject => condition((TSpec)subject.Model, subject));

    private TSelf For(Func<Subject, bool> condition)
    {
        _next = condition;
        return Self;
    }

    private protected TSelf Way(Func<Subject, Quantity?> way) => Custom(way);

    private protected TSelf StatedWay<T>(Func<TSpec, Stated<T>?> select, string key, Func<Subject, Stated<T>, string, Quantity> read)
    {
        _missingKey = key;
        return Custom(subject => select((TSpec)subject.Model) is { } stated ? read(subject, stated, PathOf(subject, key)) : null);
    }

    private protected void Missing(string key) => _missingKey = key;

    private Quantity? Run(Subject subject)
    {
        foreach (var condition in _conditions)
        {
            if (!condition(subject))
                return null;
        }

        foreach (var way in _ways)
        {
            Quantity? quantity;
            try
            {
                quantity = way(subject);
            }
            catch (OutsideValidityException outside)
            {
                return Quantity.NotEvaluated(this, [], outside.Message);
            }

            if (quantity is null)
                continue;
            foreach (var table in _tables)
                subject.Context.Uses(table);
            return quantity;
        }

        return _isOptional || _missingKey.Length == 0 ? null : AnalysisContext.Missing(this, PathOf(subject, _missingKey));
    }

    /// <summary>The keys of a subject by their whole path; a leading slash makes one a path from the top of the spec.</summary>
    private static string PathOf(Subject subject, string keys) => string.Join(
        " or ", keys.Split(" or ").Select(key => key.StartsWith('/') ? key[1..] : $"{subject.Keys}.{key}"));

    private protected static ReadOnlySpan<double> Nominal(ImmutableArray<Quantity> quantities)
    {
        var values = new double[quantities.Length];
        for (var i = 0; i < values.Length; i++)
            values[i] = quantities[i].Value.Nominal;
        return values;
    }

    /// <summary>The key that a selector reads: <c>static s => s.Tapped?.Depth</c> is tapped.depth.</summary>
    private protected static string KeyOf(string selector)
    {
        var body = selector[(selector.IndexOf("=>", StringComparison.Ordinal) + 2)..].Trim();
        var dot = body.IndexOf('.', StringComparison.Ordinal);
        if (dot < 0 || body.AsSpan().IndexOfAny(" (") >= 0)
            throw new InvalidOperationException($"No key can be read from `{selector}`: name it.");
        var key = new StringBuilder();
        foreach (var part in body[(dot + 1)..].Replace("?", "", StringComparison.Ordinal).Replace("!", "", StringComparison.Ordinal).Split('.'))
        {
            if (key.Length > 0)
                key.Append('.');
            for (var i = 0; i < part.Length; i++)
            {
                if (char.IsUpper(part[i]) && i > 0)
                    key.Append('_');
                key.Append(char.ToLowerInvariant(part[i]));
            }
        }

        return key.ToString();
    }
}

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

    /// <summary>A default in coherent units, where nothing above applies; the report lists it.</summary>
    public NumberDefinition<TSpec> Assumed(double value, string basis) => Way(subject => subject.Context.Assumed(this, value, basis));

    /// <summary>A default that is known between limits only, in coherent units.</summary>
    public NumberDefinition<TSpec> Assumed(Extent value, string basis) => Way(subject => subject.Context.Between(
        this, new Origin.Assumed(basis), value.Nominal, value.Min, value.Max));

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
    public NumberDefinition<TSpec> From(Func<double> formula) => Way(subject => Compute(subject, [], (ref InputReader _) => formula()));

    public NumberDefinition<TSpec> From<A>(IInput<A> a, Func<A, double> formula) =>
        Way(subject => Compute(subject, [Gather(a)], (ref InputReader r) => formula(a.Read(ref r))));

    public NumberDefinition<TSpec> From<A, B>(IInput<A> a, IInput<B> b, Func<A, B, double> formula) =>
        Way(subject => Compute(subject, [Gather(a), Gather(b)], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r))));

    public NumberDefinition<TSpec> From<A, B, C>(IInput<A> a, IInput<B> b, IInput<C> c, Func<A, B, C, double> formula) =>
        Way(subject => Compute(
            subject, [Gather(a), Gather(b), Gather(c)], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r))));

    public NumberDefinition<TSpec> From<A, B, C, D>(IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, Func<A, B, C, D, double> formula) =>
        Way(subject => Compute(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d)],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r))));

    public NumberDefinition<TSpec> From<A, B, C, D, E>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, Func<A, B, C, D, E, double> formula) =>
        Way(subject => Compute(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d), Gather(e)],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r))));

    public NumberDefinition<TSpec> From<A, B, C, D, E, F>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, Func<A, B, C, D, E, F, double> formula) =>
        Way(subject => Compute(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d), Gather(e), Gather(f)],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r))));

    public NumberDefinition<TSpec> From<A, B, C, D, E, F, G>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g, Func<A, B, C, D, E, F, G, double> formula) =>
        Way(subject => Compute(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d), Gather(e), Gather(f), Gather(g)],
            (ref InputReader r) => formula(
                a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r))));

    public NumberDefinition<TSpec> From<A, B, C, D, E, F, G, H>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g, IInput<H> h,
        Func<A, B, C, D, E, F, G, H, double> formula) =>
        Way(subject => Compute(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d), Gather(e), Gather(f), Gather(g), Gather(h)],
            (ref InputReader r) => formula(
                a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r), h.Read(ref r))));

    public NumberDefinition<TSpec> From<A, B, C, D, E, F, G, H, I>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g, IInput<H> h, IInput<I> i,
        Func<A, B, C, D, E, F, G, H, I, double> formula) =>
        Way(subject => Compute(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d), Gather(e), Gather(f), Gather(g), Gather(h), Gather(i)],
            (ref InputReader r) => formula(
                a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r), h.Read(ref r), i.Read(ref r))));

    public NumberDefinition<TSpec> From<A, B, C, D, E, F, G, H, I, J>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g, IInput<H> h, IInput<I> i, IInput<J> j,
        Func<A, B, C, D, E, F, G, H, I, J, double> formula) =>
        Way(subject => Compute(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d), Gather(e), Gather(f), Gather(g), Gather(h), Gather(i), Gather(j)],
            (ref InputReader r) => formula(
                a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r), h.Read(ref r), i.Read(ref r), j.Read(ref r))));

    /// <summary>A count that follows from the spec alone.</summary>
    public NumberDefinition<TSpec> Counted(Func<TSpec, double> count) => Way(subject => Quantity.Computed(this, count((TSpec)subject.Model), []));

    /// <summary>For more inputs than the overloads above: the reader hands them out in order.</summary>
    internal NumberDefinition<TSpec> FromMany(ImmutableArray<IInput<double>> inputs, Formula formula) =>
        Way(subject => Compute(subject, [.. inputs.Select(Gather)], null, formula));

    /// <inheritdoc cref="Range{A, B, C}"/>
    public NumberDefinition<TSpec> Range<A>(IInput<A> a, Func<A, Extent> formula) =>
        Way(subject => Bound(subject, [Gather(a)], (ref InputReader r) => formula(a.Read(ref r))));

    /// <inheritdoc cref="Range{A, B, C}"/>
    public NumberDefinition<TSpec> Range<A, B>(IInput<A> a, IInput<B> b, Func<A, B, Extent> formula) =>
        Way(subject => Bound(subject, [Gather(a), Gather(b)], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r))));

    /// <summary>Nominal, least and greatest that the mechanics knows in closed form; one tolerance from there on.</summary>
    public NumberDefinition<TSpec> Range<A, B, C>(IInput<A> a, IInput<B> b, IInput<C> c, Func<A, B, C, Extent> formula) =>
        Way(subject => Bound(subject, [Gather(a), Gather(b), Gather(c)], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r))));

    /// <inheritdoc cref="Range{A, B, C}"/>
    public NumberDefinition<TSpec> Range<A, B, C, D>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d,
        Func<A, B, C, D, Extent> formula) =>
        Way(subject => Bound(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d)],
            (ref InputReader r) => formula(
                a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r))));

    /// <inheritdoc cref="Range{A, B, C}"/>
    public NumberDefinition<TSpec> Range<A, B, C, D, E>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e,
        Func<A, B, C, D, E, Extent> formula) =>
        Way(subject => Bound(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d), Gather(e)],
            (ref InputReader r) => formula(
                a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r))));

    /// <inheritdoc cref="Range{A, B, C}"/>
    public NumberDefinition<TSpec> Range<A, B, C, D, E, F>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f,
        Func<A, B, C, D, E, F, Extent> formula) =>
        Way(subject => Bound(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d), Gather(e), Gather(f)],
            (ref InputReader r) => formula(
                a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r))));

    /// <inheritdoc cref="Range{A, B, C}"/>
    public NumberDefinition<TSpec> Range<A, B, C, D, E, F, G>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g,
        Func<A, B, C, D, E, F, G, Extent> formula) =>
        Way(subject => Bound(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d), Gather(e), Gather(f), Gather(g)],
            (ref InputReader r) => formula(
                a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r))));

    /// <inheritdoc cref="Range{A, B, C}"/>
    public NumberDefinition<TSpec> Range<A, B, C, D, E, F, G, H>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, IInput<G> g, IInput<H> h,
        Func<A, B, C, D, E, F, G, H, Extent> formula) =>
        Way(subject => Bound(
            subject, [Gather(a), Gather(b), Gather(c), Gather(d), Gather(e), Gather(f), Gather(g), Gather(h)],
            (ref InputReader r) => formula(
                a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r), g.Read(ref r), h.Read(ref r))));

    bool IInput<double>.Gather(Subject subject, InputList list)
    {
        if (subject.Find(this) is not { } quantity)
            return false;
        list.Add(quantity, Symbol.Length > 0 ? Symbol : Name);
        return true;
    }

    double IInput<double>.Read(ref InputReader reader) => reader.Number();

    private static Func<Subject, InputList, bool> Gather<T>(IInput<T> input) =>
        (input ?? throw new InvalidOperationException("An input is declared before its use.")).Gather;

    private Quantity? Bound(Subject subject, ReadOnlySpan<Func<Subject, InputList, bool>> inputs, Take<Extent> formula)
    {
        var list = new InputList();
        foreach (var gather in inputs)
        {
            if (!gather(subject, list))
                return null;
        }

        var (quantities, counts) = (list.Quantities, list.Counts);
        if (Quantity.MissingReasons(quantities) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(this, quantities, reasons);
        try
        {
            var reader = new InputReader(Nominal(quantities), quantities, counts);
            return Quantity.WithLimits(this, formula(ref reader), quantities).With(list.Symbols);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(this, quantities, outside.Message);
        }
    }

    private Quantity? Compute(
        Subject subject, ReadOnlySpan<Func<Subject, InputList, bool>> inputs, Take<double>? take, Formula? formula = null)
    {
        var list = new InputList();
        foreach (var gather in inputs)
        {
            if (!gather(subject, list))
                return null;
        }

        var (quantities, counts) = (list.Quantities, list.Counts);
        var value = Quantity.Compute(this, quantities, formula ?? Read, _turns).With(list.Symbols);
        return _isOne ? Quantity.AsOne(value) : value;

        double Read(ReadOnlySpan<double> values)
        {
            var reader = new InputReader(values, quantities, counts);
            return take!(ref reader);
        }
    }
}

internal delegate T Take<out T>(ref InputReader reader);

/// <summary>A declared text, which may stand for a row of a table.</summary>
/// <typeparam name="TSpec">The spec of its subject.</typeparam>
/// <typeparam name="T">What formulas are given: the text itself or the row.</typeparam>
public sealed class RowDefinition<TSpec, T> : Definition<TSpec, RowDefinition<TSpec, T>>, IInput<T>
    where TSpec : class
    where T : class
{
    private readonly Lookup<T>? _lookup;

    internal RowDefinition(Lookup<T>? lookup)
    {
        _lookup = lookup;
        Describe(ValueKind.Text);
    }

    /// <summary>The text as the spec states it.</summary>
    public RowDefinition<TSpec, T> Stated(
        Func<TSpec, Stated<string>?> select, string? key = null, [CallerArgumentExpression(nameof(select))] string selector = "") =>
        StatedWay(select, key ?? KeyOf(selector), (_, stated, _) => Taken(AnalysisContext.Declared(stated), stated.Value));

    /// <summary>A default, where nothing above applies; the report lists it.</summary>
    public RowDefinition<TSpec, T> Assumed(string text, string basis) => Way(_ => Taken(new Origin.Assumed(basis), text));

    /// <summary>A text that follows from the spec alone.</summary>
    public RowDefinition<TSpec, T> Named(Func<TSpec, string> text) => Way(subject => Taken(Origin.Computed.Instance, text((TSpec)subject.Model)));

    /// <summary>A row that is found by others; it is shown by its text.</summary>
    public RowDefinition<TSpec, T> From<A>(IInput<A> a, Func<A, T> find, Func<T, string> show) =>
        Way(subject => Found(subject, [a.Gather], (ref InputReader r) => find(a.Read(ref r)), show));

    /// <inheritdoc cref="From{A}"/>
    public RowDefinition<TSpec, T> From<A, B>(IInput<A> a, IInput<B> b, Func<A, B, T> find, Func<T, string> show) =>
        Way(subject => Found(subject, [a.Gather, b.Gather], (ref InputReader r) => find(a.Read(ref r), b.Read(ref r)), show));

    /// <inheritdoc cref="From{A}"/>
    public RowDefinition<TSpec, T> From<A, B, C>(IInput<A> a, IInput<B> b, IInput<C> c, Func<A, B, C, T> find, Func<T, string> show) =>
        Way(subject => Found(
            subject, [a.Gather, b.Gather, c.Gather], (ref InputReader r) => find(a.Read(ref r), b.Read(ref r), c.Read(ref r)), show));

    /// <inheritdoc cref="From{A}"/>
    public RowDefinition<TSpec, T> From<A, B, C, D, E>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, Func<A, B, C, D, E, T> find, Func<T, string> show) =>
        Way(subject => Found(
            subject, [a.Gather, b.Gather, c.Gather, d.Gather, e.Gather],
            (ref InputReader r) => find(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r)), show));

    bool IInput<T>.Gather(Subject subject, InputList list)
    {
        if (subject.Find(this) is not { } quantity)
            return false;
        list.Add(quantity, Symbol.Length > 0 ? Symbol : Name);
        return true;
    }

    T IInput<T>.Read(ref InputReader reader)
    {
        var quantity = reader.Quantity();
        return (T)(quantity.Row ?? quantity.Text ?? throw new InvalidOperationException($"{quantity} has no text."));
    }

    private Quantity Taken(Origin origin, string text)
    {
        if (_lookup is null)
            return Quantity.OfText(this, origin, text, []);
        return _lookup(text, out var row, out var reason)
            ? Quantity.OfText(this, origin, text, []).With(row)
            : Quantity.NotEvaluated(this, [], reason);
    }

    private Quantity? Found(Subject subject, ReadOnlySpan<Func<Subject, InputList, bool>> inputs, Take<T> find, Func<T, string> show)
    {
        var list = new InputList();
        foreach (var gather in inputs)
        {
            if (!gather(subject, list))
                return null;
        }

        var (quantities, counts) = (list.Quantities, list.Counts);
        if (Quantity.MissingReasons(quantities) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(this, quantities, reasons);
        try
        {
            T? row = null;
            foreach (var corner in CornerAlgebra.Points(quantities))
            {
                var reader = new InputReader(corner, quantities, counts);
                var found = find(ref reader);
                if (row is not null && show(row) != show(found))
                    return Quantity.NotEvaluated(this, quantities, $"{Title} is `{show(row)}` or `{show(found)}` within the tolerances");
                row = found;
            }

            return Quantity.ComputedText(this, show(row!), quantities).With(row!).With(list.Symbols);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(this, quantities, outside.Message);
        }
    }
}

/// <summary>A declared truth.</summary>
public sealed class TruthDefinition<TSpec> : Definition<TSpec, TruthDefinition<TSpec>>, IInput<bool>
    where TSpec : class
{
    internal TruthDefinition() => Describe(ValueKind.Truth);

    /// <summary>A truth as the spec states it.</summary>
    public TruthDefinition<TSpec> Stated(
        Func<TSpec, Stated<bool>?> select, string? key = null, [CallerArgumentExpression(nameof(select))] string selector = "") =>
        StatedWay(select, key ?? KeyOf(selector), (_, stated, _) => Quantity.OfTruth(this, AnalysisContext.Declared(stated), stated.Value, []));

    /// <summary>A default, where nothing above applies; the report lists it.</summary>
    public TruthDefinition<TSpec> Assumed(bool truth, string basis) => Way(_ => Quantity.OfTruth(this, new Origin.Assumed(basis), truth, []));

    /// <summary>A truth that follows from the spec alone.</summary>
    public TruthDefinition<TSpec> Named(Func<TSpec, bool> truth) =>
        Way(subject => Quantity.OfTruth(this, Origin.Computed.Instance, truth((TSpec)subject.Model), []));

    public TruthDefinition<TSpec> From<A>(IInput<A> a, Func<A, bool> formula) =>
        Way(subject => Found(subject, [a.Gather], (ref InputReader r) => formula(a.Read(ref r))));

    public TruthDefinition<TSpec> From<A, B>(IInput<A> a, IInput<B> b, Func<A, B, bool> formula) =>
        Way(subject => Found(subject, [a.Gather, b.Gather], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r))));

    public TruthDefinition<TSpec> From<A, B, C>(IInput<A> a, IInput<B> b, IInput<C> c, Func<A, B, C, bool> formula) =>
        Way(subject => Found(
            subject, [a.Gather, b.Gather, c.Gather], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r))));

    public TruthDefinition<TSpec> From<A, B, C, D>(IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, Func<A, B, C, D, bool> formula) =>
        Way(subject => Found(
            subject, [a.Gather, b.Gather, c.Gather, d.Gather],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r))));

    public TruthDefinition<TSpec> From<A, B, C, D, E, F>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, Func<A, B, C, D, E, F, bool> formula) =>
        Way(subject => Found(
            subject, [a.Gather, b.Gather, c.Gather, d.Gather, e.Gather, f.Gather],
            (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r))));

    bool IInput<bool>.Gather(Subject subject, InputList list)
    {
        if (subject.Find(this) is not { } quantity)
            return false;
        list.Add(quantity, Symbol.Length > 0 ? Symbol : Name);
        return true;
    }

    bool IInput<bool>.Read(ref InputReader reader) => reader.Quantity().Truth;

    private Quantity? Found(Subject subject, ReadOnlySpan<Func<Subject, InputList, bool>> inputs, Take<bool> formula)
    {
        var list = new InputList();
        foreach (var gather in inputs)
        {
            if (!gather(subject, list))
                return null;
        }

        var (quantities, counts) = (list.Quantities, list.Counts);
        if (Quantity.MissingReasons(quantities) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(this, quantities, reasons);
        try
        {
            bool? truth = null;
            foreach (var corner in CornerAlgebra.Points(quantities))
            {
                var reader = new InputReader(corner, quantities, counts);
                var found = formula(ref reader);
                if (truth is { } first && first != found)
                    return Quantity.NotEvaluated(this, quantities, $"{Title.ToLowerInvariant()}: true or false within the tolerances");
                truth = found;
            }

            return Quantity.OfTruth(this, Origin.Computed.Instance, truth!.Value, quantities).With(list.Symbols);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(this, quantities, outside.Message);
        }
    }
}
