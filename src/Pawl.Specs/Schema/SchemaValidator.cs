using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Schema;

public sealed class SchemaValidator
{
    public static SchemaValidator Gearbox { get; } = new();
    public static void Warm() { }
    public void Validate(YamlNode tree, ICollection<Diagnostic> diagnostics) { _ = tree; _ = diagnostics; _ = this; }
}
