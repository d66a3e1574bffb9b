using System.Globalization;

namespace Pawl.Specs.Text;

internal static class Cultures
{
    /// <summary>The culture of every number and date that Pawl reads or writes.</summary>
    public static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
}
