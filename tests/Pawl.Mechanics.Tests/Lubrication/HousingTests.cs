using CsCheck;
using Pawl.Mechanics.Lubrication;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Lubrication;

public class HousingTests
{
    // A public exercise on a worm gearbox: 0.30 m², 23 W/(m²·K), oil 50 K above the air, efficiency tan 6°/tan(6° + φ) with tan φ =
    // 0.05/cos 22°; the answer is 1.006 kW of input.
    [Fact]
    public void The_sump_of_a_textbook_worm_gearbox_rises_by_fifty_kelvins()
    {
        var lead = Math.PI / 30;
        var efficiency = Math.Tan(lead) / Math.Tan(lead + Math.Atan(0.05 / Math.Cos(22 * Math.PI / 180)));
        var loss = (1 - efficiency) * 1.006e6;
        Assert.Equal(50, HeatBalance.SumpTemperature(loss, 23e-3, 0.30e6, 0), 0.1);
    }

    // 120 W, 15 W/(m²·K), 0.25 m², 25 °C: 25 + 120/3.75 = 57 °C.
    [Fact]
    public void The_sump_temperature_is_worked_by_hand() =>
        Assert.Equal(57, HeatBalance.SumpTemperature(120e3, 15e-3, 0.25e6, 25), 1e-9);

    // 300 W on 3 W/K to air of 30 °C and 12 W/K to water of 20 °C: (300 + 90 + 240)/15 = 42 °C; 36 W go to the air, 264 W to the water.
    [Fact]
    public void A_cooler_shares_the_heat_with_the_housing()
    {
        var sump = HeatBalance.SumpTemperature(300e3, 15e-3, 0.2e6, 30, 12e3, 20);
        Assert.Equal(42, sump, 1e-9);
        Assert.Equal(300, 3 * (sump - 30) + 12 * (sump - 20), 1e-9);
    }

    // Without a cooler nothing changes; a cooler without end holds the oil at the temperature of its coolant.
    [Fact]
    public void The_limits_of_a_cooler_are_those_of_paper() =>
        Gen.Select(Gen.Double[1e3, 900e3], Gen.Double[0.05e6, 0.5e6], Gen.Double[-10, 40], Gen.Double[5, 40]).Sample((loss, area, ambient, coolant) =>
            Math.Abs(HeatBalance.SumpTemperature(loss, 15e-3, area, ambient, 0, coolant) - HeatBalance.SumpTemperature(loss, 15e-3, area, ambient)) < 1e-9
                && Math.Abs(HeatBalance.SumpTemperature(loss, 15e-3, area, ambient, 1e15, coolant) - coolant) < 1e-6);

    // A loss that falls in proportion with warmth, P = a − b·(θ − θ_a), has θ − θ_a = a/(k·A + b).
    [Fact]
    public void A_loss_that_falls_with_warmth_balances_where_paper_says() =>
        Gen.Select(Gen.Double[1e3, 400e3], Gen.Double[0, 1e3], Gen.Double[2e3, 10e3], Gen.Double[-20, 40]).Sample((still, falls, conductance, ambient) =>
        {
            var rise = still / (conductance + falls);
            var expected = ambient + rise;
            if (expected > 195)
                return true;
            double Loss(double temperature) => Math.Max(0, still - falls * (temperature - ambient));
            return Math.Abs(HeatBalance.SumpTemperature(Loss, 1, conductance, ambient) - expected) < 1e-6;
        });

    // The balance is where heat in is heat out, with the drag of an oil that thins.
    [Fact]
    public void Heat_in_is_heat_out_at_the_balance()
    {
        static double Loss(double temperature) => 60e3 + 8e3 * Math.Sqrt(Viscosity.Kinematic(temperature, 40, 220, 100, 19));
        var sump = HeatBalance.SumpTemperature(Loss, 18e-3, 0.2e6, 20);
        Assert.Equal(Loss(sump), 18e-3 * 0.2e6 * (sump - 20), 1e-3);
        Assert.InRange(sump, 40, 80);
    }

    [Fact]
    public void A_housing_that_cannot_lose_its_heat_is_refused()
    {
        Refusal.Says("at 200 °C the housing still takes in more", () => HeatBalance.SumpTemperature(_ => 1e6, 15e-3, 0.1e6, 20));
        Refusal.Says("the loss must not be below zero", () => HeatBalance.SumpTemperature(-1, 15e-3, 0.1e6, 20));
        Refusal.Says("the area of the housing must be above zero", () => HeatBalance.SumpTemperature(1, 15e-3, 0, 20));
    }

    // 1.013 bar, 20 °C to 80 °C, 500 ml with 200 ml of oil, 7·10⁻⁴/K: 1.013·(353.15/293.15)·300/(300 − 8.4) = 1.2555 bar.
    [Fact]
    public void The_pressure_of_a_closed_housing_is_worked_by_hand() =>
        Assert.Equal(0.12555 - 0.1013, HousingPressure.Rise(20, 80, 500e3, 200e3, 7e-4, 0.1013), 1e-5);

    // Amontons: without oil the pressure goes with the absolute temperature, and from 0 °C by 1/273.15 for each kelvin.
    [Fact]
    public void Without_oil_the_pressure_goes_with_the_absolute_temperature() =>
        Gen.Select(Gen.Double[-40, 120], Gen.Double[1e3, 1e7]).Sample((hot, room) =>
            Math.Abs(HousingPressure.Rise(0, hot, room, 0, 7e-4) - 0.101325 * hot / 273.15) < 1e-12);

    [Fact]
    public void More_oil_leaves_less_air_and_more_pressure() =>
        Gen.Select(Gen.Double[0, 0.9], Gen.Double[0, 0.9], Gen.Double[21, 120]).Sample((one, other, hot) =>
            HousingPressure.Rise(20, hot, 1e6, Math.Min(one, other) * 1e6, 7e-4)
                <= HousingPressure.Rise(20, hot, 1e6, Math.Max(one, other) * 1e6, 7e-4) + 1e-12);

    // Closed at 80 °C with p_1, cooled to 20 °C: 1.013·(1 − 293.15/353.15·(300 − 8.4)/300) = 0.1956 bar of suction.
    [Fact]
    public void The_suction_of_a_closed_housing_is_worked_by_hand() =>
        Assert.Equal(0.01956, HousingPressure.Fall(80, 20, 500e3, 200e3, 7e-4, 0.1013), 1e-5);

    // Gay-Lussac: a flask closed in boiling water and cooled to 20 °C holds 293.15/373.15 = 0.7856 of the atmosphere.
    [Fact]
    public void A_flask_closed_in_boiling_water_sucks_a_fifth_of_the_atmosphere() =>
        Assert.Equal((1 - 0.7856) * 0.101325, HousingPressure.Fall(100, 20, 1e6, 0, 7e-4), 1e-5);

    // What warms and cools again comes back: (1 + rise)·(1 − fall) = 1, as shares of the pressure at the start of each.
    [Fact]
    public void Warming_and_cooling_undo_each_other() =>
        Gen.Select(Gen.Double[-40, 40], Gen.Double[41, 120], Gen.Double[0, 0.8]).Sample((cold, hot, share) =>
            Math.Abs((1 + HousingPressure.Rise(cold, hot, 1e6, share * 1e6, 7e-4, 1)) * (1 - HousingPressure.Fall(hot, cold, 1e6, share * 1e6, 7e-4, 1)) - 1) < 1e-12);

    // ISO 2533, standard atmosphere at sea level: 15 °C, 101 325 Pa, 1.225 kg/m³.
    [Fact]
    public void Air_has_the_density_of_the_standard_atmosphere() =>
        Assert.Equal(1.225, HousingVent.AirDensity(15) * 1e12, 5e-5);

    // Torricelli: with C_d = 0.6 a drop of 100 Pa drives air of 1.2 kg/m³ at √(2·100/1.2) = 12.910 m/s through 0.6·π/4·(3 mm)².
    [Fact]
    public void A_vent_takes_the_pressure_of_the_orifice_equation() =>
        Assert.Equal(100e-6, HousingVent.PressureDrop(12_910 * 0.6 * Math.PI / 4 * 9, 3, 1.2e-12), 1e-8);

    // 1 L of air at 0 °C grows by 1/273.15 for each kelvin (Gay-Lussac): 60 K in 60 s drive 3661 mm³/s; 1 L of oil adds 700 mm³/s.
    [Theory]
    [InlineData(1e6, 0, 3661)]
    [InlineData(2e6, 1e6, 4361)]
    public void The_flow_of_a_vent_is_that_of_Gay_Lussac(double room, double oil, double flow) =>
        Assert.Equal(flow, HousingVent.Flow(0, 60, 60, room, oil, 7e-4), 0.5);

    // A blocked vent is no vent, and one that opens late never holds more than a closed housing.
    [Theory]
    [InlineData(0.002, 0.001, 0.03, 0.003)]
    [InlineData(0.002, 0.02, 0.03, 0.03)]
    [InlineData(0.05, 0, 0.03, 0.03)]
    public void A_vent_never_leaves_more_than_a_closed_housing(double opening, double drop, double closed, double left) =>
        Assert.Equal(left, HousingVent.PressureLeft(opening, drop, closed), 1e-12);

    [Fact]
    public void A_housing_full_of_oil_is_refused()
    {
        Refusal.Says("no air is left", () => HousingPressure.Rise(20, 80, 100, 99, 7e-4));
        Refusal.Says("no air is left", () => HousingPressure.Rise(20, 80, 100, -1, 7e-4));
        Refusal.Says("no air is left to cool", () => HousingPressure.Fall(80, 20, 100, 99, 7e-4));
        Refusal.Says("no air is left to cool", () => HousingPressure.Fall(20, 80, 100, 50, 7e-4));
        Refusal.Says("does not breathe", () => HousingVent.Flow(20, 10, 60, 100, 50, 7e-4));
        Refusal.Says("the bore of the vent must be above zero", () => HousingVent.PressureDrop(1, 0, 1.2e-12));
    }

    // A public teaching page on friction of rolling bearings, coefficient on the bore.
    [Theory]
    [InlineData("deep groove ball", 0.0015)]
    [InlineData("angular contact ball", 0.0020)]
    [InlineData("angular contact ball double row", 0.0024)]
    [InlineData("self-aligning ball", 0.0010)]
    [InlineData("cylindrical roller", 0.0011)]
    [InlineData("cylindrical roller full complement", 0.0020)]
    [InlineData("tapered roller", 0.0018)]
    [InlineData("spherical roller", 0.0018)]
    [InlineData("thrust ball", 0.0013)]
    public void Coefficients_match_a_public_teaching_page(string kind, double coefficient)
    {
        Assert.True(BearingFriction.TryCoefficient(kind, out var found, out _));
        Assert.Equal(coefficient, found);
    }

    // Ranges of a maker of bearings on a public page: needle rollers with a cage and full complement.
    [Theory]
    [InlineData("needle roller", 0.0020, 0.0030)]
    [InlineData("needle roller full complement", 0.0025, 0.0035)]
    public void Coefficients_of_needles_lie_in_a_public_range(string kind, double least, double greatest)
    {
        Assert.True(BearingFriction.TryCoefficient(kind, out var found, out _));
        Assert.InRange(found, least, greatest);
    }

    // 0.0015·2000 N·30 mm/2 = 45 N·mm; at 100 rad/s 4500 N·mm/s = 4.5 W, whichever way it turns.
    [Fact]
    public void The_loss_of_a_bearing_is_worked_by_hand()
    {
        Assert.Equal(45, BearingFriction.Torque(0.0015, 2000, 30), 1e-9);
        Assert.Equal(4500, BearingFriction.Loss(45, 100), 1e-9);
        Assert.Equal(4500, BearingFriction.Loss(45, -100), 1e-9);
        Assert.False(BearingFriction.TryCoefficient("magnetic", out _, out var reason));
        Assert.Contains("no coefficient of friction of a bearing `magnetic`", reason, StringComparison.Ordinal);
    }

    // Common practice, no source: splash to 12 m/s, with care to 15 m/s, a jet above.
    [Theory]
    [InlineData(5000, OilSupply.Splash)]
    [InlineData(-12000, OilSupply.Splash)]
    [InlineData(12001, OilSupply.SplashWithCare)]
    [InlineData(15000, OilSupply.SplashWithCare)]
    [InlineData(-15001, OilSupply.Jet)]
    public void Fast_wheels_ask_for_a_jet(double speed, OilSupply supply) => Assert.Equal(supply, OilSupplyChoice.For(speed));
}
