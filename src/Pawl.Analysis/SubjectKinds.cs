using Pawl.Analysis.Agreement;
using Pawl.Analysis.Bearings;
using Pawl.Analysis.Completeness;
using Pawl.Analysis.Core;
using Pawl.Analysis.Fits;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Interfaces;
using Pawl.Analysis.Joints;
using Pawl.Analysis.Keys;
using Pawl.Analysis.Lubrication;
using Pawl.Analysis.Pins;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Seals;
using Pawl.Analysis.Shafts;
using Pawl.Analysis.Stacks;
using Pawl.Analysis.Trains;
using Pawl.Analysis.Vibration;
using Pawl.Specs.Model;
using static System.Runtime.CompilerServices.RuntimeHelpers;

namespace Pawl.Analysis;

/// <summary>Every kind of subject that rules may speak of.</summary>
public static class SubjectKinds
{
    public static readonly SubjectKind Train =
        Section<GearboxSpec>.KindOf(
            "train", "Train", "Train",
            static () => RunClassConstructor(typeof(TrainQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(DutyQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(ProductQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(TorsionQuantities).TypeHandle))
            .AddedBy(TorsionQuantities.AddAll);

    public static readonly SubjectKind LoadCase =
        Section<SpectrumBinSpec>.KindOf(
            "load_case", "Share of the service life", "Train",
            static () => RunClassConstructor(typeof(LoadCaseQuantities).TypeHandle))
            .With("train", () => Train)
            .AddedBy(LoadCaseQuantities.AddAll);

    public static readonly SubjectKind Body =
        Section<BodyInTrain>.KindOf(
            "body", "Body", "Train",
            static () => RunClassConstructor(typeof(BodyQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(SupportQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(ExitQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(BodyInertiaQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(BalanceQuantities).TypeHandle))
            .With("train", () => Train)
            .AddedBy(BodyQuantities.AddAll);

    public static readonly SubjectKind PlanetSet =
        Section<PlanetGroupSpec>.KindOf(
            "planet_set", "Planet set", "Assembly",
            static () => RunClassConstructor(typeof(PlanetSetQuantities).TypeHandle))
            .With("train", () => Train)
            .With("carrier", () => Body!)
            .AddedBy(PlanetSetQuantities.AddAll);

    public static readonly SubjectKind Gear =
        Section<GearSpec>.KindOf(
            "gear", "Gear", "Gears",
            static () => RunClassConstructor(typeof(GearQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(MaterialQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(TreatmentQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(ToothQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(GearInertiaQuantities).TypeHandle))
            .With("train", () => Train)
            .With("body", () => Body);

    public static readonly SubjectKind PartFeature =
        Section<PartFeatureSpec>.KindOf(
            "part_feature", "Feature of a part", "Gears",
            static () => RunClassConstructor(typeof(PartFeatureQuantities).TypeHandle))
            .With("train", () => Train)
            .With("gear", () => Gear)
            .AddedBy(PartFeatureQuantities.AddAll);

    public static readonly SubjectKind Mesh =
        Section<MeshSpec>.KindOf(
            "mesh", "Mesh", "Meshes",
            static () => RunClassConstructor(typeof(MeshQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(MaterialPairQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(MeshLoadQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(MeshTiltQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(MeshDynamicsQuantities).TypeHandle))
            .With("train", () => Train)
            .With("first", () => Gear)
            .With("second", () => Gear);

    public static readonly SubjectKind MeshGear =
        Section<MeshGear>.KindOf(
            "mesh_gear", "Gear in a mesh", "Meshes",
            static () => RunClassConstructor(typeof(MeshGearQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(FlankQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(RootQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(CaseStrengthQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(CoastQuantities).TypeHandle))
            .With("train", () => Train)
            .With("mesh", () => Mesh)
            .With("gear", () => Gear)
            .With("mate", () => Gear);

    public static readonly SubjectKind MeshCase =
        Section<MeshCase>.KindOf(
            "mesh_case", "Mesh in a load case", "Meshes",
            static () => RunClassConstructor(typeof(MeshCaseQuantities).TypeHandle))
            .With("train", () => Train)
            .With("mesh", () => Mesh)
            .AddedBy(MeshCaseQuantities.AddAll);

    public static readonly SubjectKind Passing =
        Section<PassingPair>.KindOf(
            "passing", "Pinion that passes a gear", "Assembly",
            static () => RunClassConstructor(typeof(PassingQuantities).TypeHandle))
            .With("train", () => Train)
            .With("pinion", () => Gear)
            .With("passed", () => Gear)
            .AddedBy(PassingQuantities.AddAll);

    public static readonly SubjectKind Bearing =
        Section<BearingSpec>.KindOf(
            "bearing", "Bearing", "Bearings",
            static () => RunClassConstructor(typeof(BearingQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(BearingLifeQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(BearingSetQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(BearingFitQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(BearingCreepQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(GreaseQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(BearingStiffnessQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(BearingOil).TypeHandle))
            .With("train", () => Train)
            .With("shaft", () => Body)
            .With("housing", () => Body)
            .AddedBy(BearingQuantities.AddAll);

    public static readonly SubjectKind Shaft =
        Section<ShaftSpec>.KindOf("shaft", "Shaft", "Shafts",
        static () => RunClassConstructor(typeof(ShaftQuantities).TypeHandle))
            .With("train", () => Train)
            .With("body", () => Body)
            .AddedBy(ShaftQuantities.AddAll);

    public static readonly SubjectKind ShaftSection =
        Section<ShaftSectionSpec>.KindOf(
            "shaft_section", "Section of a shaft", "Shafts",
            static () => RunClassConstructor(typeof(ShaftSectionQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(SectionInertiaQuantities).TypeHandle))
            .With("train", () => Train)
            .With("shaft", () => Shaft);

    public static readonly SubjectKind Spline =
        Section<SplineSpec>.KindOf("spline", "Spline", "Splines",
        static () => RunClassConstructor(typeof(Splines.Splines).TypeHandle))
            .With("train", () => Train)
            .With("body", () => Body)
            .AddedBy(Splines.Splines.AddAll);

    public static readonly SubjectKind ParallelKey =
        Section<ParallelKeySpec>.KindOf("parallel_key", "Parallel key", "Splines",
        static () => RunClassConstructor(typeof(ParallelKeys).TypeHandle))
            .With("train", () => Train)
            .AddedBy(ParallelKeys.AddAll);

    public static readonly SubjectKind Interface =
        Section<InterfacePairing>.KindOf(
            "interface", "Interface pairing", "Interfaces",
            static () => RunClassConstructor(typeof(Interfaces.Interfaces).TypeHandle))
            .With("train", () => Train)
            .With("body", () => Body)
            .AddedBy(Interfaces.Interfaces.AddAll);

    public static readonly SubjectKind Fit =
        Section<FitSpec>.KindOf("fit", "Fit", "Fits",
        static () => RunClassConstructor(typeof(PartFits).TypeHandle), static () => RunClassConstructor(typeof(PressJoints).TypeHandle)).With("train", () => Train)
            .AddedBy(PartFits.AddAll);

    public static readonly SubjectKind Centring =
        Section<CentringSpec>.KindOf(
            "centring", "Centring of one part by another", "Fits",
            static () => RunClassConstructor(typeof(Centrings).TypeHandle))
            .With("train", () => Train)
            .AddedBy(Centrings.AddAll);

    public static readonly SubjectKind CentringLink =
        Section<CentringLinkSpec>.KindOf(
            "centring_link", "Link of a chain that centres a part", "Fits",
            static () => RunClassConstructor(typeof(CentringLinks).TypeHandle))
            .With("chain", () => Centring);

    public static readonly SubjectKind Stack =
        Section<StackSpec>.KindOf(
            "stack", "Stack of sizes", "Stacks",
            static () => RunClassConstructor(typeof(SizeStacks).TypeHandle))
            .With("train", () => Train)
            .AddedBy(SizeStacks.AddAll);

    public static readonly SubjectKind Contributor =
        Section<ContributorSpec>.KindOf(
            "contributor", "Size in a stack", "Stacks",
            static () => RunClassConstructor(typeof(Contributors).TypeHandle))
            .With("stack", () => Stack);

    public static readonly SubjectKind Lubrication =
        Section<LubricationSpec>.KindOf(
            "lubrication", "Lubrication", "Lubrication",
            static () => RunClassConstructor(typeof(OilSystem).TypeHandle),
            static () => RunClassConstructor(typeof(OilLevel).TypeHandle),
            static () => RunClassConstructor(typeof(HeatQuantities).TypeHandle),
            static () => RunClassConstructor(typeof(HousingAir).TypeHandle),
            static () => RunClassConstructor(typeof(PumpQuantities).TypeHandle))
            .With("train", () => Train)
            .AddedBy(OilSystem.AddAll);

    public static readonly SubjectKind Joint =
        Section<JointSpec>.KindOf(
            "joint", "Joint", "Joints",
            static () => RunClassConstructor(typeof(Joints.Joints).TypeHandle),
            static () => RunClassConstructor(typeof(JointStrengths).TypeHandle),
            static () => RunClassConstructor(typeof(JointLocking).TypeHandle))
            .With("train", () => Train)
            .AddedBy(Joints.Joints.AddAll);

    public static readonly SubjectKind JointLayer =
        Section<ClampedLayerSpec>.KindOf(
            "joint_layer", "Clamped layer", "Joints",
            static () => RunClassConstructor(typeof(JointLayers).TypeHandle))
            .With("joint", () => Joint);

    public static readonly SubjectKind Dowel =
        Section<DowelSpec>.KindOf("dowel", "Dowels", "Joints",
        static () => RunClassConstructor(typeof(Dowels).TypeHandle)).With("train", () => Train)
            .AddedBy(Dowels.AddAll);

    public static readonly SubjectKind DowelledPart =
        Section<DowelledPartSpec>.KindOf(
            "dowelled_part", "Part that dowels go through", "Joints",
            static () => RunClassConstructor(typeof(DowelledParts).TypeHandle))
            .With("dowels", () => Dowel);

    public static readonly SubjectKind RetainingRing =
        Section<RetainingRingSpec>.KindOf(
            "retaining_ring", "Retaining ring", "Joints",
            static () => RunClassConstructor(typeof(RetainingRings).TypeHandle))
            .With("train", () => Train)
            .AddedBy(RetainingRings.AddAll);

    public static readonly SubjectKind PlanetPin =
        Section<PlanetPinSpec>.KindOf(
            "planet_pin", "Planet pin", "Joints",
            static () => RunClassConstructor(typeof(PlanetPins).TypeHandle),
            static () => RunClassConstructor(typeof(PinOil).TypeHandle))
            .With("train", () => Train)
            .AddedBy(PlanetPins.AddAll);

    public static readonly SubjectKind ORing =
        Section<ORingSpec>.KindOf("o_ring", "O-ring", "Seals",
        static () => RunClassConstructor(typeof(ORings).TypeHandle)).With("train", () => Train)
            .AddedBy(ORings.AddAll);

    public static readonly SubjectKind LipSeal =
        Section<LipSealSpec>.KindOf("lip_seal", "Lip seal", "Seals",
        static () => RunClassConstructor(typeof(LipSeals).TypeHandle))
            .With("train", () => Train)
            .With("shaft", () => Body)
            .With("housing", () => Body)
            .AddedBy(LipSeals.AddAll);

    public static readonly SubjectKind SharedSize =
        Section<SharedSize>.KindOf(
            "shared_size", "Size that two sections state", "Completeness",
            static () => RunClassConstructor(typeof(SharedSizes).TypeHandle))
            .With("train", () => Train)
            .AddedBy(SharedSizes.AddAll);

    public static readonly SubjectKind SpecSection =
        Section<SectionInSpec>.KindOf(
            "section", "Section of the spec", "Completeness",
            static () => RunClassConstructor(typeof(SpecSections).TypeHandle))
            .With("train", () => Train)
            .AddedBy(SpecSections.AddAll);

    /// <summary>All kinds, in the order of a report.</summary>
    public static readonly ImmutableArray<SubjectKind> All =
        [Train, LoadCase, Body, PlanetSet, Passing, Gear, PartFeature, Mesh, MeshGear, MeshCase, Bearing, Shaft, ShaftSection, Spline, ParallelKey, Interface, Fit, Centring, CentringLink, Stack, Contributor, Joint, JointLayer, Dowel, DowelledPart, RetainingRing, PlanetPin, Lubrication, ORing, LipSeal, SharedSize, SpecSection];

    /// <summary>The kind of that name, or null.</summary>
    public static SubjectKind? Find(string name)
    {
        foreach (var kind in All)
        {
            if (kind.Name == name)
                return kind;
        }

        return null;
    }
}
