namespace Pawl.Cli;

/// <summary>Diagnostics of the command line itself, with what each means and how to mend it.</summary>
internal static class CliCodes
{
    public const string BadKey = "cli/bad-key";
    public const string BadSignature = "cli/bad-signature";
    public const string BaselineGone = "baseline/gone";
    public const string BaselineOpen = "baseline/open";
    public const string BaselineRepeated = "baseline/repeated";
    public const string BaseNamed = "cli/base-named";
    public const string CannotRead = "cli/cannot-read";
    public const string CannotWrite = "cli/cannot-write";
    public const string GlandOpen = "cli/gland-open";
    public const string NoCatalogue = "cli/no-catalogue";
    public const string NoRecord = "cli/no-record";
    public const string NoRules = "cli/no-rules";
    public const string NoSpec = "cli/no-spec";
    public const string NothingDepends = "cli/nothing-depends";
    public const string NothingEvaluated = "cli/nothing-evaluated";
    public const string NotComparable = "cli/not-comparable";
    public const string OutsideProject = "cli/outside-project";
    public const string PortTaken = "cli/port-taken";
    public const string UnknownCord = "cli/unknown-cord";
    public const string UnknownName = "cli/unknown-name";
    public const string UnusedBase = "spec/unused-base";
    public const string Usage = "cli/usage";

    /// <summary>Code, meaning, remedy; ordered by code.</summary>
    public static readonly ImmutableArray<(string Code, string Meaning, string Mend)> All =
    [
        (BaselineGone, "A known finding of the baseline does not fail any more.", "Remove its entry, or run `pawl check --prune`."),
        (BaselineOpen, "A known finding of the baseline is not evaluated, so whether it is gone cannot be told.", "State the inputs that the report lists as missing."),
        (BaselineRepeated, "The baseline lists a finding twice.", "Keep one of the entries."),
        (BadKey, "A file holds no key that signs or verifies: PEM, ECDSA on the curve P-256.", "Give the private key to sign, the public one to verify."),
        (BadSignature, "A signature is not of that record by that key.", "Ask whoever signed for the record as it was signed, and for the key."),
        (BaseNamed, "A file without a variant was named to be judged. It is a base for others.", "Name a variant that extends it."),
        (CannotRead, "A file or folder cannot be read.", "Check that it exists and that you may read it."),
        (CannotWrite, "A report or the standard output cannot be written.", "Check the folder, its permissions and the space on the disk."),
        (GlandOpen, "A gland lacks a dimension, so that no size can be put into it.", "State the dimension, with its tolerance."),
        (NoCatalogue, "A pattern under `catalogues:` or `adapters:` in pawl.yaml matches no file.", "Mend the pattern, or take it out."),
        (NoRecord, "A file holds no record that this version reads.", "Name a record that `pawl check --format json` wrote; verify one of another version with that version."),
        (NoRules, "No rule is in force, so nothing can be judged.", "Check --rules and `rules:` in pawl.yaml."),
        (NoSpec, "No spec was found where the arguments or pawl.yaml look.", "Check the paths; a pattern that matches nothing is never a pass."),
        (NothingDepends, "No rule depends on a value that is to be varied or solved for.", "Name another key; `pawl explain KEY` lists the rules that it governs."),
        (NothingEvaluated, "Not one rule could be evaluated on a spec.", "State the inputs that the report lists as missing."),
        (NotComparable, "A side of a comparison is no file, folder, record or git revision, or it cannot be read.", "Name what is on the disk, or a revision as git writes it; the message says which."),
        (OutsideProject, "A file lies outside the project root.", "Move it into the project, or give the root with --root."),
        (PortTaken, "Nothing can be served on a port.", "Give another with --port, or end the program that has it."),
        (UnknownCord, "No O-ring of the table has that cord.", "Write cords as lengths, parted by commas: `--cord \"3.53 mm, 0.103 in\"`."),
        (UnknownName, "No rule, quantity, subject, key of a spec, size, steel or diagnostic has that name, or no O-ring of a spec.", "Run `pawl explain` for the list."),
        (Usage, "The command line cannot be understood.", "Run the command with --help."),
        (UnusedBase, "A base file is extended by no spec of this run.", "Remove it, or check the `extends:` of its variants."),
    ];
}
