namespace Pawl.Cli.Tests;

public sealed class SchemaAndNewTests
{
    [Fact]
    public void Schemas_are_printed_written_and_compared()
    {
        using var place = new Workplace();

        Assert.Equal("gearbox\nrules\n", place.Run("schema").Out);
        Assert.Equal("{}\n", place.Run("schema", "gearbox").Out);
        Assert.Equal(1, place.Run("schema", "--check").Code);
        Assert.Equal(0, place.Run("schema", "--output", "schema").Code);
        Assert.Equal(0, place.Run("schema", "--check").Code);
        place.With("schema/rules.schema.json", "{}");
        var stale = place.Run("schema", "--check");
        Assert.Equal(1, stale.Code);
        Assert.StartsWith("rules.schema.json is stale.\n", stale.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("simple")]
    [InlineData("stepped")]
    [InlineData("pair")]
    public void A_new_spec_bears_the_name_and_the_modeline(string kind)
    {
        using var place = new Workplace();

        Assert.Equal(0, place.Run("new", "R450", "--kind", kind).Code);

        var text = File.ReadAllText(place.PathOf("specs/r450.yaml"));
        Assert.StartsWith("# yaml-language-server: $schema=", text, StringComparison.Ordinal);
        Assert.Contains("variant: R450", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_project_has_every_schema_that_its_files_point_at()
    {
        using var place = new Workplace { Engine = Checking.Engine.Shipped }.With("schema/rules.schema.json", "mine");

        Assert.Equal(0, place.Run("new", "works", "--project").Code);
        Assert.Equal(0, place.Run("new", "R450").Code);

        var files = Directory.GetFiles(place.Folder, "*.yaml", SearchOption.AllDirectories);
        Assert.Equal(4, files.Length);
        foreach (var file in files)
        {
            const string Modeline = "# yaml-language-server: $schema=";
            var first = File.ReadLines(file).First();
            Assert.StartsWith(Modeline, first, StringComparison.Ordinal);
            Assert.True(File.Exists(Path.Combine(Path.GetDirectoryName(file)!, first[Modeline.Length..])), file);
        }

        Assert.Equal("mine", File.ReadAllText(place.PathOf("schema/rules.schema.json")));
        Assert.Equal(File.ReadAllText(Path.Combine(RepositoryTests.Root, "schema/gearbox.schema.json")), File.ReadAllText(place.PathOf("schema/gearbox.schema.json")));
    }

    // The reader judges what the schema gave: every key is known where it stands, every example is of the right kind.
    [Fact]
    public void A_full_spec_has_every_key_and_is_one_with_the_marks_of_comment_taken_away()
    {
        using var place = new Workplace { Engine = Checking.Engine.Shipped };
        Assert.Equal(0, place.Run("new", "works", "--project").Code);
        Assert.Equal(0, place.Run("new", "R450", "--full").Code);
        Assert.Equal(0, place.Run("check", "--no-reports").Code);
        Assert.Equal(2, place.Run("new", "other", "--full", "--project").Code);

        var lines = File.ReadAllLines(place.PathOf("specs/r450.yaml")).SkipWhile(line => !line.StartsWith("# Everything", StringComparison.Ordinal)).Skip(3).ToArray();
        Assert.All(lines, line => Assert.StartsWith("#", line, StringComparison.Ordinal));
        place.With("specs/full.yaml", "pawl: 1\n" + string.Join('\n', lines.Select(line => line.Length > 2 ? line[2..] : "")) + "\n");
        var ran = place.Run("check", "specs/full.yaml", "--no-reports");

        string[] ofTheText = ["yaml/", "spec/unknown-key", "spec/malformed", "spec/unknown-unit", "spec/unit-mismatch", "spec/missing-unit", "spec/not-a-list", "spec/not-a-map", "spec/unknown-word"];
        Assert.All(ofTheText, code => Assert.DoesNotContain($"error {code}", ran.Error, StringComparison.Ordinal));
        foreach (var key in Pawl.Specs.Schema.SpecKeys.All.Where(key => key.Path is not ("pawl" or "extends")))
            Assert.Contains(lines, line => line[1..].TrimStart(' ', '-').StartsWith(key.Path.Split('.')[^1] + ":", StringComparison.Ordinal));
    }

    [Fact]
    public void Drawing_and_part_numbers_stand_in_every_output()
    {
        using var place = new Workplace { Engine = Checking.Engine.Shipped };
        Assert.Equal(0, place.Run("new", "works", "--project").Code);
        Assert.Equal(0, place.Run("new", "R450").Code);
        var spec = File.ReadAllText(place.PathOf("specs/r450.yaml")).Replace("  revision: A\n", "  revision: A\n  drawing: D-450\n  part_number: 10-450\n", StringComparison.Ordinal);
        place.With("specs/r450.yaml", spec + "\nparts:\n  - {id: gears.sun, drawing: D-451, revision: B, part_number: '<10-451>'}\n  - {id: bodies.carrier, drawing: D-452}\n");

        var ran = place.Run("check", "--verbose", "--output", "out");

        Assert.True(ran.Code == 0, ran.Error);
        Assert.Contains("R450 revision A (drawing D-450, part 10-450) conforms", ran.Out, StringComparison.Ordinal);
        Assert.Contains("part gears.sun: drawing D-451 B, part <10-451>", ran.Out, StringComparison.Ordinal);
        Assert.Contains("drawing D-450, part 10-450", File.ReadAllText(place.PathOf("out/index.md")), StringComparison.Ordinal);
        var markdown = File.ReadAllText(place.PathOf("out/r450.md"));
        Assert.Contains("| Drawing | D-450 |", markdown, StringComparison.Ordinal);
        Assert.Contains("| `gears.sun` | D-451 | B | &lt;10-451&gt; |", markdown, StringComparison.Ordinal);
        Assert.Contains("D-450", File.ReadAllText(place.PathOf("out/r450.html")), StringComparison.Ordinal);
        Assert.Contains("D-451", File.ReadAllText(place.PathOf("out/r450.derivations.html")), StringComparison.Ordinal);
        using var record = System.Text.Json.JsonDocument.Parse(File.ReadAllText(place.PathOf("out/r450.json")));
        Assert.Equal("10-450", record.RootElement.GetProperty("identity").GetProperty("part_number").GetString());
        Assert.Equal("<10-451>", record.RootElement.GetProperty("parts")[0].GetProperty("part_number").GetString());
    }

    [Theory]
    [InlineData("{id: gears.son, drawing: D}", "Did you mean `gears.sun`?")]
    [InlineData("{id: sun, drawing: D}", "spec/unknown-name")]
    [InlineData("{id: gears.sun, drawing: D}\n  - {id: gears.sun, drawing: E}", "yaml/duplicate-key")]
    public void Numbers_are_of_something_that_the_spec_declares_and_once(string entry, string said)
    {
        using var place = new Workplace { Engine = Checking.Engine.Shipped };
        Assert.Equal(0, place.Run("new", "works", "--project").Code);
        Assert.Equal(0, place.Run("new", "R450").Code);
        File.AppendAllText(place.PathOf("specs/r450.yaml"), $"\nparts:\n  - {entry}\n");

        var ran = place.Run("check", "--no-reports");

        Assert.Equal(2, ran.Code);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_overwritten()
    {
        using var place = new Workplace().With("specs/r450.yaml", "mine").With("specs/catalogue/materials.yaml", "mine");

        Assert.Equal(2, place.Run("new", "r450").Code);
        Assert.Equal("mine", File.ReadAllText(place.PathOf("specs/r450.yaml")));
        Assert.Equal(2, place.Run("new", "works", "--project").Code);
        Assert.False(File.Exists(place.PathOf("pawl.yaml")));
    }
}
