namespace Pawl.Reports.Records.Stored;

/// <summary>A record on its way into a file: whatever a reference gives back exactly becomes one, the rest is written in full.</summary>
internal sealed class Packing
{
    private readonly ConformanceRecord _record;
    private readonly Pool<string> _texts;
    private readonly Pool<FormulaSource> _sources = new();
    private readonly Pool<StoredKind> _kinds = new(KindEquality.Instance);
    private readonly Dictionary<string, int> _rules;
    private readonly Dictionary<string, int> _subjects;
    private readonly Dictionary<string, int> _quantities = new(StringComparer.Ordinal);
    private readonly Dictionary<(string, PlaceRecord), int> _inputs = [];
    private readonly List<(string Name, QuantityRecord Quantity)> _all = [];

    private Packing(ConformanceRecord record, Pool<string> texts)
    {
        (_record, _texts) = (record, texts);
        _rules = Numbered(record.Rules.Select(static rule => rule.Id));
        _subjects = Numbered(record.Subjects.Select(static subject => subject.Path));
        for (var i = 0; i < record.Inputs.Length; i++)
            _inputs.TryAdd((record.Inputs[i].Written, record.Inputs[i].Place), i);
        foreach (var subject in record.Subjects)
        {
            foreach (var quantity in subject.Quantities)
            {
                var name = TermOf.Name(subject.Path, quantity.Name);
                _quantities.TryAdd(name, _all.Count);
                _all.Add((name, quantity));
            }
        }
    }

    /// <summary>The record as stored, but for its files of places, which are known once they are written.</summary>
    /// <param name="record">The record.</param>
    /// <param name="texts">Where texts are gathered.</param>
    public static StoredRecord Of(ConformanceRecord record, Pool<string> texts) => new Packing(record, texts).Record();

    private StoredRecord Record()
    {
        var quantities = _all.Select(each => Quantity(each.Quantity)).ToImmutableArray();
        var subjects = Subjects();
        var findings = _record.Findings.Select(Finding).ToImmutableArray();
        var assumptions = _record.Assumptions.Select(Assumption).ToImmutableArray();
        return new()
        {
            Format = _record.Format,
            Id = _record.Id,
            Tool = _record.Tool,
            Identity = _record.Identity,
            AsOf = _record.AsOf,
            Verdict = _record.Verdict,
            Coverage = _record.Coverage,
            Topology = _record.Topology,
            Parts = _record.Parts,
            Cautions = _record.Cautions,
            Findings = findings,
            Baseline = _record.Baseline,
            Waiting = _record.Waiting,
            Deviations = _record.Deviations,
            Rules = _record.Rules,
            Subjects = subjects,
            Quantities = quantities,
            QuantityKinds = _kinds.All,
            Assumptions = assumptions,
            Inputs = _record.Inputs,
            Sources = _sources.All,
            Texts = [],
            PlaceFiles = [],
            Files = _record.Files,
            Packs = _record.Packs,
            ShippedFiles = _record.ShippedFiles,
            Tables = _record.Tables,
        };
    }

    private ImmutableArray<StoredSubject> Subjects()
    {
        var subjects = ImmutableArray.CreateBuilder<StoredSubject>(_record.Subjects.Length);
        var first = 0;
        foreach (var subject in _record.Subjects)
        {
            subjects.Add(new()
            {
                Path = subject.Path,
                Kind = subject.Kind,
                Title = subject.Title,
                Domain = subject.Domain,
                Place = subject.Place,
                Related = subject.Related,
                First = first,
                Count = subject.Quantities.Length,
            });
            first += subject.Quantities.Length;
        }

        return subjects.MoveToImmutable();
    }

    private StoredQuantity Quantity(QuantityRecord quantity)
    {
        var symbols = Symbols(quantity);
        var numbers = ImmutableArray.CreateBuilder<int>(quantity.Terms.Length);
        for (var i = 0; i < quantity.Terms.Length && symbols is not null; i++)
            numbers.Add(_quantities[quantity.Terms[i].Quantity!]);

        var ownUnit = quantity.Value.Nominal is not null && quantity.Value is { Text: null, Truth: null, Reasons.IsEmpty: true };
        var kind = _kinds.Add(new()
        {
            Name = quantity.Name,
            Symbol = quantity.Symbol,
            Title = quantity.Title,
            Unit = ownUnit ? quantity.Value.Unit : "",
            Formula = quantity.Formula,
            Symbols = symbols ?? [],
            Source = _sources.Add(new() { Source = quantity.Source, Certainty = quantity.Certainty }),
            Note = quantity.Note,
        });
        return new(kind, ownUnit ? quantity.Value with { Unit = "" } : quantity.Value, numbers.DrainToImmutable(), Origin(quantity, symbols is null));
    }

    /// <summary>The symbols of the terms where they are not those of their quantities, none where they are; null when a term is no plain quantity.</summary>
    private ImmutableArray<string>? Symbols(QuantityRecord quantity)
    {
        var own = true;
        foreach (var term in quantity.Terms)
        {
            if (term.Quantity is null || !_quantities.TryGetValue(term.Quantity, out var number))
                return null;
            var (name, of) = _all[number];
            if (!Same.Term(term, TermOf.Plain(name, of, term.Symbol)))
                return null;
            own &= term.Symbol == TermOf.Symbol(of);
        }

        return own ? [] : [.. quantity.Terms.Select(static term => term.Symbol)];
    }

    private StoredOrigin Origin(QuantityRecord quantity, bool withTerms)
    {
        int? input = quantity is { Written: { } written, Place: { } place } && _inputs.TryGetValue((written, place), out var number) ? number : null;
        var origin = new StoredOrigin
        {
            Input = input,
            Written = input is null ? quantity.Written : null,
            Place = input is null ? quantity.Place : null,
            Tolerance = quantity.Tolerance.Length == 0 ? null : _texts.Add(quantity.Tolerance),
            Basis = quantity.Basis is { } basis ? _texts.Add(basis) : null,
            Wide = quantity.Wide,
            Terms = withTerms ? [.. quantity.Terms.Select(term => Term(term, TermOf.Plain))] : [],
        };
        return origin.Implied == quantity.Origin ? origin : origin with { Origin = quantity.Origin };
    }

    private StoredTerm Term(TermRecord term, Func<string, QuantityRecord, string?, TermRecord> make)
    {
        if (term.Quantity is not { } name || !_quantities.TryGetValue(name, out var number))
            return new(null, null, term);
        var of = _all[number].Quantity;
        return Same.Term(term, make(name, of, null)) ? new(number, null, null)
            : Same.Term(term, make(name, of, term.Symbol)) ? new(number, term.Symbol, null)
            : new(null, null, term);
    }

    private StoredMeasure? Measure(MeasureRecord? measure) => measure switch
    {
        null => null,
        { Quantity: { } name, Expression: null, Terms.IsEmpty: true } when _quantities.TryGetValue(name, out var number) && Same.Value(_all[number].Quantity.Value, measure.Value) =>
            new(number, null),
        _ => new(null, new()
        {
            Quantity = measure.Quantity,
            Expression = measure.Expression,
            Value = measure.Value,
            Terms = [.. measure.Terms.Select(term => Term(term, TermOf.Plain))],
        }),
    };

    private StoredFinding Finding(FindingRecord finding)
    {
        var rule = _rules.TryGetValue(finding.Rule, out var ruleNumber) ? _record.Rules[ruleNumber] : null;
        var subject = _subjects.TryGetValue(finding.Subject, out var subjectNumber) ? _record.Subjects[subjectNumber] : null;
        return new()
        {
            Rule = rule is null ? new(null, finding.Rule) : new(ruleNumber, null),
            Subject = subject is null ? new(null, finding.Subject) : new(subjectNumber, null),
            Domain = finding.Domain == subject?.Domain ? null : finding.Domain,
            Title = finding.Title == rule?.Title ? null : finding.Title,
            Outcome = finding.Outcome,
            Severity = finding.Severity == rule?.Severity ? null : finding.Severity,
            Measured = Measure(finding.Measured),
            AtLeast = Measure(finding.AtLeast),
            AtMost = Measure(finding.AtMost),
            OneOf = finding.OneOf,
            Margin = finding.Margin,
            AbsoluteMargin = finding.AbsoluteMargin,
            Worst = finding.Worst,
            Place = finding.Place,
            Reasons = [.. finding.Reasons.Select(_texts.Add)],
            Suggestion = finding.Suggestion,
            FollowsFrom = finding.FollowsFrom,
            Concession = finding.Concession,
            Known = finding.Known,
            Governing = [.. finding.Governing.Select(term => Term(term, TermOf.Governing))],
        };
    }

    private StoredAssumption Assumption(AssumptionRecord assumption)
    {
        var known = _quantities.TryGetValue(assumption.Quantity, out var number);
        var of = known ? _all[number].Quantity : null;
        return new()
        {
            Quantity = known ? new(number, null) : new(null, assumption.Quantity),
            Title = assumption.Title == of?.Title ? null : assumption.Title,
            Value = of is not null && Same.Value(of.Value, assumption.Value) ? null : assumption.Value,
            Basis = assumption.Basis == of?.Basis ? null : assumption.Basis,
            Rules = [.. assumption.Rules.Select(id => _rules.TryGetValue(id, out var rule) ? new StoredName(rule, null) : new(null, id))],
        };
    }

    private static Dictionary<string, int> Numbered(IEnumerable<string> names)
    {
        Dictionary<string, int> numbered = new(StringComparer.Ordinal);
        var number = 0;
        foreach (var name in names)
            numbered.TryAdd(name, number++);
        return numbered;
    }

    private sealed class KindEquality : IEqualityComparer<StoredKind>
    {
        public static readonly KindEquality Instance = new();

        public bool Equals(StoredKind? x, StoredKind? y) => x is not null && y is not null
            && x.Symbols.SequenceEqual(y.Symbols, StringComparer.Ordinal) && x with { Symbols = [] } == y with { Symbols = [] };

        public int GetHashCode(StoredKind obj) => HashCode.Combine(obj.Name, obj.Title, obj.Unit, obj.Formula, obj.Symbols.Length);
    }
}
