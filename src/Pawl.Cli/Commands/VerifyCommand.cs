using System.CommandLine;
using Pawl.Cli.Output;
using Pawl.Cli.Verifying;
using Pawl.Reports.Output;
using Pawl.Specs.Files;
using Pawl.Specs.Text;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl verify</c> and <c>pawl sign</c>: whether a record still says what is so, and whose it is.</summary>
internal static class VerifyCommand
{
    public static Command Build(CommandContext? context)
    {
        var records = new Argument<string[]>("RECORD") { Description = "Records in JSON, as `pawl check --format json` writes them.", Arity = ArgumentArity.OneOrMore };
        CheckCommand.RefuseOptions(records);
        var key = CheckCommand.Text("--key", "FILE", "Verify the signature first: a public key in PEM, ECDSA on P-256.");
        var signature = CheckCommand.Text("--signature", "FILE", "The detached signature, DER as openssl writes it. Default: RECORD.sig.");
        var root = CheckCommand.Text("--root", "DIR", "The project root. Default: the folder of the nearest pawl.yaml upwards from the working folder, else from the record.");
        var format = CheckCommand.Text("--format", "FORMAT", "text or json. Default: text.", "-f");
        format.AcceptOnlyFromAmong("text", "json");
        var verbose = CheckCommand.Flag("--verbose", "Every file and every difference.", "-v");
        var command = new Command("verify", "Read the files of a record again and say which changed; compute again and say whether outcomes and numbers are the same.")
        {
            records, key, signature, root, format, verbose,
        };
        if (context is null)
            return command;

        command.SetAction(parsed => VerifyRun.Start(context, command, new()
        {
            Records = [.. parsed.GetValue(records) ?? []],
            Key = parsed.GetValue(key),
            Signature = parsed.GetValue(signature),
            Root = parsed.GetValue(root),
            Json = parsed.GetValue(format) == "json",
            Verbose = parsed.GetValue(verbose),
        }));
        return command;
    }

    public static Command BuildSign(CommandContext? context)
    {
        var record = new Argument<string>("RECORD") { Description = "The file to sign." };
        CheckCommand.RefuseOptions(record);
        var key = CheckCommand.Text("--key", "FILE", "A private key in PEM, ECDSA on P-256. Keys are made and kept elsewhere.");
        key.Required = true;
        var output = CheckCommand.Text("--output", "FILE", "The signature to write. Default: RECORD.sig.", "-o");
        var command = new Command("sign", "Sign a record: a detached ECDSA signature (P-256, SHA-256, DER) that openssl verifies too.") { record, key, output };
        if (context is not null)
            command.SetAction(parsed => Sign(context, command, parsed.GetValue(record)!, parsed.GetValue(key)!, parsed.GetValue(output)));
        return command;
    }

    private static int Sign(CommandContext context, Command command, string record, string keyPath, string? output)
    {
        if (Read(context, record) is not { } content || Read(context, keyPath) is not { } key)
            return ExitCode.NotJudged;
        var target = output ?? record + Signatures.Ending;
        if (context.Absolute(target) == context.Absolute(record) || context.Absolute(target) == context.Absolute(keyPath))
            return Usage.Report(context, command, "The signature would take the place of the record or of the key.");
        if (Signatures.Sign(content, key, out var problem) is not { } signature)
        {
            DiagnosticWriter.Write(context.Error, new(
                CliCodes.BadKey, Severity.Error, SourceSpan.Whole(keyPath), $"This is no key to sign with: {problem}.", "Give a private key as PEM, on the curve P-256."));
            return ExitCode.NotJudged;
        }

        if (ReportWriter.WriteFile(context.Absolute(target), signature) is { } failure)
            throw new CannotWriteException($"{failure.Path} cannot be written: {failure.Reason}.");
        context.Out.WriteLine(Plain.Line(target));
        return ExitCode.Conforms;
    }

    private static byte[]? Read(CommandContext context, string path)
    {
        var reason = "there is no such file";
        try
        {
            var full = context.Absolute(path);
            if (File.Exists(full) && WholeFile.Read(full, VerifyRun.MostBytes, out _) is var content)
            {
                if (content is { Length: > 0 })
                    return content;
                reason = "it is empty, or longer than any record";
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            reason = problem.Message.TrimEnd('.');
        }

        DiagnosticWriter.Write(context.Error, new(CliCodes.CannotRead, Severity.Error, SourceSpan.Whole(path), $"It cannot be read: {reason}.", null));
        return null;
    }
}
