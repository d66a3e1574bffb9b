using System.Globalization;

namespace Pawl.Mechanics.Trains;

/// <summary>How names and numbers are put into sentences.</summary>
internal static class Text
{
    public static string Of(int value) => value.ToString(CultureInfo.InvariantCulture);

    public static string Of(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary><c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    public static string List(ImmutableArray<string> names) => names.Length switch
    {
        0 => "nothing",
        1 => names[0],
        var n => string.Join(", ", names.AsSpan(0, n - 1).ToArray()) + " and " + names[n - 1],
    };

    public static string Meshes(ImmutableArray<string> names) =>
        names.Length == 1 ? "mesh " + names[0] : "the meshes " + List(names);

    public static string Loop(ImmutableArray<string> held, ImmutableArray<string> meshes)
    {
        var text = meshes.IsEmpty ? "held bodies " + List(held)
            : held.IsEmpty ? Meshes(meshes)
            : Meshes(meshes) + " with " + List(held) + " held";
        return char.ToUpperInvariant(text[0]) + text[1..];
    }

    public static string Number(int value) => value switch
    {
        1 => "one",
        2 => "two",
        3 => "three",
        4 => "four",
        5 => "five",
        6 => "six",
        _ => Of(value),
    };
}
