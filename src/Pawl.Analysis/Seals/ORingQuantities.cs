using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Seals;

/// <summary>An O-ring in its gland, at the worst case of ring, gland and eccentricity.</summary>
public static class ORingQuantities
{
    private const string Closed = "closed form";

    public static readonly QuantityKind Elastomer = Text("elastomer", "Elastomer, code of ISO 1629");
    public static readonly QuantityKind OilBase = Text("oil_base", "Base of the oil");

    public static readonly QuantityKind Suitability = new()
    {
        Name = "suitability", Title = "What the elastomer makes of the oil", ValueKind = ValueKind.Text,
        Formula = "table elastomers, by elastomer and base: suitable, limited, unsuitable", Source = "common practice, no source",
        Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Gland = Text("gland", "Where the groove is");
    public static readonly QuantityKind Direction = new()
    {
        Name = "direction", Title = "Direction of the squeeze", ValueKind = ValueKind.Text, Formula = "radial of a plug or bore, axial of a face", Source = Closed,
    };

    public static readonly QuantityKind Motion = Text("motion", "Static, reciprocating or rotating");

    public static readonly QuantityKind Inside = new()
    {
        Name = "inside_diameter", Symbol = "d_1", Title = "Inside diameter of the free ring", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Cord = new()
    {
        Name = "cord", Symbol = "d_2", Title = "Diameter of the free cord", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Bore = new()
    {
        Name = "bore", Symbol = "D_B", Title = "Bore of the outer part", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Plug = new()
    {
        Name = "plug", Symbol = "D_P", Title = "Diameter of the inner part", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Groove = new()
    {
        Name = "groove", Symbol = "D_G", Title = "Diameter of the bottom of the groove", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Depth = new()
    {
        Name = "depth", Symbol = "h", Title = "Depth of the face groove", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Width = new()
    {
        Name = "width", Symbol = "w", Title = "Width of the groove", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Eccentricity = new()
    {
        Name = "eccentricity", Symbol = "e", Title = "Greatest radial offset that something else allows", Unit = Units.Millimetre,
        Certainty = Certainty.Declared, Note = "absent: the plug may touch its bore",
    };

    public static readonly QuantityKind Height = new()
    {
        Name = "gland_height", Symbol = "h", Title = "Height of the gland around the circumference", Unit = Units.Millimetre,
        Formula = "h = (D_outer − D_inner)/2 ± e, e at most half the play of the plug in its bore; face: the depth", Source = Closed,
    };

    public static readonly QuantityKind Stretch = new()
    {
        Name = "stretch", Title = "Stretch of the inside diameter", Unit = Units.Percent, Scale = 0.05,
        Formula = "(D − d_1)/d_1, D the groove of a plug or the rod in a bore; below 0 the ring is the larger and lies loose", Source = Closed,
    };

    public static readonly QuantityKind Compression = new()
    {
        Name = "outside_compression", Title = "Compression of the outside diameter", Unit = Units.Percent, Scale = 0.03,
        Formula = "(d_1 + 2·d_2 − D_G)/(d_1 + 2·d_2)", Source = Closed,
    };

    public static readonly QuantityKind Squeeze = new()
    {
        Name = "squeeze", Title = "Squeeze of the cord", Unit = Units.Percent,
        Formula = "(d_2′ − h)/d_2′, d_2′ = d_2·√((d_1 + d_2)/(D + d_2)) the cord stretched over D, or d_2·√((d_1 + d_2)/(D − d_2)) pushed into D",
        Source = "closed form; the volume of rubber stays", Scale = 0.1,
    };

    public static readonly QuantityKind SqueezeLength = new()
    {
        Name = "squeeze_length", Title = "Squeeze of the cord in length", Unit = Units.Millimetre, Formula = "d_2′ − h", Source = Closed, Scale = 0.1,
    };

    public static readonly QuantityKind Fill = new()
    {
        Name = "gland_fill", Title = "Fill of the gland, hot and swollen", Unit = Units.Percent,
        Formula = "π/4·d_2′²·(1 + 3·α·ΔT)·(1 + swell)/(h·w), ΔT from 20 °C; nominal without swell",
        Source = "closed form; expansion of elastomers common practice, no source",
        Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Swell = new()
    {
        Name = "swell", Title = "Greatest swell in the oil, by volume", Unit = Units.Percent, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Expansion = new()
    {
        Name = "expansion", Symbol = "α", Title = "Linear expansion of the elastomer, 1/K", Formula = "table elastomers, by elastomer",
        Source = "common practice, no source", Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Service = new()
    {
        Name = "service_temperature", Symbol = "T", Title = "Temperature in service: running, coldest, hottest", Unit = Units.Celsius,
        Formula = "that of the oil", Source = Closed,
    };

    public static readonly QuantityKind Coldest = new()
    {
        Name = "coldest_elastomer", Title = "Coldest that the elastomer seals at, at rest", Unit = Units.Celsius,
        Formula = "table elastomers, by elastomer",
        Source = "common practice, no source", Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Hottest = new()
    {
        Name = "hottest_elastomer", Title = "Hottest that the elastomer stands for good", Unit = Units.Celsius,
        Formula = "table elastomers, by elastomer",
        Source = "common practice, no source", Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Gap = new()
    {
        Name = "extrusion_gap", Title = "Widest gap on one side that the ring may be pressed into", Unit = Units.Millimetre,
        Formula = "half the play of the plug and the offset, on one side", Source = Closed, Scale = 0.1,
    };

    public static readonly QuantityKind PermittedGap = new()
    {
        Name = "permitted_gap", Title = "Widest gap that the rubber bridges at its pressure", Unit = Units.Millimetre,
        Formula = "table o-ring-extrusion-gaps by pressure, in proportion between 70 and 90 IRHD; silicones: half",
        Source = "common practice; a chart of the trade on a public page", Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Hardness = new()
    {
        Name = "hardness", Title = "Hardness of the elastomer, IRHD", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Pressure = new()
    {
        Name = "pressure", Symbol = "p", Title = "Greatest gauge pressure", Unit = Units.Megapascal, Certainty = Certainty.Declared, Scale = 0.01,
    };

    public static readonly QuantityKind Surface = new()
    {
        Name = "surface", Symbol = "Ra", Title = "Roughness of the surface that the ring seals on", Unit = Units.Micrometre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Speed = new()
    {
        Name = "speed", Title = "Sliding speed", Unit = Units.MetrePerSecond, Certainty = Certainty.Declared, Scale = 100,
    };

    public static readonly QuantityKind Land = new()
    {
        Name = "land", Title = "Length of the part that the groove is cut into", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind LeadInLength = new()
    {
        Name = "lead_in_length", Title = "Length of the chamfer at assembly", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind LeadInAngle = new()
    {
        Name = "lead_in_angle", Symbol = "θ", Title = "Angle of the chamfer from the axis", Unit = Units.Degree, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind LeadInNeeded = new()
    {
        Name = "lead_in_needed", Symbol = "z", Title = "Length of chamfer that the ring needs", Unit = Units.Millimetre,
        Formula = "z = |D − D_end|/(2·tan θ), D the ring as it comes to the chamfer: D_G + 2·d_2′ of a plug, D_G − 2·d_2′ of a bore", Source = Closed,
    };

    private static QuantityKind Text(string name, string title) =>
        new() { Name = name, Title = title, ValueKind = ValueKind.Text, Certainty = Certainty.Declared };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Elastomer, OilBase, Suitability, Hardness, Gland, Direction, Motion, Inside, Cord, Bore, Plug, Groove, Depth, Width, Land, Eccentricity, Height, Stretch, Compression, Squeeze,
        SqueezeLength, Swell, Expansion, Service, Coldest, Hottest, Fill, Gap, PermittedGap, Pressure, Surface, Speed, LeadInLength, LeadInAngle, LeadInNeeded,
    ];
}
