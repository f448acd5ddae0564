import type { Source } from "../../../src/language/index.js";
import {
  createService,
  type Picture,
  type SpotQuestion,
  type SpotReading,
} from "../../../src/service/index.js";

/** A plan's picture, as the service makes it. */
export function planPicture(text: string, source: Source, version: number, uri: string): Picture {
  return servedPlan(text, source, version, uri).picture;
}

/** A plan's picture, and what the service reads at its spots. */
export interface ServedPlan {
  readonly picture: Picture;
  readonly read: (question: SpotQuestion) => SpotReading | null;
}

export function servedPlan(text: string, source: Source, version: number, uri: string): ServedPlan {
  const document = { file: source.file, uri, version, text };
  const service = createService({
    read: (file) => (file === source.file ? text : source.read(file)),
    rootOf: () => source.root,
    files: () => [source.file],
    uriOf: (file) => (file === source.file ? uri : file),
  });
  return {
    picture: service.picture(document),
    read: (question) => service.spot(document, question, "plan"),
  };
}
