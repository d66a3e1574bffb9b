using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>A hole and the shaft in it.</summary>
internal static class FitReader
{
    private static readonly string[] Functions = ["slide", "locate", "press", "register"];
    private static readonly string[] Joinings = ["warm", "pressed"];

    public static FitSpec? Read(Stated<string> name, MapReader reader, Catalogue? catalogue, TrainSpec? train)
    {
        var size = reader.Toleranced("size", Dimension.OfLength, AmountRange.Positive, required: false, allowFit: true);
        var hole = reader.Toleranced("hole", Dimension.OfLength, AmountRange.Positive);
        var shaft = reader.Toleranced("shaft", Dimension.OfLength, AmountRange.Positive);
        var function = reader.Word("function", Functions, required: true);
        var holePart = reader.Name("hole_part");
        var shaftPart = reader.Name("shaft_part");
        var holeMaterial = reader.Name("hole_material");
        var shaftMaterial = reader.Name("shaft_material");
        var holeRunning = reader.Amount("hole_running", Dimension.OfTemperature);
        var shaftRunning = reader.Amount("shaft_running", Dimension.OfTemperature);
        var least = reader.Amount("least_clearance", Dimension.OfLength);
        var greatest = reader.Amount("greatest_clearance", Dimension.OfLength);
        var length = reader.Amount("length", Dimension.OfLength, AmountRange.Positive);
        var bore = reader.Amount("shaft_bore", Dimension.OfLength, AmountRange.NotNegative);
        var outside = reader.Amount("hub_outside", Dimension.OfLength, AmountRange.Positive);
        var holeRz = reader.Amount("hole_rz", Dimension.OfLength, AmountRange.NotNegative);
        var shaftRz = reader.Amount("shaft_rz", Dimension.OfLength, AmountRange.NotNegative);
        var leastFriction = reader.Number("least_friction", Limits.LeastFriction, Limits.GreatestFriction);
        var greatestFriction = reader.Number("greatest_friction", Limits.LeastFriction, Limits.GreatestFriction);
        var carries = reader.Name("carries");
        var torque = reader.Amount("torque", Dimension.OfTorque, AmountRange.NotNegative);
        var axial = reader.Amount("axial_force", Dimension.OfForce, AmountRange.NotNegative);
        var safety = reader.Number("slip_safety", Limits.LeastSafety, Limits.GreatestSafety);
        var speed = reader.Amount("speed", Dimension.OfAngularSpeed, AmountRange.NotNegative);
        var hubYield = reader.Amount("hub_yield", Dimension.OfStress, AmountRange.Positive);
        var shaftYield = reader.Amount("shaft_yield", Dimension.OfStress, AmountRange.Positive);
        var joined = reader.Word("joined", Joinings);
        var joining = reader.Amount("greatest_joining", Dimension.OfTemperature);
        var press = reader.Amount("greatest_press_force", Dimension.OfForce, AmountRange.Positive);
        reader.Finish();

        References.CheckMaterial(reader, "hole_material", holeMaterial, catalogue);
        References.CheckMaterial(reader, "shaft_material", shaftMaterial, catalogue);
        References.CheckBody(reader, "carries", carries, train);
        Sizes();
        if (holePart is not null && holePart.Value == shaftPart?.Value)
            reader.Report(SpecDiagnostics.SelfFitted(shaftPart.Span, reader.PathOf("shaft_part"), shaftPart.Value));
        if (carries is not null && torque is not null)
            reader.Report(SpecDiagnostics.ExclusiveKeys(torque.Span, reader.ObjectPath, "carries", "torque"));
        Ascending("greatest_clearance", greatest, "least clearance", least);
        if (leastFriction is not null && greatestFriction is not null && greatestFriction.Value < leastFriction.Value)
            reader.Report(SpecDiagnostics.OutOfRange(greatestFriction.Span, reader.PathOf("greatest_friction"), greatestFriction.Text, $"no less than the least friction of {leastFriction.Text}"));
        var diameter = (size ?? hole ?? shaft)?.Value.Nominal.Coherent;
        if (bore is not null && bore.Value.Coherent >= diameter)
            reader.Report(SpecDiagnostics.OutOfRange(bore.Span, reader.PathOf("shaft_bore"), bore.Text, "less than the diameter of the fit"));
        if (outside is not null && outside.Value.Coherent <= diameter)
            reader.Report(SpecDiagnostics.OutOfRange(outside.Span, reader.PathOf("hub_outside"), outside.Text, "more than the diameter of the fit"));

        return function is null || reader.HasErrors
            ? null
            : new()
            {
                Name = name,
                Size = size,
                Hole = hole,
                Shaft = shaft,
                Function = function,
                HolePart = holePart,
                ShaftPart = shaftPart,
                HoleMaterial = holeMaterial,
                ShaftMaterial = shaftMaterial,
                HoleRunning = holeRunning,
                ShaftRunning = shaftRunning,
                LeastClearance = least,
                GreatestClearance = greatest,
                Length = length,
                ShaftBore = bore,
                HubOutside = outside,
                HoleRz = holeRz,
                ShaftRz = shaftRz,
                LeastFriction = leastFriction,
                GreatestFriction = greatestFriction,
                Carries = carries,
                Torque = torque,
                AxialForce = axial,
                SlipSafety = safety,
                Speed = speed,
                HubYield = hubYield,
                ShaftYield = shaftYield,
                Joined = joined,
                GreatestJoining = joining,
                GreatestPressForce = press,
            };

        void Sizes()
        {
            if (size is not null && (hole ?? shaft) is { } other)
                reader.Report(SpecDiagnostics.ExclusiveKeys(other.Span, reader.ObjectPath, "size", hole is not null ? "hole" : "shaft"));
            if (size is { Value.Tolerance: not Tolerance.Fit })
                reader.Report(SpecDiagnostics.NotAFit(size.Span, reader.PathOf("size"), size.Text));
            if (hole is { Value.Tolerance: Tolerance.ToleranceClass { IsHole: false } })
                reader.Report(SpecDiagnostics.WrongPart(hole.Span, reader.PathOf("hole"), hole.Text, "a hole", "capital"));
            if (shaft is { Value.Tolerance: Tolerance.ToleranceClass { IsHole: true } })
                reader.Report(SpecDiagnostics.WrongPart(shaft.Span, reader.PathOf("shaft"), shaft.Text, "a shaft", "small"));
            if (hole is not null && shaft is not null && Math.Abs(hole.Value.Nominal.Coherent - shaft.Value.Nominal.Coherent) > 0.05 * hole.Value.Nominal.Coherent)
                reader.Report(SpecDiagnostics.OutOfRange(shaft.Span, reader.PathOf("shaft"), shaft.Text, $"of the same nominal size as the hole of {hole.Text}", "A fit is of one nominal size; the difference is in the tolerances."));
        }

        void Ascending(string key, Stated<Amount>? upper, string name, Stated<Amount>? lower)
        {
            if (upper is not null && lower is not null && upper.Value.Coherent < lower.Value.Coherent)
                reader.Report(SpecDiagnostics.OutOfRange(upper.Span, reader.PathOf(key), upper.Text, $"no less than the {name} of {lower.Text}", "Exchange the two."));
        }
    }
}
