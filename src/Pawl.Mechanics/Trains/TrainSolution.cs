namespace Pawl.Mechanics.Trains;

/// <summary>What could be computed of a train, and what stood in the way of the rest.</summary>
/// <param name="Problems">Everything worth saying, in a fixed order.</param>
/// <param name="Speeds">Null when a problem blocks the speeds.</param>
/// <param name="Torques">With the losses of the meshes; null when not asked for or blocked.</param>
/// <param name="Lossless">With every mesh at η = 1; null when not asked for or blocked.</param>
public sealed record TrainSolution(
    ImmutableArray<TrainProblem> Problems, TrainSpeeds? Speeds, TrainTorques? Torques = null, TrainTorques? Lossless = null);
