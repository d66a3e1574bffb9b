using System.Xml.Linq;
using Pawl.Reports.Drawing;
using Pawl.Reports.Records;
using static Pawl.Reports.Tests.Drawing.DrawnRecord;

namespace Pawl.Reports.Tests.Drawing;

public sealed class PartFigureTests
{
    // Coordinates have two decimals, and most lengths are a few dozen units.
    private const double Drawn = 0.02;

    // Closed form: a cord of 3.53 mm in a gland 2.80 mm high is squeezed by 0.73 mm, 0.73/3.53 = 20.68 %; its section keeps its area, π/4·3.53² = 9.787 mm².
    [Fact]
    public void A_squeezed_ring_is_as_high_as_its_gland_and_keeps_its_area()
    {
        var root = Assert.Single(ORingSection.Of(Of([Ring(0.73, 3.53)]))).Root();

        // 1 mm for the length of the scale.
        var scale = root.Classed("scale")[0].Length();
        foreach (var rubber in root.Classed("rubber"))
        {
            var (left, right, top, bottom, corner) = Box(rubber);
            var (width, height, radius) = ((right - left) / scale, (bottom - top) / scale, corner / scale);
            Assert.Equal(2.80, height, Drawn);
            Assert.Equal(9.787, (width * height) - ((4 - Math.PI) * radius * radius), tolerance: 0.05);
        }

        Assert.Equal(2, root.Classed("rubber").Count);
        Assert.Equal(3.53 / 2, root.Classed("thin")[0].Number("r") / scale, Drawn);

        // The groove, 5 mm wide: from the left land to the right one.
        var groove = root.Descendants("path").First(p => p.Attribute("class")!.Value == "metal").Numbers();
        Assert.Equal(5.0, (groove[6] - groove[2]) / scale, Drawn);
    }

    [Fact]
    public void A_ring_that_nothing_squeezes_is_round_and_says_so()
    {
        var root = Assert.Single(ORingSection.Of(Of([Ring(-0.1, 2.70)]))).Root();

        Assert.All(root.Classed("rubber"), static r => Assert.Equal("circle", r.Name.LocalName));
        Assert.Contains("✕ no contact", root.Texts(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_overfilled_gland_says_so_and_names_its_rule()
    {
        var fill = Value(80, 70, 105, "%");
        var root = Assert.Single(ORingSection.Of(Of(
            [Ring(0.73, 3.53, fill)], Finding("seal/gland-fill", "o_rings.a", "gland_fill", fill, most: 90, outcome: OutcomeWord.Fails, margin: -0.17)))).Root();

        Assert.Contains("✕ overfilled", root.Texts(), StringComparison.Ordinal);
        Assert.Contains("✕ seal/gland-fill −17 %", root.Texts(), StringComparison.Ordinal);
        Assert.Contains("limits ≤ 90 %", root.Texts(), StringComparison.Ordinal);
    }

    // Gravest first, each with its word; what is permitted has a sign of its own.
    [Fact]
    public void Broken_rules_of_a_part_are_named_with_their_severity()
    {
        var squeeze = Value(20, "%");
        var root = Assert.Single(ORingSection.Of(Of(
            [Ring(0.73, 3.53)],
            Finding("a/note", "o_rings.a", "squeeze", squeeze, 30, outcome: OutcomeWord.Fails, severity: SeverityWord.Note),
            Finding("a/warning", "o_rings.a", "squeeze", squeeze, 25, outcome: OutcomeWord.Fails, margin: -0.2, severity: SeverityWord.Warning),
            Finding("a/conceded", "o_rings.a", "squeeze", squeeze, 22, outcome: OutcomeWord.UnderConcession, margin: -0.1),
            Finding("a/also", "o_rings.a", "other", squeeze, 22, outcome: OutcomeWord.Fails, margin: -0.3, severity: SeverityWord.Warning)))).Root();

        Assert.Equal(["◐ conceded a/conceded −10 %", "✕ warning a/also −30 %", "✕ warning a/warning −20 % (+1 more)"], root.Descendants("text").TakeLast(3).Select(static t => t.Value));
        Assert.Equal(["conceded", "fails", "fails"], root.Descendants("text").TakeLast(3).Select(static t => t.Attribute("class")!.Value));
    }

    private static SubjectRecord Ring(double squeezed, double cord, ValueRecord? fill = null) => Part(
        "o_ring", "o_rings.a",
        ("cord", Value(cord, "mm")), ("width", Value(5, "mm")), ("squeeze", Value(squeezed / cord * 100, "%")), ("squeeze_length", Value(squeezed, "mm")),
        ("gland_fill", fill ?? Value(70, "%")), ("extrusion_gap", Value(0.05, 0, 0.1, "mm")));

    private static (double Left, double Right, double Top, double Bottom, double Corner) Box(XElement rubber)
    {
        // M x y, then L x y and A r r 0 0 1 x y in turn.
        var n = rubber.Numbers();
        double[] xs = [n[0], n[2], n[9], n[11], n[18], n[20], n[27], n[29], n[36]];
        double[] ys = [n[1], n[3], n[10], n[12], n[19], n[21], n[28], n[30], n[37]];
        return (xs.Min(), xs.Max(), ys.Min(), ys.Max(), n[4]);
    }

    // VDI 2230, joint diagram: at one force bolt and parts give lengths in the inverse ratio of their stiffnesses, and heights are the forces:
    // 20 kN, 10 kN and, with a load of 4 kN of which the bolt takes a quarter, F_V = F_KR + (1 − Φ)·F_A = 5 + 3 = 8 kN.
    [Fact]
    public void The_joint_diagram_has_the_slopes_and_heights_of_its_joint()
    {
        var root = Assert.Single(JointDiagram.Of(Of([Joint()]))).Root();

        var triangle = root.Classed("solid")[0].Numbers();
        var (bolt, parts, height) = (triangle[2] - triangle[0], triangle[4] - triangle[2], triangle[1] - triangle[3]);
        Assert.Equal(600_000.0 / 200_000, bolt / parts, tolerance: 0.01);

        var small = root.Classed("metal")[0].Numbers();
        Assert.Equal(8.0 / 20, (small[1] - small[3]) / height, tolerance: 0.002);
        var load = root.Classed("load")[0];
        Assert.Equal(4.0 / 20, (load.Number("y1") - load.Number("y2")) / height, tolerance: 0.002);
        Assert.Equal(5.0 / 20, (triangle[1] - load.Number("y1")) / height, tolerance: 0.002);

        // The limit of the preload, 21 kN, is above its peak by a twentieth of it.
        var limit = root.Classed("limit")[0];
        Assert.Equal(21.0 / 20, (triangle[1] - limit.Number("y1")) / height, tolerance: 0.002);
        Assert.Contains("F_M,max 20 kN", root.Texts(), StringComparison.Ordinal);

        // 20 kN on 200 000 N/mm: 100 µm of the bolt. The scale has its length beside it.
        var scale = root.Classed("scale")[0].Length();
        Assert.Contains("50 µm", root.Texts(), StringComparison.Ordinal);
        Assert.Equal(100.0 / 50, bolt / scale, tolerance: 0.01);
    }

    [Fact]
    public void A_preload_beyond_its_limit_is_marked_where_it_stands()
    {
        var share = Value(1.2);
        var root = Assert.Single(JointDiagram.Of(Of(
            [Joint()], Finding("joint/preload-utilisation", "joints.a", "preload_utilisation", share, most: 1, outcome: OutcomeWord.Fails, margin: -0.2)))).Root();

        Assert.Equal(["✕ F_M,max 20 kN", "✕ joint/preload-utilisation −20 %"], root.Classed("fails").Select(static t => t.Value));
    }

    [Fact]
    public void A_joint_that_separates_says_so()
    {
        var figure = Assert.Single(JointDiagram.Of(Of([Joint(residual: Value(-1000, -2000, 500, "N"))])));

        Assert.Contains("✕ F_KR,min −2 kN", figure.Root().Texts(), StringComparison.Ordinal);
        Assert.Contains("the joint separates", figure.Description, StringComparison.Ordinal);
    }

    // Closed form: neighbours of z = 6 bolts on a circle of 100 mm are 100·sin(π/6) = 50 mm apart; midway on the same circle it is
    // 100·sin(π/12) = 25.882 mm from a bolt to a dowel.
    [Fact]
    public void Bolts_and_dowels_stand_on_their_circle()
    {
        var dowels = Part("dowel", "dowels.a", ("count", Value(2)), ("circle", Value(100, "mm")), ("diameter", Value(6, "mm")));
        dowels = dowels with
        {
            Quantities = [.. dowels.Quantities, dowels.Quantities[0] with { Name = "friction_torque", Terms = [new() { Quantity = "joints.a.slip_torque", Value = Value(1) }] }],
        };
        var root = Assert.Single(BoltPattern.Of(Of([Joint(), dowels]))).Root();

        var scale = root.Classed("metal")[0].Number("r") / 60;
        var bolts = root.Classed("solid");
        Assert.Equal(6, bolts.Count);
        Assert.Equal(50, Apart(bolts[0], bolts[1]) / scale, Drawn);
        Assert.Equal(100, Apart(bolts[0], bolts[3]) / scale, Drawn);
        Assert.Equal(16.0 / 2, bolts[0].Number("r") / scale, Drawn);
        var pins = root.Classed("dowel");
        Assert.Equal(2, pins.Count);
        Assert.Equal(25.882, pins.Min(p => Apart(bolts[0], p)) / scale, Drawn);
        Assert.Equal(100, Apart(pins[0], pins[1]) / scale, Drawn);

        // The second bolt in the sequence 1 4 … is the fourth on the circle.
        Assert.Equal("1 6 4 2 5 3", string.Join(' ', root.Classed("middle").Select(static t => t.Value).Where(static t => t.Length == 1)));
    }

    private static double Apart(XElement first, XElement second) =>
        Math.Sqrt(Math.Pow(first.Number("cx") - second.Number("cx"), 2) + Math.Pow(first.Number("cy") - second.Number("cy"), 2));

    private static SubjectRecord Joint(ValueRecord? residual = null) => Part(
        "joint", "joints.a",
        ("max_preload", Value(20_000, "N")), ("min_preload", Value(10_000, "N")), ("bolt_stiffness", Value(200_000, "N/mm")), ("parts_stiffness", Value(600_000, "N/mm")),
        ("axial_force", Value(4_000, "N")), ("load_factor", Value(0.25)), ("clamp_load_factor", Value(0.25)), ("residual_clamp", residual ?? Value(6_000, 5_000, 7_000, "N")),
        ("bolt_force", Value(20_500, 20_000, 20_800, "N")), ("permitted_preload", Value(21_000, "N")), ("proof_load", Value(90_000, "N")),
        ("bolts", Value(6)), ("bolt_circle", Value(100, "mm")), ("face", Value(16, "mm")), ("hole", Value(9, "mm")), ("outside", Value(120, "mm")), ("inside", Value(80, "mm")),
        ("tightening_sequence", Word("1 4 6 3 5 2")));

    // ISO 286-2, 25 H7/g6: hole 0/+21 µm, shaft −20/−7 µm; clearance from 7 to 41 µm. 25 H7/p6: shaft +22/+35 µm, interference from 1 to 35 µm.
    [Theory]
    [InlineData(-20, -7, 7, 41)]
    [InlineData(22, 35, -35, -1)]
    public void Zones_and_clearances_of_a_fit_are_those_of_ISO_286(double lower, double upper, double least, double most)
    {
        var root = Assert.Single(FitZones.Of(Of([Fit("fits.a", lower, upper, least, most)]))).Root();

        // 10 µm for the length of the scale, as it says.
        var scale = root.Classed("scale")[0].Length() / 10;
        Assert.Contains("10 µm", root.Texts(), StringComparison.Ordinal);
        var zero = root.Descendants("line").First(static l => l.Attribute("class")!.Value.Length == 0).Number("x1");
        AssertZone(root.Classed("hole")[0], 0, 21);
        AssertZone(root.Classed("pin")[0], lower, upper);
        AssertZone(root.Classed("range")[0], least, most);

        void AssertZone(XElement zone, double from, double to)
        {
            Assert.Equal(from, (zone.Number("x") - zero) / scale, tolerance: 0.05);
            Assert.Equal(to, (zone.Number("x") + zone.Number("width") - zero) / scale, tolerance: 0.05);
        }
    }

    [Fact]
    public void Many_fits_go_to_further_figures()
    {
        var figures = FitZones.Of(Of([.. Enumerable.Range(0, 19).Select(static i => Fit($"fits.f{i}", -20, -7, 7, 41))])).ToList();

        Assert.Equal([8, 8, 3], figures.Select(static f => f.Root().Classed("pin").Count));
        Assert.Equal(3, figures.Select(static f => f.Id).Distinct().Count());
    }

    private static SubjectRecord Fit(string path, double lower, double upper, double least, double most) => Part(
        "fit", path,
        ("diameter", Value(25, "mm")), ("hole", Value(25.0105, 25, 25.021, "mm")),
        ("shaft", Value(25 + ((lower + upper) / 2000), 25 + (lower / 1000), 25 + (upper / 1000), "mm")), ("clearance_20", Value((least + most) / 2, least, most, "µm")));

    // Closed form, worst case of a chain: 30.0 −18.0 −11.5 = 0.5 mm, tolerances 0.1 + 0.05 + 0.15 = 0.3 mm. The bearing is stated as 18.05 0/−0.10.
    [Fact]
    public void The_waterfall_adds_up_to_the_gap()
    {
        var root = Assert.Single(StackWaterfall.Of(Stack())).Root();

        var scale = root.Classed("opens")[0].Number("width") / 30;
        var (opens, closes, sum) = (root.Classed("opens")[0], root.Classed("closes"), root.Classed("sum")[0]);
        Assert.Equal(18, closes[0].Number("width") / scale, Drawn);
        Assert.Equal(11.5, closes[1].Number("width") / scale, Drawn);
        Assert.Equal(opens.Number("x") + opens.Number("width"), closes[0].Number("x") + closes[0].Number("width"), tolerance: 0.02);
        Assert.Equal(closes[0].Number("x"), closes[1].Number("x") + closes[1].Number("width"), tolerance: 0.02);
        Assert.Equal(sum.Number("x") + sum.Number("width"), closes[1].Number("x"), tolerance: 0.02);
        Assert.Equal(0.5, sum.Number("width") / scale, tolerance: 0.01);
        Assert.Contains("+0.5 mm", root.Texts(), StringComparison.Ordinal);

        // The tolerances at the right: those of the sizes together are as wide as that of the gap.
        var tolerances = root.Classed("opens").Skip(1).Select(static r => r.Number("width")).ToList();
        Assert.Equal(root.Classed("sum")[1].Number("width"), tolerances.Sum(), tolerance: 0.05);
        Assert.Equal(0.1 / 0.05, tolerances[0] / tolerances[1], tolerance: 0.01);
    }

    // The normal distribution: at one standard deviation the curve is e^(−1/2) = 0.6065 times as high as at its middle.
    [Fact]
    public void The_curve_is_that_of_a_normal_distribution_about_the_gap()
    {
        var root = Assert.Single(StackWaterfall.Of(Stack())).Root();

        var curve = root.Classed("curve")[0].Numbers().Chunk(2).ToList();
        var worst = root.Classed("range")[0];
        var perMillimetre = worst.Number("width") / 0.6;
        var (floor, peak) = (curve.Max(static p => p[1]), curve.MinBy(static p => p[1])!);
        Assert.Equal(worst.Number("x") + (worst.Number("width") / 2), peak[0], tolerance: 0.05);
        var aside = curve.MinBy(p => Math.Abs(p[0] - (peak[0] + (0.08 * perMillimetre))))!;
        Assert.Equal(0.08, (aside[0] - peak[0]) / perMillimetre, tolerance: 0.001);
        Assert.InRange((floor + 0.1 - aside[1]) / (floor + 0.1 - peak[1]), 0.59, 0.62);
    }

    [Fact]
    public void A_gap_that_breaks_its_limit_is_marked_where_it_does()
    {
        var cold = Value(0.1, -0.1, 0.3, "mm");
        var record = Stack(Finding("stack/no-preload-cold", "stacks.a", "end_play_cold", cold, least: 0, outcome: OutcomeWord.Fails, margin: -1));
        var root = Assert.Single(StackWaterfall.Of(record)).Root();

        Assert.Equal("✕ coldest start", root.Classed("fails").First(static e => e.Name.LocalName == "text").Value);
        var bar = root.Classed("range").Single(static r => r.Attribute("class")!.Value == "range fails");
        var limit = root.Classed("limit")[^1];
        Assert.InRange(limit.Number("x1"), bar.Number("x") + 1, bar.Number("x") + bar.Number("width") - 1);
    }

    // As assembled 0.2 to 0.8 mm in a window from 0.1 to 0.9 mm: the limits are a sixth of the bar beyond its ends.
    [Fact]
    public void The_window_stands_beside_the_gap_as_assembled()
    {
        var gap = Value(0.5, 0.2, 0.8, "mm");
        var root = Assert.Single(StackWaterfall.Of(Stack(Finding("stack/end-play", "stacks.a", "end_play", gap, 0.1, 0.9)))).Root();

        var bar = root.Classed("range").Last(static r => r.Attribute("class")!.Value == "range conforms");
        var limits = root.Classed("limit").TakeLast(2).Select(l => (l.Number("x1") - bar.Number("x")) / bar.Number("width")).ToList();
        Assert.Equal(-1.0 / 6, limits[0], tolerance: 0.001);
        Assert.Equal(7.0 / 6, limits[1], tolerance: 0.001);
    }

    private static ConformanceRecord Stack(params IEnumerable<FindingRecord> findings)
    {
        static SubjectRecord Size(string name, double sign, double nominal, double least, double most) =>
            Part("contributor", $"stacks.a.{name}", ("name", Word(name)), ("size", Value(nominal, least, most, "mm")), ("coefficient", Value(sign))) with
            {
                Related = [new() { Role = "stack", Subject = "stacks.a" }],
            };

        return Of(
            [
                Part(
                    "stack", "stacks.a", ("worst_case", Value(0.5, 0.2, 0.8, "mm")), ("standard_deviation", Value(0.08, "mm")), ("sampled", Value(0.5, 0.26, 0.74, "mm")),
                    ("window_min", Value(0.1, "mm")), ("window_max", Value(0.9, "mm")), ("end_play", Value(0.5, 0.2, 0.8, "mm")), ("end_play_cold", Value(0.1, -0.1, 0.3, "mm"))),
                Size("depth", 1, 30, 29.9, 30.1),
                Size("bearing", -1, 18.05, 17.95, 18.05),
                Size("land", -1, 11.5, 11.35, 11.65),
            ],
            findings);
    }

    // A range from 3 to 5 against at most 4: the limit is in the middle of its bar. The scale is one of its own.
    [Fact]
    public void A_check_is_drawn_against_its_limit()
    {
        var value = Value(3.5, 3, 5, "mm");
        var figure = Assert.Single(RuleBars.Of(Of([], Finding("a/b", "parts.x", "q", value, most: 4, outcome: OutcomeWord.Fails, margin: -0.25) with { Worst = 5 })));

        var root = figure.Root();
        var (bar, limit, mark) = (root.Classed("range")[0], root.Classed("limit")[0], root.Classed("mark")[0]);
        Assert.Equal(0.5, (limit.Number("x1") - bar.Number("x")) / bar.Number("width"), tolerance: 0.001);
        Assert.Equal(0.25, (mark.Number("x1") - bar.Number("x")) / bar.Number("width"), tolerance: 0.001);
        Assert.Equal("range fails", bar.Attribute("class")!.Value);
        Assert.StartsWith("✕ a/b\nparts.x\n", root.Texts(), StringComparison.Ordinal);
        Assert.Contains("5 mm ≤ 4", root.Texts(), StringComparison.Ordinal);

        // What is permitted ends at the limit.
        var permitted = root.Classed("permitted")[0];
        Assert.Equal(limit.Number("x1"), permitted.Number("x") + permitted.Number("width"), Drawn);
    }

    [Fact]
    public void What_is_broken_stands_before_what_is_tightest_and_what_has_no_number_is_left_out()
    {
        var value = Value(1, "mm");
        var record = Of(
            [],
            Finding("a/tight", "p", "q", value, most: 1.1, margin: 0.01), Finding("a/loose", "p", "q", value, most: 9, margin: 8), Finding("a/1", "p", "q", value, most: 3, margin: 1),
            Finding("a/2", "p", "q", value, most: 4, margin: 2), Finding("a/warned", "p", "q", value, most: 0.5, outcome: OutcomeWord.Fails, margin: -1, severity: SeverityWord.Warning),
            Finding("a/other-unit", "p", "q", value, margin: -3, outcome: OutcomeWord.Fails) with { AtLeast = new() { Value = Value(4, "N") } },
            Finding("a/word", "p", "q", Word("loose"), margin: null, outcome: OutcomeWord.Fails));
        var text = Assert.Single(RuleBars.Of(record)).Root().Descendants("text").Select(static t => t.Value).Where(static t => t.Contains("a/", StringComparison.Ordinal));

        Assert.Equal(["✕ warning a/warned", "✓ a/tight · p", "✓ a/1 · p", "✓ a/2 · p"], text);
    }

    [Fact]
    public void Margins_keep_to_their_scale_and_their_labels_inside()
    {
        var value = Value(1, "mm");
        var name = new string('w', 90);
        var record = Of(
            [],
            Finding($"a/{name}", $"parts.{name}", "q", value, most: 2, margin: -0.2, outcome: OutcomeWord.Fails), Finding("a/b", "parts.x", "q", value, most: 2, margin: 0.4));
        var figure = Assert.Single(MarginBars.Of(record));

        var bars = figure.Root().Classed("range");
        var limit = figure.Root().Classed("limit")[0].Number("x1");
        Assert.Equal(limit, bars[0].Number("x") + bars[0].Number("width"), Drawn);
        Assert.Equal(limit, bars[1].Number("x"), Drawn);
        Assert.Equal(2, bars[1].Number("width") / bars[0].Number("width"), tolerance: 0.01);
        Assert.Contains("…", figure.Root().Texts(), StringComparison.Ordinal);
        Assert.All(figure.Root().Descendants("text"), t => Assert.True(TextWidth.Of(t.Value) <= figure.Width, t.Value));
    }

    [Fact]
    public void Text_that_fits_stays_and_other_text_loses_its_middle()
    {
        Assert.Equal("seal/gland-fill", TextWidth.Fitted("seal/gland-fill", 200));
        var cut = TextWidth.Fitted("bearing/peak-raceway-pressure · bearings.planet_rear", 200);
        Assert.StartsWith("bearing/", cut, StringComparison.Ordinal);
        Assert.EndsWith("planet_rear", cut, StringComparison.Ordinal);
        Assert.True(TextWidth.Of(cut) <= 200);
        Assert.Equal("…", TextWidth.Fitted(new string('w', 50), 12));
    }

    /// <summary>Every number of every part in turn missing, not a number, out of all range, the wrong way round, of another unit, a word.</summary>
    [Fact]
    public void Spoilt_values_give_no_figure_or_one_that_can_be_read()
    {
        var whole = Whole();
        ValueRecord[] spoilt =
        [
            new() { Reasons = ["not stated"] }, Value(double.NaN, "mm"), Value(double.PositiveInfinity, "N"), Value(double.MaxValue, "mm"), Value(double.Epsilon, "mm"), Value(0, "mm"), Value(-1, "mm"),
            Value(1e9, "mm"), Value(1, 2, 0, "mm"), Value(1, double.NaN, double.NaN, "mm"), Value(1, "furlong"), Word("<script>\u0001\u202e"), new() { Truth = true }, Value(0), Value(-7), Value(1e-12), Value(1e12),
            Value(0, "%"), Value(-300, "%"), Value(1e7, "%"), Value(0, "N"), Value(-1e9, "N"), Value(1e12, "N"), Value(0, "N/mm"), Value(1e-300, "N/mm"), Value(1e12, "N/mm"), Value(1e12, "µm"), Value(-1e12, "µm"),
        ];
        for (var s = 0; s < whole.Subjects.Length; s++)
        {
            var subject = whole.Subjects[s];
            for (var q = 0; q < subject.Quantities.Length; q++)
            {
                foreach (var value in spoilt)
                {
                    var quantity = subject.Quantities[q] with { Value = value };
                    AssertReadable(whole with { Subjects = whole.Subjects.SetItem(s, subject with { Quantities = subject.Quantities.SetItem(q, quantity) }) });
                }
            }
        }
    }

    [Fact]
    public void Spoilt_findings_give_no_bar_or_one_that_can_be_read()
    {
        var finding = Finding("a/b", "parts.x", "q", Value(1, "mm"), most: 2);
        double[] numbers = [double.NaN, double.NegativeInfinity, double.MaxValue, -1e12, 1e12, double.Epsilon, 0];
        foreach (var number in numbers)
        {
            foreach (var outcome in Enum.GetValues<OutcomeWord>())
            {
                AssertReadable(Of([], finding with { Measured = new() { Value = Value(number, "mm") }, Outcome = outcome }));
                AssertReadable(Of([], finding with { AtMost = new() { Value = Value(number, "mm") }, Outcome = outcome }));
                AssertReadable(Of([], finding with { Worst = number, Outcome = outcome }));
                AssertReadable(Of([], finding with { AtLeast = new() { Value = Value(number, "mm") }, Outcome = outcome }));
                AssertReadable(Of([], finding with { Rule = "\u202e\u0007", Subject = "</text>&", Domain = "../..\n", Outcome = outcome }));
            }
        }
    }

    [Fact]
    public void Names_of_a_spec_stay_text_and_ids_are_unique()
    {
        const string Hostile = "a\"><script>\u202e\u0000..";
        var whole = Whole();
        var record = whole with
        {
            Subjects =
            [
                .. whole.Subjects.Concat(whole.Subjects).Select(static s => s with
                {
                    Path = s.Path.Replace("s.a", $"s.{Hostile}", StringComparison.Ordinal),
                    Related = [.. s.Related.Select(static r => r with { Subject = $"stacks.{Hostile}" })],
                }),
            ],
        };

        AssertReadable(record);
        Assert.True(FigureList.Of(record).Length >= 8);
        Assert.All(FigureList.Of(record), static f => Assert.DoesNotContain("<script", f.Inline(), StringComparison.Ordinal));
    }

    [Fact]
    public void Of_very_many_parts_those_that_break_a_rule_are_drawn_and_not_all()
    {
        var rings = Enumerable.Range(0, 300).Select(static i => Ring(0.73, 3.53) with { Path = $"o_rings.r{i}" });
        var fill = Value(80, 70, 95, "%");
        var figures = ORingSection.Of(Of(rings, Finding("seal/gland-fill", "o_rings.r299", "gland_fill", fill, most: 90, outcome: OutcomeWord.Fails, margin: -0.1))).ToList();

        Assert.Equal(40, figures.Count);
        Assert.Equal("o-ring-r299", figures[0].Id);
    }

    private static ConformanceRecord Whole()
    {
        var stack = Stack();
        var dowels = Part("dowel", "dowels.a", ("count", Value(2)), ("circle", Value(100, "mm")), ("diameter", Value(6, "mm")));
        return Of(
            [
                Ring(0.73, 3.53), Joint(),
                dowels with { Quantities = [dowels.Quantities[0] with { Terms = [new() { Quantity = "joints.a.bolts", Value = Value(6) }] }, .. dowels.Quantities[1..]] },
                Fit("fits.a", -20, -7, 7, 41), .. stack.Subjects,
            ],
            Finding("seal/squeeze", "o_rings.a", "squeeze", Value(20, "%"), 10, 30), Finding("stack/end-play", "stacks.a", "end_play", Value(0.5, 0.2, 0.8, "mm"), 0.1, 0.9),
            Finding("fit/min-clearance", "fits.a", "clearance_20", Value(24, 7, 41, "µm"), 0), Finding("joint/yield", "joints.a", "service_safety", Value(2), 1));
    }

    private static void AssertReadable(ConformanceRecord record)
    {
        var figures = FigureList.Of(record);
        Assert.Equal(figures.Length, figures.Select(static f => f.Id).Distinct(StringComparer.Ordinal).Count());
        foreach (var figure in figures)
        {
            Assert.True(figure.Height is > 0 and < 4000, figure.Id);
            Assert.NotEmpty(figure.Description);
            Assert.Equal("http://www.w3.org/2000/svg", XElement.Parse(figure.File()).Name.NamespaceName);
            foreach (var text in figure.Root().Descendants("text"))
            {
                Assert.InRange(text.Number("x"), 0, figure.Width);
                Assert.InRange(text.Number("y"), 0, figure.Height + 1);
            }
        }
    }
}
