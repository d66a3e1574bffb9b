namespace Pawl.Specs.Files;

/// <summary>A file of the project.</summary>
/// <param name="Full">Where the file system has it.</param>
/// <param name="Shown">From the project root, with forward slashes.</param>
internal readonly record struct SourcePath(string Full, string Shown);
