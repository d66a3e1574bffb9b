using System.Globalization;
using Pawl.Rules;

namespace Pawl.Cli.Checking;

/// <summary>Counts over all specs of a run; its line is the last one, so that a run of nothing never looks like a pass.</summary>
internal sealed class Tally
{
    private int _judged;
    private int _bases;
    private int _conforms;
    private int _fails;
    private int _conceded;
    private int _notEvaluated;
    private int _notApplicable;

    /// <summary>Rules in force.</summary>
    public int Rules { get; set; }

    public int Refused { get; set; }

    public bool AnyFails { get; private set; }

    public int Evaluated => _conforms + _fails + _conceded;

    public void Add(SpecResult result)
    {
        switch (result.State)
        {
            case SpecState.Base:
                _bases++;
                return;
            case SpecState.Refused:
                Refused++;
                return;
            default:
                _judged++;
                break;
        }

        AnyFails |= result.Fails;
        Add(result.Coverage);
    }

    private void Add(Coverage coverage)
    {
        _conforms += coverage.Conforms;
        _fails += coverage.Fails;
        _conceded += coverage.UnderConcession;
        _notEvaluated += coverage.NotEvaluated;
        _notApplicable += coverage.NotApplicable;
    }

    public override string ToString()
    {
        var line = string.Create(
            CultureInfo.InvariantCulture,
            $"{Count(_judged, "spec")} judged by {Count(Rules, "rule")}: {Evaluated} evaluated, {_conforms} conform, {_fails} fail, {_conceded} under concession, {_notEvaluated} not evaluated, {_notApplicable} not applicable");
        if (_bases > 0)
            line += string.Create(CultureInfo.InvariantCulture, $"; {Count(_bases, "base file")} skipped");
        if (Refused > 0)
            line += string.Create(CultureInfo.InvariantCulture, $"; {Count(Refused, "spec")} NOT judged");
        return line + ".";
    }

    private static string Count(int number, string noun) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {noun}{(number == 1 ? "" : "s")}");
}
