using System.Collections;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Pawl.Reports.Comparing;

namespace Pawl.Reports.Records;

/// <summary>The record as JSON and back.</summary>
internal static class RecordJson
{
    private static readonly JsonSerializerOptions Written = Options();

    private static readonly JsonSerializerOptions Reading = new(Written) { Converters = { new Finite() } };

    public static JsonSerializerOptions SerializerOptions => Written;

    public static string Write(ConformanceRecord record)
    {
        if (!record.IsWhole)
            throw new InvalidOperationException("A record of findings alone is no document.");
        var json = JsonSerializer.Serialize(record, (JsonTypeInfo<ConformanceRecord>)Written.GetTypeInfo(typeof(ConformanceRecord)));
        return json + "\n";
    }

    public static ConformanceRecord Read(string json)
    {
        try
        {
            RequireFormat(json);
            return JsonSerializer.Deserialize(json, (JsonTypeInfo<ConformanceRecord>)Reading.GetTypeInfo(typeof(ConformanceRecord)))
                ?? throw new FormatException("The record is null.");
        }
        catch (JsonException malformed)
        {
            throw new FormatException($"The text is no conformance record: {malformed.Message}", malformed);
        }
    }

    // Another format may well have other keys: say that it is another format, not which key came first.
    private static void RequireFormat(string json)
    {
        using var document = JsonDocument.Parse(json);
        if (document.RootElement.ValueKind != JsonValueKind.Object
            || !document.RootElement.TryGetProperty("format", out var format)
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

    private static JsonSerializerOptions Options() => new(RecordContext.Default.Options)
    {
        // Units and symbols stay readable; the record is a file, never a piece of a web page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NewLine = "\n",
        TypeInfoResolver = RecordContext.Default.WithAddedModifier(LeaveOutWhatIsEmpty),
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
internal sealed partial class RecordContext : JsonSerializerContext;
