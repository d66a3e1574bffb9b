using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Specs.Model;
using G = Pawl.Analysis.Gears.GearQuantities;
using L = Pawl.Analysis.Rating.MeshLoadQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>What teeth, orbit, weight and the coupled machines lay on every body, at nominal dimensions.</summary>
internal sealed class TrainForces
{
    private const double Gravity = 9806.65;

    private readonly AnalysisContext _context;
    private readonly TrainSpec _spec;
    private readonly TrainBuilder _train;
    private readonly Dictionary<string, BodyForces> _bodies = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _angles = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _radii = new(StringComparer.Ordinal);
    private readonly List<(string Mesh, string Planet, double Radial, double Tangential, double Direction)> _meshes = [];

    private TrainForces(AnalysisContext context, TrainSpec spec, TrainBuilder train)
    {
        (_context, _spec, _train) = (context, spec, train);
        foreach (var body in train.Bodies)
            _bodies[body] = new();
    }

    public BodyForces Of(string body) => _bodies[body];

    /// <summary>Direction in which the flanks of a mesh press on its planet, of length 1; a torque below zero drives the other way round.</summary>
    public (double X, double Y) FlankNormal(string mesh, string planet, double torque)
    {
        if (_meshes.FindIndex(each => each.Mesh == mesh && each.Planet == planet) is not (>= 0 and var at))
            throw new OutsideValidityException($"the direction of the tooth forces of meshes.{mesh} on {planet} is not known");
        var force = _meshes[at];
        var (sin, cos) = Math.SinCos(force.Direction);
        var tangential = Math.Sign(torque) * force.Tangential;
        var size = double.Hypot(force.Radial, force.Tangential);
        return (((force.Radial * cos) - (tangential * sin)) / size, ((force.Radial * sin) + (tangential * cos)) / size);
    }

    /// <summary>Direction around the axis of the train at the place of the first planet of a set, of length 1.</summary>
    public (double X, double Y) AroundAxis(string planet) => _angles.TryGetValue(planet, out var angle)
        ? (-Math.Sin(angle), Math.Cos(angle))
        : throw new OutsideValidityException($"the place of {planet} is not known");

    /// <summary>Distance of a planet from the axis of the train, mm; null where it is not known.</summary>
    public double? RadiusOf(string planet) => _radii.TryGetValue(planet, out var radius) ? radius : null;

    /// <summary>Centrifugal force of a planet at the rated speed, N; null where it is not a planet or not known.</summary>
    public Dictionary<string, double> OrbitForces { get; } = new(StringComparer.Ordinal);

    /// <summary>Acceleration of a planet's place at the rated speed, mm/s².</summary>
    public Dictionary<string, double> Accelerations { get; } = new(StringComparer.Ordinal);

    /// <summary>Size of the sum of the tooth forces on one planet at the rated torque, N.</summary>
    public double ToothForceOf(string planet)
    {
        var forces = Of(planet);
        return double.Hypot(
            forces.TeethRadial.Concat(forces.TeethTangential).Sum(load => load.X),
            forces.TeethRadial.Concat(forces.TeethTangential).Sum(load => load.Y));
    }

    public static TrainForces Build(AnalysisContext context, TrainSpec spec, TrainBuilder train)
    {
        var forces = new TrainForces(context, spec, train);
        forces.Angles();
        foreach (var mesh in train.Meshes)
            forces.Mesh(mesh);
        foreach (var set in spec.Planets.Entries)
            forces.Planets(set);
        forces.Lasting();
        return forces;
    }

    /// <summary>Middle of a gear or of the overlap of a mesh along the axis, mm.</summary>
    public static Quantity? PlaceOf(GearBuilder gear) => gear.Subject.Find(G.AxialPosition) is { IsEvaluated: true } place ? place : null;

    /// <summary>Middle of all gears of a body along the axis, mm; null when none has a place.</summary>
    public double? MiddleOf(string body)
    {
        var places = _train.GearsOn(body).Select(PlaceOf).OfType<Quantity>().ToImmutableArray();
        return places.IsEmpty ? null : places.Average(place => place.Value.Nominal);
    }

    /// <summary>Where the planets of each set stand: the first set at 0, a set that meshes with it by the triangle of centres.</summary>
    private void Angles()
    {
        foreach (var mesh in _train.Meshes)
        {
            if (_train.PlanetOf(mesh.First, mesh.Second) is { } planet && mesh[Q.CentreDistance] is { IsEvaluated: true } distance)
                _radii[planet] = Math.Abs(distance.Value.Nominal);
        }

        foreach (var set in _spec.Planets.Entries)
            _angles.TryAdd(set.Name.Value, 0);
        foreach (var mesh in _train.Meshes)
        {
            if (PairOf(mesh) is not var (first, second) || mesh[Q.CentreDistance] is not { IsEvaluated: true } between
                || !_radii.TryGetValue(first, out var a) || !_radii.TryGetValue(second, out var b))
                continue;
            var c = between.Value.Nominal;
            _angles[second] = _angles[first] + Math.Acos(Math.Clamp(((a * a) + (b * b) - (c * c)) / (2 * a * b), -1, 1));
        }
    }

    private (string First, string Second)? PairOf(MeshBuilder mesh) =>
        _train.PlanetSet(mesh.First.Spec.On.Value) is { } first && _train.PlanetSet(mesh.Second.Spec.On.Value) is { } second
            ? (first.Name.Value, second.Name.Value)
            : null;

    private void Mesh(MeshBuilder mesh)
    {
        var (first, second) = (_bodies[mesh.First.Spec.On.Value], _bodies[mesh.Second.Spec.On.Value]);
        if (Reasons(mesh) is { IsEmpty: false } reasons)
        {
            first.Note(reasons);
            second.Note(reasons);
            return;
        }

        var load = _train.Solution!.Torques!.Meshes.First(each => each.Mesh == mesh.Name);
        var input = _train.Subject[T.InputTorque].Value.Nominal;
        Gear(mesh, mesh.First, mesh.Second, load.FirstTorque * input / load.Paths);
        Gear(mesh, mesh.Second, mesh.First, load.SecondTorque * input / load.Paths);
    }

    private static ImmutableArray<string> Reasons(MeshBuilder mesh)
    {
        ImmutableArray<Quantity> needed =
        [
            mesh[Q.TangentialForce], mesh.Subject[L.LoadSharing], mesh[Q.WorkingPressureAngle], mesh.First[G.HelixAngle], mesh.First[G.ReferenceDiameter],
            mesh.Second[G.ReferenceDiameter], mesh.Gear(mesh.First)[MeshGearQuantities.WorkingPitchDiameter],
            mesh.Gear(mesh.Second)[MeshGearQuantities.WorkingPitchDiameter],
        ];
        if (Quantity.MissingReasons(needed) is { IsEmpty: false } reasons)
            return reasons;
        foreach (var gear in (ReadOnlySpan<GearBuilder>)[mesh.First, mesh.Second])
        {
            if (PlaceOf(gear) is null)
                return [$"train.gears.{gear.Name}.axial_position is not stated"];
        }

        if (mesh.First[G.HelixAngle].Value.Nominal != 0 && mesh.First.Spec.Hand is null && mesh.Second.Spec.Hand is null)
            return [$"train.gears.{mesh.First.Name}.hand is not stated, which sets the direction of its axial force"];
        return [];
    }

    /// <summary>Force of a mesh on one of its gears, for every copy of the planet.</summary>
    private void Gear(MeshBuilder mesh, GearBuilder gear, GearBuilder mate, double torque)
    {
        var (on, with) = (gear.Spec.On.Value, mate.Spec.On.Value);
        var radius = Math.Abs(mesh.Gear(gear)[MeshGearQuantities.WorkingPitchDiameter].Value.Nominal) / 2;
        var sharing = mesh.Subject[L.LoadSharing].Value.Nominal;
        var place = Middle(gear, mate);
        var tangential = torque / radius;
        var radial = Math.Abs(tangential) * Math.Tan(mesh[Q.WorkingPressureAngle].Value.Nominal) * (gear.IsInternal ? 1 : -1);
        var axial = -Hand(gear, mate) * 2 * torque / Math.Abs(gear[G.ReferenceDiameter].Value.Nominal) * Math.Tan(Math.Abs(gear[G.HelixAngle].Value.Nominal));

        if (_train.PlanetSet(on) is not null)
        {
            _meshes.Add((mesh.Name, on, radial, tangential, _train.PlanetSet(with) is not null ? Towards(on, with) : _angles[on] + (mate.IsInternal ? 0 : Math.PI)));
            // The most loaded planet, in its own place; direction from its axis to the pitch point.
            var direction = _train.PlanetSet(with) is not null ? Towards(on, with) : _angles[on] + (mate.IsInternal ? 0 : Math.PI);
            Add(_bodies[on], direction, direction, radius, place, tangential * sharing, radial * sharing, axial * sharing);
            return;
        }

        var set = _train.PlanetSet(with);
        var count = set?.Count.Value ?? 1;
        var body = _bodies[on];
        if (set is null && _train.Meshes.Count(each => Parallel(each, on)) > 1)
            body.Note([$"{on} meshes with several shafts, and the directions to them are not stated"]);
        for (var k = 0; k < count; k++)
        {
            var angle = set is null ? 0 : _angles[with] + Position(set, k);
            Add(body, angle, angle, radius, place, tangential, radial, axial);
        }

        body.AxialTeeth += count * axial;
        if (count > 1 && _spec.Bodies.Find(on)?.Floating is not { Value: true })
            body.Sharing.Add(new(place, Uneven(count, sharing) * double.Hypot(tangential, radial), 0));
    }

    /// <summary>What one planet that carries K_γ times the mean leaves unbalanced, over its mean force.</summary>
    private static double Uneven(int count, double sharing) => count * (sharing - 1) / (count - 1);

    private bool Parallel(MeshBuilder mesh, string body) =>
        (mesh.First.Spec.On.Value == body || mesh.Second.Spec.On.Value == body)
        && _train.PlanetSet(mesh.First.Spec.On.Value) is null && _train.PlanetSet(mesh.Second.Spec.On.Value) is null;

    private static void Add(
        BodyForces body, double direction, double at, double radius, double place, double tangential, double radial, double axial)
    {
        var (sin, cos) = Math.SinCos(direction);
        body.TeethRadial.Add(new(place, radial * cos, radial * sin));
        var (y, x) = Math.SinCos(at);
        body.TeethTangential.Add(ShaftLoad.AtPoint(radius * x, radius * y, place, -tangential * sin, tangential * cos, axial));
    }

    private double Towards(string from, string to)
    {
        var (a, b) = (At(from), At(to));
        return Math.Atan2(b.Y - a.Y, b.X - a.X);
    }

    private (double X, double Y) At(string planet)
    {
        var (sin, cos) = Math.SinCos(_angles[planet]);
        var radius = _radii.GetValueOrDefault(planet);
        return (radius * cos, radius * sin);
    }

    private static double Position(PlanetSetSpec set, int k) =>
        set.Positions.IsEmpty ? Math.Tau * k / set.Count.Value : set.Positions[k].Value.Coherent - set.Positions[0].Value.Coherent;

    /// <summary>+1 for a right-hand helix; an external mate has the other hand, the mate of an internal gear the same.</summary>
    private static int Hand(GearBuilder gear, GearBuilder mate)
    {
        if (gear.Spec.Hand is { } own)
            return own.Value == "right" ? 1 : -1;
        var same = gear.IsInternal || mate.IsInternal ? 1 : -1;
        return mate.Spec.Hand is { } other ? same * (other.Value == "right" ? 1 : -1) : 1;
    }

    private static double Middle(GearBuilder gear, GearBuilder mate)
    {
        var (a, b) = (PlaceOf(gear)!.Value.Nominal, PlaceOf(mate)!.Value.Nominal);
        if (gear[G.FaceWidth] is not { IsEvaluated: true } wide || mate[G.FaceWidth] is not { IsEvaluated: true } other)
            return (a + b) / 2;
        var low = Math.Max(a - (wide.Value.Nominal / 2), b - (other.Value.Nominal / 2));
        var high = Math.Min(a + (wide.Value.Nominal / 2), b + (other.Value.Nominal / 2));
        return (low + high) / 2;
    }

    /// <summary>The orbit of a planet set, and what its planets lay on their carrier.</summary>
    private void Planets(PlanetSetSpec set)
    {
        var (planet, carrier) = (_bodies[set.Name.Value], _bodies[set.Carrier.Value]);
        carrier.Note(planet.Reasons);
        Orbit(set, planet);
        var count = set.Count.Value;
        var centre = At(set.Name.Value);
        for (var k = 0; k < count; k++)
        {
            var angle = Position(set, k);
            carrier.TeethRadial.AddRange(planet.TeethRadial.Select(load => Turned(load, angle, centre)));
            carrier.TeethTangential.AddRange(planet.TeethTangential.Select(load => Turned(load, angle, centre)));
            carrier.Orbit.AddRange(planet.Orbit.Select(load => Turned(load, angle, centre)));
        }

        var net = planet.TeethTangential.Sum(load => load.Axial);
        carrier.AxialTeeth += count * net;
        if (count > 1 && MiddleOf(set.Name.Value) is { } middle && !planet.TeethTangential.Exists(load => !double.IsFinite(load.X)))
        {
            var sharing = SharingOf(set.Name.Value);
            carrier.Sharing.Add(new(middle, Uneven(count, sharing) * ToothForceOf(set.Name.Value) / sharing, 0));
        }
    }

    /// <summary>K_γ of a planet, the least of its meshes.</summary>
    public double LeastSharingOf(string planet) => SharingsOf(planet).DefaultIfEmpty(1).Min();

    private double SharingOf(string planet) => SharingsOf(planet).Append(1).Max();

    private IEnumerable<double> SharingsOf(string planet) =>
        from mesh in _train.Meshes
        where mesh.First.Spec.On.Value == planet || mesh.Second.Spec.On.Value == planet
        let sharing = mesh.Subject[L.LoadSharing]
        where sharing.IsEvaluated
        select sharing.Value.Nominal;

    private static ShaftLoad Turned(ShaftLoad load, double angle, (double X, double Y) centre)
    {
        var (sin, cos) = Math.SinCos(angle);
        var (x, y) = ((cos * centre.X) - (sin * centre.Y), (sin * centre.X) + (cos * centre.Y));
        var couples = ((cos * load.CoupleX) - (sin * load.CoupleY), (sin * load.CoupleX) + (cos * load.CoupleY));
        return new(
            load.Position, (cos * load.X) - (sin * load.Y), (sin * load.X) + (cos * load.Y), load.Axial,
            couples.Item1 + (y * load.Axial), couples.Item2 - (x * load.Axial));
    }

    private void Orbit(PlanetSetSpec set, BodyForces planet)
    {
        var name = set.Name.Value;
        if (_train.Solution?.Speeds?.Of(set.Carrier.Value) is not { } carrier || _train.Subject[T.InputSpeed] is not { IsEvaluated: true } input)
        {
            planet.Note(_train.Subject[T.InputSpeed].Reasons);
            return;
        }

        var speed = input.Value.Nominal * carrier.Speed.ToDouble();
        if (speed == 0)
            return;
        if (!_radii.TryGetValue(name, out var radius))
        {
            planet.Note([$"the distance of {name} from the axis is not known"]);
            return;
        }

        Accelerations[name] = PlanetBearing.Acceleration(radius, speed);
        if (set.Mass is not { } mass)
        {
            planet.Note([$"train.planets.{name}.mass is not stated"]);
            return;
        }

        var force = PlanetBearing.Centrifugal(mass.Value.Coherent, radius, speed);
        OrbitForces[name] = force;
        var (sin, cos) = Math.SinCos(_angles[name]);
        if (MiddleOf(name) is { } middle)
            planet.Orbit.Add(new(middle, force * cos, force * sin));
    }

    /// <summary>Forces of the coupled machines and weights.</summary>
    private void Lasting()
    {
        var duty = _context.Spec.Duty;
        External(_spec.Input.Value, "input", duty?.Input?.RadialForce, duty?.Input?.RadialForceAt, duty?.Input?.AxialForce);
        External(_spec.Output.Value, "output", duty?.Output?.RadialForce, duty?.Output?.RadialForceAt, duty?.Output?.AxialForce);
        var upright = _context.Spec.Lubrication?.MountingPosition is { Value: "vertical" };
        foreach (var body in _spec.Bodies.Entries)
        {
            if (body.Mass is not { } mass || !_bodies.TryGetValue(body.Name.Value, out var forces))
                continue;
            var weight = mass.Value.Coherent * Gravity;
            if (upright)
                forces.AxialLasting += weight;
            else if (body.MassAt is { } at)
                forces.Lasting.Add(new(at.Value.Coherent, weight, 0));
            else
                forces.Note([$"train.bodies.{body.Name.Value}.mass_at is not stated"]);
        }
    }

    private void External(
        string body, string end, Specs.Text.Stated<Pawl.Quantities.Amount>? radial, Specs.Text.Stated<Pawl.Quantities.Amount>? at,
        Specs.Text.Stated<Pawl.Quantities.Amount>? axial)
    {
        var forces = _bodies[body];
        forces.AxialLasting += axial?.Value.Coherent ?? 0;
        if (radial is null || radial.Value.Coherent == 0)
            return;
        if (at is null)
            forces.Note([$"duty.{end}.radial_force_at is not stated"]);
        else
            forces.Lasting.Add(new(at.Value.Coherent, radial.Value.Coherent, 0));
    }
}
