namespace Pawl.Mechanics.Seals;

/// <summary>Least and greatest of a value that turns at known places only: the ends and these are tried.</summary>
internal static class GlandSearch
{
    public static double Min(Interval range, Func<double, double> value, params ReadOnlySpan<double> turns) =>
        -Max(range, at => -value(at), turns);

    public static double Max(Interval range, Func<double, double> value, params ReadOnlySpan<double> turns)
    {
        var greatest = Math.Max(value(range.Min), value(range.Max));
        foreach (var turn in turns)
            greatest = Math.Max(greatest, value(range.Clamp(turn)));
        return greatest;
    }
}
