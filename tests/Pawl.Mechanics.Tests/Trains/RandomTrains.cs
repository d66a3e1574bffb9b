using Pawl.Mechanics.Trains;

namespace Pawl.Mechanics.Tests.Trains;

/// <summary>Random trains from a seed.</summary>
internal static class RandomTrains
{
    /// <summary>One to three random stages in series, lists in random order. Always determined; the ratio may be singular.</summary>
    public static TrainGraph Series(int seed)
    {
        var random = new Random(seed);
        var lossless = random.Next(4) == 0;
        var builder = new TrainBuilder();
        var held = new List<string>();
        var from = "in";
        for (var (k, stages) = (0, random.Next(1, 4)); k < stages; k++) from = AddStage(builder, random, "s" + k, from, held, lossless);
        return Shuffled(builder.Graph("in", from, [.. held]), random);
    }

    /// <summary>Two or three simple stages whose members are drawn from one small set of bodies: coupled, often unsolvable.</summary>
    public static TrainGraph Coupled(int seed)
    {
        var random = new Random(seed);
        var builder = new TrainBuilder();
        string[] pool = ["a", "b", "c", "d", "e"];
        for (var (k, stages) = (0, random.Next(2, 4)); k < stages; k++)
        {
            random.Shuffle(pool);
            var planet = "p" + k;
            builder.Planet(planet, pool[2], random.Next(3, 6));
            var (sun, inner) = (random.Next(12, 40), random.Next(12, 40));
            builder.Outer(pool[0], sun, planet, inner, Efficiency(random));
            if (random.Next(4) == 0) builder.Outer(pool[1], random.Next(12, 40), planet, random.Next(12, 40), Efficiency(random));
            else builder.Inner(pool[1], sun + 2 * inner, planet, inner, Efficiency(random));
        }

        random.Shuffle(pool);
        var bodies = builder.Graph("", "").Bodies;
        var used = pool.Where(name => bodies.Any(b => b.Name == name)).ToArray();
        return builder.Graph(used[0], used[1], used[2..random.Next(2, used.Length + 1)]);
    }

    public static TrainGraph Shuffled(TrainGraph graph, Random random)
    {
        var bodies = graph.Bodies.ToArray();
        var gears = graph.Gears.ToArray();
        var meshes = graph.Meshes.Select(m => random.Next(2) == 0 ? m : m with { First = m.Second, Second = m.First }).ToArray();
        var held = graph.Fixed.ToArray();
        random.Shuffle(bodies);
        random.Shuffle(gears);
        random.Shuffle(meshes);
        random.Shuffle(held);
        return graph with { Bodies = [.. bodies], Gears = [.. gears], Meshes = [.. meshes], Fixed = [.. held] };
    }

    private static double Efficiency(Random random) => random.Next(5) == 0 ? 1 : 1 - 0.06 * random.NextDouble();

    private static string AddStage(TrainBuilder builder, Random random, string name, string from, List<string> held, bool lossless)
    {
        var kind = random.Next(6);
        if (kind == 0)
        {
            builder.Outer(from, Teeth(), name, Teeth(), Eta());
            return name;
        }

        // Which member is driven, which is held and which drives on is left to chance; a fourth member runs free.
        string[] members = kind == 5 ? ["A", "B", "C", "D"] : ["A", "B", "C"];
        random.Shuffle(members);
        var (driven, fixedMember, output) = (members[0], members[1], members[2]);
        held.Add(Name(fixedMember));
        string carrier = Name("C"), p = name + "p", q = name + "q";
        builder.Planet(p, carrier, 3);
        switch (kind)
        {
            case 1:
                var planet = Teeth();
                builder.Outer(Name("A"), Teeth(), p, planet, Eta()).Inner(Name("B"), planet + Teeth(), p, planet, Eta());
                break;
            case 2:
                var inside = Teeth();
                builder.Outer(Name("A"), Teeth(), p, Teeth(), Eta()).Inner(Name("B"), inside + Teeth(), p, inside, Eta());
                break;
            case 3:
                builder.Outer(Name("A"), Teeth(), p, Teeth(), Eta()).Outer(Name("B"), Teeth(), p, Teeth(), Eta());
                break;
            case 4:
                builder.Planet(q, carrier, 3);
                var second = Teeth();
                builder.Outer(Name("A"), Teeth(), p, Teeth(), Eta()).Outer(p, Teeth(), q, Teeth(), Eta());
                if (random.Next(2) == 0) builder.Outer(Name("B"), Teeth(), q, second, Eta());
                else builder.Inner(Name("B"), second + Teeth(), q, second, Eta());
                break;
            default:
                var (p1, p2) = (Teeth(), Teeth());
                builder.Outer(Name("A"), Teeth(), p, p1, Eta())
                    .Inner(Name("B"), p1 + Teeth(), p, p1, Eta())
                    .Inner(Name("D"), p2 + Teeth(), p, p2, Eta());
                break;
        }

        return Name(output);

        string Name(string member) => member == driven ? from : name + member;
        int Teeth() => random.Next(12, 80);
        double Eta() => lossless ? 1 : Efficiency(random);
    }
}
