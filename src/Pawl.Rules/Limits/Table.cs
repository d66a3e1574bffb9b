using Pawl.Analysis.Core;
using Pawl.Rules.Expressions;

namespace Pawl.Rules.Limits;

/// <summary>A choice by the text or the truth of a quantity.</summary>
internal sealed class Table<T>(QuantityPath by, Dictionary<string, T> branches, T? otherwise)
    where T : class
{
    public QuantityPath By { get; } = by;

    public IReadOnlyDictionary<string, T> Branches => branches;

    /// <summary>The branch of every other category; null when there is none.</summary>
    public T? Otherwise { get; } = otherwise;

    /// <summary>The branch of the subject's category; null with what is absent or not evaluated.</summary>
    public T? Choose(Subject subject, out ImmutableArray<string> absence, out Quantity? unevaluated)
    {
        absence = [];
        unevaluated = null;
        if (By.Find(subject) is not { } category)
        {
            absence = By.Absence;
            return null;
        }

        if (!category.IsEvaluated)
        {
            unevaluated = category;
            return null;
        }

        var word = category.Kind.ValueKind == ValueKind.Text ? category.Text! : category.Truth ? "true" : "false";
        if (branches.TryGetValue(word, out var branch))
            return branch;
        if (Otherwise is null)
            unevaluated = Quantity.NotEvaluated(category.Kind, [category], $"the rule has no limit for {By.Text} `{word}`");
        return Otherwise;
    }
}
