using System.Globalization;
using System.Text;
using Pawl.Quantities;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Text;

/// <summary>One value: its kind, its unit, its range.</summary>
internal static partial class SpecDiagnostics
{
    public static Diagnostic UnknownKey(string path, YamlScalar key, string? nearest, IReadOnlyList<string> known) =>
        Error(
            DiagnosticCodes.UnknownKey, key.Span, $"{Within(path)} has no key `{Short(key.Value)}`.",
            nearest is not null ? $"Did you mean `{nearest}`?" : known.Count == 0 ? null : $"Keys here: {string.Join(", ", known)}.");

    public static Diagnostic MissingKey(SourceSpan span, string path, string key) =>
        Error(DiagnosticCodes.MissingKey, span, $"{Within(path)} lacks the key `{key}`.", $"Add `{key}: …`.");

    public static Diagnostic MissingPitch(SourceSpan span, string path) =>
        Error(
            DiagnosticCodes.MissingKey, span, $"{Within(path)} lacks the key `module`.",
            "Add `module: 2.5 mm`, or for an inch gear `diametral_pitch: 10`.");

    public static Diagnostic NullValue(SourceSpan span, string path) =>
        Error(
            DiagnosticCodes.NullValue, span, $"{path} has no value.",
            "Give a value or delete the line. `null` removes what a base file states, and none states this.");

    public static Diagnostic NotA(string code, YamlNode node, string path, string expected, string? hint = null) =>
        Error(code, node.Span, $"{path} is {expected}, but {Describe(node)} stands here.", hint);

    public static Diagnostic NotOne(string code, YamlList list, string path, string expected) =>
        Error(
            code, list.Span, $"{path} is {expected}, but {Describe(list)} stands here.",
            "Give one, without brackets. A train has one input and one output.");

    public static Diagnostic EmptyText(SourceSpan span, string path) =>
        Error(DiagnosticCodes.EmptyText, span, $"{path} is an empty text.", "Write it, or delete the line.");

    public static Diagnostic UnknownWord(SourceSpan span, string path, string found, string? nearest, ReadOnlySpan<string> words)
    {
        var list = new StringBuilder();
        foreach (var word in words)
            list.Append(list.Length == 0 ? "" : ", ").Append(word);

        return Error(
            DiagnosticCodes.UnknownWord, span, $"{path} cannot be `{Short(found)}`.",
            nearest is null ? $"Write one of: {list}." : $"Did you mean `{nearest}`? Words here: {list}.");
    }

    public static Diagnostic UnknownTerm(SourceSpan span, string path, string found, string expected, string? nearest, string hint) =>
        Error(
            DiagnosticCodes.UnknownWord, span, $"{path} is {expected}, but `{Short(found)}` is not.",
            nearest is null ? hint : $"Did you mean `{nearest}`?");

    public static Diagnostic NotAName(SourceSpan span, string path, string found) =>
        Error(
            DiagnosticCodes.NotAName, span, $"{path}: `{Short(found)}` is not a name.",
            "A name starts with a letter; then follow letters a to z, digits, underscores and hyphens.");

    public static Diagnostic NotAWholeNumber(YamlScalar scalar, string path, string? hint) =>
        Error(DiagnosticCodes.NotAWholeNumber, scalar.Span, $"{path} is a whole number, but `{Short(scalar.Value)}` is not.", hint);

    public static Diagnostic NotANumber(YamlScalar scalar, string path, string? hint) =>
        Error(DiagnosticCodes.NotANumber, scalar.Span, $"{path} is a number, but `{Short(scalar.Value)}` is not.", hint);

    public static Diagnostic NotFinite(SourceSpan span, string path, string found) =>
        Error(DiagnosticCodes.NotFinite, span, $"{path} is a finite number, but `{Short(found)}` is not.", "Delete the line when the value is not known.");

    public static Diagnostic NotATruthValue(YamlScalar scalar, string path, string? meant) =>
        Error(
            DiagnosticCodes.NotATruthValue, scalar.Span, $"{path} is true or false, but `{Short(scalar.Value)}` is neither.",
            meant is null ? null : $"Write `{meant}`, without quotes.");

    public static Diagnostic NotADate(YamlScalar scalar, string path) =>
        Error(DiagnosticCodes.NotADate, scalar.Span, $"{path} is a date, but `{Short(scalar.Value)}` is none.", "Write year-month-day: 2027-03-31.");

    public static Diagnostic OutOfRange(SourceSpan span, string path, string found, string range, string? hint = null) =>
        Error(DiagnosticCodes.OutOfRange, span, $"{path} is {range}, but `{Short(found)}` is not.", hint);

    public static Diagnostic WrongCount(SourceSpan span, string path, string expected, int found, string? hint = null) =>
        Error(DiagnosticCodes.WrongCount, span, $"{path} has {expected}, but {found} {(found == 1 ? "stands" : "stand")} here.", hint);

    public static Diagnostic MissingUnit(SourceSpan span, string path, string found, Dimension dimension) =>
        Error(
            DiagnosticCodes.MissingUnit, span, $"{path} is {dimension.NameWithArticle}, but `{Short(found)}` has no unit.",
            $"Which fit: {Examples(found.Trim(), dimension)}.");

    public static Diagnostic OtherFeature(SourceSpan span, string path, Tolerance.ToleranceClass found, bool isHole)
    {
        var meant = found with { Letters = isHole ? found.Letters.ToUpperInvariant() : found.Letters.ToLowerInvariant() };
        return Error(
            DiagnosticCodes.OtherFeature, span, $"{path} is a {(isHole ? "hole" : "shaft")}, but {found} is a class of {(isHole ? "shafts" : "holes")}.",
            $"Did you mean `{meant}`?");
    }

    public static Diagnostic ShareWithoutUnit(SourceSpan span, string path, string found, Amount amount) =>
        Error(
            DiagnosticCodes.MissingUnit, span, $"{path} is a share, but `{Short(found)}` has no unit.",
            string.Create(CultureInfo.InvariantCulture, $"Write `{amount.Value:0.######} %` or `{100 * amount.Value:0.######} %`, whichever is meant."));

    public static Diagnostic UnitMismatch(SourceSpan span, string path, string found, Dimension expected, Dimension measured) =>
        Error(
            DiagnosticCodes.UnitMismatch, span, $"{path} is {expected.NameWithArticle}, but `{Short(found)}` is {measured.NameWithArticle}.",
            $"Give {expected.NameWithArticle} in {Symbols(expected)}.");

    public static Diagnostic Notation(SourceSpan span, string path, NotationError error, Dimension dimension) => error.Kind switch
    {
        NotationErrorKind.NotFinite => Error(
            DiagnosticCodes.NotFinite, span, $"{path}: {error.Message}", error.Hint ?? "Delete the line when the value is not known."),
        NotationErrorKind.UnknownUnit => Error(
            DiagnosticCodes.UnknownUnit, span, $"{path}: {error.Message}",
            Join(error.Hint, dimension == Dimension.Ratio || dimension == Dimension.OfHardness ? null : $"Units of {dimension.NameWithArticle}: {Symbols(dimension)}.")),
        NotationErrorKind.MissingUnit => Error(
            DiagnosticCodes.MissingUnit, span, $"{path}: {error.Message}",
            dimension == Dimension.OfLength || dimension == Dimension.OfHardness
                ? error.Hint
                : $"Only a length takes a tolerance class. Units of {dimension.NameWithArticle}: {Symbols(dimension)}."),
        NotationErrorKind.OutOfRange => Error(DiagnosticCodes.OutOfRange, span, $"{path}: {error.Message}", error.Hint),
        NotationErrorKind.MalformedTolerance => Error(DiagnosticCodes.MalformedTolerance, span, $"{path}: {error.Message}", error.Hint),
        NotationErrorKind.ToleranceNotAllowed => Error(DiagnosticCodes.ToleranceNotAllowed, span, $"{path}: {error.Message}", error.Hint),
        _ => Error(
            DiagnosticCodes.MalformedAmount, span, $"{path}: {error.Message}",
            error.Hint ?? $"Write a number and a unit: {Examples("2.5", dimension)}."),
    };

    public static Diagnostic FitNotAllowed(SourceSpan span, string path, string found) =>
        Error(
            DiagnosticCodes.MalformedTolerance, span, $"{path} is one part's dimension, but `{Short(found)}` is a fit of two.",
            "Give one tolerance class: a capital letter for a hole, a small one for a shaft.");

    public static Diagnostic NotAFit(SourceSpan span, string path, string found) =>
        Error(
            DiagnosticCodes.MalformedTolerance, span, $"{path} is the size of two parts, but `{Short(found)}` tells the tolerance of one or none.",
            "Write the classes of both, as 25 mm H7/g6, or state `hole` and `shaft` apart.");

    public static Diagnostic WrongPart(SourceSpan span, string path, string found, string part, string letters) =>
        Error(
            DiagnosticCodes.MalformedTolerance, span, $"{path} is {part}, but `{Short(found)}` has the class of the other part.",
            $"The class of {part} has {letters} letters.");

    /// <summary>What stands there, for a message: <c>a list of 2</c>, <c>`text`</c>.</summary>
    public static string Describe(YamlNode node) => node switch
    {
        YamlList list => $"a list of {list.Items.Length}",
        YamlMap { Entries.Length: 1 } => "a map with 1 key",
        YamlMap map => $"a map with {map.Entries.Length} keys",
        YamlScalar { IsNull: true } => "nothing",
        YamlScalar { Value: "" } => "an empty text",
        YamlScalar scalar => $"`{Short(scalar.Value)}`",
        _ => "something else",
    };

    private static string Within(string path) => path.Length == 0 ? "The file" : path;

    private static string? Join(string? first, string? second) =>
        first is null ? second : second is null ? first : $"{first} {second}";

    private static string Symbols(Dimension dimension)
    {
        var text = new StringBuilder();
        foreach (var unit in Units.Fitting(dimension))
            text.Append(text.Length == 0 ? "" : ", ").Append(unit.Symbol);
        return text.Length == 0 ? "a unit of its own" : text.ToString();
    }

    private static string Examples(string number, Dimension dimension)
    {
        var text = new StringBuilder();
        foreach (var unit in Units.Fitting(dimension))
            text.Append(text.Length == 0 ? "" : ", ").Append(number).Append(unit.Symbol is "°" or "′" or "″" ? "" : " ").Append(unit.Symbol);
        return text.Length == 0 ? number : text.ToString();
    }
}
