using Pawl.Mechanics.Seals;
using Pawl.Quantities;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Sizing;

/// <summary>A gland stated on the command line, with what is usual where it is silent.</summary>
internal sealed class GlandQuestion
{
    /// <summary>The name of the ring in messages and in the fragment for a spec.</summary>
    public const string Ring = "joint";

    private const string Usual = "assumed: common practice, no source";

    private readonly Dictionary<string, StatedWord> _stated;
    private readonly Dictionary<string, double> _wider = new(StringComparer.Ordinal);
    private readonly List<GlandLine> _lines = [];

    public GlandQuestion(ImmutableArray<StatedWord> words)
    {
        _stated = words.ToDictionary(word => word.Key, StringComparer.Ordinal);
        Fill();
    }

    /// <summary>Stated and assumed, in the order of a spec; without what depends on the cord.</summary>
    public ImmutableArray<GlandLine> Lines => [.. _lines];

    private bool IsFace => Text("gland") is { } gland && gland.StartsWith("face", StringComparison.Ordinal);

    private GlandKind Kind => IsFace ? GlandKind.Face : Text("motion") is null or "static" ? GlandKind.Static : GlandKind.Dynamic;

    /// <summary>Which diameter is missing, and what to give; null when there is one to start from.</summary>
    public (string Message, string Hint)? Missing() => IsFace
        ? Text("groove") is null ? ("A gland in a face needs the wall that the ring leans on.", "Give --groove, as in --groove \"60 mm\".") : null
        : Text("bore") is null && Text("plug") is null ? ("Neither a bore nor a plug is stated.", "Give --bore, as in --bore \"110 mm H8\", or a spec and the name of a ring.") : null;

    /// <summary>The spec of the gland without a ring; complaints about what was stated.</summary>
    public GearboxSpec? Read(ICollection<Diagnostic> diagnostics) => ORingStatement.Read(Ring, Words([]), diagnostics);

    /// <summary>A size in the gland that was stated, or that the trade gives its cord.</summary>
    public Candidate For(ORing size)
    {
        var proposed = Propose(size.Cord);
        List<Diagnostic> found = [];
        if (proposed.IsDefault || ORingStatement.Read(Ring, Words(proposed), found)?.ORings.Find(Ring) is not { } spec || found.Count > 0)
            return new(size, null, [], $"the parts leave no room for a cord of {Round(size.Cord)} mm");
        return new(size, spec with { As568 = SizeOf(size) }, proposed);
    }

    public static Stated<int> SizeOf(ORing size)
    {
        var number = size.Dash[1..];
        return new(int.Parse(number, System.Globalization.CultureInfo.InvariantCulture), new("pawl", default, default), number.TrimStart('0'));
    }

    /// <summary>
    /// Widens the grooves that nobody stated until sizes that would fit keep their room: the trade's widths leave heat and swell
    /// out. Whether there is anything to try once more.
    /// </summary>
    public bool Widen(SizeList list)
    {
        if (Text("width") is not null)
            return false;

        foreach (var sizes in list.Sizes.Where(size => size.Candidate.NoRoom.Length == 0).GroupBy(size => size.Candidate.Size!.Cord))
        {
            // The sizes of this cord that break the fewest rules besides; a ring that is far too large would want a very wide groove.
            var fewest = sizes.Min(OtherFaults);
            var fills = sizes.Where(size => OtherFaults(size) == fewest).SelectMany(FillsBeyond).ToArray();
            if (fills.Length > 0)
                _wider[Round(sizes.Key)] = Math.Ceiling(fills.Max() * GlandPractice.For(Kind, sizes.Key).Width.Min * 10) / 10;
        }

        return _wider.Count > 0;
    }

    private static int OtherFaults(JudgedSize size) => size.Worst.Count(f => f.Margin < 0 && !IsFill(f));

    private static IEnumerable<double> FillsBeyond(JudgedSize size) => size.Worst
        .Where(f => f.Margin < 0 && IsFill(f)).Select(f => f.Measured!.Value.Max / f.AtMost!.Value.Min);

    private static bool IsFill(Finding finding) => finding is { Rule.Measure: "gland_fill", AtMost: not null };

    private string? Text(string key) => _lines.Find(line => line.Key == key).Text is { Length: > 0 } line
        ? line
        : _stated.TryGetValue(key, out var word) ? word.Text.Trim() : null;

    private ImmutableArray<StatedWord> Words(ImmutableArray<GlandLine> proposed) =>
        [.. _lines.Concat(proposed).Select(line => new StatedWord(line.Key, line.Text, PlaceOf(line.Key)))];

    private string PlaceOf(string key) => _stated.TryGetValue(key, out var word) ? word.Place : "pawl";

    private void Fill()
    {
        Take("gland", "plug", "assumed: the groove in the inner part");
        Take("motion", "static", "assumed");
        var (bore, plug) = (Sized("bore", "H8"), Sized("plug", "f7"));
        if (!IsFace)
        {
            Add(bore ?? (NominalOf(plug) is { } inner ? new GlandLine("bore", $"{inner} H8", $"{Usual}: a usual fit on that plug") : default));
            Add(plug ?? (NominalOf(bore) is { } outer ? new GlandLine("plug", $"{outer} f7", $"{Usual}: a usual fit in that bore") : default));
        }
        else
        {
            Take("bore");
            Take("plug");
        }

        Add(Sized("groove", Text("gland") is "bore" or "face-inside" ? "H9" : "h9") ?? default);
        Add(Sized("depth", "±0.05 mm") ?? default);
        Add(Sized("width", "+0.2/0") ?? default);
        foreach (var key in (ReadOnlySpan<string>)["eccentricity", "roughness_ra", "pressure", "swell", "speed"])
            Take(key);
        Take("elastomer", "FKM", Usual);
        Take("hardness", "70", Usual);
        Temperatures();
    }

    private void Temperatures()
    {
        // 65 °C in service, from a cold morning to a hot case: shrunk to what was stated of them.
        var (least, most) = (Celsius("oil.coldest") ?? Math.Min(-10, Celsius("oil.running") ?? Celsius("oil.hottest") ?? -10), Celsius("oil.hottest") ?? Math.Max(95, Celsius("oil.running") ?? 95));
        Take("oil.running", $"{Round(Math.Clamp(65, Math.Min(least, most), Math.Max(least, most)))} °C", "assumed");
        Take("oil.coldest", $"{Round(least)} °C", "assumed");
        Take("oil.hottest", $"{Round(most)} °C", "assumed");

        double? Celsius(string key) => _stated.TryGetValue(key, out var word) && Amount.TryParse(word.Text, out var stated, out _)
            && stated.Dimension == Dimension.OfTemperature ? stated.Coherent : null;
    }

    private void Take(string key, string otherwise = "", string basis = "")
    {
        if (_stated.TryGetValue(key, out var word))
            Add(new(key, word.Text.Trim()));
        else if (otherwise.Length > 0)
            Add(new(key, otherwise, basis));
    }

    private void Add(GlandLine line)
    {
        if (line.Key is not null)
            _lines.Add(line);
    }

    /// <summary>A stated dimension; where it bears no tolerance, with the usual one.</summary>
    private GlandLine? Sized(string key, string tolerance)
    {
        if (!_stated.TryGetValue(key, out var word))
            return null;
        var text = word.Text.Trim();
        return Toleranced.TryParse(text, out var read, out _) && read is { Tolerance: Tolerance.General, Nominal: { Dimension: var measured } } && measured == Dimension.OfLength
            ? new(key, $"{text} {tolerance}", $"{tolerance} {Usual}; no tolerance is stated")
            : new(key, text);
    }

    private static string? NominalOf(GlandLine? line) => line is { } given && Toleranced.TryParse(given.Text, out var read, out _) && read.Nominal.Dimension == Dimension.OfLength
        ? read.Nominal.ToString()
        : null;

    private static double? MillimetresOf(string? text) =>
        text is not null && Toleranced.TryParse(text, out var read, out _) && read.Nominal.Dimension == Dimension.OfLength ? read.Nominal.Coherent : null;

    /// <summary>What the trade gives the gland of a cord where nothing is stated; default where there is no such gland.</summary>
    private ImmutableArray<GlandLine> Propose(double cord)
    {
        var practice = GlandPractice.For(Kind, cord);
        var lines = ImmutableArray.CreateBuilder<GlandLine>();
        var height = $"{Round(practice.Height.Min)} to {Round(practice.Height.Max)} mm";
        if (!IsFace && Text("groove") is null)
        {
            var inPlug = Text("gland") == "plug";
            if (MillimetresOf(Text(inPlug ? "bore" : "plug")) is not { } seat)
                return default;
            var groove = seat + ((inPlug ? -2 : 2) * practice.Height.Middle);
            if (groove <= 0)
                return default;
            lines.Add(new("groove", $"{Round(Math.Round(groove * 20) / 20)} mm {(inPlug ? "h9" : "H9")}", $"proposed: height {height} of the trade"));
        }

        if (IsFace && Text("depth") is null)
            lines.Add(new("depth", $"{Round(practice.Height.Min)} mm +{Round(Spread(practice.Height))}/0", $"proposed: depth {height} of the trade"));
        if (Text("width") is null)
        {
            var width = $"{Round(practice.Width.Min)} to {Round(practice.Width.Max)} mm";
            lines.Add(_wider.TryGetValue(Round(cord), out var wider)
                ? new("width", $"{Round(wider)} mm +0.2/0", $"proposed: wider than the {width} of the trade, for heat and swell")
                : new("width", $"{Round(practice.Width.Min)} mm +{Round(Spread(practice.Width))}/0", $"proposed: width {width} of the trade"));
        }

        return lines.DrainToImmutable();
    }

    private static double Spread(Mechanics.Interval extent) => Math.Round(extent.Max, 2) - Math.Round(extent.Min, 2);

    private static string Round(double millimetres) => Formatting.Significant(Math.Round(millimetres, 2), 9);
}
