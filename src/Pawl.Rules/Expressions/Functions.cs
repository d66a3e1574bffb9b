namespace Pawl.Rules.Expressions;

/// <summary>The functions that an expression may use.</summary>
internal static class Functions
{
    public static readonly ImmutableArray<string> Names = ["min", "max", "abs", "sqrt", "sin", "cos", "tan", "round", "floor", "nominal"];
}
