using System.Globalization;
using Pawl.Quantities;
using Pawl.Reports.Records;
using Scriban.Runtime;
using static Pawl.Reports.Markdown.MarkdownText;

namespace Pawl.Reports.Sheets;

/// <summary>What the fitter needs.</summary>
internal sealed partial class SheetModel
{
    public ScriptObject Assembly(string figureFolder) => new()
    {
        ["presses"] = List(Subjects("fit").Where(fit => Find(fit, "function")?.Value.Text == "press"), (fit, _) => Press(fit)),
        ["bearings"] = List(Subjects("bearing"), (bearing, _) => Row(
            ("id", Code(bearing.Path)), ("entry", Stated($"{bearing.Path}.bearing")), ("shaft", Stated($"{bearing.Path}.shaft")), ("housing", Stated($"{bearing.Path}.housing")),
            ("position", Shown(bearing, "axial_position")), ("duty", Stated($"{bearing.Path}.axial")), ("clearance", Stated($"{bearing.Path}.clearance")))),
        ["rings"] = List(_declared.Names("retaining_rings"), (name, _) => Row(
            ("id", Code($"retaining_rings.{name}")), ("size", Stated($"retaining_rings.{name}.diameter")), ("on", Stated($"retaining_rings.{name}.on")))),
        ["lips"] = List(_declared.Names("lip_seals"), (name, _) => Row(
            ("id", Code($"lip_seals.{name}")), ("shaft", Stated($"lip_seals.{name}.shaft")), ("diameter", Stated($"lip_seals.{name}.diameter")), ("bore", Stated($"lip_seals.{name}.bore")),
            ("elastomer", Stated($"lip_seals.{name}.elastomer")), ("faces", Stated($"lip_seals.{name}.lip_faces")))),
        ["o_rings"] = List(Subjects("o_ring"), (ring, _) => Row(
            ("id", Code(ring.Path)), ("size", _declared[$"{ring.Path}.as568"] is { Length: > 0 } size ? "AS568-" + Escape(size) : $"{Shown(ring, "inside_diameter")} × {Shown(ring, "cord")}"),
            ("elastomer", Stated($"{ring.Path}.elastomer")), ("gland", Shown(ring, "gland")), ("groove", Stated($"{ring.Path}.groove")))),
        ["stacks"] = List(Subjects("stack"), (stack, _) => Stack(stack)),
        ["joints"] = List(_declared.Names("joints"), (name, n) => Joint(name, n, figureFolder)),
        ["oil"] = Oil(),
    };

    private ScriptObject Press(SubjectRecord fit)
    {
        var warm = Find(fit, "joining_temperature")?.Value is { High: { } hot } joining ? Escape(Twin.Of(Math.Ceiling(hot), joining.Unit)) : "–";
        var most = _declared[$"{fit.Path}.max_joining"] is { Length: > 0 } permitted ? Escape(Twin.Of(permitted)) : "–";
        var force = Find(fit, "press_force")?.Value is { High: { } high } pressing ? Escape(Twin.Of(high, pressing.Unit)) : "–";
        return Row(
            ("id", Code(fit.Path)), ("hole_part", Code(_partOf.Input($"{fit.Path}.hole"))), ("shaft_part", Code(_partOf.OfShaft(fit.Path))),
            ("interference", Range(fit, "interference")), ("joined", Stated($"{fit.Path}.joined")), ("warm", warm), ("most", most), ("force", force));
    }

    private ScriptObject Stack(SubjectRecord stack)
    {
        var (least, most) = (Shown(stack, "window_min"), Shown(stack, "window_max"));
        var lifts = Find(stack, "shim_effect")?.Value.Text == "lifts";
        var shims = Find(stack, "stock")?.Value.Text ?? "";
        var row = Row(
            ("id", Code(stack.Path)), ("least", least), ("most", most), ("chain", Shown(stack, "chain")), ("expected", Range(stack, "worst_case")),
            ("stock", Said(shims)), ("pack", Range(stack, "required_pack")), ("pieces", Shown(stack, "max_pieces")),
            ("rule", lifts ? $"pack = {least} less the computed gap, up to {most} less the computed gap" : $"pack = computed gap less {most}, up to computed gap less {least}"));
        row["shimmed"] = shims.Length > 0;
        row["sizes"] = List(Subjects("contributor").Where(c => c.Path.StartsWith(stack.Path + ".", StringComparison.Ordinal)), (size, _) => Row(
            ("name", Code(size.Path)), ("size", Shown(size, "size")), ("limits", Range(size, "size")), ("sign", Find(size, "coefficient")?.Value.Nominal is < 0 ? "−" : "+")));
        return row;
    }

    private ScriptObject Joint(string name, int number, string figureFolder)
    {
        var path = $"joints.{name}";
        var subject = _record.Subjects.FirstOrDefault(s => s.Path == path);
        var steps = Steps(path);
        var order = _declared[$"{path}.tightening.order"];
        var sequence = Sequence(subject, order);
        var head = Row(
            ("number", Phrase.Whole(number + 1)), ("id", Code(path)), ("kind", Stated($"{path}.kind")), ("thread", Stated($"{path}.thread")), ("strength", Stated($"{path}.strength")),
            ("count", _declared[$"{path}.bolts"] is { Length: > 0 } bolts ? Escape(bolts) : "1"), ("length", Stated($"{path}.length")), ("circle", Stated($"{path}.bolt_circle")),
            ("torque", _declared[$"{path}.tightening.torque"] is { Length: > 0 } torque ? Escape(Twin.Of(torque)) : "–"),
            ("method", subject is null ? Stated($"{path}.tightening.method") : Shown(subject, "tightening_method")),
            ("locking", Stated($"{path}.locking.by")), ("coating", Stated($"{path}.coating")),
            ("friction", subject is null ? "–" : $"{Shown(subject, "min_friction")} to {Shown(subject, "max_friction")}"),
            ("clamped", string.Join(", ", Clamped(path))),
            ("order", order.Length > 0 ? Escape(order) : sequence.IsEmpty ? "–" : "not stated; crosswise is usual"),
            ("sequence", string.Join(", ", sequence.Select(Phrase.Whole))),
            ("figure", ""));
        head["steps"] = List(steps, (step, _) => Row(("share", Escape(step.Share)), ("torque", Escape(step.Torque))));
        head["bolts"] = List(sequence, (bolt, i) => Row(("order", Phrase.Whole(i + 1)), ("bolt", "b" + Phrase.Whole(bolt))));
        if (sequence.Length > 1)
        {
            var figure = BoltPattern.Of($"bolts-{Phrase.Whole(number + 1)}", path, sequence);
            _figures.Add(figure);
            head["figure"] = $"![{Escape(figure.Title)}: {Escape(figure.Description)}]({figureFolder}/{figure.Id}.svg)";
        }

        return head;
    }

    private IEnumerable<string> Clamped(string joint)
    {
        for (var i = 1; _declared[$"{joint}.clamped[{Phrase.Whole(i)}].part"] is { Length: > 0 } part; i++)
            yield return Escape($"{part} {_declared[$"{joint}.clamped[{Phrase.Whole(i)}].thickness"]}".TrimEnd());
    }

    /// <summary>Each step as a torque; one step where the spec states none.</summary>
    private ImmutableArray<(string Share, string Torque)> Steps(string joint)
    {
        if (!Amount.TryParse(_declared[$"{joint}.tightening.torque"], out var torque, out _))
            return [];
        var steps = ImmutableArray.CreateBuilder<(string, string)>();
        foreach (var written in _declared.List($"{joint}.tightening.steps"))
        {
            if (Amount.TryParse(written, out var share, out _) && share.Dimension == Dimension.Ratio)
                steps.Add((written, Twin.Share(torque, share.Coherent)));
        }

        return steps.Count > 0 ? steps.DrainToImmutable() : [("100 %", Twin.Of(torque))];
    }

    /// <summary>The bolts in the order of tightening: round the circle where the spec says so, else crosswise as the record has it.</summary>
    private static ImmutableArray<int> Sequence(SubjectRecord? joint, string order)
    {
        if (joint is null || Find(joint, "tightening_sequence")?.Value.Text is not { } text)
            return [];
        ImmutableArray<int> bolts = [.. text.Split(' ').Select(static word => int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var bolt) ? bolt : 0)];

        // A record may come from elsewhere: what is no order of all bolts is not drawn.
        return !bolts.Order().SequenceEqual(Enumerable.Range(1, bolts.Length)) ? []
            : order == "round" ? [.. bolts.Order()]
            : bolts;
    }

    private ScriptObject Oil()
    {
        var lubrication = Subjects("lubrication").FirstOrDefault();
        var row = Row(
            ("name", Stated("duty.oil.lubricant")), ("grade", lubrication is null ? "–" : Shown(lubrication, "grade")), ("fill", Stated("lubrication.fill")),
            ("least", Stated("lubrication.min_fill")), ("most", Stated("lubrication.max_fill")), ("level", Stated("lubrication.level")),
            ("hottest", _declared["duty.oil.hottest"] is { Length: > 0 } hot ? Escape(Twin.Of(hot)) : "–"), ("cleanliness", Stated("lubrication.cleanliness")));
        row["known"] = lubrication is not null || _declared["duty.oil.lubricant"].Length > 0;
        return row;
    }
}
