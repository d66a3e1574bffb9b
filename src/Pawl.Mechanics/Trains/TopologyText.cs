namespace Pawl.Mechanics.Trains;

/// <summary>A topology in words.</summary>
internal static class TopologyText
{
    public static string Of(TrainTopology topology)
    {
        var stages = topology.Stages;
        if (stages.IsEmpty) return "no meshes";
        if (stages.Length == 1) return Name(stages[0]) + ": " + Duties(stages[0]);

        var text = new System.Text.StringBuilder();
        text.Append(Text.Number(stages.Length));
        text.Append(topology.Coupling == StageCoupling.Series ? " stages in series: " : " coupled stages: ");
        for (var k = 0; k < stages.Length; k++)
        {
            if (k > 0) text.Append(topology.Coupling == StageCoupling.Series ? "; then " : "; with ");
            text.Append(Name(stages[k])).Append(" (").Append(Duties(stages[k])).Append(')');
        }

        return text.ToString();
    }

    private static string Name(TrainStage stage) => stage.Layout switch
    {
        StageLayout.ParallelShafts => "parallel shafts",
        StageLayout.OneCentralGear => "planets on one central gear",
        StageLayout.SunAndRing when !stage.Stepped => Simple(stage),
        StageLayout.SunAndRing => "stepped planets between sun and ring",
        StageLayout.TwoSuns => Planets(stage) + " between two suns",
        StageLayout.TwoRings => Planets(stage) + " between two rings",
        StageLayout.SunAndTwoRings => Planets(stage) + " between a sun and two rings" + Wolfrom(stage),
        StageLayout.PairedSunAndRing => Pairs(stage) + " between sun and ring",
        StageLayout.PairedTwoSuns => Pairs(stage) + " between two suns",
        StageLayout.PairedTwoRings => Pairs(stage) + " between two rings",
        StageLayout.PairedTwoSunsAndRing => Pairs(stage) + " between two suns and a ring (Ravigneaux set)",
        _ => "compound planetary",
    };

    private static string Simple(TrainStage stage) => stage.Arrangement switch
    {
        StageArrangement.CarrierHeld => "simple planetary as a star",
        StageArrangement.SunHeld => "simple planetary in solar arrangement",
        StageArrangement.NothingHeld => "simple planetary as a differential",
        _ => "simple planetary",
    };

    private static string Planets(TrainStage stage) => stage.Stepped ? "stepped planets" : "planets";

    private static string Pairs(TrainStage stage) => stage.Stepped ? "stepped meshed-pair planets" : "meshed-pair planets";

    private static string Wolfrom(TrainStage stage)
    {
        foreach (var member in stage.Members)
            if (member is { Kind: MemberKind.Carrier, Duty: MemberDuty.Free }) return " (Wolfrom set)";

        return "";
    }

    private static string Duties(TrainStage stage)
    {
        // The members are in order of kind and name; what they do comes first here.
        var ordered = stage.Members.Sort(static (a, b) =>
        {
            var duty = Topology.DutyOrder(a.Duty) - Topology.DutyOrder(b.Duty);
            var kind = (int)a.Kind - (int)b.Kind;
            return duty != 0 ? duty : kind != 0 ? kind : string.CompareOrdinal(a.Name, b.Name);
        });
        var parts = new string[ordered.Length];
        for (var i = 0; i < parts.Length; i++)
        {
            parts[i] = ordered[i].Name + ordered[i].Duty switch
            {
                MemberDuty.In => " in",
                MemberDuty.Out => " out",
                MemberDuty.Held => " held",
                _ => " free",
            };
        }

        return string.Join(", ", parts);
    }
}
