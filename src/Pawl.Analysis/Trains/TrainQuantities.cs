using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Trains;

/// <summary>What is known of the train as a whole.</summary>
public static class TrainQuantities
{
    private const string Willis = "Willis relation of every mesh, solved as one linear system";
    private const string PowerBalance = "torque and power balance, losses by the power in the carrier frame";

    public static readonly QuantityKind Topology = new()
    {
        Name = "topology", Title = "Topology", ValueKind = ValueKind.Text,
        Formula = "recognised from the graph of bodies and meshes", Source = "closed form",
    };

    public static readonly QuantityKind Mobility = new()
    {
        Name = "mobility", Symbol = "F", Title = "Free speeds beyond the input",
        Formula = "F = bodies − independent meshes − fixed bodies − 1", Source = Willis, Scale = 1,
    };

    public static readonly QuantityKind GraphFaults = new()
    {
        Name = "graph_faults", Title = "Faults of the graph of bodies and meshes", ValueKind = ValueKind.Text,
        Formula = "none, or what cannot be: a planet that meshes with its own carrier, two rings in mesh", Source = "closed form",
    };

    public static readonly QuantityKind FreeBodies = new()
    {
        Name = "free_bodies", Title = "Bodies whose speed nothing determines", ValueKind = ValueKind.Text,
        Formula = "none, or the null space of the system of Willis relations", Source = Willis,
    };

    public static readonly QuantityKind Contradiction = new()
    {
        Name = "contradiction", Title = "Meshes that contradict each other", ValueKind = ValueKind.Text,
        Formula = "none, or the least set of meshes and held bodies that stop the input", Source = Willis,
    };

    public static readonly QuantityKind StandingOutput = new()
    {
        Name = "standing_output", Title = "Output stands still while the input turns", ValueKind = ValueKind.Truth,
        Formula = "ω_out = 0", Source = Willis,
    };

    public static readonly QuantityKind IdleBodies = new()
    {
        Name = "idle_bodies", Title = "Bodies that nothing touches", ValueKind = ValueKind.Text,
        Formula = "none, or the bodies without a mesh or a meshing planet", Source = "closed form",
    };

    public static readonly QuantityKind ClosedLoops = new()
    {
        Name = "closed_loops", Title = "Closed loops of meshes that share the load by stiffness", ValueKind = ValueKind.Text,
        Formula = "none, or meshes that agree with the rest but are not needed", Source = Willis,
    };

    public static readonly QuantityKind TargetRatio = new()
    {
        Name = "target_ratio", Symbol = "i_t", Title = "Target ratio", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RatioTolerance = new()
    {
        Name = "ratio_tolerance", Symbol = "δ_i", Title = "Permitted deviation of the ratio", Unit = Units.Percent,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Ratio = new()
    {
        Name = "ratio", Symbol = "i", Title = "Ratio, input speed over output speed",
        Formula = "i = ω_in / ω_out", Source = Willis,
        Note = "negative: the output turns against the input",
    };

    public static readonly QuantityKind RatioDeviation = new()
    {
        Name = "ratio_deviation", Symbol = "Δi/i", Title = "Deviation of the ratio from its target", Unit = Units.Percent,
        Formula = "Δi/i = | |i| − i_t | / i_t", Symbols = ["i", "i_t"], Source = "closed form", Scale = 0.01,
    };

    public static readonly QuantityKind ExactRatio = new()
    {
        Name = "exact_ratio", Title = "Ratio as a fraction of whole numbers", ValueKind = ValueKind.Text,
        Formula = "i = ω_in / ω_out in exact arithmetic", Source = Willis,
    };

    public static readonly QuantityKind Sense = new()
    {
        Name = "sense", Title = "Sense of rotation of the output", ValueKind = ValueKind.Text,
        Formula = "same when i > 0, reversed when i < 0", Source = "closed form",
    };

    public static readonly QuantityKind TargetSense = new()
    {
        Name = "target_sense", Title = "Sense of rotation required", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Efficiency = new()
    {
        Name = "efficiency", Symbol = "η", Title = "Efficiency of the meshes", Unit = Units.Percent,
        Formula = "η = −P_out / P_in", Source = PowerBalance,
        Note = "losses of the meshes alone; bearings, seals and churning are not in it",
    };

    public static readonly QuantityKind SelfLocking = new()
    {
        Name = "self_locking", Title = "The losses stop the drive", ValueKind = ValueKind.Text,
        Formula = "none, or why no direction of mesh losses gives a positive efficiency", Source = PowerBalance,
    };

    public static readonly QuantityKind TorqueBalance = new()
    {
        Name = "torque_balance", Symbol = "|ΣT|/|T|", Title = "Residue of the torques on the whole",
        Formula = "|T_in + T_out + Σ T_fixed| / max |T|", Source = "statics: the torques on a body at rest sum to zero", Scale = 1,
        Note = "checks the solution itself, at nominal",
    };

    public static readonly QuantityKind CirculatingPower = new()
    {
        Name = "circulating_power", Symbol = "P_m/P_in", Title = "Maximum rolling power of a mesh per input power",
        Formula = "max over meshes of |T · (ω − ω_carrier)| / P_in", Source = PowerBalance,
    };

    public static readonly QuantityKind InputSpeed = new()
    {
        Name = "input_speed", Symbol = "n_in", Title = "Input speed", Unit = Units.RevolutionPerMinute, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind InputTorque = new()
    {
        Name = "input_torque", Symbol = "T_in", Title = "Input torque", Unit = Units.NewtonMetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind OutputSpeed = new()
    {
        Name = "output_speed", Symbol = "n_out", Title = "Output speed", Unit = Units.RevolutionPerMinute,
        Formula = "n_out = n_in / i", Symbols = ["n_in", "i"], Source = Willis,
    };

    public static readonly QuantityKind OutputTorque = new()
    {
        Name = "output_torque", Symbol = "T_out", Title = "Torque at the output, on the load", Unit = Units.NewtonMetre,
        Formula = "T_out = T_in · i · η", Symbols = ["T_in", "i", "η"], Source = PowerBalance,
    };

    public static readonly QuantityKind InputPower = new()
    {
        Name = "input_power", Symbol = "P_in", Title = "Input power", Unit = Units.Kilowatt,
        Formula = "P_in = T_in · ω_in", Symbols = ["T_in", "n_in"], Source = "closed form",
    };

    public static readonly QuantityKind LostPower = new()
    {
        Name = "lost_power", Symbol = "P_v", Title = "Power lost in the meshes", Unit = Units.Watt,
        Formula = "P_v = P_in · (1 − η)", Symbols = ["P_in", "η"], Source = PowerBalance,
    };

    public static readonly QuantityKind OilTemperature = new()
    {
        Name = "oil_temperature", Symbol = "T", Title = "Oil temperature: running, coldest, hottest", Unit = Units.Celsius,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RunningOil = new()
    {
        Name = "running_oil_temperature", Symbol = "T_oil", Title = "Oil temperature in continuous service", Unit = Units.Celsius,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ColdestOil = new()
    {
        Name = "coldest_oil_temperature", Symbol = "T_cold", Title = "Oil temperature at the coldest start", Unit = Units.Celsius,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind MaxLash = new()
    {
        Name = "max_lash", Title = "Maximum angular play at the output that the load bears", Unit = Units.Arcminute,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind OutputLash = new()
    {
        Name = "output_lash", Symbol = "φ", Title = "Angular play at the output, input held", Unit = Units.Arcminute,
        Formula = "φ = Σ over meshes of j_wt · 2·T_k/(d_w·T_out), T_k the torque of the mesh on the gear of d_w",
        Source = "virtual work on the lossless train",
        Note = "play of the meshes alone, at running temperature, least and greatest from coldest to hottest; bearings and splines are not in it",
    };

    public static readonly QuantityKind BearingsStated = new()
    {
        Name = "bearings_stated", Title = "Rolling bearings that are stated", Formula = "bearings of the spec", Source = "the spec",
    };

    public static readonly QuantityKind BearingSetLife = new()
    {
        Name = "bearing_set_life", Symbol = "L_set", Title = "Life that all bearings reach together, at the reliability of the basic life", Unit = Units.Hour,
        Formula = "L_set = (Σ N_i·L_10h,i^−w)^(−1/w), N_i bearings of a place; w = 10/9 balls, 9/8 rollers, 1.1 both",
        Source = "product of the reliabilities of Weibull's distribution; ISO/TR 1281-1 for w, the 1.1 common practice",
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Topology, GraphFaults, FreeBodies, Mobility, Contradiction, StandingOutput, IdleBodies, ClosedLoops, TargetRatio, RatioTolerance, Ratio, RatioDeviation, ExactRatio, Sense, TargetSense,
        Efficiency, SelfLocking, TorqueBalance, CirculatingPower, InputSpeed, InputTorque, OutputSpeed, OutputTorque,
        InputPower, LostPower, OilTemperature, RunningOil, ColdestOil, OutputLash, MaxLash, BearingsStated, BearingSetLife,
    ];
}
