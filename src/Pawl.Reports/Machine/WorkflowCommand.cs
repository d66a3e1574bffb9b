using System.Text;

namespace Pawl.Reports.Machine;

/// <summary>A workflow command: <c>::name key=value,key=value::message</c> on a line of its own.</summary>
/// <remarks>By the public documentation of the service: % and line ends are escaped everywhere, colons and commas in values too.</remarks>
internal static class WorkflowCommand
{
    /// <param name="name">error, warning or notice.</param>
    /// <param name="properties">Names and values; those without a value are left out.</param>
    /// <param name="message">May have several lines.</param>
    public static string Of(string name, IEnumerable<(string Name, string Value)> properties, string message)
    {
        var command = new StringBuilder("::").Append(name);
        var separator = ' ';
        foreach (var (key, value) in properties)
        {
            if (value.Length == 0)
                continue;
            command.Append(separator).Append(key).Append('=').Append(Data(value).Replace(":", "%3A", StringComparison.Ordinal).Replace(",", "%2C", StringComparison.Ordinal));
            separator = ',';
        }

        return command.Append("::").Append(Data(message)).ToString();
    }

    private static string Data(string text) => text
        .Replace("%", "%25", StringComparison.Ordinal)
        .Replace("\r", "%0D", StringComparison.Ordinal)
        .Replace("\n", "%0A", StringComparison.Ordinal);
}
