using System.Text;
using Pawl.Quantities;
using Pawl.Specs;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Tests;

/// <summary>A simple planetary set in oil, for tests of lubrication and seals.</summary>
internal static class OilText
{
    public const string Oil = "{lubricant: gear-oil-vg220, running: 65 °C, coldest: 20 °C, hottest: 80 °C}";

    private static readonly SpecLoader Loader = new(SpecText.Root, ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml"]);

    /// <summary>Sun 20, planets 25, ring 70 at 2 mm; 1450 1/min in; <paramref name="more"/> stands at the top level.</summary>
    public static string Spec(string more, string oil = Oil, string duty = "") =>
        SpecText.Simple(duty: $"duty:\n  input: {{speed: 1450 rpm, torque: 30 N·m}}\n  oil: {oil}\n{duty}\n{more}");

    /// <summary>The analysis with another oil in the place of that which the duty names.</summary>
    public static GearboxAnalysis Analyse(string yaml, Func<LubricantSpec, LubricantSpec>? oil = null)
    {
        var load = Loader.Load("test.yaml", Encoding.UTF8.GetBytes(yaml));
        Assert.True(load.Spec is not null, string.Join('\n', load.Diagnostics));
        var spec = load.Spec;
        if (oil is null)
            return GearboxAnalyser.Analyse(spec);
        var named = spec.Duty!.Oil!.Lubricant!.Value;
        return GearboxAnalyser.Analyse(spec with
        {
            Catalogue = spec.Catalogue with
            {
                Lubricants = new([.. spec.Catalogue.Lubricants.Entries.Select(each => each.Name.Value == named ? oil(each) : each)], each => each.Name.Value),
            },
        });
    }

    public static Stated<Amount> Viscosity(double value) => Said(new Amount(value, Units.SquareMillimetrePerSecond));

    public static Stated<T> Said<T>(T value) => new(value, SourceSpan.Whole("oils.yaml"), value!.ToString()!);
}
