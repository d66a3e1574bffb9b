using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>One toothed gear.</summary>
internal static class GearReader
{
    private static readonly string[] Hands = ["left", "right"];
    private static readonly string[] Surfaces = ["through-hardened", "case-hardened", "nitrided", "induction-hardened", "unhardened"];
    private static readonly Amount LeastModule = new(Limits.LeastModule, Units.Millimetre);
    private static readonly Amount GreatestModule = new(Limits.GreatestModule, Units.Millimetre);
    private static readonly Amount LeastPressureAngle = new(Limits.LeastPressureAngle, Units.Degree);
    private static readonly Amount GreatestPressureAngle = new(Limits.GreatestPressureAngle, Units.Degree);

    public static GearSpec? Read(Stated<string> name, MapReader reader, Catalogue? catalogue)
    {
        var on = reader.Name("on", required: true);
        var teeth = reader.Whole("teeth", Limits.FewestTeeth, Limits.MostTeeth, required: true);
        var @internal = reader.Truth("internal");
        var module = reader.Amount("module", Dimension.OfLength, LeastModule, GreatestModule);
        var pitch = reader.Number("diametral_pitch", Limits.LeastDiametralPitch, Limits.GreatestDiametralPitch);
        var pressureAngle = reader.Amount("pressure_angle", Dimension.OfAngle, LeastPressureAngle, GreatestPressureAngle);
        var helixAngle = reader.Amount("helix_angle", Dimension.OfAngle);
        var hand = reader.Word("hand", Hands);
        var profileShift = reader.Number("profile_shift", Limits.LeastProfileShift, Limits.GreatestProfileShift);
        var addendum = reader.Number("addendum", Limits.LeastToothHeight, Limits.GreatestToothHeight);
        var dedendum = reader.Number("dedendum", Limits.LeastToothHeight, Limits.GreatestToothHeight);
        var rootFillet = reader.Number("root_fillet", Limits.LeastRootFillet, Limits.GreatestRootFillet);
        var faceWidth = reader.Toleranced("face_width", Dimension.OfLength, AmountRange.Positive);
        var axialPlace = reader.Toleranced("axial_place", Dimension.OfLength);
        var tipDiameter = reader.Toleranced("tip_diameter", Dimension.OfLength, AmountRange.Positive);
        var rootDiameter = reader.Toleranced("root_diameter", Dimension.OfLength, AmountRange.Positive);
        var rootForm = reader.Toleranced("root_form_diameter", Dimension.OfLength, AmountRange.Positive);
        var tipChamfer = reader.Amount("tip_chamfer", Dimension.OfLength, AmountRange.NotNegative);
        var allowance = reader.Map("thickness_allowance") is { } allowanceMap ? Allowance(allowanceMap) : null;
        var ballDiameter = reader.Amount("ball_diameter", Dimension.OfLength, AmountRange.Positive);
        var rimThickness = reader.Amount("rim_thickness", Dimension.OfLength, AmountRange.Positive);
        var material = reader.Name("material");
        var surface = reader.Word("surface", Surfaces);
        var treatment = reader.Map("heat_treatment") is { } treatmentMap ? HeatTreatmentReader.Read(treatmentMap) : null;
        var grade = reader.Whole("accuracy_grade", Limits.LeastAccuracyGrade, Limits.GreatestAccuracyGrade);
        var pitchDeviation = reader.Amount("pitch_deviation", Dimension.OfLength, AmountRange.Positive);
        var roughness = reader.Map("roughness") is { } roughnessMap ? Roughness(roughnessMap) : null;
        var cutter = reader.Map("cutter") is { } cutterMap ? Cutter(cutterMap) : null;
        reader.Finish();

        if (surface is not null && treatment is not null)
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan("surface"), reader.ObjectPath, "heat_treatment", "surface"));

        CheckPitch(reader);
        CheckHelix(reader, helixAngle);
        References.CheckMaterial(reader, "material", material, catalogue);

        return on is null || teeth is null
            ? null
            : new()
            {
                Name = name,
                On = on,
                Teeth = teeth,
                Internal = @internal,
                Module = module,
                DiametralPitch = pitch,
                PressureAngle = pressureAngle,
                HelixAngle = helixAngle,
                Hand = hand,
                ProfileShift = profileShift,
                Addendum = addendum,
                Dedendum = dedendum,
                RootFillet = rootFillet,
                FaceWidth = faceWidth,
                AxialPlace = axialPlace,
                TipDiameter = tipDiameter,
                RootDiameter = rootDiameter,
                RootFormDiameter = rootForm,
                TipChamfer = tipChamfer,
                ThicknessAllowance = allowance,
                BallDiameter = ballDiameter,
                RimThickness = rimThickness,
                Material = material,
                Surface = surface,
                HeatTreatment = treatment,
                AccuracyGrade = grade,
                PitchDeviation = pitchDeviation,
                Roughness = roughness,
                Cutter = cutter,
            };
    }

    private static void CheckPitch(MapReader reader)
    {
        var (hasModule, hasPitch) = (reader.Has("module"), reader.Has("diametral_pitch"));
        if (!hasModule && !hasPitch)
            reader.Report(SpecDiagnostics.MissingPitch(reader.NameSpan, reader.ObjectPath));
        else if (hasModule && hasPitch)
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan("diametral_pitch"), reader.ObjectPath, "module", "diametral_pitch"));
    }

    private static void CheckHelix(MapReader reader, Stated<Amount>? angle)
    {
        if (angle is null)
            return;

        var degrees = Units.Degree.FromCoherent(angle.Value.Coherent);
        if (degrees < 0)
        {
            reader.Report(SpecDiagnostics.OutOfRange(
                angle.Span, reader.PathOf("helix_angle"), angle.Text, "zero or more", "Write the angle without a sign and state `hand: left` or `hand: right`."));
        }
        else if (degrees >= Limits.HelixAngleBelow - 1e-9)
        {
            reader.Report(SpecDiagnostics.OutOfRange(angle.Span, reader.PathOf("helix_angle"), angle.Text, "less than 60°"));
        }
        else if (degrees > 0 && !reader.Has("hand"))
        {
            reader.Report(SpecDiagnostics.MissingHand(reader.KeySpan("helix_angle"), reader.ObjectPath));
        }
    }

    private static RoughnessSpec Roughness(MapReader reader)
    {
        var flankRz = reader.Amount("flank_rz", Dimension.OfLength, AmountRange.Positive);
        var flankRa = reader.Amount("flank_ra", Dimension.OfLength, AmountRange.Positive);
        var rootRz = reader.Amount("root_rz", Dimension.OfLength, AmountRange.Positive);
        reader.Finish();
        if (flankRz is not null && flankRa is not null && flankRa.Value.Coherent > flankRz.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(flankRa.Span, reader.PathOf("flank_ra"), flankRa.Text, $"at most the Rz of {flankRz.Text}", "Exchange them: Ra is a mean, Rz goes from peak to valley."));
        return new() { FlankRz = flankRz, FlankRa = flankRa, RootRz = rootRz };
    }

    private static CutterSpec? Cutter(MapReader reader)
    {
        var teeth = reader.Whole("teeth", Limits.FewestTeeth, Limits.MostTeeth, required: true);
        var tip = reader.Amount("tip_diameter", Dimension.OfLength, AmountRange.Positive, required: true);
        var shift = reader.Number("profile_shift", Limits.LeastProfileShift, Limits.GreatestProfileShift);
        var radius = reader.Amount("tip_radius", Dimension.OfLength, AmountRange.NotNegative, required: true);
        reader.Finish();
        return teeth is null || tip is null || radius is null
            ? null
            : new() { Teeth = teeth, TipDiameter = tip, ProfileShift = shift, TipRadius = radius };
    }

    private static ThicknessAllowanceSpec? Allowance(MapReader reader)
    {
        var upper = reader.Amount("upper", Dimension.OfLength, AmountRange.NotPositive, required: true);
        var lower = reader.Amount("lower", Dimension.OfLength, AmountRange.NotPositive, required: true);
        reader.Finish();
        if (upper is null || lower is null)
            return null;

        if (lower.Value.Coherent > upper.Value.Coherent)
            reader.Report(SpecDiagnostics.AllowanceOrder(lower.Span, reader.PathOf("lower"), lower.Text, upper.Text));
        return new() { Upper = upper, Lower = lower };
    }
}
