using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Pawl.Reports.Records;

namespace Pawl.Reports.Comparing;

/// <summary>The comparison as JSON, by the conventions of the record.</summary>
internal static class ComparisonJson
{
    public static JsonSerializerOptions SerializerOptions { get; } = RecordJson.Like(ComparisonContext.Default);

    public static string Write(ComparisonRecord record) =>
        JsonSerializer.Serialize(record, (JsonTypeInfo<ComparisonRecord>)SerializerOptions.GetTypeInfo(typeof(ComparisonRecord))) + "\n";
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    WriteIndented = true,
    GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(ComparisonRecord))]
internal sealed partial class ComparisonContext : JsonSerializerContext;
