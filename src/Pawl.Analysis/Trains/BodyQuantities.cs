using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Trains;

/// <summary>What is known of a shaft, carrier, housing or planet.</summary>
public static class BodyQuantities
{
    private const string Willis = "Willis relation of every mesh, solved as one linear system";
    private const string PowerBalance = "torque and power balance, losses by the power in the carrier frame";

    public static readonly QuantityKind Role = new()
    {
        Name = "role", Title = "Role in the train", ValueKind = ValueKind.Text,
        Formula = "input, output, fixed, planet, or linked between stages", Source = "the spec", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind SpeedRatio = new()
    {
        Name = "speed_ratio", Symbol = "ω/ω_in", Title = "Speed per input speed",
        Formula = "from the system of Willis relations", Source = Willis,
    };

    public static readonly QuantityKind Speed = new()
    {
        Name = "speed", Symbol = "n", Title = "Speed", Unit = Units.RevolutionPerMinute,
        Formula = "n = n_in · (ω/ω_in)", Symbols = ["n_in", "ω/ω_in"], Source = Willis, Scale = Math.PI / 30,
    };

    public static readonly QuantityKind SpinSpeed = new()
    {
        Name = "spin_speed", Symbol = "n_rel", Title = "Speed of the planet on its carrier", Unit = Units.RevolutionPerMinute,
        Formula = "n_rel = n_in · (ω/ω_in − ω_carrier/ω_in)", Symbols = ["n_in"], Source = Willis,
        Scale = Math.PI / 30,
    };

    public static readonly QuantityKind Torque = new()
    {
        Name = "torque", Symbol = "T", Title = "External torque on the body", Unit = Units.NewtonMetre,
        Formula = "T = T_in · (T/T_in), with losses", Symbols = ["T_in", "η"], Source = PowerBalance, Scale = 1000,
    };

    public static readonly QuantityKind Power = new()
    {
        Name = "power", Symbol = "P", Title = "External power into the body", Unit = Units.Kilowatt,
        Formula = "P = T · ω", Symbols = ["T", "n"], Source = "closed form", Scale = 1e6,
    };

    public static readonly QuantityKind Floating = new()
    {
        Name = "floating", Title = "Settles radially between its meshes", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };

    public static readonly ImmutableArray<QuantityKind> All = [Role, SpeedRatio, Speed, SpinSpeed, Torque, Power, Floating];
}
