using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Pawl.Analysis;
using Pawl.Analysis.Core;
using Pawl.Cli;
using Pawl.Reports;
using Pawl.Reports.Html;
using Pawl.Reports.Markdown;
using Pawl.Rules;
using Pawl.Specs;

namespace Pawl.Fuzz;

/// <summary>What is spoiled.</summary>
public enum FuzzKind
{
    Spec,
    Pack,
    Catalogue,
    Project,
    Baseline,
    Record,
}

/// <summary>What became of one spoiled text.</summary>
/// <param name="Text">The text.</param>
/// <param name="Judged">Whether it got as far as a record.</param>
/// <param name="Cause">Exception and top frame of our own, or what is wrong with the answer; null when all is well.</param>
/// <param name="Detail">The whole of it.</param>
public sealed record Execution(string Text, bool Judged, string? Cause, string Detail);

/// <summary>Runs the whole pipeline on spoiled files that start from the shipped ones. Number and seed settle an execution.</summary>
public sealed partial class Fuzzing : IDisposable
{
    private static readonly DateOnly Day = new(2026, 1, 15);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);
    private static readonly string[] Kept = ["pawl", "gearbox", "duty", "train"];

    // Section, and what its entries name.
    private static readonly (string Section, string Needed)[] Needs =
    [
        ("dowels", "joints"), ("retaining_rings", "bearings"), ("joints", "bearings"), ("centring", "fits"), ("stacks", "shims"),
    ];

    private const string Starters = "src/Pawl.Cli/Starters";

    private readonly string _folder = Directory.CreateTempSubdirectory("pawl-fuzz-").FullName;
    private readonly FuzzKind _kind;
    private readonly int _seed;
    private readonly Mutator _mutator;
    private readonly Node[] _seeds;
    private readonly byte[][] _specs;
    private readonly GearboxAnalysis[] _analyses;
    private readonly ImmutableArray<string> _catalogues;
    private readonly ImmutableArray<string> _adapters;
    private readonly SpecLoader _loader;
    private readonly RuleSet _rules = RulePacks.Shipped.Rules!;

    public Fuzzing(string repository, FuzzKind kind, int seed)
    {
        (_kind, _seed) = (kind, seed);
        _catalogues = [.. Shipped(repository, "specs/catalogue"), .. Shipped(repository, Starters).Where(f => !f.EndsWith("pawl.yaml", StringComparison.Ordinal) && !IsSpec(f))];
        _adapters = Shipped(repository, "specs/adapters");
        _loader = new(_folder, _catalogues, adapterPaths: _adapters);
        var shipped = new SpecLoader(repository, _catalogues, adapterPaths: _adapters);
        Node[] specs =
        [
            .. Directory.GetFiles(Path.Combine(repository, "specs"), "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
                .Select(f => shipped.Load(f)).Where(l => l.Spec is not null).Select(l => Node.Of(l.Merged!)),
            .. Parsed(Directory.GetFiles(Path.Combine(_folder, Starters)).Where(IsSpec)),
        ];

        foreach (var spec in specs)
            spec.Items.RemoveAll(i => i.Key == "extends");

        // One number of draws is as good as another, and fewer are faster.
        foreach (var node in specs.SelectMany(s => s.All()).Select(n => n.Find("draws")).OfType<Node>())
            node.Scalar = "1000";
        _specs = [.. specs.Select(s => Encoding.UTF8.GetBytes(s.ToString()))];
        if (_specs.Select(s => _loader.Load("specs/seed.yaml", s)).FirstOrDefault(l => l.Spec is null) is { } bad)
            throw new InvalidOperationException($"A seed is refused as it is: {bad.Diagnostics[0]}");
        _seeds = kind switch
        {
            FuzzKind.Spec => [.. specs, Node.Parse(Concessions)],
            FuzzKind.Pack => [.. Parsed(Directory.GetFiles(Path.Combine(repository, "rules"), "*.yaml")).Select(OfTheHouse), Node.Parse(Override)],
            FuzzKind.Catalogue => Parsed(_catalogues.AddRange(_adapters).Select(f => Path.Combine(_folder, f))),
            FuzzKind.Project => [.. Parsed([Path.Combine(repository, "pawl.yaml")]), Node.Parse(Project)],
            _ => [Node.Parse(Known)],
        };
        _analyses = kind == FuzzKind.Pack ? [.. _specs.Take(8).Select(s => GearboxAnalyser.Analyse(_loader.Load("seed.yaml", s).Spec!))] : [];
        _mutator = new(_seeds);
        if (kind is FuzzKind.Project or FuzzKind.Baseline or FuzzKind.Record)
        {
            Directory.CreateDirectory(Path.Combine(_folder, "rules"));
            Directory.CreateDirectory(Path.Combine(_folder, "specs"));
            File.WriteAllBytes(Path.Combine(_folder, "specs/seed.yaml"), kind == FuzzKind.Project ? _specs[0] : Encoding.UTF8.GetBytes(Small(specs[^1]).ToString()));
        }

        if (kind is FuzzKind.Baseline or FuzzKind.Record)
            File.WriteAllText(Path.Combine(_folder, "pawl.yaml"), "pawl: 1\nspecs: [specs/seed.yaml]\ncatalogues: [specs/catalogue/*.yaml, src/Pawl.Cli/Starters/materials.yaml, src/Pawl.Cli/Starters/lubricants.yaml]\n");
        _record = kind == FuzzKind.Record ? Recorded() : "";
    }

    /// <summary>A shipped pack under another name: the shipped ones are there already.</summary>
    private static Node OfTheHouse(Node pack)
    {
        pack.Find("pack")!.Scalar = "house";
        foreach (var id in pack.Find("rules")!.Items.Select(r => r.Value.Find("id")!))
            id.Scalar = $"house/{id.Scalar![(id.Scalar!.IndexOf('/', StringComparison.Ordinal) + 1)..]}";
        return pack;
    }

    private const string Override =
        "{pack: house, version: 1.0.0, title: House, rules: [{id: mesh/tip-clearance, override: true, at_least: 0.2, reason: The customer tested ten of them, approved_by: A. Designer},"
        + " {id: seal/gland-fill, override: true, when: motion == 'static' and gland == 'bore', at_most: {by: motion, static: 80 %, default: 70 %}, reason: The customer tested ten of them, approved_by: A. Designer}]}";

    private const string Project =
        "{pawl: 1, specs: [specs/seed.yaml], catalogues: [specs/catalogue/*.yaml], adapters: [specs/adapters/*.yaml], rules: [rules], exclude: [specs/faulty/**],"
        + " reports: {folder: reports/out, formats: [json]}}";

    private const string Concessions =
        "concessions: [{rule: mesh/tip-clearance, subject: meshes.sun~planet_gear, reason: r, approved_by: a, expires: 2027-03-31, worst_margin: -5 %},"
        + " {rule: fit/interference, subject: fits.a, reason: r, approved_by: a, expires: 2020-01-01, worst_margin: -5 %, variants: [R1]}]";

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public Execution Run(long number)
    {
        var random = new Random(unchecked((int)((_seed * 1_000_003L) + number)));
        var text = _kind == FuzzKind.Record ? SpoiltRecord(random) : _mutator.Spoil(Seed(random), random);
        var spent = Environment.CpuUsage.TotalTime;
        try
        {
            var (judged, wrong) = Try(text, random);
            return new(text, judged, wrong ?? (Environment.CpuUsage.TotalTime - spent > Patience ? "It takes for ever." : null), wrong ?? "");
        }
#pragma warning disable CA1031 // Whatever is thrown is what is looked for.
        catch (Exception defect)
#pragma warning restore CA1031
        {
            return new(text, false, Cause(defect.GetType().Name, defect.ToString()), defect.ToString());
        }
    }

    /// <summary>A seed, cut down: small ones run fast, and a fault does not hide behind the same early one.</summary>
    private Node Seed(Random random)
    {
        var seed = _seeds[random.Next(_seeds.Length)];
        if (_kind == FuzzKind.Spec && seed == _seeds[^1])
        {
            var bearer = _seeds[random.Next(_seeds.Length - 1)].Copy();
            bearer.Items.Add(seed.Copy().Items[0]);
            seed = bearer;
        }

        seed = seed.Copy();
        var share = random.Next(20) == 0 ? 1 : random.NextDouble() * 0.4;
        if (_kind == FuzzKind.Spec)
        {
            var kept = Kept.Concat(seed.Items.Select(i => i.Key).Where(_ => random.NextDouble() < share)).ToHashSet();
            foreach (var (_, needed) in Needs.Where(n => kept.Contains(n.Section)))
                kept.Add(needed);
            seed.Items.RemoveAll(i => !kept.Contains(i.Key));
        }
        else if (_kind == FuzzKind.Pack && seed.Find("rules") is { } rules)
            rules.Items.RemoveAll(_ => random.NextDouble() > share);
        return seed;
    }

    private (bool Judged, string? Wrong) Try(string text, Random random)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        switch (_kind)
        {
            case FuzzKind.Spec:
                return Judged(_loader, bytes, random);
            case FuzzKind.Pack:
                Write("rules/house.yaml", bytes);
                var load = RulePacks.Load(_folder, ["rules"]);
                return load.Rules is { } rules ? Recorded(_analyses[random.Next(_analyses.Length)], rules, random) : (false, load.Diagnostics.IsEmpty ? "Refused without a reason." : null);
            case FuzzKind.Catalogue:
                Write("specs/house.yaml", bytes);
                var beside = !text.Contains("adapter:", StringComparison.Ordinal);
                return Judged(
                    new(_folder, beside ? _catalogues.Add("specs/house.yaml") : _catalogues, adapterPaths: beside ? _adapters : _adapters.Add("specs/house.yaml")),
                    _specs[random.Next(_specs.Length)], random);
            case FuzzKind.Baseline:
                Write("known.yaml", bytes);
                return Checked("check", "--baseline", "known.yaml", "--prune", "--no-reports");
            case FuzzKind.Record:
                Write("r.json", bytes);
                return Checked("verify", "r.json", "--verbose");
            default:
                Write("pawl.yaml", bytes);
                return Checked("check", "--verbose", "--no-reports");
        }
    }

    private (bool Judged, string? Wrong) Judged(SpecLoader loader, byte[] spec, Random random)
    {
        var load = loader.Load("specs/fuzz.yaml", spec);
        return load.Spec is { } read ? Recorded(GearboxAnalyser.Analyse(read), _rules, random)
            : (false, load.IsBase || !load.Diagnostics.IsEmpty ? null : "Refused without a reason.");
    }

    private static (bool Judged, string? Wrong) Recorded(GearboxAnalysis analysis, RuleSet rules, Random random)
    {
        var record = RecordBuilder.Build(Judge.Of(analysis, rules, Day));
        switch (random.Next(20))
        {
            case 0:
                HtmlReport.Render(record);
                break;
            case 1:
                MarkdownReport.Render(record);
                break;
            case < 5:
                record.ToJson();
                break;
            default:
                new TextReport(TextLevel.Verbose, false).Write(record, TextWriter.Null);
                break;
        }

        return (true, analysis.Subjects.SelectMany(s => s.Quantities).Select(Unsound).FirstOrDefault(w => w is not null));
    }

    private static string? Unsound(Quantity quantity) =>
        quantity is { IsEvaluated: true, Kind.ValueKind: ValueKind.Number } && !(double.IsFinite(quantity.Value.Min) && double.IsFinite(quantity.Value.Max) && double.IsFinite(quantity.Value.Nominal))
            ? $"{quantity.Kind} is not finite."
            : quantity.Reasons.Any(r => r.Contains("Parameter", StringComparison.Ordinal)) ? $"{quantity.Kind} gives a reason of the framework." : null;

    private (bool Judged, string? Wrong) Checked(params string[] arguments)
    {
        using var said = new StringWriter(CultureInfo.InvariantCulture);
        var code = Command(arguments, TextWriter.Null, said);
        return (code is 0 or 1, code is >= 0 and <= 2 ? null : Cause($"exit code {code}", said.ToString()));
    }

    private int Command(string[] arguments, TextWriter output, TextWriter said) =>
        PawlCommand.Run(arguments, new CommandContext
        {
            Out = output,
            Error = said,
            Input = () => Stream.Null,
            Clock = TimeProvider.System,
            Folder = _folder,
            Variable = _ => null,
        });

    // Guards are thrown in one place for all; the caller tells them apart.
    private static string Cause(string what, string stack)
    {
        var own = stack.Split('\n').Select(l => l.Trim()).Where(l => l.StartsWith("at Pawl.", StringComparison.Ordinal) && !l.Contains(".Guard.", StringComparison.Ordinal));
        var frame = own.FirstOrDefault() ?? "";
        return $"{what} {(frame.IndexOf(" in ", StringComparison.Ordinal) is > 0 and var end ? frame[..end] : frame)}";
    }

    private void Write(string path, byte[] bytes) => File.WriteAllBytes(Path.Combine(_folder, path), bytes);

    private static Node[] Parsed(IEnumerable<string> files) => [.. files.Order(StringComparer.Ordinal).Select(f => Node.Parse(File.ReadAllText(f)))];

    private bool IsSpec(string path) => File.ReadAllText(Path.Combine(_folder, path)).Contains("gearbox:", StringComparison.Ordinal);

    /// <summary>Copies the files of a folder; gives their paths from the root.</summary>
    private ImmutableArray<string> Shipped(string repository, string folder)
    {
        Directory.CreateDirectory(Path.Combine(_folder, folder));
        Directory.CreateDirectory(Path.Combine(_folder, "rules"));
        var paths = ImmutableArray.CreateBuilder<string>();
        foreach (var file in Directory.GetFiles(Path.Combine(repository, folder), "*.yaml").Order(StringComparer.Ordinal))
        {
            paths.Add($"{folder}/{Path.GetFileName(file)}");
            File.Copy(file, Path.Combine(_folder, paths[^1]));
        }

        return paths.DrainToImmutable();
    }
}
