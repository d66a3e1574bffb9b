using Pawl.Quantities;

namespace Pawl.Analysis.Core;

/// <summary>Where the quantities of one kind of subject are declared, each in a static field, in the order of a report.</summary>
/// <typeparam name="TSpec">What the spec says of such a subject; formulas see it only through declared quantities.</typeparam>
public abstract class Section<TSpec>
    where TSpec : class
{
    private static readonly List<QuantityKind> Declared = [];

    private protected Section()
    {
    }

    /// <summary>The kind of subject whose quantities the given classes declare.</summary>
    /// <param name="name">In rules and records.</param>
    /// <param name="title">For people.</param>
    /// <param name="domain">The part of a report that it belongs to.</param>
    /// <param name="declarations">Each runs the initialiser of one class; by name, so that a native build knows it too.</param>
    internal static SubjectKind KindOf(string name, string title, string domain, params ReadOnlySpan<Action> declarations) =>
        KindOf(name, title, domain, [], declarations);

    /// <summary>The kind of subject whose quantities the given classes declare, and others that a solver adds.</summary>
    internal static SubjectKind KindOf(
        string name, string title, string domain, ImmutableArray<QuantityKind> added, params ReadOnlySpan<Action> declarations)
    {
        foreach (var declare in declarations)
            declare();
        return new(name, title, domain, [.. Declared, .. added]);
    }

    protected static NumberDefinition<TSpec> Number(string name, string symbol, string title, Unit? unit = null) =>
        Add(new NumberDefinition<TSpec> { Name = name, Symbol = symbol, Title = title, Unit = unit ?? Units.One, Certainty = Certainty.Declared });

    protected static RowDefinition<TSpec, string> Text(string name, string title, string symbol = "") =>
        Add(new RowDefinition<TSpec, string>(null) { Name = name, Symbol = symbol, Title = title, Certainty = Certainty.Declared });

    /// <summary>A text that stands for a row of a table; formulas are given the row.</summary>
    protected static RowDefinition<TSpec, T> Row<T>(string name, string title, Lookup<T>? lookup = null, string symbol = "")
        where T : class =>
        Add(new RowDefinition<TSpec, T>(lookup) { Name = name, Symbol = symbol, Title = title, Certainty = Certainty.Declared });

    protected static TruthDefinition<TSpec> Truth(string name, string title, string symbol = "") =>
        Add(new TruthDefinition<TSpec> { Name = name, Symbol = symbol, Title = title, Certainty = Certainty.Declared });

    private static T Add<T>(T definition)
        where T : QuantityKind
    {
        Declared.Add(definition);
        return definition;
    }
}
