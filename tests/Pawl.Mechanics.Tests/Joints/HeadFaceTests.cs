using Pawl.Mechanics.Joints;

namespace Pawl.Mechanics.Tests.Joints;

public class HeadFaceTests
{
    // VDI 2230 Part 1, table A1, as a public trade page prints it: torque, N·m, 10.9, µ = 0.12, heads as ISO 4014 on medium holes.
    [Theory]
    [InlineData("M8x1", 38.3)]
    [InlineData("M10x1.25", 75)]
    [InlineData("M12x1.25", 133)]
    [InlineData("M14x1.5", 209)]
    [InlineData("M16x1.5", 320)]
    [InlineData("M20x1.5", 646)]
    [InlineData("M24x2", 1095)]
    public void Torques_of_VDI_2230_follow_from_standard_faces(string designation, double torque)
    {
        var thread = Bolts.Thread(designation);
        Assert.True(HeadFace.TryFind(thread, BoltHead.Hexagon, false, out var face, out _));

        var permitted = Tightening.Torque(
            thread, new JointFriction(0.12, 0.12), face.Value, Tightening.PermittedPreload(thread, 0.12, Bolts.Strength("10.9", designation).Yield));
        Assert.Equal(torque, permitted / 1000, 0.01 * torque);
    }

    // ISO 4762 on a public page; ISO 273, fine series, on another.
    [Theory]
    [InlineData("M8", 12.33, 8.4)]
    [InlineData("M6", 9.38, 6.4)]
    [InlineData("M12", 17.23, 13)]
    public void Socket_caps_on_fine_holes(string designation, double outer, double hole)
    {
        Assert.True(HeadFace.TryFind(Bolts.Thread(designation), BoltHead.SocketCap, true, out var face, out _));
        Assert.Equal(new BearingFace(outer, hole), face);
    }

    // ISO 4014 on a public page, product grade A; ISO 273, medium series, on another.
    [Theory]
    [InlineData("M3", 4.57, 3.4)]
    [InlineData("M5", 6.88, 5.5)]
    [InlineData("M10", 14.63, 11)]
    [InlineData("M14", 19.37, 15.5)]
    [InlineData("M16", 22.49, 17.5)]
    public void Hexagons_on_medium_holes(string designation, double outer, double hole)
    {
        Assert.True(HeadFace.TryFind(Bolts.Thread(designation), BoltHead.Hexagon, false, out var face, out _));
        Assert.Equal(new BearingFace(outer, hole), face);
    }

    [Fact]
    public void Heads_are_wider_than_holes_and_what_is_missing_gives_its_reason()
    {
        foreach (var thread in ThreadTable.All)
        {
            foreach (var head in new[] { BoltHead.Hexagon, BoltHead.SocketCap })
            {
                if (HeadFace.TryFind(thread, head, false, out var face, out var reason))
                    Assert.True(face.Value.Hole > thread.Diameter && face.Value.Area > 0);
                else
                    Assert.Equal($"the table has no head and hole for {thread.Designation}: state the face under the head and the hole", reason);
            }
        }

        Assert.False(HeadFace.TryFind(Bolts.Thread("1/2-13"), BoltHead.Hexagon, false, out _, out _));
    }

    // VDI 2230 Part 1, from memory: the stronger the bolt, the less of its tensile strength it bears in shear.
    [Fact]
    public void Shear_ratios_fall_with_the_strength_of_the_bolt()
    {
        var ratios = new[] { "4.6", "8.8", "10.9", "12.9" }.Select(name =>
            ShearRatio.TryFind(name, out var ratio, out _) ? ratio.Ratio : double.NaN).ToArray();
        Assert.Equal([0.70, 0.65, 0.62, 0.60], ratios);
        Assert.False(ShearRatio.TryFind("wood", out _, out var reason));
        Assert.StartsWith("the table has no ratio of shear strength for `wood`; it has 4.6", reason, StringComparison.Ordinal);
    }
}
