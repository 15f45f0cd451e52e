#!/usr/bin/env python3
"""The demo's figures by another program, which shares no code with ours: exact fractions, plain loops, rules.md read anew.

    node --import tsx tests/references/demo-dump.ts 2026-06-30 | python3 tests/references/demo-judge.py > tests/references/demo-judge.json

Only what the demo holds is covered: Nova Scotia and Maine, purchase units as priced (or n-for), no payments in parts; an
accepted alternative counts by its factor as an offer, no lot of one is set aside.
"""
import json, sys
from collections import defaultdict
from datetime import date, timedelta
from fractions import Fraction as F
from math import ceil, floor, lcm
from statistics import median

demo = json.load(sys.stdin)
D = date.fromisoformat(demo["day"])
day = date.fromisoformat
stores = {s["id"]: s for s in demo["stores"]}
materials = {m["id"]: m for m in demo["materials"]}
RECHECK = 30
MONEY_RATE = F(7, 100)


def cents(x):
    """half up, away from zero"""
    sign = -1 if x < 0 else 1
    return F(sign * floor(abs(x) * 100 + F(1, 2)), 100)


def hst(d):
    return F(15, 100) if d < date(2025, 4, 1) else F(14, 100)


def fx(d):
    best = max((r for r in demo["rates"] if day(r["date"]) <= d), key=lambda r: r["date"])
    age = (d - day(best["date"])).days
    assert age <= 7, (d, best)
    return F(best["rate"])


def all_in(p, d):
    """home price per purchase unit on day d, or None; tax-exclusive prices only (all the demo's shelf prices are)"""
    s = stores[p["storeId"]]
    assert not p["taxIncluded"]
    price = F(p["amount"]) / F(p["per"]["quantity"])
    for disc in s.get("discounts", []):
        if disc["category"] == materials[p["materialId"]]["category"] and day(disc["from"]) <= d:
            price *= 1 - F(disc["percent"]) / 100
    if s["currency"] == "USD":
        return price * (1 + F("5.5") / 100 + hst(d)) * fx(d)  # sales tax there, HST at the border on the price before it
    return price * (1 + hst(d))


by_material = defaultdict(list)
for p in demo["prices"]:
    by_material[p["materialId"]].append(p)


def offers(material, d):
    seen = [p for p in by_material[material] if day(p["seenOn"]) <= d]
    out = []
    for store in {p["storeId"] for p in seen}:
        here = [p for p in seen if p["storeId"] == store]
        none = max((p["seenOn"] for p in here if p["terms"] == "none-left"), default="")
        tiers = defaultdict(list)
        for p in here:
            if p["terms"] not in ("none-left", "paid"):
                tiers[(p["terms"], p.get("minQuantity", "1") if p["terms"] == "quantity-break" else "")].append(p)
        for (terms, _), ps in tiers.items():
            p = max(ps, key=lambda x: x["seenOn"])
            if p["seenOn"] <= none:
                continue
            until = p.get("until")
            if terms in ("special", "clearance", "used") and not until:
                until = (day(p["seenOn"]) + timedelta(days=7)).isoformat()
            age = (d - day(p["seenOn"])).days
            if until and day(until) < d:
                continue
            if age > 365:
                continue
            stale = age > RECHECK and not p.get("until")
            out.append(dict(price=all_in(p, d), stale=stale, min=int(p.get("minQuantity", 1)), max=int(p["maxQuantity"]) if "maxQuantity" in p else None,
                            until=day(until) if until else None, store=store, fees=p.get("fees", []), terms=terms, p=p))
    return out


def cover(offs, n):
    """least total by a table over every quantity; fresh first, stale only for what fresh cannot cover

    n is in parts; an offer gives so many parts with each of its units (one, unless something stands in with a factor)
    """
    fresh = [o for o in offs if not o["stale"]]
    stale = [o for o in offs if o["stale"]]
    if any(o["max"] is None for o in fresh):
        return table(fresh, n)
    have = min(n, sum(o["max"] * o["parts"] for o in fresh))
    a = table(fresh, have) if have else (F(0), [])
    if a is None:
        return None
    if have == n:
        return a
    b = table(stale, n - have)
    return None if b is None else (a[0] + b[0], a[1] + b[1])


def table(offs, n):
    best = {0: (F(0), [])}
    for o in offs:
        new = dict(best)
        for q, (cost, takes) in best.items():
            left = ceil(F(n - q, o["parts"]))
            top = o["max"] if o["max"] is not None else max(o["min"], left)
            for x in range(o["min"], min(top, max(o["min"], left)) + 1):
                reach = min(n, q + x * o["parts"])
                c = cost + x * o["price"]
                if reach not in new or c < new[reach][0]:
                    new[reach] = (c, takes + [(o, x)])
        best = new
    return best.get(n)


def going(material, d):
    """median over stores: fresh; else, of a past day, the line between the sightings on either side; else older (R7).

    The line comes before the older price: where it can be drawn there is always an older price too, so that the other
    order would never draw one.
    """
    shelf = {}
    for store in stores:
        here = [p for p in by_material[material] if p["storeId"] == store and p["terms"] == "shelf" and day(p["seenOn"]) <= D]
        shelf[store] = sorted(here, key=lambda x: x["seenOn"])

    def within(horizon):
        newest = [max((p for p in ps if day(p["seenOn"]) <= d), key=lambda x: x["seenOn"], default=None) for ps in shelf.values()]
        return [all_in(p, d) for p in newest if p and (d - day(p["seenOn"])).days <= horizon]

    def lines():
        for ps in shelf.values():
            before = [p for p in ps if day(p["seenOn"]) <= d]
            after = [p for p in ps if day(p["seenOn"]) > d]
            if before and after:
                a, b = day(before[-1]["seenOn"]), day(after[0]["seenOn"])
                if (b - a).days <= 3 * RECHECK:
                    low, high = all_in(before[-1], d), all_in(after[0], d)
                    yield low + (high - low) * (d - a).days / (b - a).days

    prices = within(RECHECK) or list(lines()) or within(3 * RECHECK)
    return median(prices) if prices else None


def lot_cost(lot):
    paid = F(lot["paid"]["amount"])
    return paid if lot["paid"]["taxIncluded"] else paid * (1 + hst(day(lot["orderedOn"])))


lots = {l["id"]: l for l in demo["lots"]}
requirements = {r["id"]: r for r in demo["requirements"]}
projects = {p["id"]: p for p in demo["projects"]}


def needed(r):
    return F(r["quantity"]) * (1 + F(r["wastePercent"]) / 100)


answer = {"day": demo["day"], "projects": {}, "realised": {}}
pools = []
for r in demo["requirements"]:
    pools.append((0 if projects[r["projectId"]]["status"] == "live" else 1, r["neededBy"], r["id"]))

taken = defaultdict(int)
lines = {}
for _, _, rid in sorted(pools):
    r = requirements[rid]
    allocated = sum(int(e["quantity"]) for e in demo["events"] if e.get("requirementId") == rid and e["kind"] == "allocated")
    drawn = sum(int(e["quantity"]) for e in demo["events"] if e.get("requirementId") == rid and e["kind"] == "drawn")
    locked = max(allocated, drawn)
    cost = F(0)
    for e in demo["events"]:
        if e.get("requirementId") == rid and e["kind"] == "allocated":
            lot = lots[e["lotId"]]
            assert lot["materialId"] == r["materialId"]
            cost += cents(lot_cost(lot) * int(e["quantity"]) / int(lot["quantity"]))
    over = projects[r["projectId"]]["status"] == "finished"
    n = 0 if over else max(0, ceil(needed(r) - locked))
    factors = {r["materialId"]: F(1)} | {a["materialId"]: F(a["factor"]) for a in r["alternatives"]}
    per_unit = lcm(*(f.numerator for f in factors.values()))
    offs = []
    for mid, factor in factors.items():
        for o in offers(mid, D):
            if o["terms"] != "used" or r["acceptsUsed"]:
                parts = F(per_unit) / factor
                assert parts.denominator == 1
                offs.append({**o, "parts": int(parts), "material": mid})
    for o in offs:
        if o["max"] is not None:
            o["max"] -= taken[o["p"]["id"]]
    offs = [o for o in offs if o["max"] is None or o["max"] >= o["min"]]
    got = cover(offs, n * per_unit) if n else (F(0), [])
    if got and projects[r["projectId"]]["status"] == "live":
        for o, x in got[1]:
            if o["max"] is not None:
                taken[o["p"]["id"]] += x
    lines[rid] = dict(n=n, locked=locked, lockedCost=cost, finish=cents(got[0]) if got else None, takes=got[1] if got else [])

for pid, project in projects.items():
    mine = [(requirements[rid], l) for rid, l in lines.items() if requirements[rid]["projectId"] == pid]
    charges, spent = {}, defaultdict(F)
    for r, l in mine:
        for o, x in l["takes"]:
            spent[o["store"]] += x * F(o["p"]["amount"]) / F(o["p"]["per"]["quantity"])
            for fee in o["fees"]:
                charges[(o["store"], fee["name"])] = fee
    orders = sum((F(0) if spent[s] >= F(fee["freeFrom"]) else cents(F(fee["amount"]) * (1 + hst(D))) for (s, _), fee in charges.items()), F(0))
    unpriced = sum(1 for _, l in mine if l["finish"] is None)
    finish = sum((l["finish"] for _, l in mine if l["finish"] is not None), F(0))
    locked = sum((l["lockedCost"] for _, l in mine), F(0))
    answer["projects"][project["name"]] = {
        "open": {materials[r["materialId"]]["name"]: str(l["n"]) for r, l in mine},
        "lockedCost": f"{float(locked):.2f}", "costToFinish": f"{float(finish):.2f}", "perOrderCharges": f"{float(orders):.2f}",
        "estimateAtCompletion": f"{float(locked + finish + orders):.2f}", "unpricedLines": unpriced,
        "standIns": sorted(f"{x} {materials[o['material']]['name']} for {materials[r['materialId']]['name']}"
                           for r, l in mine for o, x in l["takes"] if o["material"] != r["materialId"]),
    }

# Realised: every draw of the demo empties or cuts a lot once, so a draw's cost is cents(lot cost x drawn / quantity).
for e in demo["events"]:
    if e["kind"] != "drawn":
        continue
    lot, q, on = lots[e["lotId"]], int(e["quantity"]), day(e["on"])
    bought = day(lot["orderedOn"])
    cost = cents(lot_cost(lot) * q / int(lot["quantity"]))
    carry = cents(lot_cost(lot) * q / int(lot["quantity"]) * MONEY_RATE * (on - bought).days / 365)
    g0, g1 = going(lot["materialId"], bought), going(lot["materialId"], on)
    v0 = None if g0 is None else cents(g0 * q)
    v1 = None if g1 is None else cents(g1 * q)
    row = dict(cost=cost, carrying=carry, valueAtAcquisition=v0, valueAtDraw=v1, saving=None if v1 is None else v1 - cost - carry)
    answer["realised"][e["id"]] = {k: None if v is None else f"{float(v):.2f}" for k, v in row.items()}

print(json.dumps(answer, indent=2))
