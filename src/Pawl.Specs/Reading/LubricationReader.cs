using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>How the gearbox is lubricated and cooled.</summary>
internal static class LubricationReader
{
    private static readonly string[] Supplies = ["splash", "jet", "grease"];
    private static readonly string[] Cleanlinesses = ["-/13/10", "-/15/12", "-/17/14", "-/19/16", "-/21/18", "extreme", "high", "normal", "slight", "typical", "severe"];
    private static readonly string[] Attitudes = ["horizontal", "vertical"];
    private static readonly string[] TopBearings = ["grease", "trough", "jet", "flooded", "none"];

    public static LubricationSpec Read(MapReader reader, Catalogue? catalogue)
    {
        var supply = reader.Word("supply", Supplies);
        var cleanliness = reader.Word("cleanliness", Cleanlinesses);
        var filtered = reader.Truth("filtered");
        var extreme = reader.Truth("extreme_pressure");
        var attitude = reader.Word("attitude", Attitudes);
        var wetted = reader.Truth("lowest_wetted");
        var top = reader.Word("top_bearing", TopBearings);
        var before = reader.Name("oil_before");
        var flushed = reader.Truth("flushed");
        var ambient = reader.Amount("ambient", Dimension.OfTemperature);
        var area = reader.Amount("cooling_area", Dimension.OfArea, AmountRange.Positive);
        var transfer = reader.Amount("heat_transfer", Dimension.OfHeatTransfer, AmountRange.Positive);
        var losses = reader.Amount("other_losses", Dimension.OfPower, AmountRange.NotNegative);
        var volume = reader.Amount("free_volume", Dimension.OfVolume, AmountRange.Positive);
        var fill = reader.Amount("fill", Dimension.OfVolume, AmountRange.Positive);
        var least = reader.Amount("least_fill", Dimension.OfVolume, AmountRange.Positive);
        var greatest = reader.Amount("greatest_fill", Dimension.OfVolume, AmountRange.Positive);
        var ports = reader.Map("ports") is { } portsMap ? Ports(portsMap) : null;
        reader.Finish();

        References.CheckLubricant(reader, "oil_before", before, catalogue);
        if (volume is not null && fill is not null && fill.Value.Coherent >= volume.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(fill.Span, reader.PathOf("fill"), fill.Text, $"less than the free volume of {volume.Text}"));
        if (least is not null && greatest is not null && least.Value.Coherent > greatest.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(least.Span, reader.PathOf("least_fill"), least.Text, $"not above the greatest fill of {greatest.Text}"));
        return new()
        {
            Supply = supply,
            Cleanliness = cleanliness,
            Filtered = filtered,
            ExtremePressure = extreme,
            Attitude = attitude,
            LowestWetted = wetted,
            TopBearing = top,
            OilBefore = before,
            Flushed = flushed,
            Ambient = ambient,
            CoolingArea = area,
            HeatTransfer = transfer,
            OtherLosses = losses,
            FreeVolume = volume,
            Fill = fill,
            LeastFill = least,
            GreatestFill = greatest,
            Ports = ports,
        };
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
