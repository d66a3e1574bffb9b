using Pawl.Reports.Comparing;
using Pawl.Reports.Records;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Comparing;

/// <summary>A spec of a side, opened: what it was read from, and its judgement when that is asked for.</summary>
/// <param name="File">The file, from the project root.</param>
/// <param name="Identity">Family and variant; null of a base and of what cannot be read.</param>
/// <param name="IsBase">Whether it is a base for others.</param>
/// <param name="FilesRead">What it was read from.</param>
/// <param name="Judge">Its record; judges when called.</param>
/// <param name="Diagnostics">What is wrong with it.</param>
internal sealed record Opened(
    string File, (string Family, string Variant)? Identity, bool IsBase, ImmutableArray<FileRead> FilesRead, Func<ConformanceRecord>? Judge, ImmutableArray<Diagnostic> Diagnostics);

/// <summary>One side of a comparison: specs by the name under which they are paired.</summary>
internal abstract class Side(SideRecord record) : IDisposable
{
    /// <summary>How the outputs name it.</summary>
    public SideRecord Record { get; } = record;

    /// <summary>Put before paths of messages that are not on the disk: <c>main:</c>.</summary>
    public string Prefix { get; init; } = "";

    /// <summary>The names of the specs, in order: paths from the folder that was named, or from the project root.</summary>
    public abstract ImmutableArray<string> Keys { get; }

    /// <summary>What the verdicts rest on besides the files of the specs; sides of which it differs are judged whole.</summary>
    public abstract string Ground { get; }

    /// <summary>Reads one; safe for use by several threads.</summary>
    public abstract Opened Open(string key);

    /// <summary>Whether a spec would be read from the same bytes here; false where that is not known.</summary>
    /// <param name="key">The spec.</param>
    /// <param name="other">What it was read from on the other side.</param>
    /// <param name="otherFile">Its file on the other side.</param>
    public abstract bool HasSame(string key, ImmutableArray<FileRead> other, string otherFile);

    public virtual void Dispose() => GC.SuppressFinalize(this);
}
