using System.Text;
using Pawl.Quantities;

namespace Pawl.Specs.Schema;

/// <summary>Patterns for quantities as text: a number, and a unit of the dimension from the table of units.</summary>
/// <remarks>
/// What the reader takes matches, as long as it is sensible: a length as <c>12 mm²/mm</c> does not. Of the units that bear names
/// those of other dimensions do not match; a compound that is in no table does, whatever it measures. The words are those that the
/// regular expressions of .NET and of JavaScript have in common.
/// </remarks>
internal static class QuantityPatterns
{
    // A digit other than zero in the number, in its fraction, or in the minutes and seconds of an angle.
    public static readonly (string Name, string Pattern) Positive =
        ("positive", @"^\s*(?:ISO\s+VG|VG|\+?(?:[0-9.]*[1-9]|[0-9]+(?:-|\s+)[0-9]*[1-9][0-9]*[/\u2044][0-9]|[0-9.]+[°º˚′'’][0-9.°º˚′'’\s]*[1-9]))");

    public static readonly (string Name, string Pattern) NotNegative = ("not_negative", @"^(?!\s*[-\u2212][0-9.]*[1-9])");
    public static readonly (string Name, string Pattern) NotPositive = ("not_positive", @"^\s*(?:[-\u2212]|\+?[0.]+(?![0-9.]))");

    private const string Sign = @"[-+\u2212]?";
    private const string Fraction = @"(?:[0-9]+(?:-|\s+))?[0-9]+[/\u2044][0-9]+";
    private const string Decimal = @"(?:[0-9]+(?:\.[0-9]+)?|\.[0-9]+)(?:[eE][-+]?[0-9]+)?(?![0-9]|\.[0-9]|[eE][-+]?[0-9])";
    private const string Number = Sign + Decimal;
    private const string Seconds = @"[0-9.]+[″""”]";
    private const string Minutes = @"[0-9.]+[′'’]";
    private const string Angle = Sign + @"(?:[0-9.]+[°º˚]\s*(?:" + Minutes + @"(?:\s*" + Seconds + ")?|" + Seconds + ")|" + Minutes + @"\s*" + Seconds + ")";
    private const string Grade = @"(?:ISO\s+)?VG\s*[0-9]+";

    // Factors joined by a sign of operation, or one with a power.
    private const string Factor = @"(?:\(\s*)*[A-Za-zµμΔ∆°º˚′'’%‰]+(?:\s*\))*(?:\^[-+\u2212]?[0-9]+|[2-4](?![0-9])|[⁻⁰¹²³⁴-⁹]+)?(?:\s*\))*";
    private const string Operator = @"\s*[·*.×⋅∙•/\u2044∕]\s*";
    private const string Compound =
        @"(?=[A-Za-zµμΔ∆°º˚′'’%‰\s()]*[·*.×⋅∙•/\u2044∕^⁻⁰¹²³⁴-⁹0-9])(?:(?:1\s*)?[/\u2044∕]\s*)?" + Factor + "(?:" + Operator + Factor + ")*";

    // A compound of these dimensions is a slip, or at best a joke.
    private static readonly Dimension[] Simple =
    [
        Dimension.OfLength, Dimension.OfMass, Dimension.OfTime, Dimension.OfAngle, Dimension.OfTemperature, Dimension.OfTemperatureDifference,
    ];

    /// <summary>The name of the definition that holds the pattern.</summary>
    public static string NameOf(Dimension dimension, bool toleranced) =>
        dimension.Name.Replace(' ', '_') + (toleranced ? "_toleranced" : "");

    /// <summary>The pattern of an amount, or of a dimension with its tolerance.</summary>
    public static string Of(Dimension dimension, bool toleranced)
    {
        var unit = Unit(dimension);

        // Only inches, feet and yards are parted into fractions.
        var amount = dimension == Dimension.OfLength ? $@"{Sign}(?:{Decimal}\s*{unit}|{Fraction}\s*{InchUnit()})"
            : $@"{Number}\s*{unit}";
        if (toleranced)
        {
            // The unit follows the number, or stands within the tolerance for both.
            const string Rest = @"(?:\s*$|\s*[±(+\u2212-]|\s+[0-9.]|\s+[A-Za-z]{1,2}[0-9])";
            const string Next = @"\s*(?:[/\u2044]\s*[-+\u2212]?[0-9.]|\)|\.\.|…|to\b|$)";
            return $@"^\s*(?:{amount}{Rest}|{Sign}(?:{Decimal}|{Fraction})\s*(?:[±(+\u2212-][\s\S]*[0-9.]\s*{unit}{Next}|[0-9.]+\s*/\s*[-+\u2212][0-9.]+\s*{unit}\s*$))";
        }

        return dimension == Dimension.OfAngle ? $@"^\s*(?:{amount}|{Angle})\s*$"
            : dimension == Dimension.OfKinematicViscosity ? $@"^\s*(?:{amount}|{Grade})\s*$"
            : $@"^\s*{amount}\s*$";
    }

    private static string InchUnit()
    {
        var spellings = Units.Spellings().Where(each => each.Dimension == Dimension.OfLength)
            .Select(each => each.Spelling).Where(spelling => Units.TryParse(spelling, out var unit) && (unit.Symbol is "in" or "ft" or "yd"));
        return $"(?:{string.Join('|', spellings.Select(Expression))})";
    }

    private static string Unit(Dimension dimension)
    {
        List<string> own = [], other = [];
        foreach (var (measured, spelling) in Units.Spellings())
        {
            if (measured == dimension)
                own.Add(Expression(spelling));
            else if (spelling.Any(sign => sign is '·' or '/' or '²' or '³' or '2' or '3'))
                other.Add(Expression(spelling));
        }

        // The longest first, though the end of the text would lead every engine to the same answer.
        own.Sort((a, b) => b.Length != a.Length ? b.Length - a.Length : string.CompareOrdinal(a, b));
        var named = string.Join('|', own.Distinct(StringComparer.Ordinal));
        return Simple.Contains(dimension)
            ? $"(?:{named})"
            : $@"(?:{named}|(?!(?:{string.Join('|', other.Distinct(StringComparer.Ordinal))})\s*$){Compound})";
    }

    /// <summary>A spelling of the table with the lookalikes of its signs.</summary>
    private static string Expression(string spelling)
    {
        var text = new StringBuilder();
        foreach (var sign in spelling)
        {
            text.Append(sign switch
            {
                'µ' => "[µμ]",
                'Δ' => "[Δ∆]",
                '°' => "[°º˚]",
                '′' => "[′'’]",
                '-' => "[-\u2212]",
                '·' => "[ ]*[·*.×⋅∙•][ ]*",
                '/' => "[ ]*[/⁄∕][ ]*",
                '²' or '2' => "[²2]",
                '³' or '3' => "[³3]",
                '(' or ')' => $"\\{sign}",
                _ => sign.ToString(),
            });
        }

        return text.ToString();
    }
}
