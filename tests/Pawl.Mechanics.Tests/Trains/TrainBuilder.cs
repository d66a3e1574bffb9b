using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

/// <summary>Writes graphs briefly. Bodies appear when first named; a gear is named by its body and teeth; meshes m1, m2, ….</summary>
internal sealed class TrainBuilder
{
    private readonly List<TrainBody> _bodies = [];
    private readonly List<TrainGear> _gears = [];
    private readonly List<TrainMesh> _meshes = [];

    public TrainBuilder Planet(string name, string carrier, int count = 1)
    {
        _bodies.Add(new TrainBody(name, carrier, count));
        return Body(carrier);
    }

    public TrainBuilder Body(string name)
    {
        if (!_bodies.Exists(b => b.Name == name)) _bodies.Add(new TrainBody(name));
        return this;
    }

    /// <summary>Two external gears in mesh.</summary>
    public TrainBuilder Outer(string a, int teethA, string b, int teethB, double efficiency = 1) =>
        Mesh(Gear(a, teethA, false), Gear(b, teethB, false), efficiency);

    /// <summary>A ring and the gear inside it.</summary>
    public TrainBuilder Inner(string ring, int ringTeeth, string inside, int teeth, double efficiency = 1) =>
        Mesh(Gear(ring, ringTeeth, true), Gear(inside, teeth, false), efficiency);

    public TrainBuilder Mesh(string first, string second, double efficiency = 1)
    {
        _meshes.Add(new TrainMesh("m" + (_meshes.Count + 1), first, second, efficiency));
        return this;
    }

    public string Gear(string body, int teeth, bool isInternal)
    {
        Body(body);
        var name = isInternal ? $"{body}_ring_{teeth}" : $"{body}_{teeth}";
        if (!_gears.Exists(g => g.Name == name)) _gears.Add(new TrainGear(name, body, teeth, isInternal));
        return name;
    }

    public TrainGraph Graph(string input, string output, params string[] held) =>
        new([.. _bodies], [.. _gears], [.. _meshes], input, output, [.. held]);

    public TrainSolution Solve(string input, string output, params string[] held) =>
        TrainSolver.Solve(Graph(input, output, held));

    public static TrainBuilder Simple(int sun = 20, int planet = 25, int ring = 70, double outer = 0.99, double inner = 0.995) =>
        new TrainBuilder().Planet("planet", "carrier", 3)
            .Outer("sun", sun, "planet", planet, outer)
            .Inner("ring", ring, "planet", planet, inner);

    public static TrainBuilder TwoSuns(int sun1, int longOnSun1, int longOnShort, int shortTeeth, int sun2, double efficiency = 0.99) =>
        new TrainBuilder().Planet("long", "carrier", 3).Planet("short", "carrier", 3)
            .Outer("sun1", sun1, "long", longOnSun1, efficiency)
            .Outer("long", longOnShort, "short", shortTeeth, efficiency)
            .Outer("sun2", sun2, "short", shortTeeth, efficiency);

    public static TrainBuilder PairWithRing(
        int sun, int first, int second, int ring, double outer = 0.99, double inner = 0.995) =>
        new TrainBuilder().Planet("p1", "carrier", 3).Planet("p2", "carrier", 3)
            .Outer("sun", sun, "p1", first, outer)
            .Outer("p1", first, "p2", second, outer)
            .Inner("ring", ring, "p2", second, inner);

    public static TrainBuilder Wolfrom(
        int sun, int p1, int ring1, int p2, int ring2, double outer = 0.99, double inner1 = 0.995, double inner2 = 0.995) =>
        new TrainBuilder().Planet("planet", "carrier", 3)
            .Outer("sun", sun, "planet", p1, outer)
            .Inner("ring1", ring1, "planet", p1, inner1)
            .Inner("ring2", ring2, "planet", p2, inner2);
}
