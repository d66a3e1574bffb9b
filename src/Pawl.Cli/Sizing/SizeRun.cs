using System.CommandLine;
using Pawl.Analysis.Seals;
using Pawl.Cli.Checking;
using Pawl.Cli.Commands;
using Pawl.Cli.Output;
using Pawl.Mechanics.Seals;
using Pawl.Quantities;
using Pawl.Rules;
using Pawl.Specs.Text;

namespace Pawl.Cli.Sizing;

/// <summary>One run of <c>pawl o-ring</c>.</summary>
internal sealed class SizeRun
{
    // Glands of the trade are known within 0.02 mm of a cord; a cord may be asked for as loosely.
    private const double CordSlack = 0.02;

    private readonly CommandContext _context;
    private readonly Command _command;
    private readonly SizeRequest _request;
    private readonly Settings _settings;
    private readonly ProjectView _project;

    private SizeRun(CommandContext context, Command command, SizeRequest request, Settings settings, ProjectView project) =>
        (_context, _command, _request, _settings, _project) = (context, command, request, settings, project);

    public static int Start(CommandContext context, Command command, SizeRequest request)
    {
        if (request.Top < 1)
            return Usage.Report(context, command, "--top is a number of sizes, 1 or more.");
        if (request.Spec is not null && request.Words is [var word, ..])
        {
            return Usage.Report(
                context, command, $"{word.Place} states a gland, but {request.Spec} states it already.", "Leave the option away, or leave the spec away and state the gland by options.");
        }

        var check = new CheckRequest { Paths = request.Spec is null ? [] : [request.Spec], Rules = request.Rules, Root = request.Root, NoReports = true };
        if (SettingsResolver.Resolve(check, context, out var project, out var usage) is not { } settings)
            return Usage.Report(context, command, usage!);
        return new SizeRun(context, command, request, settings, project).Go();
    }

    private int Go()
    {
        if (!Told(_project.Diagnostics))
            return ExitCode.NotJudged;
        var load = _context.Engine.LoadRules(_settings.Root.Value, _settings.Rules.Value);
        if (!Told(load.Diagnostics) || load.Rules is not { } rules)
            return ExitCode.NotJudged;
        if (!rules.Rules.Any(rule => rule.AppliesTo == Analysis.SubjectKinds.ORing))
            return Refuse(CliCodes.NoRules, "pawl", "No rule on O-rings is in force, so no size can be judged.", "Check --rules, and `rules:` in pawl.yaml.");
        if (Cords(out var wrong) is not { } cords)
            return Refuse(CliCodes.UnknownCord, "--cord", wrong.Message, wrong.Hint);

        ImmutableArray<ORing> sizes = [.. ORingTable.All.Where(size => cords.IsEmpty || cords.Any(cord => Math.Abs(size.Cord - cord) <= CordSlack))];
        return _request.Spec is null ? OfOptions(rules, sizes) : OfSpec(rules, sizes);
    }

    private int OfOptions(RuleSet rules, ImmutableArray<ORing> sizes)
    {
        var question = new GlandQuestion(_request.Words);
        if (question.Missing() is var (message, hint))
            return Usage.Report(_context, _command, message, hint);
        List<Diagnostic> found = [];
        if (question.Read(found) is not { } spec || found.Count > 0)
        {
            found.ForEach(diagnostic => DiagnosticWriter.Write(_context.Error, diagnostic));
            return ExitCode.NotJudged;
        }

        var judge = new SizeJudge(_context.Engine, rules, _settings.AsOf.Value);
        var list = judge.Of(spec, [.. sizes.Select(question.For)]);
        if (question.Widen(list))
            list = judge.Of(spec, [.. sizes.Select(question.For)]);
        return Show(new()
        {
            List = list,
            Gland = question.Lines,
            Fragment = list.Fitting.FirstOrDefault() is { } best ? new GlandFragment(question.Lines, best, spec, _context.Engine).ToString() : "",
        });
    }

    private int OfSpec(RuleSet rules, ImmutableArray<ORing> sizes)
    {
        var path = SettingsResolver.RelativeTo(_settings.Root.Value, _context.Absolute(_request.Spec!));
        var load = _context.Engine.OpenSpecs(_settings.Root.Value, _settings.Catalogue.Value, _settings.Adapters.Value, _settings.StrictSchema)(new(path, null, Named: true));
        if (!Told(load.Diagnostics))
            return ExitCode.NotJudged;
        if (load.IsBase || load.Spec is not { } spec)
            return Refuse(CliCodes.BaseNamed, path, "This file names no variant, so it is a base for others and states no gland in full.", "Name a spec that extends it.");

        var names = spec.ORings.Entries.Select(ring => ring.Name.Value).ToArray();
        if (names.Length == 0)
            return Refuse(CliCodes.UnknownName, path, "This spec declares no O-ring.", "Add `o_rings:`, or state the gland by options: `pawl o-ring --help`.");
        if (_request.Ring is null && names.Length > 1)
            return Usage.Report(_context, _command, $"{path} declares {names.Length} O-rings: {string.Join(", ", names)}.", $"Name one: `pawl o-ring {_request.Spec} {names[0]}`.");
        if (spec.ORings.Find(_request.Ring ?? names[0]) is not { } declared)
        {
            return Refuse(
                CliCodes.UnknownName, path, $"No O-ring is called `{_request.Ring}`.",
                Nearest.To(_request.Ring!, names) is { } near ? $"Did you mean `{near}`?" : $"There are {string.Join(", ", names)}.");
        }

        var name = declared.Name.Value;
        var candidates = sizes.Select(size => new Candidate(
            size, declared with { As568 = GlandQuestion.SizeOf(size), Inside = null, Cord = null }, [], IsDeclared: declared.As568?.Value == GlandQuestion.SizeOf(size).Value)).ToList();
        if (declared.As568 is null && declared.Inside is not null)
            candidates.Insert(0, new(null, declared, [], IsDeclared: true));

        var list = new SizeJudge(_context.Engine, rules, _settings.AsOf.Value).Of(spec, [.. candidates]);
        if (list.Sizes.Select(size => size.Find(ORings.Squeeze) is null ? size.WhyNot : "").Distinct().ToArray() is [{ Length: > 0 } open])
        {
            return Refuse(CliCodes.GlandOpen, declared.Name.Span, $"The gland of {name} cannot be computed: {open}.", "State what is missing, with its tolerance.");
        }

        return Show(new() { List = list, Gland = GlandLines.Of(declared, spec), Spec = path, Ring = name });
    }

    private int Show(SizeAnswer answer)
    {
        if (_request.Json)
            SizeJson.Write(_context.Out, answer, _request);
        else
            SizeText.Write(_context.Out, answer, _request);
        return answer.List.Fitting.Any() ? ExitCode.Conforms : ExitCode.Findings;
    }

    /// <summary>The cords asked for, mm; empty: all. Null where one is none.</summary>
    private ImmutableArray<double>? Cords(out (string Message, string Hint) wrong)
    {
        wrong = default;
        if (_request.Cords is not { } text)
            return [];

        var known = ORingTable.All.Select(size => size.Cord).Distinct().Order().ToArray();
        var list = string.Join(", ", known.Select(Millimetres));
        var cords = ImmutableArray.CreateBuilder<double>();
        foreach (var part in text.Split(','))
        {
            if (!Amount.TryParse(part, out var cord, out var error))
                wrong = (error.Message, error.Hint ?? $"Write cords with a unit, parted by commas: --cord \"{list}\".");
            else if (cord.Dimension == Dimension.Ratio)
                wrong = ($"`{part.Trim()}` has no unit.", $"Write cords with a unit, the point as decimal mark, parted by commas: --cord \"{list}\".");
            else if (cord.Dimension != Dimension.OfLength)
                wrong = ($"A cord is a length, but `{part.Trim()}` is {cord.Dimension.NameWithArticle}.", $"The table has cords of {list}.");
            else if (!known.Any(each => Math.Abs(each - cord.Coherent) <= CordSlack))
                wrong = ($"The table has no cord of `{part.Trim()}`: it has {list}.", $"Did you mean {Millimetres(known.MinBy(each => Math.Abs(each - cord.Coherent)))}?");
            else
                cords.Add(cord.Coherent);
            if (wrong.Message is not null)
                return null;
        }

        return cords.DrainToImmutable();

        static string Millimetres(double cord) => $"{Formatting.Significant(Math.Round(cord, 2), 9)} mm";
    }

    private bool Told(ImmutableArray<Diagnostic> diagnostics)
    {
        foreach (var diagnostic in diagnostics)
            DiagnosticWriter.Write(_context.Error, diagnostic);
        return !diagnostics.Any(d => d.Severity == Severity.Error);
    }

    private int Refuse(string code, string place, string message, string hint) => Refuse(code, new SourceSpan(place, default, default), message, hint);

    private int Refuse(string code, SourceSpan place, string message, string hint)
    {
        DiagnosticWriter.Write(_context.Error, new(code, Severity.Error, place, message, hint));
        return ExitCode.NotJudged;
    }
}
