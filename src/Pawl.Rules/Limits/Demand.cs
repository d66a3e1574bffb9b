using Pawl.Analysis.Core;
using Pawl.Rules.Expressions;

namespace Pawl.Rules.Limits;

/// <summary>What a text or a truth value must be: some words, what another quantity says, or one for each category.</summary>
internal abstract class Demand
{
    /// <summary>The words permitted; the default array with the reason when there are none to compare with.</summary>
    public abstract ImmutableArray<string> Of(Subject subject, out ImmutableArray<string> absence, out Quantity? unevaluated);

    public sealed class Words(ImmutableArray<string> words) : Demand
    {
        public ImmutableArray<string> Permitted { get; } = words;

        public override ImmutableArray<string> Of(Subject subject, out ImmutableArray<string> absence, out Quantity? unevaluated)
        {
            absence = [];
            unevaluated = null;
            return Permitted;
        }
    }

    public sealed class SameAs(QuantityPath path) : Demand
    {
        public QuantityPath Path { get; } = path;

        public override ImmutableArray<string> Of(Subject subject, out ImmutableArray<string> absence, out Quantity? unevaluated)
        {
            absence = [];
            unevaluated = null;
            switch (Path.Find(subject))
            {
                case null:
                    absence = Path.Absence;
                    return default;
                case { IsEvaluated: false } quantity:
                    unevaluated = quantity;
                    return default;
                case var quantity:
                    return quantity.Kind.ValueKind == ValueKind.Text ? [quantity.Text!] : quantity.Truth ? True : False;
            }
        }
    }

    public sealed class ByCategory(Table<Demand> table) : Demand
    {
        public Table<Demand> Table { get; } = table;

        public override ImmutableArray<string> Of(Subject subject, out ImmutableArray<string> absence, out Quantity? unevaluated) =>
            Table.Choose(subject, out absence, out unevaluated) is { } demand ? demand.Of(subject, out absence, out unevaluated) : default;
    }

    public static readonly ImmutableArray<string> True = ["true"];

    public static readonly ImmutableArray<string> False = ["false"];
}
