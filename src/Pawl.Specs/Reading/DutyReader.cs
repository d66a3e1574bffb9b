using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>What the gearbox is asked to do.</summary>
internal static class DutyReader
{
    private static readonly string[] Directions = ["one", "both"];
    private static readonly string[] Pittings = ["none", "limited"];
    private static readonly string[] LongLives = ["reduced", "full"];
    private static readonly string[] Peaks = ["included", "excluded"];

    public static DutySpec Read(MapReader reader, Catalogue? catalogue)
    {
        var input = reader.Map("input") is { } inputMap ? Input(inputMap) : null;
        var output = reader.Map("output") is { } outputMap ? Output(outputMap) : null;
        var life = reader.Amount("service_life", Dimension.OfTime, AmountRange.Positive);
        var factor = reader.Number("application_factor", Limits.LeastApplicationFactor, Limits.GreatestApplicationFactor);
        var oil = reader.Map("oil") is { } oilMap ? Oil(oilMap, catalogue) : null;
        var reliability = reader.Amount("reliability", Dimension.Ratio, new Amount(50, Units.Percent), new Amount(99.99, Units.Percent));
        var safety = reader.Map("safety") is { } safetyMap ? Safety(safetyMap) : null;
        var peaks = reader.Word("spectrum_peaks", Peaks);
        var stated = reader.Has("spectrum");
        var spectrum = reader.Items("spectrum", Bin);
        reader.Finish();

        if (stated && !reader.HasErrors)
        {
            CheckShares(reader, spectrum);
            CheckPeak(reader, spectrum, input?.PeakTorque);
        }

        return new()
        {
            Input = input, Output = output, ServiceLife = life, Reliability = reliability, ApplicationFactor = factor, Safety = safety, Oil = oil, Spectrum = spectrum,
            SpectrumPeaks = peaks,
        };
    }

    private static InputDutySpec Input(MapReader reader)
    {
        var speed = reader.Amount("speed", Dimension.OfAngularSpeed, AmountRange.Positive);
        var torque = reader.Amount("torque", Dimension.OfTorque, AmountRange.Positive);
        var (radial, at, axial) = External(reader);
        var peak = reader.Amount("peak_torque", Dimension.OfTorque, AmountRange.Positive);
        var reverse = reader.Amount("reverse_torque", Dimension.OfTorque, AmountRange.Positive);
        var direction = reader.Word("direction", Directions);
        reader.Finish();
        if (peak is not null && torque is not null && peak.Value.Coherent < torque.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(peak.Span, reader.PathOf("peak_torque"), peak.Text, $"at least the torque of {torque.Text}"));
        if (reverse is not null && direction is { Value: "one" })
            reader.Report(SpecDiagnostics.ReverseOfOne(reverse.Span, reader.PathOf("reverse_torque"), reverse.Text));
        return new()
        {
            Speed = speed, Torque = torque, RadialForce = radial, RadialForceAt = at, AxialForce = axial, PeakTorque = peak, ReverseTorque = reverse,
            Direction = direction,
        };
    }

    private static SafetySpec Safety(MapReader reader)
    {
        var contact = reader.Number("contact", Limits.LeastSafety, Limits.GreatestSafety);
        var bending = reader.Number("bending", Limits.LeastSafety, Limits.GreatestSafety);
        var peakContact = reader.Number("peak_contact", Limits.LeastSafety, Limits.GreatestSafety);
        var peakBending = reader.Number("peak_bending", Limits.LeastSafety, Limits.GreatestSafety);
        var pitting = reader.Word("pitting", Pittings);
        var longLife = reader.Word("long_life", LongLives);
        reader.Finish();
        return new()
        {
            Contact = contact, Bending = bending, PeakContact = peakContact, PeakBending = peakBending, Pitting = pitting, LongLife = longLife,
        };
    }

    private static OutputDutySpec Output(MapReader reader)
    {
        var (radial, at, axial) = External(reader);
        var lash = reader.Amount("greatest_lash", Dimension.OfAngle, AmountRange.Positive);
        reader.Finish();
        return new() { RadialForce = radial, RadialForceAt = at, AxialForce = axial, GreatestLash = lash };
    }

    /// <summary>Forces of the coupled machine on a shaft end.</summary>
    private static (Stated<Amount>? Radial, Stated<Amount>? At, Stated<Amount>? Axial) External(MapReader reader)
    {
        var radial = reader.Amount("radial_force", Dimension.OfForce, AmountRange.NotNegative);
        var at = reader.Amount("radial_force_at", Dimension.OfLength);
        return (radial, at, reader.Amount("axial_force", Dimension.OfForce, AmountRange.NotNegative));
    }

    private static OilSpec Oil(MapReader reader, Catalogue? catalogue)
    {
        var lubricant = reader.Name("lubricant");
        var running = reader.Amount("running", Dimension.OfTemperature);
        var coldest = reader.Amount("coldest", Dimension.OfTemperature);
        var hottest = reader.Amount("hottest", Dimension.OfTemperature);
        reader.Finish();

        References.CheckLubricant(reader, "lubricant", lubricant, catalogue);
        CheckOrder(reader, "coldest", coldest, "running", running);
        CheckOrder(reader, "running", running, "hottest", hottest);
        if (running is null)
            CheckOrder(reader, "coldest", coldest, "hottest", hottest);
        return new() { Lubricant = lubricant, Running = running, Coldest = coldest, Hottest = hottest };
    }

    private static void CheckOrder(MapReader reader, string lower, Stated<Amount>? low, string upper, Stated<Amount>? high)
    {
        if (low is not null && high is not null && low.Value.Coherent > high.Value.Coherent)
            reader.Report(SpecDiagnostics.TemperatureOrder(high.Span, reader.PathOf(upper), high.Text, lower, low.Text));
    }

    private static SpectrumBinSpec? Bin(MapReader reader)
    {
        var share = reader.Amount("share", Dimension.Ratio, AmountRange.Positive, required: true);
        var torque = reader.Amount("torque", Dimension.OfTorque, AmountRange.NotNegative, required: true);
        var speed = reader.Amount("speed", Dimension.OfAngularSpeed, AmountRange.NotNegative, required: true);
        reader.Finish();
        return share is null || torque is null || speed is null ? null : new() { Span = reader.Span, Share = share, Torque = torque, Speed = speed };
    }

    private static void CheckPeak(MapReader reader, ImmutableArray<SpectrumBinSpec> spectrum, Stated<Amount>? peak)
    {
        for (var i = 0; peak is not null && i < spectrum.Length; i++)
        {
            var torque = spectrum[i].Torque;
            if (torque.Value.Coherent > peak.Value.Coherent)
                reader.Report(SpecDiagnostics.OutOfRange(torque.Span, $"{reader.PathOf("spectrum")}[{i}].torque", torque.Text, $"at most the peak torque of {peak.Text}"));
        }
    }

    private static void CheckShares(MapReader reader, ImmutableArray<SpectrumBinSpec> spectrum)
    {
        var sum = 0.0;
        foreach (var bin in spectrum)
            sum += bin.Share.Value.Coherent;
        if (!(Math.Abs(sum - 1) <= Limits.SpectrumSlack))
            reader.Report(SpecDiagnostics.SpectrumSum(reader.KeySpan("spectrum"), reader.PathOf("spectrum"), sum));
    }
}
