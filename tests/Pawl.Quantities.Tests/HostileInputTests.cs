using System.Diagnostics;
using CsCheck;

namespace Pawl.Quantities.Tests;

public class HostileInputTests
{
    private const string Alphabet = "0123456789.,eE+-−±/*·×^()²⁻¹°′″'\" \tmNkgsHhjJ%µΔCFKVGito…_\0\uD800\uFFFFé٢";

    [Fact]
    public void Any_text_is_read_or_refused_at_a_place_within_it()
    {
        var soup = Gen.OneOf(Gen.String, Gen.OneOf(Alphabet.ToCharArray()).Array[0, 40].Select(letters => new string(letters)));

        soup.Sample(
            text =>
            {
                _ = Units.TryParse(text, out _);
                _ = Units.Nearest(text);
                var amount = Amount.TryParse(text, out var read, out var amountError);
                var toleranced = Toleranced.TryParse(text, out var dimension, out var tolerancedError);
                return IsWithin(amount, amountError, text) && IsWithin(toleranced, tolerancedError, text)
                    && (!amount || double.IsFinite(read.Coherent))
                    && (!amount || (toleranced && dimension!.Nominal == read));
            },
            iter: 5_000);
    }

    [Fact]
    public void Pieces_of_real_notation_in_any_order_are_read_or_refused()
    {
        var piece = Gen.OneOf(
            "60", "0.1", "1/2", " ", " mm", "mm", " N·m", "°", "′", " °C", "±", "+", "-", "/", "(", ")", "..", "...", " to ", "H7",
            "g6", "js", "01", "VG ", "%", "e5", "NaN", ",", "^", "²", "1/min", "in", "fl oz", "W/(m·K)");

        piece.Array[1, 9].Select(string.Concat).Sample(
            text =>
            {
                var amount = Amount.TryParse(text, out _, out var amountError);
                var toleranced = Toleranced.TryParse(text, out var dimension, out var tolerancedError);
                return IsWithin(amount, amountError, text) && IsWithin(toleranced, tolerancedError, text)
                    && (dimension?.Tolerance is not Tolerance.Deviations deviations || deviations.Lower <= deviations.Upper);
            },
            iter: 20_000);
    }

    [Fact]
    public void A_megabyte_of_anything_is_refused_quickly()
    {
        const int Million = 1_000_000;
        string[] hostile =
        [
            new('1', Million), new('(', Million), new(' ', Million), new('x', Million), new('m', Million),
            $"1 {new string('(', Million)}", $"1 {new string('(', Million)}m{new string(')', Million)}",
            $"1 {new string('x', Million)}", $"1{new string(' ', Million)}x", $"1 mm {new string('(', Million)}",
            $"1 mm ±{new string('9', Million)}", $"1 mm (1{new string('.', Million)}2)", $"1 mm (1{new string(' ', Million)}2)",
            $"1 mm {string.Concat(Enumerable.Repeat("+1/", Million / 3))}",
            $"1 {string.Concat(Enumerable.Repeat("m·", Million / 2))}",
            $"1 {string.Concat(Enumerable.Repeat("m · ", Million / 4))}", $"1 mm H{new string('7', Million)}",
            $"1 mm {string.Concat(Enumerable.Repeat("H7/", Million / 3))}", $"VG {new string('9', Million)}",
            $"0.{new string('0', Million)}1 mm", $"1e{new string('9', Million)}", $"1/{new string('9', Million)} in",
            $"20° {string.Concat(Enumerable.Repeat("30′ ", Million / 4))}", $"1 mm^{new string('9', Million)}",
            $"1 mm ±1 {new string('x', Million)}", $"1 mm{new string('+', Million)}",
        ];

        foreach (var text in hostile)
        {
            var clock = Stopwatch.StartNew();
            Assert.Equal(Amount.TryParse(text, out _, out var amountError), amountError is null);
            Assert.Equal(Toleranced.TryParse(text, out _, out var tolerancedError), tolerancedError is null);
            Assert.Equal(Units.TryParse(text, out _), string.IsNullOrWhiteSpace(text));

            // Takes milliseconds; anything worse than linear would take minutes. Room for a busy machine.
            Assert.True(clock.ElapsedMilliseconds < 10_000, $"{text[..10]}… took {clock.ElapsedMilliseconds} ms");
            Assert.True((amountError?.Message.Length ?? 0) < 400 && (amountError?.Hint?.Length ?? 0) < 400);
            Assert.True((tolerancedError?.Message.Length ?? 0) < 400 && (tolerancedError?.Hint?.Length ?? 0) < 400);
        }
    }

    [Fact]
    public void Nesting_is_bounded()
    {
        Assert.True(Units.TryParse("((((((((m))))))))", out _));
        Assert.False(Units.TryParse("(((((((((m)))))))))", out _));
    }

    private static bool IsWithin(bool read, NotationError? error, string text) =>
        read == (error is null)
        && (error is null || (error.Start >= 0 && error.Length >= 0 && error.Start + error.Length <= text.Length
            && error.Message.Length > 0));
}
