using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Classes of ISO 286 have capital letters for holes and small letters for shafts; a mix-up turns a fit round.</summary>
internal static class ClassLetters
{
    public static void Check(GearboxSpec read, MapReader reader)
    {
        foreach (var bearing in read.Bearings.Entries)
        {
            Shaft($"bearings.{bearing.Name.Value}.shaft_seat", bearing.ShaftSeat);
            Hole($"bearings.{bearing.Name.Value}.housing_seat", bearing.HousingSeat);
        }

        foreach (var shaft in read.Shafts.Entries)
        {
            foreach (var section in shaft.Sections.Entries)
            {
                Shaft($"shafts.{shaft.Name.Value}.sections.{section.Name.Value}.outside", section.Outside);
                Hole($"shafts.{shaft.Name.Value}.sections.{section.Name.Value}.bore", section.Bore);
            }
        }

        foreach (var seal in read.LipSeals.Entries)
        {
            Shaft($"lip_seals.{seal.Name.Value}.diameter", seal.Diameter);
            Hole($"lip_seals.{seal.Name.Value}.bore", seal.Bore);
        }

        foreach (var ring in read.ORings.Entries)
        {
            Hole($"o_rings.{ring.Name.Value}.bore", ring.Bore);
            Shaft($"o_rings.{ring.Name.Value}.plug", ring.Plug);
        }

        foreach (var pin in read.PlanetPins.Entries)
        {
            Shaft($"planet_pins.{pin.Name.Value}.diameter", pin.Diameter);
            Hole($"planet_pins.{pin.Name.Value}.cheek_hole", pin.CheekHole);
        }

        foreach (var dowels in read.Dowels.Entries)
        {
            Shaft($"dowels.{dowels.Name.Value}.diameter", dowels.Diameter);
            for (var i = 0; i < dowels.Parts.Length; i++)
                Hole($"dowels.{dowels.Name.Value}.parts[{i}].hole", dowels.Parts[i].Hole);
        }

        foreach (var side in read.Interfaces.Entries)
        {
            if (side.Pilot is { } pilot)
                Of($"interfaces.{side.Name.Value}.pilot.diameter", pilot.Diameter, isHole: pilot.Side.Value == "recess");
        }

        void Hole(string path, Stated<Toleranced>? size) => Of(path, size, isHole: true);

        void Shaft(string path, Stated<Toleranced>? size) => Of(path, size, isHole: false);

        void Of(string path, Stated<Toleranced>? size, bool isHole)
        {
            if (size is { Value.Tolerance: Tolerance.ToleranceClass iso } && iso.IsHole != isHole)
                reader.Report(SpecDiagnostics.OtherFeature(size.Span, path, iso, isHole));
        }
    }
}
