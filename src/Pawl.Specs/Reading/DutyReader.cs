using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

internal static partial class DutyReader
{
    /// <summary>Everything is sized by the torque of the first direction.</summary>
    public const string GreaterFirst = "State the greater torque as that of the input; the other direction has the lesser.";

    static partial void Check(DutySpec read, MapReader reader, Scope scope)
    {
        reader.NotAbove("coast.torque", read.Coast?.Torque.Size(), read.Input?.Torque.Size(), "at most the torque of", GreaterFirst);
        if (!reader.Has("spectrum") || reader.HasErrors)
            return;

        var sum = 0.0;
        foreach (var bin in read.Spectrum)
            sum += bin.Share.Value.Coherent;
        if (!(Math.Abs(sum - 1) <= Limits.SpectrumSlack))
            reader.Report(SpecDiagnostics.SpectrumSum(reader.KeySpan("spectrum"), reader.PathOf("spectrum"), sum));
        for (var i = 0; i < read.Spectrum.Length; i++)
            reader.NotAbove($"spectrum[{i}].torque", read.Spectrum[i].Torque.Size(), read.Input?.PeakTorque.Size(), "at most the peak torque of");
    }
}

internal static partial class InputDutyReader
{
    static partial void Check(InputDutySpec read, MapReader reader, Scope scope)
    {
        reader.NotAbove("reverse_torque", read.ReverseTorque.Size(), read.Torque.Size(), "at most the torque of", DutyReader.GreaterFirst);
        reader.NotBelow("peak_torque", read.PeakTorque.Size(), read.Torque.Size(), "at least the torque of");
        if (read.ReverseTorque is { } reverse && read.Direction is { Value: "one" })
            reader.Report(SpecDiagnostics.ReverseOfOne(reverse.Span, reader.PathOf("reverse_torque"), reverse.Text));
        if (read.Stiffness is not null)
            reader.Demand("inertia");
    }
}

internal static partial class OutputDutyReader
{
    // A spring without its mass says nothing.
    static partial void Check(OutputDutySpec read, MapReader reader, Scope scope)
    {
        if (read.Stiffness is not null)
            reader.Demand("inertia");
    }
}

internal static partial class OilReader
{
    static partial void Check(OilSpec read, MapReader reader, Scope scope)
    {
        Ascend("coldest", read.Coldest.Size(), "running", read.Running.Size());
        Ascend("running", read.Running.Size(), "hottest", read.Hottest.Size());
        if (read.Running is null)
            Ascend("coldest", read.Coldest.Size(), "hottest", read.Hottest.Size());

        void Ascend(string lower, Size? low, string upper, Size? high)
        {
            if (low is not null && high is not null && low.Value > high.Value)
                reader.Report(SpecDiagnostics.TemperatureOrder(high.Span, reader.PathOf(upper), high.Text, lower, low.Text));
        }
    }
}
