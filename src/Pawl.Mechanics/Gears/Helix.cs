namespace Pawl.Mechanics.Gears;

/// <summary>Which way a tooth leans.</summary>
public enum HelixHand
{
    /// <summary>Spur: the teeth run along the axis.</summary>
    None,

    /// <summary>Right-hand: the teeth wind as a common screw thread.</summary>
    Right,

    /// <summary>Left-hand.</summary>
    Left,
}

/// <summary>The rule of the helix hands.</summary>
public static class Helix
{
    /// <summary>The hand a mate must have.</summary>
    /// <remarks>
    /// External pairs have opposite hands, internal pairs the same; spur runs with spur.<br/>
    /// Source: ISO 21771, gear pairs with parallel axes.<br/>
    /// Valid for: parallel axes.
    /// </remarks>
    public static HelixHand HandOfMate(HelixHand hand, bool internalPair) => (hand, internalPair) switch
    {
        (HelixHand.Right, false) => HelixHand.Left,
        (HelixHand.Left, false) => HelixHand.Right,
        _ => hand,
    };

    /// <summary>Whether two hands run together on parallel axes.</summary>
    public static bool HandsAgree(HelixHand first, HelixHand second, bool internalPair) =>
        second == HandOfMate(first, internalPair);
}
