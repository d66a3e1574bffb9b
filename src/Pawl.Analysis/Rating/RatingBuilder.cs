using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Trains;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Rating;

/// <summary>Strength of every mesh and of both its gears.</summary>
internal sealed class RatingBuilder
{
    private readonly AnalysisContext _context;
    private readonly TrainSpec _spec;
    private readonly TrainBuilder _train;
    private readonly Dictionary<string, MeshLoad> _loads;
    private readonly Dictionary<string, MeshSpeed> _speeds;

    // Greatest load on the flank of each sign.
    private readonly Dictionary<GearBuilder, (double Plus, double Minus)> _flanks = [];

    private RatingBuilder(AnalysisContext context, TrainSpec spec, TrainBuilder train)
    {
        _context = context;
        _spec = spec;
        _train = train;
        _loads = (train.Solution?.Torques?.Meshes ?? []).ToDictionary(load => load.Mesh, StringComparer.Ordinal);
        _speeds = (train.Solution?.Speeds?.Meshes ?? []).ToDictionary(mesh => mesh.Mesh, StringComparer.Ordinal);
        foreach (var mesh in train.Meshes)
        {
            if (!_loads.TryGetValue(mesh.Name, out var load))
                continue;
            Press(mesh.First, load.FirstTorque / load.Paths);
            Press(mesh.Second, load.SecondTorque / load.Paths);
        }

        void Press(GearBuilder gear, double torque)
        {
            var (plus, minus) = _flanks.GetValueOrDefault(gear);
            _flanks[gear] = (Math.Max(plus, torque), Math.Max(minus, -torque));
        }
    }

    public static void Add(AnalysisContext context, TrainSpec spec, TrainBuilder train)
    {
        var rating = new RatingBuilder(context, spec, train);
        var duty = DutyBuilder.Build(context, train.Subject);
        foreach (var mesh in train.Meshes)
        {
            mesh.Subject.Add(rating.DrivingGear(mesh));
            var set = train.PlanetSet(mesh.First.Spec.On.Value) ?? train.PlanetSet(mesh.Second.Spec.On.Value);
            var load = MeshLoadBuilder.Build(context, duty, mesh, set, set is not null && rating.Floats(set.Carrier.Value));
            foreach (var gear in (ReadOnlySpan<GearBuilder>)[mesh.First, mesh.Second])
            {
                var motion = rating.MotionOf(gear, mesh);
                new FlankBuilder(duty, mesh, load, gear, motion).Add();
                CaseStrength.Add(mesh, gear);
                new RootBuilder(duty, mesh, load, gear, motion).Add();
            }
        }
    }

    /// <summary>Whether the carrier, or a central gear that meshes with its planets, settles between them.</summary>
    private bool Floats(string carrier)
    {
        if (IsFloating(carrier))
            return true;
        foreach (var mesh in _train.Meshes)
        {
            if (_train.CarrierOf(mesh) == carrier && (Central(mesh.First) || Central(mesh.Second)))
                return true;
        }

        return false;

        bool Central(GearBuilder gear) => _train.PlanetSet(gear.Spec.On.Value) is null && IsFloating(gear.Spec.On.Value);
    }

    private bool IsFloating(string body) => _spec.Bodies.Find(body)?.Floating is { Value: true };

    private Quantity DrivingGear(MeshBuilder mesh) =>
        _loads.TryGetValue(mesh.Name, out var load)
            ? Quantity.ComputedText(MeshLoadQuantities.DrivingGear, load.Driver ?? "none: the mesh carries no power")
            : Quantity.NotEvaluated(MeshLoadQuantities.DrivingGear, [], mesh[MeshQuantities.TangentialForce].Reasons);

    private GearMotion MotionOf(GearBuilder gear, MeshBuilder mesh)
    {
        if (!_speeds.TryGetValue(mesh.Name, out var turning) || !_loads.TryGetValue(mesh.Name, out var own))
        {
            return new(1, 0, _ => 0, [.. mesh[MeshQuantities.TangentialForce].Reasons.DefaultIfEmpty("the loads of the mesh are not known")]);
        }

        var first = Math.Abs(turning.First.ToDouble());
        var perInput = gear == mesh.First ? first : first * mesh.First.Spec.Teeth.Value / mesh.Second.Spec.Teeth.Value;
        var contacts = _train.PlanetSet(gear.Spec.On.Value) is null ? own.Paths : 1;
        return new(contacts, perInput, reverse => Weaker(gear, reverse), []);
    }

    /// <summary>Load of the less loaded flank over that of the more loaded one.</summary>
    /// <remarks>A torque from a mesh presses on the flank of its own sign. What presses forward on one flank presses on the other in reverse.</remarks>
    private double Weaker(GearBuilder gear, double reverse)
    {
        var (plus, minus) = _flanks.GetValueOrDefault(gear);
        (plus, minus) = (Math.Max(plus, reverse * minus), Math.Max(minus, reverse * plus));
        var stronger = Math.Max(plus, minus);
        return stronger == 0 ? 0 : Math.Min(plus, minus) / stronger;
    }
}
