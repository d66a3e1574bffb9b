namespace Pawl.Mechanics.Tables;

/// <summary>A published table that ships inside the tool.</summary>
/// <param name="Id">The file's name without its ending, such as <c>iso286-standard-tolerances</c>.</param>
/// <param name="Title">What the table gives.</param>
/// <param name="Source">The standard it is from.</param>
/// <param name="Certainty">How sure its values are, and how they were checked.</param>
/// <param name="Text">The whole file, head and all.</param>
public sealed record StandardTable(string Id, string Title, string Source, string Certainty, string Text)
{
    private const string Prefix = "tables/";
    private const string Ending = ".csv";

    /// <summary>The ids of all tables, in order.</summary>
    public static ImmutableArray<string> Ids
    {
        get
        {
            var ids = ImmutableArray.CreateBuilder<string>();
            foreach (var name in typeof(StandardTable).Assembly.GetManifestResourceNames())
            {
                if (name.StartsWith(Prefix, StringComparison.Ordinal) && name.EndsWith(Ending, StringComparison.Ordinal))
                {
                    ids.Add(name[Prefix.Length..^Ending.Length]);
                }
            }

            ids.Sort(StringComparer.Ordinal);
            return ids.ToImmutable();
        }
    }

    /// <summary>Reads one table. Callers that need it often keep it.</summary>
    public static StandardTable Read(string id)
    {
        using var reader = new StreamReader(Open(id));
        var text = reader.ReadToEnd();
        return new StandardTable(id, Head(text, "title"), Head(text, "source"), Head(text, "certainty"), text);
    }

    /// <summary>The bytes of one table.</summary>
    public static Stream Open(string id) => typeof(StandardTable).Assembly.GetManifestResourceStream(Prefix + id + Ending)
        ?? throw Guard.Because($"there is no table `{id}`");

    /// <summary>The rows below the head and the line of column names.</summary>
    internal TableReader Rows() => new(Text);

    // A table without its source is a defect of ours, not of the user's.
    private static string Head(string text, string key)
    {
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (!line.StartsWith("# "))
            {
                break;
            }

            var entry = line[2..];
            if (entry.StartsWith(key, StringComparison.Ordinal) && entry[key.Length..].StartsWith(": "))
            {
                return entry[(key.Length + 2)..].Trim().ToString();
            }
        }

        throw new InvalidOperationException($"A table lacks its line `# {key}:`.");
    }
}
