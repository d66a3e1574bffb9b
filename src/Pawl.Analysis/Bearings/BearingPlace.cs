using Pawl.Mechanics.Bearings;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Bearings;

/// <summary>A bearing in its place: what the spec says of it and what statics makes of that.</summary>
internal sealed class BearingPlace
{
    public BearingPlace(BearingSpec spec, BearingTypeSpec? entry)
    {
        (Spec, Entry) = (spec, entry);
        if (entry is null)
            return;
        try
        {
            Type = TypeOf(entry, Count);
        }
        catch (OutsideValidityException refused)
        {
            Refusal = refused.Message;
        }
    }

    public BearingSpec Spec { get; }

    /// <summary>Its entry in the catalogue; null when the catalogue has none, which the reader has told.</summary>
    public BearingTypeSpec? Entry { get; }

    /// <summary>Kind, angle and rows; null with a <see cref="Refusal"/>.</summary>
    public BearingType? Type { get; }

    public string? Refusal { get; }

    /// <summary>Kind and angle of one of the like bearings side by side; null with a <see cref="Refusal"/>.</summary>
    public BearingType? Single => Type is null ? null : new(Type.Kind, Type.ContactAngle, Entry?.Rows?.Value ?? 1);

    public string Name => Spec.Name.Value;

    /// <summary>Like bearings side by side.</summary>
    public int Count => Spec.Rows?.Value ?? 1;

    public string Duty => Spec.Axial?.Value ?? "floating";

    /// <summary>The support that it is, once its axial place is known.</summary>
    public BodySupport? Support { get; set; }

    /// <summary>The body that it holds.</summary>
    public string? Holds { get; set; }

    /// <summary>Loads by cause; null where they are not known.</summary>
    public SupportLoad? Load { get; set; }

    /// <summary>Why its loads are not known.</summary>
    public ImmutableArray<string> Reasons { get; set; } = [];

    /// <summary>Its partner of a pair set against each other.</summary>
    public BearingPlace? Partner { get; set; }

    /// <summary>Axial force of the teeth that its arrangement hands to it, N, in the forward direction of drive.</summary>
    public double AxialTeeth { get; set; }

    /// <summary>Axial forces that stay, in either direction, N.</summary>
    public double AxialLasting { get; set; }

    /// <summary>Couple that it bears as the only bearing of a planet, N·mm at the rated torque.</summary>
    public double? Tilt { get; set; }

    /// <summary>Where its line of force meets the axis, from the middle of the bearing, mm.</summary>
    public double Offset => Type is not { ThrustsUnderRadialLoad: true } type || Entry is null || Duty is not ("plus" or "minus")
        ? 0
        : (Duty == "plus" ? -1 : 1) * (Entry.Bore.Value.Coherent + Entry.Outside.Value.Coherent) / 4 * Math.Tan(type.ContactAngle);

    public static BearingKind KindOf(string kind) => kind switch
    {
        "deep-groove-ball" => BearingKind.DeepGrooveBall,
        "angular-contact-ball" => BearingKind.AngularContactBall,
        "cylindrical-roller" => BearingKind.CylindricalRoller,
        "tapered-roller" => BearingKind.AngledRoller,
        _ => BearingKind.NeedleRoller,
    };

    private static BearingType TypeOf(BearingTypeSpec entry, int count)
    {
        var kind = KindOf(entry.Kind.Value);
        var angle = entry.ContactAngle?.Value.Coherent ?? 0;
        if (kind is BearingKind.AngularContactBall or BearingKind.AngledRoller && entry.ContactAngle is null)
            throw new OutsideValidityException($"bearings.{entry.Name.Value}.contact_angle of the catalogue is not stated");

        var rows = entry.Rows?.Value ?? 1;
        var angled = kind is BearingKind.AngularContactBall or BearingKind.AngledRoller;
        return new(kind, angle, angled ? Math.Min(2, rows * count) : rows);
    }
}
