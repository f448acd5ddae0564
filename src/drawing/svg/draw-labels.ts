import type { Dom } from "@svgdotjs/svg.js";
import { badgeLabel } from "../badge.js";
import { rounded } from "../picture.js";
import type { Badge, Label, LabelRole } from "../scene.js";
import { fillAndStroke, fillOf, type ToneName } from "../theme.js";
import { add, addText, ringPath, type Attributes } from "./pen.js";

const TONE_OF_ROLE: Readonly<Record<LabelRole, ToneName>> = {
  title: "ink",
  heading: "ink",
  note: "ink",
  caution: "ink",
  caption: "muted",
  dimension: "ink",
  number: "muted",
  name: "ink",
};

/** These stand over lines or pieces: a halo of paper keeps them readable. */
const WITH_HALO: ReadonlySet<LabelRole> = new Set(["dimension", "caption", "name", "number"]);

const ROLES = Object.keys(TONE_OF_ROLE) as LabelRole[];

/** Texts, one group a role. */
export function drawLabels(into: Dom, labels: readonly Label[], em: number): void {
  for (const role of ROLES) {
    const own = labels.filter((label) => label.role === role);
    if (own.length === 0) continue;
    const group = add(into, "g", roleStyle(role, em));
    for (const alike of alikeLabels(own)) drawAlike(group, alike);
  }
}

function roleStyle(role: LabelRole, em: number): Attributes {
  const tone = TONE_OF_ROLE[role];
  if (!WITH_HALO.has(role)) return { "data-role": role, ...fillOf(tone) };
  return {
    "data-role": role,
    ...fillAndStroke(tone, "paper"),
    "stroke-width": 0.22 * em,
    "stroke-linejoin": "round",
    "paint-order": "stroke",
  };
}

/** Labels that share size, anchor and weight, so that these are said once. */
function alikeLabels(labels: readonly Label[]): Label[][] {
  const groups = new Map<string, Label[]>();
  for (const label of labels) {
    const key = `${label.size} ${label.anchor} ${label.bold}`;
    const group = groups.get(key);
    if (group) group.push(label);
    else groups.set(key, [label]);
  }
  return [...groups.values()];
}

function drawAlike(into: Dom, labels: readonly Label[]): void {
  const { size, anchor, bold } = labels[0]!;
  const group = add(into, "g", {
    "font-size": size,
    ...(anchor === "start" ? {} : { "text-anchor": anchor }),
    ...(bold ? { "font-weight": "bold" } : {}),
  });
  for (const { text, x, y, upward } of labels) {
    const place = upward ? { transform: `translate(${x} ${y}) rotate(-90)` } : { x, y };
    addText(group, "text", text, place);
  }
}

/** Numbers of findings: an error's on a filled disc, a warning's in a hexagon, a note's in a square. */
export function drawBadges(into: Dom, badges: readonly Badge[]): void {
  for (const badge of badges) {
    const { severity, middle, radius } = badge;
    const group = add(into, "g", { "data-kind": severity });
    if (severity === "error") {
      add(group, "circle", { ...fillOf("error"), cx: middle.x, cy: middle.y, r: radius });
    } else {
      add(group, "path", {
        ...fillAndStroke("paper", severity),
        "stroke-width": 0.13 * radius,
        d: ringPath(severity === "warning" ? hexagon(badge) : square(badge)),
      });
    }
    const label = badgeLabel(badge);
    addText(group, "text", label.text, {
      ...fillOf(severity === "error" ? "paper" : severity),
      x: label.x,
      y: label.y,
      "font-size": label.size,
      "font-weight": "bold",
      "text-anchor": "middle",
    });
  }
}

function hexagon({ middle: { x, y }, radius }: Badge): number[] {
  const half = radius / 2;
  const high = 0.9 * radius;
  const [left, right] = [x - radius, x + radius];
  return [
    left,
    y,
    x - half,
    y + high,
    x + half,
    y + high,
    right,
    y,
    x + half,
    y - high,
    x - half,
    y - high,
  ].map(rounded);
}

function square({ middle: { x, y }, radius }: Badge): number[] {
  const half = 0.88 * radius;
  return [x - half, y + half, x + half, y + half, x + half, y - half, x - half, y - half].map(
    rounded,
  );
}
