namespace Pawl.Mechanics.Bearings;

/// <summary>What rolls, and along what.</summary>
public enum BearingKind
{
    /// <summary>Balls in deep grooves; the contact angle is zero.</summary>
    DeepGrooveBall,

    /// <summary>Balls at a contact angle.</summary>
    AngularContactBall,

    /// <summary>Cylindrical rollers; the contact angle is zero.</summary>
    CylindricalRoller,

    /// <summary>Needle rollers; the contact angle is zero.</summary>
    NeedleRoller,

    /// <summary>Rollers at a contact angle: tapered and others.</summary>
    AngledRoller,
}

/// <summary>Kind, contact angle and rows of a radial rolling bearing.</summary>
public sealed record BearingType
{
    /// <param name="kind">What rolls.</param>
    /// <param name="contactAngle">Nominal contact angle α, rad; zero but for angular contact and angled rollers.</param>
    /// <param name="rows">
    /// Rows i, 1 or 2. Two single bearings that carry as one, face to face or back to back, count as two rows.
    /// </param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public BearingType(BearingKind kind, double contactAngle = 0, int rows = 1)
    {
        if (rows is not (1 or 2))
            throw Guard.Because($"a bearing here has one or two rows; it has {rows}");

        var angled = kind is BearingKind.AngularContactBall or BearingKind.AngledRoller;
        if (angled)
            Guard.AcuteAboveZero(contactAngle, "the contact angle");
        else if (contactAngle != 0)
            throw Guard.Because($"a {Name(kind)} bearing has no contact angle; {contactAngle * 180 / Math.PI:0.###}° is stated");

        (Kind, ContactAngle, Rows) = (kind, contactAngle, rows);
    }

    public BearingKind Kind { get; }

    /// <summary>Nominal contact angle α, rad.</summary>
    public double ContactAngle { get; }

    public int Rows { get; }

    public bool IsBall => Kind is BearingKind.DeepGrooveBall or BearingKind.AngularContactBall;

    /// <summary>Whether a radial load pushes the rings apart along the axis: one row at a contact angle.</summary>
    public bool ThrustsUnderRadialLoad => ContactAngle > 0 && Rows == 1;

    /// <summary>Kind in words.</summary>
    public static string Name(BearingKind kind) => kind switch
    {
        BearingKind.DeepGrooveBall => "deep groove ball",
        BearingKind.AngularContactBall => "angular contact ball",
        BearingKind.CylindricalRoller => "cylindrical roller",
        BearingKind.NeedleRoller => "needle roller",
        BearingKind.AngledRoller => "angled roller",
        _ => throw Guard.Because($"there is no such kind of bearing"),
    };
}
