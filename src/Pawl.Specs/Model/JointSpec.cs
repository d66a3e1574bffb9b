using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>Parts that bolts, or a central nut, clamp together.</summary>
public sealed record JointSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Kind", Description = "flange: bolts on a circle; central-nut: one nut on a shaft that clamps a stack against a shoulder.")]
    [OneOf("flange", "central-nut")]
    public required Stated<string> Kind { get; init; }

    [Display(Name = "Thread", Description = "M8, M8x1 or 1/2-20 UNF; of a central nut the thread of the shaft.")]
    [Example("M8")]
    public required Stated<string> Thread { get; init; }

    [Display(Name = "Strength", Description = "Property class of ISO 898-1 (8.8, 10.9, 12.9 and others) or grade of SAE J429 (grade 2, grade 5, grade 8); of a central nut that of the shaft.")]
    [Example("10.9")]
    public Stated<string>? Strength { get; init; }

    [Display(Name = "Proof stress", Description = "S_p of bolt or shaft that is of no class.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "830 MPa")]
    public Stated<Amount>? ProofStress { get; init; }

    [Display(Name = "Yield", Description = "R_p0.2 of bolt or shaft that is of no class.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "940 MPa")]
    public Stated<Amount>? Yield { get; init; }

    [Display(Name = "Tensile strength", Description = "R_m of bolt or shaft that is of no class.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "1040 MPa")]
    public Stated<Amount>? Tensile { get; init; }

    [Display(Name = "Carries", Description = "The body whose external torque goes through the joint, such as the housing that is held.")]
    [Refers(Declared.Body)]
    public Stated<string>? Carries { get; init; }

    [Display(Name = "Torque", Description = "Torque that goes through the joint with all overloads, in place of `carries`.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.NotNegative, Example = "120 N·m")]
    public Stated<Amount>? Torque { get; init; }

    [Display(Name = "Axial force", Description = "Maximum force from outside on all bolts together that parts the joint, with all overloads.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.NotNegative, Example = "2 kN")]
    public Stated<Amount>? AxialForce { get; init; }

    [Display(Name = "Minimum axial force", Description = "Where the axial force goes back to; absent: 0.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.NotNegative, Example = "0 N")]
    public Stated<Amount>? MinAxialForce { get; init; }

    [Display(Name = "Force across", Description = "Force from outside through the middle of the joint across its axis, such as a weight, with all overloads.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.NotNegative, Example = "300 N")]
    public Stated<Amount>? ForceAcross { get; init; }

    [Display(Name = "Moment", Description = "Maximum bending moment from outside across the axis of the joint, from either side, with all overloads.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.NotNegative, Example = "60 N·m")]
    public Stated<Amount>? Moment { get; init; }

    [Display(Name = "Supports", Description = "The body at input or output whose overhung forces of the duty go through the joint to the ground.")]
    [Refers(Declared.Body)]
    public Stated<string>? Supports { get; init; }

    [Display(Name = "Axial position", Description = "Where the clamped faces lie along the common axis, from the datum of the gears; with `supports`.")]
    [Measures(nameof(Dimension.OfLength), Example = "14 mm")]
    public Stated<Amount>? AxialPosition { get; init; }

    [Display(Name = "Bearing", Description = "The bearing whose inner ring is clamped; its axial load lifts the stack off the shoulder.")]
    [Refers(Declared.Bearing)]
    public Stated<string>? Bearing { get; init; }

    [Display(Name = "Bolts", Description = "Number of bolts on the circle.")]
    [Range(Limits.FewestBolts, Limits.MostBolts)]
    public Stated<int>? Bolts { get; init; }

    [Display(Name = "Bolt circle", Description = "Diameter of the circle of the bolts.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "130 mm")]
    public Stated<Amount>? BoltCircle { get; init; }

    [Display(Name = "Outside", Description = "Outside diameter of the clamped faces, such as that of the flange.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "160 mm")]
    public Stated<Amount>? Outside { get; init; }

    [Display(Name = "Inside", Description = "Inside diameter of the clamped faces.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "100 mm")]
    public Stated<Amount>? Inside { get; init; }

    [Display(Name = "Head", Description = "hexagon, socket: socket cap; absent: hexagon.")]
    [OneOf("hexagon", "socket")]
    public Stated<string>? Head { get; init; }

    [Display(Name = "Face", Description = "Outside diameter of the face under head or nut, d_W; of a washer only where it is thick and hard. Absent: by the standard of the head.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "12.3 mm")]
    public Stated<Amount>? Face { get; init; }

    [Display(Name = "Hole", Description = "Diameter of the hole with its chamfer, d_h. Absent: medium series of ISO 273.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "9 mm")]
    public Stated<Amount>? Hole { get; init; }

    [Display(Name = "Length", Description = "Length of the bolt under its head.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "30 mm")]
    public Stated<Amount>? Length { get; init; }

    [Display(Name = "Shank", Description = "Length of the plain shank; absent: threaded to the head.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "8 mm")]
    public Stated<Amount>? Shank { get; init; }

    [Display(Name = "Width", Description = "Diameter of the parts round a bolt, D_A: twice the distance to the nearest edge.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "24 mm")]
    public Stated<Amount>? Width { get; init; }

    [Display(Name = "Clamped", Description = "What is clamped, from the head or nut on. A tapped part does not count.")]
    [Required]
    [Count(1, int.MaxValue, "one layer or more", Hint = "A joint without a grip clamps nothing.")]
    public ImmutableArray<ClampedLayerSpec> Clamped { get; init; } = [];

    [Display(Name = "Shims", Description = "Loose shims among what is clamped: each has two faces that settle.")]
    [Range(Limits.FewestLooseShims, Limits.MostLooseShims)]
    public Stated<int>? Shims { get; init; }

    [Display(Name = "Tapped", Description = "The tapped hole that holds the bolts.")]
    public TappedHoleSpec? Tapped { get; init; }

    [Display(Name = "Nut", Description = "The nut.")]
    public NutSpec? Nut { get; init; }

    [Display(Name = "Shaft", Description = "The shaft that a central nut sits on.")]
    public ClampingShaftSpec? Shaft { get; init; }

    [Display(Name = "Friction", Description = "Friction in thread and under the head.")]
    public JointFrictionSpec? Friction { get; init; }

    [Display(Name = "Tightening", Description = "How it is tightened.")]
    public TighteningSpec? Tightening { get; init; }

    [Display(Name = "Coating", Description = "Coating of bolt or nut thread.")]
    [OneOf("none", "black oxide", "phosphate", "electroplated zinc", "electroplated zinc-nickel", "electroplated cadmium", "electroless nickel", "hard chromium", "zinc flake", "mechanical zinc", "hot-dip galvanised")]
    public Stated<string>? Coating { get; init; }

    [Display(Name = "Bake", Description = "How long the bolts are baked at 190 °C to 220 °C after coating; absent: not at all.")]
    [Measures(nameof(Dimension.OfTime), AmountRange.NotNegative, Example = "8 h")]
    public Stated<Amount>? Bake { get; init; }

    [Display(Name = "Threads rolled", Description = "before or after heat treatment; absent: before.")]
    [OneOf("before", "after")]
    public Stated<string>? ThreadsRolled { get; init; }

    [Display(Name = "Locking", Description = "What keeps bolt or nut from turning; absent: nothing.")]
    public LockingSpec? Locking { get; init; }

    [Display(Name = "Roughness", Description = "Rz of the clamped faces.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "10 µm")]
    public Stated<Amount>? Roughness { get; init; }

    [Display(Name = "Embedding", Description = "Sum over thread and faces of how far they settle, f_Z, where it was measured or is known better; absent: VDI 2230 by roughness and faces.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "6 µm")]
    public Stated<Amount>? Embedding { get; init; }

    [Display(Name = "Between faces", Description = "What lies between the faces; absent: bare.")]
    [OneOf("bare", "paint", "gasket", "sealant")]
    public Stated<string>? BetweenFaces { get; init; }

    [Display(Name = "Face friction", Description = "Minimum friction between the clamped faces, µ_T.")]
    [Range(Limits.MinFriction, Limits.MaxFriction)]
    public Stated<double>? FaceFriction { get; init; }

    [Display(Name = "Slip safety", Description = "Safety against slip required; absent: 1.2, and 1.8 where the torque reverses.")]
    [Range(Limits.MinSafety, Limits.MaxSafety)]
    public Stated<double>? SlipSafety { get; init; }

    [Display(Name = "Load introduction", Description = "Factor n: 1 where the axial force enters under head and nut, also when absent; less towards the faces.")]
    [Range(Limits.MinShare, 1)]
    public Stated<double>? LoadIntroduction { get; init; }

    [Display(Name = "Assembly temperature", Description = "Temperature at which it is tightened; absent: 20 °C.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "20 °C")]
    public Stated<Amount>? AssemblyTemperature { get; init; }
}

/// <summary>A layer of what a joint clamps.</summary>
public sealed record ClampedLayerSpec
{
    [Display(Name = "Part", Description = "What it is: flange, spacer, shims, inner ring.")]
    public Stated<string>? Part { get; init; }

    [Display(Name = "Material", Description = "Id of a material in the catalogue.")]
    [Refers(Declared.Material)]
    public required Stated<string> Material { get; init; }

    [Display(Name = "Thickness", Description = "Along the bolt.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "16 mm ±0.1")]
    public required Stated<Toleranced> Thickness { get; init; }

    [Display(Name = "Outside", Description = "Outside diameter of a ring in the stack of a central nut, chamfers off.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "46 mm")]
    public Stated<Amount>? Outside { get; init; }

    [Display(Name = "Inside", Description = "Inside diameter of a ring in the stack of a central nut, chamfers off.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "41 mm")]
    public Stated<Amount>? Inside { get; init; }

    [Display(Name = "Limiting pressure", Description = "p_G of this part; absent: that of its material.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "260 MPa")]
    public Stated<Amount>? LimitingPressure { get; init; }
}

/// <summary>A tapped hole.</summary>
public sealed record TappedHoleSpec
{
    [Display(Name = "Material", Description = "Id of a material in the catalogue.")]
    [Refers(Declared.Material)]
    public required Stated<string> Material { get; init; }

    [Display(Name = "Tensile strength", Description = "R_m of the tapped part; absent: that of its material.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "310 MPa")]
    public Stated<Amount>? Tensile { get; init; }

    [Display(Name = "Depth", Description = "Depth of full thread from the face of the tapped part.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "20 mm")]
    public Stated<Toleranced>? Depth { get; init; }

    [Display(Name = "Relief", Description = "Depth of countersink or counterbore at its mouth, without thread; absent: 0.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "1 mm")]
    public Stated<Amount>? Relief { get; init; }

    [Display(Name = "Boss", Description = "Diameter of the boss round the thread; absent: wide.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "24 mm")]
    public Stated<Amount>? Boss { get; init; }

    [Display(Name = "Insert", Description = "A thread insert, whose outer thread holds in the part.")]
    public ThreadInsertSpec? Insert { get; init; }
}

/// <summary>A thread insert in a tapped hole.</summary>
public sealed record ThreadInsertSpec
{
    [Display(Name = "Thread", Description = "Thread in the part that holds the insert.")]
    [Example("M10")]
    public required Stated<string> Thread { get; init; }

    [Display(Name = "Length", Description = "Length of full outer thread.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "16 mm")]
    public required Stated<Amount> Length { get; init; }
}

/// <summary>A nut.</summary>
public sealed record NutSpec
{
    [Display(Name = "Strength", Description = "Property class of ISO 898-2: 5, 6, 8, 10, 12, and of thin nuts 04, 05.")]
    [Example("10")]
    public Stated<string>? Strength { get; init; }

    [Display(Name = "Style", Description = "How high it is; absent: regular.")]
    [OneOf("thin", "regular", "high")]
    public Stated<string>? Style { get; init; }

    [Display(Name = "Tensile strength", Description = "R_m of a nut that is of no class.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.Positive, Example = "800 MPa")]
    public Stated<Amount>? Tensile { get; init; }

    [Display(Name = "Height", Description = "Height of full thread.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "16 mm")]
    public Stated<Amount>? Height { get; init; }

    [Display(Name = "Across flats", Description = "Width across flats, or the outside diameter of a round nut.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "36 mm")]
    public Stated<Amount>? Across { get; init; }
}

/// <summary>The shaft that a central nut sits on, from its shoulder to the nut.</summary>
public sealed record ClampingShaftSpec
{
    [Display(Name = "Material", Description = "Id of a material in the catalogue.")]
    [Refers(Declared.Material)]
    public required Stated<string> Material { get; init; }

    [Display(Name = "Diameter", Description = "Diameter within the stack.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "25 mm")]
    public required Stated<Amount> Diameter { get; init; }

    [Display(Name = "Bore", Description = "Bore along the shaft; absent: solid.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "8 mm")]
    public Stated<Amount>? Bore { get; init; }

    [Display(Name = "Cross hole", Description = "Hole for a cotter pin across the thread; absent: none.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "4 mm")]
    public Stated<Amount>? CrossHole { get; init; }

    [Display(Name = "Seat", Description = "Length from the shoulder to the first full thread: the stack must stand out beyond it.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "48 mm ±0.1")]
    public Stated<Toleranced>? Seat { get; init; }
}

/// <summary>What keeps bolt or nut from turning.</summary>
public sealed record LockingSpec
{
    [Display(Name = "By", Description = "By friction: preload (nothing but that of the joint, which must not slip), prevailing torque, polyamide patch. By adhesive: anaerobic, pre-applied. By form: tab washer, split pin, lock wire, staked collar, pin, locking plate.")]
    [OneOf("none", "preload", "prevailing torque of metal", "prevailing torque of polyamide", "polyamide patch", "anaerobic low strength", "anaerobic medium strength", "anaerobic high strength", "anaerobic high temperature", "pre-applied micro-encapsulated", "tab washer", "split pin", "lock wire", "staked collar", "pin", "locking plate")]
    public required Stated<string> By { get; init; }

    [Display(Name = "Coldest", Description = "Coldest temperature of adhesive or friction element by its maker; absent: that of its kind.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "-50 °C")]
    public Stated<Amount>? Coldest { get; init; }

    [Display(Name = "Hottest", Description = "Hottest temperature of adhesive or friction element by its maker; absent: that of its kind.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "150 °C")]
    public Stated<Amount>? Hottest { get; init; }

    [Display(Name = "Uses", Description = "How often the same element goes on before it is replaced, the first time counted; absent: once.")]
    [Range(Limits.FewestUses, Limits.MostUses)]
    public Stated<int>? Uses { get; init; }

    [Display(Name = "Maximum uses", Description = "How often its maker lets it go on; absent: as usual of its kind.")]
    [Range(Limits.FewestUses, Limits.MostUses)]
    public Stated<int>? MaxUses { get; init; }
}

/// <summary>Friction in thread and under the head.</summary>
public sealed record JointFrictionSpec
{
    [Display(Name = "Class", Description = "Class of VDI 2230: A, slippery, to E, dry.")]
    [OneOf("A", "B", "C", "D", "E")]
    public Stated<string>? Class { get; init; }

    [Display(Name = "Minimum", Description = "Minimum friction, in place of a class.")]
    [Range(Limits.MinFriction, Limits.MaxFriction)]
    public Stated<double>? Min { get; init; }

    [Display(Name = "Maximum", Description = "Maximum friction, in place of a class.")]
    [Range(Limits.MinFriction, Limits.MaxFriction)]
    public Stated<double>? Max { get; init; }
}

/// <summary>How a joint is tightened.</summary>
public sealed record TighteningSpec
{
    [Display(Name = "Torque", Description = "Torque that is set, with prevailing torque.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.Positive, Example = "25 N·m")]
    public Stated<Amount>? Torque { get; init; }

    [Display(Name = "Method", Description = "How the preload is reached; absent: by torque wrench, friction estimated.")]
    [OneOf("yield controlled", "angle controlled", "hydraulic", "torque wrench with friction measured", "torque wrench with friction estimated", "power driver with friction estimated", "impact wrench", "by feel")]
    public Stated<string>? Method { get; init; }

    [Display(Name = "Preload", Description = "Maximum preload where the method sets one; absent: what the yield permits.")]
    [Measures(nameof(Dimension.OfForce), AmountRange.Positive, Example = "20 kN")]
    public Stated<Amount>? Preload { get; init; }

    [Display(Name = "Wrench error", Description = "Error of the wrench; absent: 4 %.")]
    [Measures(nameof(Dimension.Ratio), AmountRange.NotNegative, Example = "4 %")]
    public Stated<Amount>? WrenchError { get; init; }

    [Display(Name = "Prevailing torque", Description = "Torque that a locking element takes for itself; absent: 0.")]
    [Measures(nameof(Dimension.OfTorque), AmountRange.NotNegative, Example = "2 N·m")]
    public Stated<Amount>? Prevailing { get; init; }

    [Display(Name = "Order", Description = "Order of the bolts.")]
    [OneOf("crosswise", "round", "any")]
    public Stated<string>? Order { get; init; }

    [Display(Name = "Steps", Description = "Shares of the torque, one after another, up to 100 %.")]
    [Measures(nameof(Dimension.Ratio), AmountRange.Positive, Example = "30 %")]
    public ImmutableArray<Stated<Amount>> Steps { get; init; } = [];
}
