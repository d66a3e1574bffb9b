using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Pawl.Cli.Output;

namespace Pawl.Cli.Explaining;

/// <summary>Shows explanations as text or JSON.</summary>
internal static class ExplanationWriter
{
    private const int LabelWidth = 18;
    private const int Width = 100;

    public static void Text(TextWriter to, Explanation explanation)
    {
        to.WriteLine($"{explanation.Kind} {explanation.Name}");
        Fold(to, "", explanation.Title, indent: 2);
        foreach (var fact in explanation.Facts)
            Fold(to, fact.Label.Replace('_', ' '), fact.Text, LabelWidth + 2);
    }

    /// <summary>One line a name: for a list.</summary>
    public static void Line(TextWriter to, Explanation explanation) =>
        to.WriteLine($"{explanation.Kind,-11} {explanation.Name,-52} {Plain.Line(explanation.Title)}");

    public static void Json(TextWriter to, IEnumerable<Explanation> explanations)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartArray();
            foreach (var explanation in explanations)
            {
                json.WriteStartObject();
                json.WriteString("kind", explanation.Kind);
                json.WriteString("name", explanation.Name);
                json.WriteString("title", explanation.Title);
                foreach (var fact in explanation.Facts)
                    json.WriteString(fact.Label, fact.Text);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        to.WriteLine(Encoding.UTF8.GetString(bytes.ToArray()));
    }

    private static void Fold(TextWriter to, string label, string text, int indent)
    {
        var line = new StringBuilder($"  {label}".PadRight(indent));
        var empty = true;
        foreach (var word in Plain.Line(text.ReplaceLineEndings(" ")).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!empty && line.Length + 1 + word.Length > Width)
            {
                to.WriteLine(line.ToString());
                line.Clear().Append(' ', indent);
                empty = true;
            }

            if (!empty)
                line.Append(' ');
            line.Append(word);
            empty = false;
        }

        to.WriteLine(line.ToString().TrimEnd());
    }
}
