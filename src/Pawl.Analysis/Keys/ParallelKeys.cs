using Pawl.Analysis.Core;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Keys;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.BodyInputs;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Keys;

/// <summary>Parallel keys between a shaft and a hub: pressure on both keyways, shear.</summary>
public sealed class ParallelKeys : Section<ParallelKeySpec>
{
    private const string Closed = "closed form";
    private const string Sizes = "DIN 6885-1";
    private const double Reversing = 0.7;
    private const string Method = "DIN 6892, method C";

    public static readonly NumberDefinition<ParallelKeySpec> Diameter =
        Number("diameter", "d", "Diameter of the shaft", Units.Millimetre).NeverNegative().Stated(static s => s.Diameter);

    public static readonly RowDefinition<ParallelKeySpec, ParallelKey> Section = Row<ParallelKey>("section", "Section of the standard")
        .By("by the diameter of the shaft", Sizes, Certainty.Published).Tables(ParallelKey.TableId)
        .From(Diameter.Limits(), static limits => ParallelKey.For(limits.Nominal), static key => FormattableString.Invariant($"{key.Width:0.#} mm × {key.Height:0.#} mm"));

    public static readonly RowDefinition<ParallelKeySpec, string> Ends = Text("ends", "Form of the ends").Stated(static s => s.Ends);

    public static readonly RowDefinition<ParallelKeySpec, string> ShaftFit = Text("shaft_fit", "Class of the keyway in the shaft").Stated(static s => s.ShaftFit);

    public static readonly RowDefinition<ParallelKeySpec, string> HubFit = Text("hub_fit", "Class of the keyway in the hub").Stated(static s => s.HubFit);

    public static readonly NumberDefinition<ParallelKeySpec> Count = Number("count", "n", "Number of keys").NeverNegative()
        .Stated(static s => s.Count).Assumed(1, "one key, for nothing else is stated");

    public static readonly NumberDefinition<ParallelKeySpec> Effective = Number("effective_keys", "n_e", "Keys that may be counted on")
        .By("1, of two 1.5", Method, Certainty.Memory)
        .From(Count, static count => ParallelKey.Effective((int)count));

    public static readonly NumberDefinition<ParallelKeySpec> Width = Number("width", "b", "Width of the key", Units.Millimetre).NeverNegative()
        .By("as stated, else by the diameter, class h9", Sizes, Certainty.Published)
        .Stated(static s => s.Width)
        .Range(Section, static key => OfClass(key.Width, 9));

    public static readonly NumberDefinition<ParallelKeySpec> StandardWidth = Number("standard_width", "b_s", "Width of the standard for the diameter", Units.Millimetre)
        .By("by the diameter", Sizes, Certainty.Published)
        .From(Section, static key => key.Width);

    public static readonly NumberDefinition<ParallelKeySpec> Height = Number("height", "h", "Height of the key", Units.Millimetre)
        .By("as stated, else by the diameter, class h11, of a square key h9", Sizes, Certainty.Published)
        .Stated(static s => s.Height)
        .Range(Section, static key => OfClass(key.Height, key.Width == key.Height ? 9 : 11));

    public static readonly NumberDefinition<ParallelKeySpec> ShaftDepth = Number("shaft_depth", "t_1", "Depth of the keyway in the shaft", Units.Millimetre)
        .By("as stated, else by the diameter", Sizes, Certainty.Published)
        .Stated(static s => s.ShaftDepth)
        .Range(Section, static key => new Extent(key.ShaftDepth, key.ShaftDepth, key.ShaftDepth + key.DepthDeviation));

    public static readonly NumberDefinition<ParallelKeySpec> Chamfer = Number("chamfer", "s", "Maximum chamfer of the edges", Units.Millimetre)
        .By("as stated, else by the diameter", Sizes, Certainty.Memory)
        .Stated(static s => s.Chamfer)
        .From(Section, static key => key.MaxChamfer);

    public static readonly NumberDefinition<ParallelKeySpec> Length = Number("length", "l", "Length of the key", Units.Millimetre).Stated(static s => s.Length);

    public static readonly NumberDefinition<ParallelKeySpec> BearingLength = Number("bearing_length", "l_tr", "Length that bears", Units.Millimetre)
        .By("l_tr = min(l − n_r·b/2, 1.3·d), n_r round ends", $"{Sizes}; {Method}", Certainty.Memory)
        .From(Length, Width, Ends, Diameter, static (length, width, ends, d) => ParallelKey.BearingLength(length, width, RoundEnds(ends), d));

    public static readonly NumberDefinition<ParallelKeySpec> HubHeight = Number("hub_height", "h_N", "Height that bears in the hub", Units.Millimetre)
        .By("h_N = h − t_1 − s", Closed)
        .From(Height, ShaftDepth, Chamfer, static (height, depth, chamfer) => height - depth - chamfer);

    public static readonly NumberDefinition<ParallelKeySpec> ShaftHeight = Number("shaft_height", "h_W", "Height that bears in the shaft", Units.Millimetre)
        .By("h_W = t_1 − s", Closed).Noted("the keyway is measured at its middle; at the flank it is less deep by the height of the arc")
        .From(ShaftDepth, Chamfer, static (depth, chamfer) => depth - chamfer);

    public static readonly NumberDefinition<ParallelKeySpec> Torque = Number("torque", "T", "Maximum torque of the keys", Units.NewtonMetre)
        .By("as stated; else T = |T_body|·K_A·f_p", "torque balance").Scaled(1000)
        .Stated(static s => s.Torque)
        .From(BodyTorque, ApplicationFactor, PeakOverRated, static (torque, application, peak) => Math.Abs(torque) * application * peak)
        .Custom(static subject => ((ParallelKeySpec)subject.Model).Carries is { } body
            ? Quantity.NotEvaluated(Torque!, [], $"the torque of {body.Value} is not known")
            : null)
        .Asking("carries or torque");

    public static readonly NumberDefinition<ParallelKeySpec> Force = Number("force", "F", "Force on the keys", Units.Newton)
        .By("F = 2·T/d", "statics").Scaled(1).Noted("friction of a press fit is not counted")
        .From(Torque, Diameter, ParallelKey.Force);

    public static readonly NumberDefinition<ParallelKeySpec> HubPressure = Number("hub_pressure", "p_N", "Mean pressure on the keyway of the hub", Units.Megapascal)
        .By("p_N = F/(l_tr·h_N·n_e)", Method).Scaled(1)
        .From(Force, BearingLength, HubHeight, Effective, ParallelKey.Stress);

    public static readonly NumberDefinition<ParallelKeySpec> ShaftPressure = Number("shaft_pressure", "p_W", "Mean pressure on the keyway of the shaft", Units.Megapascal)
        .By("p_W = F/(l_tr·h_W·n_e)", Method).Scaled(1)
        .From(Force, BearingLength, ShaftHeight, Effective, ParallelKey.Stress);

    public static readonly NumberDefinition<ParallelKeySpec> Shear = Number("shear_stress", "τ", "Mean shear stress of the keys", Units.Megapascal)
        .By("τ = F/(l_tr·b·n_e)", Closed).Scaled(1)
        .From(Force, BearingLength, Width, Effective, ParallelKey.Stress);

    public static readonly NumberDefinition<ParallelKeySpec> KeyYield = Number("key_yield", "R_e", "Yield of the key", Units.Megapascal).Stated(static s => s.KeyYield);

    public static readonly NumberDefinition<ParallelKeySpec> ShaftYield =
        Number("shaft_yield", "R_e,W", "Yield of the shaft", Units.Megapascal).Stated(static s => s.ShaftYield);

    public static readonly NumberDefinition<ParallelKeySpec> HubYield = Number("hub_yield", "R_e,N", "Yield of the hub", Units.Megapascal).Stated(static s => s.HubYield);

    public static readonly NumberDefinition<ParallelKeySpec> HubShare = Number("hub_pressure_share", "p_N/R_e", "Pressure on the hub over the lesser yield of key and hub")
        .By("p_N/min(R_e, R_e,N)", Method).Scaled(0.9)
        .From(HubPressure, KeyYield, HubYield, static (pressure, key, hub) => pressure / Math.Min(key, hub));

    public static readonly NumberDefinition<ParallelKeySpec> ShaftShare =
        Number("shaft_pressure_share", "p_W/R_e", "Pressure on the shaft over the lesser yield of key and shaft")
        .By("p_W/min(R_e, R_e,W)", Method).Scaled(0.9)
        .From(ShaftPressure, KeyYield, ShaftYield, static (pressure, key, shaft) => pressure / Math.Min(key, shaft));

    public static readonly NumberDefinition<ParallelKeySpec> LengthRatio = Number("length_ratio", "l/d", "Length of the key over the diameter")
        .By("l/d", Closed)
        .From(Length, Diameter, static (length, d) => length / d);

    public static readonly RowDefinition<ParallelKeySpec, string> Direction = Text("direction", "Torque in one direction or both")
        .By("both where a reverse torque is stated or follows", "the duty", Certainty.Declared)
        .From(ReverseTorque, static reverse => reverse > 0 ? "both" : "one", static direction => direction);

    public static readonly NumberDefinition<ParallelKeySpec> ReversalFactor = Number("reversal_factor", "f_w", "Share of the permitted pressure where the torque reverses")
        .By("as stated; else 0.7 where the torque reverses, 1 in one direction", "common practice, no source; DIN 6892, method B, has a curve by the number of reversals", Certainty.CommonPractice)
        .Stated(static s => s.ReversalFactor)
        .From(Direction, static direction => direction == "both" ? Reversing : 1);

    public static readonly NumberDefinition<ParallelKeySpec> BearingShare = Number("bearing_share", "l_tr/l", "Length that bears over the length of the key")
        .By("l_tr/l", Closed)
        .From(BearingLength, Length, static (bearing, length) => bearing / length);

    public static readonly NumberDefinition<ParallelKeySpec> HubOutside =
        Number("hub_outside", "D", "Outside diameter of the hub", Units.Millimetre).Stated(static s => s.HubOutside);

    public static readonly NumberDefinition<ParallelKeySpec> HubDepth = Number("hub_depth", "t_2", "Depth of the keyway in the hub", Units.Millimetre)
        .By("as stated, else by the diameter", Sizes, Certainty.Published)
        .Stated(static s => s.HubDepth)
        .Range(Section, static key => new Extent(key.HubDepth, key.HubDepth, key.HubDepth + key.DepthDeviation));

    public static readonly NumberDefinition<ParallelKeySpec> HubWall = Number("hub_wall", "s_N", "Wall of the hub over its keyway", Units.Millimetre)
        .By("s_N = (D − d)/2 − t_2", Closed).Scaled(1)
        .From(HubOutside, Diameter, HubDepth, ParallelKey.HubWall);

    public static readonly NumberDefinition<ParallelKeySpec> HubRatio = Number("hub_ratio", "D/d", "Outside of the hub over the diameter of the shaft").NeverNegative()
        .By("D/d", Closed)
        .From(HubOutside, Diameter, static (outside, d) => outside / d);

    public static readonly NumberDefinition<ParallelKeySpec> HubShear = Number("hub_shear_stress", "τ_N", "Shear stress of the hub beyond its keyway", Units.Megapascal)
        .By("τ_N = 16·T·D/(π·(D⁴ − (d + 2·t_2)⁴))", "torsion of a tube, the keyway taken all round").Scaled(1)
        .From(Torque, HubOutside, Diameter, HubDepth, ParallelKey.HubShear);

    public static readonly RowDefinition<ParallelKeySpec, string> HubHeld = Text("hub_held", "What holds the hub along the shaft")
        .OneOf("none", "clamped", "retaining ring", "press fit", "set screw").Stated(static s => s.HubHeld).Assumed("none", "nothing, for nothing is stated");

    /// <summary>All keys, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.ParallelKeys.Entries)
        {
            context.Begin(SubjectKinds.ParallelKey, $"parallel_keys.{spec.Name.Value}", spec.Name.Span, spec)
                .Relate("train", () => context.Find(SubjectKinds.Train, "train"))
                .RelateOptional("body", () => spec.Carries is { } body ? context.Find(SubjectKinds.Body, $"bodies.{body.Value}") : null);
        }
    }

    private static int RoundEnds(string ends) => ends switch { "round" => 2, "one-round" => 1, _ => 0 };

    private static Extent OfClass(double nominal, int grade)
    {
        var limits = Iso286.Limits("h", grade, nominal);
        return new(nominal, nominal + limits.Lower, nominal + limits.Upper);
    }
}
