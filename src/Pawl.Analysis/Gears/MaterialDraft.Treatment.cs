using Pawl.Analysis.Core;
using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using G = Pawl.Analysis.Gears.GearQuantities;
using K = Pawl.Analysis.Gears.MaterialQuantities;
using T = Pawl.Analysis.Gears.TreatmentQuantities;

namespace Pawl.Analysis.Gears;

/// <summary>What was done to the steel. A quantity that does not apply to the treatment is left out, so that no rule asks for it.</summary>
internal sealed partial class MaterialDraft
{
    private bool HasCase => _heat is not null && Treatments.HasCase(_heat.Treatment.Value);

    private void Windows()
    {
        if (Class is { } known)
        {
            _draft.Uses(AllowableStress.TableId);
            ImmutableArray<Quantity> inputs = [_subject[K.Class], _subject[K.Quality]];
            var (least, most) = AllowableStress.Hardness(known, Quality);
            Add(Quantity.Computed(K.LeastClassHardness, least, inputs));
            Add(Quantity.Computed(K.GreatestClassHardness, most, inputs));
            if (AllowableStress.LeastCore(known, Quality) is { } core)
                Add(Quantity.Computed(K.LeastQualityCore, HardnessConversion.VickersOfRockwell(core), inputs));
        }

        Window(T.LeastSurface, T.GreatestSurface, Taken?.SurfaceHardness);
        Window(T.LeastCore, T.GreatestCore, Taken?.CoreHardness);
        if (Taken?.Tempering is { } tempering)
        {
            Add(_draft.Amount(T.LeastTempering, tempering.Least, ""));
            Add(_draft.Amount(T.GreatestTempering, tempering.Most, ""));
        }

        if (_material?.Carbon is { } carbon && _heat is not null)
        {
            var (least, most) = (carbon.Least.Value.Coherent, carbon.Most.Value.Coherent);
            Add(_draft.Between(
                T.Carbon, new Origin.Declared(_gear.Material!.Span, $"{_gear.Material.Text}, {carbon.Least.Text} to {carbon.Most.Text}", "as the catalogue states it"),
                (least + most) / 2, least, most));
        }
    }

    private void Window(QuantityKind least, QuantityKind greatest, Stated<Hardness>? stated)
    {
        if (stated is null)
            return;
        try
        {
            var value = stated.Value;
            var (low, high) = (Vickers(value.Scale, value.Least), Vickers(value.Scale, value.Greatest));
            Add(_draft.Between(least, Draft.Declared(stated), low, low, low));
            Add(_draft.Between(greatest, Draft.Declared(stated), high, high, high));
        }
        catch (OutsideValidityException outside)
        {
            Add(Quantity.NotEvaluated(least, [], outside.Message));
            Add(Quantity.NotEvaluated(greatest, [], outside.Message));
        }
    }

    private void Case()
    {
        if (!HasCase)
            return;
        var s = _subject;
        var depth = Add(_draft.Dimension(T.CaseDepth, _heat!.CaseDepth, Heat("case_depth")));
        if (_heat.GrindingStock is { } stock)
        {
            Add(_draft.Amount(T.GrindingStock, stock, ""));
            Add(Derive.From(T.OrderedCase, depth, s[T.GrindingStock], CaseDepth.Ordered));
        }

        if (_heat.FurnaceSpread is { } spread)
        {
            Add(_draft.Amount(T.FurnaceSpread, spread, ""));
            Add(depth.IsEvaluated
                ? Quantity.Computed(T.CaseTolerance, depth.Value.Greatest - depth.Value.Least, [depth])
                : Quantity.NotEvaluated(T.CaseTolerance, [depth], depth.Reasons));
        }

        Add(Derive.From(T.CaseFactor, depth, s[G.Module], (eht, module) => eht / module));
        if (_heat.Treatment.Value != Treatments.CaseHardened)
            return;
        Add(Derive.From(T.LeastCase, s[G.Module], CaseDepth.Least));
        Add(Derive.From(T.GreatestCase, s[G.Module], CaseDepth.Most));
        Add(Derive.From(T.CaseWindow, s[T.GreatestCase], s[T.LeastCase], (most, least) => most - least));
    }

    /// <summary>What needs the shape of the tooth.</summary>
    public void Tooth()
    {
        if (_subject.Find(T.CaseDepth) is { } depth && _heat!.Treatment.Value is Treatments.CaseHardened or Treatments.InductionHardened)
            Add(Derive.From(T.TipShare, depth, _subject[G.TipThickness], CaseDepth.TipShare));
    }

    private void Heats()
    {
        if (_heat is null)
            return;
        if (_heat.Treatment.Value != Treatments.Normalised)
        {
            Add(_draft.Amount(T.Tempering, _heat.Tempering, Heat("tempering")));
            Add(_draft.Amount(T.Service, _draft.Spec.Duty?.Oil?.Hottest, "duty.oil.hottest"));
        }

        if (_heat.Treatment.Value is Treatments.GasNitrided or Treatments.Nitrocarburised)
            Add(_draft.Amount(T.Nitriding, _heat.Nitriding, Heat("nitriding")));
        if (_heat.LaterHeat.MaxBy(heat => heat.Temperature.Value.Coherent) is { } hottest)
            Add(_draft.Amount(T.Process, hottest.Temperature, ""));
    }

    private void Hydrogen()
    {
        if (_heat is null)
            return;
        var s = _subject;
        if (s.Find(HasCase ? K.CoreHardness : K.SurfaceHardness) is { } hardness)
        {
            Add(Derive.From(T.TensileStrength, hardness, HardnessConversion.TensileStrength));
            _draft.Uses(HardnessConversion.TableId);
        }

        if (_heat.Plating is { Value: not "none" } plating)
        {
            Add(Draft.Text(T.Plating, plating, ""));
            Add(Prone(s[T.TensileStrength]));
            Add(Quantity.OfTruth(
                T.Baked, _heat.Bake is { } follows ? Draft.Declared(follows.Duration) : Draft.Declared(plating), _heat.Bake is not null, []));
        }

        if (_heat.Bake is not { } bake)
            return;
        _draft.Uses(HydrogenBake.TableId);
        ImmutableArray<Quantity> treatment = [s[K.Treatment]];
        Add(_draft.Amount(T.BakeTemperature, bake.Temperature, ""));
        Add(_draft.Amount(T.BakeDuration, bake.Duration, ""));
        Add(_draft.Amount(T.BakeDelay, bake.BeginsWithin, Heat("bake.begins_within")));
        Add(Quantity.Computed(
            T.LeastBakeTemperature, HasCase ? HydrogenBake.LeastTemperatureOfCase : HydrogenBake.LeastTemperature, treatment));
        Add(HasCase
            ? Quantity.Computed(T.LeastBakeDuration, HydrogenBake.LeastDurationOfCase, treatment)
            : Derive.From(T.LeastBakeDuration, s[T.TensileStrength], HydrogenBake.LeastDuration));
    }

    private Quantity Prone(Quantity strength)
    {
        ImmutableArray<Quantity> inputs = [_subject[K.Treatment], strength];
        return HasCase ? Quantity.OfTruth(T.HydrogenProne, Origin.Computed.Instance, true, [_subject[K.Treatment]])
            : !strength.IsEvaluated ? Quantity.NotEvaluated(T.HydrogenProne, inputs, strength.Reasons)
            : Quantity.OfTruth(T.HydrogenProne, Origin.Computed.Instance, strength.Value.Greatest > HydrogenBake.DangerousStrength, inputs);
    }

    private void Records()
    {
        if (_heat is null)
            return;
        if (_heat.Quality is { Value: not "ML" } quality)
            Add(Quantity.OfTruth(T.QualityProven, Draft.Declared(_heat.Proof ?? quality), _heat.Proof is not null, []));
        if (_heat.Peening is { } peening)
        {
            Add(Quantity.OfTruth(T.PeeningRecorded, Origin.Computed.Instance, peening is { Intensity: not null, Coverage: not null }, []));
            Add(Draft.Truth(T.RootGroundAfter, peening.RootGroundAfter, false, "the root stays as peened"));
        }

        if (_heat.Superfinished is { } superfinished)
            Add(Draft.Truth(T.Superfinished, superfinished, false, ""));
    }
}
