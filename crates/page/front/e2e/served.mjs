// A copy of a demo served by the real program, and a real browser before it.
import { spawn } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

const here = dirname(fileURLToPath(import.meta.url));
const root = resolve(here, "../../../..");
const program = process.env.AIRTIDE ?? join(root, "target/ci/airtide");
const browsers = [process.env.CHROMIUM, "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

export function start(folder, port = 0, more = []) {
  const child = spawn(program, ["serve", folder, "--port", String(port), ...more], { stdio: ["ignore", "pipe", "pipe"] });
  return new Promise((done, failed) => {
    let said = "";
    child.stderr.on("data", (text) => {
      said += text;
      const found = /http:\/\/127\.0\.0\.1:(\d+)\//.exec(said);
      if (found) done({ child, address: found[0], port: Number(found[1]), said: () => said });
    });
    child.on("exit", (code) => failed(new Error(`the program ended with ${code}: ${said}`)));
  });
}

export const stop = ({ child }) => new Promise((done) => {
  if (child.exitCode !== null) return done();
  child.on("exit", done);
  child.kill("SIGTERM");
});

export async function served(demo = "ridge-logs", more = []) {
  const folder = join(mkdtempSync(join(tmpdir(), "airtide-page-")), demo);
  cpSync(join(root, "demo", demo), folder, { recursive: true });
  const server = await start(folder, 0, more);
  return { ...server, folder, end: async () => { await stop(server); rmSync(dirname(folder), { recursive: true, force: true }); } };
}

export async function browser() {
  const executablePath = browsers.find((path) => path && existsSync(path));
  if (!executablePath) throw new Error("no Chromium was found; install it (Debian: apt-get install chromium) or name it in CHROMIUM");
  // A build server runs as root, where Chromium's own sandbox does not start.
  const quiet = ["--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-quic", "--no-first-run"];
  return chromium.launch({ executablePath, args: ["--no-sandbox", ...quiet] });
}

export async function opened(context, address) {
  const page = await context.newPage();
  const errors = [];
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("request", (request) => { if (!request.url().startsWith(address) && !request.url().startsWith(`blob:${address}`)) errors.push(`left the computer: ${request.url()}`); });
  page.on("console", (message) => { if (message.type() === "error" && message.text().includes("Content Security Policy")) errors.push(message.text()); });
  await page.goto(address);
  return { page, errors };
}
