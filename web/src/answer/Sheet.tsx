// A drawing of the engine as a picture: shown from memory as an image, so that nothing in it can
// run and a finger can enlarge it.

import { useEffect, useState } from "preact/hooks";

interface Drawing {
  svg: string;
  alt: string;
  busy?: boolean;
  class?: string;
}

/** The title that the drawing bears, for those who do not see it. */
export function titleOf(svg: string): string {
  const found = /<title>([^<]*)<\/title>/.exec(svg)?.[1] ?? "";
  return found
    .replace(/&#39;/g, "'")
    .replace(/&quot;/g, '"')
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&amp;/g, "&");
}

export function Sheet({ svg, alt, busy = false, class: name = "" }: Drawing) {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [svg]);
  if (!address) return null;
  return <img class={`drawn ${name}`} src={address} alt={titleOf(svg) || alt} aria-busy={busy} />;
}
