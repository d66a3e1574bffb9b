using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Rating;
using Pawl.Mechanics.Trains;
using Pawl.Specs.Model;
using K = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Trains;

/// <summary>Speeds, torques and powers of the solved train, as quantities.</summary>
internal sealed class TrainResults
{
    private readonly AnalysisContext _context;
    private readonly TrainSpec _spec;
    private readonly TrainBuilder _train;
    private readonly Subject _subject;
    private readonly ImmutableArray<Quantity> _efficiencies;
    private readonly ImmutableArray<string> _speedReasons;
    private readonly ImmutableArray<string> _torqueReasons;

    private TrainResults(AnalysisContext context, TrainSpec spec, TrainBuilder train)
    {
        _context = context;
        _spec = spec;
        _train = train;
        _subject = train.Subject;
        _efficiencies = [.. train.Meshes.Select(mesh => mesh[MeshQuantities.Efficiency])];
        _speedReasons = Reasons(TrainStep.Speeds);
        _torqueReasons = _speedReasons.IsEmpty ? Reasons(TrainStep.Torques) : _speedReasons;
    }

    private TrainSolution Solution => _train.Solution!;

    public static void Add(AnalysisContext context, TrainSpec spec, TrainBuilder train)
    {
        var results = new TrainResults(context, spec, train);
        results.Soundness();
        results.Duty();
        results.Ratio();
        results.Powers();
        foreach (var body in train.Bodies)
            results.Body(body);
        foreach (var mesh in train.Meshes)
            results.Mesh(mesh);
        results.Lash();
    }

    private ImmutableArray<string> Reasons(TrainStep step) =>
        [.. Solution.Problems.Where(problem => problem.Blocks == step).Select(problem => problem.Sentence.TrimEnd('.'))];

    private void Soundness()
    {
        var problems = Solution.Problems;
        var faults = Sentences(problem => problem.Blocks == TrainStep.Speeds
            && problem is not (TrainProblem.Undetermined or TrainProblem.Locked));
        _subject.Add(Quantity.ComputedText(K.Topology, _train.Topology));
        _subject.Add(Quantity.ComputedText(K.GraphFaults, faults));
        if (faults != None)
        {
            foreach (var kind in (ReadOnlySpan<QuantityKind>)[K.FreeBodies, K.Mobility, K.Contradiction, K.StandingOutput])
                _subject.Add(Quantity.NotEvaluated(kind, [], _speedReasons));
        }
        else
        {
            var free = problems.OfType<TrainProblem.Undetermined>().ToImmutableArray();
            _subject.Add(Quantity.ComputedText(K.FreeBodies, Sentences(problem => problem is TrainProblem.Undetermined)));
            _subject.Add(Quantity.Computed(K.Mobility, free.Sum(problem => problem.Pins.Length), []));
            _subject.Add(Quantity.ComputedText(K.Contradiction, Sentences(problem => problem is TrainProblem.Locked)));
            _subject.Add(_speedReasons.IsEmpty
                ? Quantity.OfTruth(
                    K.StandingOutput, Origin.Computed.Instance, problems.Any(problem => problem is TrainProblem.SingularRatio), [])
                : Quantity.NotEvaluated(K.StandingOutput, [], _speedReasons));
        }

        _subject.Add(Quantity.ComputedText(K.IdleBodies, Sentences(problem => problem is TrainProblem.IdleBody)));
        _subject.Add(Quantity.ComputedText(K.ClosedLoops, Sentences(problem => problem is TrainProblem.LoadShareIndeterminate)));

        string Sentences(Func<TrainProblem, bool> which)
        {
            var said = string.Join("; ", problems.Where(which).Select(problem => problem.Sentence.TrimEnd('.')));
            return said.Length == 0 ? None : said;
        }
    }

    private const string None = "none";

    private void Duty()
    {
        var duty = _context.Spec.Duty?.Input;
        if (_context.Spec.Duty?.Output?.MaxLash is { } lash)
            _subject.Add(_context.Amount(K.MaxLash, lash, ""));
        _subject.Add(_context.Amount(K.InputSpeed, duty?.Speed, "duty.input.speed"));
        _subject.Add(_context.Amount(K.InputTorque, duty?.Torque, "duty.input.torque"));
        _subject.Add(Derive.From(K.InputPower, _subject[K.InputTorque], _subject[K.InputSpeed], (torque, speed) => torque * speed));
    }

    private void Ratio()
    {
        var s = _subject;
        var ratio = _context.Spec.Ratio;
        s.Add(_context.Number(K.TargetRatio, ratio?.Target, "ratio.target"));
        s.Add(_context.Amount(K.RatioTolerance, ratio?.Tolerance, 0, "0: the ratio must be exact, for no tolerance is stated"));
        if (ratio?.Sense is { } sense)
            s.Add(AnalysisContext.Text(K.TargetSense, sense, ""));
        if (Solution.Speeds is not { Ratio: { } exact })
        {
            var reasons = _speedReasons.IsEmpty ? _torqueReasons : _speedReasons;
            foreach (var kind in (ReadOnlySpan<QuantityKind>)[K.Ratio, K.RatioDeviation, K.ExactRatio, K.Sense, K.OutputSpeed])
                s.Add(Quantity.NotEvaluated(kind, [], reasons));
            return;
        }

        s.Add(Quantity.Computed(K.Ratio, exact.ToDouble(), Teeth()));
        s.Add(Derive.From(K.RatioDeviation, s[K.Ratio], s[K.TargetRatio], (i, target) => Math.Abs(Math.Abs(i) - target) / target));
        s.Add(Quantity.ComputedText(K.ExactRatio, $"{exact.Numerator}/{exact.Denominator}"));
        s.Add(Quantity.ComputedText(K.Sense, exact.IsNegative ? "reversed" : "same", [s[K.Ratio]]));
        s.Add(Derive.From(K.OutputSpeed, s[K.InputSpeed], s[K.Ratio], (speed, i) => speed / i));
    }

    private ImmutableArray<Quantity> Teeth() => [.. _train.Gears.Select(gear => gear[GearQuantities.Teeth])];

    private void Powers()
    {
        var s = _subject;
        var locked = string.Join("; ", Solution.Problems.OfType<TrainProblem.SelfLocking>().Select(problem => problem.Sentence.TrimEnd('.')));
        s.Add((Quantity.MissingReasons(_efficiencies), locked) switch
        {
            ({ IsEmpty: false } reasons, _) => Quantity.NotEvaluated(K.SelfLocking, _efficiencies, reasons),
            (_, { Length: > 0 }) => Quantity.ComputedText(K.SelfLocking, locked, _efficiencies),
            _ when Solution.Torques is null => Quantity.NotEvaluated(K.SelfLocking, [], TorqueReasons()),
            _ => Quantity.ComputedText(K.SelfLocking, None, _efficiencies),
        });
        s.Add(Lossy(K.Efficiency, torques => torques.Efficiency));
        s.Add(Lossy(K.CirculatingPower, torques => torques.MaxRollingPower));
        s.Add(Solution.Torques is { } solved
            ? Quantity.Computed(K.TorqueBalance, Residue(solved), _efficiencies)
            : Quantity.NotEvaluated(K.TorqueBalance, [], TorqueReasons()));
        s.Add(Derive.From(
            K.OutputTorque, s[K.InputTorque], s[K.Ratio], s[K.Efficiency], (torque, i, efficiency) => torque * i * efficiency));
        s.Add(Derive.From(K.LostPower, s[K.InputPower], s[K.Efficiency], (power, efficiency) => power * (1 - efficiency)));
    }

    private static double Residue(TrainTorques torques)
    {
        var (sum, greatest) = (torques.HousingTorque, 0.0);
        foreach (var body in torques.Bodies)
        {
            sum += body.External;
            greatest = Math.Max(greatest, Math.Abs(body.External));
        }

        return Math.Abs(sum) / greatest;
    }

    /// <summary>A number of the solution with losses.</summary>
    private Quantity Lossy(QuantityKind kind, Func<TrainTorques, double> value) => Solution is { Torques: not null, Speeds: { } speeds }
        ? Quantity.Compute(kind, _efficiencies, v => TrainSolver.TorquesAt(_train.Graph!, speeds, v) is { } torques
            ? value(torques)
            : throw new OutsideValidityException("within its tolerances the train locks"))
        : Quantity.NotEvaluated(kind, [], TorqueReasons());

    private ImmutableArray<string> TorqueReasons() => _torqueReasons.IsEmpty ? ["the torques are not determined"] : _torqueReasons;

    private void Body(string name)
    {
        var set = _train.PlanetSet(name);
        var span = set?.Name.Span ?? _spec.Bodies.Find(name)?.Name.Span ?? Mention(name);
        var s = _context.Begin(SubjectKinds.Body, $"bodies.{name}", span).Relate("train", _subject);
        s.Add(Quantity.OfText(BodyQuantities.Role, Origin.Computed.Instance, Role(name, set), []));
        if (_spec.Bodies.Find(name)?.Floating is { } floating)
            s.Add(AnalysisContext.Truth(BodyQuantities.Floating, floating, false, ""));

        if (Solution.Speeds?.Of(name) is not { } speed)
        {
            var reasons = _speedReasons.IsEmpty ? [$"nothing determines the speed of {name}"] : _speedReasons;
            var unknown = set is null ? UnknownOfShafts : UnknownOfPlanets;
            foreach (var kind in unknown)
                s.Add(Quantity.NotEvaluated(kind, [], reasons));
            return;
        }

        s.Add(Quantity.Computed(BodyQuantities.SpeedRatio, speed.Speed.ToDouble(), []));
        s.Add(Derive.From(
            BodyQuantities.Speed, _subject[K.InputSpeed], s[BodyQuantities.SpeedRatio], (speed, perInput) => speed * perInput));
        if (speed.RelativeToCarrier is { } spin)
        {
            var perInput = spin.ToDouble();
            s.Add(Derive.From(BodyQuantities.SpinSpeed, _subject[K.InputSpeed], speed => speed * perInput));
        }

        if (set is null)
            Load(s, name);
    }

    private static readonly ImmutableArray<QuantityKind> UnknownOfShafts =
        [BodyQuantities.SpeedRatio, BodyQuantities.Speed, BodyQuantities.Torque, BodyQuantities.Power];

    private static readonly ImmutableArray<QuantityKind> UnknownOfPlanets =
        [BodyQuantities.SpeedRatio, BodyQuantities.Speed, BodyQuantities.SpinSpeed];

    private void Load(Subject s, string name)
    {
        if (Solution.Torques is not { } torques)
        {
            s.Add(Quantity.NotEvaluated(BodyQuantities.Torque, [], TorqueReasons()));
            s.Add(Quantity.NotEvaluated(BodyQuantities.Power, [], TorqueReasons()));
            return;
        }

        if (torques.Of(name) is not { } load)
            return;

        s.Add(Quantity.Compute(
            BodyQuantities.Torque, [_subject[K.InputTorque], _subject[K.Efficiency]], v => v[0] * load.External));
        s.Add(Derive.From(
            BodyQuantities.Power, s[BodyQuantities.Torque], s[BodyQuantities.Speed], (torque, speed) => torque * speed));
    }

    private Specs.Text.SourceSpan Mention(string name)
    {
        if (_spec.Input.Value == name)
            return _spec.Input.Span;
        if (_spec.Output.Value == name)
            return _spec.Output.Span;
        foreach (var held in _spec.Fixed)
        {
            if (held.Value == name)
                return held.Span;
        }

        foreach (var set in _spec.Planets.Entries)
        {
            if (set.Carrier.Value == name)
                return set.Carrier.Span;
        }

        return _spec.Span;
    }

    private string Role(string name, PlanetSetSpec? set) =>
        set is not null ? "planet"
        : name == _spec.Input.Value ? "input"
        : name == _spec.Output.Value ? "output"
        : _spec.Fixed.Any(held => held.Value == name) ? "fixed"
        : "linked";

    private void Mesh(MeshBuilder mesh)
    {
        mesh.Subject.Add(Solution.Speeds?.Meshes.FirstOrDefault(each => each.Mesh == mesh.Name) is { } speeds
            ? Quantity.Computed(MeshQuantities.RelativeSpeedRatio, Math.Abs(speeds.First.ToDouble()), [])
            : Quantity.NotEvaluated(MeshQuantities.RelativeSpeedRatio, [], _speedReasons));
        var load = Solution.Torques?.Meshes.FirstOrDefault(each => each.Mesh == mesh.Name);
        mesh.Subject.Add(load is null
            ? Quantity.NotEvaluated(MeshQuantities.RollingPowerRatio, [], TorqueReasons())
            : Quantity.Computed(MeshQuantities.RollingPowerRatio, load.RollingPower, _efficiencies));
        mesh.Subject.Add(load is null
            ? Quantity.NotEvaluated(MeshQuantities.TorqueRatio, [], TorqueReasons())
            : Quantity.Computed(MeshQuantities.TorqueRatio, Math.Abs(load.FirstTorque) / load.Paths, _efficiencies));
        mesh.Subject.Add(load is null
            ? Quantity.NotEvaluated(MeshLoadQuantities.DrivingGear, [], TorqueReasons())
            : Quantity.ComputedText(MeshLoadQuantities.DrivingGear, load.Driver ?? "none: the mesh carries no power"));
        foreach (var gear in (ReadOnlySpan<GearBuilder>)[mesh.First, mesh.Second])
        {
            mesh.Gear(gear).Add(load is null
                ? Quantity.NotEvaluated(RootQuantities.OtherFlankShare, [], TorqueReasons())
                : Quantity.Computed(RootQuantities.OtherFlankShare, OtherFlankShare(gear), []));
        }
    }

    /// <summary>A torque from a mesh presses on the flank of its own sign; of each flank the heaviest mesh counts.</summary>
    private double OtherFlankShare(GearBuilder gear)
    {
        double plus = 0, minus = 0;
        foreach (var mesh in _train.Meshes)
        {
            if ((mesh.First != gear && mesh.Second != gear) || Solution.Torques!.Meshes.FirstOrDefault(each => each.Mesh == mesh.Name) is not { } load)
                continue;
            var torque = (mesh.First == gear ? load.FirstTorque : load.SecondTorque) / load.Paths;
            (plus, minus) = (Math.Max(plus, torque), Math.Max(minus, -torque));
        }

        return plus + minus == 0 ? 0 : Math.Min(plus, minus) / Math.Max(plus, minus);
    }

    /// <summary>Play of every mesh, carried to the output by the torque that the mesh bears per unit of output torque.</summary>
    private void Lash()
    {
        if (Solution.Lossless is not { } lossless || lossless.Of(_spec.Output.Value) is not { External: not 0 } output)
        {
            _subject.Add(Quantity.NotEvaluated(K.OutputLash, [], TorqueReasons()));
            return;
        }

        var inputs = ImmutableArray.CreateBuilder<Quantity>();
        var shares = new List<double>();
        foreach (var mesh in _train.Meshes)
        {
            if (lossless.Meshes.FirstOrDefault(each => each.Mesh == mesh.Name) is not { } load)
                continue;
            inputs.Add(mesh[MeshQuantities.CircumferentialBacklash]);
            inputs.Add(mesh.Gear(mesh.First)[MeshGearQuantities.WorkingPitchDiameter]);
            shares.Add(Math.Abs(load.FirstTorque / output.External));
        }

        var perOutput = shares.ToArray();
        _subject.Add(Quantity.Compute(K.OutputLash, inputs.ToImmutable(), v =>
        {
            var lash = 0.0;
            for (var k = 0; k < perOutput.Length; k++)
                lash += 2 * v[2 * k] * perOutput[k] / v[(2 * k) + 1];
            return lash;
        }));
    }
}
