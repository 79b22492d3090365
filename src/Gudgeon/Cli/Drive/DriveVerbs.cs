using Spectre.Console.Cli;

namespace Gudgeon.Cli.Drive;

/// <summary>gudgeon drive: the sheets of the boost drive, under the same words as on the page.</summary>
internal static class DriveVerbs
{
    public static void Add(IConfigurator<CommandSettings> drive)
    {
        drive.SetDescription("Boost drive: the belt from the crank to the supercharger and what it loads.");
        drive.AddCommand<BeltCommand>("belt").WithDescription("Ratio, course, tension by the note of the span, pull and hub load of the belt. Exit code 3: nothing known yet.").WithExample("drive", "belt", "heron.json", "--svg", "belt.svg");
        drive.AddCommand<NoseCommand>("nose").WithDescription("Bending, torsion and fatigue of the drive spigot, its seat, load share and life of the outboard bearing. Exit code 3: nothing known yet.").WithExample("drive", "nose", "heron.json", "--svg", "nose.svg");
        drive.AddCommand<HitsCommand>("hits").WithDescription("What start, shift, ignition cut and a missed gear do to the drive, against belt, fit and key; energy and burst of the impeller. Exit code 3: nothing known yet.").WithExample("drive", "hits", "heron.json", "--svg", "hits.svg");
        drive.AddCommand<HeatCommand>("heat").WithDescription("Oil tank with fins in place of a cooler, and the charge cooler from its size. Exit code 3: nothing known yet.").WithExample("drive", "heat", "heron.json", "--svg", "heat.svg");
        drive.AddCommand<AirCommand>("air").WithDescription("Air filter, ducts and compressor map: pressure drop, air speeds, margins to surge, choke and over-speed over the whole run. Exit code 3: nothing known yet.").WithExample("drive", "air", "heron.json", "--svg", "air.svg");
    }
}
