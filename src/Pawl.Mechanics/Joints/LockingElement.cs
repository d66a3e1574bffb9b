using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Joints;

/// <summary>What keeps a thread from turning.</summary>
/// <param name="Name">As the table has it, such as <c>anaerobic medium strength</c>.</param>
/// <param name="Method">none, friction, form or adhesive.</param>
/// <param name="Rating">Where its temperatures come from: published, usual, none where it has none.</param>
/// <param name="Coldest">Coldest temperature for good, °C; none where it has no limit of its own.</param>
/// <param name="Hottest">Hottest temperature for good, °C.</param>
/// <param name="MaxUses">How often it may go on, its first time counted; none where it does not matter.</param>
/// <remarks>Source: ISO 2320 for prevailing torque nuts, common practice for the rest; table <c>locking-elements</c>. The maker's own figure goes before.</remarks>
public sealed record LockingElement(string Name, string Method, string Rating, double? Coldest, double? Hottest, double? MaxUses)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "locking-elements";

    private static ImmutableArray<LockingElement> _all;

    /// <summary>All elements of the table.</summary>
    public static ImmutableArray<LockingElement> All => _all.IsDefault ? _all = Read() : _all;

    /// <summary>The element of a name, or the reason why there is none.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out LockingElement? element, [NotNullWhen(false)] out string? reason) =>
        JointTables.TryFind(All, row => row.Name, name, "locking element", out element, out reason);

    private static ImmutableArray<LockingElement> Read()
    {
        var read = ImmutableArray.CreateBuilder<LockingElement>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            read.Add(new LockingElement(
                rows.NextField().ToString(), rows.NextField().ToString(), rows.NextField().ToString(), JointTables.Known(rows.NextNumber()),
                JointTables.Known(rows.NextNumber()), JointTables.Known(rows.NextNumber())));
        }

        return read.ToImmutable();
    }
}
