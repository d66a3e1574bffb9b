namespace Pawl.Mechanics.Joints;

/// <summary>In which order bolts on a circle are tightened.</summary>
public static class TighteningSequence
{
    /// <summary>Crosswise order of bolts on a circle, numbered from 1 round it.</summary>
    /// <remarks>
    /// Each bolt is followed by the one opposite; the next pair is that which lies farthest from all that are tight, then farthest from
    /// the last. An odd number of bolts has no pairs: the farthest bolt comes next.<br/>
    /// Source: common practice; the same order as the star of ASME PCC-1 for 4, 8, 12 and 16 bolts, from memory.
    /// </remarks>
    public static ImmutableArray<int> Crosswise(int bolts)
    {
        if (bolts is < 2 or > 200)
            throw Guard.Because($"a circle has 2 to 200 bolts to be tightened crosswise; there are {bolts}");
        if (bolts % 2 == 1)
            return [.. Spread(bolts).Select(bolt => bolt + 1)];

        var half = bolts / 2;
        return [.. Spread(half).SelectMany(pair => new[] { pair + 1, pair + half + 1 })];
    }

    // Places 0 to count − 1 on a circle, each as far from its forerunners as can be.
    private static List<int> Spread(int count)
    {
        var done = new List<int>(count) { 0 };
        while (done.Count < count)
        {
            done.Add(Enumerable.Range(0, count)
                .Where(place => !done.Contains(place))
                .OrderByDescending(place => done.Min(other => Apart(place, other)))
                .ThenByDescending(place => Apart(place, done[^1]))
                .First());
        }

        return done;

        int Apart(int one, int other)
        {
            var apart = Math.Abs(one - other);
            return Math.Min(apart, count - apart);
        }
    }
}
