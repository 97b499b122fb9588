import { symbolParts } from "./symbols";

/** A symbol as it is set: a letter, and what stands below it. */
export function Sign({ of }: { of: string }) {
  if (!of) return null;
  if (of === "R1+R2") {
    return (
      <span class="sign">
        <i>R</i>
        <sub>1</sub>+<i>R</i>
        <sub>2</sub>
      </span>
    );
  }
  const { base, below } = symbolParts(of);
  return (
    <span class="sign">
      <i>{base}</i>
      {below && <sub>{below}</sub>}
    </span>
  );
}
