namespace Pawl.Cli.Commands;

/// <summary>Command lines that help prints, by command.</summary>
internal static class Examples
{
    public static ImmutableArray<(string Line, string Meaning)> Of(string command) => command switch
    {
        "check" =>
        [
            ("pawl check", "all specs that pawl.yaml names"),
            ("pawl check specs/tarn-180/r180.yaml", "one spec"),
            ("pawl check 'specs/**/*.yaml' --fail-on warning", "a pattern; warnings fail too"),
            ("pawl check specs --format html --output reports/out", "text here, pages there"),
            ("pawl check - --stdin-path specs/draft.yaml < draft.yaml", "from standard input, as an editor does"),
            ("pawl check --baseline baseline.yaml --prune", "known findings do not fail; forget what is mended"),
            ("pawl check --show-config", "what is in force, and where it was set"),
        ],
        "live" =>
        [
            ("pawl live", "all specs that pawl.yaml names; open the address that it prints"),
            ("pawl live specs/tarn-180/r180.yaml --port 9000", "one spec, on a port of your own"),
        ],
        "compare" =>
        [
            ("pawl compare main .", "the working folder with main"),
            ("pawl compare origin/main HEAD --format markdown", "for a comment on a pull request"),
            ("pawl compare v1.2 HEAD --fail-on-loss '10 %'", "fail when a margin loses a tenth or more"),
            ("pawl compare main specs/tarn-120", "one folder, with the same folder in main"),
            ("pawl compare reports/r180.json specs/tarn-180/r180.yaml", "a record with the spec as it is now"),
            ("pawl compare --family specs/tarn-180", "the variants of a family beside each other"),
        ],
        "baseline" =>
        [
            ("pawl baseline --output baseline.yaml", "what fails today, of all specs of pawl.yaml"),
            ("pawl baseline specs/old -o old.yaml --overwrite", "of one folder, anew"),
        ],
        "sheet" =>
        [
            ("pawl sheet inspection specs/r400.yaml --output sheets", "for a page to print"),
            ("pawl sheet part specs/r400.yaml --part gears.sun", "one part"),
            ("pawl sheet assembly specs/r400.yaml --output out", "beside the reports"),
            ("pawl check --sheets --output reports/out", "every sheet of every spec"),
        ],
        "verify" =>
        [
            ("pawl verify reports/out/tarn-180/r180.json", "which files changed, and what that changes"),
            ("pawl verify r180.json --key office.pub.pem", "the signature in r180.json.sig too"),
            ("pawl verify reports/out/r180.json --format json", "for a program"),
        ],
        "sign" =>
        [
            ("pawl sign r180.json --key office.pem", "writes r180.json.sig"),
        ],
        "explain" =>
        [
            ("pawl explain", "all names"),
            ("pawl explain mesh/tip-clearance", "a rule"),
            ("pawl explain mesh_gear.tip_clearance", "a quantity"),
            ("pawl explain duty.input.speed", "a key of a spec: meaning, unit, example, rules"),
            ("pawl explain joints", "a section of a spec"),
            ("pawl explain as568-238", "a size of O-ring"),
            ("pawl explain spec/unknown-unit", "a diagnostic"),
        ],
        "o-ring" =>
        [
            ("pawl o-ring --bore '110 mm H8'", "a static seal, with a gland for each cord"),
            ("pawl o-ring --bore '1.5 in' --cord 0.103in --all", "one cord; what fails too"),
            ("pawl o-ring --plug '40 mm' --gland bore --elastomer NBR", "groove in the outer part"),
            ("pawl o-ring --gland face-inside --groove '60 mm H9'", "groove in a face"),
            ("pawl o-ring specs/tarn-120/r400.yaml housing_joint", "the gland of a spec"),
        ],
        "sweep" =>
        [
            ("pawl sweep a.yaml --vary duty.input.torque=50..250:5", "where each rule begins to fail"),
            ("pawl sweep a.yaml --vary KEY=1,2,3 --vary OTHER=5..9:1", "two values"),
            ("pawl sweep a.yaml --vary KEY=0..0.6 -f svg -o x.svg", "margins over the value, as a figure"),
            ("pawl sweep a.yaml --vary KEY=50..250 -f csv -o x.csv", "for a spreadsheet"),
        ],
        "solve" =>
        [
            ("pawl solve a.yaml --for duty.input.torque", "the range in which all rules hold"),
            ("pawl solve a.yaml --for fits.seat.shaft --classes", "the classes of ISO 286 that do"),
            ("pawl solve a.yaml --for KEY --rule seal/gland-fill", "for one rule"),
            ("pawl solve a.yaml --for duty.oil.lubricant", "which oils of the catalogue do"),
        ],
        "schema" =>
        [
            ("pawl schema", "the names of the schemas"),
            ("pawl schema gearbox", "print one"),
            ("pawl schema --output schema", "write all"),
            ("pawl schema --output schema --check", "fail when the files there are stale"),
        ],
        "new" =>
        [
            ("pawl new r450", "specs/r450.yaml, a simple planetary stage"),
            ("pawl new r760 --kind stepped", "stepped planets"),
            ("pawl new r180 --kind pair --output specs/tarn/r180.yaml", "meshed planet pairs"),
            ("pawl new r520 --full", "with every section and key, commented out"),
            ("pawl new workshop --project", "pawl.yaml, a catalogue and schemas to start from"),
        ],
        _ =>
        [
            ("pawl new workshop --project && pawl new r450", "start a project with one spec"),
            ("pawl check", "judge it"),
            ("pawl explain mesh/tip-clearance", "what a finding means"),
        ],
    };
}
