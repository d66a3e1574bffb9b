using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>The merged tree of a variant as the typed model.</summary>
internal static partial class GearboxReader
{
    /// <summary>The spec, or null when a required part is missing; complaints go into <paramref name="diagnostics"/>.</summary>
    public static GearboxSpec? Read(
        YamlNode tree, string file, ImmutableArray<FileRead> filesRead, Catalogue? catalogue, ICollection<Diagnostic> diagnostics)
    {
        var reader = new MapReader(tree, "", diagnostics);
        return Read(reader, new(reader) { File = file, FilesRead = filesRead, Tree = tree, Lookup = catalogue });
    }

    static partial void Check(GearboxSpec read, MapReader reader, Scope scope)
    {
        ClassLetters.Check(read, reader);
        CheckNames(read, reader);
        CheckDraws(read, reader);
        var variant = ((scope.Tree as YamlMap)?.Find("gearbox") as YamlMap)?.Find("variant") is YamlScalar { IsNull: false } name ? name.Value : null;
        if (variant is not null || scope.Tree is null)
            CheckParts(read, reader);
        foreach (var concession in read.Concessions)
        {
            var isOwn = variant is not null && concession.Span.File == scope.File;
            if (!isOwn && concession.Variants.IsEmpty)
                reader.Report(SpecDiagnostics.MissingVariants(concession.Rule.Span, concession.Rule.Value));
            else if (isOwn && !concession.Covers(variant!))
                reader.Report(SpecDiagnostics.OtherVariants(concession.Variants[0].Span, concession.Rule.Value, variant!));
        }
    }

    /// <summary>Random sizes of all chains together: a sample that nobody could want is refused rather than waited for.</summary>
    private static void CheckDraws(GearboxSpec read, MapReader reader)
    {
        var sizes = 0L;
        foreach (var stack in read.Stacks.Entries)
        {
            var before = sizes;
            sizes += (long)(stack.Draws?.Value ?? Limits.UsualDraws) * stack.Contributors.Entries.Length;
            if (before <= Limits.MostDrawnSizes && sizes > Limits.MostDrawnSizes)
            {
                reader.Report(SpecDiagnostics.WrongCount(
                    stack.Draws?.Span ?? stack.Name.Span, "stacks", $"at most {Limits.MostDrawnSizes.ToString(Invariant)} random sizes in all, contributors times draws", (int)Math.Min(sizes, int.MaxValue),
                    "Ask for fewer draws."));
            }
        }
    }

    /// <summary>Names that one section gives and another declares.</summary>
    private static void CheckNames(GearboxSpec read, MapReader reader)
    {
        foreach (var seal in read.LipSeals.Entries)
            OnSection(seal.At, seal.Shaft?.Value, $"lip_seals.{seal.Name.Value}.at");
        foreach (var bearing in read.Bearings.Entries)
            OnSection(bearing.At, bearing.Shaft?.Value, $"bearings.{bearing.Name.Value}.at");
        foreach (var ring in read.RetainingRings.Entries)
            OnSection(ring.At, ring.On?.Value, $"retaining_rings.{ring.Name.Value}.at");

        foreach (var fit in read.Fits.Entries)
        {
            if (fit.Pin is { } pin && read.PlanetPins.Find(pin.Value) is null)
            {
                string[] pins = [.. read.PlanetPins.Entries.Select(each => each.Name.Value)];
                reader.Report(SpecDiagnostics.UnknownName(pin.Span, $"fits.{fit.Name.Value}.pin", "planet pin", pin.Value, Nearest.To(pin.Value, pins), pins));
            }
        }

        foreach (var body in read.Train?.Bodies.Entries ?? [])
        {
            if (body.CentredBy is { } chain && read.Centring.Find(chain.Value) is null)
            {
                string[] chains = [.. read.Centring.Entries.Select(each => each.Name.Value)];
                reader.Report(SpecDiagnostics.UnknownName(
                    chain.Span, $"train.bodies.{body.Name.Value}.centred_by", "chain under centring", chain.Value, Nearest.To(chain.Value, chains), chains));
            }
        }

        // What sits on a shaft names a section of a shaft of its own body.
        void OnSection(Stated<string>? at, string? body, string key)
        {
            if (at is null || body is null)
                return;
            string[] known = [.. from shaft in read.Shafts.Entries where shaft.Body?.Value == body
                                 from section in shaft.Sections.Entries select $"shafts.{shaft.Name.Value}.{section.Name.Value}"];
            if (!known.Contains(at.Value))
                reader.Report(SpecDiagnostics.UnknownName(at.Span, key, $"section of a shaft of {body}", at.Value, null, known));
        }
    }
}
