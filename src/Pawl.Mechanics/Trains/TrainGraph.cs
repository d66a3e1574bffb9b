namespace Pawl.Mechanics.Trains;

/// <summary>A body that turns about the train's axis or a parallel one; with a carrier it is a planet.</summary>
/// <param name="Name">Unique among the bodies.</param>
/// <param name="Carrier">The body whose pin the planet turns on; null for a central body.</param>
/// <param name="Count">How many equal copies the carrier holds. They count once in kinematics and share the load.</param>
public sealed record TrainBody(string Name, string? Carrier = null, int Count = 1);

/// <summary>A toothed member that sits rigidly on a body.</summary>
/// <param name="Name">Unique among the gears.</param>
/// <param name="Body">The body it turns with.</param>
/// <param name="Teeth">Number of teeth z, positive also for a ring.</param>
/// <param name="IsInternal">A ring: its teeth point inwards.</param>
public sealed record TrainGear(string Name, string Body, int Teeth, bool IsInternal = false);

/// <summary>Two gears in mesh.</summary>
/// <param name="Name">Unique among the meshes.</param>
/// <param name="First">A gear's name.</param>
/// <param name="Second">The other gear's name.</param>
/// <param name="Efficiency">η of this mesh with its carrier held, 0 &lt; η ≤ 1; the same in both directions.</param>
public sealed record TrainMesh(string Name, string First, string Second, double Efficiency = 1);

/// <summary>A gear train as a graph: gears sit on bodies, meshes join gears.</summary>
/// <remarks>
/// A mesh of a planet runs in its carrier; a mesh between two central bodies (parallel shafts) runs in the housing.
/// No kind of train is declared: <see cref="Topology"/> recognises it.
/// </remarks>
/// <param name="Bodies">Everything that can turn, and what is held.</param>
/// <param name="Gears">The gears on the bodies.</param>
/// <param name="Meshes">The meshes between the gears.</param>
/// <param name="Input">The body that is driven.</param>
/// <param name="Output">The body that drives the load.</param>
/// <param name="Fixed">The bodies held by the housing.</param>
public sealed record TrainGraph(
    ImmutableArray<TrainBody> Bodies,
    ImmutableArray<TrainGear> Gears,
    ImmutableArray<TrainMesh> Meshes,
    string Input,
    string Output,
    ImmutableArray<string> Fixed);
