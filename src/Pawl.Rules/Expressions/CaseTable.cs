using Pawl.Analysis.Core;

namespace Pawl.Rules.Expressions;

/// <summary>
/// What can be said of conditions without a subject: every case that their constants and words tell apart, a quantity that the
/// subject lacks included.
/// </summary>
/// <remarks>
/// A number is tried at each constant that it is compared with, between them, below and above; a text at each of its words, or
/// at those named and one other; whatever cannot be split further, such as a comparison of two quantities, counts as independent
/// of the rest. That gives more cases than there are, never fewer: what holds in none of them holds of no subject.
/// </remarks>
internal sealed class CaseTable(SubjectKind kind)
{
    private const int MostCases = 20_000;

    /// <summary>No word has a blank at both ends.</summary>
    private const string Other = " other ";

    private readonly List<Variable> _variables = [];

    /// <summary>Whether a condition can have a value; null when there are too many cases to try.</summary>
    public static bool? CanBe(SubjectKind kind, Syntax condition, bool value)
    {
        var table = new CaseTable(kind);
        var (tree, wanted) = (table.Build(condition), value ? Held.Yes : Held.No);
        return table.Any(() => tree() == wanted);
    }

    /// <summary>Whether one condition holds wherever the other does; false also when that cannot be shown.</summary>
    public static bool Implies(SubjectKind kind, Syntax premise, Syntax conclusion)
    {
        var table = new CaseTable(kind);
        var (first, second) = (table.Build(premise), table.Build(conclusion));
        return table.Any(() => first() == Held.Yes && second() != Held.Yes) == false;
    }

    private bool? Any(Func<bool> holds)
    {
        var cases = 1L;
        foreach (var variable in _variables)
        {
            variable.Settle();
            cases *= variable.Count;
            if (cases > MostCases)
                return null;
        }

        for (var i = 0L; i < cases; i++)
        {
            var rest = i;
            foreach (var variable in _variables)
            {
                variable.At = (int)(rest % variable.Count);
                rest /= variable.Count;
            }

            if (holds())
                return true;
        }

        return false;
    }

    private Func<Held> Build(Syntax syntax)
    {
        switch (syntax)
        {
            case Syntax.Truth truth:
                return () => Of(truth.Value);
            case Syntax.Name name:
                return Truth(name.Path);
            case Syntax.Unary { Operator: Operator.Not } not:
                var denied = Build(not.Operand);
                return () => Not(denied());
            case Syntax.Binary { Operator: Operator.And or Operator.Or } both:
                var (a, b) = (Build(both.Left), Build(both.Right));
                return both.Operator == Operator.And ? () => Both(a(), b()) : () => Not(Both(Not(a()), Not(b())));
            case Syntax.Binary comparison when comparison.Operator.IsComparison():
                return Compare(comparison);
            case Syntax.In { Operand: Syntax.Name name } within:
                var words = Words(name.Path, [.. within.Words.OfType<Syntax.Text>().Select(w => w.Value)]);
                return within.Negated ? () => Not(words()) : words;
            default:
                return Truth(SyntaxText.Of(syntax));
        }
    }

    private Func<Held> Compare(Syntax.Binary comparison)
    {
        var (left, right, op) = (comparison.Left, comparison.Right, comparison.Operator);
        if (left is Syntax.Text)
            (left, right) = (right, left);
        if (left is Syntax.Name text && right is Syntax.Text word)
        {
            var same = Words(text.Path, [word.Value]);
            return op == Operator.NotEqual ? () => Not(same()) : same;
        }

        if (Kind(left) != ValueKind.Number)
        {
            if (Kind(left) == ValueKind.Text)
                return Truth(SyntaxText.Of(comparison));
            var (a, b) = (Build(left), Build(right));
            Func<Held> agree = () => Either(a(), b());
            return op == Operator.NotEqual ? () => Not(agree()) : agree;
        }

        if (Constants.Of(left) is not null)
            (left, right, op) = (right, left, Turned(op));
        if (Constants.Of(right) is { } limit)
            return Constants.Of(left) is { } value ? () => Of(Holds(value, op, limit)) : Number(left, op, limit);

        // Two quantities against each other: their difference against zero, in one order whichever stands first.
        var (first, second) = (SyntaxText.Of(left), SyntaxText.Of(right));
        if (first == second)
            return () => Of(Holds(0, op, 0));
        return string.CompareOrdinal(first, second) < 0
            ? Number($"{first} - {second}", null, op, 0)
            : Number($"{second} - {first}", null, Turned(op), 0);
    }

    private ValueKind Kind(Syntax syntax) => syntax switch
    {
        Syntax.Name name => Paths.TryFind(kind, name.Path)?.Kind.ValueKind ?? ValueKind.Number,
        Syntax.Text => ValueKind.Text,
        Syntax.Truth or Syntax.In or Syntax.Unary { Operator: Operator.Not } => ValueKind.Truth,
        Syntax.Binary { Operator: var op } when op.IsComparison() || op.IsConnective() => ValueKind.Truth,
        _ => ValueKind.Number,
    };

    private Func<Held> Number(Syntax syntax, Operator op, double limit) =>
        Number(SyntaxText.Of(syntax), syntax is Syntax.Name name ? Paths.TryFind(kind, name.Path)?.Kind : null, op, limit);

    private Func<Held> Number(string key, QuantityKind? quantity, Operator op, double limit)
    {
        var variable = Find(key);
        variable.Limits.Add(limit);
        variable.NeverNegative |= quantity is { IsNeverNegative: true };
        return () => variable.IsAbsent ? Held.Absent : Of(Holds(variable.Number, op, limit));
    }

    private Func<Held> Words(string path, ImmutableArray<string> words)
    {
        var variable = Find(path);
        if (Paths.TryFind(kind, path)?.Kind.Words is { IsEmpty: false } known)
            variable.Words.UnionWith(known);
        else
            variable.Words.UnionWith(words.Append(Other));
        return () => variable.IsAbsent ? Held.Absent : Of(words.Contains(variable.Word));
    }

    private Func<Held> Truth(string key)
    {
        var variable = Find(key);
        return () => variable.IsAbsent ? Held.Absent : Of(variable.Truth);
    }

    private Variable Find(string key)
    {
        foreach (var known in _variables)
        {
            if (known.Key == key)
                return known;
        }

        var variable = new Variable(key);
        _variables.Add(variable);
        return variable;
    }

    private static Operator Turned(Operator op) => op switch
    {
        Operator.Less => Operator.Greater,
        Operator.LessOrEqual => Operator.GreaterOrEqual,
        Operator.Greater => Operator.Less,
        Operator.GreaterOrEqual => Operator.LessOrEqual,
        _ => op,
    };

    private static bool Holds(double value, Operator op, double limit) => op switch
    {
        Operator.Less => value < limit,
        Operator.LessOrEqual => value <= limit,
        Operator.Greater => value > limit,
        Operator.GreaterOrEqual => value >= limit,
        Operator.NotEqual => value != limit,
        _ => value == limit,
    };

    // As conditions of subjects are joined: what is false settles `and` before anything that is absent.
    private static Held Both(Held a, Held b) =>
        a == Held.No || b == Held.No ? Held.No : a == Held.Absent || b == Held.Absent ? Held.Absent : Held.Yes;

    private static Held Either(Held a, Held b) => a == Held.Absent || b == Held.Absent ? Held.Absent : Of(a == b);

    private static Held Not(Held held) => held switch { Held.Yes => Held.No, Held.No => Held.Yes, _ => Held.Absent };

    private static Held Of(bool truth) => truth ? Held.Yes : Held.No;

    private enum Held
    {
        No,
        Yes,
        Absent,
    }

    /// <summary>A quantity, or what counts as one, with the values to try; the first case is that the subject lacks it.</summary>
    private sealed class Variable(string key)
    {
        private double[] _numbers = [];
        private string[] _words = [];

        public string Key { get; } = key;

        public SortedSet<double> Limits { get; } = [];

        public SortedSet<string> Words { get; } = new(StringComparer.Ordinal);

        public bool NeverNegative { get; set; }

        public int At { get; set; }

        public int Count => 1 + Math.Max(2, Math.Max(_numbers.Length, _words.Length));

        public bool IsAbsent => At == 0;

        public double Number => _numbers[Math.Min(At, _numbers.Length) - 1];

        public string Word => _words[Math.Min(At, _words.Length) - 1];

        public bool Truth => At == 1;

        public void Settle()
        {
            _words = [.. Words];
            if (Limits.Count == 0)
                return;
            SortedSet<double> numbers = [.. Limits, Limits.Min - 1 - Math.Abs(Limits.Min), Limits.Max + 1 + Math.Abs(Limits.Max)];
            var before = double.NaN;
            foreach (var limit in Limits)
            {
                if (double.IsFinite(before))
                    numbers.Add(before + ((limit - before) / 2));
                before = limit;
            }

            if (NeverNegative)
            {
                numbers.UnionWith([0, Math.Max(0, Limits.Max) + 1]);
                numbers.RemoveWhere(number => number < 0);
            }

            _numbers = [.. numbers];
        }
    }
}
