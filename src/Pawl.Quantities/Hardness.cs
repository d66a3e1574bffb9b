using System.Diagnostics.CodeAnalysis;

namespace Pawl.Quantities;

/// <summary>Scales in which hardness is measured. They are not proportional: conversion goes by the tables of ISO 18265.</summary>
public enum HardnessScale
{
    /// <summary>Vickers, HV (ISO 6507).</summary>
    Vickers,

    /// <summary>Rockwell C, HRC (ISO 6508).</summary>
    RockwellC,

    /// <summary>Brinell with a carbide ball, HBW (ISO 6506).</summary>
    Brinell,
}

/// <summary>A hardness with its window as on a drawing, in its own scale.</summary>
/// <param name="Scale">The scale as written.</param>
/// <param name="Nominal">As written, or the middle of the window.</param>
/// <param name="Min">Lower end of the window; equal to the nominal when none is written.</param>
/// <param name="Max">Upper end of the window.</param>
public sealed record Hardness(HardnessScale Scale, double Nominal, double Min, double Max)
{
    /// <summary>
    /// Reads <c>58..62 HRC</c>, <c>60 HRC ±2</c>, <c>60 +2/-2 HRC</c>, <c>58 +4 HRC</c>, <c>60 HRC (58..61)</c>, <c>HRC 60</c>, <c>700 HV</c>,
    /// <c>280..320 HBW</c>; the test load may follow its scale: <c>700 HV10</c>.
    /// </summary>
    public static bool TryParse(
        ReadOnlySpan<char> text, [NotNullWhen(true)] out Hardness? hardness, [NotNullWhen(false)] out NotationError? error) =>
        HardnessNotation.TryRead(text, out hardness, out error);

    /// <summary>As <see cref="TryParse"/> reads it.</summary>
    public override string ToString() => HardnessNotation.Write(this);

    /// <summary>The symbol of a scale.</summary>
    public static string SymbolOf(HardnessScale scale) => scale switch
    {
        HardnessScale.Vickers => "HV",
        HardnessScale.RockwellC => "HRC",
        HardnessScale.Brinell => "HBW",
        _ => throw new ArgumentOutOfRangeException(nameof(scale), scale, "There is no such scale."),
    };

    /// <summary>Where a scale is defined or of use: HRC 20 to 70 (ISO 6508-1), HBW up to 650 (ISO 6506-1), HV up to 3000. From memory.</summary>
    public static (double Min, double Most) RangeOf(HardnessScale scale) => scale switch
    {
        HardnessScale.RockwellC => (20, 70),
        HardnessScale.Brinell => (3, 650),
        _ => (1, 3000),
    };
}
