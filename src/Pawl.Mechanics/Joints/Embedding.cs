using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Joints;

/// <summary>How far rough faces flatten under a bolt.</summary>
/// <remarks>Source: VDI 2230 Part 1; table <c>vdi2230-embedding</c>.</remarks>
public static class Embedding
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "vdi2230-embedding";

    private const double Micrometre = 1e-3;

    private static ImmutableArray<ImmutableArray<double>> _rows;

    /// <summary>Amounts at thread, face and interface by roughness, mm.</summary>
    /// <param name="roughnessInMillimetres">Roughness Rz of the faces, mm.</param>
    /// <param name="shear">True where the load is across the bolt, as in a flange that carries torque.</param>
    /// <remarks>
    /// Source: VDI 2230 Part 1.<br/>
    /// Valid for: Rz up to 160 µm, metal on metal: no paint, gasket or sealant; pressures as under bolt heads. Where it is less, as in the
    /// stack of a large central nut, no more settles than this.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static (double Thread, double Face, double Interface) Amounts(double roughnessInMillimetres, bool shear = false)
    {
        var rows = _rows.IsDefault ? _rows = NumberTable.Read(TableId, 8) : _rows;
        foreach (var row in rows)
        {
            var inside = roughnessInMillimetres / Micrometre >= row[0] && roughnessInMillimetres / Micrometre < row[1];
            if (!inside)
                continue;
            var first = shear ? 5 : 2;
            return (row[first] * Micrometre, row[first + 1] * Micrometre, row[first + 2] * Micrometre);
        }

        throw Guard.Because($"VDI 2230 has embedding up to Rz {rows[^1][1]:0} µm; the faces have {roughnessInMillimetres / Micrometre:0.###} µm");
    }

    /// <summary>Amount f_Z, mm.</summary>
    /// <param name="roughnessInMillimetres">Roughness Rz of the faces, mm.</param>
    /// <param name="faces">Faces under head and nut: one with a tapped hole, two with a nut.</param>
    /// <param name="interfaces">Faces where parts meet between head and nut; a pack of k shims has k + 1.</param>
    /// <param name="shear">True where the load is across the bolt, as in a flange that carries torque.</param>
    /// <remarks>
    /// <code>f_Z = thread + faces·f_face + interfaces·f_interface</code>
    /// Source and range of validity: <see cref="Amounts"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Amount(double roughnessInMillimetres, int faces, int interfaces, bool shear = false)
    {
        if (faces < 1 || interfaces < 0)
            throw Guard.Because($"a bolt has a face under its head and no fewer than 0 interfaces; there are {faces} and {interfaces}");

        var (thread, face, between) = Amounts(roughnessInMillimetres, shear);
        return thread + faces * face + interfaces * between;
    }
}
