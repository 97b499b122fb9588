import { say } from "../words";
import { useWas } from "./was";

/** A figure, and quietly beside it what it was before the last change. */
export function Live({ children }: { children: string }) {
  const was = useWas(children);
  return (
    <span class="live">
      <span class="now">{children}</span>
      {was !== undefined && <span class="was"> {say("answer.was", { figure: was })}</span>}
    </span>
  );
}
