using System.Xml.Linq;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>Joint diagrams after VDI 2230: force over the lengths that a bolt and its parts give, for one bolt or a central nut.</summary>
internal static class JointDiagram
{
    private const double Width = 360, Top = 22, Tall = 210, Left = 14, Plot = 176, Labels = 208;

    // Of forces in kN and stiffnesses in N/mm; below it there is nothing to draw.
    private const double Least = 1e-9;

    public static IEnumerable<Figure> Of(ConformanceRecord record) => PartReader.Drawn(record, "joint").Select(Draw).OfType<Figure>();

    private static Figure? Draw(PartReader joint)
    {
        if (Force(joint, "max_preload") is not { Nominal: > Least } most || Force(joint, "min_preload") is not { } least
            || joint.Number("bolt_stiffness", "N/mm") is not { Nominal: > Least } bolt || joint.Number("parts_stiffness", "N/mm") is not { Nominal: > Least } parts)
        {
            return null;
        }

        var load = Force(joint, "axial_force")?.High ?? 0;
        var residual = Force(joint, "residual_clamp");
        var inService = Force(joint, "bolt_force");
        var clampFactor = joint.Number("clamp_load_factor")?.Nominal ?? joint.Number("load_factor")?.Nominal ?? 0;

        // What is left of the least preload before the load: the residual clamp and what the load takes of it.
        var settled = residual?.Low + ((1 - clampFactor) * load);
        ForceMark?[] marks =
        [
            Mark(joint, "permitted_preload", "F_Mzul", static v => v.Low, isLimit: true),
            Mark(joint, "proof_load", "F_p", static v => v.Low, isLimit: true),
            Mark(joint, "bolt_force", "F_S,max", static v => v.High) is { } bolted ? bolted with { IsBroken = joint.Breaks("service_safety", "bolt_force") } : null,
            Mark(joint, "max_preload", "F_M,max", static v => v.High) is { } tightened
                ? tightened with { IsBroken = joint.Breaks("max_preload", "preload_utilisation", "proof_share", "yield_share") }
                : null,
            Mark(joint, "min_preload", "F_M,min", static v => v.Low),
            settled is { } left ? new("F_V,min", left, false) : null,
            Mark(joint, "residual_clamp", "F_KR,min", static v => v.Low) is { } kept
                ? kept with { IsBroken = kept.Force < 0 || joint.Breaks("residual_clamp", "parting_safety") }
                : null,
        ];
        var shown = marks.OfType<ForceMark>().Where(m => !m.IsLimit || m.Force <= 2.5 * most.High!.Value).ToList();
        var highest = Math.Max(most.High!.Value, shown.Max(static m => m.Force)) * 1.03;
        var lowest = Math.Clamp(shown.Min(static m => m.Force), -0.5 * highest, 0);
        var perKilonewton = Tall / (highest - lowest);
        var (elastic, stiff) = (1000 / bolt.Nominal!.Value, 1000 / parts.Nominal!.Value);
        var perMillimetre = Plot / (Math.Max(most.High.Value, inService?.High ?? 0) * elastic + (most.High.Value * stiff));
        double Y(double force) => Top + ((highest - Math.Clamp(force, lowest, highest)) * perKilonewton);
        double X(double length) => Left + (length * perMillimetre);
        var content = ImmutableArray.CreateBuilder<XElement>();

        // Triangles of the least and of the greatest preload: both sides of the first are hidden lines.
        content.Add(Triangle("solid", most.High.Value));
        if (settled is > 0 and var small && small <= most.High)
            content.Add(Triangle("metal", small));
        content.Add(Svg.Line("", Left, Y(0), Left + Plot + 8, Y(0)));
        content.Add(Svg.Line("", Left, Y(lowest), Left, Top - 6));
        var end = inService?.High is { } stretched && stretched > most.High ? stretched : most.High.Value;
        content.Add(Svg.Line("accent", X(0), Y(0), X(end * elastic), Y(end)));
        if (settled is > 0 and var preload && load > 0 && residual?.Low is { } clamp)
        {
            var at = X((preload * elastic) + (clampFactor * load * elastic));
            content.Add(Svg.Line("load", at, Y(clamp), at, Y(clamp + load)));
        }

        content.AddRange(Ladder(shown, Y));
        content.Add(Svg.Text("soft", Left + 4, Top - 8, "force"));
        content.Add(Svg.Text("soft end", Left + Plot + 8, Y(0) + 13, "length"));
        content.Add(Svg.Line("scale", Left, Y(lowest) + 18, X(0) + (RangeScale.Nice(0.4 * Plot / perMillimetre) * perMillimetre), Y(lowest) + 18));
        content.Add(Svg.Text("soft", Left, Y(lowest) + 32, $"{PartReader.Plain(RangeScale.Nice(0.4 * Plot / perMillimetre) * 1000, "µm")}; line: bolt; light: at F_M,max; dark: at F_V,min"));

        var y = Y(lowest) + 50;
        foreach (var (label, name, unit) in (ReadOnlySpan<(string, string, string)>)
            [
                ("F_A", "axial_force", "N"), ("F_Z", "embedding_loss", "N"), ("Utilisation", "preload_utilisation", ""), ("F_KR", "residual_clamp", "N"),
                ("Yield", "service_safety", ""), ("Separation", "parting_safety", ""), ("Slip", "slip_safety", ""),
            ])
        {
            if (joint.Number(name, unit) is not { } value)
                continue;
            content.AddRange(PartReader.Row($"{label} {Figures.Limits(unit == "N" ? PartReader.Scaled(value, 0.001, "kN") : value)}", joint.LimitWords(name, unit), y, Width));
            y += 16;
        }

        content.AddRange(joint.Signs(8, y, Width - 16));
        y += joint.SignsHeight();
        return new()
        {
            Id = $"joint-{joint.Name}",
            Section = FigureSection.Joints,
            Title = $"Joint diagram of {joint.Name}: {(joint.Number("bolts") is { Nominal: { } count } ? $"one of {PartReader.Plain(count, "")} bolts" : "the nut")}",
            Description = $"Preload of {joint.Path} {Kilonewtons(least.Low!.Value)} to {Kilonewtons(most.High.Value)}"
                + (Force(joint, "embedding_loss") is { } loss ? $", embedding takes {Figures.Limits(loss)}" : "")
                + (Force(joint, "thermal_change") is { } thermal ? $", temperature changes it by {Figures.Limits(thermal)}" : "")
                + $", axial load {Kilonewtons(load)}"
                + (residual is null ? "" : $", residual clamp load {Figures.Limits(residual)}{(residual.Low < 0 ? ": the joint separates" : "")}")
                + (inService is null ? "" : $", bolt force in service up to {Kilonewtons(inService.High!.Value)}")
                + string.Concat(shown.Where(static m => m.IsLimit).Select(static m => $", {m.Symbol} {Kilonewtons(m.Force)}"))
                + "." + joint.SignWords(),
            Width = Width,
            Height = y + 2,
            Content = content.DrainToImmutable(),
        };

        XElement Triangle(string css, double force) =>
            Svg.Path(css, [(X(0), Y(0)), (X(force * elastic), Y(force)), (X((force * elastic) + (force * stiff)), Y(0))], closed: true);
    }

    /// <summary>Names of the forces at the right, as close to their heights as they have room.</summary>
    private static IEnumerable<XElement> Ladder(IEnumerable<ForceMark> marks, Func<double, double> at)
    {
        const double Step = 14;
        var sorted = marks.OrderByDescending(static m => m.Force).ThenBy(static m => m.Symbol, StringComparer.Ordinal).ToArray();
        var places = new double[sorted.Length];
        for (var i = 0; i < sorted.Length; i++)
            places[i] = Math.Max(at(sorted[i].Force), i == 0 ? Top : places[i - 1] + Step);
        for (var i = sorted.Length - 1; i >= 0; i--)
        {
            var lowest = i == sorted.Length - 1 ? Math.Max(Top + Tall, Top + (Step * (sorted.Length - 1))) : places[i + 1] - Step;
            places[i] = Math.Min(places[i], lowest);
        }

        for (var i = 0; i < sorted.Length; i++)
        {
            var (mark, y) = (sorted[i], at(sorted[i].Force));
            yield return Svg.Line(mark.IsLimit ? "limit" : "thin", mark.IsLimit ? Left : Left + 4, y, Left + Plot + 8, y);
            yield return Svg.Line("thin", Left + Plot + 8, y, Labels - 4, places[i]);
            yield return Svg.Text(mark.IsBroken ? "fails" : "", Labels, places[i] + 4, $"{(mark.IsBroken ? "✕ " : mark.IsLimit ? "F_M ≤ " : "")}{mark.Symbol} {Kilonewtons(mark.Force)}");
        }
    }

    private static string Kilonewtons(double force) => Figures.Of(new() { Nominal = force, Unit = "kN" });

    private static ValueRecord? Force(PartReader joint, string name) => PartReader.In(joint.Number(name, "N"), "kN");

    private static ForceMark? Mark(PartReader joint, string name, string symbol, Func<ValueRecord, double?> end, bool isLimit = false) =>
        Force(joint, name) is { } value && end(value) is { } force ? new(symbol, force, isLimit) : null;

    /// <summary>A force that stands at the right of the diagram, kN.</summary>
    private sealed record ForceMark(string Symbol, double Force, bool IsLimit, bool IsBroken = false);
}
