using System.Globalization;
using System.Text.RegularExpressions;

namespace Pawl.Fuzz;

/// <summary>Spoils trees and texts at random; the same random numbers give the same result.</summary>
/// <param name="seeds">What keys and values are borrowed from.</param>
public sealed partial class Mutator(IReadOnlyList<Node> seeds)
{
    private static readonly string[] Numbers =
    [
        "0", "-0", "1", "-1", "2", "0.5", "1e308", "-1e308", "1.7976931348623157e308", "1e-308", "5e-324", "1e400", "1e9", "1e-9", "100000", "-100000", "2000", "24",
        "2147483647", "2147483648", "9223372036854775808", ".inf", ".nan", "1e5", "1e-5", "1e17", "1e30", "1e100", "1e-100", "360", "89.999999",
    ];

    private static readonly double[] Factors = [-1, 1e-6, 1e-3, 0.1, 0.5, 0.9, 0.999, 1.001, 1.1, 2, 10, 1e3, 1e6];

    private static readonly string[] Pieces =
    [
        ": ", "\n", "\n  ", "- ", "[", "]", "{", "}", ", ", "'", "\"", "|\n", "#", "&x ", "*x", "!!str ", "---\n", "<<: ", "~", "null", "\t", "\\", "\uFEFF", "\u2028", "\0", "😀", " mm", "°", "±", " +0.1/-0.1",
        "1", ".", "e", "-", "/", "..", "<",
    ];

    private static readonly string[] Empty = ["~", "[]", "{}", "\"\"", "true", "0"];

    private readonly Node[] _pool = [.. seeds.SelectMany(s => s.All())];
    private readonly string[] _keys = [.. seeds.SelectMany(s => s.All()).Where(n => n.IsMap).SelectMany(n => n.Items.Select(i => i.Key)).Distinct()];
    private readonly ILookup<string, Node> _byKey = seeds.SelectMany(s => s.All()).Where(n => n.IsMap).SelectMany(n => n.Items).ToLookup(i => i.Key, i => i.Value);

    /// <summary>The tree as text, with one to five changes to the tree and at times some to the text.</summary>
    public string Spoil(Node tree, Random random)
    {
        for (var changes = 1 + random.Next(random.Next(1, 5)); changes > 0; changes--)
            Change(tree, random);
        var text = tree.ToString();
        for (var changes = random.Next(8) == 0 ? random.Next(1, 4) : 0; changes > 0; changes--)
        {
            var at = random.Next(text.Length + 1);
            var to = Math.Min(text.Length, at + random.Next(random.Next(1, 40)));
            text = text[..at] + (random.Next(4) == 0 ? ((char)random.Next(0xE000)).ToString() : Any(Pieces, random)) + text[to..];
        }

        return text;
    }

    private void Change(Node tree, Random random)
    {
        var all = tree.All().ToArray();
        var scalars = Array.FindAll(all, n => n.Scalar is not null);
        var parents = Array.FindAll(all, n => n.Items.Count > 0);
        if (parents.Length == 0 || (random.Next(5) < 2 && scalars.Length > 0))
        {
            if (scalars.Length == 0)
                return;
            var scalar = Any(scalars, random);
            scalar.Scalar = random.Next(8) == 0 ? Any(_pool, random).Scalar ?? "1" : Number(scalar.Scalar!, random);
            return;
        }

        var parent = Any(parents, random);
        var items = parent.Items;
        var (one, other) = (random.Next(items.Count), random.Next(items.Count));
        switch (random.Next(14))
        {
            case 0 or 1:
                items.RemoveAt(one);
                break;
            case 2:
                items.Insert(other, (parent.IsMap && random.Next(3) > 0 ? $"{items[one].Key}_{other}" : items[one].Key, items[one].Value.Copy()));
                break;
            case 3:
                (items[one], items[other]) = ((items[one].Key, items[other].Value), (items[other].Key, items[one].Value));
                break;
            case 4:
                items[one] = (parent.IsMap ? Any(_keys, random) : "", items[one].Value);
                break;
            case 5:
                items[one] = (items[one].Key, new() { Scalar = Any(Empty, random) });
                break;
            case 6:
                for (var count = random.Next(20) == 0 ? 100 : random.Next(1, 6); count > 0; count--)
                    items.Add((parent.IsMap ? $"{items[one].Key}_{count}" : "", items[one].Value.Copy()));
                break;
            case 7:
                items[one] = (items[one].Key, Any(_pool, random).Copy());
                break;
            case < 13:
                if (_byKey[items[one].Key].ToArray() is { Length: > 0 } alike)
                    items[one] = (items[one].Key, Any(alike, random).Copy());
                break;
            default:
                var donor = Any(_pool, random);
                if (donor.IsMap == parent.IsMap && donor.Items.Count > 0)
                {
                    var (key, value) = donor.Items[random.Next(donor.Items.Count)];
                    items.Add((key, value.Copy()));
                }

                break;
        }
    }

    private string Number(string scalar, Random random)
    {
        var matches = NumberPattern().Matches(scalar);
        if (matches.Count == 0)
            return random.Next(3) switch { 0 => Any(Numbers, random), 1 => scalar + Any(Pieces, random), _ => Any(_pool, random).Scalar ?? scalar };

        var match = matches[random.Next(matches.Count)];
        var changed = random.Next(3) == 0
            ? Any(Numbers, random)
            : (double.Parse(match.Value, CultureInfo.InvariantCulture) * Any(Factors, random)).ToString(random.Next(2) == 0 ? "0.######" : "R", CultureInfo.InvariantCulture);
        return scalar[..match.Index] + changed + scalar[(match.Index + match.Length)..];
    }

    private static T Any<T>(T[] from, Random random) => from[random.Next(from.Length)];

    [GeneratedRegex(@"(?<![A-Za-z0-9_.-])[-+]?\d+(\.\d+)?([eE][-+]?\d+)?")]
    private static partial Regex NumberPattern();
}
