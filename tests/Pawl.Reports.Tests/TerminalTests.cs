using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Tests;

/// <summary>Text on a terminal: nothing wider than it, and nothing lost.</summary>
public sealed class TerminalTests
{
    private static string Text(int? width, bool colour = false, ConformanceRecord? record = null)
    {
        using var text = new StringWriter();
        new TextReport(TextLevel.Verbose, colour, width).Write(record ?? Sample.Record(), text);
        return text.ToString();
    }

    private static string[] Words(string text) => text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    [InlineData(120)]
    public void No_line_is_wider_than_the_terminal_unless_one_word_is(int width)
    {
        var text = Text(width, colour: true);

        Assert.All(text.TrimEnd('\n').Split('\n'), line => Assert.True(Wrap.Cells(line) <= width || Words(line).Length == 1, line));
        Assert.Equal(Words(Text(null, colour: true)), Words(text));
    }

    [Fact]
    public void For_a_program_every_finding_has_its_line()
    {
        var record = Sample.Record();
        var lines = Text(null).Split('\n');

        Assert.All(record.Findings.Where(f => f.Outcome == OutcomeWord.Fails), f => Assert.Contains(lines, line => line.TrimStart().StartsWith($"{f.Place}: {Labels.SeverityOf(f)} {f.Rule}: ", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_verdict_stands_first() => Assert.Contains(Labels.Of(Sample.Record().Verdict), Text(null).Split('\n')[0], StringComparison.Ordinal);

    // Unicode Standard Annex #11: ideographs and emoji are wide, combining marks (general category Mn) take no cell.
    [Theory]
    [InlineData("abc", 3)]
    [InlineData("é", 1)]
    [InlineData("e\u0301", 1)]
    [InlineData("漢字", 4)]
    [InlineData("\U0001F680", 2)]
    [InlineData("שלום", 4)]
    [InlineData("\u001B[31mred\u001B[0m", 3)]
    public void Cells_are_those_of_the_terminal(string text, int cells) => Assert.Equal(cells, Wrap.Cells(text));

    [Fact]
    public void What_goes_on_stands_deeper() =>
        Assert.Equal(["  why:  one two", "        three"], Wrap.Pieces("  why:  one two three", 20, 6));

    [Theory]
    [InlineData(-423.4, "−423 times the limit")]
    [InlineData(-421.55, "−422 times the limit")]
    [InlineData(12, "+12 times the limit")]
    [InlineData(-9.99, "−999 %")]
    [InlineData(-0.15, "−15 %")]
    public void Beyond_ten_times_the_limit_a_margin_is_a_multiple_of_it(double margin, string text) => Assert.Equal(text, Figures.Margin(margin));
}
