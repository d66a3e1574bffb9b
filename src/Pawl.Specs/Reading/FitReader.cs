using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class FitReader
{
    static partial void Check(FitSpec read, MapReader reader, Scope scope)
    {
        CheckSizes(read, reader);
        if (read.HolePart is { } hub && hub.Value == read.ShaftPart?.Value)
            reader.Report(SpecDiagnostics.SelfFitted(read.ShaftPart.Span, reader.PathOf("shaft_part"), read.ShaftPart.Value));
        if (read is { Carries: not null, Torque: { } torque })
            reader.Report(SpecDiagnostics.ExclusiveKeys(torque.Span, reader.ObjectPath, "carries", "torque"));
        reader.NotBelow("max_clearance", read.MaxClearance.Size(), read.MinClearance.Size(), "no less than the least clearance of", "Exchange the two.");
        reader.NotBelow("max_friction", read.MaxFriction.Size(), read.MinFriction.Size(), "no less than the least friction of");
        var diameter = (read.Size ?? read.Hole ?? read.Shaft)?.Value.Nominal.Coherent;
        if (read.ShaftBore is { } bore && bore.Value.Nominal.Coherent >= diameter)
            reader.Outside("shaft_bore", bore, "less than the diameter of the fit");
        if (read.HubOutside is { } outside && outside.Value.Nominal.Coherent <= diameter)
            reader.Outside("hub_outside", outside, "more than the diameter of the fit");
    }

    private static void CheckSizes(FitSpec read, MapReader reader)
    {
        var (size, hole, shaft) = (read.Size, read.Hole, read.Shaft);
        if (size is not null && (hole ?? shaft) is { } other)
            reader.Report(SpecDiagnostics.ExclusiveKeys(other.Span, reader.ObjectPath, "size", hole is not null ? "hole" : "shaft"));
        if (size is { Value.Tolerance: not Tolerance.Fit })
            reader.Report(SpecDiagnostics.NotAFit(size.Span, reader.PathOf("size"), size.Text));
        if (hole is { Value.Tolerance: Tolerance.ToleranceClass { IsHole: false } })
            reader.Report(SpecDiagnostics.WrongPart(hole.Span, reader.PathOf("hole"), hole.Text, "a hole", "capital"));
        if (shaft is { Value.Tolerance: Tolerance.ToleranceClass { IsHole: true } })
            reader.Report(SpecDiagnostics.WrongPart(shaft.Span, reader.PathOf("shaft"), shaft.Text, "a shaft", "small"));
        if (hole is not null && shaft is not null && Math.Abs(hole.Value.Nominal.Coherent - shaft.Value.Nominal.Coherent) > 0.05 * hole.Value.Nominal.Coherent)
            reader.Outside("shaft", shaft, $"of the same nominal size as the hole of {hole.Text}", "A fit is of one nominal size; the difference is in the tolerances.");
    }
}
