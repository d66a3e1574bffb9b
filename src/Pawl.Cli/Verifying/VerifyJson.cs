using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Pawl.Reports;
using Pawl.Reports.Verifying;

namespace Pawl.Cli.Verifying;

/// <summary>What verification found as JSON: a list with an entry for each record.</summary>
internal static class VerifyJson
{
    public static void Write(TextWriter to, List<Verification> found)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartArray();
            foreach (var each in found)
                Entry(json, each);
            json.WriteEndArray();
        }

        to.WriteLine(Encoding.UTF8.GetString(bytes.ToArray()));
    }

    private static void Entry(Utf8JsonWriter json, Verification found)
    {
        var record = found.Record;
        json.WriteStartObject();
        json.WriteString("record", found.Name);
        json.WriteString("id", record.Id);
        json.WriteString("variant", record.Identity.Variant);
        json.WriteString("spec", record.Identity.File);
        json.WriteString("as_of", record.AsOf.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteString("made_by", record.Tool.ToString());
        json.WriteString("verified_by", RecordBuilder.Tool.ToString());
        json.WriteBoolean("verified", found.IsAsRecorded);
        json.WriteStartArray("files");
        foreach (var file in found.Files)
        {
            json.WriteStartObject();
            json.WriteString("path", file.Path);
            json.WriteString("state", VerifyText.Word(file.State).Replace(' ', '_'));
            Text(json, "recorded", file.Recorded);
            Text(json, "now", file.Now);
            Text(json, "reason", file.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Text(json, "not_computed", found.NotComputed);
        if (found.Comparison is { } comparison)
        {
            json.WriteNumber("same_outcomes", comparison.Outcomes);
            json.WriteNumber("same_numbers", comparison.Numbers);
            json.WriteStartArray("differences");
            foreach (var difference in comparison.Differences)
            {
                json.WriteStartObject();
                json.WriteString("kind", difference.Kind switch { DifferenceKind.Outcome => "outcome", DifferenceKind.Number => "number", _ => "other" });
                json.WriteString("path", difference.Path);
                Text(json, "recorded", difference.Was);
                Text(json, "now", difference.Is);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void Text(Utf8JsonWriter json, string name, string? text)
    {
        if (text is not null)
            json.WriteString(name, text);
    }
}
