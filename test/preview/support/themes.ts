/** What an editor gives its webviews: a class on the body and its colours. The values are made up for the tests. */
export interface Theme {
  readonly class: string;
  readonly colours: Readonly<Record<string, string>>;
}

const FONTS = {
  "--vscode-font-family": "system-ui, sans-serif",
  "--vscode-font-size": "13px",
  "--vscode-editor-font-family": "monospace",
};

export const THEMES = {
  light: {
    class: "vscode-light",
    colours: {
      ...FONTS,
      "--vscode-editor-background": "#ffffff",
      "--vscode-editor-foreground": "#3b3b3b",
      "--vscode-panel-border": "#e5e5e5",
      "--vscode-focusBorder": "#005fb8",
      "--vscode-editorHoverWidget-background": "#f8f8f8",
      "--vscode-editorHoverWidget-foreground": "#3b3b3b",
      "--vscode-editorHoverWidget-border": "#c8c8c8",
    },
  },
  dark: {
    class: "vscode-dark",
    colours: {
      ...FONTS,
      "--vscode-editor-background": "#1f1f1f",
      "--vscode-editor-foreground": "#cccccc",
      "--vscode-panel-border": "#2b2b2b",
      "--vscode-focusBorder": "#0078d4",
      "--vscode-editorHoverWidget-background": "#202020",
      "--vscode-editorHoverWidget-foreground": "#cccccc",
      "--vscode-editorHoverWidget-border": "#454545",
    },
  },
  contrast: {
    class: "vscode-high-contrast",
    colours: {
      ...FONTS,
      "--vscode-editor-background": "#000000",
      "--vscode-editor-foreground": "#ffffff",
      "--vscode-panel-border": "#6fc3df",
      "--vscode-contrastBorder": "#6fc3df",
      "--vscode-focusBorder": "#f38518",
      "--vscode-editorHoverWidget-background": "#0c141f",
      "--vscode-editorHoverWidget-foreground": "#ffffff",
      "--vscode-editorHoverWidget-border": "#6fc3df",
    },
  },
  contrastLight: {
    class: "vscode-high-contrast-light vscode-high-contrast",
    colours: {
      ...FONTS,
      "--vscode-editor-background": "#ffffff",
      "--vscode-editor-foreground": "#292929",
      "--vscode-panel-border": "#0f4a85",
      "--vscode-contrastBorder": "#0f4a85",
      "--vscode-focusBorder": "#006bbd",
      "--vscode-editorHoverWidget-background": "#ffffff",
      "--vscode-editorHoverWidget-foreground": "#292929",
      "--vscode-editorHoverWidget-border": "#0f4a85",
    },
  },
} as const satisfies Record<string, Theme>;

export type ThemeName = keyof typeof THEMES;
