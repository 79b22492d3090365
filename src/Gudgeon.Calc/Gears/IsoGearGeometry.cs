using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.RootFinding;

namespace Gudgeon.Calc.Gears;

/// <summary>Geometry of a helical pair that the ISO 6336 rating starts from.</summary>
/// <param name="PinionDiameter">Reference diameter of the pinion, m.</param>
/// <param name="WheelDiameter">Reference diameter of the wheel, m.</param>
/// <param name="WorkingAngle">Working transverse pressure angle, rad.</param>
/// <param name="BaseHelix">Base helix angle, rad.</param>
/// <param name="TransverseRatio">Transverse contact ratio.</param>
/// <param name="OverlapRatio">Overlap ratio.</param>
/// <param name="VirtualPinion">Virtual teeth of the pinion.</param>
/// <param name="VirtualWheel">Virtual teeth of the wheel.</param>
/// <param name="RelativeRadius">Relative radius of curvature at the pitch point, m.</param>
/// <param name="Force">Nominal tangential force, N.</param>
/// <param name="Speed">Pitch-line speed, m/s.</param>
public readonly record struct HelicalPair(
    [Quantity("reference diameter of the pinion", Dimension.Length, "mm", Symbol = "d1")] double PinionDiameter,
    [Quantity("reference diameter of the wheel", Dimension.Length, "mm", Symbol = "d2")] double WheelDiameter,
    [Quantity("working transverse pressure angle", Dimension.Angle, "°", Symbol = "αwt")] double WorkingAngle,
    [Quantity("base helix angle", Dimension.Angle, "°", Symbol = "βb")] double BaseHelix,
    [Quantity("transverse contact ratio", Dimension.Number, Symbol = "εα")] double TransverseRatio,
    [Quantity("overlap ratio", Dimension.Number, Symbol = "εβ")] double OverlapRatio,
    [Quantity("virtual teeth of the pinion", Dimension.Number, Symbol = "zn1")] double VirtualPinion,
    [Quantity("virtual teeth of the wheel", Dimension.Number, Symbol = "zn2")] double VirtualWheel,
    [Quantity("relative radius of curvature", Dimension.Length, "mm", Symbol = "ρred")] double RelativeRadius,
    [Quantity("tangential force", Dimension.Force, "N", Symbol = "Ft")] double Force,
    [Quantity("pitch-line speed", Dimension.Speed, "m/s", Symbol = "v")] double Speed);

/// <summary>Mesh stiffness of a pair for its face width.</summary>
/// <param name="Theoretical">Theoretical single stiffness c'th, N/(mm·µm), which is GPa.</param>
/// <param name="Single">Single stiffness c'.</param>
/// <param name="Mesh">Mesh stiffness for load sharing cγα.</param>
/// <param name="MeshFace">Mesh stiffness for face load cγβ.</param>
public readonly record struct MeshStiffness(
    [Quantity("theoretical single stiffness, N/(mm·µm)", Dimension.Pressure, "GPa", Symbol = "cth")] double Theoretical,
    [Quantity("single stiffness, N/(mm·µm)", Dimension.Pressure, "GPa", Symbol = "c")] double Single,
    [Quantity("mesh stiffness, N/(mm·µm)", Dimension.Pressure, "GPa", Symbol = "cγα")] double Mesh,
    [Quantity("mesh stiffness for face load, N/(mm·µm)", Dimension.Pressure, "GPa", Symbol = "cγβ")] double MeshFace);

/// <summary>Involute geometry and stiffness of helical and spur pairs after ISO 6336-1.</summary>
public static class IsoGearGeometry
{
    /// <summary>Geometry, force and speed of a helical or spur pair.</summary>
    /// <param name="pinion">Pinion teeth.</param>
    /// <param name="wheel">Wheel teeth.</param>
    /// <param name="module">Normal module, m.</param>
    /// <param name="helix">Helix angle, rad.</param>
    /// <param name="pinionShift">Profile shift coefficient of the pinion.</param>
    /// <param name="wheelShift">Profile shift coefficient of the wheel.</param>
    /// <param name="face">Face width, m.</param>
    /// <param name="torque">Torque on the pinion, N·m.</param>
    /// <param name="speed">Pinion speed, rad/s.</param>
    /// <param name="centres">Centre distance, m; 0 to work it out from the profile shifts.</param>
    /// <param name="pressureAngle">Normal pressure angle, rad.</param>
    [Formula(
        "ISO 6336 gear geometry",
        "d1 = z1 mn / cos(β); cos(αwt) = (d1 + d2) cos(αt) / (2 a); sin(βb) = sin(β) cos(αn); εβ = b sin(β) / (π mn); zn = z / (cos(βb)^2 cos(β)); Ft = 2 T1 / d1; v = w1 d1 / 2",
        "ISO 6336-1:2006 and ISO 21771; tips at d + 2 mn (1 + x)")]
    public static HelicalPair Pair(
        [Quantity("pinion teeth", Dimension.Number, Symbol = "z1", Min = 5)] int pinion,
        [Quantity("wheel teeth", Dimension.Number, Symbol = "z2", Min = 5)] int wheel,
        [Quantity("normal module", Dimension.Length, "mm", Symbol = "mn", Above = 0)] double module,
        [Quantity("helix angle", Dimension.Angle, "°", Symbol = "β", Min = 0, Below = 0.9)] double helix,
        [Quantity("profile shift of the pinion", Dimension.Number, Symbol = "x1", Min = -1.5, Max = 1.5)] double pinionShift,
        [Quantity("profile shift of the wheel", Dimension.Number, Symbol = "x2", Min = -1.5, Max = 1.5)] double wheelShift,
        [Quantity("face width", Dimension.Length, "mm", Symbol = "b", Above = 0)] double face,
        [Quantity("torque on the pinion", Dimension.Torque, "N·m", Symbol = "T1", Min = 0)] double torque,
        [Quantity("pinion speed", Dimension.RotationalSpeed, "rpm", Symbol = "w1", Min = 0)] double speed,
        [Quantity("centre distance, 0 to work it out", Dimension.Length, "mm", Symbol = "a", Min = 0)] double centres = 0,
        [Quantity("normal pressure angle", Dimension.Angle, "°", Symbol = "αn", Above = 0.1, Below = 0.8)] double pressureAngle = 20 * Math.PI / 180)
    {
        var cosHelix = Math.Cos(helix);
        var (d1, d2) = (pinion * module / cosHelix, wheel * module / cosHelix);
        var transverse = Math.Atan(Math.Tan(pressureAngle) / cosHelix);
        var working = WorkingAngle(pinion, wheel, d1 + d2, transverse, pressureAngle, pinionShift + wheelShift, centres);
        var baseHelix = Math.Asin(Math.Sin(helix) * Math.Cos(pressureAngle));
        var (db1, db2) = (d1 * Math.Cos(transverse), d2 * Math.Cos(transverse));
        var path = TipTangent(d1, db1, module, pinionShift) + TipTangent(d2, db2, module, wheelShift) - ((db1 + db2) / 2 * Math.Tan(working));
        var flat = Math.Cos(baseHelix) * Math.Cos(baseHelix) * cosHelix;
        return new HelicalPair(
            d1,
            d2,
            working,
            baseHelix,
            path / (Math.PI * module / cosHelix * Math.Cos(transverse)),
            face * Math.Sin(helix) / (Math.PI * module),
            pinion / flat,
            wheel / flat,
            db1 * db2 / (2 * (db1 + db2)) * Math.Tan(working),
            2 * torque / d1,
            speed * d1 / 2);
    }

    /// <summary>Tooth and mesh stiffness of a steel pair.</summary>
    /// <param name="virtualPinion">Virtual teeth of the pinion.</param>
    /// <param name="virtualWheel">Virtual teeth of the wheel.</param>
    /// <param name="pinionShift">Profile shift of the pinion.</param>
    /// <param name="wheelShift">Profile shift of the wheel.</param>
    /// <param name="helix">Helix angle, rad.</param>
    /// <param name="transverseRatio">Transverse contact ratio.</param>
    /// <param name="rackDedendum">Dedendum of the basic rack over module.</param>
    /// <param name="pressureAngle">Normal pressure angle, rad.</param>
    [Formula(
        "ISO 6336 mesh stiffness",
        "1 / cth = 0.04723 + 0.15551 / zn1 + 0.25791 / zn2 - 0.00635 x1 - 0.11654 x1 / zn1 - 0.00193 x2 - 0.24188 x2 / zn2 + 0.00529 x1^2 + 0.00182 x2^2; c = 0.8 cth CB cos(β); CB = (1 + 0.5 (1.2 - h)) (1 - 0.02 (20 - αn)); cγα = c (0.75 εα + 0.25); cγβ = 0.85 cγα",
        "ISO 6336-1:2006, method B",
        Validity = "Solid steel gears, line load 100 N/mm and more.")]
    public static MeshStiffness Stiffness(
        [Quantity("virtual teeth of the pinion", Dimension.Number, Symbol = "zn1", Above = 5)] double virtualPinion,
        [Quantity("virtual teeth of the wheel", Dimension.Number, Symbol = "zn2", Above = 5)] double virtualWheel,
        [Quantity("profile shift of the pinion", Dimension.Number, Symbol = "x1", Min = -0.5, Max = 2)] double pinionShift,
        [Quantity("profile shift of the wheel", Dimension.Number, Symbol = "x2", Min = -0.5, Max = 2)] double wheelShift,
        [Quantity("helix angle", Dimension.Angle, "°", Symbol = "β", Min = 0, Below = 0.9)] double helix,
        [Quantity("transverse contact ratio", Dimension.Number, Symbol = "εα", Above = 0)] double transverseRatio,
        [Quantity("rack dedendum over module", Dimension.Number, Symbol = "h", Above = 0.5, Max = 2)] double rackDedendum = 1.25,
        [Quantity("normal pressure angle", Dimension.Angle, "°", Symbol = "αn", Above = 0.1, Below = 0.8)] double pressureAngle = 20 * Math.PI / 180)
    {
        var flexibility = 0.04723
            + (0.15551 / virtualPinion) + (0.25791 / virtualWheel)
            - (0.00635 * pinionShift) - (0.11654 * pinionShift / virtualPinion)
            - (0.00193 * wheelShift) - (0.24188 * wheelShift / virtualWheel)
            + (0.00529 * pinionShift * pinionShift) + (0.00182 * wheelShift * wheelShift);
        const double Correction = 0.8;
        var degrees = pressureAngle * 180 / Math.PI;
        var rack = (1 + (0.5 * (1.2 - rackDedendum))) * (1 - (0.02 * (20 - degrees)));
        var theoretical = 1e9 / flexibility;
        var single = theoretical * Correction * rack * Math.Cos(helix);
        var mesh = single * ((0.75 * transverseRatio) + 0.25);
        return new MeshStiffness(theoretical, single, mesh, 0.85 * mesh);
    }

    private static double WorkingAngle(int pinion, int wheel, double diameters, double transverse, double pressureAngle, double shifts, double centres)
    {
        if (centres > 0)
        {
            var cos = diameters * Math.Cos(transverse) / (2 * centres);
            FormulaDomainException.Unless(cos < 1, "centre distance: the base circles would overlap");
            return Math.Acos(cos);
        }

        var involute = Math.Tan(transverse) - transverse + (2 * Math.Tan(pressureAngle) * shifts / (pinion + wheel));
        FormulaDomainException.Unless(involute > 0, "profile shift of the pinion: the sum of the shifts is too negative for a working pair");
        return Brent.FindRoot(angle => Math.Tan(angle) - angle - involute, 1e-6, 1.2, 1e-15, 200);
    }

    private static double TipTangent(double reference, double basic, double module, double shift)
    {
        var tip = reference + (2 * module * (1 + shift));
        FormulaDomainException.Unless(tip > basic, "profile shift: the tip circle falls inside the base circle");
        return Math.Sqrt((tip * tip) - (basic * basic)) / 2;
    }
}
