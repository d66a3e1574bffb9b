using System.Text;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>What a concession states, and for whom where it stands in a file that others extend.</summary>
public sealed class ConcessionInputTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("pawl-concessions-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    private static string Concession(string more = "", string worst = "worst_margin: -5 %") =>
        $"""
        concessions:
          - rule: mesh/contact-ratio
            subject: meshes.a~b
            reason: Old stock
            approved_by: A. Designer
            expires: 2027-03-31
            {worst}
            {more}
        """;

    private SpecLoad Load(string file, params ReadOnlySpan<(string Path, string Text)> files)
    {
        foreach (var (path, text) in files)
            File.WriteAllText(Path.Combine(_root, path), text, Encoding.UTF8);
        return new SpecLoader(_root, []).Load(file);
    }

    private static (string, string) Variant(string name, string more = "", string extends = "") =>
        ($"{name}.yaml", $"pawl: 1\n{(extends.Length == 0 ? "" : $"extends: {extends}\n")}gearbox: {{family: Test, variant: {name}}}\n{more}\n");

    private static (string, string) Family(string more) => ("family.yaml", $"pawl: 1\ngearbox: {{family: Test}}\n{more}\n");

    [Fact]
    public void In_the_file_of_its_variant_it_needs_no_list()
    {
        var load = Load("R1.yaml", Variant("R1", Concession()));

        Assert.Empty(load.Diagnostics);
        var concession = Assert.Single(load.Spec!.Concessions);
        Assert.Equal((-0.05, true, true), (concession.WorstMargin.Value.Coherent, concession.Variants.IsEmpty, concession.Covers("R1")));
    }

    [Theory]
    [InlineData("R1.yaml")]
    [InlineData("family.yaml")]
    public void In_a_base_file_it_names_its_variants(string file)
    {
        var load = Load(file, Family(Concession()), Variant("R1", extends: "family.yaml"));

        var missing = Assert.Single(load.Diagnostics);
        Assert.Equal((DiagnosticCodes.MissingVariants, Severity.Error, "family.yaml:4:11"), (missing.Code, missing.Severity, missing.Span.ToString()));
        Assert.Equal("The concession for `mesh/contact-ratio` stands in a base file and names no variants, so it would cover every variant that extends the file.", missing.Message);
        Assert.Equal("Add the variants that it was granted for, `variants: [R148, R180]`, or move it into the file of its variant.", missing.Hint);
        Assert.Null(load.Spec);
    }

    // A variant that others extend is a base to them.
    [Fact]
    public void A_variant_hands_no_concession_down_unnamed()
    {
        var first = Variant("R1", Concession());
        Assert.Empty(Load("R1.yaml", first).Diagnostics);

        var load = Load("R2.yaml", first, Variant("R2", extends: "R1.yaml"));

        Assert.Equal([DiagnosticCodes.MissingVariants], load.Diagnostics.Select(d => d.Code));
    }

    [Theory]
    [InlineData("R1", true)]
    [InlineData("R2", true)]
    [InlineData("R3", false)]
    public void It_covers_the_variants_that_it_names(string variant, bool covers)
    {
        var load = Load($"{variant}.yaml", Family(Concession("variants: [R1, R2]")), Variant(variant, extends: "family.yaml"));

        Assert.Empty(load.Diagnostics);
        Assert.Equal(covers, Assert.Single(load.Spec!.Concessions).Covers(variant));
    }

    [Fact]
    public void One_that_does_not_name_the_variant_of_its_own_file_is_a_warning()
    {
        var load = Load("R1.yaml", Variant("R1", Concession("variants: [R2]")));

        var other = Assert.Single(load.Diagnostics);
        Assert.Equal((DiagnosticCodes.OtherVariants, Severity.Warning, "R1.yaml:10:16"), (other.Code, other.Severity, other.Span.ToString()));
        Assert.Equal("The concession for `mesh/contact-ratio` does not name `R1`, the variant of this file, so it covers nothing here.", other.Message);
        Assert.NotNull(load.Spec);
    }

    [Theory]
    [InlineData("", DiagnosticCodes.MissingKey, "concessions[0] lacks the key `worst_margin`.")]
    [InlineData("worst_margin: 5 %", DiagnosticCodes.OutOfRange, "concessions[0].worst_margin is zero or less, but `5 %` is not.")]
    [InlineData("worst_margin: any", DiagnosticCodes.MalformedAmount, null)]
    [InlineData("worst_margin: -5 mm", DiagnosticCodes.UnitMismatch, null)]
    public void It_says_how_far_the_rule_may_be_broken(string worst, string code, string? message)
    {
        var load = Load("R1.yaml", Variant("R1", Concession(worst: worst)));

        var wrong = Assert.Single(load.Diagnostics);
        Assert.Equal((code, Severity.Error), (wrong.Code, wrong.Severity));
        if (message is not null)
            Assert.Equal(message, wrong.Message);
    }
}
