using Pawl.Quantities;
using Pawl.Specs;

namespace Pawl.Cli.Trials;

/// <summary>A value of the spec that is tried at several places.</summary>
/// <param name="Path">Its key.</param>
/// <param name="Values">What is tried, as a spec writes it, in order.</param>
/// <param name="Numbers">The same as numbers in <paramref name="Unit"/>; empty where they are words.</param>
/// <param name="Unit">The unit of the numbers; null for words.</param>
internal sealed record Variable(string Path, ImmutableArray<string> Values, ImmutableArray<double> Numbers, Unit? Unit)
{
    /// <summary>Steps of a range that names none.</summary>
    private const int UsualSteps = 20;

    /// <summary>Reads <c>PATH=FROM..TO:STEP</c> or <c>PATH=ONE,TWO,…</c>.</summary>
    /// <param name="text">The option.</param>
    /// <param name="template">The spec, whose unit and tolerance a bare number keeps.</param>
    /// <param name="most">Most values.</param>
    /// <param name="error">What is wrong with it.</param>
    public static Variable? Of(string text, SpecTemplate template, int most, out (string Message, string? Hint) error)
    {
        error = default;
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals <= 0)
        {
            error = ($"`{text}` names no value to try.", "Write KEY=FROM..TO:STEP, as duty.input.torque=50..250:5, or KEY=ONE,TWO.");
            return null;
        }

        var (path, values) = (text[..equals].Trim(), text[(equals + 1)..].Trim());
        var stated = template.Find(path)?.Value;
        if (!template.HasPlace(path))
        {
            error = (template.NoPlace(path).Message, template.NoPlace(path).Hint);
            return null;
        }

        var dots = values.IndexOf("..", StringComparison.Ordinal);
        return dots > 0 ? Range(path, values, dots, stated, most, out error) : List(path, values, stated, most, out error);
    }

    /// <summary>One value as a change of the spec.</summary>
    public ValueChange At(int index) => new(Path, Values[index]);

    private static Variable? Range(string path, string values, int dots, string? stated, int most, out (string Message, string? Hint) error)
    {
        var colon = values.LastIndexOf(':');
        var step = colon > dots ? values[(colon + 1)..].Trim() : null;
        var (from, to) = (values[..dots].Trim(), (colon > dots ? values[(dots + 2)..colon] : values[(dots + 2)..]).Trim());
        error = default;

        // `50..250 N·m`: the unit behind the range is that of both ends.
        var pattern = stated is null ? null : StatedNumber.Of(stated);
        if (stated is not null && pattern is null)
        {
            error = ($"{path} states `{stated}`, which is no single number.", $"List what is to be tried: {path}=ONE,TWO.");
            return null;
        }

        if (Number(to, pattern?.Unit, out var last, out var unit, ref error) is false || Number(from, unit, out var first, out _, ref error) is false)
            return null;
        pattern ??= new(0, unit, unit.Symbol.Length == 0 ? "" : " " + unit.Symbol);
        var width = (last - first) / UsualSteps;
        if (step is not null && Number(step, unit, out width, out _, ref error) is false)
            return null;
        if (!(last > first) || !(width > 0))
        {
            error = ($"`{values}` is no range: it ends where it begins, or before, or steps backwards.", "Write FROM..TO:STEP with FROM under TO and a step above 0.");
            return null;
        }

        var count = Math.Floor(((last - first) / width) + 1e-9) + 1;
        if (count > most)
        {
            error = ($"`{values}` is {StatedNumber.Plain(count)} values; at most {StatedNumber.Plain(most)} are tried.", "Take a larger step.");
            return null;
        }

        ImmutableArray<double> numbers = [.. Enumerable.Range(0, (int)count).Select(i => first + (i * width))];
        return new(path, [.. numbers.Select(pattern.With)], numbers, pattern.Unit);
    }

    private static Variable? List(string path, string values, string? stated, int most, out (string Message, string? Hint) error)
    {
        error = default;
        ImmutableArray<string> words = [.. values.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
        if (words.IsEmpty || words.Length > most)
        {
            error = (words.IsEmpty ? $"`{path}=` lists no value." : $"{path} lists {StatedNumber.Plain(words.Length)} values; at most {StatedNumber.Plain(most)} are tried.", null);
            return null;
        }

        // A number without unit takes unit and tolerance of what is stated; anything else is as it stands.
        var pattern = stated is null ? null : StatedNumber.Of(stated);
        ImmutableArray<string> texts = [.. words.Select(word => pattern is { Tail.Length: > 0 } && StatedNumber.Of(word) is { Tail: "" } number ? pattern.With(number.Value) : word)];
        ImmutableArray<StatedNumber?> read = [.. texts.Select(StatedNumber.Of)];
        var unit = read[0]?.Unit;
        var areNumbers = unit is not null && read.All(number => number?.Unit.Dimension == unit.Dimension);
        return new(path, texts, areNumbers ? [.. read.Select(number => new Amount(number!.Value, number.Unit).In(unit!))] : [], areNumbers ? unit : null);
    }

    private static bool Number(string text, Unit? stated, out double value, out Unit unit, ref (string Message, string? Hint) error)
    {
        value = 0;
        unit = stated!;
        if (!Amount.TryParse(text, out var amount, out var wrong))
        {
            error = (wrong.Message, wrong.Hint);
            return false;
        }

        if (stated is null)
            (value, unit) = (amount.Value, amount.Unit);
        else if (amount.Dimension == stated.Dimension)
            value = amount.In(stated);
        else if (amount.Dimension == Dimension.Ratio)
            value = amount.Value;
        else
            error = ($"The value is {stated.Dimension.NameWithArticle}, but `{text}` is {amount.Dimension.NameWithArticle}.", $"Give {stated.Dimension.NameWithArticle}.");
        return error.Message is null;
    }
}
