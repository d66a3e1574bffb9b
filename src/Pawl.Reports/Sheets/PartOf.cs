namespace Pawl.Reports.Sheets;

/// <summary>Which part a dimension of the spec belongs to.</summary>
internal sealed class PartOf(Declared declared)
{
    /// <summary>The id of the part that the value at a path is cut into.</summary>
    /// <param name="path">Path of an input.</param>
    public string Input(string path)
    {
        var keys = path.Split('.');
        var name = keys.Length > 1 ? keys[1] : "";
        var section = $"{keys[0]}.{name}";
        var key = keys.Length > 2 ? keys[2] : "";
        string At(string of) => declared[$"{section}.{of}"];
        return keys[0] switch
        {
            "train" when name == "gears" && keys.Length > 2 => $"gears.{keys[2]}",
            "train" when name is "bodies" or "planets" && keys.Length > 2 => Named(keys[2]),
            "train" when name.StartsWith("meshes[", StringComparison.Ordinal) => CentresOf(section),
            "bearings" when key == "housing_seat" => Named(At("housing")),
            "bearings" => PinUnder(At("housing")) ?? Named(At("shaft")),
            "shafts" => Named(At("body")),
            "splines" => key == "hub" ? $"{section}.hub" : Named(At("body")),
            "parallel_keys" => key.StartsWith("hub", StringComparison.Ordinal) ? $"{section}.hub" : Named(At("carries")),
            "interfaces" => key == "spline" ? Named(At("body")) : Named(declared["train.fixed[1]"]),
            "joints" when key.StartsWith("clamped", StringComparison.Ordinal) => $"{section}, {declared[$"{section}.{key}.part"]}",
            "joints" when key == "shaft" => Named(declared[$"bearings.{At("bearing")}.shaft"]) is { Length: > 0 } shaft ? shaft : section,
            "dowels" when key.StartsWith("parts", StringComparison.Ordinal) => $"{section}, {declared[$"{section}.{key}.part"]}",
            "retaining_rings" => Named(At("on")),
            "planet_pins" when key is "cheek_hole" or "cheek" or "span" => Named(declared[$"train.planets.{At("planets")}.carrier"]),
            "lip_seals" => Named(key is "bore" or "lead_in" ? At("housing") : At("shaft")),
            "fits" when key is "shaft" or "shaft_rz" or "shaft_bore" => OfShaft(section),
            "fits" => Named(At("hole_part")),
            "stacks" when keys.Length > 4 => Named(declared[$"{section}.contributors.{keys[3]}.part"]) is { Length: > 0 } part ? part : section,
            _ => section,
        } is { Length: > 0 } found ? found : section.TrimEnd('.');
    }

    /// <summary>The part with the shaft of a fit, <c>fits.register</c>.</summary>
    public string OfShaft(string fit) =>
        declared[$"{fit}.pin"] is { Length: > 0 } pin ? $"planet_pins.{pin}" : Named(declared[$"{fit}.shaft_part"]) is { Length: > 0 } part ? part : $"{fit}, shaft";

    /// <summary>The id of a body, gear or pin of that name; a planet with one gear is that gear; another word is the part itself.</summary>
    public string Named(string name)
    {
        if (name.Length == 0)
            return "";
        if (declared.Names("train.planets").Contains(name))
            return declared.Names("train.gears").Where(gear => declared[$"train.gears.{gear}.on"] == name).ToArray() is [var only] ? $"gears.{only}" : $"bodies.{name}";
        if (declared.Names("train.gears").Contains(name))
            return $"gears.{name}";
        return declared.Names("train.bodies").Contains(name) || declared["train.input"] == name || declared["train.output"] == name
            || declared.List("train.fixed").Contains(name) || declared.Names("train.gears").Any(gear => declared[$"train.gears.{gear}.on"] == name)
            ? $"bodies.{name}"
            : name;
    }

    private string? PinUnder(string planet) =>
        declared.Names("planet_pins").FirstOrDefault(pin => declared[$"planet_pins.{pin}.planets"] == planet && planet.Length > 0) is { } found ? $"planet_pins.{found}" : null;

    // The holes for planets are bored in their carrier; axes that stand still are bored in what stands still.
    private string CentresOf(string mesh)
    {
        foreach (var gear in declared.List($"{mesh}.gears"))
        {
            if (declared[$"train.planets.{declared[$"train.gears.{gear}.on"]}.carrier"] is { Length: > 0 } carrier)
                return Named(carrier);
        }

        return Named(declared["train.fixed[1]"]);
    }
}
