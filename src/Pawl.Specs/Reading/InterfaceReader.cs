using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Interfaces of a gearbox, and what a side of one is made of.</summary>
internal static class InterfaceReader
{
    private static readonly string[] Kinds = ["flange", "shaft", "mount"];
    private static readonly string[] Flanks = ["external", "internal"];
    private static readonly string[] Pilots = ["spigot", "recess"];
    private static readonly string[] Holes = ["through", "tapped"];
    private static readonly string[] Dowel = ["pin", "hole"];
    private static readonly string[] Seals = ["groove", "face"];

    public static InterfaceSpec? Read(Stated<string> name, MapReader reader, Catalogue? catalogue, TrainSpec? train)
    {
        var body = reader.Name("body", required: true);
        var eccentricity = reader.Amount("greatest_eccentricity", Dimension.OfLength, AmountRange.Positive);
        var adapters = reader.Names("adapters");
        var side = Side(reader);
        reader.Finish();

        References.CheckBody(reader, "body", body, train);
        References.CheckAdapters(reader, "adapters", adapters, catalogue);
        for (var i = 1; i < adapters.Length; i++)
        {
            if (adapters[..i].Any(earlier => earlier.Value == adapters[i].Value))
                reader.Report(SpecDiagnostics.OutOfRange(adapters[i].Span, reader.PathOf("adapters"), adapters[i].Text, "a list of different adapters", "It stands there already."));
        }

        return body is null || side is null
            ? null
            : new()
            {
                Name = name,
                Body = body,
                GreatestEccentricity = eccentricity,
                Adapters = adapters,
                Kind = side.Kind,
                Spline = side.Spline,
                Pilot = side.Pilot,
                Bolts = side.Bolts,
                Dowels = side.Dowels,
                Seal = side.Seal,
                Engagement = side.Engagement,
                Torque = side.Torque,
                Speed = side.Speed,
            };
    }

    /// <summary>The keys of a side; the caller finishes.</summary>
    public static InterfaceSideSpec? Side(MapReader reader)
    {
        var kind = reader.Word("kind", Kinds, required: true);
        var spline = reader.Map("spline") is { } teeth ? Spline(teeth) : null;
        var pilot = reader.Map("pilot") is { } register ? Pilot(register) : null;
        var bolts = reader.Map("bolts") is { } screws ? Bolts(screws) : null;
        var dowels = reader.Map("dowels") is { } pins ? Dowels(pins) : null;
        var seal = reader.Map("seal") is { } ring ? Seal(ring) : null;
        var engagement = reader.Amount("engagement", Dimension.OfLength, AmountRange.Positive);
        var torque = reader.Amount("torque", Dimension.OfTorque, AmountRange.Positive);
        var speed = reader.Amount("speed", Dimension.OfAngularSpeed, AmountRange.Positive);
        return kind is null
            ? null
            : new()
            {
                Kind = kind,
                Spline = spline,
                Pilot = pilot,
                Bolts = bolts,
                Dowels = dowels,
                Seal = seal,
                Engagement = engagement,
                Torque = torque,
                Speed = speed,
            };
    }

    private static InterfaceSplineSpec? Spline(MapReader reader)
    {
        var side = reader.Word("side", Flanks, required: true);
        var system = reader.Word("system", SplineReader.Systems, required: true);
        var (module, pitch) = SplineReader.Pitch(reader);
        var angle = SplineReader.Angle(reader);
        var teeth = reader.Whole("teeth", Limits.FewestTeeth, Limits.MostTeeth, required: true);
        var root = reader.Word("root", SplineReader.Roots, required: true);
        var @class = reader.Whole("class", Limits.FinestSplineClass, Limits.CoarsestSplineClass);
        var fit = reader.Word("fit", SplineReader.Fits);
        var length = reader.Amount("length", Dimension.OfLength, AmountRange.Positive);
        reader.Finish();
        return side is null || system is null || angle is null || teeth is null || root is null
            ? null
            : new()
            {
                Side = side,
                System = system,
                Module = module,
                DiametralPitch = pitch,
                PressureAngle = angle,
                Teeth = teeth,
                Root = root,
                Class = @class,
                Fit = fit,
                Length = length,
            };
    }

    private static PilotSpec? Pilot(MapReader reader)
    {
        var side = reader.Word("side", Pilots, required: true);
        var diameter = reader.Toleranced("diameter", Dimension.OfLength, AmountRange.Positive, required: true);
        var depth = reader.Toleranced("depth", Dimension.OfLength, AmountRange.Positive);
        reader.Finish();
        return side is null || diameter is null ? null : new() { Side = side, Diameter = diameter, Depth = depth };
    }

    private static BoltPatternSpec? Bolts(MapReader reader)
    {
        var thread = reader.Text("thread", required: true);
        var holes = reader.Word("holes", Holes, required: true);
        var count = reader.Whole("count", Limits.FewestBolts, Limits.MostBolts, required: true);
        var circle = reader.Amount("circle", Dimension.OfLength, AmountRange.Positive, required: true);
        var angle = reader.Amount("angle", Dimension.OfAngle);
        var grip = reader.Amount("grip", Dimension.OfLength, AmountRange.Positive);
        var length = reader.Amount("screw_length", Dimension.OfLength, AmountRange.Positive);
        var depth = reader.Amount("thread_depth", Dimension.OfLength, AmountRange.Positive);
        reader.Finish();
        if (grip is not null && length is not null && length.Value.Coherent <= grip.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(length.Span, reader.PathOf("screw_length"), length.Text, $"more than the grip of {grip.Text}", "The screw would end in its hole."));
        return thread is null || holes is null || count is null || circle is null
            ? null
            : new() { Thread = thread, Holes = holes, Count = count, Circle = circle, Angle = angle, Grip = grip, ScrewLength = length, ThreadDepth = depth };
    }

    private static DowelPatternSpec? Dowels(MapReader reader)
    {
        var side = reader.Word("side", Dowel, required: true);
        var diameter = reader.Toleranced("diameter", Dimension.OfLength, AmountRange.Positive, required: true);
        var count = reader.Whole("count", Limits.FewestBolts, Limits.MostBolts, required: true);
        var circle = reader.Amount("circle", Dimension.OfLength, AmountRange.Positive, required: true);
        var angle = reader.Amount("angle", Dimension.OfAngle);
        reader.Finish();
        return side is null || diameter is null || count is null || circle is null
            ? null
            : new() { Side = side, Diameter = diameter, Count = count, Circle = circle, Angle = angle };
    }

    private static InterfaceSealSpec? Seal(MapReader reader)
    {
        var kind = reader.Word("kind", Seals, required: true);
        var diameter = reader.Amount("diameter", Dimension.OfLength, AmountRange.Positive);
        var from = reader.Amount("from", Dimension.OfLength, AmountRange.Positive);
        var to = reader.Amount("to", Dimension.OfLength, AmountRange.Positive);
        reader.Finish();
        if (from is not null && to is not null && to.Value.Coherent <= from.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(to.Span, reader.PathOf("to"), to.Text, $"more than {from.Text}, where the face begins"));
        return kind is null ? null : new() { Kind = kind, Diameter = diameter, From = from, To = to };
    }
}
