namespace Pawl.Specs;

/// <summary>A value of a spec that is to be another.</summary>
/// <param name="Path">Its key as messages write it: <c>train.meshes[0].centre_distance</c>; an entry of a list with an <c>id</c> also by that.</param>
/// <param name="Text">The value as a spec writes it.</param>
public sealed record ValueChange(string Path, string Text);
