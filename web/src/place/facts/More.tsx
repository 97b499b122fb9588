import { Field } from "../../fact/Field";

/** Facts that matter less often, folded away. */
export function More({ title, facts }: { title: string; facts: string[] }) {
  return (
    <details class="more">
      <summary>{title}</summary>
      {facts.map((pointer) => <Field key={pointer} pointer={pointer} />)}
    </details>
  );
}
