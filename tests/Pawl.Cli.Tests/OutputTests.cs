using System.Globalization;
using System.Text.Json;

namespace Pawl.Cli.Tests;

public sealed class OutputTests
{
    private static string? FileOf(string json)
    {
        using var record = JsonDocument.Parse(json);
        return FileOf(record.RootElement);
    }

    private static string? FileOf(JsonElement record) => record.GetProperty("identity").GetProperty("file").GetString();

    [Fact]
    public void Reports_go_to_the_folder_and_text_to_standard_output()
    {
        using var place = new Workplace().With("specs/b.yaml", "conforms").With("specs/a.yaml", "fails error");

        var ran = place.Run("check", "specs", "--format", "html", "--format", "json", "--output", "out");

        Assert.Equal(1, ran.Code);
        Assert.Equal("specs/a.yaml", FileOf(File.ReadAllText(place.PathOf("out/a.json"))));
        Assert.StartsWith("<!doctype html>", File.ReadAllText(place.PathOf("out/b.html")), StringComparison.OrdinalIgnoreCase);
        Assert.Equal(
            ["out/a.derivations.html", "out/a.html", "out/a.json", "out/b.derivations.html", "out/b.html", "out/b.json", "out/index.html"],
            Directory.GetFiles(place.PathOf("out"), "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(place.Folder, f)).Order(StringComparer.Ordinal));
        Assert.Contains("\nspecs/a.yaml:1:1: error train/error: ", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void An_output_with_an_extension_is_one_file()
    {
        using var place = new Workplace().With("a.yaml", "conforms");

        Assert.Equal(0, place.Run("check", "a.yaml", "--output", "deep/report.md").Code);
        Assert.StartsWith("# Conformance report", File.ReadAllText(place.PathOf("deep/report.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void Standard_output_carries_nothing_but_the_format()
    {
        using var place = new Workplace().With("a.yaml", "conforms").With("b.yaml", "conforms");

        Assert.Equal("a.yaml", FileOf(place.Run("check", "a.yaml", "--format", "json").Out));
        var several = place.Run("check", "*.yaml", "--format", "json");
        using var list = JsonDocument.Parse(several.Out);
        Assert.Equal(["a.yaml", "b.yaml"], list.RootElement.EnumerateArray().Select(FileOf));
        Assert.Contains("2 specs (2 conform), ", several.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_shape_of_JSON_follows_the_question_not_the_number_of_matches()
    {
        using var place = new Workplace().With("a.yaml", "conforms");

        Assert.StartsWith("[", place.Run("check", "*.yaml", "--format", "json").Out, StringComparison.Ordinal);
        Assert.StartsWith("{", place.Run("check", "a.yaml", "--format", "json").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_report_whose_name_is_taken_by_a_folder_ends_with_2()
    {
        using var place = new Workplace().With("a.yaml", "conforms").With("out/a.json/in-the-way", "");

        var ran = place.Run("check", "a.yaml", "--format", "json", "--output", "out");

        Assert.Equal(2, ran.Code);
        Assert.Contains("error cli/cannot-write: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("is a folder", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_a_file_ends_with_2()
    {
        using var place = new Workplace().With("a.yaml", "conforms").With("out", "a file");

        Assert.Equal(2, place.Run("check", "a.yaml", "--format", "json", "--output", "out").Code);
    }

    [Fact]
    public void A_full_disk_under_standard_output_ends_with_2()
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "/dev/full is not here");
        using var place = new Workplace().With("a.yaml", "conforms");
        using var full = new FileStream("/dev/full", FileMode.Open, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);
        var output = new StreamWriter(full) { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };

        var context = place.CommandContext(output, error, cancelled: TestContext.Current.CancellationToken);
        var code = PawlCommand.Run(["check", "a.yaml"], context);

        Assert.Equal(2, code);
        Assert.StartsWith("pawl: error cli/cannot-write: ", error.ToString(), StringComparison.Ordinal);
    }

    // What the runtime throws when standard error is closed, as by `2>&-`.
    [Fact]
    public void A_closed_standard_error_ends_with_2()
    {
        using var place = new Workplace().With("bad.yaml", "bad");
        using var output = new StringWriter { NewLine = "\n" };
        using var closed = new Closed();

        Assert.Equal(2, PawlCommand.Run(["check", "bad.yaml"], place.CommandContext(output, closed, cancelled: TestContext.Current.CancellationToken)));
    }

    private sealed class Closed : StringWriter
    {
        public override void Write(char value) => throw new UnauthorizedAccessException("Access to the path is denied.");

        public override void Write(string? value) => throw new UnauthorizedAccessException("Access to the path is denied.");

        public override void WriteLine(string? value) => throw new UnauthorizedAccessException("Access to the path is denied.");
    }

    [Fact]
    public void A_report_does_not_take_the_place_of_its_spec()
    {
        using var place = new Workplace().With("a.json", "conforms");

        var ran = place.Run("check", "a.json", "--output", "a.json");

        Assert.Equal(2, ran.Code);
        Assert.StartsWith("a.json:1:1: error cli/cannot-write: ", ran.Error, StringComparison.Ordinal);
        Assert.Equal("conforms", File.ReadAllText(place.PathOf("a.json")));
    }

    [Fact]
    public void A_full_disk_under_a_report_ends_with_2()
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "/dev/full is not here");
        using var place = new Workplace().With("a.yaml", "conforms");

        var ran = place.Run("check", "a.yaml", "--format", "json", "--output", "/dev/full");

        Assert.Equal(2, ran.Code);
        Assert.Contains("/dev/full", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_that_looks_like_a_command_of_a_build_log_begins_no_line()
    {
        using var place = new Workplace().With("::error::.yaml", "conforms").With("b.yaml", "conforms\n::set-env name=A::b\n");

        var ran = place.Run("check", "*.yaml");

        Assert.DoesNotContain(ran.OutLines, l => l.TrimStart().StartsWith("::", StringComparison.Ordinal));
        using var bad = new Workplace().With("::error::.yaml", "bad");
        Assert.DoesNotContain(bad.Run("check", "::error::.yaml").Error.Split('\n'), l => l.TrimStart().StartsWith("::", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("no\u001b[31m-such.yaml")]
    [InlineData("no\u009b31m-such.yaml")]
    [InlineData("no\n::error::-such.yaml")]
    [InlineData("no\u202esuch.yaml")]
    [InlineData("no##[error]such.yaml")]
    public void Nothing_that_a_terminal_or_a_log_obeys_comes_through_a_message(string path)
    {
        using var place = new Workplace();

        var ran = place.Run("check", path);

        Assert.Equal(2, ran.Code);
        Assert.DoesNotContain(ran.Error, c => c is '\u001b' or '\u009b' or '\u202e' or '\r');
        Assert.DoesNotContain("##[", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("\n::", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_same_bytes_come_out_under_any_culture(string culture)
    {
        using var place = new Workplace().With("I.yaml", "fails warning").With("i.yaml", "conforms").With("specs/ı.yaml", "bad");
        string[] arguments = ["check", ".", "--as-of", "2026-01-15"];
        var expected = place.Run(arguments);
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);

            Assert.Equal(expected, place.Run(arguments));
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }
    }

    [Fact]
    public void Another_working_folder_gives_the_same_bytes()
    {
        using var place = new Workplace().With("pawl.yaml", "").With("specs/a.yaml", "fails error").With("specs/b.yaml", "bad").With("elsewhere/x", "");

        Assert.Equal(
            place.RunWith("", "", "check", "specs"),
            place.RunWith("", "elsewhere", "check", "../specs"));
    }
}
