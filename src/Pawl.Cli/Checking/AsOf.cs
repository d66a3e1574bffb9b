using System.Globalization;

namespace Pawl.Cli.Checking;

/// <summary>The day of judgement and where it was set.</summary>
internal static class AsOf
{
    /// <summary>The option, else SOURCE_DATE_EPOCH, else today (UTC).</summary>
    /// <param name="option">The value of <c>--as-of</c>, or null.</param>
    /// <param name="context">Clock and environment.</param>
    /// <param name="error">What cannot be read, or null.</param>
    public static Setting<DateOnly> Of(string? option, CommandContext context, out string? error)
    {
        error = null;
        if (option is not null)
        {
            if (!DateOnly.TryParseExact(option, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
                error = $"--as-of is a day such as 2026-03-31, not `{option}`.";
            return new(date, Origins.CommandLine);
        }

        if (context.Variable("SOURCE_DATE_EPOCH") is { Length: > 0 } epoch)
        {
            // 253402300799 is the last second of the year 9999, the end of the calendar here.
            if (!long.TryParse(epoch, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) || seconds > 253_402_300_799)
            {
                error = $"SOURCE_DATE_EPOCH is a number of seconds since 1970, not `{epoch}`.";
                return new(default, "SOURCE_DATE_EPOCH");
            }

            return new(DateOnly.FromDateTime(DateTimeOffset.FromUnixTimeSeconds(seconds).UtcDateTime), "SOURCE_DATE_EPOCH");
        }

        return new(DateOnly.FromDateTime(context.Clock.GetUtcNow().UtcDateTime), "today (UTC)");
    }
}
