using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>An engine run as it is kept: the model that made it, what it read, and its figures.</summary>
/// <param name="Model">Version of the engine model.</param>
/// <param name="Reads">What was found for each path that it asked for; null where nothing was known.</param>
/// <param name="Points">Its points; the states to start from are not kept.</param>
internal sealed record KeptDuty(string Model, SortedDictionary<string, HeldValue?> Reads, IReadOnlyList<KeptDuty.Point> Points)
{
    private static readonly JsonSerializerOptions Options = new()
    {
        IgnoreReadOnlyProperties = true,
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
        RespectRequiredConstructorParameters = true,
        RespectNullableAnnotations = true,
    };

    /// <summary>What a view has read so far, nudged values as nudged.</summary>
    public static SortedDictionary<string, HeldValue?> Read(View view)
    {
        var reads = new SortedDictionary<string, HeldValue?>(StringComparer.Ordinal);
        foreach (var read in view.Trace.Reads)
        {
            reads[read.Address.Path] = read.Found is { } found ? HeldValue.Of(found.Value, view.Nudged.TryGetValue(found.Source, out var nudged) ? nudged : null) : null;
        }

        return reads;
    }

    /// <summary>SHA-256 of the model's version, the speeds, and all that was read, hexadecimal.</summary>
    public static string Key(SortedDictionary<string, HeldValue?> reads, IEnumerable<double> speeds)
    {
        var text = string.Join('\n', ModelVersion.Engine, string.Join(';', speeds.Select(s => s.ToString("R", CultureInfo.InvariantCulture))), JsonSerializer.Serialize(reads, Options));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>As JSON.</summary>
    public static string Write(SortedDictionary<string, HeldValue?> reads, IEnumerable<OperatingPoint> points) =>
        JsonSerializer.Serialize(new KeptDuty(ModelVersion.Engine, reads, [.. points.Select(p => new Point(p.Speed, p.CyclesUsed, p.Residual, p.Figures!))]), Options);

    /// <summary>From JSON; null when there is none, or it is none that this program has written.</summary>
    public static KeptDuty? Parse(string? json)
    {
        try
        {
            return json is null ? null : JsonSerializer.Deserialize<KeptDuty>(json, Options);
        }
        catch (JsonException)
        {
            // Another program's figures had other names; the run is made again.
            return null;
        }
    }

    /// <summary>The run again, for the engine that it was made of.</summary>
    public EngineDuty Of(EngineSpec spec) => new([.. Points.Select(p => new OperatingPoint(p.Speed, p.Cycles, p.Residual, p.Figures, null, null))], spec.Ambient, spec);

    /// <summary>The engine that it was made of, from what it read; null when this program makes none of that.</summary>
    public EngineSpec? Spec()
    {
        try
        {
            var values = Reads.Where(r => r.Value is not null).ToDictionary(r => r.Key, r => r.Value!.As(FieldCatalogue.Address(r.Key).Field), StringComparer.Ordinal);
            var book = new BuildBook { Name = "as it was run", Baseline = values, Changes = [], Measurements = [], Limits = new Dictionary<string, LimitSetting>(StringComparer.Ordinal) };
            var view = new View(book.Now());
            return EngineAssembly.Build(view, Depths.Of(view));
        }
        catch (Exception e) when (e is BadInputException or EngineSpecException or FormulaDomainException or OutOfRangeException)
        {
            return null;
        }
    }

    /// <summary>A settled point.</summary>
    /// <param name="Speed">rad/s.</param>
    /// <param name="Cycles">Cycles marched.</param>
    /// <param name="Residual">Largest relative change over the last cycle.</param>
    /// <param name="Figures">Its figures.</param>
    internal sealed record Point(double Speed, int Cycles, double Residual, PointFigures Figures);
}
