namespace Pawl.Mechanics.Trains;

/// <summary>Torques by statics, with the losses of every mesh counted in the frame of its carrier.</summary>
/// <remarks>
/// <code>on a: T_a = z_a·F    on b: T_b = s·z_b·F·e    on the carrier: −(T_a + T_b)</code>
/// Symbols: F one unknown a mesh, N·mm a tooth; s +1 external, −1 internal; e = η when a drives, 1/η when b drives, 1 when the
/// mesh does not roll. Torques on every body, with those from outside, add up to zero.<br/>
/// Which gear drives follows from P_a = T_a·(ω_a − ω_c): a negative one means that a gives power to the mesh. Starting without losses,
/// directions are taken from the last solution until they stay; where they do not, or the train seems to lock, all are tried.<br/>
/// Source: R. Willis, Principles of Mechanism, 1870 (speeds); H. W. Müller, Epicyclic Drive Trains (rolling power), from memory.<br/>
/// Valid for: constant speed; losses in the meshes only, each with one efficiency for both directions.
/// </remarks>
internal sealed class TorqueSolver
{
    private const double Negligible = 1e-12;

    // 4096 small linear systems: a tenth of a second, for a train that no one builds.
    private const int MostSearched = 12;

    private readonly TrainIndex _train;
    private readonly double[] _speeds;
    private readonly int[] _equationOf;
    private readonly int _unknowns;
    private readonly bool _lossless;

    // +1: the first gear drives; −1: the second; 0: no power passes.
    private readonly int[] _direction;
    private double[] _solution = [];

    private TorqueSolver(TrainIndex train, TrainSpeeds speeds, bool lossless)
    {
        _train = train;
        _lossless = lossless;
        _speeds = new double[train.BodyCount];
        _equationOf = new int[train.BodyCount];
        _direction = new int[train.Meshes.Length];
        var next = 0;
        foreach (var entry in speeds.Bodies)
        {
            // The entries are in the order of the graph and leave out idle bodies only.
            while (train.NameOf(next) != entry.Body) _equationOf[next++] = -1;
            _equationOf[next] = _unknowns++;
            _speeds[next++] = entry.Speed.ToDouble();
        }

        while (next < train.BodyCount) _equationOf[next++] = -1;
    }

    /// <summary>Torques for speeds that are determined, with no redundant rows and an output that turns.</summary>
    public static TrainTorques? Solve(
        TrainIndex train, TrainSpeeds speeds, bool lossless, ImmutableArray<TrainProblem>.Builder problems)
    {
        var solver = new TorqueSolver(train, speeds, lossless);
        double? found = null;
        if (solver.Converge())
        {
            var meshes = solver.MeshLoads(out var efficiency);
            if (efficiency > 0) return solver.Torques(meshes, efficiency);
            found = efficiency;
        }

        if (!lossless && solver.Search()) return solver.Torques(solver.MeshLoads(out var best), best);
        problems.Add(solver.Locking(found));
        return null;
    }

    private TrainProblem.SelfLocking Locking(double? efficiency)
    {
        var meshes = ImmutableArray.CreateBuilder<string>();
        for (var k = 0; k < _direction.Length; k++)
            if (_train.Meshes[k].Efficiency < 1) meshes.Add(_train.Graph.Meshes[k].Name);

        meshes.Sort(StringComparer.Ordinal);
        return new TrainProblem.SelfLocking(
            _train.NameOf(_train.Input), _train.NameOf(_train.Output), efficiency, meshes.ToImmutable());
    }

    private bool Converge()
    {
        if (!Balance()) return false;
        if (_lossless)
        {
            TakeDirections();
            return true;
        }

        var limit = 4 * _direction.Length + 8;
        for (var pass = 0; pass < limit; pass++)
        {
            if (!TakeDirections()) return true;
            if (!Balance()) return false;
        }

        return false;
    }

    /// <summary>
    /// Tries every choice of who drives, for the passes may circle, or end where the train locks though another state drives it.
    /// Takes the consistent one of greatest efficiency; false when there is none.
    /// </summary>
    private bool Search()
    {
        if (_direction.Length > MostSearched) return false;

        var (greatest, best) = (0.0, -1);
        for (var choice = 0; choice < 1 << _direction.Length; choice++)
        {
            Choose(choice);
            if (!Balance() || !AgreesWithItself()) continue;
            MeshLoads(out var efficiency);
            if (efficiency > greatest + Negligible) (greatest, best) = (efficiency, choice);
        }

        if (best < 0) return false;
        Choose(best);
        return Balance();
    }

    private void Choose(int choice)
    {
        for (var k = 0; k < _direction.Length; k++)
            _direction[k] = ((choice >> k) & 1) == 0 ? 1 : -1;
    }

    /// <summary>Whether power flows as the directions say; a mesh that passes none agrees with either.</summary>
    private bool AgreesWithItself()
    {
        for (var k = 0; k < _direction.Length; k++)
        {
            var power = FirstPower(k);
            if (Math.Abs(power) <= Negligible) _direction[k] = 0;
            else if (-Math.Sign(power) != _direction[k]) return false;
        }

        return true;
    }

    /// <summary>Sees which gear drives every mesh; false when nothing has changed.</summary>
    private bool TakeDirections()
    {
        var changed = false;
        for (var k = 0; k < _direction.Length; k++)
        {
            var power = FirstPower(k);
            var direction = Math.Abs(power) <= Negligible ? 0 : -Math.Sign(power);
            changed |= direction != _direction[k];
            _direction[k] = direction;
        }

        return changed;
    }

    private double FirstPower(int k)
    {
        var mesh = _train.Meshes[k];
        return mesh.FirstTeeth * _solution[k] * (_speeds[mesh.First] - CarrierSpeed(mesh));
    }

    private double CarrierSpeed(TrainIndex.Mesh mesh) => mesh.Carrier < 0 ? 0 : _speeds[mesh.Carrier];

    private double Factor(int k) => _lossless ? 1 : _direction[k] switch
    {
        > 0 => _train.Meshes[k].Efficiency,
        < 0 => 1 / _train.Meshes[k].Efficiency,
        _ => 1,
    };

    /// <summary>Unknowns: F of every mesh, then the torque of the output, then those of the held bodies.</summary>
    private bool Balance()
    {
        var meshes = _train.Meshes;
        var a = new double[_unknowns][];
        for (var r = 0; r < a.Length; r++) a[r] = new double[_unknowns];
        var b = new double[_unknowns];

        for (var k = 0; k < meshes.Length; k++)
        {
            var mesh = meshes[k];
            double first = mesh.FirstTeeth;
            var second = mesh.Sign * mesh.SecondTeeth * Factor(k);
            a[_equationOf[mesh.First]][k] += first;
            a[_equationOf[mesh.Second]][k] += second;
            if (mesh.Carrier >= 0) a[_equationOf[mesh.Carrier]][k] -= first + second;
        }

        a[_equationOf[_train.Output]][meshes.Length] = 1;
        for (var f = 0; f < _train.Fixed.Length; f++) a[_equationOf[_train.Fixed[f]]][meshes.Length + 1 + f] = 1;
        b[_equationOf[_train.Input]] = -1;
        _solution = b;
        return DenseSystem.TrySolve(a, b) && IsFinite();
    }

    /// <summary>Ratios beyond the numbers of this machine, as of hundreds of stages in a row, are no solution.</summary>
    private bool IsFinite()
    {
        for (var k = 0; k < _direction.Length; k++)
            if (!double.IsFinite(FirstPower(k))) return false;

        return true;
    }

    private ImmutableArray<MeshLoad> MeshLoads(out double efficiency)
    {
        var loads = ImmutableArray.CreateBuilder<MeshLoad>(_direction.Length);
        efficiency = 1;
        for (var k = 0; k < _direction.Length; k++)
        {
            var mesh = _train.Meshes[k];
            var carrier = CarrierSpeed(mesh);
            var first = mesh.FirstTeeth * _solution[k];
            var second = mesh.Sign * mesh.SecondTeeth * Factor(k) * _solution[k];
            var (firstPower, secondPower) = (first * (_speeds[mesh.First] - carrier), second * (_speeds[mesh.Second] - carrier));
            var driver = _direction[k] switch { > 0 => mesh.FirstGear, < 0 => mesh.SecondGear, _ => -1 };
            var loss = driver < 0 || _lossless
                ? 0
                : (1 - mesh.Efficiency) * Math.Abs(_direction[k] > 0 ? firstPower : secondPower);
            efficiency -= loss;
            loads.Add(new MeshLoad(
                _train.Graph.Meshes[k].Name,
                mesh.Carrier < 0 ? null : _train.NameOf(mesh.Carrier),
                Math.Max(_train.Graph.Bodies[mesh.First].Count, _train.Graph.Bodies[mesh.Second].Count),
                first,
                second,
                -(first + second),
                _solution[k],
                firstPower,
                secondPower,
                driver < 0 ? null : _train.Graph.Gears[driver].Name,
                loss));
        }

        return loads.MoveToImmutable();
    }

    private TrainTorques Torques(ImmutableArray<MeshLoad> meshes, double efficiency)
    {
        var bodies = ImmutableArray.CreateBuilder<BodyTorque>(_train.Fixed.Length + 2);
        for (var i = 0; i < _train.BodyCount; i++)
        {
            var held = TrainIndex.IndexIn(_train.Fixed, i);
            var name = _train.NameOf(i);
            if (i == _train.Input) bodies.Add(new BodyTorque(name, BodyRole.Input, 1, 1));
            else if (i == _train.Output) bodies.Add(Outside(name, BodyRole.Output, meshes.Length, i));
            else if (held >= 0) bodies.Add(Outside(name, BodyRole.Held, meshes.Length + 1 + held, i));
        }

        var housing = 0.0;
        foreach (var mesh in meshes)
            if (mesh.Carrier is null) housing -= mesh.CarrierTorque;

        return new TrainTorques(efficiency, bodies.MoveToImmutable(), meshes, Branches(meshes), housing);

        BodyTorque Outside(string name, BodyRole role, int unknown, int body) =>
            new(name, role, _solution[unknown], role == BodyRole.Held ? 0 : _solution[unknown] * _speeds[body]);
    }

    private ImmutableArray<BranchPower> Branches(ImmutableArray<MeshLoad> meshes)
    {
        // A branch is a gear on a central body, or all the planets that the body carries.
        var gears = _train.Graph.Gears;
        var onGear = new double[gears.Length];
        var gearMeshes = new bool[gears.Length];
        var onCarrier = new double[_train.BodyCount];
        var branches = new int[_train.BodyCount];
        var carries = new bool[_train.BodyCount];
        for (var k = 0; k < meshes.Length; k++)
        {
            var mesh = _train.Meshes[k];
            onGear[mesh.FirstGear] += meshes[k].FirstTorque;
            onGear[mesh.SecondGear] += meshes[k].SecondTorque;
            CountGear(mesh.FirstGear, mesh.First);
            CountGear(mesh.SecondGear, mesh.Second);
            if (mesh.Carrier < 0) continue;
            onCarrier[mesh.Carrier] += meshes[k].CarrierTorque;
            if (!carries[mesh.Carrier]) branches[mesh.Carrier]++;
            carries[mesh.Carrier] = true;
        }

        var powers = ImmutableArray.CreateBuilder<BranchPower>();
        for (var i = 0; i < branches.Length; i++)
        {
            if (branches[i] < 2 || _train.Carrier[i] >= 0) continue;
            for (var g = 0; g < gears.Length; g++)
                if (gearMeshes[g] && _train.GearBody[g] == i)
                    powers.Add(new BranchPower(_train.NameOf(i), gears[g].Name, onGear[g], onGear[g] * _speeds[i]));
            if (carries[i]) powers.Add(new BranchPower(_train.NameOf(i), null, onCarrier[i], onCarrier[i] * _speeds[i]));
        }

        return powers.ToImmutable();

        void CountGear(int gear, int body)
        {
            if (!gearMeshes[gear]) branches[body]++;
            gearMeshes[gear] = true;
        }
    }
}
