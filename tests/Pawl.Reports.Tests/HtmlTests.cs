using System.Security.Cryptography;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Pawl.Reports.Html;

namespace Pawl.Reports.Tests;

public sealed class HtmlTests
{
    private static readonly string s_html = HtmlReport.Render(Sample.Record());
    private static readonly IDocument s_page = new HtmlParser().ParseDocument(s_html);

    [Fact]
    public void The_page_parses_without_an_error_of_HTML5()
    {
        List<string> errors = [];
        var parser = new HtmlParser(new HtmlParserOptions { IsStrictMode = false });
        parser.Error += (_, error) => errors.Add(error.ToString()!);

        parser.ParseDocument(s_html);

        Assert.Empty(errors);
        Assert.NotNull(new HtmlParser(new() { IsStrictMode = true }).ParseDocument(s_html).Body);
    }

    [Fact]
    public void Ids_are_unique_and_every_link_leads_somewhere()
    {
        var ids = s_page.QuerySelectorAll("[id]").Select(e => e.Id!).ToList();

        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(s_page.QuerySelectorAll("a[href]"), a => Assert.Contains(a.GetAttribute("href")![1..], ids));
    }

    [Fact]
    public void There_is_one_first_heading_and_no_level_is_skipped()
    {
        Assert.Single(s_page.QuerySelectorAll("h1"));
        var level = 1;
        foreach (var heading in s_page.QuerySelectorAll("h1, h2, h3, h4, h5, h6"))
        {
            var next = heading.LocalName[1] - '0';
            Assert.True(next <= level + 1, heading.TextContent);
            level = next;
        }
    }

    [Fact]
    public void Every_table_has_a_caption_and_every_header_a_scope()
    {
        Assert.NotEmpty(s_page.QuerySelectorAll("table"));
        Assert.All(s_page.QuerySelectorAll("table"), t => Assert.NotNull(t.QuerySelector("caption")));
        Assert.All(s_page.QuerySelectorAll("th"), th => Assert.NotNull(th.GetAttribute("scope")));
        Assert.All(s_page.QuerySelectorAll("table"), t => Assert.Equal("scroll", t.ParentElement!.ClassName));
    }

    [Fact]
    public void The_policy_permits_the_style_of_the_page_and_nothing_else()
    {
        var style = Assert.Single(s_page.QuerySelectorAll("style")).TextContent;
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        var policy = s_page.QuerySelector("meta[http-equiv=Content-Security-Policy]")!.GetAttribute("content")!;

        Assert.StartsWith("default-src 'none'; ", policy, StringComparison.Ordinal);
        Assert.Contains($"style-src 'sha256-{hash}'", policy, StringComparison.Ordinal);
        Assert.Empty(s_page.QuerySelectorAll("[style]"));
        Assert.Equal("en", s_page.DocumentElement.GetAttribute("lang"));
        Assert.NotNull(s_page.QuerySelector("a.skip[href='#content']"));
    }

    [Fact]
    public void A_verdict_is_a_word_and_a_symbol_beside_its_colour()
    {
        Assert.All(s_page.QuerySelectorAll("td.fails"), cell => Assert.Equal("✗ fails", cell.TextContent));
        Assert.StartsWith("✗ Fails.", s_page.QuerySelector("main.fails > blockquote")!.TextContent.Trim(), StringComparison.Ordinal);
    }
}
