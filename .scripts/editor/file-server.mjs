// Serves an extension to a browser's extension host, which loads extensions over HTTP.
import { once } from "node:events";
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import path from "node:path";

const TYPES = {
  ".js": "text/javascript",
  ".json": "application/json",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".png": "image/png",
};

/** Serves folders, each under the path that it is given for. */
export async function startFileServer(folders) {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, "http://127.0.0.1");
    response.setHeader("Access-Control-Allow-Origin", "*");
    const file = fileAt(decodeURIComponent(pathname), folders);
    readFile(file ?? "")
      .then((bytes) => {
        const type = TYPES[path.extname(file)] ?? "text/plain";
        response.writeHead(200, { "Content-Type": type }).end(bytes);
      })
      .catch(() => response.writeHead(404).end());
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  return { host: `127.0.0.1:${server.address().port}`, close: () => server.close() };
}

function fileAt(place, folders) {
  // Parsed as an address, a path holds no `..` any more.
  const found = Object.entries(folders).find(([prefix]) => place.startsWith(`${prefix}/`));
  return found ? path.join(found[1], place.slice(found[0].length)) : null;
}
