namespace Pawl.Mechanics.Rating;

/// <summary>Stiffness of teeth in contact for a unit of face width, N/mm² (14 000 N/mm² = 14 N/(mm·µm)).</summary>
public static class MeshStiffness
{
    /// <summary>c′ of steel teeth on ISO 53 profiles, method C.</summary>
    public const double OfSteel = 14_000;

    private const double FullLineLoad = 100;

    /// <summary>Stiffness of one pair of steel teeth, c′.</summary>
    /// <remarks>
    /// <code>c′ = 14 000;  w &lt; 100 N/mm: c′ = 14 000 · (w/100)^0.25</code>
    /// Symbols: c′ in N/mm²; w = F_t·K_A·K_γ/b line load, N/mm.<br/>
    /// Source: ISO 6336-1, tooth stiffness, method C; the fourth root from memory, less sure.<br/>
    /// Valid for: steel on steel, discs or heavy rims, helix angles up to 45°.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SinglePair(double lineLoad) =>
        OfSteel * Math.Pow(Math.Min(Guard.Positive(lineLoad, "the line load") / FullLineLoad, 1), 0.25);

    /// <summary>Mean mesh stiffness c_γα of the teeth in contact, for profile and pitch deviations.</summary>
    /// <remarks>
    /// <code>c_γα = c′ · (0.75·ε_α + 0.25)</code>
    /// Symbols: c′ stiffness of one pair, N/mm²; ε_α transverse contact ratio.<br/>
    /// Source: ISO 6336-1, mesh stiffness.<br/>
    /// Valid for: ε_α ≥ 1; good to about a tenth for ε_α ≥ 1.2.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Transverse(double singlePair, double transverseContactRatio) =>
        Guard.Positive(singlePair, "the tooth stiffness") * (0.75 * Overlap.Transverse(transverseContactRatio) + 0.25);

    /// <summary>Mesh stiffness c_γβ for deviations along the face.</summary>
    /// <remarks>
    /// <code>c_γβ = 0.85 · c_γα</code>
    /// Symbols: c_γα mean mesh stiffness, N/mm².<br/>
    /// Source: ISO 6336-1, mesh stiffness.<br/>
    /// Valid for: as c_γα.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double AlongFace(double transverse) => 0.85 * Guard.Positive(transverse, "the mesh stiffness");
}
