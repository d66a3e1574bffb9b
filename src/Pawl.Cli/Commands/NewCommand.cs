using System.CommandLine;
using System.Text;
using Pawl.Cli.Output;
using Pawl.Reports;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl new</c>: a spec or a project to start from.</summary>
internal static class NewCommand
{
    private static readonly string[] PointedAt = ["adapter", "baseline", "catalogue", "gearbox", "project", "rules"];

    public static Command Build(CommandContext? context)
    {
        var name = new Argument<string>("NAME") { Description = "Name of the variant, or of the family with --project: letters, digits, - and _." };
        var kind = CheckCommand.Text("--kind", "KIND", "simple (sun, planets, ring), stepped (two-step planets) or pair (meshed planet pairs, two suns). Default: simple.");
        kind.AcceptOnlyFromAmong("simple", "stepped", "pair");
        var output = CheckCommand.Text("--output", "FILE", "The file to write. Default: specs/NAME.yaml.", "-o");
        var project = CheckCommand.Flag("--project", "Write pawl.yaml, a catalogue and the schemas that editors help by into the working folder instead of a spec.");
        var templates = CheckCommand.Flag("--templates", "Write the templates of reports and sheets into a folder NAME, to be changed.");
        var full = CheckCommand.Flag("--full", "Add every section and key that a spec may state, commented out.");
        var command = new Command("new", "Write a commented spec, or a project, to start from. Overwrites nothing.") { name, kind, output, project, templates, full };
        if (context is not null)
            command.SetAction(parsed => parsed.GetValue(templates)
                ? Templates(context, command, parsed.GetValue(name)!, parsed.GetValue(project) || parsed.GetValue(full) || parsed.GetValue(output) is not null)
                : Run(context, command, parsed.GetValue(name)!, parsed.GetValue(kind) ?? "simple", parsed.GetValue(output), parsed.GetValue(project), parsed.GetValue(full)));
        return command;
    }

    private static int Templates(CommandContext context, Command command, string name, bool isMore)
    {
        if (isMore)
            return Usage.Report(context, command, "--templates writes a folder of its own.", "Run the command twice.");
        if (!IsName(name))
            return Usage.Report(context, command, $"`{name}` is no name: it starts with a letter and has letters, digits, - and _.");
        if (Path.Exists(context.Absolute(name)))
            return Usage.Report(context, command, $"{name} is there already; it is not overwritten.", "Give another name.");
        foreach (var template in ReportTemplates.Names)
        {
            Files.Write(context.Absolute($"{name}/{template}"), ReportTemplates.TextOf(template));
            context.Out.WriteLine($"{name}/{template}");
        }

        return ExitCode.Conforms;
    }

    private static int Run(CommandContext context, Command command, string name, string kind, string? output, bool project, bool full)
    {
        if (!IsName(name))
            return Usage.Report(context, command, $"`{name}` is no name: it starts with a letter and has letters, digits, - and _.");

        if (project && full)
            return Usage.Report(context, command, "--full is of a spec, --project of what surrounds it.", "Run the command twice.");

        (string File, string Starter)[] files = project
            ? [("pawl.yaml", "pawl.yaml"), ("specs/catalogue/materials.yaml", "materials.yaml"), ("specs/catalogue/lubricants.yaml", "lubricants.yaml")]
            : [(output ?? $"specs/{name.ToLowerInvariant()}.yaml", $"{kind}.yaml")];

        // All or nothing: half a project is harder to mend than none.
        foreach (var (file, _) in files)
        {
            if (Path.Exists(context.Absolute(file)))
                return Usage.Report(context, command, $"{file} is there already; it is not overwritten.", "Give another name, or --output FILE.");
        }

        if (project)
            WriteSchemas(context);
        foreach (var (file, starter) in files)
        {
            var text = Starter(starter).Replace("NAME", name, StringComparison.Ordinal);
            Files.Write(context.Absolute(file), full ? text + EverySection.Text() : text);
            context.Out.WriteLine(Plain.Line(file));
        }

        return ExitCode.Conforms;
    }

    /// <summary>What the first lines of the files point at, so that editors help at once. Schemas that are there stay as they are.</summary>
    private static void WriteSchemas(CommandContext context)
    {
        foreach (var (name, text) in context.Engine.Schemas())
        {
            var file = $"schema/{name}.schema.json";
            if (!PointedAt.Contains(name) || Path.Exists(context.Absolute(file)))
                continue;
            Files.Write(context.Absolute(file), text());
            context.Out.WriteLine(file);
        }
    }

    internal static string Starter(string file)
    {
        using var stream = typeof(NewCommand).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"{file} is not in the assembly.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    private static bool IsName(string text)
    {
        if (text.Length is 0 or > 60 || !char.IsAsciiLetter(text[0]))
            return false;
        foreach (var c in text)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c is not ('-' or '_'))
                return false;
        }

        return true;
    }
}
