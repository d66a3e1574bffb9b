namespace Pawl.Specs.Text;

/// <summary>What a diagnostic means and how to mend it, for <c>pawl explain</c> and the documentation.</summary>
/// <param name="Code">As printed.</param>
/// <param name="Title">In a few words.</param>
/// <param name="Meaning">What is wrong, and why it is not let pass.</param>
/// <param name="Mend">What to do.</param>
/// <param name="Example">Text that draws it.</param>
public sealed record DiagnosticEntry(string Code, string Title, string Meaning, string Mend, string Example);

/// <summary>Every diagnostic of specs, catalogues and project files.</summary>
public static class DiagnosticCatalogue
{
    /// <summary>All of them, ordered by code.</summary>
    public static ImmutableArray<DiagnosticEntry> All { get; } = [.. Entries().OrderBy(entry => entry.Code, StringComparer.Ordinal)];

    /// <summary>The entry of a code, or null.</summary>
    public static DiagnosticEntry? Find(string code)
    {
        foreach (var entry in All)
        {
            if (entry.Code == code)
                return entry;
        }

        return null;
    }

    private static IEnumerable<DiagnosticEntry> Entries() => [.. Yaml(), .. Values(), .. Relations(), .. Files()];

    private static DiagnosticEntry[] Yaml() =>
    [
        new(DiagnosticCodes.Alias, "An alias that cannot be followed",
            "An alias repeats what an anchor above it names. This one names no anchor, stands inside what it repeats, or would make the file too large.",
            "Write the value out; put what variants share into a base file and name it in extends.", "teeth: *unknown"),
        new(DiagnosticCodes.ComplexKey, "A key that is no word",
            "YAML permits lists, maps and nothing at all as keys. No key of a spec is such.", "Write key: value.", "[a, b]: 1"),
        new(DiagnosticCodes.ControlCharacter, "An invisible character",
            "A control character or a mark of writing direction stands in the text. A reviewer cannot see it, so a value could be other than it looks.",
            "Delete it; retype the line if need be.", "family: Tarn\\u0007"),
        new(DiagnosticCodes.DuplicateKey, "A key twice in one map",
            "Readers of YAML differ in which of the two they take.", "Keep one of them.", "teeth: 18\nteeth: 19"),
        new(DiagnosticCodes.Empty, "An empty file", "The file holds nothing but space and comments.", "Start it with pawl: 1.", "# later"),
        new(DiagnosticCodes.Encoding, "Not UTF-8",
            "The file is written in another encoding than UTF-8, so signs such as ° and µ cannot be told.", "Save it as UTF-8.", "20\\xB0"),
        new(DiagnosticCodes.MergeKey, "The merge key <<",
            "The merge key belongs to YAML 1.1 alone; other readers take it for a plain key.", "Use a base file and extends.", "<<: *gear"),
        new(DiagnosticCodes.SeveralDocuments, "More than one document",
            "A line --- starts a second document. One file holds one.", "Use a file each.", "pawl: 1\n---\npawl: 1"),
        new(DiagnosticCodes.Syntax, "Not YAML",
            "The text does not follow the grammar of YAML: a bracket or quote is open, the indentation does not fit, a text with a colon has no quotes.",
            "Mend the place that the message names; look at the lines above it as well.", "gears: [a, b"),
        new(DiagnosticCodes.Tab, "A tab in the indentation",
            "YAML indents with spaces. A tab looks like spaces and is none.", "Replace it by spaces; let the editor do so.", "train:\n\tinput: shaft"),
        new(DiagnosticCodes.Tag, "A tag",
            "A tag asks for a type of its own. A spec is plain text, numbers, truth values, lists and maps.", "Remove the tag.", "family: !custom Tarn"),
        new(DiagnosticCodes.TooDeep, "Nested too deep",
            "Maps and lists are nested deeper than 64 levels. A spec needs fewer than ten; more is an accident or an attack.",
            "Check the brackets.", "[[[[…]]]]"),
        new(DiagnosticCodes.TooLarge, "Too large",
            "The file has more than 10 MB, or more than 200 000 values with aliases written out.", "Check that this is the right file.", "a file of 100 MB"),
    ];

    private static DiagnosticEntry[] Values() =>
    [
        new(DiagnosticCodes.EmptyText, "An empty text", "A text is asked for, and none is there.", "Write it, or delete the line.", "variant: \"\""),
        new(DiagnosticCodes.MalformedAmount, "Not a number with a unit",
            "The value does not read as a number and a unit.", "Write the number in digits with the point as decimal mark, a space and the unit.", "module: 2,5 mm"),
        new(DiagnosticCodes.MalformedTolerance, "Not a tolerance",
            "What follows the dimension does not read as a tolerance of a drawing, or is a fit where one part is meant.",
            "Write H7, ±0.1, +0.021/0 or (2.85..2.95).", "face_width: 24 mm ±"),
        new(DiagnosticCodes.MissingKey, "A key is missing", "What stands here cannot be understood without it.", "Add the key.", "gears: {sun: {on: input_shaft}}"),
        new(DiagnosticCodes.MissingUnit, "A unit is missing",
            "A bare number could mean millimetres as well as inches. Nothing is guessed.", "Add one of the units that the message names.", "module: 2.5"),
        new(DiagnosticCodes.OtherFeature, "Class of the other feature",
            "ISO 286 writes classes of holes in capital letters and those of shafts in small ones; here they are mixed up.",
            "Write the class of the part that the key speaks of.", "shaft_seat: 25 mm K5"),
        new(DiagnosticCodes.NotADate, "Not a date", "A day of the calendar is asked for, written year-month-day.", "Write it as 2027-03-31.", "expires: 31.3.2027"),
        new(DiagnosticCodes.NotAList, "Not a list", "A list is asked for.", "Put the value in brackets, or each entry on a line with a dash.", "fixed: housing"),
        new(DiagnosticCodes.NotAMap, "Not a map", "Keys with values are asked for.", "Write key: value lines below it, or {key: value}.", "train: simple"),
        new(DiagnosticCodes.NotAName, "Not a name",
            "Names are referred to from elsewhere and stand in reports and rules: they start with a letter; then follow letters a to z, digits, underscores and hyphens.",
            "Rename it. A train has one input and one output: no list.", "on: 2nd shaft"),
        new(DiagnosticCodes.NotANumber, "Not a number",
            "A plain decimal number is asked for. Notations that readers of YAML take differently (1:30, 0x1F, 010) are not accepted.",
            "Write it in digits, without quotes and without a unit.", "application_factor: \"1.25\""),
        new(DiagnosticCodes.NotATruthValue, "Not true or false",
            "Only true and false are truth values in YAML 1.2; yes, no, on and off are texts.", "Write true or false, without quotes.", "internal: yes"),
        new(DiagnosticCodes.NotAWholeNumber, "Not a whole number", "A count is asked for.", "Write it in digits, without a point.", "teeth: 17.5"),
        new(DiagnosticCodes.NotFinite, "Not a finite number", "Infinity and not-a-number are no values of a design.", "Write a number, or delete the line.", "profile_shift: .nan"),
        new(DiagnosticCodes.NotText, "Not a text", "A text is asked for.", "Put a word such as true in quotes; write one value, no list or map.", "description: true"),
        new(DiagnosticCodes.NullValue, "No value",
            "Nothing stands after the colon, or null, which removes what a base file states, and none states this.", "Give a value or delete the line.", "module:"),
        new(DiagnosticCodes.OutOfRange, "Out of range",
            "The value lies outside what any such part has. It is a slip, not a matter of judgement; rules judge what lies within.", "Correct the value.", "teeth: 10000"),
        new(DiagnosticCodes.ToleranceNotAllowed, "A tolerance where none is taken", "This value is taken as exact.", "Leave the tolerance away.", "module: 2.5 mm ±0.1"),
        new(DiagnosticCodes.UnitMismatch, "A unit of another quantity",
            "The unit measures something else than what is asked for. An angle is no ratio, a temperature no temperature difference.",
            "Give the quantity that the message names.", "face_width: 12 N·m"),
        new(DiagnosticCodes.UnknownKey, "A key that nothing reads",
            "The key is misspelt or stands in the wrong place. It is not passed over, since the value would silently be missing.",
            "Take the suggestion, or move it.", "teehts: 18"),
        new(DiagnosticCodes.UnknownUnit, "An unknown unit", "No unit has this symbol.", "Take the suggestion, or a unit that fits.", "module: 2.5 mn"),
        new(DiagnosticCodes.UnknownWord, "An unknown word", "Only certain words are accepted here.", "Take one of the words that the message lists.", "direction: botth"),
        new(DiagnosticCodes.WrongCount, "A list of the wrong length", "The list has more or fewer entries than it must.", "Add or remove entries.", "gears: [a, b, c]"),
    ];

    private static DiagnosticEntry[] Relations() =>
    [
        new(DiagnosticCodes.AllowanceOrder, "Deviations exchanged", "The lower deviation of the tooth thickness lies above the upper one.", "Exchange them.", "thickness_allowance: {upper: -0.1 mm, lower: -0.06 mm}"),
        new(DiagnosticCodes.DuplicateName, "A name for two things", "A body and a planet set have the same name, so a gear could sit on either.", "Rename one.", "bodies: {planet: {}}\nplanets: {planet: {carrier: carrier, count: 3}}"),
        new(DiagnosticCodes.ExclusiveKeys, "Two keys that say the same", "The module and the diametral pitch of a gear follow from each other, and so does its surface from its heat treatment; stating both invites a contradiction.", "Keep one of them.", "{module: 2.5 mm, diametral_pitch: 10}"),
        new(DiagnosticCodes.InternalPair, "Two internal gears", "Two rings cannot mesh with each other.", "Check internal: true of both.", "gears: [ring_a, ring_b]"),
        new(DiagnosticCodes.MissingVariants, "Concession for nobody in particular",
            "A concession in a base file would cover every variant that extends it, also those that nobody looked at when it was granted.",
            "Name the variants that it was granted for, or move it into the file of its variant.", "variants: [R148, R180]"),
        new(DiagnosticCodes.NoCase, "A case depth without a case", "Normalising, through hardening and precipitation hardening make no layer, so it has no depth.", "Leave it out, or state the treatment that makes the case.", "{treatment: through-hardened, case_depth: 0.4 mm}"),
        new(DiagnosticCodes.NotInCatalogue, "Not in a catalogue", "Neither a catalogue of the project nor the steels that ship inside hold this id, or no adapter file of the project declares this adapter.", "Take the suggestion, or add an entry to a catalogue file, or a file for the adapter.", "material: carburized-9310"),
        new(DiagnosticCodes.OneWay, "A reverse torque of a drive that turns one way", "The duty says that the drive turns one way only, and states a torque for the other.", "Write direction: both, or leave the reverse torque out.", "{direction: one, reverse_torque: 120 N·m}"),
        new(DiagnosticCodes.OtherVariants, "Concession for other variants",
            "A concession in the file of a variant names others only, so it covers nothing there.", "Name the variant, or leave `variants` out.", "variants: [R999]"),
        new(DiagnosticCodes.OpenChain, "A chain that does not close", "The sizes of a stack do not lead from one face of its gap to the other, or the links of a centring not from its first part to its last: one is missing, one too many, or one leads elsewhere.", "Add the missing one, or correct its ends.", "from: shoulder, and no other size that ends at the shoulder"),
        new(DiagnosticCodes.RepeatedMesh, "A mesh stated twice", "Two gears make one mesh, in whichever order they are named.", "Remove the second, or name its other gear.", "meshes: [{gears: [sun, planet]}, {gears: [planet, sun]}]"),
        new(DiagnosticCodes.SelfCarried, "A body that carries itself", "The carrier of a planet set, or the housing of a bearing or seal, is another body.", "Name the other body.", "planets: {planet: {carrier: planet, count: 3}}"),
        new(DiagnosticCodes.SelfMesh, "A gear that meshes with itself", "A mesh joins two gears.", "Name the other gear.", "gears: [sun, sun]"),
        new(DiagnosticCodes.SpectrumSum, "Shares that do not add up to 100 %", "The load spectrum covers the whole service life.", "Correct the shares.", "spectrum: [{share: 20 %, …}, {share: 70 %, …}]"),
        new(DiagnosticCodes.TemperatureOrder, "Temperatures out of order", "The coldest oil is no warmer than the running oil, and that no warmer than the hottest.", "Exchange them.", "oil: {coldest: 20 °C, running: 10 °C}"),
        new(DiagnosticCodes.UnknownBody, "An unknown body", "The gear sits on a body that the train does not speak of: not input, output, fixed, carrier, planet set or declared body.", "Take the suggestion, or declare the body under bodies.", "on: inptu_shaft"),
        new(DiagnosticCodes.UnknownGear, "An unknown gear", "The mesh names a gear that is not declared.", "Take the suggestion, or declare the gear.", "gears: [sun, planett]"),
        new(DiagnosticCodes.UnknownName, "An unknown name", "A fit, a bearing, a joint, a mesh or a list of shims is named that the spec does not declare.", "Take the suggestion, or declare it.", "links: [{fit: regster}]"),
        new(DiagnosticCodes.WrongSign, "A sign against the faces", "The coefficient of a size says that it opens the gap, and its faces say that it closes it, or the other way round.", "Leave the coefficient out, or exchange the faces.", "{from: a, to: b, coefficient: -1}"),
    ];

    private static DiagnosticEntry[] Files() =>
    [
        new(DiagnosticCodes.CatalogueOverride, "A catalogue entry overridden", "Two catalogue files hold the same id, or the steels that ship inside hold it too; the later path wins, and any over what ships. This is a note, since a project may override on purpose.", "Remove one of them, if it was not meant.", "materials: {steel: …} in two files"),
        new(DiagnosticCodes.ExtendsCycle, "Files that extend each other in a circle", "There is no first file to start from.", "Put what they share into a base file of its own.", "extends: r180.yaml, in r180.yaml"),
        new(DiagnosticCodes.ExtendsTooDeep, "Too long a row of base files", "Base files extend base files more than 16 times in a row.", "Merge some of them.", "a row of 20 base files"),
        new(DiagnosticCodes.FormatVersion, "Another version of the format", "The base file is written for another version of the format.", "Write the version that this build reads, or use a newer Pawl.", "pawl: 2"),
        new(DiagnosticCodes.MissingFile, "A missing file", "The file that is named does not exist. The path counts from the folder of the file that names it.", "Take the suggestion, or correct the path.", "extends: famly.yaml"),
        new(DiagnosticCodes.OutsideRoot, "A file outside the project", "Specs, base files and catalogues stay inside the project, symbolic links followed, so that a record can name and hash all of them.", "Move the file into the project.", "extends: ../../etc/base.yaml"),
        new(DiagnosticCodes.Schema, "Not after the schema", "The document does not follow its JSON Schema, although the reader took it; told with `--strict-schema` alone. The schema knows no lengths in %·m; anything else is a defect of Pawl.", "Write the unit by its name; otherwise report it with the file.", "axial_position: 5 %·m"),
        new(DiagnosticCodes.UnreadableFile, "A file that cannot be read", "The name is a folder, or the system refuses access.", "Name a file that you may read.", "extends: ."),
    ];
}
