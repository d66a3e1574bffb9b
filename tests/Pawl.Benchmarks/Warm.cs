using System.Collections.Immutable;
using System.Diagnostics;
using Pawl.Analysis;
using Pawl.Rules;
using Pawl.Specs;

namespace Pawl.Benchmarks;

/// <summary>Analysis and judgement of the shipped specs on one thread, in a process that has compiled all of it.</summary>
internal static class Warm
{
    private const int Rounds = 400;
    private const int Counted = 200;

    public static void Measure(string repository, Action<FormattableString> say)
    {
        var day = new DateOnly(2026, 1, 15);
        var loader = new SpecLoader(
            repository, Files(repository, "specs/catalogue"), adapterPaths: Files(repository, "specs/adapters"));
        var rules = RulePacks.Shipped.Rules ?? throw new InvalidOperationException("The shipped rules are not read.");
        say($"\nOne warm spec on one thread, analysis and judgement, median of the last {Counted} of {Rounds}");
        foreach (var path in Files(repository, "specs/beck-90", "specs/tarn-120", "specs/tarn-180").Where(path => !path.EndsWith("family.yaml", StringComparison.Ordinal)))
        {
            var spec = loader.Load(path).Spec ?? throw new InvalidOperationException($"{path} is not read.");
            var (analysis, judgement) = (new List<double>(), new List<double>());
            var allocated = 0L;
            for (var round = 0; round < Rounds; round++)
            {
                var before = GC.GetAllocatedBytesForCurrentThread();
                var start = Stopwatch.GetTimestamp();
                var analysed = GearboxAnalyser.Analyse(spec);
                var between = Stopwatch.GetTimestamp();
                Judge.Of(analysed, rules, day);
                allocated = GC.GetAllocatedBytesForCurrentThread() - before;
                analysis.Add(Stopwatch.GetElapsedTime(start, between).TotalMicroseconds);
                judgement.Add(Stopwatch.GetElapsedTime(between).TotalMicroseconds);
            }

            var whole = analysis.Zip(judgement, (a, j) => a + j).Skip(Rounds - Counted).Order().ElementAt(Counted / 2);
            say($"  {path,-28} {whole,8:0} µs   analysis {analysis.Skip(Rounds - Counted).Order().ElementAt(Counted / 2),8:0}   judgement {judgement.Skip(Rounds - Counted).Order().ElementAt(Counted / 2),8:0}   allocated {allocated / 1024,6} kB");
        }
    }

    private static ImmutableArray<string> Files(string repository, params ReadOnlySpan<string> folders)
    {
        var files = ImmutableArray.CreateBuilder<string>();
        foreach (var folder in folders)
            files.AddRange(Directory.GetFiles(Path.Combine(repository, folder), "*.yaml").Select(path => Path.GetRelativePath(repository, path).Replace('\\', '/')).Order(StringComparer.Ordinal));
        return files.ToImmutable();
    }
}
