"""Judges a set of files held in memory against every law."""
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


def shape_faults(blobs, tables):
    """Faults of each file taken alone; fills `tables` with its sound rows."""
    for file in sorted(TABLES.keys() - blobs.keys()):
        yield Fault("file", file, 1, "is missing", "a table")
    for file, blob in sorted(blobs.items()):
        if file in TABLES:
            tables[file], own = read_table(file, blob)
            yield from own
        elif file != "VERSION":
            yield Fault("file", file, 1, "is no known table", "a table named in table_laws")
    if not re.fullmatch(rb"20\d\d\.([1-9]|1[0-2])\.\d+\n", blobs.get("VERSION", b"")):
        yield Fault("version", "VERSION", 1, "is missing or malformed", "year.month.number")


def judge(blobs):
    """All faults of the files {path below data/: bytes}, and the sound rows of each table."""
    tables = {file: [] for file in TABLES}
    faults = list(shape_faults(blobs, tables))
    broken = {fault.file for fault in faults}
    for law in LAWS:
        faults.extend(fault for fault in law(tables)
                      if fault.law != "whole" or fault.file not in broken)
    return sorted(faults, key=lambda fault: (fault.file, fault.line)), tables
