using System.Runtime.CompilerServices;
using System.Text;
using Pawl.Benchmarks;

var quick = args.Contains("quick");
var repository = Path.GetFullPath("../..", Path.GetDirectoryName(Here())!);
var work = Path.Combine(repository, "artifacts", "benchmarks");
Directory.CreateDirectory(work);

var report = new StringBuilder();
void Say(FormattableString line)
{
    var text = line.ToString(CultureInfo.InvariantCulture);
    Console.WriteLine(text);
    report.AppendLine(text);
}

if (args.Contains("warm"))
{
    Warm.Measure(repository, Say);
    return 0;
}

if (args is ["corpus", var count])
{
    SpecCorpus.Write(Path.Combine(work, "corpus"), int.Parse(count, CultureInfo.InvariantCulture));
    return 0;
}

var tools = new Tools(repository, work);
var pawl = tools.Pawl(native: true);
Contender Check(string project, params string[] more) => new("pawl check", pawl, ["check", "--quiet", "--fail-on", "never", .. more], project);
string Corpus(int specs, int rules = 0)
{
    var folder = Path.Combine(work, string.Create(CultureInfo.InvariantCulture, $"corpus-{specs}-{rules}"));
    SpecCorpus.Write(folder, specs, rules);
    return folder;
}

string One(string name, string text)
{
    var folder = Path.Combine(work, name);
    SpecCorpus.Write(folder, text);
    return folder;
}

Say($"Whole processes, wall time; medians of runs taken in turn. {Environment.ProcessorCount} processors.");

Say($"\nOne spec of {SpecCorpus.Text(0).Split('\n').Length - 1} lines, from a cold start");
var one = Corpus(1);
var cold = Measured.InTurn(
    quick ? 9 : 25,
    new("empty program, managed", tools.Empty(native: false), [], work),
    new("empty program, native", tools.Empty(native: true), [], work),
    Check(one) with { Name = "pawl check, managed", Program = tools.Pawl(native: false) },
    Check(one) with { Name = "pawl check, native" });
foreach (var measured in cold)
{
    Say($"  {measured.Contender.Name,-28} {measured.Median * 1000,8:0} ms   least {measured.Min * 1000,6:0} ms   {measured.PeakMegabytes,6:0} MB   {measured.Median / cold[0].Median,6:0.00} times the empty managed program");
}

var many = quick ? 200 : 1000;
Say($"\n{many} specs in one native process");
var corpus = Corpus(many);
List<Contender> contenders = [Check(corpus)];
if (Tools.YamlLint() is { } yamllint)
    contenders.Add(new("yamllint", yamllint, ["-d", "relaxed", "specs"], corpus));
else
    Say($"  yamllint is not to be had; left out");
if (tools.NodeScript() is { } script)
    contenders.Add(new("js-yaml and ajv", "node", [script, Path.Combine(repository, "schema", "gearbox-whole.schema.json"), Path.Combine(corpus, "specs")], corpus));
else
    Say($"  node, js-yaml or ajv is not to be had; left out");
var compared = Measured.InTurn(quick ? 3 : 7, [.. contenders]);
foreach (var measured in compared)
    Say($"  {measured.Contender.Name,-28} {measured.Median,8:0.00} s    ratio {measured.Median / compared[0].Median,6:0.00}   {measured.PeakMegabytes,6:0} MB");

Say($"\nGrowth with the number of specs");
Grow(quick ? [100, 1000] : [100, 1000, 10_000], specs => Check(Corpus(specs)));

Say($"\nGrowth with the number of house rules, 100 specs");
Grow([50, 500], rules => Check(Corpus(100, rules)));

Say($"\nGrowth with the number of gears on one planet, one spec");
Grow([100, 400, 1600], rings => Check(One($"rings-{rings}", SpecCorpus.Rings(rings))));

Say($"\nGrowth with the number of joints, one spec");
Grow([100, 400, 1600], flanges => Check(One($"flanges-{flanges}", SpecCorpus.Flanges(flanges))));

Warm.Measure(repository, Say);

File.WriteAllText(Path.Combine(work, "report.txt"), report.ToString());
return 0;

void Grow(int[] sizes, Func<int, Contender> contender)
{
    Measured? before = null;
    for (var i = 0; i < sizes.Length; i++)
    {
        var measured = Measured.InTurn(quick ? 1 : 3, contender(sizes[i]))[0];
        var exponent = before is null ? double.NaN : Math.Log(measured.Median / before.Median) / Math.Log((double)sizes[i] / sizes[i - 1]);
        Say($"  {sizes[i],6}   {measured.Median,8:0.00} s   {measured.PeakMegabytes,6:0} MB   exponent {exponent:0.00}");
        before = measured;
    }
}

static string Here([CallerFilePath] string file = "") => file;
