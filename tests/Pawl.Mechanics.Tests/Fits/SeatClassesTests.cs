using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Fits;

public class SeatClassesTests
{
    private static readonly Gen<(SeatPart Part, LoadOnRing Load, BearingKind Kind, SeatDuty Duty, double Size)> Seat = Gen.Select(
        Gen.Enum<SeatPart>(), Gen.Enum<LoadOnRing>(), Gen.Enum<BearingKind>(), Gen.Enum<SeatDuty>(), Gen.Double[5, 140]);

    // A shaft of 25 mm, 0/−10 µm bore: every class for a rotating load overlaps on the mean; a stationary ring may have play.
    [Fact]
    public void A_rotating_load_gets_an_overlap_and_a_stationary_one_may_have_play()
    {
        var rotating = SeatClasses.For(SeatPart.Shaft, LoadOnRing.Rotating, BearingKind.DeepGrooveBall, SeatDuty.Normal, 25);
        Assert.Equal(("k5", "k6"), (rotating.Loosest, rotating.Tightest));
        Assert.Equal("g6", SeatClasses.For(SeatPart.Shaft, LoadOnRing.Stationary, BearingKind.DeepGrooveBall, SeatDuty.Normal, 25).Loosest);
        Assert.Equal("H8", SeatClasses.For(SeatPart.Housing, LoadOnRing.Stationary, BearingKind.CylindricalRoller, SeatDuty.Heavy, 62).Loosest);
        Assert.Equal("P7", SeatClasses.For(SeatPart.Housing, LoadOnRing.Rotating, BearingKind.NeedleRoller, SeatDuty.Heavy, 62).Tightest);
    }

    [Fact]
    public void Every_class_of_the_table_is_one_of_ISO_286_and_the_tightest_is_no_looser() =>
        Seat.Sample(seat =>
        {
            var classes = SeatClasses.For(seat.Part, seat.Load, seat.Kind, seat.Duty, seat.Size);
            var (loose, tight) = (Middle(classes.Loosest, seat.Size), Middle(classes.Tightest, seat.Size));
            return seat.Part == SeatPart.Shaft ? loose <= tight + 0.003 : loose >= tight;
        }, iter: 2000);

    [Fact]
    public void Heavier_duty_never_loosens_a_seat() =>
        Seat.Where(seat => seat.Duty != SeatDuty.Heavy).Sample(seat =>
        {
            var lighter = SeatClasses.For(seat.Part, seat.Load, seat.Kind, seat.Duty, seat.Size);
            var heavier = SeatClasses.For(seat.Part, seat.Load, seat.Kind, seat.Duty + 1, seat.Size);
            var change = Middle(heavier.Tightest, seat.Size) - Middle(lighter.Tightest, seat.Size);
            return seat.Part == SeatPart.Shaft ? change >= 0 : change <= 0;
        }, iter: 2000);

    // An unbalance beside a fixed load: some part of it goes round, so an inner ring sits as under a rotating load.
    [Fact]
    public void A_wandering_load_seats_an_inner_ring_as_a_rotating_one() =>
        Seat.Sample(seat =>
            SeatClasses.For(SeatPart.Shaft, LoadOnRing.Indeterminate, seat.Kind, seat.Duty, seat.Size)
                == SeatClasses.For(SeatPart.Shaft, LoadOnRing.Rotating, seat.Kind, seat.Duty, seat.Size));

    [Fact]
    public void Duty_parts_at_a_fifteenth_and_an_eighth()
    {
        Assert.Equal(SeatDuty.Light, SeatClasses.Duty(1, 15));
        Assert.Equal(SeatDuty.Normal, SeatClasses.Duty(1, 8));
        Assert.Equal(SeatDuty.Heavy, SeatClasses.Duty(1, 7.9));
    }

    [Fact]
    public void Seats_beyond_the_table_are_refused() =>
        Refusal.Says("no class of a shaft seat of 300 mm", () =>
            SeatClasses.For(SeatPart.Shaft, LoadOnRing.Rotating, BearingKind.DeepGrooveBall, SeatDuty.Normal, 300).Loosest.Length);

    private static double Middle(string name, double size)
    {
        var letters = name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        var limits = Iso286.Limits(letters, int.Parse(name[letters.Length..], System.Globalization.CultureInfo.InvariantCulture), size);
        return (limits.Lower + limits.Upper) / 2;
    }
}
