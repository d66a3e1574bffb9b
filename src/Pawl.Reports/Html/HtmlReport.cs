using System.Text;
using Pawl.Reports.Drawing;
using Pawl.Reports.Markdown;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Html;

/// <summary>The report of one spec as HTML that needs nothing beside it: the page of results and the page of derivations, or both in one.</summary>
public static class HtmlReport
{
    /// <summary>What the content of the page of results comes to with its figures, in bytes: the page stays below 400 kB.</summary>
    private const int MostOfPage = 375_000;

    /// <summary>What its figures come to at most, in bytes.</summary>
    private const int MostOfFigures = 150_000;

    /// <summary>Renders a record as one page, for where there is one file: the standard output.</summary>
    public static string Render(ConformanceRecord record)
    {
        var parts = new Parts(record, "", "", separate: false);
        return parts.Page(parts.Title, parts.Results() + parts.Derivations());
    }

    /// <summary>Renders a record as two pages that link to each other.</summary>
    /// <param name="record">The record.</param>
    /// <param name="main">Address of the page of results, as its neighbour sees it.</param>
    /// <param name="derivations">Address of the page of derivations, likewise.</param>
    public static (string Main, string Derivations) Render(ConformanceRecord record, string main, string derivations)
    {
        ArgumentException.ThrowIfNullOrEmpty(main);
        ArgumentException.ThrowIfNullOrEmpty(derivations);
        var parts = new Parts(record, main, derivations, separate: true);
        return (parts.Page(parts.Title, parts.Results()), parts.Page("Derivations: " + parts.Title, parts.Derivations()));
    }

    private sealed class Parts
    {
        private readonly ConformanceRecord _record;
        private readonly (string Main, string Derivations) _pages;
        private readonly bool _separate;
        private readonly ImmutableArray<Figure> _figures;
        private readonly HashSet<string> _first = new(StringComparer.Ordinal);
        private readonly Lazy<IReadOnlySet<string>> _anchors;

        public Parts(ConformanceRecord record, string main, string derivations, bool separate)
        {
            ArgumentNullException.ThrowIfNull(record);
            if (!record.IsWhole)
                throw new InvalidOperationException("A record of findings alone has no derivations to report.");
            (_record, _pages, _separate, _figures) = (record, (main, derivations), separate, FigureList.Of(record));
            _anchors = new(() => Model("", "").AnchorsOfFirstPage);
        }

        public string Title
        {
            get
            {
                var identity = _record.Identity;
                return SafeText.Line($"Conformance report: {identity.Variant}{(identity.Revision.Length == 0 ? "" : $" revision {identity.Revision}")}");
            }
        }

        public string Page(string title, string body) =>
            Html.Page.Filled(title, OutcomeClass.Of(Labels.Alike(_record.Verdict)), $"Report {_record.Id}", body, hasScript: true);

        /// <summary>The body of the page of results. Figures that it has no room for go to the other one.</summary>
        public string Results()
        {
            var plain = Body("report.html", _pages with { Main = "" });
            var left = _separate ? Math.Min(MostOfFigures, MostOfPage - Encoding.UTF8.GetByteCount(plain)) : int.MaxValue;
            foreach (var figure in _figures)
            {
                var size = Encoding.UTF8.GetByteCount(Drawn(figure));
                if (size > left)
                    continue;
                left -= size;
                _first.Add(figure.Id);
            }

            return _first.Count == 0 ? plain : Body("report.html", _pages with { Main = "" });
        }

        /// <summary>The body of the other page; after that of the page of results.</summary>
        public string Derivations() => Body("derivations.html", _pages with { Derivations = "" });

        private string Body(string template, (string Main, string Derivations) pages)
        {
            var model = Model(pages.Main, pages.Derivations).Build();
            model["other_figures"] = ReportModel.Texts(_figures.Where(f => !_first.Contains(f.Id)).Select(Drawn));
            model["is_alone"] = !_separate;
            return Templates.Render(template, model);
        }

        private ReportModel Model(string main, string derivations)
        {
            var markup = Markup.Html(main, derivations, anchor => _anchors.Value.Contains(anchor));
            return new(_record, markup, _figures, f => _first.Contains(f.Id)
                ? Drawn(f)
                : $"<p>Figure with the derivations: <a href=\"{derivations}#figure.{f.Id}\">{markup.Escape(f.Title)}</a></p>");
        }

        private static string Drawn(Figure figure) =>
            $"<figure id=\"figure.{figure.Id}\">{figure.Inline()}<figcaption>{System.Net.WebUtility.HtmlEncode(SafeText.Line(figure.Title))}</figcaption></figure>";
    }
}
