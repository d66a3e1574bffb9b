namespace Pawl.Mechanics.Tests;

/// <summary>Values out of the ordinary that have a meaning, and why.</summary>
internal static class Meanings
{
    private const string Zero = "zero";
    private const string Negative = "negative";

    /// <summary>
    /// Functions that no trial finds inputs for: each takes a name, a table or a drawing that fits together. Their own tests call them.
    /// What is no number is tried on them all the same, see <see cref="ValidityTests"/>.
    /// </summary>
    public static readonly string[] WithoutBaseline =
    [
        "BoundaryDimensions.Of", "Contamination.Factor",
        "Elastomer.In",
    ];

    /// <summary>What is no number and has a meaning: by function and parameter.</summary>
    private static readonly (string Function, string Parameter, string Value, string Why)[] NoNumbers =
    [
        ("RingFit.Pressure", "outside", "+inf", "a housing without end: Lamé's ring about a hole in an infinite plate"),
        ("RingFit.OuterRacewayContraction", "housingOutside", "+inf", "a housing without end"),
    ];

    /// <summary>Signs that have a meaning, by the name of the parameter and why; the first column says which of zero and negative.</summary>
    private static readonly (string Signs, string Why, string[] Parameters)[] ByName =
    [
        ("negative", "internal gears count negative: diameters, radii, centre distance and ratio", [
            "baseDiameter", "baseDiameter1", "baseDiameter2", "curvature1", "curvature2", "pinionReferenceDiameter",
            "ringTipRadius", "ringTipDiameter", "ringBaseDiameter", "toothRatio",
            "referenceDiameter", "workingCentreDistance", "referenceCentreDistance", "diameter", "tipDiameter",
            "rootDiameter", "mateRootDiameter",
        ]),
        ("zero negative", "radius of curvature from the base circle: zero there, internal negative", [
            "mateCurvature", "mateTipCurvature",
        ]),
        ("zero negative", "zero for a spur gear, left hand negative", ["helixAngle", "baseHelixAngle", "baseHelix", "helixAngleThere"]),
        ("zero", "zero at the base circle", [
            "angle", "pressureAngle", "tipPressureAngle", "workingPressureAngle", "transversePressureAngle", "centrePressureAngle",
        ]),
        ("zero negative", "zero without profile shift or alteration, below zero towards the axis", [
            "profileShift", "profileShiftSum", "tipAlteration", "thicknessAllowance", "thicknessAllowanceSum",
        ]),
        ("zero negative", "factors of the tooth profile that a drawing may set to zero or past the reference line", [
            "addendumFactor", "dedendumFactor", "rootRadiusFactor",
        ]),
        ("zero negative", "a tooth that runs to a point, and past it; internal gears count negative", ["transverseThickness"]),
        ("zero negative", "part of a length with its own sign: below zero the pitch point is not reached", ["length"]),
        ("zero negative", "zero without play, below zero the flanks overlap or the parts press", [
            "normalBacklash", "clearance", "firstClearance", "secondClearance",
            "play", "interference", "leastClearance",
        ]),
        ("zero negative", "a speed or a place: zero at rest or at the origin, the sign is the way", [
            "speed", "carrierSpeed", "cageSpeed", "pinionSpeed", "ringSpeed", "loadSpeed", "relativeSpeed", "inner", "outer",
            "pitchLineSpeedInMillimetresPerSecond", "surfaceSpeedInMillimetresPerSecond", "speedInMillimetresPerSecond",
            "start", "x", "y", "along", "aside", "position", "pairAngle", "midPlane", "lower",
        ]),
        ("zero negative", "a force or a torque: zero without load, the sign is the way", [
            "axial", "axialForce", "external", "forceX", "forceY", "Min", "least", "clamp", "moment", "tangential",
            "torque", "thermal",
        ]),
        ("zero", "an amount that may be absent", [
            "across", "allowance", "assembly", "axialRatio", "boltForce", "bore", "chamfers", "corner", "crossHole", "depth",
            "deviation", "embedding", "embeddingLoss", "fatigueRatio", "first", "second", "firstMass",
            "secondMass", "force", "freeThread", "guided", "hole", "hubRoughness",
            "shaftRoughness", "land", "life", "lineLoad", "load", "loadFactor", "loss", "lossFactor", "mass", "misalignment", "oil",
            "overlapRatio", "pack", "planetMass", "positionOfHoles", "positionOfPins", "preload", "pressure", "prevailing", "radial", "radius",
            "roughnessInMillimetres", "runOut", "shaftHole", "shear", "smoothing",
            "stock", "strength", "stress", "swell", "tangent", "tangentialForce", "tappedHole", "threadFriction",
            "threadTorque", "unbalance", "velocity1", "velocity2", "wrenchError", "friction", "nominal", "needed", "dowels",
            "faceWidth", "length", "gap", "contamination", "poisson", "tipDiameter", "innerDiameter", "tipRelief", "pitchForce", "profileForce",
            "stiffnessForce",
        ]),
        ("zero", "a radial bearing", ["contactAngle"]),
        ("zero", "none so far: no turns, no cycles, no speed", ["cycles", "turns", "time", "parameterInMillimetresPerSecond"]),
        ("zero", "an index or ratio whose scale begins at zero", ["index", "meanStressRatio", "weakerOverStronger", "ratio", "resonanceRatio"]),
        ("zero negative", "a temperature in °C or a change of it", [
            "ambient", "cold", "coolant", "hot", "temperature", "temperature1", "innerTemperature", "outerTemperature", "elementTemperature",
            "holeTemperature", "shaftTemperature", "rise", "partsRise", "boltRise",
            "temperatureRiseOfCarrier", "temperatureRiseOfGears", "warmth",
        ]),
        ("zero negative", "some materials do not grow with warmth, and some shrink", [
            "expansion", "boltExpansion", "elementExpansion", "expansionOfCarrier", "expansionOfGears", "holeExpansion",
            "innerExpansion", "outerExpansion", "ringExpansion", "shaftExpansion",
        ]),
    ];

    /// <summary>The same for one function alone, where the name means something else elsewhere.</summary>
    private static readonly (string Function, string Parameter, string Signs, string Why)[] ByFunction =
    [
        ("CaseDepth.ForContact", "ratio", "negative", "an internal gear, below −1"),
        ("Contributor.WarmthAt", "coefficient", "zero negative", "which way a size enters the gap"),
        ("Flange.OpeningForce", "inside", "zero", "faces without a hole"),
        ("Interval.About", "nominal", "zero negative", "any size, such as a deviation"),
        ("Interval.Exactly", "value", "zero negative", "any size"),
        ("NormalDistribution.Share", "value", "zero negative", "distance from the middle"),
        ("Gland.Height", "eccentricity", "zero negative", "the sign is the side: off centre one way or the other"),
        ("MeshPlace.ToothOfMate", "tooth1", "zero negative", "a direction"),
        ("MeshPlace.ToothOfMate", "toPitchPoint1", "zero negative", "a direction"),
        ("MeshPlace.ToothOfMate", "toPitchPoint2", "zero negative", "a direction"),
        ("ShimChoice.EndPlay", "gap", "zero negative", "a gap before shimming that the parts overlap"),
        ("RootStrength.MeanStress", "stressRatio", "zero negative", "R from −1.2 to 0"),
        ("TorsionalChain.Reduced", "speedRatio", "zero negative", "a body that stands, or turns against the input"),
        ("TorsionalChain.Reduced", "carrierRatio", "zero negative", "a carrier that stands, or turns against the input"),
        ("TorsionalChain.Reduced", "mass", "zero", "a body on the common axis has no path"),
        ("TorsionalChain.Reduced", "orbitRadius", "zero", "a body on the common axis has no path"),
        ("ShaftTwist.Stiffness", "torque", "negative", "twisted the other way"),
        ("ShaftTwist.Stiffness", "twist", "negative", "twisted the other way"),
        ("ShaftTwist.Rigidity", "poisson", "negative", "above −1: material that grows wider when pulled"),
        ("InvoluteSpline.ExternalForm", "allowance", "negative", "the deviation of a tooth that is thinner than the space: never above zero"),
        ("PlanetBearing.Acceleration", "centreDistance", "negative", "of the mesh with a ring"),
        ("PlanetBearing.Centrifugal", "centreDistance", "negative", "of the mesh with a ring"),
        ("CentralNut.FaceTorque", "inner", "zero", "a face without a hole"),
        ("RotorBalance.Eccentricity", "residual", "zero", "a rotor without any unbalance of its own"),
        ("RotorBalance.Eccentricity", "offCentre", "zero", "a part that sits without play"),
        ("RotorBalance.Force", "eccentricity", "zero", "a rotor without any unbalance"),
        ("AxialThrust.Along", "teeth", "zero negative", "spur teeth; the sign is the direction"),
        ("AxialThrust.Along", "reverse", "zero", "torque in one direction alone"),
        ("AxialThrust.Along", "lasting", "zero", "neither machine nor weight"),
        ("HeatBalance.SumpTemperature", "cooler", "zero", "no cooler"),
        ("HousingVent.PressureDrop", "flow", "zero", "nothing flows"),
        ("HousingVent.PressureLeft", "opening", "zero", "always open"),
        ("HousingVent.PressureLeft", "drop", "zero", "nothing flows"),
        ("HousingVent.PressureLeft", "closed", "zero", "no change of temperature"),
        ("RotatingOil.PressureGain", "from", "zero", "on the axis"),
        ("RotatingOil.PressureGain", "to", "zero", "on the axis"),
        ("PlanetPin.StraddledDeflection", "force", "negative", "bent the other way"),
        ("PlanetPin.StraddledDeflection", "from", "zero", "at the cheek"),
        ("PlanetPin.StraddledDeflection", "at", "zero", "at the cheek"),
        ("PlanetPin.StraddledSlopeAtForce", "force", "negative", "bent the other way"),
        ("PlanetPin.StraddledSlopeAtForce", "from", "zero", "at the cheek"),
        ("PlanetPin.OverhungDeflection", "force", "negative", "bent the other way"),
        ("PlanetPin.OverhungDeflection", "from", "zero", "at the cheek"),
        ("PlanetPin.OverhungDeflection", "at", "zero", "at the cheek"),
        ("PlanetPin.OverhungSlopeAtForce", "force", "negative", "bent the other way"),
        ("PlanetPin.OverhungSlopeAtForce", "from", "zero", "at the cheek"),
    ];

    private static readonly HashSet<string> Used = [];

    public static bool OfNoNumber(string function, string parameter, string value) =>
        NoNumbers.Any(each => each.Function == function && Same(each.Parameter, parameter) && each.Value == value);

    public static bool OfSign(string function, string parameter, bool zero)
    {
        var sign = zero ? Zero : Negative;
        if (ByFunction.Any(each => each.Function == function && Same(each.Parameter, parameter) && each.Signs.Contains(sign, StringComparison.Ordinal)))
            return Mark(function, parameter);
        return ByName.Any(group => group.Signs.Contains(sign, StringComparison.Ordinal) && group.Parameters.Any(name => Same(name, parameter)))
            && Mark("", parameter);
    }

    /// <summary>Entries that no function needs any more; ask after all have been called.</summary>
    public static IEnumerable<string> Stale() =>
        ByName.SelectMany(group => group.Parameters).Distinct(StringComparer.OrdinalIgnoreCase).Where(name => !Used.Contains(" " + name.ToUpperInvariant()))
            .Concat(ByFunction.Select(each => $"{each.Function} {each.Parameter}")
                .Where(name => !Used.Contains(name.Split(' ')[0] + " " + name.Split(' ')[1].ToUpperInvariant())));

    private static bool Mark(string function, string parameter)
    {
        Used.Add(function + " " + parameter.ToUpperInvariant());
        return true;
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
