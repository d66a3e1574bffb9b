using Pawl.Analysis;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Trains;
using Pawl.Quantities;
using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Reports.Tests;

/// <summary>A judgement made by hand: two gears, one mesh, one planet set, and a rule with each outcome.</summary>
/// <remarks>
/// The numbers follow from closed forms (d = z·m, c = a − d_a1/2 − d_f2/2), so that the derivations in the approved reports can
/// be followed on paper. They are no design.
/// </remarks>
internal sealed class Sample
{
    public const string SpecFile = "specs/tarn-180/r180.yaml";
    private const string FamilyFile = "specs/tarn-180/family.yaml";

    public static readonly ToolRecord Tool = new() { Name = "pawl", Version = "0.1.0" };

    private int _serial;
    private int _line = 10;

    /// <summary>Replaces every name and text of the spec and the rules: a test passes one that makes them hostile.</summary>
    public Func<string, string> Text { get; init; } = text => text;

    public string File { get; init; } = SpecFile;

    public static ConformanceRecord Record() => new Sample().ToRecord();

    public ConformanceRecord ToRecord() => RecordBuilder.Build(ToJudgement(), Tool);

    public Judgement ToJudgement()
    {
        var train = new Subject(SubjectKinds.Train, "train", At(20));
        train.Add(Quantity.OfText(TrainQuantities.Topology, Origin.Computed.Instance, Text("simple planetary, ring held"), []));
        var target = train.Add(Number(TrainQuantities.TargetRatio, 4, "4"));
        var speed = train.Add(Number(TrainQuantities.InputSpeed, 3000, "3000 rpm"));
        var torque = train.Add(Number(TrainQuantities.InputTorque, 50, "50 N·m"));
        var ratio = train.Add(Quantity.Compute(TrainQuantities.Ratio, [], _ => 4.012));
        var deviation = train.Add(Quantity.Compute(
            TrainQuantities.RatioDeviation, [ratio, target], x => Math.Abs(x[0] - x[1]) / x[1]));
        var tolerance = train.Add(Number(TrainQuantities.RatioTolerance, 0.2, "0.2 %"));
        var power = train.Add(Quantity.Compute(TrainQuantities.InputPower, [torque, speed], x => x[0] * x[1]));
        var efficiency = train.Add(Quantity.Computed(TrainQuantities.Efficiency, 0.98, []));

        var shaft = new Subject(SubjectKinds.Body, "bodies." + Text("input_shaft"), At(24));
        shaft.Add(Quantity.OfText(BodyQuantities.Role, Declared("input"), "input", []));
        shaft.Add(Quantity.Compute(BodyQuantities.Speed, [speed, ratio], x => x[0]));
        shaft.Add(Quantity.Compute(BodyQuantities.Torque, [torque], x => x[0]));
        shaft.Add(Quantity.OfTruth(BodyQuantities.Floating, new Origin.Assumed("bodies do not float unless stated"), false, []));

        var planets = new Subject(SubjectKinds.PlanetSet, "planets." + Text("planet"), At(30));
        planets.Add(Number(PlanetSetQuantities.Count, 3, "3"));
        planets.Add(Quantity.NotEvaluated(
            PlanetSetQuantities.NeighbourClearance, [], [Text("tip diameter of the planet is not known: train.gears.planet.profile_shift")]));

        var sun = Gear("sun", 24, 0.1);
        var planet = Gear("planet", 18, 0);
        var mesh = new Subject(SubjectKinds.Mesh, $"meshes.{Text("sun")}~{Text("planet")}", At(60));
        mesh.Relate("first", sun).Relate("second", planet);
        mesh.Add(Quantity.OfText(MeshQuantities.Kind, Declared("external"), "external", []));
        var module = mesh.Add(Number(MeshQuantities.Module, 2.5, "2.5 mm"));
        var centre = mesh.Add(Toleranced(MeshQuantities.CentreDistance, 52.65, 0.015, "52.65 mm ±0.015"));
        mesh.Add(Quantity.Compute(
            MeshQuantities.RollingPower, [power, efficiency], x => x[0] * 0.75));

        var meshGear = new Subject(SubjectKinds.MeshGear, $"meshes.{Text("sun")}~{Text("planet")}.{Text("sun")}", At(60));
        meshGear.Relate("mesh", mesh).Relate("gear", sun).Relate("mate", planet);
        var clearance = meshGear.Add(Quantity.Compute(
            MeshGearQuantities.TipClearance,
            [centre, sun[GearQuantities.TipDiameter], planet[GearQuantities.RootDiameter]],
            x => x[0] - (x[1] / 2) - (x[2] / 2)));

        var atMin = Quantity.Compute(
            new() { Name = "limit", Title = "0.25 * module", Unit = Units.Millimetre, Formula = "0.25 * module", Symbols = ["module"] },
            [module], x => 0.25 * x[0]);
        ImmutableArray<Rule> rules = [TipClearance, RatioRule, Neighbours, Floating, Centre, Unspaced];
        return new()
        {
            Analysis = new()
            {
                Spec = Spec(),
                Subjects = [train, shaft, planets, sun, planet, mesh, meshGear],
                Topology = "Simple planetary train, ring held.",
                TablesUsed = ["general-tolerances"],
            },
            Rules = new()
            {
                Rules = rules,
                Packs =
                [
                    new("mesh", "shipped:mesh.yaml", "1", new string('a', 64)),
                    new("train", "house/train.yaml", "3", new string('b', 64)),
                ],
            },
            AsOf = new(2026, 3, 1),
            Coverage = new(2, 1, 1, 1, 1),
            Findings =
            [
                new()
                {
                    Rule = TipClearance, Subject = meshGear, Outcome = Outcome.Fails, Measured = clearance, AtLeast = atMin,
                    Margin = (clearance.Value.Min - 0.625) / 0.625, Worst = clearance.Value.Min, Span = At(60), Governing = [centre],
                },
                new()
                {
                    Rule = Centre, Subject = mesh, Outcome = Outcome.Conforms, Measured = centre,
                    AtMost = Limit(60, Units.Millimetre), Margin = (60 - 52.665) / 60, Span = At(61),
                },
                new()
                {
                    Rule = RatioRule, Subject = train, Outcome = Outcome.UnderConcession, Measured = deviation, AtMost = tolerance,
                    Margin = (0.002 - deviation.Value.Max) / 0.002, Span = At(21), Concession = Spec().Concessions[0],
                },
                new()
                {
                    Rule = Neighbours, Subject = planets, Outcome = Outcome.NotEvaluated, Span = At(30),
                    Measured = planets[PlanetSetQuantities.NeighbourClearance],
                    Reasons = planets[PlanetSetQuantities.NeighbourClearance].Reasons,
                },
                new()
                {
                    Rule = Floating, Subject = shaft, Outcome = Outcome.Conforms, Measured = shaft[BodyQuantities.Floating],
                    OneOf = ["false"], Span = At(24),
                },
                new() { Rule = Unspaced, Subject = planets, Outcome = Outcome.NotApplicable, Reasons = ["not equally_spaced == false"], Span = At(30) },
            ],
        };
    }

    private Subject Gear(string name, int teeth, double shift)
    {
        var gear = new Subject(SubjectKinds.Gear, "gears." + Text(name), At(40));
        var z = gear.Add(Number(GearQuantities.Teeth, teeth, Phrase.Whole(teeth)));
        var m = gear.Add(Number(GearQuantities.Module, 2.5, "2.5 mm"));
        var x = gear.Add(Number(GearQuantities.ProfileShift, shift, shift.ToString(System.Globalization.CultureInfo.InvariantCulture)));
        gear.Add(Quantity.Leaf(
            GearQuantities.PressureAngle, new Origin.Assumed("20° of the basic rack (ISO 53)"),
            Extent.Exactly(20 * Math.PI / 180), _serial++));
        gear.Add(Quantity.Compute(GearQuantities.ReferenceDiameter, [z, m], v => v[0] * v[1]));
        gear.Add(Quantity.Compute(GearQuantities.TipDiameter, [z, m, x], v => (v[0] * v[1]) + (2 * v[1] * (v[2] + 1))));
        gear.Add(Quantity.Compute(GearQuantities.RootDiameter, [z, m, x], v => (v[0] * v[1]) + (2 * v[1] * (v[2] - 1.25))));
        return gear;
    }

    private Quantity Number(QuantityKind kind, double value, string written) =>
        Quantity.Leaf(kind, Declared(written), Extent.Exactly(kind.Unit.ToCoherent(value)), _serial++);

    private Quantity Toleranced(QuantityKind kind, double value, double deviation, string written) =>
        Quantity.Leaf(kind, Declared(written), new(value, value - deviation, value + deviation), _serial++);

    private static Quantity Limit(double value, Unit unit) => Quantity.Leaf(
        new() { Name = "limit", Title = "limit", Unit = unit }, Origin.Computed.Instance, Extent.Exactly(unit.ToCoherent(value)), -1);

    private Origin.Declared Declared(string written) => new(At(_line++), Text(written));

    private SourceSpan At(int line) => new(File, new(line, 5), new(line, 15));

    private Stated<T> Say<T>(T value, string written, int line) => new(value, At(line), written);

    private Stated<string> Say(string value, int line) => Say(Text(value), Text(value), line);

    private YamlScalar Key(string name, int line) => new(At(line), name, false);

    private KeyValuePair<YamlScalar, YamlNode> Entry(string key, string value, int line) =>
        new(Key(key, line), new YamlScalar(At(line), value, false));

    private GearboxSpec Spec() => new()
    {
        File = File,
        FilesRead = [new(FamilyFile, new string('c', 64)), new(File, new string('d', 64))],
        Catalogue = Catalogue.Empty,
        Tree = new YamlMap(At(1),
        [
            Entry("pawl", "1", 1),
            new(Key("gearbox", 2), new YamlMap(At(2),
            [
                Entry("family", Text("Tarn 180"), 3), Entry("variant", Text("R180"), 4), Entry("revision", Text("C"), 5),
                Entry("description", Text("Inline reducer, electric work launch"), 6),
            ])),
            new(Key("ratio", 20), new YamlMap(At(20), [Entry("target", "4", 21), Entry("tolerance", "0.2 %", 22)])),
        ]),
        Pawl = Say(1, "1", 1),
        Gearbox = new()
        {
            Family = Say("Tarn 180", 3),
            Variant = Say("R180", 4),
            Revision = Say("C", 5),
            Description = Say("Inline reducer, electric work launch", 6),
        },
        Ratio = new() { Target = Say(4d, "4", 21), Tolerance = Say(new Amount(0.2, Units.Percent), "0.2 %", 22) },
        Concessions =
        [
            new()
            {
                Span = At(90),
                Rule = Say("train/ratio", 90),
                Subject = Say("train", 91),
                Reason = Say("The customer accepts the ratio for the first ten boats", 92),
                ApprovedBy = Say("Chief designer", 93),
                Expires = Say(new DateOnly(2027, 3, 31), "2027-03-31", 94),
                WorstMargin = Say(new Amount(-5, Units.Percent), "-5 %", 95),
            },
        ],
    };

    private Rule TipClearance => NewRule(
        "mesh/tip-clearance", "The tip stays clear of the mate's root", SubjectKinds.MeshGear, "tip_clearance", "at least 0.25 * module");

    private Rule RatioRule => NewRule(
        "train/ratio", "The ratio is the one that was asked for", SubjectKinds.Train, "ratio_deviation", "at most ratio_tolerance");

    private Rule Neighbours => NewRule(
        "assembly/neighbours", "Planets do not touch each other", SubjectKinds.PlanetSet, "neighbour_clearance", "at least 0.5 * largest_module");

    private Rule Floating => NewRule(
        "train/floating", "The input does not float", SubjectKinds.Body, "floating", "no") with
    { Severity = Severity.Warning };

    private Rule Centre => NewRule(
        "mesh/centre-distance", "The centre distance suits the housing", SubjectKinds.Mesh, "centre_distance", "at most 60 mm") with
    {
        Shipped = NewRule("mesh/centre-distance", "The centre distance suits the housing", SubjectKinds.Mesh, "centre_distance", "at most 55 mm"),
        Deviation = new()
        {
            Pack = "house",
            Reason = Text("The new housing is larger than those of the range."),
            ApprovedBy = Text("Chief designer"),
            Changes = [new("limit", DeviationEffect.Weakened, "at most 55 mm", "at most 60 mm")],
            Span = new("house/train.yaml", new(5, 9), new(5, 29)),
        },
    };

    private Rule Unspaced => NewRule(
        "assembly/positions", "Unequal positions are permitted ones", SubjectKinds.PlanetSet, "position_misfit", "at most min_backlash") with
    { When = "equally_spaced == false" };

    private Rule NewRule(string id, string title, SubjectKind appliesTo, string measure, string limit) => new()
    {
        Id = id,
        Title = Text(title),
        Pack = id.Split('/')[0],
        AppliesTo = appliesTo,
        Measure = measure,
        LimitText = limit,
        Severity = Severity.Error,
        Source = new("closed form", Text("common practice, no source"), Certainty.CommonPractice),
        Why = Text("The tip digs into the root and breaks the tooth."),
        Mend = Text("Shorten the addendum or raise the centre distance."),
        Span = new("shipped:mesh.yaml", new(7, 3), new(7, 20)),
    };
}
