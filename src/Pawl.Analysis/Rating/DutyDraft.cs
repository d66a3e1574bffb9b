using Pawl.Analysis.Core;
using Pawl.Analysis.Lubrication;
using Pawl.Mechanics.Lubrication;
using Pawl.Specs.Model;
using K = Pawl.Analysis.Rating.DutyQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>What the duty asks of the gears, as quantities of the train.</summary>
internal sealed class DutyDraft
{
    private const string NoSource = "common practice, no source";

    private DutyDraft(Subject train) => Train = train;

    public Subject Train { get; }

    /// <summary>The shares of the service life; empty when the rated load lasts all of it.</summary>
    public ImmutableArray<Subject> Cases { get; private set; } = [];

    /// <summary>Whether the torques of the spectrum hold the dynamic peaks, so that K_A does not apply to them.</summary>
    public bool PeaksIncluded { get; private set; }

    public Quantity this[QuantityKind kind] => Train[kind];

    public static DutyDraft Build(Draft draft, Subject train)
    {
        var duty = new DutyDraft(train);
        var spec = draft.Spec.Duty;
        duty.Demands(draft, spec);
        duty.Oil(draft, OilBase.Lubricant(draft));
        if (spec is { Spectrum: { IsEmpty: false } spectrum })
            duty.Spectrum(draft, spectrum, spec.SpectrumPeaks);
        return duty;
    }

    private void Demands(Draft draft, DutySpec? spec)
    {
        var s = Train;
        s.Add(draft.Number(K.ApplicationFactor, spec?.ApplicationFactor, "duty.application_factor"));
        s.Add(draft.Amount(K.ServiceLife, spec?.ServiceLife, "duty.service_life"));
        s.Add(draft.Amount(K.PeakTorque, spec?.Input?.PeakTorque, "duty.input.peak_torque"));
        s.Add(ReverseTorque(draft, spec?.Input));
        s.Add(draft.Number(K.ContactSafetyWanted, spec?.Safety?.Contact, 1, $"1.0, {NoSource}; ISO 6336 leaves it to maker and buyer"));
        s.Add(draft.Number(K.BendingSafetyWanted, spec?.Safety?.Bending, 1.4, $"1.4, {NoSource}; ISO 6336 leaves it to maker and buyer"));
        s.Add(draft.Number(K.PeakContactSafetyWanted, spec?.Safety?.PeakContact, 1, $"1.0, {NoSource}"));
        s.Add(draft.Number(K.PeakBendingSafetyWanted, spec?.Safety?.PeakBending, 1.2, $"1.2, {NoSource}"));
        s.Add(Draft.Text(K.Pitting, spec?.Safety?.Pitting, "none", "none: the cautious life factor of ISO 6336-2"));
        s.Add(Draft.Text(K.LongLife, spec?.Safety?.LongLife, "reduced", "reduced: 0.85 at 10¹⁰ cycles, the cautious life factor of ISO 6336"));
    }

    /// <summary>Whether a few pits are permitted.</summary>
    public bool PermitsPitting => Train[K.Pitting].Text == "limited";

    /// <summary>Whether strength holds at long life.</summary>
    public bool IsFullAtLongLife => Train[K.LongLife].Text == "full";

    private static Quantity ReverseTorque(Draft draft, InputDutySpec? input)
    {
        if (input?.ReverseTorque is { } stated)
            return draft.Amount(K.ReverseTorque, stated, "");
        if (input?.Direction is { Value: "one" } direction)
            return draft.Between(K.ReverseTorque, Draft.Declared(direction, "no torque in the other direction"), 0, 0, 0);
        return input?.Torque is null
            ? Draft.Missing(K.ReverseTorque, "duty.input.torque")
            : draft.Assumed(
                K.ReverseTorque, input.Torque.Value.Coherent,
                input.Direction is null
                    ? "as in the first direction, for neither direction nor reverse torque is stated"
                    : "as in the first direction, for the drive turns both ways and no reverse torque is stated");
    }

    private void Oil(Draft draft, LubricantSpec? lubricant)
    {
        var s = Train;
        var key = lubricant is null ? "duty.oil.lubricant" : $"lubricants.{lubricant.Name.Value}";
        s.Add(Draft.Text(K.LubricantKind, lubricant?.Kind, lubricant is null ? key : $"{key}.kind"));
        s.Add(draft.Amount(K.Viscosity40, lubricant?.Viscosity40, lubricant is null ? key : $"{key}.viscosity_40"));
        OilAt100(draft, lubricant, key);
        s.Add(Derive.From(
            K.Viscosity, s[K.Viscosity40], s[K.Viscosity100], s[T.OilTemperature],
            (v40, v100, temperature) => Viscosity.Kinematic(temperature, 40, v40, 100, v100)));
        if (lubricant is null)
        {
            s.Add(Draft.Missing(K.OilDensity, key));
            s.Add(Draft.Missing(K.PressureViscosity, key));
            return;
        }

        var (density, pressureViscosity, of) = Usual(lubricant.Base?.Value);
        s.Add(draft.Amount(K.OilDensity, lubricant.Density, density * 1e-12, FormattableString.Invariant($"{density} kg/m³ for {of}, {NoSource}")));
        s.Add(draft.Amount(
            K.PressureViscosity, lubricant.PressureViscosity, pressureViscosity * 1e-3, FormattableString.Invariant($"{pressureViscosity} 1/GPa for {of}, {NoSource}")));
        if (lubricant.ScuffingTemperature is { } scuffing)
            s.Add(draft.Amount(K.ScuffingTemperature, scuffing, ""));
    }

    /// <summary>The viscosity at 100 °C as stated, or by the viscosity index where that alone is.</summary>
    private void OilAt100(Draft draft, LubricantSpec? lubricant, string key)
    {
        var s = Train;
        if (lubricant is null)
        {
            s.Add(Draft.Missing(K.Viscosity100, key));
            return;
        }

        if (lubricant.ViscosityIndex is not { } index)
        {
            s.Add(draft.Amount(K.Viscosity100, lubricant.Viscosity100, $"{key}.viscosity_100 or {key}.viscosity_index"));
            return;
        }

        draft.Uses(ViscosityIndex.TableId);
        s.Add(draft.Number(K.ViscosityIndex, index, ""));
        if (lubricant.Viscosity100 is not { } stated)
        {
            s.Add(Derive.From(K.Viscosity100, s[K.Viscosity40], s[K.ViscosityIndex], ViscosityIndex.KinematicAt100));
            return;
        }

        s.Add(draft.Amount(K.Viscosity100, stated, ""));
        s.Add(Derive.From(
            K.ViscosityIndexDifference, s[K.Viscosity40], s[K.Viscosity100], s[K.ViscosityIndex],
            (v40, v100, said) => Math.Abs(ViscosityIndex.Of(v40, v100) - said)));
    }

    /// <summary>Density, kg/m³, and pressure-viscosity coefficient, 1/GPa, where nobody states them; of a span the thinner film.</summary>
    private static (double Density, double PressureViscosity, string Of) Usual(string? oil) => oil switch
    {
        "PAO" => (840, 14, "PAO"),
        "ester" => (920, 13, "ester"),
        "PAG" => (1000, 10, "PAG"),
        _ => (870, 20, "mineral oil"),
    };

    private void Spectrum(Draft draft, ImmutableArray<SpectrumBinSpec> spectrum, Specs.Text.Stated<string>? peaks)
    {
        Train.Add(Draft.Text(
            K.SpectrumPeaks, peaks, "excluded", "excluded: the application factor applies to the torques of the spectrum too"));
        PeaksIncluded = peaks is { Value: "included" };
        var cases = ImmutableArray.CreateBuilder<Subject>(spectrum.Length);
        foreach (var bin in spectrum)
        {
            var s = draft.Begin(SubjectKinds.LoadCase, $"duty.spectrum[{cases.Count}]", bin.Span).Relate("train", Train);
            s.Add(draft.Amount(LoadCaseQuantities.Share, bin.Share, ""));
            s.Add(draft.Amount(LoadCaseQuantities.Torque, bin.Torque, ""));
            s.Add(draft.Amount(LoadCaseQuantities.Speed, bin.Speed, ""));
            cases.Add(s);
        }

        Cases = cases.MoveToImmutable();
    }
}
