using Pawl.Analysis.Core;
using Pawl.Analysis.Lubrication;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Lubrication;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Rating;

/// <summary>What the duty asks of the gears; quantities of the train.</summary>
public sealed class DutyQuantities : Section<GearboxSpec>
{
    private const string NoSource = "common practice, no source";
    private const string MakerAndBuyer = $"{NoSource}; ISO 6336 leaves it to maker and buyer";

    public static readonly NumberDefinition<GearboxSpec> ApplicationFactor =
        Number("application_factor", "K_A", "Application factor").Stated(static s => s.Duty?.ApplicationFactor, "/duty.application_factor");

    public static readonly NumberDefinition<GearboxSpec> ServiceLife =
        Number("service_life", "L_h", "Service life under load", Units.Hour).NeverNegative().Stated(static s => s.Duty?.ServiceLife, "/duty.service_life");

    public static readonly NumberDefinition<GearboxSpec> PeakTorque =
        Number("peak_torque", "T_peak", "Peak torque at the input", Units.NewtonMetre).Stated(static s => s.Duty?.Input?.PeakTorque, "/duty.input.peak_torque");

    public static readonly NumberDefinition<GearboxSpec> CoastTorque =
        Number("coast_torque", "T_c", "Torque at the input while the output drives", Units.NewtonMetre)
        .Stated(static s => s.Duty?.Coast?.Torque, "/duty.coast.torque").Optional();

    public static readonly NumberDefinition<GearboxSpec> CoastSpeed =
        Number("coast_speed", "n_c", "Speed of the input while the output drives", Units.RevolutionPerMinute)
        .When(static s => s.Duty?.Coast is not null).Stated(static s => s.Duty?.Coast?.Speed, "/duty.coast.speed")
        .From(Own(static () => TrainQuantities.InputSpeed, "n_in"), static speed => speed);

    public static readonly NumberDefinition<GearboxSpec> CoastShare =
        Number("coast_share", "q_c", "Share of the service life in which the output drives", Units.Percent)
        .When(static s => s.Duty?.Coast is not null).Stated(static s => s.Duty?.Coast?.Share, "/duty.coast.share")
        .Assumed(1, "100 %, for no share is stated");

    public static readonly NumberDefinition<GearboxSpec> BackEfficiency =
        Number("back_efficiency", "η′", "Efficiency of the meshes while the output drives", Units.Percent)
        .By("η′ = 2 − 1/η", "balance of power, textbooks of machine design").Noted("the same loss in both directions")
        .When(static s => s.Duty?.Coast is not null)
        .From(Own(static () => TrainQuantities.Efficiency, "η"), Mechanics.Trains.BackDriving.Efficiency);

    public static readonly NumberDefinition<GearboxSpec> DriveReverseTorque =
        Number("drive_reverse_torque", "T_back", "Torque at the input with the drive in the other direction", Units.NewtonMetre)
        .Noted("0 for a drive that turns one way")
        .When(static s => s.Duty?.Coast is not null)
        .Stated(static s => s.Duty?.Input?.ReverseTorque, "/duty.input.torque")
        .Custom(static subject => Otherwise(subject, DriveReverseTorque!));

    public static readonly NumberDefinition<GearboxSpec> ReverseTorque =
        Number("reverse_torque", "T_rev", "Torque at the input in the other direction", Units.NewtonMetre)
        .By("that of the drive, or of coasting where it is greater", "closed form")
        .Noted("0 for a drive that turns one way and does not coast")
        .For(static s => s.Duty?.Coast is not null).From(DriveReverseTorque, CoastTorque, Math.Max)
        .Stated(static s => s.Duty?.Input?.ReverseTorque, "/duty.input.torque")
        .Custom(static subject => Otherwise(subject, ReverseTorque!));

    public static readonly NumberDefinition<GearboxSpec> PeakOverRated =
        Number("peak_over_rated", "f_p", "Peak torque over rated torque with its application factor, at least 1")
        .By("f_p = max(1, T_peak/(T_in·K_A)); 1 where one of them is not stated", "closed form")
        .Custom(static subject => PeakOver(subject));

    public static readonly NumberDefinition<GearboxSpec> RequiredContactSafety = Number("required_contact_safety", "S_Hmin", "Required safety against pitting")
        .Stated(static s => s.Duty?.Safety?.Contact, "/duty.safety.contact").Assumed(1, $"1.0, {MakerAndBuyer}");

    public static readonly NumberDefinition<GearboxSpec> RequiredBendingSafety = Number("required_bending_safety", "S_Fmin", "Required safety against root breakage")
        .Stated(static s => s.Duty?.Safety?.Bending, "/duty.safety.bending").Assumed(1.4, $"1.4, {MakerAndBuyer}");

    public static readonly NumberDefinition<GearboxSpec> RequiredPeakContactSafety =
        Number("required_peak_contact_safety", "S_Hmin,peak", "Required safety of the flank at the peak torque")
        .Stated(static s => s.Duty?.Safety?.PeakContact, "/duty.safety.peak_contact").Assumed(1, $"1.0, {NoSource}");

    public static readonly NumberDefinition<GearboxSpec> RequiredPeakBendingSafety =
        Number("required_peak_bending_safety", "S_Fmin,peak", "Required safety of the root at the peak torque")
        .Stated(static s => s.Duty?.Safety?.PeakBending, "/duty.safety.peak_bending").Assumed(1.2, $"1.2, {NoSource}");

    public static readonly RowDefinition<GearboxSpec, string> LubricantKind = Text("lubricant_kind", "Oil or grease").OneOf("oil", "grease")
        .Custom(static subject => AnalysisContext.Text(LubricantKind!, Oil(subject)?.Kind, Key(subject, "kind")));

    public static readonly NumberDefinition<GearboxSpec> Viscosity40 =
        Number("viscosity_40", "ν_40", "Kinematic viscosity at 40 °C", Units.SquareMillimetrePerSecond)
        .Custom(static subject => subject.Context.Amount(Viscosity40!, Oil(subject)?.Viscosity40, Key(subject, "viscosity_40")));

    public static readonly NumberDefinition<GearboxSpec> StatedIndex = Number("stated_viscosity_index", "VI", "Viscosity index as stated")
        .Tables(ViscosityIndex.TableId)
        .Custom(static subject => Oil(subject)?.ViscosityIndex is { } index ? subject.Context.Number(StatedIndex!, index, "") : null);

    public static readonly NumberDefinition<GearboxSpec> Viscosity100 =
        Number("viscosity_100", "ν_100", "Kinematic viscosity at 100 °C", Units.SquareMillimetrePerSecond)
        .By("as stated, else that of VI and ν_40", "the spec, else ISO 2909 (ASTM D2270)", Certainty.Declared)
        .Found(static (_, subject) => Oil(subject)?.Viscosity100)
        .From(Viscosity40, StatedIndex, ViscosityIndex.KinematicAt100)
        .Custom(static subject => AnalysisContext.Missing(
            Viscosity100!, Oil(subject) is null ? "duty.oil.lubricant" : $"{Key(subject, "viscosity_100")} or {Key(subject, "viscosity_index")}"));

    public static readonly NumberDefinition<GearboxSpec> ViscosityIndexDifference =
        Number("viscosity_index_difference", "", "Difference of the stated viscosity index from that of both viscosities")
        .By("|VI(ν_40, ν_100) − VI|", "ISO 2909, ASTM D2270", Certainty.Published)
        .When(static (_, subject) => Oil(subject)?.Viscosity100 is not null)
        .From(Viscosity40, Viscosity100, StatedIndex, static (v40, v100, stated) => Math.Abs(ViscosityIndex.Of(v40, v100) - stated));

    public static readonly NumberDefinition<GearboxSpec> Viscosity = Number("viscosity", "ν", "Kinematic viscosity from coldest to hottest", Units.SquareMillimetrePerSecond)
        .By("lg lg(ν + 0.7) = A − B·lg T, T in kelvin, through ν_40 and ν_100", "ASTM D341", Certainty.Memory)
        .From(
            Viscosity40, Viscosity100, Own(static () => TrainQuantities.OilTemperature, "T"),
            static (v40, v100, temperature) => Mechanics.Lubrication.Viscosity.Kinematic(temperature, 40, v40, 100, v100));

    public static readonly NumberDefinition<GearboxSpec> OilDensity = Number("oil_density", "ρ_oil", "Density of the oil at 15 °C", Units.KilogramPerCubicMetre)
        .Custom(static subject => Oil(subject) is { } oil
            ? subject.Context.Amount(
                OilDensity!, oil.Density, Usual(oil).Density * 1e-12, FormattableString.Invariant($"{Usual(oil).Density} kg/m³ for {Usual(oil).Of}, {NoSource}"))
            : AnalysisContext.Missing(OilDensity!, "duty.oil.lubricant"));

    public static readonly NumberDefinition<GearboxSpec> PressureViscosity =
        Number("pressure_viscosity", "α_p", "Pressure-viscosity coefficient of the oil", Units.PerGigapascal)
        .Custom(static subject => Oil(subject) is { } oil
            ? subject.Context.Amount(
                PressureViscosity!, oil.PressureViscosity, Usual(oil).PressureViscosity * 1e-3,
                FormattableString.Invariant($"{Usual(oil).PressureViscosity} 1/GPa for {Usual(oil).Of}, {NoSource}"))
            : AnalysisContext.Missing(PressureViscosity!, "duty.oil.lubricant"));

    public static readonly NumberDefinition<GearboxSpec> ScuffingTemperature = Number("scuffing_temperature", "θ_S", "Scuffing temperature of the oil", Units.Celsius)
        .Found(static (_, subject) => Oil(subject)?.ScuffingTemperature);

    public static readonly RowDefinition<GearboxSpec, string> Pitting = Text("pitting_permitted", "Pitting permitted in the service life")
        .Stated(static s => s.Duty?.Safety?.Pitting, "/duty.safety.pitting").Assumed("none", "none: the cautious life factor of ISO 6336-2");

    public static readonly RowDefinition<GearboxSpec, string> LongLife = Text("long_life", "Strength at 10¹⁰ cycles")
        .Stated(static s => s.Duty?.Safety?.LongLife, "/duty.safety.long_life")
        .Assumed("reduced", "reduced: 0.85 at 10¹⁰ cycles, the cautious life factor of ISO 6336");

    public static readonly RowDefinition<GearboxSpec, string> SpectrumPeaks = Text("spectrum_peaks", "Dynamic peaks in the torques of the spectrum")
        .When(static s => s.Duty is { Spectrum.IsEmpty: false })
        .Stated(static s => s.Duty!.SpectrumPeaks, "/duty.spectrum_peaks")
        .Assumed("excluded", "excluded: the application factor applies to the torques of the spectrum too");

    private static Quantity PeakOver(Subject train)
    {
        ImmutableArray<Quantity> inputs = [train[PeakTorque], train[TrainQuantities.InputTorque], train[ApplicationFactor]];
        return Quantity.MissingReasons(inputs).IsEmpty
            ? Quantity.Compute(PeakOverRated, inputs, static v => Math.Max(1, v[0] / (v[1] * v[2])))
            : Quantity.Computed(PeakOverRated, 1, []);
    }

    private static LubricantSpec? Oil(Subject subject) => OilBase.Lubricant(subject.Context);

    private static string Key(Subject subject, string key) => Oil(subject) is { } oil ? $"lubricants.{oil.Name.Value}.{key}" : "duty.oil.lubricant";

    /// <summary>The reverse torque of a drive that states none.</summary>
    private static Quantity? Otherwise(Subject subject, NumberDefinition<GearboxSpec> kind) => subject.Context.Spec.Duty?.Input switch
    {
        { Direction: { Value: "one" } direction } =>
            subject.Context.Between(kind, AnalysisContext.Declared(direction, "no torque in the other direction"), 0, 0, 0),
        { Torque: { } torque, Direction: null } =>
            subject.Context.Assumed(kind, torque.Value.Coherent, "as in the first direction, for neither direction nor reverse torque is stated"),
        { Torque: { } torque } =>
            subject.Context.Assumed(kind, torque.Value.Coherent, "as in the first direction, for the drive turns both ways and no reverse torque is stated"),
        _ => null,
    };

    /// <summary>Density, kg/m³, and pressure-viscosity coefficient, 1/GPa, where nobody states them; of a span the thinner film.</summary>
    private static (double Density, double PressureViscosity, string Of) Usual(LubricantSpec oil) => oil.Base?.Value switch
    {
        "PAO" => (840, 14, "PAO"),
        "ester" => (920, 13, "ester"),
        "PAG" => (1000, 10, "PAG"),
        _ => (870, 20, "mineral oil"),
    };
}

/// <summary>One share of the service life.</summary>
public sealed class LoadCaseQuantities : Section<SpectrumBinSpec>
{
    public static readonly NumberDefinition<SpectrumBinSpec> Share = Number("share", "q", "Share of the service life", Units.Percent).Stated(static s => s.Share);

    public static readonly NumberDefinition<SpectrumBinSpec> Torque = Number("torque", "T", "Torque at the input", Units.NewtonMetre).Stated(static s => s.Torque);

    public static readonly NumberDefinition<SpectrumBinSpec> Speed = Number("speed", "n", "Speed of the input", Units.RevolutionPerMinute).Stated(static s => s.Speed);

    internal static void AddAll(AnalysisContext context)
    {
        if (context.Train is not { } train)
            return;
        var count = 0;
        foreach (var share in context.Spec.Duty?.Spectrum ?? [])
            context.Begin(SubjectKinds.LoadCase, $"duty.spectrum[{count++}]", share.Span, share).Relate("train", train.Subject);
    }
}
