using Fractions;

namespace Pawl.Mechanics.Trains;

/// <summary>Speeds, torques and power flow of any gear train that a <see cref="TrainGraph"/> can describe.</summary>
/// <remarks>
/// Speeds are exact fractions of the tooth counts. Everything is a pure function: same graph, same solution, on any thread.
/// </remarks>
public static class TrainSolver
{
    /// <summary>Speeds for input speed 1 with the fixed bodies at rest, then torques for input torque 1.</summary>
    public static TrainSolution Solve(TrainGraph graph) => Solve(graph, withTorques: true);

    /// <summary>Speeds only, for input speed 1 with the fixed bodies at rest.</summary>
    public static TrainSolution SolveSpeeds(TrainGraph graph) => Solve(graph, withTorques: false);

    /// <summary>Speeds only, for the speeds given; the graph's fixed bodies count only if they are among them.</summary>
    public static TrainSolution SolveSpeedsAt(TrainGraph graph, ImmutableArray<GivenSpeed> given)
    {
        var problems = ImmutableArray.CreateBuilder<TrainProblem>();
        if (TrainIndex.Build(graph, problems) is not { } train) return new TrainSolution(problems.ToImmutable(), null);

        var rows = new (int, Fraction)[given.Length];
        for (var i = 0; i < rows.Length; i++)
        {
            var body = train.PositionOf(given[i].Body);
            if (body < 0)
            {
                problems.Add(new TrainProblem.UnknownName("A given speed", given[i].Body, "body"));
                return new TrainSolution(problems.ToImmutable(), null);
            }

            rows[i] = (body, given[i].Speed);
        }

        var speeds = SpeedSolver.Solve(train, rows, problems);
        return new TrainSolution(problems.ToImmutable(), speeds);
    }

    private static TrainSolution Solve(TrainGraph graph, bool withTorques)
    {
        var problems = ImmutableArray.CreateBuilder<TrainProblem>();
        if (TrainIndex.Build(graph, problems) is not { } train) return new TrainSolution(problems.ToImmutable(), null);

        var given = new (int, Fraction)[train.Fixed.Length + 1];
        for (var i = 0; i < train.Fixed.Length; i++) given[i] = (train.Fixed[i], Fraction.Zero);
        given[^1] = (train.Input, Fraction.One);

        var speeds = SpeedSolver.Solve(train, given, problems);
        if (speeds is null || !withTorques || Blocked(problems)) return new TrainSolution(problems.ToImmutable(), speeds);

        var lossless = TorqueSolver.Solve(train, speeds, lossless: true, problems);
        var torques = TorqueSolver.Solve(train, speeds, lossless: false, problems);
        return new TrainSolution(problems.ToImmutable(), speeds, torques, lossless);
    }

    private static bool Blocked(ImmutableArray<TrainProblem>.Builder problems)
    {
        foreach (var problem in problems)
            if (problem.Blocks != TrainStep.None) return true;

        return false;
    }
}
