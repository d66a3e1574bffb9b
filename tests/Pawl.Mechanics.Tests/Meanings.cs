namespace Pawl.Mechanics.Tests;

/// <summary>Values out of the ordinary that have a meaning, and why.</summary>
internal static class Meanings
{
    public static readonly string[] WithoutBaseline = [];

    public static bool OfNoNumber(string function, string parameter, string value) => false;

    public static bool OfSign(string function, string parameter) => false;
}
