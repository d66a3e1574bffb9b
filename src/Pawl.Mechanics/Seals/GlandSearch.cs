namespace Pawl.Mechanics.Seals;

/// <summary>Least and greatest of a value that turns at known places only: the ends and these are tried.</summary>
internal static class GlandSearch
{
    public static double Least(Extent range, Func<double, double> value, params ReadOnlySpan<double> turns) =>
        -Greatest(range, at => -value(at), turns);

    public static double Greatest(Extent range, Func<double, double> value, params ReadOnlySpan<double> turns)
    {
        var greatest = Math.Max(value(range.Least), value(range.Greatest));
        foreach (var turn in turns)
            greatest = Math.Max(greatest, value(range.Clamp(turn)));
        return greatest;
    }
}
