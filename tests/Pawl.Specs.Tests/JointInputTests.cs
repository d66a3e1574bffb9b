using System.Text;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>Joints, dowels, rings and planet pins as a spec states them.</summary>
public sealed class JointInputTests
{
    private static readonly SpecLoader Loader = new(
        Sample.Repository(), ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/bearings.yaml"],
        adapterPaths: ["specs/adapters/motor-flange-a.yaml", "specs/adapters/shaft-coupling-b.yaml", "specs/adapters/mount-c.yaml"]);

    private const string Head = """
        pawl: 1
        extends: r400.yaml
        gearbox: {variant: Test}

        """;

    private static SpecLoad Load(string sections) => Loader.Load("specs/tarn-120/test.yaml", Encoding.UTF8.GetBytes(Head + sections));

    [Fact]
    public void Every_key_of_a_joint_reaches_the_model()
    {
        var load = Load(
            """
            joints:
              x: {kind: flange, thread: 3/8-24 UNF, strength: grade 8, carries: housing, axial_force: 2 kN, min_axial_force: 1 kN, force_across: 100 N, bolts: 6, bolt_circle: 90 mm,
                  head: hexagon, face: 16 mm, hole: 10 mm, length: 40 mm, shank: 12 mm, width: 25 mm, shims: 2,
                  clamped: [{part: flange, material: wrought-6082, thickness: 20 mm ±0.1, limiting_pressure: 200 MPa}],
                  tapped: {material: wrought-6082, tensile: 300 MPa, depth: 24 mm, relief: 1 mm, boss: 25 mm, insert: {thread: 1/2-13 UNC, length: 18 mm}},
                  friction: {min: 0.08, max: 0.14},
                  tightening: {torque: 30 lbf·ft, method: torque wrench with friction measured, preload: 20 kN, wrench_error: 3 %, prevailing: 2 N·m, order: round, steps: [50 %, 100 %]},
                  coating: electroplated zinc, bake: 8 h, threads_rolled: after, locking: {by: polyamide patch, coldest: -40 °C, hottest: 120 °C, uses: 2, max_uses: 3}, embedding: 6 µm, moment: 60 N·m, supports: carrier, axial_position: 14 mm, roughness: 10 µm, between_faces: bare,
                  face_friction: 0.12, slip_safety: 1.5, load_introduction: 0.5, assembly_temperature: 25 °C}
            """);
        Assert.Empty(load.Diagnostics);
        var found = load.Spec!.Joints.Find("x")!;

        Assert.Equal(("3/8-24 UNF", "grade 8", "housing", "hexagon", 6, 2), (found.Thread.Value, found.Strength!.Value, found.Carries!.Value, found.Head!.Value, found.Bolts!.Value, found.Shims!.Value));
        Assert.Equal((2000, 1000, 100, 90, 16, 10, 40, 12, 25), (found.AxialForce!.Value.Coherent, found.MinAxialForce!.Value.Coherent, found.ForceAcross!.Value.Coherent, found.BoltCircle!.Value.Coherent,
            found.Face!.Value.Coherent, found.Hole!.Value.Coherent, found.Length!.Value.Coherent, found.Shank!.Value.Coherent, found.Width!.Value.Coherent));
        Assert.Equal((300, 24, 1, 25, "1/2-13 UNC", 18), (found.Tapped!.Tensile!.Value.Coherent, found.Tapped.Depth!.Value.Nominal.Coherent, found.Tapped.Relief!.Value.Coherent, found.Tapped.Boss!.Value.Coherent, found.Tapped.Insert!.Thread.Value, found.Tapped.Insert.Length.Value.Coherent));
        Assert.Equal((0.08, 0.14, 20_000, 2000, "round", 2), (found.Friction!.Min!.Value, found.Friction.Max!.Value, found.Tightening!.Preload!.Value.Coherent, found.Tightening.Prevailing!.Value.Coherent, found.Tightening.Order!.Value, found.Tightening.Steps.Length));
        Assert.Equal(("electroplated zinc", 8 * 3600, "after", "polyamide patch", 120, "bare"), (found.Coating!.Value, found.Bake!.Value.Coherent, found.ThreadsRolled!.Value, found.Locking!.By.Value, found.Locking.Hottest!.Value.Coherent, found.BetweenFaces!.Value));
        Assert.Equal((-40, 2, 3, 0.006, 60_000, "carrier", 14), (found.Locking.Coldest!.Value.Coherent, found.Locking.Uses!.Value, found.Locking.MaxUses!.Value, found.Embedding!.Value.Coherent, found.Moment!.Value.Coherent, found.Supports!.Value, found.AxialPosition!.Value.Coherent));
        Assert.Equal((0.12, 1.5, 0.5, 25, "20 mm ±0.1", 200), (found.FaceFriction!.Value, found.SlipSafety!.Value, found.LoadIntroduction!.Value, found.AssemblyTemperature!.Value.Coherent, found.Clamped[0].Thickness.Text, found.Clamped[0].LimitingPressure!.Value.Coherent));
    }

    private const string Bolted = "kind: flange, thread: M8, clamped: [{material: wrought-6082, thickness: 24 mm}]";
    private const string Central = "kind: central-nut, thread: M24x1.5";

    // Each row: the joint, the code, the text at whose start the complaint stands, and a piece of message or hint.
    [Theory]
    [InlineData($"{Bolted}, length: 50 mm, tapped: {{material: wrought-6082, depth: 20 mm}}", DiagnosticCodes.OutOfRange, "50 mm", "longer than its hole")]
    [InlineData($"{Bolted}, length: 20 mm", DiagnosticCodes.OutOfRange, "20 mm", "does not reach")]
    [InlineData("kind: flange, thread: M8, clamped: [{material: wrought-6082, thickness: 0 mm}]", DiagnosticCodes.OutOfRange, "0 mm", "more than zero")]
    [InlineData("kind: flange, thread: M8, clamped: []", DiagnosticCodes.WrongCount, "[]", "without a grip")]
    [InlineData("kind: flange, thread: M8, clamped: null", DiagnosticCodes.NullValue, "clamped", "clamped")]
    [InlineData("kind: flange, thread: M8", DiagnosticCodes.MissingKey, "x: {kind", "clamped")]
    [InlineData($"{Bolted}, friction: {{min: -0.1, max: 0.14}}", DiagnosticCodes.OutOfRange, "-0.1", "from 0 to 1")]
    [InlineData($"{Bolted}, friction: {{min: 0.15, max: 0.14}}", DiagnosticCodes.OutOfRange, "0.15", "no more than the maximum")]
    [InlineData($"{Bolted}, friction: {{class: B, min: 0.15}}", DiagnosticCodes.ExclusiveKeys, "min: 0.15", "class")]
    [InlineData($"{Bolted}, friction: {{class: F}}", DiagnosticCodes.UnknownWord, "F}", "A, B, C, D, E")]
    [InlineData($"{Bolted}, locking: {{by: staked colar}}", DiagnosticCodes.UnknownWord, "staked colar", "`staked collar`")]
    [InlineData($"{Bolted}, locking: {{by: polyamide patch, coldest: 90 °C, hottest: 80 °C}}", DiagnosticCodes.OutOfRange, "90 °C", "below the hottest")]
    [InlineData($"{Bolted}, supports: carrier", DiagnosticCodes.MissingKey, "x: {kind", "axial_position")]
    [InlineData($"{Central}, moment: 20 N·m, clamped: [{{material: EN-42CrMo4, thickness: 24 mm, outside: 40 mm, inside: 26 mm}}], shaft: {{material: EN-42CrMo4, diameter: 25 mm}}", DiagnosticCodes.ExclusiveKeys, "shaft: {material", "moment")]
    [InlineData($"{Bolted}, embedding: 0 µm", DiagnosticCodes.OutOfRange, "0 µm", "more than zero")]
    [InlineData($"{Central}, locking: {{by: split pin}}, clamped: [{{material: EN-42CrMo4, thickness: 24 mm, outside: 40 mm, inside: 26 mm}}], shaft: {{material: EN-42CrMo4, diameter: 25 mm}}", DiagnosticCodes.MissingKey, "{material: EN-42CrMo4, diameter", "cross_hole")]
    [InlineData("kind: flange, thread: M8x2, clamped: [{material: wrought-6082, thickness: 24 mm}]", DiagnosticCodes.UnknownWord, "M8x2", "`M8x1`")]
    [InlineData("kind: flange, thread: 1/2-21 UNF, clamped: [{material: wrought-6082, thickness: 24 mm}]", DiagnosticCodes.UnknownWord, "1/2-21", "`1/2-20 UNF`")]
    [InlineData("kind: flange, thread: R8, clamped: [{material: wrought-6082, thickness: 24 mm}]", DiagnosticCodes.UnknownWord, "R8", "a thread of ISO 261 or ASME B1.1")]
    [InlineData($"{Bolted}, strength: 10.8", DiagnosticCodes.UnknownWord, "10.8", "`10.9`")]
    [InlineData($"{Bolted}, strength: grade 9", DiagnosticCodes.UnknownWord, "grade 9", "`grade")]
    [InlineData($"{Bolted}, strength: strong", DiagnosticCodes.UnknownWord, "strong", "12.9, grade 2")]
    [InlineData("kind: flange, thread: M8, clamped: [{material: wrought-6083, thickness: 24 mm}]", DiagnosticCodes.NotInCatalogue, "wrought-6083", "`wrought-6082`")]
    [InlineData($"{Bolted}, carries: hosing", DiagnosticCodes.UnknownBody, "hosing", "`housing`")]
    [InlineData($"{Bolted}, carries: housing, torque: 20 N·m", DiagnosticCodes.ExclusiveKeys, "torque", "carries")]
    [InlineData($"{Bolted}, bearing: inputs", DiagnosticCodes.UnknownName, "inputs", "`input`")]
    [InlineData($"{Bolted}, tapped: {{material: wrought-6082}}, nut: {{strength: 8}}", DiagnosticCodes.ExclusiveKeys, "nut:", "tapped")]
    [InlineData($"{Bolted}, strength: 8.8, yield: 600 MPa", DiagnosticCodes.ExclusiveKeys, "yield", "strength")]
    [InlineData($"{Bolted}, hole: 7.5 mm", DiagnosticCodes.OutOfRange, "7.5 mm", "at least the diameter of M8")]
    [InlineData($"{Bolted}, hole: 9 mm, face: 9 mm", DiagnosticCodes.OutOfRange, "9 mm, face", "less than the face")]
    [InlineData($"{Bolted}, length: 40 mm, shank: 40 mm", DiagnosticCodes.OutOfRange, "40 mm}", "less than the length")]
    [InlineData($"{Bolted}, axial_force: 1 kN, min_axial_force: 2 kN", DiagnosticCodes.OutOfRange, "2 kN", "no more than the axial force")]
    [InlineData($"{Bolted}, bolts: 0", DiagnosticCodes.OutOfRange, "0}", "from 1 to 200")]
    [InlineData($"{Bolted}, tightening: {{torque: 20 N·m, prevailing: 25 N·m}}", DiagnosticCodes.OutOfRange, "25 N·m", "less than the torque")]
    [InlineData($"{Bolted}, tightening: {{steps: [60 %, 30 %, 100 %]}}", DiagnosticCodes.OutOfRange, "30 %", "the step before it")]
    [InlineData($"{Bolted}, tightening: {{steps: [30 %, 60 %]}}", DiagnosticCodes.OutOfRange, "60 %", "whole torque")]
    [InlineData($"{Bolted}, tightening: {{method: wrench}}", DiagnosticCodes.UnknownWord, "wrench", "impact wrench")]
    [InlineData($"{Central}, clamped: [{{material: wrought-6082, thickness: 24 mm, outside: 40 mm, inside: 30 mm}}]", DiagnosticCodes.MissingKey, "x: {kind", "shaft")]
    [InlineData($"{Central}, shaft: {{material: EN-42CrMo4, diameter: 25 mm}}, clamped: [{{material: wrought-6082, thickness: 24 mm, outside: 40 mm}}]", DiagnosticCodes.MissingKey, "{material: wrought-6082", "inside")]
    [InlineData($"{Central}, shaft: {{material: EN-42CrMo4, diameter: 25 mm}}, clamped: [{{material: wrought-6082, thickness: 24 mm, outside: 40 mm, inside: 40 mm}}]", DiagnosticCodes.OutOfRange, "40 mm}]", "less than the outside")]
    [InlineData($"{Central}, shaft: {{material: EN-42CrMo4, diameter: 25 mm, bore: 25 mm}}, clamped: [{{material: wrought-6082, thickness: 24 mm, outside: 40 mm, inside: 26 mm}}]", DiagnosticCodes.OutOfRange, "25 mm}", "less than the diameter")]
    public void A_wrong_joint_is_told(string joint, string code, string at, string says)
    {
        var text = $"joints:\n  x: {{{joint}}}\n";
        var diagnostic = Sample.Only(Load(text), code, Head + text, at);

        Assert.Contains(says, $"{diagnostic.Message} {diagnostic.Hint}", StringComparison.Ordinal);
    }

    private const string Parts = "parts: [{length: 10 mm}, {length: 10 mm}]";
    private const string Ring = "on: input_shaft, sits: shaft, diameter: 25 mm";
    private const string Pin = "planets: planet, diameter: 12 mm, held: straddled, load_width: 17 mm";

    [Theory]
    [InlineData($"dowels: {{x: {{joint: house, purpose: locate, count: 2, circle: 90 mm, diameter: 6 mm, {Parts}}}}}", DiagnosticCodes.UnknownName, "house,", "housing_flange")]
    [InlineData($"dowels: {{x: {{joint: housing_flange, torque: 20 N·m, purpose: locate, count: 2, circle: 90 mm, diameter: 6 mm, {Parts}}}}}", DiagnosticCodes.ExclusiveKeys, "torque", "joint")]
    [InlineData($"dowels: {{x: {{purpose: guide, count: 2, circle: 90 mm, diameter: 6 mm, {Parts}}}}}", DiagnosticCodes.UnknownWord, "guide", "locate, carry")]
    [InlineData("dowels: {x: {purpose: locate, count: 2, circle: 90 mm, diameter: 6 mm, parts: [{length: 10 mm}]}}", DiagnosticCodes.WrongCount, "[{length", "two parts")]
    [InlineData("dowels: {x: {purpose: locate, count: 2, circle: 90 mm, diameter: 6 mm, parts: [{length: 10 mm, hole: 8 mm H7}, {length: 10 mm}]}}", DiagnosticCodes.OutOfRange, "8 mm H7", "about the diameter")]
    [InlineData($"dowels: {{x: {{purpose: locate, count: 2, circle: 90 mm, diameter: 6 mm, bore: 6 mm, {Parts}}}}}", DiagnosticCodes.OutOfRange, "6 mm, parts", "less than the diameter")]
    [InlineData($"retaining_rings: {{x: {{{Ring}, groove: 25 mm}}}}", DiagnosticCodes.OutOfRange, "25 mm}", "less than the shaft")]
    [InlineData("retaining_rings: {x: {on: housing, sits: bore, diameter: 25 mm, groove: 24 mm}}", DiagnosticCodes.OutOfRange, "24 mm", "more than the bore")]
    [InlineData($"retaining_rings: {{x: {{{Ring}, axial_force: 1 kN, bearing: input}}}}", DiagnosticCodes.ExclusiveKeys, "input}", "axial_force")]
    [InlineData("retaining_rings: {x: {on: shaft, sits: shaft, diameter: 25 mm}}", DiagnosticCodes.UnknownBody, "shaft, sits", "input_shaft")]
    [InlineData("planet_pins: {x: {planets: planets, diameter: 12 mm, held: straddled, load_width: 17 mm}}", DiagnosticCodes.UnknownName, "planets, dia", "`planet`")]
    [InlineData($"planet_pins: {{x: {{{Pin}, span: 15 mm}}}}", DiagnosticCodes.OutOfRange, "17 mm", "between the cheeks")]
    [InlineData($"planet_pins: {{x: {{{Pin}, bore: 12 mm}}}}", DiagnosticCodes.OutOfRange, "12 mm}", "less than the diameter")]
    [InlineData($"planet_pins: {{x: {{{Pin}, material: EN-42CrMo5}}}}", DiagnosticCodes.NotInCatalogue, "EN-42CrMo5", "EN-42CrMo4")]
    [InlineData("planet_pins: {x: {planets: planet, diameter: 12 mm, held: overhung, span: 30 mm, load_width: 17 mm}}", DiagnosticCodes.ExclusiveKeys, "30 mm", "overhung")]
    public void A_wrong_pin_or_ring_is_told(string section, string code, string at, string says)
    {
        var text = $"{section}\n";
        var diagnostic = Sample.Only(Load(text), code, Head + text, at);

        Assert.Contains(says, $"{diagnostic.Message} {diagnostic.Hint}", StringComparison.Ordinal);
    }

    // Spaces, letter case, the sign of multiplication and the series make no difference, as in the tables.
    [Theory]
    [InlineData("m8")]
    [InlineData("M8×1")]
    [InlineData("M 10 x 1.25")]
    [InlineData("M8x1.25")]
    [InlineData("1/2-20")]
    [InlineData("'#10-24'")]
    [InlineData("1-1/8-12 UNF")]
    public void A_thread_is_known_however_it_is_written(string thread) =>
        Assert.Empty(Load($"joints: {{x: {{kind: flange, thread: {thread}, clamped: [{{material: wrought-6082, thickness: 24 mm}}]}}}}\n").Diagnostics);
}
