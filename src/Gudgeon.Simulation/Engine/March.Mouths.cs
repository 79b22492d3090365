using Gudgeon.Simulation.Pipes;
using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>What goes through the ends of the pipes, and what the volumes beyond receive of it.</summary>
internal sealed partial class March
{
    private double[] _pressureBefore = [];
    private double[] _rtBefore = [];
    private double[] _enthalpyBefore = [];
    private double[] _trunkFlow = [];
    private double[] _branchFlow = [];
    private double _exhaustPressure;
    private double[] _inletValvePressure = [];
    private double[] _exhaustValvePressure = [];
    private double _outletOpening = 1;

    /// <summary>Solves a mouth against what is beyond it, sets the pipe's end and notes what the node beyond receives.</summary>
    /// <param name="mouth">End of a pipe.</param>
    /// <param name="ending">What it is.</param>
    /// <param name="i">Crank index at the begin of the step.</param>
    /// <param name="at">Part of the step that has gone.</param>
    /// <param name="share">Part of the step that this stands for.</param>
    private void LetThrough(PipeMouth mouth, in PipeEnding ending, int i, double at, double share)
    {
        var end = mouth.Arriving();
        var beyond = ending.Kind == EndKind.OpenAir ? OpenAir(end) : BeyondOf(ending.Node, at);
        var flow = ending.Kind switch
        {
            EndKind.InletValve => Mouth.Throat(end, beyond, mouth.Area, Between(_tables[ending.Cylinder].InletIn, i, at), Between(_tables[ending.Cylinder].InletOut, i, at), mouth.Flow.Pressure),
            EndKind.ExhaustValve => Mouth.Throat(end, beyond, mouth.Area, Between(_tables[ending.Cylinder].ExhaustIn, i, at), Between(_tables[ending.Cylinder].ExhaustOut, i, at), mouth.Flow.Pressure),
            EndKind.OpenAir when _outletOpening < 1 => Mouth.Throat(end, beyond, mouth.Area, _outletOpening * mouth.Area, _outletOpening * mouth.Area, mouth.Flow.Pressure),
            _ => Mouth.Open(end, beyond, mouth.Area, 1 + ending.Loss - Kept(ending), mouth.Flow.Pressure),
        };
        Span<double> entering = stackalloc double[3];
        Entering(mouth, ending, entering);
        mouth.Let(flow, entering);
        Receive(mouth, ending, flow, share);
    }

    /// <summary>Shares of what comes into a pipe; droplets count as vapour where the pipe carries none.</summary>
    private void Entering(PipeMouth mouth, in PipeEnding ending, Span<double> shares)
    {
        var n = ending.Node;
        if (ending.Kind == EndKind.OpenAir)
        {
            (shares[PipeGas.Vapour], shares[PipeGas.Burned]) = (mouth.Share(PipeGas.Vapour), mouth.Share(PipeGas.Burned));
            return;
        }

        var dry = mouth.Pipe.Gas.Carried <= PipeGas.Droplets;
        (shares[PipeGas.Vapour], shares[PipeGas.Burned], shares[PipeGas.Droplets]) = (Nodes.Vapour[n] + (dry ? Nodes.Liquid[n] : 0), Nodes.Burned[n], Nodes.Liquid[n]);
    }

    /// <summary>
    /// Share of a head that a stream brings along into a mouth of a junction: what comes the straight way, from branches to
    /// trunk or from trunk to branch, keeps the junction's recovery of it; what turns round from branch to branch loses all.
    /// </summary>
    private double Kept(in PipeEnding ending)
    {
        if (ending.Recovery == 0)
        {
            return 0;
        }

        var (trunk, branches) = (_trunkFlow[ending.Node], _branchFlow[ending.Node]);
        var straight = ending.Trunk ? branches : trunk;
        return trunk + branches > 0 ? ending.Recovery * straight / (trunk + branches) : 0;
    }

    /// <summary>Notes what runs into the junctions, by trunk and by branches.</summary>
    private void NoteJunctions()
    {
        Array.Clear(_trunkFlow);
        Array.Clear(_branchFlow);
        for (var p = 0; p < _pipes.Length; p++)
        {
            Note(_net.Pipes[p].First, _pipes[p].First.Flow.Outwards);
            Note(_net.Pipes[p].Last, _pipes[p].Last.Flow.Outwards);
        }

        void Note(in PipeEnding ending, double outwards)
        {
            if (ending.Recovery > 0)
            {
                (ending.Trunk ? _trunkFlow : _branchFlow)[ending.Node] += Math.Max(0, outwards);
            }
        }
    }

    private void Receive(PipeMouth mouth, in PipeEnding ending, in MouthFlow flow, double share)
    {
        var (mass, n) = (share * flow.Outwards, PerNode * ending.Node);
        if (mass > 0 || ending.Kind == EndKind.OpenAir)
        {
            var (vapour, burned) = (mouth.Share(PipeGas.Vapour), mouth.Share(PipeGas.Burned));
            var droplets = mouth.Pipe.Gas.Carried > PipeGas.Droplets ? mouth.Share(PipeGas.Droplets) : 0;
            _pipeRates[n] += mass * (1 - vapour - burned - droplets);
            _pipeRates[n + Vapour] += mass * vapour;
            _pipeRates[n + Burned] += mass * burned;
            _pipeRates[n + Liquid] += mass * droplets;
        }
        else
        {
            _pipeRates[n] += mass * Nodes.Air[ending.Node];
            _pipeRates[n + Vapour] += mass * Nodes.Vapour[ending.Node];
            _pipeRates[n + Burned] += mass * Nodes.Burned[ending.Node];
            _pipeRates[n + Liquid] += mass * Nodes.Liquid[ending.Node];
        }

        _pipeRates[n + Energy] += mass * flow.Enthalpy;
        switch (ending.Kind)
        {
            case EndKind.InletValve:
                _inletFlow[ending.Cylinder] += mass;
                _inletValvePressure[ending.Cylinder] += share * flow.Pressure;
                break;
            case EndKind.ExhaustValve:
                _exhaustFlow[ending.Cylinder] -= mass;
                _exhaustPressure += share * flow.Pressure / _tables.Length;
                _exhaustValvePressure[ending.Cylinder] += share * flow.Pressure;
                break;
            case EndKind.OpenAir:
                _pipeRates[_at.OutletMass] += mass;
                _pipeRates[_at.OutletTemperature] += mass * Stagnation(mouth.Pipe.Gas, mouth.Pipe.Gas.Cells);
                break;
        }
    }

    /// <summary>What a thermometer in the stream would show, K.</summary>
    private static double Stagnation(GasColumn gas, int cell) =>
        gas.Temperature[cell] * (1 + (0.5 * gas.Velocity[cell] * gas.Velocity[cell] / (gas.Degrees[cell] * gas.Sound[cell] * gas.Sound[cell])));

    /// <summary>What comes back out of the open air is the gas that left, with its heat.</summary>
    private Beyond OpenAir(in PipeEnd end)
    {
        var rt = end.Pressure / end.Density;
        var (gamma, half) = (end.Gamma, 0.5 * end.Outwards * end.Outwards);
        return new(_spec.Ambient.Pressure, rt + ((gamma - 1) / gamma * half), gamma, end.Energy + rt + half);
    }

    /// <summary>A node's condition carried on into the step as it changed over the one before.</summary>
    private Beyond BeyondOf(int n, double at)
    {
        var (p, rt, h) = (Nodes.Pressure[n], Nodes.RT[n], Nodes.Enthalpy[n]);
        if (_pressureBefore[n] == 0)
        {
            return new(p, rt, Nodes.Gamma[n], h);
        }

        return new(p + (at * (p - _pressureBefore[n])), rt + (at * (rt - _rtBefore[n])), Nodes.Gamma[n], h + (at * (h - _enthalpyBefore[n])));
    }

    private static double Between(double[] table, int i, double at) => table[i] + (at * (table[i + 1] - table[i]));

    private static void LetThroughStep(PipeMouth one, PipeMouth other)
    {
        var (from, into) = Joint.Flow(one.Arriving(), one.Area, other.Arriving(), other.Area, one.Flow.Pressure);
        Span<double> shares = stackalloc double[one.Pipe.Gas.Carried];
        for (var k = 0; k < shares.Length; k++)
        {
            shares[k] = (from.Outwards > 0 ? one : other).Share(k);
        }

        one.Let(from, shares);
        other.Let(into, shares);
    }
}
