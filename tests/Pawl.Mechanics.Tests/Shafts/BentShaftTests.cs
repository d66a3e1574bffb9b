using CsCheck;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Shafts;
using Pawl.Mechanics.Tests.Rating;

namespace Pawl.Mechanics.Tests.Shafts;

public class BentShaftTests
{
    private const double Modulus = 207_000;
    private static readonly ShaftSection Round = new(20);
    private static readonly double Stiffness = Modulus * Round.SecondMoment;

    private static readonly Gen<ShaftLoad> Load = Gen.Select(
        Gen.Double[-50, 250], Gen.Double[-2000, 2000], Gen.Double[-2000, 2000], Gen.Double[-20_000, 20_000], Gen.Double[-20_000, 20_000])
        .Select((place, x, y, coupleX, coupleY) => new ShaftLoad(place, x, y, 0, coupleX, coupleY));

    private static readonly Gen<(ShaftSegment[] Segments, ShaftSupport[] Supports)> Shaft = Gen.Select(
        Gen.Select(Gen.Double[15, 60], Gen.Double[0, 0.8]).Array[3], Gen.Double[20, 200], Gen.Double[20, 200], Gen.Double[-40, 60], Gen.Double[120, 240])
        .Select((sections, one, other, first, second) => (
            new ShaftSegment[]
            {
                new(one, new(sections[0].Item1, sections[0].Item1 * sections[0].Item2)),
                new(other, new(sections[1].Item1, sections[1].Item1 * sections[1].Item2)),
                new(500, new(sections[2].Item1, sections[2].Item1 * sections[2].Item2)),
            },
            new ShaftSupport[] { new(first, true), new(second, false) }));

    // Beam formulas of every textbook. 1 kN midway on 100 mm: F·L³/(48·E·I) = 0.01281 mm; slope F·L²/(16·E·I).
    [Fact]
    public void A_load_midway_bends_as_the_formula_says()
    {
        var bent = Simple(new ShaftLoad(50, 1000, 0));
        Assert.Equal(0.01281, bent.DeflectionAt(50).X, 5e-6);
        Assert.Equal(1000 * Math.Pow(100, 3) / 48 / Stiffness, bent.DeflectionAt(50).X, 1e-12);
        Assert.Equal(1000 * 100.0 * 100 / 16 / Stiffness, bent.SlopeAt(0).X, 1e-12);
        Assert.Equal(-bent.SlopeAt(0).X, bent.SlopeAt(100).X, 1e-12);
    }

    // Load F at a from the left, b from the right: y = F·a²·b²/(3·E·I·L); slopes F·a·b·(L + b)/(6·E·I·L), F·a·b·(L + a)/(6·E·I·L).
    [Fact]
    public void A_load_anywhere_bends_as_the_formulas_say() =>
        Gen.Double[1, 99].Sample(a =>
        {
            var b = 100 - a;
            var bent = Simple(new ShaftLoad(a, 0, 1000));
            return Near(1000 * a * a * b * b / (3 * Stiffness * 100), bent.DeflectionAt(a).Y)
                && Near(1000 * a * b * (100 + b) / (600 * Stiffness), bent.SlopeAt(0).Y)
                && Near(-1000 * a * b * (100 + a) / (600 * Stiffness), bent.SlopeAt(100).Y);
        });

    // Overhung load F at c beyond a span L: y = F·c²·(L + c)/(3·E·I); between the bearings it lifts by F·c·L²/(9·√3·E·I) at L/√3.
    [Fact]
    public void An_overhung_load_bends_as_the_formulas_say()
    {
        var bent = Simple(new ShaftLoad(140, 1000, 0));
        Assert.Equal(1000 * 40.0 * 40 * 140 / (3 * Stiffness), bent.DeflectionAt(140).X, 1e-12);
        Assert.Equal(-1000 * 40 * 100.0 * 100 / (9 * Math.Sqrt(3) * Stiffness), bent.DeflectionAt(100 / Math.Sqrt(3)).X, 1e-12);
    }

    // Weight w by length over the span: 5·w·L⁴/(384·E·I), slope w·L³/(24·E·I), moment w·L²/8.
    [Fact]
    public void A_line_load_bends_as_the_formulas_say()
    {
        var bent = BentShaft.Of(0, [new(100, Round)], Modulus, Bearings(), [], [new(0, 100, 0, 3)]);
        Assert.Equal(5 * 3 * Math.Pow(100, 4) / 384 / Stiffness, bent.DeflectionAt(50).Y, 1e-12);
        Assert.Equal(3 * Math.Pow(100, 3) / 24 / Stiffness, bent.SlopeAt(0).Y, 1e-12);
    }

    // A couple M at the left bearing: slopes M·L/(3·E·I) there and M·L/(6·E·I) at the far end, of opposite sign.
    [Fact]
    public void A_couple_at_a_bearing_bends_as_the_formula_says()
    {
        var bent = Simple(new ShaftLoad(0, 0, 0, 0, 0, 5000));
        Assert.Equal(5000 * 100 / (3 * Stiffness), Math.Abs(bent.SlopeAt(0).X), 1e-12);
        Assert.Equal(-bent.SlopeAt(0).X / 2, bent.SlopeAt(100).X, 1e-12);

        // Right-handed about y, z turns towards x: the end of the shaft goes the way the couple turns it.
        Assert.True(bent.SlopeAt(0).X > 0);
        Assert.True(Simple(new ShaftLoad(0, 0, 0, 0, 5000)).SlopeAt(0).Y < 0);
    }

    // The shaft cut into thin slices, M/(E·I) from the balance of what lies to the left, summed twice: nothing of the pieces is used.
    [Fact]
    public void A_stepped_hollow_shaft_bends_as_its_slices_do() =>
        Gen.Select(Shaft, Load.Array[1, 4]).Sample((shaft, loads) =>
        {
            var bent = BentShaft.Of(-60, shaft.Segments, Modulus, shaft.Supports, loads);
            const double step = 0.02;
            var all = loads.Concat(shaft.Supports.Zip(bent.Reactions, (s, r) => new ShaftLoad(s.Position, r.X, r.Y))).ToArray();
            double slope = 0, u = 0, one = 0, other = 0, seen = 0;
            for (var z = -60 + step / 2; z < 260; z += step)
            {
                var place = z + 60;
                var section = place < shaft.Segments[0].Length ? shaft.Segments[0].Section
                    : place < shaft.Segments[0].Length + shaft.Segments[1].Length ? shaft.Segments[1].Section : shaft.Segments[2].Section;
                var moment = all.Where(load => load.Position < z).Sum(load => load.X * (z - load.Position) - load.CoupleY);
                slope += moment / Modulus / section.SecondMoment * step;
                u += slope * step;
                if (z < shaft.Supports[0].Position) one = u;
                if (z < shaft.Supports[1].Position) other = u;
                if (z < 90) seen = u;
            }

            var (a, b) = (shaft.Supports[0].Position, shaft.Supports[1].Position);
            var expected = seen - one - (other - one) * (90 - a) / (b - a);
            var scale = all.Sum(load => Math.Abs(load.X)) * 1e-6 + all.Sum(load => Math.Abs(load.CoupleY)) * 1e-8 + Math.Abs(seen) + Math.Abs(one) + Math.Abs(other);
            return Math.Abs(bent.DeflectionAt(90).X - expected) <= 2e-3 * scale;
        }, iter: 60);

    // Maxwell and Betti: what 1 N here moves there, 1 N there moves here.
    [Fact]
    public void Influences_are_mutual() =>
        Gen.Select(Shaft, Gen.Double[-50, 250], Gen.Double[-50, 250]).Sample((shaft, one, other) =>
        {
            double Influence(double at, double seen) =>
                BentShaft.Of(-60, shaft.Segments, Modulus, shaft.Supports, [new(at, 1, 0)]).DeflectionAt(seen).X;
            return Math.Abs(Influence(one, other) - Influence(other, one)) < 1e-9 * Math.Max(Influence(one, one), Influence(other, other)) + 1e-15;
        });

    [Fact]
    public void Deflection_and_slope_are_steady_and_nothing_at_the_bearings() =>
        Gen.Select(Shaft, Load.Array[1, 4]).Sample((shaft, loads) =>
        {
            var bent = BentShaft.Of(-60, shaft.Segments, Modulus, shaft.Supports, loads);
            var places = loads.Select(load => load.Position).Append(shaft.Segments[0].Length - 60);
            var most = places.Max(place => bent.DeflectionAt(place).Magnitude) + 1e-6;
            return shaft.Supports.All(support => bent.DeflectionAt(support.Position).Magnitude < 1e-9 * most + 1e-12)
                && places.All(place =>
                    Math.Abs(bent.DeflectionAt(place).X - bent.DeflectionAt(place - 1e-7).X) < 1e-5 * most
                    && Math.Abs(bent.SlopeAt(place).Y - bent.SlopeAt(place - 1e-7).Y) < 1e-4 * most);
        });

    [Fact]
    public void Shafts_that_are_none_are_refused()
    {
        Refusal.Says("at least one segment", () => BentShaft.Of(0, [], Modulus, Bearings(), []).Reactions[0].X);
        Refusal.Says("must lie on the shaft", () => BentShaft.Of(0, [new(100, Round)], Modulus, Bearings(), [new(101, 1, 0)]).Reactions[0].X);
        Refusal.Says("is not on it", () => Simple().DeflectionAt(161).X);
        Refusal.Says("must begin before it ends", () => BentShaft.Of(0, [new(100, Round)], Modulus, Bearings(), [], [new(5, 5, 1, 0)]).Reactions[0].X);
        Refusal.Says("must be smaller than its outside", () => new ShaftSection(20, 20).Area);
    }

    private static ShaftSupport[] Bearings() => [new(0, true), new(100, false)];

    private static BentShaft Simple(params ShaftLoad[] loads) => BentShaft.Of(0, [new(160, Round)], Modulus, Bearings(), loads);

    private static bool Near(double expected, double found) => Math.Abs(found - expected) <= 1e-9 * Math.Abs(expected);
}
