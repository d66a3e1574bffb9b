using System.CommandLine;
using System.Text.RegularExpressions;

namespace Pawl.Cli.Tests;

public sealed partial class HelpTests
{
    private static IEnumerable<Command> All(Command command) => command.Subcommands.SelectMany(All).Prepend(command);

    [Fact]
    public void Every_command_option_and_argument_says_what_it_is_for()
    {
        foreach (var command in All(PawlCommand.Tree()))
        {
            Assert.False(string.IsNullOrWhiteSpace(command.Description), command.Name);
            Assert.All(command.Options, o => Assert.False(string.IsNullOrWhiteSpace(o.Description), $"{command.Name} {o.Name}"));
            Assert.All(command.Arguments, a => Assert.False(string.IsNullOrWhiteSpace(a.Description), $"{command.Name} {a.Name}"));
        }
    }

    [Fact]
    public void Every_command_prints_help_with_examples_that_the_parser_understands()
    {
        using var place = new Workplace();
        foreach (var command in All(PawlCommand.Tree()))
        {
            var ran = place.Run(command is RootCommand ? ["--help"] : [command.Name, "--help"]);

            Assert.Equal(0, ran.Code);
            var examples = ran.OutLines.SkipWhile(l => l != "Examples:").Skip(1).TakeWhile(l => l.Length > 0).ToArray();
            Assert.NotEmpty(examples);
            Assert.All(examples, e => Assert.Empty(PawlCommand.Tree().Parse(Typed(e)).Errors));
        }
    }

    [Fact]
    public void Completion_offers_the_words_of_an_option()
    {
        using var place = new Workplace();

        Assert.Equal(["annotations", "html", "json", "junit", "markdown", "sarif", "text"], place.Run("[suggest:15]", "check --format ").OutLines.Where(l => !l.StartsWith('-')).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_misspelt_command_is_answered_with_the_nearest()
    {
        using var place = new Workplace();

        Assert.Contains("Did you mean `check`?", place.Run("chekc").Error, StringComparison.Ordinal);
        Assert.Contains("Did you mean `--verbose`?", place.Run("check", "--verbos").Error, StringComparison.Ordinal);
    }

    // "pawl check specs   what it does" up to the two blanks, of the last of commands joined by &&, without redirection.
    private static string[] Typed(string example)
    {
        var command = example.Trim().Split("  ")[0].Split("&&")[^1].Split('<')[0];
        return [.. Words().Matches(command).Skip(1).Select(word => word.Value.Trim('\''))];
    }

    [GeneratedRegex("'[^']*'|[^ ]+")]
    private static partial Regex Words();
}
