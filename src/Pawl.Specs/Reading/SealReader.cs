using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>O-rings, lip seals, lubrication.</summary>
internal static class SealReader
{
    private static readonly string[] Elastomers = ["NBR", "HNBR", "FKM", "FFKM", "EPDM", "VMQ", "FVMQ", "ACM"];
    private static readonly string[] Glands = ["plug", "bore", "face-inside", "face-outside"];
    private static readonly string[] Motions = ["static", "reciprocating", "rotating"];
    private static readonly string[] LipElastomers = ["NBR", "HNBR", "ACM", "FKM", "VMQ", "PTFE"];
    private static readonly string[] Sides = ["oil", "outside"];
    private static readonly string[] Supplies = ["splash", "jet", "grease"];
    private static readonly string[] Attitudes = ["horizontal", "vertical"];

    private static readonly string[] Cleanlinesses =
        ["-/13/10", "-/15/12", "-/17/14", "-/19/16", "-/21/18", "high", "normal", "slight", "typical", "severe"];

    public static ORingSpec? ORing(Stated<string> name, MapReader reader)
    {
        var dash = reader.Whole("as568", Limits.LeastDash, Limits.GreatestDash);
        var inside = reader.Toleranced("inside", Dimension.OfLength, AmountRange.Positive);
        var cord = reader.Toleranced("cord", Dimension.OfLength, AmountRange.Positive);
        var elastomer = reader.Word("elastomer", Elastomers);
        var hardness = reader.Number("hardness", Limits.LeastIrhd, Limits.GreatestIrhd);
        var gland = reader.Word("gland", Glands, required: true);
        var motion = reader.Word("motion", Motions);
        var bore = reader.Toleranced("bore", Dimension.OfLength, AmountRange.Positive);
        var plug = reader.Toleranced("plug", Dimension.OfLength, AmountRange.Positive);
        var groove = reader.Toleranced("groove", Dimension.OfLength, AmountRange.Positive);
        var depth = reader.Toleranced("depth", Dimension.OfLength, AmountRange.Positive);
        var width = reader.Toleranced("width", Dimension.OfLength, AmountRange.Positive);
        var land = reader.Amount("land", Dimension.OfLength, AmountRange.Positive);
        var eccentricity = reader.Amount("eccentricity", Dimension.OfLength, AmountRange.NotNegative);
        var leadIn = reader.Map("lead_in") is { } chamfer ? LeadIn(chamfer) : null;
        var surface = reader.Amount("surface", Dimension.OfLength, AmountRange.Positive);
        var pressure = reader.Amount("pressure", Dimension.OfStress, AmountRange.NotNegative);
        var swell = reader.Amount("swell", Dimension.Ratio, AmountRange.NotNegative);
        var speed = reader.Amount("speed", Dimension.OfSpeed, AmountRange.NotNegative);
        reader.Finish();

        if (dash is not null && (inside is not null || cord is not null))
            reader.Report(SpecDiagnostics.ExclusiveKeys(dash.Span, reader.ObjectPath, "as568", inside is not null ? "inside" : "cord"));
        if (width is not null && land is not null && width.Value.Nominal.Coherent >= land.Value.Coherent)
        {
            reader.Report(SpecDiagnostics.OutOfRange(
                width.Span, reader.PathOf("width"), width.Text, $"less than the land of {land.Text}", "The groove would leave nothing of the land."));
        }

        return gland is null
            ? null
            : new()
            {
                Name = name,
                As568 = dash,
                Inside = inside,
                Cord = cord,
                Elastomer = elastomer,
                Hardness = hardness,
                Gland = gland,
                Motion = motion,
                Bore = bore,
                Plug = plug,
                Groove = groove,
                Depth = depth,
                Width = width,
                Land = land,
                Eccentricity = eccentricity,
                LeadIn = leadIn,
                Surface = surface,
                Pressure = pressure,
                Swell = swell,
                Speed = speed,
            };
    }

    public static LipSealSpec? LipSeal(Stated<string> name, MapReader reader, TrainSpec? train)
    {
        var shaft = reader.Name("shaft", required: true);
        var housing = reader.Name("housing", required: true);
        var diameter = reader.Toleranced("diameter", Dimension.OfLength, AmountRange.Positive);
        var bore = reader.Toleranced("bore", Dimension.OfLength, AmountRange.Positive);
        var elastomer = reader.Word("elastomer", LipElastomers);
        var hardness = reader.Hardness("hardness");
        var surface = reader.Toleranced("surface", Dimension.OfLength, AmountRange.Positive);
        var leadFree = reader.Truth("lead_free");
        var runout = reader.Amount("runout", Dimension.OfLength, AmountRange.NotNegative);
        var towards = reader.Word("towards", Sides);
        var pressure = reader.Amount("greatest_pressure", Dimension.OfStress, AmountRange.Positive);
        reader.Finish();

        References.CheckBody(reader, "shaft", shaft, train);
        References.CheckBody(reader, "housing", housing, train);
        return shaft is null || housing is null
            ? null
            : new()
            {
                Name = name,
                Shaft = shaft,
                Housing = housing,
                Diameter = diameter,
                Bore = bore,
                Elastomer = elastomer,
                Hardness = hardness,
                Surface = surface,
                LeadFree = leadFree,
                Runout = runout,
                Towards = towards,
                GreatestPressure = pressure,
            };
    }

    public static LubricationSpec Lubrication(MapReader reader)
    {
        var supply = reader.Word("supply", Supplies);
        var cleanliness = reader.Word("cleanliness", Cleanlinesses);
        var extreme = reader.Truth("extreme_pressure");
        var attitude = reader.Word("attitude", Attitudes);
        var ambient = reader.Amount("ambient", Dimension.OfTemperature);
        var area = reader.Amount("cooling_area", Dimension.OfArea, AmountRange.Positive);
        var transfer = reader.Amount("heat_transfer", Dimension.OfHeatTransfer, AmountRange.Positive);
        var losses = reader.Amount("other_losses", Dimension.OfPower, AmountRange.NotNegative);
        var volume = reader.Amount("free_volume", Dimension.OfVolume, AmountRange.Positive);
        var fill = reader.Amount("fill", Dimension.OfVolume, AmountRange.Positive);
        var ports = reader.Map("ports") is { } portsMap ? Ports(portsMap) : null;
        reader.Finish();

        if (volume is not null && fill is not null && fill.Value.Coherent >= volume.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(fill.Span, reader.PathOf("fill"), fill.Text, $"less than the free volume of {volume.Text}"));
        return new()
        {
            Supply = supply,
            Cleanliness = cleanliness,
            ExtremePressure = extreme,
            Attitude = attitude,
            Ambient = ambient,
            CoolingArea = area,
            HeatTransfer = transfer,
            OtherLosses = losses,
            FreeVolume = volume,
            Fill = fill,
            Ports = ports,
        };
    }

    private static LeadInSpec? LeadIn(MapReader reader)
    {
        var angle = reader.Amount("angle", Dimension.OfAngle, AmountRange.Positive, required: true);
        var length = reader.Amount("length", Dimension.OfLength, AmountRange.Positive, required: true);
        reader.Finish();
        return angle is null || length is null ? null : new() { Angle = angle, Length = length };
    }

    private static PortsSpec Ports(MapReader reader)
    {
        var fill = reader.Truth("fill");
        var drain = reader.Truth("drain");
        var vent = reader.Truth("vent");
        var level = reader.Truth("level");
        reader.Finish();
        return new() { Fill = fill, Drain = drain, Vent = vent, Level = level };
    }
}
