using System.Reflection;
using Gudgeon.Book.Fields;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli;
using Gudgeon.Simulation.Engine;
using NetArchTest.Rules;

namespace Gudgeon.Tests;

/// <summary>Arrows point down only: Gudgeon → Book → Simulation → Calc.</summary>
public class LayerTests
{
    private static readonly Assembly Calc = typeof(Formulas).Assembly;
    private static readonly Assembly Simulation = typeof(EngineModel).Assembly;
    private static readonly Assembly Book = typeof(FieldCatalogue).Assembly;
    private static readonly Assembly Program = typeof(App).Assembly;

    /// <summary>Subjects of formulas: everything of Calc but the declarations.</summary>
    private static readonly string[] Formulae = [.. Formulas.All.Select(f => $"Gudgeon.Calc.{f.Subject}").Distinct(StringComparer.Ordinal)];

    [Fact]
    public void FormulasKnowNothingAboveThem() =>
        HasNone(Calc, "Gudgeon.Simulation", "Gudgeon.Book", "Gudgeon.Cli", "Gudgeon.Web", "UnitsNet", "Spectre", "ScottPlot", "System.IO", "System.Text.Json");

    [Fact]
    public void SimulationsKnowNoBookAndNoUnits() =>
        HasNone(Simulation, "Gudgeon.Book", "Gudgeon.Cli", "Gudgeon.Web", "UnitsNet", "Spectre", "ScottPlot", "System.IO.File", "System.Text.Json");

    [Fact]
    public void TheBookKnowsNoScreen() =>
        HasNone(Book, "Gudgeon.Cli", "Gudgeon.Web", "Spectre", "ScottPlot", "System.Console");

    [Fact]
    public void TheProgramHasNoPhysics() => HasNone(Program, Formulae);

    [Fact]
    public void TheProgramHasNoSql() => HasNone(Program, "Microsoft.Data.Sqlite", "Dapper");

    [Fact]
    public void OnlyTheStoreHasSql()
    {
        var elsewhere = Types.InAssembly(Book).That().HaveDependencyOnAny("Microsoft.Data.Sqlite", "Dapper").And().DoNotResideInNamespace("Gudgeon.Book.Store").GetTypes();
        Assert.Empty(elsewhere.Select(t => t.FullName));
    }

    [Fact]
    public void UnitsAreReadAndPrintedInOnePlace()
    {
        var elsewhere = Types.InAssembly(Book).That().HaveDependencyOn("UnitsNet").And().DoNotResideInNamespace("Gudgeon.Book.Values").GetTypes();
        Assert.Empty(elsewhere.Select(t => t.FullName));
        Assert.Contains(Types.InAssembly(Book).That().HaveDependencyOn("UnitsNet").GetTypes(), t => t.Name == "Units");
    }

    [Fact]
    public void AssembliesReferToThoseBelowOnly()
    {
        Assert.Empty(References(Calc));
        Assert.Equal(["Gudgeon.Calc"], References(Simulation));
        Assert.Equal(["Gudgeon.Calc", "Gudgeon.Simulation"], References(Book));
        Assert.Contains("Gudgeon.Book", References(Program));
    }

    /// <summary>The rule finds what it forbids: the book does read JSON, and the program does draw.</summary>
    [Fact]
    public void TheRuleCanFail()
    {
        Assert.False(Types.InAssembly(Book).ShouldNot().HaveDependencyOnAny("System.Text.Json").GetResult().IsSuccessful);
        Assert.False(Types.InAssembly(Program).ShouldNot().HaveDependencyOnAny("ScottPlot").GetResult().IsSuccessful);
        Assert.NotEmpty(Formulae);
    }

    private static void HasNone(Assembly assembly, params string[] forbidden)
    {
        var result = Types.InAssembly(assembly).ShouldNot().HaveDependencyOnAny(forbidden).GetResult();
        Assert.Empty(result.FailingTypeNames ?? []);
    }

    private static string[] References(Assembly assembly) =>
        [.. assembly.GetReferencedAssemblies().Select(a => a.Name!).Where(n => n.StartsWith("Gudgeon", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
}
