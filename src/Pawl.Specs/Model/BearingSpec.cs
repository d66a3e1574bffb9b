using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>A rolling bearing in its place.</summary>
public sealed record BearingSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Bearing", Description = "Id of a bearing in the catalogue.")]
    [Refers(Declared.BearingType)]
    public required Stated<string> Bearing { get; init; }

    [Display(Name = "Shaft", Description = "The body or planet set that the inner ring sits on.")]
    [Refers(Declared.Body)]
    public required Stated<string> Shaft { get; init; }

    [Display(Name = "Housing", Description = "The body or planet set that the outer ring sits in.")]
    [Refers(Declared.Body)]
    public required Stated<string> Housing { get; init; }

    [Display(Name = "Axial place", Description = "Place of the middle of the bearing along the common axis, from the datum of the gears.")]
    [Measures(nameof(Dimension.OfLength), Example = "35 mm")]
    public Stated<Amount>? AxialPosition { get; init; }

    [Display(Name = "At", Description = "Section of a shaft that it sits on: shafts.output.front_seat. Absent: that at its axial position.")]
    [Example("shafts.output.front_seat")]
    public Stated<string>? At { get; init; }

    [Display(Name = "Axial duty", Description = "locating: holds the shaft both ways; plus, minus: one of a pair set against each other, takes thrust of the shaft in the positive or negative direction of the axis; floating: takes none.")]
    [OneOf("locating", "floating", "plus", "minus")]
    public Stated<string>? Axial { get; init; }

    [Display(Name = "Shaft seat", Description = "Diameter of the seat on the shaft, with its tolerance; absent: that of the section or planet pin that it sits on.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "25 mm k5")]
    public Stated<Toleranced>? ShaftSeat { get; init; }

    [Display(Name = "Housing seat", Description = "Diameter of the seat in the housing, with its tolerance.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "52 mm H7")]
    public Stated<Toleranced>? HousingSeat { get; init; }

    [Display(Name = "Shaft bore", Description = "Bore of a hollow shaft under the seat; absent: solid.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "12 mm")]
    public Stated<Amount>? ShaftBore { get; init; }

    [Display(Name = "Housing outside", Description = "Diameter of the housing around the seat; absent: thick.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "80 mm")]
    public Stated<Amount>? HousingOutside { get; init; }

    [Display(Name = "Clearance", Description = "Class of internal clearance after ISO 5753-1.")]
    [OneOf("C2", "CN", "C3", "C4", "C5")]
    public Stated<string>? Clearance { get; init; }

    [Display(Name = "Maximum operating clearance", Description = "The greatest operating clearance that the shaft bears.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "40 µm")]
    public Stated<Amount>? MaxClearance { get; init; }

    [Display(Name = "Preload", Description = "Whether a negative operating clearance is meant.")]
    public Stated<bool>? Preloaded { get; init; }

    [Display(Name = "Inner ring warmer", Description = "How much warmer the inner ring runs than the outer; absent: 10 K.")]
    [Measures(nameof(Dimension.OfTemperatureDifference), Example = "10 K", Min = -50, Max = 150, Unit = nameof(Units.Kelvin))]
    public Stated<Amount>? InnerWarmer { get; init; }

    [Display(Name = "Radial stiffness", Description = "At the rated load, as its maker states it; absent: by its rolling elements.")]
    [Measures(nameof(Dimension.OfLineLoad), AmountRange.Positive, Example = "120 N/µm")]
    public Stated<Amount>? RadialStiffness { get; init; }

    [Display(Name = "Float", Description = "Axial way of a floating bearing.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.4 mm")]
    public Stated<Amount>? Float { get; init; }

    [Display(Name = "Fillet", Description = "Radius of the shaft fillet at the shoulder.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.6 mm")]
    public Stated<Amount>? Fillet { get; init; }

    [Display(Name = "Raceway hardness", Description = "Of shaft and bore where rollers run on them, as a window in HRC, HV or HBW.")]
    [Example("58..64 HRC")]
    public Stated<Hardness>? RacewayHardness { get; init; }

    [Display(Name = "Running temperature", Description = "Of the bearing in continuous service; absent: that of the oil.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "90 °C")]
    public Stated<Amount>? Running { get; init; }

    [Display(Name = "Lubricated by", Description = "oil: the oil of the gears reaches it; grease: filled for life behind shields or seals; absent: oil.")]
    [OneOf("oil", "grease")]
    public Stated<string>? LubricatedBy { get; init; }

    [Display(Name = "Static safety", Description = "Minimum s_0 required; absent: 1.")]
    [Range(Limits.MinSafety, Limits.MaxSafety)]
    public Stated<double>? StaticSafety { get; init; }

    [Display(Name = "Locking of the inner ring", Description = "What keeps a loose inner ring from turning on its seat: o-ring in a groove of the seat, pin (or key, or lug), adhesive, clamped between faces; absent: none.")]
    [OneOf("none", "o-ring", "pin", "adhesive", "clamped")]
    public Stated<string>? InnerLocking { get; init; }

    [Display(Name = "Locking of the outer ring", Description = "What keeps a loose outer ring from turning in its seat: o-ring in a groove of the seat, pin (or key, or lug), adhesive, clamped between faces; absent: none.")]
    [OneOf("none", "o-ring", "pin", "adhesive", "clamped")]
    public Stated<string>? OuterLocking { get; init; }

    [Display(Name = "Holding torque of the inner ring", Description = "Least torque that the locking of the inner ring holds, hot and after wear, by its maker, test or computation.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.Positive, Example = "12 N·m")]
    public Stated<Amount>? InnerLockingTorque { get; init; }

    [Display(Name = "Holding torque of the outer ring", Description = "Least torque that the locking of the outer ring holds, hot and after wear, by its maker, test or computation.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.Positive, Example = "12 N·m")]
    public Stated<Amount>? OuterLockingTorque { get; init; }

    [Display(Name = "Limit of the adhesive", Description = "Temperature up to which the adhesive of a ring holds, by its maker.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "150 °C")]
    public Stated<Amount>? AdhesiveLimit { get; init; }

    [Display(Name = "Friction of the seats", Description = "Greatest friction of rings and seats, against which a locking must hold; absent: 0.2.")]
    [Range(Limits.MinFriction, Limits.MaxFriction)]
    public Stated<double>? SeatFriction { get; init; }

    [Display(Name = "Rows", Description = "Like bearings side by side that share the load; absent: 1.")]
    [Range(Limits.FewestRows, Limits.MostRows)]
    public Stated<int>? Rows { get; init; }
}

/// <summary>A bearing as a catalogue states it.</summary>
public sealed record BearingTypeSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Title", Description = "Name for the report.")]
    public required Stated<string> Title { get; init; }

    [Display(Name = "Kind", Description = "How it is built; needle-cage: needles in a cage that run on the shaft and in the bore.")]
    [OneOf("deep-groove-ball", "angular-contact-ball", "cylindrical-roller", "needle-roller", "needle-cage", "tapered-roller")]
    public required Stated<string> Kind { get; init; }

    [Display(Name = "Designation", Description = "Dimension series and bore code after ISO 15, such as 6208; bore, outside and width must agree with it.")]
    [Example("6208")]
    public Stated<string>? Designation { get; init; }

    [Display(Name = "Bore", Description = "d.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "40 mm")]
    public required Stated<Amount> Bore { get; init; }

    [Display(Name = "Outside diameter", Description = "D.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "80 mm")]
    public required Stated<Amount> Outside { get; init; }

    [Display(Name = "Width", Description = "B.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "18 mm")]
    public required Stated<Amount> Width { get; init; }

    [Display(Name = "Contact angle", Description = "α; absent: 0°.")]
    [Measures(nameof(Dimension.OfAngle), AmountRange.NotNegative, Example = "40°")]
    public Stated<Amount>? ContactAngle { get; init; }

    [Display(Name = "Dynamic rating", Description = "Basic dynamic load rating C.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.Positive, Example = "29 kN")]
    public Stated<Amount>? DynamicRating { get; init; }

    [Display(Name = "Static rating", Description = "Basic static load rating C0; of the hybrid bearing itself where the balls are ceramic.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.Positive, Example = "18 kN")]
    public Stated<Amount>? StaticRating { get; init; }

    [Display(Name = "Static rating of hybrid", Description = "Whether the static rating is that of the hybrid bearing, not of its all-steel twin.")]
    public Stated<bool>? StaticRatingOfHybrid { get; init; }

    [Display(Name = "Fatigue limit", Description = "Fatigue load limit C_u.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.Positive, Example = "0.8 kN")]
    public Stated<Amount>? FatigueLimit { get; init; }

    [Display(Name = "Factor f0", Description = "f_0 of the axial load table; absent: from the internal geometry.")]
    [Range(Limits.MinBearingFactor, Limits.MaxBearingFactor)]
    [YamlKey("factor_f0")]
    public Stated<double>? FactorF0 { get; init; }

    [Display(Name = "Rolling elements", Description = "Internal geometry, where the maker states it or it was measured.")]
    public RollingElementsSpec? Elements { get; init; }

    [Display(Name = "Rows", Description = "Rows of rolling elements; absent: 1.")]
    [Range(Limits.FewestRows, Limits.MostRows)]
    public Stated<int>? Rows { get; init; }

    [Display(Name = "Balls", Description = "Material of the balls; absent: steel.")]
    [OneOf("steel", "silicon-nitride")]
    public Stated<string>? Balls { get; init; }

    [Display(Name = "Cage", Description = "Material of the cage; none: full complement.")]
    [OneOf("steel", "brass", "polyamide", "none")]
    public Stated<string>? Cage { get; init; }

    [Display(Name = "Closure", Description = "open, shields or contact seals.")]
    [OneOf("open", "shields", "seals")]
    public Stated<string>? Closure { get; init; }

    [Display(Name = "Limiting speed", Description = "Maximum speed by its maker: cage, seals, balls.")]
    [Measures(nameof(Dimension.OfAngularSpeed), AmountRange.Positive, Example = "11000 rpm")]
    public Stated<Amount>? LimitingSpeed { get; init; }

    [Display(Name = "Reference speed", Description = "Thermal reference speed after ISO 15312.")]
    [Measures(nameof(Dimension.OfAngularSpeed), AmountRange.Positive, Example = "9000 rpm")]
    public Stated<Amount>? ReferenceSpeed { get; init; }

    [Display(Name = "Maximum acceleration", Description = "Acceleration of its place that cage and rollers stand in a planet, by its maker.")]
    [Measures(nameof(Dimension.OfAcceleration), AmountRange.Positive, Example = "2000 m/s²")]
    public Stated<Amount>? MaxAcceleration { get; init; }

    [Display(Name = "Corner", Description = "Minimum chamfer of its rings, r_s min.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "1.1 mm")]
    public Stated<Amount>? Corner { get; init; }

    [Display(Name = "Source", Description = "Where the numbers come from.")]
    public required Stated<string> Source { get; init; }

    [Display(Name = "Certainty", Description = "published (the source was open), memory (from memory) or invented (demo data).")]
    [OneOf("published", "memory", "invented")]
    public required Stated<string> Certainty { get; init; }
}

/// <summary>The inside of a rolling bearing.</summary>
public sealed record RollingElementsSpec
{
    [Display(Name = "Count", Description = "Z, in one row.")]
    [Range(Limits.FewestElements, Limits.MostElements)]
    public required Stated<int> Count { get; init; }

    [Display(Name = "Diameter", Description = "D_w of balls, D_we of rollers.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "12 mm")]
    public required Stated<Amount> Diameter { get; init; }

    [Display(Name = "Pitch diameter", Description = "D_pw.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "60 mm")]
    public required Stated<Amount> PitchDiameter { get; init; }

    [Display(Name = "Length", Description = "L_we, effective length of rollers.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "10 mm")]
    public Stated<Amount>? Length { get; init; }
}
