using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Model;

/// <summary>The loop that the faces of a stack make: who opens the gap and who closes it.</summary>
/// <remarks>
/// Every size goes from its lower face to its upper one along the axis, and the gap does too. Walking from the lower face of the gap
/// to its upper one, a size passed upward opens the gap and one passed downward closes it.
/// </remarks>
public static class StackLoop
{
    /// <summary>1 or −1 by the faces; 0 where the loop does not pass the size, or the faces are not stated.</summary>
    public static int Sign(StackSpec stack, ContributorSpec contributor)
    {
        ArgumentNullException.ThrowIfNull(stack);
        ArgumentNullException.ThrowIfNull(contributor);
        return stack.From is null || stack.To is null ? 0 : Walk(stack.From.Value, stack.To.Value, stack.Contributors.Entries, out _).GetValueOrDefault(contributor);
    }

    internal static void Check(MapReader reader, Stated<string>? from, Stated<string>? to, ImmutableArray<ContributorSpec> contributors)
    {
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

        var signs = Walk(from.Value, to.Value, contributors, out var reached);
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

    /// <summary>Follows the sizes from face to face while exactly one goes on.</summary>
    private static Dictionary<ContributorSpec, int> Walk(string from, string to, ImmutableArray<ContributorSpec> contributors, out string reached)
    {
        var signs = new Dictionary<ContributorSpec, int>(ReferenceEqualityComparer.Instance);
        reached = from;
        while (reached != to)
        {
            ContributorSpec? next = null;
            foreach (var each in contributors)
            {
                if (signs.ContainsKey(each) || (each.From?.Value != reached && each.To?.Value != reached))
                    continue;
                if (next is not null)
                    return signs;
                next = each;
            }

            if (next is null)
                return signs;
            var upward = next.From?.Value == reached;
            signs.Add(next, upward ? 1 : -1);
            reached = (upward ? next.To : next.From)!.Value;
        }

        return signs;
    }
}
