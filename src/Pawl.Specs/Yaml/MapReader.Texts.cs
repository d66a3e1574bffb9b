using System.Globalization;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Yaml;

/// <content>Texts, words, names and dates.</content>
public sealed partial class MapReader
{
    public Stated<string>? Text(string key, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotText, "a text") is not { } scalar)
            return null;
        return AsText(scalar, PathOf(key));
    }

    /// <summary>One of a few words. A truth value or a number is never one.</summary>
    public Stated<string>? Word(string key, ReadOnlySpan<string> words, bool required = false)
    {
        return Scalar(key, required, DiagnosticCodes.UnknownWord, "one word") is { } scalar ? AsWord(scalar, PathOf(key), words) : null;
    }

    /// <summary>A list of words.</summary>
    public ImmutableArray<Stated<string>> Words(string key, ReadOnlySpan<string> words, bool required = false)
    {
        var items = List(key, required);
        var found = ImmutableArray.CreateBuilder<Stated<string>>(items.Length);
        for (var i = 0; i < items.Length; i++)
        {
            var path = $"{PathOf(key)}[{i}]";
            if (items[i] is not YamlScalar { IsNull: false } scalar)
                Report(SpecDiagnostics.NotA(DiagnosticCodes.UnknownWord, items[i], path, "one word"));
            else if (AsWord(scalar, path, words) is { } word)
                found.Add(word);
        }

        return found.DrainToImmutable();
    }

    /// <summary>A name that other parts of the spec refer to: letters, digits, underscore, hyphen; starts with a letter.</summary>
    public Stated<string>? Name(string key, bool required = false)
    {
        if (Node(key, required) is not { } node)
            return null;
        if (node is YamlList list)
        {
            Report(SpecDiagnostics.NotOne(DiagnosticCodes.NotAName, list, PathOf(key), "one name"));
            return null;
        }

        return AsName(node, PathOf(key));
    }

    /// <summary>A list of names.</summary>
    public ImmutableArray<Stated<string>> Names(string key, bool required = false)
    {
        var items = List(key, required);
        var names = ImmutableArray.CreateBuilder<Stated<string>>(items.Length);
        for (var i = 0; i < items.Length; i++)
        {
            if (AsName(items[i], $"{PathOf(key)}[{i}]") is { } name)
                names.Add(name);
        }

        return names.DrainToImmutable();
    }

    /// <summary>A list of texts, or one text.</summary>
    public ImmutableArray<Stated<string>> Texts(string key, bool required = false, bool orOne = false)
    {
        if (orOne && Find(key, out _, out var node) && node is YamlScalar { IsNull: false })
            return Text(key) is { } one ? [one] : [];

        var items = List(key, required);
        var texts = ImmutableArray.CreateBuilder<Stated<string>>(items.Length);
        for (var i = 0; i < items.Length; i++)
        {
            var path = $"{PathOf(key)}[{i}]";
            if (items[i] is not YamlScalar { IsNull: false } scalar)
                Report(SpecDiagnostics.NotA(DiagnosticCodes.NotText, items[i], path, "a text"));
            else if (AsText(scalar, path) is { } text)
                texts.Add(text);
        }

        return texts.DrainToImmutable();
    }

    public Stated<DateOnly>? Date(string key, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotADate, "a date") is not { } scalar)
            return null;
        if (DateOnly.TryParseExact(scalar.Value, "yyyy-MM-dd", Invariant, DateTimeStyles.None, out var date))
            return new(date, scalar.Span, scalar.Value);

        Report(SpecDiagnostics.NotADate(scalar, PathOf(key)));
        return null;
    }

    /// <summary>Whether a text is a name: starts with a letter a to z; then letters, digits, underscores and hyphens.</summary>
    public static bool IsName(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length == 0 || !char.IsAsciiLetter(text[0]))
            return false;
        foreach (var c in text)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c is not ('_' or '-'))
                return false;
        }

        return true;
    }

    private Stated<string>? AsText(YamlScalar scalar, string path)
    {
        if (CoreSchema.KindOf(scalar) == ScalarKind.Truth)
        {
            Report(SpecDiagnostics.NotA(DiagnosticCodes.NotText, scalar, path, "a text", $"Put it in quotes: \"{scalar.Value}\"."));
            return null;
        }

        if (string.IsNullOrWhiteSpace(scalar.Value))
        {
            Report(SpecDiagnostics.EmptyText(scalar.Span, path));
            return null;
        }

        return new(scalar.Value, scalar.Span, scalar.Value);
    }

    private Stated<string>? AsWord(YamlScalar scalar, string path, ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (word == scalar.Value)
                return new(word, scalar.Span, scalar.Value);
        }

        Report(SpecDiagnostics.UnknownWord(scalar.Span, path, scalar.Value, Nearest.To(scalar.Value, words.ToArray()), words));
        return null;
    }

    private Stated<string>? AsName(YamlNode node, string path)
    {
        if (node is not YamlScalar { IsNull: false } scalar)
        {
            Report(SpecDiagnostics.NotA(DiagnosticCodes.NotAName, node, path, "a name"));
            return null;
        }

        if (IsName(scalar.Value) && CoreSchema.KindOf(scalar) == ScalarKind.Text)
            return new(scalar.Value, scalar.Span, scalar.Value);

        Report(SpecDiagnostics.NotAName(scalar.Span, path, scalar.Value));
        return null;
    }
}
