# SPDX-License-Identifier: MIT
"""The same work in SciPy: side_by_side.py boschloo X1 N1 X2 N2 | power N P1 P2. Prints "SECONDS RESULT"."""
import sys
import time

from scipy.stats import binom, boschloo_exact

work, *given = sys.argv[1:]
start = time.process_time()
if work == "boschloo":
    x1, n1, x2, n2 = map(int, given)
    sides = [boschloo_exact([[x1, x2], [n1 - x1, n2 - x2]], alternative=side).pvalue for side in ("less", "greater")]
    result = min(1.0, 2 * min(sides))
else:
    n, p1, p2 = int(given[0]), float(given[1]), float(given[2])
    result = 0.0
    for x1 in range(n + 1):
        for x2 in range(n + 1):
            # One side is enough: the other one's p is above a half there.
            side = "less" if x1 < x2 else "greater"
            if x1 != x2 and boschloo_exact([[x1, x2], [n - x1, n - x2]], alternative=side).pvalue <= 0.025:
                result += binom.pmf(x1, n, p1) * binom.pmf(x2, n, p2)
print(time.process_time() - start, result)
