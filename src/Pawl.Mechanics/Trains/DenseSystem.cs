namespace Pawl.Mechanics.Trains;

/// <summary>A small dense linear system in doubles.</summary>
internal static class DenseSystem
{
    /// <summary>Solves A·x = b in place by Gaussian elimination with partial pivoting; false when A is singular.</summary>
    /// <param name="a">n rows of n coefficients; destroyed.</param>
    /// <param name="b">Right side; x on return.</param>
    public static bool TrySolve(double[][] a, double[] b)
    {
        var n = b.Length;
        for (var p = 0; p < n; p++)
        {
            var best = p;
            for (var r = p + 1; r < n; r++)
                if (Math.Abs(a[r][p]) > Math.Abs(a[best][p])) best = r;
            if (a[best][p] == 0) return false;

            (a[p], a[best]) = (a[best], a[p]);
            (b[p], b[best]) = (b[best], b[p]);
            for (var r = p + 1; r < n; r++)
            {
                var factor = a[r][p] / a[p][p];
                if (factor == 0) continue;
                for (var c = p; c < n; c++) a[r][c] -= factor * a[p][c];
                b[r] -= factor * b[p];
            }
        }

        for (var p = n - 1; p >= 0; p--)
        {
            for (var c = p + 1; c < n; c++) b[p] -= a[p][c] * b[c];
            b[p] /= a[p][p];
        }

        return true;
    }
}
