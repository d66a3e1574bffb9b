using Pawl.Analysis;
using Pawl.Specs.Text;

namespace Pawl.Rules;

/// <summary>Rule packs as read: the set, or null when a pack cannot be used, with every complaint.</summary>
public sealed record RuleSetLoad(RuleSet? Rules, ImmutableArray<Diagnostic> Diagnostics);

/// <summary>Finds, reads and checks rule packs.</summary>
public static class RulePacks
{
    /// <summary>The shipped packs, then the house packs of the folders, which add rules or override limits by id.</summary>
    /// <param name="root">Project root; house folders are relative to it and stay inside it.</param>
    /// <param name="houseFolders">Folders with <c>*.yaml</c> packs.</param>
    public static RuleSetLoad Load(string root, ImmutableArray<string> houseFolders) => throw new NotImplementedException();
}

/// <summary>Puts rules to subjects.</summary>
public static class Judge
{
    /// <summary>Judges one analysis. Thread-safe; the same input gives the same findings.</summary>
    public static Judgement Of(GearboxAnalysis analysis, RuleSet rules, DateOnly asOf) => throw new NotImplementedException();
}
