import { outsideText } from "./outside-text.js";

/** The back wall and the pier of `outsideText`, mitred round their corner with a joint of 1/16 in. */
export function mitredText(): string {
  return outsideText({
    right: "outside pier mitre joint 1/16",
    left: "outside back mitre joint 1/16",
  });
}
