using System.Runtime.InteropServices;
using Pawl.Quantities;

namespace Pawl.Analysis.Core;

/// <summary>What a declared formula reads of its subject or of a related one.</summary>
public interface IInput
{
    /// <summary>Adds the quantities behind the input.</summary>
    /// <returns>False when the subject has none: then what rests on it does not apply either.</returns>
    bool Gather(Subject subject, InputList list);
}

/// <summary>What a declared formula reads: one value of its subject or of a related one, with its symbol.</summary>
/// <typeparam name="T">double in coherent units, text, truth, a row of a table, or many numbers.</typeparam>
public interface IInput<out T> : IInput
{
    /// <summary>Takes the next value of one evaluation.</summary>
    T Read(ref InputReader reader);
}

/// <summary>The quantities that one formula is given, with their symbols, in order.</summary>
/// <param name="usual">The symbols that the formula was given last; mostly the same again, and then they are kept once.</param>
public sealed class InputList(ImmutableArray<string> usual)
{
    private Quantity[] _quantities = usual.IsEmpty ? [] : new Quantity[usual.Length];
    private string[]? _symbols;
    private int _length;
    private List<int>? _counts;
    private List<object>? _layouts;

    internal ImmutableArray<Quantity> Quantities => field.IsDefault ? field = Cut(_quantities) : field;

    internal ImmutableArray<string> Symbols => field.IsDefault ? field = _symbols is null ? usual[.._length] : Cut(_symbols) : field;

    /// <summary>How many quantities an input stands for: one, or of many as many as there are.</summary>
    internal int Count(int input) => _counts is null ? 1 : _counts[input];

    internal object Layout(int index) => _layouts![index];

    internal void Add(object layout) => (_layouts ??= []).Add(layout);

    internal void Add(Quantity quantity, string symbol)
    {
        Put(quantity, symbol);
        _counts?.Add(1);
    }

    internal void Add(IReadOnlyCollection<Quantity> quantities, string symbol)
    {
        _counts ??= [.. Enumerable.Repeat(1, _length)];
        _counts.Add(quantities.Count);
        foreach (var quantity in quantities)
            Put(quantity, symbol);
    }

    private void Put(Quantity quantity, string symbol)
    {
        if (_length == _quantities.Length)
            Array.Resize(ref _quantities, Math.Max(4, 2 * _length));
        _quantities[_length] = quantity;
        if (_symbols is null && (_length == usual.Length || usual[_length] != symbol))
        {
            _symbols = new string[_quantities.Length];
            usual.AsSpan(0, _length).CopyTo(_symbols);
        }

        if (_symbols is not null)
        {
            if (_length == _symbols.Length)
                Array.Resize(ref _symbols, _quantities.Length);
            _symbols[_length] = symbol;
        }

        _length++;
    }

    private ImmutableArray<T> Cut<T>(T[] items) => ImmutableCollectionsMarshal.AsImmutableArray(items.Length == _length ? items : items[.._length]);
}

/// <summary>Hands the values of one evaluation to the inputs, in the order in which they were gathered.</summary>
public ref struct InputReader
{
    private readonly ReadOnlySpan<double> _values;
    private readonly InputList _list;
    private readonly ImmutableArray<Quantity> _quantities;
    private int _quantity;
    private int _input;
    private int _layout;

    internal InputReader(ReadOnlySpan<double> values, InputList list)
    {
        _values = values;
        _list = list;
        _quantities = list.Quantities;
    }

    internal object Layout() => _list.Layout(_layout++);

    internal double Number()
    {
        _input++;
        return _values[_quantity++];
    }

    internal Quantity Quantity()
    {
        _input++;
        return _quantities[_quantity++];
    }

    internal bool IsAbsent()
    {
        if (_list.Count(_input) > 0)
            return false;
        _input++;
        return true;
    }

    internal ImmutableArray<Quantity> Many()
    {
        var count = _list.Count(_input++);
        var many = _quantities.Slice(_quantity, count);
        _quantity += count;
        return many;
    }

    internal double[] Numbers()
    {
        var count = _list.Count(_input++);
        var numbers = _values.Slice(_quantity, count).ToArray();
        _quantity += count;
        return numbers;
    }
}

/// <summary>Inputs under another symbol, of related subjects, of many, or optional ones.</summary>
public static class Inputs
{
    /// <summary>A number of the same subject under a symbol of the formula.</summary>
    public static IInput<double> As(this QuantityKind kind, string symbol) => new OwnNumber(kind, symbol, null);

    /// <summary>A number of the same subject, or a constant where the subject has none.</summary>
    public static IInput<double> Or(this QuantityKind kind, double otherwise, string? symbol = null) => new OwnNumber(kind, symbol, otherwise);

    /// <summary>A number of the same subject that another class declares; the kind is a function because sections refer to each other.</summary>
    public static IInput<double> Own(Func<QuantityKind> kind, string? symbol = null) => new RelatedNumber("", kind, symbol, null);

    /// <summary>A text, truth or row of the same subject that another class declares.</summary>
    public static IInput<T> OwnRow<T>(Func<IInput<T>> input) => new RelatedRow<T>("", input);

    /// <summary>A number of the subject in a role; the kind is a function because sections refer to each other.</summary>
    public static IInput<double> Of(string role, Func<QuantityKind> kind, string? symbol = null) => new RelatedNumber(role, kind, symbol, null);

    /// <summary>A number of the subject in a role, or a constant where there is no such subject or it has none.</summary>
    public static IInput<double> OfOr(string role, Func<QuantityKind> kind, double otherwise, string? symbol = null) =>
        new RelatedNumber(role, kind, symbol, otherwise);

    /// <summary>A number of each subject in a role, in the order of the spec.</summary>
    public static IInput<double[]> Each(string role, Func<QuantityKind> kind, string? symbol = null) => new EachNumber(role, kind, symbol);

    /// <summary>Nominal, least and greatest of a number of the same subject, for formulas that choose the worst case themselves.</summary>
    public static IInput<Extent> Limits(this QuantityKind kind, string? symbol = null) => new OwnLimits(kind, symbol);

    /// <summary>Nominal, least and greatest of a number of the subject in a role.</summary>
    public static IInput<Extent> OfLimits(string role, Func<QuantityKind> kind, string? symbol = null) => new RelatedLimits(role, kind, symbol);

    /// <summary>Nominal, least and greatest of a number of each subject in a role, in the order of the spec.</summary>
    public static IInput<Extent[]> EachLimits(string role, Func<QuantityKind> kind, string? symbol = null) => new EachLimit(role, kind, symbol);

    /// <summary>As <see cref="EachLimits"/>; none at all where one of them is not known.</summary>
    public static IInput<Extent[]> EachLimitsOrNone(string role, Func<QuantityKind> kind, string? symbol = null) => new EachKnownLimit(role, kind, symbol);

    /// <summary>A text, truth or row of the subject in a role.</summary>
    public static IInput<T> OfRow<T>(string role, Func<IInput<T>> input) => new RelatedRow<T>(role, input);

    /// <summary>A text, truth or row of the same subject, or a constant where it has none.</summary>
    public static IInput<T> OwnRowOr<T>(Func<IInput<T>> input, T otherwise) => new OptionalRow<T>("", input, otherwise);

    /// <summary>A text, truth or row of the subject in a role, or a constant where it has none.</summary>
    public static IInput<T> OfRowOr<T>(string role, Func<IInput<T>> input, T otherwise) => new OptionalRow<T>(role, input, otherwise);

    /// <summary>Two inputs, of which the formula sees one value, such as a number of teeth with the sign of its gear.</summary>
    public static IInput<T> Join<A, B, T>(IInput<A> a, IInput<B> b, Func<A, B, T> join) => new Joined<A, B, T>(a, b, join);

    /// <summary>One input, of which the formula sees what is made of it, such as the class that a text names.</summary>
    public static IInput<T> Join<A, T>(IInput<A> a, Func<A, T> make) => new Made<A, T>(a, make);

    /// <inheritdoc cref="Join{A, B, T}"/>
    public static IInput<T> Join<A, B, C, T>(IInput<A> a, IInput<B> b, IInput<C> c, Func<A, B, C, T> join) =>
        new Joined<A, B, C, T>(a, b, c, join);

    /// <inheritdoc cref="Join{A, B, T}"/>
    public static IInput<T> Join<A, B, C, D, T>(IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, Func<A, B, C, D, T> join) =>
        new Joined<A, B, C, D, T>(a, b, c, d, join);

    /// <summary>What the spec says of the arrangement, such as which gear sits on which planet: it has no value of its own, and no tolerance.</summary>
    internal static IInput<T> Layout<T>(Func<Subject, T?> layout)
        where T : class => new LayoutOf<T>(layout);

    private static Subject? ReachOrOwn(Subject subject, string role) => role.Length == 0 ? subject : subject.Reach(role);

    private static string SymbolOf(QuantityKind kind, string? symbol) => symbol ?? (kind.Symbol.Length > 0 ? kind.Symbol : kind.Name);

    private sealed class OwnNumber(QuantityKind kind, string? symbol, double? otherwise) : IInput<double>
    {
        private readonly QuantityKind _kind = kind ?? throw new InvalidOperationException("An input is declared before its use.");

        public bool Gather(Subject subject, InputList list) => GatherOne(subject.Find(_kind), SymbolOf(_kind, symbol), otherwise is not null, list);

        public double Read(ref InputReader reader) => reader.IsAbsent() ? otherwise!.Value : reader.Number();
    }

    private sealed class RelatedNumber(string role, Func<QuantityKind> kind, string? symbol, double? otherwise) : IInput<double>
    {
        public bool Gather(Subject subject, InputList list) =>
            GatherOne(ReachOrOwn(subject, role)?.Find(kind()), SymbolOf(kind(), symbol), otherwise is not null, list);

        public double Read(ref InputReader reader) => reader.IsAbsent() ? otherwise!.Value : reader.Number();
    }

    private sealed class EachNumber(string role, Func<QuantityKind> kind, string? symbol) : IInput<double[]>
    {
        public bool Gather(Subject subject, InputList list)
        {
            var found = new List<Quantity>();
            foreach (var member in subject.ReachAll(role))
            {
                if (member.Find(kind()) is not { } quantity)
                    return false;
                found.Add(quantity);
            }

            list.Add(found, SymbolOf(kind(), symbol));
            return true;
        }

        public double[] Read(ref InputReader reader) => reader.Numbers();
    }

    private sealed class OwnLimits(QuantityKind kind, string? symbol) : IInput<Extent>
    {
        private readonly QuantityKind _kind = kind ?? throw new InvalidOperationException("An input is declared before its use.");

        public bool Gather(Subject subject, InputList list) => GatherOne(subject.Find(_kind), SymbolOf(_kind, symbol), false, list);

        public Extent Read(ref InputReader reader) => reader.Quantity().Value;
    }

    private sealed class RelatedLimits(string role, Func<QuantityKind> kind, string? symbol) : IInput<Extent>
    {
        public bool Gather(Subject subject, InputList list) => GatherOne(subject.Reach(role)?.Find(kind()), SymbolOf(kind(), symbol), false, list);

        public Extent Read(ref InputReader reader) => reader.Quantity().Value;
    }

    private sealed class EachLimit(string role, Func<QuantityKind> kind, string? symbol) : IInput<Extent[]>
    {
        private readonly IInput<double[]> _numbers = Each(role, kind, symbol);

        public bool Gather(Subject subject, InputList list) => _numbers.Gather(subject, list);

        public Extent[] Read(ref InputReader reader) => [.. reader.Many().Select(quantity => quantity.Value)];
    }

    private sealed class EachKnownLimit(string role, Func<QuantityKind> kind, string? symbol) : IInput<Extent[]>
    {
        public bool Gather(Subject subject, InputList list)
        {
            var members = subject.ReachAll(role).ToArray();
            Quantity[] known = [.. members.Select(member => member.Find(kind())).OfType<Quantity>().Where(static quantity => quantity.IsEvaluated)];
            list.Add(known.Length == members.Length ? known : [], SymbolOf(kind(), symbol));
            return true;
        }

        public Extent[] Read(ref InputReader reader) => [.. reader.Many().Select(quantity => quantity.Value)];
    }

    private sealed class RelatedRow<T>(string role, Func<IInput<T>> input) : IInput<T>
    {
        public bool Gather(Subject subject, InputList list) => ReachOrOwn(subject, role) is { } related && input().Gather(related, list);

        public T Read(ref InputReader reader) => input().Read(ref reader);
    }

    private sealed class OptionalRow<T>(string role, Func<IInput<T>> input, T otherwise) : IInput<T>
    {
        public bool Gather(Subject subject, InputList list)
        {
            if (ReachOrOwn(subject, role) is not { } related || !input().Gather(related, list))
                list.Add([], "");
            return true;
        }

        public T Read(ref InputReader reader) => reader.IsAbsent() ? otherwise : input().Read(ref reader);
    }

    private sealed class LayoutOf<T>(Func<Subject, T?> layout) : IInput<T>
        where T : class
    {
        public bool Gather(Subject subject, InputList list)
        {
            if (layout(subject) is not { } known)
                return false;
            list.Add(known);
            return true;
        }

        public T Read(ref InputReader reader) => (T)reader.Layout();
    }

    private sealed class Made<A, T>(IInput<A> a, Func<A, T> make) : IInput<T>
    {
        public bool Gather(Subject subject, InputList list) => a.Gather(subject, list);

        public T Read(ref InputReader reader) => make(a.Read(ref reader));
    }

    private sealed class Joined<A, B, T>(IInput<A> a, IInput<B> b, Func<A, B, T> join) : IInput<T>
    {
        public bool Gather(Subject subject, InputList list) => a.Gather(subject, list) && b.Gather(subject, list);

        public T Read(ref InputReader reader) => join(a.Read(ref reader), b.Read(ref reader));
    }

    private sealed class Joined<A, B, C, T>(IInput<A> a, IInput<B> b, IInput<C> c, Func<A, B, C, T> join) : IInput<T>
    {
        public bool Gather(Subject subject, InputList list) => a.Gather(subject, list) && b.Gather(subject, list) && c.Gather(subject, list);

        public T Read(ref InputReader reader) => join(a.Read(ref reader), b.Read(ref reader), c.Read(ref reader));
    }

    private sealed class Joined<A, B, C, D, T>(IInput<A> a, IInput<B> b, IInput<C> c, IInput<D> d, Func<A, B, C, D, T> join) : IInput<T>
    {
        public bool Gather(Subject subject, InputList list) =>
            a.Gather(subject, list) && b.Gather(subject, list) && c.Gather(subject, list) && d.Gather(subject, list);

        public T Read(ref InputReader reader) => join(a.Read(ref reader), b.Read(ref reader), c.Read(ref reader), d.Read(ref reader));
    }

    private static bool GatherOne(Quantity? quantity, string symbol, bool optional, InputList list)
    {
        if (quantity is null && !optional)
            return false;
        if (quantity is null)
            list.Add([], symbol);
        else
            list.Add(quantity, symbol);
        return true;
    }
}
