namespace Pawl.Cli.Tests;

// What each exit code means stands in the README; here is one test a cause.
public sealed class ExitCodeTests
{
    private static Workplace Place() => new Workplace()
        .With("good.yaml", "conforms")
        .With("failing.yaml", "fails error")
        .With("warned.yaml", "fails warning")
        .With("gap.yaml", "gap")
        .With("bad.yaml", "bad")
        .With("base.yaml", "base")
        .With("nothing.yaml", "nothing")
        .With("defect.yaml", "defect")
        .With("empty/read.txt", "no spec")
        .With("packs/none.yaml", "");

    [Theory]
    [InlineData(0, "check", "good.yaml")]
    [InlineData(0, "check", "good.yaml", "--strict-schema")]
    [InlineData(1, "check", "failing.yaml")]
    [InlineData(0, "check", "warned.yaml")]
    [InlineData(1, "check", "warned.yaml", "--fail-on", "warning")]
    [InlineData(1, "check", "warned.yaml", "--fail-on", "note")]
    [InlineData(0, "check", "failing.yaml", "--fail-on", "never")]
    [InlineData(0, "check", "gap.yaml")]
    [InlineData(1, "check", "gap.yaml", "--require-complete")]
    [InlineData(1, "check", "gap.yaml", "--require-complete", "--fail-on", "never")]
    [InlineData(2, "check", "bad.yaml")]
    [InlineData(2, "check", "nothing.yaml")]
    [InlineData(2, "check", "base.yaml")]
    [InlineData(2, "check", "no-such.yaml")]
    [InlineData(2, "check", "no-*.yaml")]
    [InlineData(2, "check", "empty")]
    [InlineData(2, "check")]
    [InlineData(2, "check", "good.yaml", "--bogus")]
    [InlineData(2, "check", "good.yaml", "--format", "xml")]
    [InlineData(2, "check", "good.yaml", "--format", "json", "--format", "html")]
    [InlineData(2, "check", "good.yaml", "--fail-on", "fatal")]
    [InlineData(2, "check", "good.yaml", "--as-of", "31.03.2026")]
    [InlineData(2, "check", "good.yaml", "--as-of", "2026-02-30")]
    [InlineData(2, "check", "good.yaml", "--rules", "no-such-folder")]
    [InlineData(2, "check", "good.yaml", "--rules", "packs")]
    [InlineData(2, "check", "good.yaml", "--root", "no-such-folder")]
    [InlineData(2, "check", "good.yaml", "--root", "empty")]
    [InlineData(2, "check", "good.yaml", "failing.yaml", "--format", "html")]
    [InlineData(70, "check", "defect.yaml")]
    [InlineData(2, "chekc")]
    [InlineData(2)]
    [InlineData(0, "--help")]
    [InlineData(0, "--version")]
    [InlineData(0, "check", "--help")]
    [InlineData(0, "check", "good.yaml", "--show-config")]
    [InlineData(0, "explain")]
    [InlineData(0, "explain", "train/error")]
    [InlineData(2, "explain", "train/eror")]
    [InlineData(0, "schema")]
    [InlineData(2, "schema", "gearbx")]
    [InlineData(1, "schema", "--check")]
    [InlineData(2, "new", "../escape")]
    public void Every_cause_has_its_exit_code(int expected, params string[] arguments)
    {
        using var place = Place();

        Assert.Equal(expected, place.Run(arguments).Code);
    }

    [Theory]
    [InlineData(1, "good.yaml", "failing.yaml")]
    [InlineData(2, "good.yaml", "failing.yaml", "bad.yaml")]
    [InlineData(2, "failing.yaml", "no-such.yaml")]
    public void The_worst_of_several_specs_wins_and_all_are_judged(int expected, params string[] specs)
    {
        using var place = Place();

        var ran = place.Run(["check", .. specs]);

        Assert.Equal(expected, ran.Code);
        Assert.Contains("failing.yaml: fails error does not conform.", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_that_ends_with_2_is_silent()
    {
        using var place = Place();

        foreach (var arguments in new string[][] { ["check", "no-*.yaml"], ["check", "empty"], ["check"], ["check", "--bogus"], ["check", "base.yaml"], ["check", "nothing.yaml"] })
        {
            var ran = place.Run(arguments);

            Assert.Contains("error ", ran.Error, StringComparison.Ordinal);
            Assert.Contains("hint: ", ran.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_counts_are_the_last_line()
    {
        using var place = Place();

        Assert.Equal(
            "1 spec (1 does not conform), 3 rules, 2 evaluations: 1 conform, 1 fail, 0 under concession, 0 not evaluated, 0 not applicable",
            place.Run("check", "failing.yaml").OutLines[^1]);
    }

    [Fact]
    public void A_defect_is_one_line_and_asks_for_a_report()
    {
        using var place = Place();

        var ran = place.Run("check", "defect.yaml");

        Assert.Equal(70, ran.Code);
        Assert.StartsWith("pawl: defect in pawl, met in defect.yaml: InvalidOperationException: a seam came open\n  hint: ", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("   at ", place.Run("check", "defect.yaml", "--verbose").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_defect_outside_of_a_spec_names_none()
    {
        using var place = new Workplace { Engine = StandIn.Engine with { LoadRules = (_, _) => throw new InvalidOperationException("a seam came open") } }
            .With("good.yaml", "conforms");

        var ran = place.Run("check", "good.yaml");

        Assert.Equal(70, ran.Code);
        Assert.StartsWith("pawl: defect in pawl: InvalidOperationException: a seam came open\n", ran.Error, StringComparison.Ordinal);
    }

    // The first spec is computed beside the rules, the others in parallel; a defect may sit in any of them.
    [Theory]
    [InlineData("a.yaml", "good.yaml", "failing.yaml", "bad.yaml")]
    [InlineData("bad.yaml", "failing.yaml", "good.yaml", "z.yaml")]
    [InlineData("failing.yaml", "good.yaml", "a.yaml", "z.yaml")]
    public void A_defect_in_one_of_many_specs_leaves_the_others_their_verdicts(params string[] specs)
    {
        using var place = Place().With("a.yaml", "defect").With("z.yaml", "defect");

        var ran = place.Run(["check", "--output", "out", "--format", "json", .. specs]);

        Assert.Equal(70, ran.Code);
        Assert.Contains("good.yaml: conforms conforms.", ran.Out, StringComparison.Ordinal);
        Assert.Contains("failing.yaml: fails error does not conform.", ran.Out, StringComparison.Ordinal);
        foreach (var spec in specs)
        {
            var name = Path.GetFileNameWithoutExtension(spec);
            Assert.Equal(name is "good" or "failing", File.Exists(place.PathOf($"out/{name}.json")));
            Assert.Equal(name is "a" or "z", ran.Error.Contains($"defect in pawl, met in {spec}: InvalidOperationException: ", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_base_in_a_folder_is_passed_over_and_counted()
    {
        using var place = new Workplace().With("a/base.yaml", "base").With("a/good.yaml", "conforms extends a/base.yaml");

        var ran = place.Run("check", "a");

        Assert.Equal(0, ran.Code);
        Assert.Equal("1 base file passed over", ran.OutLines[^2]);
        Assert.Empty(ran.Error);
    }

    [Fact]
    public void A_base_that_no_spec_extends_is_warned_of()
    {
        using var place = new Workplace().With("a/base.yaml", "base").With("a/good.yaml", "conforms");

        var ran = place.Run("check", "a");

        Assert.Equal(0, ran.Code);
        Assert.StartsWith("a/base.yaml:1:1: warning spec/unused-base: ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_bases_is_nothing_judged()
    {
        using var place = new Workplace().With("a/base.yaml", "base");

        Assert.Equal(2, place.Run("check", "a").Code);
    }
}
