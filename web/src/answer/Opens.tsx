// A figure that opens its working underneath when touched.

import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";
import { later } from "../shell/later";

export interface Explained {
  figure: string;
  keyOf?: string | null | undefined;
  run?: string | undefined;
}

const Working = later<Explained>(async () => (await import("./Working")).Working, true);

interface OpensProps extends Explained {
  class?: string;
  /** What stands under the working: clause, basis, a remark. */
  foot?: ComponentChildren;
  children: ComponentChildren;
}

/** A figure that opens its working underneath when touched. */
export function Opens({ children, class: name = "", foot, ...explained }: OpensProps) {
  const [open, setOpen] = useState(false);
  const id = useId();
  return (
    <>
      <button
        type="button"
        class={`opens ${name}`}
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
      >
        {children}
      </button>
      {open && (
        <div id={id} class="opened">
          {foot}
          <Working {...explained} />
        </div>
      )}
    </>
  );
}
