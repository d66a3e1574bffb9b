using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Pawl.Reports.Records.Stored;

/// <summary>JSON with a line for each key at the top and for each entry of its lists, and no other white space.</summary>
internal static class EntryLines
{
    private static readonly JsonWriterOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The document laid out; lists of texts by key stand in place of those in it.</summary>
    public static string Of(byte[] json, Dictionary<string, ImmutableArray<string>> texts)
    {
        using var document = JsonDocument.Parse(json);
        using var text = new MemoryStream(json.Length + (json.Length / 16));
        var first = true;
        foreach (var member in document.RootElement.EnumerateObject())
        {
            text.Write(first ? "{\n"u8 : ",\n"u8);
            first = false;
            text.Write(Encoding.UTF8.GetBytes($"\"{member.Name}\":"));
            if (texts.TryGetValue(member.Name, out var list))
                Entries(text, list.Select(Quoted));
            else if (member.Value.ValueKind == JsonValueKind.Array)
                Entries(text, member.Value.EnumerateArray().Select(static item => Encoding.UTF8.GetBytes(item.GetRawText())));
            else
                text.Write(Encoding.UTF8.GetBytes(member.Value.GetRawText()));
        }

        text.Write("\n}\n"u8);
        return Encoding.UTF8.GetString(text.GetBuffer(), 0, (int)text.Length);
    }

    private static void Entries(MemoryStream to, IEnumerable<byte[]> entries)
    {
        to.WriteByte((byte)'[');
        var first = true;
        foreach (var entry in entries)
        {
            to.Write(first ? "\n"u8 : ",\n"u8);
            to.Write(entry);
            first = false;
        }

        to.WriteByte((byte)']');
    }

    private static byte[] Quoted(string text)
    {
        using var bytes = new MemoryStream();
        using (var writer = new Utf8JsonWriter(bytes, Readable))
            writer.WriteStringValue(text);
        return bytes.ToArray();
    }
}
