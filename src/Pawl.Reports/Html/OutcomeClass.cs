using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Html;

/// <summary>The style class of an outcome; beside its word and symbol, never in their place.</summary>
internal static class OutcomeClass
{
    private static readonly (string Label, string Css)[] Classes =
    [
        .. Enum.GetValues<OutcomeWord>().Select(o => ($"{Labels.Symbol(o)} {Labels.Of(o)}", Of(o))),
    ];

    public static string Of(OutcomeWord outcome) => outcome switch
    {
        OutcomeWord.Conforms => "conforms",
        OutcomeWord.Fails => "fails",
        OutcomeWord.UnderConcession => "conceded",
        OutcomeWord.NotEvaluated => "open",
        _ => "aside",
    };

    /// <summary>The class of a text that begins with the sign of an outcome or of a margin that shrank or grew, or nothing.</summary>
    public static string OfSign(string text)
    {
        foreach (var outcome in Enum.GetValues<OutcomeWord>())
        {
            if (text.StartsWith(Labels.Symbol(outcome) + " ", StringComparison.Ordinal))
                return Of(outcome);
        }

        return text.StartsWith("▼ ", StringComparison.Ordinal) ? Of(OutcomeWord.UnderConcession)
            : text.StartsWith("▲ ", StringComparison.Ordinal) ? Of(OutcomeWord.Conforms)
            : "";
    }

    /// <summary>The class of a cell that holds just an outcome, or nothing.</summary>
    public static string Of(string cell)
    {
        foreach (var (label, css) in Classes)
        {
            if (cell == label)
                return css;
        }

        return "";
    }
}
