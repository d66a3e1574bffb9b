using Pawl.Mechanics.Gears;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;

namespace Pawl.Analysis.Rating;

/// <summary>The path of contact within its tolerances, for the flash temperature along it; of the wheel with the sign of ISO 21771.</summary>
internal sealed record FlashGeometry(
    Extent Tip1, Extent Tip2, double Base1, double Base2, Extent WorkingAngle, double BasePitch, double BaseHelix, Extent Overlap)
{
    /// <summary>Nominal, least and greatest of the maximum along the path.</summary>
    /// <remarks>
    /// Load, speed and friction enter by powers. Each part of the path rises or falls with each limit of the path; the greatest of
    /// all parts stands at a corner, and no path stays below the greatest of what the parts have at least.
    /// </remarks>
    public Extent Rise(Extent load, Extent speed, Extent friction, double modulus)
    {
        var nominal = Along(Tip1.Nominal, Tip2.Nominal, WorkingAngle.Nominal, Overlap.Nominal, load.Nominal, speed.Nominal, friction.Nominal).Max.Rise;
        Span<double> least = [double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity];
        var greatest = nominal;
        for (var corner = 0; corner < 8; corner++)
        {
            var parts = Along(
                At(Tip1, corner), At(Tip2, corner >> 1), At(WorkingAngle, corner >> 2), Overlap.Min, load.Max, speed.Max, friction.Max);
            greatest = Math.Max(greatest, parts.Max.Rise);
            ReadOnlySpan<FlashPoint> each = [parts.Inner, parts.AtB, parts.AtD, parts.Outer];
            for (var part = 0; part < least.Length; part++)
                least[part] = Math.Min(least[part], each[part].Rise);
        }

        var lighter = friction.Max == 0 || load.Max == 0 || speed.Max == 0
            ? 1
            : friction.Min / friction.Max * Math.Pow(load.Min / load.Max, 0.75) * Math.Sqrt(speed.Min / speed.Max);
        var lowest = 0.0;
        foreach (var part in least)
            lowest = Math.Max(lowest, part * lighter);
        return new(nominal, Math.Min(nominal, lowest), greatest);

        FlashParts Along(double tip1, double tip2, double angle, double overlap, double w, double omega, double mu) => FlashTemperature.Along(
            new(Base1, Base2, angle, PathOfContact.CurvatureAt(tip1, Base1), PathOfContact.CurvatureAt(tip2, Base2), BasePitch, BaseHelix, overlap),
            omega, w, mu, modulus, FlashTemperature.ContactCoefficientOfSteel, FlashTemperature.ContactCoefficientOfSteel);
    }

    private static double At(Extent extent, int bit) => (bit & 1) == 0 ? extent.Min : extent.Max;
}
