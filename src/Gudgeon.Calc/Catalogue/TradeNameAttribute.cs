namespace Gudgeon.Calc.Catalogue;

/// <summary>How the trade writes a name that an identifier cannot spell, such as 42CrMo4.</summary>
/// <param name="name">The trade's name.</param>
[AttributeUsage(AttributeTargets.Field)]
public sealed class TradeNameAttribute(string name) : Attribute
{
    /// <summary>The trade's name.</summary>
    public string Name { get; } = name;
}
