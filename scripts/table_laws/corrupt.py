"""Self-test: corrupted copies of the tables, each of which the laws must refuse."""
import collections
import csv
import io
import itertools

from table_laws.bounds import LIMITS, SHOCK, UNKNOWNS, WARE
from table_laws.corruptions import BYTES, CELLS
from table_laws.judge import Memory, judge
from table_laws.reading import read_table
from table_laws.shape import LAW_NAMES, OPTIONAL, ORDERS, TABLES, Number, Words, header, kind_of
from table_laws.whole import wanted_rows

# One try: the law that must refuse, the corrupted file and its bytes, a name to print, a word the
# fault must hold, and the file the fault must name (the corrupted one unless stated).
Try = collections.namedtuple("Try", "law file blob name needle at", defaults=(None,))


def parsed(blob):
    return list(csv.reader(io.StringIO(blob.decode())))


def written(lines):
    text = io.StringIO()
    csv.writer(text, lineterminator="\n").writerows(lines)
    return text.getvalue().encode()


def edited(file, blob, select, change):
    """The file with `change` made to the one row that `select` finds ("column=value;...")."""
    names, lines = header(file), parsed(blob)
    wanted = dict(part.split("=", 1) for part in select.split(";"))
    found = [i for i, cells in enumerate(lines) if i
             and all(cells[names.index(n)] == v for n, v in wanted.items())]
    assert len(found) == 1, f"{file}: {select} finds {len(found)} rows"
    at = found[0]
    if change == "delete":
        del lines[at]
    elif change == "repeat":
        lines.insert(at, lines[at])
    else:
        for part in change.split(";"):
            name, value = part.split("=", 1)
            lines[at][names.index(name)] = value
    return written(lines)


def chosen_tries(blobs):
    for law, file, select, change, needle, *at in CELLS:
        yield Try(law, file, edited(file, blobs[file], select, change), f"{select}: {change}",
                  needle, *at)
    for law, file, old, new, needle in BYTES:
        assert old in blobs[file], f"{file}: nothing to corrupt"
        yield Try(law, file, blobs[file].replace(old, new, 1), f"bytes {new!r}", needle)


def cell_tries(blobs):
    """Every column of every table: blank, no number, out of range, unknown word."""
    for file in TABLES:
        lines = parsed(blobs[file])
        for column, name in enumerate(header(file)):
            kind = kind_of(file, name)
            bad = [("blank", "")] if kind != OPTIONAL else []
            if isinstance(kind, Number):
                bad += [("number", "+1" if kind.low < 0 else "-1"), ("number", "1e1"), ("number", "nan"),
                        ("range", str(kind.high + 1)), ("range", f"{kind.low - abs(kind.low) * 0.01 - 0.001:.6f}")]
                bad = [b for b in bad if b != ("range", f"{-0.001:.6f}")]
            elif isinstance(kind, Words):
                bad += [("word", "gibberish"), ("word", kind.words[0].upper() + "x")]
            for law, value in bad:
                for at in {1, len(lines) // 2, len(lines) - 1}:
                    copy = [list(cells) for cells in lines]
                    copy[at][column] = value
                    yield Try(law, file, written(copy), f"line {at + 1} {name} '{value}'", name)


def order_tries(blobs):
    """In every group of every order, two rows exchange their values."""
    for file, same, grows, value, _ in ORDERS:
        rows, _ = read_table(file, blobs[file])
        groups = collections.defaultdict(list)
        for row in rows:
            groups[tuple(row.cells[n] for n in same.split())].append(row)
        for key, group in groups.items():
            group.sort(key=lambda row: row.cells[grows])
            first, last = group[0], group[-1]
            if first.cells[value] == last.cells[value]:
                continue
            lines, at = parsed(blobs[file]), header(file).index(value)
            a, b = lines[first.line - 1], lines[last.line - 1]
            a[at], b[at] = b[at], a[at]
            yield Try("order", file, written(lines), f"{value} exchanged in {key}", value)


def whole_tries(blobs, tables):
    """The first, the middle and the last required row of each table are left out."""
    for file, (columns, keys) in wanted_rows(tables).items():
        held = [row for row in tables[file] if tuple(row.cells[n] for n in columns) in keys]
        for row in {held[i].line: held[i] for i in (0, len(held) // 2, -1)}.values():
            lines = parsed(blobs[file])
            del lines[row.line - 1]
            yield Try("whole", file, written(lines), f"line {row.line} left out", "no row for")


def stated_tries(blobs):
    """Every limit and every range moved past what is believable; every unit changed."""
    for file, bounds, key, (low, high) in (
            ("rules/limit.csv", LIMITS, "key", ("value", "value")),
            ("shock/constant.csv", SHOCK, "key", ("value", "value")),
            ("ware/constant.csv", WARE, "key", ("value", "value")),
            ("rules/unknown.csv", UNKNOWNS, "fact", ("low", "high"))):
        for word, (_, least, greatest) in bounds.items():
            changes = [("range", f"{high}={greatest * 1.1:.4f}"), ("unit", "unit=furlong")]
            if least > 0:
                changes.append(("range", f"{low}={least * 0.9:.4f}"))
            for law, change in changes:
                yield Try(law, file, edited(file, blobs[file], f"{key}={word}", change),
                          f"{word}: {change}", "")


def source_tries(blobs):
    """Each source is struck out of the bibliography while rows still cite it."""
    lines = parsed(blobs["sources.csv"])
    for at in range(1, len(lines)):
        key = lines[at][0]
        citing = next(f for f in TABLES if f != "sources.csv"
                      and any(key in cells for cells in parsed(blobs[f])))
        yield Try("source", "sources.csv", written(lines[:at] + lines[at + 1:]),
                  f"{key} struck out", key, citing)


def refused(one, faults):
    """Whether one of the faults is the refusal that this try demands."""
    return any(fault.law == one.law and fault.file == (one.at or one.file)
               and one.needle in fault.what + fault.allowed for fault in faults)


def file_tries(blobs):
    """Missing and unknown files: (the file, a name to print, all the files)."""
    for file in TABLES:
        yield file, "missing", {f: b for f, b in blobs.items() if f != file}
    yield "cable/surprise.csv", "unknown", {**blobs, "cable/surprise.csv": b"a\n1\n"}


def self_test(blobs):
    """Prints each corruption let through and the count of those refused; 0 when none was."""
    memory = Memory()
    faults, tables = judge(blobs, memory)
    if faults:
        print(f"the tables themselves have {len(faults)} faults: run without --self-test first")
        return 1
    alone = [(one, read_table(one.file, one.blob)[1]) for one in cell_tries(blobs)]
    tries = itertools.chain(chosen_tries(blobs), order_tries(blobs), whole_tries(blobs, tables),
                            stated_tries(blobs), source_tries(blobs))
    together = [(one, judge({**blobs, one.file: one.blob}, memory)[0]) for one in tries]
    missing = [(Try("file", file, b"", name, ""), judge(files, memory)[0])
               for file, name, files in file_tries(blobs)]
    results = [*alone, *together, *missing]
    let_through = [f"{one.file}: {one.name}: not refused by '{one.law}'"
                   for one, faults in results if not refused(one, faults)]
    provoked = {one.law for one, faults in results if refused(one, faults)}
    let_through += [f"no corruption provokes '{law}'" for law in sorted(LAW_NAMES - provoked)]
    for line in let_through:
        print(line)
    print(f"{len(results)} corruptions, {len(let_through)} let through, "
          f"{len(provoked)} kinds of law provoked")
    return 1 if let_through else 0
