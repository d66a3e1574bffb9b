using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Tests.Gears;

/// <summary>A whole pair computed from its drawing data, so that a test can name one number of it.</summary>
internal sealed record Pair(
    double NormalModule,
    int Teeth1,
    int Teeth2,
    double Shift1 = 0,
    double Shift2 = 0,
    double HelixAngle = 0,
    double FaceWidth = 20,
    bool Shorten = false,
    double Addendum = 1,
    double Dedendum = 1.25,
    double RootRadius = 0.38,
    double NormalAngle = 20 * Math.PI / 180,
    double? CentreDistance = null)
{
    public double TransverseAngle => ToothGeometry.TransversePressureAngle(NormalAngle, HelixAngle);

    public double TransverseModule => ToothGeometry.TransverseModule(NormalModule, HelixAngle);

    public double BaseHelix => ToothGeometry.BaseHelixAngle(NormalAngle, HelixAngle);

    public double Reference => MeshGeometry.ReferenceCentreDistance(Teeth1, Teeth2, TransverseModule);

    public double WorkingAngle => CentreDistance is { } given
        ? MeshGeometry.WorkingPressureAngleFromCentreDistance(Reference, TransverseAngle, given)
        : MeshGeometry.WorkingPressureAngleFromShift(TransverseAngle, NormalAngle, Shift1 + Shift2, Teeth1, Teeth2);

    public double Centre => MeshGeometry.WorkingCentreDistance(Reference, TransverseAngle, WorkingAngle);

    public double TipAlteration =>
        Shorten ? ClosedForms.TipAlteration(Centre, Reference, NormalModule, Shift1 + Shift2) : 0;

    public double D1 => ToothGeometry.ReferenceDiameter(Teeth1, TransverseModule);

    public double D2 => ToothGeometry.ReferenceDiameter(Teeth2, TransverseModule);

    public double Base1 => ToothGeometry.BaseDiameter(D1, TransverseAngle);

    public double Base2 => ToothGeometry.BaseDiameter(D2, TransverseAngle);

    public double Tip1 => ToothGeometry.TipDiameter(D1, NormalModule, Shift1, Addendum, TipAlteration);

    public double Tip2 => ToothGeometry.TipDiameter(D2, NormalModule, Shift2, Addendum, TipAlteration);

    public double Root1 => ToothGeometry.RootDiameter(D1, NormalModule, Shift1, Dedendum);

    public double Root2 => ToothGeometry.RootDiameter(D2, NormalModule, Shift2, Dedendum);

    public double TipAngle1 => ToothGeometry.PressureAngleAt(Tip1, Base1);

    public double TipAngle2 => ToothGeometry.PressureAngleAt(Tip2, Base2);

    public double TipCurvature1 => PathOfContact.CurvatureAt(Tip1, Base1);

    public double TipCurvature2 => PathOfContact.CurvatureAt(Tip2, Base2);

    public double CurvatureA1 => PathOfContact.CurvatureOpposite(Centre, WorkingAngle, TipCurvature2);

    public double CurvatureE2 => PathOfContact.CurvatureOpposite(Centre, WorkingAngle, TipCurvature1);

    public double PathLength => PathOfContact.Length(Centre, WorkingAngle, TipCurvature1, TipCurvature2);

    public double BasePitch => PathOfContact.TransverseBasePitch(TransverseModule, TransverseAngle);

    public double ContactRatio => PathOfContact.TransverseContactRatio(PathLength, BasePitch);

    public double Overlap => PathOfContact.OverlapRatio(FaceWidth, HelixAngle, NormalModule);

    public double FormDiameter1 => Root.FormDiameter(
        D1, Base1, TransverseAngle, NormalAngle, NormalModule, Shift1, Dedendum, RootRadius);

    public double ActiveStart1 => PathOfContact.ActiveProfileStart(Base1, Centre, WorkingAngle, TipCurvature2);

    public double LossFactor =>
        Sliding.LossFactor(Teeth1, Teeth2, BaseHelix, TipAngle1, TipAngle2, WorkingAngle);

    public double TipThickness1 => ToothGeometry.TipThickness(
        Tip1, D1, Base1, Teeth1, Shift1, HelixAngle, NormalAngle, TransverseAngle);

    public double TipThickness2 => ToothGeometry.TipThickness(
        Tip2, D2, Base2, Teeth2, Shift2, HelixAngle, NormalAngle, TransverseAngle);

    public Interference TipInterference => InternalInterference.Tip(
        Teeth1, Teeth2, Tip1, Base1, Tip2, Base2, Centre, WorkingAngle);

    public Interference Trimming => InternalInterference.Trimming(
        Teeth1, Teeth2, Tip1, Base1, Tip2, Base2, Centre, WorkingAngle);
}

internal static class Degrees
{
    public static double Rad(double degrees) => degrees * Math.PI / 180;

    public static double Deg(double radians) => radians * 180 / Math.PI;
}
