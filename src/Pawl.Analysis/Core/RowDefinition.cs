using System.Runtime.CompilerServices;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Core;

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

    /// <summary>Every word that it can be, so that rules that ask for another are found.</summary>
    public RowDefinition<TSpec, T> OneOf(params ImmutableArray<string> words)
    {
        Describe(words);
        return this;
    }

    /// <summary>The text as the spec states it.</summary>
    public RowDefinition<TSpec, T> Stated(
        Func<TSpec, Stated<string>?> select, string? key = null, [CallerArgumentExpression(nameof(select))] string selector = "") =>
        StatedWay(select, key ?? KeyOf(selector), (_, stated, _) => Taken(AnalysisContext.Declared(stated), stated.Value));

    /// <summary>A default, where nothing above applies; the report lists it.</summary>
    public RowDefinition<TSpec, T> Assumed(string text, string basis) => Way(_ => Taken(new Origin.Assumed(basis), text));

    /// <summary>A text that follows from the spec alone.</summary>
    public RowDefinition<TSpec, T> Named(Func<TSpec, string> text) => Way(subject => Taken(Origin.Computed.Instance, text((TSpec)subject.Model)));

    /// <summary>A row that is found by others.</summary>
    /// <param name="a">What it is found by.</param>
    /// <param name="find">Finds it.</param>
    /// <param name="show">The text that stands for it; a text stands for itself.</param>
    public RowDefinition<TSpec, T> From<A>(IInput<A> a, Func<A, T> find, Func<T, string>? show = null) =>
        Found([a], (ref InputReader r) => find(a.Read(ref r)), show);

    /// <inheritdoc cref="From{A}"/>
    public RowDefinition<TSpec, T> From<A, B>(IInput<A> a, IInput<B> b, Func<A, B, T> find, Func<T, string>? show = null) =>
        Found([a, b], (ref InputReader r) => find(a.Read(ref r), b.Read(ref r)), show);

    /// <inheritdoc cref="From{A}"/>
    public RowDefinition<TSpec, T> From<A, B, C>(IInput<A> a, IInput<B> b, IInput<C> c, Func<A, B, C, T> find, Func<T, string>? show = null) =>
        Found([a, b, c], (ref InputReader r) => find(a.Read(ref r), b.Read(ref r), c.Read(ref r)), show);

    /// <inheritdoc cref="From{A}"/>
    public RowDefinition<TSpec, T> From<A, B, C, D, E>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, Func<A, B, C, D, E, T> find, Func<T, string>? show = null) =>
        Found([a, b, c, d, e], (ref InputReader r) => find(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r)), show);

    bool IInput.Gather(Subject subject, InputList list) => GatherOwn(subject, list);

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

    /// <inheritdoc cref="Solved(ImmutableArray{IInput}, Func{Subject, ImmutableArray{string}}, Func{TSpec, Subject, T?}, Func{T, string}?)"/>
    internal RowDefinition<TSpec, T> Solved(ImmutableArray<IInput> inputs, Func<TSpec, Subject, T?> solve) => Solved(inputs, static _ => [], solve);

    /// <summary>A row that a solver finds at nominal from what the spec says: of the declared inputs, which the report lists.</summary>
    /// <param name="inputs">What it depends on; one without a value leaves it open.</param>
    /// <param name="reasons">Why the solver has no answer; none when it has one.</param>
    /// <param name="solve">The solver; null where the subject does not have it.</param>
    /// <param name="show">The text that stands for the row; a text stands for itself.</param>
    internal RowDefinition<TSpec, T> Solved(
        ImmutableArray<IInput> inputs, Func<Subject, ImmutableArray<string>> reasons, Func<TSpec, Subject, T?> solve, Func<T, string>? show = null)
    {
        CheckDeclared(inputs);
        return Way(subject => SolvedOf(subject, inputs, reasons, quantities =>
            solve((TSpec)subject.Model, subject) is { } row ? Quantity.ComputedText(this, Show(row, show), quantities).With(row) : null));
    }

    private static string Show(T row, Func<T, string>? show) =>
        show is not null ? show(row) : row as string ?? throw new InvalidOperationException($"No text was declared for a {typeof(T).Name}.");

    private RowDefinition<TSpec, T> Found(ImmutableArray<IInput> inputs, Take<T> find, Func<T, string>? show)
    {
        CheckDeclared(inputs);
        return Way(subject =>
        {
            return !Gathered(subject, inputs, out var list) ? null : Evaluated(list, quantities =>
            {
                T? row = null;
                foreach (var corner in CornerAlgebra.Points(quantities))
                {
                    var reader = new InputReader(corner, list);
                    var found = find(ref reader);
                    if (row is not null && Show(row, show) != Show(found, show))
                        return Quantity.NotEvaluated(this, quantities, $"{Title} is `{Show(row, show)}` or `{Show(found, show)}` within the tolerances");
                    row = found;
                }

                return Quantity.ComputedText(this, Show(row!, show), quantities).With(row!).With(list.Symbols);
            });
        });
    }
}
