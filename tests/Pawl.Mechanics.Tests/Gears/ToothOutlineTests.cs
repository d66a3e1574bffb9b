using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

/// <summary>Outlines of teeth against the involute equation, closed forms of thickness, the rack that cuts the root, and their mates.</summary>
public class ToothOutlineTests
{
    private const double Pressure = 20 * Math.PI / 180;

    internal static ToothOutline Outline(int teeth, double shift, double helix = 0, double addendum = 1, double allowance = 0, double? form = null)
    {
        var reference = teeth * 2.0 / Math.Cos(helix);
        return ToothOutline.Of(new()
        {
            Teeth = teeth,
            NormalModule = 2,
            NormalPressureAngle = Pressure,
            HelixAngle = helix,
            ProfileShift = shift,
            ThicknessAllowance = allowance,
            TipDiameter = reference + (4 * (shift + addendum)),
            RootDiameter = reference + (4 * (shift - 1.25)),
            FormDiameter = form,
            RootRadiusFactor = 0.38,
        });
    }

    // ISO 21771: the polar angle of an involute from its origin on the base circle is inv α = tan α − α, with cos α = r_b/r.
    [Theory]
    [InlineData(17, 0.3, 0)]
    [InlineData(60, -0.2, 0.3)]
    [InlineData(-72, 0.2, 0)]
    [InlineData(-75, -0.3, -0.2)]
    public void Points_of_a_flank_stand_on_one_involute(int teeth, double shift, double helix)
    {
        var outline = Outline(teeth, shift, helix, addendum: teeth < 0 ? 0.8 : 1);
        var origins = outline.Flank(20).Select(point =>
        {
            var angle = Math.Acos(Math.Abs(outline.BaseDiameter) / 2 / point.Radius);
            return point.Angle + ((teeth > 0 ? 1 : -1) * (Math.Tan(angle) - angle));
        }).ToArray();

        Assert.All(origins, origin => Assert.Equal(origins[0], origin, 1e-12));
    }

    // ISO 21771: s_t = m_t·(π/2 + 2·x·tan α_n) on the reference circle; s_y = d_y·(s_t/d + inv α_t − inv α_y) at any other.
    [Theory]
    [InlineData(17, 0.3, 0)]
    [InlineData(60, -0.2, 0.3)]
    [InlineData(-72, 0.2, 0)]
    public void Teeth_are_as_thick_as_the_closed_form(int teeth, double shift, double helix)
    {
        const double Allowance = -0.06;
        var outline = Outline(teeth, shift, helix, addendum: 0.8, Allowance);
        var reference = 2 * 2 * shift * Math.Tan(Pressure);
        var thickness = (Math.PI + reference + Allowance) / Math.Cos(helix);

        Assert.Equal(thickness, 2 * outline.HalfAngleAt(outline.ReferenceDiameter) * Math.Abs(outline.ReferenceDiameter) / 2, 1e-12);
        var transverse = Math.Atan(Math.Tan(Pressure) / Math.Cos(helix));
        foreach (var point in outline.Flank(9))
        {
            var angle = Math.Acos(Math.Abs(outline.BaseDiameter) / 2 / point.Radius);
            var bracket = (thickness / Math.Abs(outline.ReferenceDiameter))
                + ((teeth > 0 ? 1 : -1) * (Math.Tan(transverse) - transverse - Math.Tan(angle) + angle));
            Assert.Equal(2 * point.Radius * bracket, 2 * point.Radius * point.Angle, 1e-10);
        }
    }

    // ISO 21771, root form diameter of a rack: the last point of its straight flank, carried along the line of action.
    [Theory]
    [InlineData(20, 0.3, 0)]
    [InlineData(40, 0, 0)]
    [InlineData(31, 0.1, 0.35)]
    public void The_fillet_ends_where_the_straight_flank_of_the_rack_ends(int teeth, double shift, double helix)
    {
        var outline = Outline(teeth, shift, helix);

        var form = Root.FormDiameter(
            outline.ReferenceDiameter, outline.BaseDiameter, outline.TransversePressureAngle, Pressure, 2, shift, 1.25, 0.38);
        Assert.Equal(form, outline.FormDiameter, 1e-6);
    }

    // The rack itself as judge: rolled along the pitch circle it touches every point of the root and cuts into none. With 9 teeth and no
    // shift the root is undercut (fewer than 17, textbook).
    [Theory]
    [InlineData(20, 0.3)]
    [InlineData(40, 0)]
    [InlineData(9, 0)]
    public void The_rack_that_cut_the_root_touches_it_everywhere(int teeth, double shift)
    {
        var outline = Outline(teeth, shift);
        var root = outline.Tooth(12).Where(point => point.Angle > 0 && point.Radius * 2 <= outline.FormDiameter + 1e-9 && point.Radius > (outline.RootDiameter / 2) + 1e-6).ToArray();

        Assert.True(root.Length > 5);
        Assert.All(root, point =>
        {
            var deepest = double.NegativeInfinity;
            for (var step = -3000; step <= 3000; step++)
                deepest = Math.Max(deepest, DepthInRack(point, outline, shift, step * 0.003));
            Assert.InRange(deepest, -0.02, 0.003);
        });
    }

    /// <summary>How deep a point of the gear stands in the tooth of the rack, mm, when the rack has moved.</summary>
    private static double DepthInRack(SectionPoint point, ToothOutline outline, double shift, double moved)
    {
        const double Round = 0.38 * 2;
        var pitch = outline.ReferenceDiameter / 2;

        // The gap after the tooth stands upwards when nothing has moved; u to the right as the angle falls.
        var turned = point.Moved((Math.PI / 2) - outline.HalfPitch - (moved / pitch));
        var (u, depth) = (Math.Abs(turned.X - moved), (2 * shift) - (turned.Y - pitch));
        var centre = (U: (Math.PI / 2) - ((2.5 - (Round * (1 - Math.Sin(Pressure)))) * Math.Tan(Pressure)) - (Round * Math.Cos(Pressure)), Depth: 2.5 - Round);
        var flank = ((Math.PI / 2) - (depth * Math.Tan(Pressure)) - u) * Math.Cos(Pressure);
        var fromCentre = (U: u - centre.U, Depth: depth - centre.Depth);
        if (fromCentre.U <= 0)
            return Math.Min(2.5 - depth, flank);
        return Math.Atan2(fromCentre.Depth, fromCentre.U) > Pressure
            ? Round - Math.Sqrt((fromCentre.U * fromCentre.U) + (fromCentre.Depth * fromCentre.Depth))
            : flank;
    }

    // The law of gearing: flanks that are involutes of circles with one common tangent touch at every position and never cross; judged by
    // distances of finely sampled outlines over a whole pitch.
    [Theory]
    [InlineData(20, 31, 0.3, 0.1, 0)]
    [InlineData(17, 40, 0.2, -0.1, 0.3)]
    [InlineData(24, -75, 0.236, 0.05, 0)]
    [InlineData(30, -90, 0, 0.1, 0.2)]
    public void Gears_in_mesh_touch_and_do_not_cross_over_a_pitch(int teeth1, int teeth2, double shift1, double shift2, double helix)
    {
        var (one, two) = (Outline(teeth1, shift1, helix, 0.9), Outline(teeth2, shift2, helix, 0.8));
        var angle = MeshGeometry.WorkingPressureAngleFromShift(one.TransversePressureAngle, Pressure, shift1 + shift2, teeth1, teeth2);
        var (touch1, touch2) = MeshPlace.Touching(one, two, angle, left: true);
        var (r1, r2) = (one.BaseDiameter / 2 / Math.Cos(angle), two.BaseDiameter / 2 / Math.Cos(angle));
        for (var step = -10; step <= 10; step++)
        {
            var turn = step * one.HalfPitch / 10;
            var (overlap, gap) = Clash.Of(one, -r1, touch1 + turn, two, r2, touch2 - (turn * teeth1 / teeth2), 3 * 2);
            Assert.InRange(overlap, 0, 0.002);
            Assert.InRange(gap, 0, 0.002);
        }
    }

    // Tooth against gap: with z₁·φ₁ and z₂·φ₂ a half pitch apart at the pitch point, half of the play is left on either side.
    [Theory]
    [InlineData(20, 31, 0.7)]
    [InlineData(24, -75, -2.1)]
    public void A_tooth_stands_in_the_middle_of_a_gap_of_its_mate(int teeth1, int teeth2, double tooth)
    {
        var (one, two) = (Outline(teeth1, 0, allowance: -0.1), Outline(teeth2, 0, addendum: 0.8, allowance: -0.1));
        var (up, other) = (Math.PI / 2, teeth2 < 0 ? Math.PI / 2 : -Math.PI / 2);
        var mate = MeshPlace.ToothOfMate(teeth1, tooth, teeth2, up, other);
        var (r1, r2) = (one.ReferenceDiameter / 2, two.ReferenceDiameter / 2);

        var (overlap, gap) = Clash.Of(one, -r1, tooth, two, r2, mate, 6);
        Assert.Equal(0, overlap);

        // Two allowances of 0.1 mm leave 0.2 mm on the pitch circle, so 0.1·cos 20° along each normal.
        Assert.Equal(0.1 * Math.Cos(Pressure), gap, 0.003);
    }

    [Theory]
    [InlineData(0, 2, 0)]
    [InlineData(2, 2, 0)]
    [InlineData(20, 0, 0)]
    [InlineData(20, 1e300, 0)]
    [InlineData(20, double.NaN, 0)]
    [InlineData(20, 2, 1e300)]
    [InlineData(20, 2, double.NaN)]
    [InlineData(20, 2, -40)]
    public void What_makes_no_tooth_is_refused(int teeth, double module, double shift) => Assert.Throws<OutsideValidityException>(() => ToothOutline.Of(new()
    {
        Teeth = teeth, NormalModule = module, NormalPressureAngle = Pressure, ProfileShift = shift, TipDiameter = 44, RootDiameter = 35,
    }));
}

/// <summary>Two outlines held against each other about the origin, with their axes on the line x = 0.</summary>
internal static class Clash
{
    /// <summary>The deepest that a point of one stands in the other, and the least distance between them, mm, within a window.</summary>
    public static (double Overlap, double Gap) Of(ToothOutline one, double axis1, double turn1, ToothOutline two, double axis2, double turn2, double window)
    {
        var (first, second) = (Near(one, axis1, turn1, window), Near(two, axis2, turn2, window));
        var (overlap, gap) = (0.0, double.PositiveInfinity);
        foreach (var (points, other) in new[] { (first, second), (second, first) })
        {
            var (inside, axis, turn) = other == second ? (two, axis2, turn2) : (one, axis1, turn1);
            foreach (var point in points)
            {
                var distance = other.Min(segment => Distance(point.From, segment));
                if (IsInside(point.From, inside, axis, turn))
                    overlap = Math.Max(overlap, distance);
                gap = Math.Min(gap, distance);
            }
        }

        return (overlap, gap);
    }

    private static List<(SectionPoint From, SectionPoint To)> Near(ToothOutline gear, double axis, double turn, double window)
    {
        var points = gear.Gear(60).Select(point => point.Moved(turn, 0, axis)).ToArray();
        List<(SectionPoint, SectionPoint)> near = [];
        for (var k = 0; k < points.Length; k++)
        {
            if (points[k].Radius < window)
                near.Add((points[k], points[(k + 1) % points.Length]));
        }

        return near;
    }

    /// <summary>Inside the material, by the half angle of the tooth at the radius.</summary>
    private static bool IsInside(SectionPoint point, ToothOutline gear, double axis, double turn)
    {
        var local = new SectionPoint(point.X, point.Y - axis).Moved(-turn);
        var (diameter, form, tip) = (2 * local.Radius, Math.Abs(gear.FormDiameter), Math.Abs(gear.TipDiameter));
        if (gear.IsInternal ? diameter < tip : diameter > tip)
            return false;
        if (gear.IsInternal ? diameter > form : diameter < form)
            return false;
        var off = Math.Abs(Math.IEEERemainder(local.Angle, 2 * gear.HalfPitch));
        return off < gear.HalfAngleAt(Math.Sign(gear.Teeth) * diameter);
    }

    private static double Distance(SectionPoint point, (SectionPoint From, SectionPoint To) segment)
    {
        var (dx, dy) = (segment.To.X - segment.From.X, segment.To.Y - segment.From.Y);
        var along = Math.Clamp((((point.X - segment.From.X) * dx) + ((point.Y - segment.From.Y) * dy)) / Math.Max(1e-300, (dx * dx) + (dy * dy)), 0, 1);
        var (x, y) = (point.X - segment.From.X - (along * dx), point.Y - segment.From.Y - (along * dy));
        return Math.Sqrt((x * x) + (y * y));
    }
}
