using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Assembly;
using G = Pawl.Analysis.Gears.GearQuantities;
using K = Pawl.Analysis.Trains.PlanetSetQuantities;

namespace Pawl.Analysis.Trains;

/// <content>Where the planets stand: centre distances, the triangle of a pair, neighbours, balance.</content>
internal sealed partial class PlanetSetBuilder
{
    private void Circle()
    {
        var s = _subject;
        s.Add(MinOf(K.MinBacklash, [.. _central.Concat(_pairs).Select(mesh => mesh[MeshQuantities.CircumferentialBacklash])]));

        var spreads = ImmutableArray.CreateBuilder<Quantity>();
        foreach (var set in _sets)
        {
            var own = _central.Where(mesh => Planet(mesh).Spec.On.Value == set.Name.Value).ToImmutableArray();
            if (own.Length > 1)
                spreads.AddRange(own.Select(mesh => mesh[MeshQuantities.CentreDistance]));
        }

        if (spreads.Count > 0)
            s.Add(CoaxialSpread());
        if (_pairs.Length == 1 && _sets.Length == 2)
            Triangle();
    }

    /// <summary>At nominal: the meshes of one planet share its pin, so their tolerances are one and the same.</summary>
    /// <remarks>
    /// A mesh that leaves its centre distance to another asks for the one of its profile shifts, so these are compared as well.
    /// </remarks>
    private Quantity CoaxialSpread()
    {
        var spread = 0.0;
        var inputs = ImmutableArray.CreateBuilder<Quantity>();
        foreach (var set in _sets)
        {
            var meshes = _central.Where(mesh => Planet(mesh).Spec.On.Value == set.Name.Value).ToImmutableArray();
            if (meshes.Length < 2)
                continue;
            foreach (var kind in (ReadOnlySpan<QuantityKind>)[MeshQuantities.ShiftCentreDistance, MeshQuantities.CentreDistance])
            {
                var distances = meshes.Select(mesh => mesh[kind]).ToImmutableArray();
                inputs.AddRange(distances);
                if (distances.All(distance => distance.IsEvaluated))
                    spread = Math.Max(spread, Coaxiality.Spread([.. distances.Select(distance => distance.Value.Nominal)]));
            }
        }

        return Quantity.Computed(K.CoaxialSpread, spread, inputs.ToImmutable());
    }

    private static Quantity MinOf(QuantityKind kind, ImmutableArray<Quantity> inputs) => Quantity.Compute(kind, inputs, values =>
    {
        var least = double.PositiveInfinity;
        foreach (var value in values)
            least = Math.Min(least, value);
        return least;
    },
    turns: true);

    private Quantity? CentreOf(int body)
    {
        foreach (var mesh in _central)
        {
            if (PlanetIndex(mesh) == body)
                return mesh[MeshQuantities.CentreDistance];
        }

        return null;
    }

    private void Triangle()
    {
        if (CentreOf(0) is not { } first || CentreOf(1) is not { } second)
            return;

        var pair = _pairs[0][MeshQuantities.CentreDistance];
        _subject.Add(Derive.From(
            K.TriangleSlack, first, second, pair, (a, b, c) => Math.Min(a + b - c, c - Math.Abs(a - b))));
        _subject.Add(Derive.From(K.PairAngle, first, second, pair, PairAngle));
    }

    private static double PairAngle(double first, double second, double pair) => PairTriangle.TryCreate(first, second, pair, out var triangle)
        ? triangle.Angle
        : throw new OutsideValidityException(string.Create(
            CultureInfo.InvariantCulture,
            $"the triangle of centres {first:0.###}, {second:0.###} and {pair:0.###} mm cannot be drawn"));

    private void Neighbours()
    {
        var gears = PlanetGears();
        if (_sets.Length > 2 || (_sets.Length == 2 && _pairs.Length != 1) || CentreOf(0) is not { } first
            || (_sets.Length == 2 && CentreOf(1) is null))
        {
            var reason = $"the places of the planets of {Name} do not follow from the meshes that are declared";
            _subject.Add(Quantity.NotEvaluated(K.NeighbourClearance, [], reason));
            _subject.Add(Quantity.NotEvaluated(K.MostPlanets, [], reason));
            return;
        }

        var inputs = ImmutableArray.CreateBuilder<Quantity>();
        inputs.Add(first);
        inputs.Add(_sets.Length == 2 ? CentreOf(1)! : first);
        inputs.Add(_sets.Length == 2 ? _pairs[0][MeshQuantities.CentreDistance] : first);
        foreach (var gear in gears)
            inputs.Add(gear[G.TipDiameter]);
        var spans = gears.Select(Span).ToArray();
        var bodies = gears.Select(gear => IndexOf(gear.Spec.On.Value)).ToArray();
        var meshing = _pairs.Select(mesh => (gears.IndexOf(mesh.First), gears.IndexOf(mesh.Second))).ToArray();
        var angles = Count > 1 ? _positions.Angles : [0.0];
        var isPair = _sets.Length == 2;

        if (Count > 1 || isPair)
        {
            _subject.Add(Quantity.Compute(K.NeighbourClearance, inputs.ToImmutable(), v =>
                Mechanics.Assembly.Neighbours.Tightest(Discs(v), angles.AsSpan(), meshing) is { } tightest
                    ? tightest.Clearance
                    : throw new OutsideValidityException("no two planets can meet")));
        }

        _subject.Add(Quantity.MissingReasons(inputs.ToImmutable()) is { IsEmpty: false } reasons || Group() is not { } group
            ? Quantity.NotEvaluated(K.MostPlanets, [], Quantity.MissingReasons(inputs.ToImmutable()))
            : Quantity.Guarded(K.MostPlanets, inputs.ToImmutable(), () => Most(group)));

        PlanetDisc[] Discs(ReadOnlySpan<double> v)
        {
            var place = isPair ? PairAngle(v[0], v[1], v[2]) : 0;
            var discs = new PlanetDisc[bodies.Length];
            for (var k = 0; k < discs.Length; k++)
                discs[k] = new(bodies[k], v[bodies[k]], bodies[k] == 0 ? 0 : place, v[3 + k] / 2, spans[k]);
            return discs;
        }

        Quantity Most(PlanetGroup group)
        {
            var nominal = inputs.Select(input => input.Value.Nominal).ToArray();
            if (isPair && !PairTriangle.Exists(nominal[0], nominal[1], nominal[2]))
                return Quantity.NotEvaluated(K.MostPlanets, [], "the triangle of centres cannot be drawn");
            var (discs, least) = (Discs(nominal), MinAngle(group));
            var planets = Math.Min(Mechanics.Assembly.Neighbours.MaxNumber(discs, 0, meshing), 64);
            while (planets > 1 && !(least.CanSpaceEqually(planets) && Clear(discs, planets)))
                planets--;
            return Quantity.Computed(K.MostPlanets, planets, [.. inputs, _subject[K.SpacingDivisor]]);
        }

        bool Clear(PlanetDisc[] discs, int planets) =>
            Mechanics.Assembly.Neighbours.Tightest(discs, PlanetPositions.Equal(planets).Angles.AsSpan(), meshing) is not { Clearance: <= 0 };
    }

    private static AxialSpan? Span(GearBuilder gear) =>
        gear[G.AxialPosition] is { IsEvaluated: true, Value: var place } && gear[G.FaceWidth] is { IsEvaluated: true, Value: var width }
            ? new(place.Nominal, width.Max + place.Max - place.Min)
            : null;

    private void Balance(Subject? carrier)
    {
        var unbalance = _positions.Unbalance;
        if (Count > 1 && unbalance < 1e-9)
        {
            _subject.Add(Quantity.Computed(K.UnbalanceForce, 0, []));
            return;
        }

        ImmutableArray<string> unstated =
            [.. _sets.Where(set => set.Mass is null).Select(set => $"train.planets.{set.Name.Value}.mass is not stated")];
        if (!unstated.IsEmpty || carrier?.Find(BodyQuantities.Speed) is not { } speed || CentreOf(0) is not { } centre)
        {
            _subject.Add(Quantity.NotEvaluated(
                K.UnbalanceForce, [], unstated.IsEmpty ? ["the speed of the carrier or the place of the planets is not known"] : unstated));
            return;
        }

        var mass = _sets[0].Mass!.Value.Coherent;
        if (_sets.Length == 1)
        {
            _subject.Add(Derive.From(
                K.UnbalanceForce, centre, speed, (a, omega) => Mechanics.Assembly.Balance.UnbalanceForce(unbalance, mass, a, omega)));
            return;
        }

        if (CentreOf(1) is not { } other || _subject.Find(K.PairAngle) is not { } angle)
        {
            _subject.Add(Quantity.NotEvaluated(
                K.UnbalanceForce, [], $"the places of the planets of {Name} do not follow from the meshes that are declared"));
            return;
        }

        var otherMass = _sets[1].Mass!.Value.Coherent;
        _subject.Add(Derive.From(K.UnbalanceForce, centre, other, angle, speed, (a, b, delta, omega) =>
            Mechanics.Assembly.Balance.PairUnbalanceForce(unbalance, mass, a, otherMass, b, delta, omega)));
    }
}
