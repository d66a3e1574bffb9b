using System.Reflection;

namespace Pawl.Cli;

/// <summary>This build.</summary>
internal static class Tool
{
    public const string Name = "pawl";

    public static string Version =>
        typeof(Tool).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0";
}
