using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Mechanics.Stacks;
using Pawl.Specs.Model;
using K = Pawl.Analysis.Stacks.StackQuantities;
using Range = Pawl.Mechanics.Seals.Extent;

namespace Pawl.Analysis.Stacks;

/// <content>Which packs of shims the stack needs, and whether the list makes them.</content>
internal sealed partial class StackDraft
{
    private const int UsualMost = 4;
    private const int Steps = 100;

    private void Shims(ShimmingSpec shims)
    {
        var effect = shims.Effect.Value == "fills" ? ShimEffect.Fills : ShimEffect.Lifts;
        var sheets = _draft.Spec.Shims.Find(shims.Stock.Value)!.Sheets;
        _s.Add(Quantity.OfText(K.Stock, Draft.Declared(sheets[0].Thickness), string.Join(", ", sheets.Select(sheet => sheet.Thickness.Text)), []));
        ImmutableArray<Quantity> inputs = [_s[K.Stock], _s[K.WorstCase], _s[K.LeastWanted], _s[K.GreatestWanted]];
        _s.Add(Bounds(K.PackNeeded, inputs, () => ShimChoice.RangeNeeded(WorstCase, Window, effect)));
        ShimChoice choice;
        try
        {
            choice = ShimChoice.Of(
                [.. sheets.Select(sheet => new ShimStock(
                    sheet.Thickness.Value.Coherent, sheet.Tolerance?.Value.Coherent ?? 0, sheet.Count?.Value ?? int.MaxValue))],
                shims.Most?.Value ?? UsualMost, effect);
        }
        catch (OutsideValidityException tooMany)
        {
            Refuse(tooMany.Message);
            return;
        }

        _s.Add(Quantity.Computed(K.Packs, choice.Count, []));
        _s.Add(Single(K.Uncovered, inputs, () => choice.Uncovered(WorstCase, Window).Sum(gap => gap.Greatest - gap.Least + 1e-5)));
        _s.Add(Single(K.MostPieces, inputs, () => Pieces(choice)));
        _s.Add(shims.MeasuredGap is null ? Set() : Measured(shims, choice, effect));
    }

    private void Refuse(string reason)
    {
        foreach (var kind in (ReadOnlySpan<QuantityKind>)[K.Packs, K.Uncovered, K.MostPieces, K.EndPlay])
            _s.Add(Quantity.NotEvaluated(kind, [], reason));
    }

    private Range WorstCase => new(_s[K.WorstCase].Value.Least, _s[K.WorstCase].Value.Greatest);

    /// <summary>Shims in the pack that each gap of the worst case would get, at most.</summary>
    private int Pieces(ShimChoice choice)
    {
        var most = 0;
        for (var step = 0; step <= Steps; step++)
        {
            var gap = WorstCase.Least + ((WorstCase.Greatest - WorstCase.Least) * step / Steps);
            most = Math.Max(most, choice.Best(gap, Window.Middle, Window)?.Shims.Length ?? 0);
        }

        return most;
    }

    /// <summary>Every assembly is measured and set into the window.</summary>
    private Quantity Set() => _reasons.IsEmpty
        ? Bounds(K.EndPlay, [_s[K.LeastWanted], _s[K.GreatestWanted]], () => Window)
        : Quantity.NotEvaluated(K.EndPlay, Sizes, _reasons);

    /// <summary>The one assembly whose gap was measured.</summary>
    private Quantity Measured(ShimmingSpec shims, ShimChoice choice, ShimEffect effect)
    {
        var (gap, doubt) = (shims.MeasuredGap!.Value.Coherent, shims.Uncertainty?.Value.Coherent ?? 0);
        _s.Add(_draft.Amount(K.MeasuredGap, shims.MeasuredGap, ""));
        _s.Add(Quantity.Computed(K.Doubt, 2 * doubt / (Window.Greatest - Window.Least), [_s[K.MeasuredGap]]));
        var best = choice.Best(gap, shims.Target?.Value.Coherent ?? Window.Middle, Window, doubt);
        _s.Add(Quantity.OfTruth(K.PackFound, Origin.Computed.Instance, best is not null, [_s[K.MeasuredGap]]));
        if (best is null)
        {
            var (thinner, thicker) = choice.Nearest(gap, shims.Target?.Value.Coherent ?? Window.Middle);
            _s.Add(Quantity.ComputedText(K.Pack, $"none; the nearest are {Told(thinner)} and {Told(thicker)}", [_s[K.MeasuredGap]]));
            return Quantity.NotEvaluated(K.EndPlay, [_s[K.MeasuredGap]], "no pack brings the measured gap into the window");
        }

        _s.Add(Quantity.ComputedText(K.Pack, Told(best), [_s[K.MeasuredGap]]));
        _s.Add(Quantity.Computed(K.Pieces, best.Shims.Length, [_s[K.MeasuredGap]]));
        var play = ShimChoice.EndPlay(gap, best.Thickness, effect);
        return Bounds(K.EndPlay, [_s[K.MeasuredGap]], () => Range.About(play, doubt + best.Tolerance));
    }

    private static string Told(ShimPack? pack) => pack is null ? "none"
        : pack.Shims.IsEmpty ? "no shim"
        : $"{string.Join(" + ", pack.Shims.Select(shim => shim.ToString("0.####", CultureInfo.InvariantCulture)))} mm";
}
