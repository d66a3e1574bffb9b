using MathNet.Numerics.LinearAlgebra;
using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

/// <summary>Speeds and torques by dense matrices in doubles, written apart from the solver, for comparison.</summary>
internal sealed class DenseOracle
{
    private readonly TrainGraph _graph;
    private readonly Dictionary<string, int> _bodies = [];
    private readonly (int A, int B, int C, double Za, double Zb)[] _meshes;

    public DenseOracle(TrainGraph graph)
    {
        _graph = graph;
        foreach (var body in graph.Bodies) _bodies.Add(body.Name, _bodies.Count);
        _meshes = [.. graph.Meshes.Select(m =>
        {
            var (a, b) = (graph.Gears.Single(g => g.Name == m.First), graph.Gears.Single(g => g.Name == m.Second));
            var carrier = graph.Bodies.Single(x => x.Name == a.Body).Carrier ?? graph.Bodies.Single(x => x.Name == b.Body).Carrier;
            return (_bodies[a.Body], _bodies[b.Body], carrier is null ? -1 : _bodies[carrier],
                (double)a.Teeth, a.IsInternal != b.IsInternal ? -b.Teeth : (double)b.Teeth);
        })];
    }

    /// <summary>ω of every body; the carrier's speed is put in as a third unknown in every Willis row.</summary>
    public double[] Speeds()
    {
        var n = _bodies.Count;
        var a = Matrix<double>.Build.Dense(_meshes.Length + _graph.Fixed.Length + 1, n);
        var b = Vector<double>.Build.Dense(a.RowCount);
        var row = 0;
        foreach (var mesh in _meshes)
        {
            a[row, mesh.A] += mesh.Za;
            a[row, mesh.B] += mesh.Zb;
            if (mesh.C >= 0) a[row, mesh.C] -= mesh.Za + mesh.Zb;
            row++;
        }

        foreach (var held in _graph.Fixed) a[row++, _bodies[held]] = 1;
        a[row, _bodies[_graph.Input]] = 1;
        b[row] = 1;
        return [.. a.QR().Solve(b)];
    }

    /// <summary>Every choice of driving gears whose solution agrees with that choice, with its efficiency −P_out/P_in.</summary>
    public List<double> ConsistentEfficiencies(double[] speeds)
    {
        var found = new List<double>();
        var m = _meshes.Length;
        for (var pattern = 0; pattern < 1 << m; pattern++)
        {
            var n = _bodies.Count;
            var a = Matrix<double>.Build.Dense(n, n);
            var b = Vector<double>.Build.Dense(n);
            for (var k = 0; k < m; k++)
            {
                var (bodyA, bodyB, carrier, za, zb) = _meshes[k];
                // A mesh that does not roll loses nothing.
                var eta = Math.Abs(speeds[bodyA] - (carrier < 0 ? 0 : speeds[carrier])) < 1e-12 ? 1 : _graph.Meshes[k].Efficiency;
                var second = zb * ((pattern & (1 << k)) == 0 ? eta : 1 / eta);
                a[bodyA, k] += za;
                a[bodyB, k] += second;
                if (carrier >= 0) a[carrier, k] -= za + second;
            }

            a[_bodies[_graph.Output], m] = 1;
            for (var f = 0; f < _graph.Fixed.Length; f++) a[_bodies[_graph.Fixed[f]], m + 1 + f] = 1;
            b[_bodies[_graph.Input]] = -1;
            var x = a.LU().Solve(b);

            var agrees = true;
            for (var k = 0; k < m && agrees; k++)
            {
                var (bodyA, _, carrier, za, _) = _meshes[k];
                var power = za * x[k] * (speeds[bodyA] - (carrier < 0 ? 0 : speeds[carrier]));
                var firstDrives = (pattern & (1 << k)) == 0;
                // A mesh without power or without losses has no direction: count it once, as driven by its first gear.
                if (Math.Abs(power) < 1e-9 || _graph.Meshes[k].Efficiency == 1) agrees = firstDrives;
                else agrees = firstDrives == power < 0;
            }

            if (agrees) found.Add(-x[m] * speeds[_bodies[_graph.Output]]);
        }

        return found;
    }
}
