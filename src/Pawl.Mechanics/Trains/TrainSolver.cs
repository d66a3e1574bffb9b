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

    /// <summary>Torques of a train that is solved, where its meshes have other efficiencies, in the order of the graph; null when it locks.</summary>
    public static TrainTorques? TorquesAt(TrainGraph graph, TrainSpeeds speeds, ReadOnlySpan<double> efficiencies)
    {
        ArgumentNullException.ThrowIfNull(graph);
        ArgumentNullException.ThrowIfNull(speeds);
        var meshes = ImmutableArray.CreateBuilder<TrainMesh>(graph.Meshes.Length);
        for (var i = 0; i < graph.Meshes.Length; i++)
            meshes.Add(graph.Meshes[i] with { Efficiency = Guard.Share(efficiencies[i], "the efficiency of a mesh") });
        var problems = ImmutableArray.CreateBuilder<TrainProblem>();
        return TrainIndex.Build(graph with { Meshes = meshes.MoveToImmutable() }, problems) is { } train
            ? TorqueSolver.Solve(train, speeds, lossless: false, problems)
            : null;
    }

    private static TrainSolution Solve(TrainGraph graph, bool withTorques)
    {
        var problems = ImmutableArray.CreateBuilder<TrainProblem>();
        if (TrainIndex.Build(graph, problems) is not { } train) return new TrainSolution(problems.ToImmutable(), null);

        var bodies = new int[train.Fixed.Length + 1];
        var givenSpeeds = new Fraction[bodies.Length];
        Array.Fill(givenSpeeds, Fraction.Zero);
        train.Fixed.CopyTo(bodies, 0);
        bodies[^1] = train.Input;
        givenSpeeds[^1] = Fraction.One;

        var speeds = SpeedSolver.Solve(train, new SpeedSolver.Given(bodies, givenSpeeds), problems);
        if (speeds is null || !withTorques || Blocked(problems, TrainStep.Torques)) return new TrainSolution(problems.ToImmutable(), speeds);

        var lossless = TorqueSolver.Solve(train, speeds, lossless: true, problems);
        var torques = TorqueSolver.Solve(train, speeds, lossless: false, problems);
        return new TrainSolution(problems.ToImmutable(), speeds, torques, lossless);
    }

    /// <summary>Whether a problem keeps the step from being taken.</summary>
    internal static bool Blocked(ImmutableArray<TrainProblem>.Builder problems, TrainStep step)
    {
        for (var i = 0; i < problems.Count; i++)
            if (problems[i].Blocks >= step) return true;

        return false;
    }
}
