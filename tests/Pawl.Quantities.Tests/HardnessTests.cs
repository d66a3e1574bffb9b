using System.Diagnostics;
using CsCheck;

namespace Pawl.Quantities.Tests;

public class HardnessTests
{
    [Theory]
    [InlineData("60 HRC", HardnessScale.RockwellC, 60, 60, 60)]
    [InlineData("60HRC", HardnessScale.RockwellC, 60, 60, 60)]
    [InlineData(" 60.5  HRC ", HardnessScale.RockwellC, 60.5, 60.5, 60.5)]
    [InlineData("HRC 60", HardnessScale.RockwellC, 60, 60, 60)]
    [InlineData("HRC60", HardnessScale.RockwellC, 60, 60, 60)]
    [InlineData("HRc 60", HardnessScale.RockwellC, 60, 60, 60)]
    [InlineData("Rc 58-62", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("58..62 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("58...62 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("58…62 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("58 .. 62 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("58-62 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("58–62 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("58 − 62 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("58 to 62 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("58 HRC to 62 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("58 HRC..62 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("HRC 58-62", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("HRC58..62", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("60 HRC ±2", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("60 ±2 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("60±2 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("60 +/-2 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("60 HRC ±2 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("HRC 60 ±2", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("60 +2/-2 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("60 HRC +2/-2", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("60 +2 -2 HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("60 0/-2 HRC", HardnessScale.RockwellC, 60, 58, 60)]
    [InlineData("58 +4/0 HRC", HardnessScale.RockwellC, 58, 58, 62)]
    [InlineData("58 +4 HRC", HardnessScale.RockwellC, 58, 58, 62)]
    [InlineData("58+4 HRC", HardnessScale.RockwellC, 58, 58, 62)]
    [InlineData("(58 +4/0) HRC", HardnessScale.RockwellC, 58, 58, 62)]
    [InlineData("(58..62) HRC", HardnessScale.RockwellC, 60, 58, 62)]
    [InlineData("60 HRC (58..61)", HardnessScale.RockwellC, 60, 58, 61)]
    [InlineData("60.1 ±0.2 HRC", HardnessScale.RockwellC, 60.1, 59.9, 60.3)]
    [InlineData("20 HRC", HardnessScale.RockwellC, 20, 20, 20)]
    [InlineData("70 HRC", HardnessScale.RockwellC, 70, 70, 70)]
    [InlineData("700 HV", HardnessScale.Vickers, 700, 700, 700)]
    [InlineData("HV 700", HardnessScale.Vickers, 700, 700, 700)]
    [InlineData("HV700", HardnessScale.Vickers, 700, 700, 700)]
    [InlineData("700 HV10", HardnessScale.Vickers, 700, 700, 700)]
    [InlineData("700 HV 10", HardnessScale.Vickers, 700, 700, 700)]
    [InlineData("700HV0.5", HardnessScale.Vickers, 700, 700, 700)]
    [InlineData("640 HV30/20", HardnessScale.Vickers, 640, 640, 640)]
    [InlineData("HV10 700", HardnessScale.Vickers, 700, 700, 700)]
    [InlineData("HV10 700..750", HardnessScale.Vickers, 725, 700, 750)]
    [InlineData("700..750 HV1", HardnessScale.Vickers, 725, 700, 750)]
    [InlineData("700 HV10 ±30", HardnessScale.Vickers, 700, 670, 730)]
    [InlineData("700 HV 10 +50/-30", HardnessScale.Vickers, 700, 670, 750)]
    [InlineData("700 HV1..750 HV1", HardnessScale.Vickers, 725, 700, 750)]
    [InlineData("300 HB", HardnessScale.Brinell, 300, 300, 300)]
    [InlineData("HB300", HardnessScale.Brinell, 300, 300, 300)]
    [InlineData("300 BHN", HardnessScale.Brinell, 300, 300, 300)]
    [InlineData("280..320 HBW", HardnessScale.Brinell, 300, 280, 320)]
    [InlineData("300 HBW 2.5/187.5", HardnessScale.Brinell, 300, 300, 300)]
    [InlineData("300 HBW10/3000/20", HardnessScale.Brinell, 300, 300, 300)]
    [InlineData("HBW10/3000 300", HardnessScale.Brinell, 300, 300, 300)]
    public void Hardness_is_read_as_drawings_write_it(string text, HardnessScale scale, double nominal, double least, double greatest)
    {
        Assert.True(Hardness.TryParse(text, out var hardness, out var error), $"`{text}`: {error}");

        Assert.Equal(new(scale, nominal, least, greatest), hardness);
    }

    // Each row: the text, what is wrong with it, the piece of the text that the complaint points at ("" for a gap), where, and the hint.
    [Theory]
    [InlineData("", NotationErrorKind.NotANumber, 0, "", "58..62 HRC")]
    [InlineData("  ", NotationErrorKind.NotANumber, 0, "  ", "58..62 HRC")]
    [InlineData("60", NotationErrorKind.MissingUnit, 0, "60", "58..62 HRC")]
    [InlineData(" 58..62 ", NotationErrorKind.MissingUnit, 1, "58..62", "58..62 HRC")]
    [InlineData("60 HRA", NotationErrorKind.UnknownUnit, 3, "HRA", "Scales: HRC, HV, HBW.")]
    [InlineData("90 HR15N", NotationErrorKind.UnknownUnit, 3, "HR15N", "Scales: HRC, HV, HBW.")]
    [InlineData("300 HBS", NotationErrorKind.UnknownUnit, 4, "HBS", "Scales: HRC, HV, HBW.")]
    [InlineData("60 mm", NotationErrorKind.UnknownUnit, 3, "mm", "Scales: HRC, HV, HBW.")]
    [InlineData("60 hrc", NotationErrorKind.UnknownUnit, 3, "hrc", "Did you mean HRC?")]
    [InlineData("700 Hv", NotationErrorKind.UnknownUnit, 4, "Hv", "Did you mean HV?")]
    [InlineData("60 HRCC", NotationErrorKind.UnknownUnit, 3, "HRCC", "Scales: HRC, HV, HBW.")]
    [InlineData("58 HRC..700 HV", NotationErrorKind.UnknownUnit, 12, "HV", "State one scale.")]
    [InlineData("80 HRC", NotationErrorKind.OutOfRange, 0, "80", "HV or HBW")]
    [InlineData("19.9 HRC", NotationErrorKind.OutOfRange, 0, "19.9", "HV or HBW")]
    [InlineData("58..72 HRC", NotationErrorKind.OutOfRange, 4, "72", "HV or HBW")]
    [InlineData("69 HRC ±2", NotationErrorKind.OutOfRange, 8, "2", "HV or HBW")]
    [InlineData("75 HRC (58..62)", NotationErrorKind.OutOfRange, 0, "75", "HV or HBW")]
    [InlineData("0 HV", NotationErrorKind.OutOfRange, 0, "0", null)]
    [InlineData("3001 HV", NotationErrorKind.OutOfRange, 0, "3001", null)]
    [InlineData("651 HBW", NotationErrorKind.OutOfRange, 0, "651", null)]
    [InlineData("62..58 HRC", NotationErrorKind.MalformedTolerance, 0, "62..58", "58..62")]
    [InlineData("62-58 HRC", NotationErrorKind.MalformedTolerance, 0, "62-58", "58..62")]
    [InlineData("60 -2 HRC", NotationErrorKind.MalformedTolerance, 0, "60 -2", "60 0/-2")]
    [InlineData("60 HRC (61..58)", NotationErrorKind.MalformedTolerance, 8, "61..58", "58..61")]
    [InlineData("60 -2/+2 HRC", NotationErrorKind.MalformedTolerance, 4, "2/+2", "+2/-2")]
    [InlineData("nan HRC", NotationErrorKind.NotFinite, 0, "nan", null)]
    [InlineData("60 HRC ±inf", NotationErrorKind.NotFinite, 8, "inf", null)]
    [InlineData("∞ HV", NotationErrorKind.NotFinite, 0, "∞", null)]
    [InlineData("58,5 HRC", NotationErrorKind.NotANumber, 2, ",", "58.5")]
    [InlineData("HRC", NotationErrorKind.NotANumber, 3, "", "58..62 HRC")]
    [InlineData("58.. HRC", NotationErrorKind.NotANumber, 4, "", "58..62 HRC")]
    [InlineData("..62 HRC", NotationErrorKind.NotANumber, 0, "..", "58..62 HRC")]
    [InlineData("60 HRC ±", NotationErrorKind.NotANumber, 8, "", "58..62 HRC")]
    [InlineData("60 HRC ±-2", NotationErrorKind.NotANumber, 8, "-", "58..62 HRC")]
    [InlineData("60 HRC 5", NotationErrorKind.NotANumber, 7, "5", "58..62 HRC")]
    [InlineData("700 HV 750", NotationErrorKind.NotANumber, 7, "750", "58..62 HRC")]
    [InlineData("700 750 HV", NotationErrorKind.NotANumber, 4, "750", "58..62 HRC")]
    [InlineData("60 HRC 2/-2", NotationErrorKind.NotANumber, 7, "2", "58..62 HRC")]
    [InlineData("60 HRC H7", NotationErrorKind.UnknownUnit, 7, "H7", "Scales: HRC, HV, HBW.")]
    [InlineData("58..62..64 HRC", NotationErrorKind.NotANumber, 6, "..", "58..62 HRC")]
    [InlineData("(58..62 HRC", NotationErrorKind.NotANumber, 7, "", "58..62 HRC")]
    [InlineData("58..62) HRC", NotationErrorKind.NotANumber, 6, ")", "58..62 HRC")]
    [InlineData("60 HRC (58)", NotationErrorKind.NotANumber, 10, ")", "58..62 HRC")]
    [InlineData("58..HRC 62", NotationErrorKind.NotANumber, 4, "", "58..62 HRC")]
    [InlineData("-60 HRC", NotationErrorKind.NotANumber, 0, "-", "58..62 HRC")]
    [InlineData("min 58 HRC", NotationErrorKind.NotANumber, 0, "min", "two ends")]
    [InlineData("58 HRC min.", NotationErrorKind.NotANumber, 7, "min", "two ends")]
    [InlineData("≥58 HRC", NotationErrorKind.NotANumber, 0, "≥", "two ends")]
    [InlineData("58+ HRC", NotationErrorKind.NotANumber, 3, "", "58..62 HRC")]
    [InlineData("60 HRC #", NotationErrorKind.NotANumber, 7, "#", "58..62 HRC")]
    [InlineData("60 😀 HRC", NotationErrorKind.NotANumber, 3, "😀", "58..62 HRC")]
    [InlineData("６０ HRC", NotationErrorKind.NotANumber, 0, "６", "58..62 HRC")]
    [InlineData("1 +1 +1 +1 +1 +1 +1 +1 +1 +1 HV", NotationErrorKind.NotANumber, 24, "1", "58..62 HRC")]
    public void What_is_no_hardness_is_told_where_and_what_instead(string text, NotationErrorKind kind, int start, string piece, string? hint)
    {
        Assert.False(Hardness.TryParse(text, out var hardness, out var error), $"`{text}` was read as {hardness}");

        Assert.Equal((kind, start, piece), (error.Kind, error.Start, text.Substring(error.Start, error.Length)));
        if (hint is null) Assert.Null(error.Hint);
        else Assert.Contains(hint, error.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void An_end_beyond_the_scale_is_told_with_the_range() => Assert.Equal(
        "71 HRC is beyond the scale, which goes from 20 to 70.", Error("69 ±2 HRC").Message);

    [Fact]
    public void What_an_error_tells_to_write_is_read()
    {
        foreach (var text in new[] { "62..58 HRC", "60 -2 HRC", "60 -2/+2 HRC", "min 58 HRC" })
        {
            var hint = Error(text).Hint!;
            var instead = hint[(hint.LastIndexOf(": ", StringComparison.Ordinal) + 2)..].TrimEnd('.').Replace("write ", "", StringComparison.Ordinal);
            Assert.True(Hardness.TryParse(instead.EndsWith('C') ? instead : instead + " HRC", out _, out var error), $"{hint} {error}");
        }
    }

    [Fact]
    public void What_is_written_out_reads_back_the_same() =>
        Gen.Select(Gen.OneOf(Enum.GetValues<HardnessScale>()), Gen.Double.Unit, Gen.Double.Unit, Gen.Double.Unit, Gen.Int[0, 3]).Sample(
            (scale, a, b, c, form) =>
            {
                var (lowest, highest) = Hardness.RangeOf(scale);
                var ends = new[] { a, b, c }.Select(part => lowest + (part * (highest - lowest))).Order().ToArray();

                // A single value, a window about its middle, a nominal within, and a nominal at an end.
                var hardness = form switch
                {
                    0 => new Hardness(scale, ends[0], ends[0], ends[0]),
                    1 => new Hardness(scale, (ends[0] + ends[2]) / 2, ends[0], ends[2]),
                    2 => new Hardness(scale, ends[1], ends[0], ends[2]),
                    _ => new Hardness(scale, ends[0], ends[0], ends[2]),
                };

                Assert.True(Hardness.TryParse(hardness.ToString(), out var read, out var error), $"{hardness}: {error}");
                Assert.Equal(hardness, read);
            },
            iter: 2_000);

    // The window of a drawing worked out in decimal arithmetic, whatever binary numbers make of it.
    [Fact]
    public void Deviations_give_the_ends_of_the_paper() => Gen.Select(Gen.Int[300, 600], Gen.Int[0, 99], Gen.Int[0, 99]).Sample(
        (tenths, up, down) =>
        {
            var nominal = tenths / 10m;
            var text = FormattableString.Invariant($"{nominal} +{up / 10m}/-{down / 10m} HRC");

            Assert.True(Hardness.TryParse(text, out var read, out var error), $"{text}: {error}");
            Assert.Equal(((double)(nominal - (down / 10m)), (double)(nominal + (up / 10m))), (read.Min, read.Max));
        },
        iter: 2_000);

    [Fact]
    public void Any_text_is_read_or_refused_at_a_place_within_it() => Gen
        .OneOf(Gen.String, Gen.OneOf("0123456789..+-−±/()HRVBCWc ,…–to\0\uD800\uFFFF٢".ToCharArray()).Array[0, 30].Select(letters => new string(letters)))
        .Sample(Answers, iter: 5_000);

    [Fact]
    public void Pieces_of_real_notation_in_any_order_are_read_or_refused() => Gen
        .OneOf("60", "58", "700", "0.5", " ", " HRC", "HRC", " HV", "HV10", " HBW", "±", "+", "-", "/", "(", ")", "..", " to ", "nan", ",", "mm", "min", "2", "0")
        .Array[1, 8].Select(string.Concat).Sample(Answers, iter: 20_000);

    [Fact]
    public void A_megabyte_of_anything_is_refused_quickly()
    {
        const int Million = 1_000_000;
        string[] hostile =
        [
            new('1', Million), new('(', Million), new(' ', Million), new('H', Million), $"{new string('9', Million)} HRC", $"60 HRC{new string(' ', Million)}x",
            $"60 HV{new string('1', Million)}", $"60 HV1{string.Concat(Enumerable.Repeat("/1", Million / 2))}", $"60 ±{new string('9', Million)} HV",
            string.Concat(Enumerable.Repeat("60 HRC ", Million / 7)), string.Concat(Enumerable.Repeat("+1", Million / 2)), $"0.{new string('0', Million)}1 HV",
        ];

        foreach (var text in hostile)
        {
            var clock = Stopwatch.StartNew();
            if (Hardness.TryParse(text, out _, out var error)) continue;

            // Takes milliseconds; anything worse than linear would take minutes. Room for a busy machine.
            Assert.True(clock.ElapsedMilliseconds < 10_000, $"{text[..10]}… took {clock.ElapsedMilliseconds} ms");
            Assert.True(error.Message.Length < 400 && (error.Hint?.Length ?? 0) < 400);
        }
    }

    private static NotationError Error(string text)
    {
        Assert.False(Hardness.TryParse(text, out var hardness, out var error), $"`{text}` was read as {hardness}");
        return error;
    }

    private static void Answers(string text)
    {
        if (Hardness.TryParse(text, out var hardness, out var error))
        {
            var (lowest, highest) = Hardness.RangeOf(hardness.Scale);
            Assert.Null(error);
            Assert.True(lowest <= hardness.Min && hardness.Min <= hardness.Max && hardness.Max <= highest, text);
        }
        else
        {
            Assert.True(error.Start >= 0 && error.Length >= 0 && error.Start + error.Length <= text.Length && error.Message.Length > 0, text);
        }
    }
}
