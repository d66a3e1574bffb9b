using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Joints;

/// <summary>The face under the head of a standard metric bolt on a standard hole.</summary>
/// <remarks>Source: ISO 4014, ISO 4017, ISO 4762, ISO 273; table <c>fastener-faces</c>.</remarks>
public static class HeadFace
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "fastener-faces";

    private static ImmutableArray<ImmutableArray<double>> _rows;

    /// <summary>The face of a thread, a head and a hole, or the reason why there is none.</summary>
    /// <remarks>The hole is of the medium series of ISO 273, or of the fine one; a chamfer makes the face smaller.</remarks>
    public static bool TryFind(
        ScrewThread thread, BoltHead head, bool fineHole, [NotNullWhen(true)] out BearingFace? face, [NotNullWhen(false)] out string? reason)
    {
        (face, reason) = (null, $"the table has no head and hole for {thread.Designation}: state the face under the head and the hole");
        if (thread.Form != ThreadForm.IsoMetric)
            return false;

        foreach (var row in _rows.IsDefault ? _rows = NumberTable.Read(TableId, 5) : _rows)
        {
            if (row[0] == thread.Diameter)
                (face, reason) = (new BearingFace(row[head == BoltHead.Hexagon ? 1 : 2], row[fineHole ? 3 : 4]), null);
        }

        return face is not null;
    }
}
