using Pawl.Analysis.Core;

namespace Pawl.Analysis.Tests;

/// <summary>Sections add themselves and reach each other on demand: nothing depends on which comes first.</summary>
public class SectionOrderTests
{
    // The last digits of a worst case depend on the order in which tolerances are walked.
    private const double Rounding = 1e-12;

    [Theory]
    [InlineData("specs/tarn-180/r180.yaml")]
    [InlineData("specs/tarn-120/r400.yaml")]
    [InlineData("specs/beck-90/r760.yaml")]
    public void Every_order_of_sections_gives_the_same(string path)
    {
        var usual = SpecText.AnalyseFile(path);
        foreach (var seed in (ReadOnlySpan<int>)[0, 1, 2])
        {
            var order = SubjectKinds.All.ToArray();
            if (seed == 0)
                Array.Reverse(order);
            else
                new Random(seed).Shuffle(order);
            var other = GearboxAnalyser.Analyse(usual.Spec, order);

            Assert.Equal(usual.Subjects.Select(subject => subject.Path), other.Subjects.Select(subject => subject.Path));
            foreach (var (one, two) in usual.Subjects.SelectMany(subject => subject.Quantities).Zip(other.Subjects.SelectMany(subject => subject.Quantities)))
                Assert.True(Same(one, two), $"{one}: {one.Text}{one.Value} and {two.Text}{two.Value}");
        }
    }

    private static bool Same(Quantity one, Quantity two) =>
        one.ToString() == two.ToString() && one.Text == two.Text && one.Truth == two.Truth && one.Reasons.SequenceEqual(two.Reasons)
        && Near(one.Value.Nominal, two.Value.Nominal) && Near(one.Value.Min, two.Value.Min) && Near(one.Value.Max, two.Value.Max);

    private static bool Near(double one, double two) => one == two || Math.Abs(one - two) <= Rounding * Math.Max(Math.Abs(one), Math.Abs(two));
}
