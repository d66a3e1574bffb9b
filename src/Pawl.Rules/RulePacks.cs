using Pawl.Rules.Packs;
using Pawl.Specs.Files;
using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>Rule packs as read: the set, or null when a pack cannot be used, with every complaint.</summary>
public sealed record RuleSetLoad(RuleSet? Rules, ImmutableArray<Diagnostic> Diagnostics);

/// <summary>Finds, reads and checks rule packs.</summary>
public static class RulePacks
{
    /// <summary>The packs inside the tool, in the order in which a designer meets them. Read once per process.</summary>
    public static RuleSetLoad Shipped => ShippedPacks.Load();

    /// <summary>The shipped packs, then the house packs of the folders, which add rules or override limits by id.</summary>
    /// <param name="root">Project root; house folders are relative to it and stay inside it.</param>
    /// <param name="houseFolders">Folders with <c>*.yaml</c> packs.</param>
    /// <param name="source">Where files are read from; null: the disk.</param>
    public static RuleSetLoad Load(string root, ImmutableArray<string> houseFolders, FileSource? source = null)
    {
        ArgumentNullException.ThrowIfNull(root);
        var shipped = Shipped;
        if (houseFolders.IsDefaultOrEmpty || shipped.Rules is null)
            return shipped;

        var diagnostics = new List<Diagnostic>();
        var packs = new List<PackSyntax>();
        foreach (var (path, bytes) in HouseFolders.Read(root, houseFolders, source ?? FileSource.Disk, diagnostics))
        {
            if (PackReader.Read(path, bytes, diagnostics) is { } pack)
                packs.Add(pack);
        }

        return Assembly(shipped.Rules, packs, diagnostics);
    }

    /// <summary>House packs given as text, beside the shipped ones.</summary>
    internal static RuleSetLoad LoadTexts(params ReadOnlySpan<(string Path, string Text)> texts)
    {
        var diagnostics = new List<Diagnostic>();
        var packs = new List<PackSyntax>();
        foreach (var (path, text) in texts)
        {
            if (PackReader.Read(path, System.Text.Encoding.UTF8.GetBytes(text), diagnostics) is { } pack)
                packs.Add(pack);
        }

        return Assembly(Shipped.Rules!, packs, diagnostics);
    }

    private static RuleSetLoad Assembly(RuleSet shipped, List<PackSyntax> packs, List<Diagnostic> diagnostics)
    {
        var rules = new HouseRules(shipped, diagnostics).With(packs);
        var sorted = diagnostics
            .OrderBy(d => d.Span.File, StringComparer.Ordinal).ThenBy(d => d.Span.Start.Line).ThenBy(d => d.Span.Start.Column)
            .ToImmutableArray();
        return new(sorted.Any(d => d.Severity == Severity.Error) ? null : rules, sorted);
    }
}
