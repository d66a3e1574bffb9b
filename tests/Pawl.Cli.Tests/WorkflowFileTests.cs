using System.CommandLine;
using System.Text.RegularExpressions;
using Pawl.Cli.Checking;
using YamlDotNet.RepresentationModel;

namespace Pawl.Cli.Tests;

/// <summary>The action, the workflows, the commit hook and what the documentation pastes: they parse, and name what there is.</summary>
public sealed partial class WorkflowFileTests
{
    private const string Action = ".github/actions/check/action.yaml";
    private const string Page = "docs/continuous-integration.md";

    private static readonly RootCommand Tree = PawlCommand.Tree();

    public static TheoryData<string> Files() =>
        [Action, ".pre-commit-hooks.yaml", .. Directory.GetFiles(Path.Combine(RepositoryTests.Root, ".github/workflows")).Select(f => Path.GetRelativePath(RepositoryTests.Root, f)).Order(StringComparer.Ordinal)];

    private static string Read(string file) => File.ReadAllText(Path.Combine(RepositoryTests.Root, file));

    private static YamlNode Yaml(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return Assert.Single(stream.Documents).RootNode;
    }

    private static string Scalar(YamlNode node, string key) => ((YamlScalarNode)node[key]).Value!;

    private static IEnumerable<YamlNode> Steps(YamlNode node) => node.AllNodes.OfType<YamlMappingNode>().Where(n => n.Children.ContainsKey("uses") || n.Children.ContainsKey("run"));

    [Theory]
    [MemberData(nameof(Files))]
    public void It_parses(string file) => Assert.NotEmpty(Yaml(Read(file)).AllNodes);

    [Theory]
    [MemberData(nameof(Files))]
    public async Task It_is_valid_by_the_published_schema(string file)
    {
        Judges.SkipUnlessHere();
        if (file == ".pre-commit-hooks.yaml")
            return;

        Assert.Equal((0, ""), await Judges.Workflow(Path.Combine(RepositoryTests.Root, file)));
        using var place = new Workplace().With("bad.yaml", "on: push\njobs: {a: {steps: 3}}\n");
        Assert.NotEqual((0, ""), await Judges.Workflow(place.PathOf("bad.yaml")));
    }

    /// <summary>Commands as typed, in files and on the page, continued lines joined.</summary>
    public static TheoryData<string> Typed()
    {
        var lines = string.Join('\n', ((string[])[Action, ".pre-commit-hooks.yaml", ".github/workflows/specs.yaml", Page, "README.md"]).Select(Read)).Replace("\\\n", " ", StringComparison.Ordinal).Split('\n');
        return [.. lines.Select(l => Command().Match(l)).Where(m => m.Success).Select(m => m.Groups[1].Value.Trim()).Distinct()];
    }

    [Theory]
    [MemberData(nameof(Typed))]
    public void Every_command_that_is_typed_anywhere_is_understood(string typed)
    {
        var words = Redirected().Split(typed)[0].Replace("\"${asked[@]}\"", "", StringComparison.Ordinal).Replace("\"${paths[@]}\"", "", StringComparison.Ordinal)
            .Split([' ', '\''], StringSplitOptions.RemoveEmptyEntries);

        Assert.SkipUnless(Tree.Subcommands.Any(c => c.Name == words[0]), $"this build has no {words[0]}");
        Assert.Empty(Tree.Parse(words).Errors);
    }

    [Fact]
    public void Every_option_of_the_action_is_one_of_the_command_line()
    {
        var scripts = string.Join('\n', Steps(Yaml(Read(Action))).OfType<YamlMappingNode>().Where(s => s.Children.ContainsKey("run")).Select(s => Scalar(s, "run")).Where(r => !r.Contains("dotnet publish", StringComparison.Ordinal)));
        var known = Tree.Subcommands.SelectMany(c => c.Options).Select(o => o.Name).ToHashSet(StringComparer.Ordinal);
        var used = Option().Matches(scripts).Select(m => m.Value).Distinct().ToList();

        Assert.Contains("--require-complete", used);
        Assert.All(used, option => Assert.Contains(option, known));
    }

    // A value pasted into a script is run by the shell; one that comes in as a variable is not.
    [Theory]
    [MemberData(nameof(Files))]
    public void No_script_has_an_expression_pasted_into_it(string file) =>
        Assert.All(
            Steps(Yaml(Read(file))).OfType<YamlMappingNode>().Where(s => s.Children.ContainsKey("run")),
            step => Assert.DoesNotContain("${{", Scalar(step, "run"), StringComparison.Ordinal));

    [Fact]
    public void The_workflow_asks_of_the_action_what_it_has()
    {
        var action = Yaml(Read(Action));
        var inputs = ((YamlMappingNode)action["inputs"]).Children.Keys.Select(k => ((YamlScalarNode)k).Value!).ToList();
        var outputs = ((YamlMappingNode)action["outputs"]).Children.Keys.Select(k => ((YamlScalarNode)k).Value!).ToList();
        foreach (var text in (string[])[Read(".github/workflows/specs.yaml"), .. Block().Matches(Read(Page)).Select(m => m.Groups[1].Value).Where(b => b.Contains("actions/check", StringComparison.Ordinal))])
        {
            var step = Steps(Yaml(text)).OfType<YamlMappingNode>().Single(s => s.Children.ContainsKey("uses") && Scalar(s, "uses").Contains("/.github/actions/check", StringComparison.Ordinal));
            if (step.Children.TryGetValue("with", out var with))
                Assert.All(((YamlMappingNode)with).Children.Keys, k => Assert.Contains(((YamlScalarNode)k).Value!, inputs));
            Assert.All(Output().Matches(text).Select(m => m.Groups[1].Value), o => Assert.Contains(o, outputs));
        }
    }

    // The step itself, by a shell, as a runner would start it.
    [Theory]
    [InlineData("specs/tarn-120/r400.yaml\n\nspecs/beck-90/r760.yaml", "error", "false", 0)]
    [InlineData("specs/faulty/tarn-180-open-nut.yaml", "error", "false", 1)]
    [InlineData("specs/faulty/tarn-180-open-nut.yaml", "never", "false", 0)]
    [InlineData("no; touch hacked", "error", "false", 2)]
    public async Task The_check_step_of_the_action_works(string paths, string failOn, string complete, int code)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the step is of bash");
        using var place = new Workplace();
        var script = Steps(Yaml(Read(Action))).OfType<YamlMappingNode>().Single(s => s.Children.ContainsKey("id") && Scalar(s, "id") == "check");
        Directory.CreateSymbolicLink(place.PathOf("pawl"), AppContext.BaseDirectory);
        place.With("step.sh", "set -eo pipefail\n" + Scalar(script, "run"));
        var variables = new Dictionary<string, string>
        {
            ["PATHS"] = paths,
            ["FAIL_ON"] = failOn,
            ["REQUIRE_COMPLETE"] = complete,
            ["OUTPUT"] = place.PathOf("out"),
            ["RUNNER_TEMP"] = place.Folder,
            ["GITHUB_OUTPUT"] = place.PathOf("output.txt"),
            ["GITHUB_STEP_SUMMARY"] = place.PathOf("summary.md"),
        };

        var (ended, said) = await Judges.Run("env", [.. variables.Select(v => $"{v.Key}={v.Value}"), "bash", place.PathOf("step.sh")], RepositoryTests.Root);

        Assert.True(ended == 0, said);
        Assert.Equal($"exit-code={code}\n", File.ReadAllText(place.PathOf("output.txt")));
        Assert.True(File.Exists(place.PathOf("out/findings.sarif")) && File.Exists(place.PathOf("out/findings.junit.xml")) && File.Exists(place.PathOf("out/alerts.sarif")));
        Assert.Equal(code == 1 || failOn == "never", said.Contains("::error file=", StringComparison.Ordinal));
        Assert.False(File.Exists(Path.Combine(RepositoryTests.Root, "hacked")));
    }

    [Fact]
    public void The_hook_runs_the_command_that_the_package_installs()
    {
        var hook = Assert.IsType<YamlSequenceNode>(Yaml(Read(".pre-commit-hooks.yaml")))[0];

        Assert.Equal(("dotnet", "false"), (Scalar(hook, "language"), Scalar(hook, "pass_filenames")));
        Assert.StartsWith("pawl ", Scalar(hook, "entry"), StringComparison.Ordinal);
        Assert.Contains("<ToolCommandName>pawl</ToolCommandName>", Read("src/Pawl.Cli/Pawl.Cli.csproj"), StringComparison.Ordinal);
        Assert.Matches(Scalar(hook, "files"), "specs/tarn-180/r180.yaml");
    }

    [Fact]
    public void The_page_names_every_format_and_every_file_that_a_folder_gets()
    {
        Assert.All(Formats.Names, name => Assert.Contains($"`{name}`", Read(Page), StringComparison.Ordinal));
        Assert.All((Format[])[Format.Sarif, Format.Junit], f => Assert.Contains($"`{Formats.FileOfRun(f)}`", Read(Page), StringComparison.Ordinal));
    }

    [GeneratedRegex(@"^\s*(?:entry: |- run: |args: )?pawl ((?:check|compare|explain|schema|new|o-ring)\b[^#`]*)")]
    private static partial Regex Command();

    [GeneratedRegex(@"[0-9]?>|<|\|\||&&")]
    private static partial Regex Redirected();

    [GeneratedRegex(@"--[a-z][a-z-]*")]
    private static partial Regex Option();

    [GeneratedRegex(@"```yaml\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex(@"steps\.pawl\.outputs\.([a-z-]+)")]
    private static partial Regex Output();
}
