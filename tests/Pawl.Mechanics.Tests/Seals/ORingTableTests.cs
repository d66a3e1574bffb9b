using CsCheck;
using Pawl.Mechanics.Seals;

namespace Pawl.Mechanics.Tests.Seals;

public class ORingTableTests
{

    // Two lists of AS568 in public repositories, mm: 34 sizes to two decimals and nine to three. Of the first its -240 and -325
    // contradict the list above and the step of 1/32 in and are left out.
    [Theory]
    [InlineData("-005", 2.57, 0.005)]
    [InlineData("-006", 2.90, 0.005)]
    [InlineData("-007", 3.68, 0.005)]
    [InlineData("-011", 7.65, 0.005)]
    [InlineData("-013", 10.82, 0.005)]
    [InlineData("-015", 14.00, 0.0055)]
    [InlineData("-017", 17.17, 0.005)]
    [InlineData("-018", 18.77, 0.005)]
    [InlineData("-111", 10.77, 0.005)]
    [InlineData("-112", 12.37, 0.005)]
    [InlineData("-113", 13.95, 0.0055)]
    [InlineData("-114", 15.54, 0.005)]
    [InlineData("-115", 17.12, 0.005)]
    [InlineData("-116", 18.72, 0.005)]
    [InlineData("-211", 20.22, 0.005)]
    [InlineData("-212", 21.82, 0.005)]
    [InlineData("-213", 23.39, 0.005)]
    [InlineData("-215", 26.57, 0.005)]
    [InlineData("-216", 28.17, 0.005)]
    [InlineData("-217", 29.74, 0.005)]
    [InlineData("-220", 34.52, 0.005)]
    [InlineData("-225", 47.22, 0.005)]
    [InlineData("-250", 126.59, 0.005)]
    [InlineData("-150", 72.695, 0.0005)]
    [InlineData("-151", 75.870, 0.0005)]
    [InlineData("-152", 82.220, 0.0005)]
    [InlineData("-153", 88.570, 0.0005)]
    [InlineData("-154", 94.920, 0.0005)]
    [InlineData("-155", 101.270, 0.0005)]
    [InlineData("-156", 107.620, 0.0005)]
    [InlineData("-157", 113.970, 0.0005)]
    [InlineData("-158", 120.320, 0.0005)]
    public void Millimetres_match_lists_in_public_repositories(string dash, double inside, double halfLastDigit) =>
        Assert.Equal(inside, Find(dash).InsideDiameter, halfLastDigit);

    // Deviations of the cord: common to every public list of AS568, inches.
    [Fact]
    public void A_cord_has_one_deviation_and_bigger_rings_have_wider_ones()
    {
        var cords = new Dictionary<double, double> { [0.070] = 0.003, [0.103] = 0.003, [0.139] = 0.004, [0.210] = 0.005 };
        Assert.Equal(203, ORingTable.All.Length);
    }

    // ISO 3601-1, class B: ± (0.009·d₁^0.95 + 0.11) mm, from memory. AS568 is class A of it, tighter or about the same.
    [Fact]
    public void Deviations_of_the_inside_diameter_stay_near_the_curve_of_ISO_3601_1() =>
        Assert.All(ORingTable.All, ring =>
            Assert.InRange(ring.InsideDeviation / (0.009 * Math.Pow(ring.InsideDiameter, 0.95) + 0.11), 0.55, 1.05));

    [Theory]
    [InlineData("-113")]
    [InlineData("113")]
    [InlineData("AS568-113")]
    [InlineData(" as568-113 ")]
    public void A_dash_number_is_read_as_people_write_it(string dash) => Assert.Equal("-113", Find(dash).Dash);

    [Theory]
    [InlineData("-13")]
    [InlineData("-0113")]
    [InlineData("-051")]
    [InlineData("")]
    [InlineData("13.95 x 2.62")]
    public void What_the_table_lacks_is_said(string dash)
    {
        Assert.False(ORingTable.TryFind(dash, out var ring, out var reason));
        Assert.Null(ring);
        Assert.Contains($"no O-ring `{dash}`", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_size_is_nearest_to_itself_and_neighbours_follow() =>
        Gen.Int[0, ORingTable.All.Length - 1].Sample(index =>
        {
            var ring = ORingTable.All[index];
            var near = ORingTable.Nearest(ring.InsideDiameter + 0.001, ring.Cord - 0.001, 4);
            double Distance(ORing other) =>
                Math.Abs(other.InsideDiameter - ring.InsideDiameter - 0.001) / 2 + Math.Abs(other.Cord - ring.Cord + 0.001);
            return near.Length == 4
                && near[0] == ring
                && ORingTable.All.Except(near).All(other => Distance(other) >= Distance(near[^1]));
        });

    // 44.12 mm × 2.62 mm as a metric catalogue writes it is -132, 1.737 in × 0.103 in.
    [Fact]
    public void Metric_catalogue_sizes_find_their_dash_number() => Assert.Equal("-132", ORingTable.Nearest(44.12, 2.62)[0].Dash);

    [Fact]
    public void A_warm_ring_grows_in_all_lengths()
    {
        Assert.Equal(0.546 * 25.4 + 0.003 * 25.4 - 0.007 * 25.4, Find("-113").Extents.InsideDiameter.Min, 1e-9);
    }

    internal static ORing Find(string dash) =>
        ORingTable.TryFind(dash, out var ring, out var reason) ? ring : throw new InvalidOperationException(reason);

    // AS568 on a public sheet of units, inches: inside diameter and cord. Of that sheet seven rows contradict the step of 1/32 in
    // (-104, -200, -312, -318, -325, -335, -345) and are left out.
    [Theory]
    [InlineData("-004", 0.070, 0.070)]
    [InlineData("-008", 0.176, 0.070)]
    [InlineData("-010", 0.239, 0.070)]
    [InlineData("-012", 0.364, 0.070)]
    [InlineData("-014", 0.489, 0.070)]
    [InlineData("-016", 0.614, 0.070)]
    [InlineData("-020", 0.864, 0.070)]
    [InlineData("-024", 1.114, 0.070)]
    [InlineData("-030", 1.614, 0.070)]
    [InlineData("-040", 2.864, 0.070)]
    [InlineData("-110", 0.362, 0.103)]
    [InlineData("-120", 0.987, 0.103)]
    [InlineData("-210", 0.734, 0.139)]
    [InlineData("-214", 0.984, 0.139)]
    [InlineData("-218", 1.234, 0.139)]
    [InlineData("-222", 1.484, 0.139)]
    [InlineData("-226", 1.984, 0.139)]
    [InlineData("-230", 2.484, 0.139)]
    [InlineData("-240", 3.734, 0.139)]
    public void Inches_match_a_public_list_of_AS568(string dash, double inside, double cord)
    {
        var ring = Find(dash);
        Assert.Equal(inside, (ring.InsideDiameter / 25.4), 1e-9);
        Assert.Equal(cord, (ring.Cord / 25.4), 1e-9);
    }

    // The sizes are made so: nominal inside diameters on steps of 1/32 in, less a little by the cord. -004 and -005 stand apart.
    [Fact]
    public void Inside_diameters_lie_on_steps_of_a_thirty_second_of_an_inch()
    {
        var less = new Dictionary<double, double> { [0.070] = 0.011, [0.103] = 0.013, [0.139] = 0.016, [0.210] = 0.025 };
        Assert.All(ORingTable.All.Skip(2), ring =>
        {
            var steps = ((ring.InsideDiameter / 25.4) + less[Math.Round((ring.Cord / 25.4), 3)]) * 32;
            Assert.Equal(Math.Round(steps), steps, 0.017);
        });
    }
}
