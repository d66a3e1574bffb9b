using System.Diagnostics;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Nodes;
using Pawl.Cli.Checking;
using Pawl.Cli.Verifying;
using Pawl.Specs.Files;

namespace Pawl.Cli.Tests;

/// <summary>A record, and what is said of it after something has changed.</summary>
public sealed class VerifyTests
{
    private const string Kept = "out/r450.json";

    private static Workplace Recorded(params string[] more)
    {
        var place = new Workplace { Engine = Engine.Shipped };
        Assert.Equal(0, place.Run("new", "Works", "--project").Code);
        Assert.Equal(0, place.Run("new", "R450").Code);
        var ran = place.Run(["check", "--format", "json", "--output", "out", "--as-of", "2026-01-15", .. more]);
        Assert.True(ran.Code == 0, ran.Out + ran.Error);
        return place;
    }

    private static void Replace(Workplace place, string path, string old, string by)
    {
        var text = File.ReadAllText(place.PathOf(path));
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(place.PathOf(path), text.Replace(old, by, StringComparison.Ordinal));
    }

    private static void Alter(Workplace place, Action<JsonNode> change)
    {
        var record = JsonNode.Parse(File.ReadAllText(place.PathOf(Kept)))!;
        change(record);
        File.WriteAllText(place.PathOf(Kept), record.ToJsonString());
    }

    private static string Last(Ran ran) => ran.OutLines[^1];

    [Fact]
    public void What_nobody_touched_is_verified_on_another_day_too()
    {
        using var place = Recorded();

        var ran = place.Run("verify", Kept);

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith("out/r450.json: R450 revision A as of 2026-01-15: verified. ", ran.Out, StringComparison.Ordinal);
        Assert.EndsWith(" numbers are the same.", Last(ran), StringComparison.Ordinal);
        Assert.Single(ran.OutLines);
    }

    [Fact]
    public void The_record_names_every_file_by_the_hash_that_the_file_has()
    {
        using var place = Recorded();
        using var record = JsonDocument.Parse(File.ReadAllText(place.PathOf(Kept)));

        var files = record.RootElement.GetProperty("files").EnumerateArray()
            .ToDictionary(f => f.GetProperty("path").GetString()!, f => f.GetProperty("sha256").GetString()!);

        Assert.Equal(
            ["pawl.yaml", "shipped:catalogue/steels.yaml", "specs/catalogue/lubricants.yaml", "specs/catalogue/materials.yaml", "specs/r450.yaml"],
            files.Keys);
        foreach (var path in files.Keys.Where(path => !path.StartsWith("shipped:", StringComparison.Ordinal)))
            Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(place.PathOf(path)))), files[path]);
        var inside = record.RootElement.GetProperty("shipped_files").EnumerateArray().Select(f => f.GetProperty("path").GetString()).ToArray();
        Assert.Contains("shipped:templates/report.md", inside);
        Assert.Contains("shipped:tables/iso286-standard-tolerances.csv", inside);
    }

    [Fact]
    public void The_hash_is_SHA_256_as_published()
    {
        using var place = new Workplace().With("abc", "abc");

        // FIPS 180-4, example of one block.
        Assert.Equal(
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
            FileHash.Of(place.Folder, "abc", out _, out _));
    }

    [Fact]
    public void A_changed_number_is_told_with_the_file_and_with_what_follows()
    {
        using var place = Recorded();
        Replace(place, "specs/r450.yaml", "profile_shift: 0.3", "profile_shift: 0.25");

        var ran = place.Run("verify", Kept);

        Assert.Equal(1, ran.Code);
        Assert.Contains("changed specs/r450.yaml: SHA-256 ", ran.Out, StringComparison.Ordinal);
        Assert.Contains("not verified", Last(ran), StringComparison.Ordinal);
        Assert.Contains("1 changed", Last(ran), StringComparison.Ordinal);
        Assert.Contains("differs ", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_comment_changes_the_file_and_no_result()
    {
        using var place = Recorded();
        Replace(place, "specs/r450.yaml", "pawl: 1", "# one line more\npawl: 1");

        var ran = place.Run("verify", Kept);

        Assert.Equal(1, ran.Code);
        Assert.Contains("changed specs/r450.yaml", ran.Out, StringComparison.Ordinal);
        Assert.Contains("numbers are the same", Last(ran), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_or_new_is_told()
    {
        using var place = Recorded();
        File.Move(place.PathOf("specs/catalogue/lubricants.yaml"), place.PathOf("specs/catalogue/oils.yaml"));

        var ran = place.Run("verify", Kept);

        Assert.Equal(1, ran.Code);
        Assert.Contains("missing specs/catalogue/lubricants.yaml: it is missing", ran.Out, StringComparison.Ordinal);
        Assert.Contains("added specs/catalogue/oils.yaml", ran.Out, StringComparison.Ordinal);

        File.Delete(place.PathOf("specs/r450.yaml"));
        ran = place.Run("verify", Kept);
        Assert.Equal(1, ran.Code);
        Assert.Contains("missing specs/r450.yaml", ran.Out, StringComparison.Ordinal);
        Assert.Contains("not computed again: ", ran.Out, StringComparison.Ordinal);
        Assert.Contains("--root", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void House_packs_of_the_command_line_are_found_again_and_a_new_limit_is_told()
    {
        using var first = new Workplace { Engine = Engine.Shipped };
        const string Pack = """
            pack: house
            version: 1.0.0
            title: House rules
            rules:
              - id: mesh/contact-ratio
                override: true
                at_least: 1.25
                reason: Customers heard the ones below that.
                approved_by: A. Designer
            """;
        Assert.Equal(0, first.Run("new", "Works", "--project").Code);
        Assert.Equal(0, first.Run("new", "R450").Code);
        first.With("house/own.yaml", Pack);
        Assert.Equal(0, first.Run("check", "--rules", "house", "--format", "json", "--output", "out").Code);
        Assert.Equal(0, first.Run("verify", Kept).Code);

        Replace(first, "house/own.yaml", "1.25", "1.26");
        var ran = first.Run("verify", Kept);

        Assert.Equal(1, ran.Code);
        Assert.Contains("changed house/own.yaml", ran.Out, StringComparison.Ordinal);
        Assert.Contains("rules[mesh/contact-ratio].limit: at least 1.26, recorded at least 1.25", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_was_altered_is_found_out()
    {
        using var place = Recorded();
        Alter(place, record =>
        {
            var finding = record["findings"]!.AsArray().First(f => f!["margin"] is not null)!;
            finding["margin"] = finding["margin"]!.GetValue<double>() + 1e-3;
            record["verdict"]!["word"] = "conforms_under_concession";
            record["id"] = "0123456789abcdef";
        });

        var ran = place.Run("verify", Kept, "--format", "json");

        Assert.Equal(1, ran.Code);
        using var answer = JsonDocument.Parse(ran.Out);
        var differences = answer.RootElement[0].GetProperty("differences").EnumerateArray().ToArray();
        Assert.Equal(["outcome", "number", "other"], differences.Select(d => d.GetProperty("kind").GetString()));
        Assert.Equal("verdict.word", differences[0].GetProperty("path").GetString());
        Assert.EndsWith("].margin", differences[1].GetProperty("path").GetString(), StringComparison.Ordinal);
        Assert.Equal("id", differences[2].GetProperty("path").GetString());
    }

    [Fact]
    public void What_another_machine_rounds_is_the_same_number()
    {
        using var place = Recorded();
        Alter(place, record =>
        {
            var finding = record["findings"]!.AsArray().First(f => f!["margin"] is not null)!;
            finding["margin"] = finding["margin"]!.GetValue<double>() * (1 + 1e-12);
        });

        Assert.Equal(0, place.Run("verify", Kept).Code);
    }

    [Fact]
    public void A_record_by_another_version_is_told_so()
    {
        using var place = Recorded();
        Alter(place, record => record["tool"]!["version"] = "0.0.9");

        var ran = place.Run("verify", Kept);
        Assert.Equal(0, ran.Code);
        Assert.Contains("made by pawl 0.0.9; this is pawl ", ran.Out, StringComparison.Ordinal);

        // With a key that this version does not know.
        Alter(place, record => record["colour"] = "red");
        ran = place.Run("verify", Kept);
        Assert.Equal(2, ran.Code);
        Assert.Contains("It was made by version 0.0.9 of the tool", ran.Error, StringComparison.Ordinal);

        Alter(place, record => record["format"] = 3);
        ran = place.Run("verify", Kept);
        Assert.Equal(2, ran.Code);
        Assert.Contains("format 3", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../secret.yaml")]
    [InlineData("/etc/hostname")]
    [InlineData("link.yaml")]
    public void A_record_makes_nobody_read_outside_of_the_project(string path)
    {
        using var outside = new Workplace().With("secret.yaml", "a: 1");
        using var place = Recorded();
        File.CreateSymbolicLink(place.PathOf("link.yaml"), outside.PathOf("secret.yaml"));
        Alter(place, record => record["files"]!.AsArray().Add(new JsonObject { ["path"] = path, ["sha256"] = new string('0', 64) }));

        var ran = place.Run("verify", Kept, "--format", "json");

        Assert.Equal(1, ran.Code);
        using var answer = JsonDocument.Parse(ran.Out);
        var file = answer.RootElement[0].GetProperty("files").EnumerateArray().Single(f => f.GetProperty("path").GetString() == path);
        Assert.Equal("not_read", file.GetProperty("state").GetString());
        Assert.False(file.TryGetProperty("now", out _));
    }

    [Fact]
    public void A_number_beyond_all_numbers_is_refused()
    {
        using var place = Recorded();
        var text = File.ReadAllText(place.PathOf(Kept));
        var at = text.IndexOf("\"margin\":", StringComparison.Ordinal) + 9;
        File.WriteAllText(place.PathOf(Kept), $"{text[..at]}1e999{text[text.IndexOfAny([',', '}'], at)..]}");

        var ran = place.Run("verify", Kept);

        Assert.Equal(2, ran.Code);
        Assert.Contains("not finite", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("not json")]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("{\"format\": 2}")]
    [InlineData("")]
    public void What_is_no_record_is_not_judged(string text)
    {
        using var place = new Workplace { Engine = Engine.Shipped }.With("r.json", text);

        Assert.Equal(2, place.Run("verify", "r.json").Code);
        Assert.Equal(2, place.Run("verify", "no-such.json").Code);
    }

    // RFC 6979, A.2.5: P-256, SHA-256.
    private const string X = "60FED4BA255A9D31C961EB74C6356D68C049B8923B61FA6CE669622E60F29FB6";
    private const string Y = "7903FE1008B8BC99A41AE9E95628BC64F2F1B20C2D7E9F5177A3C294D4462299";
    private const string Secret = "C9AFA9D845BA75166B5C215767B1D6934E50C3DB36E89B127B8A622B120F6721";

    private static ECDsa PublishedKey(bool isPrivate) => ECDsa.Create(new ECParameters
    {
        Curve = ECCurve.NamedCurves.nistP256,
        Q = new() { X = Convert.FromHexString(X), Y = Convert.FromHexString(Y) },
        D = isPrivate ? Convert.FromHexString(Secret) : null,
    });

    private static byte[] Pem(bool isPrivate)
    {
        using var key = PublishedKey(isPrivate);
        return System.Text.Encoding.ASCII.GetBytes(isPrivate ? key.ExportPkcs8PrivateKeyPem() : key.ExportSubjectPublicKeyInfoPem());
    }

    [Theory]
    [InlineData("sample", "EFD48B2AACB6A8FD1140DD9CD45E81D69D2C877B56AAF991C34D0EA84EAF3716", "F7CB1C942D657C41D436C7A1B6E29F65F3E900DBB9AFF4064DC4AB2F843ACDA8")]
    [InlineData("test", "F1ABB023518351CD71D881567B1EA663ED3EFCF6C5132B354F28D3B0B7D38367", "019F4113742A2B14BD25926B49C649155F267E60D3814B4C0CC84250E46F0083")]
    public void Published_signatures_are_valid_and_of_their_text_alone(string text, string r, string s)
    {
        var der = new System.Formats.Asn1.AsnWriter(System.Formats.Asn1.AsnEncodingRules.DER);
        using (der.PushSequence())
        {
            der.WriteIntegerUnsigned(Convert.FromHexString(r));
            der.WriteIntegerUnsigned(Convert.FromHexString(s.TrimStart('0') is { Length: var n } short_ && n % 2 == 1 ? "0" + short_ : s.TrimStart('0')));
        }

        var bytes = System.Text.Encoding.ASCII.GetBytes(text);
        Assert.True(Signatures.Verify(bytes, der.Encode(), Pem(isPrivate: false), out _));
        Assert.False(Signatures.Verify([.. bytes, 0], der.Encode(), Pem(isPrivate: false), out _));
        Assert.False(Signatures.Verify(bytes, [1, 2, 3], Pem(isPrivate: false), out _));
    }

    [Fact]
    public void A_signed_record_is_verified_by_key_and_by_openssl_and_refused_when_altered()
    {
        using var place = Recorded();
        File.WriteAllBytes(place.PathOf("office.pem"), Pem(isPrivate: true));
        File.WriteAllBytes(place.PathOf("office.pub.pem"), Pem(isPrivate: false));

        var signed = place.Run("sign", Kept, "--key", "office.pem");
        Assert.Equal((0, "out/r450.json.sig\n"), (signed.Code, signed.Out));
        var ran = place.Run("verify", Kept, "--key", "office.pub.pem");
        Assert.Equal(0, ran.Code);
        Assert.Equal("out/r450.json: the signature is valid", ran.OutLines[0]);
        if (OpenSsl(place, "dgst", "-sha256", "-verify", "office.pub.pem", "-signature", Kept + ".sig", Kept) is { } verdict)
        {
            Assert.Equal("Verified OK", verdict);
            OpenSsl(place, "dgst", "-sha256", "-sign", "office.pem", "-out", "theirs.sig", Kept);
            Assert.Equal(0, place.Run("verify", Kept, "--key", "office.pub.pem", "--signature", "theirs.sig").Code);
        }

        File.AppendAllText(place.PathOf(Kept), "\n");
        ran = place.Run("verify", Kept, "--key", "office.pub.pem");
        Assert.Equal(1, ran.Code);
        Assert.Contains("cli/bad-signature", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_key_that_does_not_serve_is_refused_with_the_reason()
    {
        using var place = Recorded();
        using var other = ECDsa.Create(ECCurve.NamedCurves.nistP384);
        using var rsa = RSA.Create(2048);
        place.With("p384.pem", other.ExportPkcs8PrivateKeyPem()).With("rsa.pem", rsa.ExportPkcs8PrivateKeyPem())
            .With("locked.pem", other.ExportEncryptedPkcs8PrivateKeyPem("x", new(PbeEncryptionAlgorithm.Aes128Cbc, HashAlgorithmName.SHA256, 1000)));
        File.WriteAllBytes(place.PathOf("office.pub.pem"), Pem(isPrivate: false));

        foreach (var (key, reason) in ((string, string)[])[("p384.pem", "another curve"), ("rsa.pem", "no PEM key of the kind EC"), ("locked.pem", "encrypted"), ("office.pub.pem", "public key"), ("pawl.yaml", "no PEM key")])
        {
            var ran = place.Run("sign", Kept, "--key", key);
            Assert.Equal(2, ran.Code);
            Assert.Contains(reason, ran.Error, StringComparison.Ordinal);
            Assert.False(File.Exists(place.PathOf(Kept + ".sig")));
        }

        Assert.Equal(2, place.Run("sign", Kept, "--key", "office.pub.pem", "--output", Kept).Code);
        Assert.Equal(2, place.Run("verify", Kept, "--signature", "x.sig").Code);
    }

    /// <summary>What openssl prints; null where it is not installed.</summary>
    private static string? OpenSsl(Workplace place, params string[] arguments)
    {
        try
        {
            var start = new ProcessStartInfo("openssl", arguments) { WorkingDirectory = place.Folder, RedirectStandardOutput = true, RedirectStandardError = true };
            using var process = Process.Start(start)!;
            var text = process.StandardOutput.ReadToEnd().Trim();
            process.WaitForExit();
            return text;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }
}
