using CsCheck;
using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

public class InvoluteTests
{
    // Involute tables in any handbook: inv 14.5° = 0.0055448, inv 20° = 0.0149044, inv 25° = 0.0299753, inv 30° = 0.0537515.
    // From memory; half of the last digit.
    [Theory]
    [InlineData(14.5, 0.0055448)]
    [InlineData(20, 0.0149044)]
    [InlineData(25, 0.0299753)]
    [InlineData(30, 0.0537515)]
    public void The_involute_function_matches_handbook_tables(double degrees, double table)
    {
        Assert.Equal(table, Involute.Of(Degrees.Rad(degrees)), 0.00000005);
    }

    // The series and the plain difference must agree where both are good.
    [Fact]
    public void The_series_for_small_angles_joins_the_plain_difference() =>
        Gen.Double[0.03, 0.05].Sample(
            angle => Math.Abs(Involute.Of(angle) - (Math.Tan(angle) - angle)) <= 1e-16);

    [Theory]
    [InlineData(0)]
    [InlineData(-0.01)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void There_is_no_angle_for_an_involute_of_zero_or_less(double value)
    {
        Assert.False(Involute.TryInverse(value, out _));
    }

    // inv 20° to twelve places, by an independent program.
    [Fact]
    public void The_inverse_finds_twenty_degrees() =>
        Assert.Equal(20, Degrees.Deg(Inverse(0.0149043839)), 1e-7);

    [Fact]
    public void The_inverse_undoes_the_involute_function() =>
        Gen.Double[-8, Math.Log10(1.57)].Select(exponent => Math.Pow(10, exponent)).Sample(
            angle => Math.Abs(Inverse(Involute.Of(angle)) - angle) <= 1e-14 * Math.Max(1, angle), iter: 20_000);

    [Fact]
    public void The_involute_function_undoes_the_inverse_even_for_tiny_and_huge_values() =>
        Gen.Double[-20, 6].Select(exponent => Math.Pow(10, exponent)).Sample(
            value => Math.Abs(Involute.Of(Inverse(value)) - value) <= 1e-9 * value, iter: 20_000);

    private static double Inverse(double involute) => Involute.TryInverse(involute, out var angle) ? angle : double.NaN;
}
