namespace Pawl.Analysis.Tests;

/// <summary>A complete product whose train has no solution, or that does not say what it must bear: everything that does not need it is computed, the rest says why not.</summary>
public sealed class UnsolvedTrainTests
{
    private const string Tarn120 = "specs/tarn-120/r525.yaml";
    private const string Tarn180 = "specs/tarn-180/r180.yaml";
    private const string Beck90 = "specs/beck-90/r760.yaml";

    [Theory]
    [InlineData(Tarn120, "train: {fixed: []}")]
    [InlineData(Tarn120, "train: {fixed: [carrier]}")]
    [InlineData(Tarn120, "train: {fixed: [housing, carrier]}")]
    [InlineData(Tarn120, "train: {gears: {ring: {teeth: 7}}}")]
    [InlineData(Tarn120, "train: {gears: {ring: {teeth: 33}}}")]
    [InlineData(Tarn120, "train: {gears: {sun: {on: housing}}}")]
    [InlineData(Tarn120, "train: {meshes: [{gears: [planet_gear, ring]}]}")]
    [InlineData(Tarn120, "train: {input: carrier}")]
    [InlineData(Tarn180, "train: {fixed: []}")]
    [InlineData(Tarn180, "train: {fixed: [housing, carrier]}")]
    [InlineData(Tarn180, "train: {gears: {fixed_sun: {on: input_shaft}}}")]
    [InlineData(Tarn180, "train: {meshes: [{gears: [long, short]}, {gears: [short, fixed_sun]}]}")]
    [InlineData(Tarn180, "train: {meshes: [{gears: [input_sun, long]}, {gears: [short, fixed_sun]}]}")]
    [InlineData(Beck90, "train: {fixed: []}")]
    [InlineData(Beck90, "train: {fixed: [carrier]}")]
    [InlineData(Beck90, "train: {gears: {ring: {teeth: 7}}}")]
    [InlineData(Tarn120, "duty: {application_factor: null}")]
    [InlineData(Tarn120, "duty: {input: {torque: null}}")]
    [InlineData(Tarn120, "duty: {input: {speed: null}}")]
    [InlineData(Tarn120, "duty: {oil: null}")]
    [InlineData(Tarn180, "duty: {application_factor: null}")]
    [InlineData(Tarn180, "duty: {input: {torque: null}}")]
    [InlineData(Tarn180, "duty: {input: {speed: null}}")]
    [InlineData(Tarn180, "duty: {input: {peak_torque: null}}")]
    [InlineData(Tarn180, "duty: {oil: null}")]
    [InlineData(Tarn180, "duty: {spectrum: [{share: 100 %, torque: 20 N·m, speed: 0 1/min}]}")]
    [InlineData(Beck90, "duty: {application_factor: null}")]
    [InlineData(Beck90, "duty: {input: null}")]
    public void Every_section_of_an_unsolvable_product_is_computed_or_gives_its_reason(string spec, string changes)
    {
        var analysis = SpecText.AnalyseChanged(spec, changes);
        var whole = SpecText.AnalyseFile(spec);

        var quantities = analysis.Subjects.SelectMany(s => s.Quantities).ToArray();
        Assert.Contains(quantities, q => !q.IsEvaluated);
        Assert.All(quantities.Where(q => !q.IsEvaluated), q => Assert.NotEmpty(q.Reasons));

        // Meshes and what hangs on them may be fewer; all other subjects are there.
        string[] kinds = ["shaft", "shaft_section", "bearing", "spline", "interface", "fit", "stack", "joint", "joint_layer", "dowel", "retaining_ring", "planet_pin", "lubrication", "o_ring", "lip_seal", "centring"];
        foreach (var kind in kinds)
            Assert.Equal(Paths(whole, kind), Paths(analysis, kind));
        Assert.Contains(analysis.Subjects.Where(s => kinds.Contains(s.Kind.Name)).SelectMany(s => s.Quantities), q => q.IsEvaluated);
    }

    private static IEnumerable<string> Paths(GearboxAnalysis analysis, string kind) => analysis.Subjects.Where(s => s.Kind.Name == kind).Select(s => s.Path);
}
