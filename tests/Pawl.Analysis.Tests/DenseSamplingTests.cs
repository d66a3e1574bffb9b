using System.Globalization;
using Pawl.Analysis.Core;

namespace Pawl.Analysis.Tests;

/// <summary>The worst case of a report covers every part that its tolerances allow.</summary>
public class DenseSamplingTests
{
    // Seeded: the same points on every machine. Half of them at limits, where most extremes lie, and half between.
    private const int Points = 2000;

    // Sums in another order differ in their last digits.
    private const double Rounding = 1e-9;

    [Theory]
    [MemberData(nameof(Shipped))]
    public void No_part_within_its_tolerances_is_worse_than_the_reported_worst_case(string path) =>
        IsCovered(SpecText.AnalyseFile(path));

    // Fast meshes: below, at the lower limit of, inside and above the main resonance range of one of their meshes.
    [Theory]
    [InlineData("specs/tarn-180/r180.yaml", 12_000)]
    [InlineData("specs/tarn-180/r180.yaml", 29_800)]
    [InlineData("specs/tarn-180/r180.yaml", 44_000)]
    [InlineData("specs/tarn-180/r148.yaml", 15_000)]
    [InlineData("specs/tarn-180/r148.yaml", 25_000)]
    [InlineData("specs/tarn-120/r400.yaml", 9_000)]
    [InlineData("specs/tarn-120/r400.yaml", 25_000)]
    [InlineData("specs/tarn-120/r400.yaml", 34_000)]
    [InlineData("specs/tarn-120/r525.yaml", 50_000)]
    [InlineData("specs/beck-90/r760.yaml", 6_000)]
    [InlineData("specs/beck-90/r760.yaml", 20_000)]
    [InlineData("specs/beck-90/r760.yaml", 60_000)]
    [InlineData("specs/beck-90/r760.yaml", 75_000)]
    public void Nor_is_one_of_a_fast_drive(string path, int speed) =>
        IsCovered(SpecText.AnalyseChanged(path, $"duty: {{input: {{speed: {speed} rpm}}}}"));

    private static void IsCovered(GearboxAnalysis analysis)
    {
        var quantities = analysis.Subjects.SelectMany(subject => subject.Quantities)
            .Where(quantity => quantity is { IsEvaluated: true, Kind.ValueKind: ValueKind.Number }).ToArray();
        var random = new Random(20260115);
        var outside = new SortedDictionary<string, double>(StringComparer.Ordinal);
        var moved = new HashSet<Quantity>();

        for (var point = 0; point < Points; point++)
        {
            var leaves = new Dictionary<Quantity, double>();
            var known = new Dictionary<Quantity, double>();
            foreach (var quantity in quantities)
            {
                var value = quantity.At(Leaf, known);
                if (value != quantity.Value.Nominal)
                    moved.Add(quantity);
                var room = Rounding * Math.Max(quantity.Kind.Scale * 1e-3, Math.Abs(quantity.Value.Nominal));
                var beyond = Math.Max(quantity.Value.Min - value, value - quantity.Value.Max);
                if (!(beyond <= room))
                    outside[quantity.ToString()] = Math.Max(beyond, outside.GetValueOrDefault(quantity.ToString()));
            }

            double Leaf(Quantity leaf)
            {
                if (!leaves.TryGetValue(leaf, out var value))
                {
                    var share = random.Next(4) switch { 0 => 0, 1 => 1, _ => random.NextDouble() };
                    leaves.Add(leaf, value = leaf.Value.Min + share * (leaf.Value.Max - leaf.Value.Min));
                }

                return value;
            }
        }

        Assert.NotEmpty(moved);
        Assert.True(
            outside.Count == 0,
            string.Join('\n', outside.Select(each => string.Create(CultureInfo.InvariantCulture, $"{each.Key} by {each.Value:g3}"))));
    }

    /// <summary>A number with a toleranced input that was computed at nominal alone would hide the worst case.</summary>
    [Theory]
    [MemberData(nameof(Shipped))]
    public void No_number_is_computed_at_nominal_of_toleranced_inputs(string path)
    {
        var hidden = SpecText.AnalyseFile(path).Subjects.SelectMany(subject => subject.Quantities)
            .Where(quantity => quantity is { IsEvaluated: true, Kind.ValueKind: ValueKind.Number, Formula: null, Leaves.IsEmpty: true }
                && quantity.Inputs.Any(input => !input.Leaves.IsEmpty)
                && !quantity.Kind.Note.Contains("at nominal", StringComparison.Ordinal))
            .Select(quantity => quantity.Kind.ToString()).Distinct().Order(StringComparer.Ordinal);

        Assert.True(!hidden.Any(), string.Join(", ", hidden));
    }

    public static TheoryData<string> Shipped => TrainOfSpecsTests.Shipped;
}
