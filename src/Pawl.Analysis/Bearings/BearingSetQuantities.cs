using Pawl.Analysis.Core;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using B = Pawl.Analysis.Bearings.BearingQuantities;
using L = Pawl.Analysis.Bearings.BearingLifeQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>What a bearing adds to the life of all bearings together: its own, and those of its likes in the other planets.</summary>
public sealed class BearingSetQuantities : Section<BearingSpec>
{
    internal static NumberDefinition<BearingSpec> Life => L.BasicLife;

    public static readonly NumberDefinition<BearingSpec> Exponent = Number("weibull_exponent", "e", "Weibull exponent of its life").NeverNegative()
        .By("10/9 balls, 9/8 rollers", "ISO 281, ISO/TR 1281-1")
        .Unless(B.Refused)
        .From(B.Arrangement, static place => SetLife.Exponent(place.Type!));

    public static readonly NumberDefinition<BearingSpec> PlanetCount = Number("planet_count", "N", "Planets of its set").NeverNegative()
        .By("count of the planet set", "the spec", Certainty.Declared)
        .When(static (_, subject) => BearingWork.Of(subject).Copies > 1)
        .Solved([], static (_, subject) => BearingWork.Of(subject).Copies);

    public static readonly NumberDefinition<BearingSpec> Sharing = Number("planet_sharing", "K_γ", "Load of the most loaded planet over the mean").NeverNegative()
        .By("the least of the meshes of the planet", "the meshes")
        .When(static (_, subject) => BearingWork.Of(subject).Copies > 1)
        .Solved([B.InputSpeed], B.LoadReasons, static (_, subject) => BearingWork.Of(subject).LeastSharing());

    public static readonly NumberDefinition<BearingSpec> OtherShare =
        Number("other_planet_share", "K_o/K_γ", "Tooth load of each other planet over that of the most loaded").NeverNegative()
        .By("(N − K_γ)/((N − 1)·K_γ)", "equilibrium: one planet carries K_γ times the mean, the others share the rest evenly")
        .From(PlanetCount, Sharing, static (count, sharing) => PlanetLoadSharing.OfTheOthers((int)count, sharing) / sharing);

    public static readonly NumberDefinition<BearingSpec> MeanLoadOfOthers =
        Number("mean_load_of_others", "P_m'", "Mean equivalent load of such a bearing in the other planets", Units.Newton).NeverNegative()
        .By("as P_m, every tooth force times K_o/K_γ, the orbit whole", "ISO/TR 1281-2")
        .Solved([OtherShare, B.EquivalentLoad, B.RelativeSpeed], B.LoadReasons, static (_, subject) => BearingWork.Of(subject).MeanLoadOfOthers());

    public static readonly NumberDefinition<BearingSpec> LifeOfOthers =
        Number("life_of_others", "L_10h'", "Basic rating life of such a bearing in the other planets", Units.Hour).NeverNegative()
        .By("L_10h' = (C_s/P_m')^p·10⁶/(60·n_m), p = 3 balls, 10/3 rollers", "ISO 281:2007")
        .Noted("10⁶ h at most are told")
        .Solved([B.SetRating, MeanLoadOfOthers, B.RelativeSpeed], B.LoadReasons, static (_, subject) => BearingWork.Of(subject).LifeOfOthers());
}
