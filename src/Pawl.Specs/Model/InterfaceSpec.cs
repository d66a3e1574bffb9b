using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>One side of an interface, of the gearbox or of an adapter.</summary>
public record InterfaceSideSpec
{
    [Display(Name = "Kind", Description = "flange: a face with pilot and screws; shaft: an end that drives; mount: feet or face that hold the housing.")]
    [OneOf("flange", "shaft", "mount")]
    public required Stated<string> Kind { get; init; }

    [Display(Name = "Spline", Description = "The spline of this side.")]
    public InterfaceSplineSpec? Spline { get; init; }

    [Display(Name = "Pilot", Description = "The register that centres.")]
    public PilotSpec? Pilot { get; init; }

    [Display(Name = "Bolts", Description = "The pattern of screws.")]
    public BoltPatternSpec? Bolts { get; init; }

    [Display(Name = "Dowels", Description = "The pattern of dowel pins.")]
    public DowelPatternSpec? Dowels { get; init; }

    [Display(Name = "Seal", Description = "What keeps the oil in between the two sides.")]
    public InterfaceSealSpec? Seal { get; init; }

    [Display(Name = "Engagement", Description = "Of the gearbox: least axial engagement of the shafts that it asks for. Of an adapter: what it gives.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "22 mm")]
    public Stated<Amount>? Engagement { get; init; }

    [Display(Name = "Torque", Description = "Maximum torque that this side bears.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.Positive, Example = "300 N·m")]
    public Stated<Amount>? Torque { get; init; }

    [Display(Name = "Speed", Description = "Maximum speed that this side bears.")]
    [Measures(nameof(Dimension.OfAngularSpeed), AmountRange.Positive, Example = "6000 rpm")]
    public Stated<Amount>? Speed { get; init; }
}

/// <summary>An interface of the gearbox, and the adapters it may be built with.</summary>
public sealed record InterfaceSpec : InterfaceSideSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Body", Description = "The body that the adapter is joined to; its torque and speed pass through.")]
    [Refers(Declared.Body)]
    public required Stated<string> Body { get; init; }

    [Display(Name = "Maximum eccentricity", Description = "How far off centre the adapter may sit in its pilot.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "0.05 mm")]
    public Stated<Amount>? MaxEccentricity { get; init; }

    [Display(Name = "Adapters", Description = "Names of the adapters that the variant may be built with; each is checked.")]
    [Refers(Declared.Adapter)]
    public ImmutableArray<Stated<string>> Adapters { get; init; } = [];
}

/// <summary>A spline as one side of an interface has it.</summary>
public sealed record InterfaceSplineSpec
{
    [Display(Name = "Side", Description = "external or internal teeth.")]
    [OneOf("external", "internal")]
    public required Stated<string> Side { get; init; }

    [Display(Name = "System", Description = "Standard, side fit: iso-4156 or ansi-b92.1.")]
    [OneOf("iso-4156", "ansi-b92.1")]
    public required Stated<string> System { get; init; }

    [Display(Name = "Module", Description = "m. Instead of the diametral pitch.")]
    [Measures(nameof(Dimension.OfLength), Example = "1.25 mm", Min = Limits.MinModule, Max = Limits.MaxModule, Unit = nameof(Units.Millimetre))]
    public Stated<Amount>? Module { get; init; }

    [Display(Name = "Diametral pitch", Description = "Teeth per inch of pitch diameter: the 16 of 16/32.")]
    [Range(Limits.MinDiametralPitch, Limits.MaxDiametralPitch)]
    public Stated<double>? DiametralPitch { get; init; }

    [Display(Name = "Pressure angle", Description = "30°, 37.5° or 45°.")]
    [Measures(nameof(Dimension.OfAngle), AmountRange.Positive, Example = "30°")]
    public required Stated<Amount> PressureAngle { get; init; }

    [Display(Name = "Teeth", Description = "z.")]
    [Range(Limits.FewestTeeth, Limits.MostTeeth)]
    public required Stated<int> Teeth { get; init; }

    [Display(Name = "Root", Description = "flat or fillet.")]
    [OneOf("flat", "fillet")]
    public required Stated<string> Root { get; init; }

    [Display(Name = "Class", Description = "Tolerance class of ISO 4156, 4 to 7.")]
    [Range(Limits.FinestSplineClass, Limits.CoarsestSplineClass)]
    public Stated<int>? Class { get; init; }

    [Display(Name = "Fit", Description = "Letter of ISO 4156 for the tooth thickness of an external side; absent: h.")]
    [OneOf("d", "e", "f", "h", "js", "k")]
    public Stated<string>? Fit { get; init; }

    [Display(Name = "Length", Description = "Length of the teeth.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "24 mm")]
    public Stated<Amount>? Length { get; init; }
}

/// <summary>A pilot: spigot or recess.</summary>
public sealed record PilotSpec
{
    [Display(Name = "Side", Description = "spigot goes into recess.")]
    [OneOf("spigot", "recess")]
    public required Stated<string> Side { get; init; }

    [Display(Name = "Diameter", Description = "With its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "110 mm ±0.01")]
    public required Stated<Toleranced> Diameter { get; init; }

    [Display(Name = "Depth", Description = "Length of the spigot or depth of the recess, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "5 mm ±0.1")]
    public Stated<Toleranced>? Depth { get; init; }
}

/// <summary>Screws on a circle, evenly spaced.</summary>
public sealed record BoltPatternSpec
{
    [Display(Name = "Thread", Description = "Of the screws, such as M8 or 3/8-16 UNC.")]
    [Example("M8")]
    public required Stated<string> Thread { get; init; }

    [Display(Name = "Holes", Description = "through or tapped.")]
    [OneOf("through", "tapped")]
    public required Stated<string> Holes { get; init; }

    [Display(Name = "Count", Description = "Screws on the circle.")]
    [Range(Limits.FewestBolts, Limits.MostBolts)]
    public required Stated<int> Count { get; init; }

    [Display(Name = "Circle", Description = "Diameter of their circle.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "130 mm")]
    public required Stated<Amount> Circle { get; init; }

    [Display(Name = "Angle", Description = "Of the first screw, from the datum that both sides share; absent: 0°.")]
    [Measures(nameof(Dimension.OfAngle), Example = "30°")]
    public Stated<Amount>? Angle { get; init; }

    [Display(Name = "Grip", Description = "Of through holes: what the screws clamp, washers included.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "12 mm")]
    public Stated<Amount>? Grip { get; init; }

    [Display(Name = "Screw length", Description = "Of through holes: length of the screws under the head.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "30 mm")]
    public Stated<Amount>? ScrewLength { get; init; }

    [Display(Name = "Thread depth", Description = "Of tapped holes: depth of full thread.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "20 mm")]
    public Stated<Amount>? ThreadDepth { get; init; }
}

/// <summary>Dowel pins on a circle, evenly spaced.</summary>
public sealed record DowelPatternSpec
{
    [Display(Name = "Side", Description = "pin: this side holds the pins; hole: they enter here.")]
    [OneOf("pin", "hole")]
    public required Stated<string> Side { get; init; }

    [Display(Name = "Diameter", Description = "Of pin or hole, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "8 mm m6")]
    public required Stated<Toleranced> Diameter { get; init; }

    [Display(Name = "Count", Description = "Pins on the circle.")]
    [Range(Limits.FewestBolts, Limits.MostBolts)]
    public required Stated<int> Count { get; init; }

    [Display(Name = "Circle", Description = "Diameter of their circle.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "130 mm")]
    public required Stated<Amount> Circle { get; init; }

    [Display(Name = "Angle", Description = "Of the first pin, from the datum that both sides share; absent: 0°.")]
    [Measures(nameof(Dimension.OfAngle), Example = "15°")]
    public Stated<Amount>? Angle { get; init; }
}

/// <summary>The seal between two sides.</summary>
public sealed record InterfaceSealSpec
{
    [Display(Name = "Kind", Description = "groove: this side holds the O-ring; face: the O-ring lies on it.")]
    [OneOf("groove", "face")]
    public required Stated<string> Kind { get; init; }

    [Display(Name = "Diameter", Description = "Mean diameter of the groove.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "118 mm")]
    public Stated<Amount>? Diameter { get; init; }

    [Display(Name = "From", Description = "Inside diameter of the sealing face.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "112 mm")]
    public Stated<Amount>? From { get; init; }

    [Display(Name = "To", Description = "Outside diameter of the sealing face.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "124 mm")]
    public Stated<Amount>? To { get; init; }
}

/// <summary>An adapter as its file states it: motor flange, coupling, mount.</summary>
public sealed record AdapterSpec
{
    [Display(Name = "Format version", Description = "Version of the adapter format. This build reads 1.")]
    [Range(Limits.Format, Limits.Format)]
    public required Stated<int> Pawl { get; init; }

    [Display(Name = "Adapter", Description = "Name under which specs refer to it.")]
    [Refers]
    public required Stated<string> Adapter { get; init; }

    [Display(Name = "Title", Description = "Name for the report.")]
    public Stated<string>? Title { get; init; }

    [Display(Name = "Interface", Description = "The side that it turns to the gearbox.")]
    public required InterfaceSideSpec Interface { get; init; }
}
