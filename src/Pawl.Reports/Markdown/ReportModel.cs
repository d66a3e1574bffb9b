using System.Globalization;
using Pawl.Reports.Drawing;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Scriban.Runtime;

namespace Pawl.Reports.Markdown;

/// <summary>A record as the templates want it: texts in the markup of the report, numbers rounded, in the order of the report.</summary>
/// <param name="record">The record.</param>
/// <param name="markup">How texts and links are written down.</param>
/// <param name="figures">The figures of the report.</param>
/// <param name="show">A figure in the markup.</param>
internal sealed partial class ReportModel(ConformanceRecord record, Markup markup, ImmutableArray<Figure> figures, Func<Figure, string> show)
{
    private readonly Anchors _anchors = AnchorsOf(record);
    private readonly Dictionary<string, RuleRecord> _rules = record.Rules.ToDictionary(r => r.Id, StringComparer.Ordinal);
    private readonly HashSet<string> _quantities =
        [.. record.Subjects.SelectMany(s => s.Quantities.Select(q => $"{s.Path}.{q.Name}"))];
    private readonly HashSet<string> _checked = [.. record.Findings.Where(static f => f.Outcome != OutcomeWord.NotApplicable).Select(static f => f.Rule)];

    /// <summary>The anchors in the order of the record, so that names which come out alike get the same ones in every page.</summary>
    private static Anchors AnchorsOf(ConformanceRecord record)
    {
        var anchors = new Anchors();
        foreach (var rule in record.Rules)
        {
            anchors.Rule(rule.Id);
            anchors.Requirement(rule.Id);
        }

        foreach (var subject in record.Subjects)
        {
            anchors.Subject(subject.Path);
            foreach (var quantity in subject.Quantities)
                anchors.Quantity($"{subject.Path}.{quantity.Name}");
        }

        return anchors;
    }

    public ScriptObject Build() => new()
    {
        ["id"] = Code(record.Id),
        ["identity"] = Identity(),
        ["as_of"] = Day(record.AsOf),
        ["tool"] = Escape(record.Tool.ToString()),
        ["verdict"] = new ScriptObject
        {
            ["symbol"] = Labels.Symbol(record.Verdict),
            ["word"] = Capital(Labels.Of(record.Verdict)),
            ["statement"] = Escape(record.Verdict.Statement),
        },
        ["counts"] = Counts(record.Coverage.Overall, "all", Worst(record.Coverage.Domains)),
        ["domains"] = List(record.Coverage.Domains, d => Counts(d.Counts, d.Domain, d)),
        ["parts"] = List(record.Parts, p => Row(
            ("subject", Code(p.Subject)), ("drawing", Escape(p.Drawing)), ("revision", Escape(p.Revision)), ("part_number", Escape(p.PartNumber)))),
        ["files"] = List(record.Files, f => Row(("path", Code(f.Path)), ("sha256", Code(f.Sha256)))),
        ["packs"] = List(record.Packs, p => Row(
            ("name", Escape(p.Name)), ("path", Code(p.Path)), ("version", Escape(p.Version)), ("sha256", Code(p.Sha256)))),
        ["shipped_files"] = List(record.ShippedFiles, t => Row(("path", Code(t.Path)), ("sha256", Code(t.Sha256)))),
        ["tables"] = string.Join(", ", record.Tables.Select(Code)),
        ["failures"] = List(FailureList.Of(record), Failure),
        ["failing"] = Failing(),
        ["tightest"] = List(MarginBars.Tightest(record), Finding),
        ["open"] = Open(),
        ["checks"] = Checks(further: false),
        ["further_checks"] = Checks(further: true),
        ["not_stated"] = List(record.Verdict.NotStated, Code),
        ["pages"] = Row(("main", markup.Main), ("derivations", markup.Derivations)),
        ["baseline"] = Baseline(),
        ["conceded"] = List(FindingOrder.WorstFirst(record.Findings, OutcomeWord.UnderConcession), Finding),
        ["waiting"] = List(record.Waiting, Wait),
        ["not_evaluated"] = List(FindingOrder.WorstFirst(record.Findings, OutcomeWord.NotEvaluated), Finding),
        ["not_applicable"] = NotApplicable(),
        ["results"] = List(record.Coverage.Domains, Results),
        ["topology"] = Escape(record.Topology),
        ["bodies"] = List(Subjects("body"), s => Columns(s, "role", "speed", "torque", "power")),
        ["mesh_powers"] = List(Subjects("mesh"), s => Columns(
            s, "rolling_power", "efficiency", "tangential_force", "pitch_line_speed", "mesh_frequency")),
        ["strength"] = List(Subjects("mesh"), Strength),
        ["bearings"] = List(Subjects("bearing"), s => Columns(
            s, "relative_speed", "radial_load", "axial_load", "equivalent_load", "viscosity_ratio", "basic_life", "modified_life", "static_safety",
            "operating_clearance")),
        ["inspection"] = List(Subjects("gear"), Inspection),
        ["sheets"] = Sheets(),
        ["inputs"] = Inputs(),
        ["assumptions"] = List(record.Assumptions, Assumption),
        ["derivations"] = List(record.Subjects, Derivations),
        ["rules"] = List(record.Rules, Rule),
        ["deviations"] = List(record.Deviations, Deviation),
        ["unchecked"] = Unchecked(),
        ["simplifications"] = Simplifications(),
        ["figures"] = FigureLinks(),
        ["cautions"] = List(record.Cautions, Escape),
    };

    /// <summary>For each part of the report its figures; <c>parts</c>: those of all parts that have no heading of their own.</summary>
    private ScriptObject FigureLinks()
    {
        var sections = new ScriptObject();
        foreach (var section in Enum.GetValues<FigureSection>())
        {
            sections[section.ToString().ToLowerInvariant()] = List(
                figures.Where(f => f.Section == section),
                show);
        }

        sections["parts"] = List(figures.Where(static f => f.Section is not (FigureSection.Summary or FigureSection.Train or FigureSection.Meshes or FigureSection.Bearings)), show);
        return sections;
    }

    private ScriptObject Identity() => Row(
        ("family", Escape(record.Identity.Family)),
        ("variant", Escape(record.Identity.Variant)),
        ("revision", Escape(record.Identity.Revision)),
        ("description", Escape(record.Identity.Description)),
        ("drawing", Escape(record.Identity.Drawing)),
        ("part_number", Escape(record.Identity.PartNumber)),
        ("file", Code(record.Identity.File)));

    private ScriptObject Counts(CountsRecord counts, string domain, DomainRecord? worst) => new()
    {
        ["domain"] = Escape(domain),
        ["conforms"] = Phrase.Whole(counts.Conforms),
        ["fails"] = Phrase.Whole(counts.Fails),
        ["under_concession"] = Phrase.Whole(counts.UnderConcession),
        ["not_evaluated"] = Phrase.Whole(counts.NotEvaluated),
        ["not_applicable"] = Phrase.Whole(counts.NotApplicable),
        ["evaluated"] = Phrase.Whole(counts.Evaluated),
        ["applicable"] = Phrase.Whole(counts.Applicable),
        ["worst_margin"] = Figures.Margin(worst?.WorstMargin, worst?.WorstAbsoluteMargin),
    };

    private static DomainRecord? Worst(ImmutableArray<DomainRecord> domains) => domains.Where(d => d.WorstMargin is not null).MinBy(d => d.WorstMargin);

    private ScriptObject Finding(FindingRecord finding)
    {
        var (value, limit) = Figures.Apart(finding);
        var rule = _rules.GetValueOrDefault(finding.Rule);
        return new()
        {
            ["rule"] = RuleLink(finding.Rule),
            ["subject"] = Code(finding.Subject),
            ["title"] = Escape(finding.Title),
            ["severity"] = Labels.SeverityOf(finding),
            ["known"] = finding.Known is { } known ? $"{Escape(Labels.BaselineOf(finding))}, {Code(known.Place.ToString())}" : "",
            ["value"] = Escape(value),
            ["linked_value"] = Linked(value, finding.Measured),
            ["limit"] = Escape(limit),
            ["margin"] = finding.Outcome == OutcomeWord.UnderConcession ? Figures.ConcededMargin(finding) : Figures.Margin(finding),
            ["outcome"] = $"{Labels.Symbol(finding.Outcome)} {Labels.Of(finding.Outcome)}",
            ["place"] = Code(finding.Place.ToString()),
            ["reasons"] = string.Join("; ", finding.Reasons.Select(Escape)),
            ["source"] = rule is null ? "–" : Escape(rule.Source.Method),
            ["why"] = Escape(rule?.Why ?? ""),
            ["mend"] = Escape(rule?.Mend ?? ""),
            ["expression"] = Expression(finding.Measured),
            ["governing"] = List(finding.Governing, Governing),
            ["concession"] = finding.Concession is { } c ? Concession(c) : null,
        };
    }

    private ScriptObject Failure(Failure failure)
    {
        var model = Finding(failure.Worst);
        model["also"] = failure.Also(Code);
        model["suggestion"] = Escape(failure.Worst.Suggestion ?? "");
        model["follows_from"] = failure is { IsConsequence: true, Worst.FollowsFrom: { } cause } ? $"{RuleLink(cause.Rule)} on {Code(cause.Subject)}" : "";
        return model;
    }

    private ScriptObject Concession(ConcessionRecord concession) => Row(
        ("reason", Escape(concession.Reason)),
        ("approved_by", Escape(concession.ApprovedBy)),
        ("expires", Day(concession.Expires)),
        ("worst_margin", Figures.Margin(concession.WorstMargin)),
        ("variants", string.Join(", ", concession.Variants.Select(Escape))),
        ("place", Code(concession.Place.ToString())));

    private string Governing(TermRecord term)
    {
        var name = term.Quantity is { } quantity ? QuantityLink(quantity) : Escape(term.Symbol);
        var place = term.Place is { } p ? $" at {Code(p.ToString())}" : "";
        return $"{name} = {Escape(Figures.Of(term.Value))}{place}";
    }

    /// <summary>How a measure that is no plain quantity comes about.</summary>
    private string Expression(MeasureRecord? measure) => measure?.Expression is not { } expression ? ""
        : measure.Terms.IsEmpty ? Escape(expression)
        : $"{Escape(expression)} with {Terms(measure.Terms)}";

    private string Linked(string value, MeasureRecord? measure) =>
        measure?.Quantity is { } quantity && _quantities.Contains(quantity)
            ? Link(Escape(value), _anchors.Quantity(quantity))
            : Escape(value);

    private string RuleLink(string id) => _rules.ContainsKey(id) ? Link(Code(id), markup.HasChecks && !_checked.Contains(id) ? _anchors.Requirement(id) : _anchors.Rule(id)) : Code(id);

    private string Escape(string text) => markup.Escape(text);

    private string Code(string name) => markup.Code(name);

    private string Link(string text, string anchor) => markup.Link(text, anchor);

    private string QuantityLink(string reference) =>
        _quantities.Contains(reference) ? Link(Code(reference), _anchors.Quantity(reference)) : Code(reference);

    private ScriptObject Wait(WaitRecord wait) => new()
    {
        ["reason"] = Escape(wait.Reason),
        ["checks"] = Phrase.Whole(wait.Checks),
        ["alone"] = Phrase.Whole(wait.Alone),
        ["rules"] = string.Join(", ", wait.Rules.Select(RuleLink)),
        ["rule_count"] = wait.Rules.Length,
    };

    private ScriptArray NotApplicable()
    {
        var rows = new ScriptArray();
        foreach (var group in record.Findings.Where(f => f.Outcome == OutcomeWord.NotApplicable).GroupBy(f => f.Rule))
        {
            foreach (var alike in group.GroupBy(f => string.Join("; ", f.Reasons), StringComparer.Ordinal))
            {
                rows.Add(Row(
                    ("rule", RuleLink(group.Key)),
                    ("why", alike.Key.Length > 0 ? Escape(alike.Key) : "its condition does not hold"),
                    ("subjects", string.Join(", ", alike.Select(f => Code(f.Subject))))));
            }
        }

        return rows;
    }

    private ScriptObject Results(DomainRecord domain) => new()
    {
        ["domain"] = Escape(domain.Domain),
        ["findings"] = List(
            record.Findings.Where(f => f.Domain == domain.Domain && f.Outcome != OutcomeWord.NotApplicable), Finding),
    };

    private List<SubjectRecord> Subjects(string kind) => [.. record.Subjects.Where(s => s.Kind == kind)];

    private ScriptObject Columns(SubjectRecord subject, params ReadOnlySpan<string> names)
    {
        var row = new ScriptObject { ["subject"] = Code(subject.Path) };
        foreach (var name in names)
            row[name] = Shown(subject, name, Figures.Of);
        return row;
    }

    /// <summary>One mesh: its load factors, then both gears side by side against pitting and breakage.</summary>
    private ScriptObject Strength(SubjectRecord mesh)
    {
        var gears = record.Subjects.Where(s => s.Kind == "mesh_gear" && Relation(s, "mesh") == mesh.Path).ToList();
        return new()
        {
            ["subject"] = Code(mesh.Path),
            ["factors"] = List(StrengthRows.Mesh, name => Rated(name, [mesh])),
            ["heads"] = List(gears, gear => Code(Relation(gear, "gear"))),
            ["rows"] = List(StrengthRows.Gears, name => Rated(name, gears)),
        };
    }

    /// <summary>A quantity of several subjects, or the margin of a rule on them.</summary>
    private ScriptObject Rated(string name, List<SubjectRecord> subjects)
    {
        var isRule = name.Contains('/', StringComparison.Ordinal);
        return new()
        {
            ["name"] = isRule ? $"Margin, {RuleLink(name)}" : TitleOf(name, subjects),
            ["cells"] = List(subjects, s => isRule ? MarginOf(name, s) : Shown(s, name, Figures.Of)),
        };
    }

    private string TitleOf(string name, List<SubjectRecord> subjects)
    {
        foreach (var subject in subjects)
        {
            if (subject.Quantities.FirstOrDefault(each => each.Name == name) is { } quantity)
                return Escape(Sheet.Titled(quantity));
        }

        return Escape(name);
    }

    private static string Relation(SubjectRecord subject, string role) =>
        subject.Related.FirstOrDefault(each => each.Role == role)?.Subject ?? subject.Path;

    private string MarginOf(string rule, SubjectRecord subject) =>
        record.Findings.FirstOrDefault(f => f.Rule == rule && f.Subject == subject.Path) is { } finding
            ? Figures.Margin(finding)
            : "–";

    private ScriptObject Inspection(SubjectRecord gear) => Row(
        ("subject", Code(gear.Path)),
        ("span_teeth", Shown(gear, "span_teeth", Figures.Of)),
        ("base_tangent_length", Shown(gear, "base_tangent_length", Figures.Limits)),
        ("ball_diameter", Shown(gear, "ball_diameter", Figures.Nominal)),
        ("dimension_over_balls", Shown(gear, "dimension_over_balls", Figures.Limits)));

    private string Shown(SubjectRecord subject, string name, Func<ValueRecord, string> show)
    {
        foreach (var quantity in subject.Quantities)
        {
            if (quantity.Name == name)
                return Link(Escape(show(quantity.Value)), _anchors.Quantity($"{subject.Path}.{name}"));
        }

        return "–";
    }

    /// <summary>All quantities of all subjects, a part of the report for each domain, a table for each kind.</summary>
    private ScriptArray Sheets()
    {
        var parts = new ScriptArray();
        foreach (var domain in record.Subjects.GroupBy(s => s.Domain))
        {
            var kinds = new ScriptArray();
            foreach (var kind in domain.GroupBy(s => s.Kind))
            {
                kinds.Add(new ScriptObject
                {
                    ["title"] = Escape(kind.First().Title),
                    ["tables"] = Sheet.Of([.. kind], _anchors, markup),
                });
            }

            parts.Add(new ScriptObject { ["domain"] = Escape(domain.Key), ["kinds"] = kinds });
        }

        return parts;
    }

    private ScriptArray Inputs()
    {
        var files = new ScriptArray();
        foreach (var file in record.Inputs.GroupBy(i => i.Place.File))
        {
            files.Add(new ScriptObject
            {
                ["file"] = Code(file.Key),
                ["rows"] = List(file, i => Row(
                    ("path", Code(i.Path)), ("written", Escape(i.Written)), ("line", Phrase.Whole(i.Place.Line)))),
            });
        }

        return files;
    }

    private ScriptObject Assumption(AssumptionRecord assumption) => Row(
        ("quantity", QuantityLink(assumption.Quantity)),
        ("title", Escape(assumption.Title)),
        ("value", Escape(Figures.Of(assumption.Value))),
        ("basis", Escape(assumption.Basis)),
        ("rules", assumption.Rules.IsEmpty ? "none" : string.Join(", ", assumption.Rules.Select(RuleLink))));

    private ScriptObject Derivations(SubjectRecord subject) => new()
    {
        ["subject"] = Code(subject.Path),
        ["anchor"] = _anchors.Subject(subject.Path),
        ["title"] = Escape(subject.Title),
        ["place"] = Code(subject.Place.ToString()),
        ["quantities"] = List(subject.Quantities, q => Derivation(subject, q)),
    };

    private ScriptObject Derivation(SubjectRecord subject, QuantityRecord quantity)
    {
        var value = quantity.Value.Reasons.IsEmpty
            ? Escape(Figures.Of(quantity.Value))
            : "not evaluated: " + string.Join("; ", quantity.Value.Reasons.Select(Escape));
        return Row(
            ("anchor", _anchors.Quantity($"{subject.Path}.{quantity.Name}")),
            ("title", Escape(Sheet.Titled(quantity))),
            ("value", value),
            ("origin", Origin(quantity)),
            ("formula", quantity.Origin == OriginWord.Computed ? Escape(quantity.Formula) : ""),
            ("terms", Terms(quantity.Terms)),
            ("source", Source(quantity)),
            ("note", Escape(quantity.Note)),
            ("wide", quantity.Wide ? "The bounds take the inputs as independent: wide, never narrow." : ""));
    }

    private string Origin(QuantityRecord quantity) => quantity.Origin switch
    {
        OriginWord.Declared when quantity.Written is { } written && quantity.Place is { } place =>
            $"declared as “{Escape(written)}” at {Code(place.ToString())}"
            + (quantity.Tolerance.Length > 0 ? $", limits: {Escape(quantity.Tolerance)}" : ""),
        OriginWord.Declared => "declared",
        OriginWord.Assumed => $"assumed: {Escape(quantity.Basis ?? "")}",
        _ => "",
    };

    private string Source(QuantityRecord quantity) => quantity switch
    {
        { Origin: not OriginWord.Computed } or { Source: "" } => "",
        { Certainty: CertaintyWord.Memory or CertaintyWord.CommonPractice } =>
            $"{Escape(quantity.Source)} ({Labels.Of(quantity.Certainty)})",
        _ => Escape(quantity.Source),
    };

    private string Terms(ImmutableArray<TermRecord> terms) => string.Join(", ", terms.Select(Term));

    private string Term(TermRecord term)
    {
        var symbol = Escape(term.Symbol);
        var named = term.Quantity is { } quantity && _quantities.Contains(quantity) ? Link(symbol, _anchors.Quantity(quantity)) : symbol;
        var given = term.Terms.IsEmpty ? "" : $" (from {Terms(term.Terms)})";
        var value = term.Value.Reasons.IsEmpty ? Escape(Figures.Of(term.Value)) : "not evaluated";
        return $"{named} = {value}{given}";
    }

    private ScriptObject Rule(RuleRecord rule) => Row(
        ("anchor", _anchors.Rule(rule.Id)),
        ("requirement", _anchors.Requirement(rule.Id)),
        ("id", Code(rule.Id)),
        ("title", Escape(rule.Title)),
        ("applies_to", Code(rule.AppliesTo)),
        ("when", rule.When is { } when ? Escape(when) : ""),
        ("measure", Escape(rule.Measure)),
        ("limit", Escape(rule.Limit)),
        ("severity", Labels.Of(rule.Severity)),
        ("concedable", rule.Concedable ? "" : "no concession may cover it"),
        ("method", Escape(rule.Source.Method)),
        ("limit_source", Escape(rule.Source.Limit)),
        ("certainty", Labels.Of(rule.Source.Certainty)),
        ("why", Escape(rule.Why)),
        ("mend", Escape(rule.Mend)),
        ("place", Code(rule.Place.ToString())));

    private static ScriptArray List<T>(IEnumerable<T> items, Func<T, object> show)
    {
        var list = new ScriptArray();
        foreach (var item in items)
            list.Add(show(item));
        return list;
    }

    private static ScriptObject Row(params ReadOnlySpan<(string Key, string Text)> cells)
    {
        var row = new ScriptObject();
        foreach (var (key, text) in cells)
            row[key] = text;
        return row;
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
