namespace Pawl.Reports.Markdown;

/// <summary>What the tables of strength show: quantities by name, and rules for their margins.</summary>
internal static class StrengthRows
{
    public static readonly ImmutableArray<string> Mesh =
    [
        "tangential_force_heaviest", "line_load", "load_sharing", "dynamic_factor", "resonance_ratio", "face_load_factor", "transverse_load_factor",
        "nominal_contact_stress", "film_ratio", "flash_temperature",
    ];

    public static readonly ImmutableArray<string> Gears =
    [
        "load_cycles", "contact_stress", "contact_strength", "contact_life_factor", "contact_safety", "rating/contact-safety",
        "peak_contact_safety", "rating/peak-contact", "contact_life", "form_factor", "stress_correction", "mean_stress_factor", "root_stress",
        "bending_strength", "root_life_factor", "bending_safety", "rating/bending-safety", "peak_bending_safety", "rating/peak-bending",
        "bending_life",
    ];
}
