using System.Text;
using CsCheck;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>Whatever is fed in, the answer is a spec or an error; never an exception.</summary>
public sealed class FuzzTests
{
    private static readonly SpecLoader Loader = Sample.Loader();

    private static readonly string[] Pieces =
    [
        "a", "pawl", ": ", ":", "\n", "\n  ", "\n    ", "- ", "[", "]", "{", "}", ", ", "'", "\"", "|\n", ">-\n", "#", "&x ", "*x", "!!str ", "!", "%YAML 1.2\n", "---\n", "...\n",
        "? ", "<<", "~", "null", "1", "2.5 mm", "20°", "\t", "\r\n", "\\", "\\x41", "\uFEFF", "\u2028", "😀", "`", "@", "%", "gearbox", "variant", "train", "gears", "teeth", "extends", "r180.yaml",
    ];

    private static void Answers(SpecLoad load)
    {
        var failed = load.Diagnostics.Any(diagnostic => diagnostic.Severity == Severity.Error);
        Assert.True(load.Spec is not null ? !failed : failed || load.IsBase, "Neither a spec nor an error.");
        Assert.All(load.Diagnostics, diagnostic =>
        {
            Assert.True(diagnostic.Span.Start is { Line: > 0, Column: > 0 }, diagnostic.ToString());
            Assert.NotNull(DiagnosticCatalogue.Find(diagnostic.Code));
            Assert.DoesNotContain('\n', diagnostic.Message);
        });
    }

    [Fact]
    public void Random_bytes() => Gen.Byte.Array[0, 200].Sample(bytes => Answers(Loader.Load("f.yaml", bytes)), iter: 3000);

    [Fact]
    public void Random_text() => Gen.String.Sample(text => Answers(Loader.Load("f.yaml", Encoding.UTF8.GetBytes(text))), iter: 3000);

    [Fact]
    public void Random_pieces_of_YAML() => Gen.Int[0, Pieces.Length - 1].Array[0, 40].Sample(
        choice => Answers(Loader.Load("f.yaml", Encoding.UTF8.GetBytes(string.Concat(choice.Select(i => Pieces[i]))))), iter: 10_000);

    [Fact]
    public void The_sample_with_pieces_cut_and_put_in() =>
        Gen.Select(Gen.Int[0, Sample.Text.Length], Gen.Int[0, 12], Gen.Int[0, Pieces.Length - 1]).Array[1, 4].Sample(
            cuts =>
            {
                var text = Sample.Text;
                foreach (var (at, length, piece) in cuts)
                {
                    var from = Math.Min(at, text.Length);
                    text = text[..from] + Pieces[piece] + text[Math.Min(text.Length, from + length)..];
                }

                Answers(Loader.Load("r180.yaml", Encoding.UTF8.GetBytes(text)));
            },
            iter: 3000);

    [Fact]
    public void The_sample_with_bytes_flipped() =>
        Gen.Select(Gen.Int[0, 1000], Gen.Byte).Array[1, 3].Sample(
            flips =>
            {
                var bytes = Encoding.UTF8.GetBytes(Sample.Text);
                foreach (var (at, value) in flips)
                    bytes[at] ^= value;
                Answers(Loader.Load("r180.yaml", bytes));
            },
            iter: 3000);
}
