using System.Globalization;
using System.Text;

namespace Pawl.Fuzz;

/// <summary>Baselines and records: what a judgement is held against, and what is verified.</summary>
public sealed partial class Fuzzing
{
    private const string Known =
        "{pawl: 1, findings: [{spec: specs/seed.yaml, rule: mesh/tip-clearance, subject: meshes.sun~planet, worst_margin: -5 %},"
        + " {spec: specs/seed.yaml, rule: rating/micropitting, subject: meshes.sun~planet, worst_margin: -90 %},"
        + " {spec: specs/gone.yaml, rule: fit/function, subject: fits.a}]}";

    private static readonly string[] Put =
    [
        "", "null", "true", "-1", "1e999", "1e-320", "9007199254740993", "\"\"", "\"../../../etc/passwd\"", "\"shipped:tables/../x.csv\"", "\"\\u0000\"", "\"\\ud800\"",
        "{}", "[]", "[[[[[[[[", "{\"format\": 1}", ",", ":", "\"conforms\"", "\"2026-13-40\"", "\u0000",
    ];

    private readonly string _record;

    /// <summary>The smallest spec that is judged: a record of it is spoiled and computed again in no time.</summary>
    private static Node Small(Node spec)
    {
        var small = spec.Copy();
        small.Items.RemoveAll(item => !Kept.Contains(item.Key));
        return small;
    }

    private string Recorded()
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using var said = new StringWriter(CultureInfo.InvariantCulture);
        Command(["check", "specs/seed.yaml", "--format", "json", "--as-of", "2026-01-15"], text, said);
        return text.ToString() is { Length: > 0 } record ? record : throw new InvalidOperationException($"The seed has no record: {said}");
    }

    /// <summary>A record with up to three of its values, or any pieces of it, taken out, doubled or replaced.</summary>
    private string SpoiltRecord(Random random)
    {
        var text = new StringBuilder(_record);
        for (var i = random.Next(1, 4); i > 0 && text.Length > 0; i--)
        {
            var at = random.Next(text.Length);
            if (random.Next(4) > 0)
            {
                // A whole value: from the colon to the end of the line.
                while (at < text.Length && text[at] != ':')
                    at++;
                at = Math.Min(at + 1, text.Length);
            }

            var end = at;
            while (end < text.Length && text[end] is not (',' or '\n'))
                end++;
            var piece = text.ToString(at, end - at);
            text.Remove(at, end - at).Insert(at, random.Next(6) == 0 ? piece + piece : Put[random.Next(Put.Length)]);
        }

        return text.ToString();
    }
}
