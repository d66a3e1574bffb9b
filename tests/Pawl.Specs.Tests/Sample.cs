using System.Text;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

/// <summary>The sound spec that tests start from, and ways to break it.</summary>
internal static class Sample
{
    /// <summary>The steels inside the tool, under the path that reports give them.</summary>
    public const string ShippedSteels = "shipped:catalogue/steels.yaml";

    public static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "Sample");

    public static string Text { get; } = Read("r180.yaml");

    public static SpecLoader Loader() => new(Folder, ["catalogue/materials.yaml", "catalogue/lubricants.yaml"], validate: true);

    public static string Read(string file) => File.ReadAllText(Path.Combine(Folder, file));

    /// <summary>Reads the sample with one piece of its text replaced.</summary>
    public static SpecLoad With(string old, string @new)
    {
        var at = Text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0, $"The sample does not hold: {old}");
        return Load(Text[..at] + @new + Text[(at + old.Length)..]);
    }

    public static SpecLoad Load(string text) => Load(Encoding.UTF8.GetBytes(text));

    public static SpecLoad Load(byte[] content) => Loader().Load("r180.yaml", content);

    /// <summary>Line and column of a piece of a text, counted by hand.</summary>
    public static (int Line, int Column) Place(string text, string piece)
    {
        var at = text.IndexOf(piece, StringComparison.Ordinal);
        Assert.True(at >= 0, $"The text does not hold: {piece}");
        var before = text[..at];
        return (before.Count(c => c == '\n') + 1, at - before.LastIndexOf('\n'));
    }

    /// <summary>The one complaint, at the place where <paramref name="at"/> stands in the text.</summary>
    public static Diagnostic Only(SpecLoad load, string code, string text, string at)
    {
        var diagnostic = Assert.Single(load.Diagnostics);
        Assert.Equal(code, diagnostic.Code);
        Assert.Equal(Place(text, at), (diagnostic.Span.Start.Line, diagnostic.Span.Start.Column));
        Assert.Null(load.Spec);
        return diagnostic;
    }

    /// <summary>The repository's root.</summary>
    public static string Repository()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Pawl.slnx")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests run outside the repository.");
        return folder;
    }
}
