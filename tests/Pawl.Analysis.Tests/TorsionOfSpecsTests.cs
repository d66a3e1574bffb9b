namespace Pawl.Analysis.Tests;

/// <summary>Torsional vibration of a spec: what the gearbox weighs, the springs, the two natural frequencies, and what excites them.</summary>
public class TorsionOfSpecsTests
{
    // A simple set 20-25-70, i = 4.5, planets at 45 mm; a shaft on the input alone, so that every number can be worked by hand.
    private const string Shafts =
        "shafts: {in: {body: input, from: -50 mm, material: EN-42CrMo4, tensile: 900 MPa, yield: 700 MPa, "
        + "sections: {end: {length: 40 mm, outside: 30 mm, roughness: 6.3 µm}, seat: {length: 30 mm, outside: 20 mm, roughness: 6.3 µm}}}}";

    private static GearboxAnalysis Of(
        string input = ", inertia: 0.02 kg·m², stiffness: 4000 N·m/rad", string output = "output: {inertia: 0.5 kg·m², stiffness: 9000 N·m/rad}",
        string carrier = "carrier: {material: EN-42CrMo4, inertia: 0.004 kg·m²}", string shafts = Shafts, string planet = ", mass: 0.2 kg") =>
        SpecText.Analyse(SpecText.Simple(
            duty: $$$"""
                duty:
                  input: {speed: 1500 rpm, torque: 60 N·m, direction: one{{{input}}}}
                  {{{output}}}
                  spectrum: [{share: 100 %, torque: 60 N·m, speed: 3000 rpm}]
                {{{shafts}}}
                """,
            gears: "module: 2 mm, profile_shift: 0, face_width: 20 mm, axial_position: 0 mm", mesh: ", efficiency: 100 %, centre_distance: 45 mm js7",
            extraTrain: $$$"""bodies: {{{{carrier}}}, housing: {material: EN-42CrMo4}}""")
            .Replace("planet: {carrier: carrier, count: 3}", $$$"""planet: {carrier: carrier, count: 3{{{planet}}}}""", StringComparison.Ordinal));

    // Solid discs between tip and root: d_m = (44 + 35)/2 of the sun, (54 + 45)/2 of the planet; J = π/32·7.85e-6·20·d_m⁴ kg·mm².
    private const double Steel = Math.PI / 32 * 7.85e-6;

    private static readonly double Sun = Steel * 20 * Math.Pow(39.5, 4);

    private static readonly double Planet = Steel * 20 * Math.Pow(49.5, 4);

    // The shaft lies from −50 to 20 mm, the sun from −10 to 10 mm: all of `end` counts, and of `seat` the 10 mm beyond the sun.
    [Fact]
    public void Sections_count_beside_the_teeth_and_gears_where_they_are()
    {
        var analysis = Of();

        Assert.Equal(20, analysis.Value("shafts.in.seat", "length_under_gears"), 1e-9);
        Assert.Equal(0, analysis.Value("shafts.in.end", "length_under_gears"), 1e-9);
        Assert.Equal(Sun + Steel * (40 * Math.Pow(30, 4) + 10 * Math.Pow(20, 4)), analysis.Value("bodies.input", "moment_of_inertia"), 1e-6);
    }

    // ω_c/ω_in = 1/4.5; the planet turns by Willis at n_c·(1 − 70/25) = −0.4 of the input. Equal kinetic energy, by hand.
    [Fact]
    public void Planets_count_with_their_turns_and_their_path()
    {
        var analysis = Of();

        Assert.Equal(45, analysis.Value("bodies.planet", "orbit_radius"), 1e-9);
        Assert.Equal(3 * (Planet * 0.4 * 0.4 + 0.2 * 45 * 45 / (4.5 * 4.5)), analysis.Value("bodies.planet", "reduced_inertia"), 1e-6);
        Assert.Equal(4000 / (4.5 * 4.5), analysis.Value("bodies.carrier", "reduced_inertia"), 1e-6);
        Assert.Equal(
            analysis.Value("bodies.input", "reduced_inertia") + analysis.Value("bodies.planet", "reduced_inertia") + 4000 / (4.5 * 4.5),
            analysis.Value("train", "gearbox_inertia"), 1e-6);
    }

    // Torsion of round bars, G of the catalogue's E and ν: 1/k = 1/4000 + Σ 32·l/(π·G·d⁴). No shaft is stated on the output: the coupling alone.
    [Fact]
    public void Springs_in_a_row_and_behind_the_ratio()
    {
        var analysis = Of();
        var rigidity = analysis.Value("shafts.in", "elastic_modulus") / (2 * (1 + analysis.Value("shafts.in", "poisson_ratio")));
        var twist = 32 / (Math.PI * rigidity) * (40 / Math.Pow(30, 4) + 30 / Math.Pow(20, 4)) * 1e3;

        Assert.Equal(1 / (1 / 4000.0 + twist), analysis.Value("train", "input_stiffness"), 1e-6);
        Assert.Equal(9000, analysis.Value("train", "output_stiffness"), 1e-9);
        Assert.Equal(9000 / (4.5 * 4.5), analysis.Value("train", "reduced_output_stiffness"), 1e-9);
        Assert.Equal(0.5 / (4.5 * 4.5), analysis.Value("train", "reduced_output_inertia"), 1e-12);
    }

    // Both frequencies make the determinant of the three equations of motion zero; written out by Sarrus, in kg·m² and N·m/rad.
    [Fact]
    public void Both_frequencies_make_the_determinant_zero()
    {
        var analysis = Of();
        double Value(string name) => analysis.Value("train", name);
        var (j1, j2, j3) = (Value("input_inertia"), Value("gearbox_inertia") * 1e-6, Value("reduced_output_inertia"));
        var (k1, k2) = (Value("input_stiffness"), Value("reduced_output_stiffness"));

        foreach (var name in new[] { "first_torsional_frequency", "second_torsional_frequency" })
        {
            var square = Math.Pow(Value(name) * Math.Tau, 2);
            var (a, b, c) = (k1 - j1 * square, k1 + k2 - j2 * square, k2 - j3 * square);
            Assert.Equal(0, (a * b * c - a * k2 * k2 - c * k1 * k1) / (k1 * k1 * k2), 1e-9);
        }
    }

    // Orders: 1, 2, 1/4.5, 2/4.5 and 20·(1 − 1/4.5) = 15.556 of either mesh, at 25 and 50 Hz.
    [Fact]
    public void The_nearest_excitation_of_all_speeds_is_told()
    {
        var analysis = Of();
        double[] natural = [analysis.Value("train", "first_torsional_frequency"), analysis.Value("train", "second_torsional_frequency")];
        var least = natural.Min(f => new[] { 25.0, 50 }.Min(n => new[] { 1, 2, 1 / 4.5, 2 / 4.5, 20 * 3.5 / 4.5 }.Min(o => Math.Abs(o * n - f) / f)));

        Assert.Equal(20 * 3.5 / 4.5, analysis.Value("meshes.sun~planet_gear", "mesh_order"), 1e-9);
        Assert.Equal(20 * 3.5 / 4.5, analysis.Value("meshes.planet_gear~ring", "mesh_order"), 1e-9);
        Assert.Equal(100 * least, analysis.Value("train", "torsional_separation"), 1e-9);
        Assert.Contains(FormattableString.Invariant($"beside {natural[0]:0.#} Hz"), analysis.Quantity("train", "nearest_excitation").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_inertia_of_a_machine_nothing_is_asked()
    {
        var analysis = Of(input: "", output: "output: {max_lash: 60′}", shafts: "", planet: "", carrier: "carrier: {material: EN-42CrMo4}");

        foreach (var (path, name) in new[] { ("train", "torsional_separation"), ("train", "gearbox_inertia"), ("bodies.carrier", "moment_of_inertia") })
            Assert.Null(analysis.Subject(path).Find(analysis.Subject(path).Kind.Find(name)!));
    }

    // What is lacking is named, each by its key.
    [Fact]
    public void What_is_lacking_is_named_by_its_key()
    {
        Assert.Contains("duty.output.inertia is not stated", Reasons(Of(output: "output: {max_lash: 60′}")));
        Assert.Contains("duty.input.inertia is not stated", Reasons(Of(input: "")));
        Assert.Contains("train.planets.planet.mass is not stated", Reasons(Of(planet: "")));
        Assert.Contains("train.bodies.carrier.inertia is not stated, and carrier has neither gears nor sections of a shaft", Reasons(Of(carrier: "carrier: {material: EN-42CrMo4}")));
        Assert.Contains("neither duty.output.stiffness nor the sections of a shaft on carrier are stated", Reasons(Of(output: "output: {inertia: 0.5 kg·m²}")));
    }

    private static System.Collections.Immutable.ImmutableArray<string> Reasons(GearboxAnalysis analysis) => analysis.Quantity("train", "torsional_separation").Reasons;
}
