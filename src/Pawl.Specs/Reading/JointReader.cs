using System.Globalization;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class JointReader
{
    private const string Flange = "flange";

    private static readonly string[] Strengths = ["4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9", "grade 2", "grade 5", "grade 8"];

    static partial void Check(JointSpec read, MapReader reader, Scope scope)
    {
        Terms.CheckThread(reader, "thread", read.Thread);
        Terms.Check(reader, "strength", read.Strength, Strengths, "a property class or grade");
        if (read.Kind is { Value: not Flange })
            CheckCentral(read, reader);
        reader.Exclude("carries", read.Carries, "torque", read.Torque);
        reader.Exclude("tapped", read.Tapped, "nut", read.Nut);

        // A moment is shared out over a circle of bolts; of a nut on a shaft nothing would come of it.
        reader.Exclude("moment", read.Moment, "shaft", read.Shaft);
        reader.Exclude("supports", read.Supports, "shaft", read.Shaft);
        reader.Exclude("strength", read.Strength, "yield", read.Yield);
        if (read.Supports is not null)
            reader.Demand("axial_position");
        CheckSizes(read, reader, read.Thread is null ? null : ThreadNames.Diameter(read.Thread.Value));
    }

    // The stack of a central nut is computed ring by ring, on its shaft.
    private static void CheckCentral(JointSpec read, MapReader reader)
    {
        reader.Demand("shaft");
        if (read is { Locking.By.Value: "split pin", Shaft.CrossHole: null } && reader.Peek("shaft") is YamlMap shaft)
            reader.Report(SpecDiagnostics.MissingKey(shaft.Span with { End = shaft.Span.Start }, reader.PathOf("shaft"), "cross_hole"));
        if (reader.Peek("clamped") is not YamlList list)
            return;
        for (var i = 0; i < list.Items.Length; i++)
        {
            foreach (var key in (string[])["outside", "inside"])
            {
                if (list.Items[i] is YamlMap layer && layer.Find(key) is null)
                    reader.Report(SpecDiagnostics.MissingKey(layer.Span with { End = layer.Span.Start }, $"{reader.PathOf("clamped")}[{i}]", key));
            }
        }
    }

    private static void CheckSizes(JointSpec read, MapReader reader, double? diameter)
    {
        if (read.Hole is { } hole)
        {
            reader.Below("hole", hole.Size(), read.Face.Size(), "less than the face of");
            if (diameter is { } thread && hole.Value.Coherent < thread - 1e-9 && read.Kind is { Value: Flange })
                reader.Outside("hole", hole, $"at least the diameter of {read.Thread.Text}");
        }

        reader.Below("shank", read.Shank.Size(), read.Length.Size(), "less than the length of");
        reader.NotAbove("min_axial_force", read.MinAxialForce.Size(), read.AxialForce.Size(), "no more than the axial force of");
        if (read.Length is not { } length || read.Clamped.IsEmpty || reader.Peek("clamped") is not YamlList list || list.Items.Length != read.Clamped.Length)
            return;

        var thickness = read.Clamped.Sum(layer => layer.Thickness.Value.Nominal.Coherent);
        if (length.Value.Coherent <= thickness)
        {
            reader.Outside("length", length, string.Create(CultureInfo.InvariantCulture, $"more than the clamped {thickness:0.###} mm"), "The bolt does not reach its thread.");
        }
        else if (read.Tapped is { Depth: { } depth } && length.Value.Coherent > thickness + depth.Value.Nominal.Coherent + 1e-9)
        {
            reader.Outside(
                "length", length, string.Create(CultureInfo.InvariantCulture, $"no more than the clamped {thickness:0.###} mm and the tapped depth of {depth.Text}"),
                "The bolt is longer than its hole: it would bottom and clamp nothing.");
        }
    }
}

/// <summary>Terms of standards that a text must hold.</summary>
internal static class Terms
{
    public static void CheckThread(MapReader reader, string key, Stated<string>? thread)
    {
        if (thread is null || ThreadNames.Diameter(thread.Value) is not null)
            return;
        reader.Report(SpecDiagnostics.UnknownTerm(
            thread.Span, reader.PathOf(key), thread.Value, "a thread of ISO 261 or ASME B1.1", Nearest.To(thread.Value, ThreadNames.All),
            "Write `M8`, `M8x1` or `1/2-20 UNF`; there are M3 to M60 and #6 to 1-1/2 in."));
    }

    public static void Check(MapReader reader, string key, Stated<string>? term, string[] terms, string expected)
    {
        if (term is null || terms.Contains(term.Value, StringComparer.Ordinal))
            return;
        reader.Report(SpecDiagnostics.UnknownTerm(
            term.Span, reader.PathOf(key), term.Value, expected, Near(term.Value, terms), $"Write one of: {string.Join(", ", terms)}."));
    }

    // A class is short; one digit that differs is a third of it or more.
    private static string? Near(string word, string[] terms) =>
        Nearest.To(word, terms) ?? terms.FirstOrDefault(term => term.Split(' ', '.')[0] == word.Split('.', ',')[0] && word.Length > 1);
}

internal static partial class ClampedLayerReader
{
    static partial void Check(ClampedLayerSpec read, MapReader reader, Scope scope) =>
        reader.Below("inside", read.Inside.Size(), read.Outside.Size(), "less than the outside of");
}

internal static partial class ThreadInsertReader
{
    static partial void Check(ThreadInsertSpec read, MapReader reader, Scope scope) => Terms.CheckThread(reader, "thread", read.Thread);
}

internal static partial class NutReader
{
    private static readonly string[] NutStrengths = ["5", "6", "8", "10", "12", "04", "05"];

    static partial void Check(NutSpec read, MapReader reader, Scope scope) =>
        Terms.Check(reader, "strength", read.Strength, NutStrengths, "a property class of nuts");
}

internal static partial class ClampingShaftReader
{
    static partial void Check(ClampingShaftSpec read, MapReader reader, Scope scope) =>
        reader.Below("bore", read.Bore.Size(), read.Diameter.Size(), "less than the diameter of");
}

internal static partial class LockingReader
{
    static partial void Check(LockingSpec read, MapReader reader, Scope scope) =>
        reader.Below("coldest", read.Coldest.Size(), read.Hottest.Size(), "below the hottest of");
}

internal static partial class JointFrictionReader
{
    static partial void Check(JointFrictionSpec read, MapReader reader, Scope scope)
    {
        if (read.Class is not null && (read.Min ?? read.Max) is not null)
            reader.Exclude("class", read.Class, read.Min is not null ? "min" : "max", read.Min ?? read.Max);
        reader.NotAbove("min", read.Min.Size(), read.Max.Size(), "no more than the maximum of");
    }
}

internal static partial class TighteningReader
{
    static partial void Check(TighteningSpec read, MapReader reader, Scope scope)
    {
        if (read.WrenchError is { } error && error.Value.Coherent >= 1)
            reader.Outside("wrench_error", error, "less than 100 %");
        reader.Below("prevailing", read.Prevailing.Size(), read.Torque.Size(), "less than the torque of");
        var steps = read.Steps;
        for (var i = 1; i < steps.Length; i++)
            reader.NotBelow($"steps[{i}]", steps[i].Size(), steps[i - 1].Size(), "at least the step before it,");
        if (!steps.IsEmpty && Math.Abs(steps[^1].Value.Coherent - 1) > 1e-9)
            reader.Outside($"steps[{steps.Length - 1}]", steps[^1], "100 % at last", "The last step is the whole torque.");
    }
}
