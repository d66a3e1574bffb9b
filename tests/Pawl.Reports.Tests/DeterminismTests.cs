using System.Globalization;
using Pawl.Reports.Html;
using Pawl.Reports.Markdown;

namespace Pawl.Reports.Tests;

public sealed class DeterminismTests
{
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Every_output_is_the_same_bytes_in_any_culture(string culture)
    {
        var here = All();
        var (before, beforeUi) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(here, All());
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, beforeUi);
        }
    }

    private static string All()
    {
        var record = Sample.Record();
        using var text = new StringWriter();
        new TextReport(TextLevel.Verbose).Write(record, text);
        return string.Join('\f', record.ToJson(), MarkdownReport.Render(record), HtmlReport.Render(record), text);
    }
}
