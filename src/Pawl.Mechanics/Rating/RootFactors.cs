namespace Pawl.Mechanics.Rating;

/// <summary>Editions of ISO 6336-3 whose factors differ.</summary>
public enum RootEdition
{
    /// <summary>ISO 6336-3:2006.</summary>
    Iso2006,

    /// <summary>ISO 6336-3:2019.</summary>
    Iso2019,
}

/// <summary>Factors of the root stress.</summary>
public static class RootFactors
{
    /// <summary>Form factor Y_F, load at the outer point of single pair contact.</summary>
    /// <remarks>
    /// <code>Y_F = 6·(h_Fe/m_n)·cos α_Fen / ( (s_Fn/m_n)²·cos α_n )</code>
    /// Symbols: of the root section; m_n normal module, mm; α_n normal pressure angle, rad.<br/>
    /// Source: ISO 6336-3, form factor, method B. The edition of 2019 multiplies by f_ε (<see cref="LoadDistribution"/>), kept
    /// apart.<br/>
    /// Valid for: as the section.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Form(RootSection section, double normalModule, double normalPressureAngle) =>
        Guard.Finite(
            6 * Guard.Positive(section.LeverArm, "the lever arm h_Fe", "mm") * Guard.Positive(normalModule, "the normal module") * Math.Cos(Angle(section.LoadAngle))
                / (Guard.Positive(section.Chord, "the root chord s_Fn", "mm") * section.Chord
                    * Math.Cos(Guard.AcuteAboveZero(normalPressureAngle, "the normal pressure angle"))),
            "the form factor");

    private static double Angle(double load) =>
        Math.Abs(load) < Math.PI / 2
            ? load
            : throw Guard.Because($"the load angle α_Fen must lie between −90° and 90°; it is {load * 180 / Math.PI:0.######}°");

    /// <summary>Stress correction factor Y_S.</summary>
    /// <remarks>
    /// <code>Y_S = (1.2 + 0.13·L)·q_s^( 1/(1.21 + 2.3/L) ),  L = s_Fn/h_Fe,  q_s = s_Fn/(2·ρ_F)</code>
    /// Symbols: of the root section.<br/>
    /// Source: ISO 6336-3, stress correction factor.<br/>
    /// Valid for: 1 ≤ q_s &lt; 8; no grinding notch near the section.
    /// </remarks>
    public static double StressCorrection(RootSection section)
    {
        var ratio = Guard.Positive(section.ChordOverArm, "the ratio of chord and arm");
        return section.NotchParameter is >= 1 and < 8
            ? (1.2 + 0.13 * ratio) * Math.Pow(section.NotchParameter, 1 / (1.21 + 2.3 / ratio))
            : throw Guard.Because(
                $"no stress correction factor: the notch parameter q_s must lie from 1 to below 8; it is {section.NotchParameter:0.###}");
    }

    /// <summary>Factor f_ε of the edition of 2019: load shared along and across the contact lines.</summary>
    /// <remarks>
    /// <code>
    /// ε_β = 0: 1 for ε_αn &lt; 2, 0.7 for ε_αn ≥ 2
    /// 0 &lt; ε_β &lt; 1: √(1 − ε_β + ε_β/ε_αn) for ε_αn &lt; 2, √((1 − ε_β)/2 + ε_β/ε_αn) for ε_αn ≥ 2
    /// ε_β ≥ 1: 1/√ε_αn
    /// </code>
    /// Symbols: ε_β overlap ratio; ε_αn transverse contact ratio of the virtual gear, ε_α/cos² β_b.<br/>
    /// Source: ISO 6336-3:2019, factor f_ε (from memory). The edition of 2006 has none: there it is 1.<br/>
    /// Valid for: ε_αn ≥ 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double LoadDistribution(double overlapRatio, double virtualContactRatio)
    {
        var overlap = Overlap.UpToOne(overlapRatio);
        if (!(virtualContactRatio >= 1) || !double.IsFinite(virtualContactRatio))
        {
            throw Guard.Because($"no factor f_ε: the contact ratio must be at least 1; it is {virtualContactRatio:0.####}");
        }

        return (overlap, virtualContactRatio) switch
        {
            (0, < 2) => 1,
            (0, _) => 0.7,
            ( < 1, < 2) => Math.Sqrt(1 - overlap + overlap / virtualContactRatio),
            ( < 1, _) => Math.Sqrt((1 - overlap) / 2 + overlap / virtualContactRatio),
            _ => 1 / Math.Sqrt(virtualContactRatio),
        };
    }

    /// <summary>Helix angle factor Y_β.</summary>
    /// <remarks>
    /// <code>
    /// 2006: Y_β = 1 − min(ε_β, 1)·min(β, 30°)/120°
    /// 2019: Y_β = ( 1 − min(ε_β, 1)·min(β, 30°)/120° ) / cos³ β
    /// </code>
    /// Symbols: ε_β overlap ratio; β helix angle, rad, of either hand.<br/>
    /// Source: ISO 6336-3, helix angle factor, of the edition named (that of 2019 from memory, less sure).<br/>
    /// Valid for: |β| &lt; 90°.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double HelixAngle(double overlapRatio, double helixAngle, RootEdition edition)
    {
        var helix = Math.Abs(Guard.Helix(helixAngle));
        var factor = 1 - Overlap.UpToOne(overlapRatio) * Math.Min(helix, Math.PI / 6) / (2 * Math.PI / 3);
        return edition == RootEdition.Iso2019 ? factor / Math.Pow(Math.Cos(helix), 3) : factor;
    }

    /// <summary>Rim thickness factor Y_B of an external gear.</summary>
    /// <remarks>
    /// <code>s_R/h_t ≥ 1.2: 1;  0.5 &lt; s_R/h_t &lt; 1.2: 1.6·ln(2.242·h_t/s_R)</code>
    /// Symbols: s_R thickness of the rim below the root, h_t tooth depth, mm.<br/>
    /// Source: ISO 6336-3, rim thickness factor.<br/>
    /// Valid for: s_R/h_t above 0.5.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RimOfExternal(double rimThickness, double toothDepth)
    {
        var ratio = Guard.Positive(rimThickness, "the rim thickness") / Guard.Positive(toothDepth, "the tooth depth");
        return ratio switch
        {
            >= 1.2 => 1,
            > 0.5 => 1.6 * Math.Log(2.242 / ratio),
            _ => throw Guard.Because(
                $"no rim factor: the rim must be thicker than 0.5 of the tooth depth; it is {ratio:0.###} of it"),
        };
    }

    /// <summary>Rim thickness factor Y_B of an internal gear.</summary>
    /// <remarks>
    /// <code>s_R/m_n ≥ 3.5: 1;  1.75 &lt; s_R/m_n &lt; 3.5: 1.15·ln(8.324·m_n/s_R)</code>
    /// Symbols: s_R thickness of the rim behind the root, m_n normal module, mm.<br/>
    /// Source: ISO 6336-3, rim thickness factor.<br/>
    /// Valid for: s_R/m_n above 1.75.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RimOfInternal(double rimThickness, double normalModule)
    {
        var ratio = Guard.Positive(rimThickness, "the rim thickness")
            / Guard.Positive(normalModule, "the normal module");
        return ratio switch
        {
            >= 3.5 => 1,
            > 1.75 => 1.15 * Math.Log(8.324 / ratio),
            _ => throw Guard.Because(
                $"no rim factor: the rim of an internal gear must be thicker than 1.75 modules; it has {ratio:0.###}"),
        };
    }
}
