#!/usr/bin/env python3
"""Index numbers by another program, which shares no code with ours: exact fractions, roots to 60 digits.

    python3 tests/references/index-judge.py > tests/references/index-judge.json

Formulas as in the Consumer Price Index Manual (IMF and others), written down anew. The baskets are made up from a fixed
seed; each has its prices at two times, its quantities at both, and for some lines no price at one of them.
"""
import json
import random
from decimal import ROUND_HALF_UP, Decimal, getcontext
from fractions import Fraction as F

getcontext().prec = 60
DIGITS = 12
draw = random.Random(20260302)


def text(x):
    """half up to so many decimals; a fraction is divided out only here"""
    value = x if isinstance(x, Decimal) else Decimal(x.numerator) / Decimal(x.denominator)
    return format(value.quantize(Decimal(1).scaleb(-DIGITS), ROUND_HALF_UP), "f")


def root(x, n):
    return ((Decimal(x.numerator) / Decimal(x.denominator)).ln() / n).exp()


def basket(size):
    lines = []
    for at in range(size):
        base = F(draw.randint(50, 20000), 100)
        lines.append({
            "base": base,
            "now": max(F(1, 100), F(round(base * 100 * draw.randint(40, 220) / 100), 100)),
            "q0": F(draw.randint(1, 900), 10),
            "q1": F(draw.randint(1, 900), 10),
            "gap": draw.choice(["", "", "", "", "base", "now"]) if size > 2 and at > 0 else "",
        })
    return lines


def cost(lines, price, quantity):
    return sum(line[price] * line[quantity] for line in lines)


def judged(lines):
    laspeyres = F(cost(lines, "now", "q0"), cost(lines, "base", "q0"))
    paasche = F(cost(lines, "now", "q1"), cost(lines, "base", "q1"))
    product = F(1)
    for line in lines:
        product *= line["now"] / line["base"]
    known = [line for line in lines if not line["gap"]]
    priced = [line for line in lines if line["gap"] != "base"]
    return {
        "lines": [
            {"basePrice": str(float(l["base"])), "price": str(float(l["now"])), "baseQuantity": str(float(l["q0"])),
             "quantity": str(float(l["q1"])), "gap": l["gap"]}
            for l in lines
        ],
        "laspeyres": text(100 * laspeyres),
        "paasche": text(100 * paasche),
        "fisher": text(100 * root(laspeyres * paasche, 2)),
        "jevons": text(100 * root(product, len(lines))),
        "contributions": [text(100 * l["q0"] * (l["now"] - l["base"]) / cost(lines, "base", "q0")) for l in lines],
        "partKnown": text(100 * F(cost(known, "now", "q0"), cost(known, "base", "q0"))),
        "shareOfBaseCost": text(F(cost(known, "base", "q0"), cost(priced, "base", "q0"))),
    }


print(json.dumps({"digits": DIGITS, "baskets": [judged(basket(size)) for size in (1, 2, 3, 3, 5, 8, 13, 21, 40)]}, indent=1))
