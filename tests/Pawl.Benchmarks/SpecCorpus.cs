using System.Text;

namespace Pawl.Benchmarks;

/// <summary>
/// Specs of about 250 lines each: the meshed-pair train of the demo range written out in full, with names and numbers that vary by a
/// fixed sequence, so that every run on every machine has the same files.
/// </summary>
internal static class SpecCorpus
{
    /// <summary>Writes a project with so many specs; folder and files are new.</summary>
    public static void Write(string root, int specs, int houseRules = 0)
    {
        if (Directory.Exists(root))
            Directory.Delete(root, recursive: true);
        Directory.CreateDirectory(Path.Combine(root, "specs", "catalogue"));
        File.WriteAllText(
            Path.Combine(root, "pawl.yaml"),
            "pawl: 1\nspecs:\n  - specs/*.yaml\ncatalogues:\n  - specs/catalogue/*.yaml\n" + (houseRules > 0 ? "rules:\n  - house\n" : ""));
        File.WriteAllText(Path.Combine(root, "specs", "catalogue", "all.yaml"), Catalogue);
        for (var i = 0; i < specs; i++)
            File.WriteAllText(Path.Combine(root, "specs", string.Create(CultureInfo.InvariantCulture, $"v{i:00000}.yaml")), Text(i));
        if (houseRules > 0)
        {
            Directory.CreateDirectory(Path.Combine(root, "house"));
            File.WriteAllText(Path.Combine(root, "house", "house.yaml"), Rules(houseRules));
        }
    }

    /// <summary>One variant with so many more rings on one planet.</summary>
    public static string Rings(int rings)
    {
        var each = Enumerable.Range(0, rings).ToArray();
        string All(Func<int, FormattableString> line) => string.Concat(each.Select(i => line(i).ToString(CultureInfo.InvariantCulture) + "\n"));
        return "pawl: 1\ngearbox: {family: Corpus, variant: Rings}\nduty: {input: {speed: 1450 rpm, torque: 30 N·m}}\ntrain:\n  input: input\n  output: carrier\n"
            + "  fixed: [housing]\n  planets: {planet: {carrier: carrier, count: 3}}\n  bodies:\n"
            + All(i => $"    wheel_{i}: {{}}")
            + "  gears:\n    sun: {on: input, teeth: 20, module: 2 mm}\n    planet_gear: {on: planet, teeth: 25, module: 2 mm}\n    ring: {on: housing, teeth: 70, internal: true, module: 2 mm}\n"
            + All(i => $"    ring_{i}: {{on: wheel_{i}, teeth: 70, internal: true, module: 2 mm}}")
            + "  meshes:\n    - gears: [sun, planet_gear]\n    - gears: [planet_gear, ring]\n"
            + All(i => $"    - gears: [planet_gear, ring_{i}]");
    }

    /// <summary>One variant with so many flanges.</summary>
    public static string Flanges(int flanges) => Text(0) + "joints:\n" + string.Concat(Enumerable.Range(0, flanges).Select(i => FormattableString.Invariant(
        $"  flange_{i}: {{kind: flange, torque: 100 N·m, thread: M6, strength: 8.8, bolts: 8, bolt_circle: 90 mm, head: socket, length: 25 mm, width: 14 mm, clamped: [{{material: light, thickness: 12 mm}}], tapped: {{material: light, depth: 16 mm, boss: 16 mm}}, friction: {{min: 0.10, max: 0.14}}, tightening: {{torque: 9 N·m, method: torque wrench with friction measured}}, roughness: 6.3 µm, face_friction: 0.12}}\n")));

    /// <summary>A project of one spec.</summary>
    public static void Write(string root, string text)
    {
        Write(root, 0);
        File.WriteAllText(Path.Combine(root, "specs", "one.yaml"), text);
    }

    public static string Text(int number)
    {
        // A fixed linear congruence (Numerical Recipes, from memory) in place of a random generator, which may change.
        var state = (uint)number * 1_664_525 + 1_013_904_223;
        int Next(int below)
        {
            state = state * 1_664_525 + 1_013_904_223;
            return (int)((state >> 16) % (uint)below);
        }

        var text = new StringBuilder(8192);
        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        var speed = 2000 + (100 * Next(40));
        var torque = 40 + (5 * Next(20));
        Line($"# Written by the benchmark: variant {number}.");
        Line($"pawl: 1");
        Line($"gearbox:\n  family: Corpus {number % 7}\n  variant: V{number:00000}\n  revision: A\n  description: Generated variant {number}");
        Line($"ratio:\n  target: 9/5\n  tolerance: 0.2 %\n  sense: same");
        Line($"duty:\n  input:\n    speed: {speed} rpm\n    torque: {torque} N·m\n    direction: both\n  service_life: {1000 + (500 * Next(10))} h");
        Line($"  application_factor: 1.25\n  oil:\n    lubricant: oil\n    running: 80 °C\n    coldest: -15 °C\n    hottest: 110 °C\n  spectrum:");
        for (var bin = 0; bin < 20; bin++)
            Line($"    - share: 5 %\n      torque: {torque - bin} N·m\n      speed: {speed - (20 * bin)} rpm");
        Line($"tolerances:\n  general: m");
        Line($"train:\n  input: input_shaft\n  output: carrier\n  fixed: [housing]\n  bodies:");
        Line($"    housing:\n      material: light\n      floating: false\n      running: 75 °C");
        Line($"    carrier:\n      material: steel\n  planets:");
        Line($"    long_pinion:\n      carrier: carrier\n      count: 3\n      insertion: axial\n      mass: 0.{30 + Next(20)} kg");
        Line($"    short_pinion:\n      carrier: carrier\n      count: 3\n      insertion: axial\n      mass: 0.{20 + Next(10)} kg\n  gears:");
        var width = 20 + Next(8);
        Gear("input_sun", "input_shaft", 30, width, 20);
        Gear("long", "long_pinion", 18, width * 2 + 4, 33);
        Gear("short", "short_pinion", 18, width, 46);
        Gear("held_sun", "housing", 24, width, 46);
        Line($"  meshes:");
        Mesh("input_sun", "long", "60");
        Mesh("long", "short", "45");
        Mesh("short", "held_sun", "52.5");
        return text.ToString();

        void Gear(string name, string on, int teeth, int faceWidth, int place)
        {
            Line($"    {name}:\n      on: {on}\n      teeth: {teeth}\n      module: 2.5 mm\n      pressure_angle: 20°\n      profile_shift: 0.0");
            Line($"      addendum: 1\n      dedendum: 1.25\n      root_fillet: 0.38\n      face_width: {faceWidth} mm ±0.1\n      axial_position: {place} mm");
            Line($"      tip_chamfer: 0.2 mm\n      thickness_allowance:\n        upper: -0.0{50 + Next(9)} mm\n        lower: -0.0{70 + Next(9)} mm");
            Line($"      ball_diameter: 4.5 mm\n      rim_thickness: {8 + Next(4)} mm\n      material: steel\n      surface: case-hardened");
        }

        void Mesh(string first, string second, string distance)
        {
            Line($"    - gears: [{first}, {second}]\n      centre_distance: {distance} mm js7\n      friction: 0.0{5 + Next(3)}");
            Line($"      min_backlash: 0.02 mm\n      max_backlash: 0.4 mm");
        }
    }

    private static string Rules(int count)
    {
        var text = new StringBuilder("pack: house\nversion: 1.0.0\ntitle: Rules of the benchmark\nrules:\n");
        for (var i = 0; i < count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $$"""
                  - id: house/rule-{{i:0000}}
                    title: Rule {{i}} of the benchmark
                    applies_to: mesh
                    measure: centre_distance
                    at_least: {{1 + (i % 10)}} mm
                    severity: note
                    source: {method: closed form, limit: "common practice, no source"}
                    why: It measures how the time grows with the number of rules.
                    mend: Nothing needs mending.
                    examples:
                      - {given: {centre_distance: 60 mm}, outcome: conforms}

                """).Replace("\r\n", "\n");
        }

        return text.ToString();
    }

    private const string Catalogue = """
        pawl: 1
        catalogue: Catalogue of the benchmark
        materials:
          steel:
            title: Steel
            elastic_modulus: 206 GPa
            poisson_ratio: 0.3
            thermal_expansion: 11.5 µm/(m·K)
            density: 7850 kg/m³
            source: Invented for the benchmark
            certainty: invented
          light:
            title: Light alloy
            elastic_modulus: 72 GPa
            poisson_ratio: 0.33
            thermal_expansion: 21 µm/(m·K)
            density: 2680 kg/m³
            source: Invented for the benchmark
            certainty: invented
        lubricants:
          oil:
            title: Gear oil
            kind: oil
            viscosity_40: 100 mm²/s
            viscosity_100: 11.2 mm²/s
            source: Invented for the benchmark
            certainty: invented

        """;
}
