using Pawl.Mechanics.Bearings;

namespace Pawl.Analysis.Bearings;

/// <summary>Forces on a rigid body at the rated torque and speed, without the application factor, by how they follow both.</summary>
/// <remarks>Axes turn with the carrier: x towards the first planet, z along the axis of the train.</remarks>
internal sealed class BodyForces
{
    /// <summary>Radial forces of the teeth: they grow with the torque, whatever its sign.</summary>
    public List<ShaftLoad> TeethRadial { get; } = [];

    /// <summary>Tangential and axial forces of the teeth: they turn round with the torque.</summary>
    public List<ShaftLoad> TeethTangential { get; } = [];

    /// <summary>Centrifugal forces: they grow with the square of the speed.</summary>
    public List<ShaftLoad> Orbit { get; } = [];

    /// <summary>Forces that grow with the torque, of no known direction.</summary>
    public List<ShaftLoad> Sharing { get; } = [];

    /// <summary>Forces that stay, of no known direction: the coupled machine, the weight.</summary>
    public List<ShaftLoad> Lasting { get; } = [];

    /// <summary>Axial force of the teeth, N, with sign, in the forward direction of drive.</summary>
    public double AxialTeeth { get; set; }

    /// <summary>Axial forces that stay, in either direction, N.</summary>
    public double AxialLasting { get; set; }

    /// <summary>Why forces on it are not known.</summary>
    public List<string> Reasons { get; } = [];

    public void Note(IEnumerable<string> reasons)
    {
        foreach (var reason in reasons)
        {
            if (!Reasons.Contains(reason))
                Reasons.Add(reason);
        }
    }
}

/// <summary>Loads of one support, by how they follow torque and speed.</summary>
/// <param name="Radial">Of the radial tooth forces.</param>
/// <param name="Tangential">Of the tangential and axial tooth forces.</param>
/// <param name="Orbit">Of the centrifugal forces.</param>
/// <param name="Sharing">Size that grows with the torque.</param>
/// <param name="Lasting">Size that stays.</param>
internal readonly record struct SupportLoad(Reaction Radial, Reaction Tangential, Reaction Orbit, double Sharing, double Lasting)
{
    /// <summary>Radial load, N.</summary>
    /// <param name="torque">Torque over the rated one, negative in the other direction.</param>
    /// <param name="speed">Speed over the rated one.</param>
    /// <param name="overload">Machine and weight over their lasting size.</param>
    public double At(double torque, double speed, double overload = 1)
    {
        var size = Math.Abs(torque);
        return double.Hypot(
            (size * Radial.X) + (torque * Tangential.X) + (speed * speed * Orbit.X),
            (size * Radial.Y) + (torque * Tangential.Y) + (speed * speed * Orbit.Y)) + (size * Sharing) + (overload * Lasting);
    }

    /// <summary>Least radial load, N: planets share evenly, and machine and weight lie against the rest.</summary>
    public double MinAt(double torque, double speed)
    {
        var even = this with { Sharing = 0, Lasting = 0 };
        return Math.Abs(even.At(torque, speed) - Lasting);
    }

    /// <summary>What of the radial load goes round with the carrier, where the body meshes with planets or carries them, N.</summary>
    public double Turning(double torque, double speed) => (this with { Lasting = 0 }).At(torque, speed);
}
