using System.CommandLine;
using Pawl.Cli.Sizing;
using Pawl.Specs;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl o-ring</c>: which sizes fit a gland.</summary>
internal static class ORingCommand
{
    public static Command Build(CommandContext? context)
    {
        var spec = new Argument<string>("SPEC")
        {
            Description = "A spec that declares the ring. None: the gland is stated by the options below.", Arity = ArgumentArity.ZeroOrOne,
        };
        var ring = new Argument<string>("NAME")
        {
            Description = "The name of the ring under `o_rings:` of the spec. None: its only one.", Arity = ArgumentArity.ZeroOrOne,
        };
        CheckCommand.RefuseOptions(spec);
        CheckCommand.RefuseOptions(ring);
        (string Key, Option<string> Option)[] words =
        [
            ("bore", CheckCommand.Text("--bore", "SIZE", "Diameter of the outer part, as in \"110 mm H8\". Without a tolerance: H8. Absent: that of the plug, H8.")),
            ("plug", CheckCommand.Text("--plug", "SIZE", "Diameter of the inner part, as in \"110 mm f7\". Without a tolerance: f7. Absent: that of the bore, f7.")),
            ("gland", Words("--gland", "WHERE", "The part with the groove: plug, bore, face-inside or face-outside (where the pressure is). Default: plug.", "plug", "bore", "face-inside", "face-outside")),
            ("groove", CheckCommand.Text("--groove", "SIZE", "Diameter of the bottom of the groove, or of the wall of a groove in a face. Absent: what the trade gives each cord.")),
            ("depth", CheckCommand.Text("--depth", "SIZE", "Depth of a groove in a face. Absent: what the trade gives each cord.")),
            ("width", CheckCommand.Text("--width", "SIZE", "Width of the groove. Absent: what the trade gives each cord, wider at need.")),
            ("eccentricity", CheckCommand.Text("--eccentricity", "SIZE", "How far off centre the parts can lie. Absent: until they touch.")),
            ("motion", Words("--motion", "HOW", "static, reciprocating or rotating. Default: static.", "static", "reciprocating", "rotating")),
            ("speed", CheckCommand.Text("--speed", "SPEED", "Sliding speed of a moving ring, as in \"0.1 m/s\".")),
            ("elastomer", Words("--elastomer", "CODE", "Code of ISO 1629. Default: FKM.", "NBR", "HNBR", "FKM", "FFKM", "EPDM", "VMQ", "FVMQ", "ACM")),
            ("hardness", CheckCommand.Text("--hardness", "IRHD", "Hardness of the elastomer. Default: 70.")),
            ("swell", CheckCommand.Text("--swell", "SHARE", "Maximum swell in the oil by volume, as in \"5 %\". Absent: 10 %.")),
            ("roughness_ra", CheckCommand.Text("--roughness-ra", "RA", "Roughness Ra of the surface that the ring seals on, as in \"1.6 µm\".")),
            ("pressure", CheckCommand.Text("--pressure", "PRESSURE", "Maximum gauge pressure, as in \"0.03 MPa\". Absent: 0.")),
            ("oil.running", CheckCommand.Text("--running", "TEMPERATURE", "The oil in service. Default: 65 °C.")),
            ("oil.coldest", CheckCommand.Text("--coldest", "TEMPERATURE", "The oil at its coldest. Default: -10 °C.")),
            ("oil.hottest", CheckCommand.Text("--hottest", "TEMPERATURE", "The oil at its hottest. Default: 95 °C.")),
        ];
        var cord = CheckCommand.Text("--cord", "LIST", "Cords to choose from, parted by commas, as in \"3.53 mm, 0.103 in\". Absent: all.");
        var top = new Option<int>("--top") { Description = "How many sizes to show, the best first. Default: 10.", HelpName = "N", DefaultValueFactory = _ => 10 };
        var all = CheckCommand.Flag("--all", "Show also each size that does not fit, with the reason.");
        var format = CheckCommand.Text("--format", "FORMAT", "text or json. Default: text.", "-f");
        format.AcceptOnlyFromAmong("text", "json");
        var rules = new Option<string[]>("--rules")
        {
            Description = "A folder with house rule packs, besides those of pawl.yaml. Repeatable.",
            HelpName = "DIR",
            Arity = ArgumentArity.OneOrMore,
        };
        var root = CheckCommand.Text("--root", "DIR", "The project root. Default: the folder of the nearest pawl.yaml upwards, else the working folder.");
        var command = new Command("o-ring", "Find the O-rings that fit a gland: every size of AS568 in the table, judged by the rules, best first.") { spec, ring };
        foreach (var (_, option) in words)
            command.Add(option);
        foreach (var option in (Option[])[cord, top, all, format, rules, root])
            command.Add(option);
        if (context is null)
            return command;

        command.SetAction(parsed => SizeRun.Start(context, command, new()
        {
            Spec = parsed.GetValue(spec),
            Ring = parsed.GetValue(ring),
            Words = [.. words.Where(word => parsed.GetValue(word.Option) is not null).Select(word => new StatedWord(word.Key, parsed.GetValue(word.Option)!, word.Option.Name))],
            Cords = parsed.GetValue(cord),
            Top = parsed.GetValue(top),
            All = parsed.GetValue(all),
            Json = parsed.GetValue(format) == "json",
            Rules = [.. parsed.GetValue(rules) ?? []],
            Root = parsed.GetValue(root),
        }));
        return command;
    }

    // Offered for completion only: the reader of specs says better what is wrong with another word.
    private static Option<string> Words(string name, string value, string description, params string[] words)
    {
        var option = CheckCommand.Text(name, value, description);
        option.CompletionSources.Add(words);
        return option;
    }
}
