using Pawl.Mechanics.Gears;

namespace Pawl.Reports.Drawing;

/// <summary>A gear in its place in the transverse section: one for each planet.</summary>
/// <param name="Gear">The gear.</param>
/// <param name="Copy">Which of the planets, from 0; 0 for a central gear.</param>
/// <param name="X">Its axis, mm.</param>
/// <param name="Y">Its axis, mm.</param>
/// <param name="Turn">Direction of a tooth, rad.</param>
internal sealed record PlacedGear(GearPart Gear, int Copy, double X, double Y, double Turn);

/// <summary>Two gears in mesh in their places.</summary>
/// <param name="Mesh">The mesh.</param>
/// <param name="First">The first gear in its place.</param>
/// <param name="Second">The second gear in its place.</param>
/// <param name="Misfit">By how much of a pitch the teeth stand beside the gaps, −½ to ½; 0 when they mesh.</param>
internal sealed record PlacedMesh(MeshPart Mesh, PlacedGear First, PlacedGear Second, double Misfit);

/// <summary>All gears of a train in their places about the axis, turned so that the teeth mesh as far as they can.</summary>
internal sealed class TrainScene
{
    /// <summary>The first planet stands above.</summary>
    private const double Up = Math.PI / 2;

    private readonly Dictionary<(GearPart, int), double> _turns = [];
    private readonly Parts _parts;
    private readonly Dictionary<string, (double Radius, PlanetParts Set, bool Second)> _orbits = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (double X, double Y)> _axes = new(StringComparer.Ordinal);

    private TrainScene(Parts parts)
    {
        _parts = parts;
        FindOrbits();
        FindAxes();
        Turn();
        Gears = [.. parts.Gears.SelectMany(Places)];
        var placed = Gears.ToDictionary(static g => (g.Gear, g.Copy));
        Meshes = [.. parts.Meshes.SelectMany(mesh => Places(mesh, placed))];
    }

    public static TrainScene Of(Parts parts) => new(parts);

    public ImmutableArray<PlacedGear> Gears { get; }

    public ImmutableArray<PlacedMesh> Meshes { get; }

    /// <summary>Radius of the circle on which a planet stands, mm; null for what is no planet, or has no place.</summary>
    public double? Orbit(string body) => _orbits.TryGetValue(body, out var orbit) ? orbit.Radius : null;

    /// <summary>The axis of a copy of a body; null when it is not known.</summary>
    public (double X, double Y)? Axis(string body, int copy)
    {
        if (_orbits.TryGetValue(body, out var orbit))
        {
            if (copy >= orbit.Set.Angles.Length)
                return null;
            var angle = Up + orbit.Set.Angles[copy] + (orbit.Second ? orbit.Set.PairAngle : 0);
            return (orbit.Radius * Math.Cos(angle), orbit.Radius * Math.Sin(angle));
        }

        return _axes.TryGetValue(body, out var axis) ? axis : IsPlanet(body) ? null : (0, 0);
    }

    /// <summary>How many there are of a body.</summary>
    public int Copies(string body) => _parts.Planets.FirstOrDefault(set => set.Bodies.Contains(body))?.Count ?? 1;

    private bool IsPlanet(string body) => _parts.Planets.Any(set => set.Bodies.Contains(body));

    private void FindOrbits()
    {
        foreach (var set in _parts.Planets)
        {
            for (var k = 0; k < set.Bodies.Length; k++)
            {
                var body = set.Bodies[k];
                var central = _parts.Meshes.FirstOrDefault(mesh =>
                    (mesh.First.Body == body && !mesh.Second.OnPlanet) || (mesh.Second.Body == body && !mesh.First.OnPlanet));
                if ((central?.Centre ?? Parts.Number(_parts.Subject($"bodies.{body}"), "orbit_radius", "mm")) is { } radius && radius > 0)
                    _orbits.TryAdd(body, (radius, set, k > 0));
            }
        }
    }

    /// <summary>Bodies that stand beside the axis: gears in mesh of which none is a planet.</summary>
    private void FindAxes()
    {
        foreach (var mesh in _parts.Meshes)
        {
            if (mesh.First.OnPlanet || mesh.Second.OnPlanet)
                continue;
            var (x, y) = _axes.GetValueOrDefault(mesh.First.Body);
            _axes.TryAdd(mesh.Second.Body, (x + mesh.Centre, y));
        }
    }

    /// <summary>Carries the turn of the first gear from mesh to mesh, the first planet leading.</summary>
    private void Turn()
    {
        foreach (var start in _parts.Meshes)
        {
            var root = start.First.OnPlanet && !start.Second.OnPlanet ? start.Second : start.First;
            if (_turns.ContainsKey((root, 0)))
                continue;
            _turns[(root, 0)] = Up;
            while (Link() | Mesh())
            {
                // Until nothing more is reached.
            }
        }
    }

    /// <summary>Gears on one planet turn together.</summary>
    private bool Link()
    {
        var any = false;
        foreach (var one in _parts.Gears)
        {
            if (!_orbits.TryGetValue(one.Body, out var orbit))
                continue;
            foreach (var other in _parts.Gears)
            {
                if (other == one || other.Body != one.Body)
                    continue;
                for (var copy = 0; copy < (orbit.Set.StepsAreSet ? 1 : orbit.Set.Count); copy++)
                {
                    if (_turns.TryGetValue((one, copy), out var turn))
                        any |= _turns.TryAdd((other, copy), turn);
                }
            }
        }

        return any;
    }

    private bool Mesh()
    {
        var any = false;
        foreach (var mesh in _parts.Meshes)
        {
            for (var copy = 0; copy < CopiesOf(mesh); copy++)
                any |= Carry(mesh, mesh.First, mesh.Second, copy) || Carry(mesh, mesh.Second, mesh.First, copy);
        }

        return any;
    }

    private bool Carry(MeshPart mesh, GearPart from, GearPart to, int copy)
    {
        var (known, wanted) = ((from, from.OnPlanet ? copy : 0), (to, to.OnPlanet ? copy : 0));
        if (_turns.ContainsKey(wanted) || !_turns.TryGetValue(known, out var turn) || Directions(mesh, copy) is not { } directions)
            return false;
        var (one, two) = from == mesh.First ? directions : (directions.Second, directions.First);
        _turns[wanted] = MeshPlace.ToothOfMate(from.Outline.Teeth, turn, to.Outline.Teeth, one, two);
        return true;
    }

    private int CopiesOf(MeshPart mesh) => Math.Max(Copies(mesh.First.Body), Copies(mesh.Second.Body));

    /// <summary>Directions of the pitch point from both axes.</summary>
    private (double First, double Second)? Directions(MeshPart mesh, int copy)
    {
        if (Axis(mesh.First.Body, mesh.First.OnPlanet ? copy : 0) is not { } first || Axis(mesh.Second.Body, mesh.Second.OnPlanet ? copy : 0) is not { } second)
            return null;
        var angle = Math.Atan2(second.Y - first.Y, second.X - first.X);
        return mesh switch
        {
            { First.IsInternal: true } => (angle, angle),
            { Second.IsInternal: true } => (angle + Math.PI, angle + Math.PI),
            _ => (angle, angle + Math.PI),
        };
    }

    private IEnumerable<PlacedGear> Places(GearPart gear)
    {
        for (var copy = 0; copy < (gear.OnPlanet ? Copies(gear.Body) : 1); copy++)
        {
            if (Axis(gear.Body, copy) is { } axis && _turns.TryGetValue((gear, copy), out var turn))
                yield return new(gear, copy, axis.X, axis.Y, turn);
        }
    }

    private IEnumerable<PlacedMesh> Places(MeshPart mesh, Dictionary<(GearPart, int), PlacedGear> placed)
    {
        for (var copy = 0; copy < CopiesOf(mesh); copy++)
        {
            if (Directions(mesh, copy) is not { } directions || !placed.TryGetValue((mesh.First, mesh.First.OnPlanet ? copy : 0), out var first)
                || !placed.TryGetValue((mesh.Second, mesh.Second.OnPlanet ? copy : 0), out var second))
                continue;
            var turns = (mesh.First.Outline.Teeth * (first.Turn - directions.First)) + (mesh.Second.Outline.Teeth * (second.Turn - directions.Second)) - Math.PI;
            yield return new(mesh, first, second, Math.IEEERemainder(turns, Math.Tau) / Math.Tau);
        }
    }
}
