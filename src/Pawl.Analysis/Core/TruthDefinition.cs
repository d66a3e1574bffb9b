using System.Runtime.CompilerServices;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Core;

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

    /// <summary>A truth of declared inputs; the formula sees them and nothing else.</summary>
    public TruthDefinition<TSpec> From<A>(IInput<A> a, Func<A, bool> formula) =>
        Found([a], (ref InputReader r) => formula(a.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public TruthDefinition<TSpec> From<A, B>(IInput<A> a, IInput<B> b, Func<A, B, bool> formula) =>
        Found([a, b], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public TruthDefinition<TSpec> From<A, B, C>(IInput<A> a, IInput<B> b, IInput<C> c, Func<A, B, C, bool> formula) =>
        Found([a, b, c], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public TruthDefinition<TSpec> From<A, B, C, D>(IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, Func<A, B, C, D, bool> formula) =>
        Found([a, b, c, d], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r)));

    /// <inheritdoc cref="From{A}"/>
    public TruthDefinition<TSpec> From<A, B, C, D, E, F>(
        IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, IInput<E> e, IInput<F> f, Func<A, B, C, D, E, F, bool> formula) =>
        Found([a, b, c, d, e, f], (ref InputReader r) => formula(a.Read(ref r), b.Read(ref r), c.Read(ref r), d.Read(ref r), e.Read(ref r), f.Read(ref r)));

    bool IInput.Gather(Subject subject, InputList list) => GatherOwn(subject, list);

    bool IInput<bool>.Read(ref InputReader reader) => reader.Quantity().Truth;

    /// <inheritdoc cref="Solved(ImmutableArray{IInput}, Func{Subject, ImmutableArray{string}}, Func{TSpec, Subject, bool?})"/>
    internal TruthDefinition<TSpec> Solved(ImmutableArray<IInput> inputs, Func<TSpec, Subject, bool?> solve) => Solved(inputs, static _ => [], solve);

    /// <summary>A truth that a solver finds at nominal from what the spec says: of the declared inputs, which the report lists.</summary>
    /// <param name="inputs">What it depends on; one without a value leaves it open.</param>
    /// <param name="reasons">Why the solver has no answer; none when it has one.</param>
    /// <param name="solve">The solver; null where the subject does not have it.</param>
    internal TruthDefinition<TSpec> Solved(
        ImmutableArray<IInput> inputs, Func<Subject, ImmutableArray<string>> reasons, Func<TSpec, Subject, bool?> solve)
    {
        CheckDeclared(inputs);
        return Way(subject => SolvedOf(subject, inputs, reasons, quantities =>
            solve((TSpec)subject.Model, subject) is { } truth ? Quantity.OfTruth(this, Origin.Computed.Instance, truth, quantities) : null));
    }

    private TruthDefinition<TSpec> Found(ImmutableArray<IInput> inputs, Take<bool> formula)
    {
        CheckDeclared(inputs);
        return Way(subject =>
        {
            return !Gathered(subject, inputs, out var list) ? null : Evaluated(list, quantities =>
            {
                bool? truth = null;
                foreach (var corner in CornerAlgebra.Points(quantities))
                {
                    var reader = new InputReader(corner, list);
                    var found = formula(ref reader);
                    if (truth is { } first && first != found)
                        return Quantity.NotEvaluated(this, quantities, $"{Title.ToLowerInvariant()}: true or false within the tolerances");
                    truth = found;
                }

                return Quantity.OfTruth(this, Origin.Computed.Instance, truth!.Value, quantities).With(list.Symbols);
            });
        });
    }
}
