using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Trains;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Rating;

/// <summary>Strength of every mesh and of both its gears.</summary>
internal sealed class RatingDraft
{
    private readonly Draft _draft;
    private readonly TrainSpec _spec;
    private readonly TrainDraft _train;

    private RatingDraft(Draft draft, TrainSpec spec, TrainDraft train)
    {
        _draft = draft;
        _spec = spec;
        _train = train;
    }

    public static void Add(Draft draft, TrainSpec spec, TrainDraft train)
    {
        var rating = new RatingDraft(draft, spec, train);
        var duty = DutyDraft.Build(draft, train.Subject);
        foreach (var mesh in train.Meshes)
        {
            mesh.Subject.Add(rating.DrivingGear(mesh));
            var set = train.PlanetSet(mesh.First.Spec.On.Value) ?? train.PlanetSet(mesh.Second.Spec.On.Value);
            var load = MeshLoadDraft.Build(draft, duty, mesh, set, set is not null && rating.Floats(set.Carrier.Value));
            foreach (var gear in (ReadOnlySpan<GearDraft>)[mesh.First, mesh.Second])
            {
                var motion = rating.MotionOf(gear, mesh);
                new FlankDraft(duty, mesh, load, gear, motion).Add();
                CaseStrength.Add(mesh, gear);
                new RootDraft(duty, mesh, load, gear, motion).Add();
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

        bool Central(GearDraft gear) => _train.PlanetSet(gear.Spec.On.Value) is null && IsFloating(gear.Spec.On.Value);
    }

    private bool IsFloating(string body) => _spec.Bodies.Find(body)?.Floating is { Value: true };

    private Quantity DrivingGear(MeshDraft mesh) =>
        _train.Solution?.Torques?.Meshes.FirstOrDefault(each => each.Mesh == mesh.Name) is { } load
            ? Quantity.ComputedText(MeshLoadQuantities.DrivingGear, load.Driver ?? "none: the mesh carries no power")
            : Quantity.NotEvaluated(MeshLoadQuantities.DrivingGear, [], mesh[MeshQuantities.TangentialForce].Reasons);

    private GearMotion MotionOf(GearDraft gear, MeshDraft mesh)
    {
        if (_train.Solution is not { Speeds: { } speeds, Torques: { } torques }
            || speeds.Meshes.FirstOrDefault(each => each.Mesh == mesh.Name) is not { } turning
            || torques.Meshes.FirstOrDefault(each => each.Mesh == mesh.Name) is not { } own)
        {
            return new(1, 0, _ => 0, [.. mesh[MeshQuantities.TangentialForce].Reasons.DefaultIfEmpty("the loads of the mesh are not known")]);
        }

        var first = Math.Abs(turning.First.ToDouble());
        var perInput = gear == mesh.First ? first : first * mesh.First.Spec.Teeth.Value / mesh.Second.Spec.Teeth.Value;
        var contacts = _train.PlanetSet(gear.Spec.On.Value) is null ? own.Paths : 1;
        return new(contacts, perInput, reverse => Weaker(gear, mesh, torques, reverse), []);
    }

    /// <summary>Load of the less loaded flank over that of the more loaded one.</summary>
    /// <remarks>A torque from a mesh presses on the flank of its own sign. What presses forward on one flank presses on the other in reverse.</remarks>
    private double Weaker(GearDraft gear, MeshDraft mesh, TrainTorques torques, double reverse)
    {
        double plus = 0, minus = 0;
        foreach (var each in _train.Meshes)
        {
            if (each.MateOf(gear) is null || torques.Meshes.FirstOrDefault(load => load.Mesh == each.Name) is not { } load)
                continue;

            var torque = (each.First == gear ? load.FirstTorque : load.SecondTorque) / load.Paths;
            plus = Math.Max(plus, torque);
            minus = Math.Max(minus, -torque);
        }

        (plus, minus) = (Math.Max(plus, reverse * minus), Math.Max(minus, reverse * plus));
        var stronger = Math.Max(plus, minus);
        return stronger == 0 ? 0 : Math.Min(plus, minus) / stronger;
    }
}
