namespace Pawl.Rules;

/// <summary>What a diagnostic of a rule pack means.</summary>
/// <param name="Code">The code that the message carries.</param>
/// <param name="Title">In a few words.</param>
/// <param name="Meaning">What was found, and why it is refused.</param>
/// <param name="Mend">What to do.</param>
/// <param name="Example">A piece of a pack that gives it.</param>
public sealed record RuleDiagnosticEntry(string Code, string Title, string Meaning, string Mend, string Example);

/// <summary>Every code of <see cref="RuleCodes"/> with its explanation.</summary>
public static class RuleDiagnosticCatalogue
{
    public static readonly ImmutableArray<RuleDiagnosticEntry> All =
    [
        new(RuleCodes.DuplicatePack, "Two packs of one name", "Two files declare a pack of the same name, so that a report could not say which a rule comes from.", "Give one of them another name.", "pack: mesh"),
        new(RuleCodes.MalformedVersion, "Version is not three numbers", "A pack has a version of its own, which the record keeps.", "Write three numbers with points between.", "version: 1"),
        new(RuleCodes.EmptyFolder, "Folder without packs", "A folder that should add house rules holds no pack, so it adds none.", "Name the folder whose *.yaml files are the packs, or take it out.", "rules: [rules]"),
        new(RuleCodes.MissingFolder, "No such folder", "A folder with rule packs that the project names does not exist.", "Correct the name; it is counted from the project root.", "rules: [house-rules]"),
        new(RuleCodes.OutsideRoot, "Outside the project", "A folder or a link leads out of the project root, where a change would go unnoticed.", "Keep rule packs inside the project.", "rules: [../rules]"),
        new(RuleCodes.UnreadableFile, "File cannot be read", "A pack cannot be opened, or is far too large.", "Check the file and its permissions.", "rules/house.yaml"),

        new(RuleCodes.DuplicateId, "Rule declared twice", "Two rules have the same id, or one rule is overridden twice.", "Rename one, or override the shipped rule with `override: true` and a reason.", "id: mesh/contact-ratio"),
        new(RuleCodes.MalformedId, "Not an id", "An id is a domain and a name, in small letters, digits and hyphens.", "Write it like mesh/tip-clearance.", "id: TipClearance"),
        new(RuleCodes.CannotWeaken, "Rule that a house cannot weaken", "The rule guards what can neither be made, assembled nor turned, or a contradiction; no concession covers it and no house may pass what it refuses.", "Keep the shipped limit, severity and condition, or tighten them.", "id: train/locked\noverride: true\nseverity: note"),
        new(RuleCodes.IdleOverride, "Override that changes nothing", "Limit, severity and condition are those of the shipped rule.", "Remove the override, or correct what it should change.", "override: true\nat_least: 1.2"),
        new(RuleCodes.MissingApprover, "Override without an approver", "The record names who agreed to each deviation from the shipped packs.", "Add `approved_by` with a person or an office.", "override: true\nreason: Our mounts carry noise well."),
        new(RuleCodes.MissingMend, "No way to mend", "A rule that only complains leaves its reader alone.", "Say in one sentence what to change in the spec.", "why: Tips collide."),
        new(RuleCodes.MissingReason, "Override without a reason", "The record lists every deviation from the shipped packs with its reason.", "Say why this house differs.", "override: true"),
        new(RuleCodes.MissingSource, "No source", "Each limit says where its method and its number come from, even if that is common practice.", "Add `source` with `method` and `limit`.", "at_least: 1.2"),
        new(RuleCodes.MissingWhy, "No reason", "Each rule names the failure that it keeps away.", "Say in one sentence what breaks.", "mend: Shorten the tip."),
        new(RuleCodes.OverrideKey, "Key that an override cannot change", "An override changes limits, severity and condition, so that the rule still measures the same.", "Add a rule with an id of its own.", "override: true\nmeasure: teeth"),
        new(RuleCodes.ThinReason, "Reason without substance", "A reason of a word or two, or one that repeats the rule, tells a reader nothing.", "Say in a sentence what is different here: the use, the material, a test, an agreement.", "reason: n/a"),
        new(RuleCodes.UnknownRule, "Unknown rule", "An override, or the key `explains`, names a rule that there is not; only shipped rules can be overridden.", "Correct the id, or remove `override`.", "id: mesh/contact-ration"),
        new(RuleCodes.UnknownSubject, "Unknown subject", "No kind of subject has this name.", "Take one of the names that the message lists.", "applies_to: wheel"),
        new(RuleCodes.UnsureError, "Error on a remembered limit", "A rule that stops a release may not rest on a number that nobody looked up.", "Check the source and say `certainty: published`, or make the rule a warning.", "severity: error\nsource: {method: ISO 6336-3, limit: ISO 6336-3}"),
        new(RuleCodes.Weakened, "Shipped rule is weakened", "A house rule passes what the shipped rule refuses, or a change of limit or condition cannot be compared and counts as weaker for safety. Verdict, record and reports count it.", "Nothing to mend if it is meant; reason and approver stand in the record.", "override: true\nat_least: 1.1"),

        new(RuleCodes.ConflictingLimits, "Limits that exclude each other", "`equals` and `one_of` stand alone.", "Keep one kind of limit.", "equals: 1\nat_least: 0"),
        new(RuleCodes.EmptyWindow, "Window without room", "The greatest permitted value is below the least.", "Exchange the two.", "at_least: 30 %\nat_most: 12 %"),
        new(RuleCodes.MalformedTable, "Table cannot be read", "A table of limits says `by` which text or truth quantity it goes, and has a row for each category.", "Write `{by: surface, case-hardened: 0.4, default: 0.2}`.", "at_least: {case-hardened: 0.4}"),
        new(RuleCodes.MissingLimit, "No limit", "A rule without a limit judges nothing.", "Give `at_least`, `at_most`, `equals` or `one_of`.", "measure: teeth"),
        new(RuleCodes.NeverApplies, "Condition that never holds", "The condition contradicts itself, or asks for a word or a value that the quantity never has.", "Correct the condition, or remove the rule.", "when: kind == 'internal' and kind == 'external'"),
        new(RuleCodes.NeverFails, "Limit that never fails", "No value can break the limit: it lies at or beyond the least or greatest that the measure can have, permits every word, or compares the measure with itself.", "Give a limit that a bad design breaks, or leave it out.", "measure: abs(profile_shift)\nat_least: 0"),
        new(RuleCodes.TableTooDeep, "Table nested too deep", "A table inside a table inside a table is no longer read by anyone.", "Split the rule by a `when`.", "at_least: {by: kind, external: {by: surface, …}}"),
        new(RuleCodes.UnknownWord, "Word that a quantity never has", "A text quantity is compared with a word, or a table has a row for one, that it never has.", "Take one of the words that the message lists.", "when: kind == 'interal'"),

        new(RuleCodes.AppliedToNothing, "House rule that applied to nothing", "In no spec of the run was there a subject that meets the condition and has what the rule measures.", "Check `applies_to`, `when` and `measure`, or judge a spec that the rule is for.", "when: count > 12"),

        new(RuleCodes.DimensionMismatch, "Dimensions do not fit", "Lengths cannot be compared with or added to angles, ratios or torques.", "Give the amount with a unit of what is measured.", "measure: tip_clearance\nat_least: 0.15"),
        new(RuleCodes.ExpressionSyntax, "Expression cannot be read", "A value or an operator is missing, or a sign has no meaning here.", "Correct the expression at the place shown.", "at_least: 0.5 *"),
        new(RuleCodes.ExpressionTooLong, "Expression too long", "A long formula belongs into the analysis, where tests reach it.", "Name a computed quantity.", "measure: ((((…))))"),
        new(RuleCodes.KindMismatch, "Number, text and truth mixed", "A text cannot be more than a number, nor a truth value be added.", "Compare like with like; a text stands in quotes.", "when: kind > 1"),
        new(RuleCodes.NotAnExpression, "Not an expression", "Here stands a quantity or an expression of quantities.", "Write a name, an amount or a formula.", "measure: [teeth]"),
        new(RuleCodes.UnknownFunction, "Unknown function", "Expressions know a few functions only.", "Take one that the message lists.", "measure: log(teeth)"),
        new(RuleCodes.UnknownQuantity, "Unknown quantity", "The subject has no quantity of this name.", "Take the name that the message proposes.", "measure: tip_clearence"),
        new(RuleCodes.UnknownRole, "Unknown relation", "The subject is not related to anything under this name.", "Take one that the message lists.", "measure: wheel.module"),
        new(RuleCodes.UnknownUnit, "Unknown unit", "The word behind a number is no unit.", "Correct the unit, or put `*` before a quantity.", "at_least: 0.5 milimetre"),

        new(RuleCodes.MalformedExample, "Example cannot be read", "An example gives quantities of the subject with values of their kind and unit.", "Write `{given: {tip_clearance: 0.5 mm}, outcome: conforms}`.", "given: {tip_clearance: long}"),
        new(RuleCodes.WrongExample, "An example comes out otherwise", "A house rule, put to its own example, gives another outcome or margin than the pack says.", "Work the example again by hand, then correct it or the rule.", "- {given: {tip_clearance_factor: 0.1}, outcome: conforms}"),
    ];

    /// <summary>The entry of a code, or null.</summary>
    public static RuleDiagnosticEntry? Find(string code)
    {
        foreach (var entry in All)
        {
            if (entry.Code == code)
                return entry;
        }

        return null;
    }
}
