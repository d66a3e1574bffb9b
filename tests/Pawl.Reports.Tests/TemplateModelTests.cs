using System.Runtime.CompilerServices;
using Pawl.Analysis;
using Pawl.Reports.Drawing;
using Pawl.Reports.Markdown;
using Pawl.Rules;
using Pawl.Specs;
using Scriban.Runtime;

namespace Pawl.Reports.Tests;

/// <summary>docs/templates.md lists what a template of a report is given, and nothing else.</summary>
public sealed class TemplateModelTests
{
    [Fact]
    public void The_page_on_templates_lists_the_model_as_it_is()
    {
        var model = new SortedDictionary<string, SortedSet<string>>(StringComparer.Ordinal);
        var root = Root();
        var loader = new SpecLoader(root, [.. Directory.GetFiles(Path.Combine(root, "specs/catalogue"), "*.yaml").Order(StringComparer.Ordinal)], adapterPaths: [.. Directory.GetFiles(Path.Combine(root, "specs/adapters"), "*.yaml").Order(StringComparer.Ordinal)]);
        foreach (var file in (string[])["specs/tarn-180/r180.yaml", "specs/beck-90/r760.yaml", "specs/faulty/tarn-120-overload.yaml", "specs/faulty/tarn-180-wrong-adapter.yaml"])
        {
            var spec = loader.Load(file).Spec!;
            var record = RecordBuilder.Build(Judge.Of(GearboxAnalyser.Analyse(spec), RulePacks.Shipped.Rules!, new(2026, 1, 15)));
            foreach (var (key, value) in new ReportModel(record, Markup.Markdown, FigureList.Of(record), static f => f.Title).Build())
            {
                if (!model.TryGetValue(key, out var below))
                    model[key] = below = new(StringComparer.Ordinal);
                Walk(value, "", below);
            }
        }

        var rows = model.Select(pair => $"| `{pair.Key}` | … | {string.Join(", ", pair.Value)} |").ToArray();
        var listed = File.ReadAllLines(Path.Combine(root, "docs/templates.md")).Where(static line => line.StartsWith("| `", StringComparison.Ordinal) && line.Split('|').Length == 5).ToArray();

        Assert.Equal(rows, listed.Select(static line => line.Split('|') is var cells ? $"|{cells[1]}| … |{cells[3]}|" : ""));
        Assert.All(listed, static line => Assert.True(line.Split('|')[2].Trim().Length > 5, line));
    }

    private static string Root([CallerFilePath] string caller = "") => Path.GetFullPath("../..", Path.GetDirectoryName(caller)!);

    private static void Walk(object? value, string path, SortedSet<string> names)
    {
        switch (value)
        {
            case ScriptArray list:
                foreach (var item in list)
                    Walk(item, path, names);
                break;
            case ScriptObject map:
                foreach (var (key, below) in map)
                {
                    var name = path.Length == 0 ? key : $"{path}.{key}";
                    names.Add(name);
                    Walk(below, name, names);
                }

                break;
        }
    }
}
