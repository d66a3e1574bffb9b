using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class TrainReader
{
    static partial void Check(TrainSpec read, MapReader reader, Scope scope)
    {
        References.CheckNames(reader, read);
        if (BodiesAreKnown(read, reader))
            References.CheckBodies(reader, read);
        References.CheckMeshes(reader, read);
        if (!reader.HasErrors)
            References.CheckEnds(reader, read);
    }

    // What could not be read may declare a body all the same.
    private static bool BodiesAreKnown(TrainSpec read, MapReader reader)
    {
        return read.Input is not null && read.Output is not null
            && reader.Peek("fixed") is YamlList held && held.Items.Length == read.Fixed.Length
            && IsWhole("planets", read.Planets.Entries.Length) && IsWhole("bodies", read.Bodies.Entries.Length);

        bool IsWhole(string key, int count) => (reader.Peek(key) is YamlMap map ? map.Entries.Length : reader.Has(key) ? -1 : 0) == count;
    }
}

internal static partial class PlanetSetReader
{
    static partial void Check(PlanetSetSpec read, MapReader reader, Scope scope)
    {
        if (read.Carrier is { } carrier && carrier.Value == read.Name.Value)
            reader.Report(SpecDiagnostics.SelfCarried(carrier.Span, reader.PathOf("carrier"), carrier.Value));
        if (read.Count is { } count && reader.Has("positions") && !reader.HasErrors && read.Positions.Length != count.Value)
        {
            reader.Report(SpecDiagnostics.WrongCount(
                reader.KeySpan("positions"), reader.PathOf("positions"), $"one angle for each of {count.Value} planets", read.Positions.Length,
                "Leave it out when the planets are equally spaced."));
        }
    }
}
