using System.Globalization;

namespace Pawl.Reports.Sheets;

/// <summary>Limits as a drawing prints them: with as many decimals as the finest of them has.</summary>
internal static class Limits
{
    private const int MostDecimals = 6;

    /// <summary>Nominal, least and greatest; in full to the sixth decimal, which is far below what any gauge reads.</summary>
    public static (string Nominal, string Least, string Greatest) Exact(double nominal, double least, double greatest)
    {
        var decimals = Math.Max(DecimalsOf(nominal), Math.Max(DecimalsOf(least), DecimalsOf(greatest)));
        return (Fixed(nominal, decimals), Fixed(least, decimals), Fixed(greatest, decimals));
    }

    /// <summary>Computed limits, rounded inwards, so that what a sheet accepts lies within them; in full where nothing would be left.</summary>
    public static (string Nominal, string Least, string Greatest) Inward(double nominal, double least, double greatest, int decimals)
    {
        var scale = Math.Pow(10, decimals);

        // What is a thousandth in the spec is not always one in binary.
        var (low, high) = (Math.Ceiling((least * scale) - 1e-6) / scale, Math.Floor((greatest * scale) + 1e-6) / scale);
        return low > high ? Exact(nominal, least, greatest) : (Fixed(nominal, decimals), Fixed(low, decimals), Fixed(high, decimals));
    }

    private static int DecimalsOf(double value)
    {
        var text = Math.Round(value, MostDecimals, MidpointRounding.AwayFromZero).ToString("0.######", CultureInfo.InvariantCulture);
        return text.IndexOf('.', StringComparison.Ordinal) is > 0 and var point ? text.Length - point - 1 : 0;
    }

    private static string Fixed(double value, int decimals)
    {
        var text = Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("F" + Phrase.Whole(decimals), CultureInfo.InvariantCulture);
        return text.Trim('-', '0', '.').Length == 0 ? text.TrimStart('-') : text.Replace('-', '−');
    }
}
