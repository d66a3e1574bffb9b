using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Seals;

/// <summary>An O-ring in its gland, at the worst case of ring, gland and eccentricity.</summary>
public static class ORingQuantities
{
    private const string Closed = "closed form";

    public static readonly QuantityKind Elastomer = Text("elastomer", "Elastomer, code of ISO 1629");
    public static readonly QuantityKind Gland = Text("gland", "Where the groove is");
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
        Name = "eccentricity", Symbol = "e", Title = "Radial offset of the two parts", Unit = Units.Millimetre, Scale = 0.01,
        Formula = "from −e to +e as stated; else half the play of the plug in its bore", Source = Closed,
    };

    public static readonly QuantityKind Stretch = new()
    {
        Name = "stretch", Title = "Stretch of the inside diameter", Unit = Units.Percent, Scale = 0.05,
        Formula = "(D − d_1)/d_1, D the groove of a plug or the rod in a bore; 0 where the ring is the larger", Symbols = ["D", "d_1"], Source = Closed,
    };

    public static readonly QuantityKind Compression = new()
    {
        Name = "outside_compression", Title = "Compression of the outside diameter", Unit = Units.Percent, Scale = 0.03,
        Formula = "(d_1 + 2·d_2 − D_G)/(d_1 + 2·d_2)", Symbols = ["d_1", "d_2", "D_G"], Source = Closed,
    };

    public static readonly QuantityKind Squeeze = new()
    {
        Name = "squeeze", Title = "Squeeze of the cord", Unit = Units.Percent,
        Formula = "(d_2′ − h)/d_2′, h the height of the gland with its eccentricity, d_2′ the cord after stretch", Source = Closed, Scale = 0.1,
    };

    public static readonly QuantityKind SqueezeLength = new()
    {
        Name = "squeeze_length", Title = "Squeeze of the cord in length", Unit = Units.Millimetre, Formula = "d_2′ − h", Source = Closed, Scale = 0.1,
    };

    public static readonly QuantityKind Fill = new()
    {
        Name = "gland_fill", Title = "Fill of the gland, hot and swollen", Unit = Units.Percent,
        Formula = "π/4·d_2′²·(1 + 3·α·ΔT)·(1 + swell)/(h·w)", Source = "closed form; expansion of elastomers common practice, no source",
        Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Gap = new()
    {
        Name = "extrusion_gap", Title = "Diametral gap that the ring may be pressed into", Unit = Units.Millimetre,
        Formula = "D_B − D_P", Symbols = ["D_B", "D_P"], Source = Closed, Scale = 0.1,
    };

    private static QuantityKind Text(string name, string title) =>
        new() { Name = name, Title = title, ValueKind = ValueKind.Text, Certainty = Certainty.Declared };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Elastomer, Gland, Motion, Inside, Cord, Bore, Plug, Groove, Depth, Width, Eccentricity, Stretch, Compression, Squeeze, SqueezeLength, Fill, Gap,
    ];
}
