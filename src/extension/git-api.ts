import type * as vscode from "vscode";

// What is used of the interface that the editor's own Git extension (vscode.git) exports, version 1.

export interface GitExtension {
  /** Whether Git is on in the settings. */
  readonly enabled: boolean;
  readonly onDidChangeEnablement: vscode.Event<boolean>;
  /** Throws while Git is off, and where no git program was found. */
  getAPI(version: 1): GitApi;
}

export interface GitApi {
  readonly state: "uninitialized" | "initialized";
  readonly onDidChangeState: vscode.Event<GitApi["state"]>;
  /** The program that the editor found. */
  readonly git: { readonly path: string };
  readonly repositories: readonly GitRepository[];
  readonly onDidOpenRepository: vscode.Event<GitRepository>;
  readonly onDidCloseRepository: vscode.Event<GitRepository>;
  /** The open repository that a file is in. */
  getRepository(uri: vscode.Uri): GitRepository | null;
}

export interface GitRepository {
  readonly rootUri: vscode.Uri;
  readonly state: {
    readonly HEAD: { readonly commit?: string } | undefined;
    readonly indexChanges: readonly GitChange[];
    readonly onDidChange: vscode.Event<void>;
  };
  getCommit(ref: string): Promise<GitCommit>;
  log(options: { readonly maxEntries: number; readonly path?: string }): Promise<GitCommit[]>;
  getRefs(query: { readonly sort?: "committerdate" }): Promise<GitRef[]>;
  /** What differs between a commit and the files as they are, renames among it. */
  diffWith(ref: string): Promise<GitChange[]>;
}

export interface GitChange {
  readonly uri: vscode.Uri;
  readonly originalUri: vscode.Uri;
  readonly renameUri: vscode.Uri | undefined;
}

export interface GitCommit {
  readonly hash: string;
  readonly message: string;
  readonly authorName?: string;
  readonly authorDate?: Date;
}

export interface GitRef {
  /** 0 a branch, 1 a remote's branch, 2 a tag. */
  readonly type: 0 | 1 | 2;
  readonly name?: string;
  readonly commit?: string;
}
