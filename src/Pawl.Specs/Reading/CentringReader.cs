using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>A chain of links that keeps one part true to another; the links must lead from the first part to the last.</summary>
/// <remarks>In a spec with other faults the links are not looked up.</remarks>
internal static partial class CentringReader
{
    static partial void Check(CentringSpec read, MapReader reader, Scope scope)
    {
        var mesh = read.Mesh;
        if (mesh.Length == 2 && scope.Train is { } train && !train.Meshes.Any(each => Joins(each.Gears, mesh)))
            reader.Report(SpecDiagnostics.UnknownName(mesh[0].Span, reader.PathOf("mesh"), "mesh of", $"{mesh[0].Value}, {mesh[1].Value}", null));
        if (!reader.HasErrors && scope.Fits is { } fits)
            Walk();

        // Walks from part to part; a link that starts at none of the part at hand breaks the chain.
        void Walk()
        {
            var at = read.From.Value;
            for (var i = 0; i < read.Links.Length; i++)
            {
                var path = $"{reader.PathOf("links")}[{i}]";
                if (read.Links[i].Of is { } part)
                {
                    if (part.Value == at)
                        continue;
                    reader.Report(SpecDiagnostics.OpenChain(part.Span, path, $"the chain has come to `{at}`, and this is a run-out of `{part.Value}`.", "Put the link that leads to this part before it."));
                    return;
                }

                if (Ends(read.Links[i], path) is not var (stated, one, other))
                    return;
                if (one != at && other != at)
                {
                    reader.Report(SpecDiagnostics.OpenChain(
                        stated.Span, path, $"the chain has come to `{at}`, and `{stated.Value}` joins `{one}` and `{other}`.", $"Put a link between `{at}` and `{one}` or `{other}` before it."));
                    return;
                }

                at = one == at ? other : one;
            }

            if (at == read.To.Value)
                return;
            reader.Report(SpecDiagnostics.OpenChain(
                read.To.Span, reader.PathOf("to"), $"the links end at `{at}`, not at `{read.To.Value}`.", $"Add the links from `{at}` to `{read.To.Value}`."));
        }

        (Stated<string> Stated, string One, string Other)? Ends(CentringLinkSpec link, string path)
        {
            if (link.Bearing is { } bearing)
            {
                if (scope.Bearings?.Find(bearing.Value) is { } found)
                    return (bearing, found.Shaft.Value, found.Housing.Value);
                reader.Report(SpecDiagnostics.UnknownName(bearing.Span, path, "bearing", bearing.Value, Nearest.To(bearing.Value, [.. scope.Bearings!.Entries.Select(each => each.Name.Value)])));
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
            var found = fits.Find(fit.Value);
            if (found is null)
                reader.Report(SpecDiagnostics.UnknownName(fit.Span, path, "fit", fit.Value, Nearest.To(fit.Value, [.. fits.Entries.Select(each => each.Name.Value)])));
            return found;
        }
    }

    /// <summary>Whether two names are the two gears of a mesh, in either order.</summary>
    public static bool Joins(ImmutableArray<Stated<string>> gears, ImmutableArray<Stated<string>> names) =>
        (gears[0].Value == names[0].Value && gears[1].Value == names[1].Value) || (gears[0].Value == names[1].Value && gears[1].Value == names[0].Value);
}

internal static partial class CentringLinkReader
{
    private static readonly string[] Kinds = ["fit", "bearing", "dowels", "runout"];

    static partial void Check(CentringLinkSpec read, MapReader reader, Scope scope)
    {
        string[] kinds = [.. Kinds.Where(reader.Has)];
        if (kinds.Length > 1)
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan(kinds[1]), reader.ObjectPath, kinds[0], kinds[1]));
        else if (kinds.Length == 0)
            reader.Report(SpecDiagnostics.MissingKey(reader.Span, reader.ObjectPath, "fit"));
        else if (kinds[0] == "runout" && !reader.Has("of"))
            reader.Report(SpecDiagnostics.MissingKey(reader.Span, reader.ObjectPath, "of"));
        else if (kinds[0] != "runout" && reader.Has("of"))
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan("of"), reader.ObjectPath, kinds[0], "of"));
    }
}
