using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Joints;

/// <summary>A way to tighten, and how far its preloads scatter.</summary>
/// <param name="Name">As the table has it, such as <c>torque wrench with friction estimated</c>.</param>
/// <param name="Min">Least tightening factor α_A, 1.</param>
/// <param name="Max">Greatest tightening factor α_A, 1; none when nobody vouches for one.</param>
/// <remarks>
/// Source: VDI 2230 Part 1; table <c>tightening-factors</c>. The lower end is for stiff joints and smooth faces, the upper for soft
/// joints, rough faces and fine threads.
/// </remarks>
public sealed record TighteningMethod(string Name, double Min, double? Max)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "tightening-factors";

    private static ImmutableArray<TighteningMethod> _all;

    /// <summary>All ways of the table, the surest first.</summary>
    public static ImmutableArray<TighteningMethod> All => _all.IsDefault
        ? _all = JointTables.Read(TableId, (name, rest) => new TighteningMethod(name, rest[0], JointTables.Known(rest[1])), 2)
        : _all;

    /// <summary>The way of a name, or the reason why there is none.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out TighteningMethod? method, [NotNullWhen(false)] out string? reason) =>
        JointTables.TryFind(All, row => row.Name, name, "way to tighten", out method, out reason);
}

/// <summary>A class of friction in thread and under the head.</summary>
/// <param name="Name">A to E.</param>
/// <param name="Min">Least coefficient µ, 1.</param>
/// <param name="Max">Greatest coefficient µ, 1; none for class E.</param>
/// <remarks>
/// Source: VDI 2230 Part 1; table <c>vdi2230-friction-classes</c>. The least friction strains the bolt most, the greatest clamps least.
/// </remarks>
public sealed record FrictionClass(string Name, double Min, double? Max)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "vdi2230-friction-classes";

    private static ImmutableArray<FrictionClass> _all;

    /// <summary>All classes, the slipperiest first.</summary>
    public static ImmutableArray<FrictionClass> All => _all.IsDefault
        ? _all = JointTables.Read(TableId, (name, rest) => new FrictionClass(name, rest[0], JointTables.Known(rest[1])), 2)
        : _all;

    /// <summary>The class of a letter, or the reason why there is none.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out FrictionClass? found, [NotNullWhen(false)] out string? reason) =>
        JointTables.TryFind(All, row => row.Name, name, "class of friction", out found, out reason);
}

/// <summary>Tables whose rows are a name and numbers.</summary>
internal static class JointTables
{
    public static ImmutableArray<T> Read<T>(string id, Func<string, double[], T> row, int numbers)
    {
        var read = ImmutableArray.CreateBuilder<T>();
        var rows = StandardTable.Read(id).Rows();
        while (rows.NextRow())
        {
            var name = rows.NextField().ToString();
            var rest = new double[numbers];
            for (var column = 0; column < numbers; column++)
                rest[column] = rows.NextNumber();
            read.Add(row(name, rest));
        }

        return read.ToImmutable();
    }

    public static double? Known(double number) => double.IsNaN(number) ? null : number;

    public static bool TryFind<T>(
        ImmutableArray<T> all,
        Func<T, string> name,
        string expected,
        string what,
        [NotNullWhen(true)] out T? found,
        [NotNullWhen(false)] out string? reason)
        where T : class
    {
        found = all.FirstOrDefault(row => string.Equals(name(row), expected.Trim(), StringComparison.OrdinalIgnoreCase));
        reason = found is null ? $"the table has no {what} `{expected}`; it has {string.Join(", ", all.Select(name))}" : null;
        return found is not null;
    }
}
