using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Assembly;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Trains;

/// <summary>Planet sets that one carrier carries together: one set, or sets that mesh with each other.</summary>
public sealed record PlanetGroupSpec(ImmutableArray<PlanetSetSpec> Sets)
{
    internal string Name => string.Join('~', Sets.Select(set => set.Name.Value));

    internal int Count => Sets[0].Count.Value;

    /// <summary>Positions as stated; empty when none are.</summary>
    internal ImmutableArray<Specs.Text.Stated<Quantities.Amount>> Positions =>
        Sets.Select(static set => set.Positions).FirstOrDefault(static positions => !positions.IsEmpty, []);

    /// <summary>How the steps of stepped planets are made.</summary>
    internal Specs.Text.Stated<string>? Steps => Sets.Select(static set => set.Steps).FirstOrDefault(static steps => steps is not null);

    internal bool IsIndividual => Steps is { Value: "individual" };

    internal bool AreEqual
    {
        get
        {
            for (var k = 0; k < Positions.Length; k++)
            {
                var ideal = Positions[0].Value.Coherent + (Math.Tau * k / Positions.Length);
                if (Math.Abs(Math.IEEERemainder(Positions[k].Value.Coherent - ideal, Math.Tau)) > 1e-9)
                    return false;
            }

            return true;
        }
    }
}

/// <summary>Which gears and meshes a group of planet sets has, and where its planets may stand: found once from numbers of teeth.</summary>
internal sealed class PlanetLayout
{
    private readonly PlanetGroupSpec _spec;
    private readonly TrainBuilder _train;
    private readonly PlanetGroup? _group;

    private PlanetLayout(Subject subject)
    {
        (_spec, _train) = ((PlanetGroupSpec)subject.Model, subject.Context.Train!);
        Gears = [.. _train.Gears.Where(gear => IndexOf(gear.Spec.On.Value) >= 0)];
        Central = [.. _train.Meshes.Where(mesh => _train.PlanetOf(mesh.First, mesh.Second) is { } planet && IndexOf(planet) >= 0)];
        Pairs = [.. _train.Meshes.Where(mesh => IndexOf(mesh.First.Spec.On.Value) >= 0 && IndexOf(mesh.Second.Spec.On.Value) >= 0)];
        Teeth = [.. Central.Concat(Pairs).SelectMany(static mesh => (GearBuilder[])[mesh.First, mesh.Second]).Distinct()];
        IsStepped = _spec.Sets.Any(set => TeethInMesh(set.Name.Value).Count > 1);
        _group = GroupOf(static gear => gear.Spec.Teeth.Value);
        if (_group is null)
            return;

        Angle = MinMeshAngle.Of(IsStepped && _spec.IsIndividual ? Clamped(_group) : _group);
        Positions = _spec.AreEqual
            ? PlanetPositions.Equal(_spec.Count)
            : Angle.NearestTo([.. _spec.Positions.Select(static position => position.Value.Coherent)]);
    }

    public static PlanetLayout Of(Subject subject) => subject.Context.Once(subject, static each => new PlanetLayout(each));

    /// <summary>Gears on the planets.</summary>
    public ImmutableArray<GearBuilder> Gears { get; }

    /// <summary>Meshes of planets with central gears.</summary>
    public ImmutableArray<MeshBuilder> Central { get; }

    /// <summary>Meshes of planets with each other.</summary>
    public ImmutableArray<MeshBuilder> Pairs { get; }

    /// <summary>Gears in mesh.</summary>
    public ImmutableArray<GearBuilder> Teeth { get; }

    public bool IsStepped { get; }

    /// <summary>False where nothing ties a planet to a central gear: then it has no place to speak of.</summary>
    public bool HasPlaces => _group is not null;

    /// <summary>The condition on the positions, with steps that turn until they are clamped where the spec has such.</summary>
    public MinMeshAngle Angle { get; }

    public PlanetPositions Positions { get; } = PlanetPositions.Equal(1);

    /// <summary>Whether the places of the planets follow from the meshes that are declared.</summary>
    public bool ArePlacesKnown => _spec.Sets.Length <= 2 && (_spec.Sets.Length == 1 || Pairs.Length == 1) && CentreOf(0) is not null
        && (_spec.Sets.Length == 1 || CentreOf(1) is not null);

    public bool IsPair => _spec.Sets.Length == 2;

    /// <summary>The first mesh of a planet with a central gear; null without one.</summary>
    public MeshBuilder? CentreOf(int set) => Central.FirstOrDefault(mesh => PlanetIndex(mesh) == set);

    public GearBuilder CentralGear(MeshBuilder mesh) => mesh.MateOf(Planet(mesh))!;

    /// <summary>The greatest angle by which a planet stands beside a place where it goes in, rad.</summary>
    public double Misfit()
    {
        var worst = 0.0;
        for (var k = 0; k < _spec.Count; k++)
        {
            var position = _spec.Positions.IsEmpty ? Math.Tau * k / _spec.Count : _spec.Positions[k].Value.Coherent - _spec.Positions[0].Value.Coherent;
            worst = Math.Max(worst, Math.Abs(Angle.Misfit(position)));
        }

        // A position that is right to a millionth of a tooth was meant to be right.
        return Angle.IsAnyAngle || worst < 1e-6 * Angle.Angle ? 0 : worst;
    }

    /// <summary>Whether planets go in equally spaced where gears have other numbers of teeth.</summary>
    public bool SpacesEquallyWith(Func<GearBuilder, int> teeth) =>
        GroupOf(teeth) is { } group && MinMeshAngle.Of(IsStepped && _spec.IsIndividual ? Clamped(group) : group).CanSpaceEqually(_spec.Count);

    /// <summary>The spread of the reference centre distances of one planet where gears have other numbers of teeth, in transverse modules.</summary>
    public double ReferenceSpread(Func<GearBuilder, int> teeth)
    {
        var worst = 0.0;
        foreach (var set in Central.GroupBy(PlanetIndex))
        {
            var centres = set.Select(mesh => TransverseModule(mesh) * (teeth(CentralGear(mesh)) + (CentralGear(mesh).IsInternal ? -1 : 1) * teeth(Planet(mesh))) / 2).ToArray();
            worst = Math.Max(worst, (centres.Max() - centres.Min()) / TransverseModule(set.First()));
        }

        return worst;

        static double TransverseModule(MeshBuilder mesh) => (mesh.First.Spec.Module?.Value.Coherent ?? 1)
            / Math.Cos(mesh.First.Subject.Find(GearQuantities.HelixAngle) is { IsEvaluated: true, Value.Nominal: var helix } ? helix : 0);
    }

    public double InsertionTrials() => StepTiming.FewestInsertionTrials(_group!);

    public ImmutableArray<PlanetMark> Marks() => StepTiming.Marks(_group!, Positions);

    public bool SameMarkOutward() => StepTiming.SameMarkOutward(_group!, Positions);

    /// <summary>The tightest clearance of planets that do not mesh, mm; null where no two can meet.</summary>
    /// <param name="centres">Centre distances of both sets and of the pair, mm.</param>
    /// <param name="tips">Tip diameters of <see cref="Gears"/>, mm.</param>
    /// <param name="spans">Where they lie along the axis; empty where it is not known: then each may meet each.</param>
    public double? Clearance((double First, double Second, double Pair) centres, double[] tips, AxialSpan[] spans) => Neighbours.Tightest(
        Discs(centres, tips, spans), (_spec.Count > 1 ? Positions.Angles : [0.0]).AsSpan(), Meshing)?.Clearance;

    /// <summary>Most planets that fit, equally spaced.</summary>
    public int MaxPlanets((double First, double Second, double Pair) centres, double[] tips, AxialSpan[] spans)
    {
        var discs = Discs(centres, tips, spans);
        var planets = Math.Min(Neighbours.MaxNumber(discs, 0, Meshing), 64);
        while (planets > 1 && !(Angle.CanSpaceEqually(planets) && Clear(planets)))
            planets--;
        return planets;

        bool Clear(int count) => Neighbours.Tightest(discs, PlanetPositions.Equal(count).Angles.AsSpan(), Meshing) is not { Clearance: <= 0 };
    }

    private PlanetDisc[] Discs((double First, double Second, double Pair) centres, double[] tips, AxialSpan[] spans)
    {
        var place = IsPair ? PlanetSetQuantities.AngleOfPair(centres.First, centres.Second, centres.Pair) : 0;
        var discs = new PlanetDisc[tips.Length];
        for (var k = 0; k < discs.Length; k++)
        {
            var body = IndexOf(Gears[k].Spec.On.Value);
            discs[k] = new(body, body == 0 ? centres.First : centres.Second, body == 0 ? 0 : place, tips[k] / 2, spans.Length == 0 ? null : spans[k]);
        }

        return discs;
    }

    private (int, int)[] Meshing => [.. Pairs.Select(mesh => (Gears.IndexOf(mesh.First), Gears.IndexOf(mesh.Second)))];

    private int IndexOf(string body)
    {
        for (var k = 0; k < _spec.Sets.Length; k++)
        {
            if (_spec.Sets[k].Name.Value == body)
                return k;
        }

        return -1;
    }

    private int PlanetIndex(MeshBuilder mesh) => Math.Max(IndexOf(mesh.First.Spec.On.Value), IndexOf(mesh.Second.Spec.On.Value));

    private GearBuilder Planet(MeshBuilder mesh) => IndexOf(mesh.First.Spec.On.Value) >= 0 ? mesh.First : mesh.Second;

    private SortedSet<int> TeethInMesh(string body) =>
        [.. _train.Meshes.SelectMany(static mesh => (GearBuilder[])[mesh.First, mesh.Second]).Where(gear => gear.Spec.On.Value == body).Select(static gear => gear.Spec.Teeth.Value)];

    private PlanetGroup? GroupOf(Func<GearBuilder, int> teeth)
    {
        try
        {
            return new(
                _spec.Sets.Length,
                [
                    .. Central.Select(mesh => new GroupMesh(
                        PlanetIndex(mesh), teeth(Planet(mesh)), teeth(CentralGear(mesh)), CentralGear(mesh).IsInternal)),
                ],
                [
                    .. Pairs.Select(mesh => new GroupPairMesh(
                        IndexOf(mesh.First.Spec.On.Value), teeth(mesh.First),
                        IndexOf(mesh.Second.Spec.On.Value), teeth(mesh.Second))),
                ]);
        }
        catch (OutsideValidityException)
        {
            return null;
        }
    }

    /// <summary>Every further step of every stepped planet set free to turn until it is clamped.</summary>
    private PlanetGroup Clamped(PlanetGroup group)
    {
        for (var body = 0; body < _spec.Sets.Length; body++)
        {
            foreach (var teeth in TeethInMesh(_spec.Sets[body].Name.Value).Skip(1))
                group = group.WithStepClampedInPlace(body, teeth);
        }

        return group;
    }
}
