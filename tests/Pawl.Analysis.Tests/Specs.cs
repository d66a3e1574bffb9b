using System.Runtime.CompilerServices;
using System.Text;
using Pawl.Analysis.Core;
using Pawl.Specs;

namespace Pawl.Analysis.Tests;

/// <summary>Specs for tests, read by the real reader.</summary>
internal static class SpecText
{
    public static string Root { get; } = FindRoot();

    private static readonly SpecLoader Loader = new(Root, ["specs/catalogue/materials.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/bearings.yaml"],
        adapterPaths: ["specs/adapters/motor-flange-a.yaml", "specs/adapters/shaft-coupling-b.yaml", "specs/adapters/mount-c.yaml"]);

    /// <summary>A simple planetary set; null leaves a key out.</summary>
    public static string Simple(
        int sun = 20, int planet = 25, int ring = 70, int count = 3, string input = "input", string output = "carrier",
        string held = "housing", string extraTrain = "", string duty = Duty, string sunOn = "input", string ringOn = "housing",
        string gears = "module: 2 mm, profile_shift: 0", string mesh = "")
        => $$$"""
        pawl: 1
        gearbox: {family: Test, variant: Simple}
        {{{duty}}}
        train:
          input: {{{input}}}
          output: {{{output}}}
          fixed: [{{{held}}}]
          {{{extraTrain}}}
          planets:
            planet: {carrier: carrier, count: {{{count}}}}
          gears:
            sun: {on: {{{sunOn}}}, teeth: {{{sun}}}, {{{gears}}}}
            planet_gear: {on: planet, teeth: {{{planet}}}, {{{gears}}}}
            ring: {on: {{{ringOn}}}, teeth: {{{ring}}}, internal: true, {{{gears}}}}
          meshes:
            - {gears: [sun, planet_gear]{{{mesh}}}}
            - {gears: [planet_gear, ring]{{{mesh}}}}
        """;

    public const string Duty = "duty: {input: {speed: 1450 rpm, torque: 30 N·m}}";

    /// <summary>Two parallel shafts with one pair of gears.</summary>
    public static string Pair(string first, string second, string mesh = "", string more = "") =>
        $$$"""
        pawl: 1
        gearbox: {family: Test, variant: Pair}
        duty:
          input: {speed: 1500 rpm, torque: 40 N·m}
          oil: {running: 70 °C, coldest: 20 °C, hottest: 70 °C}
        {{{more}}}
        train:
          input: shaft_1
          output: shaft_2
          fixed: [housing]
          bodies: {housing: {material: wrought-6082}}
          gears:
            pinion: {on: shaft_1, {{{first}}}}
            wheel: {on: shaft_2, {{{second}}}}
          meshes:
            - {gears: [pinion, wheel]{{{mesh}}}}
        """;

    public static GearboxAnalysis Analyse(string yaml)
    {
        var load = Loader.Load("test.yaml", Encoding.UTF8.GetBytes(yaml));
        Assert.True(load.Spec is not null, string.Join('\n', load.Diagnostics));
        return GearboxAnalyser.Analyse(load.Spec);
    }

    /// <summary>A shipped variant with some keys changed.</summary>
    public static GearboxAnalysis AnalyseChanged(string path, string changes)
    {
        var load = Loader.Load($"{Path.GetDirectoryName(path)}/changed.yaml", Encoding.UTF8.GetBytes($"pawl: 1\nextends: {Path.GetFileName(path)}\ngearbox: {{variant: Changed}}\n{changes}\n"));
        Assert.True(load.Spec is not null, string.Join('\n', load.Diagnostics));
        return GearboxAnalyser.Analyse(load.Spec);
    }

    public static GearboxAnalysis AnalyseFile(string path)
    {
        var load = Loader.Load(path);
        Assert.True(load.Spec is not null, string.Join('\n', load.Diagnostics));
        return GearboxAnalyser.Analyse(load.Spec);
    }

    public static Subject Subject(this GearboxAnalysis analysis, string path) =>
        Assert.Single(analysis.Subjects, subject => subject.Path == path);

    /// <summary>The quantity of that name, in the unit of reports.</summary>
    public static double Value(this GearboxAnalysis analysis, string path, string quantity)
    {
        var found = analysis.Quantity(path, quantity);
        Assert.True(found.IsEvaluated, $"{path}.{quantity}: {string.Join("; ", found.Reasons)}");
        return found.Kind.Unit.FromCoherent(found.Value.Nominal);
    }

    public static Quantity Quantity(this GearboxAnalysis analysis, string path, string quantity)
    {
        var subject = analysis.Subject(path);
        var kind = subject.Kind.Find(quantity);
        Assert.True(kind is not null, $"{subject.Kind} has no {quantity}");
        return subject[kind];
    }

    /// <summary>Whether the subject has the quantity, with a value or not evaluated.</summary>
    public static bool Has(this GearboxAnalysis analysis, string path, string quantity)
    {
        var subject = analysis.Subject(path);
        var kind = subject.Kind.Find(quantity);
        Assert.True(kind is not null, $"{subject.Kind} has no {quantity}");
        return subject.Find(kind) is not null;
    }

    private static string FindRoot([CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", ".."));
}
