namespace Pawl.Mechanics.Trains;

/// <summary>How the gears of a stage are laid out.</summary>
public enum StageLayout
{
    /// <summary>Central bodies on parallel axes that mesh in the housing.</summary>
    ParallelShafts,

    /// <summary>One sun or one ring with planets and nothing else.</summary>
    OneCentralGear,

    /// <summary>Sun, planet, ring; with stepped planets when the planet has gears of two sizes.</summary>
    SunAndRing,

    /// <summary>Two suns on one set of planets.</summary>
    TwoSuns,

    /// <summary>Two rings on one set of planets.</summary>
    TwoRings,

    /// <summary>One sun and two rings on one set of planets. Called a Wolfrom set when the carrier is free.</summary>
    SunAndTwoRings,

    /// <summary>Sun, two planets in mesh with each other, ring.</summary>
    PairedSunAndRing,

    /// <summary>Sun, two planets in mesh with each other, second sun.</summary>
    PairedTwoSuns,

    /// <summary>Ring, two planets in mesh with each other, second ring.</summary>
    PairedTwoRings,

    /// <summary>Two suns and a ring on planets that mesh in pairs. Called a Ravigneaux set.</summary>
    PairedTwoSunsAndRing,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>What is held in a stage.</summary>
public enum StageArrangement
{
    /// <summary>The stage turns in the housing without a carrier.</summary>
    InHousing,

    /// <summary>The ring is held: planetary arrangement.</summary>
    RingHeld,

    /// <summary>The sun is held: solar arrangement.</summary>
    SunHeld,

    /// <summary>The carrier is held: star arrangement.</summary>
    CarrierHeld,

    /// <summary>Nothing is held, as in a differential or where the held member belongs to another stage.</summary>
    NothingHeld,

    /// <summary>Two or more members are held.</summary>
    SeveralHeld,
}

/// <summary>How the stages of a train hang together.</summary>
public enum StageCoupling
{
    Single,

    /// <summary>Each stage drives the next through one body.</summary>
    Series,

    /// <summary>Stages share more than that: power can split or circulate.</summary>
    Coupled,
}

/// <summary>What a member does in its stage.</summary>
public enum MemberDuty
{
    In,
    Out,
    Held,
    Free,
}

/// <summary>What a member of a stage is.</summary>
public enum MemberKind
{
    Sun,
    Ring,
    Carrier,
    Shaft,
}

/// <summary>A central body as one stage sees it.</summary>
/// <param name="Kind">Sun, ring, carrier or shaft.</param>
/// <param name="Body">The body.</param>
/// <param name="Gear">The gear on it that meshes in this stage; null for the carrier and for shafts.</param>
/// <param name="Duty">What it does here.</param>
public sealed record StageMember(MemberKind Kind, string Body, string? Gear, MemberDuty Duty)
{
    /// <summary>The gear's name where there is one, else the body's.</summary>
    public string Name => Gear ?? Body;
}

/// <summary>One carrier with planets that hang together by meshes, or shafts that mesh in the housing.</summary>
/// <param name="Layout">How its gears are laid out.</param>
/// <param name="Stepped">Whether a planet has gears of different sizes.</param>
/// <param name="Arrangement">What is held.</param>
/// <param name="Carrier">The carrier; null for parallel shafts.</param>
/// <param name="Planets">Planet bodies, by name.</param>
/// <param name="Members">Central members: suns, rings, then the carrier; or the shafts.</param>
public sealed record TrainStage(
    StageLayout Layout,
    bool Stepped,
    StageArrangement Arrangement,
    string? Carrier,
    ImmutableArray<string> Planets,
    ImmutableArray<StageMember> Members);

/// <summary>The stages of a train, from the input on, and how they are joined.</summary>
public sealed record TrainTopology(StageCoupling Coupling, ImmutableArray<TrainStage> Stages);
