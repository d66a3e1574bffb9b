namespace Pawl.Mechanics.Trains;

/// <summary>Recognises what kind of train a graph is, and says it in words.</summary>
/// <remarks>Names are common textbook terms. They are for reading; nothing is computed from them.</remarks>
public static class Topology
{
    /// <summary>One sentence without full stop, such as <c>simple planetary: sun in, ring held, carrier out</c>.</summary>
    public static string Describe(TrainGraph graph) =>
        Recognise(graph) is { } topology ? TopologyText.Of(topology) : "not recognised: the train has unresolved problems";

    /// <summary>The stages; null when the graph is unsound. <see cref="TrainSolver"/> says why.</summary>
    public static TrainTopology? Recognise(TrainGraph graph)
    {
        if (TrainIndex.Build(graph, ImmutableArray.CreateBuilder<TrainProblem>()) is not { } train) return null;

        var drafts = StageBuilder.Split(train);
        var coupling = Order(train, drafts);
        var stages = ImmutableArray.CreateBuilder<TrainStage>(drafts.Count);
        foreach (var draft in drafts) stages.Add(Stage(train, draft));
        return new TrainTopology(coupling, stages.MoveToImmutable());
    }

    /// <summary>Sorts the stages from the input on, gives every member its duty, and sees how the stages are joined.</summary>
    private static StageCoupling Order(TrainIndex train, List<StageBuilder> drafts)
    {
        var reached = new bool[train.BodyCount];
        reached[train.Input] = true;
        var series = true;
        for (var done = 0; done < drafts.Count; done++)
        {
            var next = Next(drafts, done, reached);
            if (next < 0)
            {
                next = done;
                series = false;
            }

            var stage = drafts[next];
            drafts.RemoveAt(next);
            drafts.Insert(done, stage);
            foreach (var body in stage.Bodies)
            {
                if (train.IsFixed(body)) continue;
                if (reached[body]) stage.Inputs.Add(body);
                reached[body] = true;
            }
        }

        for (var k = 0; k < drafts.Count; k++)
        {
            var stage = drafts[k];
            foreach (var body in stage.Bodies)
            {
                if (train.IsFixed(body) || stage.Inputs.Contains(body)) continue;
                if (body == train.Output || IsShared(drafts, k + 1, body)) stage.Outputs.Add(body);
            }

            var comesFrom = k == 0 ? train.Input : drafts[k - 1].Outputs is [var driver] ? driver : -1;
            var goesTo = k < drafts.Count - 1 ? -1 : train.Output;
            series &= stage.Inputs is [var driven] && driven == comesFrom
                && stage.Outputs is [var driving] && (goesTo < 0 || driving == goesTo);
        }

        return drafts.Count <= 1 ? StageCoupling.Single : series ? StageCoupling.Series : StageCoupling.Coupled;
    }

    private static int Next(List<StageBuilder> drafts, int from, bool[] reached)
    {
        for (var k = from; k < drafts.Count; k++)
            if (drafts[k].Touches(reached)) return k;

        return -1;
    }

    private static bool IsShared(List<StageBuilder> drafts, int from, int body)
    {
        for (var k = from; k < drafts.Count; k++)
            if (drafts[k].Bodies.Contains(body)) return true;

        return false;
    }

    private static TrainStage Stage(TrainIndex train, StageBuilder draft)
    {
        var members = Members(train, draft);
        if (draft.Carrier < 0)
            return new TrainStage(StageLayout.ParallelShafts, false, StageArrangement.InHousing, null, [], members);

        var planets = new string[draft.Planets.Count];
        for (var i = 0; i < planets.Length; i++) planets[i] = train.NameOf(draft.Planets[i]);
        Array.Sort(planets, StringComparer.Ordinal);
        return new TrainStage(
            Layout(draft, members), IsStepped(train, draft), Arrangement(members), train.NameOf(draft.Carrier), [.. planets], members);
    }

    private static ImmutableArray<StageMember> Members(TrainIndex train, StageBuilder draft)
    {
        var members = new List<StageMember>();
        if (draft.Carrier < 0)
        {
            foreach (var body in draft.Bodies)
                members.Add(new StageMember(MemberKind.Shaft, train.NameOf(body), null, Duty(body)));
        }
        else
        {
            foreach (var gear in draft.CentralGears)
            {
                var body = train.GearBody[gear];
                var kind = train.Graph.Gears[gear].IsInternal ? MemberKind.Ring : MemberKind.Sun;
                members.Add(new StageMember(kind, train.NameOf(body), train.Graph.Gears[gear].Name, Duty(body)));
            }

            members.Add(new StageMember(MemberKind.Carrier, train.NameOf(draft.Carrier), null, Duty(draft.Carrier)));
        }

        members.Sort(static (a, b) =>
        {
            var kind = (int)a.Kind - (int)b.Kind;
            if (kind != 0) return kind;
            var duty = DutyOrder(a.Duty) - DutyOrder(b.Duty);
            return duty != 0 ? duty : string.CompareOrdinal(a.Name, b.Name);
        });
        return [.. members];

        MemberDuty Duty(int body) =>
            train.IsFixed(body) ? MemberDuty.Held
            : draft.Inputs.Contains(body) ? MemberDuty.In
            : draft.Outputs.Contains(body) ? MemberDuty.Out
            : MemberDuty.Free;
    }

    internal static int DutyOrder(MemberDuty duty) => duty switch
    {
        MemberDuty.In => 0,
        MemberDuty.Held => 1,
        MemberDuty.Free => 2,
        _ => 3,
    };

    private static bool IsStepped(TrainIndex train, StageBuilder draft)
    {
        var teeth = new int[train.BodyCount];
        foreach (var k in draft.Meshes)
        {
            var mesh = train.Meshes[k];
            if (Differs(mesh.First, mesh.FirstTeeth) || Differs(mesh.Second, mesh.SecondTeeth)) return true;
        }

        return false;

        bool Differs(int body, int count)
        {
            if (train.Carrier[body] < 0) return false;
            if (teeth[body] == 0) teeth[body] = count;
            return teeth[body] != count;
        }
    }

    private static StageLayout Layout(StageBuilder draft, ImmutableArray<StageMember> members)
    {
        var (suns, rings) = (0, 0);
        foreach (var member in members)
        {
            if (member.Kind == MemberKind.Sun) suns++;
            if (member.Kind == MemberKind.Ring) rings++;
        }

        return (draft.Planets.Count, draft.PlanetMeshes, suns, rings) switch
        {
            (1, 0, 1, 0) or (1, 0, 0, 1) => StageLayout.OneCentralGear,
            (1, 0, 1, 1) => StageLayout.SunAndRing,
            (1, 0, 2, 0) => StageLayout.TwoSuns,
            (1, 0, 0, 2) => StageLayout.TwoRings,
            (1, 0, 1, 2) => StageLayout.SunAndTwoRings,
            (2, 1, 1, 1) => StageLayout.PairedSunAndRing,
            (2, 1, 2, 0) => StageLayout.PairedTwoSuns,
            (2, 1, 0, 2) => StageLayout.PairedTwoRings,
            (2, 1, 2, 1) => StageLayout.PairedTwoSunsAndRing,
            _ => StageLayout.Other,
        };
    }

    private static StageArrangement Arrangement(ImmutableArray<StageMember> members)
    {
        StageMember? held = null;
        foreach (var member in members)
        {
            if (member.Duty != MemberDuty.Held) continue;
            if (held is not null && held.Body != member.Body) return StageArrangement.SeveralHeld;
            held = member;
        }

        return held?.Kind switch
        {
            null => StageArrangement.NothingHeld,
            MemberKind.Sun => StageArrangement.SunHeld,
            MemberKind.Ring => StageArrangement.RingHeld,
            _ => StageArrangement.CarrierHeld,
        };
    }
}
