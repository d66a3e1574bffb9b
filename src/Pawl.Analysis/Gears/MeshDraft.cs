using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Mechanics.Assembly;
using Pawl.Mechanics.Gears;
using Pawl.Specs.Model;
using G = Pawl.Analysis.Gears.GearQuantities;
using K = Pawl.Analysis.Gears.MeshQuantities;

namespace Pawl.Analysis.Gears;

/// <summary>One mesh with its computed quantities. In an internal pair the ring is the second gear.</summary>
internal sealed class MeshDraft
{
    private MeshDraft(MeshSpec spec, GearDraft first, GearDraft second, Subject subject)
    {
        Spec = spec;
        First = first;
        Second = second;
        Subject = subject;
    }

    public MeshSpec Spec { get; }

    public GearDraft First { get; }

    public GearDraft Second { get; }

    public Subject Subject { get; }

    public bool IsInternal => Second.IsInternal;

    /// <summary>Name in the train graph and in paths.</summary>
    public string Name => $"{Spec.Gears[0].Value}~{Spec.Gears[1].Value}";

    public Quantity this[QuantityKind kind] => Subject[kind];

    public GearDraft? MateOf(GearDraft gear) => gear == First ? Second : gear == Second ? First : null;

    /// <param name="draft">The analysis in the making.</param>
    /// <param name="spec">The mesh as declared.</param>
    /// <param name="first">Its first gear; swapped behind a ring.</param>
    /// <param name="second">Its second gear.</param>
    /// <param name="centres">The body that holds the centres: the carrier, or the housing between parallel shafts.</param>
    /// <param name="planetSet">The planet set that enters, when one gear sits on it.</param>
    /// <param name="statedCentre">The centre distance that this mesh states; null when it states none.</param>
    /// <param name="sharedCentre">The one that another mesh of the same planet states instead; null when there is none.</param>
    /// <param name="oil">The oil temperature.</param>
    public static MeshDraft Build(
        Draft draft, MeshSpec spec, GearDraft first, GearDraft second, BodyCentres centres, PlanetSetSpec? planetSet,
        Quantity? statedCentre, Quantity? sharedCentre, Quantity oil)
    {
        if (first.IsInternal)
            (first, second) = (second, first);
        var mesh = new MeshDraft(
            spec, first, second, draft.Begin(SubjectKinds.Mesh, $"meshes.{spec.Gears[0].Value}~{spec.Gears[1].Value}", spec.Span));
        mesh.Subject.Relate("first", first.Subject).Relate("second", second.Subject);
        mesh.Agree(draft);
        MaterialPair.Add(mesh);
        mesh.Contact(statedCentre, sharedCentre);
        mesh.Efficiency(draft);
        mesh.Backlash(draft, centres, oil);
        if (mesh.IsInternal)
            mesh.Interference(draft, planetSet);
        mesh._first = mesh.OneGear(draft, first, second);
        mesh._second = mesh.OneGear(draft, second, first);
        return mesh;
    }

    /// <summary>What is known of one gear of this mesh.</summary>
    public Subject Gear(GearDraft gear) => gear == First ? _first! : _second!;

    private Subject? _first;
    private Subject? _second;

    private int Turn => IsInternal ? -1 : 1;

    private void Agree(Draft draft)
    {
        var s = Subject;
        s.Add(Quantity.OfText(K.Kind, Origin.Computed.Instance, IsInternal ? "internal" : "external", []));
        s.Add(Equal(K.SameRack, G.Module, G.PressureAngle, G.HelixAngle));
        if (First[G.HelixAngle] is { IsEvaluated: true, Value.Nominal: not 0 })
            s.Add(Hands());
        s.Add(Quantity.Compute(K.CommonFactor, [First[G.Teeth], Second[G.Teeth]], v => new ToothHunting((int)v[0], (int)v[1]).Factor));
    }

    private Quantity Equal(QuantityKind kind, params ReadOnlySpan<QuantityKind> compared)
    {
        var inputs = ImmutableArray.CreateBuilder<Quantity>();
        var equal = true;
        foreach (var each in compared)
        {
            inputs.AddRange(First[each], Second[each]);
            equal &= Math.Abs(First[each].Value.Nominal - Second[each].Value.Nominal) <= 1e-9;
        }

        var all = inputs.ToImmutable();
        return Quantity.MissingReasons(all) is { IsEmpty: false } reasons
            ? Quantity.NotEvaluated(kind, all, reasons)
            : Quantity.OfTruth(kind, Origin.Computed.Instance, equal, all);
    }

    private Quantity Hands()
    {
        if (Missing("hand", First.Spec.Hand is null, Second.Spec.Hand is null) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(K.HandsFit, [], reasons);
        return Quantity.OfTruth(
            K.HandsFit, Origin.Computed.Instance, Helix.HandsAgree(Hand(First), Hand(Second), IsInternal), []);

        static HelixHand Hand(GearDraft gear) => gear.Spec.Hand!.Value == "left" ? HelixHand.Left : HelixHand.Right;
    }

    private ImmutableArray<string> Missing(string key, bool onFirst, bool onSecond)
    {
        ImmutableArray<string> reasons = [];
        if (onFirst)
            reasons = reasons.Add($"train.gears.{First.Name}.{key} is not stated");
        return onSecond ? reasons.Add($"train.gears.{Second.Name}.{key} is not stated") : reasons;
    }

    /// <summary>An input of the pair, from its first gear; not evaluated when the gears do not share a basic rack.</summary>
    private Quantity Shared(QuantityKind kind) =>
        Subject[K.SameRack] is { IsEvaluated: true, Truth: false }
            ? Quantity.NotEvaluated(kind, [], $"{First.Name} and {Second.Name} differ in module, pressure angle or helix angle")
            : First[kind];

    private void Contact(Quantity? statedCentre, Quantity? sharedCentre)
    {
        var s = Subject;
        var (z1, z2, turn) = (First.SignedTeeth, Second.SignedTeeth, Turn);
        s.Add(Derive.From(K.Module, Shared(G.Module), m => m));
        s.Add(Derive.From(
            K.ReferenceCentreDistance, First[G.Teeth], Second[G.Teeth], s[K.Module], First[G.HelixAngle],
            (_, _, m, beta) => turn * MeshGeometry.ReferenceCentreDistance(z1, z2, ToothGeometry.TransverseModule(m, beta))));
        s.Add(Quantity.Compute(
            K.ShiftCentreDistance,
            [
                s[K.ReferenceCentreDistance], First[G.TransversePressureAngle], First[G.PressureAngle], First[G.ProfileShift],
                Second[G.ProfileShift], First[G.Teeth], Second[G.Teeth],
            ],
            v => turn * MeshGeometry.WorkingCentreDistance(
                turn * v[0], v[1], MeshGeometry.WorkingPressureAngleFromShift(v[1], v[2], v[3] + v[4], z1, z2))));
        s.Add(statedCentre ?? Derive.From(K.CentreDistance, sharedCentre ?? s[K.ShiftCentreDistance], a => a));
        if ((statedCentre ?? sharedCentre) is not null)
            s.Add(Derive.From(K.CentreDistanceDifference, s[K.CentreDistance], s[K.ShiftCentreDistance], (aw, ax) => aw - ax));
        s.Add(Derive.From(
            K.WorkingPressureAngle, s[K.ReferenceCentreDistance], First[G.TransversePressureAngle], s[K.CentreDistance],
            (a, alpha, aw) => MeshGeometry.WorkingPressureAngleFromCentreDistance(turn * a, alpha, turn * aw)));
        s.Add(CommonFaceWidth());
        s.Add(Quantity.Compute(
            K.TransverseContactRatio,
            [
                s[K.CentreDistance], s[K.WorkingPressureAngle], First[G.ActiveTipDiameter], First[G.BaseDiameter],
                Second[G.ActiveTipDiameter], Second[G.BaseDiameter], s[K.Module], First[G.HelixAngle], First[G.TransversePressureAngle],
            ],
            v => PathOfContact.TransverseContactRatio(
                PathOfContact.Length(
                    turn * v[0], v[1], PathOfContact.CurvatureAt(v[2], v[3]), PathOfContact.CurvatureAt(turn * v[4], turn * v[5])),
                PathOfContact.TransverseBasePitch(ToothGeometry.TransverseModule(v[6], v[7]), v[8]))));
        s.Add(Derive.From(
            K.OverlapRatio, s[K.CommonFaceWidth], First[G.HelixAngle], s[K.Module], PathOfContact.OverlapRatio));
        s.Add(First[G.HelixAngle] is { IsEvaluated: true, Value: { IsExact: true, Nominal: 0 } }
            ? Derive.From(K.TotalContactRatio, s[K.TransverseContactRatio], transverse => transverse)
            : Derive.From(K.TotalContactRatio, s[K.TransverseContactRatio], s[K.OverlapRatio], PathOfContact.TotalContactRatio));
    }

    private Quantity CommonFaceWidth() => Derive.From(
        K.CommonFaceWidth, First[G.FaceWidth], First[G.AxialPlace], Second[G.FaceWidth], Second[G.AxialPlace],
        (b1, place1, b2, place2) => Math.Min(Math.Min(b1, b2), -new AxialSpan(place1, b1).GapTo(new(place2, b2))));

    private void Efficiency(Draft draft)
    {
        var s = Subject;
        var (z1, z2, turn) = (First.SignedTeeth, Second.SignedTeeth, Turn);
        if (Spec.Efficiency is null || Spec.Friction is not null)
            s.Add(draft.Number(K.Friction, Spec.Friction, 0.06, "0.06, common practice for oil-lubricated ground flanks, no source"));
        s.Add(Quantity.Compute(
            K.LossFactor,
            [
                First[G.Teeth], Second[G.Teeth], First[G.BaseHelixAngle], First[G.ActiveTipDiameter], First[G.BaseDiameter],
                Second[G.ActiveTipDiameter], Second[G.BaseDiameter], s[K.WorkingPressureAngle],
            ],
            v => LossFactor(
                z1, z2, v[2], ToothGeometry.PressureAngleAt(v[3], v[4]), ToothGeometry.PressureAngleAt(turn * v[5], turn * v[6]), v[7])));
        s.Add(Spec.Efficiency is { } stated
            ? draft.Amount(K.Efficiency, stated, "")
            : Derive.From(K.Efficiency, s[K.Friction], s[K.LossFactor], Sliding.MeshEfficiency));
    }

    private static double LossFactor(int z1, int z2, double baseHelix, double tip1, double tip2, double working)
    {
        var contactRatio = Sliding.TipContactRatio(z1, tip1, working) + Sliding.TipContactRatio(z2, tip2, working);
        return contactRatio is >= 1 and <= 2
            ? Sliding.LossFactor(z1, z2, baseHelix, tip1, tip2, working)
            : throw new OutsideValidityException(string.Create(
                CultureInfo.InvariantCulture,
                $"the transverse contact ratio is {contactRatio:0.###}; the source of the loss factor covers 1 to 2"));
    }

    private void Backlash(Draft draft, BodyCentres centres, Quantity oil)
    {
        var s = Subject;
        var turn = Turn;
        s.Add(Quantity.Compute(
            K.AssemblyBacklash,
            [
                First[G.ThicknessAllowance], Second[G.ThicknessAllowance], s[K.CentreDistance], s[K.ShiftCentreDistance],
                First[G.PressureAngle], s[K.WorkingPressureAngle], First[G.BaseHelixAngle],
            ],
            v => Mechanics.Gears.Backlash.Normal(v[0] + v[1], turn * (v[2] - v[3]), v[4], v[5], v[6])));
        s.Add(centres.Expansion(draft, K.ExpansionOfCentres));
        s.Add(Derive.From(
            K.ExpansionOfGears, First[G.ThermalExpansion], Second[G.ThermalExpansion], First[G.ReferenceDiameter],
            Second[G.ReferenceDiameter],
            (first, second, d1, d2) => ((first * d1) + (second * turn * d2)) / (d1 + (turn * d2))));
        s.Add(centres.Temperature(K.TemperatureOfCentres, oil));
        s.Add(OperatingBacklash(s[K.TemperatureOfCentres], oil, mayTurn: centres.Spec?.Running is not null));
        s.Add(Derive.From(
            K.CircumferentialBacklash, s[K.OperatingBacklash], s[K.WorkingPressureAngle], First[G.BaseHelixAngle],
            Mechanics.Gears.Backlash.Circumferential));
        if (Spec.LeastBacklash is { } least)
            s.Add(draft.Amount(K.LeastBacklashWanted, least, ""));
        if (Spec.GreatestBacklash is { } greatest)
            s.Add(draft.Amount(K.GreatestBacklashWanted, greatest, ""));
    }

    /// <remarks>
    /// Up to the running temperature a body with a temperature of its own falls behind the oil, beyond it no more. There the
    /// backlash may turn, between the corners of coldest and hottest.
    /// </remarks>
    private Quantity OperatingBacklash(Quantity centres, Quantity oil, bool mayTurn)
    {
        var corners = At(centres, oil);
        return mayTurn && corners.IsEvaluated
            ? Quantity.Hull(corners, At(Nominal(centres), Nominal(oil)))
            : corners;

        static Quantity Nominal(Quantity temperature) => Quantity.Computed(temperature.Kind, temperature.Value.Nominal, []);

        Quantity At(Quantity ofCentres, Quantity ofGears) => Quantity.Compute(
            K.OperatingBacklash,
            [
                Subject[K.AssemblyBacklash], Subject[K.CentreDistance], Subject[K.ExpansionOfCentres], Subject[K.ExpansionOfGears],
                ofCentres, ofGears, Subject[K.WorkingPressureAngle], First[G.BaseHelixAngle],
            ],
            v => v[0] + (2 * Math.Sin(v[6]) * Math.Cos(v[7])
                * Mechanics.Gears.Backlash.ThermalCentreDistanceDeviation(
                    Turn * v[1], v[2], v[4] - ReferenceTemperature, v[3], v[5] - ReferenceTemperature)));
    }

    /// <summary>Drawing dimensions hold at 20 °C (ISO 1).</summary>
    private const double ReferenceTemperature = 20;

    private void Interference(Draft draft, PlanetSetSpec? planetSet)
    {
        var s = Subject;
        var (z1, z2) = (First.SignedTeeth, Second.SignedTeeth);
        s.Add(Derive.From(
            K.InvoluteSlack, s[K.CentreDistance], s[K.WorkingPressureAngle], Second[G.TipDiameter], Second[G.BaseDiameter],
            (aw, alpha, da, db) => InternalInterference.InvoluteSlack(-aw, alpha, -da, -db)));
        ImmutableArray<Quantity> tips =
        [
            First[G.Teeth], Second[G.Teeth], First[G.TipDiameter], First[G.BaseDiameter], Second[G.TipDiameter],
            Second[G.BaseDiameter], s[K.CentreDistance], s[K.WorkingPressureAngle],
        ];
        s.Add(Quantity.Compute(
            K.TipInterferenceSlack, tips, v => Slack(InternalInterference.Tip(z1, z2, v[2], v[3], -v[4], -v[5], -v[6], v[7]))));
        s.Add(Quantity.Compute(
            K.TrimmingSlack, tips, v => Slack(InternalInterference.Trimming(z1, z2, v[2], v[3], -v[4], -v[5], -v[6], v[7]))));
        s.Add(Draft.Text(K.Insertion, planetSet?.Insertion, "axial", "axial insertion"));
    }

    /// <summary>Slack in rad; tips whose circles do not cross are as free as a full turn.</summary>
    private static double Slack(Interference interference) => interference switch
    {
        Mechanics.Gears.Interference.Slack slack => slack.Radians,
        Mechanics.Gears.Interference.TipCirclesApart => Math.Tau,
        Mechanics.Gears.Interference.NotEvaluable because => throw new OutsideValidityException(because.Reason),
        _ => throw new InvalidOperationException("An interference has three cases."),
    };

    private Subject OneGear(Draft draft, GearDraft gear, GearDraft mate)
    {
        var s = draft.Begin(SubjectKinds.MeshGear, $"{Subject.Path}.{gear.Name}", Spec.Span)
            .Relate("mesh", Subject).Relate("gear", gear.Subject).Relate("mate", mate.Subject);
        var (sign, mateSign, turn) = (gear.Sign, mate.Sign, Turn);
        var mesh = Subject;
        var (z, mateZ) = (gear.SignedTeeth, mate.SignedTeeth);

        s.Add(Derive.From(
            MeshGearQuantities.WorkingPitchDiameter, gear[G.BaseDiameter], mesh[K.WorkingPressureAngle],
            (db, alpha) => MeshGeometry.WorkingPitchDiameter(db, alpha)));
        s.Add(Derive.From(
            MeshGearQuantities.TipClearance, mesh[K.CentreDistance], gear[G.TipDiameter], mate[G.RootDiameter],
            (aw, da, df) => MeshGeometry.TipClearance(turn * aw, sign * da, mateSign * df)));
        s.Add(Derive.From(
            MeshGearQuantities.TipClearanceFactor, s[MeshGearQuantities.TipClearance], mesh[K.Module], (c, m) => c / m));
        if (!IsInternal)
        {
            s.Add(Derive.From(
                MeshGearQuantities.CurvatureAtStart, mesh[K.CentreDistance], mesh[K.WorkingPressureAngle], mate[G.ActiveTipDiameter],
                mate[G.BaseDiameter],
                (aw, alpha, mateTip, mateBase) =>
                    PathOfContact.CurvatureOpposite(aw, alpha, PathOfContact.CurvatureAt(mateTip, mateBase))));
        }

        s.Add(Derive.From(
            MeshGearQuantities.StartOfActiveProfile, gear[G.BaseDiameter], mesh[K.CentreDistance], mesh[K.WorkingPressureAngle],
            mate[G.ActiveTipDiameter], mate[G.BaseDiameter],
            (db, aw, alpha, mateTip, mateBase) => sign * PathOfContact.ActiveProfileStart(
                sign * db, turn * aw, alpha, PathOfContact.CurvatureAt(mateSign * mateTip, mateSign * mateBase))));
        s.Add(Derive.From(
            MeshGearQuantities.FormMargin, s[MeshGearQuantities.StartOfActiveProfile], gear[G.RootFormDiameter],
            (start, form) => sign * (start - form)));
        s.Add(Quantity.Compute(
            MeshGearQuantities.SpecificSliding,
            [gear[G.Teeth], mate[G.Teeth], mesh[K.CentreDistance], mesh[K.WorkingPressureAngle], mate[G.ActiveTipDiameter], mate[G.BaseDiameter]],
            v =>
            {
                var opposite = PathOfContact.CurvatureAt(mateSign * v[4], mateSign * v[5]);
                var own = PathOfContact.CurvatureOpposite(turn * v[2], v[3], opposite);
                return Math.Abs(Sliding.Specific(own, opposite, z, mateZ));
            }));
        if (!gear.IsInternal)
        {
            s.Add(Derive.From(
                MeshGearQuantities.FaceWidthRatio, mesh[K.CommonFaceWidth], gear[G.ReferenceDiameter],
                MeshGeometry.FaceWidthRatio));
        }

        return s;
    }
}

/// <summary>The body that holds the centres of a mesh: its expansion and temperature.</summary>
internal sealed record BodyCentres(string? Body, BodySpec? Spec, OilSpec? Oil)
{
    public Quantity Expansion(Draft draft, QuantityKind kind)
    {
        if (Body is null)
            return Quantity.NotEvaluated(kind, [], "the body that holds the shafts is not clear: several bodies are fixed and none is named housing");
        return Spec?.Material is not { } material
            ? Draft.Missing(kind, $"train.bodies.{Body}.material")
            : draft.Amount(
                kind,
                draft.Spec.Catalogue.Materials.Find(material.Value)?.ThermalExpansion,
                $"materials.{material.Value}.thermal_expansion");
    }

    /// <summary>At the coldest start everything has soaked to one temperature; the difference grows as the oil warms.</summary>
    public Quantity Temperature(QuantityKind kind, Quantity oil)
    {
        if (Spec?.Running is not { } stated || Oil is not { Running: { } running, Coldest: { } coldest })
            return Derive.From(kind, oil, t => t);

        var difference = stated.Value.Coherent - running.Value.Coherent;
        var (cold, warm) = (coldest.Value.Coherent, running.Value.Coherent);
        return Derive.From(kind, oil, t => t + (difference * (warm > cold ? Math.Clamp((t - cold) / (warm - cold), 0, 1) : 1)));
    }
}
