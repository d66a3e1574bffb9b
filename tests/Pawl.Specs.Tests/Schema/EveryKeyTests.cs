using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Runtime.CompilerServices;
using NJsonSchema;
using NJsonSchema.Validation;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Reading;
using Pawl.Specs.Schema;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Tests.Schema;

/// <summary>
/// Two judges of every key of every file: the reader, and the kept JSON Schema by a library of its own. A document with what is
/// required and one key more is made from the model; good values pass both, bad ones pass neither.
/// </summary>
public sealed class EveryKeyTests
{
    // What the key's own value cannot tell: whether a name is declared, and how values suit each other.
    private static readonly string[] BeyondTheValue =
    [
        DiagnosticCodes.NotInCatalogue, DiagnosticCodes.UnknownBody, DiagnosticCodes.UnknownGear, DiagnosticCodes.UnknownName, DiagnosticCodes.NoCase,
        DiagnosticCodes.ExclusiveKeys, DiagnosticCodes.OpenChain, DiagnosticCodes.SpectrumSum, DiagnosticCodes.WrongSign, DiagnosticCodes.SelfMesh,
    ];

    // And of a sound value: what other keys it makes necessary or forbids.
    private static readonly string[] BeyondASoundValue =
    [
        DiagnosticCodes.MissingKey, DiagnosticCodes.SelfCarried, DiagnosticCodes.AllowanceOrder,
    ];

    // Sound values that do not suit the rest of a document with nothing but the required keys.
    private static readonly Dictionary<string, string> Unsuited = new(StringComparer.Ordinal)
    {
        ["splines.hub.teeth"] = "as many teeth as the shaft has",
        ["joints.tightening.steps"] = "100 % at last",
        ["retaining_rings.groove"] = "more than the bore of",
        ["stacks.contributors"] = "one size or more",
        ["parts.id"] = "declares no part",
        ["materials.treatments.class"] = "cannot be",
    };

    private static readonly (Type Type, string Schema, Action<YamlNode, List<Diagnostic>> Read)[] Files =
    [
        (typeof(GearboxSpec), "gearbox-whole.schema.json", (tree, found) => GearboxReader.Read(tree, "f.yaml", [], Catalogue.Empty, found)),
        (typeof(CatalogueFile), "catalogue.schema.json", (tree, found) => CatalogueReader.Read(tree, found)),
        (typeof(AdapterSpec), "adapter.schema.json", (tree, found) => AdapterReader.Read(tree, found)),
        (typeof(ProjectFile), "project.schema.json", (tree, found) => ProjectReader.Read(tree, found)),
        (typeof(BaselineFile), "baseline.schema.json", (tree, found) => BaselineReader.Read(tree, found)),
    ];

    [Theory]
    [InlineData(nameof(GearboxSpec))]
    [InlineData(nameof(CatalogueFile))]
    [InlineData(nameof(AdapterSpec))]
    [InlineData(nameof(ProjectFile))]
    [InlineData(nameof(BaselineFile))]
    public async Task Reader_and_schema_agree_on_every_key(string file)
    {
        var (type, name, read) = Files.Single(each => each.Type.Name == file);
        var schema = await JsonSchema.FromJsonAsync(
            File.ReadAllText(Path.Combine(Sample.Repository(), "schema", name)), TestContext.Current.CancellationToken);
        List<string> faults = [];
        var keys = 0;
        foreach (var place in Places(type, []))
        {
            keys++;
            foreach (var good in Good(place[^1]))
                Judge(place, good, isGood: true);
            foreach (var bad in Bad(place[^1]))
                Judge(place, bad, isGood: false);
            if (IsRequired(place[^1]))
                Judge(place, null, isGood: false);
        }

        Assert.True(faults.Count == 0, $"{faults.Count} of {keys} keys:\n{string.Join('\n', faults.Take(40))}");
        Assert.Equal(KeysOf(type), keys);

        void Judge(ImmutableArray<PropertyInfo> place, object? value, bool isGood)
        {
            var line = 0;
            var tree = Node(Around(type, place, value), ref line, out var at);
            List<Diagnostic> found = [];
            read(tree, found);
            var bySchema = new JsonSchemaValidator(new JsonSchemaValidatorSettings { FormatValidators = [] }).Validate(new TreeToJson().Convert(tree), schema);
            var complaint = found.Find(diagnostic => !BeyondTheValue.Contains(diagnostic.Code) && (value is null
                ? diagnostic.Code == DiagnosticCodes.MissingKey && diagnostic.Message.Contains($"`{KeyOf(place[^1])}`", StringComparison.Ordinal)
                : diagnostic.Span.Start.Line >= at.First && diagnostic.Span.Start.Line <= at.Last));
            var where = $"{string.Join('.', place.Select(KeyOf))}: {(value is null ? "left out" : Show(value))}";
            if (isGood && complaint is not null && !IsExcused(place, complaint))
                faults.Add($"{where}: the reader refuses it: {complaint.Message}");
            if (isGood && bySchema.Count > 0)
                faults.Add($"{where}: the schema refuses it: {string.Join("; ", bySchema)}");
            if (!isGood && complaint is null)
                faults.Add($"{where}: the reader takes it");
            if (!isGood && bySchema.Count == 0)
                faults.Add($"{where}: the schema takes it");
        }
    }

    private static bool IsExcused(ImmutableArray<PropertyInfo> place, Diagnostic complaint) =>
        BeyondASoundValue.Contains(complaint.Code)
        || (Unsuited.TryGetValue(string.Join('.', place.Select(KeyOf)), out var message) && complaint.Message.Contains(message, StringComparison.Ordinal));

    [Theory]
    [InlineData(nameof(GearboxSpec))]
    [InlineData(nameof(CatalogueFile))]
    [InlineData(nameof(AdapterSpec))]
    [InlineData(nameof(ProjectFile))]
    [InlineData(nameof(BaselineFile))]
    public async Task Neither_takes_a_key_that_is_not_known(string file)
    {
        var (type, name, read) = Files.Single(each => each.Type.Name == file);
        var schema = await JsonSchema.FromJsonAsync(
            File.ReadAllText(Path.Combine(Sample.Repository(), "schema", name)), TestContext.Current.CancellationToken);
        foreach (var place in Places(type, []).Where(place => ObjectOf(place[^1]) is not null))
        {
            var entry = Minimal(ObjectOf(place[^1])!);
            entry["no_such_key"] = "1";
            var line = 0;
            var tree = Node(Around(type, place, Wrapped(place[^1], entry)), ref line, out _);
            List<Diagnostic> found = [];
            read(tree, found);
            var where = string.Join('.', place.Select(KeyOf));
            Assert.True(found.Exists(diagnostic => diagnostic.Code == DiagnosticCodes.UnknownKey), where);
            Assert.True(new JsonSchemaValidator().Validate(new TreeToJson().Convert(tree), schema).Count > 0, where);
        }
    }

    private static IEnumerable<object> Good(PropertyInfo property)
    {
        yield return Wrapped(property, GoodValue(property));
        if (OneOf(property) is { } words)
        {
            foreach (var word in words)
                yield return Wrapped(property, word);
        }

        if (Range(property) is { } range)
        {
            yield return Wrapped(property, Invariant(range.Minimum));
            yield return Wrapped(property, Invariant(range.Maximum));
        }

        if (property.GetCustomAttribute<FractionAttribute>() is not null)
            yield return "9/5";
        if (property.GetCustomAttribute<OneOrMoreAttribute>() is not null)
            yield return "one.yaml";
        if (Measures(property) is { } measures && measures.Range is AmountRange.NotNegative or AmountRange.NotPositive)
            yield return Wrapped(property, "0" + UnitOf(measures.Example));
        if (ObjectOf(property) is not null && IsNamed(property.PropertyType))
            yield return new Dictionary<string, object>();
    }

    private static IEnumerable<object> Bad(PropertyInfo property)
    {
        if (IsNamed(property.PropertyType))
        {
            yield return "word";
            yield return (object[])["1"];
            yield return new Dictionary<string, object> { ["2nd"] = Minimal(ObjectOf(property)!) };
            yield return new Dictionary<string, object> { ["a"] = "word" };
            yield return new Dictionary<string, object> { ["a"] = "null" };
            yield break;
        }

        foreach (var bad in BadValues(property))
            yield return Wrapped(property, bad);
        if (!IsList(property.PropertyType))
            yield break;
        if (property.GetCustomAttribute<OneOrMoreAttribute>() is null)
            yield return GoodValue(property);
        yield return new Dictionary<string, object> { ["a"] = "1" };
        if (property.GetCustomAttribute<CountAttribute>() is { } count)
        {
            if (count.Min > 0)
                yield return Enumerable.Repeat(GoodValue(property), count.Min - 1).ToArray();
            if (count.Max < int.MaxValue)
                yield return Enumerable.Repeat(GoodValue(property), count.Max + 1).ToArray();
        }
    }

    private static IEnumerable<object> BadValues(PropertyInfo property)
    {
        yield return "null";
        yield return (object[])["1"];
        if (ObjectOf(property) is not null)
        {
            yield return "word";
            yield return "3";
            yield break;
        }

        yield return new Dictionary<string, object> { ["a"] = "1" };
        yield return "''";
        var type = ValueOf(property.PropertyType);
        if (type != typeof(bool))
            yield return "true";
        if (Measures(property) is { } measures)
        {
            var dimension = (Dimension)typeof(Dimension).GetField(measures.Dimension)!.GetValue(null)!;
            yield return "word";
            yield return "24 apples";
            yield return "no" + UnitOf(measures.Example);
            yield return ".inf";
            foreach (var other in (string[])["24 kg", "24 mm", "24 N·m", "24 °C", "24 MPa"])
            {
                if (Amount.TryParse(other, out var amount, out _) && amount.Dimension != dimension)
                    yield return other;
            }

            yield return "24";
            if (type == typeof(Amount) && dimension == Dimension.OfLength)
                yield return "24 mm ±0.1";

            // A sign that is fixed: by the range, or by bounds that lie on one side of zero.
            var isNeverNegative = measures.Range is AmountRange.Positive or AmountRange.NotNegative || (measures.Unit.Length > 0 && measures.Min >= 0);
            if (isNeverNegative)
                yield return "-3" + UnitOf(measures.Example);
            if (measures.Range == AmountRange.Positive)
                yield return "0" + UnitOf(measures.Example);
            if (measures.Range == AmountRange.NotPositive)
                yield return "3" + UnitOf(measures.Example);
        }
        else if (OneOf(property) is not null)
        {
            yield return "nowhere";
            yield return "7";
        }
        else if (property.GetCustomAttribute<RefersAttribute>() is not null)
        {
            yield return "2nd";
            yield return "a b";
            yield return "7";
        }
        else if (type == typeof(int) || type == typeof(double))
        {
            yield return "word";
            yield return "'3'";
            yield return ".nan";
            if (type == typeof(int))
                yield return "1.5";
            yield return "1 mm";
            var range = Range(property)!;
            yield return Invariant(Convert.ToDouble(range.Minimum, null) - 1);
            yield return Invariant(Convert.ToDouble(range.Maximum, null) + 1);
        }
        else if (type == typeof(bool))
        {
            yield return "yes";
            yield return "1";
            yield return "'true'";
        }
        else if (type == typeof(DateOnly))
        {
            yield return "2027-3-1";
            yield return "soon";
            yield return "5";
        }
        else if (type == typeof(Hardness))
        {
            yield return "60";
            yield return "24 mm";
            yield return "24 apples";
        }
    }

    private static object GoodValue(PropertyInfo property)
    {
        if (ObjectOf(property) is { } type)
            return Minimal(type);
        if (Measures(property) is { } measures)
            return measures.Example;
        if (property.GetCustomAttribute<ExampleAttribute>() is { } example)
            return example.Text;
        if (OneOf(property) is { } words)
            return words[^1];
        if (Range(property) is { } range)
            return Invariant(range.Minimum);
        var value = ValueOf(property.PropertyType);
        return value == typeof(bool) ? "true" : value == typeof(DateOnly) ? "2027-03-31" : "word";
    }

    /// <summary>An object with what is required and nothing else.</summary>
    private static Dictionary<string, object> Minimal(Type type) =>
        KeyProperties(type).Where(IsRequired).ToDictionary(KeyOf, property => Wrapped(property, GoodValue(property)));

    /// <summary>A value of a key, in a list or under a name where the key asks for them.</summary>
    private static object Wrapped(PropertyInfo property, object value)
    {
        if (IsNamed(property.PropertyType))
            return new Dictionary<string, object> { [ObjectOf(property) == typeof(TreatmentSpec) ? Treatments.Words[^1] : "a"] = value };
        return !IsList(property.PropertyType) ? value : Enumerable.Repeat(value, Math.Max(1, property.GetCustomAttribute<CountAttribute>()?.Min ?? 1)).ToArray();
    }

    /// <summary>A document that holds a value at a place; null leaves the key out.</summary>
    private static Dictionary<string, object> Around(Type root, ImmutableArray<PropertyInfo> place, object? value)
    {
        var document = Minimal(place.Length == 1 ? root : ObjectOf(place[^2])!);
        if (value is null)
            document.Remove(KeyOf(place[^1]));
        else
            document[KeyOf(place[^1])] = new Marked(value);
        for (var i = place.Length - 2; i >= 0; i--)
        {
            var outer = Minimal(i == 0 ? root : ObjectOf(place[i - 1])!);
            outer[KeyOf(place[i])] = Wrapped(place[i], document);
            document = outer;
        }

        return document;
    }

    /// <summary>Every place of a key, from the root.</summary>
    private static IEnumerable<ImmutableArray<PropertyInfo>> Places(Type type, ImmutableArray<PropertyInfo> above)
    {
        foreach (var property in KeyProperties(type))
        {
            var place = above.Add(property);
            yield return place;
            foreach (var deeper in ObjectOf(property) is { } inner ? Places(inner, place) : [])
                yield return deeper;
        }
    }

    private static int KeysOf(Type type) => KeyProperties(type).Sum(property => 1 + (ObjectOf(property) is { } inner ? KeysOf(inner) : 0));

    private static IEnumerable<PropertyInfo> KeyProperties(Type type) =>
        type.GetProperties().Where(property => property.SetMethod is not null && property.GetCustomAttribute<NotAKeyAttribute>() is null);

    private static string KeyOf(PropertyInfo property) => property.GetCustomAttribute<YamlKeyAttribute>()?.Name ?? PropertyName.Of(property.Name);

    private static bool IsRequired(PropertyInfo property) =>
        property.GetCustomAttribute<RequiredMemberAttribute>() is not null || property.GetCustomAttribute<RequiredAttribute>() is not null;

    private static MeasuresAttribute? Measures(PropertyInfo property) => property.GetCustomAttribute<MeasuresAttribute>();

    private static IReadOnlyList<string>? OneOf(PropertyInfo property) => property.GetCustomAttribute<OneOfAttribute>()?.Words;

    private static RangeAttribute? Range(PropertyInfo property) => property.GetCustomAttribute<RangeAttribute>();

    private static bool IsNamed(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Named<>);

    private static bool IsList(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>);

    /// <summary>The type of the objects under a key, or null where values stand.</summary>
    private static Type? ObjectOf(PropertyInfo property)
    {
        var type = property.PropertyType;
        if (IsNamed(type) || IsList(type))
            type = type.GetGenericArguments()[0];
        return type.IsGenericType ? null : type;
    }

    private static Type ValueOf(Type type)
    {
        while (type.IsGenericType)
            type = type.GetGenericArguments()[0];
        return type;
    }

    // What follows the first number of an example, up to its tolerance.
    private static string UnitOf(string example)
    {
        var rest = example.TrimStart('-').TrimStart([.. "0123456789."]);
        var blank = rest.IndexOf(' ', 1);
        return blank < 0 ? rest : rest[..blank];
    }

    private static string Invariant(object number) => ((IFormattable)number).ToString("R", System.Globalization.CultureInfo.InvariantCulture);

    private static string Show(object value) => value switch
    {
        Dictionary<string, object> map => $"{{{string.Join(", ", map.Select(entry => $"{entry.Key}: {Show(entry.Value)}"))}}}",
        object[] list => $"[{string.Join(", ", list.Select(Show))}]",
        Marked marked => Show(marked.Value),
        _ => value.ToString()!,
    };

    private sealed record Marked(object Value);

    /// <summary>The value as a tree, each node on a line of its own; tells the lines of the marked one.</summary>
    private static YamlNode Node(object value, ref int line, out (int First, int Last) marked)
    {
        marked = (int.MaxValue, int.MinValue);
        var span = Line(++line);
        switch (value)
        {
            case Marked(var inner):
                var node = Node(inner, ref line, out _);
                marked = (span.Start.Line, line);
                return node;
            case Dictionary<string, object> map:
                var entries = ImmutableArray.CreateBuilder<KeyValuePair<YamlScalar, YamlNode>>();
                foreach (var (key, entry) in map)
                {
                    // The key on the line of its value: what is said of the one is said of the other.
                    entries.Add(new(new(Line(line + 1), key, IsQuoted: false), Node(entry, ref line, out var within)));
                    marked = within.Last > 0 ? within : marked;
                }

                return new YamlMap(span, entries.ToImmutable());
            case object[] list:
                var items = ImmutableArray.CreateBuilder<YamlNode>();
                foreach (var item in list)
                {
                    items.Add(Node(item, ref line, out var within));
                    marked = within.Last > 0 ? within : marked;
                }

                return new YamlList(span, items.ToImmutable());
            default:
                var text = (string)value;
                var isQuoted = text.Length > 1 && text[0] == '\'';
                return new YamlScalar(span, isQuoted ? text[1..^1] : text, isQuoted);
        }

        static SourceSpan Line(int number) => new("f.yaml", new(number, 1), new(number, 1));
    }
}
