#!/usr/bin/env python3
"""Holds a workbook of materials against the comma-separated list of the same rows, with nothing but
zipfile and xml: read_workbook.py BOOK.xlsx LIST.csv. Prints what differs; exits 1 where anything does,
else prints how many rows, numbers and formulas were compared."""
import csv
import re
import sys
import xml.etree.ElementTree as ET
import zipfile

MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
NUMBERS = ("quantity", "price each, GBP without tax", "amount, GBP without tax")
SHEETS = ["Materials", "Handling", "About"]


def column_of(reference):
    number = 0
    for sign in reference:
        if sign.isalpha():
            number = 26 * number + ord(sign) - ord("A") + 1
    return number - 1


def cells_of(archive, name, strings):
    """Rows of a sheet as {column: (text or number, formula)}."""
    rows = []
    for row in ET.fromstring(archive.read(name)).iter(MAIN + "row"):
        cells = {}
        for cell in row.iter(MAIN + "c"):
            value, formula = cell.find(MAIN + "v"), cell.find(MAIN + "f")
            if value is None:
                continue
            text = cell.get("t") == "s"
            held = strings[int(value.text)] if text else float(value.text)
            cells[column_of(cell.get("r"))] = (held, None if formula is None else formula.text)
        rows.append(cells)
    return rows


def main(book, listed):
    wrong, numbers, formulas = [], 0, 0
    archive = zipfile.ZipFile(book)
    if archive.testzip():
        wrong.append("the archive is damaged")
    for name in archive.namelist():
        if name.endswith((".xml", ".rels")):
            ET.fromstring(archive.read(name))
    if {entry.date_time for entry in archive.infolist()} != {(1980, 1, 1, 0, 0, 0)}:
        wrong.append("the archive tells when it was packed")
    core = archive.read("docProps/core.xml").decode()
    dates = re.findall(r"\d{4}-\d\d-\d\dT[^<]*", core)
    if dates != ["2026-11-29T00:00:00Z"] * 2:
        wrong.append(f"the file's dates are not those that were given: {dates}")
    workbook = ET.fromstring(archive.read("xl/workbook.xml"))
    names = [sheet.get("name") for sheet in workbook.iter(MAIN + "sheet")]
    if names != SHEETS:
        wrong.append(f"sheets {names}")
    strings = ["".join(part.text or "" for part in item.iter(MAIN + "t")) for item in
               ET.fromstring(archive.read("xl/sharedStrings.xml")).iter(MAIN + "si")]
    pane = next(ET.fromstring(archive.read("xl/worksheets/sheet1.xml")).iter(MAIN + "pane"), None)
    if pane is None or pane.get("state") != "frozen" or pane.get("ySplit") != "1":
        wrong.append("the head is not frozen")
    with open(listed, encoding="utf-8", newline="") as file:
        header, *rows = csv.reader(file)
    held = cells_of(archive, "xl/worksheets/sheet1.xml", strings)
    priced = NUMBERS[2] in header
    if len(held) != len(rows) + 1 + priced:
        wrong.append(f"{len(held)} rows for a header, {len(rows)} rows and {priced} sum")
    total = 0
    for number, (cells, row) in enumerate(zip(held, [header, *rows])):
        for column, text in enumerate(row):
            value, formula = cells.get(column, (None, None))
            if number and header[column] in NUMBERS and text:
                numbers += 1
                same = isinstance(value, float) and abs(value - float(text)) < 5e-4
            else:
                same = (value or "") == (text[1:] if text.startswith("'") else text)
            if not same:
                wrong.append(f"row {number}, {header[column]}: {value!r} for {text!r}")
            if formula:
                formulas += 1
                product = cells[header.index("quantity")][0] * cells[header.index(NUMBERS[1])][0]
                if formula != f"ROUND(D{number + 1}*H{number + 1},2)" or \
                        f"{product + 1e-9:.2f}" != f"{value:.2f}":
                    wrong.append(f"row {number}: {formula} gives {product}, not {value}")
            if number and header[column] == NUMBERS[2] and text:
                total += round(float(text) * 100)
    if priced:
        value, formula = held[-1].get(header.index(NUMBERS[2]), (0, ""))
        if round(value * 100) != total or formula != f"SUM(I2:I{len(rows) + 1})":
            wrong.append(f"the sum is {value} by {formula}, the rows give {total} pence")
    print("\n".join(wrong) if wrong else f"rows {len(rows)} numbers {numbers} formulas {formulas}")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
