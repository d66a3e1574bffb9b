using System.Globalization;
using Pawl.Quantities;
using Pawl.Reports.Records;

namespace Pawl.Reports.Sheets;

/// <summary>Every toleranced feature of a record: what its spec states with limits, and the sizes of teeth that follow from it.</summary>
internal sealed class FeatureList
{
    private const string General = "ISO 2768";
    private readonly ConformanceRecord _record;
    private readonly Declared _declared;
    private readonly PartOf _part;
    private readonly Dictionary<(string, int, int), List<(SubjectRecord Subject, QuantityRecord Quantity)>> _places = [];
    private readonly List<Feature> _features = [];

    private FeatureList(ConformanceRecord record)
    {
        (_record, _declared) = (record, new(record));
        _part = new(_declared);
        foreach (var subject in record.Subjects)
        {
            foreach (var quantity in subject.Quantities)
            {
                if (quantity is { Origin: OriginWord.Declared, Place: { } place, Value: { Nominal: not null, Min: not null, Max: not null } } && subject.Kind != "shared_size")
                {
                    if (!_places.TryGetValue(KeyOf(place), out var there))
                        _places.Add(KeyOf(place), there = []);
                    there.Add((subject, quantity));
                }
            }
        }
    }

    /// <summary>The features, part by part in the order in which the spec first speaks of each.</summary>
    public static ImmutableArray<Feature> Of(ConformanceRecord record)
    {
        var list = new FeatureList(record);
        foreach (var subject in record.Subjects)
        {
            if (subject.Kind == "gear")
                list.Teeth(subject);
            else if (subject.Kind == "spline")
                list.Spline(subject);
            else if (subject.Kind == "parallel_key")
                list.Keyway(subject);
        }

        foreach (var input in record.Inputs)
            list.Input(input);
        var merged = list.Merged();
        return [.. merged.GroupBy(static f => f.Part).SelectMany(static group => group.OrderBy(static f => f.IsGeneral))];
    }

    private static (string, int, int) KeyOf(PlaceRecord place) => (place.File, place.Line, place.Column);

    /// <summary>Teeth as they are measured: over a span, over balls, at tip and root; the deviations of the flanks.</summary>
    private void Teeth(SubjectRecord gear)
    {
        var name = gear.Path[(gear.Path.IndexOf('.', StringComparison.Ordinal) + 1)..];
        var stated = $"train.gears.{name}.";
        Measured(gear, "base_tangent_length", Number(gear, "span_teeth") is { } k ? $"over {k} teeth" : "", [stated + "thickness_allowance.upper", stated + "thickness_allowance.lower"]);
        Measured(gear, "dimension_over_balls", Number(gear, "ball_diameter") is { } ball ? $"balls of {ball} mm" : "", []);
        Measured(gear, "tip_diameter", "", [stated + "tip_deviations.upper", stated + "tip_deviations.lower"]);
        Measured(gear, "root_diameter", "", [stated + "root_deviations.upper", stated + "root_deviations.lower"]);
        foreach (var deviation in (ReadOnlySpan<string>)["pitch_deviation", "profile_deviation", "helix_deviation"])
        {
            if (Find(gear, deviation) is not { Value: { Nominal: { } permitted } value } quantity)
                continue;
            _features.Add(new()
            {
                Part = gear.Path,
                Title = quantity.Title,
                Nominal = "0",
                Least = "",
                Greatest = (Math.Floor(Math.Min(permitted, value.Low!.Value) * 10) / 10).ToString("0.0", CultureInfo.InvariantCulture),
                Unit = value.Unit,
                Grounds = $"permitted by the tolerance class {Number(gear, "accuracy_grade")}",
                Paths = [$"{gear.Path}.{deviation}"],
            });
        }
    }

    private void Spline(SubjectRecord spline)
    {
        var body = _part.Input(spline.Path);
        Computed(spline, "effective_tooth_thickness", body, "by ring gauge, or as the actual size over pins that the gauge table gives");
        Computed(spline, "effective_space_width", spline.Path + ".hub", "by plug gauge, or as the actual size between pins that the gauge table gives");
    }

    private void Keyway(SubjectRecord key)
    {
        Computed(key, "shaft_depth", _part.Input(key.Path + ".diameter"), "depth of the keyway by its standard");
        Computed(key, "hub_depth", key.Path + ".hub", "depth of the keyway by its standard");
        Fit("shaft_fit", _part.Input(key.Path + ".diameter"), "in the shaft");
        Fit("hub_fit", key.Path + ".hub", "in the hub");

        void Fit(string fit, string part, string where)
        {
            var stated = _declared[$"{key.Path}.{fit}"];
            if (stated.Length == 0 || Find(key, "width") is not { Value: { Nominal: { } width, Unit: "mm" } })
                return;
            var written = $"{width.ToString(CultureInfo.InvariantCulture)} mm {stated}";
            if (Toleranced.TryParse(written, out var dimension, out _) && dimension.Tolerance is not Tolerance.General)
                Add(part, $"Width of the keyway {where}", dimension, null, written, $"{key.Path}.{fit}");
        }
    }

    private void Measured(SubjectRecord gear, string name, string how, ImmutableArray<string> paths)
    {
        // What is written as a dimension of its own comes with the inputs.
        if (Find(gear, name) is not { Origin: not OriginWord.Declared } quantity)
            return;
        ImmutableArray<string> stated = [.. paths.Where(path => _declared[path].Length > 0)];
        Computed(gear, name, gear.Path, how.Length > 0 ? how : "computed", stated.IsEmpty ? [$"{gear.Path}.{name}"] : stated, quantity.Title);
    }

    private void Computed(SubjectRecord subject, string name, string part, string how, ImmutableArray<string> paths = default, string? title = null)
    {
        if (Find(subject, name) is not { Value: { Nominal: { } nominal, Min: { } least, Max: { } greatest } value } quantity)
            return;
        var (shown, low, high) = Limits.Inward(nominal, least, greatest, value.Unit == "µm" ? 1 : name is "tip_diameter" or "root_diameter" ? 4 : 3);
        _features.Add(new()
        {
            Part = part, Title = title ?? $"{quantity.Title}, {subject.Path}", Nominal = shown, Least = low, Greatest = high, Unit = value.Unit,
            Grounds = how, Paths = paths.IsDefault ? [$"{subject.Path}.{name}"] : paths,
        });
    }

    private void Input(InputRecord input)
    {
        if (input.Path.Split('.')[0] is "duty" or "lubrication" or "ratio" or "gearbox")
            return;
        var known = Known(input);
        if (Toleranced.TryParse(input.Written, out var dimension, out _) && dimension.Nominal.Dimension is var measure
            && (measure == Dimension.OfLength || measure == Dimension.OfAngle))
        {
            switch (dimension.Tolerance)
            {
                case Tolerance.Fit(var hole, var shaft):
                    var fit = input.Path[..input.Path.LastIndexOf('.')];
                    Add(_part.Input(input.Path), TitleOf(input, Of(input, "hole")), new(dimension.Nominal, hole), Of(input, "hole"), input.Written, input.Path);
                    Add(_part.OfShaft(fit), TitleOf(input, Of(input, "shaft")), new(dimension.Nominal, shaft), Of(input, "shaft"), input.Written, input.Path);
                    break;
                case Tolerance.General:
                    if (known is { Quantity: { Tolerance: var grounds, Name: not "axial_position" } } && grounds.StartsWith(General, StringComparison.Ordinal))
                        Add(_part.Input(input.Path), TitleOf(input, known), dimension, known, $"{input.Written}, {grounds}", input.Path, isGeneral: true);
                    break;
                default:
                    Add(_part.Input(input.Path), TitleOf(input, known), dimension, known, input.Written, input.Path);
                    break;
            }
        }
        else if (Hardness.TryParse(input.Written, out var hardness, out _) && hardness.Min < hardness.Max)
        {
            var (nominal, least, greatest) = Limits.Exact(hardness.Nominal, hardness.Min, hardness.Max);
            _features.Add(new()
            {
                Part = _part.Input(input.Path), Title = TitleOf(input, known), Nominal = nominal, Least = least, Greatest = greatest,
                Unit = Hardness.SymbolOf(hardness.Scale), Grounds = input.Written, Paths = [input.Path],
            });
        }
    }

    private void Add(string part, string title, Toleranced dimension, (SubjectRecord Subject, QuantityRecord Quantity)? known, string written, string path, bool isGeneral = false)
    {
        var unit = dimension.Nominal.Unit;
        var (nominal, least, greatest) = (Limits.Exact(dimension.Nominal.Value, dimension.Nominal.Value, dimension.Nominal.Value).Nominal, "", "");
        if (dimension.Tolerance is Tolerance.Deviations own)
        {
            var at = dimension.Nominal.Coherent;
            (nominal, least, greatest) = Limits.Exact(dimension.Nominal.Value, unit.FromCoherent(at + own.Lower), unit.FromCoherent(at + own.Upper));
        }
        else if (known is { Quantity.Value: { Min: { } low, Max: { } high } value } && Units.TryParse(value.Unit, out var recorded) && recorded.Dimension == unit.Dimension)
        {
            (nominal, least, greatest) = Limits.Exact(
                dimension.Nominal.Value, unit.FromCoherent(recorded.ToCoherent(low)), unit.FromCoherent(recorded.ToCoherent(high)));
        }

        _features.Add(new()
        {
            Part = part, Title = title, Nominal = nominal, Least = least, Greatest = greatest, Unit = unit.Symbol, Grounds = written, Paths = [path], IsGeneral = isGeneral,
        });
    }

    /// <summary>The quantity that an input became. One text may stand for several, where a list or an anchor repeats it.</summary>
    private (SubjectRecord Subject, QuantityRecord Quantity)? Known(InputRecord input)
    {
        if (!_places.TryGetValue(KeyOf(input.Place), out var there))
            return null;
        var path = input.Path.StartsWith("train.", StringComparison.Ordinal) ? input.Path["train.".Length..] : input.Path;
        foreach (var one in there)
        {
            if (path.StartsWith(one.Subject.Path + ".", StringComparison.Ordinal))
                return one;
        }

        return there[0];
    }

    private (SubjectRecord Subject, QuantityRecord Quantity)? Of(InputRecord input, string name)
    {
        foreach (var one in _places.GetValueOrDefault(KeyOf(input.Place)) ?? [])
        {
            if (one.Quantity.Name == name)
                return one;
        }

        return null;
    }

    private static string TitleOf(InputRecord input, (SubjectRecord Subject, QuantityRecord Quantity)? known)
    {
        var keys = input.Path.Split('.');
        var title = known?.Quantity.Title ?? keys[^1].Replace('_', ' ');

        // The means of the limits are how it is computed, not what is measured.
        title = title.Replace(", mean of its limits", "", StringComparison.Ordinal);
        return keys[0] == "train" && keys.Length > 2 && keys[1] == "gears" ? title : $"{title}, {known?.Subject.Path ?? string.Join('.', keys.Take(2))}";
    }

    private static QuantityRecord? Find(SubjectRecord subject, string name) => subject.Quantities.FirstOrDefault(q => q.Name == name);

    private static string? Number(SubjectRecord subject, string name) =>
        Find(subject, name)?.Value.Nominal is { } nominal ? Formatting.Significant(nominal, 6) : null;

    /// <summary>What two sections state of one place of one part is measured once.</summary>
    private List<Feature> Merged()
    {
        Dictionary<string, string> same = new(StringComparer.Ordinal);
        foreach (var shared in _record.Subjects)
        {
            if (shared.Kind == "shared_size" && shared.Path.Split('~') is [var first, var second])
                same[Root(same, first)] = Root(same, second);
        }

        List<Feature> merged = [];
        Dictionary<(string, string, string, string), int> taken = [];
        foreach (var feature in _features)
        {
            var key = (Root(same, feature.Paths[0]), feature.Least, feature.Greatest, feature.Unit);
            if (taken.TryGetValue(key, out var at) && merged[at].Part == feature.Part && feature.Paths is [var path] && !merged[at].Paths.Contains(path))
                merged[at] = merged[at] with { Paths = merged[at].Paths.Add(path) };
            else
            {
                taken[key] = merged.Count;
                merged.Add(feature);
            }
        }

        return merged;
    }

    private static string Root(Dictionary<string, string> same, string path)
    {
        // Two names at the end of each other are one; a circle would turn for ever.
        for (var i = 0; i <= same.Count && same.TryGetValue(path, out var next) && next != path; i++)
            path = next;
        return path;
    }
}
