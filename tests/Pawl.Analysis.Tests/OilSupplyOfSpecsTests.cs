namespace Pawl.Analysis.Tests;

/// <summary>Oil to the planet pins, its level and its cooler as a spec states them.</summary>
public class OilSupplyOfSpecsTests
{
    private const string L = "lubrication";
    private const string P = "planet_pins.p";

    // Sun 20, planets 25, ring 70 at 2 mm: a_w = 45 mm, tips of the planets at 45 + 27 = 72 mm, carrier at 1450·20/90 = 322.2 1/min.
    private static GearboxAnalysis Of(string lubrication, string pin = "feed: splash", string more = "") => OilText.Analyse(
        SpecText.Simple(
            duty: $"duty:\n  input: {{speed: 1450 rpm, torque: 30 N·m}}\n  oil: {OilText.Oil}\nlubrication: {{{lubrication}}}\n"
                + $"planet_pins: {{p: {{planets: planet, diameter: 12 mm, held: straddled, load_width: 20 mm{(pin.Length > 0 ? $", oil: {{{pin}}}" : "")}}}}}\n{more}",
            mesh: ", centre_distance: 45 mm ±0"));

    private static IEnumerable<string> Names(GearboxAnalysis analysis, string subject) => analysis.Subject(subject).Quantities.Select(quantity => quantity.Kind.Name);

    private static readonly double Carrier = 1450 * 20 / 90.0 * Math.PI / 30;

    // ω²·r/g and ρ·ω²·(r² − r_0²)/2, ρ 895 kg/m³ of the catalogue or 870 kg/m³: read from the analysis.
    [Theory]
    [InlineData("holes", 10)]
    [InlineData("holes", 60)]
    [InlineData("catcher", 40)]
    public void Oil_flows_outwards_in_a_turning_carrier(string feed, double radius)
    {
        var analysis = Of("supply: jet", $"feed: {feed}, radius: {radius} mm");
        var density = analysis.Value("train", "oil_density") * 1e-12;

        Assert.Equal(45, analysis.Value(P, "orbit_radius"), 1e-9);
        Assert.Equal(Carrier * Carrier * 45 / 9806.65, analysis.Value(P, "orbit_acceleration"), 1e-9);
        Assert.Equal(density * Carrier * Carrier * (45 * 45 - radius * radius) / 2, analysis.Value(P, "oil_pressure_gain"), 1e-12);
        Assert.Equal(analysis.Value(P, "oil_pressure_gain"), analysis.Value(P, "oil_pressure"), 1e-12);
        Assert.Equal(radius < 45, analysis.Value(P, "oil_pressure") > 0);
    }

    // 0.1 bar is 0.01 MPa, more than the field of a slow carrier takes from 60 mm to 45 mm.
    [Fact]
    public void A_pump_may_feed_against_the_field()
    {
        var analysis = Of("supply: jet", "feed: holes, radius: 60 mm, pressure: 0.1 bar");

        Assert.True(analysis.Value(P, "oil_pressure_gain") < 0);
        Assert.Equal(0.01 + analysis.Value(P, "oil_pressure_gain"), analysis.Value(P, "oil_pressure"), 1e-12);
        Assert.True(analysis.Value(P, "oil_pressure") > 0);
    }

    // Duty and spectrum: the fastest share counts, (3000/1450)² times the field.
    [Fact]
    public void The_fastest_share_of_the_spectrum_sets_the_field()
    {
        var slow = Of("supply: jet", "feed: holes, radius: 10 mm").Value(P, "oil_pressure");
        var text = SpecText.Simple(
            duty: $"duty:\n  input: {{speed: 1450 rpm, torque: 30 N·m}}\n  service_life: 1000 h\n  oil: {OilText.Oil}\n"
                + "  spectrum: [{share: 50 %, torque: 30 N·m, speed: 1450 rpm}, {share: 50 %, torque: 10 N·m, speed: 3000 rpm}]\nlubrication: {supply: jet}\n"
                + "planet_pins: {p: {planets: planet, diameter: 12 mm, held: straddled, load_width: 20 mm, oil: {feed: holes, radius: 10 mm}}}",
            mesh: ", centre_distance: 45 mm ±0");

        Assert.Equal(slow * Math.Pow(3000.0 / 1450, 2), OilText.Analyse(text).Value(P, "oil_pressure"), 1e-9);
    }

    [Fact]
    public void What_is_not_said_of_the_feed_is_asked_for()
    {
        Assert.Equal(["planet_pins.p.oil.feed is not stated"], Of("supply: jet", "").Quantity(P, "oil_feed").Reasons);
        Assert.Contains("planet_pins.p.oil.radius is not stated", Of("supply: jet", "feed: holes").Quantity(P, "oil_pressure").Reasons);
        Assert.DoesNotContain("oil_feed", Names(Of("supply: grease", ""), P));
        Assert.DoesNotContain("oil_pressure", Names(Of("supply: jet", "feed: splash"), P));
    }

    // Level −50 mm, −53 to −48: teeth dip 72 − 50 = 22 mm, 11 modules, 9.5 at the least; the pin, 45 + 6 = 51 mm, lies 1 mm below, and 2 mm above at the least.
    [Fact]
    public void The_level_is_held_against_planets_and_pins()
    {
        var analysis = Of("supply: splash, mounting_position: horizontal, level: -50 mm, min_level: -53 mm, max_level: -48 mm, lowest_opening: 30 mm");

        Assert.Equal(72, analysis.Value(L, "planet_reach"), 1e-9);
        Assert.Equal(22, analysis.Value(L, "dip"), 1e-9);
        Assert.Equal((9.5, 12), (analysis.Quantity(L, "dip_in_modules").Value.Min, analysis.Quantity(L, "dip_in_modules").Value.Max));
        Assert.True(analysis.Quantity(L, "lowest_wetted").Truth);
        Assert.Equal((-2, 3), (Math.Round(analysis.Quantity(P, "oil_dip").Value.Min, 6), Math.Round(analysis.Quantity(P, "oil_dip").Value.Max, 6)));
        Assert.Equal(78, analysis.Quantity(L, "opening_over_level").Value.Min, 1e-9);
    }

    [Fact]
    public void A_level_below_the_planets_wets_none()
    {
        const string Low = "supply: splash, mounting_position: horizontal, level: -70 mm, min_level: -73 mm";

        Assert.False(Of(Low).Quantity(L, "lowest_wetted").Truth);
        Assert.False(Of($"{Low}, lowest_wetted: true").Quantity(L, "level_wets_lowest").Truth);
        Assert.True(Of($"{Low}, lowest_wetted: true").Quantity(L, "lowest_wetted").Truth);
    }

    [Fact]
    public void The_level_of_an_upright_unit_is_not_judged_and_that_of_a_bath_is_asked_for()
    {
        Assert.DoesNotContain("level", Names(Of("supply: splash, mounting_position: vertical, level: -50 mm"), L));
        Assert.DoesNotContain("level", Names(Of("supply: jet, mounting_position: horizontal"), L));
        Assert.Equal(["lubrication.level is not stated"], Of("supply: splash, mounting_position: horizontal").Quantity(L, "level").Reasons);
    }

    // d = 30 mm: its lowest place stands at −15 mm, at 0.065 mm above with the smallest shaft of h11.
    [Fact]
    public void The_level_is_held_against_the_lip()
    {
        var found = Of(
            "supply: splash, mounting_position: horizontal, level: -20 mm, max_level: -14 mm",
            more: "lip_seals: {s: {shaft: input, housing: housing, diameter: 30 mm h11}}").Quantity("lip_seals.s", "level_over_lip");

        Assert.Equal((-5, 1), (found.Value.Nominal, found.Value.Max));
    }

    // 6208 turns about (40 + 80)/2 = 60 mm: the lowest ball stands at −30 mm. A planet's bearing goes around.
    [Fact]
    public void The_level_is_held_against_the_lowest_ball()
    {
        var analysis = SpecText.AnalyseChanged("specs/tarn-120/r400.yaml", "lubrication: {level: -28 mm, min_level: -29 mm, max_level: -26 mm}");

        Assert.Equal(4, analysis.Quantity("bearings.carrier_rear", "level_over_element").Value.Max, 1e-9);
        Assert.DoesNotContain("level_over_element", Names(analysis, "bearings.planet"));
    }

    // Loss over housing and cooler: (P + 3·30 + G·20)/(3 + G), 0.2 m² at 15 W/(m²·K).
    [Theory]
    [InlineData("transfer: 12 W/K", 12)]
    [InlineData("capacity: 480 W, at: 40 K", 12)]
    public void A_cooler_stands_in_the_balance(string cooler, double transfer)
    {
        var analysis = Of($"ambient: 30 °C, cooling_area: 0.2 m², other_losses: 300 W, cooler: {{{cooler}, coolant: 20 °C}}");
        var loss = analysis.Value(L, "loss");
        var sump = (loss + 3 * 30 + transfer * 20) / (3 + transfer);

        Assert.Equal(transfer, analysis.Value(L, "cooler_transfer"), 1e-9);
        Assert.Equal(sump, analysis.Value(L, "balanced_temperature"), 1e-9);
        Assert.Equal(transfer * (sump - 20), analysis.Value(L, "cooler_heat"), 1e-9);
    }

    [Fact]
    public void Coolant_warmer_than_the_sump_heats_it() =>
        Assert.True(Of("ambient: 20 °C, cooling_area: 0.5 m², cooler: {transfer: 50 W/K, coolant: 95 °C}").Value(L, "cooler_heat") < 0);

    private const string Air = "free_volume: 0.5 L, fill: 0.2 L";

    // Oil from 20 °C to 80 °C, 0.3 L of air beside 0.2 L of oil: 0.101325·(1 − 293.15/353.15·(300 − 8.4)/300) = 0.019571 MPa.
    [Theory]
    [InlineData("ports: {vent: false}", 0.019571)]
    [InlineData("vent: {bore: 3 mm, one_way: true}", 0.019571)]
    [InlineData("ports: {vent: true}", 0)]
    [InlineData("vent: {bore: 3 mm, intake_pressure: 5 mbar}", 0.0005)]
    [InlineData("vent: {intake_pressure: 0.5 bar}, cool_down: 1 h", 0.05)]
    [InlineData("vent: {bore: 3 mm, intake_pressure: 0.5 bar}, cool_down: 1 h", 0.019571)]
    [InlineData("vent: {bore: 0.01 mm}, cool_down: 1 min", 0.019571)]
    public void A_housing_that_cools_sucks(string vent, double suction)
    {
        var analysis = Of($"supply: jet, {Air}, {vent}", more: "lip_seals: {s: {shaft: input, housing: housing, diameter: 30 mm h11}}");

        Assert.Equal(suction, analysis.Value(L, "housing_suction"), 1e-6);
        Assert.Equal(suction, analysis.Value("lip_seals.s", "suction"), 1e-6);
    }

    // q = 60 K/60 s·(0.3·10⁶/293.15 + 7·10⁻⁴·0.2·10⁶) = 1163.4 mm³/s = 0.069802 L/min; ρ = 1.2041 kg/m³ at 20 °C.
    [Fact]
    public void A_vent_lets_out_what_warms()
    {
        var analysis = Of($"supply: jet, {Air}, vent: {{bore: 0.2 mm, opening_pressure: 20 mbar}}, warm_up: 1 min");
        var speed = 1163.37 / (0.6 * Math.PI / 4 * 0.04);

        Assert.Equal(0.069802, analysis.Value(L, "vent_out_flow"), 1e-6);
        Assert.Equal(1.2041e-12 / 2 * speed * speed, analysis.Value(L, "vent_out_drop"), 1e-7);
        Assert.Equal(0.002 + analysis.Value(L, "vent_out_drop"), analysis.Value(L, "housing_pressure"), 1e-9);
        Assert.DoesNotContain("vent_in_flow", Names(Of($"supply: jet, {Air}, vent: {{bore: 3 mm, one_way: true}}, cool_down: 1 min"), L));
    }

    [Fact]
    public void A_lip_bears_what_its_maker_states()
    {
        double Permitted(string keys) => Of("supply: jet", more: $"lip_seals: {{s: {{shaft: input, housing: housing, diameter: 30 mm h11{keys}}}}}").Value("lip_seals.s", "permitted_suction");

        Assert.Equal((0.01, 0.02), (Permitted(""), Permitted(", max_suction: 20 kPa")));
    }

    [Fact]
    public void A_cooler_without_its_size_is_asked_for() => Assert.Contains(
        "lubrication.cooler.transfer or lubrication.cooler.capacity is not stated",
        Of("ambient: 30 °C, cooling_area: 0.2 m², cooler: {coolant: 20 °C}").Quantity(L, "balanced_temperature").Reasons);
}
