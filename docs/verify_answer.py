#!/usr/bin/env python3
"""Does a plain answer of trailer-ratings follow from itself?

    python3 verify_answer.py answer.json        (or the answer on standard input)

Works every figure out again in exact fractions, from the figures that were given, and names the first that does not follow.
Roots, powers and angles are worked out to fifty digits. Exit 0: it follows. 1: it does not. 2: it cannot be read.
Nothing is signed: a spec rewritten together with all that follows from it is another answer, and verifies.
"""
import json
import re
import sys
import zlib
from fractions import Fraction
from math import floor, isqrt

# tables: written by `npm run verifiers`
FORMAT = "trailer-ratings answer"
VERSION = 1
BASES = ["scale","label","published","computed","stated","estimated"]
UNITS = {"lb":["mass","0.45359237","1"],
  "kg":["mass","1","1"],
  "t":["mass","1000","1"],
  "lbf":["force","4.4482216152605","1"],
  "kip":["force","4448.2216152605","1"],
  "N":["force","1","1"],
  "kN":["force","1000","1"],
  "in":["length","0.0254","1"],
  "ft":["length","0.3048","1"],
  "mi":["length","1609.344","1"],
  "mm":["length","0.001","1"],
  "cm":["length","0.01","1"],
  "m":["length","1","1"],
  "in2":["area","0.00064516","1"],
  "ft2":["area","0.09290304","1"],
  "m2":["area","1","1"],
  "in3":["volume","0.000016387064","1"],
  "ft3":["volume","0.028316846592","1"],
  "gal":["volume","0.003785411784","1"],
  "in4":["second moment of area","0.0000004162314256","1"],
  "psi":["pressure","4.4482216152605","0.00064516"],
  "ksi":["pressure","4448.2216152605","0.00064516"],
  "kPa":["pressure","1000","1"],
  "bar":["pressure","100000","1"],
  "mph":["speed","1609.344","3600"],
  "km/h":["speed","1000","3600"],
  "ft/s":["speed","0.3048","1"],
  "ft2/s2":["speed squared","0.09290304","1"],
  "lb/ft":["weight per length","0.45359237","0.3048"],
  "lb/in":["weight per length","0.45359237","0.0254"],
  "kg/m":["weight per length","1","1"],
  "lb/ft2":["weight per area","0.45359237","0.09290304"],
  "kg/m2":["weight per area","1","1"],
  "lb/ft3":["density","0.45359237","0.028316846592"],
  "lb/in3":["density","0.45359237","0.000016387064"],
  "lb/gal":["density","0.45359237","0.003785411784"],
  "kg/m3":["density","1","1"],
  "lb*in":["weight moment","0.011521246198","1"],
  "lb*ft":["weight moment","0.138254954376","1"],
  "kg*m":["weight moment","1","1"],
  "lb*in2":["inertia","0.0002926396534292","1"],
  "kg*m2":["inertia","1","1"],
  "lbf*in":["moment","0.1129848290276167","1"],
  "lbf*ft":["moment","1.3558179483314004","1"],
  "N*m":["moment","1","1"],
  "lbf/in":["force per length","4.4482216152605","0.0254"],
  "lbf/ft":["force per length","4.4482216152605","0.3048"],
  "kN/m":["force per length","1000","1"],
  "lbf*in2":["stiffness","0.00286981465730146418","1"],
  "lbf*in3":["deflection moment","0.000072893292295457190172","1"],
  "in3*ft/lb":["modulus per weight","0.0000049947771072","0.45359237"],
  "g":["acceleration","9.80665","1"],
  "ft/s2":["acceleration","0.3048","1"],
  "m/s2":["acceleration","1","1"],
  "kg/lb":["printed pound","1","1"],
  "ratio":["ratio","1","1"],
  "%":["ratio","1","100"],
  "deg":["angle","1","1"]}
PRODUCTS = [["lb/ft","ft","lb"],
  ["lb/in","in","lb"],
  ["kg/m","m","kg"],
  ["lb/ft2","ft2","lb"],
  ["kg/m2","m2","kg"],
  ["lb/ft2","ft","lb/ft"],
  ["lb/ft3","ft3","lb"],
  ["lb/ft3","ft2","lb/ft"],
  ["lb/ft3","ft","lb/ft2"],
  ["lb/in3","in3","lb"],
  ["lb/in3","in2","lb/in"],
  ["lb/gal","gal","lb"],
  ["kg/m3","m2","kg/m"],
  ["lb","in","lb*in"],
  ["lb","ft","lb*ft"],
  ["kg","m","kg*m"],
  ["kg/lb","lb","kg"],
  ["lb*in","in","lb*in2"],
  ["lb","in2","lb*in2"],
  ["in","in","in2"],
  ["in2","in","in3"],
  ["in3","in","in4"],
  ["in2","in2","in4"],
  ["ft","ft","ft2"],
  ["ft2","ft","ft3"],
  ["ft/s","ft/s","ft2/s2"],
  ["ft/s2","ft","ft2/s2"],
  ["lbf/in","in","lbf"],
  ["lbf/ft","ft","lbf"],
  ["lbf","in","lbf*in"],
  ["lbf","ft","lbf*ft"],
  ["lbf*in","in","lbf*in2"],
  ["lbf*in2","in","lbf*in3"],
  ["in3*ft/lb","lb/ft","in3"],
  ["psi","in2","lbf"],
  ["psi","in3","lbf*in"],
  ["psi","in4","lbf*in2"]]
# end of tables


class Fault(Exception):
    """at, what, found, needed"""


def digits(text):
    ok = isinstance(text, str) and len(text) <= 400 and re.fullmatch(r"-?[0-9]+(\.[0-9]+)?", text)
    return Fraction(text) if ok else None


def figure(text):
    """`9000 lb`; a plain number has no unit."""
    if not isinstance(text, str):
        return None
    first, *rest = text.split(" ")
    value, unit = digits(first), rest[0] if rest else "ratio"
    return None if value is None or len(rest) > 1 or unit not in UNITS else (value, unit)


def words(value, unit):
    text = f"{float(value):.6f}".rstrip("0").rstrip(".")
    return text if unit == "ratio" else f"{text} {unit}"


# Figures that agree to 24 digits are one figure.
def nothing(small, large):
    return abs(small) * 10**24 <= abs(large)


def minus(a, b):
    d = a - b
    return Fraction(0) if nothing(d, a) or nothing(d, b) else d


def total(terms):
    all_of_them = sum(terms, Fraction(0))
    cancels = any(t < 0 for t in terms) and any(nothing(all_of_them, t) for t in terms)
    return Fraction(0) if cancels else all_of_them


def nearest(a):
    return (-1 if a < 0 else 1) * floor(abs(a) + Fraction(1, 2))


def rounded(value, step, mode):
    steps = value / step
    away = nearest(steps)
    if minus(steps, Fraction(away)) == 0:
        return away * step
    is_half = minus(abs(steps - away), Fraction(1, 2)) == 0
    towards = away - (-1 if steps < 0 else 1) if is_half and away != 0 else away
    count = {"down": floor(steps), "up": floor(steps) + 1, "nearest": away, "nearest-down": towards}.get(mode)
    return None if count is None else count * step


# Roots, powers and angles with 70 decimals, in whole numbers.
UNIT = 10**70
PI = 31415926535897932384626433832795028841971693993751058209749445923078164


def scaled(a):
    return a.numerator * UNIT // a.denominator


def quot(a, b):
    """A whole quotient, cut towards zero."""
    return abs(a) // abs(b) * (1 if (a < 0) == (b < 0) else -1)


def root(a):
    if a < 0:
        return None
    top, bottom = isqrt(a.numerator), isqrt(a.denominator)
    if top * top == a.numerator and bottom * bottom == a.denominator:
        return Fraction(top, bottom)
    return Fraction(isqrt(a.numerator * UNIT * UNIT // a.denominator), UNIT)


def series(first, x, n):
    square, term, result = quot(x * x, UNIT), first, first
    while term:
        term = quot(-quot(term * square, UNIT), n * (n + 1))
        result, n = result + term, n + 2
    return result


def radians(a):
    within = a - floor(a / 360 + Fraction(1, 2)) * 360
    return quot(within.numerator * PI, within.denominator * 180)


def sine(x):
    return series(x, x, 2)


def cosine(x):
    return series(UNIT, x, 1)


def arc_tangent(x):
    doublings = 0
    while abs(x) > UNIT // 10:
        x, doublings = quot(x * UNIT, UNIT + isqrt(UNIT * UNIT + x * x)), doublings + 1
    square, term, result, n = quot(x * x, UNIT), x, x, 3
    while term:
        term = -quot(term * square, UNIT)
        result, n = result + quot(term, n), n + 2
    return result * 2**doublings


def degrees(x):
    return Fraction(x * 180, PI)


def arc_sine(a):
    x = scaled(a)
    if abs(x) > UNIT:
        return None
    if abs(x) == UNIT:
        return Fraction(90 if x > 0 else -90)
    return degrees(arc_tangent(quot(x * UNIT, isqrt(UNIT * UNIT - x * x))))


def power(a, b):
    if a < 0 or (a == 0 and b <= 0):
        return None
    if a == 0:
        return Fraction(0)
    if b.denominator == 1 and abs(b) <= 16:
        return a ** int(b)
    near, doublings = scaled(a), 1
    if near <= 0:
        return None
    while abs(near - UNIT) > UNIT // 10:
        near, doublings = isqrt(near * UNIT), doublings + 1
    y = quot((near - UNIT) * UNIT, near + UNIT)
    square, term, log, n = quot(y * y, UNIT), y, y, 3
    while term:
        term = quot(term * square, UNIT)
        log, n = log + quot(term, n), n + 2
    x, squarings = quot(log * 2**doublings * b.numerator, b.denominator), 0
    if abs(x) >= 6000 * UNIT:
        return None
    while abs(x) > UNIT // 10:
        x, squarings = quot(x, 2), squarings + 1
    term, result, n = UNIT, UNIT, 1
    while term:
        term = quot(quot(term * x, UNIT), n)
        result, n = result + term, n + 1
    for _ in range(squarings):
        result = quot(result * result, UNIT)
    return Fraction(result, UNIT)


def product_unit(a, b):
    if "ratio" in (a, b):
        return a if b == "ratio" else b
    return next((made for x, y, made in PRODUCTS if (x, y) in ((a, b), (b, a))), None)


def quotient_unit(a, b):
    if a == b:
        return "ratio"
    if b == "ratio":
        return a
    return next((y if x == b else x for x, y, made in PRODUCTS if made == a and b in (x, y)), None)


def size_of(unit):
    return Fraction(UNITS[unit][1]) / Fraction(UNITS[unit][2])


ROOTS = {"in2": "in", "ft2": "ft", "m2": "m", "ratio": "ratio"}


def least(values):
    best = values[0]
    for value in values[1:]:
        best = value if minus(value, best) < 0 else best
    return best


def step(node, operands, unit):
    """The value and the unit of a step, or None."""
    values, first = [value for value, _ in operands], operands[0][1]
    one, op = (first if all(u == first for _, u in operands) else None), node["is"]
    if op in ("sum", "least", "greatest"):
        return {"sum": total, "least": least, "greatest": lambda v: -least([-x for x in v])}[op](values), one
    a = values[0]
    if len(values) == 2:
        b, second = values[1], operands[1][1]
        if op == "difference":
            return minus(a, b), one
        if op == "product":
            return a * b, product_unit(first, second)
        if op == "quotient" and b != 0:
            return a / b, quotient_unit(first, second)
        return (power(a, b), "ratio") if op == "power" and one == "ratio" else (None, None)
    if len(values) > 2:
        return None, None
    if op == "convert" and UNITS[first][0] == UNITS[unit][0]:
        return a * size_of(first) / size_of(unit), unit
    if op == "relabel" and first == "lb":
        return a, "lbf"
    if op == "squareRoot":
        return root(a), ROOTS.get(first)
    if op == "round":
        to = digits(node.get("rounding", {}).get("step"))
        return (rounded(a, to, node["rounding"].get("mode")), first) if to and to > 0 else (None, None)
    if op in ("sine", "cosine", "tangent") and first == "deg":
        x = radians(a)
        rise, run = sine(x), cosine(x)
        made = {"sine": rise, "cosine": run, "tangent": quot(rise * UNIT, run) if run else None}[op]
        return (None if made is None else Fraction(made, UNIT)), "ratio"
    if op == "arcSine" and first == "ratio":
        return arc_sine(a), "deg"
    if op == "arcTangent" and first == "ratio":
        return degrees(arc_tangent(scaled(a))), "deg"
    return None, None


def bounded(a):
    """A hostile answer must not ask for endless work."""
    if a.denominator.bit_length() <= 8192:
        return None if a.numerator.bit_length() > 8192 else a
    excess = a.denominator.bit_length() - 4096
    return Fraction(a.numerator >> excess, a.denominator >> excess)


def in_spec(spec, path):
    """Whether the key is there, its basis, and its figure where it is plain digits with a unit."""
    found = spec
    for key in path.split("."):
        if isinstance(found, list) and key.isdigit() and int(key) < len(found):
            found = found[int(key)]
        elif isinstance(found, dict) and key in found:
            found = found[key]
        else:
            return False, None, None
    record = found if isinstance(found, dict) else {"text": found}
    text = record.get("text", f"{record.get('value')} {record.get('unit')}")
    plain = re.sub(r",(?=\d{3})", "", text) if isinstance(text, str) else str(text)
    return True, record.get("basis"), figure(re.sub(r"^(-?[\d.]+)\s*(\S+)$", r"\1 \2", plain))


def leaf(node, stated, spec, at, what):
    """True where the figure stands in the spec as it is."""
    if node["is"] == "looked up":
        if node["basis"] != "published":
            raise Fault(at, f"basis of {what}", node["basis"], "published")
        return False
    if spec is None or "path" not in node:
        return False
    there, basis, told = in_spec(spec, node["path"])
    what = f"{what}, {node['path']} of the spec"
    if not there:
        raise Fault(at, what, node["figure"], "a key that the spec has")
    if basis is not None and basis != node["basis"]:
        raise Fault(at, f"basis of {what}", node["basis"], basis)
    if told is None or told[1] != stated[1]:
        return False
    if told[0] != stated[0]:
        raise Fault(at, what, node["figure"], words(*told))
    return True


def follow(answer):
    figures, bases, compared, taken = [], [], 0, []
    for i, node in enumerate(answer["working"]["nodes"]):
        at, what, stated = f"working.nodes.{i}", node.get("name", f"a {node['is']}"), figure(node["figure"])
        if stated is None:
            raise Fault(at, what, node["figure"], "digits, a blank and a unit")
        basis = "scale"
        if node["is"] in ("given", "looked up"):
            basis = node["basis"]
            if basis not in BASES:
                raise Fault(at, f"basis of {what}", basis, f"one of {', '.join(BASES)}")
            if leaf(node, stated, answer.get("spec"), at, what):
                compared += 1
            else:
                taken.append(what)
        elif node["is"] != "constant":
            if not node["of"] or any(not 0 <= place < i for place in node["of"]):
                raise Fault(at, what, node["of"], "nodes that stand before it")
            operands = [figures[place] for place in node["of"]]
            value, unit = step(node, operands, stated[1])
            value = None if value is None else bounded(value)
            if value is None or unit is None:
                raise Fault(at, what, node["is"], "a step that its operands allow")
            gap = stated[0] - value
            if unit != stated[1] or not (nothing(gap, value) or any(nothing(gap, v) for v, _ in operands)):
                raise Fault(at, what, node["figure"], words(value, unit))
            basis = max((bases[place] for place in node["of"]), key=BASES.index)
            if basis != node["basis"]:
                raise Fault(at, f"basis of {what}", node["basis"], basis)
            stated = (value, unit)
        figures.append(stated)
        bases.append(basis)
    return figures, bases, compared, taken


def printed(at, what, text, found, mode, share=False):
    value, unit = (found[0] * 100, "%") if share else found
    edge = Fraction(1, 10) if share else Fraction(1) if unit in ("lb", "kg", "lbf", "N", "mm") else Fraction(1, 100)
    needed = rounded(value, edge, ("down" if value < 0 else "up") if mode == "away" else mode)
    if figure(text) != (needed, unit):
        raise Fault(at, what, text, words(needed, unit))


def summary(answer, figures, bases):
    nodes, checks = answer["working"]["nodes"], answer["checks"] + answer["partChecks"]
    for name in ("checks", "partChecks"):
        for i, check in enumerate(answer[name]):
            at, of = f"{name}.{i}", f"of {check['name']}"
            load, rating, reserve, used = check["nodes"]
            if nodes[reserve]["is"] != "difference" or nodes[reserve]["of"] != [rating, load]:
                raise Fault(f"{at}.nodes", f"reserve {of}", "another step", "rating minus load")
            if nodes[used]["is"] != "quotient" or nodes[used]["of"] != [load, rating]:
                raise Fault(f"{at}.nodes", f"share used {of}", "another step", "load over rating")
            printed(f"{at}.load", f"load {of}", check["load"], figures[load], "away")
            printed(f"{at}.rating", f"rating {of}", check["rating"], figures[rating], "down")
            printed(f"{at}.reserve", f"reserve {of}", check["reserve"], figures[reserve], "down")
            printed(f"{at}.used", f"share used {of}", check["used"], figures[used], "up", True)
            if bases[reserve] != check.get("basis"):
                raise Fault(f"{at}.basis", f"basis {of}", check.get("basis"), bases[reserve])
            verdict = "within" if minus(figures[load][0], figures[rating][0]) <= 0 else "over"
            if verdict != check["verdict"]:
                raise Fault(f"{at}.verdict", f"verdict on {check['name']}", check["verdict"], verdict)
    for which, payload in answer.get("payload", {}).items():
        at, what = f"payload.{which}", f"payload, {which}"
        printed(f"{at}.figure", what, payload["figure"], figures[payload["node"]], "down")
        for end, share in payload.get("shares", {}).items():
            node = figures[share["node"]]
            printed(f"{at}.shares.{end}.figure", f"tongue share of the {what}, {end}", share["figure"], node, "nearest", True)
    for i, lifted in enumerate(answer["uplift"]):
        printed(f"uplift.{i}.figure", lifted["what"], lifted["figure"], figures[lifted["node"]], "nearest")
        if figures[lifted["node"]][0] >= 0:
            raise Fault(f"uplift.{i}", lifted["what"], lifted["figure"], "a load below zero")
    for name in ("attention", "notes"):
        for i, note in enumerate(answer[name]):
            for j, each in enumerate(note.get("figures", [])):
                printed(f"{name}.{i}.figures.{j}.figure", note["tag"], each["figure"], figures[each["node"]], "nearest")
    if answer["partsChecked"] != len(answer["partChecks"]):
        raise Fault("partsChecked", "the count of parts", answer["partsChecked"], len(answer["partChecks"]))
    over = answer["uplift"] or any(check["verdict"] == "over" for check in checks)
    verdict = "over" if over else "attention" if answer["attention"] else "within" if answer["checks"] else "unchecked"
    if verdict != answer["verdict"]:
        raise Fault("verdict", "the verdict on the whole", answer["verdict"], verdict)
    return len(checks)


def verify(answer):
    """The lines that say what was verified; raises Fault at the first place that does not follow."""
    if not isinstance(answer, dict) or answer.get("format") != FORMAT:
        raise ValueError(f"not a {FORMAT}")
    if answer.get("version") != VERSION:
        raise ValueError(f"version {answer.get('version')} of the format; this script reads version {VERSION}")
    if "working" not in answer:
        raise ValueError("the working is not written out: without it nothing can be verified")
    figures, bases, compared, taken = follow(answer)
    checks = summary(answer, figures, bases)
    others = {key: value for key, value in answer.items() if key != "checksum"}
    text = json.dumps(others, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    checksum = f"{zlib.crc32(text.encode()):08x}"
    if checksum != answer["checksum"]:
        raise Fault("checksum", "the checksum over the whole answer", answer["checksum"], checksum)
    return [
        f"follows; verdict of the answer: {answer['verdict']}",
        f"{len(figures)} figures worked out again, {checks} checks judged again, {compared} given figures found in the spec",
        f"{len(taken)} figures taken as told: from published tables, or written in a way this script does not read",
        "nothing is signed; whether the figures are those of the trailer cannot be known here",
    ]


def main():
    try:
        with open(sys.argv[1], encoding="utf-8") if len(sys.argv) > 1 else sys.stdin as file:
            answer = json.load(file)
        print("\n".join(verify(answer)))
        return 0
    except Fault as fault:
        at, what, found, needed = fault.args
        print(f"does not follow\n{at}: {what} is {found}; it must be {needed}")
        return 1
    except (OSError, ValueError, KeyError, TypeError, IndexError, AttributeError) as reason:
        print(f"cannot be read: {reason!r}", file=sys.stderr)
        return 2


if __name__ == "__main__":
    sys.exit(main())
