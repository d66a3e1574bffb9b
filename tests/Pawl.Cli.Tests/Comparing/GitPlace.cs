using System.Globalization;
using LibGit2Sharp;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Tests.Comparing;

/// <summary>A git repository of its own with a family of the demo range in it, its catalogues and its adapters.</summary>
internal sealed class GitPlace : IDisposable
{
    private static readonly Signature Somebody = new("Somebody", "somebody@example.org", new DateTimeOffset(2026, 1, 15, 12, 0, 0, TimeSpan.Zero));
    private readonly Repository _repository;
    private int _judged;

    public GitPlace(params string[] families)
    {
        Folder = Directory.CreateTempSubdirectory("pawl-git-").FullName;
        Repository.Init(Folder);
        _repository = new(Folder);
        _repository.Refs.UpdateTarget("HEAD", "refs/heads/main");
        foreach (var folder in (string[])[.. families, "catalogue", "adapters"])
        {
            foreach (var file in Directory.GetFiles(Path.Combine(RepositoryTests.Root, "specs", folder)))
                Write($"specs/{folder}/{Path.GetFileName(file)}", File.ReadAllText(file));
        }

        Write("pawl.yaml", File.ReadAllText(Path.Combine(RepositoryTests.Root, "pawl.yaml")));
        Commit("The family as it is");
    }

    public string Folder { get; }

    public Repository Git => _repository;

    /// <summary>How many specs were judged so far.</summary>
    public int Judged => _judged;

    public void Write(string path, string text)
    {
        var full = Path.Combine(Folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
    }

    /// <summary>Replaces the first occurrence of a text, which must be there.</summary>
    public void Edit(string path, string old, string @new)
    {
        var text = File.ReadAllText(Path.Combine(Folder, path));
        var at = text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{path} holds no `{old}`.");
        Write(path, string.Concat(text.AsSpan(0, at), @new, text.AsSpan(at + old.Length)));
    }

    public string Commit(string message)
    {
        LibGit2Sharp.Commands.Stage(_repository, "*");
        return _repository.Commit(message, Somebody, Somebody).Sha;
    }

    public void Branch(string name) => LibGit2Sharp.Commands.Checkout(_repository, _repository.CreateBranch(name));

    public Ran Run(params string[] arguments) => RunIn("", arguments);

    public Ran RunIn(string folder, params string[] arguments)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using var error = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var shipped = Engine.Shipped;
        var code = PawlCommand.Run(arguments, new()
        {
            Out = output,
            Error = error,
            Input = () => null,
            Clock = TimeProvider.System,
            Folder = Path.Combine(Folder, folder),
            Variable = static name => name == "SOURCE_DATE_EPOCH" ? "1768478400" : null,
            Engine = shipped with
            {
                Judge = (analysis, rules, day) =>
                {
                    Interlocked.Increment(ref _judged);
                    return shipped.Judge(analysis, rules, day);
                },
            },
        });
        return new(code, output.ToString(), error.ToString());
    }

    /// <summary>Every file below the folder with its hash, those of git too.</summary>
    public Dictionary<string, string> Everything() => Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
        .ToDictionary(static file => file, static file => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file))));

    public void Dispose()
    {
        _repository.Dispose();
        foreach (var file in new DirectoryInfo(Folder).EnumerateFiles("*", SearchOption.AllDirectories))
            file.Attributes = FileAttributes.Normal;
        Directory.Delete(Folder, recursive: true);
    }
}
