using CsCheck;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Tests.Files;

public sealed class InheritanceTests
{
    private const string Variant = "pawl: 1\nextends: base.yaml\ngearbox: {variant: R1}\n";
    private const string Base = "pawl: 1\ngearbox: {family: Tarn, revision: A}\nratio: {target: 2, tolerance: 1 %}\n";

    private static Diagnostic Only(SpecLoad load, string code, string file, int line, int column)
    {
        var diagnostic = Assert.Single(load.Diagnostics);
        Assert.Equal((code, file, line, column), (diagnostic.Code, diagnostic.Span.File, diagnostic.Span.Start.Line, diagnostic.Span.Start.Column));
        Assert.Null(load.Spec);
        return diagnostic;
    }

    [Fact]
    public void Every_value_keeps_the_file_that_stated_it()
    {
        using var project = new Project().With("base.yaml", Base).With("r1.yaml", Variant + "ratio:\n  target: 3\n");

        var spec = project.Loader().Load("r1.yaml").Spec!;

        Assert.Equal("r1.yaml:3:20", spec.Gearbox.Variant.Span.ToString());
        Assert.Equal("base.yaml:2:19", spec.Gearbox.Family.Span.ToString());
        Assert.Equal(("3", "r1.yaml:5:11"), (spec.Ratio!.Target.Text, spec.Ratio.Target.Span.ToString()));
        Assert.Equal("base.yaml:3:31", spec.Ratio.Tolerance!.Span.ToString());
    }

    [Fact]
    public void Null_removes_what_the_base_states()
    {
        using var project = new Project().With("base.yaml", Base).With("r1.yaml", Variant + "ratio: null\n").With("r2.yaml", Variant + "ratio: {tolerance: ~}\n");

        Assert.Null(project.Loader().Load("r1.yaml").Spec!.Ratio);
        var ratio = project.Loader().Load("r2.yaml").Spec!.Ratio!;
        Assert.Equal((2.0, null), (ratio.Target.Value, ratio.Tolerance));
    }

    [Fact]
    public void Null_that_removes_nothing_and_a_blank_are_faults()
    {
        using var project = new Project().With("base.yaml", Base).With("r1.yaml", Variant + "duty: null\n").With("r2.yaml", Variant + "ratio:\n");

        Only(project.Loader().Load("r1.yaml"), DiagnosticCodes.NullValue, "r1.yaml", 4, 1);
        Only(project.Loader().Load("r2.yaml"), DiagnosticCodes.NullValue, "r2.yaml", 4, 1);
    }

    [Fact]
    public void Several_bases_apply_in_order()
    {
        using var project = new Project()
            .With("a.yaml", "pawl: 1\ngearbox: {family: A, revision: A}\n")
            .With("b/b.yaml", "pawl: 1\ngearbox: {family: B}\n")
            .With("r1.yaml", "pawl: 1\nextends: [a.yaml, b/b.yaml]\ngearbox: {variant: R1}\n");

        var load = project.Loader().Load("r1.yaml");

        Assert.Equal(("B", "A"), (load.Spec!.Gearbox.Family.Value, load.Spec.Gearbox.Revision!.Value));
        Assert.Equal(["a.yaml", "b/b.yaml"], load.Extends);
        Assert.Equal(["a.yaml", "b/b.yaml"], load.Spec.Extends.Select(name => name.Value));
    }

    [Fact]
    public void A_base_may_extend_another_from_its_own_folder()
    {
        using var project = new Project()
            .With("shared/root.yaml", "pawl: 1\ngearbox: {family: Root}\n")
            .With("shared/family.yaml", "pawl: 1\nextends: root.yaml\n")
            .With("tarn/r1.yaml", "pawl: 1\nextends: ../shared/family.yaml\ngearbox: {variant: R1}\n");

        var load = project.Loader().Load("tarn/r1.yaml");

        Assert.Equal("shared/root.yaml:2:19", load.Spec!.Gearbox.Family.Span.ToString());
        Assert.Equal(["shared/family.yaml", "shared/root.yaml", Sample.ShippedSteels, "tarn/r1.yaml"], load.FilesRead.Select(file => file.Path));
    }

    [Fact]
    public void Lists_replace_but_entries_with_an_id_merge()
    {
        static YamlNode Tree(string file, string text) =>
            YamlReader.Read(file, System.Text.Encoding.UTF8.GetBytes(text), new List<Diagnostic>())!;

        var merged = (YamlMap)Specs.Files.TreeMerge.Lay(
            Tree("base", "plain: [1, 2]\nkeyed: [{id: a, x: 1, y: 1}, {id: b, x: 2}]\nmixed: [{id: a}, 1]"),
            Tree("over", "plain: [3]\nkeyed: [{id: c}, {id: a, x: 9}]\nmixed: [{id: b}]"));

        Assert.Equal(["3"], ((YamlList)merged.Find("plain")!).Items.Select(item => ((YamlScalar)item).Value));
        Assert.Single(((YamlList)merged.Find("mixed")!).Items);
        var keyed = ((YamlList)merged.Find("keyed")!).Items.Cast<YamlMap>().ToArray();
        Assert.Equal(["a", "b", "c"], keyed.Select(item => ((YamlScalar)item.Find("id")!).Value));
        Assert.Equal(("over", "9"), (keyed[0].Find("x")!.Span.File, ((YamlScalar)keyed[0].Find("x")!).Value));
        Assert.Equal("base", keyed[0].Find("y")!.Span.File);
        Assert.Equal("base", keyed[1].Span.File);
    }

    // An independent merge: by a map of dotted paths, the later file over the earlier one.
    [Fact]
    public void Merging_maps_is_laying_one_table_of_paths_over_another()
    {
        Check.Sample(Gen.Select(Tables, Tables), pair =>
        {
            var (below, above) = pair;
            var merged = Specs.Files.TreeMerge.Lay(Tree(below, "below"), Tree(above, "above"));
            var expected = new SortedDictionary<string, string>(StringComparer.Ordinal);
            foreach (var (a, b) in below)
                expected[a + "." + b] = "below";
            foreach (var (a, b) in above)
                expected[a + "." + b] = "above";

            var found = new SortedDictionary<string, string>(StringComparer.Ordinal);
            foreach (var (a, inner) in ((YamlMap)merged).Entries)
            {
                foreach (var (b, leaf) in ((YamlMap)inner).Entries)
                    found.Add(a.Value + "." + b.Value, leaf.Span.File);
            }

            Assert.Equal(expected, found);
        });

        static YamlNode Tree((string A, string B)[] table, string file)
        {
            var text = string.Join('\n', table.GroupBy(row => row.A).Select(group => $"{group.Key}: {{{string.Join(", ", group.Select(row => $"{row.B}: 1").Distinct())}}}"));
            return YamlReader.Read(file, System.Text.Encoding.UTF8.GetBytes(text.Length == 0 ? "{}" : text), new List<Diagnostic>())!;
        }
    }

    private static readonly Gen<(string A, string B)[]> Tables =
        Gen.Select(Gen.Int[0, 2].Select(i => "abc"[i..(i + 1)]), Gen.Int[0, 2].Select(i => "xyz"[i..(i + 1)])).Array[0, 6];

    [Fact]
    public void A_circle_of_bases_is_named_link_by_link()
    {
        using var project = new Project()
            .With("base.yaml", "pawl: 1\nextends: other.yaml\n").With("other.yaml", "pawl: 1\nextends:\n  - base.yaml\n").With("r1.yaml", Variant);

        var diagnostic = Only(project.Loader().Load("r1.yaml"), DiagnosticCodes.ExtendsCycle, "other.yaml", 3, 5);

        Assert.Contains("base.yaml → other.yaml → base.yaml", diagnostic.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_cannot_extend_itself()
    {
        using var project = new Project().With("base.yaml", Variant);

        Only(project.Loader().Load("base.yaml"), DiagnosticCodes.ExtendsCycle, "base.yaml", 2, 10);
    }

    // Each file names the next one twice: two to the power of the depth, if each were followed.
    [Fact]
    public void A_wide_circle_ends_at_its_first_link()
    {
        using var project = new Project();
        for (var i = 0; i < 14; i++)
            project.With($"f{i}.yaml", $"pawl: 1\nextends: [{string.Join(", ", Enumerable.Repeat($"f{(i + 1) % 14}.yaml", 8))}]\n");

        Assert.Equal([DiagnosticCodes.ExtendsCycle], project.Loader().Load("f0.yaml").Diagnostics.Select(d => d.Code));
    }

    [Theory]
    [InlineData(16, true)]
    [InlineData(17, false)]
    public void A_row_of_bases_is_bounded_at_16(int bases, bool accepted)
    {
        using var project = new Project().With("base.yaml", "pawl: 1\nextends: b1.yaml\n").With("r1.yaml", Variant);
        for (var i = 1; i < bases; i++)
            project.With($"b{i}.yaml", i + 1 < bases ? $"pawl: 1\nextends: b{i + 1}.yaml\n" : "pawl: 1\ngearbox: {family: Far}\n");

        Assert.Equal(accepted ? [] : [DiagnosticCodes.ExtendsTooDeep], project.Loader().Load("r1.yaml").Diagnostics.Select(d => d.Code));
    }

    [Theory]
    [InlineData("../outside.yaml")]
    [InlineData("../project-two/base.yaml")]
    [InlineData("/etc/hostname")]
    [InlineData("C:/base.yaml")]
    [InlineData("link-to-outside.yaml")]
    [InlineData("folder-link/outside.yaml")]
    [InlineData("deep/../../outside.yaml")]
    public void A_base_outside_the_project_is_refused_also_through_a_symbolic_link(string reference)
    {
        using var project = new Project().With("r1.yaml", Variant.Replace("base.yaml", reference, StringComparison.Ordinal));
        File.WriteAllText(Path.Combine(project.Outer, "outside.yaml"), Base);
        Directory.CreateDirectory(Path.Combine(project.Outer, "project-two"));
        File.WriteAllText(Path.Combine(project.Outer, "project-two", "base.yaml"), Base);
        File.CreateSymbolicLink(project.At("link-to-outside.yaml"), "../outside.yaml");
        Directory.CreateSymbolicLink(project.At("folder-link"), project.Outer);

        Only(project.Loader().Load("r1.yaml"), DiagnosticCodes.OutsideRoot, "r1.yaml", 2, 10);
    }

    [Fact]
    public void A_symbolic_link_within_the_project_is_followed_and_a_circle_of_links_is_not()
    {
        using var project = new Project().With("real/base.yaml", Base).With("r1.yaml", Variant).With("r2.yaml", Variant.Replace("base.yaml", "loop.yaml", StringComparison.Ordinal));
        File.CreateSymbolicLink(project.At("base.yaml"), "real/base.yaml");
        File.CreateSymbolicLink(project.At("loop.yaml"), "loop.yaml");

        Assert.NotNull(project.Loader().Load("r1.yaml").Spec);
        Only(project.Loader().Load("r2.yaml"), DiagnosticCodes.UnreadableFile, "r2.yaml", 2, 10);
    }

    [Fact]
    public void A_project_root_may_itself_be_a_symbolic_link()
    {
        using var project = new Project().With("base.yaml", Base).With("r1.yaml", Variant);
        Directory.CreateSymbolicLink(Path.Combine(project.Outer, "alias"), project.Root);

        Assert.NotNull(new SpecLoader(Path.Combine(project.Outer, "alias"), []).Load("r1.yaml").Spec);
    }

    [Fact]
    public void A_missing_base_names_the_nearest_file_of_its_folder()
    {
        using var project = new Project().With("family.yaml", Base).With("r1.yaml", Variant.Replace("base.yaml", "famly.yaml", StringComparison.Ordinal));

        var diagnostic = Only(project.Loader().Load("r1.yaml"), DiagnosticCodes.MissingFile, "r1.yaml", 2, 10);

        Assert.Equal("Did you mean `family.yaml`?", diagnostic.Hint);
    }

    [Theory]
    [InlineData("folder", DiagnosticCodes.UnreadableFile)]
    [InlineData("no/such/folder.yaml", DiagnosticCodes.MissingFile)]
    public void A_folder_is_no_base(string reference, string code)
    {
        using var project = new Project().With("folder/x.yaml", "").With("r1.yaml", Variant.Replace("base.yaml", reference, StringComparison.Ordinal));

        Only(project.Loader().Load("r1.yaml"), code, "r1.yaml", 2, 10);
    }

    [Fact]
    public void A_fault_in_a_base_is_reported_in_the_base()
    {
        using var project = new Project().With("base.yaml", Base + "duty: {service_life: 4000}\n").With("r1.yaml", Variant);

        Only(project.Loader().Load("r1.yaml"), DiagnosticCodes.MissingUnit, "base.yaml", 4, 22);
    }

    [Fact]
    public void A_base_of_another_format_is_refused()
    {
        using var project = new Project().With("base.yaml", Base.Replace("pawl: 1", "pawl: 2", StringComparison.Ordinal)).With("r1.yaml", Variant);

        Only(project.Loader().Load("r1.yaml"), DiagnosticCodes.FormatVersion, "base.yaml", 1, 7);
    }

    [Theory]
    [InlineData("extends: {a: b}", DiagnosticCodes.NotAList)]
    [InlineData("extends: [[a]]", DiagnosticCodes.NotText)]
    [InlineData("extends: ''", DiagnosticCodes.EmptyText)]
    [InlineData("extends:", DiagnosticCodes.NullValue)]
    public void What_extends_names_is_a_path_or_a_list_of_paths(string line, string code)
    {
        using var project = new Project().With("r1.yaml", Variant.Replace("extends: base.yaml", line, StringComparison.Ordinal));

        Assert.Equal([code], project.Loader().Load("r1.yaml").Diagnostics.Select(d => d.Code));
    }

    [Fact]
    public void A_shared_base_is_parsed_once()
    {
        using var project = new Project().With("base.yaml", Base).With("r1.yaml", Variant).With("r2.yaml", Variant);
        var loader = project.Loader();
        var first = loader.Load("r1.yaml").Spec!;
        File.Delete(project.At("base.yaml"));

        Assert.Same(first.Gearbox.Family.Span.File, loader.Load("r2.yaml").Spec!.Gearbox.Family.Span.File);
    }

    [Fact]
    public void Standard_input_looks_for_its_bases_from_the_root()
    {
        using var project = new Project().With("base.yaml", Base);

        var load = project.Loader().Load("-", System.Text.Encoding.UTF8.GetBytes(Variant));

        Assert.Equal("-", load.Spec!.File);
        Assert.Equal("-:3:20", load.Spec.Gearbox.Variant.Span.ToString());
        Assert.Equal(["-", "base.yaml", Sample.ShippedSteels], load.FilesRead.Select(file => file.Path));
    }

    [Fact]
    public void A_file_of_100_MB_is_refused_unread()
    {
        using var project = new Project();
        using (var file = File.Create(project.At("r1.yaml")))
            file.SetLength(100_000_000);

        var diagnostic = Only(project.Loader().Load("r1.yaml"), DiagnosticCodes.TooLarge, "r1.yaml", 1, 1);

        Assert.Contains("100 MB", diagnostic.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("missing.yaml", DiagnosticCodes.MissingFile)]
    [InlineData("../missing.yaml", DiagnosticCodes.OutsideRoot)]
    [InlineData("", DiagnosticCodes.MissingFile)]
    [InlineData(".", DiagnosticCodes.OutsideRoot)]
    public void A_spec_that_is_not_there_is_a_diagnostic(string path, string code)
    {
        using var project = new Project();

        Assert.Equal([code], project.Loader().Load(path).Diagnostics.Select(d => d.Code));
    }
}
