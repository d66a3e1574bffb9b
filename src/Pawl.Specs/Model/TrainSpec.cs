using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>Bodies, gears and meshes as a graph. The topology is recognised, never declared.</summary>
[OnlySound]
public sealed record TrainSpec
{
    [NotAKey]
    public required SourceSpan Span { get; init; }

    [Display(Name = "Input body", Description = "The body that is driven.")]
    [Refers]
    public required Stated<string> Input { get; init; }

    [Display(Name = "Output body", Description = "The body that drives the load.")]
    [Refers]
    public required Stated<string> Output { get; init; }

    [Display(Name = "Fixed bodies", Description = "The bodies that are held still.")]
    [Refers]
    public required ImmutableArray<Stated<string>> Fixed { get; init; }

    [Display(Name = "Bodies", Description = "Bodies that need saying more of, and those that are neither input, output, fixed, carrier nor planet.")]
    public Named<BodySpec> Bodies { get; init; } = Named<BodySpec>.Empty;

    [Display(Name = "Planet sets", Description = "Bodies that a carrier carries several times.")]
    public Named<PlanetSetSpec> Planets { get; init; } = Named<PlanetSetSpec>.Empty;

    [Display(Name = "Gears", Description = "Toothed gears, each on a body or a planet set.")]
    public required Named<GearSpec> Gears { get; init; }

    [Display(Name = "Meshes", Description = "Pairs of gears that mesh.")]
    [Count(0, 2000, "at most 2000 meshes")]
    public required ImmutableArray<MeshSpec> Meshes { get; init; }

    [Display(Name = "Profile shift of internal gears", Description = "Sign convention: iso (positive shift thickens the tooth) or outward (positive shift moves the profile away from the axis).")]
    [OneOf("iso", "outward")]
    public Stated<string>? InternalProfileShift { get; init; }
}

/// <summary>A shaft, carrier or housing.</summary>
public sealed record BodySpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Material", Description = "Id of a material in the catalogue. The material of a carrier or housing sets how its centre distances grow with temperature.")]
    [Refers(Declared.Material)]
    public Stated<string>? Material { get; init; }

    [Display(Name = "Floating", Description = "Whether the body may settle radially between its meshes, so that they share the load.")]
    public Stated<bool>? Floating { get; init; }

    [Display(Name = "Exit sealed by", Description = "What seals the body where it leaves the housing, when it is no lip seal of this spec: a sealed bearing, a labyrinth, the flange of the motor. none: it is open.")]
    public Stated<string>? ExitSealedBy { get; init; }

    [Display(Name = "Mass", Description = "Mass of the body with its gears; absent: its weight is not counted.")]
    [Measures(nameof(Dimension.OfMass), AmountRange.Positive, Example = "2.4 kg")]
    public Stated<Amount>? Mass { get; init; }

    [Display(Name = "Mass at", Description = "Axial place of its centre of mass, from the datum of the gears.")]
    [Measures(nameof(Dimension.OfLength), Example = "40 mm")]
    public Stated<Amount>? MassAt { get; init; }

    [Display(Name = "Inertia", Description = "Moment of inertia of the body with its gears about its axis; absent: of its gears and of the sections of its shafts.")]
    [Measures(nameof(Dimension.OfInertia), AmountRange.Positive, Example = "0.008 kg·m²")]
    public Stated<Amount>? Inertia { get; init; }

    [Display(Name = "Balance grade", Description = "Balance quality grade of ISO 21940-11 that the body with its parts must keep at its fastest: G 6.3 is 6.3 mm/s.")]
    [Measures(nameof(Dimension.OfSpeed), AmountRange.Positive, Example = "6.3 mm/s")]
    public Stated<Amount>? BalanceGrade { get; init; }

    [Display(Name = "Mass eccentricity", Description = "Maximum distance of the centre of mass from the axis of rotation with all parts centred: as balanced, or half the run-out of a turned part.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "5 µm")]
    public Stated<Amount>? MassEccentricity { get; init; }

    [Display(Name = "Centred by", Description = "Chain under centring, of parts that turn with the body, by which mass can lie off the axis after balancing: a coupling on its seat.")]
    [Refers]
    public Stated<string>? CentredBy { get; init; }

    [Display(Name = "Centred mass", Description = "Mass of the part that the chain centres; absent: that of the whole body.")]
    [Measures(nameof(Dimension.OfMass), AmountRange.Positive, Example = "0.8 kg")]
    public Stated<Amount>? CentredMass { get; init; }

    [Display(Name = "Running temperature", Description = "Temperature of this body in continuous service; absent: that of the oil.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "75 °C")]
    public Stated<Amount>? Running { get; init; }
}

/// <summary>A body that a carrier carries several times.</summary>
public sealed record PlanetSetSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Carrier", Description = "The body that carries the planets.")]
    [Refers]
    public required Stated<string> Carrier { get; init; }

    [Display(Name = "Count", Description = "Number of planets.")]
    [Range(Limits.FewestPlanets, Limits.MostPlanets)]
    public required Stated<int> Count { get; init; }

    [Display(Name = "Positions", Description = "Angle of each planet on its carrier; absent: equally spaced.")]
    [Measures(nameof(Dimension.OfAngle), Example = "120°")]
    public ImmutableArray<Stated<Amount>> Positions { get; init; } = [];

    [Display(Name = "Steps", Description = "How the steps of a stepped planet are set to each other: identical (same in all planets), marked (identical, with timing marks), individual (each planet clamped in its own place).")]
    [OneOf("identical", "marked", "individual")]
    public Stated<string>? Steps { get; init; }

    [Display(Name = "Marks outward", Description = "Whether the assembly instruction is to point the same mark of every planet away from the axis.")]
    public Stated<bool>? MarksOutward { get; init; }

    [Display(Name = "Insertion", Description = "How the planet enters an internal gear: axially or radially.")]
    [OneOf("axial", "radial")]
    public Stated<string>? Insertion { get; init; }

    [Display(Name = "Load sharing", Description = "Mesh load factor K_γ: load of the heaviest planet over the mean; absent: by the number of planets.")]
    [Range(Limits.MinLoadFactor, Limits.MaxLoadFactor)]
    public Stated<double>? LoadSharing { get; init; }

    [Display(Name = "Proof of load sharing", Description = "The test or analysis that the factor comes from.")]
    public Stated<string>? LoadSharingProof { get; init; }

    [Display(Name = "Thrust washers", Description = "Whether thrust washers hold the planet along its pin.")]
    public Stated<bool>? ThrustWashers { get; init; }

    [Display(Name = "Mass", Description = "Mass of one planet with its bearing.")]
    [Measures(nameof(Dimension.OfMass), AmountRange.Positive, Example = "0.35 kg")]
    public Stated<Amount>? Mass { get; init; }
}

/// <summary>One toothed gear.</summary>
public sealed record GearSpec
{
    [NotAKey]
    public required Stated<string> Name { get; init; }

    [Display(Name = "Body", Description = "The body or planet set that the gear sits on.")]
    [Refers]
    public required Stated<string> On { get; init; }

    [Display(Name = "Number of teeth", Description = "z, a whole number, positive also for an internal gear.")]
    [Range(Limits.FewestTeeth, Limits.MostTeeth)]
    public required Stated<int> Teeth { get; init; }

    [Display(Name = "Internal", Description = "true for a ring with internal teeth.")]
    public Stated<bool>? Internal { get; init; }

    [Display(Name = "Normal module", Description = "m_n. An inch gear states diametral_pitch instead.")]
    [Measures(nameof(Dimension.OfLength), Example = "2.5 mm", Min = Limits.MinModule, Max = Limits.MaxModule, Unit = nameof(Units.Millimetre))]
    public Stated<Amount>? Module { get; init; }

    [Display(Name = "Normal diametral pitch", Description = "Teeth per inch of reference diameter, P_nd = 25.4 mm / m_n. Instead of module.")]
    [Range(Limits.MinDiametralPitch, Limits.MaxDiametralPitch)]
    public Stated<double>? DiametralPitch { get; init; }

    [Display(Name = "Normal pressure angle", Description = "α_n of the basic rack; absent: 20° (ISO 53).")]
    [Measures(nameof(Dimension.OfAngle), Example = "20°", Min = Limits.MinPressureAngle, Max = Limits.MaxPressureAngle, Unit = nameof(Units.Degree))]
    public Stated<Amount>? PressureAngle { get; init; }

    [Display(Name = "Helix angle", Description = "β at the reference diameter; absent: 0° (spur).")]
    [Measures(nameof(Dimension.OfAngle), Example = "15°")]
    public Stated<Amount>? HelixAngle { get; init; }

    [Display(Name = "Hand of helix", Description = "left or right.")]
    [OneOf("left", "right")]
    public Stated<string>? Hand { get; init; }

    [Display(Name = "Profile shift coefficient", Description = "x in normal modules. Absent means unknown, never zero.")]
    [Range(Limits.MinProfileShift, Limits.MaxProfileShift)]
    public Stated<double>? ProfileShift { get; init; }

    [Display(Name = "Addendum coefficient", Description = "h_aP* of the basic rack; absent: 1 (ISO 53).")]
    [Range(Limits.MinToothHeight, Limits.MaxToothHeight)]
    public Stated<double>? Addendum { get; init; }

    [Display(Name = "Dedendum coefficient", Description = "h_fP* of the basic rack; absent: 1.25 (ISO 53).")]
    [Range(Limits.MinToothHeight, Limits.MaxToothHeight)]
    public Stated<double>? Dedendum { get; init; }

    [Display(Name = "Root fillet coefficient", Description = "ρ_fP* of the basic rack; absent: 0.38 (ISO 53).")]
    [Range(Limits.MinRootFillet, Limits.MaxRootFillet)]
    public Stated<double>? RootFillet { get; init; }

    [Display(Name = "Face width", Description = "b.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "24 mm ±0.1")]
    public Stated<Toleranced>? FaceWidth { get; init; }

    [Display(Name = "Axial place", Description = "Place of the middle of the face width along the common axis, from any one datum of the gearbox towards the output.")]
    [Measures(nameof(Dimension.OfLength), Example = "35 mm")]
    public Stated<Toleranced>? AxialPosition { get; init; }

    [Display(Name = "Tip diameter", Description = "d_a as turned, with its tolerance; absent: from the basic rack and the profile shift.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "80.6 mm h8")]
    public Stated<Toleranced>? TipDiameter { get; init; }

    [Display(Name = "Root diameter", Description = "d_f; absent: from the basic rack and the profile shift.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "69.3 mm")]
    public Stated<Toleranced>? RootDiameter { get; init; }

    [Display(Name = "Root form diameter", Description = "d_Ff: where the involute ends at the root, as the maker of the tool states it; absent on an external gear: by a rack tool. A ring needs it, for its root depends on its cutter.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "96.9 mm")]
    public Stated<Toleranced>? RootFormDiameter { get; init; }

    [Display(Name = "Tip chamfer", Description = "Radial height of the tip chamfer; absent: none.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.2 mm")]
    public Stated<Toleranced>? TipChamfer { get; init; }

    [Display(Name = "Tip deviations", Description = "Limit deviations of the tip diameter from its computed size; absent: the general tolerance.")]
    public DeviationsSpec? TipDeviations { get; init; }

    [Display(Name = "Root deviations", Description = "Limit deviations of the root diameter from its computed size; absent: the general tolerance.")]
    public DeviationsSpec? RootDeviations { get; init; }

    [Display(Name = "Tip relief", Description = "C_a, material taken off the flank at the tip; absent: none is drawn, and running-in makes a little.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "20 µm")]
    public Stated<Toleranced>? TipRelief { get; init; }

    [Display(Name = "Tooth thickness allowance", Description = "Upper and lower deviation of the normal tooth thickness, both zero or negative: backlash comes from them.")]
    public ThicknessAllowanceSpec? ThicknessAllowance { get; init; }

    [Display(Name = "Ball diameter", Description = "Diameter of the measuring balls; absent: the least preferred one that suits.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "4.5 mm")]
    public Stated<Amount>? BallDiameter { get; init; }

    [Display(Name = "Rim thickness", Description = "s_R, from the root of the tooth to the bore, keyway or outside diameter of the ring.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "8 mm")]
    public Stated<Toleranced>? RimThickness { get; init; }

    [Display(Name = "Material", Description = "Id of a material in the catalogue.")]
    [Refers(Declared.Material)]
    public Stated<string>? Material { get; init; }

    [Display(Name = "Surface", Description = "Whether the flanks are hardened: sets the least tip thickness.")]
    [OneOf("through-hardened", "case-hardened", "nitrided", "induction-hardened", "unhardened")]
    public Stated<string>? Surface { get; init; }

    [Display(Name = "Heat treatment", Description = "How the gear is treated and what was done to it after. Instead of surface.")]
    public HeatTreatmentSpec? HeatTreatment { get; init; }

    [Display(Name = "Accuracy grade", Description = "Flank tolerance class after ISO 1328-1.")]
    [Range(Limits.MinAccuracyGrade, Limits.MaxAccuracyGrade)]
    public Stated<int>? AccuracyGrade { get; init; }

    [Display(Name = "Pitch deviation", Description = "Maximum single pitch deviation f_pt as measured; absent: the tolerance of the accuracy grade.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "6 µm")]
    public Stated<Amount>? PitchDeviation { get; init; }

    [Display(Name = "Helix deviation", Description = "Maximum helix slope deviation f_Hβ as the drawing permits or as measured; absent: the tolerance of the accuracy grade.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "4 µm")]
    public Stated<Amount>? HelixDeviation { get; init; }

    [Display(Name = "Roughness", Description = "Roughness of flanks and roots.")]
    public RoughnessSpec? Roughness { get; init; }

    [Display(Name = "Cutter", Description = "The pinion-type cutter of an internal gear: its root stress depends on it.")]
    public CutterSpec? Cutter { get; init; }
}

/// <summary>Limit deviations from a computed size.</summary>
public sealed record DeviationsSpec
{
    [Display(Name = "Upper", Description = "Upper limit deviation.")]
    [Measures(nameof(Dimension.OfLength), Example = "0 mm")]
    public required Stated<Amount> Upper { get; init; }

    [Display(Name = "Lower", Description = "Lower limit deviation.")]
    [Measures(nameof(Dimension.OfLength), Example = "-0.1 mm")]
    public required Stated<Amount> Lower { get; init; }
}

/// <summary>Deviations of the normal tooth thickness.</summary>
public sealed record ThicknessAllowanceSpec
{
    [Display(Name = "Upper", Description = "E_sns: upper deviation of the normal tooth thickness, zero or negative.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotPositive, Example = "-0.060 mm")]
    public required Stated<Amount> Upper { get; init; }

    [Display(Name = "Lower", Description = "E_sni: lower deviation of the normal tooth thickness, below the upper.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotPositive, Example = "-0.100 mm")]
    public required Stated<Amount> Lower { get; init; }
}

/// <summary>A pair of gears that mesh.</summary>
[OnlySound]
public sealed record MeshSpec
{
    [NotAKey]
    public required SourceSpan Span { get; init; }

    [Display(Name = "Gears", Description = "The names of the two gears.")]
    [Refers]
    [Count(2, 2, "two gears", Hint = "A mesh joins two gears; give each pair an entry of its own.")]
    public required ImmutableArray<Stated<string>> Gears { get; init; }

    [Display(Name = "Centre distance", Description = "a_w as bored, positive also for an internal pair, with its tolerance; absent: from the profile shifts, without play.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "60 mm js6")]
    public Stated<Toleranced>? CentreDistance { get; init; }

    [Display(Name = "Friction coefficient", Description = "Mean friction coefficient of the flanks μ_m; absent: 0.06, common for oil.")]
    [Range(Limits.MinFriction, Limits.MaxFriction)]
    public Stated<double>? Friction { get; init; }

    [Display(Name = "Efficiency", Description = "Efficiency of this mesh where measured; absent: from friction and geometry.")]
    [Measures(nameof(Dimension.Ratio), Example = "99.2 %", Min = 0, Max = 100, Unit = nameof(Units.Percent))]
    public Stated<Amount>? Efficiency { get; init; }

    [Display(Name = "Misalignment", Description = "F_βx: misalignment of the flanks over the face width under load, before running-in, from deflection, bearing play and manufacture.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "8 µm")]
    public Stated<Amount>? Misalignment { get; init; }

    [Display(Name = "Helix correction", Description = "By how much the helix of one gear of the pair is ground against the computed tilt, on each flank for its direction of drive, over the face width; absent: none.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "6 µm")]
    public Stated<Amount>? HelixCorrection { get; init; }

    [Display(Name = "Face load factor", Description = "K_Hβ where known by analysis or test; absent: from the misalignment.")]
    [Range(Limits.MinLoadFactor, Limits.MaxLoadFactor)]
    public Stated<double>? FaceLoadFactor { get; init; }

    [Display(Name = "Dynamic factor", Description = "K_v where known by analysis or test; absent: after ISO 6336-1, methods B and C.")]
    [Range(Limits.MinLoadFactor, Limits.MaxLoadFactor)]
    public Stated<double>? DynamicFactor { get; init; }

    [Display(Name = "Minimum backlash", Description = "The least normal backlash required at any temperature of service.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.03 mm")]
    public Stated<Amount>? MinBacklash { get; init; }

    [Display(Name = "Maximum backlash", Description = "The greatest normal backlash required at any temperature of service.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.NotNegative, Example = "0.20 mm")]
    public Stated<Amount>? MaxBacklash { get; init; }
}
