using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>How a gear is heat treated, and the windows that a catalogue gives for it.</summary>
internal static class HeatTreatmentReader
{
    private static readonly string[] Words = [.. Treatments.Words];
    private static readonly string[] Qualities = ["ML", "MQ", "ME"];
    private static readonly string[] Platings = ["none", "electroplated", "phosphated", "pickled"];
    private static readonly string[] Processes = ["coating", "shrink-fit", "curing", "stress-relief", "other"];
    private static readonly string[] Features = ["raceway", "seal-seat", "bearing-seat", "spline", "floating-spline", "thread"];

    private static readonly Amount LeastCarbon = new(0, Units.Percent);
    private static readonly Amount GreatestCarbon = new(Limits.GreatestCarbon, Units.Percent);

    public static HeatTreatmentSpec? Read(MapReader reader)
    {
        // All keys are read before a missing treatment ends it, so that one run names every fault.
        var treatment = reader.Word("treatment", Words, required: true);
        var spec = new HeatTreatmentSpec
        {
            Span = reader.NameSpan,
            Treatment = treatment!,
            Quality = reader.Word("quality", Qualities),
            Proof = reader.Text("proof"),
            SurfaceHardness = reader.Hardness("surface_hardness"),
            CoreHardness = reader.Hardness("core_hardness"),
            HardenabilityProven = reader.Truth("hardenability_proven"),
            RootHardened = reader.Truth("root_hardened"),
            CaseDepth = reader.Toleranced("case_depth", Dimension.OfLength, AmountRange.Positive),
            GrindingStock = reader.Amount("grinding_stock", Dimension.OfLength, AmountRange.NotNegative),
            FurnaceSpread = reader.Amount("furnace_spread", Dimension.OfLength, AmountRange.Positive),
            Tempering = reader.Amount("tempering", Dimension.OfTemperature),
            Nitriding = reader.Amount("nitriding", Dimension.OfTemperature),
            YieldStrength = reader.Amount("yield_strength", Dimension.OfStress, AmountRange.Positive),
            LaterHeat = reader.Items("later_heat", LaterHeat),
            Plating = reader.Word("plating", Platings),
            Bake = reader.Map("bake") is { } bake ? Bake(bake) : null,
            Peening = reader.Map("peening") is { } peening ? Peening(peening) : null,
            Superfinished = reader.Truth("superfinished"),
            Features = reader.Items("features", Feature),
        };
        reader.Finish();
        if (treatment is null)
            return null;

        if (!Treatments.HasCase(treatment.Value) && spec.CaseDepth is { } depth)
            reader.Report(SpecDiagnostics.NoCase(depth.Span, reader.PathOf("case_depth"), treatment.Value));
        return spec;
    }

    public static TreatmentSpec? Treatment(Stated<string> name, MapReader reader)
    {
        if (Array.IndexOf(Words, name.Value) < 0)
            reader.Report(SpecDiagnostics.UnknownWord(name.Span, reader.ObjectPath, name.Value, Nearest.To(name.Value, Words), Words));
        var @class = reader.Word("class", ClassesOf(name.Value), required: true);
        var surface = reader.Hardness("surface_hardness");
        var core = reader.Hardness("core_hardness");
        var tempering = reader.Map("tempering") is { } map ? Window(map) : null;
        var contact = reader.Amount("contact_limit", Dimension.OfStress, AmountRange.Positive);
        var bending = reader.Amount("bending_limit", Dimension.OfStress, AmountRange.Positive);
        reader.Finish();
        return @class is null || reader.HasErrors
            ? null
            : new()
            {
                Name = name,
                Class = @class,
                SurfaceHardness = surface,
                CoreHardness = core,
                Tempering = tempering,
                ContactLimit = contact,
                BendingLimit = bending,
            };
    }

    /// <summary>Carbon of a steel. Without its percent sign 0.15 would be 15 %.</summary>
    public static ShareWindowSpec? Carbon(MapReader reader)
    {
        var least = reader.Amount("least", Dimension.Ratio, LeastCarbon, GreatestCarbon, required: true);
        var most = reader.Amount("most", Dimension.Ratio, LeastCarbon, GreatestCarbon, required: true);
        reader.Finish();
        CheckOrder(reader, least, most);
        return least is null || most is null ? null : new() { Least = least, Most = most };
    }

    // The classes of ISO 6336-5 that a treatment can lead to; none: tests of one's own, or no rating.
    private static string[] ClassesOf(string treatment) => treatment switch
    {
        Treatments.Normalised => ["St", "none"],
        Treatments.ThroughHardened => ["V-carbon", "V-alloy", "none"],
        Treatments.InductionHardened => ["IF", "none"],
        Treatments.CaseHardened => ["Eh", "none"],
        Treatments.GasNitrided => ["NT", "NV-nitrided", "none"],
        Treatments.Nitrocarburised => ["NV-nitrocarburised", "none"],
        Treatments.PrecipitationHardened => ["none"],
        _ => ["St", "V-carbon", "V-alloy", "IF", "Eh", "NT", "NV-nitrided", "NV-nitrocarburised", "none"],
    };

    private static TemperatureWindowSpec? Window(MapReader reader)
    {
        var least = reader.Amount("least", Dimension.OfTemperature, required: true);
        var most = reader.Amount("most", Dimension.OfTemperature, required: true);
        reader.Finish();
        CheckOrder(reader, least, most);
        return least is null || most is null ? null : new() { Least = least, Most = most };
    }

    private static void CheckOrder(MapReader reader, Stated<Amount>? least, Stated<Amount>? most)
    {
        if (least is not null && most is not null && least.Value.Coherent > most.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(most.Span, reader.PathOf("most"), most.Text, $"at least {least.Text}", "Exchange them."));
    }

    private static LaterHeatSpec? LaterHeat(MapReader reader)
    {
        var process = reader.Word("process", Processes, required: true);
        var temperature = reader.Amount("temperature", Dimension.OfTemperature, required: true);
        reader.Finish();
        return process is null || temperature is null ? null : new() { Process = process, Temperature = temperature };
    }

    private static BakeSpec? Bake(MapReader reader)
    {
        var temperature = reader.Amount("temperature", Dimension.OfTemperature, required: true);
        var duration = reader.Amount("duration", Dimension.OfTime, AmountRange.Positive, required: true);
        var within = reader.Amount("begins_within", Dimension.OfTime, AmountRange.Positive);
        reader.Finish();
        return temperature is null || duration is null
            ? null
            : new() { Temperature = temperature, Duration = duration, BeginsWithin = within };
    }

    private static PeeningSpec Peening(MapReader reader)
    {
        var intensity = reader.Amount("intensity", Dimension.OfLength, AmountRange.Positive);
        var coverage = reader.Amount("coverage", Dimension.Ratio, AmountRange.Positive);
        var ground = reader.Truth("root_ground_after");
        reader.Finish();
        return new() { Intensity = intensity, Coverage = coverage, RootGroundAfter = ground };
    }

    private static PartFeatureSpec? Feature(MapReader reader)
    {
        var feature = reader.Word("feature", Features, required: true);
        var hardness = reader.Hardness("hardness");
        reader.Finish();
        return feature is null ? null : new() { Span = reader.Span, Feature = feature, Hardness = hardness };
    }
}
