using System.Text.Json;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests;

public sealed class SelectionTests
{
    private static string[] Judged(Ran ran) =>
        [.. ran.OutLines.Where(l => l.Contains(": conforms conforms.", StringComparison.Ordinal)).Select(l => l[..l.IndexOf(": ", StringComparison.Ordinal)])];

    [Fact]
    public void Specs_come_in_ordinal_order_each_once_whatever_the_order_of_the_arguments()
    {
        using var place = new Workplace().With("b.yaml", "conforms").With("B.yaml", "conforms").With("a/z.yml", "conforms").With("ä.yaml", "conforms");

        var ran = place.Run("check", "b.yaml", "*.yaml", "a", "./b.yaml", ".");

        Assert.Equal(["B.yaml", "a/z.yml", "b.yaml", "ä.yaml"], Judged(ran));
    }

    [Fact]
    public void Many_specs_are_printed_in_order_though_judged_in_parallel()
    {
        using var place = new Workplace();
        var names = Enumerable.Range(0, 300).Select(i => $"specs/{i:0000}.yaml").ToArray();
        foreach (var name in names)
            place.With(name, "conforms");

        Assert.Equal(names, Judged(place.Run("check", "specs")));
    }

    [Fact]
    public void A_pattern_goes_down_folders_but_not_into_hidden_ones()
    {
        using var place = new Workplace().With("s/a/b.yaml", "conforms").With("s/.git/c.yaml", "bad").With("s/d.txt", "bad");

        Assert.Equal(["s/a/b.yaml"], Judged(place.Run("check", "s/**/*.yaml")));
        Assert.Equal(["s/a/b.yaml"], Judged(place.Run("check", "s")));
    }

    [Fact]
    public void An_absolute_pattern_works()
    {
        using var place = new Workplace().With("s/a/b.yaml", "conforms");

        Assert.Equal(0, place.Run("check", place.PathOf("s/**/*.yaml"), "--root", ".").Code);
    }

    [Fact]
    public void A_circle_of_folders_ends()
    {
        using var place = new Workplace().With("s/a.yaml", "conforms");
        Directory.CreateSymbolicLink(place.PathOf("s/again"), place.PathOf("s"));

        Assert.Equal(["s/a.yaml"], Judged(place.Run("check", "s")));
    }

    [Fact]
    public void A_spec_outside_the_project_is_refused()
    {
        using var outside = new Workplace().With("a.yaml", "conforms");
        using var place = new Workplace().With("pawl.yaml", "");

        var ran = place.Run("check", outside.PathOf("a.yaml"), "--root", ".");

        Assert.Equal(2, ran.Code);
        Assert.Contains("cli/outside-project", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Standard_input_is_a_spec_with_the_name_it_stands_for()
    {
        using var place = new Workplace().With("specs/x", "");

        Assert.Equal(["-"], Judged(place.RunWith("conforms", "", "check", "-")));
        var named = place.RunWith("bad", "", "check", "-", "--stdin-path", "specs/draft.yaml");
        Assert.Equal(2, named.Code);
        Assert.StartsWith("specs/draft.yaml:1:1: error spec/bad: It is bad.\n  hint: Make it good.\n", named.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Standard_input_named_twice_is_one_spec()
    {
        using var place = new Workplace();
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var opened = 0;

        // What has been read is gone.
        Stream Input() => new MemoryStream(opened++ == 0 ? "conforms"u8.ToArray() : "bad"u8.ToArray());
        PawlCommand.Run(["check", "-", "-"], place.CommandContext(output, error, cancelled: TestContext.Current.CancellationToken) with { Input = Input });

        Assert.Equal(["-"], Judged(new(0, output.ToString(), "")));
        Assert.Equal(1, opened);
    }

    [Fact]
    public void A_name_for_standard_input_that_is_not_read_is_refused()
    {
        using var place = new Workplace().With("a.yaml", "conforms");

        Assert.Equal(2, place.Run("check", "a.yaml", "--stdin-path", "b.yaml").Code);
    }

    [Fact]
    public void An_endless_standard_input_is_not_read_to_its_end()
    {
        using var place = new Workplace { Engine = Engine.Shipped };
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var endless = new Endless();

        var code = PawlCommand.Run(["check", "-"], place.CommandContext(output, error, cancelled: TestContext.Current.CancellationToken) with { Input = () => endless });

        Assert.Equal(2, code);
        Assert.StartsWith("-:1:1: error yaml/too-large: ", error.ToString(), StringComparison.Ordinal);
        Assert.InRange(endless.Given, 1, 20_000_000);
    }

    [Fact]
    public void An_empty_argument_is_not_the_working_folder()
    {
        using var place = new Workplace().With("a.yaml", "conforms");

        var ran = place.Run("check", "");

        Assert.Equal(2, ran.Code);
        Assert.Contains("error cli/no-spec: An empty argument", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Standard_input_that_stands_for_a_file_outside_the_project_is_refused()
    {
        using var place = new Workplace();

        Assert.Equal(2, place.RunWith("conforms", "", "check", "-", "--root", ".", "--stdin-path", "../x.yaml").Code);
    }

    [Theory]
    [InlineData(null, null, "2026-03-31")]
    [InlineData("1767225599", null, "2025-12-31")]
    [InlineData("1767225599", "2024-02-29", "2024-02-29")]
    public void The_day_is_the_option_then_SOURCE_DATE_EPOCH_then_today(string? epoch, string? option, string expected)
    {
        using var place = new Workplace().With("a.yaml", "conforms");
        if (epoch is not null)
            place.Environment["SOURCE_DATE_EPOCH"] = epoch;

        string[] asked = ["check", "a.yaml", "--format", "json"];
        using var record = JsonDocument.Parse(place.Run(option is null ? asked : [.. asked, "--as-of", option]).Out);

        Assert.Equal(expected, record.RootElement.GetProperty("as_of").GetString());
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("1.5")]
    [InlineData("yesterday")]
    [InlineData("99999999999999999999")]
    [InlineData("253402300800")]
    public void A_SOURCE_DATE_EPOCH_that_cannot_be_read_is_an_error(string epoch)
    {
        using var place = new Workplace().With("a.yaml", "conforms");
        place.Environment["SOURCE_DATE_EPOCH"] = epoch;

        Assert.Equal(2, place.Run("check", "a.yaml").Code);
    }

    [Fact]
    public void The_settings_in_force_are_shown_with_their_origin()
    {
        using var place = new Workplace().With("a.yaml", "conforms");
        place.Environment["NO_COLOR"] = "1";

        var lines = place.Run("check", "a.yaml", "--fail-on", "note", "--show-config").OutLines;

        Assert.Contains(lines, l => l.StartsWith("fail_on: note ", StringComparison.Ordinal) && l.EndsWith("# command line", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("color: false ", StringComparison.Ordinal) && l.EndsWith("# NO_COLOR", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("require_complete: false ", StringComparison.Ordinal) && l.EndsWith("# default", StringComparison.Ordinal));
    }

    private sealed class Endless : Stream
    {
        public long Given { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            Given += count;
            return Given < 100_000_000 ? count : throw new IOException("It was read on and on.");
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
