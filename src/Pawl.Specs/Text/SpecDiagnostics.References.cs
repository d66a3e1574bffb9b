namespace Pawl.Specs.Text;

/// <summary>Values that must suit each other, names that must have been declared.</summary>
internal static partial class SpecDiagnostics
{
    public static Diagnostic UnknownBody(SourceSpan span, string path, string found, string? nearest, List<string> known) =>
        Error(
            DiagnosticCodes.UnknownBody, span, $"{path}: the train has no body or planet set `{Short(found)}`.",
            nearest is not null ? $"Did you mean `{nearest}`?" : $"Declare it under `bodies` or `planets`. Known: {string.Join(", ", known)}.");

    public static Diagnostic IdleEnd(SourceSpan span, string path, string found, string? nearest) =>
        Error(
            DiagnosticCodes.UnknownBody, span, $"{path}: no gear sits on `{Short(found)}`, and it carries no planets.",
            nearest is not null ? $"Did you mean `{nearest}`?" : "Name the body that a gear sits on, or a carrier.");

    public static Diagnostic UnknownGear(SourceSpan span, string path, string found, string? nearest, List<string> known) =>
        Error(
            DiagnosticCodes.UnknownGear, span, $"{path}: the train has no gear `{Short(found)}`.",
            nearest is not null ? $"Did you mean `{nearest}`?" : known.Count == 0 ? "Declare it under `gears`." : $"Gears: {string.Join(", ", known)}.");

    public static Diagnostic ReverseOfOne(SourceSpan span, string path, string found) =>
        Error(
            DiagnosticCodes.OneWay, span, $"{path}: the drive turns one way, so it has no reverse torque, but `{Short(found)}` stands here.",
            "Write `direction: both`, or leave the reverse torque out.");

    public static Diagnostic SelfSupported(SourceSpan span, string path, string body) =>
        Error(
            DiagnosticCodes.SelfCarried, span, $"{path}: `{body}` cannot hold both rings of a bearing.",
            "Name the body that the outer ring sits in.");

    public static Diagnostic SelfSealed(SourceSpan span, string path, string body) =>
        Error(
            DiagnosticCodes.SelfCarried, span, $"{path}: `{body}` cannot be the shaft and the housing of a seal.",
            "Name the body that holds the seal.");

    public static Diagnostic SelfFitted(SourceSpan span, string path, string part) =>
        Error(
            DiagnosticCodes.SelfCarried, span, $"{path}: `{part}` cannot be the hole and the shaft of a fit.",
            "Name the other part.");

    public static Diagnostic NoCase(SourceSpan span, string path, string treatment) =>
        Error(
            DiagnosticCodes.NoCase, span, $"{path}: a {treatment} gear has no case.",
            "Leave it out, or state the treatment that makes the case.");

    public static Diagnostic SelfMesh(SourceSpan span, string path, string gear) =>
        Error(DiagnosticCodes.SelfMesh, span, $"{path}: the gear `{gear}` cannot mesh with itself.", "Name the gear that it meshes with.");

    public static Diagnostic InternalPair(SourceSpan span, string path, string first, string second) =>
        Error(
            DiagnosticCodes.InternalPair, span, $"{path}: `{first}` and `{second}` are both internal and cannot mesh.",
            "An internal gear meshes with an external one. Check `internal: true`.");

    public static Diagnostic RepeatedMesh(SourceSpan span, string path, string first, string second, SourceSpan before) =>
        Error(
            DiagnosticCodes.RepeatedMesh, span, $"{path}: `{first}` and `{second}` mesh already (line {before.Start.Line}).",
            "Remove this mesh, or name the other gear.");

    public static Diagnostic SelfCarried(SourceSpan span, string path, string name) =>
        Error(DiagnosticCodes.SelfCarried, span, $"{path}: the planet set `{name}` cannot carry itself.", "Name the body that carries it.");

    public static Diagnostic DuplicateName(SourceSpan span, string name, SourceSpan first) =>
        Error(
            DiagnosticCodes.DuplicateName, span, $"`{name}` is a planet set as well (line {first.Start.Line}); a name stands for one of them.",
            "Rename the body or the planet set.");

    public static Diagnostic NotInCatalogue(SourceSpan span, string path, string kind, string id, string? nearest) =>
        Error(
            DiagnosticCodes.NotInCatalogue, span, $"{path}: no catalogue holds the {kind} `{Short(id)}`.",
            nearest is not null ? $"Did you mean `{nearest}`?" : $"Add it to a catalogue file, and name that file in `pawl.yaml` under `catalogues`.");

    public static Diagnostic UnknownAdapter(SourceSpan span, string path, string name, string? nearest) =>
        Error(
            DiagnosticCodes.NotInCatalogue, span, $"{path}: no adapter file declares `{Short(name)}`.",
            nearest is not null ? $"Did you mean `{nearest}`?" : "Add its file, and name that file in `pawl.yaml` under `adapters`.");

    public static Diagnostic UnknownName(SourceSpan span, string path, string kind, string found, string? nearest, params ReadOnlySpan<string> declared) =>
        Error(
            DiagnosticCodes.UnknownName, span, $"{path}: the spec declares no {kind} `{Short(found)}`.",
            nearest is not null ? $"Did you mean `{nearest}`?" : declared.IsEmpty ? null : $"It declares {string.Join(", ", declared)}.");

    public static Diagnostic OpenChain(SourceSpan span, string path, string message, string hint) =>
        Error(DiagnosticCodes.OpenChain, span, $"{path}: {message}", hint);

    public static Diagnostic WrongSign(SourceSpan span, string path, string found, bool opens) =>
        Error(
            DiagnosticCodes.WrongSign, span, $"{path} is `{Short(found)}`, but by its faces this size {(opens ? "opens" : "closes")} the gap.",
            "Leave the coefficient out, or exchange `from` and `to`: `from` is the lower face along the axis.");

    public static Diagnostic ExclusiveKeys(SourceSpan span, string path, string first, string second) =>
        Error(DiagnosticCodes.ExclusiveKeys, span, $"{path} states both `{first}` and `{second}`, which say the same.", "Keep one of them.");

    public static Diagnostic MissingHand(SourceSpan span, string path) =>
        Error(DiagnosticCodes.MissingKey, span, $"{path} is helical and lacks the key `hand`.", "Add `hand: left` or `hand: right`.");

    public static Diagnostic AllowanceOrder(SourceSpan span, string path, string lower, string upper) =>
        Error(
            DiagnosticCodes.AllowanceOrder, span, $"{path} is `{Short(lower)}`, above the upper deviation `{Short(upper)}`.",
            "The lower deviation makes the thinner tooth: exchange the two.");

    public static Diagnostic MissingVariants(SourceSpan span, string rule) =>
        Error(
            DiagnosticCodes.MissingVariants, span,
            $"The concession for `{Short(rule)}` stands in a base file and names no variants, so it would cover every variant that extends the file.",
            "Add the variants that it was granted for, `variants: [R148, R180]`, or move it into the file of its variant.");

    public static Diagnostic OtherVariants(SourceSpan span, string rule, string variant) =>
        new(
            DiagnosticCodes.OtherVariants, Severity.Warning, span,
            $"The concession for `{Short(rule)}` does not name `{Short(variant)}`, the variant of this file, so it covers nothing here.",
            $"Add `{Short(variant)}`, or leave `variants` out: in the file of a variant a concession is for that variant.");

    public static Diagnostic SpectrumSum(SourceSpan span, string path, double sum) =>
        Error(
            DiagnosticCodes.SpectrumSum, span, string.Create(Invariant, $"{path}: the shares add up to {Math.Round(sum * 100, 3)} %, not to 100 %."),
            "Correct the shares, or add the missing one.");

    public static Diagnostic TemperatureOrder(SourceSpan span, string path, string found, string lower, string low) =>
        Error(
            DiagnosticCodes.TemperatureOrder, span, $"{path} is `{Short(found)}`, below `{lower}: {Short(low)}`.",
            "coldest, running and hottest ascend.");
}
