using System.Collections;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Pawl.Reports.Comparing;
using Pawl.Reports.Records.Stored;

namespace Pawl.Reports.Records;

/// <summary>The record as JSON and back.</summary>
internal static class RecordJson
{
    private static readonly JsonSerializerOptions Plain = Options();

    /// <summary>By these a record is described as it stands in a file.</summary>
    public static JsonSerializerOptions StoredOptions { get; } = Stored(new([], []));

    /// <summary>By these every part is written in full, wherever it stands.</summary>
    public static JsonSerializerOptions SerializerOptions => Plain;

    /// <summary>The record as it is kept: what repeats stands once, an entry a line.</summary>
    public static string Write(ConformanceRecord record)
    {
        RequireWhole(record);
        var references = new References([], []);
        var options = Stored(references);
        var stored = JsonSerializer.SerializeToUtf8Bytes(Packing.Of(record, references.Texts), (JsonTypeInfo<StoredRecord>)options.GetTypeInfo(typeof(StoredRecord)));

        // Texts and files are known when all else is written.
        return EntryLines.Of(stored, new(StringComparer.Ordinal)
        {
            ["texts"] = references.Texts.All,
            ["place_files"] = references.Files.All,
        });
    }

    /// <summary>The record with nothing left out or referred to, for whoever compares two.</summary>
    public static byte[] Whole(ConformanceRecord record)
    {
        RequireWhole(record);
        return JsonSerializer.SerializeToUtf8Bytes(record, (JsonTypeInfo<ConformanceRecord>)Plain.GetTypeInfo(typeof(ConformanceRecord)));
    }

    public static ConformanceRecord Read(string json)
    {
        try
        {
            StoredRecord stored;
            using (var document = JsonDocument.Parse(json))
            {
                RequireFormat(document.RootElement);
                RefuseNull(document.RootElement, "$");
                var options = new JsonSerializerOptions(Stored(new(Texts(document.RootElement, "place_files"), Texts(document.RootElement, "texts")))) { AllowDuplicateProperties = false };
                options.Converters.Add(new Finite());
                stored = JsonSerializer.Deserialize(json, (JsonTypeInfo<StoredRecord>)options.GetTypeInfo(typeof(StoredRecord)))
                    ?? throw new FormatException("The record is null.");
            }

            return Unpacking.Of(stored);
        }
        catch (JsonException malformed)
        {
            var path = malformed.Path is { } at && !malformed.Message.Contains("Path: ", StringComparison.Ordinal) ? $" Path: {at}." : "";
            throw new FormatException($"The text is no conformance record: {malformed.Message}{path}", malformed);
        }
    }

    private static void RequireWhole(ConformanceRecord record)
    {
        if (!record.IsWhole)
            throw new InvalidOperationException("A record of findings alone is no document.");
    }

    // Another format may well have other keys: say that it is another format, not which key came first.
    private static void RequireFormat(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object
            || !root.TryGetProperty("format", out var format)
            || format.ValueKind != JsonValueKind.Number
            || !format.TryGetInt32(out var number))
        {
            throw new FormatException("The text is no conformance record: it states no format.");
        }

        if (number != ConformanceRecord.CurrentFormat)
        {
            throw new FormatException(FormattableString.Invariant(
                $"The record has format {number}; this build reads {ConformanceRecord.CurrentFormat}."));
        }
    }

    private static void RefuseNull(JsonElement element, string path)
    {
        if (element.ValueKind == JsonValueKind.Null)
            throw new FormatException($"The text is no conformance record: null says nothing. Path: {path}.");
        if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (var member in element.EnumerateObject())
            {
                if (member.Value.ValueKind is JsonValueKind.Null or JsonValueKind.Object or JsonValueKind.Array)
                    RefuseNull(member.Value, $"{path}.{member.Name}");
            }
        }
        else if (element.ValueKind == JsonValueKind.Array)
        {
            var number = 0;
            foreach (var item in element.EnumerateArray())
            {
                if (item.ValueKind is JsonValueKind.Null or JsonValueKind.Object or JsonValueKind.Array)
                    RefuseNull(item, $"{path}[{Phrase.Whole(number)}]");
                number++;
            }
        }
    }

    // What is no list of texts is refused by its own type later on.
    private static ImmutableArray<string> Texts(JsonElement root, string name) =>
        root.TryGetProperty(name, out var list) && list.ValueKind == JsonValueKind.Array
            ? [.. list.EnumerateArray().Select(static item => item.ValueKind == JsonValueKind.String ? item.GetString()! : "")]
            : [];

    private static JsonSerializerOptions Options() => new(RecordContext.Default.Options)
    {
        // Units and symbols stay readable; the record is a file, never a piece of a web page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NewLine = "\n",
        TypeInfoResolver = RecordContext.Default.WithAddedModifier(LeaveOutWhatIsEmpty),
    };

    private static JsonSerializerOptions Stored(References references) => new(Plain)
    {
        WriteIndented = false,
        Converters =
        {
            new PlaceConverter(references), new SourceConverter(references), new ValueConverter(), new NameConverter(),
            new TermConverter(), new MeasureConverter(), new QuantityConverter(),
        },
    };

    /// <summary>1e999 is JSON and no number of this machine.</summary>
    private sealed class Finite : JsonConverter<double>
    {
        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out var number) && double.IsFinite(number)
                ? number
                : throw new JsonException("a number in it is not finite.");

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
    }

    /// <summary>Optional texts and lists are left out when empty; required ones always stand.</summary>
    private static void LeaveOutWhatIsEmpty(JsonTypeInfo type)
    {
        foreach (var property in type.Properties)
        {
            if (property.IsRequired)
                continue;
            if (property.PropertyType == typeof(string))
                property.ShouldSerialize = static (_, value) => value is string { Length: > 0 };
            else if (property.PropertyType == typeof(bool))
                property.ShouldSerialize = static (_, value) => value is true;
            else if (typeof(ICollection).IsAssignableFrom(property.PropertyType))
                property.ShouldSerialize = static (_, value) => value is ICollection { Count: > 0 };
        }
    }
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    WriteIndented = true,
    GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(ConformanceRecord))]
[JsonSerializable(typeof(ComparisonRecord))]
[JsonSerializable(typeof(StoredRecord))]
[JsonSerializable(typeof(StoredOrigin))]
[JsonSerializable(typeof(RenamedTerm))]
[JsonSerializable(typeof(WholeMeasure))]
[JsonSerializable(typeof(WholeValue))]
internal sealed partial class RecordContext : JsonSerializerContext;
