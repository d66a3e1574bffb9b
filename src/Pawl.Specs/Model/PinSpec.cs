using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>Dowels on a circle between two parts.</summary>
public sealed record DowelSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Joint", Description = "The joint that they belong to; its torque is theirs.")]
    [Refers(Declared.Joint)]
    public Stated<string>? Joint { get; init; }

    [Display(Name = "Carries", Description = "The body whose external torque they carry, where they belong to no joint.")]
    [Refers(Declared.Body)]
    public Stated<string>? Carries { get; init; }

    [Display(Name = "Torque", Description = "Torque with all overloads, where they belong to no joint.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.NotNegative, Example = "120 N·m")]
    public Stated<Amount>? Torque { get; init; }

    [Display(Name = "Purpose", Description = "locate: friction carries the torque; carry: the dowels do, and friction is not counted on.")]
    [OneOf("locate", "carry")]
    public required Stated<string> Purpose { get; init; }

    [Display(Name = "Count", Description = "Number of dowels.")]
    [Range(Limits.FewestBolts, Limits.MostBolts)]
    public required Stated<int> Count { get; init; }

    [Display(Name = "Circle", Description = "Diameter of the circle that they stand on.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "130 mm")]
    public required Stated<Amount> Circle { get; init; }

    [Display(Name = "Diameter", Description = "Diameter of a dowel with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "6 mm m6")]
    public required Stated<Toleranced> Diameter { get; init; }

    [Display(Name = "Bore", Description = "Hole along the dowel; absent: solid.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "3 mm")]
    public Stated<Toleranced>? Bore { get; init; }

    [Display(Name = "Yield", Description = "Yield of the dowels.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "900 MPa")]
    public Stated<Amount>? Yield { get; init; }

    [Display(Name = "Parts", Description = "The two parts that the dowels go through, the one that holds them first.")]
    [Required]
    [Count(2, 2, "two parts", Hint = "Name the part that holds the dowels first.")]
    public ImmutableArray<DowelledPartSpec> Parts { get; init; } = [];

    [Display(Name = "Position of dowels", Description = "Position tolerance of the dowels, on the diameter.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.02 mm")]
    public Stated<Amount>? PinPosition { get; init; }

    [Display(Name = "Position of holes", Description = "Position tolerance of the loose holes, on the diameter.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.02 mm")]
    public Stated<Amount>? HolePosition { get; init; }

    [Display(Name = "Reamed together", Description = "Whether the holes of both parts are reamed in one, assembled.")]
    public Stated<bool>? ReamedTogether { get; init; }
}

/// <summary>A part that dowels go through.</summary>
public sealed record DowelledPartSpec
{
    [Display(Name = "Part", Description = "What it is.")]
    public Stated<string>? Part { get; init; }

    [Display(Name = "Yield", Description = "Yield of the part.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "240 MPa")]
    public Stated<Amount>? Yield { get; init; }

    [Display(Name = "Length", Description = "Length that bears, chamfers off.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "12 mm")]
    public required Stated<Toleranced> Length { get; init; }

    [Display(Name = "Hole", Description = "Diameter of its holes with tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "6 mm H7")]
    public Stated<Toleranced>? Hole { get; init; }
}

/// <summary>A retaining ring in its groove.</summary>
public sealed record RetainingRingSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "On", Description = "The body or planet set that has the groove.")]
    [Refers(Declared.Body)]
    public required Stated<string> On { get; init; }

    [Display(Name = "Sits", Description = "shaft: outside on a shaft (DIN 471); bore: inside a bore (DIN 472).")]
    [OneOf("shaft", "bore")]
    public required Stated<string> Sits { get; init; }

    [Display(Name = "At", Description = "Section of a shaft that has the groove: shafts.output.groove. Absent: that of the nearest size.")]
    [Example("shafts.output.groove")]
    public Stated<string>? At { get; init; }

    [Display(Name = "Diameter", Description = "Diameter of shaft or bore, d_1; absent: that of the section that `at` names.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "25 mm")]
    public Stated<Amount>? Diameter { get; init; }

    [Display(Name = "Groove", Description = "Diameter of the groove, d_2; absent: by the standard.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "23.9 mm")]
    public Stated<Toleranced>? Groove { get; init; }

    [Display(Name = "Land", Description = "Width of material between the groove and the end, n.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "3 mm")]
    public Stated<Toleranced>? Land { get; init; }

    [Display(Name = "Yield", Description = "Yield of the part with the groove.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "600 MPa")]
    public Stated<Amount>? Yield { get; init; }

    [Display(Name = "Corner", Description = "Chamfer or radius of the part that leans on the ring; 0 for a sharp edge or a support washer.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.5 mm")]
    public Stated<Amount>? Corner { get; init; }

    [Display(Name = "Ring load", Description = "Load of the ring for this corner, by its supplier; absent: DIN 471 or DIN 472 where they are known.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.Positive, Example = "15 kN")]
    public Stated<Amount>? RingLoad { get; init; }

    [Display(Name = "Maximum speed", Description = "Speed at which a shaft ring lifts off, by its supplier.")]
    [Measures(nameof(Dimension.OfAngularSpeed), AmountRange.Positive, Example = "30000 rpm")]
    public Stated<Amount>? MaxSpeed { get; init; }

    [Display(Name = "Axial force", Description = "Maximum force on the ring, with all overloads.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.NotNegative, Example = "800 N")]
    public Stated<Amount>? AxialForce { get; init; }

    [Display(Name = "Bearing", Description = "The bearing whose axial load the ring holds, in place of a stated force.")]
    [Refers(Declared.Bearing)]
    public Stated<string>? Bearing { get; init; }
}

/// <summary>The pins of a planet set.</summary>
public sealed record PlanetPinSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Planets", Description = "The planet set that they carry.")]
    [Refers(Declared.PlanetSet)]
    public required Stated<string> Planets { get; init; }

    [Display(Name = "Material", Description = "Id of a material in the catalogue; absent: steel.")]
    [Refers(Declared.Material)]
    public Stated<string>? Material { get; init; }

    [Display(Name = "Diameter", Description = "Outside diameter.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "12 mm h5")]
    public required Stated<Toleranced> Diameter { get; init; }

    [Display(Name = "Bore", Description = "Hole along the pin; absent: solid.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "4 mm")]
    public Stated<Toleranced>? Bore { get; init; }

    [Display(Name = "Held", Description = "straddled: in two cheeks; overhung: in one.")]
    [OneOf("straddled", "overhung")]
    public required Stated<string> Held { get; init; }

    [Display(Name = "Span", Description = "Distance of the middles of the two cheeks.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "34 mm")]
    public Stated<Toleranced>? Span { get; init; }

    [Display(Name = "Gap", Description = "Of an overhung pin: from the face of the cheek to the load.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "2 mm")]
    public Stated<Toleranced>? Gap { get; init; }

    [Display(Name = "Load width", Description = "Width of what presses on the pin: rollers, or the planet.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "17 mm")]
    public required Stated<Toleranced> LoadWidth { get; init; }

    [Display(Name = "Cheek", Description = "Length that bears in a cheek.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "8 mm")]
    public Stated<Toleranced>? Cheek { get; init; }

    [Display(Name = "Cheek yield", Description = "Yield of the carrier.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "700 MPa")]
    public Stated<Amount>? CheekYield { get; init; }

    [Display(Name = "Cheek hole", Description = "Hole of the carrier for the pin, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "12 mm P7")]
    public Stated<Toleranced>? CheekHole { get; init; }

    [Display(Name = "Yield", Description = "Yield of the pin; of a case-hardened one that of its core.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "850 MPa")]
    public Stated<Amount>? Yield { get; init; }

    [Display(Name = "Twist stiffness", Description = "Torsional stiffness of the carrier from one cheek to the other, by analysis or test; absent: from the webs.")]
    [Measures(nameof(Dimension.OfTorsionalStiffness), AmountRange.Positive, Example = "900000 N·m/rad")]
    public Stated<Amount>? TwistStiffness { get; init; }

    [Display(Name = "Webs", Description = "What joins the two cheeks between the planets.")]
    public CarrierWebSpec? Webs { get; init; }

    [Display(Name = "Maximum slope", Description = "Misalignment that the bearing on it bears, by its maker.")]
    [Measures(nameof(Dimension.OfAngle), AmountRange.Positive, Example = "3′")]
    public Stated<Amount>? MaxSlope { get; init; }

    [Display(Name = "Secured", Description = "What keeps it from turning and creeping.")]
    [OneOf("press", "press and pin", "flat", "ring", "none")]
    public Stated<string>? Secured { get; init; }

    [Display(Name = "Oil", Description = "How oil comes to the bearing on it.")]
    public PinOilSpec? Oil { get; init; }
}

/// <summary>How oil comes to the bearing on a planet pin.</summary>
public sealed record PinOilSpec
{
    [Display(Name = "Feed", Description = "holes: passages in the carrier; catcher: a ring on the carrier that gathers thrown oil, and holes from it; splash: what the bath and the planet bring; none.")]
    [OneOf("holes", "catcher", "splash", "none")]
    public required Stated<string> Feed { get; init; }

    [Display(Name = "Radius", Description = "Where oil enters the holes or stands in the catcher, from the axis of the carrier: 0 at its centre; beyond the pin it has to flow inwards.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "12 mm")]
    public Stated<Amount>? Radius { get; init; }

    [Display(Name = "Pressure", Description = "Of the oil where it enters, from a pump; absent: none.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.NotNegative, Example = "1 bar")]
    public Stated<Amount>? Pressure { get; init; }
}

/// <summary>The webs of a carrier.</summary>
public sealed record CarrierWebSpec
{
    [Display(Name = "Count", Description = "How many there are.")]
    [Range(Limits.FewestWebs, Limits.MostWebs)]
    public required Stated<int> Count { get; init; }

    [Display(Name = "Circle", Description = "Diameter of the circle of their middles.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "96 mm")]
    public required Stated<Amount> Circle { get; init; }

    [Display(Name = "Width", Description = "Least width of a web around the axis.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "24 mm")]
    public required Stated<Amount> Width { get; init; }

    [Display(Name = "Depth", Description = "Least depth of a web along the radius.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "16 mm")]
    public required Stated<Amount> Depth { get; init; }
}
