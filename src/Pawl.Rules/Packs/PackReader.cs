using System.Security.Cryptography;
using Pawl.Analysis.Core;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Rules.Packs;

/// <summary>Reads one pack file.</summary>
internal sealed class PackReader(string path, List<Diagnostic> diagnostics)
{
    private static readonly string[] Severities = ["error", "warning", "note"];
    private static readonly string[] Certainties = ["closed-form", "published", "memory", "common-practice", "declared"];
    private static readonly string[] Outcomes = ["conforms", "fails", "not applicable"];

    private string _pack = "";

    public static PackSyntax? Read(string path, byte[] bytes, List<Diagnostic> diagnostics)
    {
        if (YamlReader.Read(path, bytes, diagnostics) is { } root)
            return new PackReader(path, diagnostics).Read(root, Convert.ToHexStringLower(SHA256.HashData(bytes)));

        // A pack begins unlike a spec.
        if (diagnostics is [.., { Code: DiagnosticCodes.Empty } empty])
            diagnostics[^1] = empty with { Hint = "Start it with `pack:` and its name." };
        return null;
    }

    private PackSyntax? Read(YamlNode root, string hash)
    {
        var map = new MapReader(root, "", diagnostics);
        if (!map.IsMap)
            return null;

        var name = map.Name("pack", required: true);
        _pack = name?.Value ?? "";
        map.Text("title", required: true);
        var version = map.Text("version", required: true);
        if (version is not null && !IsVersion(version.Value))
        {
            map.Report(RuleDiagnostics.Error(
                RuleCodes.MalformedVersion, version.Span, $"`{RuleDiagnostics.Short(version.Value)}` is no version.",
                "Write three numbers: 1.0.0."));
        }

        var overrides = ImmutableArray.CreateBuilder<RuleOverride>();
        var rules = map.Items("rules", item =>
        {
            if (item.Truth("override") is not { Value: true })
                return Rule(item);
            if (Override(item) is { } change)
                overrides.Add(change);
            return null;
        }, required: true);
        map.Finish();
        return name is null ? null : new(name, new(name.Value, path, version?.Value ?? "", hash), rules, overrides.DrainToImmutable());
    }

    private RuleSyntax? Rule(MapReader map)
    {
        var id = Id(map);
        var called = id?.Value ?? map.ObjectPath;
        var title = map.Text("title", required: true);
        var kind = Kind(map);
        var when = Scalar(map, "when", required: false);
        var measure = Scalar(map, "measure", required: true);
        var severity = map.Word("severity", Severities, required: true);
        var source = Source(map, called, severity?.Value == "error");
        var why = Sentence(map, "why", called, RuleCodes.MissingWhy, "Name the failure that it keeps away, in one sentence.");
        var mend = Sentence(map, "mend", called, RuleCodes.MissingMend, "Name what to change in the spec, in one sentence.");
        var concedable = map.Truth("concedable");
        var plausibility = map.Truth("plausibility");
        var explains = map.Texts("explains");
        var suggest = Scalar(map, "suggest", required: false);
        var (least, most, equal, oneOf) = (map.Node("at_least"), map.Node("at_most"), map.Node("equals"), map.Node("one_of"));
        var examples = map.Items("examples", Example);
        if (least is null && most is null && equal is null && oneOf is null)
        {
            map.Report(RuleDiagnostics.Missing(
                RuleCodes.MissingLimit, id?.Span ?? map.NameSpan, called, "a limit",
                "Give `at_least`, `at_most`, `equals` or `one_of`."));
        }

        map.Finish();
        if (map.HasErrors || id is null || title is null || kind is null || measure is null || severity is null || source is null
            || why is null || mend is null)
        {
            return null;
        }

        return new()
        {
            Id = id,
            Title = title.Value,
            Pack = _pack,
            AppliesTo = kind,
            When = when,
            Measure = measure,
            AtLeast = least,
            AtMost = most,
            EqualTo = equal,
            OneOf = oneOf,
            Severity = SeverityOf(severity.Value),
            Source = source,
            Why = why.Value,
            Mend = mend.Value,
            Concedable = concedable?.Value ?? true,
            Plausibility = plausibility?.Value ?? false,
            Explains = explains,
            Suggest = suggest,
            Examples = examples,
        };
    }

    private RuleOverride? Override(MapReader map)
    {
        var id = Id(map);
        var called = id?.Value ?? map.ObjectPath;
        var reason = Owed(map, "reason", called, RuleCodes.MissingReason, "Say why this house differs from the shipped pack.");
        var approver = Owed(map, "approved_by", called, RuleCodes.MissingApprover, "Name who agreed to it: a person or an office.");
        var when = Scalar(map, "when", required: false);
        var severity = map.Word("severity", Severities);
        var (least, most, equal, oneOf) = (map.Node("at_least"), map.Node("at_most"), map.Node("equals"), map.Node("one_of"));
        foreach (var key in (ReadOnlySpan<string>)["title", "applies_to", "measure", "source", "why", "mend", "concedable", "plausibility", "explains", "suggest", "examples"])
        {
            if (map.Has(key))
            {
                map.Report(RuleDiagnostics.Error(
                    RuleCodes.OverrideKey, map.KeySpan(key), $"An override cannot change `{key}`.",
                    "It changes limits, severity and condition. For another measure add a rule with an id of its own."));
            }
        }

        if (approver is not null && !Substance.IsSomebody(approver.Value))
        {
            map.Report(RuleDiagnostics.Error(
                RuleCodes.MissingApprover, approver.Span, $"`approved_by` of the rule `{RuleDiagnostics.Short(called)}` names nobody: `{RuleDiagnostics.Short(approver.Value)}`.",
                "Name who agreed to it: a person or an office."));
        }

        if (least is null && most is null && equal is null && oneOf is null && severity is null && when is null)
        {
            map.Report(RuleDiagnostics.Missing(
                RuleCodes.MissingLimit, id?.Span ?? map.NameSpan, called, "a change",
                "Give a limit, a severity or a condition that differs from the shipped one."));
        }

        map.Finish();
        if (map.HasErrors || id is null || reason is null || approver is null)
            return null;
        return new()
        {
            Id = id,
            Pack = _pack,
            Reason = reason,
            ApprovedBy = approver,
            When = when,
            AtLeast = least,
            AtMost = most,
            EqualTo = equal,
            OneOf = oneOf,
            Severity = severity is null ? null : SeverityOf(severity.Value),
        };
    }

    private static Stated<string>? Id(MapReader map)
    {
        if (map.Text("id", required: true) is not { } id)
            return null;
        if (IsId(id.Value))
            return id;
        map.Report(RuleDiagnostics.MalformedId(id.Span, id.Value));
        return null;
    }

    private static SubjectKind? Kind(MapReader map)
    {
        if (map.Text("applies_to", required: true) is not { } name)
            return null;
        if (JudgedKinds.Find(name.Value) is { } kind)
            return kind;
        map.Report(RuleDiagnostics.UnknownSubject(name.Span, name.Value));
        return null;
    }

    private static YamlScalar? Scalar(MapReader map, string key, bool required)
    {
        if (map.Node(key, required) is not { } node)
            return null;
        if (node is YamlScalar scalar)
            return scalar;
        map.Report(RuleDiagnostics.Error(
            RuleCodes.NotAnExpression, node.Span,
            $"`{key}` is a quantity or an expression, but a {(node is YamlList ? "list" : "map")} stands here."));
        return null;
    }

    private static Stated<string>? Sentence(MapReader map, string key, string id, string code, string hint)
    {
        if (map.Has(key))
            return map.Text(key);
        map.Report(RuleDiagnostics.Missing(code, map.NameSpan, id, key, hint));
        return null;
    }

    /// <summary>A sentence that an empty text does not stand for.</summary>
    private static Stated<string>? Owed(MapReader map, string key, string id, string code, string hint)
    {
        var isEmpty = map.Raw(key) is YamlScalar scalar && (scalar.IsNull || string.IsNullOrWhiteSpace(scalar.Value));
        if (!isEmpty)
            return Sentence(map, key, id, code, hint);
        map.Report(RuleDiagnostics.Error(code, map.KeySpan(key), $"`{key}` of the rule `{RuleDiagnostics.Short(id)}` is empty.", hint));
        return null;
    }

    private static RuleSource? Source(MapReader map, string id, bool isError)
    {
        if (!map.Has("source"))
        {
            map.Report(RuleDiagnostics.Missing(
                RuleCodes.MissingSource, map.NameSpan, id, "source",
                "Write `source: {method: …, limit: …}`; a habit is `common practice, no source`."));
            return null;
        }

        if (map.Map("source") is not { } source)
            return null;
        var method = source.Text("method", required: true);
        var limit = source.Text("limit", required: true);
        var word = source.Word("certainty", Certainties);
        source.Finish();
        if (method is null || limit is null || source.HasErrors)
            return null;

        var certainty = word is not null ? CertaintyOf(word.Value) : Guess(limit.Value);
        if (isError && certainty == Certainty.Memory)
        {
            source.Report(RuleDiagnostics.Error(
                RuleCodes.UnsureError, limit.Span,
                $"The rule `{RuleDiagnostics.Short(id)}` is an error, but its limit is only remembered.",
                "Check the source and write `certainty: published`, or make it a warning."));
            return null;
        }

        return new(method.Value, limit.Value, certainty);
    }

    private RuleExample? Example(MapReader map)
    {
        var given = ImmutableArray.CreateBuilder<KeyValuePair<string, Stated<string>>>();
        var outcome = map.Word("outcome", Outcomes, required: true);
        var margin = map.Number("margin", -1e9, 1e9);
        if (map.Node("given", required: true) is { } node)
        {
            if (node is not YamlMap values)
            {
                map.Report(RuleDiagnostics.Error(
                    RuleCodes.MalformedExample, node.Span, "`given` is a map of quantities and their values."));
            }
            else
            {
                foreach (var (key, value) in values.Entries)
                {
                    if (value is YamlScalar { IsNull: false } scalar)
                        given.Add(new(key.Value, new(scalar.Value, scalar.Span, scalar.Value)));
                    else
                        map.Report(RuleDiagnostics.Error(
                            RuleCodes.MalformedExample, value.Span, $"`{RuleDiagnostics.Short(key.Value)}` has one value in an example."));
                }
            }
        }

        map.Finish();
        if (map.HasErrors || outcome is null)
            return null;
        return new(given.DrainToImmutable(), outcome.Value switch
        {
            "conforms" => Outcome.Conforms,
            "fails" => Outcome.Fails,
            _ => Outcome.NotApplicable,
        }, margin?.Value, map.Span);
    }

    internal static bool IsId(string text)
    {
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        return slash > 0 && text.Length <= 80 && IsKebab(text.AsSpan(0, slash)) && IsKebab(text.AsSpan(slash + 1));
    }

    private static bool IsKebab(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty || !char.IsAsciiLetterLower(text[0]) || text[^1] == '-')
            return false;
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsAsciiLetterLower(text[i]) && !char.IsAsciiDigit(text[i]) && !(text[i] == '-' && text[i - 1] != '-'))
                return false;
        }

        return true;
    }

    private static bool IsVersion(string text)
    {
        var parts = text.Split('.');
        return parts.Length == 3 && Array.TrueForAll(parts, p => p.Length is > 0 and < 6 && p.AsSpan().IndexOfAnyExceptInRange('0', '9') < 0);
    }

    private static Severity SeverityOf(string word) => word switch
    {
        "error" => Severity.Error,
        "warning" => Severity.Warning,
        _ => Severity.Note,
    };

    private static Certainty CertaintyOf(string word) => word switch
    {
        "closed-form" => Certainty.ClosedForm,
        "published" => Certainty.Published,
        "common-practice" => Certainty.CommonPractice,
        "declared" => Certainty.Declared,
        _ => Certainty.Memory,
    };

    /// <summary>A limit without a word on how sure it is counts as remembered, unless its source says what it is.</summary>
    private static Certainty Guess(string limit) =>
        limit.StartsWith("common practice", StringComparison.Ordinal) ? Certainty.CommonPractice
        : limit.StartsWith("closed form", StringComparison.Ordinal) ? Certainty.ClosedForm
        : limit == "the spec" ? Certainty.Declared
        : Certainty.Memory;
}
