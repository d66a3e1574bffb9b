using Pawl.Specs.Generator;

namespace Pawl.Specs.Tests.Reading;

public sealed class GeneratedReaderTests
{
    // Where this fails: dotnet run --project src/Pawl.Specs.Generator
    [Fact]
    public void The_readers_in_the_tree_are_what_the_model_says()
    {
        var folder = Path.Combine(Sample.Repository(), ReaderGenerator.Folder);
        var kept = Directory.GetFiles(folder).ToDictionary(path => Path.GetFileName(path), path => File.ReadAllText(path).ReplaceLineEndings("\n"));
        var now = ReaderGenerator.Generate();

        Assert.Equal(now.Keys, kept.Keys.Order(StringComparer.Ordinal));
        Assert.Empty(now.Where(file => kept[file.Key] != file.Value).Select(file => file.Key));
    }
}
