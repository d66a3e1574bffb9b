using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Names that must have been declared: bodies, gears, materials, lubricants.</summary>
/// <remarks>A catalogue of null could not be read; nothing is looked up in it, since its own faults are reported.</remarks>
internal static class References
{
    public static void CheckMaterial(MapReader reader, string key, Stated<string>? id, Catalogue? catalogue)
    {
        if (id is null || catalogue is null || catalogue.Materials.Find(id.Value) is not null)
            return;
        reader.Report(SpecDiagnostics.NotInCatalogue(
            id.Span, reader.PathOf(key), "material", id.Value, Nearest.To(id.Value, NamesOf(catalogue.Materials.Entries, entry => entry.Name))));
    }

    public static void CheckLubricant(MapReader reader, string key, Stated<string>? id, Catalogue? catalogue)
    {
        if (id is null || catalogue is null || catalogue.Lubricants.Find(id.Value) is not null)
            return;
        reader.Report(SpecDiagnostics.NotInCatalogue(
            id.Span, reader.PathOf(key), "lubricant", id.Value, Nearest.To(id.Value, NamesOf(catalogue.Lubricants.Entries, entry => entry.Name))));
    }

    public static void CheckBearing(MapReader reader, string key, Stated<string>? id, Catalogue? catalogue)
    {
        if (id is null || catalogue is null || catalogue.Bearings.Find(id.Value) is not null)
            return;
        reader.Report(SpecDiagnostics.NotInCatalogue(
            id.Span, reader.PathOf(key), "bearing", id.Value, Nearest.To(id.Value, NamesOf(catalogue.Bearings.Entries, entry => entry.Name))));
    }

    public static void CheckAdapters(MapReader reader, string key, ImmutableArray<Stated<string>> names, Catalogue? catalogue)
    {
        if (catalogue is null)
            return;
        foreach (var name in names)
        {
            if (catalogue.Adapters.Find(name.Value) is null)
                reader.Report(SpecDiagnostics.UnknownAdapter(name.Span, reader.PathOf(key), name.Value, Nearest.To(name.Value, NamesOf(catalogue.Adapters.Entries, entry => entry.Adapter))));
        }
    }

    /// <summary>A body or planet set that the train speaks of. A train with faults of its own is not asked.</summary>
    public static void CheckBody(MapReader reader, string key, Stated<string>? body, TrainSpec? train)
    {
        if (body is null || train is null)
            return;

        List<string> known = [train.Input.Value, train.Output.Value];
        foreach (var held in train.Fixed)
            known.Add(held.Value);
        foreach (var set in train.Planets.Entries)
        {
            known.Add(set.Name.Value);
            known.Add(set.Carrier.Value);
        }

        foreach (var each in train.Bodies.Entries)
            known.Add(each.Name.Value);
        if (!known.Contains(body.Value))
            reader.Report(SpecDiagnostics.UnknownBody(body.Span, reader.PathOf(key), body.Value, Nearest.To(body.Value, known), known));
    }

    /// <summary>An entry of another section of the spec.</summary>
    public static void CheckEntry(MapReader reader, string key, Stated<string>? name, IEnumerable<string> known)
    {
        if (name is null)
            return;
        string[] names = [.. known];
        if (!names.Contains(name.Value, StringComparer.Ordinal))
            reader.Report(SpecDiagnostics.UnknownName(name.Span, reader.PathOf(key), key, name.Value, Nearest.To(name.Value, names), names));
    }

    /// <summary>A name is a body or a planet set, not both.</summary>
    public static void CheckNames(MapReader train, ImmutableArray<BodySpec> bodies, ImmutableArray<PlanetSetSpec> planets)
    {
        foreach (var body in bodies)
        {
            foreach (var set in planets)
            {
                if (set.Name.Value == body.Name.Value)
                    train.Report(SpecDiagnostics.DuplicateName(body.Name.Span, body.Name.Value, set.Name.Span));
            }
        }
    }

    /// <summary>Every gear sits on a body or a planet set that the train speaks of.</summary>
    public static void CheckBodies(
        MapReader train, Stated<string> input, Stated<string> output, ImmutableArray<Stated<string>> @fixed,
        ImmutableArray<BodySpec> bodies, ImmutableArray<PlanetSetSpec> planets, ImmutableArray<GearSpec> gears)
    {
        List<string> known = [];
        Add(input);
        Add(output);
        foreach (var body in @fixed)
            Add(body);
        foreach (var set in planets)
        {
            Add(set.Name);
            Add(set.Carrier);
        }

        foreach (var body in bodies)
            Add(body.Name);

        foreach (var gear in gears)
        {
            if (!known.Contains(gear.On.Value))
            {
                train.Report(SpecDiagnostics.UnknownBody(
                    gear.On.Span, $"{train.PathOf("gears")}.{gear.Name.Value}.on", gear.On.Value, Nearest.To(gear.On.Value, known), known));
            }
        }

        void Add(Stated<string> name)
        {
            if (!known.Contains(name.Value))
                known.Add(name.Value);
        }
    }

    /// <summary>The ends of the train take part in it. Asked only of a train without other faults.</summary>
    /// <remarks>
    /// A housing may be held though nothing meshes with it, so a name under `fixed` is a slip only when it is nearly another's.
    /// </remarks>
    public static void CheckEnds(
        MapReader train, Stated<string> input, Stated<string> output, ImmutableArray<Stated<string>> @fixed,
        ImmutableArray<BodySpec> bodies, ImmutableArray<PlanetSetSpec> planets, ImmutableArray<GearSpec> gears)
    {
        if (gears.IsEmpty)
            return;

        List<string> taking = [];
        foreach (var set in planets)
            taking.Add(set.Carrier.Value);
        foreach (var body in bodies)
            taking.Add(body.Name.Value);
        foreach (var gear in gears)
            taking.Add(gear.On.Value);

        CheckEnd("input", input);
        CheckEnd("output", output);
        foreach (var body in @fixed)
        {
            if (!taking.Contains(body.Value) && Nearest.To(body.Value, taking) is { } near)
                train.Report(SpecDiagnostics.UnknownBody(body.Span, train.PathOf("fixed"), body.Value, near, taking));
        }

        void CheckEnd(string key, Stated<string> end)
        {
            if (!taking.Contains(end.Value))
                train.Report(SpecDiagnostics.IdleEnd(end.Span, train.PathOf(key), end.Value, Nearest.To(end.Value, taking)));
        }
    }

    /// <summary>A mesh names two different gears that exist, and not two rings.</summary>
    public static void CheckMeshes(MapReader train, ImmutableArray<GearSpec> gears, ImmutableArray<MeshSpec> meshes)
    {
        // A gear with a fault of its own is dropped from the model, yet it is declared.
        List<string> declared = [];
        if (train.Node("gears") is YamlMap map)
        {
            foreach (var (name, _) in map.Entries)
                declared.Add(name.Value);
        }
        else
        {
            return;
        }

        foreach (var mesh in meshes)
        {
            foreach (var name in mesh.Gears)
            {
                if (!declared.Contains(name.Value))
                    train.Report(SpecDiagnostics.UnknownGear(name.Span, train.PathOf("meshes"), name.Value, Nearest.To(name.Value, declared), declared));
            }

            var (first, second) = (mesh.Gears[0], mesh.Gears[1]);
            if (first.Value == second.Value)
                train.Report(SpecDiagnostics.SelfMesh(second.Span, train.PathOf("meshes"), second.Value));
            else if (IsInternal(gears, first.Value) && IsInternal(gears, second.Value))
                train.Report(SpecDiagnostics.InternalPair(second.Span, train.PathOf("meshes"), first.Value, second.Value));
        }
    }

    private static bool IsInternal(ImmutableArray<GearSpec> gears, string name)
    {
        foreach (var gear in gears)
        {
            if (gear.Name.Value == name)
                return gear.Internal is { Value: true };
        }

        return false;
    }

    private static List<string> NamesOf<T>(ImmutableArray<T> entries, Func<T, Stated<string>> nameOf)
    {
        List<string> names = new(entries.Length);
        foreach (var entry in entries)
            names.Add(nameOf(entry).Value);
        return names;
    }
}
