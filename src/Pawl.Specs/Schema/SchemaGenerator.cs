using System.ComponentModel.DataAnnotations;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Runtime.CompilerServices;
using NJsonSchema;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Specs.Schema;

/// <summary>What a schema is for.</summary>
public enum SchemaPurpose
{
    /// <summary>A file in an editor: a base may state what the file leaves out, and <c>null</c> removes what a base states.</summary>
    File,

    /// <summary>A whole document: what is required must be there, and null is no value.</summary>
    Whole,
}

/// <summary>Makes a JSON Schema from the C# types of a model, in the vocabulary of draft-07.</summary>
/// <remarks>
/// Walks public properties: <c>required</c>, <see cref="DisplayAttribute"/>, <see cref="RangeAttribute"/>, <see cref="CountAttribute"/>,
/// <see cref="MeasuresAttribute"/>, <see cref="ExampleAttribute"/>, <see cref="OneOfAttribute"/>, <see cref="RefersAttribute"/>, <see cref="FractionAttribute"/>,
/// <see cref="OneOrMoreAttribute"/>, <see cref="NotAKeyAttribute"/>. Types: <see cref="Stated{T}"/> and bare values,
/// <see cref="ImmutableArray{T}"/>, <see cref="Named{T}"/>, and records of these.
/// </remarks>
public sealed class SchemaGenerator(SchemaPurpose purpose)
{
    /// <summary>A name: starts with a letter; letters, digits, underscores, hyphens.</summary>
    public const string NamePattern = "^[A-Za-z][A-Za-z0-9_-]*$";

    private const string HardnessPattern = @"^(?=[\s\S]*[0-9])[\s\S]*(HR[Cc]|R[Cc]|HB|BHN|HV)";
    private const string TextPattern = @"\S";
    private const string DatePattern = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$";
    private const string FractionPattern = @"^\s*[0-9]+\s*/\s*0*[1-9][0-9]*\s*$";

    private readonly Dictionary<(Type, bool), JsonSchema> _definitions = [];
    private JsonSchema _root = new();

    // An entry of a list is replaced as a whole, so it must be whole in a file as well.
    private bool _isWhole = purpose == SchemaPurpose.Whole;

    /// <summary>The schema of a type.</summary>
    /// <param name="type">The record that the file holds.</param>
    /// <param name="title">Shown by editors.</param>
    /// <param name="description">Shown by editors.</param>
    public JsonSchema Generate(Type type, string title, string description)
    {
        ArgumentNullException.ThrowIfNull(type);
        _definitions.Clear();
        _root = new() { SchemaVersion = "http://json-schema.org/draft-07/schema#", Title = title, Description = description };
        Fill(_root, type);
        return _root;
    }

    [UnconditionalSuppressMessage("Trimming", "IL2070", Justification = "A native build keeps the models whole: Pawl.Cli.csproj.")]
    private void Fill(JsonSchema schema, Type type)
    {
        schema.Type = JsonObjectType.Object;
        schema.AllowAdditionalProperties = false;
        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (property.GetCustomAttribute<NotAKeyAttribute>() is not null || property.SetMethod is null)
                continue;

            var key = property.GetCustomAttribute<YamlKeyAttribute>()?.Name ?? PropertyName.Of(property.Name);
            var isVersion = key == "pawl";
            var value = new JsonSchemaProperty();
            schema.Properties[key] = value;
            Describe(value, property);
            Shape(value, property.PropertyType, property);
            if (!_isWhole && !isVersion)
                PermitNull(value);
            if (IsRequired(property) && (_isWhole || isVersion))
                schema.RequiredProperties.Add(key);
        }
    }

    private static bool IsRequired(PropertyInfo property) =>
        property.GetCustomAttribute<RequiredMemberAttribute>() is not null || property.GetCustomAttribute<RequiredAttribute>() is not null;

    private static void Describe(JsonSchema schema, PropertyInfo property)
    {
        if (property.GetCustomAttribute<DisplayAttribute>() is not { } display)
            return;
        schema.Title = display.Name;
        schema.Description = display.Description;
    }

    private void Shape(JsonSchema schema, Type type, PropertyInfo property)
    {
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>))
        {
            List(schema, type.GetGenericArguments()[0], property);
        }
        else if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Named<>))
        {
            schema.Type = JsonObjectType.Object;
            schema.AllowAdditionalProperties = false;
            var entry = new JsonSchemaProperty();
            Shape(entry, type.GetGenericArguments()[0], property);
            entry.Title = null;
            entry.Description = null;
            if (!_isWhole)
                PermitNull(entry);
            schema.PatternProperties[NamePattern] = entry;
        }
        else
        {
            Single(schema, Bare(type), property);
        }
    }

    private static Type Bare(Type type)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        return type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Stated<>) ? type.GetGenericArguments()[0] : type;
    }

    private void List(JsonSchema schema, Type item, PropertyInfo property)
    {
        var items = new JsonSchema();
        var outer = _isWhole;
        _isWhole = true;
        Shape(items, item, property);
        _isWhole = outer;
        if (property.GetCustomAttribute<OneOrMoreAttribute>() is null)
        {
            AsList(schema);
            return;
        }

        var list = new JsonSchema();
        AsList(list);
        var one = new JsonSchema();
        Shape(one, item, property);
        schema.AnyOf.Add(one);
        schema.AnyOf.Add(list);

        void AsList(JsonSchema target)
        {
            target.Type = JsonObjectType.Array;
            target.Item = items;
            if (property.GetCustomAttribute<CountAttribute>() is { } count)
                (target.MinItems, target.MaxItems) = (count.Min, count.Max == int.MaxValue ? 0 : count.Max);
        }
    }

    private void Single(JsonSchema schema, Type type, PropertyInfo property)
    {
        if (type == typeof(Amount) || type == typeof(Toleranced))
        {
            Measured(schema, type, property);
        }
        else if (type == typeof(Hardness))
        {
            schema.Type = JsonObjectType.String;
            schema.Pattern = HardnessPattern;
            Examples(schema, property.GetCustomAttribute<ExampleAttribute>()?.Text
                ?? throw new InvalidOperationException($"{property.DeclaringType?.Name}.{property.Name} shows no example."));
        }
        else if (type == typeof(string))
        {
            Text(schema, property);
        }
        else if (type == typeof(int) || type == typeof(long))
        {
            schema.Type = JsonObjectType.Integer;
            Range(schema, property);
        }
        else if (type == typeof(double))
        {
            Number(schema, property);
        }
        else if (type == typeof(bool))
        {
            schema.Type = JsonObjectType.Boolean;
        }
        else if (type == typeof(DateOnly))
        {
            schema.Type = JsonObjectType.String;
            schema.Pattern = DatePattern;
            Examples(schema, "2027-03-31");
        }
        else if (type.IsEnum)
        {
            schema.Type = JsonObjectType.String;
            foreach (var name in Enum.GetNames(type))
                schema.Enumeration.Add(PropertyName.Of(name));
        }
        else
        {
            schema.AllOf.Add(new() { Reference = DefinitionOf(type) });
        }
    }

    private JsonSchema DefinitionOf(Type type)
    {
        if (_definitions.TryGetValue((type, _isWhole), out var known))
            return known;

        var definition = new JsonSchema();
        _definitions[(type, _isWhole)] = definition;
        var name = type.Name.EndsWith("Spec", StringComparison.Ordinal) ? type.Name[..^4] : type.Name;
        _root.Definitions[_root.Definitions.ContainsKey(name) ? name + (_isWhole ? "Whole" : "Part") : name] = definition;
        Fill(definition, type);
        return definition;
    }

    private static void Text(JsonSchema schema, PropertyInfo property)
    {
        schema.Type = JsonObjectType.String;
        if (property.GetCustomAttribute<OneOfAttribute>() is { } words)
        {
            foreach (var word in words.Words)
                schema.Enumeration.Add(word);
        }
        else if (property.GetCustomAttribute<RefersAttribute>() is not null)
        {
            schema.Pattern = NamePattern;
        }
        else
        {
            // A revision may be written 3: a text that looks like a number is a text all the same.
            schema.Type = JsonObjectType.String | JsonObjectType.Number;
            schema.Pattern = TextPattern;
            if (property.GetCustomAttribute<ExampleAttribute>() is { } example)
                Examples(schema, example.Text);
        }
    }

    private static void Number(JsonSchema schema, PropertyInfo property)
    {
        if (property.GetCustomAttribute<FractionAttribute>() is null)
        {
            schema.Type = JsonObjectType.Number;
            Range(schema, property);
            return;
        }

        var number = new JsonSchema { Type = JsonObjectType.Number };
        Range(number, property);
        schema.AnyOf.Add(number);
        schema.AnyOf.Add(new() { Type = JsonObjectType.String, Pattern = FractionPattern });
        Examples(schema, "9/5");
    }

    private static void Range(JsonSchema schema, PropertyInfo property)
    {
        if (property.GetCustomAttribute<RangeAttribute>() is not { } range)
            return;
        schema.Minimum = Convert.ToDecimal(range.Minimum, Invariant);
        schema.Maximum = Convert.ToDecimal(range.Maximum, Invariant);
    }

    private void Measured(JsonSchema schema, Type type, PropertyInfo property)
    {
        var measures = property.GetCustomAttribute<MeasuresAttribute>()
            ?? throw new InvalidOperationException($"{property.DeclaringType?.Name}.{property.Name} does not say what it measures.");
        var field = typeof(Dimension).GetField(measures.Dimension, BindingFlags.Public | BindingFlags.Static)
            ?? throw new InvalidOperationException($"There is no dimension {measures.Dimension}.");
        var dimension = (Dimension)field.GetValue(null)!;

        schema.Type = JsonObjectType.String;
        schema.AllOf.Add(PatternDefinition(QuantityPatterns.NameOf(dimension, type == typeof(Toleranced)), () => QuantityPatterns.Of(dimension, type == typeof(Toleranced))));
        if (SignOf(measures) is { } sign)
            schema.AllOf.Add(PatternDefinition(sign.Name, () => sign.Pattern));

        if (measures.Example.Length > 0)
            Examples(schema, measures.Example);

        var units = string.Join(", ", Units.Fitting(dimension).Select(unit => unit.Symbol).Where(symbol => symbol.Length > 0));
        schema.Description = $"{schema.Description} {Capital(dimension.NameWithArticle)}{(units.Length == 0 ? "" : $": {units}")}.".Trim();
    }

    // Bounds of zero or more fix the sign too.
    private static (string Name, string Pattern)? SignOf(MeasuresAttribute measures) => measures switch
    {
        { Range: AmountRange.Positive } or { Unit.Length: > 0, Min: > 0 } => QuantityPatterns.Positive,
        { Range: AmountRange.NotNegative } or { Unit.Length: > 0, Min: 0 } => QuantityPatterns.NotNegative,
        { Range: AmountRange.NotPositive } => QuantityPatterns.NotPositive,
        _ => null,
    };

    private JsonSchema PatternDefinition(string name, Func<string> pattern)
    {
        if (!_root.Definitions.TryGetValue(name, out var definition))
            _root.Definitions[name] = definition = new() { Pattern = pattern() };
        return new() { Reference = definition };
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static void Examples(JsonSchema schema, string example) =>
        schema.ExtensionData = new Dictionary<string, object?> { ["examples"] = new[] { example } };

    private static void PermitNull(JsonSchema schema)
    {
        if (schema.AnyOf.Count > 0)
        {
            schema.AnyOf.Add(new() { Type = JsonObjectType.Null });
        }
        else if (schema.Type == JsonObjectType.None && schema.AllOf.Count > 0)
        {
            foreach (var part in schema.AllOf)
                schema.AnyOf.Add(part);
            schema.AllOf.Clear();
            schema.AnyOf.Add(new() { Type = JsonObjectType.Null });
        }
        else
        {
            schema.Type |= JsonObjectType.Null;
            if (schema.Enumeration.Count > 0)
                schema.Enumeration.Add(null);
        }
    }
}
