using System.Diagnostics.CodeAnalysis;
using System.Text;
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

    // What the formula was given last; of no account but for the room that it saves.
    private ImmutableArray<string> _symbols = [];

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
            var list = new InputList([]);
            if (!input.Gather(subject, list))
                return false;
            var quantities = list.Quantities;
            if (!Quantity.MissingReasons(quantities).IsEmpty)
                return true;
            var reader = new InputReader(Nominal(quantities), list);
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

    /// <summary>Where there are reasons why nothing is known of it, it is not evaluated.</summary>
    internal TSelf Unless(Func<Subject, ImmutableArray<string>> reasons) =>
        Custom(subject => reasons(subject) is { IsEmpty: false } why ? Quantity.NotEvaluated(this, [], why) : null);

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
        DescribeKey(key, typeof(TSpec).Name);
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

    /// <summary>A quantity that is declared after its use would be null there.</summary>
    private protected static void CheckDeclared(ImmutableArray<IInput> inputs)
    {
        foreach (var input in inputs)
        {
            if (input is null)
                throw new InvalidOperationException("An input is declared before its use.");
        }
    }

    /// <summary>Gathers all inputs; false when the subject lacks one, then it does not have what rests on it either.</summary>
    private protected bool Gathered(Subject subject, ImmutableArray<IInput> inputs, out InputList list)
    {
        list = new(_symbols);
        foreach (var input in inputs)
        {
            if (!input.Gather(subject, list))
                return false;
        }

        _symbols = list.Symbols;
        return true;
    }

    /// <summary>What comes of inputs that all have a value; else, and outside of the range of validity, not evaluated with the reasons.</summary>
    private protected Quantity? Evaluated(InputList list, Func<ImmutableArray<Quantity>, Quantity?> compute)
    {
        var quantities = list.Quantities;
        if (Quantity.MissingReasons(quantities) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(this, quantities, reasons);
        try
        {
            return compute(quantities);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(this, quantities, outside.Message);
        }
    }

    /// <summary>What a solver finds of declared inputs, or why it does not.</summary>
    private protected Quantity? SolvedOf(
        Subject subject, ImmutableArray<IInput> inputs, Func<Subject, ImmutableArray<string>> reasons, Func<ImmutableArray<Quantity>, Quantity?> solve)
    {
        if (!Gathered(subject, inputs, out var list))
            return null;
        return reasons(subject) is { IsEmpty: false } why
            ? Quantity.NotEvaluated(this, list.Quantities, why)
            : Evaluated(list, quantities => solve(quantities)?.With(list.Symbols));
    }

    private protected bool GatherOwn(Subject subject, InputList list)
    {
        if (subject.Find(this) is not { } quantity)
            return false;
        list.Add(quantity, Symbol.Length > 0 ? Symbol : Name);
        return true;
    }

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
