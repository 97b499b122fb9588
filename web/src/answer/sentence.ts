// The engine's sentence, cut where the page breaks it: by run where there are several, then by what
// is to be done.

export interface Task {
  run: string;
  steps: string[];
}

/** Cuts "garage-feed: Feed it …; carry … gym-feed: Feed it …" into tasks of each run. */
export function tasks(sentence: string, runs: string[]): Task[] {
  const named = runs
    .map((run) => ({ run, at: sentence.indexOf(`${run}: `) }))
    .filter((found) => found.at >= 0)
    .sort((a, b) => a.at - b.at);
  if (runs.length < 2 || named.length === 0)
    return [{ run: runs[0] ?? "", steps: steps(sentence) }];
  return named.map(({ run, at }, i) => {
    const end = named[i + 1]?.at ?? sentence.length;
    return { run, steps: steps(sentence.slice(at + run.length + 2, end)) };
  });
}

function steps(sentence: string): string[] {
  return sentence
    .trim()
    .replace(/\.$/, "")
    .split("; ")
    .map((step, i, all) => step + (i === all.length - 1 ? "." : ";"));
}

/** "voltage-drop of stable-feed" → the rule, and the run if one is named. */
export function governed(by: string): { rule: string; run: string | null } {
  const [rule = "", run] = by.split(" of ");
  return { rule, run: run ?? null };
}
