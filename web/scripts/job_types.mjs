// node scripts/job_types.mjs [--check]: writes src/job.ts, the types of a job, from schema/job.json.
import { readFileSync, writeFileSync } from "node:fs";

const home = new URL("../", import.meta.url);
const schema = JSON.parse(readFileSync(new URL("../schema/job.json", home), "utf8"));
const named = { text: "string", fact: "Fact", device: "Device" };

const words = (values) => values.map((v) => JSON.stringify(v)).join(" | ");

function typeOf(node, indent) {
    if (node.$ref) {
        const name = named[node.$ref.split("/").pop()];
        const required = node.type && ![node.type].flat().includes("null");
        return required ? name : `${name} | null`;
    }
    if (node.enum) return words(node.enum);
    const kinds = [node.type].flat();
    if (kinds.includes("object") && !node.properties) return "Record<string, unknown>";
    return kinds.map((kind) => {
        if (kind === "object") return members(node, indent);
        if (kind === "array") return array(node, indent);
        if (kind === "integer") return "number";
        return kind;
    }).join(" | ");
}

function array(node, indent) {
    const item = typeOf(node.items, indent);
    if (node.minItems && node.minItems === node.maxItems) {
        return `[${Array(node.minItems).fill(item).join(", ")}]`;
    }
    return /[|{]/.test(item) ? `Array<${item}>` : `${item}[]`;
}

function members(node, indent) {
    const inner = `${indent}  `;
    const lines = Object.entries(node.properties).map(([name, child]) => {
        const mark = node.required?.includes(name) ? "" : "?";
        const note = child.description ? `${inner}/** ${child.description} */\n` : "";
        return `${note}${inner}${name}${mark}: ${typeOf(child, inner)};\n`;
    });
    return `{\n${lines.join("")}${indent}}`;
}

const out = [
    "// Written by scripts/job_types.mjs from schema/job.json; do not edit.\n",
    "/** A bare number (then it was measured), or an object that says how well it is known. */",
    "export type Fact = number | FactObject;\n",
    `export interface FactObject ${members(schema.$defs.fact, "")}\n`,
    `export interface Device ${members(schema.$defs.device, "")}\n`,
    `export interface Job ${members(schema, "")}\n`,
    'export type Building = Job["buildings"][number];',
    'export type Run = Job["runs"][number];',
    'export type Leg = Run["legs"][number];',
    'export type Intake = Job["intake"];',
    'export type Ground = NonNullable<Job["ground"]>;',
    'export type Metalwork = NonNullable<Building["metalwork"]>[number];',
    'export type Circuit = NonNullable<Building["circuits"]>[number];',
    'export type Electrode = NonNullable<Building["electrode"]>;',
    "",
].join("\n");

const file = new URL("src/job.ts", home);
if (process.argv.includes("--check")) {
    if (readFileSync(file, "utf8") !== out) {
        console.error("src/job.ts is not what schema/job.json asks for: npm run types");
        process.exit(1);
    }
} else {
    writeFileSync(file, out);
}
