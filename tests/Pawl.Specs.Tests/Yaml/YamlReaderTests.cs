using System.Diagnostics;
using System.Globalization;
using System.Text;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Tests.Yaml;

public sealed class YamlReaderTests
{
    private static YamlNode? Read(string text, List<Diagnostic> diagnostics) => YamlReader.Read("f.yaml", Encoding.UTF8.GetBytes(text), diagnostics);

    private static YamlMap Good(string text)
    {
        List<Diagnostic> diagnostics = [];
        var tree = Read(text, diagnostics);
        Assert.Empty(diagnostics);
        return Assert.IsType<YamlMap>(tree);
    }

    private static Diagnostic Bad(byte[] bytes, string code, int line, int column)
    {
        List<Diagnostic> diagnostics = [];
        YamlReader.Read("f.yaml", bytes, diagnostics);
        var diagnostic = Assert.Single(diagnostics);
        Assert.Equal((code, line, column), (diagnostic.Code, diagnostic.Span.Start.Line, diagnostic.Span.Start.Column));
        Assert.Equal(Severity.Error, diagnostic.Severity);
        return diagnostic;
    }

    private static Diagnostic Bad(string text, string code, int line, int column) => Bad(Encoding.UTF8.GetBytes(text), code, line, column);

    private static string Show(SourceSpan span) =>
        string.Create(CultureInfo.InvariantCulture, $"{span.Start.Line}:{span.Start.Column}-{span.End.Line}:{span.End.Column}");

    // Counted by hand in the text above each assertion; the end is exclusive.
    [Fact]
    public void Spans_are_counted_from_1_and_end_after_the_last_character()
    {
        var map = Good("a: plain text  # c\nb:\n  c: 'q x'\n  d: [1, {x: 2}]\n\ne: last\n");

        Assert.Equal("1:1-6:8", Show(map.Span));
        Assert.Equal("1:4-1:14", Show(map.Find("a")!.Span));
        var b = Assert.IsType<YamlMap>(map.Find("b"));
        Assert.Equal("3:3-4:17", Show(b.Span));
        Assert.Equal("3:6-3:11", Show(b.Find("c")!.Span));
        var d = Assert.IsType<YamlList>(b.Find("d"));
        Assert.Equal("4:6-4:17", Show(d.Span));
        Assert.Equal("4:10-4:16", Show(d.Items[1].Span));
    }

    [Fact]
    public void Columns_count_UTF_16_code_units_and_a_byte_order_mark_counts_for_nothing()
    {
        var map = Good("\uFEFF{æ: '😀', b: 1}");

        Assert.Equal("1:2-1:3", Show(map.Entries[0].Key.Span));
        Assert.Equal("1:14-1:15", Show(map.Find("b")!.Span));
    }

    [Theory]
    [InlineData("a: &x 12 mm\nb: *x", "1:7-1:12")]
    [InlineData("a: !!int 12", "1:10-1:12")]
    public void An_anchor_or_a_tag_is_no_part_of_the_scalar(string text, string span) => Assert.Equal(span, Show(Good(text).Find("a")!.Span));

    [Theory]
    [InlineData("a: 12 N·m", 3, 3, "1:7-1:10")]
    [InlineData("a: '12 N·m'", 3, 3, "1:8-1:11")]
    [InlineData("a: \"12 N\\xB7m\"", 3, 3, "1:4-1:15")]
    public void A_part_of_a_scalar_has_its_own_place_unless_escapes_hide_it(string text, int start, int length, string span) =>
        Assert.Equal(span, Show(Assert.IsType<YamlScalar>(Good(text).Find("a")).Part(start, length)));

    [Fact]
    public void Null_is_null_unless_it_is_quoted()
    {
        var map = Good("a: null\nb: 'null'\nc:\nd: ~\ne: !!str null");

        Assert.Equal([true, false, true, true, false], map.Entries.Select(entry => ((YamlScalar)entry.Value).IsNull));
        Assert.Equal([true, false, false, true, false], map.Entries.Select(entry => ((YamlScalar)entry.Value).IsWrittenNull));
    }

    [Fact]
    public void A_second_key_is_reported_at_its_place_with_the_place_of_the_first()
    {
        var diagnostic = Bad("a: 1\nb: 2\na: 3\n", DiagnosticCodes.DuplicateKey, 3, 1);

        Assert.Contains("line 1, column 1", diagnostic.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Duplicate_keys_are_found_in_large_maps_as_well()
    {
        var text = new StringBuilder();
        for (var i = 0; i < 40; i++)
            text.Append(CultureInfo.InvariantCulture, $"k{i}: 1\n");

        Bad(text + "k39: 2\n", DiagnosticCodes.DuplicateKey, 41, 1);
    }

    [Theory]
    [InlineData("", 1, 1)]
    [InlineData("  \n# only a comment\n", 1, 1)]
    [InlineData("---\n", 1, 1)]
    [InlineData("null", 1, 1)]
    public void An_empty_file_says_so(string text, int line, int column) =>
        Assert.Contains("pawl: 1", Bad(text, DiagnosticCodes.Empty, line, column).Hint, StringComparison.Ordinal);

    [Theory]
    [InlineData("a:\n\tb: 1\n", 2, 1)]
    [InlineData("a:\n  b: 1\n \tc: 2\n", 3, 2)]
    [InlineData("a: |\n  x\n\ty: 1\nb: 1\n", 3, 1)]
    [InlineData("a: x\n\t\n", 2, 1)]
    public void A_tab_in_the_indentation_is_reported_at_the_tab(string text, int line, int column) =>
        Assert.Contains("spaces", Bad(text, DiagnosticCodes.Tab, line, column).Hint, StringComparison.Ordinal);

    [Theory]
    [InlineData("a: 1\t# tab before a comment")]
    [InlineData("a: |\n  x\n  \tindented text\nb: 1")]
    [InlineData("a: 'x\ty'\n")]
    [InlineData("\t# a comment\na: 1")]
    public void A_tab_elsewhere_is_let_pass(string text) => Good(text);

    [Theory]
    [InlineData("a: b: c", 1, 5, "quotes")]
    [InlineData("a: @x", 1, 4, "quotes")]
    [InlineData("a: 'x\n", 1, 4, "quotes")]
    [InlineData("a: 1\na b\n", 2, 1, "key: value")]
    [InlineData("x: 1\nbad: [1, 2\ny: 3\n", 3, 2, "line 2, column 6")]
    [InlineData("a: {b: 1", 2, 1, "line 1, column 4")]
    public void Broken_YAML_is_reported_where_it_breaks_with_a_hint(string text, int line, int column, string hint)
    {
        List<Diagnostic> diagnostics = [];
        Assert.Null(Read(text, diagnostics));
        var diagnostic = Assert.Single(diagnostics);

        Assert.Equal(DiagnosticCodes.Syntax, diagnostic.Code);
        Assert.Equal(line, diagnostic.Span.Start.Line);
        Assert.InRange(diagnostic.Span.Start.Column, 1, Math.Max(column, 12));
        Assert.Contains(hint, diagnostic.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_byte_that_is_not_UTF_8_is_reported_at_its_place()
    {
        var diagnostic = Bad([.. "a: 1\nµ: 20"u8, 0xB0, .. "\n"u8], DiagnosticCodes.Encoding, 2, 6);

        Assert.Contains("0xB0", diagnostic.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void UTF_16_is_told_by_its_mark() => Bad([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("a: 1")], DiagnosticCodes.Encoding, 1, 1);

    [Theory]
    [InlineData("a: 1\nb: x\u0007y\n", 2, 5)]
    [InlineData("a: 1\r\nb: \u202Ex", 2, 4)]
    [InlineData("a: x\u0085y", 1, 5)]
    public void Invisible_characters_are_refused(string text, int line, int column) => Bad(text, DiagnosticCodes.ControlCharacter, line, column);

    [Fact]
    public void A_second_document_is_refused() => Bad("a: 1\n---\nb: 2\n", DiagnosticCodes.SeveralDocuments, 2, 1);

    [Theory]
    [InlineData("a: !!python/object:os.system x", "!!python/object:os.system")]
    [InlineData("a: !shell [x]", "!shell")]
    [InlineData("a: !!int {b: 1}", "!!int")]
    [InlineData("a: !!timestamp 2020-01-01", "!!timestamp")]
    public void A_tag_other_than_the_core_ones_is_refused(string text, string tag) =>
        Assert.Contains(tag, Bad(text, DiagnosticCodes.Tag, 1, 4).Message, StringComparison.Ordinal);

    [Fact]
    public void The_core_tags_are_accepted() => Good("a: !!str 1\nb: !!map {c: !!float 1.5}\nd: !!seq [!!bool true, !!null null]\ne: ! x");

    [Fact]
    public void The_merge_key_is_refused_with_a_hint_to_extends() =>
        Assert.Contains("extends", Bad("x: &x {a: 1}\ny:\n  <<: *x\n", DiagnosticCodes.MergeKey, 3, 3).Hint, StringComparison.Ordinal);

    [Theory]
    [InlineData("[a]: 1", 1, 1)]
    [InlineData("? {a: 1}\n: 1", 1, 3)]
    [InlineData("a: 1\n: 2", 2, 3)]
    public void A_key_that_is_no_word_is_refused(string text, int line, int column) => Bad(text, DiagnosticCodes.ComplexKey, line, column);

    [Fact]
    public void An_alias_without_an_anchor_names_the_nearest() =>
        Assert.Contains("*gear", Bad("a: &gear 1\nb: *gaer", DiagnosticCodes.Alias, 2, 4).Hint, StringComparison.Ordinal);

    [Fact]
    public void An_alias_inside_what_it_repeats_is_refused() => Bad("a: &x [1, *x]", DiagnosticCodes.Alias, 1, 11);

    // Nine levels of nine aliases each: 9^9 values written out, the "billion laughs".
    [Fact]
    public void An_alias_bomb_is_refused_at_once()
    {
        var text = new StringBuilder("a0: &a0 [x,x,x,x,x,x,x,x,x]\n");
        for (var i = 1; i < 9; i++)
            text.Append(CultureInfo.InvariantCulture, $"a{i}: &a{i} [").AppendJoin(',', Enumerable.Repeat($"*a{i - 1}", 9)).Append("]\n");

        var clock = Stopwatch.StartNew();
        List<Diagnostic> diagnostics = [];
        Assert.Null(Read(text.ToString(), diagnostics));

        // 9^6 is the first level above 200 000 values: the line of a5.
        var diagnostic = Assert.Single(diagnostics);
        Assert.Equal((DiagnosticCodes.Alias, 6), (diagnostic.Code, diagnostic.Span.Start.Line));
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5));
    }

    [Theory]
    [InlineData(64, true)]
    [InlineData(65, false)]
    public void Nesting_is_bounded_at_64_levels(int levels, bool accepted)
    {
        // The innermost value counts as a level.
        var text = new string('[', levels - 1) + "1" + new string(']', levels - 1);
        List<Diagnostic> diagnostics = [];
        Read(text, diagnostics);

        Assert.Equal(accepted ? [] : [DiagnosticCodes.TooDeep], diagnostics.Select(d => d.Code));
    }

    [Fact]
    public void Nesting_through_aliases_is_bounded_as_well()
    {
        var text = new StringBuilder("a0: &a0 [1]\n");
        for (var i = 1; i < 80; i++)
            text.Append(CultureInfo.InvariantCulture, $"a{i}: &a{i} [*a{i - 1}]\n");
        List<Diagnostic> diagnostics = [];
        Read(text.ToString(), diagnostics);

        Assert.Equal([DiagnosticCodes.TooDeep], diagnostics.Select(d => d.Code));
    }

    [Theory]
    [InlineData('[')]
    [InlineData('{')]
    public void A_file_of_opening_brackets_is_refused_soon(char bracket)
    {
        var clock = Stopwatch.StartNew();
        List<Diagnostic> diagnostics = [];
        Read(new string(bracket, 1_000_000), diagnostics);

        Assert.Single(diagnostics);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(20));
    }

    [Fact]
    public void A_buffer_beyond_the_bound_is_not_parsed() => Bad(new byte[YamlReader.MostBytes + 1], DiagnosticCodes.TooLarge, 1, 1);

    [Fact]
    public void More_than_200_000_values_are_refused()
    {
        List<Diagnostic> diagnostics = [];
        Read("[" + string.Join(',', Enumerable.Repeat("1", 200_001)) + "]", diagnostics);

        Assert.Equal([DiagnosticCodes.TooLarge], diagnostics.Select(d => d.Code));
    }

    // YAML 1.2.2, section 10.3.2, with the deviations that CoreSchema states.
    [Theory]
    [InlineData("12", ScalarKind.Whole)]
    [InlineData("-0", ScalarKind.Whole)]
    [InlineData("+12", ScalarKind.Whole)]
    [InlineData("0", ScalarKind.Whole)]
    [InlineData("010", ScalarKind.Text)]
    [InlineData("0o7", ScalarKind.Text)]
    [InlineData("0x3A", ScalarKind.Text)]
    [InlineData("1:30", ScalarKind.Text)]
    [InlineData("1_000", ScalarKind.Text)]
    [InlineData("0.", ScalarKind.Real)]
    [InlineData("-.5", ScalarKind.Real)]
    [InlineData("+12e03", ScalarKind.Real)]
    [InlineData("-2E+05", ScalarKind.Real)]
    [InlineData("0.10", ScalarKind.Real)]
    [InlineData(".", ScalarKind.Text)]
    [InlineData("1e", ScalarKind.Text)]
    [InlineData("-", ScalarKind.Text)]
    [InlineData(".inf", ScalarKind.NotFinite)]
    [InlineData("-.Inf", ScalarKind.NotFinite)]
    [InlineData(".NaN", ScalarKind.NotFinite)]
    [InlineData("true", ScalarKind.Truth)]
    [InlineData("yes", ScalarKind.Text)]
    [InlineData("~", ScalarKind.Null)]
    public void Plain_scalars_are_told_by_the_core_schema(string text, ScalarKind kind) =>
        Assert.Equal(kind, CoreSchema.KindOf(new(SourceSpan.Whole("f"), text, IsQuoted: false)));
}
