using System.Text;
using Pawl.Specs.Generator;

// Writes the readers into the tree: `dotnet run --project src/Pawl.Specs.Generator`, from the root of the repository.
var folder = Path.GetFullPath(args.Length > 0 ? args[0] : ReaderGenerator.Folder);
if (!Directory.Exists(Path.GetDirectoryName(folder)))
{
    Console.Error.WriteLine($"{folder} lies in no tree of Pawl.");
    return 2;
}

Directory.CreateDirectory(folder);
var files = ReaderGenerator.Generate();
foreach (var stale in Directory.GetFiles(folder, "*.g.cs").Where(path => !files.ContainsKey(Path.GetFileName(path))))
    File.Delete(stale);
foreach (var (name, text) in files)
{
    var path = Path.Combine(folder, name);
    if (File.Exists(path) && File.ReadAllText(path) == text)
        continue;
    File.WriteAllText(path, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
    Console.WriteLine(name);
}

return 0;
