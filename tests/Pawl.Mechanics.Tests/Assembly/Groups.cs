using System.Collections.Immutable;
using CsCheck;
using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

/// <summary>The planet groups of the usual trains, by their tooth counts.</summary>
internal static class Groups
{
    public static PlanetGroup Simple(int sun, int planet, int ring) =>
        new(1, [new(0, planet, sun, false), new(0, planet, ring, true)]);

    public static PlanetGroup SteppedSunRing(int sun, int planet1, int planet2, int ring) =>
        new(1, [new(0, planet1, sun, false), new(0, planet2, ring, true)]);

    public static PlanetGroup SteppedTwoSuns(int sun1, int planet1, int planet2, int sun2) =>
        new(1, [new(0, planet1, sun1, false), new(0, planet2, sun2, false)]);

    public static PlanetGroup SteppedTwoRings(int ring1, int planet1, int planet2, int ring2) =>
        new(1, [new(0, planet1, ring1, true), new(0, planet2, ring2, true)]);

    public static PlanetGroup SunTwoRings(int sun, int planet1, int ring1, int planet2, int ring2) =>
        new(1, [new(0, planet1, sun, false), new(0, planet1, ring1, true), new(0, planet2, ring2, true)]);

    public static PlanetGroup PairTwoSuns(int sun1, int longTeeth, int shortTeeth, int sun2) =>
        new(2, [new(0, longTeeth, sun1, false), new(1, shortTeeth, sun2, false)], [new(0, longTeeth, 1, shortTeeth)]);

    public static PlanetGroup PairSunRing(int sun, int inner, int outer, int ring) =>
        new(2, [new(0, inner, sun, false), new(1, outer, ring, true)], [new(0, inner, 1, outer)]);

    public static PlanetGroup PairSteppedLong(int sun1, int long1, int long2, int shortTeeth, int sun2) =>
        new(2, [new(0, long1, sun1, false), new(1, shortTeeth, sun2, false)], [new(0, long2, 1, shortTeeth)]);

    /// <summary>Two suns and a meshed pair as above, and a ring that meshes the unstepped long pinion.</summary>
    public static PlanetGroup PairTwoSunsRing(int sun1, int longTeeth, int shortTeeth, int sun2, int ring) =>
        new(2,
            [new(0, longTeeth, sun1, false), new(1, shortTeeth, sun2, false), new(0, longTeeth, ring, true)],
            [new(0, longTeeth, 1, shortTeeth)]);

    /// <summary>Few teeth, so that all seatings can be tried.</summary>
    public static readonly Gen<int> FewTeeth = Gen.Int[2, 12];

    public static readonly Gen<int> Teeth = Gen.Int[8, 150];

    /// <summary>One to three bodies, each tied to a central gear or to the body before, with more central meshes.</summary>
    public static readonly Gen<PlanetGroup> Any =
        from bodies in Gen.Int[1, 3]
        from tiedToBodyBefore in Gen.Bool.Array[3]
        from teeth in FewTeeth.Array[12]
        from internals in Gen.Bool.Array[6]
        from more in Gen.Int[0, 2].Array[0, 2]
        select Build(bodies, tiedToBodyBefore, teeth, internals, more);

    private static PlanetGroup Build(int bodies, bool[] tiedToBodyBefore, int[] teeth, bool[] internals, int[] more)
    {
        var central = ImmutableArray.CreateBuilder<GroupMesh>();
        var pairs = ImmutableArray.CreateBuilder<GroupPairMesh>();
        var next = 0;
        for (var body = 0; body < bodies; body++)
        {
            if (body > 0 && tiedToBodyBefore[body])
            {
                pairs.Add(new(body - 1, teeth[next++], body, teeth[next++]));
            }
            else
            {
                central.Add(new(body, teeth[next++], teeth[next++], internals[body]));
            }
        }

        for (var i = 0; i < more.Length; i++)
        {
            central.Add(new(more[i] % bodies, teeth[next++], teeth[next++], internals[3 + i]));
        }

        return new PlanetGroup(bodies, central.ToImmutable(), pairs.ToImmutable());
    }
}
