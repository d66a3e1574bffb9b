using System.Collections.Immutable;
using System.Globalization;
using Pawl.Reports.Records;

namespace Pawl.Cli.Tests.Pages;

/// <summary>A record as nobody would wish for: names that are markup, names without end, text from right to left, and a great many of all.</summary>
internal static class HostileRecord
{
    public const int Subjects = 200, Rules = 25;

    private static readonly string[] Names =
    [
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onmouseover='alert(1)",
        "</style></script><svg onload=alert(1)>",
        "](javascript:alert(1))",
        "{{ 1 + 1 }}{{ include 'x' }}",
        new string('w', 400),
        string.Join(' ', Enumerable.Repeat("a long name of many words", 20)),
        "מסבים־ראשיים גל הכניסה",
        "محمل العمود الرئيسي",
        "⚙️🛥️👩‍🔧 gear 齿轮",
        "\u202Egnp.exe\u2066",
        "&lt;b&gt;&amp;&#60;script&#62;",
        "a\tb\nc\u0000d",
    ];

    public static ConformanceRecord Of()
    {
        var subjects = Enumerable.Range(0, Subjects).Select(Subject).ToImmutableArray();
        var rules = Enumerable.Range(0, Rules).Select(Rule).ToImmutableArray();
        var findings = rules.SelectMany((rule, r) => subjects.Select((subject, s) => Finding(rule, subject, r, s))).ToImmutableArray();
        CountsRecord Count(IEnumerable<FindingRecord> some) => new()
        {
            Conforms = some.Count(f => f.Outcome == OutcomeWord.Conforms),
            Fails = some.Count(f => f.Outcome == OutcomeWord.Fails),
            UnderConcession = some.Count(f => f.Outcome == OutcomeWord.UnderConcession),
            NotEvaluated = some.Count(f => f.Outcome == OutcomeWord.NotEvaluated),
            NotApplicable = 0,
        };
        return new()
        {
            Format = ConformanceRecord.CurrentFormat,
            Id = "0123456789abcdef",
            Tool = new() { Name = "pawl", Version = "0.1.0" },
            Identity = new()
            {
                Family = Name(0), Variant = Name(1), Revision = Name(2), Description = string.Concat(Names), Drawing = Name(6), PartNumber = Name(8), File = "specs/<b>.yaml",
            },
            AsOf = new(2026, 1, 15),
            Verdict = new() { Word = VerdictWord.DoesNotConform, Complete = false, WeakenedRules = 0, Statement = string.Join(", ", Names), NotStated = [.. Names] },
            Coverage = new()
            {
                Overall = Count(findings),
                Domains = [.. findings.GroupBy(f => f.Domain).Select(g => new DomainRecord { Domain = g.Key, Counts = Count(g), WorstMargin = -0.5 })],
            },
            Topology = string.Join(", ", Names),
            Parts = [.. subjects.Take(14).Select((s, i) => new PartRecord { Subject = s.Path, Drawing = Name(i), PartNumber = Name(i + 3) })],
            Files = [.. Names.Select(n => new FileRecord { Path = n, Sha256 = new('a', 64) })],
            Packs = [],
            Tables = [],
            Findings = findings,
            Waiting = [.. Names.Select((n, i) => new WaitRecord { Reason = n, Checks = i + 1, Alone = i, Rules = [.. rules.Select(r => r.Id)] })],
            Rules = rules,
            Deviations = [],
            Subjects = subjects,
            Assumptions = [],
            Inputs = [.. Names.Select((n, i) => new InputRecord { Path = n, Written = n, Place = Place(i) })],
            Cautions = [.. Names],
        };
    }

    private static string Name(int i) => Names[i % Names.Length];

    private static string Number(int i) => i.ToString(CultureInfo.InvariantCulture);

    private static PlaceRecord Place(int i) => new() { File = Name(i), Line = i + 1, Column = 1, EndLine = i + 1, EndColumn = 2 };

    private static SubjectRecord Subject(int i) => new()
    {
        Path = $"{(i % 3 == 0 ? "bearings" : "gears")}.{Name(i)}{Number(i)}",
        Kind = i % 3 == 0 ? "bearing" : "gear",
        Title = Name(i + 1),
        Domain = i % 3 == 0 ? "Bearings" : "Gears",
        Place = Place(i),
        Quantities =
        [
            new()
            {
                Name = "size",
                Symbol = Name(i + 2),
                Title = Name(i + 3),
                Value = new() { Nominal = 1.5 + i, Min = 1 + i, Max = 2 + i, Unit = "mm" },
                Origin = OriginWord.Computed,
                Formula = Name(i + 4),
                Source = Name(i + 5),
                Certainty = CertaintyWord.Published,
                Note = Name(i + 6),
            },
        ],
    };

    private static RuleRecord Rule(int i) => new()
    {
        Id = $"domain/{Name(i)}{Number(i)}",
        Title = $"{Name(i)} {Number(i)}",
        Pack = "p",
        AppliesTo = "gear",
        When = Name(i),
        Measure = Name(i + 1),
        Limit = Name(i + 2),
        Severity = (SeverityWord)(i % 3),
        Source = new() { Method = Name(i), Limit = Name(i + 1), Certainty = CertaintyWord.Memory },
        Why = Name(i + 7),
        Mend = Name(i + 9),
        Concedable = true,
        Place = Place(i),
    };

    private static FindingRecord Finding(RuleRecord rule, SubjectRecord subject, int r, int s) => new()
    {
        Rule = rule.Id,
        Subject = subject.Path,
        Domain = subject.Domain,
        Title = rule.Title,
        Outcome = (OutcomeWord)((r + s) % 4),
        Severity = rule.Severity,
        Measured = new() { Quantity = $"{subject.Path}.size", Value = subject.Quantities[0].Value },
        AtLeast = new() { Value = new() { Nominal = 3, Unit = "mm" } },
        Margin = (OutcomeWord)((r + s) % 4) == OutcomeWord.NotEvaluated ? null : 0.5 - (s / 100.0),
        Place = Place(s),
        Reasons = (OutcomeWord)((r + s) % 4) is OutcomeWord.NotEvaluated or OutcomeWord.Fails ? [Name(s)] : [],
        Suggestion = Name(s),
        Concession = (OutcomeWord)((r + s) % 4) == OutcomeWord.UnderConcession
            ? new() { Reason = Name(s), ApprovedBy = Name(s + 1), Expires = new(2027, 1, 1), WorstMargin = -1, Variants = [Name(s + 2)], Place = Place(s) }
            : null,
        Governing = [new() { Symbol = Name(s), Quantity = $"{subject.Path}.size", Value = subject.Quantities[0].Value, Place = Place(s) }],
    };
}
