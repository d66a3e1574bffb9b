using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Chains of sizes, and the shims that set their gaps.</summary>
internal static class StackReader
{
    private static readonly string[] Distributions = ["normal", "uniform", "triangular"];
    private static readonly string[] Methods = ["worst-case", "statistical"];
    private static readonly string[] Sides = ["shaft", "housing"];
    private static readonly string[] Effects = ["fills", "lifts"];

    public static StackSpec? Read(Stated<string> name, MapReader reader, Catalogue? catalogue, TrainSpec? train, ImmutableArray<ShimListSpec> lists)
    {
        var from = reader.Name("from");
        var to = reader.Name("to");
        var contributors = reader.Named("contributors", (part, map) => Contributor(part, map, catalogue, train), required: true);
        var window = reader.Map("window", required: true) is { } map ? Window(map) : null;
        var preloaded = reader.Truth("preloaded");
        var greatest = reader.Amount("greatest_in_service", Dimension.OfLength, AmountRange.Positive);
        var method = reader.Word("method", Methods);
        var warmUp = reader.Map("warm_up") is { } warm ? WarmUp(warm) : null;
        var seed = reader.Whole("seed", Limits.LeastSeed, Limits.GreatestSeed);
        var draws = reader.Whole("draws", Limits.FewestDraws, Limits.MostDraws);
        var shims = reader.Map("shims") is { } pack ? Shims(pack, lists) : null;
        reader.Finish();

        if (contributors.IsEmpty && reader.Has("contributors") && !reader.HasErrors)
            reader.Report(SpecDiagnostics.WrongCount(reader.KeySpan("contributors"), reader.PathOf("contributors"), "one size or more", 0));
        if (!reader.HasErrors)
            StackLoop.Check(reader, from, to, contributors);
        return window is null || reader.HasErrors
            ? null
            : new()
            {
                Name = name,
                From = from,
                To = to,
                Contributors = new(contributors, part => part.Name.Value),
                Window = window,
                Preloaded = preloaded,
                GreatestInService = greatest,
                Method = method,
                WarmUp = warmUp,
                Seed = seed,
                Draws = draws,
                Shims = shims,
            };
    }

    private static ContributorSpec? Contributor(Stated<string> name, MapReader reader, Catalogue? catalogue, TrainSpec? train)
    {
        var size = reader.Toleranced("size", Dimension.OfLength, AmountRange.NotNegative, required: true);
        var from = reader.Name("from");
        var to = reader.Name("to");
        var coefficient = reader.Number("coefficient", Limits.LeastCoefficient, Limits.GreatestCoefficient);
        var distribution = reader.Word("distribution", Distributions);
        var capability = reader.Number("capability", Limits.LeastCapability, Limits.GreatestCapability);
        var part = reader.Name("part");
        var material = reader.Name("material");
        var expansion = reader.Amount("expansion", Dimension.OfThermalExpansion, AmountRange.NotNegative);
        var running = reader.Amount("running", Dimension.OfTemperature);
        var side = reader.Word("side", Sides);
        reader.Finish();

        References.CheckBody(reader, "part", part, train);
        References.CheckMaterial(reader, "material", material, catalogue);
        if (material is not null && expansion is not null)
            reader.Report(SpecDiagnostics.ExclusiveKeys(expansion.Span, reader.ObjectPath, "material", "expansion"));
        if (coefficient is { Value: 0 })
            reader.Report(SpecDiagnostics.OutOfRange(coefficient.Span, reader.PathOf("coefficient"), coefficient.Text, "above or below zero", "A size that does not move the gap is no part of the chain."));
        if (capability is not null && distribution is { Value: not "normal" })
            reader.Report(SpecDiagnostics.ExclusiveKeys(capability.Span, reader.ObjectPath, $"distribution: {distribution.Value}", "capability"));
        return size is null
            ? null
            : new()
            {
                Name = name,
                Size = size,
                From = from,
                To = to,
                Coefficient = coefficient,
                Distribution = distribution,
                Capability = capability,
                Part = part,
                Material = material,
                Expansion = expansion,
                Running = running,
                Side = side,
            };
    }

    private static GapWindowSpec? Window(MapReader reader)
    {
        var least = reader.Amount("least", Dimension.OfLength, required: true);
        var greatest = reader.Amount("greatest", Dimension.OfLength, required: true);
        reader.Finish();
        if (least is not null && greatest is not null && greatest.Value.Coherent <= least.Value.Coherent)
        {
            reader.Report(SpecDiagnostics.OutOfRange(
                greatest.Span, reader.PathOf("greatest"), greatest.Text, $"above the least of {least.Text}", "Exchange the two; no assembly lies in a window upside down."));
        }

        return least is null || greatest is null ? null : new() { Least = least, Greatest = greatest };
    }

    private static WarmUpSpec? WarmUp(MapReader reader)
    {
        var shaft = reader.Amount("shaft", Dimension.OfTemperature, required: true);
        var housing = reader.Amount("housing", Dimension.OfTemperature, required: true);
        reader.Finish();
        return shaft is null || housing is null ? null : new() { Shaft = shaft, Housing = housing };
    }

    private static ShimmingSpec? Shims(MapReader reader, ImmutableArray<ShimListSpec> lists)
    {
        var stock = reader.Name("stock", required: true);
        var effect = reader.Word("effect", Effects, required: true);
        var most = reader.Whole("most", Limits.FewestShims, Limits.MostShims);
        var target = reader.Amount("target", Dimension.OfLength);
        var gap = reader.Amount("measured_gap", Dimension.OfLength);
        var uncertainty = reader.Amount("uncertainty", Dimension.OfLength, AmountRange.NotNegative);
        reader.Finish();
        if (stock is not null && !lists.IsDefault && !lists.Any(each => each.Name.Value == stock.Value))
        {
            reader.Report(SpecDiagnostics.UnknownName(
                stock.Span, reader.PathOf("stock"), "list of shims", stock.Value, Nearest.To(stock.Value, [.. lists.Select(each => each.Name.Value)])));
        }

        return stock is null || effect is null
            ? null
            : new() { Stock = stock, Effect = effect, Most = most, Target = target, MeasuredGap = gap, Uncertainty = uncertainty };
    }

    public static ShimListSpec? ShimList(Stated<string> name, MapReader reader)
    {
        var sheets = reader.Items("sheets", Sheet, required: true);
        reader.Finish();
        if (reader.Node("sheets") is YamlList { Items.Length: 0 or > 30 } list)
            reader.Report(SpecDiagnostics.WrongCount(list.Span, reader.PathOf("sheets"), "one kind of shim or more, at most 30", list.Items.Length));
        return reader.HasErrors ? null : new() { Name = name, Sheets = sheets };
    }

    private static ShimSpec? Sheet(MapReader reader)
    {
        var thickness = reader.Amount("thickness", Dimension.OfLength, AmountRange.Positive, required: true);
        var tolerance = reader.Amount("tolerance", Dimension.OfLength, AmountRange.NotNegative);
        var count = reader.Whole("count", Limits.FewestShims, Limits.MostShimsAtHand);
        reader.Finish();
        if (tolerance is not null && thickness is not null && tolerance.Value.Coherent >= thickness.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(tolerance.Span, reader.PathOf("tolerance"), tolerance.Text, $"less than the thickness of {thickness.Text}"));
        return thickness is null ? null : new() { Span = reader.Span, Thickness = thickness, Tolerance = tolerance, Count = count };
    }
}
