using System.Runtime.CompilerServices;
using LibGit2Sharp;

namespace Pawl.Cli.Comparing;

/// <summary>A revision as found.</summary>
/// <param name="Files">Its files.</param>
/// <param name="Commit">The commit in full; empty when the name is that of a bare tree.</param>
/// <param name="Top">The folder that stands for the top of the tree.</param>
internal sealed record Revision(GitTree Files, string Commit, string Top);

/// <summary>Finds revisions in the repository around the working folder.</summary>
internal static class Revisions
{
    /// <summary>The revision, or null with what is wrong and what to do about it.</summary>
    /// <param name="folder">The working folder.</param>
    /// <param name="name">As git writes it: <c>main</c>, <c>v1.2</c>, <c>HEAD~3</c>, a hash.</param>
    /// <param name="problem">What is wrong.</param>
    /// <param name="hint">What to do.</param>
    public static Revision? Find(string folder, string name, out string problem, out string hint) => Find(folder, name, Open, out problem, out hint);

    /// <summary>Opens a repository; a test passes one whose native library is missing.</summary>
    internal delegate Revision? Opener(string folder, string name, out string problem, out string hint);

    internal static Revision? Find(string folder, string name, Opener open, out string problem, out string hint)
    {
        // Its calls marshal strings by code that is made while it runs, which a native program cannot do.
        if (!RuntimeFeature.IsDynamicCodeSupported)
        {
            problem = "The native program reads no git revisions.";
            hint = "Use the .NET tool, or check both revisions out and compare the folders.";
            return null;
        }

        try
        {
            return open(folder, name, out problem, out hint);
        }
        catch (Exception missing) when (missing is DllNotFoundException or TypeInitializationException or EntryPointNotFoundException or BadImageFormatException)
        {
            problem = "Git revisions cannot be read: the native library of LibGit2Sharp does not load on this system.";
            hint = "It ships in `runtimes` beside the tool; systems that it does not cover compare folders: `git worktree add ../base main`, then `pawl compare ../base .`.";
            return null;
        }
        catch (LibGit2SharpException refused)
        {
            problem = $"The repository cannot be read: {refused.Message.TrimEnd('.')}.";
            hint = "`git status` in the same folder tells more; a folder of another user needs `git config --global --add safe.directory`.";
            return null;
        }
    }

    private static Revision? Open(string folder, string name, out string problem, out string hint)
    {
        problem = hint = "";
        if (Repository.Discover(folder) is not { } place)
        {
            problem = $"`{name}` is no file and no folder, and the working folder is in no git repository.";
            hint = "Name files or folders, or run it inside the repository.";
            return null;
        }

        var repository = new Repository(place);
        if (Tree(repository, name, out var commit) is { } tree)
        {
            var top = repository.Info.IsBare ? folder : TopOf(folder) ?? repository.Info.WorkingDirectory;
            return new(new(repository, tree, top), commit, top);
        }

        problem = $"`{name}` is no file, no folder and no revision of the repository.";
        hint = Tree(repository, "origin/" + name, out _) is not null ? $"Did you mean `origin/{name}`?"
            : repository.Info.IsShallow ? "The clone is shallow: fetch the revision, or clone with the whole history."
            : "Revisions are written as git writes them: main, v1.2, HEAD~3, a hash.";
        repository.Dispose();
        return null;
    }

    private static Tree? Tree(Repository repository, string name, out string commit)
    {
        commit = "";
        GitObject? found;
        try
        {
            found = name.Length == 0 ? null : repository.Lookup(name);
        }
        catch (Exception unreadable) when (unreadable is InvalidSpecificationException or AmbiguousSpecificationException or NotFoundException)
        {
            return null;
        }

        while (found is TagAnnotation tag)
            found = tag.Target;
        if (found is Commit at)
            commit = at.Sha;
        return found as Tree ?? (found as Commit)?.Tree;
    }

    // As the user wrote it: the library gives the path with links replaced, which the working folder need not begin with.
    private static string? TopOf(string folder)
    {
        for (var at = folder; at is not null; at = Path.GetDirectoryName(at))
        {
            var git = Path.Combine(at, ".git");
            if (Directory.Exists(git) || File.Exists(git))
                return at;
        }

        return null;
    }
}
