using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.BodyInputs;
using static Pawl.Analysis.Core.Inputs;
using J = Pawl.Analysis.Joints.Joints;

namespace Pawl.Analysis.Joints;

/// <summary>A joint besides its forces: torque through it, fatigue, faces, threads, what keeps it tight.</summary>
public sealed class JointStrengths : Section<JointSpec>
{
    // Above this a modulus is that of steel, below the other that of aluminium; common practice, no source.
    private const double MinSteel = 180_000;
    private const double MaxAluminium = 90_000;

    // A bolt may be this much stronger than its table says; common practice, no source.
    private const double StrongerThanMin = 1.2;

    private const double WideBoss = 3;
    private const double LostPitches = 0.8;
    private const string Tempered = "quenched and tempered steel";

    public static readonly NumberDefinition<JointSpec> CarriedTorque = Number("carried_torque", "T", "Maximum torque through the joint", Units.NewtonMetre)
        .By("as stated; else T = |T_body|·K_A·f_p", "torque balance").Scaled(1000)
        .When(J.IsCarrying)
        .Stated(static s => s.Torque)
        .From(
            Of("body", static () => BodyQuantities.Torque, "T_body"), Of("train", static () => DutyQuantities.ApplicationFactor, "K_A"), PeakOverRated,
            static (torque, application, peak) => Math.Abs(torque) * application * peak)
        .Custom(static subject => Quantity.NotEvaluated(CarriedTorque!, [], $"the torque of {((JointSpec)subject.Model).Carries!.Value} is not known"));

    public static readonly NumberDefinition<JointSpec> FaceFriction = Number("face_friction", "µ_T", "Friction of the clamped faces")
        .When(static s => J.IsCarrying(s) || s.FaceFriction is not null).Stated(static s => s.FaceFriction);

    public static readonly NumberDefinition<JointSpec> BoltCircle = Number("bolt_circle", "D", "Bolt circle diameter", Units.Millimetre)
        .When(static s => !J.IsCentral(s) && (J.IsCarrying(s) || (s.BoltCircle ?? s.Moment) is not null || s.Supports is not null)).Stated(static s => s.BoltCircle);

    public static readonly NumberDefinition<JointSpec> HeadsApart =
        Number("heads_apart", "", "Room between the faces under neighbouring heads", Units.Millimetre)
        .By("D·sin(π/z) − d_W", "geometry").Scaled(1)
        .When(static s => s.Bolts is { Value: > 1 })
        .From(BoltCircle, J.Bolts, J.FaceOutside, static (circle, bolts, face) => circle * Math.Sin(Math.PI / bolts) - face);

    public static readonly NumberDefinition<JointSpec> FacesOutside =
        Number("outside", "D_o", "Outside diameter of the clamped faces", Units.Millimetre).Stated(static s => s.Outside).Optional();

    public static readonly NumberDefinition<JointSpec> FacesInside =
        Number("inside", "D_i", "Inside diameter of the clamped faces", Units.Millimetre).Stated(static s => s.Inside).Optional();

    public static readonly NumberDefinition<JointSpec> OuterEdge = Number("outer_edge", "", "From the face under the head to the outer edge", Units.Millimetre)
        .By("(D_o − D − d_W)/2", "geometry").Scaled(1)
        .From(FacesOutside, BoltCircle, J.FaceOutside, static (outside, circle, face) => (outside - circle - face) / 2);

    public static readonly NumberDefinition<JointSpec> InnerEdge = Number("inner_edge", "", "From the face under the head to the inner edge", Units.Millimetre)
        .By("(D − d_W − D_i)/2", "geometry").Scaled(1)
        .From(FacesInside, BoltCircle, J.FaceOutside, static (inside, circle, face) => (circle - face - inside) / 2);

    public static readonly NumberDefinition<JointSpec> ClampBeforeMoment = Number("clamp_before_moment", "F_K", "Residual clamp load of all bolts without the bending moment", Units.Newton)
        .By("F_K = z·(F_KR + (1 − Φ_K)·F_M)", "statics").Scaled(1000)
        .From(J.Bolts, J.Clamp, J.ClampLoadFactor, JointLoads.MomentForce, static (bolts, clamp, phi, moment) => bolts * (clamp + (1 - phi) * moment));

    public static readonly NumberDefinition<JointSpec> EdgeSafety = Number("edge_safety", "S_E", "Safety against a gap at the outer edge")
        .By("S_E = F_K·(D_o² + D_i²)/(8·D_o·M)", "beam theory, a ring of faces under force and moment; rigid flanges")
        .When(JointLoads.Moment, static moment => moment > 0)
        .From(ClampBeforeMoment, FacesOutside, FacesInside, JointLoads.Moment, static (clamp, outside, inside, moment) =>
            Math.Max(0, clamp) / Flange.OpeningForce(moment, outside, inside))
        .Custom(static subject => AnalysisContext.Missing(EdgeSafety!, $"{subject.Path}.outside or {subject.Path}.inside"));

    public static readonly NumberDefinition<JointSpec> SlipTorque = Number("slip_torque", "T_fr", "Torque that the clamped faces carry by friction", Units.NewtonMetre)
        .By("T_fr = z·F_KR·µ_T·D/2 − F_Q·D/2, not below zero", "statics, VDI 2230 Part 1").Scaled(1000)
        .When(J.IsCarrying)
        .From(
            J.Bolts, J.Clamp, FaceFriction, BoltCircle, JointLoads.ForceAcross.Or(0),
            static (bolts, clamp, friction, circle, across) =>
                Math.Max(0, Flange.FrictionTorque((int)bolts, clamp, friction, circle) - across * circle / 2));

    public static readonly NumberDefinition<JointSpec> SlipSafety = Number("slip_safety", "S_G", "Safety against slip, worst bolt")
        .By("S_G = µ_T·F_KR/(2·T/(z·D) + F_Q/z), not below zero", "statics, VDI 2230 Part 1")
        .From(
            J.Clamp, FaceFriction, CarriedTorque, JointLoads.ForceAcross.Or(0), J.Bolts, BoltCircle,
            static (clamp, friction, torque, across, bolts, circle) =>
                Math.Max(0, clamp) * friction / Flange.ForceAcross((int)bolts, torque, across, circle));

    public static readonly NumberDefinition<JointSpec> RequiredSlipSafety = Number("required_slip_safety", "S_Gmin", "Required safety against slip")
        .By("as stated; else 1.8 for torque that reverses, 1.2 in one direction", "VDI 2230 Part 1, from memory", Certainty.Memory)
        .When(static s => J.IsCarrying(s) || s.Locking is not null)
        .Stated(static s => s.SlipSafety)
        .Custom(static subject => subject.Reach("train")?.Find(DutyQuantities.ReverseTorque) is { IsEvaluated: true, Value.Nominal: 0 }
            ? subject.Context.Assumed(RequiredSlipSafety!, 1.2, "1.2, VDI 2230 for torque in one direction, from memory")
            : subject.Context.Assumed(RequiredSlipSafety!, 1.8, "1.8, VDI 2230 for torque that reverses, from memory"));

    public static readonly TruthDefinition<JointSpec> DowelsCarry = Truth("dowels_carry", "Dowels carry the torque, and friction is not counted on")
        .By("a set of dowels of this joint has the purpose to carry", J.TheSpec, Certainty.Declared)
        .When(J.IsCarrying)
        .Custom(static subject =>
        {
            var name = ((JointSpec)subject.Model).Name.Value;
            var dowels = subject.Context.Spec.Dowels.Entries.FirstOrDefault(set => set.Joint?.Value == name && set.Purpose.Value == "carry");
            return Quantity.OfTruth(DowelsCarry!, dowels is null ? Origin.Computed.Instance : AnalysisContext.Declared(dowels.Purpose), dowels is not null, []);
        });

    public static readonly NumberDefinition<JointSpec> MinAxialForce =
        Number("min_axial_force", "F_A,min", "Axial force that the joint returns to, all bolts together", Units.Newton).Stated(static s => s.MinAxialForce).Optional();

    public static readonly RowDefinition<JointSpec, string> ThreadsRolled = Text("threads_rolled", "Threads rolled before or after heat treatment")
        .When(static s => !J.IsCentral(s)).Stated(static s => s.ThreadsRolled).Assumed("before", "before, the usual bolt");

    public static readonly NumberDefinition<JointSpec> Amplitude = Number("stress_amplitude", "σ_a", "Stress amplitude in the thread", Units.Megapascal)
        .By("σ_a = Φ·(F_A − F_A,min/z + F_M)/(2·A_s)", J.Vdi).Scaled(1).Noted("half of the range; the moment comes from either side")
        .When(J.AxialForce, static force => force != 0)
        .From(
            J.Thread, J.LoadFactor, J.AxialForce, MinAxialForce.Or(0), J.Bolts, JointLoads.MomentForce.Or(0),
            static (thread, phi, force, least, bolts, moment) => BoltFatigue.Amplitude(thread, phi, force, least / bolts - moment));

    public static readonly NumberDefinition<JointSpec> PermittedAmplitude = Number("permitted_amplitude", "σ_A", "Fatigue strength of the thread, as an amplitude", Units.Megapascal)
        .By("rolled before treatment 0.85·(150/d + 45); after it times 2 − F_Sm/F_0.2", J.Vdi, Certainty.Memory)
        .Noted("at 2·10⁶ cycles; the same for every property class")
        .When(J.AxialForce, static force => force != 0)
        .From(
            J.Thread, ThreadsRolled, J.MaxPreload, J.LoadFactor, J.AxialForce, MinAxialForce.Or(0), J.Bolts, JointLoads.MomentForce.Or(0), J.Yield, J.StressDiameter,
            static (thread, rolled, preload, phi, force, least, bolts, moment, yield, d) => rolled == "after"
                ? BoltFatigue.RolledAfterTreatment(thread, (preload + phi * (force + least / bolts - moment) / 2) / (yield * J.Area(d)))
                : BoltFatigue.RolledBeforeTreatment(thread));

    public static readonly NumberDefinition<JointSpec> FatigueSafety = Number("fatigue_safety", "S_D", "Safety against fatigue").NeverNegative()
        .By("S_D = σ_A/σ_a", J.Vdi)
        .From(PermittedAmplitude, Amplitude, static (permitted, present) => permitted / present);

    public static readonly NumberDefinition<JointSpec> ContactOutside = Number("contact_outside", "D_c", "Outside diameter of the narrowest contact in the stack", Units.Millimetre)
        .By("the smaller outside and the larger bore of two rings that touch, where their area is least", J.Closed)
        .When(J.IsCentral)
        .From(
            J.FaceOutside, J.FaceHole, Each("layers", static () => JointLayers.Outside, "D"), Each("layers", static () => JointLayers.Inside, "d"),
            static (outer, hole, outside, inside) => Narrowest(outer, hole, outside, inside).Outer);

    public static readonly NumberDefinition<JointSpec> ContactInside = Number("contact_inside", "d_c", "Inside diameter of the narrowest contact in the stack", Units.Millimetre)
        .By("the smaller outside and the larger bore of two rings that touch, where their area is least", J.Closed)
        .When(J.IsCentral)
        .From(
            J.FaceOutside, J.FaceHole, Each("layers", static () => JointLayers.Outside, "D"), Each("layers", static () => JointLayers.Inside, "d"),
            static (outer, hole, outside, inside) => Narrowest(outer, hole, outside, inside).Hole);

    public static readonly NumberDefinition<JointSpec> FacePressure = Number("face_pressure", "p", "Maximum pressure under head or nut, or in the stack", Units.Megapascal)
        .By("p = F_S/(π/4·(d_W² − d_h²)); in a stack over the narrowest contact of two rings", J.Vdi)
        .From(J.BoltForce, ContactOutside, ContactInside, static (force, outer, inner) => force / new BearingFace(outer, inner).Area)
        .From(J.BoltForce, J.FaceOutside, J.FaceHole, static (force, outer, hole) => force / new BearingFace(outer, hole).Area);

    public static readonly NumberDefinition<JointSpec> LimitingPressure = Number("limiting_pressure", "p_G", "Lowest limiting pressure of the parts under it", Units.Megapascal)
        .By("the least of the outermost layers; of a stack, of all rings", J.TheSpec, Certainty.Declared)
        .From(Each("pressed", static () => JointLayers.LimitingPressure), static limits => limits.Aggregate(double.PositiveInfinity, Math.Min));

    public static readonly RowDefinition<JointSpec, string> NutStrengthClass = Text("nut_strength", "Property class of the nut")
        .When(static s => s is { Tapped: null, Nut: { } nut } && (nut.Strength is not null || nut.Height is null)).Stated(static s => s.Nut?.Strength);

    public static readonly RowDefinition<JointSpec, string> NutStyleName = Text("nut_style", "Style of the nut")
        .When(static s => s is { Tapped: null, Nut: not null }).Stated(static s => s.Nut?.Style).Assumed("regular", "regular, for nothing is stated");

    public static readonly TruthDefinition<JointSpec> NutCarries = Truth("nut_carries", "The nut carries the load of the bolt's property class")
        .By("class of the nut at least the first number of that of the bolt, and no thin nut", "ISO 898-2", Certainty.Published)
        .When(static (_, subject) => subject.Find(J.Thread)?.Row is ScrewThread { Form: ThreadForm.IsoMetric })
        .From(J.Strength, NutStrengthClass, NutStyleName, static (bolt, nut, style) => new NutStrength(nut, StyleOf(nut, style), 0).Carries(bolt));

    public static readonly NumberDefinition<JointSpec> NutProofLoad = Number("nut_proof_load", "F_p,nut", "Proof load of the nut", Units.Newton)
        .By("F_p,nut = S_p,nut·A_s", "ISO 898-2, coarse threads", Certainty.Published).Tables(NutStrength.TableId)
        .When(static (_, subject) => subject.Find(J.Thread)?.Row is ScrewThread { Form: ThreadForm.IsoMetric } thread && !thread.Designation.Contains('x'))
        .From(
            NutStrengthClass, NutStyleName, J.Thread,
            static (name, style, thread) => NutStrength.TryFind(name, StyleOf(name, style), thread, out var nut, out var reason)
                ? nut.ProofLoad(thread)
                : throw new OutsideValidityException(reason));

    public static readonly NumberDefinition<JointSpec> NutProofShare = Number("nut_proof_share", "F_S/F_p,nut", "Maximum bolt force over the proof load of the nut")
        .By("F_S/F_p,nut", "ISO 898-2")
        .From(J.BoltForce, NutProofLoad, static (force, load) => force / load);

    public static readonly NumberDefinition<JointSpec> Length =
        Number("length", "l", "Length of the bolt under its head", Units.Millimetre).When(static s => s.Tapped is not null).Stated(static s => s.Length);

    public static readonly NumberDefinition<JointSpec> Depth =
        Number("tapped_depth", "t", "Depth of full thread", Units.Millimetre).When(static s => s.Tapped is not null).Stated(static s => s.Tapped?.Depth);

    public static readonly NumberDefinition<JointSpec> Relief =
        Number("relief", "t_r", "Relief at the mouth of the tapped hole", Units.Millimetre).Stated(static s => s.Tapped?.Relief).Optional();

    public static readonly NumberDefinition<JointSpec> InsertLength =
        Number("insert_length", "l_e", "Length of the thread insert", Units.Millimetre).Stated(static s => s.Tapped?.Insert?.Length).Optional();

    public static readonly NumberDefinition<JointSpec> Engagement = Number("engagement", "m", "Length of engaged full thread", Units.Millimetre)
        .By("m = min(l − l_K, t) − t_r, no more than the insert; a nut: its height", J.TheSpec).Scaled(1)
        .When(static s => s is not { Tapped: null, Nut: { Height: null, Strength: not null } })
        .From(
            Length, Depth, J.ClampedLength, Relief.Or(0), InsertLength.Or(double.PositiveInfinity),
            static (length, depth, clamped, relief, insert) => Math.Min(insert, Math.Min(length - clamped, depth) - relief))
        .Custom(static subject => ((JointSpec)subject.Model) is { Nut: null } spec
            ? AnalysisContext.Missing(Engagement!, $"{subject.Path}.{(J.IsCentral(spec) ? "nut" : "tapped")}")
            : null)
        .Stated(static s => s.Nut?.Height);

    public static readonly NumberDefinition<JointSpec> BottomReserve = Number("bottom_reserve", "", "Free full thread below the end of the bolt, in pitches")
        .By("(t + l_K − l)/P", J.Closed)
        .From(Length, Depth, J.ClampedLength, J.Thread, static (length, depth, clamped, thread) => (depth + clamped - length) / thread.Pitch);

    public static readonly RowDefinition<JointSpec, string> Family = Text("tapped_family", "Material family of the internal thread")
        .By("steel from 180 GPa, aluminium below 90 GPa, other between", "by its modulus of elasticity", Certainty.CommonPractice)
        .From(
            J.TappedModulus, static modulus => modulus >= MinSteel ? "steel" : modulus < MaxAluminium ? "aluminium" : "other", static family => family);

    public static readonly RowDefinition<JointSpec, ScrewThread> EngagedThread = Row<ScrewThread>("engaged_thread", "Thread that may strip", ThreadTable.TryFind)
        .Stated(static s => s.Tapped?.Insert?.Thread).From(J.Thread, static thread => thread, static thread => thread.Designation);

    public static readonly NumberDefinition<JointSpec> EngagementRatio = Number("engagement_ratio", "m/d", "Engaged length over diameter")
        .By("m/d", J.Closed)
        .From(Engagement, J.Thread, static (length, thread) => length / thread.Diameter);

    public static readonly NumberDefinition<JointSpec> InternalTensile = Number("internal_thread_tensile", "R_mM", "Tensile strength of the internal thread", Units.Megapascal)
        .When(static s => s.Tapped is not null || s.Nut is not null)
        .Custom(static subject => ((JointSpec)subject.Model) is { Tapped: { } tapped }
            ? subject.Context.Amount(
                InternalTensile!, tapped.Tensile ?? subject.Context.Spec.Catalogue.Materials.Find(tapped.Material.Value)?.TensileStrength,
                $"{subject.Path}.tapped.tensile")
            : subject.Context.Amount(InternalTensile!, ((JointSpec)subject.Model).Nut!.Tensile, $"{subject.Path}.nut.tensile"));

    public static readonly NumberDefinition<JointSpec> BossWidth = Number("boss", "s", "Width of the part around the internal thread", Units.Millimetre)
        .By("as stated; a nut: across flats; else wide, 3·d", J.TheSpec, Certainty.Declared)
        .Custom(static subject => (((JointSpec)subject.Model).Tapped?.Boss ?? ((JointSpec)subject.Model).Nut?.Across) is { } stated
            ? subject.Context.Amount(BossWidth!, stated, "")
            : null)
        .From(EngagedThread, static thread => WideBoss * thread.Diameter);

    public static readonly NumberDefinition<JointSpec> BoltShearRatio = Number("bolt_shear_ratio", "τ_S/R_m", "Shear over tensile strength of the bolt")
        .By("of the property class, else of quenched and tempered steel", "VDI 2230 Part 1", Certainty.Memory).Tables(ShearRatio.TableId)
        .From(J.Strength, Ratio).From(static () => Ratio(Tempered));

    public static readonly NumberDefinition<JointSpec> InternalShearRatio = Number("internal_shear_ratio", "τ_M/R_mM", "Shear over tensile strength of the internal thread")
        .By("of steel or aluminium alloy", "VDI 2230 Part 1", Certainty.Memory).Tables(ShearRatio.TableId)
        .From(Family, static family => family switch
        {
            "steel" => Ratio(Tempered),
            "aluminium" => Ratio("aluminium alloy"),
            _ => throw Guard.Because($"the ratio of shear strength is known for steel and aluminium only"),
        })
        .From(static () => Ratio(Tempered));

    public static readonly NumberDefinition<JointSpec> StrippingLoad = Number("stripping_load", "F_m", "Load at which the weaker thread strips", Units.Newton)
        .By(
            "C_1·min(C_2·τ_S·A_S, C_3·τ_M·A_M) over m − 0.8·P, at the loosest sizes of 6g/6H or 2A/2B",
            "VDI 2230 Part 1 after Alexander, shear areas of FED-STD-H28/2", Certainty.Memory)
        .From(
            EngagedThread, Engagement, J.Tensile, BoltShearRatio, InternalTensile, InternalShearRatio, BossWidth,
            static (thread, length, tensile, bolt, internalTensile, ratio, boss) => length > LostPitches * thread.Pitch
                ? new ThreadStripping(thread, ThreadLimits.Usual(thread), length - LostPitches * thread.Pitch).Strength(
                    bolt * tensile, ratio * internalTensile, boss / thread.Diameter)
                : 0);

    public static readonly NumberDefinition<JointSpec> StrippingSafety = Number("stripping_safety", "S_m", "Safety against thread stripping").NeverNegative()
        .By("S_m = F_m/F_S", J.Closed)
        .From(StrippingLoad, J.BoltForce, static (load, force) => load / force);

    public static readonly NumberDefinition<JointSpec> BreaksFirst = Number("stripping_over_breaking", "", "Stripping load over maximum breaking load of the bolt")
        .By("F_m/(1.2·R_m·π/4·d_0²)", "VDI 2230 Part 1; 1.2 for a bolt stronger than its minimum, common practice")
        .From(StrippingLoad, J.Tensile, J.StressDiameter, static (load, tensile, d) => load / (StrongerThanMin * tensile * J.Area(d)));

    public static readonly RowDefinition<JointSpec, FastenerCoating> Coating = Row<FastenerCoating>("coating", "Coating", FastenerCoating.TryFind)
        .Tables(FastenerCoating.TableId).Stated(static s => s.Coating);

    public static readonly NumberDefinition<JointSpec> Bake = Number("bake", "", "Bake after coating", Units.Hour)
        .Stated(static s => s.Bake).Assumed(0, "none, for nothing is stated");

    public static readonly NumberDefinition<JointSpec> RequiredBake = Number("required_bake", "", "Required bake after coating", Units.Hour)
        .By("by the tensile strength, where the coating brings hydrogen", "ASTM B850", Certainty.Published).Scaled(3600)
        .From(Coating, J.Tensile, static (coating, tensile) => coating.BringsHydrogen ? HydrogenBake.MinDuration(tensile) : 0);

    public static readonly RowDefinition<JointSpec, string> Between = Text("between_faces", "Between the faces")
        .Stated(static s => s.BetweenFaces).Assumed("bare", "bare, for nothing is stated");

    public static readonly RowDefinition<JointSpec, string> Order = Text("tightening_order", "Tightening order")
        .When(IsCircle).Stated(static s => s.Tightening?.Order);

    public static readonly NumberDefinition<JointSpec> Steps = Number("tightening_steps", "", "Tightening steps")
        .By("number of stated shares of the torque", J.TheSpec, Certainty.Declared)
        .When(IsCircle)
        .Custom(static subject => ((JointSpec)subject.Model).Tightening is { Steps: { IsEmpty: false } steps }
            ? Quantity.Computed(Steps!, steps.Length, [])
            : AnalysisContext.Missing(Steps!, $"{subject.Path}.tightening.steps"));

    public static readonly RowDefinition<JointSpec, string> Sequence = Text("tightening_sequence", "Crosswise order of the bolts, numbered round the circle")
        .By("each bolt, the one opposite, then the pair farthest from all before", "common practice, no source", Certainty.CommonPractice)
        .When(IsCircle)
        .From(
            J.Bolts,
            static bolts => string.Join(' ', TighteningSequence.Crosswise((int)bolts).Select(bolt => bolt.ToString(CultureInfo.InvariantCulture))),
            static order => order);

    public static readonly NumberDefinition<JointSpec> Seat =
        Number("seat", "l_s", "Shoulder to first full thread", Units.Millimetre).When(J.IsCentral).Stated(static s => s.Shaft?.Seat);

    public static readonly NumberDefinition<JointSpec> StackProtrusion = Number("stack_protrusion", "", "Protrusion of the stack beyond the seat of the shaft", Units.Millimetre)
        .By("l_K − l_s", J.Closed).Scaled(0.1).Noted("zero or less: the nut runs out of thread before it clamps")
        .From(Seat, J.ClampedLength, static (seat, stack) => stack - seat);

    public static readonly NumberDefinition<JointSpec> ClampTorque = Number("clamp_torque", "", "Torque that the narrowest contact of the stack carries by friction", Units.NewtonMetre)
        .By("F_KR·µ_T·(D_c³ − d_c³)/(3·(D_c² − d_c²))", "even pressure over a ring").Scaled(1000).Noted("for information; a spline or key carries the torque")
        .From(
            J.Clamp, FaceFriction, ContactOutside, ContactInside,
            static (clamp, friction, outer, inner) => CentralNut.FaceTorque(Math.Max(0, clamp), friction, outer, inner));

    private static bool IsCircle(JointSpec spec) => !J.IsCentral(spec) && spec.Bolts is { Value: >= 4 };

    // A class or grade that the table lacks is of quenched and tempered steel.
    private static double Ratio(string material) =>
        ShearRatio.TryFind(material, out var row, out _) || ShearRatio.TryFind(Tempered, out row, out _)
            ? row!.Ratio
            : throw new InvalidOperationException("The table of shear ratios lacks its first row.");

    private static NutStyle StyleOf(string strength, string style) =>
        strength is "04" or "05" ? NutStyle.Thin : style switch { "thin" => NutStyle.Thin, "high" => NutStyle.High, _ => NutStyle.Regular };

    /// <summary>The least overlap of two faces that touch: nut, rings, shoulder.</summary>
    private static BearingFace Narrowest(double outer, double hole, double[] outside, double[] inside)
    {
        var narrowest = new BearingFace(outside[^1], inside[^1]);
        for (var i = 0; i < outside.Length; i++)
        {
            var overlap = new BearingFace(Math.Min(i == 0 ? outer : outside[i - 1], outside[i]), Math.Max(i == 0 ? hole : inside[i - 1], inside[i]));
            if (overlap.Area < narrowest.Area)
                narrowest = overlap;
        }

        return narrowest;
    }
}
