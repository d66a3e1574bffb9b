namespace Pawl.Rules;

/// <summary>The rules in force: shipped packs and house packs, checked.</summary>
public sealed record RuleSet
{
    public required ImmutableArray<Rule> Rules { get; init; }

    /// <summary>Packs by name with the hash of the file each came from.</summary>
    public required ImmutableArray<PackRead> Packs { get; init; }

    /// <summary>The shipped rules that house rules weaken, in their order.</summary>
    public IEnumerable<Rule> Weakened => Rules.Where(rule => rule.Deviation is { IsWeakening: true });

    /// <summary>The rule of that id, or null.</summary>
    public Rule? Find(string id)
    {
        foreach (var rule in Rules)
        {
            if (rule.Id == id)
                return rule;
        }

        return null;
    }
}

/// <summary>A rule pack that was read.</summary>
/// <param name="Name">Name of the pack.</param>
/// <param name="Path">File, from the project root; <c>shipped:</c> in front for those inside the tool.</param>
/// <param name="Version">The pack's own version.</param>
/// <param name="Sha256">Hash of the file.</param>
public sealed record PackRead(string Name, string Path, string Version, string Sha256);
