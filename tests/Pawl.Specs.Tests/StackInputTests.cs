using System.Text;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>Stacks and shims as a spec states them: a loop must close.</summary>
public sealed class StackInputTests
{
    private static readonly SpecLoader Loader = new(
        Sample.Repository(), ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/bearings.yaml"]);

    private const string Head = """
        pawl: 1
        gearbox: {family: F, variant: Test}

        """;

    private static SpecLoad Load(string text) => Loader.Load("test.yaml", Encoding.UTF8.GetBytes(Head + text));

    private const string Window = "window: {min: 0 mm, max: 0.1 mm}";

    [Fact]
    public void Every_key_reaches_the_model()
    {
        var load = Load(
            """
            stacks:
              end: {from: a, to: c, window: {min: 0 mm, max: 0.1 mm}, preloaded: true, max_in_service: 0.2 mm, method: statistical,
                    warm_up: {shaft: 80 °C, housing: 40 °C}, seed: 9, draws: 5000,
                    contributors: {one: {size: 20 mm ±0.05, from: b, to: a, distribution: normal, capability: 1.33, material: EN-42CrMo4, running: 70 °C, side: shaft},
                                   two: {size: 20.1 mm, from: b, to: c, coefficient: 1, expansion: 23 µm/(m·K), side: housing}},
                    shims: {stock: drawer, effect: lifts, pack_limit: 3, target: 0.05 mm, measured_gap: -0.2 mm, uncertainty: 5 µm}}
            shims:
              drawer: {sheets: [{thickness: 0.1 mm, tolerance: 2 µm, count: 4}]}
            """);
        Assert.Empty(load.Diagnostics);
        var found = load.Spec!.Stacks.Find("end")!;

        Assert.Equal(("a", "c", true, "statistical", 9, 5000), (found.From!.Value, found.To!.Value, found.Preloaded!.Value, found.Method!.Value, found.Seed!.Value, found.Draws!.Value));
        Assert.Equal((0, 0.1, 0.2, 80, 40), (found.Window.Min.Value.Coherent, found.Window.Max.Value.Coherent, found.MaxInService!.Value.Coherent, found.WarmUp!.Shaft.Value.Coherent, found.WarmUp.Housing.Value.Coherent));
        var (one, two) = (found.Contributors.Find("one")!, found.Contributors.Find("two")!);
        Assert.Equal(("normal", 1.33, "EN-42CrMo4", 70, "shaft"), (one.Distribution!.Value, one.Capability!.Value, one.Material!.Value, one.Running!.Value.Coherent, one.Side!.Value));
        Assert.Equal((1, 23e-6), (two.Coefficient!.Value, Math.Round(two.Expansion!.Value.Coherent, 12)));
        Assert.Equal((-1, 1), (StackLoop.Sign(found, one), StackLoop.Sign(found, two)));
        Assert.Equal(("drawer", "lifts", 3, 0.05, -0.2), (found.Shims!.Stock.Value, found.Shims.Effect.Value, found.Shims.PackLimit!.Value, found.Shims.Target!.Value.Coherent, found.Shims.MeasuredGap!.Value.Coherent));
        var sheet = Assert.Single(load.Spec.Shims.Find("drawer")!.Sheets);
        Assert.Equal((0.1, 0.002, 4), (sheet.Thickness.Value.Coherent, Math.Round(sheet.Tolerance!.Value.Coherent, 12), sheet.Count!.Value));
    }

    private const string Depth = "depth: {size: 20 mm, from: shoulder, to: flange}";
    private const string Ring = "ring: {size: 18 mm, from: shoulder, to: face}";

    // Each row: what stands in the stack, the code, the text at whose start the complaint stands, and a piece of message or hint.
    [Theory]
    // A contributor missing: nothing leads from the face of the ring to the shoulder.
    [InlineData($"from: face, to: flange, {Window}, contributors: {{{Depth}}}", DiagnosticCodes.OpenChain, "face, to: flange, window", "no size goes on")]
    // A loop that goes nowhere.
    [InlineData($"from: face, to: flnge, {Window}, contributors: {{{Depth}, {Ring}}}", DiagnosticCodes.OpenChain, "face, to: flnge", "from `face` to `flange`")]
    // One size too many, off the loop; one beside it that parts the loop.
    [InlineData($"from: face, to: flange, {Window}, contributors: {{{Depth}, {Ring}, cap: {{size: 1 mm, from: x, to: y}}}}", DiagnosticCodes.OpenChain, "cap", "does not pass")]
    [InlineData($"from: face, to: flange, {Window}, contributors: {{{Depth}, {Ring}, cap: {{size: 1 mm, from: shoulder, to: y}}}}", DiagnosticCodes.OpenChain, "face, to: flange", "parts at `shoulder`")]
    [InlineData($"from: face, to: face, {Window}, contributors: {{{Depth}, {Ring}}}", DiagnosticCodes.OpenChain, "face, window", "none")]
    [InlineData($"from: face, to: flange, {Window}, contributors: {{{Depth}, ring: {{size: 18 mm, from: face, to: face}}}}", DiagnosticCodes.OpenChain, "face}", "leads nowhere")]
    // The bearing closes the gap; whoever says that it opens it is told.
    [InlineData($"from: face, to: flange, {Window}, contributors: {{{Depth}, ring: {{size: 18 mm, from: shoulder, to: face, coefficient: 1}}}}", DiagnosticCodes.WrongSign, "1}", "closes")]
    [InlineData($"from: face, to: flange, {Window}, contributors: {{{Depth}, ring: {{size: 18 mm, from: shoulder}}}}", DiagnosticCodes.MissingKey, "ring", "to")]
    [InlineData($"from: face, {Window}, contributors: {{{Depth}, {Ring}}}", DiagnosticCodes.MissingKey, "x: {from", "to")]
    [InlineData($"{Window}, contributors: {{a: {{size: 18 mm}}}}", DiagnosticCodes.MissingKey, "a:", "coefficient")]
    [InlineData($"{Window}, contributors: {{a: {{size: 18 mm, coefficient: 0}}}}", DiagnosticCodes.OutOfRange, "0}}", "no part of the chain")]
    [InlineData("window: {min: 0.1 mm, max: 0.02 mm}, contributors: {a: {size: 18 mm, coefficient: 1}}", DiagnosticCodes.OutOfRange, "0.02 mm", "upside down")]
    [InlineData("window: {min: 0.1 mm}, contributors: {a: {size: 18 mm, coefficient: 1}}", DiagnosticCodes.MissingKey, "window", "max")]
    [InlineData($"{Window}, contributors: {{a: {{size: 18 mm, coefficient: 1, distribution: gauss}}}}", DiagnosticCodes.UnknownWord, "gauss", "normal")]
    [InlineData($"{Window}, contributors: {{a: {{size: 18 mm, coefficient: 1, distribution: uniform, capability: 1.3}}}}", DiagnosticCodes.ExclusiveKeys, "1.3}", "uniform")]
    [InlineData($"{Window}, contributors: {{a: {{size: -18 mm, coefficient: 1}}}}", DiagnosticCodes.OutOfRange, "-18 mm", "zero or more")]
    [InlineData($"{Window}, contributors: {{a: {{size: 18 mm, coefficient: 1, material: EN-42CrMo4, expansion: 11 µm/(m·K)}}}}", DiagnosticCodes.ExclusiveKeys, "11 µm", "material")]
    [InlineData($"{Window}, contributors: {{}}", DiagnosticCodes.WrongCount, "contributors", "one size")]
    [InlineData($"{Window}, contributors: {{a: {{size: 18 mm, coefficient: 1}}}}, shims: {{stock: drawr, effect: fills}}", DiagnosticCodes.UnknownName, "drawr", "drawer")]
    [InlineData($"{Window}, contributors: {{a: {{size: 18 mm, coefficient: 1}}}}, shims: {{stock: drawer, effect: fill}}", DiagnosticCodes.UnknownWord, "fill}", "fills")]
    [InlineData($"{Window}, contributors: {{a: {{size: 18 mm, coefficient: 1}}}}, draws: 10", DiagnosticCodes.OutOfRange, "10", "1000")]
    public void A_wrong_stack_is_told(string stack, string code, string at, string says)
    {
        var text = $"stacks:\n  x: {{{stack}}}\nshims:\n  drawer: {{sheets: [{{thickness: 0.1 mm}}]}}\n";
        var diagnostic = Sample.Only(Load(text), code, Head + text, at);

        Assert.Contains(says, $"{diagnostic.Message} {diagnostic.Hint}", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{sheets: []}", DiagnosticCodes.WrongCount, "[]")]
    [InlineData("{sheets: [{thickness: 0 mm}]}", DiagnosticCodes.OutOfRange, "0 mm")]
    [InlineData("{sheets: [{thickness: 0.1 mm, tolerance: 0.2 mm}]}", DiagnosticCodes.OutOfRange, "0.2 mm")]
    [InlineData("{sheets: [{count: 3}]}", DiagnosticCodes.MissingKey, "{count")]
    public void A_wrong_list_of_shims_is_told(string list, string code, string at)
    {
        var text = $"shims:\n  drawer: {list}\n";

        Sample.Only(Load(text), code, Head + text, at);
    }
}
