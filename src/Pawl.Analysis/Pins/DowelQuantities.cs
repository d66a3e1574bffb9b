using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Pins;

/// <summary>What is known of a set of dowels.</summary>
public static class DowelQuantities
{
    private const string Closed = "closed form";

    public static readonly QuantityKind Purpose = new()
    {
        Name = "purpose", Title = "What the dowels are for", ValueKind = ValueKind.Text, Formula = "locate or carry", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Count = new() { Name = "count", Symbol = "z", Title = "Number of dowels", Certainty = Certainty.Declared };

    public static readonly QuantityKind Effective = new()
    {
        Name = "effective_dowels", Symbol = "z_e", Title = "Dowels that may be counted on", Formula = "all where reamed together, else no more than two; one alone none",
        Source = "common practice, no source", Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Diameter = new()
    {
        Name = "diameter", Symbol = "d", Title = "Diameter of a dowel", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind CarriedTorque = new()
    {
        Name = "carried_torque", Symbol = "T", Title = "Greatest torque between the parts", Unit = Units.NewtonMetre, Scale = 1000,
        Formula = "that of the joint; else as stated or of the body", Source = "torque balance",
    };

    public static readonly QuantityKind Force = new()
    {
        Name = "dowel_force", Symbol = "F", Title = "Force on a dowel when friction carries nothing", Unit = Units.Newton, Scale = 1,
        Formula = "F = 2·T/(z_e·D)", Source = "statics", Note = "friction of the faces is never added",
    };

    public static readonly QuantityKind Shear = new()
    {
        Name = "shear_stress", Symbol = "τ", Title = "Mean shear stress of a dowel", Unit = Units.Megapascal, Scale = 1, Formula = "τ = F/(π/4·(d² − d_i²))", Source = Closed,
    };

    public static readonly QuantityKind Yield = new()
    {
        Name = "yield", Symbol = "R_e", Title = "Yield of the dowels", Unit = Units.Megapascal, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind PressureShare = new()
    {
        Name = "pressure_share", Symbol = "p/R_e", Title = "Greatest pressure in a hole over the yield of its part", Formula = "p/R_e, p = F/(d·l), greater of both parts",
        Source = Closed, Scale = 0.5,
    };

    public static readonly QuantityKind LengthRatio = new()
    {
        Name = "length_ratio", Symbol = "l/d", Title = "Least bearing length over diameter", Formula = "l/d, lesser of both parts", Source = Closed,
    };

    public static readonly QuantityKind Room = new()
    {
        Name = "room", Title = "Play left when dowels and holes stand apart as far as permitted", Unit = Units.Micrometre, Scale = 0.01,
        Formula = "S_min − t_1 − t_2", Source = "fixed fasteners: ISO 5458, ASME Y14.5",
    };

    public static readonly QuantityKind Turn = new()
    {
        Name = "turn", Symbol = "ψ", Title = "How far the parts may turn on their dowels", Unit = Units.Arcminute, Formula = "ψ = 2·S_max/D", Source = Closed, Scale = 1e-4,
    };

    public static readonly QuantityKind Capacity = new()
    {
        Name = "dowel_torque", Symbol = "T_d", Title = "Torque that the dowels carry alone", Unit = Units.NewtonMetre, Scale = 1000,
        Formula = "least of 0.4·R_e in shear and 0.5·R_e of the parts in pressure, over F per torque", Source = "statics; common practice, no source",
        Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Friction = new()
    {
        Name = "friction_torque", Symbol = "T_fr", Title = "Torque that the joint carries by friction, over its safety", Unit = Units.NewtonMetre, Scale = 1000,
        Formula = "slip torque of the joint over the safety wanted", Source = "statics",
    };

    public static readonly QuantityKind Path = new()
    {
        Name = "torque_path", Title = "Who carries the torque", ValueKind = ValueKind.Text, Formula = "friction where it can alone, else dowels where they can alone, else neither; never both",
        Source = "common practice, no source", Certainty = Certainty.CommonPractice,
    };

    public static readonly ImmutableArray<QuantityKind> All =
        [Purpose, Count, Effective, Diameter, CarriedTorque, Force, Shear, Yield, PressureShare, LengthRatio, Room, Turn, Capacity, Friction, Path];
}
