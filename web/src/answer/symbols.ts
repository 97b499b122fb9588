// The engine's symbols (Zs.max, cos.phi, R.line.work) as type sets them: a letter and what stands
// below it.

export interface SymbolParts {
  base: string;
  below: string;
}

const greek: Record<string, string> = {
  alpha: "α",
  theta: "θ",
  phi: "φ",
  rho: "ρ",
  kappa: "κ",
  beta: "β",
  sigma: "σ",
  eta: "η",
};

export function symbolParts(symbol: string): SymbolParts {
  const [head = "", ...tail] = symbol.split(".");
  if ((head === "cos" || head === "sin") && tail[0] === "phi") {
    return { base: `${head} φ`, below: tail.slice(1).join(" ") };
  }
  const rest = tail.join(" ");
  if (greek[head]) return { base: greek[head], below: rest };
  const change = /^d([A-Z])$/.exec(head);
  if (change) return { base: `Δ${change[1]}`, below: rest };
  const letter = /^([A-Za-z])([a-z0-9]{1,2})$/.exec(head);
  if (letter && /^[A-Z]/.test(head)) {
    return { base: letter[1]!, below: [letter[2]!, rest].filter(Boolean).join(" ") };
  }
  return { base: head, below: rest };
}
