using Pawl.Specs.Text;

namespace Pawl.Rules.Packs;

/// <summary>The packs inside the tool.</summary>
internal static class ShippedPacks
{
    /// <summary>In the order in which a designer meets them.</summary>
    public static readonly ImmutableArray<string> Files = ["rules/train.yaml", "rules/mesh.yaml", "rules/material.yaml", "rules/rating.yaml", "rules/bearing.yaml", "rules/shaft.yaml", "rules/spline.yaml", "rules/key.yaml", "rules/vibration.yaml", "rules/interface.yaml", "rules/lubrication.yaml", "rules/fit.yaml", "rules/stack.yaml", "rules/joint.yaml", "rules/pin.yaml", "rules/seal.yaml", "rules/plausible.yaml", "rules/agreement.yaml", "rules/completeness.yaml", "rules/concession.yaml"];

    private static readonly Lazy<RuleSetLoad> Loaded = new(Read);

    public static RuleSetLoad Load() => Loaded.Value;

    private static RuleSetLoad Read()
    {
        var diagnostics = new List<Diagnostic>();
        var rules = ImmutableArray.CreateBuilder<Rule>();
        var packs = ImmutableArray.CreateBuilder<PackRead>(Files.Length);
        var ids = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        foreach (var file in Files)
        {
            if (PackReader.Read($"shipped:{file}", Bytes(file), diagnostics) is not { } pack)
                continue;
            packs.Add(pack.Read);
            foreach (var draft in pack.Rules)
            {
                if (!ids.TryAdd(draft.Id.Value, draft.Span))
                    diagnostics.Add(RuleDiagnostics.DuplicateId(draft.Span, draft.Id.Value, ids[draft.Id.Value]));
                else if (RuleBuilder.Build(draft, diagnostics) is { } rule)
                    rules.Add(rule);
            }
        }

        ExplainsCheck.Check(rules, diagnostics.Add);
        return new(
            diagnostics.Exists(d => d.Severity == Severity.Error) ? null : new() { Rules = rules.ToImmutable(), Packs = packs.ToImmutable() },
            [.. diagnostics]);
    }

    private static byte[] Bytes(string file)
    {
        using var stream = typeof(ShippedPacks).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"{file} is not in the assembly.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
