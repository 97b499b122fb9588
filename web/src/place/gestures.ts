// Fingers, mouse and wheel on the plan: a tap, a drag of a thing, a pan, a pinch.

import { useEffect, useRef } from "preact/hooks";
import { moveBuilding, moveCorner, moveRod, isLast } from "./edits";
import { distance } from "./geometry";
import { showPanel } from "./focus";
import { tapBuilding, tapGround } from "./hand";
import { hitAt, type Hit } from "./hit";
import type { Job, Point } from "./job";
import { thingAt } from "./outline";
import {
  choose, chosenThing, cursor, edit, ghost, hand, lengthTouched, shown, size, surveyed, take, view,
} from "./state";
import { say } from "../words";
import { panned, toMetres, zoomed } from "./view";

const still = 6;

/** What lies there; corners of what is chosen only where something may be pulled. */
function hitUnder(pixel: Point, pulls: boolean): Hit | null {
  const of = shown.peek();
  if (!of) return null;
  const thing = pulls ? chosenThing.peek() : undefined;
  const last = thing?.kind === "leg" && isLast(surveyed.peek()!, thing.pointer);
  return hitAt(pixel, { of, view: view.peek(), size: size.peek(), chosen: thing, last });
}

/** A tap on the plan, by finger or by Enter at the keyboard's cross. */
export function tapAt(at: Point, hit: Hit | null): void {
  const job = surveyed.peek();
  const of = shown.peek();
  if (!job || !of) return;
  cursor.value = null;
  const thing = hit ? thingAt(of, hit.pointer) : undefined;
  const spot = thing?.kind === "house" || thing?.kind === "building" ? thing : undefined;
  const now = hand.peek();
  if (now.does !== "rest" && now.does !== "ask") {
    take(spot ? tapBuilding(now, spot, at) : tapGround(now, at, job), say("place.did.put"));
    return;
  }
  if (!hit) {
    const idle = chosenThing.peek() && now.does === "rest";
    choose(null);
    hand.value = idle ? { does: "rest" } : tapGround(now, at, job).hand;
    if (!idle) showPanel();
    return;
  }
  hand.value = { does: "rest" };
  choose(hit.pointer);
  showPanel();
  lengthTouched.value = hit.on === "length";
}

/** The move of what was taken hold of; null for what stays where it is. */
function moveOf(hit: Hit | null, to: Point): ((job: Job) => void) | null {
  if (!hit || hand.peek().does !== "rest") return null;
  if (hit.on === "corner") return (job) => moveCorner(job, hit.pointer, hit.corner, to);
  if (hit.on !== "thing" || !hit.moves) return null;
  if (hit.pointer.endsWith("/electrode")) return (job) => moveRod(job, hit.pointer, to);
  return (job) => moveBuilding(job, hit.pointer, to);
}

interface Held {
  id: number;
  begun: Point;
  now: Point;
}

class Fingers {
  held: Held[] = [];
  hit: Hit | null = null;
  moved = false;
  grip: Point = [0, 0];

  down(id: number, pixel: Point): void {
    this.held.push({ id, begun: pixel, now: pixel });
    if (this.held.length > 1) {
      ghost.value = null;
      this.moved = true;
      return;
    }
    this.hit = hitUnder(pixel, true);
    this.moved = false;
    const thing = this.hit && this.hit.on === "thing" ? thingAt(shown.peek()!, this.hit.pointer) : undefined;
    const at = toMetres(view.peek(), size.peek(), pixel);
    this.grip = thing && "at" in thing ? [thing.at[0] - at[0], thing.at[1] - at[1]] : [0, 0];
  }

  move(id: number, pixel: Point): void {
    const one = this.held.find((h) => h.id === id);
    if (!one) return;
    const before = one.now;
    one.now = pixel;
    if (this.held.length === 2) return this.pinch(id, before);
    if (!this.moved && distance(one.begun, pixel) < still) return;
    this.moved = true;
    const at = toMetres(view.peek(), size.peek(), pixel);
    const move = moveOf(this.hit, [at[0] + this.grip[0], at[1] + this.grip[1]]);
    if (move) ghost.value = move;
    else view.value = panned(view.peek(), [pixel[0] - before[0], pixel[1] - before[1]]);
  }

  pinch(id: number, before: Point): void {
    const other = this.held.find((h) => h.id !== id)!.now;
    const now = this.held.find((h) => h.id === id)!.now;
    const middle: Point = [(now[0] + other[0]) / 2, (now[1] + other[1]) / 2];
    const factor = distance(now, other) / Math.max(1, distance(before, other));
    const shifted = panned(view.peek(), [(now[0] - before[0]) / 2, (now[1] - before[1]) / 2]);
    view.value = zoomed(shifted, size.peek(), middle, factor);
  }

  up(id: number): void {
    const one = this.held.find((h) => h.id === id);
    this.held = this.held.filter((h) => h.id !== id);
    if (!one || this.held.length > 0) return;
    const move = ghost.peek();
    ghost.value = null;
    if (move) {
      edit(say("place.did.move"), move);
      if (this.hit) choose(this.hit.pointer);
    } else if (!this.moved) {
      tapAt(toMetres(view.peek(), size.peek(), one.now), hitUnder(one.now, false));
    }
  }

  leave(id: number): void {
    this.held = this.held.filter((h) => h.id !== id);
    ghost.value = null;
  }
}

/** Handlers for the sheet that is drawn on. */
export function useGestures() {
  const sheet = useRef<SVGSVGElement>(null);
  const fingers = useRef(new Fingers()).current;
  const pixelOf = (e: MouseEvent): Point => {
    const box = sheet.current!.getBoundingClientRect();
    return [e.clientX - box.left, e.clientY - box.top];
  };
  useEffect(() => {
    const roll = (e: WheelEvent) => {
      e.preventDefault();
      view.value = zoomed(view.peek(), size.peek(), pixelOf(e), Math.exp(-e.deltaY * 0.0016));
    };
    const on = sheet.current;
    on?.addEventListener("wheel", roll, { passive: false });
    return () => on?.removeEventListener("wheel", roll);
  }, []);
  return {
    sheet,
    onPointerDown: (e: PointerEvent) => {
      if (e.button !== 0) return;
      sheet.current?.setPointerCapture(e.pointerId);
      fingers.down(e.pointerId, pixelOf(e));
    },
    onPointerMove: (e: PointerEvent) => fingers.move(e.pointerId, pixelOf(e)),
    onPointerUp: (e: PointerEvent) => fingers.up(e.pointerId),
    onPointerCancel: (e: PointerEvent) => fingers.leave(e.pointerId),
  };
}
