using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Pawl.Mechanics.Tests;

/// <summary>
/// Calls every public function with values that no drawing has, one parameter at a time. The answer is a refusal by
/// <see cref="OutsideValidityException"/>, or the meaning of the value stands in the tables of <see cref="Meanings"/>.
/// </summary>
/// <remarks>The oracle is arithmetic: whatever depends on a value that is no number has no value.</remarks>
public class ValidityTests
{
    private const int Tries = 600;

    private static readonly (string Name, Func<double, double> Of)[] NoNumbers =
    [
        ("NaN", _ => double.NaN), ("+inf", _ => double.PositiveInfinity), ("-inf", _ => double.NegativeInfinity),
    ];

    private static readonly (string Name, Func<double, double> Of)[] Signs =
    [
        ("zero", _ => 0), ("swapped", sane => -sane), ("-1", _ => -1), ("-1e6", _ => -1e6),
    ];

    [Fact]
    public void What_is_no_number_is_refused()
    {
        var wrong = Sweep(NoNumbers, (function, parameter, value) => Meanings.OfNoNumber(function, parameter, value));
        Assert.True(wrong.Count == 0, $"{wrong.Count}\n{string.Join('\n', wrong)}");
    }

    [Fact]
    public void Zero_and_wrong_signs_are_refused_or_have_a_meaning()
    {
        var wrong = Sweep(Signs, (function, parameter, value) => Meanings.OfSign(function, parameter, value == "zero"));
        wrong.AddRange(Meanings.Stale().Select(entry => $"{entry}: no longer needed in the table of meanings"));
        Assert.True(wrong.Count == 0, $"{wrong.Count}\n{string.Join('\n', wrong)}");
    }

    [Fact]
    public void Every_function_with_numbers_has_inputs_that_it_answers()
    {
        var without = Functions().Where(call => call.Doubles.Length > 0 && Baseline(call) is null)
            .Select(call => call.Name).Distinct().Order(StringComparer.Ordinal).ToArray();
        var expected = Meanings.WithoutBaseline.Order(StringComparer.Ordinal).ToArray();
        Assert.True(without.SequenceEqual(expected), string.Join('\n', without.Except(expected).Concat(expected.Except(without).Select(n => "stale " + n))));
    }

    private static List<string> Sweep((string Name, Func<double, double> Of)[] values, Func<string, string, string, bool> hasMeaning)
    {
        var wrong = new List<string>();
        foreach (var call in Functions().Where(call => call.Doubles.Length > 0))
        {
            // Where no inputs are found, a refusal is still the only exception.
            var sane = Baseline(call) ?? Plain(call);

            foreach (var place in call.Doubles)
            {
                foreach (var (name, of) in values)
                {
                    var arguments = (object?[])sane.Clone();
                    arguments[place.Index] = of((double)sane[place.Index]!);
                    if (Equals(arguments[place.Index], sane[place.Index]))
                        continue;

                    // A record holds what it is given; what is computed from it is called, too. What does not enter an answer
                    // cannot spoil it.
                    var outcome = Outcome(call, arguments, out var answer);
                    if (outcome == "answered" && place.Index < call.Held && (call.IsConstructor || Equals(answer, Answer(call, sane))))
                        continue;

                    if (outcome != "refused" && !(outcome == "answered" && hasMeaning(call.Name, place.Name, name)))
                        wrong.Add($"{call.Name} {place.Name} {name}: {outcome}");
                }
            }
        }

        return wrong;
    }

    private static object? Answer(Call call, object?[] arguments)
    {
        Outcome(call, (object?[])arguments.Clone(), out var answer);
        return answer;
    }

    private static string Outcome(Call call, object?[] arguments, out object? result)
    {
        result = null;
        try
        {
            result = call.Invoke(arguments);
            if (result is false && call.Answers)
                return "refused";

            return IsFinite(result, call.IsConstructor ? call.Parameters : []) ? "answered" : "not finite";
        }
        catch (OutsideValidityException)
        {
            return "refused";
        }
        catch (Exception defect)
        {
            return defect.GetType().Name;
        }
    }

    // Values that a record only holds may be what they are; whatever is computed from them may not.
    private static bool IsFinite(object? result, IEnumerable<ParameterInfo> held, int depth = 0)
    {
        switch (result)
        {
            case null or string or Enum or Delegate or Type:
                return true;
            case double number:
                return double.IsFinite(number);
            case ITuple tuple:
                return Enumerable.Range(0, tuple.Length).All(index => IsFinite(tuple[index], [], depth + 1));
            case IEnumerable list:
                return list.Cast<object?>().Take(50).All(item => IsFinite(item, [], depth + 1));
        }

        var type = result.GetType();
        if (depth > 2 || type.Namespace?.StartsWith("Pawl.Mechanics", StringComparison.Ordinal) != true)
            return true;

        var own = held.Select(parameter => parameter.Name!).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.GetIndexParameters().Length == 0 && !own.Contains(property.Name))
            .All(property => IsFinite(Read(property, result), [], depth + 1));
    }

    // One property may refuse what another answers.
    private static object? Read(PropertyInfo property, object target)
    {
        try
        {
            return property.GetValue(target, BindingFlags.DoNotWrapExceptions, null, null, null);
        }
        catch (OutsideValidityException)
        {
            return null;
        }
    }

    private static object?[]? Baseline(Call call)
    {
        if (Known.TryGetValue(call, out var known))
            return known;

        object?[]? found = null;
        var random = new Random(Seed(call.Name));
        for (var round = 0; round < Tries && found is null; round++)
        {
            var arguments = call.Parameters.Select(parameter => Sane.Value(parameter, random, round)).ToArray();
            if (Outcome(call, (object?[])arguments.Clone(), out _) == "answered")
                found = arguments;
        }

        Known[call] = found;
        return found;
    }

    private static readonly Dictionary<Call, object?[]?> Known = [];

    private static object?[] Plain(Call call)
    {
        var random = new Random(Seed(call.Name));
        return [.. call.Parameters.Select(parameter => Sane.Value(parameter, random, 0))];
    }

    private static int Seed(string name) => name.Aggregate(17, (seed, letter) => unchecked(seed * 31 + letter));

    private static IEnumerable<Call> Functions()
    {
        foreach (var type in typeof(Guard).Assembly.GetExportedTypes().Where(type => type != typeof(Guard) && !type.IsEnum && !type.IsInterface))
        {
            if (typeof(Exception).IsAssignableFrom(type) || typeof(Delegate).IsAssignableFrom(type))
                continue;

            foreach (var method in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            {
                if (!method.IsSpecialName && !method.IsGenericMethod && Usable(method))
                    yield return new Call(Name(type, method), method, null, method.GetParameters());
            }

            var constructor = type.IsAbstract ? null : type.GetConstructors().Where(Usable).MaxBy(each => each.GetParameters().Length);
            if (constructor is null || constructor.GetParameters().Length == 0)
                continue;

            yield return new Call($"{type.Name}.new", null, constructor, constructor.GetParameters());
            foreach (var method in type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            {
                if (!method.IsSpecialName && !method.IsGenericMethod && Usable(method) && method.Name is not ("Equals" or "GetHashCode" or "ToString" or "Deconstruct") && !method.Name.StartsWith('<'))
                    yield return new Call(Name(type, method), method, constructor, [.. constructor.GetParameters(), .. method.GetParameters()]);
            }
        }
    }

    private static string Name(Type type, MethodInfo method) => $"{type.Name}.{method.Name}";

    private static bool Usable(MethodBase method) => method.GetParameters().All(parameter =>
        !parameter.ParameterType.IsByRefLike && (parameter.IsOut || !parameter.ParameterType.IsByRef));

    internal sealed record Place(int Index, string Name);

    internal sealed class Call(string name, MethodInfo? method, ConstructorInfo? constructor, ParameterInfo[] parameters)
    {
        public string Name { get; } = name;

        public ParameterInfo[] Parameters { get; } = parameters;

        public bool IsConstructor { get; } = method is null;

        /// <summary>How many of the parameters go to the constructor.</summary>
        public int Held { get; } = constructor?.GetParameters().Length ?? 0;

        /// <summary>Whether the function says no instead of throwing.</summary>
        public bool Answers { get; } = method?.Name is { } called
            && (called.StartsWith("Try", StringComparison.Ordinal) || called is "Exists" or "Contains");

        public Place[] Doubles { get; } =
        [
            .. parameters.Select((parameter, index) => (parameter, index))
                .Where(each => each.parameter.ParameterType == typeof(double) || each.parameter.ParameterType == typeof(double?))
                .Select(each => new Place(each.index, each.parameter.Name!)),
        ];

        public override bool Equals(object? other) => other is Call call && call.Name == Name && call.Parameters.SequenceEqual(Parameters);

        public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);

        public object? Invoke(object?[] arguments)
        {
            const BindingFlags Plain = BindingFlags.DoNotWrapExceptions;
            var made = constructor?.GetParameters().Length ?? 0;
            var target = constructor?.Invoke(Plain, null, arguments[..made], null);
            return method is null ? target : method.Invoke(target, Plain, null, arguments[made..], null);
        }
    }
}
