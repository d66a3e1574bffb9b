using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using Settled = Pawl.Mechanics.Joints.Embedding;

namespace Pawl.Analysis.Joints;

/// <summary>How far the faces of a joint settle under its preload.</summary>
public sealed class JointEmbedding : Section<JointSpec>
{
    private const string ByRoughness = "by Rz; of a joint that carries torque across the bolt, else along it";

    private static readonly IInput<bool> Shear = OwnRow<bool>(static () => Joints.CarriesTorque);

    public static readonly NumberDefinition<JointSpec> Faces = Number("faces", "n_f", "Faces of head and nut that embed")
        .By("one under the head or the central nut, one more under a nut", "count of faces")
        .Counted(static s => Joints.IsCentral(s) || s.Tapped is not null ? 1 : 2);

    // Interfaces between the layers, and the one to the tapped part or to the shoulder; a pack of k shims has k + 1 faces instead of two.
    public static readonly NumberDefinition<JointSpec> Interfaces = Number("interfaces", "n_i", "Interfaces that embed")
        .By("one between each two layers, one to the tapped part or shoulder, one more for each shim beyond the first", "count of faces")
        .Counted(static s => s.Clamped.Length - 1 + (Joints.IsCentral(s) || s.Tapped is not null ? 1 : 0) + Math.Max(0, (s.Shims?.Value ?? 0) - 1));

    public static readonly NumberDefinition<JointSpec> Roughness = Number("roughness", "Rz", "Roughness of the faces", Units.Micrometre)
        .When(static s => s.Embedding is null || s.Roughness is not null).Stated(static s => s.Roughness);

    public static readonly NumberDefinition<JointSpec> OfThread = Number("thread_embedding", "f_th", "Embedding of the thread", Units.Micrometre)
        .By(ByRoughness, Joints.Vdi, Certainty.Memory).Tables(Settled.TableId)
        .From(Roughness, Shear, static (rz, shear) => Settled.Amounts(rz, shear).Thread);

    public static readonly NumberDefinition<JointSpec> OfFace = Number("face_embedding", "f_f", "Embedding of a face under head or nut", Units.Micrometre)
        .By(ByRoughness, Joints.Vdi, Certainty.Memory).Tables(Settled.TableId)
        .From(Roughness, Shear, static (rz, shear) => Settled.Amounts(rz, shear).Face);

    public static readonly NumberDefinition<JointSpec> OfInterface = Number("interface_embedding", "f_i", "Embedding of an interface", Units.Micrometre)
        .By(ByRoughness, Joints.Vdi, Certainty.Memory).Tables(Settled.TableId)
        .From(Roughness, Shear, static (rz, shear) => Settled.Amounts(rz, shear).Interface);

    public static readonly NumberDefinition<JointSpec> OfTable = Number("table_embedding", "f_Z,VDI", "Embedding by roughness and faces", Units.Micrometre)
        .By("f_Z,VDI = f_th + n_f·f_f + n_i·f_i", Joints.Vdi)
        .Noted("for pressures as under bolt heads; in the stack of a large central nut no more settles")
        .From(OfThread, Faces, OfFace, Interfaces, OfInterface, static (thread, faces, face, interfaces, between) =>
            thread + faces * face + interfaces * between);

    public static readonly NumberDefinition<JointSpec> Embedding = Number("embedding", "f_Z", "Embedding of thread and faces", Units.Micrometre)
        .By("as stated, else f_Z,VDI", Joints.Vdi)
        .Stated(static s => s.Embedding).From(OfTable, static embedding => embedding);

    public static readonly NumberDefinition<JointSpec> OverTable = Number("embedding_over_table", "f_Z/f_Z,VDI", "Stated embedding over that of VDI 2230")
        .By("f_Z/f_Z,VDI", Joints.Closed)
        .When(static s => s.Embedding is not null)
        .From(Embedding, OfTable, static (stated, table) => stated / table);
}
