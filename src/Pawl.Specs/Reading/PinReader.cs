using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Dowels, retaining rings and planet pins.</summary>
internal static class PinReader
{
    private static readonly string[] Purposes = ["locate", "carry"];
    private static readonly string[] Sits = ["shaft", "bore"];
    private static readonly string[] Held = ["straddled", "overhung"];
    private static readonly string[] Secured = ["press", "press and pin", "flat", "ring", "none"];

    public static DowelSpec? Dowels(Stated<string> name, MapReader reader, TrainSpec? train, ImmutableArray<JointSpec> joints)
    {
        var joint = reader.Name("joint");
        var carries = reader.Name("carries");
        var torque = reader.Amount("torque", Dimension.OfTorque, AmountRange.NotNegative);
        var purpose = reader.Word("purpose", Purposes, required: true);
        var count = reader.Whole("count", Limits.FewestBolts, Limits.MostBolts, required: true);
        var circle = reader.Amount("circle", Dimension.OfLength, AmountRange.Positive, required: true);
        var diameter = reader.Toleranced("diameter", Dimension.OfLength, AmountRange.Positive, required: true);
        var bore = reader.Amount("bore", Dimension.OfLength, AmountRange.NotNegative);
        var yield = reader.Amount("yield", Dimension.OfStress, AmountRange.Positive);
        var parts = reader.Items("parts", Part, required: true);
        var pins = reader.Amount("pin_position", Dimension.OfLength, AmountRange.NotNegative);
        var holes = reader.Amount("hole_position", Dimension.OfLength, AmountRange.NotNegative);
        var reamed = reader.Truth("reamed_together");
        reader.Finish();

        if (!joints.IsDefault)
            References.CheckEntry(reader, "joint", joint, joints.Select(each => each.Name.Value));
        References.CheckBody(reader, "carries", carries, train);
        foreach (var (key, stated) in ((string, object?)[])[("carries", carries), ("torque", torque)])
        {
            if (joint is not null && stated is not null)
                reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan(key), reader.ObjectPath, "joint", key));
        }

        if (carries is not null && torque is not null)
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan("torque"), reader.ObjectPath, "carries", "torque"));
        if (!reader.HasErrors && reader.Node("parts") is YamlList { Items.Length: not 2 } list)
            reader.Report(SpecDiagnostics.WrongCount(list.Span, reader.PathOf("parts"), "two parts", list.Items.Length, "Name the part that holds the dowels first."));
        Below(reader, "bore", bore, diameter);
        foreach (var part in parts)
        {
            if (part.Hole is { } hole && diameter is not null && Math.Abs(hole.Value.Nominal.Coherent - diameter.Value.Nominal.Coherent) > 0.1 * diameter.Value.Nominal.Coherent)
                reader.Report(SpecDiagnostics.OutOfRange(hole.Span, reader.PathOf("parts"), hole.Text, $"about the diameter of the dowels, {diameter.Text}"));
        }

        return purpose is null || count is null || circle is null || diameter is null
            ? null
            : new()
            {
                Name = name,
                Joint = joint,
                Carries = carries,
                Torque = torque,
                Purpose = purpose,
                Count = count,
                Circle = circle,
                Diameter = diameter,
                Bore = bore,
                Yield = yield,
                Parts = parts,
                PinPosition = pins,
                HolePosition = holes,
                ReamedTogether = reamed,
            };
    }

    public static RetainingRingSpec? Ring(Stated<string> name, MapReader reader, TrainSpec? train, ImmutableArray<BearingSpec> bearings)
    {
        var on = reader.Name("on", required: true);
        var sits = reader.Word("sits", Sits, required: true);
        var diameter = reader.Amount("diameter", Dimension.OfLength, AmountRange.Positive, required: true);
        var groove = reader.Amount("groove", Dimension.OfLength, AmountRange.Positive);
        var land = reader.Amount("land", Dimension.OfLength, AmountRange.NotNegative);
        var yield = reader.Amount("yield", Dimension.OfStress, AmountRange.Positive);
        var corner = reader.Amount("corner", Dimension.OfLength, AmountRange.NotNegative);
        var load = reader.Amount("ring_load", Dimension.OfForce, AmountRange.Positive);
        var speed = reader.Amount("greatest_speed", Dimension.OfAngularSpeed, AmountRange.Positive);
        var force = reader.Amount("axial_force", Dimension.OfForce, AmountRange.NotNegative);
        var bearing = reader.Name("bearing");
        reader.Finish();

        References.CheckBody(reader, "on", on, train);
        if (!bearings.IsDefault)
            References.CheckEntry(reader, "bearing", bearing, bearings.Select(each => each.Name.Value));
        if (bearing is not null && force is not null)
            reader.Report(SpecDiagnostics.ExclusiveKeys(bearing.Span, reader.ObjectPath, "axial_force", "bearing"));
        if (groove is not null && diameter is not null && sits is not null
            && (sits.Value == "shaft" ? groove.Value.Coherent >= diameter.Value.Coherent : groove.Value.Coherent <= diameter.Value.Coherent))
        {
            reader.Report(SpecDiagnostics.OutOfRange(
                groove.Span, reader.PathOf("groove"), groove.Text,
                sits.Value == "shaft" ? $"less than the shaft of {diameter.Text}" : $"more than the bore of {diameter.Text}"));
        }

        return on is null || sits is null || diameter is null
            ? null
            : new()
            {
                Name = name,
                On = on,
                Sits = sits,
                Diameter = diameter,
                Groove = groove,
                Land = land,
                Yield = yield,
                Corner = corner,
                RingLoad = load,
                GreatestSpeed = speed,
                AxialForce = force,
                Bearing = bearing,
            };
    }

    public static PlanetPinSpec? Planet(Stated<string> name, MapReader reader, Catalogue? catalogue, TrainSpec? train)
    {
        var planets = reader.Name("planets", required: true);
        var material = reader.Name("material");
        var diameter = reader.Toleranced("diameter", Dimension.OfLength, AmountRange.Positive, required: true);
        var bore = reader.Amount("bore", Dimension.OfLength, AmountRange.NotNegative);
        var held = reader.Word("held", Held, required: true);
        var span = reader.Amount("span", Dimension.OfLength, AmountRange.Positive);
        var gap = reader.Amount("gap", Dimension.OfLength, AmountRange.NotNegative);
        var width = reader.Amount("load_width", Dimension.OfLength, AmountRange.Positive, required: true);
        var cheek = reader.Amount("cheek", Dimension.OfLength, AmountRange.Positive);
        var cheekYield = reader.Amount("cheek_yield", Dimension.OfStress, AmountRange.Positive);
        var cheekHole = reader.Toleranced("cheek_hole", Dimension.OfLength, AmountRange.Positive);
        var yield = reader.Amount("yield", Dimension.OfStress, AmountRange.Positive);
        var slope = reader.Amount("greatest_slope", Dimension.OfAngle, AmountRange.Positive);
        var secured = reader.Word("secured", Secured);
        reader.Finish();

        References.CheckMaterial(reader, "material", material, catalogue);
        if (train is not null)
            References.CheckEntry(reader, "planets", planets, train.Planets.Entries.Select(set => set.Name.Value));
        Below(reader, "bore", bore, diameter);
        if (span is not null && width is not null && width.Value.Coherent > span.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(width.Span, reader.PathOf("load_width"), width.Text, $"no more than the span of {span.Text}", "The load lies between the cheeks."));
        if (held is { Value: "overhung" } && span is not null)
            reader.Report(SpecDiagnostics.ExclusiveKeys(span.Span, reader.ObjectPath, "held: overhung", "span"));
        return planets is null || diameter is null || held is null || width is null
            ? null
            : new()
            {
                Name = name,
                Planets = planets,
                Material = material,
                Diameter = diameter,
                Bore = bore,
                Held = held,
                Span = span,
                Gap = gap,
                LoadWidth = width,
                Cheek = cheek,
                CheekYield = cheekYield,
                CheekHole = cheekHole,
                Yield = yield,
                GreatestSlope = slope,
                Secured = secured,
            };
    }

    private static DowelledPartSpec? Part(MapReader reader)
    {
        var part = reader.Text("part");
        var yield = reader.Amount("yield", Dimension.OfStress, AmountRange.Positive);
        var length = reader.Amount("length", Dimension.OfLength, AmountRange.Positive, required: true);
        var hole = reader.Toleranced("hole", Dimension.OfLength, AmountRange.Positive);
        reader.Finish();
        return length is null ? null : new() { Part = part, Yield = yield, Length = length, Hole = hole };
    }

    private static void Below(MapReader reader, string key, Stated<Amount>? bore, Stated<Toleranced>? diameter)
    {
        if (bore is not null && diameter is not null && bore.Value.Coherent >= diameter.Value.Nominal.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(bore.Span, reader.PathOf(key), bore.Text, $"less than the diameter of {diameter.Text}"));
    }
}
