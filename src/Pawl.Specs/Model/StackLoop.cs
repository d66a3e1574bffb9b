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

    /// <summary>Follows the sizes from face to face while exactly one goes on.</summary>
    internal static Dictionary<ContributorSpec, int> Walk(string from, string to, ImmutableArray<ContributorSpec> contributors, out string reached)
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
