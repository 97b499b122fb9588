import { useId } from "preact/hooks";
import type { ComponentChildren } from "preact";

export interface Option {
  value: string;
  text: string;
  tell?: string;
}

/** The value of "I don't know": it is an answer too, and looks like one that waits. */
export const open = "?";

interface Props {
  legend: ComponentChildren;
  tell?: string;
  options: Option[];
  /** null: none is chosen. */
  value: string | null;
  onChoose: (value: string) => void;
  big?: boolean;
}

/** One of a few, each a button wide enough for a cold thumb; arrows go through them. */
export function Choice({ legend, tell, options, value, onChoose, big }: Props) {
  const name = useId();
  return (
    <fieldset class={big ? "choice big" : "choice"}>
      <legend>{legend}</legend>
      {tell && <p class="tell">{tell}</p>}
      <div class="options">
        {options.map((option) => (
          <label key={option.value} class={`option${value === option.value ? " on" : ""}${option.value === open ? " open" : ""}`}>
            <input
              type="radio" name={name} value={option.value} checked={value === option.value}
              onChange={() => onChoose(option.value)}
              onClick={() => { if (value === option.value) onChoose(option.value); }}
            />
            <span>{option.text}</span>
            {option.tell && <small>{option.tell}</small>}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
