using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

/// <summary>Relations of ISO 21771 that tests set up their gears by.</summary>
internal static class ClosedForms
{
    /// <summary>s_n = m_n·(π/2 + 2·x·tan α_n).</summary>
    public static double NormalThickness(double module, double shift, double angle) => module * ((Math.PI / 2) + (2 * shift * Math.Tan(angle)));

    /// <summary>x_E = x + E_sn/(2·m_n·tan α_n).</summary>
    public static double GeneratingProfileShift(double shift, double allowance, double module, double angle) => shift + (allowance / (2 * module * Math.Tan(angle)));

    /// <summary>e_yt = π·d_y/z − s_yt.</summary>
    public static double TransverseSpaceWidthAt(double diameter, int teeth, double thickness) => (Math.PI * diameter / teeth) - thickness;

    /// <summary>x_1 + x_2 = (inv α_wt − inv α_t)·(z_1 + z_2)/(2·tan α_n).</summary>
    public static double ProfileShiftSum(double working, double transverse, double normal, int teeth1, int teeth2) =>
        (Involute.Of(working) - Involute.Of(transverse)) * (teeth1 + teeth2) / (2 * Math.Tan(normal));

    /// <summary>k = (a_w − a)/m_n − (x_1 + x_2).</summary>
    public static double TipAlteration(double working, double reference, double module, double shifts) => ((working - reference) / module) - shifts;
}
