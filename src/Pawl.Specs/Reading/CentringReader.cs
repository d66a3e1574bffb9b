using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>A chain of links that keeps one part true to another; the links must lead from the first part to the last.</summary>
/// <remarks>Fits of default come from a spec with other faults; the links are not looked up then.</remarks>
internal static class CentringReader
{
    private static readonly string[] s_kinds = ["fit", "bearing", "dowels", "runout"];

    public static CentringSpec? Read(
        Stated<string> name, MapReader reader, ImmutableArray<FitSpec> fits, ImmutableArray<BearingSpec> bearings, TrainSpec? train)
    {
        var from = reader.Name("from", required: true);
        var to = reader.Name("to", required: true);
        var links = reader.Items("links", Link, required: true);
        var limit = reader.Amount("limit", Dimension.OfLength, AmountRange.Positive);
        var mesh = reader.Names("mesh");
        reader.Finish();

        if (reader.Node("links") is YamlList { Items.Length: 0 or > 50 } list)
            reader.Report(SpecDiagnostics.WrongCount(list.Span, reader.PathOf("links"), "one link or more, at most 50", list.Items.Length));
        if (reader.Node("mesh") is YamlList pair && pair.Items.Length != 2)
            reader.Report(SpecDiagnostics.WrongCount(pair.Span, reader.PathOf("mesh"), "two gears", pair.Items.Length));
        if (mesh.Length == 2 && train is not null && !train.Meshes.Any(each => Joins(each.Gears, mesh)))
        {
            reader.Report(SpecDiagnostics.UnknownName(
                mesh[0].Span, reader.PathOf("mesh"), "mesh of", $"{mesh[0].Value}, {mesh[1].Value}", null));
        }

        if (from is null || to is null || reader.HasErrors || fits.IsDefault || !Closes())
            return null;
        return new() { Name = name, From = from, To = to, Links = links, Limit = limit, Mesh = mesh };

        // Walks from part to part; a link that starts at none of the part at hand breaks the chain.
        bool Closes()
        {
            var at = from.Value;
            for (var i = 0; i < links.Length; i++)
            {
                var path = $"{reader.PathOf("links")}[{i}]";
                if (links[i].Of is { } part)
                {
                    if (part.Value == at)
                        continue;
                    reader.Report(SpecDiagnostics.OpenChain(part.Span, path, $"the chain has come to `{at}`, and this is a run-out of `{part.Value}`.", "Put the link that leads to this part before it."));
                    return false;
                }

                if (Ends(links[i], path) is not var (stated, one, other))
                    return false;
                if (one != at && other != at)
                {
                    reader.Report(SpecDiagnostics.OpenChain(
                        stated.Span, path, $"the chain has come to `{at}`, and `{stated.Value}` joins `{one}` and `{other}`.", $"Put a link between `{at}` and `{one}` or `{other}` before it."));
                    return false;
                }

                at = one == at ? other : one;
            }

            if (at == to.Value)
                return true;
            reader.Report(SpecDiagnostics.OpenChain(
                to.Span, reader.PathOf("to"), $"the links end at `{at}`, not at `{to.Value}`.", $"Add the links from `{at}` to `{to.Value}`."));
            return false;
        }

        (Stated<string> Stated, string One, string Other)? Ends(CentringLinkSpec link, string path)
        {
            if (link.Bearing is { } bearing)
            {
                if (bearings.FirstOrDefault(each => each.Name.Value == bearing.Value) is { } found)
                    return (bearing, found.Shaft.Value, found.Housing.Value);
                reader.Report(SpecDiagnostics.UnknownName(bearing.Span, path, "bearing", bearing.Value, Nearest.To(bearing.Value, [.. bearings.Select(each => each.Name.Value)])));
                return null;
            }

            if (link.Dowels?.Second is { } second && FitOf(second, path) is null)
                return null;
            var fit = link.Fit ?? link.Dowels!.First;
            if (FitOf(fit, path) is not { } joint)
                return null;
            if (joint is { HolePart: { } hole, ShaftPart: { } shaft })
                return (fit, hole.Value, shaft.Value);
            reader.Report(SpecDiagnostics.OpenChain(
                fit.Span, path, $"the fit `{fit.Value}` does not say which parts it joins.", "State `hole_part` and `shaft_part` of the fit."));
            return null;
        }

        FitSpec? FitOf(Stated<string> fit, string path)
        {
            var found = fits.FirstOrDefault(each => each.Name.Value == fit.Value);
            if (found is null)
                reader.Report(SpecDiagnostics.UnknownName(fit.Span, path, "fit", fit.Value, Nearest.To(fit.Value, [.. fits.Select(each => each.Name.Value)])));
            return found;
        }
    }

    /// <summary>Whether two names are the two gears of a mesh, in either order.</summary>
    public static bool Joins(ImmutableArray<Stated<string>> gears, ImmutableArray<Stated<string>> names) =>
        (gears[0].Value == names[0].Value && gears[1].Value == names[1].Value) || (gears[0].Value == names[1].Value && gears[1].Value == names[0].Value);

    private static CentringLinkSpec? Link(MapReader reader)
    {
        var fit = reader.Name("fit");
        var bearing = reader.Name("bearing");
        var dowels = reader.Map("dowels") is { } map ? Dowels(map) : null;
        var runout = reader.Amount("runout", Dimension.OfLength, AmountRange.NotNegative);
        var of = reader.Name("of");
        reader.Finish();

        string[] kinds = [.. s_kinds.Where(reader.Has)];
        if (kinds.Length > 1)
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan(kinds[1]), reader.ObjectPath, kinds[0], kinds[1]));
        else if (kinds.Length == 0)
            reader.Report(SpecDiagnostics.MissingKey(reader.Span, reader.ObjectPath, "fit"));
        else if (kinds[0] == "runout" && !reader.Has("of"))
            reader.Report(SpecDiagnostics.MissingKey(reader.Span, reader.ObjectPath, "of"));
        else if (kinds[0] != "runout" && reader.Has("of"))
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan("of"), reader.ObjectPath, kinds[0], "of"));
        return reader.HasErrors ? null : new() { Span = reader.Span, Fit = fit, Bearing = bearing, Dowels = dowels, Runout = runout, Of = of };
    }

    private static DowelsSpec? Dowels(MapReader reader)
    {
        var first = reader.Name("first", required: true);
        var second = reader.Name("second");
        var distance = reader.Amount("distance", Dimension.OfLength, AmountRange.Positive, required: true);
        var along = reader.Amount("along", Dimension.OfLength);
        var aside = reader.Amount("aside", Dimension.OfLength);
        reader.Finish();
        return first is null || distance is null ? null : new() { First = first, Second = second, Distance = distance, Along = along, Aside = aside };
    }
}
