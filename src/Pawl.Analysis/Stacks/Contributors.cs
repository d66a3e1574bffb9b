using Pawl.Analysis.Core;
using Pawl.Analysis.Fits;
using Pawl.Mechanics.Stacks;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Stacks;

/// <summary>One size in a stack.</summary>
public sealed class Contributors : Section<ContributorSpec>
{
    private const string Spec = "the spec";

    public static readonly RowDefinition<ContributorSpec, string> Label = Text("name", "Name")
        .By("key of the entry", "the spec", Certainty.Declared).Named(static s => s.Name.Value);

    public static readonly NumberDefinition<ContributorSpec> Size = Number("size", "m ± h", "Size", Units.Millimetre).Stated(static s => s.Size);

    public static readonly NumberDefinition<ContributorSpec> Coefficient =
        Number("coefficient", "c", "Sensitivity of the gap; positive: the size opens it")
        .By("by its faces along the loop, times the stated coefficient", "the loop closes")
        .Custom(static subject => Quantity.Computed(Coefficient!, Sensitivity(StackOf(subject), (ContributorSpec)subject.Model), []));

    public static readonly RowDefinition<ContributorSpec, string> Distribution = Text("distribution", "Distribution of the size")
        .By("as stated, else normal", Spec, Certainty.Declared)
        .Stated(static s => s.Distribution)
        .Named(static _ => "normal");

    public static readonly NumberDefinition<ContributorSpec> Capability =
        Number("capability", "C_p", "Process capability; absent: 1").Stated(static s => s.Capability).Optional();

    public static readonly RowDefinition<ContributorSpec, PartMaterial> Material = Row<PartMaterial>("material", "Material")
        .When(static s => s.Expansion is null)
        .Custom(static subject => PartMaterial.Of(
            subject.Context, Material!, ((ContributorSpec)subject.Model).Part, ((ContributorSpec)subject.Model).Material));

    public static readonly NumberDefinition<ContributorSpec> Expansion =
        Number("expansion", "α", "Thermal expansion", Units.PerKelvin)
        .By("as stated, else that of the material", "the spec; the catalogue", Certainty.Declared)
        .Stated(static s => s.Expansion)
        .Custom(static subject => PartMaterial.ExpansionOf(subject.Context, Expansion!, subject[Material]));

    public static readonly NumberDefinition<ContributorSpec> ColdTemperature =
        Number("cold_temperature", "θ_c", "Temperature at the coldest start", Units.Celsius)
        .Found(static (_, subject) => subject.Context.Spec.Duty?.Oil?.Coldest, static _ => "duty.oil.coldest");

    public static readonly NumberDefinition<ContributorSpec> OilRunning =
        Number("oil_running", "θ_oil", "Oil temperature in continuous service", Units.Celsius)
        .Found(static (_, subject) => subject.Context.Spec.Duty?.Oil?.Running, static _ => "duty.oil.running");

    public static readonly NumberDefinition<ContributorSpec> OilHottest =
        Number("oil_hottest", "θ_max", "Maximum oil temperature", Units.Celsius)
        .Found(static (_, subject) => subject.Context.Spec.Duty?.Oil?.Hottest, static _ => "duty.oil.hottest");

    public static readonly NumberDefinition<ContributorSpec> RunningTemperature =
        Number("running_temperature", "θ_r", "Temperature in continuous service", Units.Celsius)
        .By("as stated, else that of the oil", Spec, Certainty.Declared)
        .Stated(static s => s.Running)
        .From(OilRunning, static oil => oil);

    public static readonly NumberDefinition<ContributorSpec> HotTemperature =
        Number("hot_temperature", "θ_h", "Temperature at the maximum oil temperature", Units.Celsius)
        .By("θ_h = θ_max, of a size with a running temperature of its own θ_max + θ_r − θ_oil", "closed form")
        .For(static s => s.Running is null).From(OilHottest, static oil => oil)
        .From(RunningTemperature, OilHottest, OilRunning, static (own, hottest, running) => own + hottest - running);

    public static readonly RowDefinition<ContributorSpec, string> Side = Text("side", "Side of the shaft or of the housing while warming up")
        .When(WarmsUp)
        .Stated(static s => s.Side)
        .Custom(static subject => AnalysisContext.Missing(
            Side!, $"{subject.Reach("stack")!.Path}.contributors.{((ContributorSpec)subject.Model).Name.Value}.side"));

    public static readonly NumberDefinition<ContributorSpec> WarmUpTemperature =
        Number("warm_up_temperature", "θ_w", "Temperature while warming up", Units.Celsius)
        .By("that of its side", Spec, Certainty.Declared)
        .From(
            Side, Of("stack", static () => SizeStacks.WarmShaft), Of("stack", static () => SizeStacks.WarmHousing),
            static (side, shaft, housing) => side == "shaft" ? shaft : housing);

    public static readonly NumberDefinition<ContributorSpec> ShareOfWorstCase =
        Number("share_of_worst_case", "", "Share of the worst case", Units.Percent)
        .By("|c|·h/Σ |c|·h", "sensitivities of a sum").Scaled(0.1)
        .From(OfRow("stack", static () => SizeStacks.Chain), Label, static (chain, name) => Share(chain, name).OfWorstCase);

    public static readonly NumberDefinition<ContributorSpec> ShareOfVariance =
        Number("share_of_variance", "", "Share of the variance", Units.Percent)
        .By("(c·σ_i)²/Σ (c·σ_i)²", "sensitivities of a sum").Scaled(0.1)
        .From(OfRow("stack", static () => SizeStacks.Chain), Label, static (chain, name) => Share(chain, name).OfVariance);

    internal static Subject Add(AnalysisContext context, ContributorSpec spec, string path, Subject stack) =>
        context.Begin(SubjectKinds.Contributor, path, spec.Name.Span, spec).Relate("stack", stack);

    private static StackSpec StackOf(Subject subject) => (StackSpec)subject.Reach("stack")!.Model;

    private static bool WarmsUp(ContributorSpec spec, Subject subject) => StackOf(subject).WarmUp is not null;

    private static double Sensitivity(StackSpec stack, ContributorSpec spec)
    {
        var sign = StackLoop.Sign(stack, spec);
        return sign == 0 ? spec.Coefficient!.Value : sign * Math.Abs(spec.Coefficient?.Value ?? 1);
    }

    private static StackShare Share(SizeChain chain, string name) => chain.Shares.First(share => share.Name == name);
}
