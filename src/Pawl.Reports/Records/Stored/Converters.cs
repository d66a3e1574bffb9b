using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace Pawl.Reports.Records.Stored;

/// <summary>A place: file, line, column, end line, end column; of a place within one line without the end line.</summary>
internal sealed class PlaceConverter(References references) : JsonConverter<PlaceRecord>
{
    public override PlaceRecord Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var numbers = Token.Numbers(ref reader);
        if (numbers.Length is not (4 or 5))
            throw new JsonException("A place has four or five numbers: file, line, column, end line unless it is the same, end column.");
        return new()
        {
            File = references.File(numbers[0]) ?? throw new JsonException($"There is no file {Phrase.Whole(numbers[0])} in \"place_files\"."),
            Line = numbers[1],
            Column = numbers[2],
            EndLine = numbers.Length == 5 ? numbers[3] : numbers[1],
            EndColumn = numbers[^1],
        };
    }

    public override void Write(Utf8JsonWriter writer, PlaceRecord value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        writer.WriteNumberValue(references.Files.Add(value.File));
        writer.WriteNumberValue(value.Line);
        writer.WriteNumberValue(value.Column);
        if (value.EndLine != value.Line)
            writer.WriteNumberValue(value.EndLine);
        writer.WriteNumberValue(value.EndColumn);
        writer.WriteEndArray();
    }
}

/// <summary>The source of a rule: method and limit as numbers of texts, and how sure the limit is.</summary>
internal sealed class SourceConverter(References references) : JsonConverter<SourceRecord>
{
    public override SourceRecord Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        Token.Require(reader.TokenType == JsonTokenType.StartArray, "A source is a list of method, limit and certainty.");
        Token.Next(ref reader);
        var method = Text(Token.Number(ref reader));
        Token.Next(ref reader);
        var limit = Text(Token.Number(ref reader));
        Token.Next(ref reader);
        var certainty = JsonSerializer.Deserialize(ref reader, (JsonTypeInfo<CertaintyWord>)options.GetTypeInfo(typeof(CertaintyWord)));
        Token.Next(ref reader);
        Token.Require(reader.TokenType == JsonTokenType.EndArray, "A source has three entries.");
        return new() { Method = method, Limit = limit, Certainty = certainty };
    }

    public override void Write(Utf8JsonWriter writer, SourceRecord value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        writer.WriteNumberValue(references.Texts.Add(value.Method));
        writer.WriteNumberValue(references.Texts.Add(value.Limit));
        JsonSerializer.Serialize(writer, value.Certainty, (JsonTypeInfo<CertaintyWord>)options.GetTypeInfo(typeof(CertaintyWord)));
        writer.WriteEndArray();
    }

    private string Text(int number) =>
        references.Text(number) ?? throw new JsonException($"There is no text {Phrase.Whole(number)} in \"texts\".");
}

/// <summary>A value: a number, nominal with least and greatest, a text, a truth value; anything else in full.</summary>
internal sealed class ValueConverter : JsonConverter<ValueRecord>
{
    public override ValueRecord Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.Number:
                return new() { Nominal = Token.Finite(ref reader) };
            case JsonTokenType.String:
                return new() { Text = reader.GetString() };
            case JsonTokenType.True or JsonTokenType.False:
                return new() { Truth = reader.GetBoolean() };
            case JsonTokenType.StartArray:
                Token.Next(ref reader);
                var nominal = Token.Finite(ref reader);
                Token.Next(ref reader);
                var least = Token.Finite(ref reader);
                Token.Next(ref reader);
                var greatest = Token.Finite(ref reader);
                Token.Next(ref reader);
                Token.Require(reader.TokenType == JsonTokenType.EndArray, "A value with tolerances has three numbers.");
                return new() { Nominal = nominal, Min = least, Max = greatest };
            default:
                var whole = JsonSerializer.Deserialize(ref reader, Info(options)) ?? throw new JsonException("A value is null.");
                return new()
                {
                    Nominal = whole.Nominal,
                    Min = whole.Min,
                    Max = whole.Max,
                    Unit = whole.Unit,
                    Text = whole.Text,
                    Truth = whole.Truth,
                    Reasons = whole.Reasons,
                };
        }
    }

    public override void Write(Utf8JsonWriter writer, ValueRecord value, JsonSerializerOptions options)
    {
        switch (value)
        {
            case { Unit.Length: > 0 } or { Reasons.IsEmpty: false }:
                Whole(writer, value, options);
                break;
            case { Nominal: { } number, Min: null, Max: null, Text: null, Truth: null }:
                writer.WriteNumberValue(number);
                break;
            case { Nominal: { } nominal, Min: { } least, Max: { } greatest, Text: null, Truth: null }:
                writer.WriteStartArray();
                writer.WriteNumberValue(nominal);
                writer.WriteNumberValue(least);
                writer.WriteNumberValue(greatest);
                writer.WriteEndArray();
                break;
            case { Text: { } text, Nominal: null, Min: null, Max: null, Truth: null }:
                writer.WriteStringValue(text);
                break;
            case { Truth: { } truth, Nominal: null, Min: null, Max: null, Text: null }:
                writer.WriteBooleanValue(truth);
                break;
            default:
                Whole(writer, value, options);
                break;
        }
    }

    private static void Whole(Utf8JsonWriter writer, ValueRecord value, JsonSerializerOptions options) => JsonSerializer.Serialize(
        writer,
        new()
        {
            Nominal = value.Nominal,
            Min = value.Min,
            Max = value.Max,
            Unit = value.Unit,
            Text = value.Text,
            Truth = value.Truth,
            Reasons = value.Reasons,
        },
        Info(options));

    private static JsonTypeInfo<WholeValue> Info(JsonSerializerOptions options) => (JsonTypeInfo<WholeValue>)options.GetTypeInfo(typeof(WholeValue));
}

/// <summary>A number in a list, or a name.</summary>
internal sealed class NameConverter : JsonConverter<StoredName>
{
    public override StoredName Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String ? new(null, reader.GetString()) : new(Token.Number(ref reader), null);

    public override void Write(Utf8JsonWriter writer, StoredName value, JsonSerializerOptions options)
    {
        if (value.Number is { } number)
            writer.WriteNumberValue(number);
        else
            writer.WriteStringValue(value.Text);
    }
}

/// <summary>A term: a number, a number with a symbol, or a term in full.</summary>
internal sealed class TermConverter : JsonConverter<StoredTerm>
{
    public override StoredTerm Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.Number)
            return new(Token.Number(ref reader), null, null);
        Token.Require(reader.TokenType == JsonTokenType.StartObject, "A term is a number in \"quantities\" or an object.");
        var ahead = reader;
        ahead.Read();
        if (ahead.TokenType == JsonTokenType.PropertyName && ahead.ValueTextEquals("of"u8))
        {
            var renamed = JsonSerializer.Deserialize(ref reader, (JsonTypeInfo<RenamedTerm>)options.GetTypeInfo(typeof(RenamedTerm)))!;
            return new(renamed.Of, renamed.Symbol, null);
        }

        return new(null, null, JsonSerializer.Deserialize(ref reader, (JsonTypeInfo<TermRecord>)options.GetTypeInfo(typeof(TermRecord))));
    }

    public override void Write(Utf8JsonWriter writer, StoredTerm value, JsonSerializerOptions options)
    {
        if (value.Of is not { } of)
            JsonSerializer.Serialize(writer, value.Whole!, (JsonTypeInfo<TermRecord>)options.GetTypeInfo(typeof(TermRecord)));
        else if (value.Symbol is { } symbol)
            JsonSerializer.Serialize(writer, new() { Of = of, Symbol = symbol }, (JsonTypeInfo<RenamedTerm>)options.GetTypeInfo(typeof(RenamedTerm)));
        else
            writer.WriteNumberValue(of);
    }
}

/// <summary>A measured value or a limit: a number, or in full.</summary>
internal sealed class MeasureConverter : JsonConverter<StoredMeasure>
{
    public override StoredMeasure Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Number
            ? new(Token.Number(ref reader), null)
            : new(null, JsonSerializer.Deserialize(ref reader, (JsonTypeInfo<WholeMeasure>)options.GetTypeInfo(typeof(WholeMeasure))));

    public override void Write(Utf8JsonWriter writer, StoredMeasure value, JsonSerializerOptions options)
    {
        if (value.Of is { } of)
            writer.WriteNumberValue(of);
        else
            JsonSerializer.Serialize(writer, value.Whole!, (JsonTypeInfo<WholeMeasure>)options.GetTypeInfo(typeof(WholeMeasure)));
    }
}

/// <summary>A quantity as a list: kind, value, terms, origin; the last two are left out when empty.</summary>
internal sealed class QuantityConverter : JsonConverter<StoredQuantity>
{
    public override StoredQuantity Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        Token.Require(reader.TokenType == JsonTokenType.StartArray, "A quantity is a list of kind, value, terms and origin.");
        Token.Next(ref reader);
        var kind = Token.Number(ref reader);
        Token.Next(ref reader);
        var value = JsonSerializer.Deserialize(ref reader, (JsonTypeInfo<ValueRecord>)options.GetTypeInfo(typeof(ValueRecord)))
            ?? throw new JsonException("The value of a quantity is null.");
        Token.Next(ref reader);
        ImmutableArray<int> terms = [];
        if (reader.TokenType == JsonTokenType.StartArray)
        {
            terms = Token.Numbers(ref reader);
            Token.Next(ref reader);
        }

        StoredOrigin? origin = null;
        if (reader.TokenType == JsonTokenType.StartObject)
        {
            origin = JsonSerializer.Deserialize(ref reader, (JsonTypeInfo<StoredOrigin>)options.GetTypeInfo(typeof(StoredOrigin)));
            Token.Next(ref reader);
        }

        Token.Require(reader.TokenType == JsonTokenType.EndArray, "A quantity is a list of kind, value, terms and origin.");
        return new(kind, value, terms, origin ?? new());
    }

    public override void Write(Utf8JsonWriter writer, StoredQuantity value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        writer.WriteNumberValue(value.Kind);
        JsonSerializer.Serialize(writer, value.Value, (JsonTypeInfo<ValueRecord>)options.GetTypeInfo(typeof(ValueRecord)));
        if (!value.Terms.IsEmpty)
        {
            writer.WriteStartArray();
            foreach (var term in value.Terms)
                writer.WriteNumberValue(term);
            writer.WriteEndArray();
        }

        if (value.Origin is { Origin: not null } or { Input: not null } or { Written: not null } or { Place: not null }
            or { Tolerance: not null } or { Basis: not null } or { Wide: true } or { Terms.IsEmpty: false })
        {
            JsonSerializer.Serialize(writer, value.Origin, (JsonTypeInfo<StoredOrigin>)options.GetTypeInfo(typeof(StoredOrigin)));
        }

        writer.WriteEndArray();
    }
}

/// <summary>What the converters read token by token.</summary>
internal static class Token
{
    public static void Next(ref Utf8JsonReader reader) => Require(reader.Read(), "The text ends too early.");

    public static void Require(bool holds, string otherwise)
    {
        if (!holds)
            throw new JsonException(otherwise);
    }

    public static int Number(ref Utf8JsonReader reader) =>
        reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out var number) ? number : throw new JsonException("A whole number is expected.");

    public static double Finite(ref Utf8JsonReader reader) =>
        reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out var number) && double.IsFinite(number)
            ? number
            : throw new JsonException("A finite number is expected.");

    public static ImmutableArray<int> Numbers(ref Utf8JsonReader reader)
    {
        Require(reader.TokenType == JsonTokenType.StartArray, "A list of whole numbers is expected.");
        var numbers = ImmutableArray.CreateBuilder<int>();
        for (Next(ref reader); reader.TokenType != JsonTokenType.EndArray; Next(ref reader))
            numbers.Add(Number(ref reader));
        return numbers.DrainToImmutable();
    }
}
