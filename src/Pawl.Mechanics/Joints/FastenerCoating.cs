using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Joints;

/// <summary>A coating of a fastener.</summary>
/// <param name="Name">As the table has it, such as <c>electroplated zinc</c>.</param>
/// <param name="BringsHydrogen">Whether the process brings hydrogen into the steel.</param>
/// <remarks>Source: ISO 4042, ISO 10683, ISO 9587; table <c>fastener-coatings</c>.</remarks>
public sealed record FastenerCoating(string Name, bool BringsHydrogen)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "fastener-coatings";

    private static ImmutableArray<FastenerCoating> _all;

    /// <summary>All coatings of the table.</summary>
    public static ImmutableArray<FastenerCoating> All => _all.IsDefault ? _all = Read() : _all;

    /// <summary>The coating of a name, or the reason why there is none.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out FastenerCoating? coating, [NotNullWhen(false)] out string? reason) =>
        JointTables.TryFind(All, row => row.Name, name, "coating", out coating, out reason);

    private static ImmutableArray<FastenerCoating> Read()
    {
        var read = ImmutableArray.CreateBuilder<FastenerCoating>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
            read.Add(new FastenerCoating(rows.NextField().ToString(), rows.NextField() is "yes"));
        return read.ToImmutable();
    }
}
