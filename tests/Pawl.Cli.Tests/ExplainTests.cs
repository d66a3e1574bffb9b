namespace Pawl.Cli.Tests;

public sealed class ExplainTests
{
    [Theory]
    [InlineData("train/error", "rule train/error\n")]
    [InlineData("spec/bad", "diagnostic spec/bad\n")]
    [InlineData("cli/usage", "diagnostic cli/usage\n")]
    [InlineData("mesh", "subject mesh\n")]
    [InlineData("EN-18CrNiMo7-6", "steel EN-18CrNiMo7-6\n")]
    [InlineData("as568", "size as568\n")]
    [InlineData("AS568-238", "size as568-238\n")]
    [InlineData("mesh_gear.tip_clearance", "quantity mesh_gear.tip_clearance\n")]
    public void Every_kind_of_name_is_explained(string name, string first)
    {
        using var place = new Workplace();

        var ran = place.Run("explain", name);

        Assert.Equal(0, ran.Code);
        Assert.StartsWith(first, ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_quantity_without_its_subject_gives_every_subject_that_has_it()
    {
        using var place = new Workplace();

        var ran = place.Run("explain", "tip_clearance");

        Assert.Equal(0, ran.Code);
        Assert.All(ran.OutLines.Where(l => l.StartsWith("quantity ", StringComparison.Ordinal)), l => Assert.EndsWith(".tip_clearance", l, StringComparison.Ordinal));
    }

    [Fact]
    public void The_list_holds_rules_subjects_quantities_keys_sizes_steels_and_diagnostics()
    {
        using var place = new Workplace();

        var kinds = place.Run("explain").OutLines.Select(l => l.Split(' ')[0]).Distinct();

        Assert.Equal(["rule", "subject", "quantity", "key", "size", "steel", "diagnostic"], kinds);
    }

    // AS568, size -238: 3.484 in ± 0.024 in by 0.139 in ± 0.004 in; from memory, as the table says of itself.
    [Fact]
    public void A_size_tells_its_tolerances_its_source_and_how_sure_they_are()
    {
        using var place = new Workplace();

        var text = place.Run("explain", "as568-238").Out;

        Assert.Contains("inside diameter   88.49 mm (3.484 in) ±0.61 mm (0.024 in)\n", text, StringComparison.Ordinal);
        Assert.Contains("cord              3.53 mm (0.139 in) ±0.1 mm (0.004 in)\n", text, StringComparison.Ordinal);
        Assert.Contains("AS568 (SAE)", text, StringComparison.Ordinal);
        Assert.Contains("from memory", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_size_that_the_table_lacks_is_answered_with_those_it_has()
    {
        using var place = new Workplace();

        var ran = place.Run("explain", "as568-170");

        Assert.Equal(2, ran.Code);
        Assert.Contains("-102 to -158", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_name_is_answered_with_near_ones()
    {
        using var place = new Workplace();

        Assert.Contains("`train/error`", place.Run("explain", "train/eror").Error, StringComparison.Ordinal);
        Assert.Contains("tip_clearance`", place.Run("explain", "tip_clearence").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_the_name_of_a_quantity_leads_to_it()
    {
        using var place = new Workplace();

        Assert.Contains("`mesh.transverse_contact_ratio`", place.Run("explain", "mesh.contact_ratio").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void No_name_is_near_to_nothing()
    {
        using var place = new Workplace();

        Assert.DoesNotContain("Did you mean", place.Run("explain", "").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void JSON_is_JSON()
    {
        using var place = new Workplace();

        using var json = System.Text.Json.JsonDocument.Parse(place.Run("explain", "train/error", "--format", "json").Out);

        Assert.Equal("train/error", json.RootElement[0].GetProperty("name").GetString());
    }

    private static string Shipped(params string[] arguments)
    {
        using var place = new Workplace { Engine = Checking.Engine.Shipped };
        var ran = place.Run(["explain", .. arguments]);
        Assert.True(ran.Code == 0, ran.Error);
        return ran.Out;
    }

    [Fact]
    public void A_key_is_told_with_unit_example_and_the_rules_that_need_it()
    {
        var text = Shipped("duty.input.speed");

        Assert.StartsWith("key duty.input.speed\n  Speed\n", text, StringComparison.Ordinal);
        Assert.Contains("rpm, 1/min, rad/s", text, StringComparison.Ordinal);
        Assert.Contains("  example           speed: 8200 rpm\n", text, StringComparison.Ordinal);
        Assert.Contains("train.input_speed", text, StringComparison.Ordinal);
        Assert.Contains("plausible/input-speed", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("joints", "key joints\n")]
    [InlineData("joints.flange.thread", "key joints.NAME.thread\n")]
    [InlineData("joints.thread", "key joints.NAME.thread\n")]
    [InlineData("train.gears.sun.heat_treatment.case_depth", "material/case-min")]
    [InlineData("duty.spectrum.share", "key duty.spectrum.share\n")]
    [InlineData("train", "key train\n")]
    [InlineData("train", "subject train\n")]
    public void A_key_is_found_by_its_path_with_a_name_or_without(string name, string told) =>
        Assert.Contains(told, Shipped(name), StringComparison.Ordinal);

    // By the model itself, whose properties are the keys.
    [Fact]
    public void Every_section_of_the_model_is_explained_with_its_keys()
    {
        foreach (var property in typeof(Pawl.Specs.Model.GearboxSpec).GetProperties().Where(p => p.GetCustomAttributes(typeof(Pawl.Specs.Model.NotAKeyAttribute), false).Length == 0))
        {
            var key = Pawl.Specs.Schema.SpecKeys.All.SingleOrDefault(each => each.Path == Pawl.Specs.Model.PropertyName.Of(property.Name));
            Assert.NotNull(key);
            Assert.NotEmpty(key.Description);
            Assert.All(key.Below, below => Assert.Contains(Pawl.Specs.Schema.SpecKeys.All, each => each.IsMeantBy($"{key.Path}.{below}")));
        }
    }
}
