using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Rolling bearings: in their places, and as a catalogue states them.</summary>
internal static class BearingReader
{
    private static readonly string[] Duties = ["locating", "floating", "plus", "minus"];
    private static readonly string[] Clearances = ["C2", "CN", "C3", "C4", "C5"];
    private static readonly string[] Kinds = ["deep-groove-ball", "angular-contact-ball", "cylindrical-roller", "needle-roller", "needle-cage", "tapered-roller"];
    private static readonly string[] Balls = ["steel", "silicon-nitride"];
    private static readonly string[] Cages = ["steel", "brass", "polyamide", "none"];
    private static readonly string[] Lubricants = ["oil", "grease"];
    private static readonly string[] Closures = ["open", "shields", "seals"];
    private static readonly string[] Certainties = ["published", "memory", "invented"];

    public static BearingSpec? Place(Stated<string> name, MapReader reader, Catalogue? catalogue, TrainSpec? train)
    {
        var bearing = reader.Name("bearing", required: true);
        var shaft = reader.Name("shaft", required: true);
        var housing = reader.Name("housing", required: true);
        var place = reader.Amount("axial_place", Dimension.OfLength);
        var axial = reader.Word("axial", Duties);
        var shaftSeat = reader.Toleranced("shaft_seat", Dimension.OfLength, AmountRange.Positive);
        var housingSeat = reader.Toleranced("housing_seat", Dimension.OfLength, AmountRange.Positive);
        var shaftBore = reader.Amount("shaft_bore", Dimension.OfLength, AmountRange.NotNegative);
        var outside = reader.Amount("housing_outside", Dimension.OfLength, AmountRange.Positive);
        var clearance = reader.Word("clearance", Clearances);
        var greatest = reader.Amount("greatest_clearance", Dimension.OfLength, AmountRange.Positive);
        var preloaded = reader.Truth("preloaded");
        var warmer = reader.Amount("inner_warmer", Dimension.OfTemperatureDifference, new Amount(-50, Units.Kelvin), new Amount(150, Units.Kelvin));
        var way = reader.Amount("float", Dimension.OfLength, AmountRange.NotNegative);
        var fillet = reader.Amount("fillet", Dimension.OfLength, AmountRange.NotNegative);
        var hardness = reader.Hardness("raceway_hardness");
        var running = reader.Amount("running", Dimension.OfTemperature);
        var lubricant = reader.Word("lubricated_by", Lubricants);
        var safety = reader.Number("static_safety", Limits.LeastSafety, Limits.GreatestSafety);
        var rows = reader.Whole("rows", Limits.FewestRows, Limits.MostRows);
        reader.Finish();

        References.CheckBearing(reader, "bearing", bearing, catalogue);
        References.CheckBody(reader, "shaft", shaft, train);
        References.CheckBody(reader, "housing", housing, train);
        if (shaft is not null && shaft.Value == housing?.Value)
            reader.Report(SpecDiagnostics.SelfSupported(housing.Span, reader.PathOf("housing"), housing.Value));
        var entry = bearing is null ? null : catalogue?.Bearings.Find(bearing.Value);
        Agrees("shaft_seat", shaftSeat, entry?.Bore, "bore");
        Agrees("housing_seat", housingSeat, entry?.Outside, "outside diameter");
        if (shaftBore is not null && shaftSeat is not null && shaftBore.Value.Coherent >= shaftSeat.Value.Nominal.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(shaftBore.Span, reader.PathOf("shaft_bore"), shaftBore.Text, $"less than the seat of {shaftSeat.Text}"));
        if (outside is not null && housingSeat is not null && outside.Value.Coherent <= housingSeat.Value.Nominal.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(outside.Span, reader.PathOf("housing_outside"), outside.Text, $"more than the seat of {housingSeat.Text}"));
        OnOwnCarrier(shaft, housing, "housing");
        OnOwnCarrier(housing, shaft, "shaft");
        return bearing is null || shaft is null || housing is null
            ? null
            : new()
            {
                Name = name,
                Bearing = bearing,
                Shaft = shaft,
                Housing = housing,
                AxialPlace = place,
                Axial = axial,
                ShaftSeat = shaftSeat,
                HousingSeat = housingSeat,
                ShaftBore = shaftBore,
                HousingOutside = outside,
                Clearance = clearance,
                GreatestClearance = greatest,
                Preloaded = preloaded,
                InnerWarmer = warmer,
                Float = way,
                Fillet = fillet,
                RacewayHardness = hardness,
                Running = running,
                LubricatedBy = lubricant,
                StaticSafety = safety,
                Rows = rows,
            };

        // A planet turns on its own carrier, and on nothing else.
        void OnOwnCarrier(Stated<string>? planet, Stated<string>? other, string key)
        {
            if (planet is null || other is null || train?.Planets.Find(planet.Value) is not { } set || other.Value == set.Carrier.Value || other.Value == planet.Value)
                return;
            reader.Report(SpecDiagnostics.OutOfRange(
                other.Span, reader.PathOf(key), other.Text, $"{set.Carrier.Value}, the carrier of {planet.Value}", "A planet turns on a pin of its own carrier."));
        }

        // Seat and ring have one nominal size; the fit is in their tolerances.
        void Agrees(string key, Stated<Toleranced>? seat, Stated<Amount>? ring, string name)
        {
            if (seat is not null && ring is not null && Math.Abs(seat.Value.Nominal.Coherent - ring.Value.Coherent) > 1e-6)
            {
                reader.Report(SpecDiagnostics.OutOfRange(
                    seat.Span, reader.PathOf(key), seat.Text, $"the {name} of {bearing!.Value}, {ring.Text}", "State the nominal size of the ring and the tolerance of the seat."));
            }
        }
    }

    public static BearingTypeSpec? Type(Stated<string> name, MapReader reader)
    {
        var title = reader.Text("title", required: true);
        var kind = reader.Word("kind", Kinds, required: true);
        var designation = reader.Text("designation");
        var bore = reader.Amount("bore", Dimension.OfLength, AmountRange.Positive, required: true);
        var outside = reader.Amount("outside", Dimension.OfLength, AmountRange.Positive, required: true);
        var width = reader.Amount("width", Dimension.OfLength, AmountRange.Positive, required: true);
        var angle = reader.Amount("contact_angle", Dimension.OfAngle, AmountRange.NotNegative);
        var dynamic = reader.Amount("dynamic_rating", Dimension.OfForce, AmountRange.Positive);
        var stat = reader.Amount("static_rating", Dimension.OfForce, AmountRange.Positive);
        var ofHybrid = reader.Truth("static_rating_of_hybrid");
        var fatigue = reader.Amount("fatigue_limit", Dimension.OfForce, AmountRange.Positive);
        var factor = reader.Number("factor_f0", Limits.LeastBearingFactor, Limits.GreatestBearingFactor);
        var elements = reader.Map("elements") is { } map ? Elements(map) : null;
        var rows = reader.Whole("rows", Limits.FewestRows, Limits.MostRows);
        var balls = reader.Word("balls", Balls);
        var cage = reader.Word("cage", Cages);
        var closure = reader.Word("closure", Closures);
        var limiting = reader.Amount("limiting_speed", Dimension.OfAngularSpeed, AmountRange.Positive);
        var reference = reader.Amount("reference_speed", Dimension.OfAngularSpeed, AmountRange.Positive);
        var acceleration = reader.Amount("greatest_acceleration", Dimension.OfAcceleration, AmountRange.Positive);
        var corner = reader.Amount("corner", Dimension.OfLength, AmountRange.Positive);
        var source = reader.Text("source", required: true);
        var certainty = reader.Word("certainty", Certainties, required: true);
        reader.Finish();

        if (bore is not null && outside is not null && outside.Value.Coherent <= bore.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(outside.Span, reader.PathOf("outside"), outside.Text, $"more than the bore of {bore.Text}"));
        if (angle is not null && angle.Value.Coherent >= Math.PI / 2)
            reader.Report(SpecDiagnostics.OutOfRange(angle.Span, reader.PathOf("contact_angle"), angle.Text, "less than 90°"));
        if (elements is not null && bore is not null && outside is not null
            && (elements.PitchDiameter.Value.Coherent <= bore.Value.Coherent || elements.PitchDiameter.Value.Coherent >= outside.Value.Coherent))
        {
            reader.Report(SpecDiagnostics.OutOfRange(
                elements.PitchDiameter.Span, reader.PathOf("elements.pitch_diameter"), elements.PitchDiameter.Text, $"between the bore of {bore.Text} and the outside diameter of {outside.Text}"));
        }

        return title is null || kind is null || bore is null || outside is null || width is null || source is null || certainty is null
            ? null
            : new()
            {
                Name = name,
                Title = title,
                Kind = kind,
                Designation = designation,
                Bore = bore,
                Outside = outside,
                Width = width,
                ContactAngle = angle,
                DynamicRating = dynamic,
                StaticRating = stat,
                StaticRatingOfHybrid = ofHybrid,
                FatigueLimit = fatigue,
                FactorF0 = factor,
                Elements = elements,
                Rows = rows,
                Balls = balls,
                Cage = cage,
                Closure = closure,
                LimitingSpeed = limiting,
                ReferenceSpeed = reference,
                GreatestAcceleration = acceleration,
                Corner = corner,
                Source = source,
                Certainty = certainty,
            };
    }

    private static RollingElementsSpec? Elements(MapReader reader)
    {
        var count = reader.Whole("count", Limits.FewestElements, Limits.MostElements, required: true);
        var diameter = reader.Amount("diameter", Dimension.OfLength, AmountRange.Positive, required: true);
        var pitch = reader.Amount("pitch_diameter", Dimension.OfLength, AmountRange.Positive, required: true);
        var length = reader.Amount("length", Dimension.OfLength, AmountRange.Positive);
        reader.Finish();
        return count is null || diameter is null || pitch is null
            ? null
            : new() { Count = count, Diameter = diameter, PitchDiameter = pitch, Length = length };
    }
}
