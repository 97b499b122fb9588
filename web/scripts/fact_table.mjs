// node scripts/fact_table.mjs [--check]: writes src/fact/table.ts from schema/job.json and
// data/ask/find_out.csv: for each fact of a job its kind, range and words, and the figures it
// usually has.
import { readFileSync, writeFileSync } from "node:fs";

const home = new URL("../", import.meta.url);
const read = (path) => readFileSync(new URL(path, home), "utf8");
const schema = JSON.parse(read("../schema/job.json"));

/** The words of each line of a table whose cells hold no commas or quotes. */
const usual = new Map(read("../data/ask/find_out.csv").trim().split("\n").slice(1).map((line) => {
    const [fact, , , , , values] = line.split(",");
    return [fact, values === "any" ? [] : values.split(" ").map(Number)];
}));

const rows = {};

function kindOf(node) {
    const kinds = [node.type ?? []].flat();
    if (node.$ref === "#/$defs/fact") return "figure";
    if (node.$ref === "#/$defs/device") return "device";
    if (node.$ref === "#/$defs/text") return "text";
    if (node.enum) return "word";
    if (kinds.includes("boolean")) return "yes or no";
    if (kinds.includes("number")) return "number";
    if (kinds.includes("array")) return node.items.enum ? "words" : "list";
    return "object";
}

function note(pattern, node, required) {
    const kind = kindOf(node);
    const words = (kind === "words" ? node.items.enum : node.enum)?.filter((w) => w !== null);
    const values = usual.get(pattern);
    rows[pattern] = {
        kind,
        ...(node.minimum !== undefined ? { low: node.minimum, high: node.maximum } : {}),
        ...(node.multipleOf === 1 ? { whole: true } : {}),
        ...(words ? { words } : {}),
        ...(values?.length ? { usual: values } : {}),
        ...(required ? { needed: true } : {}),
    };
    if (kind === "device") walk(pattern, schema.$defs.device);
    if (kind === "object") walk(pattern, node);
    if (kind === "list" && node.items.type === "object") walk(`${pattern}/*`, node.items);
}

function walk(pattern, node) {
    for (const [key, child] of Object.entries(node.properties ?? {})) {
        note(`${pattern}/${key}`, child, node.required?.includes(key) ?? false);
    }
}

walk("", schema);

const lines = Object.entries(rows).map(([pattern, row]) => `  ${JSON.stringify(pattern)}: ${JSON.stringify(row)},`);
const out = [
    "// Written by scripts/fact_table.mjs from schema/job.json and data/ask/find_out.csv; do not edit.",
    "",
    'import type { FactRow } from "./kinds";',
    "",
    "/** By pointer, with * for the number of an entry of a list. */",
    "export const table: Record<string, FactRow> = {",
    ...lines,
    "};",
    "",
].join("\n");

const file = new URL("src/fact/table.ts", home);
if (process.argv.includes("--check")) {
    if (readFileSync(file, "utf8") !== out) {
        console.error("src/fact/table.ts is not what the schema asks for: npm run types");
        process.exit(1);
    }
} else {
    writeFileSync(file, out);
}
