using Pawl.Reports.Output;

namespace Pawl.Reports.Tests;

public sealed class ReportWriterTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("pawl-reports-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Folders_are_made_and_files_replaced()
    {
        OutputFile[] files = [new("tarn-180/r180.md", "old"), new("tarn-180/r180.md", "new µ\n")];

        Assert.Empty(ReportWriter.Write(Path.Combine(_folder, "out"), files));

        var written = Path.Combine(_folder, "out", "tarn-180", "r180.md");
        Assert.Equal("new µ\n"u8.ToArray(), File.ReadAllBytes(written));
        Assert.Single(Directory.GetFiles(Path.GetDirectoryName(written)!));
    }

    [Fact]
    public void A_full_disk_is_told_and_leaves_the_old_file_and_nothing_else()
    {
        var path = Path.Combine(_folder, "r180.md");
        File.WriteAllText(path, "old");

        var failure = ReportWriter.WriteFile(path, new string('x', 100_000), p => new FullDisk(p));

        Assert.Equal(new WriteFailure(path, "the disk is full"), failure);
        Assert.Equal("old", File.ReadAllText(path));
        Assert.Single(Directory.GetFiles(_folder));
    }

    [Fact]
    public void A_device_that_is_full_is_told_and_not_replaced()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "only Linux has this device");

        Assert.Equal("the disk is full", ReportWriter.WriteFile("/dev/full", "text")?.Reason);
        Assert.True(File.Exists("/dev/full"));
        Assert.Null(ReportWriter.WriteFile("/dev/null", "text"));
    }

    [Fact]
    public void A_folder_in_place_of_the_file_is_told()
    {
        var path = Path.Combine(_folder, "r180.md");
        Directory.CreateDirectory(path);

        Assert.Equal("it is a folder", ReportWriter.WriteFile(path, "text")?.Reason);
    }

    [Fact]
    public void A_file_in_place_of_a_folder_is_told()
    {
        File.WriteAllText(Path.Combine(_folder, "tarn-180"), "");

        var failure = Assert.Single(ReportWriter.Write(_folder, [new("tarn-180/r180.md", "text")]));

        Assert.Equal("a part of its path is no folder", failure.Reason);
    }

    [Fact]
    public void A_path_out_of_the_folder_is_refused_and_the_others_are_written()
    {
        var failure = Assert.Single(ReportWriter.Write(Path.Combine(_folder, "out"), [new("../outside.md", "text"), new("inside.md", "text")]));

        Assert.Equal("the path leads out of the output folder", failure.Reason);
        Assert.False(File.Exists(Path.Combine(_folder, "outside.md")));
        Assert.True(File.Exists(Path.Combine(_folder, "out", "inside.md")));
    }

    [Theory]
    [InlineData("specs/tarn-180/r180.yaml", "tarn-180/r180")]
    [InlineData("r180.yml", "r180")]
    [InlineData("specs.yaml", "specs")]
    [InlineData("-", "stdin")]
    [InlineData("../../etc/passwd.yaml", "etc/passwd")]
    [InlineData("/etc/./x.yaml", "etc/x")]
    [InlineData("..\\..\\x.yaml", "x")]
    [InlineData("C:/x.yaml", "C_/x")]
    [InlineData("specs/con.yaml", "_con")]
    [InlineData("specs/index.yaml", "index-2")]
    [InlineData("specs/a b/ü.yaml", "a b/ü")]
    [InlineData("specs/x. /y.yaml", "x._/y")]
    [InlineData("..", "spec")]
    public void A_report_is_named_after_the_path_of_its_spec(string spec, string name) => Assert.Equal([name], ReportNames.Of([spec]));

    [Fact]
    public void Two_specs_never_share_a_name() =>
        Assert.Equal(["a/x", "a/x-2", "a/X-3"], ReportNames.Of(["specs/a/x.yaml", "specs/a/x.yml", "a/X.yaml"]));

    private sealed class FullDisk(string path) : FileStream(path, FileMode.CreateNew)
    {
        private const int NoSpaceLeft = 28;

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            base.Write(buffer[..(buffer.Length / 2)]);
            throw new IOException("No space left on device", NoSpaceLeft);
        }
    }
}
