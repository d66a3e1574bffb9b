namespace Pawl.Mechanics.Rating;

/// <summary>Stress at the root of a tooth.</summary>
public static class RootStress
{
    /// <summary>Face width that the root of one gear is calculated with.</summary>
    /// <remarks>
    /// <code>b_F = min( b, b_common + 2·m_n )</code>
    /// Symbols: b face width of this gear, b_common width in contact, m_n normal module, mm.<br/>
    /// Source: ISO 6336-3, face widths: not more than one module of a longer tooth at each end.<br/>
    /// Valid for: b ≥ b_common.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double FaceWidth(double faceWidth, double commonFaceWidth, double normalModule) =>
        Guard.Positive(faceWidth, "the face width", "mm") >= Guard.Positive(commonFaceWidth, "the common face width")
            ? Math.Min(faceWidth, commonFaceWidth + 2 * Guard.Positive(normalModule, "the normal module"))
            : throw Guard.Because(
                $"the face width {faceWidth:0.####} mm is less than the common face width {commonFaceWidth:0.####} mm");

    /// <summary>Nominal root stress σ_F0, MPa.</summary>
    /// <remarks>
    /// <code>σ_F0 = F_t/(b·m_n) · Y_F·Y_S·Y_β·Y_B·Y_DT</code>
    /// Symbols: F_t tangential force at the reference circle, N; b face width (<see cref="FaceWidth"/>), m_n normal module, mm; Y
    /// form (times f_ε after the edition of 2019), stress correction, helix, rim and deep tooth factors.<br/>
    /// Source: ISO 6336-3, nominal tooth root stress.<br/>
    /// Valid for: as the factors.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Nominal(
        double tangentialForce,
        double faceWidth,
        double normalModule,
        double form,
        double stressCorrection,
        double helixAngle = 1,
        double rim = 1,
        double deepTooth = 1) =>
        Guard.Finite(
            Guard.NotNegative(tangentialForce, "the tangential force", "N") / Guard.Positive(faceWidth, "the face width")
                / Guard.Positive(normalModule, "the normal module")
                * Factor(form) * Factor(stressCorrection) * Factor(helixAngle) * Factor(rim) * Factor(deepTooth),
            "the nominal root stress");

    /// <summary>Root stress σ_F, MPa.</summary>
    /// <remarks>
    /// <code>σ_F = σ_F0·K_A·K_γ·K_v·K_Fβ·K_Fα</code>
    /// Symbols: σ_F0 nominal root stress, MPa; K application, mesh load, dynamic, face load and transverse load factors.<br/>
    /// Source: ISO 6336-3, tooth root stress.<br/>
    /// Valid for: as the factors.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double WithLoadFactors(
        double nominal, double application, double meshLoad, double dynamic, double faceLoad, double transverseLoad) =>
        Guard.Finite(
            Guard.NotNegative(nominal, "the nominal root stress", "MPa") * Factor(application) * Factor(meshLoad) * Factor(dynamic)
                * Factor(faceLoad) * Factor(transverseLoad),
            "the root stress");

    private static double Factor(double value) => Guard.Positive(value, "a factor of the root stress");

    /// <summary>Permissible root stress σ_FP at one life, MPa; with S_F = 1 the strength σ_FG.</summary>
    /// <remarks>
    /// <code>σ_FP = σ_Flim·Y_ST·Y_NT·Y_δrelT·Y_RrelT·Y_X·Y_M / S_F,  Y_ST = 2</code>
    /// Symbols: σ_Flim nominal stress number, MPa; Y_NT life, Y_δrelT relative notch sensitivity, Y_RrelT relative surface, Y_X
    /// size, Y_M mean stress factors; S_F safety factor demanded.<br/>
    /// Source: ISO 6336-3, permissible bending stress; Y_M from its annex on mean stress.<br/>
    /// Valid for: σ_Flim of ISO 6336-5, found on test gears with Y_ST = 2. Factors all static or all for endurance.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Permissible(
        double stressNumber,
        double life,
        double notchSensitivity,
        double surface,
        double size,
        double meanStress = 1,
        double safety = 1) =>
        Guard.Finite(
            Guard.Positive(stressNumber, "the nominal stress number") * 2
                * Factor(life) * Factor(notchSensitivity) * Factor(surface) * Factor(size) * Factor(meanStress)
                / Guard.Positive(safety, "the safety factor"),
            "the permissible root stress");
}
