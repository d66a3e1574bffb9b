using System.Numerics;
using Fractions;

namespace Pawl.Mechanics.Trains;

/// <summary>Speeds from one Willis relation a mesh and one row a given speed.</summary>
internal static class SpeedSolver
{
    /// <summary>Bodies whose speeds are given, and the speeds.</summary>
    public readonly record struct Given(int[] Bodies, Fraction[] Speeds)
    {
        public int Length => Bodies.Length;
    }

    public static TrainSpeeds? Solve(
        TrainIndex train, Given given, ImmutableArray<TrainProblem>.Builder problems)
    {
        // Rows and unknowns are taken in the order of the names, so that a diagnosis does not depend on the order of the lists.
        var order = PivotPreference(train);
        var rows = SortedRows(train, given);
        var system = new IntegerElimination(train.BodyCount, order);
        var consistent = true;
        foreach (var row in rows) consistent &= system.Add(Row(train, given, row, tags: 0, tag: 0)) == RowOutcome.Independent;

        if (!consistent) Diagnose(train, given, order, rows, problems);
        if (!Determined(train, system, order, problems) || TrainSolver.Blocked(problems, TrainStep.Speeds)) return null;
        return Speeds(train, system, problems);
    }

    /// <summary>Planets first, so that what stays free and is offered for holding is a central body where possible.</summary>
    private static int[] PivotPreference(TrainIndex train)
    {
        var order = new int[train.BodyCount];
        for (var i = 0; i < order.Length; i++) order[i] = i;
        Array.Sort(order, (a, b) =>
        {
            var planets = (train.Carrier[b] >= 0).CompareTo(train.Carrier[a] >= 0);
            return planets != 0 ? planets : string.CompareOrdinal(train.NameOf(b), train.NameOf(a));
        });
        return order;
    }

    /// <summary>Row numbers: given speeds from 0, then meshes.</summary>
    private static int[] SortedRows(TrainIndex train, Given given)
    {
        var names = new string[given.Length + train.Meshes.Length];
        var rows = new int[names.Length];
        for (var i = 0; i < rows.Length; i++)
        {
            rows[i] = i;
            names[i] = i < given.Length ? train.NameOf(given.Bodies[i]) : train.Graph.Meshes[i - given.Length].Name;
        }

        Array.Sort(names, rows, 0, given.Length, StringComparer.Ordinal);
        Array.Sort(names, rows, given.Length, train.Meshes.Length, StringComparer.Ordinal);
        return rows;
    }

    /// <summary>z_a·ω_a + s·z_b·ω_b − (z_a + s·z_b)·ω_c = 0, with ω_c = 0 in the housing; or ω = given.</summary>
    private static BigInteger[] Row(
        TrainIndex train, Given given, int number, int tags, int tag)
    {
        var n = train.BodyCount;
        var row = new BigInteger[n + 1 + tags];
        if (number < given.Length)
        {
            row[given.Bodies[number]] = given.Speeds[number].Denominator;
            row[n] = given.Speeds[number].Numerator;
        }
        else
        {
            var mesh = train.Meshes[number - given.Length];
            row[mesh.First] = mesh.FirstTeeth;
            row[mesh.Second] = mesh.Sign * mesh.SecondTeeth;
            if (mesh.Carrier >= 0) row[mesh.Carrier] = -((long)mesh.FirstTeeth + (long)mesh.Sign * mesh.SecondTeeth);
        }

        if (tags > 0) row[n + 1 + tag] = BigInteger.One;
        return row;
    }

    /// <summary>Does the elimination again with tags, to name the smallest set of rows behind every dependent row.</summary>
    private static void Diagnose(
        TrainIndex train, Given given, int[] order, int[] rows,
        ImmutableArray<TrainProblem>.Builder problems)
    {
        var system = new IntegerElimination(train.BodyCount, order);
        for (var r = 0; r < rows.Length; r++)
        {
            var row = Row(train, given, rows[r], rows.Length, r);
            var outcome = system.Add(row);
            if (outcome == RowOutcome.Independent) continue;

            var bodies = ImmutableArray.CreateBuilder<string>();
            var meshes = ImmutableArray.CreateBuilder<string>();
            for (var k = 0; k < rows.Length; k++)
            {
                if (row[train.BodyCount + 1 + k].IsZero) continue;
                if (rows[k] < given.Length) bodies.Add(train.NameOf(given.Bodies[rows[k]]));
                else meshes.Add(train.Graph.Meshes[rows[k] - given.Length].Name);
            }

            problems.Add(outcome == RowOutcome.Contradiction
                ? new TrainProblem.Locked(bodies.ToImmutable(), meshes.ToImmutable())
                : new TrainProblem.LoadShareIndeterminate(bodies.ToImmutable(), meshes.ToImmutable()));
        }
    }

    private static bool Determined(
        TrainIndex train, IntegerElimination system, int[] order, ImmutableArray<TrainProblem>.Builder problems)
    {
        var free = ImmutableArray.CreateBuilder<string>();
        var pins = ImmutableArray.CreateBuilder<string>();
        for (var k = order.Length - 1; k >= 0; k--)
        {
            var body = order[k];
            if (train.Idle[body] && body != train.Output) continue;
            if (system.TryValue(body, out _, out _)) continue;
            free.Add(train.NameOf(body));
            if (!system.IsPivot(body)) pins.Add(train.NameOf(body));
        }

        if (free.Count == 0) return true;
        problems.Add(new TrainProblem.Undetermined(free.ToImmutable(), pins.ToImmutable()));
        return false;
    }

    private static TrainSpeeds Speeds(TrainIndex train, IntegerElimination system, ImmutableArray<TrainProblem>.Builder problems)
    {
        var speeds = new Fraction[train.BodyCount];
        var known = new bool[train.BodyCount];
        for (var i = 0; i < speeds.Length; i++)
        {
            known[i] = system.TryValue(i, out var numerator, out var denominator);
            if (known[i]) speeds[i] = new Fraction(numerator, denominator);
        }

        var bodies = ImmutableArray.CreateBuilder<BodySpeed>(speeds.Length);
        for (var i = 0; i < speeds.Length; i++)
        {
            if (!known[i]) continue;
            var carrier = train.Carrier[i];
            bodies.Add(new BodySpeed(train.NameOf(i), speeds[i], carrier < 0 || !known[carrier] ? null : speeds[i] - speeds[carrier]));
        }

        var meshes = ImmutableArray.CreateBuilder<MeshSpeed>(train.Meshes.Length);
        for (var k = 0; k < train.Meshes.Length; k++)
        {
            var mesh = train.Meshes[k];
            var carrier = mesh.Carrier < 0 ? Fraction.Zero : speeds[mesh.Carrier];
            var first = speeds[mesh.First] - carrier;
            meshes.Add(new MeshSpeed(
                train.Graph.Meshes[k].Name,
                mesh.Carrier < 0 ? null : train.NameOf(mesh.Carrier),
                first,
                speeds[mesh.Second] - carrier,
                Fraction.Abs(first) * mesh.FirstTeeth));
        }

        var (input, output) = (speeds[train.Input], speeds[train.Output]);
        if (output.IsZero && !input.IsZero)
            problems.Add(new TrainProblem.SingularRatio(train.NameOf(train.Input), train.NameOf(train.Output)));
        return new TrainSpeeds(output.IsZero ? null : input / output, bodies.ToImmutable(), meshes.MoveToImmutable());
    }
}
