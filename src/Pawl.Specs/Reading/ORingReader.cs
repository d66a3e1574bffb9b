using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>An O-ring in its gland.</summary>
internal static class ORingReader
{
    private static readonly string[] Elastomers = ["NBR", "HNBR", "FKM", "FFKM", "EPDM", "VMQ", "FVMQ", "ACM"];
    private static readonly string[] Glands = ["plug", "bore", "face-inside", "face-outside"];
    private static readonly string[] Motions = ["static", "reciprocating", "rotating"];

    public static ORingSpec? Read(Stated<string> name, MapReader reader)
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
        Below("width", width, land?.Value.Coherent, $"less than the land of {land?.Text}", "The groove would leave nothing of the land.");
        Below("plug", plug, bore?.Value.Nominal.Coherent, $"no more than the bore of {bore?.Text}", "The plug would not go into its bore.", orEqual: true);
        if (gland is { Value: "plug" })
            Below("groove", groove, plug?.Value.Nominal.Coherent, $"less than the plug of {plug?.Text}", "The groove is cut into the plug.");
        if (gland is { Value: "bore" } && groove is not null && bore is not null && groove.Value.Nominal.Coherent <= bore.Value.Nominal.Coherent)
        {
            reader.Report(SpecDiagnostics.OutOfRange(
                groove.Span, reader.PathOf("groove"), groove.Text, $"more than the bore of {bore.Text}", "The groove is cut into the bore."));
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

        void Below(string key, Stated<Toleranced>? value, double? limit, string range, string hint, bool orEqual = false)
        {
            if (value?.Value.Nominal.Coherent is { } found && (orEqual ? found > limit : found >= limit))
                reader.Report(SpecDiagnostics.OutOfRange(value.Span, reader.PathOf(key), value.Text, range, hint));
        }
    }

    public static LeadInSpec? LeadIn(MapReader reader)
    {
        var angle = reader.Amount("angle", Dimension.OfAngle, AmountRange.Positive, required: true);
        var length = reader.Amount("length", Dimension.OfLength, AmountRange.Positive, required: true);
        reader.Finish();
        if (angle is not null && angle.Value.Coherent >= Math.PI / 2)
            reader.Report(SpecDiagnostics.OutOfRange(angle.Span, reader.PathOf("angle"), angle.Text, "less than 90°", "From the axis: 15° to 30° is usual."));
        return angle is null || length is null ? null : new() { Angle = angle, Length = length };
    }
}
