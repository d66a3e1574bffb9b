namespace Pawl.Mechanics.Tests.Gears;

/// <summary>
/// Gears drawn point by point: a string unwound from the base circle. Knows neither the involute function nor any formula of the
/// code it checks. Radii are magnitudes.
/// </summary>
internal static class Drawing
{
    /// <summary>Polar angle and radius of the string's end after unwinding by t.</summary>
    public static (double Angle, double Radius) Unwound(double baseRadius, double t)
    {
        var x = baseRadius * (Math.Cos(t) + t * Math.Sin(t));
        var y = baseRadius * (Math.Sin(t) - t * Math.Cos(t));
        return (Math.Atan2(y, x), Math.Sqrt(x * x + y * y));
    }

    /// <summary>Polar angle of the flank, from its foot on the base circle, at a radius.</summary>
    public static double FlankAngle(double baseRadius, double radius)
    {
        // The free string is as long as the arc it left: radius² = base² + (base·t)².
        var t = Math.Sqrt(radius * radius / (baseRadius * baseRadius) - 1);
        return Unwound(baseRadius, t).Angle;
    }

    /// <summary>Half of the angle the tooth covers at a radius; an internal tooth widens outward.</summary>
    public static double HalfToothAngle(
        bool isInternal, double baseRadius, double referenceRadius, double thickness, double radius)
    {
        var turn = FlankAngle(baseRadius, radius) - FlankAngle(baseRadius, referenceRadius);
        return thickness / (2 * referenceRadius) + (isInternal ? turn : -turn);
    }

    /// <summary>Length between parallel anvils over k teeth, and the diameter at which they touch.</summary>
    public static (double Length, double ContactDiameter) Span(
        int teeth, double baseRadius, double referenceRadius, double thickness, int k)
    {
        // The spanned teeth stand symmetrically about the y axis; the outermost flank faces +x.
        var centreOfLast = (k - 1) * Math.PI / teeth;
        var foot = centreOfLast + HalfToothAngle(false, baseRadius, referenceRadius, thickness, referenceRadius)
            + FlankAngle(baseRadius, referenceRadius);
        double best = 0, at = 0;
        for (var t = 0.0; t < 1.2; t += 1e-5)
        {
            var (angle, radius) = Unwound(baseRadius, t);
            var x = radius * Math.Sin(foot - angle);
            if (x > best)
            {
                (best, at) = (x, radius);
            }
        }

        return (2 * best, 2 * at);
    }

    /// <summary>Radius of a ball's centre resting in a space, and of the points where it touches.</summary>
    public static (double Centre, double Contact) BallCentreRadius(
        int teeth, double baseRadius, double referenceRadius, double thickness, double ball)
    {
        var isInternal = teeth < 0;
        var atReference = FlankAngle(baseRadius, referenceRadius);
        double Distance(double centre, out double contact)
        {
            double nearest = double.MaxValue;
            contact = 0;
            for (var t = 0.0; t < 1.2; t += 2e-4)
            {
                var (angle, radius) = Unwound(baseRadius, t);
                var turn = angle - atReference;
                var halfTooth = thickness / (2 * referenceRadius) + (isInternal ? turn : -turn);
                var fromSpace = Math.PI / Math.Abs(teeth) - halfTooth;
                var x = radius * Math.Cos(fromSpace) - centre;
                var y = radius * Math.Sin(fromSpace);
                var distance = Math.Sqrt(x * x + y * y);
                if (distance < nearest)
                {
                    (nearest, contact) = (distance, radius);
                }
            }

            return nearest;
        }

        // Outward the space of an external gear widens, that of a ring narrows.
        double low = baseRadius, high = referenceRadius * 1.2, touch = 0;
        for (var round = 0; round < 40; round++)
        {
            var middle = (low + high) / 2;
            var deeper = Distance(middle, out touch) < ball / 2;
            (low, high) = deeper != isInternal ? (middle, high) : (low, middle);
        }

        return (low, touch);
    }
}
