// The page talks to the program through these few functions and nothing else.
import type { FileDocument, Site } from "./documents";

export class Refused extends Error {
  constructor(readonly status: number, readonly kind: string, message: string) {
    super(message);
  }
}

let token = "";

async function answered(path: string, init?: RequestInit): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(`/api${path}`, init);
  } catch (error) {
    if (error instanceof DOMException && error.name === "AbortError") throw error;
    throw new Refused(0, "unreachable", "");
  }
  if (response.ok) return response;
  const body = await response.json().catch(() => ({}));
  throw new Refused(response.status, body.error ?? "failed", body.message ?? response.statusText);
}

export async function get<T>(path: string, signal?: AbortSignal): Promise<T> {
  return (await answered(path, { signal })).json();
}

export async function getText(path: string): Promise<string> {
  return (await answered(path)).text();
}

export async function getBlob(path: string): Promise<Blob> {
  return (await answered(path)).blob();
}

export async function getBytes(path: string, signal?: AbortSignal): Promise<ArrayBuffer> {
  return (await answered(path, { signal })).arrayBuffer();
}

export async function send<T>(method: "POST" | "PUT", path: string, body: unknown, signal?: AbortSignal): Promise<T> {
  const once = async () => {
    const headers = { "content-type": "application/json", "x-airtide-token": token };
    return (await answered(path, { method, headers, body: JSON.stringify(body), signal })).json();
  };
  try {
    return await once();
  } catch (error) {
    // The program was started again meanwhile; a save still names the bytes it was made from.
    if (!(error instanceof Refused) || error.kind !== "wrong-token") throw error;
    await openSite();
    return once();
  }
}

export async function openSite(): Promise<Site> {
  const site = await get<Site>("/site");
  token = site.token;
  return site;
}

export const readFile = (path: string) => get<FileDocument>(`/file?path=${encodeURIComponent(path)}`);
