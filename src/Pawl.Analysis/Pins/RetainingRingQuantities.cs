using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Pins;

/// <summary>What is known of a retaining ring in its groove.</summary>
public static class RetainingRingQuantities
{
    private const string Standard = "DIN 471, DIN 472";

    public static readonly QuantityKind Sits = new()
    {
        Name = "sits", Title = "On a shaft or in a bore", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Diameter = new()
    {
        Name = "diameter", Symbol = "d_1", Title = "Diameter of shaft or bore", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Groove = new()
    {
        Name = "groove", Symbol = "d_2", Title = "Diameter of the groove", Unit = Units.Millimetre, Formula = "as stated, else by the standard", Source = Standard,
        Certainty = Certainty.Published,
    };

    public static readonly QuantityKind AxialForce = new()
    {
        Name = "axial_force", Symbol = "F_A", Title = "Greatest force on the ring", Unit = Units.Newton, Scale = 1,
        Formula = "as stated, else the axial load of the bearing, scaled to the peak", Source = "the spec; statics",
    };

    public static readonly QuantityKind Land = new() { Name = "land", Symbol = "n", Title = "Land beside the groove", Unit = Units.Millimetre, Certainty = Certainty.Declared };

    public static readonly QuantityKind LandRatio = new()
    {
        Name = "land_ratio", Symbol = "n/t", Title = "Land over depth of the groove", Formula = "n/t, t = |d_1 − d_2|/2", Source = Standard,
    };

    public static readonly QuantityKind GrooveLoad = new()
    {
        Name = "groove_load", Symbol = "F_N", Title = "Load at which the shoulder of the groove yields", Unit = Units.Newton,
        Formula = "F_N = π/4·|d_1² − d_2²|·R_e/1.2", Source = Standard, Note = "without safety; n/t no less than 3",
    };

    public static readonly QuantityKind GrooveSafety = new()
    {
        Name = "groove_safety", Title = "Load of the groove over the force", Formula = "F_N/F_A", Source = "closed form",
    };

    public static readonly QuantityKind RingLoad = new()
    {
        Name = "ring_load", Symbol = "F_Rg", Title = "Load of the ring against the part that leans on it", Unit = Units.Newton,
        Formula = "as the supplier states, else of the standard, lowered for the corner", Source = Standard, Certainty = Certainty.Memory, Note = "without safety",
    };

    public static readonly QuantityKind RingSafety = new()
    {
        Name = "ring_safety", Title = "Load of the ring over the force", Formula = "F_Rg/F_A", Source = "closed form",
    };

    public static readonly QuantityKind Speed = new()
    {
        Name = "speed", Symbol = "n", Title = "Greatest speed of the shaft under the ring", Unit = Units.RevolutionPerMinute, Scale = 1,
        Formula = "|n| of its body", Source = "kinematics",
    };

    public static readonly QuantityKind SpeedShare = new()
    {
        Name = "speed_share", Symbol = "n/n_abl", Title = "Speed over that at which the ring lifts off", Formula = "n/n_abl, by the supplier or DIN 471", Source = Standard,
        Certainty = Certainty.Published,
    };

    public static readonly ImmutableArray<QuantityKind> All =
        [Sits, Diameter, Groove, AxialForce, Land, LandRatio, GrooveLoad, GrooveSafety, RingLoad, RingSafety, Speed, SpeedShare];
}
