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
    public void Nothing_is_overwritten()
    {
        using var place = new Workplace().With("specs/r450.yaml", "mine").With("specs/catalogue/materials.yaml", "mine");

        Assert.Equal(2, place.Run("new", "r450").Code);
        Assert.Equal("mine", File.ReadAllText(place.PathOf("specs/r450.yaml")));
        Assert.Equal(2, place.Run("new", "works", "--project").Code);
        Assert.False(File.Exists(place.PathOf("pawl.yaml")));
    }
}
