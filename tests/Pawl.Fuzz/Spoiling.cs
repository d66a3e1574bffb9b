using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Pawl.Analysis;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Text;

namespace Pawl.Fuzz;

/// <summary>
/// Spoils each number of a demo spec step by step. Worse input must not escape: what no longer conforms may conform at no later step
/// of the same way.
/// </summary>
public sealed partial class Spoiling
{
    private static readonly DateOnly Day = new(2026, 1, 15);

    // Each way leads from what is drawn to what nobody draws.
    private static readonly double[][] Ways = [[1.3, 2, 3, 5, 10, 30, 100, 1000], [0.8, 0.5, 0.3, 0.1, 0.03, 0.01, 0.001]];

    private readonly SpecLoader _loader;
    private readonly string _path;
    private readonly Node _spec;
    private readonly List<(string Path, Node Value)> _inputs = [];

    public Spoiling(string repository, string path)
    {
        _path = path;
        _loader = new(repository, Files(repository, "specs/catalogue"), adapterPaths: Files(repository, "specs/adapters"));
        _spec = Node.Of(_loader.Load(path).Merged ?? throw new ArgumentException("The spec is not read.", nameof(path)));
        _spec.Items.RemoveAll(static item => item.Key == "extends");

        // One number of draws is as good as another, and fewer are faster.
        foreach (var draws in _spec.All().Select(static node => node.Find("draws")).OfType<Node>())
            draws.Scalar = "1000";
        Gather(_spec, "");
    }

    /// <summary>How many numbers the spec states.</summary>
    public int Inputs => _inputs.Count;

    /// <summary>What escapes when one input is spoiled, in sentences; none when nothing does.</summary>
    public IEnumerable<string> Spoil(int input)
    {
        var (path, node) = _inputs[input];
        var kept = node.Scalar!;
        try
        {
            foreach (var way in Ways)
            {
                var fallen = "";
                foreach (var factor in way)
                {
                    node.Scalar = Scaled(kept, factor);
                    var wrong = IsWrong();
                    if (!wrong && fallen.Length > 0)
                    {
                        yield return $"{_path}: {path} does not conform at {fallen} and conforms at {node.Scalar}";
                        break;
                    }

                    if (wrong && fallen.Length == 0)
                        fallen = node.Scalar;
                }
            }
        }
        finally
        {
            node.Scalar = kept;
        }
    }

    private void Gather(Node node, string path)
    {
        if (node.Scalar is { } text && HasWorseSide(path) && Number().IsMatch(text.Trim('"')) && double.Parse(Number().Match(text.Trim('"')).Value, CultureInfo.InvariantCulture) != 0)
            _inputs.Add((path, node));
        for (var i = 0; i < node.Items.Count; i++)
            Gather(node.Items[i].Value, node.IsMap ? $"{path}.{node.Items[i].Key}".TrimStart('.') : $"{path}[{i}]");
    }

    /// <summary>Places along the axis, lengths that shift what follows and sheets that go together in packs are better or worse by turns.</summary>
    private static bool HasWorseSide(string path) =>
        !path.EndsWith("_at", StringComparison.Ordinal) && !path.EndsWith(".axial_position", StringComparison.Ordinal)
        && !(path.StartsWith("shafts.", StringComparison.Ordinal) && path.EndsWith(".length", StringComparison.Ordinal))
        && !path.StartsWith("shims.", StringComparison.Ordinal);

    /// <summary>The first number of a text times a factor; whole numbers stay whole.</summary>
    private static string Scaled(string text, double factor) => Number().Replace(
        text,
        match =>
        {
            var scaled = double.Parse(match.Value, CultureInfo.InvariantCulture) * factor;
            return match.Value.Contains('.', StringComparison.Ordinal) || text.Trim('"').Length > match.Length
                ? scaled.ToString("0.######", CultureInfo.InvariantCulture)
                : Math.Round(scaled).ToString("0", CultureInfo.InvariantCulture);
        },
        1);

    /// <summary>Refused, or an error rule fails, or one that applies is not evaluated.</summary>
    private bool IsWrong()
    {
        if (_loader.Load(_path, Encoding.UTF8.GetBytes(_spec.ToString())).Spec is not { } spec)
            return true;
        var judged = Judge.Of(GearboxAnalyser.Analyse(spec), RulePacks.Shipped.Rules!, Day);
        return judged.Findings.Any(static finding => finding.Rule.Severity == Severity.Error && finding.Outcome is Outcome.Fails or Outcome.NotEvaluated);
    }

    private static ImmutableArray<string> Files(string repository, string folder) =>
        [.. Directory.GetFiles(Path.Combine(repository, folder), "*.yaml").Select(path => Path.GetRelativePath(repository, path).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    [GeneratedRegex(@"(?<=^""?)-?[0-9]+(\.[0-9]+)?")]
    private static partial Regex Number();
}
