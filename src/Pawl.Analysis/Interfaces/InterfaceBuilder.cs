using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Splines;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using B = Pawl.Analysis.Trains.BodyQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;
using K = Pawl.Analysis.Interfaces.InterfaceQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Interfaces;

/// <summary>One interface with one adapter that it may be built with.</summary>
internal sealed class InterfaceBuilder
{
    private readonly AnalysisContext _context;
    private readonly InterfaceSpec _own;
    private readonly AdapterSpec _adapter;
    private readonly Subject _train;
    private readonly Subject _body;
    private readonly LoadShares _duty;
    private readonly Subject _s;

    private InterfaceBuilder(AnalysisContext context, InterfaceSpec own, Stated<string> name, AdapterSpec adapter, Subject train, Subject body, LoadShares duty)
    {
        (_context, _own, _adapter, _train, _body, _duty) = (context, own, adapter, train, body, duty);
        _s = context.Begin(SubjectKinds.Interface, $"interfaces.{own.Name.Value}~{name.Value}", name.Span).Relate("train", train).Relate("body", body);
        _s.Add(AnalysisContext.Text(K.Adapter, name, ""));
    }

    public static void AddAll(AnalysisContext context, TrainBuilder train, IReadOnlyDictionary<string, Subject> bodies)
    {
        if (context.Spec.Interfaces.Entries.IsEmpty)
            return;
        var duty = LoadShares.Of(context, train.Subject);
        foreach (var own in context.Spec.Interfaces.Entries)
        {
            foreach (var name in own.Adapters)
            {
                // The reader has told of an adapter that is not there.
                if (context.Spec.Catalogue.Adapters.Find(name.Value) is { } adapter)
                    new InterfaceBuilder(context, own, name, adapter, train.Subject, bodies[own.Body.Value], duty).Add();
            }
        }
    }

    private InterfaceSideSpec Other => _adapter.Interface;

    private string Key(string key) => $"interfaces.{_own.Name.Value}.{key}";

    private string OtherKey(string key) => $"interface.{key} of adapter {_adapter.Adapter.Value}";

    private void Add()
    {
        Misfit(K.KindMisfit, SideMisfit.OfKind(_own, Other));
        Misfit(K.SplineMisfit, SideMisfit.OfSpline(_own.Spline, Other.Spline));
        Misfit(K.PilotMisfit, SideMisfit.OfPilot(_own.Pilot, Other.Pilot));
        Misfit(K.BoltMisfit, SideMisfit.OfBolts(_own.Bolts, Other.Bolts));
        Misfit(K.DowelMisfit, SideMisfit.OfDowels(_own.Dowels, Other.Dowels));
        Misfit(K.SealMisfit, SideMisfit.OfSeal(_own.Seal, Other.Seal));
        Spline();
        Pilot();
        Bolts();
        Dowels();
        Reach();
        Capacity();
    }

    private void Misfit(QuantityKind kind, string? found)
    {
        if (found is not null)
            _s.Add(Quantity.ComputedText(kind, found, [_s[K.Adapter]]));
    }

    private bool Agree(QuantityKind misfit) => _s.Find(misfit) is { Text: SideMisfit.None };

    private void Spline()
    {
        if (!Agree(K.SplineMisfit))
            return;
        var (external, inner, keyOf) = _own.Spline!.Side.Value == "external" ? (_own.Spline, Other.Spline!, (Func<string, string>)Key) : (Other.Spline!, _own.Spline, OtherKey);
        try
        {
            var spline = Splines.Splines.BasicOf(external.System.Value, external.Root.Value, external.Teeth.Value, SideMisfit.ModuleOf(external), external.PressureAngle.Value.Coherent);
            var length = Math.Min(Length(external), Length(inner));
            var teeth = SplineTolerance.Teeth(spline, external.Fit?.Value ?? "h", external.Class?.Value ?? throw Missing(external), length);
            var spaces = SplineTolerance.Spaces(spline, inner.Class?.Value ?? throw Missing(inner), length);
            var fit = SplineTolerance.Clearance(spaces, teeth);
            _context.Uses(SplineTolerance.TableId);
            _s.Add(Quantity.WithLimits(K.SplineClearance, new(fit.Middle, fit.Min, fit.Max), [_s[K.Adapter]]));
        }
        catch (OutsideValidityException outside)
        {
            _s.Add(Quantity.NotEvaluated(K.SplineClearance, [], outside.Message));
        }

        double Length(InterfaceSplineSpec side) =>
            side.Length?.Value.Coherent ?? throw new OutsideValidityException($"{(side == external ? keyOf : keyOf == Key ? OtherKey : Key)("spline.length")} is not stated");

        OutsideValidityException Missing(InterfaceSplineSpec side) => new($"{(side == external ? keyOf : keyOf == Key ? OtherKey : Key)("spline.class")} is not stated");
    }

    private void Pilot()
    {
        if (!Agree(K.PilotMisfit))
            return;
        var ownIsRecess = _own.Pilot!.Side.Value == "recess";
        var (recess, spigot) = ownIsRecess ? (_own.Pilot, Other.Pilot!) : (Other.Pilot!, _own.Pilot);
        _s.Add(_context.Dimension(K.RecessDiameter, recess.Diameter, ""));
        _s.Add(_context.Dimension(K.SpigotDiameter, spigot.Diameter, ""));
        _s.Add(Play(K.PilotClearance, _s[K.RecessDiameter], _s[K.SpigotDiameter]));
        _s.Add(Derive.From(K.Eccentricity, _s[K.PilotClearance], Register.OfPilot));
        if (_own.MaxEccentricity is { } expected)
            _s.Add(_context.Amount(K.RequiredEccentricity, expected, ""));
        if (recess.Depth is null && spigot.Depth is null)
            return;
        _s.Add(_context.Dimension(K.RecessDepth, recess.Depth, (ownIsRecess ? Key : (Func<string, string>)OtherKey)("pilot.depth")));
        _s.Add(_context.Dimension(K.SpigotLength, spigot.Depth, (ownIsRecess ? OtherKey : (Func<string, string>)Key)("pilot.depth")));
        _s.Add(Derive.From(K.PilotRoom, _s[K.RecessDepth], _s[K.SpigotLength], (depth, length) => depth - length));
    }

    private void Bolts()
    {
        if (!Agree(K.BoltMisfit))
            return;
        var ownIsThrough = _own.Bolts!.Holes.Value == "through";
        var (through, tapped) = ownIsThrough ? (_own.Bolts, Other.Bolts!) : (Other.Bolts!, _own.Bolts);
        Func<string, string> throughKey = ownIsThrough ? Key : OtherKey, tappedKey = ownIsThrough ? OtherKey : Key;
        _s.Add(_context.Amount(K.ScrewLength, through.ScrewLength, throughKey("bolts.screw_length")));
        _s.Add(_context.Amount(K.Grip, through.Grip, throughKey("bolts.grip")));
        _s.Add(_context.Amount(K.ThreadDepth, tapped.ThreadDepth, tappedKey("bolts.thread_depth")));
        _s.Add(Derive.From(K.Engagement, _s[K.ScrewLength], _s[K.Grip], (length, grip) => length - grip));
        _s.Add(ThreadTable.TryFind(through.Thread.Value, out var thread, out var reason)
            ? Derive.From(K.EngagementShare, _s[K.Engagement], engaged => engaged / thread.Diameter)
            : Quantity.NotEvaluated(K.EngagementShare, [], reason));
        _context.Uses(thread is { Form: ThreadForm.Unified } ? ThreadTable.UnifiedTableId : ThreadTable.MetricTableId);
        _s.Add(Derive.From(K.ScrewRoom, _s[K.ThreadDepth], _s[K.Engagement], (depth, engaged) => depth - engaged));
    }

    private void Dowels()
    {
        if (!Agree(K.DowelMisfit))
            return;
        var (hole, pin) = _own.Dowels!.Side.Value == "hole" ? (_own.Dowels, Other.Dowels!) : (Other.Dowels!, _own.Dowels);
        _s.Add(_context.Dimension(K.HoleDiameter, hole.Diameter, ""));
        _s.Add(_context.Dimension(K.PinDiameter, pin.Diameter, ""));
        _s.Add(Play(K.DowelClearance, _s[K.HoleDiameter], _s[K.PinDiameter]));
    }

    /// <summary>Clearance from limit to limit; the nominal sizes are alike and lie outside of what a class such as g6 permits.</summary>
    private static Quantity Play(QuantityKind kind, Quantity hole, Quantity shaft)
    {
        if (Quantity.MissingReasons([hole, shaft]) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(kind, [hole, shaft], reasons);
        var (least, greatest) = (hole.Value.Min - shaft.Value.Max, hole.Value.Max - shaft.Value.Min);
        return Quantity.WithLimits(kind, new((least + greatest) / 2, least, greatest), [hole, shaft]);
    }

    private void Reach()
    {
        if (_own.Engagement is not { } expected)
            return;
        _s.Add(_context.Amount(K.RequiredReach, expected, ""));
        _s.Add(_context.Amount(K.Reach, Other.Engagement, OtherKey("engagement")));
        _s.Add(Derive.From(K.ReachShare, _s[K.RequiredReach], _s[K.Reach], (least, given) => given / least));
    }

    private void Capacity()
    {
        if (_own.Torque is not null || Other.Torque is not null)
        {
            _s.Add(_body.Find(B.Torque) is { } torque
                ? Quantity.Compute(
                    K.Torque, [torque, _train[D.ApplicationFactor], _train[D.PeakTorque], _train[T.InputTorque]], v => Math.Abs(v[0]) * Math.Max(v[1], v[2] / v[3]))
                : Quantity.NotEvaluated(K.Torque, [], $"the torque inside {_own.Body.Value} is not computed: neither input, output nor held"));
            _s.Add(Quantity.Compute(K.TorqueCapacity, [_s[K.Adapter]], _ => Lesser(_own.Torque, Other.Torque)));
            _s.Add(Derive.From(K.TorqueShare, _s[K.TorqueCapacity], _s[K.Torque], (capacity, greatest) => capacity / greatest));
        }

        if (_own.Speed is null && Other.Speed is null)
            return;
        var fastest = _duty.Fastest;
        _s.Add(Quantity.Compute(K.Speed, [_body[B.Speed]], v => Math.Abs(v[0]) * fastest));
        _s.Add(Quantity.Compute(K.SpeedCapacity, [_s[K.Adapter]], _ => Lesser(_own.Speed, Other.Speed)));
    }

    private static double Lesser(Stated<Amount>? own, Stated<Amount>? other) =>
        Math.Min(own?.Value.Coherent ?? double.PositiveInfinity, other?.Value.Coherent ?? double.PositiveInfinity);
}
