namespace Pawl.Reports.Records.Stored;

/// <summary>Whether two parts of a record say the same, to the last bit; what differs is written in full.</summary>
internal static class Same
{
    public static bool Value(ValueRecord a, ValueRecord b) =>
        ReferenceEquals(a, b)
        || (Number(a.Nominal, b.Nominal) && Number(a.Min, b.Min) && Number(a.Max, b.Max) && a.Unit == b.Unit
            && a.Text == b.Text && a.Truth == b.Truth && a.Reasons.SequenceEqual(b.Reasons, StringComparer.Ordinal));

    public static bool Term(TermRecord a, TermRecord b) =>
        a.Symbol == b.Symbol && a.Quantity == b.Quantity && Value(a.Value, b.Value) && a.Written == b.Written && a.Place == b.Place
        && a.Basis == b.Basis && a.Formula == b.Formula && a.Terms.IsEmpty && b.Terms.IsEmpty;

    // −0 equals 0 and is another number.
    private static bool Number(double? a, double? b) => a is { } x && b is { } y
        ? BitConverter.DoubleToInt64Bits(x) == BitConverter.DoubleToInt64Bits(y)
        : a is null && b is null;
}

/// <summary>A quantity as a term of another.</summary>
internal static class TermOf
{
    public static string Name(string subject, string quantity) => $"{subject}.{quantity}";

    /// <summary>As a formula is given it: symbol, name and value.</summary>
    public static TermRecord Plain(string name, QuantityRecord quantity, string? symbol = null) =>
        new() { Symbol = symbol ?? Symbol(quantity), Quantity = name, Value = quantity.Value };

    /// <summary>As it governs a finding: with its text, place and basis.</summary>
    public static TermRecord Governing(string name, QuantityRecord quantity, string? symbol = null) =>
        Plain(name, quantity, symbol) with { Written = quantity.Written, Place = quantity.Place, Basis = quantity.Basis };

    public static string Symbol(QuantityRecord quantity) => quantity.Symbol.Length > 0 ? quantity.Symbol : quantity.Name;
}
