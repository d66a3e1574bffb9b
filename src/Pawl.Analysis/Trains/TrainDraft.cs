using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Trains;
using Pawl.Specs.Model;
using K = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Trains;

/// <summary>The train as a whole: its bodies, its graph and its solution.</summary>
internal sealed class TrainDraft
{
    private readonly Draft _draft;
    private readonly TrainSpec _spec;
    private readonly Dictionary<string, PlanetSetSpec> _planets;

    private TrainDraft(Draft draft, TrainSpec spec, Subject subject)
    {
        _draft = draft;
        _spec = spec;
        Subject = subject;
        _planets = spec.Planets.Entries.ToDictionary(set => set.Name.Value, StringComparer.Ordinal);
        Bodies = BodyNames(spec);
    }

    public Subject Subject { get; }

    /// <summary>Every body and planet set by name: input, output, fixed, carriers, planets, then those declared besides.</summary>
    public ImmutableArray<string> Bodies { get; }

    public ImmutableArray<GearDraft> Gears { get; private set; } = [];

    public ImmutableArray<MeshDraft> Meshes { get; private set; } = [];

    public TrainSolution? Solution { get; private set; }

    public static TrainDraft Build(Draft draft, TrainSpec spec, Subject subject)
    {
        var train = new TrainDraft(draft, spec, subject);
        subject.Add(OilTemperature(draft));
        train.BuildGears();
        train.BuildMeshes();
        train.Solve();
        return train;
    }

    public PlanetSetSpec? PlanetSet(string body) => _planets.GetValueOrDefault(body);

    /// <summary>The carrier of a mesh, or null when it runs in the housing.</summary>
    public string? CarrierOf(MeshDraft mesh) => CarrierOf(mesh.First, mesh.Second);

    private string? CarrierOf(GearDraft first, GearDraft second) =>
        PlanetSet(first.Spec.On.Value)?.Carrier.Value ?? PlanetSet(second.Spec.On.Value)?.Carrier.Value;

    private static ImmutableArray<string> BodyNames(TrainSpec spec)
    {
        var names = new List<string>();
        Note(spec.Input.Value);
        Note(spec.Output.Value);
        foreach (var held in spec.Fixed)
            Note(held.Value);
        foreach (var set in spec.Planets.Entries)
        {
            Note(set.Carrier.Value);
            Note(set.Name.Value);
        }

        foreach (var body in spec.Bodies.Entries)
            Note(body.Name.Value);
        return [.. names];

        void Note(string name)
        {
            if (!names.Contains(name))
                names.Add(name);
        }
    }

    public static Quantity OilTemperature(Draft draft)
    {
        var oil = draft.Spec.Duty?.Oil;
        if (oil is not { Running: { } running, Coldest: { } coldest, Hottest: { } hottest })
        {
            return Quantity.NotEvaluated(K.OilTemperature, [], [.. new[]
            {
                oil?.Running is null ? "duty.oil.running is not stated" : null,
                oil?.Coldest is null ? "duty.oil.coldest is not stated" : null,
                oil?.Hottest is null ? "duty.oil.hottest is not stated" : null,
            }.OfType<string>()]);
        }

        return draft.Between(
            K.OilTemperature,
            new Origin.Declared(running.Span, $"{running.Text}, {coldest.Text} to {hottest.Text}", "coldest to hottest"),
            running.Value.Coherent, coldest.Value.Coherent, hottest.Value.Coherent);
    }

    private void BuildGears()
    {
        var outward = _spec.InternalProfileShift is { Value: "outward" };
        var gears = ImmutableArray.CreateBuilder<GearDraft>(_spec.Gears.Entries.Length);
        foreach (var spec in _spec.Gears.Entries)
            gears.Add(GearDraft.Build(_draft, spec, PlanetSet(spec.On.Value) is not null, outward));
        Gears = gears.MoveToImmutable();
    }

    private void BuildMeshes()
    {
        var meshes = ImmutableArray.CreateBuilder<MeshDraft>(_spec.Meshes.Length);
        var centres = new Quantity?[_spec.Meshes.Length];
        for (var k = 0; k < centres.Length; k++)
        {
            if (_spec.Meshes[k].CentreDistance is { } centre)
                centres[k] = _draft.Dimension(MeshQuantities.CentreDistance, centre, "");
        }

        for (var k = 0; k < centres.Length; k++)
        {
            var spec = _spec.Meshes[k];
            var (first, second) = (Gear(spec.Gears[0].Value), Gear(spec.Gears[1].Value));
            var set = PlanetSet(first.Spec.On.Value) ?? PlanetSet(second.Spec.On.Value);
            meshes.Add(MeshDraft.Build(
                _draft, spec, first, second, Centres(set?.Carrier.Value), set, centres[k],
                centres[k] is null ? SharedCentre(centres, first, second) : null, Subject[K.OilTemperature]));
        }

        Meshes = meshes.MoveToImmutable();
    }

    private GearDraft Gear(string name)
    {
        foreach (var gear in Gears)
        {
            if (gear.Name == name)
                return gear;
        }

        throw new InvalidOperationException($"The reader let a mesh with the unknown gear {name} through.");
    }

    /// <summary>A planet stands at one radius: where one of its meshes with central gears states it, it holds for those that do not.</summary>
    private Quantity? SharedCentre(Quantity?[] centres, GearDraft first, GearDraft second)
    {
        if (PlanetOf(first, second) is not { } planet)
            return null;
        for (var k = 0; k < centres.Length; k++)
        {
            var gears = _spec.Meshes[k].Gears;
            if (centres[k] is not null && PlanetOf(Gear(gears[0].Value), Gear(gears[1].Value)) == planet)
                return centres[k];
        }

        return null;
    }

    /// <summary>The planet body of a mesh with a central gear; null for two planets or two central gears.</summary>
    public string? PlanetOf(GearDraft first, GearDraft second) =>
        (PlanetSet(first.Spec.On.Value), PlanetSet(second.Spec.On.Value)) switch
        {
            ({ } set, null) => set.Name.Value,
            (null, { } set) => set.Name.Value,
            _ => null,
        };

    private BodyCentres Centres(string? carrier)
    {
        var body = carrier ?? Housing();
        return new(body, body is null ? null : _spec.Bodies.Find(body), _draft.Spec.Duty?.Oil);
    }

    private string? Housing()
    {
        if (_spec.Fixed.Length == 1)
            return _spec.Fixed[0].Value;
        foreach (var held in _spec.Fixed)
        {
            if (held.Value == "housing")
                return held.Value;
        }

        return null;
    }

    private void Solve()
    {
        var bodies = ImmutableArray.CreateBuilder<TrainBody>(Bodies.Length);
        foreach (var name in Bodies)
            bodies.Add(PlanetSet(name) is { } set ? new(name, set.Carrier.Value, set.Count.Value) : new(name));
        var gears = ImmutableArray.CreateBuilder<TrainGear>(Gears.Length);
        foreach (var gear in Gears)
            gears.Add(new(gear.Name, gear.Spec.On.Value, gear.Spec.Teeth.Value, gear.IsInternal));
        var meshes = ImmutableArray.CreateBuilder<TrainMesh>(Meshes.Length);
        foreach (var mesh in Meshes)
            meshes.Add(new(mesh.Name, mesh.First.Name, mesh.Second.Name, EfficiencyOf(mesh)));

        var graph = new TrainGraph(
            bodies.MoveToImmutable(), gears.MoveToImmutable(), meshes.MoveToImmutable(), _spec.Input.Value, _spec.Output.Value,
            [.. _spec.Fixed.Select(held => held.Value)]);
        Solution = TrainSolver.Solve(graph);
        Topology = Mechanics.Trains.Topology.Describe(graph);
    }

    public string Topology { get; private set; } = "";

    private static double EfficiencyOf(MeshDraft mesh) =>
        mesh[MeshQuantities.Efficiency] is { IsEvaluated: true, Value.Nominal: > 0 and <= 1 and var efficiency } ? efficiency : 1;
}
