namespace Pawl.Specs.Yaml;

/// <summary>What usually lies behind the parser's complaints.</summary>
internal static class SyntaxHints
{
    public static string? For(string problem)
    {
        if (Has(problem, "invalid mapping") || Has(problem, "mapping values"))
            return "A colon followed by a space starts a value. Put a text that holds one in quotes.";
        if (Has(problem, "quoted scalar"))
            return "Check the quotes: one may be missing, and a backslash in double quotes starts an escape.";
        if (Has(problem, "cannot start any token"))
            return "A text that starts with @, `, % or another sign of YAML stands in quotes.";
        if (Has(problem, "expected key"))
            return "Each line of a map reads `key: value`, and all lines of a map start in the same column.";
        if (Has(problem, "expected '-'"))
            return "Each entry of a list starts with `- ` in the same column.";
        return Has(problem, "flow") ? "Check the brackets and commas." : null;
    }

    private static bool Has(string problem, string part) => problem.Contains(part, StringComparison.OrdinalIgnoreCase);
}
