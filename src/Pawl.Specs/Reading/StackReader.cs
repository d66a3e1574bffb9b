using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class StackReader
{
    static partial void Check(StackSpec read, MapReader reader, Scope scope)
    {
        if (read.Contributors.Entries.IsEmpty && reader.Has("contributors") && !reader.HasErrors)
            reader.Report(SpecDiagnostics.WrongCount(reader.KeySpan("contributors"), reader.PathOf("contributors"), "one size or more", 0));
        if (!reader.HasErrors)
            CheckLoop(read, reader);
    }

    private static void CheckLoop(StackSpec read, MapReader reader)
    {
        var (from, to, contributors) = (read.From, read.To, read.Contributors.Entries);
        var first = contributors.FirstOrDefault(each => each.From is not null || each.To is not null);
        if (from is null && to is null && first is null)
        {
            foreach (var each in contributors)
            {
                if (each.Coefficient is null)
                    Missing(each, "coefficient");
            }

            return;
        }

        if (from is null)
            reader.Report(SpecDiagnostics.MissingKey(reader.NameSpan, reader.ObjectPath, "from"));
        if (to is null)
            reader.Report(SpecDiagnostics.MissingKey(reader.NameSpan, reader.ObjectPath, "to"));
        foreach (var each in contributors)
        {
            if (each.From is null)
                Missing(each, "from");
            else if (each.To is null)
                Missing(each, "to");
            else if (each.From.Value == each.To.Value)
                reader.Report(SpecDiagnostics.OpenChain(each.To.Span, PathOf(each, "to"), $"a size from `{each.To.Value}` to itself leads nowhere.", "Name the face at its other end."));
        }

        if (from is not null && from.Value == to?.Value)
            reader.Report(SpecDiagnostics.OpenChain(to.Span, reader.PathOf("to"), $"a gap from `{to.Value}` to itself is none.", "Name the face at its other end."));
        if (reader.HasErrors || from is null || to is null)
            return;

        var signs = StackLoop.Walk(from.Value, to.Value, contributors, out var reached);
        if (reached != to.Value)
        {
            var next = contributors.Count(each => !signs.ContainsKey(each) && (each.From!.Value == reached || each.To!.Value == reached));
            reader.Report(SpecDiagnostics.OpenChain(
                from.Span, reader.ObjectPath,
                next > 1
                    ? $"the loop parts at `{reached}`, where {next} sizes go on."
                    : $"the loop goes from `{from.Value}` to `{reached}` and no size goes on from there to `{to.Value}`.",
                next > 1 ? "A loop passes every face once: take out what does not belong to it." : $"Add the size that begins or ends at `{reached}`."));
            return;
        }

        foreach (var each in contributors)
        {
            if (!signs.TryGetValue(each, out var sign))
            {
                reader.Report(SpecDiagnostics.OpenChain(
                    each.Name.Span, PathOf(each, ""), $"the loop from `{from.Value}` to `{to.Value}` does not pass this size, from `{each.From!.Value}` to `{each.To!.Value}`.", "Take it out, or correct its faces."));
            }
            else if (each.Coefficient is { } stated && Math.Sign(stated.Value) != sign)
            {
                reader.Report(SpecDiagnostics.WrongSign(stated.Span, PathOf(each, "coefficient"), stated.Text, sign > 0));
            }
        }

        void Missing(ContributorSpec each, string key) =>
            reader.Report(SpecDiagnostics.MissingKey(each.Name.Span, PathOf(each, ""), key));

        string PathOf(ContributorSpec each, string key) =>
            $"{reader.PathOf("contributors")}.{each.Name.Value}{(key.Length == 0 ? "" : ".")}{key}";
    }
}

internal static partial class ContributorReader
{
    static partial void Check(ContributorSpec read, MapReader reader, Scope scope)
    {
        if (read is { Material: not null, Expansion: { } expansion })
            reader.Report(SpecDiagnostics.ExclusiveKeys(expansion.Span, reader.ObjectPath, "material", "expansion"));
        if (read.Coefficient is { Value: 0 } zero)
            reader.Outside("coefficient", zero, "above or below zero", "A size that does not move the gap is no part of the chain.");
        if (read.Capability is { } capability && read.Distribution is { Value: not "normal" } distribution)
            reader.Report(SpecDiagnostics.ExclusiveKeys(capability.Span, reader.ObjectPath, $"distribution: {distribution.Value}", "capability"));
    }
}

internal static partial class GapWindowReader
{
    static partial void Check(GapWindowSpec read, MapReader reader, Scope scope) => reader.Above(
        "max", read.Max.Size(), read.Min.Size(), "above the minimum of", "Exchange the two; no assembly lies in a window upside down.");
}

internal static partial class ShimmingReader
{
    static partial void Check(ShimmingSpec read, MapReader reader, Scope scope)
    {
        if (read.Stock is { } stock && scope.Shims is { } lists && lists.Find(stock.Value) is null)
        {
            reader.Report(SpecDiagnostics.UnknownName(
                stock.Span, reader.PathOf("stock"), "list of shims", stock.Value, Nearest.To(stock.Value, [.. lists.Entries.Select(each => each.Name.Value)])));
        }
    }
}

internal static partial class ShimReader
{
    static partial void Check(ShimSpec read, MapReader reader, Scope scope) =>
        reader.Below("tolerance", read.Tolerance.Size(), read.Thickness.Size(), "less than the thickness of");
}
