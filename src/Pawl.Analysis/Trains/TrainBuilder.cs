using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Trains;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Trains;

/// <summary>The train as a whole: its bodies, its graph and its solution.</summary>
internal sealed class TrainBuilder
{
    private readonly AnalysisContext _context;
    private readonly TrainSpec _spec;
    private readonly Dictionary<string, PlanetSetSpec> _planets;
    private Dictionary<string, GearBuilder>? _gearsByName;
    private ILookup<string, GearBuilder>? _gearsByBody;

    private TrainBuilder(AnalysisContext context, TrainSpec spec, Subject subject)
    {
        _context = context;
        _spec = spec;
        Subject = subject;
        _planets = spec.Planets.Entries.ToDictionary(set => set.Name.Value, StringComparer.Ordinal);
        Bodies = BodyNames(spec);
    }

    public Subject Subject { get; }

    /// <summary>Every body and planet set by name: input, output, fixed, carriers, planets, then those declared besides.</summary>
    public ImmutableArray<string> Bodies { get; }

    public ImmutableArray<GearBuilder> Gears { get; private set; } = [];

    public ImmutableArray<MeshBuilder> Meshes { get; private set; } = [];

    public TrainSolution? Solution { get; private set; }

    public static TrainBuilder Build(AnalysisContext context, TrainSpec spec, Subject subject)
    {
        var train = new TrainBuilder(context, spec, subject);
        train.BuildGears();
        train.BuildMeshes();
        context.Train = train;
        subject.RelateAll("gears", () => train.Gears.Select(static gear => gear.Subject))
            .RelateAll("meshes", () => train.Meshes.Select(static mesh => mesh.Subject))
            .RelateAll("loaded_meshes", () => train.Loaded.Select(static mesh => mesh.Subject))
            .RelateAll("loaded_firsts", () => train.Loaded.Select(static mesh => mesh.Gear(mesh.First)));
        train.Solve();
        return train;
    }

    /// <summary>Meshes that the load passes through.</summary>
    private IEnumerable<MeshBuilder> Loaded => Meshes.Where(static mesh => MeshQuantities.LosslessShare(mesh.Subject) is not null);

    public PlanetSetSpec? PlanetSet(string body) => _planets.GetValueOrDefault(body);

    /// <summary>The carrier of a mesh, or null when it runs in the housing.</summary>
    public string? CarrierOf(MeshBuilder mesh) => CarrierOf(mesh.First, mesh.Second);

    private string? CarrierOf(GearBuilder first, GearBuilder second) =>
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

    private void BuildGears()
    {
        var gears = ImmutableArray.CreateBuilder<GearBuilder>(_spec.Gears.Entries.Length);
        foreach (var spec in _spec.Gears.Entries)
            gears.Add(GearBuilder.Build(_context, spec));
        Gears = gears.MoveToImmutable();
    }

    private void BuildMeshes()
    {
        Meshes = [.. _spec.Meshes.Select((spec, index) => MeshBuilder.Build(_context, spec, index, Gear(spec.Gears[0].Value), Gear(spec.Gears[1].Value)))];
        foreach (var mesh in Meshes)
        {
            if (mesh.Spec.CentreDistance is null && SharedCentre(mesh) is { } shared)
                mesh.Subject.RelateOptional("same_centres", () => shared.Subject);
        }
    }

    private GearBuilder Gear(string name)
    {
        _gearsByName ??= Gears.ToDictionary(static gear => gear.Name, StringComparer.Ordinal);
        return _gearsByName.TryGetValue(name, out var gear)
            ? gear
            : throw new InvalidOperationException($"The reader let a mesh with the unknown gear {name} through.");
    }

    /// <summary>The gears on a body or planet, in the order of the spec.</summary>
    public IEnumerable<GearBuilder> GearsOn(string body) => (_gearsByBody ??= Gears.ToLookup(static gear => gear.Spec.On.Value, StringComparer.Ordinal))[body];

    /// <summary>A planet stands at one radius: where one of its meshes with central gears states it, it holds for those that do not.</summary>
    private MeshBuilder? SharedCentre(MeshBuilder mesh)
    {
        if (PlanetOf(mesh.First, mesh.Second) is not { } planet)
            return null;
        foreach (var other in Meshes)
        {
            if (other.Spec.CentreDistance is not null && PlanetOf(other.First, other.Second) == planet)
                return other;
        }

        return null;
    }

    /// <summary>The planet body of a mesh with a central gear; null for two planets or two central gears.</summary>
    public string? PlanetOf(GearBuilder first, GearBuilder second) =>
        (PlanetSet(first.Spec.On.Value), PlanetSet(second.Spec.On.Value)) switch
        {
            ({ } set, null) => set.Name.Value,
            (null, { } set) => set.Name.Value,
            _ => null,
        };

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
        Graph = graph;
        Solution = TrainSolver.Solve(graph);
        Topology = Mechanics.Trains.Topology.Describe(graph);
    }

    private Dictionary<string, MeshLoad>? _loads;
    private Dictionary<string, MeshLoad>? _lossless;
    private Dictionary<string, MeshSpeed>? _speeds;
    private Dictionary<GearSpec, (double Plus, double Minus)>? _flanks;

    /// <summary>Torques of a mesh; null where they are not known.</summary>
    public MeshLoad? LoadOf(string mesh) => (_loads ??= ByMesh(Solution?.Torques)).GetValueOrDefault(mesh);

    /// <summary>Torques of a mesh without losses; null where they are not known.</summary>
    public MeshLoad? LosslessLoadOf(string mesh) => (_lossless ??= ByMesh(Solution?.Lossless)).GetValueOrDefault(mesh);

    /// <summary>Speeds of a mesh; null where they are not known.</summary>
    public MeshSpeed? SpeedOf(string mesh) =>
        (_speeds ??= (Solution?.Speeds?.Meshes ?? []).ToDictionary(static each => each.Mesh, StringComparer.Ordinal)).GetValueOrDefault(mesh);

    /// <summary>Load of the less loaded flank of a gear over that of the other; 0 where neither is loaded.</summary>
    /// <remarks>A torque from a mesh presses on the flank of its own sign; of each flank the heaviest mesh counts.</remarks>
    public double OtherFlankShare(GearSpec gear)
    {
        var (plus, minus) = (_flanks ??= Flanks()).GetValueOrDefault(gear);
        return plus + minus == 0 ? 0 : Math.Min(plus, minus) / Math.Max(plus, minus);
    }

    private static Dictionary<string, MeshLoad> ByMesh(TrainTorques? torques) =>
        (torques?.Meshes ?? []).ToDictionary(static load => load.Mesh, StringComparer.Ordinal);

    private Dictionary<GearSpec, (double Plus, double Minus)> Flanks()
    {
        var flanks = new Dictionary<GearSpec, (double Plus, double Minus)>(ReferenceEqualityComparer.Instance);
        foreach (var mesh in Meshes)
        {
            if (LoadOf(mesh.Name) is not { } load)
                continue;
            Press(mesh.First.Spec, load.FirstTorque / load.Paths);
            Press(mesh.Second.Spec, load.SecondTorque / load.Paths);
        }

        return flanks;

        void Press(GearSpec gear, double torque)
        {
            var (plus, minus) = flanks.GetValueOrDefault(gear);
            flanks[gear] = (Math.Max(plus, torque), Math.Max(minus, -torque));
        }
    }

    public string Topology { get; private set; } = "";

    public TrainGraph? Graph { get; private set; }

    private static double EfficiencyOf(MeshBuilder mesh) =>
        mesh[MeshQuantities.Efficiency] is { IsEvaluated: true, Value.Nominal: > 0 and <= 1 and var efficiency } ? efficiency : 1;
}
