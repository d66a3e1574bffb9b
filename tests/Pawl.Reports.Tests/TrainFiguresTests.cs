using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Pawl.Analysis;
using Pawl.Mechanics.Gears;
using Pawl.Reports.Drawing;
using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs;

namespace Pawl.Reports.Tests;

/// <summary>Figures of the train, drawn of the shipped specs and of records that are spoilt.</summary>
public sealed partial class TrainFiguresTests
{
    private static readonly string Root = FindRoot();
    private static readonly Func<ConformanceRecord, IEnumerable<Figure>>[] Kinds = [TrainSchematic.Of, TrainView.Of, PowerFlow.Of, MeshCloseUp.Of];

    public static TheoryData<string> ShippedSpecs => [.. new[] { "tarn-180", "tarn-120", "beck-90", "faulty" }
        .SelectMany(folder => Directory.GetFiles(Path.Combine(Root, "specs", folder), "*.yaml"))
        .Where(static file => !file.EndsWith("family.yaml", StringComparison.Ordinal))
        .Select(static file => Path.GetRelativePath(Root, file).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Pawl.slnx")))
            folder = Path.GetDirectoryName(folder)!;
        return folder;
    }

    private static ConformanceRecord Record(string path, string? text = null)
    {
        string[] catalogues = ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/bearings.yaml"];
        var load = new SpecLoader(Root, [.. catalogues], adapterPaths: ["specs/adapters/motor-flange-a.yaml", "specs/adapters/shaft-coupling-b.yaml", "specs/adapters/mount-c.yaml"])
            .Load(path, text is null ? File.ReadAllBytes(Path.Combine(Root, path)) : Encoding.UTF8.GetBytes(text));
        Assert.True(load.Spec is not null, string.Join('\n', load.Diagnostics));
        return RecordBuilder.Build(Judge.Of(GearboxAnalyser.Analyse(load.Spec), RulePacks.Shipped.Rules!, new(2026, 1, 15)), Sample.Tool);
    }

    [Theory]
    [MemberData(nameof(ShippedSpecs))]
    public void Every_kind_of_figure_is_drawn_of_a_shipped_spec(string path)
    {
        var record = Record(path);
        var figures = Kinds.Select(kind => kind(record).ToArray()).ToArray();

        Assert.Single(figures[0]);
        Assert.NotEmpty(figures[1]);

        // A train that locks has no power flow.
        Assert.Equal(record.Subjects.Any(static s => Parts.Number(s, "rolling_power", "kW") is not null), figures[2].Length == 1);
        Assert.Equal(record.Subjects.Count(static s => s.Kind == "mesh"), figures[3].Length);
        foreach (var figure in figures.SelectMany(static f => f))
        {
            var svg = figure.Inline();
            Assert.InRange(Encoding.UTF8.GetByteCount(svg), 500, 40_000);
            Assert.DoesNotContain("style=", svg, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"NaN|Infinity|∞|\d[eE][+-]?\d", Paths().Replace(svg, "$1"));
            var document = new HtmlParser().ParseDocument(svg);
            var ids = document.QuerySelectorAll("[id]").Select(static e => e.Id).ToArray();
            Assert.Equal(ids.Distinct(), ids);
            Assert.All(document.QuerySelectorAll("use"), use => Assert.Contains(use.GetAttribute("href")![1..], ids));
        }
    }

    [GeneratedRegex("""(?:d|x|y|transform)="([^"]*)"|(?:[^"]+)""")]
    private static partial Regex Paths();

    // z₁·φ₁ + z₂·φ₂ on the pitch circles: planets that stand where (z_s + z_r)·θ/360° is whole mesh with both sun and ring (textbook assembly
    // condition); a faulty spec does not.
    [Theory]
    [MemberData(nameof(ShippedSpecs))]
    public void Planets_mesh_with_all_their_mates_where_they_go_in(string path)
    {
        var record = Record(path);
        var set = record.Subjects.First(static s => s.Kind == "planet_set");
        var scene = TrainScene.Of(Parts.Of(record));
        var worst = scene.Meshes.Max(static mesh => Math.Abs(mesh.Misfit));

        Assert.Equal(record.Subjects.Where(static s => s.Kind == "mesh").Sum(_ => (int)Parts.Number(set, "count")!.Value), scene.Meshes.Length);
        if (Parts.Number(set, "misfit_angle", "°") == 0)
            Assert.InRange(worst, 0, 1e-6);
        else
            Assert.InRange(worst, 0.01, 0.5);
    }

    // The law of gearing, at the dimensions of the specs: flanks on the line of action through the pitch point touch there, and the distance
    // of the flanks along that common normal stays nothing over a whole pitch of turning.
    [Theory]
    [MemberData(nameof(ShippedSpecs))]
    public void Flanks_touch_along_the_line_of_action_over_a_whole_pitch(string path)
    {
        foreach (var mesh in Parts.Of(Record(path)).Meshes)
        {
            var (one, two) = mesh.First.IsInternal ? (mesh.Second, mesh.First) : (mesh.First, mesh.Second);
            var (turn1, turn2) = MeshPlace.Touching(one.Outline, two.Outline, mesh.WorkingAngle, left: true);
            var (r1, r2) = (mesh.PitchRadius(one), mesh.PitchRadius(two) * (two.IsInternal ? -1 : 1));
            Assert.Equal(mesh.Centre, Math.Abs(r1 + r2), 1e-6);
            for (var step = -8; step <= 8; step++)
            {
                var turn = step * one.Outline.HalfPitch / 8;
                var (x1, y1) = Contact(one.Outline, -r1, turn1 + turn, mesh.WorkingAngle, r1);
                var roll = -turn * one.Outline.Teeth / two.Outline.Teeth;

                // The same point seen from the mate: on its flank the half angle of its tooth gives the same direction.
                var (x, y) = (x1, y1 - r2);
                var radius = Math.Sqrt((x * x) + (y * y));
                if (radius * 2 < Math.Abs(two.Outline.BaseDiameter))
                    continue;
                var half = two.Outline.HalfAngleAt(Math.Sign(two.Outline.Teeth) * radius * 2);
                var direction = turn2 + roll + (two.IsInternal ? -half : half);
                Assert.Equal(0, Math.IEEERemainder(Math.Atan2(y, x) - direction, Math.Tau) * radius, 1e-7);
            }
        }
    }

    /// <summary>Where the left flank of a gear below the pitch point crosses the line of action.</summary>
    private static (double X, double Y) Contact(ToothOutline gear, double axis, double turn, double angle, double pitchRadius)
    {
        // The roll from the base tangent point grows with the turn: ρ = r_b·(tan α_wt + Δφ).
        var half = gear.HalfAngleAt(2 * pitchRadius);
        var moved = turn - ((Math.PI / 2) - half);
        var along = gear.BaseDiameter / 2 * moved;
        return (-along * Math.Cos(angle), axis + pitchRadius + (along * Math.Sin(angle)));
    }

    [Theory]
    [InlineData("teeth", 0)]
    [InlineData("teeth", 1e300)]
    [InlineData("teeth", -25)]
    [InlineData("teeth", 2.5)]
    [InlineData("module", 1e300)]
    [InlineData("module", double.NaN)]
    [InlineData("module", -1)]
    [InlineData("profile_shift", 1e300)]
    [InlineData("tip_diameter", 1e300)]
    [InlineData("tip_diameter", 0)]
    [InlineData("root_diameter", 1e-300)]
    [InlineData("pressure_angle", 1e300)]
    [InlineData("helix_angle", 90)]
    [InlineData("thickness_allowance", -1e300)]
    [InlineData("face_width", 1e300)]
    [InlineData("axial_position", -1e300)]
    [InlineData("rim_thickness", double.PositiveInfinity)]
    [InlineData("active_tip_diameter", 0)]
    [InlineData("root_fillet", -1e300)]
    [InlineData("root_form_diameter", 1)]
    [InlineData("centre_distance", 1e300)]
    [InlineData("centre_distance", 0)]
    [InlineData("working_pressure_angle", 90)]
    [InlineData("count", 1e300)]
    [InlineData("count", 0)]
    [InlineData("pair_angle", 1e300)]
    [InlineData("neighbour_clearance", 1e300)]
    [InlineData("rolling_power", 1e300)]
    [InlineData("power", double.NaN)]
    [InlineData("speed_ratio", 1e300)]
    [InlineData("transverse_base_pitch", 1e-300)]
    [InlineData("tip_clearance", double.NegativeInfinity)]
    public void Hostile_values_never_spoil_a_report(string quantity, double value)
    {
        var record = Record("specs/tarn-180/r180.yaml");
        var spoilt = record with
        {
            Subjects = [.. record.Subjects.Select(subject => subject with
            {
                Quantities = [.. subject.Quantities.Select(q => q.Name == quantity ? q with { Value = q.Value with { Nominal = value, Min = null, Max = null } } : q)],
            })],
        };

        foreach (var figure in Kinds.SelectMany(kind => kind(spoilt)))
            Assert.DoesNotContain("NaN", figure.File(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_without_a_train_has_none_of_the_figures() => Assert.All(
        Kinds, static kind => Assert.Empty(kind(Sample.Record() with { Subjects = [] })));

    [Fact]
    public void A_quantity_that_is_missing_leaves_its_figure_out()
    {
        var record = Record("specs/tarn-120/r400.yaml");
        var without = record with
        {
            Subjects = [.. record.Subjects.Select(subject => subject with { Quantities = [.. subject.Quantities.Where(static q => q.Name != "module")] })],
        };

        Assert.Empty(TrainView.Of(without));
        Assert.Empty(TrainSchematic.Of(without));
        Assert.Empty(MeshCloseUp.Of(without));
    }

    [Theory]
    [InlineData("specs/faulty/tarn-180-two-plane-clash.yaml", "long passes fixed_sun")]
    [InlineData("specs/faulty/tarn-180-wrong-sun.yaml", "planets do not go in")]
    [InlineData("specs/faulty/tarn-120-ring-clash.yaml", "involute interference")]
    public void What_is_broken_has_a_cross_and_words(string path, string words)
    {
        var figures = Kinds.SelectMany(kind => kind(Record(path))).Select(static figure => new HtmlParser().ParseDocument(figure.Inline())).ToArray();

        Assert.Contains(figures, figure => figure.QuerySelector("path.cross") is not null
            && Texts(figure).Contains('✕') && Texts(figure).Contains(words, StringComparison.Ordinal));
    }

    private static string Texts(IDocument document) => string.Join(' ', document.QuerySelectorAll("text").Select(static e => e.TextContent));

    // A hundred times the planets and teeth of a usual train: the same outlines are shown again, so the drawing grows little.
    [Theory]
    [InlineData(200, 500)]
    public void Many_planets_and_teeth_stay_small(int count, int teeth)
    {
        var record = Record("specs/tarn-120/r400.yaml");
        var many = record with
        {
            Subjects = [.. record.Subjects.Select(subject => subject.Kind switch
            {
                "planet_set" => With(subject, ("count", count)),
                "gear" when subject.Path == "gears.ring" => With(subject, ("teeth", teeth), ("tip_diameter", (teeth * 1.25) - 2.5), ("root_diameter", (teeth * 1.25) + 3), ("root_form_diameter", (teeth * 1.25) + 2)),
                _ => subject,
            })],
        };

        var figure = Assert.Single(TrainView.Of(many));
        Assert.InRange(Encoding.UTF8.GetByteCount(figure.Inline()), 10_000, 90_000);
    }

    private static SubjectRecord With(SubjectRecord subject, params (string Name, double Value)[] values) => subject with
    {
        Quantities = [.. subject.Quantities.Select(q => values.FirstOrDefault(v => v.Name == q.Name) is { Name: not null } found ? q with { Value = q.Value with { Nominal = found.Value, Min = null, Max = null } } : q)],
    };
}
