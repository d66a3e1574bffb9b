namespace Pawl.Mechanics.Trains;

/// <summary>A stage while it is being recognised, by positions.</summary>
internal sealed class StageBuilder
{
    private int _root;

    public int Carrier { get; private init; }

    public List<int> Planets { get; } = [];

    /// <summary>Gears on central bodies that mesh here.</summary>
    public List<int> CentralGears { get; } = [];

    /// <summary>Central bodies with such a gear, and the carrier.</summary>
    public List<int> Bodies { get; } = [];

    public List<int> Meshes { get; } = [];

    public int PlanetMeshes { get; private set; }

    public List<int> Inputs { get; } = [];

    public List<int> Outputs { get; } = [];

    public bool Touches(bool[] reached)
    {
        foreach (var body in Bodies)
            if (reached[body]) return true;
        foreach (var planet in Planets)
            if (reached[planet]) return true;

        return false;
    }

    /// <summary>Meshes belong together when they share a planet, or in the housing a gear train of central bodies.</summary>
    public static List<StageBuilder> Split(TrainIndex train)
    {
        var group = new int[train.BodyCount];
        for (var i = 0; i < group.Length; i++) group[i] = i;
        foreach (var mesh in train.Meshes)
        {
            // In the housing any two meshing bodies join; in a carrier only its planets do, as suns and rings may serve two stages.
            if (mesh.Carrier < 0 || (train.Carrier[mesh.First] >= 0 && train.Carrier[mesh.Second] >= 0))
                Join(group, mesh.First, mesh.Second);
        }

        var drafts = new List<StageBuilder>();
        for (var k = 0; k < train.Meshes.Length; k++)
        {
            var mesh = train.Meshes[k];
            var anchor = train.Carrier[mesh.First] >= 0 ? mesh.First : train.Carrier[mesh.Second] >= 0 ? mesh.Second : mesh.First;
            var root = Root(group, anchor);
            var draft = Find(drafts, mesh.Carrier, root);
            if (draft is null)
            {
                draft = new StageBuilder { Carrier = mesh.Carrier, _root = root };
                drafts.Add(draft);
                if (mesh.Carrier >= 0) draft.Bodies.Add(mesh.Carrier);
            }

            draft.Meshes.Add(k);
            var planets = draft.Take(train, mesh.FirstGear, mesh.First) + draft.Take(train, mesh.SecondGear, mesh.Second);
            if (planets == 2) draft.PlanetMeshes++;
        }

        drafts.Sort((a, b) => string.CompareOrdinal(a.FirstName(train), b.FirstName(train)));
        return drafts;
    }

    private static StageBuilder? Find(List<StageBuilder> drafts, int carrier, int root)
    {
        foreach (var draft in drafts)
            if (draft.Carrier == carrier && draft._root == root) return draft;

        return null;
    }

    private static void AddOnce(List<int> list, int value)
    {
        if (!list.Contains(value)) list.Add(value);
    }

    private string FirstName(TrainIndex train)
    {
        var first = train.Graph.Meshes[Meshes[0]].Name;
        foreach (var k in Meshes)
            if (string.CompareOrdinal(train.Graph.Meshes[k].Name, first) < 0) first = train.Graph.Meshes[k].Name;

        return first;
    }

    private int Take(TrainIndex train, int gear, int body)
    {
        if (train.Carrier[body] >= 0)
        {
            AddOnce(Planets, body);
            return 1;
        }

        AddOnce(CentralGears, gear);
        AddOnce(Bodies, body);
        return 0;
    }

    private static int Root(int[] group, int body)
    {
        while (group[body] != body) body = group[body];
        return body;
    }

    private static void Join(int[] group, int a, int b) => group[Root(group, a)] = Root(group, b);
}
