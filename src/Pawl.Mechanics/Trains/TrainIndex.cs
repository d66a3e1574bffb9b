namespace Pawl.Mechanics.Trains;

/// <summary>A sound train graph with names replaced by positions, ready for arithmetic.</summary>
internal sealed class TrainIndex
{
    private TrainIndex(TrainGraph graph) => Graph = graph;

    public TrainGraph Graph { get; }

    /// <summary>Position of the carrier of every body; −1 for a central body.</summary>
    public required int[] Carrier { get; init; }

    /// <summary>Body under every gear.</summary>
    public required int[] GearBody { get; init; }

    public required Mesh[] Meshes { get; init; }

    /// <summary>Held bodies, each once, in the order of the bodies.</summary>
    public required int[] Fixed { get; init; }

    public required int Input { get; init; }

    public required int Output { get; init; }

    /// <summary>Bodies without a mesh of their own or of their planets, unless held.</summary>
    public required bool[] Idle { get; init; }

    public int BodyCount => Carrier.Length;

    public string NameOf(int body) => Graph.Bodies[body].Name;

    public bool IsFixed(int body) => IndexIn(Fixed, body) >= 0;

    /// <summary>Position of a value; −1 when absent.</summary>
    public static int IndexIn(int[] values, int value)
    {
        for (var i = 0; i < values.Length; i++)
            if (values[i] == value) return i;

        return -1;
    }

    public int PositionOf(string body)
    {
        for (var i = 0; i < Graph.Bodies.Length; i++)
            if (Graph.Bodies[i].Name == body) return i;

        return -1;
    }

    /// <summary>A mesh by positions. <c>Sign</c> is +1 external, −1 internal; <c>Carrier</c> −1 is the housing.</summary>
    public readonly record struct Mesh(
        int FirstGear, int SecondGear, int First, int Second, int FirstTeeth, int SecondTeeth, int Sign, int Carrier, double Efficiency);

    /// <summary>Checks the graph; null when a problem leaves nothing to solve.</summary>
    public static TrainIndex? Build(TrainGraph graph, ImmutableArray<TrainProblem>.Builder problems)
    {
        var bodies = Names(graph.Bodies, static b => b.Name, "bodies", problems);
        var gears = Names(graph.Gears, static g => g.Name, "gears", problems);
        Names(graph.Meshes, static m => m.Name, "meshes", problems);

        var carrier = Carriers(graph, bodies, problems);
        var gearBody = GearBodies(graph, bodies, problems);
        var meshes = MeshesOf(graph, gears, gearBody, carrier, problems);
        var held = FixedBodies(graph, bodies, problems);
        var input = Shaft("input", graph.Input, bodies, held, problems);
        var output = Shaft("output", graph.Output, bodies, held, problems);
        if (input >= 0 && input == output) problems.Add(new TrainProblem.InputIsOutput(graph.Input));

        if (TrainSolver.Blocked(problems, TrainStep.Speeds)) return null;

        return new TrainIndex(graph)
        {
            Carrier = carrier,
            GearBody = gearBody,
            Meshes = meshes,
            Fixed = held,
            Input = input,
            Output = output,
            Idle = IdleBodies(graph, carrier, meshes, held, problems),
        };
    }

    private static Dictionary<string, int> Names<T>(
        ImmutableArray<T> items, Func<T, string> name, string sort, ImmutableArray<TrainProblem>.Builder problems)
        where T : class
    {
        var positions = new Dictionary<string, int>(items.Length, StringComparer.Ordinal);
        for (var i = 0; i < items.Length; i++)
            if (!positions.TryAdd(name(items[i]), i)) problems.Add(new TrainProblem.DuplicateName(sort, name(items[i])));

        return positions;
    }

    private static int[] Carriers(TrainGraph graph, Dictionary<string, int> bodies, ImmutableArray<TrainProblem>.Builder problems)
    {
        var carrier = new int[graph.Bodies.Length];
        for (var i = 0; i < carrier.Length; i++)
        {
            var body = graph.Bodies[i];
            carrier[i] = -1;
            if (body.Count < 1 || (body.Carrier is null && body.Count != 1))
                problems.Add(new TrainProblem.InvalidCount(body.Name, body.Count, body.Carrier is not null));
            if (body.Carrier is null) continue;

            if (!bodies.TryGetValue(body.Carrier, out var position))
                problems.Add(new TrainProblem.CarrierMissing(body.Name, body.Carrier));
            else if (graph.Bodies[position].Carrier is not null)
                problems.Add(new TrainProblem.CarrierIsPlanet(body.Name, body.Carrier));
            else
                carrier[i] = position;
        }

        return carrier;
    }

    private static int[] GearBodies(TrainGraph graph, Dictionary<string, int> bodies, ImmutableArray<TrainProblem>.Builder problems)
    {
        var gearBody = new int[graph.Gears.Length];
        for (var i = 0; i < gearBody.Length; i++)
        {
            var gear = graph.Gears[i];
            if (gear.Teeth < 1) problems.Add(new TrainProblem.InvalidTeeth(gear.Name, gear.Teeth));
            if (!bodies.TryGetValue(gear.Body, out gearBody[i]))
            {
                gearBody[i] = -1;
                problems.Add(new TrainProblem.UnknownName("Gear " + gear.Name, gear.Body, "body"));
            }
        }

        return gearBody;
    }

    private static Mesh[] MeshesOf(
        TrainGraph graph, Dictionary<string, int> gears, int[] gearBody, int[] carrier, ImmutableArray<TrainProblem>.Builder problems)
    {
        var meshes = new Mesh[graph.Meshes.Length];
        for (var i = 0; i < meshes.Length; i++)
        {
            var mesh = graph.Meshes[i];
            var first = GearOf(mesh.First);
            var second = GearOf(mesh.Second);
            if (!(mesh.Efficiency > 0 && mesh.Efficiency <= 1))
                problems.Add(new TrainProblem.InvalidEfficiency(mesh.Name, mesh.Efficiency));
            if (first < 0 || second < 0 || gearBody[first] < 0 || gearBody[second] < 0) continue;

            var (a, b) = (graph.Gears[first], graph.Gears[second]);
            CheckTeeth(mesh.Name, a, b, problems);
            var (bodyA, bodyB) = (gearBody[first], gearBody[second]);
            meshes[i] = new Mesh(first, second, bodyA, bodyB, a.Teeth, b.Teeth, a.IsInternal || b.IsInternal ? -1 : 1,
                CarrierOf(mesh.Name, graph, bodyA, bodyB, carrier, problems), mesh.Efficiency);

            int GearOf(string name)
            {
                if (gears.TryGetValue(name, out var position)) return position;
                problems.Add(new TrainProblem.UnknownName("Mesh " + mesh.Name, name, "gear"));
                return -1;
            }
        }

        return meshes;
    }

    private static void CheckTeeth(string mesh, TrainGear a, TrainGear b, ImmutableArray<TrainProblem>.Builder problems)
    {
        if (a.IsInternal && b.IsInternal)
            problems.Add(new TrainProblem.TwoInternalGears(mesh, a.Name, b.Name));
        else if (a.IsInternal && a.Teeth <= b.Teeth)
            problems.Add(new TrainProblem.RingTooSmall(mesh, a.Name, a.Teeth, b.Name, b.Teeth));
        else if (b.IsInternal && b.Teeth <= a.Teeth)
            problems.Add(new TrainProblem.RingTooSmall(mesh, b.Name, b.Teeth, a.Name, a.Teeth));
    }

    private static int CarrierOf(
        string mesh, TrainGraph graph, int a, int b, int[] carrier, ImmutableArray<TrainProblem>.Builder problems)
    {
        var (bodyA, bodyB) = (graph.Bodies[a], graph.Bodies[b]);
        if (a == b)
            problems.Add(new TrainProblem.MeshWithinBody(mesh, bodyA.Name));
        else if (carrier[a] == b)
            problems.Add(new TrainProblem.MeshWithOwnCarrier(mesh, bodyA.Name, bodyB.Name));
        else if (carrier[b] == a)
            problems.Add(new TrainProblem.MeshWithOwnCarrier(mesh, bodyB.Name, bodyA.Name));
        else if (carrier[a] >= 0 && carrier[b] >= 0 && carrier[a] != carrier[b])
            problems.Add(new TrainProblem.DifferentCarriers(mesh, bodyA.Name, bodyB.Name));
        else if (carrier[a] >= 0 && carrier[b] >= 0 && bodyA.Count != bodyB.Count)
            problems.Add(new TrainProblem.PlanetCountsDiffer(mesh, bodyA.Name, bodyA.Count, bodyB.Name, bodyB.Count));

        return Math.Max(carrier[a], carrier[b]);
    }

    private static int[] FixedBodies(TrainGraph graph, Dictionary<string, int> bodies, ImmutableArray<TrainProblem>.Builder problems)
    {
        var held = new List<int>(graph.Fixed.Length);
        foreach (var name in graph.Fixed)
        {
            if (!bodies.TryGetValue(name, out var position))
                problems.Add(new TrainProblem.UnknownName("The list of fixed bodies", name, "body"));
            else if (!held.Contains(position))
                held.Add(position);
        }

        held.Sort();
        return held.ToArray();
    }

    private static int Shaft(
        string role, string name, Dictionary<string, int> bodies, int[] held, ImmutableArray<TrainProblem>.Builder problems)
    {
        if (!bodies.TryGetValue(name, out var position))
        {
            problems.Add(new TrainProblem.UnknownName("The " + role, name, "body"));
            return -1;
        }

        if (IndexIn(held, position) >= 0) problems.Add(new TrainProblem.ShaftFixed(role, name));
        return position;
    }

    private static bool[] IdleBodies(
        TrainGraph graph, int[] carrier, Mesh[] meshes, int[] held, ImmutableArray<TrainProblem>.Builder problems)
    {
        var busy = new bool[carrier.Length];
        foreach (var mesh in meshes)
        {
            busy[mesh.First] = busy[mesh.Second] = true;
            if (mesh.Carrier >= 0) busy[mesh.Carrier] = true;
        }

        foreach (var body in held) busy[body] = true;
        var idle = new bool[carrier.Length];
        for (var i = 0; i < idle.Length; i++)
        {
            idle[i] = !busy[i];
            if (idle[i]) problems.Add(new TrainProblem.IdleBody(graph.Bodies[i].Name));
        }

        return idle;
    }
}
