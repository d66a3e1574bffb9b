using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Pawl.Reports.Records;

namespace Pawl.Reports.Comparing;

/// <summary>The comparison as JSON, by the conventions of the record.</summary>
internal static class ComparisonJson
{
    public static JsonSerializerOptions SerializerOptions => RecordJson.SerializerOptions;

    public static string Write(ComparisonRecord record) =>
        JsonSerializer.Serialize(record, (JsonTypeInfo<ComparisonRecord>)SerializerOptions.GetTypeInfo(typeof(ComparisonRecord))) + "\n";
}
