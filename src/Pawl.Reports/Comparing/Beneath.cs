using Pawl.Reports.Records;

namespace Pawl.Reports.Comparing;

/// <summary>Which of some places lie beneath a finding: in what it measures, in its limits, in all that these are computed from.</summary>
internal sealed class Beneath
{
    private static readonly ImmutableHashSet<int> None = [];

    private readonly Dictionary<string, List<(PlaceRecord Place, int Number)>> _places = new(StringComparer.Ordinal);
    private readonly Dictionary<string, QuantityRecord> _quantities = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableHashSet<int>> _known = new(StringComparer.Ordinal);

    public Beneath(ConformanceRecord? record, ImmutableArray<PlaceRecord?> places)
    {
        for (var i = 0; i < places.Length; i++)
        {
            if (places[i] is not { } place)
                continue;
            if (!_places.TryGetValue(place.File, out var list))
                _places[place.File] = list = [];
            list.Add((place, i));
        }

        if (_places.Count == 0)
            return;
        foreach (var subject in record?.Subjects ?? [])
        {
            foreach (var quantity in subject.Quantities)
                _quantities[$"{subject.Path}.{quantity.Name}"] = quantity;
        }
    }

    public ImmutableHashSet<int> Of(FindingRecord? finding)
    {
        if (finding is null || _places.Count == 0)
            return None;
        var found = At(finding.Place).Union(Of(finding.Measured)).Union(Of(finding.AtLeast)).Union(Of(finding.AtMost));
        return Of(finding.Governing, found);
    }

    private ImmutableHashSet<int> Of(MeasureRecord? measure) =>
        measure is null ? None : Of(measure.Terms, measure.Quantity is { } name ? Quantity(name) : None);

    private ImmutableHashSet<int> Of(ImmutableArray<TermRecord> terms, ImmutableHashSet<int> found)
    {
        foreach (var term in terms)
        {
            found = found.Union(At(term.Place));
            if (term.Quantity is { } name)
                found = found.Union(Quantity(name));
            found = Of(term.Terms, found);
        }

        return found;
    }

    private ImmutableHashSet<int> Quantity(string name)
    {
        if (_known.TryGetValue(name, out var known))
            return known;
        if (!_quantities.TryGetValue(name, out var quantity))
            return None;

        // Should a quantity lead back to itself, it adds nothing the second time.
        _known[name] = None;
        return _known[name] = Of(quantity.Terms, At(quantity.Place));
    }

    private ImmutableHashSet<int> At(PlaceRecord? place)
    {
        if (place is null || !_places.TryGetValue(place.File, out var list))
            return None;
        var found = None;
        foreach (var (changed, number) in list)
        {
            if (IsWithin(place, changed))
                found = found.Add(number);
        }

        return found;
    }

    // A part of a text has a place inside that of the text.
    private static bool IsWithin(PlaceRecord place, PlaceRecord whole) =>
        (place.Line, place.Column).CompareTo((whole.Line, whole.Column)) >= 0 && (place.EndLine, place.EndColumn).CompareTo((whole.EndLine, whole.EndColumn)) <= 0;
}
