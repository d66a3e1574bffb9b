using Pawl.Mechanics.Joints;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Interfaces;

/// <summary>What keeps two sides of an interface from going together, in words; null where neither has the part.</summary>
internal static class SideMisfit
{
    /// <summary>Nothing differs.</summary>
    public const string None = "none";

    // Sizes are written in decimals, in mm or inches; a hundredth of a micrometre apart is the same size.
    private const double Same = 1e-5;

    // A hundredth of a degree.
    private const double SameAngle = 1.8e-4;

    public static string OfKind(InterfaceSideSpec own, InterfaceSideSpec adapter) =>
        own.Kind.Value == adapter.Kind.Value ? None : $"{own.Kind.Value} against {adapter.Kind.Value}";

    public static string? OfSpline(InterfaceSplineSpec? own, InterfaceSplineSpec? adapter) => Both("spline", own, adapter, (a, b) =>
    [
        Opposite("side", a.Side, b.Side),
        Differ("standard", a.System, b.System, a.System.Value == b.System.Value),
        Math.Abs(ModuleOf(a) - ModuleOf(b)) <= Same ? null : $"{PitchOf(a)} against {PitchOf(b)}",
        Differ("pressure angle", a.PressureAngle, b.PressureAngle, Math.Abs(a.PressureAngle.Value.Coherent - b.PressureAngle.Value.Coherent) <= SameAngle),
        Differ("teeth", a.Teeth, b.Teeth, a.Teeth.Value == b.Teeth.Value),
    ]);

    public static string? OfPilot(PilotSpec? own, PilotSpec? adapter) => Both("pilot", own, adapter, (a, b) =>
    [
        Opposite("side", a.Side, b.Side),
        Differ("diameter", a.Diameter, b.Diameter, Near(a.Diameter.Value.Nominal, b.Diameter.Value.Nominal)),
    ]);

    public static string? OfBolts(BoltPatternSpec? own, BoltPatternSpec? adapter) => Both("screws", own, adapter, (a, b) =>
    [
        Opposite("holes", a.Holes, b.Holes),
        Differ("thread", a.Thread, b.Thread, SameThread(a.Thread.Value, b.Thread.Value)),
        Differ("count", a.Count, b.Count, a.Count.Value == b.Count.Value),
        Differ("circle", a.Circle, b.Circle, Near(a.Circle.Value, b.Circle.Value)),
        a.Count.Value == b.Count.Value && Off(a.Angle, b.Angle, a.Count.Value) ? $"position {a.Angle?.Text ?? "0°"} against {b.Angle?.Text ?? "0°"}" : null,
    ]);

    public static string? OfDowels(DowelPatternSpec? own, DowelPatternSpec? adapter) => Both("dowels", own, adapter, (a, b) =>
    [
        Opposite("side", a.Side, b.Side),
        Differ("diameter", a.Diameter, b.Diameter, Near(a.Diameter.Value.Nominal, b.Diameter.Value.Nominal)),
        Differ("count", a.Count, b.Count, a.Count.Value == b.Count.Value),
        Differ("circle", a.Circle, b.Circle, Near(a.Circle.Value, b.Circle.Value)),
        a.Count.Value == b.Count.Value && Off(a.Angle, b.Angle, a.Count.Value) ? $"position {a.Angle?.Text ?? "0°"} against {b.Angle?.Text ?? "0°"}" : null,
    ]);

    public static string? OfSeal(InterfaceSealSpec? own, InterfaceSealSpec? adapter) => Both("seal", own, adapter, (a, b) =>
    [
        Opposite("kind", a.Kind, b.Kind),
        a.Kind.Value == "groove" && b.Kind.Value == "face" ? Uncovered(a, b) : a.Kind.Value == "face" && b.Kind.Value == "groove" ? Uncovered(b, a) : null,
    ]);

    public static double ModuleOf(InterfaceSplineSpec spline) => spline.Module?.Value.Coherent ?? 25.4 / spline.DiametralPitch?.Value ?? double.NaN;

    private static string? Uncovered(InterfaceSealSpec groove, InterfaceSealSpec face)
    {
        if (groove.Diameter is not { } diameter || face.From is not { } from || face.To is not { } to)
            return "the diameters of groove and face are not stated";
        return diameter.Value.Coherent > from.Value.Coherent && diameter.Value.Coherent < to.Value.Coherent ? null : $"groove of {diameter.Text} off the face from {from.Text} to {to.Text}";
    }

    private static string PitchOf(InterfaceSplineSpec spline) =>
        spline.Module is { } module ? $"module {module.Text}" : spline.DiametralPitch is { } pitch ? $"diametral pitch {pitch.Text}" : "no module";

    private static string? Both<T>(string what, T? own, T? adapter, Func<T, T, string?[]> differences)
        where T : class
    {
        if (own is null || adapter is null)
            return own is null && adapter is null ? null : own is null ? $"the gearbox states no {what}" : $"the adapter states no {what}";
        var found = string.Join("; ", differences(own, adapter).Where(each => each is not null));
        return found.Length == 0 ? None : found;
    }

    private static string? Opposite(string what, Stated<string> own, Stated<string> adapter) => own.Value == adapter.Value ? $"{what} {own.Text} on both" : null;

    private static string? Differ<T>(string what, Stated<T> own, Stated<T> adapter, bool agree) => agree ? null : $"{what} {own.Text} against {adapter.Text}";

    private static bool Near(Amount own, Amount adapter) => Math.Abs(own.Coherent - adapter.Coherent) <= Same;

    // Evenly spaced holes come round again after a pitch.
    private static bool Off(Stated<Amount>? own, Stated<Amount>? adapter, int count)
    {
        var apart = Math.Abs(Math.IEEERemainder((own?.Value.Coherent ?? 0) - (adapter?.Value.Coherent ?? 0), Math.Tau / count));
        return apart > SameAngle;
    }

    private static bool SameThread(string own, string adapter) =>
        ThreadTable.TryFind(own, out var first, out _) && ThreadTable.TryFind(adapter, out var second, out _)
            ? first == second
            : string.Equals(own.Trim(), adapter.Trim(), StringComparison.OrdinalIgnoreCase);
}
