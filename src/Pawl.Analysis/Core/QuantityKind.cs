using Pawl.Quantities;

namespace Pawl.Analysis.Core;

/// <summary>How sure a formula or a table value is.</summary>
public enum Certainty
{
    /// <summary>Follows from definitions; can be derived on paper.</summary>
    ClosedForm,

    /// <summary>Read in the named source.</summary>
    Published,

    /// <summary>Recalled from the named source and not checked against a copy of it.</summary>
    Memory,

    /// <summary>A habit of the trade without a source.</summary>
    CommonPractice,

    /// <summary>Stated by the spec or its catalogue.</summary>
    Declared,
}

/// <summary>What sort of value a quantity has.</summary>
public enum ValueKind
{
    Number,
    Text,
    Truth,
}

/// <summary>A quantity that subjects of one kind have: its name, meaning, formula and source, once for all specs.</summary>
public class QuantityKind
{
    private ValueKind _valueKind;
    private double _scale = 1;
    private string _formula = "";
    private string _source = "";
    private Certainty _certainty;
    private string _note = "";
    private bool _isNeverNegative;
    private ImmutableArray<string> _words = [];

    /// <summary>How it comes about on demand; null for what a solver adds.</summary>
    internal Func<Subject, Quantity?>? Evaluate { get; private protected init; }

    /// <summary>Name in rules and records, in snake case: <c>transverse_contact_ratio</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Symbol of the standard: <c>ε_α</c>.</summary>
    public string Symbol { get; init; } = "";

    /// <summary>Term of the standard, for people: <c>Transverse contact ratio</c>.</summary>
    public required string Title { get; init; }

    public ValueKind ValueKind
    {
        get => _valueKind;
        init => _valueKind = value;
    }

    /// <summary>The unit of reports; its dimension is the quantity's.</summary>
    public Unit Unit { get; init; } = Units.One;

    /// <summary>What a margin is a fraction of when the limit is zero, in coherent units.</summary>
    public double Scale
    {
        get => _scale;
        init => _scale = value;
    }

    /// <summary>The formula in plain text with the symbols of <see cref="Symbols"/>; empty for declared values.</summary>
    public string Formula
    {
        get => _formula;
        init => _formula = value;
    }

    /// <summary>Symbols of the inputs, in the order in which they are given to the formula.</summary>
    public ImmutableArray<string> Symbols { get; init; } = [];

    /// <summary>Standard or textbook that the formula comes from.</summary>
    public string Source
    {
        get => _source;
        init => _source = value;
    }

    /// <summary>By what it is, no value is below zero: a count, a size, a stress, a safety factor.</summary>
    public bool IsNeverNegative
    {
        get => _isNeverNegative;
        init => _isNeverNegative = value;
    }

    /// <summary>Every word that a text can be; empty when they are not listed.</summary>
    public ImmutableArray<string> Words
    {
        get => _words;
        init => _words = value;
    }

    public Certainty Certainty
    {
        get => _certainty;
        init => _certainty = value;
    }

    /// <summary>A simplification or range of validity that the reader of a report must know.</summary>
    public string Note
    {
        get => _note;
        init => _note = value;
    }

    /// <summary>The keys that state it, from the entry of its subject; a leading slash makes one a path from the top of the spec.</summary>
    public ImmutableArray<string> StatedKeys { get; private set; } = [];

    /// <summary>The type of the entry that they are keys of, as the model has it; empty where nothing states it.</summary>
    public string StatedIn { get; private set; } = "";

    private protected void DescribeKey(string key, string model) => (StatedKeys, StatedIn) = (StatedKeys.AddRange(key.Split(" or ")), model);

    /// <summary>What a definition says of itself after its name.</summary>
    private protected void Describe(string formula, string source, Certainty certainty) => (_formula, _source, _certainty) = (formula, source, certainty);

    private protected void Describe(string note) => _note = note;

    private protected void Describe(double scale) => _scale = scale;

    private protected void Describe(ImmutableArray<string> words) => _words = words;

    private protected void DescribeNeverNegative() => _isNeverNegative = true;

    private protected void Describe(ValueKind valueKind) => _valueKind = valueKind;

    /// <summary>Place in its subject kind's list; set on registration.</summary>
    public int Index { get; internal set; } = -1;

    /// <summary>The kind of subject that has it; set on registration.</summary>
    public SubjectKind Of { get; internal set; } = null!;

    public Dimension Dimension => Unit.Dimension;

    public override string ToString() => $"{Of?.Name}.{Name}";
}

/// <summary>A kind of thing that rules speak of: the train, a gear, a mesh, a planet set.</summary>
public sealed class SubjectKind
{
    private readonly Dictionary<string, QuantityKind> _byName = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Func<SubjectKind>> _relations = new(StringComparer.Ordinal);

    /// <param name="name">Name in rules: <c>mesh</c>.</param>
    /// <param name="title">For people: <c>Mesh</c>.</param>
    /// <param name="domain">Part of the report that it belongs to: <c>Train</c>.</param>
    /// <param name="quantities">Every quantity that such a subject may have.</param>
    public SubjectKind(string name, string title, string domain, ImmutableArray<QuantityKind> quantities)
    {
        Name = name;
        Title = title;
        Domain = domain;
        Quantities = quantities;
        for (var i = 0; i < quantities.Length; i++)
        {
            quantities[i].Index = i;
            quantities[i].Of = this;
            _byName.Add(quantities[i].Name, quantities[i]);
        }
    }

    public string Name { get; }

    public string Title { get; }

    public string Domain { get; }

    public ImmutableArray<QuantityKind> Quantities { get; }

    /// <summary>Roles under which a rule reaches related subjects, and their kinds.</summary>
    public IEnumerable<KeyValuePair<string, SubjectKind>> Relations =>
        _relations.Select(r => KeyValuePair.Create(r.Key, r.Value()));

    /// <summary>Adds a role; the kind is a function because kinds refer to each other.</summary>
    public SubjectKind With(string role, Func<SubjectKind> kind)
    {
        _relations.Add(role, kind);
        return this;
    }

    /// <summary>Adds every such subject of a spec to its analysis; null when others do it.</summary>
    internal Action<AnalysisContext>? AddAll { get; private set; }

    /// <summary>A section that adds its own subjects, in no order to others: relations are followed and values computed on demand.</summary>
    internal SubjectKind AddedBy(Action<AnalysisContext> addAll)
    {
        AddAll = addAll;
        return this;
    }

    public QuantityKind? Find(string quantity) => _byName.GetValueOrDefault(quantity);

    public SubjectKind? Related(string role) => _relations.TryGetValue(role, out var kind) ? kind() : null;

    public override string ToString() => Name;
}
