namespace Gudgeon.Book.Fields;

/// <summary>What can be known of one coil, the same for an outer and an inner spring; its name is "spring" or "inner spring".</summary>
internal sealed record CoilFields(
    string Name,
    Field Wire,
    Field OutsideDiameter,
    Field ActiveCoils,
    Field FreeLength,
    Field SolidHeight,
    Field LoadTable,
    Field ShearModulus,
    Field TensileStrength,
    Field Mass);
