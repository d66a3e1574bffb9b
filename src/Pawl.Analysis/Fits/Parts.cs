using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Fits;

/// <summary>The temperatures that parts see.</summary>
internal sealed class Parts(Draft draft)
{
    private OilSpec? Oil => draft.Spec.Duty?.Oil;

    public Draft Draft => draft;

    public (double Temperature, string? Missing) Coldest() => Of(Oil?.Coldest, "duty.oil.coldest");

    /// <summary>Its own running temperature, else that of the oil.</summary>
    public (double Temperature, string? Missing) Running(Stated<Amount>? own) => own is null ? Of(Oil?.Running, "duty.oil.running") : (own.Value.Coherent, null);

    /// <summary>As far above its running temperature as the hottest oil is above its own.</summary>
    public (double Temperature, string? Missing) Hottest(Stated<Amount>? own)
    {
        if (Oil?.Hottest is not { } hottest)
            return (0, "duty.oil.hottest is not stated");
        if (own is null)
            return (hottest.Value.Coherent, null);
        return Oil.Running is { } running
            ? (own.Value.Coherent + hottest.Value.Coherent - running.Value.Coherent, null)
            : (0, "duty.oil.running is not stated");
    }

    private static (double Temperature, string? Missing) Of(Stated<Amount>? stated, string key) =>
        stated is null ? (0, $"{key} is not stated") : (stated.Value.Coherent, null);
}
