using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Fits;

/// <summary>How far one part can lie off the axis of another through the links between them.</summary>
public static class CentringQuantities
{
    public static readonly QuantityKind Links = new()
    {
        Name = "links", Title = "Share of every link", ValueKind = ValueKind.Text,
        Formula = "fit: C_max/2; two dowels: kinematics of a plate; bearing: half its greatest play, and of its seats; run-out: half of it", Source = "geometry",
    };

    public static readonly QuantityKind Eccentricity = new()
    {
        Name = "eccentricity", Symbol = "e", Title = "Greatest eccentricity of the chain, coldest to hottest", Unit = Units.Millimetre, Scale = 0.01,
        Formula = "e = Σ e_i", Source = "geometry, all links off to the same side",
    };

    public static readonly QuantityKind Basis = new()
    {
        Name = "basis", Title = "Where the permitted eccentricity comes from", ValueKind = ValueKind.Text,
        Formula = "the spec where a limit is stated, else the backlash of the mesh", Source = "the spec",
    };

    public static readonly QuantityKind Kept = new()
    {
        Name = "backlash_kept", Symbol = "j_min", Title = "Least backlash that the mesh must keep", Unit = Units.Millimetre, Scale = 0.05,
        Formula = "the least wanted of the mesh, else 0", Source = "the spec",
    };

    public static readonly QuantityKind Permitted = new()
    {
        Name = "permitted_eccentricity", Symbol = "e_p", Title = "Eccentricity that is borne", Unit = Units.Millimetre, Scale = 0.01,
        Formula = "as stated, else e_p = (j_bn − j_min)/(2·sin α_wt·cos β_b), j_bn the least backlash from coldest to hottest, j_min the least wanted",
        Symbols = ["j_bn", "j_min", "α_wt", "β_b"], Source = "ISO 21771: change of backlash with the centre distance",
        Note = "run-out of the teeth is not in it",
    };

    public static readonly ImmutableArray<QuantityKind> All = [Links, Eccentricity, Basis, Kept, Permitted];
}
