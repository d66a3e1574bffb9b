using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Agreement;

/// <summary>The sections of the shafts of one body, with their places along the common axis.</summary>
internal sealed class ShaftPlaces
{
    private readonly ImmutableArray<SectionPlace> _sections;

    private ShaftPlaces(ImmutableArray<SectionPlace> sections) => _sections = sections;

    /// <summary>A section with its ends, mm; not a number where its shaft does not say where it begins.</summary>
    internal sealed record SectionPlace(string Key, string Name, ShaftSectionSpec Spec, double From, double To);

    public bool IsEmpty => _sections.IsEmpty;

    /// <summary>Where the shafts of the body begin and end, mm; not a number where that is not stated.</summary>
    public (double From, double To) Ends => (_sections.Min(static section => section.From), _sections.Max(static section => section.To));

    public static ShaftPlaces On(GearboxSpec spec, string body)
    {
        var places = ImmutableArray.CreateBuilder<SectionPlace>();
        foreach (var shaft in spec.Shafts.Entries.Where(shaft => shaft.Body.Value == body))
        {
            var from = shaft.From?.Value.Coherent ?? double.NaN;
            foreach (var section in shaft.Sections.Entries)
            {
                var to = from + section.Length.Value.Coherent;
                var name = $"shafts.{shaft.Name.Value}";
                places.Add(new($"{name}.sections.{section.Name.Value}", $"{name}.{section.Name.Value}", section, from, to));
                from = to;
            }
        }

        return new(places.ToImmutable());
    }

    /// <summary>The section of that name; without a name that of the nearest nominal size, of several that with the same tolerance; null when there is none.</summary>
    public SectionPlace? Named(Stated<string>? name, Stated<Toleranced> size) => name is null
        ? _sections.MinBy(section => (
            Math.Abs(section.Spec.Outside.Value.Nominal.Coherent - size.Value.Nominal.Coherent),
            section.Spec.Outside.Value.Tolerance == size.Value.Tolerance ? 0 : 1))
        : _sections.FirstOrDefault(section => section.Name == name.Value);

    /// <summary>The subject of a section, or null.</summary>
    public static Subject? SubjectOf(AnalysisContext context, SectionPlace? section) =>
        section is null ? null : context.Find(SubjectKinds.ShaftSection, section.Name);

    /// <summary>The section of that name on the shafts of the body, or null.</summary>
    public static SectionPlace? Named(GearboxSpec spec, string body, Stated<string>? name) =>
        name is null ? null : On(spec, body)._sections.FirstOrDefault(section => section.Name == name.Value);

    /// <summary>The section that a bearing sits on: that which it names, else that at its place; null where neither says.</summary>
    public static SectionPlace? Under(GearboxSpec spec, BearingSpec bearing) => bearing.At is not null
        ? Named(spec, bearing.Shaft.Value, bearing.At)
        : bearing.AxialPosition is { } place ? On(spec, bearing.Shaft.Value).At(place.Value.Coherent) : null;

    /// <summary>The pins that a planet bearing sits on; none where it carries no planet.</summary>
    public static IEnumerable<PlanetPinSpec> PinsUnder(GearboxSpec spec, BearingSpec bearing) =>
        spec.Train?.Planets.Find(bearing.Housing.Value) is { } planets
            ? spec.PlanetPins.Entries.Where(pin => pin.Planets.Value == planets.Name.Value)
            : [];

    /// <summary>The section at a place, mm, or null.</summary>
    public SectionPlace? At(double place) => _sections.FirstOrDefault(section => place >= section.From && place <= section.To);

    /// <summary>The sections whose outside has that nominal size, mm.</summary>
    public IEnumerable<SectionPlace> OfSize(double size) => _sections.Where(section => Math.Abs(section.Spec.Outside.Value.Nominal.Coherent - size) < 1e-9);
}
