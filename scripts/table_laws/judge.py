"""Judges a set of files held in memory against every law."""
import collections.abc
import re

from table_laws import cables, shocks
from table_laws.across import pair_faults
from table_laws.devices import device_faults
from table_laws.reading import read_table
from table_laws.shape import TABLES, Fault
from table_laws.whole import price_faults, whole_faults
from table_laws.within import citation_faults, interval_faults, order_faults, stated_faults

LAWS = (citation_faults, order_faults, interval_faults, stated_faults, *cables.LAWS,
        *shocks.LAWS, pair_faults, device_faults, whole_faults, price_faults)


class Watched(collections.abc.Mapping):
    """Tables that note which of them a law reads."""

    def __init__(self, tables):
        self.tables, self.read = tables, set()

    def __getitem__(self, file):
        rows = self.tables[file]
        self.read.add(file)
        return rows

    def __iter__(self):
        self.read.update(self.tables)
        return iter(self.tables)

    def __len__(self):
        self.read.update(self.tables)
        return len(self.tables)


class Memory:
    """What was read and judged before: a file of the same bytes gives the same rows, and a law that
    finds in all tables it reads the rows it found before finds the same faults."""

    def __init__(self):
        self.files, self.laws = {}, {}

    def read(self, file, blob):
        if (file, blob) not in self.files:
            self.files[file, blob] = read_table(file, blob)
        return self.files[file, blob]

    def judged(self, law, tables):
        known, found = self.laws.get(law, (None, None))
        if known is not None and all(tables[file] is rows for file, rows in known.items()):
            return found
        watched = Watched(tables)
        now = list(law(watched))
        if known is None:
            self.laws[law] = {file: tables[file] for file in watched.read}, now
        return now


def shape_faults(blobs, tables, read):
    """Faults of each file taken alone; fills `tables` with its sound rows."""
    for file in sorted(TABLES.keys() - blobs.keys()):
        yield Fault("file", file, 1, "is missing", "a table")
    for file, blob in sorted(blobs.items()):
        if file in TABLES:
            tables[file], own = read(file, blob)
            yield from own
        elif file != "VERSION":
            yield Fault("file", file, 1, "is no known table", "a table named in table_laws")
    if not re.fullmatch(rb"20\d\d\.([1-9]|1[0-2])\.\d+\n", blobs.get("VERSION", b"")):
        yield Fault("version", "VERSION", 1, "is missing or malformed", "year.month.number")


def judge(blobs, memory=None):
    """All faults of the files {path below data/: bytes}, and the sound rows of each table. With the
    `memory` of a run before, only what has changed is judged anew."""
    memory = memory or Memory()
    tables = {file: [] for file in TABLES}
    faults = list(shape_faults(blobs, tables, memory.read))
    broken = {fault.file for fault in faults}
    for law in LAWS:
        faults.extend(fault for fault in memory.judged(law, tables)
                      if fault.law != "whole" or fault.file not in broken)
    return sorted(faults, key=lambda fault: (fault.file, fault.line)), tables
