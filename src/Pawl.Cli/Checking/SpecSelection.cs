using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Cli.Checking;

/// <summary>The specs that the arguments or pawl.yaml mean, in ordinal order of their paths, each once.</summary>
internal sealed record SpecSelection(ImmutableArray<SpecInput> Specs, ImmutableArray<Diagnostic> Problems)
{
    public static SpecSelection Of(Settings settings, CheckRequest request, CommandContext context)
    {
        var finder = new Finder(settings.Root.Value, context);
        if (settings.FromProject)
        {
            foreach (var pattern in settings.Specs.Value)
                finder.Pattern(pattern, settings.Root.Value, settings.Exclude.Value);
        }
        else
        {
            foreach (var path in settings.Specs.Value)
                finder.Argument(path, request.StdinPath);
        }

        return finder.Finish(settings);
    }

    private sealed class Finder(string root, CommandContext context)
    {
        private readonly Dictionary<string, SpecInput> _found = new(StringComparer.Ordinal);
        private readonly List<Diagnostic> _problems = [];
        private bool _inputIsRead;

        public void Argument(string path, string? stdinPath)
        {
            if (path.Length == 0)
                Problem(CliCodes.NoSpec, "pawl", "An empty argument names no spec.", "Is a variable of the shell unset? A single point is the working folder.");
            else if (path == "-")
                StandardInput(stdinPath);
            else if (FilePatterns.IsPattern(path) && !context.Files.IsFile(context.Absolute(path)))
                Pattern(path, context.Folder, []);
            else if (context.Files.IsFolder(context.Absolute(path)))
                Folder(path);
            else if (context.Files.IsFile(context.Absolute(path)))
                Add(context.Absolute(path), named: true);
            else
                Problem(CliCodes.NoSpec, path, "There is no such file or folder.", "Paths count from the working folder.");
        }

        public void Pattern(string pattern, string from, ImmutableArray<string> exclude)
        {
            try
            {
                var files = FilePatterns.Files(context.Files, from, pattern, exclude);
                foreach (var file in files)
                    Add(file, named: false);
                if (files.Length == 0)
                    Problem(CliCodes.NoSpec, pattern, "The pattern matches no file.", "A pattern that matches nothing is never a pass: mend it or take it out.");
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                Problem(CliCodes.CannotRead, pattern, problem.Message);
            }
        }

        public SpecSelection Finish(Settings settings)
        {
            // Catalogues, adapters and rule packs are YAML too and often lie beside the specs.
            foreach (var catalogue in settings.Catalogue.Value)
                Drop(catalogue);
            foreach (var adapter in settings.Adapters.Value)
                Drop(adapter);
            if (settings.Baseline.Value is { } baseline)
                Drop(baseline);
            Drop(ProjectFile.FileName);

            if (_found.Count == 0 && _problems.Count == 0)
            {
                var where = settings.FromProject ? settings.ProjectFile is null ? "no pawl.yaml was found" : "pawl.yaml names none" : "none of the arguments holds one";
                _problems.Add(new(
                    CliCodes.NoSpec, Severity.Error, new("pawl", default, default), $"There is no spec to judge: {where}.",
                    "Name a spec or a folder, or list them under `specs:` in pawl.yaml."));
            }

            return new(
                [.. _found.Values.OrderBy(s => s.Display, StringComparer.Ordinal)],
                [.. _problems]);
        }

        private void Drop(string path)
        {
            if (_found.TryGetValue(path, out var spec) && !spec.Named)
                _found.Remove(path);
        }

        private void StandardInput(string? standIn)
        {
            // `- -` is one standard input, and it can be read once.
            if (_inputIsRead)
                return;

            _inputIsRead = true;
            if (AtMost(YamlReader.MostBytes + 1) is not { } bytes)
                return;

            var display = "-";
            if (standIn is not null)
            {
                display = SettingsResolver.RelativeTo(root, context.Absolute(standIn));
                if (IsOutside(display))
                {
                    Problem(CliCodes.OutsideProject, standIn, $"It lies outside the project root {root}.");
                    return;
                }
            }

            _found[display] = new SpecInput(display, bytes, Named: true);
        }

        // An endless stream would fill the memory; the reader refuses what is longer than it reads.
        private byte[]? AtMost(int most)
        {
            try
            {
                using var input = context.Input() ?? throw new IOException("it is closed");
                using var bytes = new MemoryStream();
                var buffer = new byte[64 * 1024];
                while (bytes.Length < most && input.Read(buffer, 0, (int)Math.Min(buffer.Length, most - bytes.Length)) is > 0 and var count)
                    bytes.Write(buffer, 0, count);
                return bytes.ToArray();
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                Problem(CliCodes.CannotRead, "-", $"Standard input cannot be read: {problem.Message.TrimEnd('.')}.", "Pipe a spec into it, or name a file.");
                return null;
            }
        }

        private void Folder(string path)
        {
            var before = _found.Count;
            var problems = _problems.Count;
            Walk(context.Absolute(path));
            if (_found.Count == before && _problems.Count == problems)
                Problem(CliCodes.NoSpec, path, "The folder holds no YAML file.", "Name the folder that holds the specs.");
        }

        private void Walk(string folder)
        {
            try
            {
                foreach (var entry in context.Files.Entries(folder))
                {
                    if (entry.Name.StartsWith('.'))
                        continue;
                    if (entry.IsFolder)
                    {
                        // A link to a folder may lead in a circle or out of the project.
                        if (!entry.IsLink)
                            Walk(Path.Combine(folder, entry.Name));
                    }
                    else if (Path.GetExtension(entry.Name) is ".yaml" or ".yml")
                    {
                        Add(Path.Combine(folder, entry.Name), named: false);
                    }
                }
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                Problem(CliCodes.CannotRead, SettingsResolver.RelativeTo(root, folder), problem.Message);
            }
        }

        private void Add(string absolute, bool named)
        {
            var display = SettingsResolver.RelativeTo(root, absolute);
            if (IsOutside(display))
                Problem(CliCodes.OutsideProject, absolute, $"It lies outside the project root {root}.", "Give the root with --root.");
            else if (named || !_found.ContainsKey(display))
                _found[display] = new SpecInput(display, Bytes: null, named);
        }

        private static bool IsOutside(string relative) =>
            relative == ".." || relative.StartsWith("../", StringComparison.Ordinal) || Path.IsPathRooted(relative);

        private void Problem(string code, string path, string message, string? hint = null) =>
            _problems.Add(new(code, Severity.Error, new(path, default, default), message, hint));
    }
}
