namespace Gudgeon.Book.Tracing;

/// <summary>The result of a formula whose inputs are not known: every number in it is NaN, so that none passes for a nought that was worked.</summary>
/// <typeparam name="T">A number, or the record of numbers that a formula gives.</typeparam>
internal static class Unknown<T>
{
    /// <summary>The result.</summary>
    public static readonly T Value = Make();

    private static T Make()
    {
        if (typeof(T) == typeof(double))
        {
            return (T)(object)double.NaN;
        }

        var record = typeof(T).GetConstructors().MaxBy(c => c.GetParameters().Length);
        return record is null || !typeof(T).IsValueType
            ? default!
            : (T)record.Invoke([.. record.GetParameters().Select(p => p.ParameterType == typeof(double) ? double.NaN : Activator.CreateInstance(p.ParameterType))]);
    }
}
