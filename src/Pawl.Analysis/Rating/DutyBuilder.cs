using Pawl.Analysis.Core;
using Pawl.Analysis.Lubrication;
using Pawl.Mechanics.Lubrication;
using Pawl.Specs.Model;
using K = Pawl.Analysis.Rating.DutyQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>What the duty asks of the gears, as quantities of the train.</summary>
internal sealed class DutyBuilder
{
    private const string NoSource = "common practice, no source";

    private DutyBuilder(Subject train) => Train = train;

    public Subject Train { get; }

    /// <summary>The shares of the service life; empty when the rated load lasts all of it.</summary>
    public ImmutableArray<Subject> Cases { get; private set; } = [];

    /// <summary>Whether the torques of the spectrum hold the dynamic peaks, so that K_A does not apply to them.</summary>
    public bool PeaksIncluded { get; private set; }

    public Quantity this[QuantityKind kind] => Train[kind];

    public static DutyBuilder Build(AnalysisContext context, Subject train)
    {
        var duty = new DutyBuilder(train);
        var spec = context.Spec.Duty;
        duty.Demands(context, spec);
        duty.Oil(context, OilBase.Lubricant(context));
        if (spec is { Spectrum: { IsEmpty: false } spectrum })
            duty.Spectrum(context, spectrum, spec.SpectrumPeaks);
        return duty;
    }

    private void Demands(AnalysisContext context, DutySpec? spec)
    {
        var s = Train;
        s.Add(context.Number(K.ApplicationFactor, spec?.ApplicationFactor, "duty.application_factor"));
        s.Add(context.Amount(K.ServiceLife, spec?.ServiceLife, "duty.service_life"));
        s.Add(context.Amount(K.PeakTorque, spec?.Input?.PeakTorque, "duty.input.peak_torque"));
        s.Add(ReverseTorque(context, spec?.Input));
        s.Add(context.Number(K.RequiredContactSafety, spec?.Safety?.Contact, 1, $"1.0, {NoSource}; ISO 6336 leaves it to maker and buyer"));
        s.Add(context.Number(K.RequiredBendingSafety, spec?.Safety?.Bending, 1.4, $"1.4, {NoSource}; ISO 6336 leaves it to maker and buyer"));
        s.Add(context.Number(K.RequiredPeakContactSafety, spec?.Safety?.PeakContact, 1, $"1.0, {NoSource}"));
        s.Add(context.Number(K.RequiredPeakBendingSafety, spec?.Safety?.PeakBending, 1.2, $"1.2, {NoSource}"));
        s.Add(AnalysisContext.Text(K.Pitting, spec?.Safety?.Pitting, "none", "none: the cautious life factor of ISO 6336-2"));
        s.Add(AnalysisContext.Text(K.LongLife, spec?.Safety?.LongLife, "reduced", "reduced: 0.85 at 10¹⁰ cycles, the cautious life factor of ISO 6336"));
    }

    /// <summary>Whether a few pits are permitted.</summary>
    public bool PermitsPitting => Train[K.Pitting].Text == "limited";

    /// <summary>Whether strength holds at long life.</summary>
    public bool IsFullAtLongLife => Train[K.LongLife].Text == "full";

    private static Quantity ReverseTorque(AnalysisContext context, InputDutySpec? input)
    {
        if (input?.ReverseTorque is { } stated)
            return context.Amount(K.ReverseTorque, stated, "");
        if (input?.Direction is { Value: "one" } direction)
            return context.Between(K.ReverseTorque, AnalysisContext.Declared(direction, "no torque in the other direction"), 0, 0, 0);
        return input?.Torque is null
            ? AnalysisContext.Missing(K.ReverseTorque, "duty.input.torque")
            : context.Assumed(
                K.ReverseTorque, input.Torque.Value.Coherent,
                input.Direction is null
                    ? "as in the first direction, for neither direction nor reverse torque is stated"
                    : "as in the first direction, for the drive turns both ways and no reverse torque is stated");
    }

    private void Oil(AnalysisContext context, LubricantSpec? lubricant)
    {
        var s = Train;
        var key = lubricant is null ? "duty.oil.lubricant" : $"lubricants.{lubricant.Name.Value}";
        s.Add(AnalysisContext.Text(K.LubricantKind, lubricant?.Kind, lubricant is null ? key : $"{key}.kind"));
        s.Add(context.Amount(K.Viscosity40, lubricant?.Viscosity40, lubricant is null ? key : $"{key}.viscosity_40"));
        OilAt100(context, lubricant, key);
        s.Add(Derive.From(
            K.Viscosity, s[K.Viscosity40], s[K.Viscosity100], s[T.OilTemperature],
            (v40, v100, temperature) => Viscosity.Kinematic(temperature, 40, v40, 100, v100)));
        if (lubricant is null)
        {
            s.Add(AnalysisContext.Missing(K.OilDensity, key));
            s.Add(AnalysisContext.Missing(K.PressureViscosity, key));
            return;
        }

        var (density, pressureViscosity, of) = Usual(lubricant.Base?.Value);
        s.Add(context.Amount(K.OilDensity, lubricant.Density, density * 1e-12, FormattableString.Invariant($"{density} kg/m³ for {of}, {NoSource}")));
        s.Add(context.Amount(
            K.PressureViscosity, lubricant.PressureViscosity, pressureViscosity * 1e-3, FormattableString.Invariant($"{pressureViscosity} 1/GPa for {of}, {NoSource}")));
        if (lubricant.ScuffingTemperature is { } scuffing)
            s.Add(context.Amount(K.ScuffingTemperature, scuffing, ""));
    }

    /// <summary>The viscosity at 100 °C as stated, or by the viscosity index where that alone is.</summary>
    private void OilAt100(AnalysisContext context, LubricantSpec? lubricant, string key)
    {
        var s = Train;
        if (lubricant is null)
        {
            s.Add(AnalysisContext.Missing(K.Viscosity100, key));
            return;
        }

        if (lubricant.ViscosityIndex is not { } index)
        {
            s.Add(context.Amount(K.Viscosity100, lubricant.Viscosity100, $"{key}.viscosity_100 or {key}.viscosity_index"));
            return;
        }

        context.Uses(ViscosityIndex.TableId);
        s.Add(context.Number(K.ViscosityIndex, index, ""));
        if (lubricant.Viscosity100 is not { } stated)
        {
            s.Add(Derive.From(K.Viscosity100, s[K.Viscosity40], s[K.ViscosityIndex], ViscosityIndex.KinematicAt100));
            return;
        }

        s.Add(context.Amount(K.Viscosity100, stated, ""));
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

    private void Spectrum(AnalysisContext context, ImmutableArray<SpectrumBinSpec> spectrum, Specs.Text.Stated<string>? peaks)
    {
        Train.Add(AnalysisContext.Text(
            K.SpectrumPeaks, peaks, "excluded", "excluded: the application factor applies to the torques of the spectrum too"));
        PeaksIncluded = peaks is { Value: "included" };
        var cases = ImmutableArray.CreateBuilder<Subject>(spectrum.Length);
        foreach (var bin in spectrum)
        {
            var s = context.Begin(SubjectKinds.LoadCase, $"duty.spectrum[{cases.Count}]", bin.Span).Relate("train", Train);
            s.Add(context.Amount(LoadCaseQuantities.Share, bin.Share, ""));
            s.Add(context.Amount(LoadCaseQuantities.Torque, bin.Torque, ""));
            s.Add(context.Amount(LoadCaseQuantities.Speed, bin.Speed, ""));
            cases.Add(s);
        }

        Cases = cases.MoveToImmutable();
    }
}
