using System.Globalization;

namespace Pawl.Reports;

/// <summary>Numbers of things in English.</summary>
internal static class Phrase
{
    public static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary><c>1 check</c>, <c>2 checks</c>.</summary>
    public static string Count(int number, string noun) => number == 1 ? $"1 {noun}" : $"{Whole(number)} {noun}s";

    public static string Verb(int number, string one, string many) => number == 1 ? one : many;
}
