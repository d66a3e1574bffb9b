using System.Globalization;
using System.Text;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>Every way in which a spec is commonly wrong: code, line, column and hint.</summary>
public sealed class BadInputTests
{
    private static Diagnostic Broken(string old, string @new, string code, string at)
    {
        var text = Sample.Text.Replace(old, @new, StringComparison.Ordinal);
        Assert.NotEqual(Sample.Text, text);
        return Sample.Only(Sample.Load(text), code, text, at);
    }

    // Each row: what is replaced, by what, the code, the text at whose start the complaint stands, and a piece of the hint.
    [Theory]
    [InlineData("teeth: 30", "teehts: 30, x", DiagnosticCodes.UnknownKey, "teehts", "teeth")]
    [InlineData("module: 2.5 mm\n", "module: 2.5\n", DiagnosticCodes.MissingUnit, "2.5\n", "2.5 mm")]
    [InlineData("speed: 8200 rpm, torque: 190", "speed: 8200, torque: 190", DiagnosticCodes.MissingUnit, "8200, torque: 190", "8200 ")]
    [InlineData("face_width: 24 mm ±0.1", "face_width: 12 N·m", DiagnosticCodes.UnitMismatch, "N·m\n      axial", "length")]
    [InlineData("pressure_angle: 20°", "pressure_angle: 20 %", DiagnosticCodes.UnitMismatch, "%\n      face", "angle")]
    [InlineData("tip_chamfer: 0.2 mm", "tip_chamfer: 0.2 mn", DiagnosticCodes.UnknownUnit, "mn\n", "mm")]
    [InlineData("24 mm ±0.1", "24 mm ±", DiagnosticCodes.MalformedTolerance, "\n      axial", "±0.1")]
    [InlineData("80.6 mm h8", "80.6 h8", DiagnosticCodes.MissingUnit, "80.6 h8", "80.6 mm h8, ")]
    [InlineData("80.6 mm h8", "80.6 mm q8", DiagnosticCodes.MalformedTolerance, "q8", "")]
    [InlineData("80.6 mm h8", "80.6 mm H7/g6", DiagnosticCodes.MalformedTolerance, "80.6 mm H7/g6", "capital letter")]
    [InlineData("module: 2.5 mm\n", "module: 2.5 mm ±0.1\n", DiagnosticCodes.ToleranceNotAllowed, "±0.1\n      pressure", "2.5 mm")]
    [InlineData("module: 2.5 mm\n", "module: 2,5 mm\n", DiagnosticCodes.MalformedAmount, ",5 mm", "2.5")]
    [InlineData("teeth: 30", "teeth: -30", DiagnosticCodes.OutOfRange, "-30", null)]
    [InlineData("teeth: 30", "teeth: 0", DiagnosticCodes.OutOfRange, "0\n      module", null)]
    [InlineData("teeth: 30", "teeth: 10000", DiagnosticCodes.OutOfRange, "10000", null)]
    [InlineData("teeth: 30", "teeth: 99999999999999999999", DiagnosticCodes.OutOfRange, "99999999999999999999", null)]
    [InlineData("teeth: 30", "teeth: 30.5", DiagnosticCodes.NotAWholeNumber, "30.5", "digits")]
    [InlineData("teeth: 30", "teeth: 30.0", DiagnosticCodes.NotAWholeNumber, "30.0", "digits")]
    [InlineData("teeth: 30", "teeth: \"30\"", DiagnosticCodes.NotAWholeNumber, "\"30\"", "without quotes")]
    [InlineData("teeth: 30", "teeth: 0o36", DiagnosticCodes.NotAWholeNumber, "0o36", "decimal")]
    [InlineData("teeth: 30", "teeth: 030", DiagnosticCodes.NotAWholeNumber, "030", "octal")]
    [InlineData("teeth: 30", "teeth: 1:30", DiagnosticCodes.NotAWholeNumber, "1:30", "base 60")]
    [InlineData("teeth: 30", "teeth: thirty", DiagnosticCodes.NotAWholeNumber, "thirty", "digits")]
    [InlineData("teeth: 30", "teeth: .inf", DiagnosticCodes.NotFinite, ".inf", "Delete")]
    [InlineData("profile_shift: 0.10", "profile_shift: .nan", DiagnosticCodes.NotFinite, ".nan", "Delete")]
    [InlineData("profile_shift: 0.10", "profile_shift: 1e999", DiagnosticCodes.NotFinite, "1e999", "Delete")]
    [InlineData("profile_shift: 0.10", "profile_shift: 0,10", DiagnosticCodes.NotANumber, "0,10", "point")]
    [InlineData("profile_shift: 0.10", "profile_shift: 10 %", DiagnosticCodes.NotANumber, "10 %", "without a unit")]
    [InlineData("profile_shift: 0.10", "profile_shift: 3.5", DiagnosticCodes.OutOfRange, "3.5", null)]
    [InlineData("profile_shift: 0.10", "profile_shift: [0.10]", DiagnosticCodes.NotANumber, "[0.10]", null)]
    [InlineData("module: 2.5 mm\n", "module: .inf mm\n", DiagnosticCodes.NotFinite, ".inf", "Delete")]
    [InlineData("module: 2.5 mm\n", "module: .nan\n", DiagnosticCodes.NotFinite, ".nan", null)]
    [InlineData("module: 2.5 mm\n", "module: 60 mm\n", DiagnosticCodes.OutOfRange, "60 mm\n      pressure", null)]
    [InlineData("module: 2.5 mm\n", "module:\n", DiagnosticCodes.NullValue, "module:\n", "null")]
    [InlineData("module: 2.5 mm\n", "module: null\n", DiagnosticCodes.NullValue, "module: null\n", "null")]
    [InlineData("module: 2.5 mm\n", "module: 2.5 mm\n      diametral_pitch: 10\n", DiagnosticCodes.ExclusiveKeys, "diametral_pitch", "one")]
    [InlineData("      module: 2.5 mm\n", "", DiagnosticCodes.MissingKey, "input_sun:", "diametral_pitch")]
    [InlineData("pressure_angle: 20°", "pressure_angle: 45°", DiagnosticCodes.OutOfRange, "45°", null)]
    [InlineData("pressure_angle: 20°", "helix_angle: 60°\n      hand: left", DiagnosticCodes.OutOfRange, "60°", null)]
    [InlineData("pressure_angle: 20°", "helix_angle: -15°", DiagnosticCodes.OutOfRange, "-15°", "hand: left")]
    [InlineData("pressure_angle: 20°", "helix_angle: 15°", DiagnosticCodes.MissingKey, "helix_angle", "hand: left")]
    [InlineData("upper: -0.060 mm, lower: -0.100 mm", "upper: -0.100 mm, lower: -0.060 mm", DiagnosticCodes.AllowanceOrder, "-0.060 mm", "exchange")]
    [InlineData("upper: -0.060 mm", "upper: 0.060 mm", DiagnosticCodes.OutOfRange, "0.060 mm, lower", null)]
    [InlineData("on: input_shaft", "on: inptu_shaft", DiagnosticCodes.UnknownBody, "inptu_shaft", "input_shaft")]
    [InlineData("train:\n", "train:\n  output: carier\n", DiagnosticCodes.UnknownBody, "carier", "carrier")]
    [InlineData("train:\n", "train:\n  output: wheel\n", DiagnosticCodes.UnknownBody, "wheel\n", "sits on")]
    [InlineData("train:\n", "train:\n  fixed: [hosing]\n", DiagnosticCodes.UnknownBody, "hosing", "housing")]
    [InlineData("face_width: 24 mm ±0.1", "face_width: 1e300 mm", DiagnosticCodes.OutOfRange, "1e300 mm", null)]
    [InlineData("face_width: 24 mm ±0.1", "face_width: 101 m", DiagnosticCodes.OutOfRange, "101 m", null)]
    [InlineData("speed: 8200 rpm, torque: 190 N·m", "speed: 1e308 rpm, torque: 190 N·m", DiagnosticCodes.OutOfRange, "1e308 rpm", null)]
    [InlineData("speed: 8200 rpm, torque: 190 N·m", "speed: 8200 rpm, torque: 1e300 N·m", DiagnosticCodes.OutOfRange, "1e300 N·m", null)]
    [InlineData("duty:\n", "duty:\n  oil: {coldest: -273.16 °C}\n", DiagnosticCodes.OutOfRange, "-273.16 °C", null)]
    [InlineData("duty:\n", "duty:\n  oil: {hottest: 1e9 °C}\n", DiagnosticCodes.OutOfRange, "1e9 °C", null)]
    [InlineData("on: input_shaft", "on: 2nd", DiagnosticCodes.NotAName, "2nd", "letter")]
    [InlineData("on: input_shaft", "on: true", DiagnosticCodes.NotAName, "true\n      teeth", "letter")]
    [InlineData("gears: [input_sun, long]", "gears: [input_sun, input_sun]", DiagnosticCodes.SelfMesh, "input_sun]", "meshes with")]
    [InlineData("    - gears: [long, short]", "    - gears: [long, input_sun]", DiagnosticCodes.RepeatedMesh, "gears: [long, input_sun]", "other gear")]
    [InlineData("gears: [input_sun, long]", "gears: [input_sun, lnog]", DiagnosticCodes.UnknownGear, "lnog", "long")]
    [InlineData("gears: [input_sun, long]", "gears: [input_sun]", DiagnosticCodes.WrongCount, "[input_sun]", "pair")]
    [InlineData("gears: [input_sun, long]", "gears: [input_sun, long, short]", DiagnosticCodes.WrongCount, "[input_sun, long, short]", "pair")]
    [InlineData("material: carburised-9310\n", "material: carburized-9310\n", DiagnosticCodes.NotInCatalogue, "carburized-9310", "carburised-9310")]
    [InlineData("direction: both", "direction: botth", DiagnosticCodes.UnknownWord, "botth", "both")]
    [InlineData("marks_outward: true", "marks_outward: yes", DiagnosticCodes.NotATruthValue, "yes", "`true`")]
    [InlineData("marks_outward: true", "marks_outward: off", DiagnosticCodes.NotATruthValue, "off", "`false`")]
    [InlineData("marks_outward: true", "marks_outward: 'true'", DiagnosticCodes.NotATruthValue, "'true'", "without quotes")]
    [InlineData("variant: R180", "variant: true", DiagnosticCodes.NotText, "true\n  revision", "\"true\"")]
    [InlineData("variant: R180", "variant: ''", DiagnosticCodes.EmptyText, "''", "Write")]
    [InlineData("variant: R180", "variant: [R180]", DiagnosticCodes.NotText, "[R180]", null)]
    [InlineData("expires: 2027-03-31", "expires: 2027-02-30", DiagnosticCodes.NotADate, "2027-02-30", "2027-03-31")]
    [InlineData("expires: 2027-03-31", "expires: 31.3.2027", DiagnosticCodes.NotADate, "31.3.2027", "2027-03-31")]
    [InlineData("positions: [0°, 120°, 240°]", "positions: [0°, 180°]", DiagnosticCodes.WrongCount, "positions", "equally")]
    [InlineData("share: 20 %", "share: 10 %", DiagnosticCodes.SpectrumSum, "spectrum:", "shares")]
    [InlineData("target: 9/5", "target: 9/0", DiagnosticCodes.NotANumber, "9/0", "9/5")]
    [InlineData("target: 9/5", "target: -1.8", DiagnosticCodes.OutOfRange, "-1.8", null)]
    [InlineData("target: 9/5", "target: 1.8 mm", DiagnosticCodes.NotANumber, "1.8 mm", "without a unit")]
    [InlineData("tolerance: 0.2 %", "tolerance: 0.2 mm", DiagnosticCodes.UnitMismatch, "mm, sense", "ratio")]
    [InlineData("efficiency: 99.2 %", "efficiency: 110 %", DiagnosticCodes.OutOfRange, "110 %", null)]
    [InlineData("efficiency: 99.2 %", "efficiency: 99.2", DiagnosticCodes.MissingUnit, "99.2", "Write `99.2 %` or `9920 %`, whichever is meant.")]
    [InlineData("pawl: 1", "pawl: 2", DiagnosticCodes.OutOfRange, "2\nextends", null)]
    [InlineData("    - gears: [long, short]", "    - [long, short]", DiagnosticCodes.NotAMap, "[long, short]", null)]
    [InlineData("thickness_allowance: {upper: -0.060 mm, lower: -0.100 mm}", "thickness_allowance: -0.1 mm", DiagnosticCodes.NotAMap, "-0.1 mm", null)]
    [InlineData("  meshes:\n", "  meshes: all\n  x:\n", DiagnosticCodes.NotAList, "all\n", "[all]")]
    public void A_fault_is_named_at_its_place(string old, string @new, string code, string at, string? hint)
    {
        var text = Sample.Text.Replace(old, @new, StringComparison.Ordinal);
        Assert.NotEqual(Sample.Text, text);
        var load = Sample.Load(text);

        Assert.Null(load.Spec);
        var diagnostic = Assert.Single(load.Diagnostics, d => d.Code == code);
        Assert.Equal(Sample.Place(text, at), (diagnostic.Span.Start.Line, diagnostic.Span.Start.Column));
        Assert.Equal("r180.yaml", diagnostic.Span.File);
        if (hint is not null)
            Assert.Contains(hint, diagnostic.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_duplicate_key_names_the_first_place() => Assert.Contains(
        "line 8, column 9", Broken("target: 9/5,", "target: 9/5, target: 2,", DiagnosticCodes.DuplicateKey, "target: 2").Message, StringComparison.Ordinal);

    [Fact]
    public void Ten_thousand_teeth_are_answered_with_the_range() =>
        Assert.Contains("from 1 to 2000", Broken("teeth: 30", "teeth: 10000", DiagnosticCodes.OutOfRange, "10000").Message, StringComparison.Ordinal);

    [Fact]
    public void A_missing_unit_says_which_fit()
    {
        var diagnostic = Broken("mass: 0.35 kg", "mass: 0.35", DiagnosticCodes.MissingUnit, "0.35\n");

        Assert.Equal("train.planets.long_pinion.mass is a mass, but `0.35` has no unit.", diagnostic.Message);
        Assert.StartsWith("Which fit: 0.35 ", diagnostic.Hint, StringComparison.Ordinal);
        Assert.Contains("0.35 kg", diagnostic.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_train_without_an_input_is_refused_at_the_train()
    {
        var load = Sample.With("train:\n", "train:\n  input: null\n");

        var diagnostic = Assert.Single(load.Diagnostics);
        Assert.Equal(DiagnosticCodes.MissingKey, diagnostic.Code);
        Assert.Equal(Sample.Place(Sample.Text, "train:"), (diagnostic.Span.Start.Line, diagnostic.Span.Start.Column));
        Assert.Contains("`input`", diagnostic.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("input")]
    [InlineData("output")]
    public void Two_inputs_or_outputs_are_refused_in_so_many_words(string key)
    {
        var load = Sample.With("train:\n", $"train:\n  {key}: [input_shaft, carrier]\n");

        var diagnostic = Assert.Single(load.Diagnostics);
        Assert.Equal(DiagnosticCodes.NotAName, diagnostic.Code);
        Assert.Contains("a list of 2", diagnostic.Message, StringComparison.Ordinal);
        Assert.Contains("one input and one output", diagnostic.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_spec_without_a_train_is_read()
    {
        var text = "pawl: 1\ngearbox: {family: Tarn 180, variant: R1}\n";

        var load = Sample.Load(text);

        Assert.Empty(load.Diagnostics);
        Assert.Null(load.Spec!.Train);
    }

    [Fact]
    public void Two_rings_cannot_mesh() => Assert.Equal(
        [DiagnosticCodes.InternalPair],
        Sample.Load(Sample.Text
            .Replace("on: input_shaft\n", "on: input_shaft\n      internal: true\n", StringComparison.Ordinal)
            .Replace("long: {on: long_pinion,", "long: {on: long_pinion, internal: true,", StringComparison.Ordinal)).Diagnostics.Select(d => d.Code));

    [Theory]
    [InlineData("carrier: long_pinion", DiagnosticCodes.SelfCarried)]
    [InlineData("count: 25", DiagnosticCodes.OutOfRange)]
    [InlineData("count: 0", DiagnosticCodes.OutOfRange)]
    public void A_planet_set_has_a_carrier_and_up_to_24_planets(string line, string code) =>
        Assert.Equal(code, Sample.With("      positions: [0°, 120°, 240°]\n", $"      {line}\n").Diagnostics[0].Code);

    [Theory]
    [InlineData("running: 120 °C")]
    [InlineData("running: -20 °C")]
    [InlineData("running: 80 °C, coldest: 85 °C")]
    public void Oil_temperatures_ascend(string oil) =>
        Assert.Equal([DiagnosticCodes.TemperatureOrder], Sample.With("duty:\n", $"duty:\n  oil: {{{oil}}}\n").Diagnostics.Select(d => d.Code));

    [Fact]
    public void Every_fault_of_a_file_is_named_in_one_run_in_the_order_of_the_file()
    {
        var text = Sample.Text
            .Replace("variant: R180", "varaint: R180\n  variant: R180", StringComparison.Ordinal)
            .Replace("teeth: 30", "teeth: many", StringComparison.Ordinal)
            .Replace("tip_chamfer: 0.2 mm", "tip_chamfer: 0.2", StringComparison.Ordinal)
            .Replace("expires: 2027-03-31", "expires: soon", StringComparison.Ordinal);

        Assert.Equal(
            [DiagnosticCodes.UnknownKey, DiagnosticCodes.NotAWholeNumber, DiagnosticCodes.MissingUnit, DiagnosticCodes.NotADate],
            Sample.Load(text).Diagnostics.Select(d => d.Code));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_culture_of_the_desk_changes_nothing(string culture)
    {
        var broken = Sample.Text
            .Replace("teeth: 30", "TEETH: 30", StringComparison.Ordinal)
            .Replace("profile_shift: 0.10", "profile_shift: 3.5", StringComparison.Ordinal)
            .Replace("share: 20 %", "share: 10.5 %", StringComparison.Ordinal)
            .Replace("marks_outward: true", "marks_outward: I", StringComparison.Ordinal);
        var before = CultureInfo.CurrentCulture;
        var expected = (Sample.Load(Sample.Text), Sample.Load(broken));
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            var sound = Sample.Load(Sample.Text);

            Assert.Equal(2.5, sound.Spec!.Train!.Gears.Find("input_sun")!.Module!.Value.Coherent);
            Assert.Equal(0.10, sound.Spec.Train.Gears.Find("input_sun")!.ProfileShift!.Value);
            Assert.Equal(new DateOnly(2027, 3, 31), sound.Spec.Concessions[0].Expires.Value);
            Assert.Equal(expected.Item2.Diagnostics, Sample.Load(broken).Diagnostics);
            Assert.NotEmpty(expected.Item2.Diagnostics);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Every_code_has_its_entry_and_every_entry_its_code()
    {
        var codes = typeof(DiagnosticCodes).GetFields().Select(field => (string)field.GetRawConstantValue()!).Order(StringComparer.Ordinal);

        Assert.Equal(codes, DiagnosticCatalogue.All.Select(entry => entry.Code));
        Assert.All(DiagnosticCatalogue.All, entry => Assert.False(
            string.IsNullOrWhiteSpace(entry.Title) || string.IsNullOrWhiteSpace(entry.Meaning) || string.IsNullOrWhiteSpace(entry.Mend)
            || string.IsNullOrWhiteSpace(entry.Example), entry.Code));
        Assert.All(DiagnosticCatalogue.All, entry => Assert.Same(entry, DiagnosticCatalogue.Find(entry.Code)));
        Assert.Null(DiagnosticCatalogue.Find("spec/none-such"));
    }

    [Fact]
    public void No_code_is_written_out_beside_the_list_of_codes()
    {
        var source = Path.Combine(Sample.Repository(), "src", "Pawl.Specs");
        var strays = Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && Path.GetFileName(file) != "DiagnosticCodes.cs")
            .Where(file => File.ReadAllText(file, Encoding.UTF8) is var text && (text.Contains("\"spec/", StringComparison.Ordinal) || text.Contains("\"yaml/", StringComparison.Ordinal)));

        Assert.Empty(strays.Select(Path.GetFileName));
    }
}
