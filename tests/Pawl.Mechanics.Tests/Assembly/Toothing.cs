using Pawl.Mechanics.Assembly;

namespace Pawl.Mechanics.Tests.Assembly;

/// <summary>
/// Brute force: gears with teeth at places in the plane. The reference group stands anywhere, its steps at any angles, and the
/// central gears are turned to suit it. A further group is then tried at a position in every seating of its teeth.
/// </summary>
internal sealed class Toothing
{
    private const double PitchTolerance = 1e-6;

    private readonly PlanetGroup _group;
    private readonly double[] _place;
    private readonly double[] _radius;
    private readonly Dictionary<(int Body, int Teeth), double> _step = [];
    private readonly double[] _reference;
    private readonly double[] _central;
    private readonly int[] _seat;

    public Toothing(PlanetGroup group, int seed)
    {
        var random = new Random(seed);
        _group = group;
        _place = Fill(group.Bodies, _ => random.NextDouble() * 6);
        _radius = Fill(group.Bodies, _ => 1 + random.NextDouble());
        _reference = new double[group.Bodies];
        _seat = new int[group.Bodies];
        foreach (var mesh in group.CentralMeshes)
        {
            _step[(mesh.PlanetBody, mesh.PlanetTeeth)] = random.NextDouble() * 6;
        }

        foreach (var mesh in group.PairMeshes)
        {
            _step[(mesh.FirstBody, mesh.FirstTeeth)] = random.NextDouble() * 6;
            _step[(mesh.SecondBody, mesh.SecondTeeth)] = random.NextDouble() * 6;
        }

        for (var body = 0; body < group.Bodies; body++)
        {
            _seat[body] = SeatOf(body);
            _reference[body] = random.NextDouble() * 6;
            foreach (var pair in group.PairMeshes)
            {
                if (pair.SecondBody == body)
                {
                    _reference[body] = MatingRotation(pair, _reference[pair.FirstBody], 0);
                }
            }
        }

        _central = Fill(group.CentralMeshes.Length, mesh => CentralRotation(mesh));
    }

    /// <summary>Meshes in which the bodies are seated, one each.</summary>
    public int[] Seats => _seat;

    /// <summary>Number of seatings tried.</summary>
    public int Tried { get; private set; }

    /// <summary>Number of seatings, of all in the seat meshes, in which all teeth meet.</summary>
    public int Fitting(double position)
    {
        Tried = 0;
        return Fitting(position, new double[_group.Bodies], 0);
    }

    /// <summary>Whether all teeth meet when the bodies are turned by given angles against the carrier.</summary>
    public bool Fits(double position, ReadOnlySpan<double> turnedOnCarrier)
    {
        var rotation = new double[_group.Bodies];
        for (var body = 0; body < rotation.Length; body++)
        {
            rotation[body] = _reference[body] + position + turnedOnCarrier[body];
        }

        return AllMeet(position, rotation);
    }

    private int Fitting(double position, double[] rotation, int body)
    {
        if (body == rotation.Length)
        {
            Tried++;
            return AllMeet(position, rotation) ? 1 : 0;
        }

        double first;
        int teeth;
        if (_seat[body] < _group.CentralMeshes.Length)
        {
            var mesh = _group.CentralMeshes[_seat[body]];
            teeth = mesh.PlanetTeeth;
            first = SeatedRotation(_seat[body], position);
        }
        else
        {
            var pair = _group.PairMeshes[_seat[body] - _group.CentralMeshes.Length];
            teeth = pair.SecondTeeth;
            first = MatingRotation(pair, rotation[pair.FirstBody], position);
        }

        var fitting = 0;
        for (var tooth = 0; tooth < teeth; tooth++)
        {
            rotation[body] = first + Math.Tau * tooth / teeth;
            fitting += Fitting(position, rotation, body + 1);
        }

        return fitting;
    }

    private bool AllMeet(double position, double[] rotation)
    {
        for (var i = 0; i < _group.CentralMeshes.Length; i++)
        {
            var mesh = _group.CentralMeshes[i];
            var direction = position + _place[mesh.PlanetBody];
            var planet = rotation[mesh.PlanetBody] + _step[(mesh.PlanetBody, mesh.PlanetTeeth)];
            var atPlanet = mesh.CentralIsInternal ? direction : direction + Math.PI;
            var sense = mesh.CentralIsInternal ? -1 : 1;
            if (!Meets(Pitches(direction, _central[i], mesh.CentralTeeth) + sense * Pitches(atPlanet, planet, mesh.PlanetTeeth)))
            {
                return false;
            }
        }

        foreach (var pair in _group.PairMeshes)
        {
            var direction = Direction(pair, position);
            var first = rotation[pair.FirstBody] + _step[(pair.FirstBody, pair.FirstTeeth)];
            var second = rotation[pair.SecondBody] + _step[(pair.SecondBody, pair.SecondTeeth)];
            if (!Meets(Pitches(direction, first, pair.FirstTeeth) + Pitches(direction + Math.PI, second, pair.SecondTeeth)))
            {
                return false;
            }
        }

        return true;
    }

    // Pitches from a tooth centre to a direction, counted anticlockwise seen from the gear's own axis.
    private static double Pitches(double direction, double rotation, int teeth) => (direction - rotation) * teeth / Math.Tau;

    // A tooth stands in a gap: half a pitch between tooth centres.
    private static bool Meets(double pitches) => Math.Abs(pitches - Math.Floor(pitches) - 0.5) < PitchTolerance;

    private double CentralRotation(int index)
    {
        var mesh = _group.CentralMeshes[index];
        var direction = _place[mesh.PlanetBody];
        var planet = _reference[mesh.PlanetBody] + _step[(mesh.PlanetBody, mesh.PlanetTeeth)];
        var pitches = mesh.CentralIsInternal
            ? 0.5 + Pitches(direction, planet, mesh.PlanetTeeth)
            : 0.5 - Pitches(direction + Math.PI, planet, mesh.PlanetTeeth);
        return direction - pitches * Math.Tau / mesh.CentralTeeth;
    }

    private double SeatedRotation(int index, double position)
    {
        var mesh = _group.CentralMeshes[index];
        var direction = position + _place[mesh.PlanetBody];
        var central = Pitches(direction, _central[index], mesh.CentralTeeth);
        var toothing = mesh.CentralIsInternal
            ? direction - (central - 0.5) * Math.Tau / mesh.PlanetTeeth
            : direction + Math.PI - (0.5 - central) * Math.Tau / mesh.PlanetTeeth;
        return toothing - _step[(mesh.PlanetBody, mesh.PlanetTeeth)];
    }

    private double MatingRotation(GroupPairMesh pair, double firstRotation, double position)
    {
        var direction = Direction(pair, position);
        var first = firstRotation + _step[(pair.FirstBody, pair.FirstTeeth)];
        var pitches = 0.5 - Pitches(direction, first, pair.FirstTeeth);
        return direction + Math.PI - pitches * Math.Tau / pair.SecondTeeth - _step[(pair.SecondBody, pair.SecondTeeth)];
    }

    private double Direction(GroupPairMesh pair, double position)
    {
        var (x1, y1) = Pin(pair.FirstBody);
        var (x2, y2) = Pin(pair.SecondBody);
        return position + Math.Atan2(y2 - y1, x2 - x1);
    }

    private (double X, double Y) Pin(int body) =>
        (_radius[body] * Math.Cos(_place[body]), _radius[body] * Math.Sin(_place[body]));

    private int SeatOf(int body)
    {
        for (var i = 0; i < _group.CentralMeshes.Length; i++)
        {
            if (_group.CentralMeshes[i].PlanetBody == body)
            {
                return i;
            }
        }

        for (var i = 0; i < _group.PairMeshes.Length; i++)
        {
            if (_group.PairMeshes[i].SecondBody == body)
            {
                return _group.CentralMeshes.Length + i;
            }
        }

        throw new InvalidOperationException("Every body of these tests is tied to a central gear or to the body before.");
    }

    private static double[] Fill(int count, Func<int, double> value)
    {
        var filled = new double[count];
        for (var i = 0; i < count; i++)
        {
            filled[i] = value(i);
        }

        return filled;
    }
}
