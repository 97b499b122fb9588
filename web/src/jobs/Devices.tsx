// How other devices are let in, and put out again: shown by the machine itself only.

import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { about, serverThere } from "../bench";
import type { PairedDevice, PairingNow } from "../contract";
import { server } from "../keep/server";
import { when } from "../shell/format";
import { say } from "../words";

const LOOK_MS = 5000;

/** As text in the address: one address would show the picture of the code before. */
async function pictureNow(): Promise<string> {
  const answer = await fetch("/api/pair/picture", { cache: "no-store", credentials: "same-origin" });
  return answer.ok ? `data:image/svg+xml,${encodeURIComponent(await answer.text())}` : "";
}

interface CodeProps { now: PairingNow; picture: string; renew: () => void }

function Code({ now, picture, renew }: CodeProps) {
  return (
    <div class="pairing">
      {now.code ? (
        <>
          {picture && (
            <img src={picture} width="180" height="180"
              alt={say("devices.picture", { address: now.address })} />
          )}
          <p>
            {say("devices.open", { address: now.address })}<br />
            <strong class="pairing-code">{now.code}</strong><br />
            <span class="small">
              {say("devices.holds", { minutes: Math.max(1, Math.ceil(now.seconds_left / 60)) })}
            </span>
          </p>
        </>
      ) : <p>{say("devices.no_code")}</p>}
      <p class="actions">
        <button type="button" onClick={renew}>{say("devices.renew")}</button>
      </p>
    </div>
  );
}

function Device({ one, forget }: { one: PairedDevice; forget: () => void }) {
  const name = one.name || say("devices.nameless");
  return (
    <li class="job-line">
      <span>{name} <span class="job-when">{say("devices.since", { when: when(one.at) })}</span></span>
      <button type="button" class="quiet" onClick={forget}
        aria-label={say("devices.forget_of", { name })}>{say("devices.forget")}</button>
    </li>
  );
}

export function Devices() {
  const now = useSignal<PairingNow | null>(null);
  const devices = useSignal<PairedDevice[]>([]);
  const picture = useSignal("");
  const failed = useSignal("");
  const asks = about.value?.lan === true && serverThere.value === true;
  const look = async () => {
    try {
      const before = now.peek()?.code;
      const told = await server.pairing();
      if (told.code && told.code !== before) picture.value = await pictureNow();
      now.value = told;
      devices.value = await server.devices();
    } catch {
      now.value = null;  // another device, or the program is away
    }
  };
  useEffect(() => {
    if (!asks) return undefined;
    void look();
    const timer = setInterval(() => { if (now.peek()) void look(); }, LOOK_MS);
    return () => clearInterval(timer);
  }, [asks]);
  const then = (task: Promise<unknown>) => {
    failed.value = "";
    task.catch((error: Error) => { failed.value = say("jobs.failed", { says: error.message }); })
      .finally(() => void look());
  };
  if (!asks || !now.value) return null;
  return (
    <section class="devices" aria-labelledby="devices-title">
      <h2 id="devices-title">{say("devices.title")}</h2>
      <p class="small">{say("devices.intro")}</p>
      <Code now={now.value} picture={picture.value} renew={() => then(server.renewCode())} />
      <p role="status">{failed.value}</p>
      <ul class="job-list">
        {devices.value.map((one) => (
          <Device key={one.device} one={one} forget={() => then(server.forget(one.device))} />
        ))}
      </ul>
      {devices.value.length === 0 && <p>{say("devices.none")}</p>}
    </section>
  );
}
