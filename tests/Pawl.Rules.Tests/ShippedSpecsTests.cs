using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text;
using Pawl.Analysis;
using Pawl.Specs;
using Pawl.Specs.Text;

namespace Pawl.Rules.Tests;

/// <summary>The demo range conforms; each faulty sibling breaks the rules that it was made to break, and no others.</summary>
public class ShippedSpecsTests
{
    private static readonly string Root = FindRoot();

    private static readonly SpecLoader Loader = new(Root, ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/bearings.yaml"],
        adapterPaths: ["specs/adapters/motor-flange-a.yaml", "specs/adapters/shaft-coupling-b.yaml", "specs/adapters/mount-c.yaml"]);

    private static readonly RuleSet Shipped = RulePacks.Shipped.Rules!;

    public static TheoryData<string> Good =>
        [.. Directory.EnumerateFiles(Path.Combine(Root, "specs"), "r*.yaml", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Good))]
    public void The_demo_range_fails_no_rule_above_a_note(string path)
    {
        Assert.Empty(Failing(path).Where(id => id.Severity > Severity.Note).Select(id => id.Id));
    }

    // What each sibling gets wrong stands in its own comment.
    [Theory]
    [InlineData("tarn-180-wrong-sun", "mesh/backlash-min mesh/backlash-required mesh/equal-spacing mesh/form-interference mesh/tip-collision train/ratio-agrees")]
    [InlineData("tarn-180-two-plane-clash", "mesh/passing-collision")]
    [InlineData("tarn-120-ring-clash", "bearing/inner-fit bearing/min-clearance fit/centring fit/overlap-in-service fit/slip mesh/backlash-min mesh/backlash-required mesh/involute-interference")]
    [InlineData("beck-90-wrong-marks", "mesh/base-circle mesh/coaxial mesh/equal-spacing mesh/timing-marks-radial train/output-lash train/ratio-agrees")]
    [InlineData("tarn-180-thin-case", "material/case-min")]
    [InlineData("tarn-120-wrong-steel", "material/treatment-suits-steel")]
    [InlineData("tarn-120-overload", "bearing/basic-life interface/torque joint/flange-slip key/hub-yield rating/bending-safety rating/contact-safety rating/misalignment-known")]
    [InlineData("beck-90-soft-pair", "material/pair-same-unhardened rating/bending-safety rating/contact-safety rating/peak-contact")]
    [InlineData("tarn-120-starved-ring", "seal/squeeze-static")]
    [InlineData("beck-90-overfilled-gland", "seal/gland-fill")]
    [InlineData("tarn-120-wrong-elastomer", "seal/elastomer-oil")]
    [InlineData("tarn-120-hot-sump", "lubrication/sump-balance lubrication/sump-limit")]
    [InlineData("tarn-180-fast-lip", "seal/lip-speed")]
    [InlineData("beck-90-mixed-oils", "lubrication/base-oil-change")]
    [InlineData("tarn-180-over-speed", "bearing/limiting-speed")]
    [InlineData("tarn-120-two-locating", "bearing/locating-places")]
    [InlineData("tarn-120-creeping-ring", "bearing/inner-locking")]
    [InlineData("tarn-180-tilting-pinion", "rating/misalignment-known")]
    [InlineData("tarn-120-grooved-shaft", "shaft/fatigue-safety")]
    [InlineData("tarn-180-thin-coupler", "spline/hub-yield")]
    [InlineData("tarn-180-wrong-adapter", "interface/screws interface/spline")]
    [InlineData("tarn-120-over-torqued-bolts", "joint/preload-utilisation joint/proof-load joint/service-yield")]
    [InlineData("beck-90-slipping-flange", "joint/flange-slip")]
    [InlineData("tarn-180-stripped-thread", "joint/stripping")]
    [InlineData("tarn-180-open-nut", "joint/clamp-path")]
    [InlineData("tarn-120-thin-pin", "pin/planet-yield rating/misalignment-known")]
    [InlineData("tarn-180-outside-feed", "pin/oil-outwards")]
    [InlineData("tarn-180-towed-dry", "lubrication/coast-supply")]
    [InlineData("tarn-120-loose-pins", "fit/overlap-in-service fit/slip")]
    [InlineData("beck-90-jamming-slide", "fit/function fit/min-clearance")]
    [InlineData("beck-90-cold-preload", "stack/no-preload-cold")]
    [InlineData("tarn-180-fast-warm-up", "stack/no-preload-warm-up")]
    [InlineData("tarn-120-coarse-shims", "stack/shims-cover")]
    public void A_faulty_sibling_breaks_the_rules_it_was_made_to_break(string name, string rules)
    {
        var failing = Failing($"specs/faulty/{name}.yaml");

        Assert.Equal(
            rules.Split(' '),
            failing.Where(rule => rule.Severity == Severity.Error).Select(rule => rule.Id).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("tarn-180-wrong-sun", "train/ratio-agrees", 9)]
    [InlineData("tarn-180-wrong-sun", "mesh/equal-spacing", 9)]
    [InlineData("beck-90-wrong-marks", "mesh/undercut", 10)]
    [InlineData("tarn-180-thin-case", "material/case-min", 10)]
    [InlineData("tarn-120-wrong-steel", "material/treatment-suits-steel", 9)]
    [InlineData("tarn-120-overload", "rating/contact-safety", 8)]
    [InlineData("beck-90-soft-pair", "material/pair-same-unhardened", 12)]
    [InlineData("tarn-120-starved-ring", "seal/squeeze-static", 8)]
    [InlineData("beck-90-overfilled-gland", "seal/gland-fill", 8)]
    [InlineData("tarn-120-wrong-elastomer", "seal/elastomer-oil", 8)]
    [InlineData("tarn-120-hot-sump", "lubrication/sump-limit", 7)]
    [InlineData("tarn-180-fast-lip", "seal/lip-speed", 10)]
    [InlineData("tarn-180-over-speed", "bearing/limiting-speed", 8)]
    [InlineData("tarn-120-two-locating", "bearing/locating-places", 8)]
    [InlineData("tarn-120-creeping-ring", "bearing/inner-locking", 8)]
    [InlineData("tarn-180-tilting-pinion", "rating/misalignment-known", 8)]
    [InlineData("tarn-120-grooved-shaft", "shaft/fatigue-safety", 11)]
    [InlineData("tarn-180-thin-coupler", "spline/hub-yield", 9)]
    [InlineData("tarn-180-wrong-adapter", "interface/spline", 11)]
    [InlineData("tarn-120-over-torqued-bolts", "joint/preload-utilisation", 9)]
    [InlineData("beck-90-slipping-flange", "joint/flange-slip", 8)]
    [InlineData("tarn-180-stripped-thread", "joint/stripping", 9)]
    [InlineData("tarn-180-open-nut", "joint/clamp-path", 9)]
    [InlineData("tarn-120-thin-pin", "pin/planet-yield", 7)]
    [InlineData("tarn-180-outside-feed", "pin/oil-outwards", 9)]
    [InlineData("tarn-120-loose-pins", "fit/overlap-in-service", 7)]
    [InlineData("beck-90-jamming-slide", "fit/function", 7)]
    [InlineData("beck-90-cold-preload", "stack/no-preload-cold", 11)]
    [InlineData("tarn-180-fast-warm-up", "stack/no-preload-warm-up", 9)]
    [InlineData("tarn-120-coarse-shims", "stack/shims-cover", 10)]
    public void A_failure_points_into_the_faulty_file(string name, string rule, int line)
    {
        var file = $"specs/faulty/{name}.yaml";
        var finding = Judge.Of(GearboxAnalyser.Analyse(Loader.Load(file).Spec!), Shipped, new(2026, 1, 15)).Findings
            .First(each => each.Rule.Id == rule && each.Outcome == Outcome.Fails);

        Assert.Equal((file, line), (finding.Span.File, finding.Span.Start.Line));
    }

    [Theory]
    [MemberData(nameof(Good))]
    public void Every_rule_meets_every_subject_of_its_kind_once(string path)
    {
        var analysis = GearboxAnalyser.Analyse(Loader.Load(path).Spec!);
        var judgement = Judge.Of(analysis, Shipped, new(2026, 1, 15));

        var pairs = Shipped.Rules.Sum(rule => analysis.Subjects.Count(subject => subject.Kind == rule.AppliesTo));
        var counted = judgement.Coverage;
        Assert.Equal(pairs, judgement.Findings.Length);
        Assert.Equal(
            pairs, counted.Conforms + counted.Fails + counted.UnderConcession + counted.NotEvaluated + counted.NotApplicable);
    }

    // Method C of the dynamic factor ends at a speed parameter of 3 m/s, which five of the six pass at this speed; method B goes on.
    [Theory]
    [MemberData(nameof(Good))]
    public void At_12_000_revolutions_a_minute_every_rule_of_the_rating_is_evaluated(string path)
    {
        var yaml = $"pawl: 1\nextends: {Path.GetFileName(path)}\ngearbox: {{variant: Fast}}\nduty: {{input: {{speed: 12000 rpm}}}}\n";
        var load = Loader.Load($"{Path.GetDirectoryName(path)}/fast.yaml", Encoding.UTF8.GetBytes(yaml));
        Assert.True(load.Spec is not null, string.Join('\n', load.Diagnostics));
        var findings = Judge.Of(GearboxAnalyser.Analyse(load.Spec), Shipped, new(2026, 1, 15)).Findings;

        Assert.Contains(findings, finding => finding is { Rule.Id: "rating/contact-safety", Outcome: Outcome.Conforms or Outcome.Fails });
        Assert.Empty(findings.Where(finding => finding.Outcome == Outcome.NotEvaluated).Select(finding => $"{finding.Rule.Id} {finding.Subject}: {finding.Reasons[0]}"));
    }

    private static ImmutableArray<Rule> Failing(string path)
    {
        var load = Loader.Load(path);
        Assert.True(load.Spec is not null, string.Join('\n', load.Diagnostics));
        var judgement = Judge.Of(GearboxAnalyser.Analyse(load.Spec), Shipped, new(2026, 1, 15));
        return [.. judgement.Findings.Where(finding => finding.Outcome == Outcome.Fails).Select(finding => finding.Rule)];
    }

    private static string FindRoot([CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", ".."));
}
