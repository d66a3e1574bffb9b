using System.Text.RegularExpressions;
using NJsonSchema;
using NJsonSchema.Validation;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Schema;

/// <summary>Validates a tree against a kept schema: a second judge beside the readers, who should have found every fault before it.</summary>
public sealed class SchemaValidator
{
    // Patterns and ranges say what is meant; formats go by the machine's culture.
    private static readonly JsonSchemaValidatorSettings Settings = new() { FormatValidators = [] };

    private readonly Task<JsonSchema> _schema;

    static SchemaValidator()
    {
        // The library matches patterns by the static Regex methods, whose cache is smaller than our schema's set of patterns:
        // each match would build its expression anew.
        Regex.CacheSize = Math.Max(Regex.CacheSize, 256);
        Gearbox = new("gearbox-whole.schema.json");
    }

    private SchemaValidator(string name) => _schema = Task.Run(() => Load(name));

    /// <summary>For a spec with everything it extends laid beneath it.</summary>
    public static SchemaValidator Gearbox { get; }

    /// <summary>Starts loading on another thread; reading goes on meanwhile.</summary>
    public static void Warm() => _ = Gearbox;

    /// <summary>Adds a complaint for each fault; at a place that has one already, none is added.</summary>
    public void Validate(YamlNode tree, ICollection<Diagnostic> diagnostics)
    {
        ArgumentNullException.ThrowIfNull(tree);
        ArgumentNullException.ThrowIfNull(diagnostics);
        var json = new TreeToJson();
        var token = json.Convert(tree);
        foreach (var error in new JsonSchemaValidator(Settings).Validate(token, _schema.GetAwaiter().GetResult()))
        {
            var span = json.NodeOf(error.Token)?.Span ?? tree.Span;
            if (diagnostics.Any(diagnostic => diagnostic.Span.File == span.File && diagnostic.Span.Start == span.Start))
                continue;
            diagnostics.Add(SpecDiagnostics.Schema(span, PathOf(error), ProblemOf(error)));
        }
    }

    private static JsonSchema Load(string name)
    {
        using var text = typeof(SchemaValidator).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The schema {name} is not part of this build.");
        return SchemaText.Read(text);
    }

    private static string PathOf(ValidationError error) => (error.Path ?? "").TrimStart('#', '/');

    private static string ProblemOf(ValidationError error) => error.Kind switch
    {
        ValidationErrorKind.PropertyRequired => "a required key is missing",
        ValidationErrorKind.NoAdditionalPropertiesAllowed => "the key is not known",
        ValidationErrorKind.NotInEnumeration => "the word is not one of those accepted",
        ValidationErrorKind.PatternMismatch => "the text is not of the form accepted",
        ValidationErrorKind.NumberTooSmall or ValidationErrorKind.NumberTooBig => "the number is out of range",
        ValidationErrorKind.TooFewItems or ValidationErrorKind.TooManyItems => "the list has the wrong length",
        _ => "the value is of the wrong kind",
    };
}
