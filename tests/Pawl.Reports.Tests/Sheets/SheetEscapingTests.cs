using System.Globalization;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Pawl.Reports.Output;
using Pawl.Reports.Records;
using Pawl.Reports.Sheets;

namespace Pawl.Reports.Tests.Sheets;

public sealed class SheetEscapingTests
{
    public static readonly TheoryData<string, SheetRole> Attacks = new(
        from row in EscapingTests.Attacks from role in Enum.GetValues<SheetRole>() select (row.Data, role));

    [Theory]
    [MemberData(nameof(Attacks))]
    public void A_hostile_name_shows_as_itself_and_changes_no_structure(string attack, SheetRole role)
    {
        var plain = Page(Named(""), role);
        var hostile = Page(Named(attack), role);

        Assert.Equal(Skeleton(plain), Skeleton(hostile));
        Assert.Empty(hostile.QuerySelectorAll("script, img, iframe, object, embed, form, base, link, a, style ~ style"));
        foreach (var element in hostile.All)
            Assert.DoesNotContain(element.Attributes, a => a.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase) || a.Name == "style");
    }

    // A quotation mark or a brace would end the string, a backslash would begin another code, a bracket the element.
    [Fact]
    public void No_name_ends_a_string_of_the_style_sheet()
    {
        var page = RoleSheet.Html(Named("\"; } body { display: none } </style> \\"), SheetRole.Audit);

        Assert.DoesNotContain("display: none }", page[..page.IndexOf("</head>", StringComparison.Ordinal)].Replace("<title>", "", StringComparison.Ordinal).Split("<style>")[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../etc/passwd")]
    [InlineData("/dev/null")]
    [InlineData("..")]
    public void A_part_cannot_name_a_file_outside_of_its_folder(string name)
    {
        var files = RoleSheet.Files(Named(name), "tarn-180/r180", ReportFormats.All, [.. Enum.GetValues<SheetRole>()]);

        Assert.NotEmpty(files);
        Assert.All(files, file =>
        {
            Assert.StartsWith("tarn-180/r180-sheets/", file.Path, StringComparison.Ordinal);
            Assert.DoesNotContain(file.Path.Split('/'), static part => part is "." or ".." or "");
        });
        Assert.Equal(files.Length, files.Select(static file => file.Path.ToUpperInvariant()).Distinct().Count());
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Every_sheet_is_the_same_bytes_in_any_culture(string culture)
    {
        var here = All();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(here, All());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static string All() => string.Join('\f', RoleSheet.Files(Named(""), "r", ReportFormats.All, [.. Enum.GetValues<SheetRole>()]).Select(static file => file.Path + file.Text));
    }

    /// <summary>The sample with a joint, a fit and a stack whose names and texts begin with an attack.</summary>
    private static ConformanceRecord Named(string attack)
    {
        var record = new Sample { Text = text => attack + text }.ToRecord();
        (string Path, string Written)[] inputs =
        [
            ("joints.flange.thread", "M8"), ("joints.flange.bolts", "6"), ("joints.flange.tightening.torque", "25 N·m"), ("joints.flange.tightening.steps[1]", "50 %"),
            ("joints.flange.locking.by", attack + "paint"), ("joints.flange.clamped[1].part", attack + "plate"), ("joints.flange.clamped[1].thickness", "10 mm ±0.1"),
            ("fits.pin.hole", "10 mm H7"), ("fits.pin.hole_part", attack + "plate"), ("fits.pin.shaft", "10 mm 0/-0.01"), ("fits.pin.shaft_part", attack + "bolt"),
            ($"o_rings.{attack}ring.groove", "30 mm ±0.05"), ("duty.oil.lubricant", attack + "oil"),
        ];
        return record with
        {
            Identity = record.Identity with { Drawing = attack + "D", Revision = attack + "C", PartNumber = attack + "N", Description = attack + "unit" },
            Inputs = [.. inputs.Select((input, i) => new InputRecord
            {
                Path = input.Path, Written = input.Written, Place = new() { File = "a.yaml", Line = 1000 + i, Column = 1, EndLine = 1000 + i, EndColumn = 2 },
            })],
        };
    }

    private static IDocument Page(ConformanceRecord record, SheetRole role)
    {
        Assert.DoesNotContain(RoleSheet.Markdown(record, role), c => char.IsControl(c) && c != '\n');
        return new HtmlParser(new() { IsStrictMode = false }).ParseDocument(RoleSheet.Html(record, role));
    }

    private static string Skeleton(IDocument page) => string.Join('\n', page.All.Where(e => e.LocalName != "code").Select(e => $"{e.ParentElement?.LocalName}>{e.LocalName}.{e.ClassName}"));
}
