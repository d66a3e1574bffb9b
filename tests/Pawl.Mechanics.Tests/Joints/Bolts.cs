using Pawl.Mechanics.Joints;

namespace Pawl.Mechanics.Tests.Joints;

/// <summary>Threads and bolts by name; a name the tables lack fails the test.</summary>
internal static class Bolts
{
    public static Mechanics.Joints.Thread Thread(string designation) =>
        ThreadTable.TryFind(designation, out var thread, out var reason) ? thread : throw new ArgumentException(reason);

    public static BoltStrength Strength(string name, string designation) =>
        BoltStrength.TryFind(name, Thread(designation), out var strength, out var reason) ? strength : throw new ArgumentException(reason);
}
