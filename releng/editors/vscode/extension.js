// Starts the language server for specs, and shows what its commands answer.
const { window, workspace } = require("vscode");
const { LanguageClient } = require("vscode-languageclient/node");

let client;

exports.activate = async () => {
  const command = workspace.getConfiguration("mouldwright").get("command");
  client = new LanguageClient("mouldwright", "Mouldwright", { command, args: ["serve", "--stdio"] }, {
    documentSelector: [{ scheme: "file", language: "plug" }],
    middleware: {
      // A figure above a block, clicked: how it came about opens beside the spec.
      executeCommand: async (name, given, next) => {
        const answer = await next(name, given);
        if (name === "mouldwright.explain" && typeof answer === "string") {
          const document = await workspace.openTextDocument({ content: answer, language: "plaintext" });
          await window.showTextDocument(document, { preview: true, viewColumn: -2 });
        }
        return answer;
      },
    },
  });
  await client.start();
};

exports.deactivate = () => client && client.stop();
