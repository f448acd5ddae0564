// Serves the checkout to a browser's extension host, which loads extensions over HTTP.
import { once } from "node:events";
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import path from "node:path";
import { ROOT } from "../steps.mjs";

const TYPES = {
  ".js": "text/javascript",
  ".json": "application/json",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".png": "image/png",
};

export async function startFileServer() {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, "http://127.0.0.1");
    // Joined to a root, `..` can't climb above it.
    const file = path.join(ROOT, path.posix.join("/", decodeURIComponent(pathname)));
    response.setHeader("Access-Control-Allow-Origin", "*");
    readFile(file)
      .then((bytes) => {
        const type = TYPES[path.extname(file)] ?? "text/plain";
        response.writeHead(200, { "Content-Type": type }).end(bytes);
      })
      .catch(() => response.writeHead(404).end());
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  return { url: `http://127.0.0.1:${server.address().port}`, close: () => server.close() };
}
