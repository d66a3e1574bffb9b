namespace Pawl.Mechanics.Tests.Rating;

/// <summary>Expects a formula to refuse, with its reason as the whole message.</summary>
internal static class Refusal
{
    public static void Says(string reason, Func<double> formula)
    {
        var refusal = Assert.Throws<OutsideValidityException>(() => formula());
        Assert.Contains(reason, refusal.Message, StringComparison.Ordinal);
    }
}
