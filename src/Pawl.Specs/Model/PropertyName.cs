using System.Text;

namespace Pawl.Specs.Model;

/// <summary>The key of a property in YAML: <c>CentreDistance</c> is <c>centre_distance</c>, <c>Viscosity40</c> is <c>viscosity_40</c>.</summary>
public static class PropertyName
{
    public static string Of(string property)
    {
        ArgumentNullException.ThrowIfNull(property);
        var key = new StringBuilder(property.Length + 4);
        for (var i = 0; i < property.Length; i++)
        {
            var starts = char.IsAsciiLetterUpper(property[i]) || (char.IsAsciiDigit(property[i]) && !char.IsAsciiDigit(property[Math.Max(0, i - 1)]));
            if (starts && i > 0)
                key.Append('_');
            key.Append(char.ToLowerInvariant(property[i]));
        }

        return key.ToString();
    }
}
