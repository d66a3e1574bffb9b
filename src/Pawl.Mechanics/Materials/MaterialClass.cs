namespace Pawl.Mechanics.Materials;

/// <summary>Classes of gear steel by treatment, as ISO 6336-5 tells them apart. Symbols of the standard in the remarks of each.</summary>
public enum MaterialClass
{
    /// <summary>St: normalised low-carbon steel.</summary>
    Normalised,

    /// <summary>V, carbon steel, through hardened.</summary>
    CarbonThroughHardened,

    /// <summary>V, alloy steel, through hardened.</summary>
    AlloyThroughHardened,

    /// <summary>IF: flame or induction hardened.</summary>
    InductionHardened,

    /// <summary>Eh: case hardened.</summary>
    CaseHardened,

    /// <summary>NT: nitriding steel, gas nitrided.</summary>
    NitridingSteelNitrided,

    /// <summary>NV: through-hardening steel, gas nitrided.</summary>
    ThroughHardeningSteelNitrided,

    /// <summary>NV: through-hardening steel, nitrocarburised.</summary>
    Nitrocarburised,
}

/// <summary>Quality of material and heat treatment after ISO 6336-5.</summary>
public enum MaterialQuality
{
    /// <summary>Modest demands on material and heat treatment.</summary>
    Ml,

    /// <summary>Demands that experienced makers meet at moderate cost.</summary>
    Mq,

    /// <summary>Demands that must be met for highest reliability.</summary>
    Me,
}
