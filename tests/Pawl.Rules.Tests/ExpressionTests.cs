using CsCheck;
using Pawl.Analysis;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Rules.Expressions;
using Pawl.Specs.Text;

namespace Pawl.Rules.Tests;

/// <summary>Expressions: arithmetic by hand, dimensions by definition, both grammars against each other.</summary>
public class ExpressionTests
{
    private static Subject Mesh() => Try.Mesh(
        "meshes.a~b", Try.Number(MeshQuantities.CentreDistance, "60 mm"), Try.Number(MeshQuantities.Module, "2 mm"),
        Try.Number(MeshQuantities.TotalContactRatio, "1.5"), Try.Number(MeshQuantities.OverlapRatio, "0.5"),
        Try.Number(MeshQuantities.WorkingPressureAngle, "30°"), Try.Text(MeshQuantities.Kind, "internal"), Try.Truth(MeshQuantities.SameRack, true),
        Try.Number(MeshQuantities.MeshFrequency, "50 Hz"));

    // In coherent units: mm, rad, s.
    [Theory]
    [InlineData("module", 2)]
    [InlineData("-module", -2)]
    [InlineData("0.15 * module", 0.3)]
    [InlineData("module / 4", 0.5)]
    [InlineData("module + 1 in", 27.4)] // 1 in = 25.4 mm exactly (ISO 80000-3)
    [InlineData("max(1 mm, module)", 2)]
    [InlineData("min(1 mm, module, 500 µm)", 0.5)]
    [InlineData("centre_distance - module * 3", 54)]
    [InlineData("(centre_distance - module) * 3", 174)]
    [InlineData("centre_distance - module - module", 56)]
    [InlineData("centre_distance / module / 3", 10)]
    [InlineData("module ^ 2", 4)]
    [InlineData("2 ^ 3 ^ 2", 512)] // powers bind from the right, as in written mathematics
    [InlineData("-module ^ 2", -4)]
    [InlineData("module ^ -1", 0.5)]
    [InlineData("sqrt(centre_distance * 15 mm)", 30)]
    [InlineData("abs(module - centre_distance)", 58)]
    [InlineData("sin(working_pressure_angle)", 0.5)] // sin 30° = 1/2
    [InlineData("cos(60°)", 0.5)]
    [InlineData("tan(45°)", 1)]
    [InlineData("round(total_contact_ratio)", 2)]
    [InlineData("floor(total_contact_ratio)", 1)]
    [InlineData("15 % * centre_distance", 9)]
    [InlineData("working_pressure_angle * centre_distance", Math.PI / 6 * 60)]
    [InlineData("mesh_frequency", 50)]
    [InlineData("1e-3 * centre_distance", 0.06)]
    [InlineData("nominal(module) * 2", 4)]
    [InlineData("0.5 mm*module", 1)]
    [InlineData("2 * (module + (centre_distance - 58 mm))", 8)]
    public void A_number_comes_out_as_on_paper(string text, double expected)
    {
        var scope = new List<QuantityPath>();
        var bound = Assert.IsType<Bound.Number>(Bind(text, scope));

        var values = scope.Select(p => p.Find(Mesh())!.Value.Nominal).ToArray();

        Assert.Equal(expected, bound.Formula(values), 1e-12 * Math.Max(1, Math.Abs(expected)));
    }

    [Theory]
    [InlineData("kind == 'internal'", true)]
    [InlineData("kind != 'internal'", false)]
    [InlineData("kind in ('internal', 'external')", true)]
    [InlineData("kind in ('external')", false)]
    [InlineData("kind not in ('external')", true)]
    [InlineData("same_rack", true)]
    [InlineData("not same_rack", false)]
    [InlineData("!same_rack", false)]
    [InlineData("same_rack == true", true)]
    [InlineData("module > 1 mm and module < 3 mm", true)]
    [InlineData("module > 1 mm && module < 2 mm", false)]
    [InlineData("module > 2 mm || kind == 'internal'", true)]
    [InlineData("module >= 2 mm", true)]
    [InlineData("module <= 2 mm", true)]
    [InlineData("module > 2 mm", false)]
    [InlineData("module == 2 mm", true)]
    [InlineData("module != 2 mm", false)]
    [InlineData("module * 30 == centre_distance", true)]
    [InlineData("not (module > 2 mm or kind == 'external')", true)]
    [InlineData("kind == 'external' and kind == 'external' or kind == 'internal'", true)] // and binds closer than or
    [InlineData("0.1 + 0.2 == 0.3", true)] // to nine digits
    [InlineData("true", true)]
    public void A_condition_holds_or_not(string text, bool expected)
    {
        var bound = Assert.IsType<Bound.Truth>(Bind(text, []));

        Assert.Equal(expected ? Verdict.Yes : Verdict.No, bound.Condition.Of(Mesh()));
    }

    [Theory]
    [InlineData("centre_distance", "mm")]
    [InlineData("module / centre_distance", "")]
    [InlineData("15 %", "%")]
    [InlineData("working_pressure_angle * 2", "°")]
    [InlineData("max(1 in, module)", "mm")]
    public void A_result_is_shown_in_a_unit_that_its_reader_knows(string text, string unit)
    {
        var bound = Assert.IsType<Bound.Number>(Bind(text, []));

        Assert.Equal(unit, Binder.UnitOf(bound.Dimension, bound.Unit).Symbol);
    }

    // Torque · angular speed = power: the angle may go in a product, and nowhere else.
    [Fact]
    public void An_angle_counts_as_a_number_only_behind_a_product()
    {
        Assert.IsType<Bound.Truth>(Binder.Bind(SubjectKinds.Train, Source("input_torque * input_speed > 1 kW"), [], NoComplaint));
        Assert.Null(Binder.Bind(SubjectKinds.Train, Source("input_speed > 5 Hz"), [], static _ => { }));
        Assert.Null(Binder.Bind(SubjectKinds.Mesh, Source("working_pressure_angle > 0.5"), [], static _ => { }));
    }

    // The difference of two temperatures is no temperature: ISO 80000-5.
    [Theory]
    [InlineData("oil_temperature - 20 °C > 60 K", true)]
    [InlineData("oil_temperature + 10 K > 90 °C", true)]
    [InlineData("oil_temperature > 60 K", false)]
    [InlineData("oil_temperature + 20 °C > 60 °C", false)]
    [InlineData("-oil_temperature > 60 °C", false)]
    public void Temperatures_and_their_differences_are_told_apart(string text, bool isSound)
    {
        var complaints = new List<Diagnostic>();

        Assert.Equal(isSound, Binder.Bind(SubjectKinds.Train, Source(text), [], complaints.Add) is not null);
        Assert.Equal(isSound, complaints.Count == 0);
    }

    [Fact]
    public void A_computed_measure_keeps_its_inputs_and_formula_for_the_trace()
    {
        var mesh = Mesh();

        var finding = Try.Put(Try.Rule("measure: centre_distance / module\nat_least: 2 * total_contact_ratio"), mesh);

        Assert.Equal([mesh[MeshQuantities.CentreDistance], mesh[MeshQuantities.Module]], finding.Measured!.Inputs);
        Assert.Equal("centre_distance / module", finding.Measured.Kind.Formula);
        Assert.Equal(["centre_distance", "module"], finding.Measured.Kind.Symbols);
        Assert.Equal([mesh[MeshQuantities.TotalContactRatio]], finding.AtLeast!.Inputs);
        Assert.Equal(9, finding.Margin!.Value, 1e-12); // (30 − 3)/3
    }

    [Fact]
    public void A_path_reaches_a_related_subject()
    {
        var gear = Try.Subject(SubjectKinds.Gear, "gears.a", Try.Number(GearQuantities.Module, "2 mm"));
        var side = Try.MeshGear(gear, Try.Number(MeshGearQuantities.FormMargin, "0.15 mm"));

        var finding = Try.Put(Try.Rule("measure: form_margin\nat_least: 0.05 * gear.module", "mesh_gear"), side);

        Assert.Equal(0.5, finding.Margin!.Value, 1e-12); // (0.15 − 0.1)/0.1
    }

    private static readonly string[] SimpleTexts =
    [
        "module", "-module", "2 mm", "not same_rack", "same_rack", "module * 2", "module + 2 mm", "2 ^ 2", "abs(module)", "max(module, 1 mm)",
        "kind == 'internal'", "module > 1 mm and module < 3 mm and same_rack", "same_rack or kind == 'a' or not same_rack",
    ];

    // The short way and NCalc must read the same tree wherever both can read.
    [Fact]
    public void Simple_forms_agree_with_the_full_grammar()
    {
        foreach (var text in SimpleTexts)
        {
            var tokens = Tokeniser.Read(text, out _)!;
            var simple = SimpleForms.Read(tokens);

            Assert.NotNull(simple);
            Assert.Equal(Shape(NCalcGrammar.Read(tokens, text.Length, out _)!), Shape(simple));
        }
    }

    private static readonly Gen<string> Operand = Gen.OneOf("module", "2 mm", "0.5", "kind", "'internal'", "same_rack", "first.teeth", "1 kN/mm", "20°");
    private static readonly Gen<string> Joint = Gen.OneOf("+", "-", "*", "/", "^", "==", "!=", "<", "<=", ">", ">=", "and", "or");

    [Fact]
    public void Whatever_both_grammars_read_they_read_alike() =>
        Gen.Select(Operand.Array[1, 4], Joint.Array[3]).Sample((operands, joints) =>
        {
            var text = operands[0];
            for (var i = 1; i < operands.Length; i++)
                text += $" {joints[i - 1]} {operands[i]}";
            var tokens = Tokeniser.Read(text, out _)!;
            if (SimpleForms.Read(tokens) is { } simple)
                Assert.Equal(Shape(NCalcGrammar.Read(tokens, text.Length, out _)!), Shape(simple));
        });

    private static readonly Gen<string> Junk = Gen.OneOf(
        "module", "centre_distance", "kind", "same_rack", "first.module", "a.b.c.d.e", "1", "2 mm", "5 %", "20°", "'x'", "'", "(", ")", ",", "+", "-", "*", "/", "^", "==",
        "=", "!", "!=", "<", ">=", "and", "or", "not", "in", "max(", "sqrt(", "abs(", "nominal(", "foo(", "true", "\"", ".", "..", "1e999", "1e", "0x1", "\u2212", "\ud83d\ude00",
        "\t", "\n", "[", "{", "?", ":", "#", "p1", "f2", "1/min", "lbf*ft", "W/(m·K)", "--", "99999999999999999999");

    [Fact]
    public void No_text_brings_the_reader_down_and_every_refusal_has_a_place_within_it() =>
        Gen.Select(Junk.Array[0, 14], Gen.Bool).Sample((words, spaced) => Survives(string.Join(spaced ? " " : "", words)), iter: 20_000);

    [Fact]
    public void No_string_of_characters_brings_the_reader_down() => Gen.String[0, 60].Sample(Survives, iter: 10_000);

    [Theory]
    [InlineData('(', 5000)]
    [InlineData('-', 5000)]
    [InlineData('!', 390)]
    [InlineData('(', 390)]
    public void Deep_nesting_is_refused_without_harm(char sign, int count) =>
        Survives(new string(sign, count) + "module" + (sign == '(' ? new string(')', count) : ""));

    private static void Survives(string text)
    {
        var complaints = new List<Diagnostic>();
        var bound = Binder.Bind(SubjectKinds.Mesh, new(text, new("r.yaml", new(1, 1), new(1, 1 + text.Length))), [], complaints.Add);

        Assert.Equal(bound is null, complaints.Count > 0);
        Assert.All(complaints, c =>
        {
            Assert.InRange(c.Span.Start.Column, 1, 1 + text.Length);
            Assert.InRange(c.Span.End.Column, c.Span.Start.Column, 1 + text.Length);
        });
    }

    private static ExpressionSource Source(string text) => new(text, new("r.yaml", new(1, 1), new(1, 1 + text.Length)));

    private static Bound? Bind(string text, List<QuantityPath> scope) => Binder.Bind(SubjectKinds.Mesh, Source(text), scope, NoComplaint);

    private static void NoComplaint(Diagnostic diagnostic) => Assert.Fail($"{diagnostic.Code}: {diagnostic.Message}");

    private static string Shape(Syntax syntax) => syntax switch
    {
        Syntax.Name name => name.Path,
        Syntax.Number number => number.Amount.ToString(),
        Syntax.Text text => $"'{text.Value}'",
        Syntax.Truth truth => truth.Value ? "true" : "false",
        Syntax.Unary unary => $"({unary.Operator} {Shape(unary.Operand)})",
        Syntax.Binary binary => $"({Shape(binary.Left)} {binary.Operator} {Shape(binary.Right)})",
        Syntax.Call call => $"{call.Function}[{string.Join(' ', call.Arguments.Select(Shape))}]",
        _ => syntax.ToString(),
    };
}
