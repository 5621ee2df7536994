// What people do with the page, in a real browser on the real program.
import { AxeBuilder } from "@axe-core/playwright";
import assert from "node:assert/strict";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { browser, opened, served, start, stop } from "./served.mjs";

let chromium;
before(async () => { chromium = await browser(); });
after(async () => { await chromium.close(); });

async function visit(options, work, demo, more) {
  const site = await served(demo, more);
  const context = await chromium.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  try {
    const { page, errors } = await opened(context, site.address);
    page.setDefaultTimeout(15000);
    await work(page, site, context);
    assert.deepEqual(errors, []);
  } finally {
    await context.close();
    await site.end();
  }
}

const part = (page, name) => page.locator(".top nav").getByRole("link", { name, exact: true }).click();
const axe = async (page) => {
  const found = await new AxeBuilder({ page }).withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]).analyze();
  assert.deepEqual(found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html.slice(0, 120)).join(" | ")}`), []);
};

test("a newcomer sees the plan, tries it, and takes the trial back", () => visit({}, async (page) => {
  await page.getByRole("heading", { name: /Pressure plan for haul logs/ }).waitFor();
  const cell = page.getByLabel("laden, highway, drive");
  await cell.waitFor();
  const planned = await cell.inputValue();
  await page.locator('[data-slider="load_pct"]').fill("20");
  await page.waitForFunction((old) => document.querySelector('[aria-label="laden, highway, drive"]').value !== old, planned);
  await page.getByRole("button", { name: "As surveyed" }).click();
  await page.waitForFunction((old) => document.querySelector('[aria-label="laden, highway, drive"]').value === old, planned);
}));

test("a change point is moved by key and by hand, and what comes of it is told", () => visit({}, async (page) => {
  const handle = page.getByRole("slider", { name: /START RAISING/ }).first();
  await handle.waitFor();
  const before = Number(await handle.getAttribute("aria-valuenow"));
  await handle.focus();
  await page.keyboard.press("ArrowRight");
  await page.getByText(/planned at/).waitFor();
  assert.notEqual(Number(await handle.getAttribute("aria-valuenow")), before);
  const box = await handle.locator("circle").first().boundingBox();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + 60, box.y + box.height / 2, { steps: 5 });
  await page.mouse.up();
  assert.ok(Math.abs(Number(await handle.getAttribute("aria-valuenow")) - before) > 0.2);
  await page.keyboard.press("Escape");
  await page.getByText(/planned at/).waitFor({ state: "detached" });
}));

test("a cell set by hand is saved in the survey and nothing else of the file is touched", () => visit({}, async (page, site) => {
  const file = join(site.folder, "combinations/log-double.toml");
  const before = readFileSync(file, "utf8");
  await page.getByLabel("laden, county gravel, drive").fill("80");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: /Save 1 cell/ }).click();
  await page.getByText("Saved: combinations/log-double.toml").waitFor();
  const after = readFileSync(file, "utf8");
  assert.ok(after.length > before.length);
  const added = after.replace(/\n\[\[hand_set\]\]\nchannel = "drive"\nload_state = "laden"\nrung = "county gravel"\npressure_psi = 80\n/, "");
  assert.equal(added, before);
}));

test("an edit is saved at once, keeps every comment, and undo brings back the same bytes", () => visit({}, async (page, site) => {
  await part(page, "Survey");
  await page.getByRole("link", { name: "logs", exact: true }).click();
  const file = join(site.folder, "hauls/logs.toml");
  const before = readFileSync(file, "utf8");
  const field = page.getByLabel(/^cycles a day/).first();
  await field.fill("3");
  await field.press("Enter");
  await page.getByText("Saved: hauls/logs.toml").waitFor();
  assert.equal(readFileSync(file, "utf8"), before.replace("cycles_a_day = 2.5", "cycles_a_day = 3"));
  await page.getByRole("button", { name: /^Undo/ }).click();
  await page.waitForFunction(() => document.querySelector(".file-head button").disabled);
  assert.equal(readFileSync(file, "utf8"), before);
}));

test("a bad value is told beside its field and does not reach the file; one out of range is", () => visit({}, async (page, site) => {
  await part(page, "Survey");
  await page.getByRole("link", { name: "logs", exact: true }).click();
  const file = join(site.folder, "hauls/logs.toml");
  const before = readFileSync(file, "utf8");
  const field = page.getByLabel(/^cycles a day/).first();
  await field.fill("many");
  await field.press("Enter");
  await page.getByText("Type a number, such as 85 or 5.9.").waitFor();
  assert.equal(readFileSync(file, "utf8"), before);
  await field.fill("9000");
  await field.press("Enter");
  await page.locator(".field.bad .problems .wrong").first().waitFor();
  assert.equal(await field.getAttribute("aria-invalid"), "true");
}));

test("of two windows the second is told and loses nothing", () => visit({}, async (page, site, context) => {
  await page.goto(`${site.address}#/survey/hauls/logs.toml`);
  const field = (one) => one.getByLabel(/^cycles a day/).first();
  await field(page).waitFor();
  const other = await context.newPage();
  await other.goto(`${site.address}#/survey/hauls/logs.toml`);
  await field(other).waitFor();
  await field(page).fill("4");
  await field(page).press("Enter");
  await page.getByText("Saved: hauls/logs.toml").waitFor();
  const standing = other.getByLabel(/^time/).first();
  await standing.fill("41");
  await standing.press("Enter");
  await other.getByText(/changed in another window or program. Nothing was saved/).waitFor();
  await other.getByRole("button", { name: "Make my change on the new file" }).click();
  await other.getByText("Saved: hauls/logs.toml").waitFor();
  const text = readFileSync(join(site.folder, "hauls/logs.toml"), "utf8");
  assert.match(text, /cycles_a_day = 4\n/);
  assert.match(text, /time_min = 41/);
}));

test("the call from the road is answered in big words", () => visit({}, async (page) => {
  await part(page, "Now");
  await page.getByText("418", { exact: true }).click();
  await page.getByText("laden", { exact: true }).click();
  for (const name of ["drive", "lead trailer", "dolly", "pup"]) await page.getByLabel(name, { exact: true }).fill("95");
  await page.getByText("tires cold").click();
  await page.getByRole("button", { name: "Answer" }).click();
  await page.locator(".answer h2").waitFor();
  assert.match(await page.locator(".answer h2").textContent(), /GO|FASTER|STOP|WALKING/);
  assert.doesNotMatch(await page.locator(".answer").textContent(), /\[(now|why|limit|caution)-/);
  await axe(page);
}));

test("the timeline zooms without losing a peak", async () => {
  const rows = ["time_s,supply_kpa"];
  for (let at = 0; at < 300000; at++) rows.push(`${at},${at === 123457 ? 999 : 800}`);
  const table = join(process.env.TMPDIR ?? "/tmp", `airtide-peak-${process.pid}.csv`);
  writeFileSync(table, rows.join("\n"));
  await visit({}, async (page, site) => {
    await page.goto(`${site.address}#/timeline/table%3A0`);
    const chart = page.getByRole("img", { name: /Pressure/ });
    await chart.waitFor();
    const peak = /116\.0 – 144\.9/;
    assert.match(await chart.getAttribute("aria-label"), peak);
    await page.getByRole("button", { name: "Closer" }).click();
    await page.getByRole("button", { name: "Closer" }).click();
    await page.waitForFunction(() => document.querySelector("[data-span]").dataset.span.startsWith("112499"));
    await page.waitForTimeout(200);
    assert.match(await chart.getAttribute("aria-label"), peak);
    const box = await page.locator(".u-over").first().boundingBox();
    await page.mouse.move(box.x + 20, box.y + 50);
    await page.mouse.down();
    await page.mouse.move(box.x + 300, box.y + 50, { steps: 4 });
    await page.mouse.up();
    await page.waitForFunction(() => !document.querySelector("[data-span]").dataset.span.startsWith("112499"));
    await page.getByText("As a table").click();
    await axe(page);
  }, "ridge-logs", ["--series", table]);
});

test("language and units change without a reload, and the plan stays the same", () => visit({}, async (page) => {
  await page.getByLabel("laden, highway, drive").waitFor();
  await page.evaluate(() => { window.stayed = true; });
  await page.getByLabel("Units").selectOption("si");
  await page.waitForFunction(() => /^\d{3}$/.test(document.querySelector('[aria-label="laden, highway, drive"]').value));
  const tags = await page.getByLabel("Language").locator("option").evaluateAll((all) => all.map((one) => one.value));
  const other = tags.find((tag) => !tag.startsWith("en"));
  if (other) {
    await page.locator(".choices select").first().selectOption(other);
    await page.waitForFunction((tag) => document.documentElement.lang === tag, other);
  }
  assert.equal(await page.evaluate(() => window.stayed), true);
  await page.reload();
  await page.waitForFunction(() => /^\d{3}$/.test(document.querySelector('[aria-label="laden, highway, drive"]')?.value ?? ""));
}));

test("the haul is driven, taken up again after a reload, and judged", () => visit({}, async (page) => {
  await part(page, "Practice");
  await page.getByLabel(/What may go otherwise/).selectOption("none");
  await page.getByRole("button", { name: "Begin to drive" }).click();
  await page.getByText("Move off").waitFor();
  await page.getByRole("button", { name: "Move off" }).click();
  await page.getByRole("button", { name: "× 40" }).click();
  const place = () => page.locator(".seen div", { hasText: "Chainage" }).locator("dd").innerText();
  const before = await place();
  await page.waitForFunction((old) => !document.querySelector(".seen").innerText.includes(old), before);
  await page.getByRole("button", { name: "Pause" }).click();
  await page.waitForTimeout(400);
  const paused = await place();
  await page.reload();
  await page.locator(".seen").waitFor();
  assert.equal(await place(), paused);
  await page.getByRole("button", { name: "as fast as the road allows" }).click();
  await page.getByRole("button", { name: "× 120" }).click();
  await page.waitForTimeout(3000);
  await page.getByRole("button", { name: "Judge the drive so far" }).click();
  await page.getByRole("heading", { name: "Findings" }).waitFor();
  await page.getByText(/Arrived|The price comes/).first().waitFor();
  assert.doesNotMatch(await page.locator("main").innerText(), /\[[a-z]+(-[a-z]+)+\]/);
  await axe(page);
}));

test("every document is looked at, and one that cannot be made says why", () => visit({}, async (page, site) => {
  await part(page, "Paper");
  for (const kind of ["Driver card", "Set-up sheet", "Plan report"]) {
    await page.getByRole("button", { name: `${kind}: Open` }).click();
    await page.frameLocator("iframe").locator("h1").first().waitFor();
  }
  rmSync(join(site.folder, "approvals"), { recursive: true });
  await page.waitForTimeout(600);
  await page.getByRole("button", { name: "Recovery procedure: Open" }).click();
  await page.getByText(/no recovery procedure: no tire maker approved/).waitFor();
  const kept = page.waitForEvent("download");
  await page.getByRole("button", { name: "Driver card: PDF" }).click();
  assert.equal((await kept).suggestedFilename(), "driver-card.pdf");
}));

for (const [name, viewport] of [["a laptop", { width: 1280, height: 900 }], ["a tablet", { width: 820, height: 1180 }]]) {
  test(`every part fits ${name}, light and dark, and axe finds nothing`, () => visit({ viewport, hasTouch: viewport.width < 1000 }, async (page) => {
    for (const look of ["light", "dark"]) {
      await page.locator(".choices select").nth(2).selectOption(look);
      for (const name of ["Survey", "Plan", "Now", "Timeline", "Practice", "Paper"]) {
        await part(page, name);
        await page.locator("main h1").waitFor();
        if (name === "Plan") await page.locator("svg.half").first().waitFor();
        if (name === "Timeline") {
          await page.locator(".u-over").first().waitFor();
          await page.locator(".timeline .strip svg").waitFor();
        }
        await page.waitForTimeout(150);
        assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth + 1), `${name} is wider than the screen`);
        assert.doesNotMatch(await page.locator("body").innerText(), /\[[a-z]+(-[a-z]+)+\]/);
        await axe(page);
        if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/${name}-${viewport.width}-${look}.png`, fullPage: true });
      }
    }
  }));
}

test("a reload in the middle comes back to the same place", () => visit({}, async (page) => {
  await part(page, "Survey");
  await page.getByRole("link", { name: "pup", exact: true }).first().click();
  await page.getByRole("heading", { name: "vehicles/pup.toml" }).waitFor();
  await page.reload();
  await page.getByRole("heading", { name: "vehicles/pup.toml" }).waitFor();
}));

test("a program that stops in the middle is told, and what was typed stays", () => visit({}, async (page, site) => {
  await page.goto(`${site.address}#/survey/hauls/logs.toml`);
  const field = page.getByLabel(/^cycles a day/).first();
  await field.waitFor();
  await stop(site);
  await field.fill("7");
  await field.press("Enter");
  await page.getByText(/The program does not answer/).first().waitFor();
  assert.equal(await field.inputValue(), "7");
  const back = await start(site.folder, site.port);
  site.child = back.child;
  await page.locator(".told .wrong").waitFor({ state: "detached" });
  await field.press("Enter");
  await page.getByText("Saved: hauls/logs.toml").waitFor();
  await stop(back);
}));

test("a survey with problems opens and shows them", () => visit({}, async (page, site) => {
  writeFileSync(join(site.folder, "survey.toml"), "name = 3\n");
  await page.goto(`${site.address}#/survey`);
  await page.reload();
  await page.locator(".problem-list .wrong").first().waitFor();
}));

test("from slider to drawn frame nine of ten and a half stay under fifty milliseconds", { skip: !process.env.MEASURE }, () => visit({}, async (page) => {
  await page.locator("svg.half").first().waitFor();
  await page.waitForTimeout(2000);
  const times = await page.evaluate(async () => {
    const slider = document.querySelector('[data-slider="load_pct"]');
    const drawn = () => document.querySelector(".plan").dataset.cycleS;
    const found = [];
    for (let move = 0; move < 80; move++) {
      const old = drawn();
      const begun = performance.now();
      slider.value = String(-1 - (move % 20));
      slider.dispatchEvent(new Event("input", { bubbles: true }));
      await new Promise((done) => {
        const look = () => drawn() !== old ? requestAnimationFrame(done) : performance.now() - begun > 500 ? done() : requestAnimationFrame(look);
        look();
      });
      found.push(performance.now() - begun);
    }
    return found.sort((a, b) => a - b);
  });
  const paint = await page.evaluate(() => performance.getEntriesByName("first-contentful-paint")[0]?.startTime);
  console.log(`slider to frame: p50 ${times[40].toFixed(0)} ms, p95 ${times[75].toFixed(0)} ms, max ${times[79].toFixed(0)} ms; first paint ${paint?.toFixed(0)} ms`);
}));

test("a million points are zoomed, and nine of ten and a half zooms are drawn in fifty milliseconds", { skip: !process.env.MEASURE }, async () => {
  const rows = ["time_s,supply_kpa,speed_kmh"];
  for (let at = 0; at < 1000000; at++) rows.push(`${at},${(800 + 90 * Math.sin(at / 900)).toFixed(2)},${(40 + 30 * Math.sin(at / 77)).toFixed(2)}`);
  const table = join(process.env.TMPDIR ?? "/tmp", `airtide-million-${process.pid}.csv`);
  writeFileSync(table, rows.join("\n"));
  await visit({}, async (page, site) => {
    await page.goto(`${site.address}#/timeline/table%3A0`);
    await page.getByRole("img", { name: /Pressure/ }).waitFor();
    await page.waitForTimeout(1000);
    const times = await page.evaluate(async () => {
      const drawn = () => document.querySelector("[data-drawn]").dataset.drawn;
      const [closer, further, , on] = document.querySelectorAll(".zoom button");
      const moves = [closer, closer, on, closer, closer, on, further, closer, closer, further, on, closer, further, further, further, further];
      const found = [];
      for (let move = 0; move < 80; move++) {
        const old = drawn();
        const begun = performance.now();
        moves[move % moves.length].click();
        await new Promise((done) => {
          const watched = () => drawn() !== old ? requestAnimationFrame(done) : performance.now() - begun > 500 ? done() : requestAnimationFrame(watched);
          watched();
        });
        found.push(performance.now() - begun);
      }
      return found.sort((a, b) => a - b);
    });
    console.log(`zoom over 1,000,000 points: p50 ${times[40].toFixed(0)} ms, p95 ${times[75].toFixed(0)} ms, max ${times[79].toFixed(0)} ms`);
  }, "ridge-logs", ["--series", table]);
});
