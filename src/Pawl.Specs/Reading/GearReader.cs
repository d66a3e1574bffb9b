using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class GearReader
{
    static partial void Check(GearSpec read, MapReader reader, Scope scope)
    {
        if (read.Surface is not null && read.HeatTreatment is not null)
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan("surface"), reader.ObjectPath, "heat_treatment", "surface"));

        var (hasModule, hasPitch) = (reader.Has("module"), reader.Has("diametral_pitch"));
        if (!hasModule && !hasPitch)
            reader.Report(SpecDiagnostics.MissingPitch(reader.NameSpan, reader.ObjectPath));
        else if (hasModule && hasPitch)
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan("diametral_pitch"), reader.ObjectPath, "module", "diametral_pitch"));

        if (read is { TipDiameter: not null, TipDeviations: not null })
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan("tip_deviations"), reader.ObjectPath, "tip_diameter", "tip_deviations"));
        if (read is { RootDiameter: not null, RootDeviations: not null })
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan("root_deviations"), reader.ObjectPath, "root_diameter", "root_deviations"));
        if (read.HelixAngle is { } angle)
            CheckHelix(reader, angle);
    }

    private static void CheckHelix(MapReader reader, Stated<Amount> angle)
    {
        var degrees = Units.Degree.FromCoherent(angle.Value.Coherent);
        if (degrees < 0)
            reader.Outside("helix_angle", angle, "zero or more", "Write the angle without a sign and state `hand: left` or `hand: right`.");
        else if (degrees >= Limits.HelixAngleBelow - 1e-9)
            reader.Outside("helix_angle", angle, "less than 60°");
        else if (degrees > 0 && !reader.Has("hand"))
            reader.Report(SpecDiagnostics.MissingHand(reader.KeySpan("helix_angle"), reader.ObjectPath));
    }
}

internal static partial class RoughnessReader
{
    static partial void Check(RoughnessSpec read, MapReader reader, Scope scope) =>
        reader.NotAbove("flank_ra", read.FlankRa.Size(), read.FlankRz.Size(), "at most the Rz of", "Exchange them: Ra is a mean, Rz goes from peak to valley.");
}

internal static partial class ThicknessAllowanceReader
{
    static partial void Check(ThicknessAllowanceSpec read, MapReader reader, Scope scope)
    {
        if (read.Lower is { } lower && read.Upper is { } upper && lower.Value.Coherent > upper.Value.Coherent)
            reader.Report(SpecDiagnostics.AllowanceOrder(lower.Span, reader.PathOf("lower"), lower.Text, upper.Text));
    }
}

internal static partial class DeviationsReader
{
    static partial void Check(DeviationsSpec read, MapReader reader, Scope scope)
    {
        if (read.Lower is { } lower && read.Upper is { } upper && lower.Value.Coherent > upper.Value.Coherent)
            reader.Report(SpecDiagnostics.AllowanceOrder(lower.Span, reader.PathOf("lower"), lower.Text, upper.Text));
    }
}
