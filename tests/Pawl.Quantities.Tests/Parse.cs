namespace Pawl.Quantities.Tests;

/// <summary>Reading that must succeed, or must fail.</summary>
internal static class Parse
{
    public static Unit Unit(string text)
    {
        Assert.True(Units.TryParse(text, out var unit), $"`{text}` is no unit");
        return unit;
    }

    public static Amount Amount(string text)
    {
        Assert.True(Quantities.Amount.TryParse(text, out var amount, out var error), $"`{text}`: {error}");
        return amount;
    }

    public static NotationError NoAmount(string text)
    {
        Assert.False(Quantities.Amount.TryParse(text, out var amount, out var error), $"`{text}` was read as {amount}");
        return error;
    }

    public static Toleranced Toleranced(string text)
    {
        Assert.True(Quantities.Toleranced.TryParse(text, out var dimension, out var error), $"`{text}`: {error}");
        return dimension;
    }

    public static NotationError NotToleranced(string text)
    {
        Assert.False(Quantities.Toleranced.TryParse(text, out var dimension, out var error), $"`{text}` was read as {dimension}");
        return error;
    }
}
