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
return command.Parse(args).Invoke();

static string Repository([CallerFilePath] string file = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", ".."));
