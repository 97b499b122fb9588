import { useId, useRef, useState } from "preact/hooks";
import { say } from "../words";
import { addPhoto, photos, removePhoto, type Shown } from "./photos";

function Thumb({ photo, what }: { photo: Shown; what: string }) {
  const [large, setLarge] = useState(false);
  return (
    <li class={large ? "large" : ""}>
      <button
        type="button" class="thumb" aria-expanded={large}
        aria-label={say(large ? "fact.photo_small" : "fact.photo_large", { what })}
        onClick={() => setLarge(!large)}
      >
        <img src={photo.source} alt="" loading="lazy" />
      </button>
      {photo.refused
        ? <small role="alert">{say("fact.photo_refused", { says: photo.refused })}</small>
        : !photo.sent && <small>{say("fact.photo_here")}</small>}
      {large && (
        <button type="button" class="plainly" onClick={() => void removePhoto(photo)}>
          {say("fact.photo_remove")}
        </button>
      )}
    </li>
  );
}

/** Photos of one fact, and the way to take another. */
export function Photos({ fact, what }: { fact: string; what: string }) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [fault, setFault] = useState("");
  const own = photos.value.filter((photo) => photo.fact === fact);
  const take = async (files: FileList | null) => {
    setFault("");
    try {
      for (const file of files ?? []) await addPhoto(fact, file);
    } catch {
      setFault(say("fact.photo_fault"));
    }
    if (input.current) input.current.value = "";
  };
  return (
    <div class="photos">
      {own.length > 0 && (
        <ul aria-label={say("fact.photos_of", { what })}>
          {own.map((photo) => <Thumb key={photo.key} photo={photo} what={what} />)}
        </ul>
      )}
      <label class="plainly" for={id}>{say("fact.photo_take", { what })}</label>
      <input
        ref={input} id={id} class="hidden-file" type="file" accept="image/*" capture="environment"
        onChange={(e) => void take(e.currentTarget.files)}
      />
      <p class="say" role="status">{fault}</p>
    </div>
  );
}
