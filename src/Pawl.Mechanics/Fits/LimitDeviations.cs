namespace Pawl.Mechanics.Fits;

/// <summary>What a size may differ from its nominal value, mm. Both may have the same sign.</summary>
/// <param name="Lower">Lower deviation, EI or ei.</param>
/// <param name="Upper">Upper deviation, ES or es.</param>
public readonly record struct LimitDeviations(double Lower, double Upper);
