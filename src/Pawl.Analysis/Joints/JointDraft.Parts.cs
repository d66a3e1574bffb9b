using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Mechanics.Joints;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using K = Pawl.Analysis.Joints.JointQuantities;
using P = Pawl.Analysis.Joints.JointStrengthQuantities;

namespace Pawl.Analysis.Joints;

/// <content>Faces, threads, what keeps the joint tight, the path of a central nut.</content>
internal sealed partial class JointDraft
{
    // Above this a modulus is that of steel, below the other that of aluminium; common practice, no source.
    private const double LeastSteel = 180_000;
    private const double GreatestAluminium = 90_000;

    // A bolt may be this much stronger than its table says; common practice, no source.
    private const double StrongerThanLeast = 1.2;

    private const double WideBoss = 3;
    private const double LostPitches = 0.8;

    private void Pressure()
    {
        Add(P.FacePressure, [K.GreatestPreload, K.FaceOutside, K.FaceHole, K.ThermalChange, K.LoadFactor, K.AxialForce], () => Force() / (IsCentral ? Narrowest() : Seat).Area);
        _s.Add(LimitingPressure());
    }

    /// <summary>The least overlap of two faces that touch: nut, rings, shoulder.</summary>
    private BearingFace Narrowest()
    {
        var faces = _spec.Clamped.Select(layer => new BearingFace(layer.Outside!.Value.Coherent, layer.Inside!.Value.Coherent)).Prepend(Seat).ToImmutableArray();
        var narrowest = faces[^1];
        for (var i = 1; i < faces.Length; i++)
        {
            var overlap = new BearingFace(Math.Min(faces[i - 1].Outer, faces[i].Outer), Math.Max(faces[i - 1].Hole, faces[i].Hole));
            if (overlap.Area < narrowest.Area)
                narrowest = overlap;
        }

        return narrowest;
    }

    private Quantity LimitingPressure()
    {
        Stated<Amount>? least = null;
        for (var i = 0; i < _spec.Clamped.Length; i++)
        {
            // Under a head only the outermost layers feel its edge.
            var layer = _spec.Clamped[i];
            if (!IsCentral && i != 0 && (i != _spec.Clamped.Length - 1 || _spec.Tapped is not null))
                continue;
            if ((layer.LimitingPressure ?? _draft.Spec.Catalogue.Materials.Find(layer.Material.Value)?.LimitingPressure) is not { } limit)
                return Draft.Missing(P.LimitingPressure, Key($"clamped[{i}].limiting_pressure"));
            if (least is null || limit.Value.Coherent < least.Value.Coherent)
                least = limit;
        }

        return _draft.Amount(P.LimitingPressure, least, Key("clamped"));
    }

    private void Threads()
    {
        if (_spec.Tapped is { } tapped)
        {
            Tapped(tapped);
            return;
        }

        if (_spec.Nut is not { } nut)
        {
            _s.Add(Draft.Missing(P.Engagement, Key(IsCentral ? "nut" : "tapped")));
            return;
        }

        if (Thread.Form == ThreadForm.IsoMetric && _spec.Strength is not null && (nut.Strength is not null || nut.Height is null))
        {
            var style = nut.Strength is { Value: "04" or "05" } ? NutStyle.Thin : nut.Style?.Value switch { "thin" => NutStyle.Thin, "high" => NutStyle.High, _ => NutStyle.Regular };
            _s.Add(nut.Strength is { } strength
                ? Quantity.OfTruth(P.NutCarries, Draft.Declared(strength), new NutStrength(strength.Value, style, 0).Carries(_spec.Strength.Value), [])
                : Draft.Missing(P.NutCarries, Key("nut.strength")));
        }

        if (nut.Height is null && nut.Strength is not null)
            return;
        _s.Add(_draft.Amount(P.Engagement, nut.Height, Key("nut.height")));
        Stripping(Thread, "steel", nut.Tensile, Key("nut.tensile"), (nut.Across?.Value.Coherent ?? WideBoss * Thread.Diameter) / Thread.Diameter);
    }

    private void Tapped(TappedHoleSpec tapped)
    {
        _s.Add(_draft.Amount(P.Length, _spec.Length, Key("length")));
        _s.Add(_draft.Amount(P.Depth, tapped.Depth, Key("tapped.depth")));
        Add(P.Engagement, [P.Length, P.Depth, K.ClampedLength], () => Math.Min(
            tapped.Insert?.Length.Value.Coherent ?? double.PositiveInfinity,
            Math.Min(N(P.Length) - N(K.ClampedLength), N(P.Depth)) - (tapped.Relief?.Value.Coherent ?? 0)));
        Add(P.BottomReserve, [P.Length, P.Depth, K.ClampedLength], () => (N(P.Depth) + N(K.ClampedLength) - N(P.Length)) / Thread.Pitch);
        var modulus = _draft.Spec.Catalogue.Materials.Find(tapped.Material.Value)?.ElasticModulus?.Value.Coherent;
        var family = modulus switch { null => null, >= LeastSteel => "steel", < GreatestAluminium => "aluminium", _ => "other" };
        _s.Add(family is null
            ? Draft.Missing(P.Family, $"elastic_modulus of material {tapped.Material.Value} in the catalogue")
            : Quantity.OfText(P.Family, Draft.Declared(tapped.Material), family, []));
        var tensile = tapped.Tensile ?? _draft.Spec.Catalogue.Materials.Find(tapped.Material.Value)?.TensileStrength;
        ScrewThread? insert = null;
        if (tapped.Insert is { } inserted)
            ThreadTable.TryFind(inserted.Thread.Value, out insert, out _);
        var thread = insert ?? Thread;
        Stripping(thread, family ?? "", tensile, Key("tapped.tensile"), (tapped.Boss?.Value.Coherent ?? WideBoss * thread.Diameter) / thread.Diameter);
    }

    private void Stripping(ScrewThread thread, string family, Stated<Amount>? tensile, string key, double width)
    {
        _draft.Uses(ShearRatio.TableId);
        Add(P.EngagementRatio, [P.Engagement], () => N(P.Engagement) / Thread.Diameter);
        Add(P.StrippingLoad, [P.Engagement, K.Tensile], () =>
        {
            var strength = tensile?.Value.Coherent ?? throw Worked.Lacks(key);
            var material = family switch
            {
                "steel" => "quenched and tempered steel",
                "aluminium" => "aluminium alloy",
                _ => throw new OutsideValidityException("the ratio of shear strength is known for steel and aluminium only"),
            };
            var length = N(P.Engagement) - LostPitches * thread.Pitch;
            return length > 0
                ? new ThreadStripping(thread, ThreadLimits.Usual(thread), length).Strength(Ratio(_spec.Strength?.Value) * N(K.Tensile), Ratio(material) * strength, width)
                : 0;
        });
        Add(P.StrippingSafety, [P.Engagement, P.StrippingLoad, K.GreatestPreload, K.ThermalChange, K.LoadFactor, K.AxialForce], () => N(P.StrippingLoad) / Force());
        Add(P.BreaksFirst, [P.Engagement, P.StrippingLoad, K.Tensile, K.Section], () => N(P.StrippingLoad) / (StrongerThanLeast * N(K.Tensile) * Area(N(K.Section))));
    }

    // A class or grade that the table lacks is of quenched and tempered steel.
    private static double Ratio(string? material)
    {
        ShearRatio? ratio = null;
        if (material is null || !ShearRatio.TryFind(material, out ratio, out _))
            ShearRatio.TryFind("quenched and tempered steel", out ratio, out _);
        return ratio!.Ratio;
    }

    private void Kept()
    {
        _s.Add(Draft.Text(P.Coating, _spec.Coating, Key("coating")));
        _draft.Uses(FastenerCoating.TableId);
        _s.Add(_draft.Amount(P.Bake, _spec.Bake, 0, "none, for nothing is stated"));
        _s.Add(Worked.Out(P.BakeNeeded, [_s[P.Coating], _s[K.Tensile]], () =>
        {
            FastenerCoating.TryFind(_spec.Coating!.Value, out var coating, out var reason);
            return Worked.Found(coating, reason).LeastBake(Bolt);
        }));
        _s.Add(Draft.Text(P.Locker, _spec.Locker, "none", "none, for nothing is stated"));
        if (_spec.Locker is { Value: not "none" } locker)
        {
            _draft.Uses(Threadlocker.TableId);
            Add(P.LockerReserve, [P.Locker], () =>
            {
                Threadlocker.TryFind(locker.Value, out var kind, out var reason);
                var hottest = _draft.Spec.Duty?.Oil?.Hottest?.Value.Coherent ?? throw Worked.Lacks("duty.oil.hottest");
                return (_spec.LockerHottest?.Value.Coherent ?? Worked.Found(kind, reason).Hottest) - hottest;
            });
        }

        _s.Add(Draft.Text(P.Between, _spec.BetweenFaces, "bare", "bare, for nothing is stated"));
        if (IsCentral || Bolts < 4)
            return;
        _s.Add(Draft.Text(P.Order, _spec.Tightening?.Order, Key("tightening.order")));
        _s.Add(_spec.Tightening is { Steps.IsEmpty: false } tightening
            ? Quantity.Computed(P.Steps, tightening.Steps.Length, [])
            : Draft.Missing(P.Steps, Key("tightening.steps")));
        _s.Add(Quantity.ComputedText(P.Sequence, string.Join(' ', TighteningSequence.Crosswise(Bolts).Select(bolt => bolt.ToString(CultureInfo.InvariantCulture)))));
    }

    private void Path()
    {
        _s.Add(_draft.Dimension(P.Seat, _spec.Shaft!.Seat, Key("shaft.seat")));
        _s.Add(Derive.From(P.PathStand, _s[P.Seat], _s[K.ClampedLength], (seat, stack) => stack - seat));
        if (_spec.FaceFriction is { } friction)
        {
            Add(P.ClampTorque, [K.Clamp], () =>
            {
                var face = Narrowest();
                return CentralNut.FaceTorque(Math.Max(0, N(K.Clamp)), friction.Value, face.Outer, face.Hole);
            });
        }
    }
}
