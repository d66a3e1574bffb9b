namespace Pawl.Analysis.Tests;

/// <summary>A planetary set rated from its numbers to every safety factor, with all that stands between.</summary>
/// <remarks>
/// Worked from the formulas of ISO 6336 in another language: the fillet of the ring was drawn as the envelope of the cutter's tip
/// rounding, damage sums were solved by halving. 1e-5 of each value for the digits written here; 1e-4 where the drawn fillet enters.
/// <code>
/// z 20/25/70, m 2 mm, x 0.1/−0.1/0.1, a = 45 mm, b 22/20/24 → 20 mm in common; ring cut by 20 teeth, d_a0 44.6 mm, ρ_a0 0.4 mm
/// 60 N·m at 1500 1/min, three planets, 99 % in the sun's mesh: F_t = 2·60 000/(40·3) = 1000 N, then 990 N
/// ring held: n_c = 333.33, sun relative 1166.67 1/min: v = π·40·1166.67/60 000 = 2.443461 m/s
/// 8000 h: sun 3·1166.67·60·8000 = 1.68e9, planet 1166.67·20/25·60·8000 = 4.48e8, ring 3·333.33·60·8000 = 4.8e8 contacts
/// w_t = 1000·1.08·1.25/20 = 67.5 N/mm, so c′ = 14·0.675^0.25 = 12.6898 N/(mm·µm), and K_v reckons with 100 N/mm
/// s = v·20/100·√(1.25²/(1 + 1.25²)) = 0.381604 m/s: K_v = 1 + (0.149 + 0.0193)·s·(2.071 − 0.357·s) = 1.124259, grade 6
/// method B: m*_sun 5.530, m*_planet 8.115 g/mm; 1/m_red = 3/m*_sun + 1/m*_planet, against the held ring m*_planet; n_E1 of z_1
/// B_p = c′·f_pb·(1 − 0.075)/w_t with f_pT 5.85 or 11.88 µm; C_ay 2.00 µm, of the soft ring 7.68 µm; the ring of grade 7: B_k = 1
/// F_βx 7 µm, both case-hardened: y_β = 0.15·7; F_βy = 5.95 µm, c_γβ = 0.85·c′·(0.75·ε_α + 0.25): q = 0.6065, K_Hβ = 1.606507
/// sun R = −1.2·25/60 = −0.5: Y_M = 1/(1 + 0.5·(1 − M)/(1 + M)), M = 0.8 − 0.15·Y_S; planet R = −1.2
/// ring 300 HV: σ_Hlim = 1.313·300 + 373, σ_Flim = 0.425·300 + 187; Z_W = 1.2 − 170/1700 = 1.1, R_zH = 2.42 µm counts as 3 µm
/// two shares of the life: 25 % at 60 N·m and 1000 1/min, 75 % at 40 N·m and 1500 1/min, K factors for each; peak 130 N·m without K_A
/// </code>
/// </remarks>
public class HandRatedSetTests
{
    private const string Hard =
        "accuracy_grade: 6, rim_thickness: 20 mm, roughness: {flank_rz: 3 µm, root_rz: 10 µm}, material: EN-18CrNiMo7-6, "
        + "heat_treatment: {treatment: case-hardened, quality: MQ, surface_hardness: 60 HRC, core_hardness: 35 HRC}";

    private const string Yaml =
        $$$"""
        pawl: 1
        gearbox: {family: Test, variant: Worked}
        duty:
          service_life: 8000 h
          application_factor: 1.25
          input: {speed: 1500 rpm, torque: 60 N·m, peak_torque: 130 N·m, direction: both, reverse_torque: 25 N·m}
          oil: {lubricant: gear-oil-vg220, running: 70 °C, coldest: 20 °C, hottest: 70 °C}
          spectrum: [{share: 25 %, torque: 60 N·m, speed: 1000 rpm}, {share: 75 %, torque: 40 N·m, speed: 1500 rpm}]
        train:
          input: input
          output: carrier
          fixed: [housing]
          planets: {planet: {carrier: carrier, count: 3, load_sharing: 1.08}}
          gears:
            sun: {on: input, teeth: 20, module: 2 mm, profile_shift: 0.1, face_width: 22 mm ±0, axial_position: 0 mm ±0, {{{Hard}}}}
            planet_gear: {on: planet, teeth: 25, module: 2 mm, profile_shift: -0.1, face_width: 20 mm ±0, axial_position: 0 mm ±0, {{{Hard}}}}
            ring:
              on: housing
              teeth: 70
              internal: true
              module: 2 mm
              profile_shift: 0.1
              addendum: 0.8
              face_width: 24 mm ±0
              axial_position: 0 mm ±0
              cutter: {teeth: 20, tip_diameter: 44.6 mm, tip_radius: 0.4 mm}
              accuracy_grade: 7
              rim_thickness: 20 mm
              roughness: {flank_rz: 6 µm, root_rz: 16 µm}
              material: EN-42CrMo4
              heat_treatment: {treatment: through-hardened, quality: MQ, surface_hardness: 300 HV, yield_strength: 800 MPa}
          meshes:
            - {gears: [sun, planet_gear], efficiency: 99 %, misalignment: 7 µm}
            - {gears: [planet_gear, ring], efficiency: 100 %, misalignment: 9 µm}
        """;

    private static readonly Lazy<GearboxAnalysis> Rated = new(() => SpecText.Analyse(Yaml));

    [Theory]
    [InlineData("transverse_contact_ratio", 1.5790916, 1.7405479)]
    [InlineData("tangential_force", 1000, 990)]
    [InlineData("pitch_line_speed", 2.4434610, 2.4434610)]
    [InlineData("line_load", 67.5, 66.825)]
    [InlineData("dynamic_parameter", 0.38160449, 0.57527740)]
    [InlineData("dynamic_factor", 1.1242586, 1.3083454)]
    [InlineData("reduced_mass", 0.0015021502, 0.0081154090)]
    [InlineData("resonance_speed", 52557.479, 18813.956)]
    [InlineData("resonance_ratio", 0.022197920, 0.049608564)]
    [InlineData("resonance_limit", 0.78755434, 0.78611296)]
    [InlineData("run_in_relief", 1.9953716, 4.8357975)]
    [InlineData("pitch_force", 1.3519126, 1.8147067)]
    [InlineData("profile_force", 1.5001572, 1.9831886)]
    [InlineData("stiffness_force", 0.62487674, 1)]
    [InlineData("dynamic_factor_b", 1.0241155, 1.0736682)]
    [InlineData("dynamic_factor_c", 1.1242586, 1.3083454)]
    [InlineData("face_load_factor", 1.6065066, 1.6170410)]
    [InlineData("transverse_load_factor", 1.0496561, 1.2476806)]
    [InlineData("transverse_load_factor_bending", 1.0496561, 1.2476806)]
    [InlineData("face_load_factor_bending", 1.4500981, 1.4575470)]
    [InlineData("zone_factor", 2.4945732, 2.4945732)]
    [InlineData("elasticity_factor", 189.81170, 189.81170)]
    [InlineData("contact_ratio_factor", 0.89831480, 0.86784256)]
    [InlineData("nominal_contact_stress", 638.02697, 327.81967)]
    [InlineData("reduced_radius", 3.8002238, 13.300784)]
    [InlineData("lubricant_factor", 1.0199972, 1.0377725)]
    [InlineData("speed_factor", 0.96755609, 0.93047733)]
    [InlineData("roughness_factor", 0.97452932, 0.95450932)]
    public void Loads_and_contact_of_both_meshes(string quantity, double sun, double ring)
    {
        Near(sun, "meshes.sun~planet_gear", quantity, 1e-5);
        Near(ring, "meshes.planet_gear~ring", quantity, 1e-5);
    }

    // Teeth are alike on both flanks: with the rated torque from the output at the rated speed the stresses are those of the drive, worked above.
    [Theory]
    [InlineData("coast_contact_stress", 1042.7736, 1020.7134, 707.66518)]
    [InlineData("coast_root_stress", 151.59454, 173.32044, 215.68680)]
    public void While_the_output_drives_the_other_flanks_are_stressed_alike(string quantity, double sun, double planet, double planetAtRing)
    {
        var analysis = SpecText.Analyse(Yaml.Replace("  service_life: 8000 h", "  coast: {torque: 60 N·m}\n  service_life: 8000 h", StringComparison.Ordinal));

        Assert.Equal(sun, analysis.Value("meshes.sun~planet_gear.sun", quantity), sun * 1e-5);
        Assert.Equal(planet, analysis.Value("meshes.sun~planet_gear.planet_gear", quantity), planet * 1e-5);
        Assert.Equal(planetAtRing, analysis.Value("meshes.planet_gear~ring.planet_gear", quantity), planetAtRing * 1e-5);
    }

    // In turn: the sun, the planet against the sun, the planet against the ring.
    [Theory]
    [InlineData("single_contact_factor", 1.0216126, 1, 1.1435430)]
    [InlineData("contact_stress", 1042.7736, 1020.7134, 707.66518)]
    [InlineData("contact_strength", 1442.6511, 1442.6511, 1382.5454)]
    [InlineData("load_cycles", 1.68e9, 4.48e8, 4.48e8)]
    [InlineData("contact_safety", 1.3159724, 1.4000407, 1.9461334)]
    [InlineData("peak_contact_safety", 1.9381914, 1.9800807, 2.9414772)]
    [InlineData("root_chord", 4.0046704, 3.9302184, 3.9302184)]
    [InlineData("bending_arm", 2.0447083, 2.1884245, 1.8696279)]
    [InlineData("root_radius", 1.0757162, 1.1912887, 1.1912887)]
    [InlineData("form_factor", 1.5295833, 1.7123960, 1.4819788)]
    [InlineData("stress_correction", 1.8876380, 1.7525128, 1.8307294)]
    [InlineData("root_face_width", 22, 20, 20)]
    [InlineData("nominal_root_stress", 65.620447, 75.024896, 67.149281)]
    [InlineData("root_stress", 151.59454, 173.32044, 215.68680)]
    [InlineData("load_reversal", -0.5, -1.2, -1.2)]
    [InlineData("mean_stress_factor", 0.86261992, 0.73456044, 0.72813722)]
    [InlineData("notch_sensitivity_factor", 0.99361537, 0.99130997, 0.99130997)]
    [InlineData("bending_strength", 858.52727, 729.37911, 723.00119)]
    [InlineData("bending_safety", 5.2644690, 4.0168751, 3.2550998)]
    [InlineData("peak_bending_safety", 9.9035010, 7.2924985, 6.4613063)]
    public void Strength_of_the_hard_gears(string quantity, double sun, double planet, double planetAtRing)
    {
        Near(sun, "meshes.sun~planet_gear.sun", quantity, 1e-5);
        Near(planet, "meshes.sun~planet_gear.planet_gear", quantity, 1e-5);
        Near(planetAtRing, "meshes.planet_gear~ring.planet_gear", quantity, 1e-5);
    }

    [Theory]
    [InlineData("single_contact_factor", 1)]
    [InlineData("contact_stress", 618.83567)]
    [InlineData("work_hardening_factor", 1.1)]
    [InlineData("contact_strength", 1.1 * 706.84937)]
    [InlineData("load_cycles", 4.8e8)]
    [InlineData("contact_safety", 1.1 * 1.1354120)]
    [InlineData("peak_contact_safety", 1.1 * 1.7197505)]
    [InlineData("root_chord", 5.332386)]
    [InlineData("bending_arm", 1.964876)]
    [InlineData("root_radius", 0.611128)]
    [InlineData("form_factor", 0.829284)]
    [InlineData("stress_correction", 3.177282)]
    [InlineData("root_face_width", 24)]
    [InlineData("nominal_root_stress", 54.34417)]
    [InlineData("root_stress", 174.5562)]
    [InlineData("load_reversal", -0.5)]
    [InlineData("mean_stress_factor", 0.78787879)]
    [InlineData("notch_sensitivity_factor", 1.022009)]
    [InlineData("root_surface_factor", 0.97173574)]
    [InlineData("bending_strength", 492.1675)]
    [InlineData("bending_safety", 2.734175)]
    [InlineData("peak_bending_safety", 8.228983)]
    public void Strength_of_the_soft_ring(string quantity, double expected) =>
        Near(expected, "meshes.planet_gear~ring.ring", quantity, 1e-4);

    private static void Near(double expected, string subject, string quantity, double tolerance) =>
        Assert.Equal(1, Rated.Value.Value(subject, quantity) / expected, tolerance);
}
