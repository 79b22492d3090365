namespace Gudgeon.Bench;

/// <summary>The scheme of the pipes as one would first write it: a loop over cells, branches where the text has cases.</summary>
internal sealed class PlainTube
{
    private readonly double _gamma;
    private readonly int _n;
    private readonly double[] _rho, _momentum, _total, _u, _p;
    private readonly double[] _rhoL, _uL, _pL, _rhoR, _uR, _pR;
    private readonly double[] _mass, _push, _energy;

    public PlainTube(int cells, double gamma)
    {
        (_n, _gamma) = (cells, gamma);
        double[] Fresh() => new double[cells + 2];
        (_rho, _momentum, _total, _u, _p) = (Fresh(), Fresh(), Fresh(), Fresh(), Fresh());
        (_rhoL, _uL, _pL, _rhoR, _uR, _pR) = (Fresh(), Fresh(), Fresh(), Fresh(), Fresh(), Fresh());
        (_mass, _push, _energy) = (Fresh(), Fresh(), Fresh());
        for (var i = 1; i <= cells; i++)
        {
            (_rho[i], _p[i]) = i <= cells / 2 ? (1, 1) : (0.125, 0.1);
            _total[i] = _p[i] / (gamma - 1);
        }
    }

    public void March(int steps, double dt)
    {
        for (var k = 0; k < steps; k++)
        {
            foreach (var a in (ReadOnlySpan<double[]>)[_rho, _u, _p])
            {
                (a[0], a[_n + 1]) = (a[1], a[_n]);
            }

            Evolve(dt * _n);
            for (var i = 1; i < _n; i++)
            {
                Flux(i, _rhoR[i], _uR[i], _pR[i], _rhoL[i + 1], _uL[i + 1], _pL[i + 1]);
            }

            Flux(0, _rhoL[1], _uL[1], _pL[1], _rhoL[1], _uL[1], _pL[1]);
            Flux(_n, _rhoR[_n], _uR[_n], _pR[_n], _rhoR[_n], _uR[_n], _pR[_n]);
            Update(dt * _n);
        }
    }

    private void Evolve(double ratio)
    {
        for (var i = 1; i <= _n; i++)
        {
            var dRho = Slope(_rho[i - 1], _rho[i], _rho[i + 1]);
            var du = Slope(_u[i - 1], _u[i], _u[i + 1]);
            var dp = Slope(_p[i - 1], _p[i], _p[i + 1]);
            var rho = _rho[i] - (0.5 * ratio * ((_u[i] * dRho) + (_rho[i] * du)));
            var u = _u[i] - (0.5 * ratio * ((_u[i] * du) + (dp / _rho[i])));
            var p = _p[i] - (0.5 * ratio * ((_u[i] * dp) + (_gamma * _p[i] * du)));
            (_rhoL[i], _uL[i], _pL[i]) = (rho - (0.5 * dRho), u - (0.5 * du), p - (0.5 * dp));
            (_rhoR[i], _uR[i], _pR[i]) = (rho + (0.5 * dRho), u + (0.5 * du), p + (0.5 * dp));
        }
    }

    private void Flux(int face, double rhoL, double uL, double pL, double rhoR, double uR, double pR)
    {
        var (cL, cR) = (Math.Sqrt(_gamma * pL / rhoL), Math.Sqrt(_gamma * pR / rhoR));
        var (sL, sR) = (Math.Min(uL - cL, uR - cR), Math.Max(uL + cL, uR + cR));
        var contact = (pR - pL + (rhoL * uL * (sL - uL)) - (rhoR * uR * (sR - uR))) / ((rhoL * (sL - uL)) - (rhoR * (sR - uR)));
        var (rho, u, p, s) = contact >= 0 ? (rhoL, uL, pL, sL) : (rhoR, uR, pR, sR);
        var total = (p / (_gamma - 1)) + (0.5 * rho * u * u);
        (_mass[face], _push[face], _energy[face]) = (rho * u, (rho * u * u) + p, u * (total + p));
        if (contact >= 0 ? sL < 0 : sR > 0)
        {
            var starRho = rho * (s - u) / (s - contact);
            var starTotal = starRho * ((total / rho) + ((contact - u) * (contact + (p / (rho * (s - u))))));
            _mass[face] += s * (starRho - rho);
            _push[face] += s * ((starRho * contact) - (rho * u));
            _energy[face] += s * (starTotal - total);
        }
    }

    private void Update(double ratio)
    {
        for (var i = 1; i <= _n; i++)
        {
            _rho[i] += ratio * (_mass[i - 1] - _mass[i]);
            _momentum[i] += ratio * (_push[i - 1] - _push[i]);
            _total[i] += ratio * (_energy[i - 1] - _energy[i]);
            _u[i] = _momentum[i] / _rho[i];
            _p[i] = (_gamma - 1) * (_total[i] - (0.5 * _momentum[i] * _u[i]));
        }
    }

    private static double Slope(double before, double here, double after)
    {
        var (a, b) = (here - before, after - here);
        if (a * b <= 0)
        {
            return 0;
        }

        var size = Math.Min(Math.Abs(0.5 * (a + b)), 2 * Math.Min(Math.Abs(a), Math.Abs(b)));
        return a > 0 ? size : -size;
    }
}
