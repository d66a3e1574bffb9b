namespace Pawl.Reports.Records.Stored;

/// <summary>A record on its way out of a file. Every reference is tested before it is followed.</summary>
internal sealed class Unpacking
{
    /// <summary>Most characters that the texts of a record may have once every reference is replaced by what it refers to.</summary>
    internal const long MostCharacters = 1L << 28;

    private readonly StoredRecord _stored;
    private readonly string[] _names;
    private readonly QuantityRecord[] _quantities;
    private readonly TermRecord?[] _plain;
    private readonly TermRecord?[] _governing;
    private readonly int[] _lengths;
    private long _spent;

    private Unpacking(StoredRecord stored)
    {
        _stored = stored;
        var count = stored.Quantities.Length;
        (_names, _quantities, _lengths) = (new string[count], new QuantityRecord[count], new int[count]);
        (_plain, _governing) = (new TermRecord?[count], new TermRecord?[count]);
    }

    /// <summary>The record of what is stored.</summary>
    /// <exception cref="FormatException">A reference leads nowhere, or quantities depend on themselves; the message says where.</exception>
    public static ConformanceRecord Of(StoredRecord stored) => new Unpacking(stored).Record();

    private ConformanceRecord Record()
    {
        Quantities();
        RefuseCircles();
        var subjects = Subjects();
        return new()
        {
            Format = _stored.Format,
            Id = _stored.Id,
            Tool = _stored.Tool,
            Identity = _stored.Identity,
            AsOf = _stored.AsOf,
            Parts = _stored.Parts,
            Verdict = _stored.Verdict,
            Coverage = _stored.Coverage,
            Topology = _stored.Topology,
            Files = _stored.Files,
            Packs = _stored.Packs,
            ShippedFiles = _stored.ShippedFiles,
            Tables = _stored.Tables,
            Findings = [.. _stored.Findings.Select(Finding)],
            Baseline = _stored.Baseline,
            Waiting = _stored.Waiting,
            Rules = _stored.Rules,
            Deviations = _stored.Deviations,
            Subjects = subjects,
            Assumptions = [.. _stored.Assumptions.Select(Assumption)],
            Inputs = _stored.Inputs,
            Cautions = _stored.Cautions,
        };
    }

    /// <summary>Everything of the quantities but their terms, which need all of them.</summary>
    private void Quantities()
    {
        var next = 0;
        for (var s = 0; s < _stored.Subjects.Length; s++)
        {
            var subject = _stored.Subjects[s];
            var path = $"$.subjects[{Phrase.Whole(s)}]";
            if (subject.First != next)
                throw Wrong($"{path}.first", $"The subject begins at {Phrase.Whole(subject.First)}, and the one before it ends at {Phrase.Whole(next)}");
            if (subject.Count < 0 || subject.Count > _quantities.Length - next)
                throw Wrong($"{path}.count", $"There are not {Phrase.Whole(subject.Count)} more quantities");
            for (; next < subject.First + subject.Count; next++)
                Quantity(next, subject);
        }

        if (next != _quantities.Length)
            throw Wrong($"$.quantities[{Phrase.Whole(next)}]", "No subject has this quantity");
    }

    private void Quantity(int number, StoredSubject subject)
    {
        var stored = _stored.Quantities[number];
        var path = $"$.quantities[{Phrase.Whole(number)}]";
        var kind = At(_stored.QuantityKinds, stored.Kind, path, "quantity_kinds");
        var source = At(_stored.Sources, kind.Source, $"$.quantity_kinds[{Phrase.Whole(stored.Kind)}].source", "sources");
        var origin = stored.Origin;
        var input = origin.Input is { } i ? At(_stored.Inputs, i, path + ".input", "inputs") : null;
        var quantity = new QuantityRecord
        {
            Name = kind.Name,
            Symbol = kind.Symbol,
            Title = kind.Title,
            Value = stored.Value is { Nominal: not null, Unit.Length: 0 } ? stored.Value with { Unit = kind.Unit } : stored.Value,
            Origin = origin.Origin ?? origin.Implied,
            Written = input?.Written ?? origin.Written,
            Place = input?.Place ?? origin.Place,
            Tolerance = origin.Tolerance is { } tolerance ? Text(tolerance, path + ".tolerance") : "",
            Basis = origin.Basis is { } basis ? Text(basis, path + ".basis") : null,
            Formula = kind.Formula,
            Source = source.Source,
            Certainty = source.Certainty,
            Note = kind.Note,
            Wide = origin.Wide,
        };
        (_names[number], _quantities[number]) = (TermOf.Name(subject.Path, kind.Name), quantity);
        _lengths[number] = _names[number].Length + quantity.Symbol.Length + (quantity.Written?.Length ?? 0) + (quantity.Place?.File.Length ?? 0)
            + (quantity.Basis?.Length ?? 0) + (quantity.Value.Text?.Length ?? 0) + quantity.Value.Unit.Length + quantity.Value.Reasons.Sum(static reason => reason.Length);
        Spend(quantity.Title.Length + quantity.Formula.Length + quantity.Source.Length + quantity.Note.Length + (long)_lengths[number] + quantity.Tolerance.Length, path);
    }

    private ImmutableArray<SubjectRecord> Subjects()
    {
        for (var number = 0; number < _quantities.Length; number++)
        {
            var terms = Terms(number);
            if (!terms.IsEmpty)
                _quantities[number] = _quantities[number] with { Terms = terms };
        }

        return
        [
            .. _stored.Subjects.Select(subject => new SubjectRecord
            {
                Path = subject.Path,
                Kind = subject.Kind,
                Title = subject.Title,
                Domain = subject.Domain,
                Place = subject.Place,
                Related = subject.Related,
                Quantities = [.. _quantities.AsSpan(subject.First, subject.Count)],
            }),
        ];
    }

    private ImmutableArray<TermRecord> Terms(int number)
    {
        var stored = _stored.Quantities[number];
        var path = $"$.quantities[{Phrase.Whole(number)}].terms";
        var symbols = _stored.QuantityKinds[stored.Kind].Symbols;
        if (!stored.Origin.Terms.IsEmpty)
        {
            return stored.Terms.IsEmpty && symbols.IsEmpty
                ? Terms(stored.Origin.Terms, path, Plain)
                : throw Wrong(path, "The terms are listed twice");
        }

        if (!symbols.IsEmpty && symbols.Length != stored.Terms.Length)
            throw Wrong(path, $"The kind of the quantity has {Phrase.Count(symbols.Length, "symbol")}, and the quantity {Phrase.Count(stored.Terms.Length, "term")}");
        var terms = ImmutableArray.CreateBuilder<TermRecord>(stored.Terms.Length);
        for (var i = 0; i < stored.Terms.Length; i++)
            terms.Add(Plain(stored.Terms[i], symbols.IsEmpty ? null : symbols[i], $"{path}[{Phrase.Whole(i)}]"));
        return terms.MoveToImmutable();
    }

    private static ImmutableArray<TermRecord> Terms(ImmutableArray<StoredTerm> stored, string path, Func<int, string?, string, TermRecord> make)
    {
        var terms = ImmutableArray.CreateBuilder<TermRecord>(stored.Length);
        for (var i = 0; i < stored.Length; i++)
        {
            var each = stored[i];
            terms.Add(each.Of is { } of ? make(of, each.Symbol, $"{path}[{Phrase.Whole(i)}]") : each.Whole!);
        }

        return terms.MoveToImmutable();
    }

    private TermRecord Plain(int number, string? symbol, string path)
    {
        var of = Quantity(number, path);
        return symbol is not null ? TermOf.Plain(_names[number], of, symbol) : _plain[number] ??= TermOf.Plain(_names[number], of);
    }

    private TermRecord Governing(int number, string? symbol, string path)
    {
        var of = Quantity(number, path);
        return symbol is not null ? TermOf.Governing(_names[number], of, symbol) : _governing[number] ??= TermOf.Governing(_names[number], of);
    }

    private QuantityRecord Quantity(int number, string path)
    {
        var quantity = number >= 0 && number < _quantities.Length ? _quantities[number] : throw Dangling(number, path, "quantities", _quantities.Length);
        Spend(_lengths[number], path);
        return quantity;
    }

    private FindingRecord Finding(StoredFinding finding, int number)
    {
        var path = $"$.findings[{Phrase.Whole(number)}]";
        var rule = finding.Rule.Number is { } r ? At(_stored.Rules, r, path + ".rule", "rules") : null;
        var subject = finding.Subject.Number is { } s ? At(_stored.Subjects, s, path + ".subject", "subjects") : null;
        var reasons = ImmutableArray.CreateBuilder<string>(finding.Reasons.Length);
        for (var i = 0; i < finding.Reasons.Length; i++)
        {
            reasons.Add(Text(finding.Reasons[i], $"{path}.reasons[{Phrase.Whole(i)}]"));
            Spend(reasons[i].Length, path);
        }

        Spend((rule?.Id.Length ?? 0) + (long)(rule?.Title.Length ?? 0) + (subject?.Path.Length ?? 0) + (subject?.Domain.Length ?? 0), path);
        return new()
        {
            Rule = rule?.Id ?? finding.Rule.Text!,
            Subject = subject?.Path ?? finding.Subject.Text!,
            Domain = finding.Domain ?? subject?.Domain ?? throw Wrong(path + ".domain", "Neither the finding nor a subject of the record says the domain"),
            Title = finding.Title ?? rule?.Title ?? throw Wrong(path + ".title", "Neither the finding nor a rule of the record says the title"),
            Outcome = finding.Outcome,
            Severity = finding.Severity ?? rule?.Severity ?? throw Wrong(path + ".severity", "Neither the finding nor a rule of the record says the severity"),
            Measured = Measure(finding.Measured, path + ".measured"),
            AtLeast = Measure(finding.AtLeast, path + ".at_least"),
            AtMost = Measure(finding.AtMost, path + ".at_most"),
            OneOf = finding.OneOf,
            Margin = finding.Margin,
            AbsoluteMargin = finding.AbsoluteMargin,
            Worst = finding.Worst,
            Place = finding.Place,
            Reasons = reasons.MoveToImmutable(),
            Suggestion = finding.Suggestion,
            FollowsFrom = finding.FollowsFrom,
            Concession = finding.Concession,
            Known = finding.Known,
            Governing = Terms(finding.Governing, path + ".governing", Governing),
        };
    }

    private MeasureRecord? Measure(StoredMeasure? measure, string path) => measure switch
    {
        null => null,
        { Of: { } of } => new() { Value = Quantity(of, path).Value, Quantity = _names[of] },
        { Whole: { } whole } => new()
        {
            Quantity = whole.Quantity,
            Expression = whole.Expression,
            Value = whole.Value,
            Terms = Terms(whole.Terms, path + ".terms", Plain),
        },
        _ => throw Wrong(path, "The measure is null"),
    };

    private AssumptionRecord Assumption(StoredAssumption assumption, int number)
    {
        var path = $"$.assumptions[{Phrase.Whole(number)}]";
        var of = assumption.Quantity.Number is { } q ? Quantity(q, path + ".quantity") : null;
        var rules = ImmutableArray.CreateBuilder<string>(assumption.Rules.Length);
        for (var i = 0; i < assumption.Rules.Length; i++)
        {
            rules.Add(assumption.Rules[i] is { Number: { } rule } ? At(_stored.Rules, rule, $"{path}.rules[{Phrase.Whole(i)}]", "rules").Id : assumption.Rules[i].Text!);
            Spend(rules[i].Length, path);
        }

        return new()
        {
            Quantity = assumption.Quantity is { Number: { } name } ? _names[name] : assumption.Quantity.Text!,
            Title = assumption.Title ?? of?.Title ?? throw Wrong(path + ".title", "Neither the assumption nor a quantity of the record says the title"),
            Value = assumption.Value ?? of?.Value ?? throw Wrong(path + ".value", "Neither the assumption nor a quantity of the record says the value"),
            Basis = assumption.Basis ?? of?.Basis ?? throw Wrong(path + ".basis", "Neither the assumption nor a quantity of the record says the basis"),
            Rules = rules.MoveToImmutable(),
        };
    }

    /// <summary>Quantities that come about by themselves cannot be computed again, and never end for whoever follows them.</summary>
    private void RefuseCircles()
    {
        var done = new byte[_quantities.Length];
        var open = new Stack<(int Number, int Next)>();
        for (var start = 0; start < done.Length; start++)
        {
            if (done[start] == 0)
                open.Push((start, 0));
            while (open.TryPop(out var at))
            {
                done[at.Number] = 1;
                if (Step(at.Number, at.Next) is not { } to)
                {
                    done[at.Number] = 2;
                    continue;
                }

                open.Push((at.Number, at.Next + 1));
                var path = $"$.quantities[{Phrase.Whole(at.Number)}].terms[{Phrase.Whole(at.Next)}]";
                if (to < -1 || to >= done.Length)
                    throw Dangling(to, path, "quantities", done.Length);
                if (to >= 0 && done[to] == 1)
                    throw Wrong(path, $"Quantity {Phrase.Whole(to)} comes about by itself");
                if (to >= 0 && done[to] == 0)
                    open.Push((to, 0));
            }
        }
    }

    /// <summary>The quantity that a term refers to, −1 of one in full; null past the last.</summary>
    private int? Step(int number, int term)
    {
        var stored = _stored.Quantities[number];
        if (!stored.Origin.Terms.IsEmpty)
            return term >= stored.Origin.Terms.Length ? null : stored.Origin.Terms[term].Of is { } of ? of < 0 ? int.MinValue : of : -1;
        return term >= stored.Terms.Length ? null : stored.Terms[term] < 0 ? int.MinValue : stored.Terms[term];
    }

    private string Text(int number, string path) => At(_stored.Texts, number, path, "texts");

    private static T At<T>(ImmutableArray<T> list, int number, string path, string name) =>
        number >= 0 && number < list.Length ? list[number] : throw Dangling(number, path, name, list.Length);

    // A short reference to a long text, many times over, is a small file and a huge record.
    private void Spend(long characters, string path)
    {
        _spent += characters;
        if (_spent > MostCharacters)
            throw Wrong(path, "The references lead to more text than any record has");
    }

    private static FormatException Dangling(int number, string path, string list, int count) =>
        Wrong(path, $"There is no {Phrase.Whole(number)} in \"{list}\", which has {Phrase.Count(count, "entry").Replace("entrys", "entries", StringComparison.Ordinal)}");

    private static FormatException Wrong(string path, string reason) => new($"The text is no conformance record: {reason}. Path: {path}.");
}
