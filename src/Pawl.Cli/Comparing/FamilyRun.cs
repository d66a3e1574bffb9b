using Pawl.Cli.Output;
using Pawl.Reports.Comparing;
using Pawl.Specs.Text;

namespace Pawl.Cli.Comparing;

/// <summary>The variants of one side beside each other.</summary>
internal static class FamilyRun
{
    public static int Go(CommandContext context, Side side, ComparedOutput output)
    {
        var opened = new Opened[side.Keys.Length];
        var variants = new FamilyVariant?[side.Keys.Length];
        CompareRun.InParallel(context, opened.Length, i =>
        {
            opened[i] = side.Open(side.Keys[i]);
            variants[i] = opened[i].Judge is { } judge ? FamilyVariant.Of(judge()) : null;
        });

        var told = new HashSet<Diagnostic>();
        foreach (var diagnostic in opened.SelectMany(static o => o.Diagnostics).Where(static d => d.Severity == Severity.Error))
        {
            var shown = Sides.Prefixed(diagnostic, side.Prefix);
            if (told.Add(shown))
                DiagnosticWriter.Write(context.Error, shown);
        }

        ImmutableArray<FamilyVariant> judged = [.. variants.OfType<FamilyVariant>()];
        if (judged.IsEmpty)
        {
            if (told.Count == 0)
                DiagnosticWriter.Write(context.Error, new(CliCodes.NoSpec, Severity.Error, SourceSpan.Whole("pawl"), "There is no variant to show.", "Name a file or folder with specs."));
            return ExitCode.NotJudged;
        }

        var matrix = new FamilyMatrix(judged);
        output.Write(new ComparedDocument(null, matrix.Markdown, matrix.Html, matrix.Write));
        return opened.Any(static o => o is { Judge: null, IsBase: false }) ? ExitCode.NotJudged
            : judged.Any(static v => v.Fails) ? ExitCode.Findings
            : ExitCode.Conforms;
    }
}
