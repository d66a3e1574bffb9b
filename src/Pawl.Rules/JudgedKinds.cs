using Pawl.Analysis;
using Pawl.Analysis.Core;

namespace Pawl.Rules;

/// <summary>Every kind of subject that a rule may be put to: those of the analysis, and the concessions.</summary>
public static class JudgedKinds
{
    public static readonly ImmutableArray<SubjectKind> All = [.. SubjectKinds.All, ConcessionQuantities.Kind];

    /// <summary>The kind of that name, or null.</summary>
    public static SubjectKind? Find(string name)
    {
        foreach (var kind in All)
        {
            if (kind.Name == name)
                return kind;
        }

        return null;
    }
}
