/** A symbol of the trade: "Z_s" is Z with s below. */
export function Symbol({ of }: { of: string }) {
  if (!of) return null;
  const [main, below] = of.split("_");
  return <var class="symbol">{main}{below && <sub>{below}</sub>}</var>;
}
