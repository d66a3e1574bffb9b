namespace Pawl.Cli.Output;

/// <summary>What is said of an exception that nobody expected: it is ours, and no verdict.</summary>
internal static class DefectText
{
    /// <param name="defect">What was thrown.</param>
    /// <param name="spec">The spec at which it was thrown; null when it is none of one spec.</param>
    /// <param name="verbose">Whether the stack is told as well.</param>
    public static string Of(Exception defect, string? spec, bool verbose)
    {
        var where = spec is null ? "" : $", met in {Plain.Line(spec)}";
        var text = $"pawl: defect in pawl{where}: {defect.GetType().Name}: {Plain.Line(defect.Message)}\n"
            + "  hint: This is no fault of the spec. Please report it with the command line and the files that were read.";
        return verbose ? $"{text}\n{defect}" : text;
    }
}
