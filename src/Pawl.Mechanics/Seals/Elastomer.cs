using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Seals;

/// <summary>What a seal is wetted by.</summary>
public enum SealedFluid
{
    Mineral,
    Polyalphaolefin,
    Ester,
    Polyglycol,
    WaterGlycol,

    /// <summary>Brake fluid on a glycol base.</summary>
    BrakeFluid,
}

/// <summary>Whether an elastomer stands a fluid.</summary>
public enum Suitability
{
    Unsuitable,

    /// <summary>Some compounds do, some do not: ask for the compound.</summary>
    Limited,
    Suitable,
}

/// <summary>A family of elastomers, called by ISO 1629.</summary>
/// <param name="Code">Code of ISO 1629, such as <c>FKM</c>.</param>
/// <param name="Coldest">Coldest temperature of a seal at rest, °C; a lip in motion wants 10 K to 15 K more.</param>
/// <param name="Hottest">Maximum continuous temperature, °C.</param>
/// <param name="Expansion">Linear expansion, 1/K; none when nobody vouched for it.</param>
/// <param name="LipSpeed">Greatest surface speed under a lip, well oiled and without pressure, mm/s; none when no lips are made of it.</param>
/// <remarks>Source: common practice, no source; table <c>elastomers</c>.</remarks>
public sealed record Elastomer(string Code, double Coldest, double Hottest, double? Expansion, double? LipSpeed)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "elastomers";

    private const int Fluids = 6;

    private static ImmutableArray<Elastomer> _all;

    private ImmutableArray<Suitability> _fluids = [];

    /// <summary>All families of the table.</summary>
    public static ImmutableArray<Elastomer> All => _all.IsDefault ? _all = Read() : _all;

    /// <summary>Whether it stands a fluid.</summary>
    public Suitability In(SealedFluid fluid) =>
        (int)fluid >= 0 && (int)fluid < _fluids.Length
            ? _fluids[(int)fluid]
            : throw Guard.Because($"what {Code} does in this fluid is not stated");

    /// <summary>The family of a code of ISO 1629, or the reason why there is none.</summary>
    public static bool TryFind(
        string code, [NotNullWhen(true)] out Elastomer? elastomer, [NotNullWhen(false)] out string? reason)
    {
        elastomer = All.FirstOrDefault(candidate => candidate.Code == code);
        reason = elastomer is null
            ? $"the table has no elastomer `{code}`; it has {string.Join(", ", All.Select(known => known.Code))}"
            : null;
        return elastomer is not null;
    }

    private static ImmutableArray<Elastomer> Read()
    {
        var read = ImmutableArray.CreateBuilder<Elastomer>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            var code = rows.NextField().ToString();
            var (coldest, hottest, expansion) = (rows.NextNumber(), rows.NextNumber(), rows.NextNumber() * 1e-6);
            var fluids = ImmutableArray.CreateBuilder<Suitability>(Fluids);
            for (var fluid = 0; fluid < Fluids; fluid++)
                fluids.Add((Suitability)(int)rows.NextNumber());
            var speed = rows.NextNumber() * 1000;
            read.Add(new Elastomer(
                code, coldest, hottest, double.IsNaN(expansion) ? null : expansion, double.IsNaN(speed) ? null : speed)
            {
                _fluids = fluids.ToImmutable(),
            });
        }

        return read.ToImmutable();
    }
}
