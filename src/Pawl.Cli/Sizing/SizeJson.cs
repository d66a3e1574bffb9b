using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Pawl.Analysis.Core;
using Pawl.Analysis.Seals;
using Pawl.Cli.Output;

namespace Pawl.Cli.Sizing;

/// <summary>Sizes as JSON. A margin is a ratio; every other number stands beside its unit.</summary>
internal static class SizeJson
{
    private static readonly QuantityKind[] Shown =
    [
        ORings.Inside, ORings.Cord, ORings.Squeeze, ORings.SqueezeLength, ORings.Stretch, ORings.Compression,
        ORings.Fill,
    ];

    public static void Write(TextWriter to, SizeAnswer answer, SizeRequest request)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            Answer(json, answer, request);
        to.WriteLine(Encoding.UTF8.GetString(bytes.ToArray()));
    }

    private static void Answer(Utf8JsonWriter json, SizeAnswer answer, SizeRequest request)
    {
        json.WriteStartObject();
        if (answer.Spec is not null)
        {
            json.WriteString("spec", answer.Spec);
            json.WriteString("o_ring", answer.Ring);
        }

        Lines(json, "gland", answer.Gland);
        json.WriteNumber("examined", answer.List.Sizes.Length);
        json.WriteNumber("fitting", answer.List.Fitting.Count());
        json.WriteStartArray("sizes");
        foreach (var size in answer.List.Fitting.Take(request.Top).Concat(request.All ? answer.List.Failing : []))
            Size(json, size);
        json.WriteEndArray();
        json.WriteStartArray("failing");
        foreach (var (reason, title, count) in answer.Reasons)
        {
            json.WriteStartObject();
            json.WriteString("reason", reason);
            if (title.Length > 0)
                json.WriteString("title", title);
            json.WriteNumber("sizes", count);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("whatever_the_size");
        foreach (var alike in answer.List.Alike.Where(f => f.Outcome != Rules.Outcome.NotEvaluated))
        {
            json.WriteStartObject();
            json.WriteString("rule", alike.Rule.Id);
            json.WriteString("severity", DiagnosticWriter.Word(alike.Rule.Severity));
            json.WriteBoolean("fails", alike.Outcome == Rules.Outcome.Fails);
            if (alike.Margin is { } margin)
                json.WriteNumber("margin", margin);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("not_judged");
        foreach (var open in answer.List.Open)
        {
            json.WriteStartObject();
            json.WriteString("rule", open.Rule.Id);
            json.WriteStartArray("reasons");
            foreach (var reason in open.Reasons)
                json.WriteStringValue(reason);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (answer.Fragment.Length > 0)
            json.WriteString("fragment", answer.Fragment);
        json.WriteEndObject();
    }

    private static void Size(Utf8JsonWriter json, JudgedSize size)
    {
        json.WriteStartObject();
        json.WriteString("size", size.Candidate.Name);
        if (size.Candidate.IsDeclared)
            json.WriteBoolean("declared", true);
        json.WriteBoolean("fits", size.Fits);
        if (!size.Fits)
            json.WriteString("reason", size.FailsBy?.Rule.Id ?? size.WhyNot);
        foreach (var kind in Shown)
        {
            if (size.Find(kind) is { } quantity)
                Value(json, quantity);
        }

        if (size.Worst is [{ Margin: { } margin, Rule.Id: var rule }, ..])
        {
            json.WriteNumber("worst_margin", margin);
            json.WriteString("set_by", rule);
        }

        json.WriteStartArray("warnings");
        foreach (var warning in size.Warnings)
            json.WriteStringValue($"{DiagnosticWriter.Word(warning.Rule.Severity)} {warning.Rule.Id}");
        json.WriteEndArray();
        if (!size.Candidate.Proposed.IsEmpty)
            Lines(json, "proposed", size.Candidate.Proposed);
        json.WriteEndObject();
    }

    private static void Value(Utf8JsonWriter json, Quantity quantity)
    {
        var unit = quantity.Kind.Unit;
        json.WriteStartObject(quantity.Kind.Name);
        json.WriteNumber("min", Rounded(unit.FromCoherent(quantity.Value.Min)));
        json.WriteNumber("nominal", Rounded(unit.FromCoherent(quantity.Value.Nominal)));
        json.WriteNumber("max", Rounded(unit.FromCoherent(quantity.Value.Max)));
        json.WriteString("unit", unit.Symbol);
        json.WriteEndObject();
    }

    // Beyond a millionth of a millimetre or of a per cent stands only the noise of binary numbers.
    private static double Rounded(double value) => Math.Round(value, 6);

    private static void Lines(Utf8JsonWriter json, string name, ImmutableArray<GlandLine> lines)
    {
        json.WriteStartArray(name);
        foreach (var line in lines)
        {
            json.WriteStartObject();
            json.WriteString("key", line.Key);
            json.WriteString("value", line.Text);
            json.WriteString("basis", line.Basis.Length == 0 ? "stated" : line.Basis);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
