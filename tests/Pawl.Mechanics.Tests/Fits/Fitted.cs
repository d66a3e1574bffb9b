using Pawl.Mechanics.Fits;

namespace Pawl.Mechanics.Tests.Fits;

/// <summary>Published limits put together, to be compared with published fits.</summary>
internal static class Fitted
{
    /// <summary>ISO 286-1:2010, definitions: C_min = EI − es; C_max = ES − ei, mm.</summary>
    public static FitLimits Of(LimitDeviations hole, LimitDeviations shaft) => new(hole.Lower - shaft.Upper, hole.Upper - shaft.Lower);
}
