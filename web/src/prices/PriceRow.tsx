import { useEffect, useId, useState } from "preact/hooks";
import { say } from "../words";
import { take } from "./book";
import { isInvented, withPrice, type Row } from "./table";

interface PriceRowProps {
  row: Row;
  csv: string;
  use: string;
  faults: string[];
}

/** What a price is for: £ a unit; a share, an hour or a factor is no price. */
export function unitWords(row: Row): { before: string; after: string } {
  const bare =
    row.unit === "%" ||
    row.unit === "factor" ||
    row.unit === "per cent" ||
    row.unit === "years" ||
    /^(hours |tail m$)/.test(row.item);
  return bare
    ? { before: "", after: row.unit }
    : { before: "£", after: say("prices.per", { unit: row.unit }) };
}

export function PriceRow({ row, csv, use, faults }: PriceRowProps) {
  const [net, setNet] = useState(row.net);
  const id = useId();
  useEffect(() => setNet(row.net), [row.net]);
  const { before, after } = unitWords(row);
  const settle = (typed: string): void => {
    if (typed.trim() !== row.net) void take(withPrice(csv, row.item, typed));
  };
  const range = row.low !== "" && row.high !== "" && (row.low !== row.net || row.high !== row.net);
  return (
    <li class={`price-row ${faults.length > 0 ? "is-faulty" : ""}`}>
      <label class="price-item" for={id}>
        {row.item}
      </label>
      <span class="price-field">
        <span>{before}</span>
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={net}
          aria-invalid={faults.length > 0}
          aria-describedby={`${id}-says`}
          onInput={(e) => setNet(e.currentTarget.value)}
          onBlur={(e) => settle(e.currentTarget.value)}
          onKeyDown={(e) => {
            if (e.key === "Enter") settle(e.currentTarget.value);
            if (e.key === "Escape") setNet(row.net);
          }}
        />
        <span class="price-unit">{after}</span>
      </span>
      <span class="small price-says" id={`${id}-says`}>
        {use}
        {range &&
          ` – ${say("prices.range", {
            low: before + row.low,
            high: before + row.high + (before ? "" : `\u00a0${row.unit}`),
          })}`}
        {isInvented(row) && ` – ${say("prices.invented")}`}
        {faults.map((says) => (
          <strong key={says} class="price-fault">
            ▲ {says}
          </strong>
        ))}
      </span>
    </li>
  );
}
