using System.Security.Cryptography;
using System.Text;
using Pawl.Reports.Records;

namespace Pawl.Reports.Machine;

/// <summary>What stays of a finding when lines move and numbers change: spec, rule, subject, and the key that governs.</summary>
internal sealed class Fingerprint
{
    /// <summary>Name and version; another way of taking it gets another version.</summary>
    public const string Name = "pawlFinding/v1";

    private readonly Dictionary<(string, int, int), string> _keys = [];
    private readonly string _spec;

    public Fingerprint(ConformanceRecord record)
    {
        _spec = record.Identity.File;
        foreach (var input in record.Inputs)
            _keys.TryAdd((input.Place.File, input.Place.Line, input.Place.Column), input.Path);
    }

    /// <summary>The key that is written at the place of a finding; empty where the place is a section.</summary>
    public string Key(FindingRecord finding) =>
        _keys.GetValueOrDefault((finding.Place.File, finding.Place.Line, finding.Place.Column), "");

    /// <summary>32 hexadecimal digits.</summary>
    public string Of(FindingRecord finding)
    {
        var text = string.Join('\n', _spec, finding.Rule, finding.Subject, Key(finding));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)).AsSpan(0, 16));
    }
}
