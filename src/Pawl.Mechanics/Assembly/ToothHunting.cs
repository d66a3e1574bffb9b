namespace Pawl.Mechanics.Assembly;

/// <summary>How often the same teeth of a gear pair meet.</summary>
/// <remarks>
/// <code>g = gcd(z_1, z_2);  pinion turns z_2/g, wheel turns z_1/g until a pair of teeth meets again</code>
/// Symbols: z_1, z_2 teeth, positive also for a ring; g common factor, 1.<br/>
/// Source: closed form; lcm(z_1, z_2) tooth meshes pass meanwhile.<br/>
/// Valid for: any gear pair; turns relative to the line of centres (the carrier, in an epicyclic train).
/// </remarks>
public readonly record struct ToothHunting
{
    public ToothHunting(int pinionTeeth, int wheelTeeth)
    {
        Guard.Count(pinionTeeth, 1, "the number of teeth of the pinion");
        Guard.Count(wheelTeeth, 1, "the number of teeth of the wheel");
        PinionTeeth = pinionTeeth;
        WheelTeeth = wheelTeeth;
    }

    public int PinionTeeth { get; }

    public int WheelTeeth { get; }

    /// <summary>g: a tooth meets every g-th tooth of its mate only; 1 when it hunts over all of them.</summary>
    public int Factor => CommonFactor(PinionTeeth, WheelTeeth);

    internal static int CommonFactor(int first, int second)
    {
        while (second != 0)
        {
            (first, second) = (second, first % second);
        }

        return first;
    }
}
