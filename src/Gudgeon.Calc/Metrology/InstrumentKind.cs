using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Metrology;

/// <summary>Workshop instruments by what they are; the kind says what they measure.</summary>
public enum InstrumentKind
{
    /// <summary>Micrometer, external, ball-anvil or depth.</summary>
    Micrometer,

    /// <summary>Bore gauge set to a ring or a micrometer.</summary>
    BoreGauge,

    /// <summary>Calliper.</summary>
    Calliper,

    /// <summary>Depth gauge.</summary>
    DepthGauge,

    /// <summary>Dial gauge on a stand or a bridge.</summary>
    DialGauge,

    /// <summary>Feeler gauge.</summary>
    FeelerGauge,

    /// <summary>Height gauge.</summary>
    HeightGauge,

    /// <summary>Roughness tester.</summary>
    RoughnessTester,

    /// <summary>Torque wrench.</summary>
    TorqueWrench,

    /// <summary>Scale.</summary>
    Scale,

    /// <summary>Burette.</summary>
    Burette,

    /// <summary>Spring tester.</summary>
    SpringTester,

    /// <summary>Pressure gauge.</summary>
    PressureGauge,

    /// <summary>Degree wheel or protractor.</summary>
    DegreeWheel,

    /// <summary>Thermometer, of any kind that touches or looks.</summary>
    Thermometer,
}

/// <summary>Standards whose limits of error an instrument may be kept to.</summary>
public enum InstrumentStandard
{
    /// <summary>External micrometers; limit by the end of the range.</summary>
    [TradeName("DIN 863-1")]
    Din863,

    /// <summary>External micrometers; leaves the limit to maker or user.</summary>
    [TradeName("ISO 3611")]
    Iso3611,

    /// <summary>Callipers reading 0.05 mm; limit by the end of the range.</summary>
    [TradeName("DIN 862")]
    Din862,

    /// <summary>Callipers reading 0.01 mm; limit by the end of the range.</summary>
    [TradeName("DIN 862, digital")]
    Din862Digital,

    /// <summary>Callipers; leaves the limit to maker or user.</summary>
    [TradeName("ISO 13385-1")]
    Iso13385,

    /// <summary>Dial gauges reading 0.01 mm.</summary>
    [TradeName("DIN 878")]
    Din878,

    /// <summary>Feeler gauges; its table is not known here.</summary>
    [TradeName("DIN 2275")]
    Din2275,

    /// <summary>Torque wrenches, setting, with scale.</summary>
    [TradeName("ISO 6789")]
    Iso6789,

    /// <summary>Testing machines of class 1.</summary>
    [TradeName("ISO 7500-1, class 1")]
    Iso7500,
}
