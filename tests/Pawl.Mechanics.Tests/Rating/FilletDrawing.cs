using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Tests.Gears;

namespace Pawl.Mechanics.Tests.Rating;

/// <summary>
/// Root fillets made as the machine makes them: a tool is rolled along the work in small steps, and what its tip rounding reaches
/// is noted. Knows flanks only as ends of an unwound string, and neither the law of gearing nor Euler–Savary. Lengths in mm,
/// radii as magnitudes.
/// </summary>
internal sealed class FilletDrawing
{
    private readonly Func<double, (double X, double Y)> _centre;

    private FilletDrawing(Func<double, (double X, double Y)> centre, double tipRadius, int side, double range) =>
        (_centre, TipRadius, Side, Range) = (centre, tipRadius, side, range);

    private double TipRadius { get; }

    private int Side { get; } // 1 external, −1 internal

    private double Range { get; }

    /// <summary>Where the tip rounding lets go of the flank.</summary>
    public double FormRadius { get; private init; }

    /// <summary>How far from the axis of the work the tool's tip circle reaches.</summary>
    public double RootRadius { get; private init; }

    /// <summary>Least distance of the rounding's centre from the flank of the work: the tip radius, if the tool stands
    /// right.</summary>
    public double Touch { get; private init; }

    /// <summary>A rack, straight flanks at the pressure angle, rolled along an external spur gear.</summary>
    public static FilletDrawing Rack(RatedTooth tooth, RackTool rack)
    {
        var module = tooth.NormalModule;
        var pitch = tooth.Teeth * module / 2;
        var radius = rack.RootRadiusFactor * module;
        var deep = (rack.DedendumFactor - tooth.ProfileShift) * module - radius;

        // Laid into the corner: the rounding touches flank and crest. On the datum line the rack's tooth is half a pitch wide.
        var slope = Math.Tan(tooth.NormalPressureAngle);
        var flankThere = Math.PI * module / 4 - (rack.DedendumFactor * module - radius) * slope;
        var inside = flankThere + (rack.ResidualUndercut * module - radius) / Math.Cos(tooth.NormalPressureAngle);
        return new(
            travel => FromTooth(inside + travel, pitch - deep, travel / pitch + Math.PI / tooth.Teeth),
            radius,
            1,
            Math.PI * module);
    }

    /// <summary>A pinion-type cutter rolled in or along a spur gear.</summary>
    public static FilletDrawing Cutter(RatedTooth tooth, PinionCutter cutter)
    {
        var (side, teeth, module) = (Math.Sign(tooth.Teeth), Math.Abs(tooth.Teeth), tooth.NormalModule);
        var (work, tool) = (teeth * module / 2, cutter.Teeth * module / 2);
        var (workBase, toolBase) = (work * Math.Cos(tooth.NormalPressureAngle), tool * Math.Cos(tooth.NormalPressureAngle));
        double Thick(double shift) => module * (Math.PI / 2 + 2 * shift * Math.Tan(tooth.NormalPressureAngle));
        double ToolHalf(double radius) =>
            Drawing.HalfToothAngle(false, toolBase, tool, Thick(cutter.ProfileShift), radius);
        double WorkHalf(double radius) =>
            Drawing.HalfToothAngle(side < 0, workBase, work, Thick(tooth.ProfileShift), radius);

        // The pitch circles on which the cutter's tooth fills the space of the work.
        var (low, high) = (1.0000001 * toolBase, 1.3 * tool);
        for (var round = 0; round < 100; round++)
        {
            var middle = (low + high) / 2;
            var there = middle * teeth / cutter.Teeth;
            var full = middle * 2 * ToolHalf(middle) > there * (2 * Math.PI / teeth - 2 * WorkHalf(there));
            (low, high) = full == (side > 0) ? (middle, high) : (low, middle);
        }

        var (toolPitch, workPitch) = (low, low * teeth / cutter.Teeth);
        var centres = workPitch + side * toolPitch;

        // The rounding laid into the corner: its centre turned until it touches the drawn flank.
        var reach = cutter.TipDiameter / 2 - cutter.TipRadius;
        double FlankDistance(double angle)
        {
            var best = double.MaxValue;
            for (var r = toolBase; r <= cutter.TipDiameter / 2 + 1e-9; r += cutter.TipDiameter / 40_000)
            {
                var half = ToolHalf(r);
                best = Math.Min(
                    best,
                    Math.Pow(r * Math.Sin(half) - reach * Math.Sin(angle), 2) + Math.Pow(r * Math.Cos(half) - reach * Math.Cos(angle), 2));
            }

            return Math.Sqrt(best);
        }

        var (near, far) = (0.0, ToolHalf(reach));
        for (var round = 0; round < 45; round++)
        {
            var middle = (near + far) / 2;
            (near, far) = FlankDistance(middle) > cutter.TipRadius ? (middle, far) : (near, middle);
        }

        (double X, double Y) Centre(double travel)
        {
            var angle = travel / toolPitch + near;
            return FromTooth(
                reach * Math.Sin(angle), centres - side * reach * Math.Cos(angle), travel / workPitch + Math.PI / teeth);
        }

        // The rounding's centre comes nearest to the drawn flank of the work where the fillet ends.
        double nearest = double.MaxValue, form = 0;
        for (var travel = -2 * module; travel < 6 * module; travel += module / 150)
        {
            var (x, y) = Centre(travel);
            for (var r = workBase; r < work + 3 * module; r += module / 150)
            {
                var half = WorkHalf(r);
                var distance = Math.Pow(x + r * Math.Sin(half), 2) + Math.Pow(y - r * Math.Cos(half), 2);
                (nearest, form) = distance < nearest ? (distance, r) : (nearest, form);
            }
        }

        return new(Centre, cutter.TipRadius, side, Math.PI * module)
        {
            FormRadius = form,
            RootRadius = centres - side * cutter.TipDiameter / 2,
            Touch = Math.Sqrt(nearest),
        };
    }

    /// <summary>Chord, its distance from the axis, and the radius of the fillet where its tangent leans by the angle.</summary>
    public (double Chord, double Height, double Radius) Where(double lean)
    {
        // In the frame of the tooth (its middle along y) the tool advances furthest along the normal where it leaves that
        // tangent.
        var (nx, ny) = (Math.Cos(lean), -Side * Math.Sin(lean));
        double Advance(double travel)
        {
            var (x, y) = _centre(travel);
            return nx * x + ny * y;
        }

        double best = 0, most = double.MinValue;
        for (var travel = -Range; travel <= Range; travel += Range / 20_000)
        {
            var advance = Advance(travel);
            (best, most) = advance > most ? (travel, advance) : (best, most);
        }

        var (low, high) = (best - Range / 20_000, best + Range / 20_000);
        for (var round = 0; round < 60; round++)
        {
            var (a, b) = (low + (high - low) / 3, high - (high - low) / 3);
            (low, high) = Advance(a) < Advance(b) ? (a, high) : (low, b);
        }

        var (mx, my) = _centre(low);
        return (
            -2 * (mx + TipRadius * nx),
            my + TipRadius * ny,
            TipRadius + Circle(_centre(low - Range / 500), (mx, my), _centre(low + Range / 500)));
    }

    // The point in the frame of the tooth right of the space: turned back by that tooth's angle from the line of centres.
    private static (double X, double Y) FromTooth(double x, double y, double toothAngle)
    {
        var (sine, cosine) = Math.SinCos(toothAngle);
        return (x * cosine - y * sine, x * sine + y * cosine);
    }

    private static double Circle((double X, double Y) a, (double X, double Y) b, (double X, double Y) c)
    {
        double Side((double X, double Y) p, (double X, double Y) q) =>
            Math.Sqrt((p.X - q.X) * (p.X - q.X) + (p.Y - q.Y) * (p.Y - q.Y));
        var area = Math.Abs((b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X)) / 2;
        return Side(a, b) * Side(b, c) * Side(c, a) / (4 * area);
    }
}
