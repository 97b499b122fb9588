import type { ComponentChildren } from "preact";
import { useEffect, useId, useRef } from "preact/hooks";

interface Props {
  title: string;
  close: string;
  onClose: () => void;
  children: ComponentChildren;
}

/** A view over the page: focus stays in it, Escape closes it, focus goes back afterwards. */
export function Dialog({ title, close, onClose, children }: Props) {
  const box = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const dialog = box.current;
    dialog?.showModal();
    return () => dialog?.close();
  }, []);
  const outside = (event: MouseEvent) => {
    if (event.target === box.current) onClose();
  };
  return (
    <dialog ref={box} class="dialog" aria-labelledby={id} onClose={onClose} onClick={outside}>
      <div class="dialog-inner">
        <h2 id={id}>{title}</h2>
        {children}
        <p class="actions"><button type="button" onClick={onClose}>{close}</button></p>
      </div>
    </dialog>
  );
}
