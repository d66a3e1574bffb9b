using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Reports.Records;
using Pawl.Specs.Text;

namespace Pawl.Reports.Building;

/// <summary>Writes quantities down, each once: many formulas share their inputs.</summary>
internal sealed class QuantityWriter
{
    private readonly Dictionary<Quantity, TermRecord> _terms = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<SourceSpan, PlaceRecord> _places = [];

    public SubjectRecord Write(Subject subject)
    {
        var quantities = ImmutableArray.CreateBuilder<QuantityRecord>();
        foreach (var quantity in subject.Quantities)
            quantities.Add(Write(quantity));

        var related = ImmutableArray.CreateBuilder<RelationRecord>(subject.Related.Count);
        foreach (var (role, other) in subject.Related)
            related.Add(new() { Role = role, Subject = other.Path });

        return new()
        {
            Path = subject.Path,
            Kind = subject.Kind.Name,
            Title = subject.Kind.Title,
            Domain = subject.Kind.Domain,
            Place = Place(subject.Span),
            Related = related.MoveToImmutable(),
            Quantities = quantities.DrainToImmutable(),
        };
    }

    public MeasureRecord? Measure(Quantity? quantity)
    {
        if (quantity is null)
            return null;
        var term = Term(quantity);
        return new()
        {
            Quantity = term.Quantity,
            Expression = term.Quantity is not null ? null : term.Formula.Length > 0 ? term.Formula : quantity.Kind.Title,
            Value = term.Value,
            Terms = term.Terms,
        };
    }

    /// <summary>What is known of a quantity where it is used, under its own symbol.</summary>
    public TermRecord Term(Quantity quantity)
    {
        if (_terms.TryGetValue(quantity, out var known))
            return known;

        // A quantity of a subject has its derivation there; one that belongs to no subject carries it along.
        var owned = quantity.Subject.Length > 0;
        var declared = quantity.Origin as Origin.Declared;
        var term = new TermRecord
        {
            Symbol = Symbol(quantity.Kind),
            Quantity = owned ? $"{quantity.Subject}.{quantity.Kind.Name}" : null,
            Value = Value(quantity),
            Written = declared?.Text,
            Place = declared is null ? null : Place(declared.Span),
            Basis = (quantity.Origin as Origin.Assumed)?.Basis,
            Formula = owned ? "" : quantity.Kind.Formula,
            Terms = owned ? [] : Terms(quantity),
        };
        _terms.Add(quantity, term);
        return term;
    }

    public PlaceRecord Place(SourceSpan span)
    {
        if (_places.TryGetValue(span, out var known))
            return known;

        var place = new PlaceRecord
        {
            File = span.File,
            Line = span.Start.Line,
            Column = span.Start.Column,
            EndLine = span.End.Line,
            EndColumn = span.End.Column,
        };
        _places.Add(span, place);
        return place;
    }

    /// <summary>A distance between two values of a kind, in its unit; between two temperatures, in kelvin.</summary>
    public static ValueRecord Distance(QuantityKind kind, double distance)
    {
        var unit = kind.Dimension.IsPoint ? Units.Kelvin : kind.Unit;
        return new() { Nominal = unit.FromCoherent(distance) + 0.0, Unit = unit.Symbol };
    }

    private QuantityRecord Write(Quantity quantity)
    {
        var kind = quantity.Kind;
        var term = Term(quantity);
        return new()
        {
            Name = kind.Name,
            Symbol = kind.Symbol,
            Title = kind.Title,
            Value = term.Value,
            Origin = quantity.Origin switch
            {
                Origin.Declared => OriginWord.Declared,
                Origin.Assumed => OriginWord.Assumed,
                _ => OriginWord.Computed,
            },
            Written = term.Written,
            Place = term.Place,
            Tolerance = (quantity.Origin as Origin.Declared)?.Tolerance ?? "",
            Basis = term.Basis,
            Formula = kind.Formula,
            Terms = Terms(quantity),
            Source = kind.Source,
            Certainty = Words.Of(kind.Certainty),
            Note = kind.Note,
            Wide = quantity.IsBounded,
        };
    }

    private ImmutableArray<TermRecord> Terms(Quantity quantity)
    {
        if (quantity.Inputs.IsEmpty)
            return [];

        var terms = ImmutableArray.CreateBuilder<TermRecord>(quantity.Inputs.Length);
        for (var i = 0; i < quantity.Inputs.Length; i++)
        {
            var term = Term(quantity.Inputs[i]);

            // Places and texts of a quantity with a subject stand there; here its name and value are enough.
            if (term.Quantity is not null && term.Place is not null)
                term = term with { Written = null, Place = null };
            if (term.Quantity is not null && term.Basis is not null)
                term = term with { Basis = null };

            // The formula has its own names for its inputs: d_a1 for the tip diameter of the first gear.
            var symbol = i < quantity.Symbols.Length ? quantity.Symbols[i] : term.Symbol;
            terms.Add(symbol == term.Symbol ? term : term with { Symbol = symbol });
        }

        return terms.MoveToImmutable();
    }

    private static string Symbol(QuantityKind kind) => kind.Symbol.Length > 0 ? kind.Symbol : kind.Name;

    private static ValueRecord Value(Quantity quantity)
    {
        if (!quantity.IsEvaluated)
            return new() { Reasons = quantity.Reasons };

        switch (quantity.Kind.ValueKind)
        {
            case ValueKind.Text:
                return new() { Text = quantity.Text ?? "" };
            case ValueKind.Truth:
                return new() { Truth = quantity.Truth };
            default:
                var (unit, value) = (quantity.Kind.Unit, quantity.Value);
                return new()
                {
                    Nominal = Finite(unit.FromCoherent(value.Nominal), quantity),
                    Min = value.IsExact ? null : Finite(unit.FromCoherent(value.Min), quantity),
                    Max = value.IsExact ? null : Finite(unit.FromCoherent(value.Max), quantity),
                    Unit = unit.Symbol,
                };
        }
    }

    // Adding zero turns −0 into 0, which reads the same in every output.
    private static double Finite(double value, Quantity quantity) => double.IsFinite(value)
        ? value + 0.0
        : throw new InvalidOperationException($"{quantity} is evaluated and has no finite value.");
}
