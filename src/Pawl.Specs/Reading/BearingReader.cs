using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class BearingReader
{
    static partial void Check(BearingSpec read, MapReader reader, Scope scope)
    {
        if (read.Shaft is { } shaft && read.Housing is { } housing)
        {
            if (shaft.Value == housing.Value)
                reader.Report(SpecDiagnostics.SelfSupported(housing.Span, reader.PathOf("housing"), housing.Value));
            OnOwnCarrier(shaft, housing, "housing");
            OnOwnCarrier(housing, shaft, "shaft");
        }

        var entry = read.Bearing is null ? null : scope.Lookup?.Bearings.Find(read.Bearing.Value);
        Agrees("shaft_seat", read.ShaftSeat.Size(), entry?.Bore.Size(), "bore");
        Agrees("housing_seat", read.HousingSeat.Size(), entry?.Outside.Size(), "outside diameter");
        reader.Below("shaft_bore", read.ShaftBore.Size(), read.ShaftSeat.Size(), "less than the seat of");
        reader.Above("housing_outside", read.HousingOutside.Size(), read.HousingSeat.Size(), "more than the seat of");

        // A planet turns on its own carrier, and on nothing else.
        void OnOwnCarrier(Stated<string> planet, Stated<string> other, string key)
        {
            if (scope.Train?.Planets.Find(planet.Value) is { } set && other.Value != set.Carrier.Value && other.Value != planet.Value)
                reader.Outside(key, other, $"{set.Carrier.Value}, the carrier of {planet.Value}", "A planet turns on a pin of its own carrier.");
        }

        // Seat and ring have one nominal size; the fit is in their tolerances.
        void Agrees(string key, Size? seat, Size? ring, string name)
        {
            if (seat is not null && ring is not null && Math.Abs(seat.Value - ring.Value) > 1e-6)
                reader.Outside(key, seat, $"the {name} of {read.Bearing!.Value}, {ring.Text}", "State the nominal size of the ring and the tolerance of the seat.");
        }
    }
}

internal static partial class BearingTypeReader
{
    static partial void Check(BearingTypeSpec read, MapReader reader, Scope scope)
    {
        reader.Above("outside", read.Outside.Size(), read.Bore.Size(), "more than the bore of");
        reader.BelowRightAngle("contact_angle", read.ContactAngle);
        if (read.Elements?.PitchDiameter is { } pitch && read.Bore is { } bore && read.Outside is { } outside
            && (pitch.Value.Coherent <= bore.Value.Coherent || pitch.Value.Coherent >= outside.Value.Coherent))
        {
            reader.Outside("elements.pitch_diameter", pitch, $"between the bore of {bore.Text} and the outside diameter of {outside.Text}");
        }
    }
}
