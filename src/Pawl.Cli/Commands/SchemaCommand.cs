using System.CommandLine;
using System.Text;
using Pawl.Cli.Output;
using Pawl.Quantities;
using Pawl.Specs.Files;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl schema</c>: print, write or verify the JSON Schemas.</summary>
internal static class SchemaCommand
{
    public static Command Build(CommandContext? context)
    {
        var name = new Argument<string>("NAME")
        {
            Description = "gearbox, catalogue, project, rules, record or comparison. None: all, with --output; else the list.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var output = CheckCommand.Text("--output", "DIR", "The folder to write to.", "-o");
        var check = CheckCommand.Flag("--check", "Write nothing; exit 1 when a file in --output (default: schema) is missing or stale.");
        var command = new Command("schema", "Print or write the JSON Schemas that editors complete and check YAML by.") { name, output, check };
        if (context is not null)
            command.SetAction(parsed => Run(context, command, parsed.GetValue(name), parsed.GetValue(output), parsed.GetValue(check)));
        return command;
    }

    private static int Run(CommandContext context, Command command, string? name, string? output, bool check)
    {
        var schemas = context.Engine.Schemas();
        if (name is not null && !schemas.ContainsKey(name))
        {
            var near = Nearest.To(name, schemas.Keys);
            return Usage.Report(
                context, command, $"There is no schema `{name}`.",
                near is null ? $"There are {string.Join(", ", schemas.Keys)}." : $"Did you mean `{near}`?");
        }

        var expected = name is null ? schemas : schemas.Where(s => s.Key == name).ToImmutableSortedDictionary(StringComparer.Ordinal);
        if (check)
            return Check(context, expected, context.Absolute(output ?? "schema"));
        if (output is not null)
            return Write(context, expected, context.Absolute(output));

        if (name is not null)
            context.Out.Write(expected[name]());
        else
            foreach (var schema in schemas.Keys)
                context.Out.WriteLine(schema);
        return ExitCode.Conforms;
    }

    private static int Write(CommandContext context, ImmutableSortedDictionary<string, Func<string>> schemas, string folder)
    {
        foreach (var (name, text) in schemas)
        {
            Files.Write(Path.Combine(folder, FileOf(name)), text());
            context.Out.WriteLine(FileOf(name));
        }

        return ExitCode.Conforms;
    }

    private static int Check(CommandContext context, ImmutableSortedDictionary<string, Func<string>> schemas, string folder)
    {
        var stale = 0;
        foreach (var (name, text) in schemas)
        {
            var path = Path.Combine(folder, FileOf(name));
            var state = !File.Exists(path) ? "missing" : WholeFile.Read(path, int.MaxValue, out _).AsSpan().SequenceEqual(Encoding.UTF8.GetBytes(text())) ? null : "stale";
            if (state is null)
                continue;
            stale++;
            context.Out.WriteLine($"{FileOf(name)} is {state}.");
        }

        context.Out.WriteLine(stale == 0 ? "All schemas are up to date." : "  hint: Run `pawl schema --output` with the folder.");
        return stale == 0 ? ExitCode.Conforms : ExitCode.Findings;
    }

    private static string FileOf(string name) => $"{name}.schema.json";
}
