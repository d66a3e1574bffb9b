using System.Text;

namespace Pawl.Reports.Output;

/// <summary>Names of report files, made of the paths of the specs and of nothing that stands inside them.</summary>
public static class ReportNames
{
    /// <summary>What is added to the name of a report for its page of derivations; no name ends in it.</summary>
    public const string Derivations = ".derivations";

    private const string SpecsFolder = "specs";

    /// <summary>
    /// A name for each spec, in order, without an ending: <c>specs/tarn-180/r180.yaml</c> becomes <c>tarn-180/r180</c>.
    /// Names stay inside the output folder, suit every file system, and differ in more than case.
    /// </summary>
    /// <param name="specFiles">Paths from the project root with forward slashes; <c>-</c> is standard input.</param>
    public static ImmutableArray<string> Of(IEnumerable<string> specFiles)
    {
        ArgumentNullException.ThrowIfNull(specFiles);
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { IndexName };
        var names = ImmutableArray.CreateBuilder<string>();
        foreach (var file in specFiles)
        {
            var plain = Plain(file);
            var name = plain;
            for (var i = 2; !taken.Add(name); i++)
                name = $"{plain}-{Phrase.Whole(i)}";
            names.Add(name);
        }

        return names.DrainToImmutable();
    }

    /// <summary>The name of the page about all specs.</summary>
    public const string IndexName = "index";

    private static string Plain(string file)
    {
        if (file == "-")
            return "stdin";

        List<string> parts = [];
        foreach (var part in file.Replace('\\', '/').Split('/'))
        {
            if (part is not ("" or "." or ".."))
                parts.Add(part);
        }

        if (parts.Count > 1 && parts[0] == SpecsFolder)
            parts.RemoveAt(0);
        if (parts.Count == 0)
            return "spec";

        parts[^1] = WithoutEnding(parts[^1]);
        if (parts[^1].EndsWith(Derivations, StringComparison.OrdinalIgnoreCase))
            parts[^1] += "_";
        for (var i = 0; i < parts.Count; i++)
            parts[i] = Portable(parts[i]);
        return string.Join('/', parts);
    }

    private static string WithoutEnding(string name)
    {
        foreach (var ending in (ReadOnlySpan<string>)[".yaml", ".yml"])
        {
            if (name.Length > ending.Length && name.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
                return name[..^ending.Length];
        }

        return name;
    }

    /// <summary>A name that every file system takes: no reserved characters or device names, no point or space at the end.</summary>
    private static string Portable(string part)
    {
        var plain = new StringBuilder(part.Length);
        foreach (var c in part)
            plain.Append(char.IsControl(c) || char.IsSurrogate(c) || c is '<' or '>' or ':' or '"' or '|' or '?' or '*' ? '_' : c);
        while (plain.Length > 0 && plain[^1] is '.' or ' ')
            plain[^1] = '_';
        var name = plain.ToString();
        var stem = name.Split('.')[0];
        return IsDevice(stem) ? "_" + name : name;
    }

    private static bool IsDevice(string stem) =>
        stem.ToUpperInvariant() is "CON" or "PRN" or "AUX" or "NUL"
        || (stem.Length == 4 && stem[3] is >= '0' and <= '9' && stem[..3].ToUpperInvariant() is "COM" or "LPT");
}
