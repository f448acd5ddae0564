// The settings of the person in the editor's tests: what is not under test stays out of sight.
const USER_SETTINGS = {
  "workbench.startupEditor": "none",
  "workbench.tips.enabled": false,
  "workbench.secondarySideBar.defaultVisibility": "hidden",
  "workbench.colorTheme": "Default Light Modern",
  "chat.disableAIFeatures": true,
  "chat.commandCenter.enabled": false,
  "security.workspace.trust.startupPrompt": "never",
  "security.workspace.trust.banner": "never",
  "telemetry.telemetryLevel": "off",
  "extensions.ignoreRecommendations": true,
  "extensions.autoUpdate": false,
  "extensions.autoCheckUpdates": false,
  "update.mode": "none",
  "git.autofetch": false,
  "git.openRepositoryInParentFolders": "never",
  // A window in a browser would save by itself.
  "files.autoSave": "off",
  "editor.minimap.enabled": false,
  "window.commandCenter": false,
};

/** The same, with the editor's Git on or off. */
export function userSettings(git) {
  return { ...USER_SETTINGS, "git.enabled": git };
}
