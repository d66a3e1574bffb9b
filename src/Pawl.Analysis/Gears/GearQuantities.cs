using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Gears;

/// <summary>What is known of one toothed gear by itself.</summary>
public static class GearQuantities
{
    private const string Iso = "ISO 21771";

    public static readonly QuantityKind Teeth = new() { Name = "teeth", Symbol = "z", Title = "Number of teeth", Certainty = Certainty.Declared };

    public static readonly QuantityKind Kind = new()
    {
        Name = "kind", Title = "External or internal", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
        Formula = "internal where the spec says `internal: true`", Source = "the spec",
    };

    public static readonly QuantityKind OnPlanet = new()
    {
        Name = "on_planet", Title = "Sits on a planet", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Module = new()
    {
        Name = "module", Symbol = "m_n", Title = "Normal module", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind PressureAngle = new()
    {
        Name = "pressure_angle", Symbol = "α_n", Title = "Normal pressure angle", Unit = Units.Degree, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind HelixAngle = new()
    {
        Name = "helix_angle", Symbol = "β", Title = "Helix angle", Unit = Units.Degree, Certainty = Certainty.Declared,
        Scale = Math.PI / 180,
    };

    public static readonly QuantityKind ProfileShift = new()
    {
        Name = "profile_shift", Symbol = "x", Title = "Profile shift coefficient", Certainty = Certainty.Declared,
        Note = "ISO 21771 sign: positive shift thickens the tooth, internal gears included",
    };

    public static readonly QuantityKind Addendum = new()
    {
        Name = "addendum", Symbol = "h_aP*", Title = "Addendum coefficient of the basic rack", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Dedendum = new()
    {
        Name = "dedendum", Symbol = "h_fP*", Title = "Dedendum coefficient of the basic rack", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RootFillet = new()
    {
        Name = "root_fillet", Symbol = "ρ_fP*", Title = "Root fillet coefficient of the basic rack", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind FaceWidth = new()
    {
        Name = "face_width", Symbol = "b", Title = "Face width", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind AxialPlace = new()
    {
        Name = "axial_place", Title = "Axial place of the middle of the face", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind TransversePressureAngle = new()
    {
        Name = "transverse_pressure_angle", Symbol = "α_t", Title = "Transverse pressure angle", Unit = Units.Degree,
        Formula = "α_t = atan(tan α_n / cos β)", Symbols = ["α_n", "β"], Source = Iso,
    };

    public static readonly QuantityKind BaseHelixAngle = new()
    {
        Name = "base_helix_angle", Symbol = "β_b", Title = "Base helix angle", Unit = Units.Degree,
        Formula = "β_b = asin(sin β · cos α_n)", Symbols = ["β", "α_n"], Source = Iso, Scale = Math.PI / 180,
    };

    public static readonly QuantityKind ReferenceDiameter = new()
    {
        Name = "reference_diameter", Symbol = "d", Title = "Reference diameter", Unit = Units.Millimetre,
        Formula = "d = |z| · m_n / cos β", Symbols = ["z", "m_n", "β"], Source = Iso,
    };

    public static readonly QuantityKind BaseDiameter = new()
    {
        Name = "base_diameter", Symbol = "d_b", Title = "Base diameter", Unit = Units.Millimetre,
        Formula = "d_b = d · cos α_t", Symbols = ["d", "α_t"], Source = Iso,
    };

    public static readonly QuantityKind TipDiameter = new()
    {
        Name = "tip_diameter", Symbol = "d_a", Title = "Tip diameter", Unit = Units.Millimetre,
        Formula = "d_a = |d + 2·m_n·(x + h_aP*)|, or as declared", Symbols = ["z", "d", "m_n", "x", "h_aP*"], Source = Iso,
    };

    public static readonly QuantityKind ActiveTipDiameter = new()
    {
        Name = "active_tip_diameter", Symbol = "d_Na", Title = "Tip diameter less the chamfer", Unit = Units.Millimetre,
        Formula = "d_Na = d_a ∓ 2·h_K (external −, internal +)", Symbols = ["d_a", "h_K"], Source = Iso,
    };

    public static readonly QuantityKind TipChamfer = new()
    {
        Name = "tip_chamfer", Symbol = "h_K", Title = "Radial height of the tip chamfer", Unit = Units.Millimetre,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RootDiameter = new()
    {
        Name = "root_diameter", Symbol = "d_f", Title = "Root diameter", Unit = Units.Millimetre,
        Formula = "d_f = |d + 2·m_n·(x − h_fP*)|; a ring whose cutter is stated: d_f0; or as declared", Source = Iso,
    };

    public static readonly QuantityKind ToothDepth = new()
    {
        Name = "tooth_depth", Symbol = "h", Title = "Tooth depth", Unit = Units.Millimetre,
        Formula = "h = |d_a − d_f| / 2", Symbols = ["d_a", "d_f"], Source = Iso,
    };

    public static readonly QuantityKind TipThickness = new()
    {
        Name = "tip_thickness", Symbol = "s_an", Title = "Normal tooth thickness at the tip", Unit = Units.Millimetre,
        Formula = "s_an = d_a · ((π/2 + 2·x·tan α_n)/z + inv α_t − inv α_at) · cos β_a, cos α_at = d_b/d_a",
        Symbols = ["z", "d_a", "d", "d_b", "x", "β", "α_n", "α_t"], Source = Iso,
        Note = "nominal tooth, the thickness allowance not taken off; no tip relief",
    };

    public static readonly QuantityKind TipThicknessFactor = new()
    {
        Name = "tip_thickness_factor", Symbol = "s_an/m_n", Title = "Tip thickness per module",
        Formula = "s_an / m_n", Symbols = ["s_an", "m_n"], Source = Iso,
    };

    public static readonly QuantityKind LeastProfileShift = new()
    {
        Name = "least_profile_shift", Symbol = "x_min", Title = "Least profile shift without undercut",
        Formula = "x_min = h_fP* − ρ_fP*·(1 − sin α_n) − z·sin²α_t/(2·cos β)",
        Symbols = ["z", "β", "α_n", "α_t", "h_fP*", "ρ_fP*"], Source = Iso,
        Note = "generation by a rack whose tip is the basic rack's root",
    };

    public static readonly QuantityKind UndercutMargin = new()
    {
        Name = "undercut_margin", Symbol = "x − x_min", Title = "Profile shift above the limit of undercut",
        Formula = "x − x_min", Symbols = ["x", "x_min"], Source = Iso, Scale = 0.1,
    };

    public static readonly QuantityKind RootFormDiameter = new()
    {
        Name = "root_form_diameter", Symbol = "d_Ff", Title = "Root form diameter", Unit = Units.Millimetre,
        Formula = "d_Ff = √( (d·sin α_t − 2·m_n·(h_fP* − x − ρ_fP*·(1 − sin α_n))/sin α_t)² + d_b² ); a ring whose cutter is stated: d_Ff0; or as declared",
        Source = Iso, Note = "by a rack tool, by the cutter of a ring, or as the maker of the tool states it",
    };

    public static readonly QuantityKind ThicknessAllowance = new()
    {
        Name = "thickness_allowance", Symbol = "E_sn", Title = "Tooth thickness allowance", Unit = Units.Millimetre,
        Certainty = Certainty.Declared, Scale = 0.1,
    };

    public static readonly QuantityKind SpanTeeth = new()
    {
        Name = "span_teeth", Symbol = "k", Title = "Number of teeth spanned",
        Formula = "k nearest to contact at the V-circle", Symbols = ["z", "m_n", "α_n", "α_t", "β_b", "x"], Source = Iso,
    };

    public static readonly QuantityKind BaseTangentLength = new()
    {
        Name = "base_tangent_length", Symbol = "W_k", Title = "Base tangent length", Unit = Units.Millimetre,
        Formula = "W_k = m_n·cos α_n·((k − ½)·π + z·inv α_t) + 2·x·m_n·sin α_n + E_sn·cos α_n",
        Symbols = ["k", "z", "m_n", "α_n", "α_t", "x", "E_sn"], Source = Iso,
        Note = "nominal at the middle of the thickness allowance",
    };

    public static readonly QuantityKind SpanMeasurable = new()
    {
        Name = "span_measurable_width", Title = "Face width left for the anvils", Unit = Units.Millimetre,
        Formula = "b − W_k·sin β_b", Symbols = ["b", "W_k", "β_b"], Source = Iso, Scale = 1.5,
    };

    public static readonly QuantityKind BallDiameter = new()
    {
        Name = "ball_diameter", Symbol = "D_M", Title = "Diameter of the measuring balls", Unit = Units.Millimetre,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind BallCentreDiameter = new()
    {
        Name = "ball_centre_diameter", Symbol = "d_K", Title = "Diameter of the circle through the ball centres", Unit = Units.Millimetre,
        Formula = "d_K = d_b / cos α_Kt, inv α_Kt = inv α_t + D_M/(z·m_n·cos α_n) − (π/2 − 2·x·tan α_n)/z + E_sn/(z·m_n)",
        Symbols = ["z", "d_b", "m_n", "α_n", "α_t", "x", "D_M", "E_sn"], Source = Iso,
        Note = "nominal at the middle of the thickness allowance",
    };

    public static readonly QuantityKind DimensionOverBalls = new()
    {
        Name = "dimension_over_balls", Symbol = "M_dK", Title = "Dimension over balls (internal: between balls)", Unit = Units.Millimetre,
        Formula = "M_dK = d_K ± D_M; for odd z d_K·cos(π/(2·z)) ± D_M (internal −)", Symbols = ["z", "d_K", "D_M"], Source = Iso,
        Note = "nominal at the middle of the thickness allowance",
    };

    public static readonly QuantityKind BallProud = new()
    {
        Name = "ball_proud", Title = "Height by which the ball stands proud of the tip", Unit = Units.Millimetre, Scale = 0.1,
        Formula = "(d_K + D_M − d_a)/2 (internal: (d_a + D_M − d_K)/2)", Symbols = ["d_K", "D_M", "d_a"], Source = Iso,
    };

    public static readonly QuantityKind BallRootClearance = new()
    {
        Name = "ball_root_clearance", Title = "Clearance of the ball from the root", Unit = Units.Millimetre, Scale = 0.1,
        Formula = "(d_K − D_M − d_f)/2 (internal: (d_f − d_K − D_M)/2)", Symbols = ["d_K", "D_M", "d_f"], Source = Iso,
    };

    public static readonly QuantityKind RimThickness = new()
    {
        Name = "rim_thickness", Symbol = "s_R", Title = "Rim thickness", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ThermalExpansion = new()
    {
        Name = "thermal_expansion", Symbol = "α_g", Title = "Thermal expansion of the gear's material",
        Unit = Units.PerKelvin, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RimRatio = new()
    {
        Name = "rim_ratio", Symbol = "s_R/h", Title = "Rim thickness per tooth depth (internal: per module)",
        Formula = "s_R / h (internal: s_R / m_n)", Symbols = ["s_R", "h or m_n"], Source = "ISO 6336-3, rim thickness factor",
        Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind Surface = new()
    {
        Name = "surface", Title = "Condition of the flanks", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Teeth, Kind, OnPlanet, Module, PressureAngle, HelixAngle, ProfileShift, Addendum, Dedendum, RootFillet, FaceWidth, AxialPlace,
        ThicknessAllowance, TipChamfer, Surface, TransversePressureAngle, BaseHelixAngle, ReferenceDiameter, BaseDiameter, TipDiameter,
        ActiveTipDiameter, RootDiameter, ToothDepth, TipThickness, TipThicknessFactor, LeastProfileShift, UndercutMargin,
        RootFormDiameter, SpanTeeth, BaseTangentLength, SpanMeasurable, BallDiameter, BallCentreDiameter, DimensionOverBalls, BallProud, BallRootClearance, RimThickness, RimRatio, ThermalExpansion,
    ];
}
