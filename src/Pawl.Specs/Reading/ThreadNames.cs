using System.Globalization;

namespace Pawl.Specs.Reading;

/// <summary>Designations of the threads that ship inside the tool, with their nominal diameters.</summary>
internal static class ThreadNames
{
    private static readonly Lazy<ImmutableArray<(string Name, double Diameter)>> Known = new(Read);

    /// <summary><c>M8</c>, <c>M8x1</c>, <c>1/2-20 UNF</c>.</summary>
    public static IEnumerable<string> All => Known.Value.Select(each => each.Name);

    /// <summary>Nominal diameter of a thread, mm; null when the tables do not have it.</summary>
    public static double? Diameter(string name)
    {
        var expected = Plain(name);
        foreach (var (known, diameter) in Known.Value)
        {
            var plain = Plain(known);
            if (expected == plain || expected == WithoutSeries(plain) || "#" + expected == plain || "#" + expected == WithoutSeries(plain))
                return diameter;
        }

        return null;
    }

    private static string WithoutSeries(string plain) => plain.IndexOf("UN", StringComparison.Ordinal) is > 0 and var series ? plain[..series] : plain;

    // Spaces, signs of multiplication and letter case make no difference.
    private static string Plain(string text) =>
        string.Concat(text.Where(letter => !char.IsWhiteSpace(letter))).Replace('×', 'x').Replace('–', '-').ToUpperInvariant();

    private static ImmutableArray<(string Name, double Diameter)> Read()
    {
        var all = ImmutableArray.CreateBuilder<(string Name, double Diameter)>();
        foreach (var fields in Rows("threads/metric.csv"))
        {
            var diameter = double.Parse(fields[0], Invariant);
            if (fields[2] == "coarse")
                all.Add(($"M{fields[0]}", diameter));
            all.Add(($"M{fields[0]}x{fields[1]}", diameter));
        }

        foreach (var fields in Rows("threads/unified.csv"))
        {
            var size = fields[0].Replace("No. ", "#", StringComparison.Ordinal);
            all.Add(($"{size}-{fields[2]} {fields[3]}", double.Parse(fields[1], Invariant) * 25.4));
        }

        return all.ToImmutable();
    }

    private static IEnumerable<string[]> Rows(string resource)
    {
        using var stream = typeof(ThreadNames).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"{resource} is not embedded.");
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            // Rows begin with a digit or a size; heads and the names of the columns do not.
            if (line.Length > 0 && (char.IsAsciiDigit(line[0]) || line.StartsWith("No. ", StringComparison.Ordinal)))
                yield return line.Split(',');
        }
    }

    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
}
