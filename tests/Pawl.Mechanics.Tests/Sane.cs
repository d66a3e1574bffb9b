using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Gears;
using Pawl.Mechanics.Rating;
using Pawl.Mechanics.Splines;
using Pawl.Mechanics.Stacks;

namespace Pawl.Mechanics.Tests;

/// <summary>Inputs that a function may well answer: first plain ones by name, then seeded trials.</summary>
internal static class Sane
{
    // What a name stands for, the first match of which holds. Angles in rad, lengths in mm, stresses in MPa.
    private static readonly (string Part, double Value)[] ByName =
    [
        ("reliability", 0.9), ("pressureangle", 0.36), ("helix", 0.2), ("pressureangle", 0.36), ("workingangle", 0.38), ("angle", 0.35), ("modulus", 210_000), ("poisson", 0.3), ("normalmodule", 2), ("transversemodule", 2.05), ("module", 2),
        ("density", 7.85e-9), ("expansion", 11.5e-6), ("temperature", 60), ("ambient", 20), ("friction", 0.1), ("yield", 600), ("tensile", 900),
        ("strength", 800), ("hardness", 600), ("teeth", 20), ("speed", 100), ("torque", 50_000), ("force", 1000), ("load", 1000), ("pressure", 20),
        ("ratio", 1.5), ("factor", 1.2), ("share", 0.6), ("roughness", 0.003), ("clearance", 0.05), ("outside", 60), ("outer", 60), ("bore", 15), ("inner", 15),
        ("hole", 12), ("diameter", 40), ("radius", 20), ("width", 20), ("length", 30), ("pitch", 1.25), ("thickness", 5), ("distance", 60), ("viscosity", 100), ("stress", 200),
        ("curvature", 8), ("life", 1e6), ("cycles", 1e6), ("hours", 10_000), ("exponent", 3), ("sigma", 0.01), ("compliance", 1e-6), ("stiffness", 14), ("area", 50_000), ("mass", 1e-3),
    ];

    // An internal pair of module 2 with 20 and −60 teeth, 20°.
    private static readonly Dictionary<string, double> InternalPair = new()
    {
        ["pinionTipDiameter"] = 44, ["pinionBaseDiameter"] = 37.588, ["ringTipDiameter"] = -116.8, ["ringBaseDiameter"] = -112.763,
        ["workingCentreDistance"] = -40, ["workingPressureAngle"] = 0.349066,
    };

    private static readonly string[] Words = ["m", "h", "H", "NBR", "6205", "M8", "normal cleanliness", "mineral oil"];

    // What only fits together as a whole.
    private static object? Whole(Type type) =>
        type == typeof(InvoluteSpline) ? new InvoluteSpline(default, 20, 2, Math.PI / 6, SplineRoot.Fillet)
        : type == typeof(RatedTooth) ? new RatedTooth(20, 2, 0.349066, 0, 0, 44)
        : type == typeof(ToothOutline) ? ToothOutline.Of(new()
        {
            Teeth = 20, NormalModule = 2, NormalPressureAngle = 0.349066, ProfileShift = 0, TipDiameter = 44, RootDiameter = 35, RootRadiusFactor = 0.38,
        })
        : type == typeof(RackTool) ? new RackTool(1.25, 0.38)
        : type == typeof(PinionCutter) ? new PinionCutter(25, 55, 0.4, 0)
        : type == typeof(LoadBin) ? new LoadBin(1000, 100, 0.5)
        : type == typeof(Contributor) ? new Contributor("a size", 1, 9.9, 10.1)
        : null;

    public static object? Value(ParameterInfo parameter, Random random, int round)
    {
        var type = parameter.ParameterType;
        if (type.IsByRef)
            return null;
        if (type == typeof(double) || type == typeof(double?))
            return parameter.Member.DeclaringType == typeof(InvoluteSpline) && parameter.Name == "pressureAngle" ? Math.PI / 6
                : round == 0 && parameter.Member.DeclaringType == typeof(InternalInterference) && InternalPair.TryGetValue(parameter.Name!, out var fits)
                ? fits
                : Number(parameter.Name!, random, round);
        return parameter.Name == "ringTeeth" ? -60 : Of(type, parameter.Name ?? "", random, round, 0);
    }

    private static double Number(string name, Random random, int round)
    {
        var plain = ByName.FirstOrDefault(each => name.Contains(each.Part, StringComparison.OrdinalIgnoreCase)).Value;
        plain = plain == 0 ? 1 : plain;
        return round switch
        {
            0 => plain,
            < 200 => plain * Math.Pow(10, random.NextDouble() - 0.5),
            < 400 => random.Next(3) == 0 ? plain : Math.Pow(10, random.NextDouble() * 6 - 4),
            _ => Math.Pow(10, random.NextDouble() * 9 - 5) * (random.Next(8) == 0 ? -1 : 1),
        };
    }

    private static object? Of(Type type, string name, Random random, int round, int depth)
    {
        if (type == typeof(double))
            return Number(name, random, round);
        if (Whole(type) is { } whole)
            return whole;
        if (type == typeof(int) && name == "draws")
            return 200;
        if (type == typeof(int))
            return name.Contains("teeth", StringComparison.OrdinalIgnoreCase) ? (name.Contains('2') ? 60 : 20) : round == 0 ? 3 : random.Next(1, 12);
        if (type == typeof(long))
            return (long)random.Next(1, 100);
        if (type == typeof(bool))
            return round > 0 && random.Next(2) == 0;
        if (type == typeof(string))
            return Words[round % Words.Length];
        if (type.IsEnum)
        {
            var values = Enum.GetValues(type);
            return values.GetValue(round == 0 ? 0 : random.Next(values.Length));
        }

        if (Nullable.GetUnderlyingType(type) is { } inner)
            return inner == typeof(double) || round % 2 == 0 ? Of(inner, name, random, round, depth) : null;
        if (type == typeof(Func<double, double>))
            return (Func<double, double>)(_ => 5000);
        if (type.IsGenericType && type.GetGenericArguments() is [var item] && depth < 4)
        {
            if (type.GetGenericTypeDefinition() == typeof(ImmutableArray<>) || typeof(IEnumerable).IsAssignableFrom(type))
            {
                var array = Array.CreateInstance(item, 2);
                for (var index = 0; index < 2; index++)
                    array.SetValue(Of(item, name, random, round, depth + 1), index);
                return type.GetGenericTypeDefinition() == typeof(ImmutableArray<>)
                    ? typeof(ImmutableArray).GetMethods().First(method => method.Name == "Create" && method.GetParameters() is [{ ParameterType.IsArray: true }])
                        .MakeGenericMethod(item).Invoke(null, [array])
                    : array;
            }
        }

        if (type.IsAbstract && !type.IsInterface)
        {
            var kinds = type.Assembly.GetExportedTypes().Where(kind => kind.IsSubclassOf(type) && !kind.IsAbstract).ToArray();
            return kinds.Length == 0 ? null : Of(kinds[random.Next(kinds.Length)], name, random, round, depth + 1);
        }

        var constructor = type.GetConstructors().MaxBy(each => each.GetParameters().Length);
        if (constructor is null || depth > 4 || constructor.GetParameters().Any(each => each.ParameterType.IsByRefLike))
            return type.IsValueType ? Activator.CreateInstance(type) : null;
        // Limits in the wrong order are refused half of the time.
        for (var attempt = 0; attempt < 4; attempt++)
        {
            try
            {
                return constructor.Invoke([.. constructor.GetParameters().Select(each => Of(each.ParameterType, each.Name!, random, round, depth + 1))]);
            }
            catch (TargetInvocationException)
            {
            }
        }

        return null;
    }
}
