namespace Pawl.Cli.Tests.Comparing;

/// <summary>What the two sides of a comparison may be, and what is said of what they are not.</summary>
public sealed class SidesTests
{
    private const string Family = "specs/tarn-120/family.yaml";
    private const string Variant = "specs/tarn-120/r400.yaml";

    [Fact]
    public void Two_files_are_a_pair_whatever_their_names_and_another_family_beneath_is_no_equal()
    {
        using var place = new GitPlace("tarn-120");
        foreach (var name in (string[])["family.yaml", "r400.yaml"])
            place.Write($"specs/other/{name}", File.ReadAllText(Path.Combine(place.Folder, "specs/tarn-120", name)));

        Assert.Contains(" 1 unchanged, ", place.Run("compare", Variant, "specs/other/r400.yaml").Out, StringComparison.Ordinal);
        place.Edit("specs/other/family.yaml", "groove: 104.4 mm h9", "groove: 105.4 mm h9");
        Assert.Contains("groove: 104.4 mm h9 → 105.4 mm h9", place.Run("compare", Variant, "specs/other/r400.yaml").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_head_that_cannot_be_read_is_not_judged_and_a_base_that_cannot_is_said()
    {
        using var place = new GitPlace("tarn-120");
        place.Edit(Variant, "teeth: 25", "teeth: many");
        place.Commit("A slip");

        var ran = place.Run("compare", "main~1", "main");
        Assert.Equal(2, ran.Code);
        Assert.StartsWith($"main:{Variant}:17:14: error ", ran.Error, StringComparison.Ordinal);

        var mended = place.Run("compare", "main", "main~1");
        Assert.Equal(0, mended.Code);
        Assert.Contains("The base cannot be judged", mended.Error, StringComparison.Ordinal);
        Assert.Contains("R400 could not be judged → ✓ conforms", mended.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("`nope` is no file, no folder and no revision", "compare", "nope", ".")]
    [InlineData("Did you mean `origin/later`?", "compare", "later", ".")]
    [InlineData("`main` holds no `specs/nope.yaml`", "compare", "main", "main:specs/nope.yaml")]
    [InlineData("An empty argument", "compare", "main", "")]
    [InlineData("two sides", "compare", "main")]
    [InlineData("takes one side", "compare", "--family", "main", ".")]
    [InlineData("no record that this build reads", "compare", "broken.json", ".")]
    [InlineData("no JSON", "compare", "--family", ".", "--format", "json")]
    [InlineData("its ending says the format", "compare", "main", ".", "--output", "there")]
    public void What_cannot_be_compared_is_said(string says, params string[] arguments)
    {
        using var place = new GitPlace("tarn-120");
        place.Git.Refs.Add("refs/remotes/origin/later", place.Git.Head.Tip.Id);
        place.Write("broken.json", "{}");

        var ran = place.Run(arguments);

        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_native_library_the_reason_and_a_way_around_are_said()
    {
        var revision = Pawl.Cli.Comparing.Revisions.Find("/", "main", Missing, out var problem, out var hint);

        Assert.Null(revision);
        Assert.Contains("native library", problem, StringComparison.Ordinal);
        Assert.Contains("git worktree add", hint, StringComparison.Ordinal);

        static Pawl.Cli.Comparing.Revision? Missing(string folder, string name, out string problem, out string hint) =>
            throw new TypeInitializationException("LibGit2Sharp.Core.NativeMethods", new DllNotFoundException("git2"));
    }

    [Fact]
    public void A_revision_reads_nothing_outside_of_its_tree()
    {
        using var place = new GitPlace("tarn-120");
        var secret = Path.Combine(Path.GetDirectoryName(place.Folder)!, Path.GetFileName(place.Folder) + "-outside.yaml");
        File.WriteAllText(secret, File.ReadAllText(Path.Combine(place.Folder, Family)));
        try
        {
            place.Branch("stranger");
            File.Delete(Path.Combine(place.Folder, Family));
            place.Commit("Nothing there");
            File.CreateSymbolicLink(Path.Combine(place.Folder, Family), secret);
            place.Commit("A link to the outside");
            Assert.Equal(LibGit2Sharp.Mode.SymbolicLink, place.Git.Head.Tip[Family].Mode);

            var ran = place.Run("compare", "main", "stranger");

            Assert.Equal(2, ran.Code);
            Assert.Contains("leads outside the project by a symbolic link", ran.Error, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(secret);
        }
    }

    [Fact]
    public void A_link_within_a_revision_is_followed()
    {
        using var place = new GitPlace("tarn-120");
        place.Branch("linked");
        Directory.Move(Path.Combine(place.Folder, "specs/catalogue"), Path.Combine(place.Folder, "shared"));
        Directory.CreateSymbolicLink(Path.Combine(place.Folder, "specs/catalogue"), "../shared");
        place.Edit(Variant, "teeth: 25", "teeth: 24");
        place.Commit("The catalogue moves");

        var ran = place.Run("compare", "main", "linked");

        Assert.Empty(ran.Error);
        Assert.Equal(1, ran.Code);
    }

    [Fact]
    public void It_runs_from_a_folder_below_and_a_project_below_the_top()
    {
        using var place = new GitPlace("tarn-120");
        place.Edit(Variant, "teeth: 25", "teeth: 24");
        place.Commit("A tooth");
        Assert.Equal(place.Run("compare", "HEAD~1", "HEAD"), place.RunIn("specs/tarn-120", "compare", "HEAD~1", "HEAD"));

        foreach (var name in (string[])["specs", "pawl.yaml"])
            Directory.Move(Path.Combine(place.Folder, name), Path.Combine(Directory.CreateDirectory(Path.Combine(place.Folder, "below")).FullName, name));
        place.Commit("A project below the top");
        place.Edit("below/" + Variant, "teeth: 24", "teeth: 26");

        var ran = place.RunIn("below", "compare", "HEAD", ".");
        Assert.Empty(ran.Error);
        Assert.Contains($"{Variant}:17:14: changed train.gears.sun.teeth: 24 → 26, for R400", ran.Out, StringComparison.Ordinal);
    }
}
