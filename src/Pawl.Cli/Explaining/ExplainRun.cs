using Pawl.Analysis;
using Pawl.Cli.Checking;
using Pawl.Cli.Output;
using Pawl.Mechanics.Seals;
using Pawl.Quantities;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Schema;
using Pawl.Specs.Text;

namespace Pawl.Cli.Explaining;

/// <summary>One run of <c>pawl explain</c>.</summary>
internal static class ExplainRun
{
    public static int Start(CommandContext context, string? name, bool json, ImmutableArray<string> houseFolders, string? root)
    {
        var project = context.Engine.FindProject(context.Folder, root is null ? null : context.Absolute(root));
        var folders = (project.Rules?.Value ?? []).AddRange(houseFolders.Select(f => SettingsResolver.RelativeTo(project.Root, context.Absolute(f))));
        var load = context.Engine.LoadRules(project.Root, folders);
        foreach (var diagnostic in project.Diagnostics.AddRange(load.Diagnostics))
            DiagnosticWriter.Write(context.Error, diagnostic);
        if (load.Rules is null || project.Diagnostics.Any(d => d.Severity == Severity.Error))
            return ExitCode.NotJudged;

        var all = Everything(context.Engine, load.Rules);
        if (name is null)
        {
            if (json)
                ExplanationWriter.Json(context.Out, all);
            else
                all.ForEach(e => ExplanationWriter.Line(context.Out, e));
            return ExitCode.Conforms;
        }

        var meant = all.FindAll(e => e.Name == name || (e.Kind == "quantity" && e.Name.EndsWith($".{name}", StringComparison.Ordinal)));
        if (meant.TrueForAll(static e => e.Kind != "key") && SpecKeys.All.FirstOrDefault(key => key.IsMeantBy(name)) is { } key)
            meant.AddRange(all.Where(e => e.Kind == "key" && e.Name == key.Path));
        if (meant.Count == 0 && name.StartsWith("as568", StringComparison.OrdinalIgnoreCase))
        {
            if (!ORingTable.TryFind(name, out var size, out var reason))
                return Unknown(context, name, $"T{reason[1..]}.");
            meant.Add(Explanations.Of(size));
        }

        if (meant.Count == 0)
            return Unknown(context, name, NearMatches(name, all) is { Length: > 0 } near ? $"Did you mean {near}?" : "Run `pawl explain` for the list.");

        if (json)
            ExplanationWriter.Json(context.Out, meant);
        else
            Show(context.Out, meant);
        return ExitCode.Conforms;
    }

    private static List<Explanation> Everything(Engine engine, RuleSet rules) =>
    [
        .. rules.Rules.Select(Explanations.Of),
        .. SubjectKinds.All.Select(k => Explanations.Of(k, rules)),
        .. SubjectKinds.All.SelectMany(k => k.Quantities).Select(q => Explanations.Of(q, rules)),
        .. KeyExplanations.All(rules),
        Explanations.OfSizes(),
        .. SpecLoader.Shipped.Materials.Entries.Select(Explanations.Of),
        .. engine.Diagnostics().AddRange(CliCodes.All)
            .OrderBy(d => d.Code, StringComparer.Ordinal)
            .Select(d => Explanations.OfDiagnostic(d.Code, d.Meaning, d.Mend)),
    ];

    private static void Show(TextWriter to, List<Explanation> meant)
    {
        for (var i = 0; i < meant.Count; i++)
        {
            if (i > 0)
                to.WriteLine();
            ExplanationWriter.Text(to, meant[i]);
        }
    }

    private static int Unknown(CommandContext context, string name, string hint)
    {
        DiagnosticWriter.Write(context.Error, new(
            CliCodes.UnknownName, Severity.Error, new("pawl", default, default), $"No rule, quantity, subject, key of a spec, size, steel or diagnostic is called `{name}`.", hint));
        return ExitCode.NotJudged;
    }

    // The nearest by spelling first, then names that hold the word as a part.
    private static string NearMatches(string name, List<Explanation> all)
    {
        var near = new List<string>();
        if (string.IsNullOrWhiteSpace(name))
            return "";

        // `mesh.contact_ratio` is as good as `mesh` and `contact_ratio`: it leads to mesh.transverse_contact_ratio.
        var (subject, word) = name.Split('.') is [var first, .., var last] ? (first + ".", last) : ("", name);
        var shortNames = all.Select(e => e.Name).Concat(all.Where(e => e.Kind is "quantity").Select(e => e.Name[(e.Name.IndexOf('.', StringComparison.Ordinal) + 1)..]));
        if (Nearest.To(name, shortNames) is { } nearest)
            near.Add(nearest);
        near.AddRange(all.Select(e => e.Name)
            .Where(n => word.Length > 0 && n.StartsWith(subject, StringComparison.OrdinalIgnoreCase) && n.Contains(word, StringComparison.OrdinalIgnoreCase) && !near.Contains(n))
            .Take(4));
        return string.Join(", ", near.Select(n => $"`{n}`"));
    }
}
