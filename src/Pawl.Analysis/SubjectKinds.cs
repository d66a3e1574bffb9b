using Pawl.Analysis.Bearings;
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
using Pawl.Specs.Model;

namespace Pawl.Analysis;

/// <summary>Every kind of subject that rules may speak of.</summary>
public static class SubjectKinds
{
    public static readonly SubjectKind Train = Section<GearboxSpec>.KindOf("train", "Train", "Train", typeof(TrainQuantities), typeof(DutyQuantities));

    public static readonly SubjectKind LoadCase =
        Section<SpectrumBinSpec>.KindOf("load_case", "Share of the service life", "Train", typeof(LoadCaseQuantities)).With("train", () => Train)
            .AddedBy(LoadCaseQuantities.AddAll);

    public static readonly SubjectKind Body =
        Section<BodyInTrain>.KindOf("body", "Body", "Train", typeof(BodyQuantities), typeof(SupportQuantities)).With("train", () => Train)
            .AddedBy(BodyQuantities.AddAll);

    public static readonly SubjectKind PlanetSet =
        Section<PlanetGroupSpec>.KindOf("planet_set", "Planet set", "Assembly", typeof(PlanetSetQuantities))
            .With("train", () => Train)
            .With("carrier", () => Body!)
            .AddedBy(PlanetSetQuantities.AddAll);

    public static readonly SubjectKind Gear =
        Section<GearSpec>.KindOf(
            "gear", "Gear", "Gears", typeof(GearQuantities), typeof(MaterialQuantities), typeof(TreatmentQuantities), typeof(ToothQuantities))
            .With("train", () => Train)
            .With("body", () => Body);

    public static readonly SubjectKind PartFeature =
        Section<PartFeatureSpec>.KindOf("part_feature", "Feature of a part", "Gears", typeof(PartFeatureQuantities))
            .With("train", () => Train)
            .With("gear", () => Gear)
            .AddedBy(PartFeatureQuantities.AddAll);

    public static readonly SubjectKind Mesh =
        Section<MeshSpec>.KindOf("mesh", "Mesh", "Meshes", typeof(MeshQuantities), typeof(MaterialPairQuantities), typeof(MeshLoadQuantities))
            .With("train", () => Train)
            .With("first", () => Gear)
            .With("second", () => Gear);

    public static readonly SubjectKind MeshGear =
        Section<MeshGear>.KindOf(
            "mesh_gear", "Gear in a mesh", "Meshes", typeof(MeshGearQuantities), typeof(FlankQuantities), typeof(RootQuantities),
            typeof(CaseStrengthQuantities))
            .With("train", () => Train)
            .With("mesh", () => Mesh)
            .With("gear", () => Gear)
            .With("mate", () => Gear);

    public static readonly SubjectKind MeshCase =
        Section<MeshCase>.KindOf("mesh_case", "Mesh in a load case", "Meshes", typeof(MeshCaseQuantities))
            .With("train", () => Train)
            .With("mesh", () => Mesh)
            .AddedBy(MeshCaseQuantities.AddAll);

    public static readonly SubjectKind Passing =
        Section<PassingPair>.KindOf("passing", "Pinion that passes a gear", "Assembly", typeof(PassingQuantities))
            .With("train", () => Train)
            .With("pinion", () => Gear)
            .With("passed", () => Gear)
            .AddedBy(PassingQuantities.AddAll);

    public static readonly SubjectKind Bearing =
        Section<BearingSpec>.KindOf(
            "bearing", "Bearing", "Bearings", typeof(BearingQuantities), typeof(BearingLifeQuantities), typeof(BearingFitQuantities))
            .With("train", () => Train)
            .With("shaft", () => Body)
            .With("housing", () => Body)
            .AddedBy(BearingQuantities.AddAll);

    public static readonly SubjectKind Shaft =
        Section<ShaftSpec>.KindOf("shaft", "Shaft", "Shafts", typeof(ShaftQuantities))
            .With("train", () => Train)
            .With("body", () => Body)
            .AddedBy(ShaftQuantities.AddAll);

    public static readonly SubjectKind ShaftSection =
        Section<ShaftSectionSpec>.KindOf("shaft_section", "Section of a shaft", "Shafts", typeof(ShaftSectionQuantities))
            .With("train", () => Train)
            .With("shaft", () => Shaft);

    public static readonly SubjectKind Spline =
        Section<SplineSpec>.KindOf("spline", "Spline", "Splines", typeof(Splines.Splines))
            .With("train", () => Train)
            .With("body", () => Body)
            .AddedBy(Splines.Splines.AddAll);

    public static readonly SubjectKind ParallelKey =
        Section<ParallelKeySpec>.KindOf("parallel_key", "Parallel key", "Splines", typeof(ParallelKeys))
            .With("train", () => Train)
            .AddedBy(ParallelKeys.AddAll);

    public static readonly SubjectKind Interface =
        Section<InterfacePairing>.KindOf("interface", "Interface pairing", "Interfaces", typeof(Interfaces.Interfaces))
            .With("train", () => Train)
            .With("body", () => Body)
            .AddedBy(Interfaces.Interfaces.AddAll);

    public static readonly SubjectKind Fit =
        Section<FitSpec>.KindOf("fit", "Fit", "Fits", typeof(PartFits)).With("train", () => Train)
            .AddedBy(PartFits.AddAll);

    public static readonly SubjectKind Centring =
        Section<CentringSpec>.KindOf("centring", "Centring of one part by another", "Fits", typeof(Centrings)).With("train", () => Train)
            .AddedBy(Centrings.AddAll);

    public static readonly SubjectKind CentringLink =
        Section<CentringLinkSpec>.KindOf("centring_link", "Link of a chain that centres a part", "Fits", typeof(CentringLinks)).With("chain", () => Centring);

    public static readonly SubjectKind Stack =
        Section<StackSpec>.KindOf("stack", "Stack of sizes", "Stacks", typeof(SizeStacks)).With("train", () => Train)
            .AddedBy(SizeStacks.AddAll);

    public static readonly SubjectKind Contributor =
        Section<ContributorSpec>.KindOf("contributor", "Size in a stack", "Stacks", typeof(Contributors)).With("stack", () => Stack);

    public static readonly SubjectKind Lubrication =
        Section<LubricationSpec>.KindOf("lubrication", "Lubrication", "Lubrication", typeof(OilSystem)).With("train", () => Train)
            .AddedBy(OilSystem.AddAll);

    public static readonly SubjectKind Joint =
        Section<JointSpec>.KindOf("joint", "Joint", "Joints", typeof(Joints.Joints), typeof(JointStrengths))
            .With("train", () => Train)
            .AddedBy(Joints.Joints.AddAll);

    public static readonly SubjectKind JointLayer =
        Section<ClampedLayerSpec>.KindOf("joint_layer", "Clamped layer", "Joints", typeof(JointLayers)).With("joint", () => Joint);

    public static readonly SubjectKind Dowel =
        Section<DowelSpec>.KindOf("dowel", "Dowels", "Joints", typeof(Dowels)).With("train", () => Train)
            .AddedBy(Dowels.AddAll);

    public static readonly SubjectKind DowelledPart =
        Section<DowelledPartSpec>.KindOf("dowelled_part", "Part that dowels go through", "Joints", typeof(DowelledParts)).With("dowels", () => Dowel);

    public static readonly SubjectKind RetainingRing =
        Section<RetainingRingSpec>.KindOf("retaining_ring", "Retaining ring", "Joints", typeof(RetainingRings)).With("train", () => Train)
            .AddedBy(RetainingRings.AddAll);

    public static readonly SubjectKind PlanetPin =
        Section<PlanetPinSpec>.KindOf("planet_pin", "Planet pin", "Joints", typeof(PlanetPins)).With("train", () => Train)
            .AddedBy(PlanetPins.AddAll);

    public static readonly SubjectKind ORing =
        Section<ORingSpec>.KindOf("o_ring", "O-ring", "Seals", typeof(ORings)).With("train", () => Train)
            .AddedBy(ORings.AddAll);

    public static readonly SubjectKind LipSeal =
        Section<LipSealSpec>.KindOf("lip_seal", "Lip seal", "Seals", typeof(LipSeals))
            .With("train", () => Train)
            .With("shaft", () => Body)
            .With("housing", () => Body)
            .AddedBy(LipSeals.AddAll);

    /// <summary>All kinds, in the order of a report.</summary>
    public static readonly ImmutableArray<SubjectKind> All =
        [Train, LoadCase, Body, PlanetSet, Passing, Gear, PartFeature, Mesh, MeshGear, MeshCase, Bearing, Shaft, ShaftSection, Spline, ParallelKey, Interface, Fit, Centring, CentringLink, Stack, Contributor, Joint, JointLayer, Dowel, DowelledPart, RetainingRing, PlanetPin, Lubrication, ORing, LipSeal];

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
