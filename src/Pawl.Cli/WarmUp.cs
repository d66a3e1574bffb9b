using Pawl.Analysis;
using Pawl.Reports;
using Pawl.Rules;
using Pawl.Specs;

namespace Pawl.Cli;

/// <summary>Loads the layers below on a second processor while the first reads the command line and the specs.</summary>
/// <remarks>
/// Most of a short run is the runtime finding and binding code for the first time. A small spec of our own is put through every
/// layer, its result thrown away: whatever the real spec needs next has then been bound already. Nothing here may change what is
/// judged, and nothing that goes wrong here is worth a word: the real run meets it too and says so.
/// </remarks>
internal static class WarmUp
{
    /// <summary>Starts for the commands that judge; returns at once.</summary>
    public static void Start(string[] args)
    {
        if (Environment.ProcessorCount < 2 || args is not ["check" or "compare", ..])
            return;

        new Thread(Run) { IsBackground = true, Name = "warm-up" }.Start();
    }

    private static void Run()
    {
#pragma warning disable CA1031 // See the remarks.
        try
        {
            if (RulePacks.Shipped.Rules is not { } rules)
                return;
            using var spec = typeof(WarmUp).Assembly.GetManifestResourceStream("warm-up.yaml")!;
            var bytes = new byte[spec.Length];
            spec.ReadExactly(bytes);
            var load = new SpecLoader(Path.GetTempPath(), []).Load("warm-up.yaml", bytes);
            if (load.Spec is not { } read)
                return;
            var judgement = Judge.Of(GearboxAnalyser.Analyse(read), rules, new(2026, 1, 1));
            new TextReport().Write(RecordBuilder.Build(judgement, RecordScope.Findings), TextWriter.Null);
        }
        catch (Exception)
        {
            // See the remarks.
        }
#pragma warning restore CA1031
    }
}
