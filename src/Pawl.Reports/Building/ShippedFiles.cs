using System.Collections.Concurrent;
using System.Security.Cryptography;
using Pawl.Mechanics.Tables;
using Pawl.Reports.Markdown;
using Pawl.Reports.Records;

namespace Pawl.Reports.Building;

/// <summary>Hashes of what is inside the tool: standard tables and templates.</summary>
internal static class ShippedFiles
{
    private static readonly ConcurrentDictionary<string, FileRecord> Tables = new(StringComparer.Ordinal);

    private static readonly Lazy<ImmutableArray<FileRecord>> AllTemplates = new(static () =>
        [.. Templates.Names.Select(static name => Hashed("templates/" + name, Templates.Open(name)))]);

    /// <summary>The tables of those ids, then every template.</summary>
    public static ImmutableArray<FileRecord> Of(ImmutableArray<string> tables) =>
        [.. tables.Where(StandardTable.Ids.Contains).Select(static id => Tables.GetOrAdd(id, static each => Hashed($"tables/{each}.csv", StandardTable.Open(each)))), .. AllTemplates.Value];

    /// <summary>The hash that a table or template has in this build; null when it has none of that path.</summary>
    public static string? HashOf(string path)
    {
        foreach (var template in AllTemplates.Value)
        {
            if (template.Path == path)
                return template.Sha256;
        }

        const string Table = "shipped:tables/";
        const string Ending = ".csv";
        return path.StartsWith(Table, StringComparison.Ordinal) && path.EndsWith(Ending, StringComparison.Ordinal)
            && path[Table.Length..^Ending.Length] is var id && StandardTable.Ids.Contains(id)
            ? Of([id])[0].Sha256
            : null;
    }

    private static FileRecord Hashed(string path, Stream stream)
    {
        using (stream)
            return new() { Path = "shipped:" + path, Sha256 = Convert.ToHexStringLower(SHA256.HashData(stream)) };
    }
}
