using Pawl.Analysis.Core;
using K = Pawl.Analysis.Rating.DutyQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>What the duty asks of the gears, as quantities of the train, with the shares of the service life.</summary>
internal sealed class DutyBuilder
{
    private DutyBuilder(Subject train, ImmutableArray<Subject> cases) => (Train, Cases) = (train, cases);

    public Subject Train { get; }

    /// <summary>The shares of the service life; empty when the rated load lasts all of it.</summary>
    public ImmutableArray<Subject> Cases { get; }

    /// <summary>Whether the torques of the spectrum hold the dynamic peaks, so that K_A does not apply to them.</summary>
    public bool PeaksIncluded => Train.Find(K.SpectrumPeaks)?.Text == "included";

    /// <summary>Whether a few pits are permitted.</summary>
    public bool PermitsPitting => Train[K.Pitting].Text == "limited";

    /// <summary>Whether strength holds at long life.</summary>
    public bool IsFullAtLongLife => Train[K.LongLife].Text == "full";

    public Quantity this[QuantityKind kind] => Train[kind];

    public static DutyBuilder Build(AnalysisContext context, Subject train)
    {
        var cases = ImmutableArray.CreateBuilder<Subject>();
        foreach (var bin in context.Spec.Duty?.Spectrum ?? [])
            cases.Add(context.Begin(SubjectKinds.LoadCase, $"duty.spectrum[{cases.Count}]", bin.Span, bin).Relate("train", train));
        return new(train, cases.ToImmutable());
    }
}
