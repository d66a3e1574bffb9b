using System.Globalization;
using System.Text;

namespace Pawl.Specs.Tests.Files;

/// <summary>A project in a folder of its own, removed afterwards.</summary>
internal sealed class Project : IDisposable
{
    public Project() => Directory.CreateDirectory(Root);

    public string Outer { get; } = Path.Combine(Path.GetTempPath(), "pawl-specs-" + Guid.NewGuid().ToString("N", CultureInfo.InvariantCulture));

    public string Root => Path.Combine(Outer, "project");

    public string At(string path) => Path.Combine(Root, path);

    public Project With(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(At(path))!);
        File.WriteAllText(At(path), text, new UTF8Encoding(false));
        return this;
    }

    public SpecLoader Loader(params string[] catalogues) => new(Root, [.. catalogues]);

    public void Dispose() => Directory.Delete(Outer, recursive: true);
}
