using System.Collections.Immutable;
using Fractions;
using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

internal sealed record GivenSpeed(string Body, Fraction Speed);

/// <summary>The speed solver with any given speeds, as textbooks pose differentials.</summary>
internal static class SpeedsOf
{
    public static TrainSolution Given(TrainGraph graph, ImmutableArray<GivenSpeed> given)
    {
        var problems = ImmutableArray.CreateBuilder<TrainProblem>();
        if (TrainIndex.Build(graph, problems) is not { } train)
            return new(problems.ToImmutable(), null);
        var rows = new SpeedSolver.Given([.. given.Select(each => train.PositionOf(each.Body))], [.. given.Select(each => each.Speed)]);
        var speeds = TrainSolver.Blocked(problems, TrainStep.Speeds) ? null : SpeedSolver.Solve(train, rows, problems);
        return new(problems.ToImmutable(), speeds);
    }
}
