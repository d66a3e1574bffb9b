using System.Globalization;

namespace Pawl.Quantities;

internal enum HardnessPieceKind
{
    Number,
    Scale,
    Range,
    PlusMinus,
    Plus,
    Minus,
    Slash,
    Open,
    Close,
}

/// <summary>A piece of a written hardness and its place.</summary>
internal sealed record HardnessPiece(HardnessPieceKind Kind, int Start, int Length, double Value = 0, HardnessScale Scale = default)
{
    public int End => Start + Length;
}

/// <summary>Cuts a written hardness into numbers, marks and scales. The load of a test is no part of the value and is left out.</summary>
internal ref struct HardnessPieces(ReadOnlySpan<char> text)
{
    // More than any form has; what is longer is refused where it goes too far.
    private const int Most = 16;

    // HB is what HBW was before the steel ball was given up, and Rc and BHN are older still; old drawings have them.
    private static readonly (string Word, HardnessScale Scale)[] Scales =
    [
        ("HRC", HardnessScale.RockwellC), ("HRc", HardnessScale.RockwellC), ("RC", HardnessScale.RockwellC), ("Rc", HardnessScale.RockwellC),
        ("HBW", HardnessScale.Brinell), ("HB", HardnessScale.Brinell), ("BHN", HardnessScale.Brinell), ("HV", HardnessScale.Vickers),
    ];

    private static readonly (string Mark, HardnessPieceKind Kind)[] Marks =
    [
        ("...", HardnessPieceKind.Range), ("..", HardnessPieceKind.Range), ("…", HardnessPieceKind.Range), ("–", HardnessPieceKind.Range),
        ("±", HardnessPieceKind.PlusMinus), ("+/-", HardnessPieceKind.PlusMinus), ("+-", HardnessPieceKind.PlusMinus),
        ("+", HardnessPieceKind.Plus), ("-", HardnessPieceKind.Minus), ("\u2212", HardnessPieceKind.Minus),
        ("/", HardnessPieceKind.Slash), ("(", HardnessPieceKind.Open), (")", HardnessPieceKind.Close),
    ];

    // The greatest load of a Vickers test, kgf (ISO 6507-1, from memory): 700 HV 10 states a load, 700 HV 750 does not.
    private const double MaxVickersLoad = 120;

    private readonly ReadOnlySpan<char> _text = text;
    private readonly List<HardnessPiece> _pieces = [];
    private int _at;
    private bool _hasNumber;

    /// <summary>The pieces in order, or the complaint about the first that has no place here.</summary>
    public List<HardnessPiece> Cut(out NotationError? error)
    {
        error = null;
        while (error is null && (_at = Blanks.Skip(_text, _at)) < _text.Length)
        {
            if (_pieces.Count == Most)
                error = HardnessErrors.Misplaced(_text, _at, 1);
            else if (char.IsAsciiDigit(_text[_at]))
                error = Number();
            else if (char.IsLetter(_text[_at]) || _text[_at] == '∞')
                error = Word();
            else if (!Mark())
                error = HardnessErrors.Misplaced(_text, _at, char.IsHighSurrogate(_text[_at]) && _at + 1 < _text.Length ? 2 : 1);
        }

        return _pieces;
    }

    private NotationError? Number()
    {
        var end = EndOfNumber(_at);
        if (end + 1 < _text.Length && _text[end] == ',' && char.IsAsciiDigit(_text[end + 1]))
            return NotationErrors.Comma(_text, end, thousandsPossible: false);

        _ = double.TryParse(_text[_at..end], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value);
        Add(HardnessPieceKind.Number, end - _at, value);
        _hasNumber = true;
        return null;
    }

    private NotationError? Word()
    {
        var end = _at + 1;
        while (end < _text.Length && char.IsLetter(_text[end])) end++;
        var word = _text[_at..end];
        if (word.SequenceEqual("to"))
        {
            Add(HardnessPieceKind.Range, word.Length);
            return null;
        }

        foreach (var (known, scale) in Scales)
        {
            if (!word.SequenceEqual(known)) continue;
            Add(HardnessPieceKind.Scale, word.Length, scale: scale);
            if (scale != HardnessScale.RockwellC) SkipLoad(scale);
            return null;
        }

        if (IsNotFinite(word)) return NotationErrors.NotFinite(_text, _at, word.Length);
        while (end < _text.Length && char.IsAsciiLetterOrDigit(_text[end])) end++;
        return HardnessErrors.UnknownScale(_text, _at, end - _at);
    }

    /// <summary>HV10, HV0.5, HV 30/20, HBW2.5/187.5: after the value, or between scale and value: <c>HV10 700</c>.</summary>
    private void SkipLoad(HardnessScale scale)
    {
        var start = _hasNumber ? Blanks.Skip(_text, _at) : _at;
        if (start == _text.Length || !char.IsAsciiDigit(_text[start])) return;

        var end = EndOfNumber(start);
        _ = double.TryParse(_text[start..end], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var load);
        if (scale == HardnessScale.Vickers && load > MaxVickersLoad) return;
        while (end + 1 < _text.Length && _text[end] == '/' && char.IsAsciiDigit(_text[end + 1])) end = EndOfNumber(end + 1);

        var next = Blanks.Skip(_text, end);
        if (_hasNumber || (next > end && next < _text.Length && char.IsAsciiDigit(_text[next]))) _at = end;
    }

    private bool Mark()
    {
        foreach (var (mark, kind) in Marks)
        {
            if (!_text[_at..].StartsWith(mark)) continue;
            Add(kind, mark.Length);
            return true;
        }

        return false;
    }

    private void Add(HardnessPieceKind kind, int length, double value = 0, HardnessScale scale = default)
    {
        _pieces.Add(new(kind, _at, length, value, scale));
        _at += length;
    }

    private readonly int EndOfNumber(int at)
    {
        while (at < _text.Length && char.IsAsciiDigit(_text[at])) at++;
        if (at + 1 >= _text.Length || _text[at] != '.' || !char.IsAsciiDigit(_text[at + 1])) return at;
        at++;
        while (at < _text.Length && char.IsAsciiDigit(_text[at])) at++;
        return at;
    }

    private static bool IsNotFinite(ReadOnlySpan<char> word) =>
        word is "∞" || word.Equals("nan", StringComparison.OrdinalIgnoreCase) || word.Equals("inf", StringComparison.OrdinalIgnoreCase)
        || word.Equals("infinity", StringComparison.OrdinalIgnoreCase);
}
