namespace Pawl.Mechanics.Trains;

/// <summary>The part of a solution that a problem keeps from being known.</summary>
public enum TrainStep
{
    /// <summary>Worth saying, but everything can be computed.</summary>
    None,

    /// <summary>Speeds and ratio are known; torques, powers and efficiency are not.</summary>
    Torques,

    /// <summary>Nothing can be computed.</summary>
    Speeds,
}

/// <summary>Something that is wrong with a train, or that its solution needs and lacks.</summary>
/// <remarks><see cref="Kind"/> is stable; the sentence is for people.</remarks>
public abstract record TrainProblem
{
    private TrainProblem(string kind, TrainStep blocks, string sentence)
    {
        Kind = kind;
        Blocks = blocks;
        Sentence = sentence;
    }

    /// <summary>Stable identifier, kebab case.</summary>
    public string Kind { get; }

    /// <summary>What cannot be computed because of it.</summary>
    public TrainStep Blocks { get; }

    /// <summary>What is wrong, in one sentence.</summary>
    public string Sentence { get; }

    /// <summary>The bodies involved.</summary>
    public ImmutableArray<string> Bodies { get; private init; } = [];

    /// <summary>The meshes involved.</summary>
    public ImmutableArray<string> Meshes { get; private init; } = [];

    public sealed override string ToString() => $"{Kind}: {Sentence}";

    /// <summary>A name that nothing bears.</summary>
    /// <param name="User">What uses the name, such as <c>mesh a</c>.</param>
    /// <param name="Name">The name.</param>
    /// <param name="Sought">What it should name: a body or a gear.</param>
    public sealed record UnknownName(string User, string Name, string Sought) : TrainProblem(
        "unknown-name", TrainStep.Speeds, $"{User} names the {Sought} {Name}, which does not exist.");

    /// <summary>Two things of one sort with the same name.</summary>
    public sealed record DuplicateName(string Sort, string Name) : TrainProblem(
        "duplicate-name", TrainStep.Speeds, $"There are two {Sort} named {Name}.");

    /// <summary>A tooth count below 1.</summary>
    public sealed record InvalidTeeth(string Gear, int Teeth) : TrainProblem(
        "invalid-teeth", TrainStep.Speeds, $"Gear {Gear} cannot have {Text.Of(Teeth)} teeth; give a positive number, also for a ring.");

    /// <summary>A count of copies below 1, or more than one copy of a central body.</summary>
    public sealed record InvalidCount : TrainProblem
    {
        public InvalidCount(string body, int count, bool isPlanet)
            : base("invalid-count", TrainStep.Speeds, isPlanet
                ? $"Planet {body} cannot be carried {Text.Of(count)} times; give at least 1."
                : $"Body {body} has no carrier, so its count must be 1, not {Text.Of(count)}.") => Bodies = [body];
    }

    /// <summary>A mesh efficiency outside 0 &lt; η ≤ 1.</summary>
    public sealed record InvalidEfficiency : TrainProblem
    {
        public InvalidEfficiency(string mesh, double efficiency)
            : base("invalid-efficiency", TrainStep.Torques,
                $"Mesh {mesh} has an efficiency of {Text.Of(efficiency)}; it must be above 0 and at most 1.") => Meshes = [mesh];
    }

    /// <summary>A gear meshes with itself, or with another gear on its own body.</summary>
    public sealed record MeshWithinBody : TrainProblem
    {
        public MeshWithinBody(string mesh, string body)
            : base("mesh-within-body", TrainStep.Speeds, $"Mesh {mesh} joins body {body} to itself.")
            => (Meshes, Bodies) = ([mesh], [body]);
    }

    /// <summary>Two rings cannot mesh.</summary>
    public sealed record TwoInternalGears : TrainProblem
    {
        public TwoInternalGears(string mesh, string first, string second)
            : base("two-internal-gears", TrainStep.Speeds, $"Mesh {mesh} joins two internal gears, {first} and {second}.")
            => Meshes = [mesh];
    }

    /// <summary>A ring needs more teeth than the gear inside it.</summary>
    public sealed record RingTooSmall : TrainProblem
    {
        public RingTooSmall(string mesh, string ring, int ringTeeth, string inner, int innerTeeth)
            : base("ring-too-small", TrainStep.Speeds,
                $"In mesh {mesh} the ring {ring} has {Text.Of(ringTeeth)} teeth, no more than the {Text.Of(innerTeeth)} of {inner} inside it.")
            => Meshes = [mesh];
    }

    /// <summary>Input and output are one body.</summary>
    public sealed record InputIsOutput : TrainProblem
    {
        public InputIsOutput(string body)
            : base("input-is-output", TrainStep.Speeds, $"Body {body} is both input and output.") => Bodies = [body];
    }

    /// <summary>The input or the output is held.</summary>
    public sealed record ShaftFixed : TrainProblem
    {
        public ShaftFixed(string role, string body)
            : base("shaft-fixed", TrainStep.Speeds, $"The {role}, {body}, is also among the fixed bodies.") => Bodies = [body];
    }

    /// <summary>A planet whose carrier is not a body.</summary>
    public sealed record CarrierMissing : TrainProblem
    {
        public CarrierMissing(string planet, string carrier)
            : base("carrier-missing", TrainStep.Speeds, $"Planet {planet} is carried by {carrier}, which does not exist.")
            => Bodies = [planet];
    }

    /// <summary>A planet carried by a planet. Pawl does not compute these.</summary>
    public sealed record CarrierIsPlanet : TrainProblem
    {
        public CarrierIsPlanet(string planet, string carrier)
            : base("carrier-is-planet", TrainStep.Speeds,
                $"Planet {planet} is carried by {carrier}, which is a planet itself; such trains are not supported.")
            => Bodies = [planet, carrier];
    }

    /// <summary>A planet that meshes with a gear on its own carrier could not turn on its pin.</summary>
    public sealed record MeshWithOwnCarrier : TrainProblem
    {
        public MeshWithOwnCarrier(string mesh, string planet, string carrier)
            : base("mesh-with-own-carrier", TrainStep.Speeds, $"Mesh {mesh} joins planet {planet} to its own carrier {carrier}.")
            => (Meshes, Bodies) = ([mesh], [planet, carrier]);
    }

    /// <summary>Planets of two carriers cannot stay in mesh.</summary>
    public sealed record DifferentCarriers : TrainProblem
    {
        public DifferentCarriers(string mesh, string first, string second)
            : base("different-carriers", TrainStep.Speeds,
                $"Mesh {mesh} joins planets {first} and {second} of different carriers; such trains are not supported.")
            => (Meshes, Bodies) = ([mesh], [first, second]);
    }

    /// <summary>Planets that mesh in pairs come in equal numbers.</summary>
    public sealed record PlanetCountsDiffer : TrainProblem
    {
        public PlanetCountsDiffer(string mesh, string first, int firstCount, string second, int secondCount)
            : base("planet-counts-differ", TrainStep.Speeds,
                $"Mesh {mesh} pairs {Text.Of(firstCount)} of planet {first} with {Text.Of(secondCount)} of planet {second}.")
            => (Meshes, Bodies) = ([mesh], [first, second]);
    }

    /// <summary>A body that no mesh touches and that carries no meshing planet. Its speed is unknown and matters to nobody.</summary>
    public sealed record IdleBody : TrainProblem
    {
        public IdleBody(string body)
            : base("idle-body", TrainStep.None, $"Nothing touches body {body}: it has no mesh and carries no planet that has one.")
            => Bodies = [body];
    }

    /// <summary>Too few speeds are given: some bodies can turn as they like.</summary>
    public sealed record Undetermined : TrainProblem
    {
        public Undetermined(ImmutableArray<string> free, ImmutableArray<string> pins)
            : base("undetermined", TrainStep.Speeds,
                $"The speed of {Text.List(free)} is not determined; holding or driving {Text.List(pins)} would determine it.")
            => (Bodies, Pins) = (free, pins);

        /// <summary>One choice of bodies whose speeds, if given, would determine all the others.</summary>
        public ImmutableArray<string> Pins { get; }
    }

    /// <summary>Too much is given: these meshes and held bodies, and no fewer, stop the input.</summary>
    public sealed record Locked : TrainProblem
    {
        public Locked(ImmutableArray<string> given, ImmutableArray<string> meshes)
            : base("locked", TrainStep.Speeds, meshes.IsEmpty
                ? $"The speeds given for {Text.List(given)} contradict each other."
                : $"The train cannot turn: the speeds given for {Text.List(given)} contradict each other over {Text.Meshes(meshes)}.")
            => (Bodies, Meshes) = (given, meshes);
    }

    /// <summary>The output stands still while the input turns.</summary>
    public sealed record SingularRatio : TrainProblem
    {
        public SingularRatio(string input, string output)
            : base("singular-ratio", TrainStep.Torques, $"{output} stands still while {input} turns: the ratio is infinite.")
            => Bodies = [input, output];
    }

    /// <summary>Meshes or held bodies that agree with the rest but are not needed: how they share the load depends on stiffness.</summary>
    public sealed record LoadShareIndeterminate : TrainProblem
    {
        public LoadShareIndeterminate(ImmutableArray<string> held, ImmutableArray<string> meshes)
            : base("load-share-indeterminate", TrainStep.Torques,
                $"{Text.Loop(held, meshes)} form a closed loop that runs, but statics alone cannot say how it shares the load.")
            => (Bodies, Meshes) = (held, meshes);
    }

    /// <summary>The losses exceed the power that is put in, or no direction of losses agrees with itself.</summary>
    public sealed record SelfLocking : TrainProblem
    {
        public SelfLocking(string input, string output, double? efficiency, ImmutableArray<string> meshes)
            : base("self-locking", TrainStep.Torques, efficiency is { } value
                ? $"{input} cannot drive {output}: the efficiency would be {Text.Of(value)}."
                : $"{input} cannot drive {output}: no direction of the losses in {Text.Meshes(meshes)} agrees with itself.")
            => (Bodies, Meshes, Efficiency) = ([input, output], meshes, efficiency);

        /// <summary>The efficiency the sums give, zero or below; null when the losses have no consistent direction.</summary>
        public double? Efficiency { get; }
    }
}
