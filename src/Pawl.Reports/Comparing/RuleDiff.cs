using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Comparing;

/// <summary>Rules that differ between two sides.</summary>
internal static class RuleDiff
{
    public static ImmutableArray<RuleChange> Of(ImmutableArray<RuleRecord> @base, ImmutableArray<RuleRecord> head)
    {
        var before = new Dictionary<string, RuleRecord>(StringComparer.Ordinal);
        foreach (var was in @base)
            before[was.Id] = was;
        var changes = ImmutableArray.CreateBuilder<RuleChange>();
        foreach (var now in head)
        {
            if (!before.Remove(now.Id, out var was))
            {
                Add("rule", null, now.Title);
                continue;
            }

            Add("when", was.When, now.When);
            Add("measure", was.Measure, now.Measure);
            Add("limit", was.Limit, now.Limit);
            Add("severity", Labels.Of(was.Severity), Labels.Of(now.Severity));
            Add("concedable", was.Concedable ? "yes" : "no", now.Concedable ? "yes" : "no");

            void Add(string what, string? old, string? @new)
            {
                if ((old ?? "") != (@new ?? ""))
                    changes.Add(new() { Rule = now.Id, What = what, Base = old, Head = @new, Place = now.Place });
            }
        }

        foreach (var was in before.Values)
            changes.Add(new() { Rule = was.Id, What = "rule", Base = was.Title, Head = null, Place = was.Place });
        return changes.DrainToImmutable();
    }
}

/// <summary>Concessions that differ between two sides, read off what the specs declare, so that idle ones count too.</summary>
internal static class ConcessionDiff
{
    public const string Section = "concessions[";

    private sealed record Concession(string Rule, string Subject, string Says, PlaceRecord Place);

    public static ImmutableArray<ConcessionChange> Of(ImmutableArray<InputRecord> @base, ImmutableArray<InputRecord> head, string variant)
    {
        var before = Read(@base);
        var changes = ImmutableArray.CreateBuilder<ConcessionChange>();
        foreach (var now in Read(head))
        {
            var place = before.FindIndex(b => b.Rule == now.Rule && b.Subject == now.Subject);
            var was = place < 0 ? null : before[place];
            if (was is not null)
                before.RemoveAt(place);
            if (was?.Says != now.Says)
                changes.Add(Change(was, now));
        }

        changes.AddRange(before.Select(was => Change(was, null)));
        return changes.DrainToImmutable();

        ConcessionChange Change(Concession? was, Concession? now)
        {
            var one = (now ?? was)!;
            return new() { Rule = one.Rule, Subject = one.Subject, Base = was?.Says, Head = now?.Says, Place = one.Place, Variants = [variant] };
        }
    }

    private static List<Concession> Read(ImmutableArray<InputRecord> inputs)
    {
        List<Concession> concessions = [];
        foreach (var entry in inputs.Where(static i => i.Path.StartsWith(Section, StringComparison.Ordinal)).GroupBy(static i => i.Path[..(i.Path.IndexOf(']', StringComparison.Ordinal) + 1)]))
        {
            var keys = entry.Select(i => (Key: i.Path[entry.Key.Length..].TrimStart('.'), i.Written)).ToList();
            concessions.Add(new(
                keys.Find(static k => k.Key == "rule").Written ?? "", keys.Find(static k => k.Key == "subject").Written ?? "",
                string.Join(", ", keys.Where(static k => k.Key is not ("rule" or "subject")).Select(static k => $"{k.Key}: {k.Written}")),
                entry.First().Place));
        }

        return concessions;
    }
}
