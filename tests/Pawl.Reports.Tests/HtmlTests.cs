using System.Security.Cryptography;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Pawl.Reports.Html;

namespace Pawl.Reports.Tests;

public sealed class HtmlTests
{
    private static readonly string Rendered = HtmlReport.Render(Sample.Record());
    private static readonly IDocument Page = new HtmlParser().ParseDocument(Rendered);

    [Fact]
    public void The_page_parses_without_an_error_of_HTML5()
    {
        List<string> errors = [];
        var parser = new HtmlParser(new HtmlParserOptions { IsStrictMode = false });
        parser.Error += (_, error) => errors.Add(error.ToString()!);

        parser.ParseDocument(Rendered);

        Assert.Empty(errors);
        Assert.NotNull(new HtmlParser(new() { IsStrictMode = true }).ParseDocument(Rendered).Body);
    }

    [Fact]
    public void Ids_are_unique_and_every_link_leads_somewhere()
    {
        var ids = Page.QuerySelectorAll("[id]").Select(e => e.Id!).ToList();

        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(Page.QuerySelectorAll("a[href]"), a => Assert.Contains(a.GetAttribute("href")![1..], ids));
    }

    [Fact]
    public void There_is_one_first_heading_and_no_level_is_skipped()
    {
        Assert.Single(Page.QuerySelectorAll("h1"));
        var level = 1;
        foreach (var heading in Page.QuerySelectorAll("h1, h2, h3, h4, h5, h6"))
        {
            var next = heading.LocalName[1] - '0';
            Assert.True(next <= level + 1, heading.TextContent);
            level = next;
        }
    }

    [Fact]
    public void Every_table_has_a_caption_and_every_header_a_scope()
    {
        Assert.NotEmpty(Page.QuerySelectorAll("table"));
        Assert.All(Page.QuerySelectorAll("table"), t => Assert.NotNull(t.QuerySelector("caption")));
        Assert.All(Page.QuerySelectorAll("th"), th => Assert.NotNull(th.GetAttribute("scope")));
        Assert.All(Page.QuerySelectorAll("table"), t => Assert.Contains("scroll", t.ParentElement!.ClassList));
    }

    [Fact]
    public void The_policy_permits_style_and_script_of_the_page_and_nothing_else()
    {
        var style = Assert.Single(Page.QuerySelectorAll("style")).TextContent;
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        var policy = Page.QuerySelector("meta[http-equiv=Content-Security-Policy]")!.GetAttribute("content")!;

        var script = Assert.Single(Page.QuerySelectorAll("script")).TextContent;
        var scriptHash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
        Assert.Equal(
            $"default-src 'none'; style-src 'sha256-{hash}'; script-src 'sha256-{scriptHash}'; img-src data:; base-uri 'none'; form-action 'none'", policy);
        Assert.Empty(Page.QuerySelectorAll("[style]"));
        Assert.Equal("en", Page.DocumentElement.GetAttribute("lang"));
        Assert.NotNull(Page.QuerySelector("a.skip[href='#content']"));
    }

    [Fact]
    public void A_verdict_is_a_word_and_a_symbol_beside_its_colour()
    {
        Assert.NotEmpty(Page.QuerySelectorAll("td.fails"));
        Assert.All(Page.QuerySelectorAll("td.fails"), cell => Assert.StartsWith("✗ fails", cell.TextContent, StringComparison.Ordinal));
        Assert.All(Page.QuerySelectorAll(".checks tbody tr > td:last-child"), cell => Assert.Contains(cell.TextContent[0], "✓✗◐?"));
        Assert.StartsWith("✗ Does not conform.", Page.QuerySelector("main.fails blockquote")!.TextContent.Trim(), StringComparison.Ordinal);
    }

    // Names that come out alike as anchors: both pages must give them the same ones.
    [Fact]
    public void The_two_pages_link_to_each_other_and_every_link_leads_somewhere()
    {
        var record = Sample.Record();
        var rule = record.Rules[0] with { Id = record.Rules[0].Id.Replace('/', '-') };
        record = record with
        {
            Rules = [rule, .. record.Rules],
            Findings = [.. record.Findings, record.Findings.First(f => f.Rule == record.Rules[0].Id && f.Outcome != Records.OutcomeWord.NotApplicable) with { Rule = rule.Id }],
        };
        var (main, derivations) = HtmlReport.Render(record, "a.html", "a.derivations.html");
        Dictionary<string, IDocument> pages = new() { ["a.html"] = new HtmlParser().ParseDocument(main), ["a.derivations.html"] = new HtmlParser().ParseDocument(derivations) };

        var between = 0;
        foreach (var (name, page) in pages)
        {
            foreach (var link in page.QuerySelectorAll("a[href]"))
            {
                var parts = link.GetAttribute("href")!.Split('#');
                between += parts[0].Length > 0 ? 1 : 0;
                var target = pages[parts[0].Length > 0 ? parts[0] : name];
                Assert.True(parts.Length == 1 || target.GetElementById(parts[1]) is not null, link.OuterHtml);
            }
        }

        Assert.True(between > 20);
    }
}
