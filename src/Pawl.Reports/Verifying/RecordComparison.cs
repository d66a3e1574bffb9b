using System.Text.Json;
using Pawl.Reports.Records;

namespace Pawl.Reports.Verifying;

/// <summary>Sets a record beside another of the same spec, as when it is computed again.</summary>
/// <remarks>
/// Everything is compared but who made it and from which files. Entries of lists are matched by what they are of, not by where they
/// stand. Numbers are the same within <see cref="Tolerance"/>: the last digits of sines and powers differ between machines.
/// </remarks>
public static class RecordComparison
{
    /// <summary>Relative difference up to which two numbers are the same.</summary>
    public const double Tolerance = 1e-9;

    private static readonly HashSet<string> Identifying = new(StringComparer.Ordinal) { "format", "tool", "files", "packs", "shipped_files" };

    /// <summary>Compares two records.</summary>
    /// <param name="was">The one that was kept.</param>
    /// <param name="now">The other.</param>
    /// <param name="ofSameFiles">Whether lines, columns and the report number count: not when a file has changed, since every place below the change has moved.</param>
    public static Comparison Of(ConformanceRecord was, ConformanceRecord now, bool ofSameFiles)
    {
        ArgumentNullException.ThrowIfNull(was);
        ArgumentNullException.ThrowIfNull(now);
        using var old = JsonDocument.Parse(RecordJson.Whole(was));
        using var young = JsonDocument.Parse(RecordJson.Whole(now));
        var walk = new Walk(ofSameFiles, ofSameFiles && was.Tool == now.Tool);
        walk.Objects("", old.RootElement, young.RootElement);
        return new([.. walk.Differences.OrderBy(static difference => difference.Kind)], walk.Numbers, walk.Outcomes);
    }

    private sealed class Walk(bool withPlaces, bool withNumber)
    {
        public List<Difference> Differences { get; } = [];

        public int Numbers { get; private set; }

        public int Outcomes { get; private set; }

        public void Objects(string path, JsonElement was, JsonElement now)
        {
            foreach (var member in was.EnumerateObject())
                Values(Below(path, member.Name), member.Name, member.Value, now.TryGetProperty(member.Name, out var other) ? other : null);
            foreach (var member in now.EnumerateObject())
            {
                if (!was.TryGetProperty(member.Name, out _))
                    Values(Below(path, member.Name), member.Name, null, member.Value);
            }
        }

        private void Values(string path, string name, JsonElement? was, JsonElement? now)
        {
            if (Identifying.Contains(path) || (name == "place" && !withPlaces) || (path == "id" && !withNumber))
                return;
            if (was is not { } old || now is not { } young || old.ValueKind != young.ValueKind)
                Add(path, name, was, now);
            else if (old.ValueKind == JsonValueKind.Object)
                Objects(path, old, young);
            else if (old.ValueKind == JsonValueKind.Array)
                Lists(path, old, young);
            else if (old.ValueKind == JsonValueKind.Number)
                Two(path, old.GetDouble(), young.GetDouble());
            else if (old.ValueKind == JsonValueKind.String && old.GetString() != young.GetString())
                Add(path, name, was, now);
            else if (IsOutcome(name))
                Outcomes++;
        }

        private void Two(string path, double was, double now)
        {
            if (Math.Abs(was - now) > Math.Max(Tolerance * Math.Max(Math.Abs(was), Math.Abs(now)), 1e-12))
                Differences.Add(new(DifferenceKind.Number, path, Text(was), Text(now)));
            else
                Numbers++;
        }

        private void Lists(string path, JsonElement was, JsonElement now)
        {
            var old = Keyed(was);
            var young = Keyed(now);
            foreach (var (key, item) in old)
                Values($"{path}[{key}]", "", item, young.TryGetValue(key, out var other) ? other : null);
            foreach (var (key, item) in young)
            {
                if (!old.ContainsKey(key))
                    Values($"{path}[{key}]", "", null, item);
            }
        }

        private static OrderedDictionary<string, JsonElement> Keyed(JsonElement list)
        {
            var keyed = new OrderedDictionary<string, JsonElement>(StringComparer.Ordinal);
            var index = 0;
            foreach (var item in list.EnumerateArray())
            {
                var name = KeyOf(item) ?? Phrase.Whole(index + 1);
                var key = name;
                for (var i = 2; !keyed.TryAdd(key, item); i++)
                    key = $"{name} {Phrase.Whole(i)}";
                index++;
            }

            return keyed;
        }

        private static string? KeyOf(JsonElement item)
        {
            if (item.ValueKind != JsonValueKind.Object)
                return null;
            if (Text(item, "rule") is { } rule)
                return Text(item, "subject") is { } subject ? $"{rule} on {subject}" : Text(item, "what") is { } what ? $"{rule} {what}" : rule;
            return Text(item, "path") ?? Text(item, "id") ?? Text(item, "name") ?? Text(item, "quantity") ?? Text(item, "role") ?? Text(item, "domain") ?? Text(item, "reason");
        }

        private static string? Text(JsonElement item, string name) =>
            item.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

        private void Add(string path, string name, JsonElement? was, JsonElement? now) =>
            Differences.Add(new(IsOutcome(name) ? DifferenceKind.Outcome : DifferenceKind.Other, path, Short(was), Short(now)));

        private static bool IsOutcome(string name) => name is "outcome" or "word";

        private static string Below(string path, string name) => path.Length == 0 ? name : $"{path}.{name}";

        private static string Text(double number) => number.ToString("R", System.Globalization.CultureInfo.InvariantCulture);

        private static string? Short(JsonElement? value) => value switch
        {
            null => null,
            { ValueKind: JsonValueKind.String } text => text.GetString(),
            { ValueKind: JsonValueKind.Object or JsonValueKind.Array } => "present",
            { } other => other.GetRawText(),
        };
    }
}
