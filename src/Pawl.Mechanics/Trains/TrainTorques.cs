namespace Pawl.Mechanics.Trains;

/// <summary>Torques and powers of a train for unit input torque and unit input speed, so that the input power is 1.</summary>
/// <remarks>Torques are signed about the common axis: positive drives in the sense in which the input turns when its speed is +1.</remarks>
/// <param name="Efficiency">η = 1 − Σ losses / P_in, above 0.</param>
/// <param name="Bodies">Input, output and held bodies, in the order of the graph.</param>
/// <param name="Meshes">One entry a mesh, in the order of the graph.</param>
/// <param name="Branches">Power through every branch of a body that has several, in the order of the graph.</param>
/// <param name="HousingTorque">From outside on the housing, for the bearings of meshes between central bodies; held bodies not counted.</param>
public sealed record TrainTorques(
    double Efficiency,
    ImmutableArray<BodyTorque> Bodies,
    ImmutableArray<MeshLoad> Meshes,
    ImmutableArray<BranchPower> Branches,
    double HousingTorque)
{
    /// <summary>Σ losses / P_in.</summary>
    public double Loss => 1 - Guard.Number(Efficiency, "the efficiency");

    /// <summary>The greatest rolling power of a mesh over the input power; above 1, power circulates.</summary>
    public double MaxRollingPower
    {
        get
        {
            var greatest = 0.0;
            foreach (var mesh in Meshes) greatest = Math.Max(greatest, mesh.RollingPower);
            return greatest;
        }
    }

    /// <summary>The entry of a body; null when it takes no external torque.</summary>
    public BodyTorque? Of(string body)
    {
        foreach (var entry in Bodies)
            if (entry.Body == body) return entry;

        return null;
    }
}

/// <summary>Why a body takes a torque from outside.</summary>
public enum BodyRole
{
    Input,
    Output,
    Held,
}

/// <summary>The torque that acts on a body from outside the train.</summary>
/// <param name="Body">The body's name.</param>
/// <param name="Role">Why.</param>
/// <param name="External">T / T_in, signed.</param>
/// <param name="Power">T·ω / P_in; positive enters the train.</param>
public sealed record BodyTorque(string Body, BodyRole Role, double External, double Power);

/// <summary>The load of a mesh, all copies of a planet together, for unit input torque and speed.</summary>
/// <param name="Mesh">The mesh's name.</param>
/// <param name="Carrier">The body the mesh runs in; null for the housing.</param>
/// <param name="Paths">Copies that share the load: the planet count, 1 between central bodies.</param>
/// <param name="FirstTorque">T_a on the first gear, from the mesh.</param>
/// <param name="SecondTorque">T_b on the second gear, from the mesh.</param>
/// <param name="CarrierTorque">−(T_a + T_b) on the carrier or the housing.</param>
/// <param name="ToothForce">F = T_a / z_a, torque a tooth; the tangential force at the working circles is F·z_a / r_wa.</param>
/// <param name="FirstPower">T_a·(ω_a − ω_c) / P_in, what the mesh gives to the first gear in the carrier's frame.</param>
/// <param name="SecondPower">T_b·(ω_b − ω_c) / P_in.</param>
/// <param name="Driver">The gear that gives power to the mesh; null when the mesh does not roll or carries nothing.</param>
/// <param name="Loss">Power lost in the mesh / P_in.</param>
public sealed record MeshLoad(
    string Mesh,
    string? Carrier,
    int Paths,
    double FirstTorque,
    double SecondTorque,
    double CarrierTorque,
    double ToothForce,
    double FirstPower,
    double SecondPower,
    string? Driver,
    double Loss)
{
    /// <summary>Power that the driver gives to the mesh / P_in.</summary>
    public double RollingPower => Guard.Finite(Math.Max(Math.Abs(FirstPower), Math.Abs(SecondPower)), "the rolling power");
}

/// <summary>Power through one branch of a central body: a gear on it, or the planets it carries.</summary>
/// <param name="Body">The body.</param>
/// <param name="Gear">The gear; null for the planets that the body carries.</param>
/// <param name="Torque">On the body from the branch / T_in.</param>
/// <param name="Power">T·ω / P_in; positive flows from the branch into the body.</param>
public sealed record BranchPower(string Body, string? Gear, double Torque, double Power);
