using Pawl.Analysis.Core;

namespace Pawl.Analysis.Joints;

/// <summary>Quantities that are worked out at nominal from what a draft already knows.</summary>
internal static class Worked
{
    /// <summary>A number; not evaluated where an input is missing or the mechanics refuses, with the reason.</summary>
    public static Quantity Out(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<double> formula)
    {
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(kind, inputs, reasons);
        try
        {
            var value = formula();
            return double.IsFinite(value)
                ? Quantity.Computed(kind, value, inputs)
                : Quantity.NotEvaluated(kind, inputs, $"{kind.Title.ToLowerInvariant()} has no finite value for these inputs");
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(kind, inputs, outside.Message);
        }
    }

    /// <summary>What a search in a table found, or else its reason as a refusal.</summary>
    public static T Found<T>(T? found, string? reason)
        where T : class =>
        found ?? throw new OutsideValidityException(reason);

    /// <summary>The refusal of a value that the spec lacks.</summary>
    public static OutsideValidityException Lacks(string key) => new($"{key} is not stated");
}
