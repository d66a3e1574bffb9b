using System.Diagnostics;

namespace Pawl.Benchmarks;

/// <summary>Publishes and installs what is measured.</summary>
internal sealed class Tools(string repository, string work)
{
    /// <summary>Pawl, precompiled; the path of its program.</summary>
    /// <param name="native">A native program, which needs no .NET; else one that a .NET runs.</param>
    public string Pawl(bool native) => Publish(Path.Combine(repository, "src", "Pawl.Cli", "Pawl.Cli.csproj"), "pawl", native);

    /// <summary>A program that does nothing, published in the same way: the price of starting.</summary>
    public string Empty(bool native)
    {
        var folder = Path.Combine(work, "empty");
        Directory.CreateDirectory(folder);
        File.WriteAllText(
            Path.Combine(folder, "empty.csproj"),
            "<Project Sdk=\"Microsoft.NET.Sdk\"><PropertyGroup><OutputType>Exe</OutputType><TieredPGO>false</TieredPGO>"
            + "<ConcurrentGarbageCollection>false</ConcurrentGarbageCollection></PropertyGroup></Project>\n");
        File.WriteAllText(Path.Combine(folder, "Program.cs"), "System.Console.Out.Write(\"\");\n");
        return Publish(Path.Combine(folder, "empty.csproj"), "empty", native);
    }

    /// <summary>yamllint of Debian, or null.</summary>
    public static string? YamlLint() =>
        Find("yamllint") ?? (Run("apt-get", "install -qy --no-install-recommends yamllint") ? Find("yamllint") : null);

    /// <summary>A Node script that parses with js-yaml and checks with ajv, or null.</summary>
    public string? NodeScript()
    {
        if (Find("node") is null)
            return null;

        var folder = Path.Combine(work, "node");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "package.json"), "{\"private\": true, \"type\": \"module\"}\n");
        if (!Directory.Exists(Path.Combine(folder, "node_modules", "ajv"))
            && !Run("npm", "install --silent --no-audit --no-fund js-yaml@4 ajv@8 ajv-formats@3", folder))
        {
            return null;
        }

        var script = Path.Combine(folder, "check.js");
        File.WriteAllText(script, """
            import { readFileSync, readdirSync } from 'node:fs';
            import { join } from 'node:path';
            import yaml from 'js-yaml';
            import Ajv from 'ajv';
            import formats from 'ajv-formats';

            const [schema, folder] = process.argv.slice(2);
            const ajv = new Ajv({ strict: false, allErrors: true });
            formats(ajv);
            const validate = ajv.compile(JSON.parse(readFileSync(schema, 'utf8')));
            let bad = 0;
            for (const name of readdirSync(folder).sort()) {
              if (!name.endsWith('.yaml')) continue;
              if (!validate(yaml.load(readFileSync(join(folder, name), 'utf8'), { schema: yaml.CORE_SCHEMA }))) {
                bad++;
                console.error(name, validate.errors);
              }
            }
            process.exit(bad ? 1 : 0);

            """);
        return script;
    }

    private string Publish(string project, string program, bool native)
    {
        var kind = native ? "native" : "managed";
        var output = Path.Combine(work, "publish", kind, program);
        var arguments = $"publish \"{project}\" -c Release --use-current-runtime -p:PackAsTool=false "
            + (native ? "-p:PublishAot=true -p:InvariantGlobalization=true " : "--self-contained false -p:PublishReadyToRun=true ")
            + $"--artifacts-path \"{Path.Combine(work, "build", kind)}\" -p:NuGetLockFilePath=obj/{kind}.lock.json -o \"{output}\" -v q --nologo";
        return Run("dotnet", arguments) ? Path.Combine(output, program) : throw new InvalidOperationException($"{project} cannot be published.");
    }

    private static string? Find(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(f => Path.Combine(f, program)).FirstOrDefault(File.Exists);

    private static bool Run(string program, string arguments, string? folder = null)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments)
            {
                WorkingDirectory = folder ?? "",
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            })!;
            var error = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            if (process.ExitCode != 0)
                Console.Error.WriteLine($"{program} {arguments}\n{output}{error.Result}");
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
