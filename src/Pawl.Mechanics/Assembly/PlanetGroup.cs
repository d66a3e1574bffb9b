namespace Pawl.Mechanics.Assembly;

/// <summary>A planet body meshes a central gear: a sun (external) or a ring (internal).</summary>
/// <param name="PlanetBody">Index of the planet body, from 0.</param>
/// <param name="PlanetTeeth">Teeth of the planet's step in this mesh.</param>
/// <param name="CentralTeeth">Teeth of the central gear, counted positive also for a ring.</param>
/// <param name="CentralIsInternal">Whether the central gear is a ring.</param>
public sealed record GroupMesh(int PlanetBody, int PlanetTeeth, int CentralTeeth, bool CentralIsInternal);

/// <summary>Two planet bodies of one group mesh each other, externally.</summary>
public sealed record GroupPairMesh(int FirstBody, int FirstTeeth, int SecondBody, int SecondTeeth);

/// <summary>The planet bodies that a carrier carries N times: a planet, perhaps stepped, a meshed pair, a longer chain.</summary>
/// <remarks>
/// All groups of a carrier are alike, so the place of each body within its group cancels from the spacing conditions
/// and is not asked for. A body is what turns as one piece; its steps appear only as the teeth of its meshes.
/// Meshes are numbered central ones first, then the pairs.
/// </remarks>
public sealed record PlanetGroup
{
    /// <exception cref="OutsideValidityException">
    /// A tooth count below 1, a body that is not of the group, or a body that no chain of meshes ties to a central gear.
    /// </exception>
    public PlanetGroup(
        int bodies, ImmutableArray<GroupMesh> centralMeshes, ImmutableArray<GroupPairMesh> pairMeshes = default)
    {
        Guard.Count(bodies, 1, "the number of planet bodies");
        Bodies = bodies;
        CentralMeshes = centralMeshes.IsDefault ? [] : centralMeshes;
        PairMeshes = pairMeshes.IsDefault ? [] : pairMeshes;

        foreach (var mesh in CentralMeshes)
        {
            RequireBody(mesh.PlanetBody);
            Guard.Count(mesh.PlanetTeeth, 1, "the number of teeth of a planet");
            Guard.Count(mesh.CentralTeeth, 1, "the number of teeth of a central gear");
        }

        foreach (var mesh in PairMeshes)
        {
            RequireBody(mesh.FirstBody);
            RequireBody(mesh.SecondBody);
            if (mesh.FirstBody == mesh.SecondBody)
                throw Guard.Because($"the planet body {mesh.FirstBody} cannot mesh itself");
            Guard.Count(mesh.FirstTeeth, 1, "the number of teeth of a planet");
            Guard.Count(mesh.SecondTeeth, 1, "the number of teeth of a planet");
        }

        RequireEveryBodyTied();
    }

    /// <summary>Number of planet bodies in the group.</summary>
    public int Bodies { get; }

    public ImmutableArray<GroupMesh> CentralMeshes { get; }

    public ImmutableArray<GroupPairMesh> PairMeshes { get; }

    /// <summary>Number of meshes, central and pair.</summary>
    public int Meshes => CentralMeshes.Length + PairMeshes.Length;

    /// <summary>Common factor of all tooth counts of a body: to its mates it looks the same after 1/factor of a turn.</summary>
    public int CommonFactor(int body)
    {
        RequireBody(body);
        var factor = 0;
        foreach (var mesh in CentralMeshes)
        {
            if (mesh.PlanetBody == body)
            {
                factor = ToothHunting.CommonFactor(factor, mesh.PlanetTeeth);
            }
        }

        foreach (var mesh in PairMeshes)
        {
            if (mesh.FirstBody == body)
            {
                factor = ToothHunting.CommonFactor(factor, mesh.FirstTeeth);
            }

            if (mesh.SecondBody == body)
            {
                factor = ToothHunting.CommonFactor(factor, mesh.SecondTeeth);
            }
        }

        return factor;
    }

    /// <summary>The group with one step of a body clamped to it in place, at whatever angle the meshes ask for.</summary>
    /// <remarks>
    /// For the spacing conditions a step that is free to turn until it is clamped is a body of its own. The meshes of
    /// <paramref name="body"/> that have <paramref name="teeth"/> go to a new body, the last of the group.
    /// </remarks>
    /// <exception cref="OutsideValidityException">The body has no step of that tooth count, or no other step.</exception>
    public PlanetGroup WithStepClampedInPlace(int body, int teeth)
    {
        RequireBody(body);
        var moved = 0;
        var left = 0;

        int BodyOf(int meshBody, int meshTeeth)
        {
            if (meshBody != body)
            {
                return meshBody;
            }

            if (meshTeeth != teeth)
            {
                left++;
                return body;
            }

            moved++;
            return Bodies;
        }

        var central = ImmutableArray.CreateBuilder<GroupMesh>(CentralMeshes.Length);
        foreach (var mesh in CentralMeshes)
        {
            central.Add(mesh with { PlanetBody = BodyOf(mesh.PlanetBody, mesh.PlanetTeeth) });
        }

        var pairs = ImmutableArray.CreateBuilder<GroupPairMesh>(PairMeshes.Length);
        foreach (var mesh in PairMeshes)
        {
            pairs.Add(mesh with
            {
                FirstBody = BodyOf(mesh.FirstBody, mesh.FirstTeeth),
                SecondBody = BodyOf(mesh.SecondBody, mesh.SecondTeeth),
            });
        }

        if (moved == 0 || left == 0)
            throw Guard.Because($"the planet body {body} has no step of {teeth} teeth beside another step");
        return new PlanetGroup(Bodies + 1, central.MoveToImmutable(), pairs.MoveToImmutable());
    }

    private void RequireBody(int body)
    {
        if (body < 0 || body >= Bodies)
            throw Guard.Because($"the group has planet bodies 0 to {Bodies - 1}; a mesh names {body}");
    }

    // A body that is not tied would be free to turn, and no condition would be left for its teeth.
    private void RequireEveryBodyTied()
    {
        var tied = new bool[Bodies];
        var count = 0;
        foreach (var mesh in CentralMeshes)
        {
            count += tied[mesh.PlanetBody] ? 0 : 1;
            tied[mesh.PlanetBody] = true;
        }

        bool grew;
        do
        {
            grew = false;
            foreach (var mesh in PairMeshes)
            {
                if (tied[mesh.FirstBody] != tied[mesh.SecondBody])
                {
                    tied[mesh.FirstBody] = tied[mesh.SecondBody] = grew = true;
                    count++;
                }
            }
        }
        while (grew);

        if (count != Bodies)
            throw Guard.Because($"every planet body must be tied to a central gear; {Bodies - count} of {Bodies} are not");
    }
}
