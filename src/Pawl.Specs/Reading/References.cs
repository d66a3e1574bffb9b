using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Names that must have been declared: bodies, gears, materials, lubricants.</summary>
/// <remarks>A catalogue of null could not be read; nothing is looked up in it, since its own faults are reported.</remarks>
internal static class References
{
    /// <summary>A name that must have been declared.</summary>
    public static void Check(MapReader reader, string key, Stated<string>? name, Declared kind, Scope scope)
    {
        if (name is null)
            return;
        switch (kind)
        {
            case Declared.Material:
                InCatalogue(reader, key, "material", name, scope.Lookup?.Materials, entry => entry.Name);
                break;
            case Declared.Lubricant:
                InCatalogue(reader, key, "lubricant", name, scope.Lookup?.Lubricants, entry => entry.Name);
                break;
            case Declared.BearingType:
                InCatalogue(reader, key, "bearing", name, scope.Lookup?.Bearings, entry => entry.Name);
                break;
            case Declared.Adapter:
                if (scope.Lookup is { } catalogue && catalogue.Adapters.Find(name.Value) is null)
                    reader.Report(SpecDiagnostics.UnknownAdapter(name.Span, reader.PathOf(key), name.Value, Nearest.To(name.Value, NamesOf(catalogue.Adapters.Entries, entry => entry.Adapter))));
                break;
            case Declared.Body:
                InTrain(reader, key, name, scope.Train);
                break;
            case Declared.PlanetSet:
                InSection(reader, key, name, scope.Train?.Planets, set => set.Name);
                break;
            case Declared.Bearing:
                InSection(reader, key, name, scope.Bearings, bearing => bearing.Name);
                break;
            case Declared.Joint:
                InSection(reader, key, name, scope.Joints, joint => joint.Name);
                break;
            case Declared.Anything:
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(kind), kind, "Nothing of the kind is declared anywhere.");
        }
    }

    /// <summary>Names that must have been declared.</summary>
    public static void Check(MapReader reader, string key, ImmutableArray<Stated<string>> names, Declared kind, Scope scope)
    {
        foreach (var name in names)
            Check(reader, key, name, kind, scope);
    }

    private static void InCatalogue<T>(
        MapReader reader, string key, string kind, Stated<string> id, Named<T>? entries, Func<T, Stated<string>> nameOf)
        where T : class
    {
        if (entries is not null && entries.Find(id.Value) is null)
            reader.Report(SpecDiagnostics.NotInCatalogue(id.Span, reader.PathOf(key), kind, id.Value, Nearest.To(id.Value, NamesOf(entries.Entries, nameOf))));
    }

    private static void InSection<T>(MapReader reader, string key, Stated<string> name, Named<T>? section, Func<T, Stated<string>> nameOf)
        where T : class
    {
        if (section is null || section.Find(name.Value) is not null)
            return;
        string[] names = [.. NamesOf(section.Entries, nameOf)];
        reader.Report(SpecDiagnostics.UnknownName(name.Span, reader.PathOf(key), key, name.Value, Nearest.To(name.Value, names), names));
    }

    /// <summary>A body or planet set that the train speaks of. A train with faults of its own is not asked.</summary>
    private static void InTrain(MapReader reader, string key, Stated<string> body, TrainSpec? train)
    {
        if (train is null)
            return;
        var known = Bodies(train);
        if (!known.Contains(body.Value))
            reader.Report(SpecDiagnostics.UnknownBody(body.Span, reader.PathOf(key), body.Value, Nearest.To(body.Value, known), known));
    }

    /// <summary>The bodies and planet sets that a train speaks of, in the order of its keys.</summary>
    private static List<string> Bodies(TrainSpec train)
    {
        List<string> known = [];
        Add(train.Input);
        Add(train.Output);
        foreach (var held in train.Fixed)
            Add(held);
        foreach (var set in train.Planets.Entries)
        {
            Add(set.Name);
            Add(set.Carrier);
        }

        foreach (var body in train.Bodies.Entries)
            Add(body.Name);
        return known;

        void Add(Stated<string> name)
        {
            if (!known.Contains(name.Value))
                known.Add(name.Value);
        }
    }

    private static List<string> NamesOf<T>(ImmutableArray<T> entries, Func<T, Stated<string>> nameOf)
    {
        List<string> names = new(entries.Length);
        foreach (var entry in entries)
            names.Add(nameOf(entry).Value);
        return names;
    }

    /// <summary>A name is a body or a planet set, not both.</summary>
    public static void CheckNames(MapReader reader, TrainSpec train)
    {
        foreach (var body in train.Bodies.Entries)
        {
            if (train.Planets.Find(body.Name.Value) is { } set)
                reader.Report(SpecDiagnostics.DuplicateName(body.Name.Span, body.Name.Value, set.Name.Span));
        }
    }

    /// <summary>Every gear sits on a body or a planet set that the train speaks of. Asked only when these have been read.</summary>
    public static void CheckBodies(MapReader reader, TrainSpec train)
    {
        var known = Bodies(train);
        foreach (var gear in train.Gears.Entries)
        {
            if (!known.Contains(gear.On.Value))
            {
                reader.Report(SpecDiagnostics.UnknownBody(
                    gear.On.Span, $"{reader.PathOf("gears")}.{gear.Name.Value}.on", gear.On.Value, Nearest.To(gear.On.Value, known), known));
            }
        }
    }

    /// <summary>The ends of the train take part in it. Asked only of a train without other faults.</summary>
    /// <remarks>
    /// A housing may be held though nothing meshes with it, so a name under `fixed` is a slip only when it is nearly another's.
    /// </remarks>
    public static void CheckEnds(MapReader reader, TrainSpec train)
    {
        if (train.Gears.Entries.IsEmpty)
            return;

        List<string> taking = [];
        foreach (var set in train.Planets.Entries)
            taking.Add(set.Carrier.Value);
        foreach (var body in train.Bodies.Entries)
            taking.Add(body.Name.Value);
        foreach (var gear in train.Gears.Entries)
            taking.Add(gear.On.Value);

        CheckEnd("input", train.Input);
        CheckEnd("output", train.Output);
        foreach (var body in train.Fixed)
        {
            if (!taking.Contains(body.Value) && Nearest.To(body.Value, taking) is { } near)
                reader.Report(SpecDiagnostics.UnknownBody(body.Span, reader.PathOf("fixed"), body.Value, near, taking));
        }

        void CheckEnd(string key, Stated<string> end)
        {
            if (!taking.Contains(end.Value))
                reader.Report(SpecDiagnostics.IdleEnd(end.Span, reader.PathOf(key), end.Value, Nearest.To(end.Value, taking)));
        }
    }

    /// <summary>A mesh names two different gears that exist, and not two rings.</summary>
    public static void CheckMeshes(MapReader reader, TrainSpec train)
    {
        // A gear with a fault of its own is dropped from the model, yet it is declared.
        List<string> declared = [];
        if (reader.Peek("gears") is YamlMap map)
        {
            foreach (var (name, _) in map.Entries)
                declared.Add(name.Value);
        }
        else
        {
            return;
        }

        Dictionary<(string, string), SourceSpan> pairs = [];
        foreach (var mesh in train.Meshes)
        {
            foreach (var name in mesh.Gears)
            {
                if (!declared.Contains(name.Value))
                    reader.Report(SpecDiagnostics.UnknownGear(name.Span, reader.PathOf("meshes"), name.Value, Nearest.To(name.Value, declared), declared));
            }

            var (first, second) = (mesh.Gears[0], mesh.Gears[1]);
            if (first.Value == second.Value)
                reader.Report(SpecDiagnostics.SelfMesh(second.Span, reader.PathOf("meshes"), second.Value));
            else if (IsInternal(train, first.Value) && IsInternal(train, second.Value))
                reader.Report(SpecDiagnostics.InternalPair(second.Span, reader.PathOf("meshes"), first.Value, second.Value));
            var ordered = string.CompareOrdinal(first.Value, second.Value) < 0 ? (first.Value, second.Value) : (second.Value, first.Value);
            if (!pairs.TryAdd(ordered, mesh.Span))
                reader.Report(SpecDiagnostics.RepeatedMesh(mesh.Span, reader.PathOf("meshes"), first.Value, second.Value, pairs[ordered]));
        }
    }

    private static bool IsInternal(TrainSpec train, string name) => train.Gears.Find(name) is { Internal.Value: true };
}
