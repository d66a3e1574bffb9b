using Pawl.Mechanics.Gears;

namespace Pawl.Analysis.Gears;

/// <summary>Formulas of the mechanics as a mesh asks for them.</summary>
internal static class MeshFormulas
{
    /// <summary>Loss factor H_v, where its source covers the contact ratio.</summary>
    public static double LossOf(int z1, int z2, double baseHelix, double tip1, double tip2, double working)
    {
        var contactRatio = Sliding.TipContactRatio(z1, tip1, working) + Sliding.TipContactRatio(z2, tip2, working);
        return contactRatio is >= 1 and <= 2
            ? Sliding.LossFactor(z1, z2, baseHelix, tip1, tip2, working)
            : throw Guard.Because($"the transverse contact ratio is {contactRatio:0.###}; the source of the loss factor covers 1 to 2");
    }

    /// <summary>Slack in rad; tips whose circles do not cross are as free as a full turn.</summary>
    public static double Slack(Interference interference) => interference switch
    {
        Interference.Slack slack => slack.Radians,
        Interference.TipCirclesApart => Math.Tau,
        Interference.NotEvaluable because => throw new OutsideValidityException(because.Reason),
        _ => throw new InvalidOperationException("An interference has three cases."),
    };
}
