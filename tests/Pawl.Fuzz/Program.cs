using System.CommandLine;
using System.Runtime.CompilerServices;
using Pawl.Fuzz;

var kinds = new Option<FuzzKind[]>("--kind") { Description = "What is spoiled; all when none is named.", DefaultValueFactory = _ => Enum.GetValues<FuzzKind>() };
var executions = new Option<int>("--executions") { Description = "How many of each kind.", DefaultValueFactory = _ => 10_000 };
var seed = new Option<int>("--seed") { Description = "The same seed gives the same texts.", DefaultValueFactory = _ => 1 };
var from = new Option<int>("--from") { Description = "The number of the first execution." };
var command = new RootCommand("Seeded mutation fuzzing of the whole pipeline; exit code 1 when a cause is found.") { kinds, executions, seed, from };
command.SetAction(parsed =>
{
    var found = 0;
    foreach (var kind in parsed.GetValue(kinds)!)
    {
        using var fuzzing = new Fuzzing(Repository(), kind, parsed.GetValue(seed));
        var causes = new SortedDictionary<string, (int Count, long First, Execution Example)>(StringComparer.Ordinal);
        var (first, count, judged) = (parsed.GetValue(from), parsed.GetValue(executions), 0);
        for (long number = first; number < first + count; number++)
        {
            var execution = fuzzing.Run(number);
            judged += execution.Judged ? 1 : 0;
            if (execution.Cause is { } cause)
                causes[cause] = causes.TryGetValue(cause, out var known) ? known with { Count = known.Count + 1 } : (1, number, execution);
            if ((number - first + 1) % 10_000 == 0)
                Console.Error.WriteLine($"{kind}: {number - first + 1} executions, {causes.Count} causes");
        }

        Console.WriteLine($"{kind}: {count} executions, {judged} judged, {causes.Count} distinct causes");
        foreach (var (cause, (times, number, example)) in causes)
        {
            var file = Path.Combine(Repository(), "artifacts", "fuzz", $"{kind}-{parsed.GetValue(seed)}-{number}.txt".ToLowerInvariant());
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, $"{example.Text}\n# {example.Detail.ReplaceLineEndings("\n# ")}\n");
            Console.WriteLine($"  {times} × {cause}\n      execution {number}, {file}");
        }

        found += causes.Count;
    }

    return found == 0 ? 0 : 1;
});
var spoil = new Command("spoil", "Spoils each number of each demo spec step by step; exit code 1 when something escapes.");
spoil.SetAction(_ =>
{
    var escapes = 0;
    foreach (var path in (string[])["specs/beck-90/r760.yaml", "specs/tarn-120/r400.yaml", "specs/tarn-120/r525.yaml", "specs/tarn-180/r148.yaml", "specs/tarn-180/r180.yaml", "specs/tarn-180/r225.yaml"])
    {
        var spoiling = new Spoiling(Repository(), path);
        foreach (var escape in Enumerable.Range(0, spoiling.Inputs).SelectMany(spoiling.Spoil))
        {
            escapes++;
            Console.WriteLine(escape);
        }

        Console.WriteLine($"{path}: {spoiling.Inputs} inputs");
    }

    return escapes == 0 ? 0 : 1;
});
command.Subcommands.Add(spoil);
return command.Parse(args).Invoke();

static string Repository([CallerFilePath] string file = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", ".."));
