using Pawl.Quantities;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>A stated size to hold against another: the nominal one where it has a tolerance, in coherent units.</summary>
internal sealed record Size(double Value, SourceSpan Span, string Text);

/// <summary>Sizes that must be greater or smaller than another one. The first is the one complained of; what is absent is not compared.</summary>
internal static class Sizes
{
    public static Size? Size(this Stated<Amount>? stated) => stated is null ? null : new(stated.Value.Coherent, stated.Span, stated.Text);

    public static Size? Size(this Stated<Toleranced>? stated) => stated is null ? null : new(stated.Value.Nominal.Coherent, stated.Span, stated.Text);

    public static Size? Size(this Stated<double>? stated) => stated is null ? null : new(stated.Value, stated.Span, stated.Text);

    // What is required, in words that lead to the other size: "less than the bore of".
    public static void Below(this MapReader reader, string key, Size? found, Size? other, string expected, string? hint = null)
    {
        if (found is not null && other is not null && found.Value >= other.Value)
            reader.Outside(key, found, $"{expected} {other.Text}", hint);
    }

    public static void NotAbove(this MapReader reader, string key, Size? found, Size? other, string expected, string? hint = null)
    {
        if (found is not null && other is not null && found.Value > other.Value)
            reader.Outside(key, found, $"{expected} {other.Text}", hint);
    }

    public static void Above(this MapReader reader, string key, Size? found, Size? other, string expected, string? hint = null)
    {
        if (found is not null && other is not null && found.Value <= other.Value)
            reader.Outside(key, found, $"{expected} {other.Text}", hint);
    }

    public static void NotBelow(this MapReader reader, string key, Size? found, Size? other, string expected, string? hint = null)
    {
        if (found is not null && other is not null && found.Value < other.Value)
            reader.Outside(key, found, $"{expected} {other.Text}", hint);
    }

    /// <summary>An angle is less than a right one.</summary>
    public static void BelowRightAngle(this MapReader reader, string key, Stated<Amount>? angle, string? hint = null)
    {
        if (angle is not null && angle.Value.Coherent >= Math.PI / 2)
            reader.Outside(key, angle.Size()!, "less than 90°", hint);
    }

    public static void Outside(this MapReader reader, string key, Size found, string expected, string? hint = null) =>
        reader.Outside(key, found.Span, found.Text, expected, hint);

    public static void Outside<T>(this MapReader reader, string key, Stated<T> found, string expected, string? hint = null) =>
        reader.Outside(key, found.Span, found.Text, expected, hint);

    private static void Outside(this MapReader reader, string key, SourceSpan span, string text, string expected, string? hint) =>
        reader.Report(SpecDiagnostics.OutOfRange(span, reader.PathOf(key), text, expected, hint));
}
