using Fractions;

namespace Pawl.Mechanics.Trains;

/// <summary>Which way the output turns, seen from the input.</summary>
public enum RotationSense
{
    Same,
    Reversed,
}

/// <summary>Exact speeds of a train, signed about the common axis.</summary>
/// <param name="Ratio">i = ω_in/ω_out, an exact fraction, negative when reversed; null when the output stands still.</param>
/// <param name="Bodies">One entry a body that the train moves or holds, in the order of the graph. Idle bodies are left out.</param>
/// <param name="Meshes">One entry a mesh, in the order of the graph.</param>
public sealed record TrainSpeeds(Fraction? Ratio, ImmutableArray<BodySpeed> Bodies, ImmutableArray<MeshSpeed> Meshes)
{
    /// <summary>Null when the ratio is, or when the input was stated to stand still.</summary>
    public RotationSense? Sense => Ratio switch
    {
        null => null,
        { IsZero: true } => null,
        { IsNegative: true } => RotationSense.Reversed,
        _ => RotationSense.Same,
    };

    /// <summary>The entry of a body; null when it is idle or unknown.</summary>
    public BodySpeed? Of(string body)
    {
        foreach (var entry in Bodies)
            if (entry.Body == body) return entry;

        return null;
    }
}

/// <summary>The speed of one body.</summary>
/// <param name="Body">The body's name.</param>
/// <param name="Speed">ω, absolute; for a unit input speed unless speeds were given.</param>
/// <param name="RelativeToCarrier">ω − ω_c of a planet on its pin; null for a central body.</param>
public sealed record BodySpeed(string Body, Fraction Speed, Fraction? RelativeToCarrier);

/// <summary>How a mesh rolls.</summary>
/// <param name="Mesh">The mesh's name.</param>
/// <param name="Carrier">The body the mesh runs in; null for the housing.</param>
/// <param name="First">ω_a − ω_c of the first gear.</param>
/// <param name="Second">ω_b − ω_c of the second gear.</param>
/// <param name="RollingSpeed">z_a·|ω_a − ω_c|: teeth times angle, so 2π of it is one tooth engagement. Equal from either gear.</param>
public sealed record MeshSpeed(string Mesh, string? Carrier, Fraction First, Fraction Second, Fraction RollingSpeed);
