import {
  CodeActionKind,
  type CodeActionParams,
  type CodeActionOptions,
  type Connection,
  LSPErrorCodes,
  MarkupKind,
  ResponseError,
  type ServerCapabilities,
  type TextEdit,
  type TextDocumentPositionParams,
  type CancellationToken,
} from "vscode-languageserver";
import type { PlanDocument } from "../service/index.js";
import { lspFix } from "./convert-fixes.js";
import { encodeTokens, TOKEN_LEGEND } from "./convert-tokens.js";
import { completionKind, foldKind, selectionChain, symbolOf } from "./convert-words.js";
import type { PlanDesk } from "./plan-desk.js";
import type { Settings } from "./settings.js";
import { turnsOf } from "./turns.js";

const FIXES: CodeActionOptions = {
  codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite],
};

/** What the server tells a client that it can do with a plan's text. */
export const FEATURES: ServerCapabilities = {
  hoverProvider: true,
  completionProvider: { triggerCharacters: [" ", '"', "/"] },
  definitionProvider: true,
  referencesProvider: true,
  renameProvider: { prepareProvider: true },
  documentSymbolProvider: true,
  foldingRangeProvider: true,
  selectionRangeProvider: true,
  documentFormattingProvider: true,
  inlayHintProvider: true,
  codeLensProvider: {},
  codeActionProvider: FIXES,
  semanticTokensProvider: { legend: TOKEN_LEGEND, full: true, range: true },
};

interface Asked {
  readonly textDocument: { readonly uri: string };
}

/** Answers what clients ask of texts; each answer is of the newest version, or there is none. */
export function answerFeatures(connection: Connection, desk: PlanDesk, settings: Settings): void {
  const { service, files } = desk;
  const { uriOf } = files;

  /** For what needs the text alone. */
  const ofText =
    <Params extends Asked, Answer>(answer: (document: PlanDocument, params: Params) => Answer) =>
    (params: Params): Answer | null => {
      const document = desk.newest(params.textDocument.uri);
      return document ? answer(document, params) : null;
    };

  /** For what needs the solved plan, and so the files that it uses. */
  const ofPlan =
    <Params extends Asked, Answer>(
      answer: (
        document: PlanDocument,
        params: Params,
        token: CancellationToken,
      ) => Answer | Promise<Answer>,
    ) =>
    async (params: Params, token: CancellationToken): Promise<Answer | null> => {
      const document = await desk.ready(params.textDocument.uri);
      if (!document || token.isCancellationRequested) return null;
      return answer(document, params, token);
    };

  connection.onHover(
    ofPlan(async (document, { position }: TextDocumentPositionParams) => {
      const { units } = await settings.of(document.uri);
      const hover = service.hover(document, position, units);
      return (
        hover && {
          range: hover.range,
          contents: { kind: MarkupKind.Markdown, value: hover.text },
        }
      );
    }),
  );

  connection.onCompletion(
    ofPlan((document, { position }: TextDocumentPositionParams) =>
      service.completions(document, position).map(({ label, kind, help, text, range }) => ({
        label,
        kind: completionKind(kind),
        ...(help === "" ? {} : { detail: help }),
        textEdit: { range, newText: text },
      })),
    ),
  );

  connection.onDefinition(
    ofPlan((document, { position }: TextDocumentPositionParams) => {
      const place = service.definition(document, position);
      return place && { uri: uriOf(place.file), range: place.range };
    }),
  );

  connection.onReferences(
    ofPlan(async (document, { position, context }, token) => {
      await desk.readAll(document);
      const places = await service.references(
        document,
        position,
        context.includeDeclaration,
        turnsOf(token),
      );
      return places?.map(({ file, range }) => ({ uri: uriOf(file), range })) ?? null;
    }),
  );

  connection.onPrepareRename(
    ofPlan((document, { position }: TextDocumentPositionParams) => {
      const found = service.renamable(document, position);
      return found && { range: found.range, placeholder: found.name };
    }),
  );

  connection.onRenameRequest(
    ofPlan(async (document, { position, newName }, token) => {
      await desk.readAll(document);
      const renaming = await service.rename(document, position, newName, turnsOf(token));
      if (!renaming.ok) throw new ResponseError(LSPErrorCodes.RequestFailed, renaming.message);
      const changes: Record<string, TextEdit[]> = {};
      for (const { file, edits } of renaming.edits) {
        changes[uriOf(file)] = edits.map(({ range, text }) => ({ range, newText: text }));
      }
      return { changes };
    }),
  );

  connection.onDocumentSymbol(ofText((document) => service.outline(document).map(symbolOf)));

  connection.onFoldingRanges(
    ofText((document) =>
      service.folds(document).map(({ startLine, endLine, kind }) => ({
        startLine,
        endLine,
        ...foldKind(kind),
      })),
    ),
  );

  connection.onSelectionRanges(
    ofText((document, { positions }) =>
      positions.map((position) => selectionChain(service.selections(document, position), position)),
    ),
  );

  connection.onDocumentFormatting(
    ofText((document) =>
      service.format(document).map(({ range, text }) => ({ range, newText: text })),
    ),
  );

  connection.languages.inlayHint.on(
    ofPlan(async (document, { range }) => {
      if (!(await settings.of(document.uri)).hints) return [];
      const hints = [...service.hints(document, range), ...service.counts(document, range)];
      return hints.map(({ at, text, help, edits }) => ({
        position: at,
        label: text,
        tooltip: help,
        paddingLeft: true,
        textEdits: edits.map((edit) => ({ range: edit.range, newText: edit.text })),
      }));
    }),
  );

  connection.onCodeAction(
    ofPlan((document, { range, context }: CodeActionParams) =>
      service
        .fixes(document, range)
        .map((fix) => lspFix(fix, document, context.diagnostics))
        .filter(({ kind }) => isWanted(kind, context.only)),
    ),
  );

  connection.languages.semanticTokens.on(
    ofPlan((document) => ({ data: encodeTokens(service.tokens(document)) })),
  );
  connection.languages.semanticTokens.onRange(
    ofPlan((document, { range }) => ({ data: encodeTokens(service.tokens(document, range)) })),
  );
}

/** Kinds are paths: `refactor` asks for `refactor.rewrite` too. */
function isWanted(kind: string | undefined, only: readonly string[] | undefined): boolean {
  if (!only || kind === undefined) return true;
  return only.some((wanted) => wanted === "" || kind === wanted || kind.startsWith(`${wanted}.`));
}
